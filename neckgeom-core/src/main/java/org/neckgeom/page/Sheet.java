package org.neckgeom.page;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.neckgeom.board.Fret;
import org.neckgeom.board.FretTable;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Settled;
import org.neckgeom.fault.Refusal;
import org.neckgeom.kernel.Once;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Plan;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.NeckStations;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.text.Words;
import org.neckgeom.units.ShopUnit;

/**
 * A {@index "cut sheet"} ({@index printout}): the whole plan of a neck as plain text for a terminal or as one HTML page with
 * drawings, and its fret positions and stations as comma-separated values.
 *
 * <p>Text and page begin with the verdict and the next steps; then the cautions; then the settings in order of work;
 * then drawings and tables. Lengths are printed in the plan's style. Stations are from the nut, positive toward the
 * body. Every method returns text; nothing is written to a file. Immutable.
 *
 * @see Document
 * @see org.neckgeom.template.Template
 */
public final class Sheet {

    private final Job job;
    private final Supplier<Contents> contents;

    private Sheet(Job job) {
        this.job = job;
        this.contents = new Once<>(() -> Contents.of(job));
    }

    /**
     * {@return the sheet of a job's plan}
     *
     * @param job the job
     */
    public static Sheet of(Job job) {
        return new Sheet(Objects.requireNonNull(job, "job"));
    }

    /**
     * {@return the whole plan as plain text, without drawings: lines of at most 80 characters, parted by line feeds;
     * ending in a line feed}
     */
    public String toText() {
        return PlainText.of(contents.get());
    }

    /**
     * {@return the first screen: name, verdict, the step at hand with its settings, what is open and what is spare; at most 22
     * lines of 80 characters, each ending in a line feed}
     */
    public String toFirstScreen() {
        return FirstScreen.of(job);
    }

    /**
     * {@return the step at hand as plain text: what to set, what to read with its usual range, cautions with their reasons and
     * sources; ending in a line feed}
     */
    public String toStep() {
        return FirstScreen.step(job);
    }

    /** {@return what to set for the step at hand, as plain text; ending in a line feed} */
    public String toSettings() {
        return FirstScreen.settings(job);
    }

    /**
     * {@return a drawing for the step at hand, as one SVG element for a page that has {@link #style()}: the machine as it is set,
     * seen from above, the lines of a scarf, or the face of a heel; empty for other steps} Not to be measured on.
     */
    public String toSetUp() {
        return SetUpDrawing.of(job)
                .or(() -> BenchSession.of(job).operation().flatMap(this::figure).map(Figure::svg))
                .orElse("");
    }

    private Optional<Figure> figure(Operation operation) {
        return switch (operation.name()) {
            case Operation.CUT_SCARF -> Figures.scarf(contents.get());
            case Operation.CUT_HEEL_JOINT, Operation.FIT_HEEL_TO_BODY -> Figures.heelFace(contents.get());
            default -> Optional.empty();
        };
    }

    /** {@return the style sheet (CSS) of pages and drawings: light and dark as the device asks} */
    public static String style() {
        return Style.sheet();
    }

    /**
     * {@return a card of one operation as plain text, 80 columns wide: settings to tick, boxes for the readings, cautions, the way
     * back; ending in a line feed}
     *
     * @param operation its name or its code, such as {@code cut rod channel}
     * @throws IllegalArgumentException if the neck has no such operation
     */
    public String toCard(String operation) {
        return CardText.of(BenchCard.of(job, operation));
    }

    /**
     * {@return one part of {@link #toText}; ending in a line feed}
     *
     * @param name its code or its title, such as {@code channel}, {@code Truss rod channel}, {@code checks}, {@code cautions}
     * @throws IllegalArgumentException if the plan has no such part
     */
    public String toSection(String name) {
        Objects.requireNonNull(name, "name");
        return PlainText.part(contents.get(), name)
                .orElseThrow(() -> Refusal.of(
                        "section",
                        "unknown",
                        "be one of " + String.join(", ", PlainText.parts(contents.get())),
                        Words.quoted(name)));
    }

    /**
     * {@return the whole plan as one page: HTML that is well-formed XML too, complete in itself, without script; the
     * page in UTF-8, ending in a line feed} It reads on a phone 360 pixels wide and prints on A4 and Letter; it is
     * light or dark as the device asks.
     *
     * <p>Lengths in drawings and tables are rounded to 0.01 mm or 0.001 in; settings print as the plan has them.
     */
    public String toHtml() {
        return Page.of(contents.get());
    }

    /**
     * {@return the frets as comma-separated values (RFC 4180): a head with units, then a line a fret from the nut on;
     * lines parted by line feeds} Each has where it crosses the centreline, how far that lies from the fret before, its
     * length from edge to edge of the board, its slant in deg, positive when the treble end lies nearer the body, and
     * both ends: x from the nut, y across, positive toward the treble side. Figures to twelve digits, decimal point.
     */
    public String fretCsv() {
        String unit = " " + job.style().unit().symbol();
        StringBuilder csv = new StringBuilder(line(
                "fret",
                "from nut" + unit,
                "from last" + unit,
                "length" + unit,
                "slant deg",
                "bass x" + unit,
                "bass y" + unit,
                "treble x" + unit,
                "treble y" + unit));
        NeckShape shape = new NeckShape(job.neck(), Settled.nothing());
        for (Fret fret : FretTable.of(job.neck()).frets()) {
            Spot bass = shape.fretLine(fret.number()).get(0);
            Spot treble = shape.fretLine(fret.number()).get(1);
            double slant = StrictMath.atan2(treble.uMm() - bass.uMm(), treble.vMm() - bass.vMm());
            csv.append(line(
                    String.valueOf(fret.number()),
                    figure(fret.fromNutMm()),
                    figure(fret.fromLast().libraryValue()),
                    figure(bass.distanceMm(treble)),
                    Numbers.plain(ShopUnit.DEGREE.fromLibrary(slant)),
                    figure(bass.uMm()),
                    figure(bass.vMm()),
                    figure(treble.uMm()),
                    figure(treble.vMm())));
        }
        return csv.toString();
    }

    /**
     * {@return the stations of the neck as it is now, as {@link NeckStations#csv} writes them; at a station in the head the
     * wood is that deep or deeper}
     */
    public String stationCsv() {
        Plan plan = job.plan();
        return plan.solid().asMade(plan.floorThickness()).stations().csv(job.style());
    }

    private String figure(double mm) {
        return Numbers.plain(job.style().unit().fromLibrary(mm));
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
        return other instanceof Sheet that && job.equals(that.job);
    }

    @Override
    public int hashCode() {
        return job.hashCode();
    }

    /** Returns what the sheet is of, and how its checks stand. */
    @Override
    public String toString() {
        return Report.titled("Sheet: " + job.neck().name())
                .row("checks", job.plan().status().counts())
                .row("settings", contents.get().sections().size() + " sections")
                .note(
                        "toText() for a terminal, toHtml() for a page with drawings, fretCsv() and stationCsv() for tables")
                .toString();
    }
}
