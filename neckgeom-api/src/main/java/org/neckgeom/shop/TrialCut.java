package org.neckgeom.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Estimate;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A trial cut ({@index "test cut"}): the near wall and the far wall measured on a test piece after one pass along the fence.
 * Immutable.
 *
 * <p>The near wall is the wood between slot and fence; the far wall is on the other side. Both are more than 0. Slot width
 * and piece width are optional: with them {@code Closure} checks the readings against each other. Each length may be read up
 * to 100 times. Default repeatability of one reading: {@link BenchUncertainty#USUAL_REPEATABILITY_MM} mm (common practice);
 * several readings of one wall use their own standard deviation (GUM 4.2, Type A).
 *
 * <p>Readings that no slip explains throw {@code IllegalArgumentException}: a wall longer than the piece, a slot wider than
 * the piece, or walls and slot that differ from the piece by more than {@link #LARGEST_MISCLOSURE} of its width.
 *
 * <pre>{@code
 * println(TrialCut.walls(mm(29.84), mm(31.26)).slot(mm(6.01)).piece(mm(67.11)).repeatability(mm(0.02)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Trial cut
 *   near wall  29.840 mm, u 0.020 mm
 *   far wall   31.260 mm, u 0.020 mm
 *   slot       6.010 mm, u 0.020 mm
 *   piece      67.110 mm, u 0.020 mm
 * }</pre>
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class TrialCut extends LeanAnswer {

    /** Its keys. */
    public static final Table<TrialCut> TABLE = Table.of(
                    "", "the readings of one trial cut", TrialCut::from, TrialCut::values)
            .printedBy(TrialCut::sentences);

    private static final int MOST_READINGS = 100;
    private static final Type<List<Amount<Length>>> READINGS = Types.oneOrMore(Types.SIZE, MOST_READINGS);

    private static final Key<TrialCut, List<Amount<Length>>> NEAR_WALL =
            TABLE.needed("near wall", READINGS, "wall on the fence side, one reading or several");
    private static final Key<TrialCut, List<Amount<Length>>> FAR_WALL =
            TABLE.needed("far wall", READINGS, "wall on the other side, one reading or several");
    private static final Key<TrialCut, List<Amount<Length>>> SLOT =
            TABLE.optional("slot", READINGS, "width of the slot, one reading or several. Checks the readings");
    private static final Key<TrialCut, List<Amount<Length>>> PIECE =
            TABLE.optional("piece", READINGS, "width of the test piece, one reading or several");
    private static final Key<TrialCut, Amount<Length>> RIPPED = TABLE.optional(
            "ripped with blank",
            Types.SIZE_OR_NOTHING,
            "standard deviation of rips at one setting, where the piece was ripped with the blank and not measured");
    private static final Key<TrialCut, Amount<Length>> REPEATABILITY =
            TABLE.optional("repeatability", Types.SIZE, "standard deviation of one reading. Default: the shop's");
    private static final Key<TrialCut, Double> CORRELATION = TABLE.usual(
            "wall correlation",
            Types.number(-1, 1),
            0.0,
            "correlation of the two wall readings, from a zero error common to both. Default: 0");

    static {
        TABLE.moved(Moves.none().and("fence wall", "near wall").and("reads within", "repeatability"));
    }

    /**
     * Resolution of a calliper, in mm: 0.01, common practice. Its rounding, {@code q/sqrt(12)}, is in a mean of readings that have
     * only their own scatter to go by (GUM F.2.2.1).
     */
    public static final double DEFAULT_RESOLUTION_MM = 0.01;

    /** By how much of the piece's width walls and slot may differ from it; a larger misclosure is another piece (common practice). */
    public static final double LARGEST_MISCLOSURE = 0.2;

    private static final int NEAR = 0;
    private static final int FAR = 1;
    private static final int SLOT_READ = 2;
    private static final int PIECE_READ = 3;
    private static final double[] READ_ONCE = {};
    private static final double[][] ALL_READ_ONCE = {READ_ONCE, READ_ONCE, READ_ONCE, READ_ONCE};
    private static final double NOT_READ = Double.NaN;
    private static final double NOT_GIVEN = Double.NaN;

    private final double nearMm;
    private final double farMm;
    private final double slotMm;
    private final double pieceMm;
    /** The readings of near wall, far wall, slot and piece; what was read once has its reading in its mean alone. */
    private final double[][] several;

    private final double repeatability;
    private final double correlation;
    private final double ripScatter;

    private TrialCut(
            double nearMm,
            double farMm,
            double slotMm,
            double pieceMm,
            double[][] several,
            double repeatability,
            double correlation,
            double ripScatter,
            LengthStyle style) {
        super(style);
        this.nearMm = nearMm;
        this.farMm = farMm;
        this.slotMm = slotMm;
        this.pieceMm = pieceMm;
        this.several = several;
        this.repeatability = repeatability;
        this.correlation = correlation;
        this.ripScatter = ripScatter;
    }

    private static TrialCut from(Values<TrialCut> values) {
        TrialCut cut = walls(values.at(NEAR_WALL), values.at(FAR_WALL)).wallsCorrelated(values.at(CORRELATION));
        cut = values.has(SLOT) ? cut.slot(values.at(SLOT)) : cut;
        cut = values.has(PIECE) ? cut.piece(values.at(PIECE)) : cut;
        cut = values.has(RIPPED) ? cut.rippedWithBlank(values.at(RIPPED)) : cut;
        return values.has(REPEATABILITY) ? cut.repeatability(values.at(REPEATABILITY)) : cut;
    }

    private Values<TrialCut> values() {
        Values<TrialCut> values =
                TABLE.values().with(NEAR_WALL, amounts(nearReadingsMm())).with(FAR_WALL, amounts(farReadingsMm()));
        values = slot().isPresent() ? values.with(SLOT, amounts(slotReadingsMm())) : values;
        values = piece().isPresent() ? values.with(PIECE, amounts(pieceReadingsMm())) : values;
        values = ripScatter().isPresent() ? values.with(RIPPED, ripScatter().get()) : values;
        values = repeatability().isPresent()
                ? values.with(REPEATABILITY, repeatability().get())
                : values;
        return correlation == 0 ? values : values.with(CORRELATION, correlation);
    }

    private List<Amount<Length>> amounts(double[] readings) {
        return Arrays.stream(readings).mapToObj(style()::amount).toList();
    }

    /**
     * {@return a trial cut with each wall read once}
     *
     * @param fenceSide the wall between slot and fence, more than 0; its unit is the one answers are given in
     * @param farSide the wall on the other side, more than 0
     */
    public static TrialCut walls(Quantity<Length> fenceSide, Quantity<Length> farSide) {
        double a = Types.SIZE.checked(fenceSide, "near wall").libraryValue();
        double b = Types.SIZE.checked(farSide, "far wall").libraryValue();
        return new TrialCut(a, b, NOT_READ, NOT_READ, ALL_READ_ONCE, NOT_GIVEN, 0, NOT_READ, LengthStyle.of(fenceSide));
    }

    /**
     * {@return a trial cut with each wall read several times}
     *
     * @param fenceSide one or more readings of the wall between slot and fence, each more than 0
     * @param farSide one or more readings of the wall on the other side, each more than 0
     */
    public static TrialCut walls(List<? extends Quantity<Length>> fenceSide, List<? extends Quantity<Length>> farSide) {
        double[] a = readings(fenceSide, "near wall");
        double[] b = readings(farSide, "far wall");
        double[][] all = {several(a), several(b), READ_ONCE, READ_ONCE};
        TrialCut cut = new TrialCut(
                mean(a), mean(b), NOT_READ, NOT_READ, all, NOT_GIVEN, 0, NOT_READ, LengthStyle.of(fenceSide.get(0)));
        // Readings too far apart to have a scatter are refused here, not when they are printed.
        cut.nearWall();
        cut.farWall();
        return cut;
    }

    /**
     * {@return this trial cut with the slot's width read as well}
     *
     * @param width more than 0, less than the piece
     * @throws IllegalArgumentException if it is impossible beside the other readings
     */
    public TrialCut slot(Quantity<Length> width) {
        return with(SLOT_READ, Types.SIZE.checked(width, "slot width").libraryValue(), READ_ONCE);
    }

    /**
     * {@return this trial cut with the slot's width read several times as well}
     *
     * @param widths one or more readings, each more than 0
     * @throws IllegalArgumentException if their mean is impossible beside the other readings
     */
    public TrialCut slot(List<? extends Quantity<Length>> widths) {
        double[] d = readings(widths, "slot width");
        TrialCut cut = with(SLOT_READ, mean(d), several(d));
        cut.slot(); // as of walls: refused here, not when it is printed
        return cut;
    }

    /**
     * {@return this trial cut with the test piece's width read as well}
     *
     * @param width more than either wall and the slot
     * @throws IllegalArgumentException if it is impossible beside the other readings
     */
    public TrialCut piece(Quantity<Length> width) {
        return with(PIECE_READ, Types.SIZE.checked(width, "piece width").libraryValue(), READ_ONCE);
    }

    /**
     * {@return this trial cut with the test piece's width read several times as well}
     *
     * @param widths one or more readings, each more than 0
     * @throws IllegalArgumentException if their mean is impossible beside the other readings
     */
    public TrialCut piece(List<? extends Quantity<Length>> widths) {
        double[] w = readings(widths, "piece width");
        TrialCut cut = with(PIECE_READ, mean(w), several(w));
        cut.piece();
        return cut;
    }

    private TrialCut with(int what, double mean, double[] all) {
        double[][] read = several.clone();
        read[what] = all;
        double slot = what == SLOT_READ ? mean : slotMm;
        double piece = what == PIECE_READ ? mean : pieceMm;
        return new TrialCut(nearMm, farMm, slot, piece, read, repeatability, correlation, ripScatter, style())
                .possible();
    }

    /** This cut, unless no slip of the eye or the pen explains its readings. */
    private TrialCut possible() {
        if (Double.isNaN(pieceMm)) {
            return this;
        }
        fitsThePiece("near wall", nearMm, "longer");
        fitsThePiece("far wall", farMm, "longer");
        fitsThePiece("slot", slotMm, "wider");
        boolean hasSlot = !Double.isNaN(slotMm);
        double sum = nearMm + farMm + (hasSlot ? slotMm : 0);
        double off = hasSlot ? Math.abs(sum - pieceMm) : sum - pieceMm;
        if (off > LARGEST_MISCLOSURE * pieceMm) {
            String walls =
                    "near wall " + exactly(nearMm) + (hasSlot ? ", far wall " : " and far wall ") + exactly(farMm);
            throw Refusal.because(
                    "test piece",
                    "contradiction",
                    walls + (hasSlot ? " and slot " + exactly(slotMm) : "") + " make " + exactly(sum)
                            + ", but the piece is " + exactly(pieceMm) + ". Read all of them again.");
        }
        return this;
    }

    private void fitsThePiece(String name, double mm, String longer) {
        if (mm > pieceMm) {
            throw Refusal.because(
                    name,
                    "at-most",
                    name + " " + exactly(mm) + " is " + longer + " than the piece, " + exactly(pieceMm)
                            + ". Read both again.");
        }
    }

    private String exactly(double mm) {
        return style().amount(mm).exactly();
    }

    /**
     * {@return this trial cut with a test piece that was ripped together with the blank at one setting of the saw,
     * neither of them measured: their widths differ by two rips' scatter}
     *
     * @param scatter of single rips at one setting, one standard deviation, 0 or more
     */
    public TrialCut rippedWithBlank(Quantity<Length> scatter) {
        double r = Types.SIZE_OR_NOTHING.checked(scatter, "rip scatter").libraryValue();
        return new TrialCut(nearMm, farMm, slotMm, pieceMm, several, repeatability, correlation, r, style());
    }

    /**
     * {@return the scatter of single rips, where the piece was ripped together with the blank; one standard deviation,
     * or nothing}
     */
    public Optional<Amount<Length>> ripScatter() {
        return Double.isNaN(ripScatter) ? Optional.empty() : Optional.of(style().amount(ripScatter));
    }

    /**
     * {@return this trial cut with the repeatability of the instrument: how far single readings of one and the same
     * wall scatter, as one standard deviation}
     *
     * @param standardDeviation of one reading, more than 0
     */
    public TrialCut repeatability(Quantity<Length> standardDeviation) {
        double u = Types.SIZE.checked(standardDeviation, "repeatability").libraryValue();
        return new TrialCut(nearMm, farMm, slotMm, pieceMm, several, u, correlation, ripScatter, style());
    }

    /**
     * {@return this trial cut with the repeatability of a bench, where it has none of its own}
     *
     * @param bench the uncertainties of the bench it was read at
     */
    public TrialCut readAt(BenchUncertainty bench) {
        double ofTheBench = Objects.requireNonNull(bench, "bench uncertainty").repeatabilityMm();
        return Double.isNaN(repeatability) ? repeatability(ShopUnit.MILLIMETRE.of(ofTheBench)) : this;
    }

    /**
     * {@return this trial cut with correlated wall readings: one calliper that reads both walls too large by the same
     * unknown amount correlates them}
     *
     * @param coefficient in [-1, 1]; 0 unless given
     */
    public TrialCut wallsCorrelated(double coefficient) {
        if (!(coefficient >= -1 && coefficient <= 1)) {
            throw Refusal.of("correlation of the walls", "range", "be between -1 and 1", Numbers.plain(coefficient));
        }
        return new TrialCut(
                nearMm, farMm, slotMm, pieceMm, several, repeatability, coefficient + 0.0, ripScatter, style());
    }

    /** {@return the wall on the fence side; the mean of its readings with its standard uncertainty} */
    public Estimate<Length> nearWall() {
        return estimate(nearMm, several[NEAR]);
    }

    /** {@return the wall on the far side; the mean of its readings with its standard uncertainty} */
    public Estimate<Length> farWall() {
        return estimate(farMm, several[FAR]);
    }

    /**
     * {@return the slot's width, if it was read; the mean of its readings with its standard uncertainty, or nothing}
     */
    public Optional<Estimate<Length>> slot() {
        return Double.isNaN(slotMm) ? Optional.empty() : Optional.of(estimate(slotMm, several[SLOT_READ]));
    }

    /**
     * {@return the test piece's width, if it was read; the mean of its readings with its standard uncertainty, or
     * nothing}
     */
    public Optional<Estimate<Length>> piece() {
        return Double.isNaN(pieceMm) ? Optional.empty() : Optional.of(estimate(pieceMm, several[PIECE_READ]));
    }

    /** {@return the readings of the wall on the fence side, in mm; at least one} */
    public double[] nearReadingsMm() {
        return readings(nearMm, several[NEAR]);
    }

    /** {@return the readings of the wall on the far side, in mm; at least one} */
    public double[] farReadingsMm() {
        return readings(farMm, several[FAR]);
    }

    /** {@return the readings of the slot's width, in mm; empty when it was not read} */
    public double[] slotReadingsMm() {
        return readings(slotMm, several[SLOT_READ]);
    }

    /** {@return the readings of the piece's width, in mm; empty when it was not read} */
    public double[] pieceReadingsMm() {
        return readings(pieceMm, several[PIECE_READ]);
    }

    private static double[] readings(double mean, double[] several) {
        return several.length == 0 && !Double.isNaN(mean) ? new double[] {mean} : several.clone();
    }

    /**
     * {@return the question whether the right piece was read, where its width is far from that of the blank: by more
     * than {@link #LARGEST_MISCLOSURE} of the blank's; a question with both figures; nothing where the widths are near, or
     * the piece's is not known} Without the piece's width, walls and slot together are asked about.
     *
     * @param blankWidth more than 0
     */
    public Optional<Statement> question(Quantity<Length> blankWidth) {
        double blank = LibraryUnits.mmPositive(blankWidth, "blank width");
        boolean isRead = !Double.isNaN(pieceMm);
        double width = isRead ? pieceMm : nearMm + slotMm + farMm;
        if (!(Math.abs(width - blank) > LARGEST_MISCLOSURE * blank)) {
            return Optional.empty();
        }
        String found = isRead ? "the piece was read as" : "walls and slot make a piece of";
        return Optional.of(Statement.of(
                        "another-piece",
                        found + " {piece:brief}, the blank is {blank:brief}: was the right piece read?",
                        style())
                .with("piece", Kind.MM, width)
                .with("blank", Kind.MM, blank));
    }

    /** {@return the correlation coefficient of the two wall readings; in [-1, 1]} */
    public double wallCorrelation() {
        return correlation;
    }

    private Estimate<Length> estimate(double mean, double[] several) {
        return several.length == 0 ? readOnce(mean) : readSeveralTimes(mean, several);
    }

    private Estimate<Length> readOnce(double mm) {
        return Estimate.ofLibrary(mm, single(), Double.POSITIVE_INFINITY, style().unit());
    }

    private Estimate<Length> readSeveralTimes(double mean, double[] readings) {
        if (Double.isNaN(repeatability)) {
            Estimate<Length> own = Estimate.repeated(
                    Arrays.stream(readings).mapToObj(ShopUnit.MILLIMETRE::of).toList());
            if (own.libraryUncertainty() > 0) {
                return withStep(own);
            }
        }
        // Readings that all agree show more of the instrument's steps than of its scatter.
        return Estimate.ofLibrary(
                mean, single() / Math.sqrt(readings.length), Double.POSITIVE_INFINITY, style().unit());
    }

    /** Readings rounded to the instrument's steps are uncertain by that rounding, however well they agree. */
    private Estimate<Length> withStep(Estimate<Length> own) {
        double u = own.libraryUncertainty();
        double step = DEFAULT_RESOLUTION_MM * DEFAULT_RESOLUTION_MM / 12;
        double all = Math.sqrt(u * u + step);
        double share = all / u;
        return Estimate.ofLibrary(
                own.libraryValue(), all, own.degreesOfFreedom() * share * share * share * share, style().unit());
    }

    private double single() {
        return Double.isNaN(repeatability) ? BenchUncertainty.USUAL_REPEATABILITY_MM : repeatability;
    }

    private static double mean(double[] readings) {
        double mean = readings[0];
        for (int i = 1; i < readings.length; i++) {
            mean += (readings[i] - mean) / (i + 1);
        }
        return mean;
    }

    private static double[] several(double[] readings) {
        return readings.length > 1 ? readings : READ_ONCE;
    }

    private static double[] readings(List<? extends Quantity<Length>> lengths, String name) {
        if (Objects.requireNonNull(lengths, name).isEmpty() || lengths.size() > MOST_READINGS) {
            throw Refusal.of(name, "range", "be read 1 to " + MOST_READINGS + " times", "was", lengths.size());
        }
        double[] mm = new double[lengths.size()];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = Types.SIZE.checked(lengths.get(i), name).libraryValue();
        }
        return mm;
    }

    @Override
    public Form<TrialCut> form() {
        return TABLE.form();
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {nearMm, farMm, slotMm, pieceMm, several, repeatability, correlation, ripScatter};
    }

    /**
     * {@return the repeatability of a single reading as it was given, if it was; one standard deviation, or nothing}
     */
    public Optional<Amount<Length>> repeatability() {
        return Double.isNaN(repeatability) ? Optional.empty() : Optional.of(style().amount(repeatability));
    }

    private static Form<TrialCut> sentences() {
        return TABLE.facts("trial-cut")
                .finds("trial-cut", "Trial cut")
                .row("atFence", "near wall", Kind.ESTIMATE, "wood left on the fence side", TrialCut::nearWall)
                .row("atFar", "far wall", Kind.ESTIMATE, "wood left on the far side", TrialCut::farWall)
                .factIfAny("slotWidth", Kind.ESTIMATE, "from its readings", TrialCut::slot)
                .line("slot", "slot", "{slotWidth}")
                .factIfAny("pieceWidth", Kind.ESTIMATE, "from its readings", TrialCut::piece)
                .line("piece", "piece", "{pieceWidth}")
                .line("ripScatter", "piece ripped", "with the blank, scatter {rippedWithBlank}")
                .line("wallCorrelation", "correlation", cut -> cut.correlation != 0, "{wallCorrelation:..3}");
    }
}
