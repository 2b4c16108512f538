package org.neckgeom.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.neckgeom.board.Fret;
import org.neckgeom.board.FretTable;
import org.neckgeom.drawing.Stations;
import org.neckgeom.form.Json;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.table.Spelling;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.LengthStyle;

/**
 * What belongs to the data of a plan beside its {@link Document}: the mark that paper is known by, and tables of frets and
 * stations as comma-separated values. Immutable.
 */
public final class PlanData {

    private static final int MARK_DIGITS = 8;

    private final NeckPlan plan;

    private PlanData(NeckPlan plan) {
        this.plan = plan;
    }

    /**
     * {@return the data of a plan}
     *
     * @param plan the plan
     */
    public static PlanData of(NeckPlan plan) {
        return new PlanData(Objects.requireNonNull(plan, "plan"));
    }

    /**
     * {@return the SHA-256 of the plan as JSON without its answers, in millimetres: by it two plans are known to be
     * given the same; 64 lower-case hexadecimal digits}
     */
    public String hash() {
        Map<String, Object> given =
                Document.PLAN.given(NeckPlan.TABLE.write(plan, Spelling.JSON, LengthStyle.MILLIMETRES));
        given.remove("printIn");
        String json = Json.of(given);
        try {
            byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new AssertionError(everyPlatformHasIt);
        }
    }

    /**
     * {@return the plan's mark, which page and templates have on them, so that paper can be matched with paper; the
     * first eight digits of its {@link #hash}}
     */
    public String mark() {
        return hash().substring(0, MARK_DIGITS);
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
                    figure(fret.fromLast().house()),
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
                .note("fretCsv() and stationCsv() for its tables")
                .toString();
    }
}
