package org.neckgeom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.neckgeom.budget.Share;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.geometry.Fret;
import org.neckgeom.geometry.FretTable;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.plan.OrderPlan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.stock.Blank;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * The whole plan as data for other programs: JSON with a unit beside every figure, and tables of frets and stations as
 * comma-separated values. Immutable.
 *
 * <p>The JSON is one object (RFC 8259). Every quantity is {@code {"value": 34, "unit": "mm"}}; units are {@code mm} or
 * {@code in}, {@code deg}, {@code N}, {@code Hz}, {@code g/m}. Its parts:
 *
 * <pre>
 * format      "neckgeom plan"
 * version     1; a reader should refuse a number it does not know
 * design      name, scale, frets, bodyAtFret, fingerboard, back, and wood, channel, head, heel, strings as told
 * blank       length, width, thickness, nutFromHeadEnd, outOfParallel, wood
 * shop        what it is made with, in words
 * scarf       place, pitch, glueFace, frontLine, backLine, breakLineShift, if the head is scarfed on
 * neckSet     angle, heelFace, reach, if told
 * checks      name, outcome (good, open, stop), found, allowed, todo
 * cautions    code, text, why
 * sections    title, rows of label and value, notes
 * order       steps of number, operation, why; clashes in words
 * budgets     title, contents, limits where told, standardDeviation, low95, high95, shares of the variance
 * fretTable   fret, fromNut, fromLast, width
 * stations    name, fromNut, width, woodDepth, and channelDepth, woodLeft where the channel reaches
 * </pre>
 *
 * <p>The design reads back as it was: {@link #designFrom}.
 */
public final class PlanData implements SaysLengths<PlanData> {

    private static final String FORMAT = "neckgeom plan";
    private static final int VERSION = 1;

    private final NeckPlan plan;

    private PlanData(NeckPlan plan) {
        this.plan = plan;
    }

    /**
     * Returns the data of a plan.
     *
     * @param plan the plan
     * @return its data
     */
    public static PlanData of(NeckPlan plan) {
        return new PlanData(Objects.requireNonNull(plan, "plan"));
    }

    /**
     * Returns the design that a JSON text written by {@link #toJson} holds.
     *
     * @param json the text
     * @return a design equal to the one it was written from; figures of a wood that is not listed keep their values, not
     *     their sources
     * @throws IllegalArgumentException with the place and the rule, if the text is not JSON or not of this format
     */
    public static NeckDesign designFrom(String json) {
        DataMap data = DataMap.of(JsonReader.read(Objects.requireNonNull(json, "json")), "");
        if (!data.text("format").equals(FORMAT)) {
            throw new IllegalArgumentException(
                    "format must be \"" + FORMAT + "\", but was \"" + data.text("format") + "\"");
        }
        if (data.count("version") != VERSION) {
            throw new IllegalArgumentException("version must be " + VERSION + ", but was " + data.count("version"));
        }
        return DesignData.from(data.inner("design"));
    }

    /**
     * Returns the whole plan as JSON.
     *
     * @return the text in UTF-8, ending in a line feed
     */
    public String toJson() {
        DataMap data = DataMap.empty().put("format", FORMAT).put("version", VERSION);
        data.put("design", DesignData.of(plan.design()));
        data.put("blank", blank());
        data.put("shop", plan.shop().toString());
        plan.scarf()
                .ifPresent(joint -> data.put(
                        "scarf",
                        DataMap.empty()
                                .put("place", joint.place().toString())
                                .put(
                                        "pitch",
                                        DataMap.quantity(joint.scarf().pitch().house(), ShopUnit.DEGREE))
                                .length("glueFace", joint.glueFaceMm(), plan.style())
                                .length("frontLine", joint.frontLineMm(), plan.style())
                                .length("backLine", joint.backLineMm(), plan.style())
                                .length("breakLineShift", joint.breakLineShiftMm(), plan.style())));
        plan.neckSet()
                .ifPresent(set -> data.put(
                        "neckSet",
                        DataMap.empty()
                                .put(
                                        "angle",
                                        DataMap.quantity(set.angle().angle().house(), ShopUnit.DEGREE))
                                .put(
                                        "heelFace",
                                        DataMap.quantity(set.heelFace().angle().house(), ShopUnit.DEGREE))
                                .length("reach", set.reach().house(), plan.style())));
        data.putAll("checks", plan.checks().stream().map(PlanData::check).toList());
        data.putAll(
                "cautions",
                plan.cautions().stream()
                        .map(caution -> DataMap.empty()
                                .put("code", caution.code())
                                .put("text", caution.text())
                                .put("why", caution.why()))
                        .toList());
        data.putAll("sections", plan.sections().stream().map(PlanData::section).toList());
        data.put("order", order(plan.order().plan()));
        data.putAll("budgets", BudgetPart.of(plan).stream().map(this::budget).toList());
        data.putAll("fretTable", frets());
        data.putAll("stations", stations());
        return data.toJson();
    }

    private DataMap blank() {
        Blank blank = plan.blank();
        LengthStyle style = blank.style();
        DataMap data = DataMap.empty()
                .length("length", blank.lengthMm(), style)
                .length("width", blank.widthMm(), style)
                .length("thickness", blank.thicknessMm(), style)
                .length("nutFromHeadEnd", blank.nutFromHeadEndMm(), style)
                .length("outOfParallel", blank.outOfParallelMm(), style);
        blank.wood().ifPresent(wood -> data.put("wood", wood.name()));
        return data;
    }

    private static DataMap check(PlanCheck check) {
        return DataMap.empty()
                .put("name", check.name())
                .put("outcome", check.outcome().toString())
                .put("found", check.found())
                .put("allowed", check.allowed())
                .put("todo", check.todo());
    }

    private static DataMap section(PlanSection section) {
        return DataMap.empty()
                .put("title", section.title())
                .putAll(
                        "rows",
                        section.rows().stream()
                                .map(row -> DataMap.empty()
                                        .put("label", row.label())
                                        .put("value", row.value()))
                                .toList())
                .put("notes", section.notes());
    }

    private static DataMap order(OrderPlan order) {
        List<String> clashes = new ArrayList<>();
        order.clashes().forEach(clash -> clashes.add(clash.toString()));
        return DataMap.empty()
                .putAll(
                        "steps",
                        order.steps().stream()
                                .map(step -> DataMap.empty()
                                        .put("number", step.number())
                                        .put("operation", step.operation().name())
                                        .put("why", step.why()))
                                .toList())
                .put("clashes", clashes);
    }

    private DataMap budget(BudgetPart part) {
        LengthStyle style = plan.style();
        DataMap data = DataMap.empty()
                .put("title", part.title())
                .put("contents", part.budget().title());
        part.limits().ifPresent(limits -> data.put("limits", limits.toString()));
        data.length(
                        "standardDeviation",
                        part.budget().distribution().standardDeviation().house(),
                        style)
                .length("low95", part.usual().lowHouse(), style)
                .length("high95", part.usual().highHouse(), style);
        List<DataMap> shares = new ArrayList<>();
        for (Share<?> share : part.budget().sharesByStep().list()) {
            shares.add(DataMap.empty().put("step", share.name()).put("fraction", share.fraction()));
        }
        return data.putAll("shares", shares);
    }

    private List<DataMap> frets() {
        List<DataMap> rows = new ArrayList<>();
        LengthStyle style = plan.style();
        for (Fret fret : FretTable.of(plan.design()).frets()) {
            rows.add(DataMap.empty()
                    .put("fret", fret.number())
                    .length("fromNut", fret.fromNutMm(), style)
                    .length("fromLast", fret.fromLast().house(), style)
                    .length("width", 2 * plan.design().halfWidthAtMm(fret.fromNutMm()), style));
        }
        return rows;
    }

    private List<DataMap> stations() {
        List<DataMap> rows = new ArrayList<>();
        LengthStyle style = plan.style();
        Stations stations = new Stations(plan.design());
        for (Stations.Station station : stations.listed()) {
            double x = station.x();
            DataMap row = DataMap.empty()
                    .put("name", station.name())
                    .length("fromNut", x, style)
                    .length("width", 2 * plan.design().halfWidthAtMm(x), style)
                    .length("woodDepth", plan.design().backDepthAtMm(x), style);
            stations.channelDepth(x).ifPresent(depth -> row.length("channelDepth", depth, style));
            stations.woodAt(x).ifPresent(wood -> row.length("woodLeft", wood.woodMm(), style));
            rows.add(row);
        }
        return rows;
    }

    /**
     * Returns the frets as comma-separated values (RFC 4180): a head with units, then a line a fret from the nut on.
     * Figures to twelve digits, decimal point.
     *
     * @return the table, lines parted by line feeds
     */
    public String fretCsv() {
        String unit = plan.style().unit().symbol();
        StringBuilder csv = new StringBuilder(line("fret", "from nut " + unit, "from last " + unit, "width " + unit));
        for (Fret fret : FretTable.of(plan.design()).frets()) {
            csv.append(line(
                    String.valueOf(fret.number()),
                    figure(fret.fromNutMm()),
                    figure(fret.fromLast().house()),
                    figure(2 * plan.design().halfWidthAtMm(fret.fromNutMm()))));
        }
        return csv.toString();
    }

    /**
     * Returns the stations as comma-separated values (RFC 4180): a head with units, then a line a station from the nut on;
     * channel depth and wood left are empty where the channel does not reach.
     *
     * @return the table, lines parted by line feeds
     */
    public String stationCsv() {
        String unit = " " + plan.style().unit().symbol();
        StringBuilder csv = new StringBuilder(line(
                "station",
                "from nut" + unit,
                "width" + unit,
                "wood depth" + unit,
                "channel depth" + unit,
                "wood left" + unit));
        Stations stations = new Stations(plan.design());
        for (Stations.Station station : stations.listed()) {
            double x = station.x();
            csv.append(line(
                    station.name(),
                    figure(x),
                    figure(2 * plan.design().halfWidthAtMm(x)),
                    figure(plan.design().backDepthAtMm(x)),
                    stations.channelDepth(x).map(this::figure).orElse(""),
                    stations.woodAt(x).map(wood -> figure(wood.woodMm())).orElse("")));
        }
        return csv.toString();
    }

    private String figure(double mm) {
        return Numbers.plain(plan.style().unit().fromHouse(mm));
    }

    private static String line(String... cells) {
        return List.of(cells).stream().map(PlanData::cell).collect(Collectors.joining(",")) + "\n";
    }

    private static String cell(String text) {
        return text.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
                ? "\"" + text.replace("\"", "\"\"") + "\""
                : text;
    }

    @Override
    public PlanData in(LengthStyle other) {
        return new PlanData(plan.in(other));
    }

    /** True for the data of an equal plan. */
    @Override
    public boolean equals(Object other) {
        return other instanceof PlanData that && plan.equals(that.plan);
    }

    @Override
    public int hashCode() {
        return plan.hashCode();
    }

    /** Returns whose data it is and how to have it. */
    @Override
    public String toString() {
        return Report.titled("Data: " + plan.design().name())
                .note("toJson() for the whole plan, fretCsv() and stationCsv() for its tables")
                .toString();
    }
}
