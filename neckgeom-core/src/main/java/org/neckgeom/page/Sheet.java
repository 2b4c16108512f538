package org.neckgeom.page;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.neckgeom.board.Fret;
import org.neckgeom.board.FretTable;
import org.neckgeom.drawing.Stations;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;

/**
 * The whole plan of a neck as something to read: plain text for a terminal, or one page with drawings to hang by the
 * machine; and its tables of frets and stations as comma-separated values. Immutable.
 *
 * <p>Text and page state first what stands, what to stop for and what to do next; then what can hurt; then the settings in order of
 * work; then drawings and tables.
 */
public final class Sheet {

    private final NeckPlan plan;
    private final Contents contents;

    private Sheet(NeckPlan plan) {
        this.plan = plan;
        this.contents = Contents.of(plan);
    }

    /**
     * {@return the sheet of a plan}
     *
     * @param plan the plan
     */
    public static Sheet of(NeckPlan plan) {
        return new Sheet(Objects.requireNonNull(plan, "plan"));
    }

    /**
     * {@return the whole plan as plain text, without drawings: lines of at most 80 characters, parted by line feeds;
     * ending in a line feed}
     */
    public String toText() {
        return PlainText.of(contents);
    }

    /**
     * {@return the whole plan as one page: HTML that is well-formed XML too, complete in itself, without script; the
     * page in UTF-8, ending in a line feed} It reads on a phone 360 pixels wide and prints on A4 and Letter; it is
     * light or dark as the device asks.
     *
     * <p>Lengths in drawings and tables are rounded to 0.01 mm or 0.001 in; settings print as the plan has them.
     */
    public String toHtml() {
        return Page.of(contents);
    }

    /**
     * {@return the frets as comma-separated values (RFC 4180): a head with units, then a line a fret from the nut on;
     * lines parted by line feeds} Figures to twelve digits, decimal point.
     */
    public String fretCsv() {
        String unit = plan.style().unit().symbol();
        StringBuilder csv = new StringBuilder(line("fret", "from nut " + unit, "from last " + unit, "width " + unit));
        for (Fret fret : FretTable.of(plan.design()).frets()) {
            csv.append(line(
                    String.valueOf(fret.number()),
                    figure(fret.fromNutMm()),
                    figure(fret.fromLast().libraryValue()),
                    figure(2 * plan.design().halfWidthAtMm(fret.fromNutMm()))));
        }
        return csv.toString();
    }

    /**
     * {@return the stations as comma-separated values (RFC 4180): a head with units, then a line a station from the nut
     * on; channel depth and wood left are empty where the channel does not reach; at a station in the head the wood is
     * that deep or deeper; lines parted by line feeds}
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
        Stations stations = Stations.of(plan);
        for (Stations.Station station : stations.listed()) {
            double x = station.x();
            csv.append(line(
                    station.name(),
                    figure(station.fromNut()),
                    figure(2 * plan.design().halfWidthAtMm(x)),
                    figure(stations.backDepth(x)),
                    stations.channelDepth(x).map(this::figure).orElse(""),
                    stations.woodAt(x).map(wood -> figure(wood.woodMm())).orElse("")));
        }
        return csv.toString();
    }

    private String figure(double mm) {
        return Numbers.plain(plan.style().unit().fromLibrary(mm));
    }

    private static String line(String... cells) {
        return List.of(cells).stream().map(Sheet::cell).collect(Collectors.joining(",")) + "\n";
    }

    private static String cell(String text) {
        return text.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
                ? "\"" + text.replace("\"", "\"\"") + "\""
                : text;
    }

    /** True for the sheet of the same contents. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Sheet that && plan.equals(that.plan);
    }

    @Override
    public int hashCode() {
        return plan.hashCode();
    }

    /** Returns what the sheet is of, and how its checks stand. */
    @Override
    public String toString() {
        return Report.titled("Sheet: " + contents.design().name())
                .row(
                        "checks",
                        contents.count(PlanCheck.Outcome.STOP) + " to stop for, "
                                + contents.count(PlanCheck.Outcome.OPEN) + " open, "
                                + contents.count(PlanCheck.Outcome.GOOD) + " good")
                .row("settings", contents.sections().size() + " sections")
                .note(
                        "toText() for a terminal, toHtml() for a page with drawings, fretCsv() and stationCsv() for tables")
                .toString();
    }
}
