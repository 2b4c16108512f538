package org.neckgeom.shop;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/**
 * The standard uncertainties of one bench: of a reading, of the calliper zero, of a cut and of a fence move. Immutable.
 *
 * <p>Two cuts at one setting do not lie in the same place: pressure, chips and clearances differ. That scatter is in every
 * trial cut, and once more in the cut of the neck. To know it, make ten cuts in scrap without touching the fence, and give
 * their standard deviation with their number: {@link #cutScatter(Quantity, int)}.
 *
 * <p>Defaults (common practice), each a standard uncertainty (one standard deviation, GUM 4.2): reading 0.05 mm, calliper
 * zero 0.01 mm, cut 0.02 mm (degrees of freedom of five cuts), fence move 0.02 mm.
 */
public final class BenchUncertainty extends Noun<BenchUncertainty> {

    /** Its keys. */
    public static final Table<BenchUncertainty> TABLE =
            Table.of("", "uncertainties of this bench", BenchUncertainty::new).printedBy(BenchUncertainty::sentences);

    /**
     * How well a calliper repeats on wood, one standard deviation in mm: 0.05, the wider end of common practice (0.03 to
     * 0.05). Used when nothing is given and a wall was read once.
     */
    public static final double USUAL_REPEATABILITY_MM = 0.05;

    /** Standard deviation of two cuts' places at one setting, in mm; common practice. */
    public static final double DEFAULT_CUT_SCATTER_MM = 0.02;

    /** How well a fence moved on feeler gauges against a block repeats, one standard deviation in mm; common practice. */
    public static final double DEFAULT_MOVE_SCATTER_MM = 0.02;

    /** Standard uncertainty of a calliper's zero, in mm; common practice. */
    public static final double DEFAULT_CALLIPER_ZERO_MM = 0.01;

    /** A guess is worth as much as a standard deviation found from five cuts. */
    private static final double GUESSED_DEGREES = 4;

    private static final int MOST_CUTS = 1000;

    private static final Key<BenchUncertainty, Amount<Length>> REPEATABILITY = TABLE.usual(
                    "repeatability",
                    Types.SIZE,
                    ShopUnits.mm(USUAL_REPEATABILITY_MM),
                    "standard deviation of one calliper reading. Default: 0.05 mm")
            .called("repeatability");
    private static final Key<BenchUncertainty, Amount<Length>> RESOLUTION = TABLE.usual(
            "resolution",
            Types.SIZE_OR_NOTHING,
            ShopUnits.mm(0),
            "smallest step that the calliper shows. Default: contained in the repeatability");
    private static final Key<BenchUncertainty, Amount<Length>> CALLIPER_ZERO = TABLE.usual(
            "calliper zero",
            Types.SIZE_OR_NOTHING,
            ShopUnits.mm(DEFAULT_CALLIPER_ZERO_MM),
            "standard uncertainty of the calliper's zero. Default: 0.01 mm");
    private static final Key<BenchUncertainty, Amount<Length>> BLANK_ZERO = TABLE.optional(
                    "blank calliper zero",
                    Types.SIZE_OR_NOTHING,
                    "standard uncertainty of the zero of another calliper that measured the blank. Default: the same calliper")
            .called("blank calliper's zero");
    private static final Key<BenchUncertainty, Amount<Length>> CUT_SCATTER = TABLE.optional(
            "cut scatter",
            Types.SIZE_OR_NOTHING,
            "standard deviation of the place of cuts at one setting. Default: 0.02 mm");
    private static final Key<BenchUncertainty, Integer> SCATTER_FROM = TABLE.optional(
                    "cut scatter from",
                    Types.whole(2, MOST_CUTS),
                    "number of cuts behind the cut scatter. Default: well known")
            .called("cuts behind the cut scatter");
    private static final Key<BenchUncertainty, Amount<Length>> MOVE_SCATTER = TABLE.usual(
            "move scatter",
            Types.SIZE_OR_NOTHING,
            ShopUnits.mm(DEFAULT_MOVE_SCATTER_MM),
            "standard deviation of a fence move, feeler gauges not included. Default: 0.02 mm");

    static {
        TABLE.moved(Moves.none().and("reads within", "repeatability"));
    }

    private static final BenchUncertainty DEFAULTS = new BenchUncertainty(TABLE.values());

    private BenchUncertainty(Values<BenchUncertainty> values) {
        super(values);
        if (values.has(SCATTER_FROM) && !values.has(CUT_SCATTER)) {
            throw Refusal.because(
                    SCATTER_FROM.name(),
                    "together",
                    "cut scatter from is given, but not the cut scatter; give both, or leave it out");
        }
    }

    /** {@return the uncertainties of common practice} */
    public static BenchUncertainty withDefaults() {
        return DEFAULTS;
    }

    /** The same, printed in the style of the shop they belong to. */
    BenchUncertainty printedIn(LengthStyle style) {
        return new BenchUncertainty(values().printedIn(style));
    }

    /**
     * {@return these with another repeatability of a reading, printed in its unit}
     *
     * @param standardDeviation of one reading of a wall or a width, more than 0
     */
    public BenchUncertainty repeatability(Quantity<Length> standardDeviation) {
        return new BenchUncertainty(values().amount(REPEATABILITY, standardDeviation));
    }

    /**
     * {@return these with the resolution of the instrument} Its rounding, {@code q/sqrt(12)}, is in every mean of
     * readings, however many they are (GUM F.2.2.1).
     *
     * @param smallestStep q, smallest step that the instrument shows, 0 or more; 0 when it is contained in the repeatability
     */
    public BenchUncertainty resolution(Quantity<Length> smallestStep) {
        return new BenchUncertainty(values().amount(RESOLUTION, smallestStep));
    }

    /**
     * {@return these with another uncertainty of the calliper's zero, common to all its readings} Inside jaws have a
     * zero of their own, as uncertain.
     *
     * @param standardUncertainty of the zero, 0 or more
     */
    public BenchUncertainty calliperZero(Quantity<Length> standardUncertainty) {
        return new BenchUncertainty(values().amount(CALLIPER_ZERO, standardUncertainty));
    }

    /**
     * {@return these with a blank that was read by another calliper than the trial pieces} One calliper's zero cancels
     * between piece and blank, however far off it is; two zeros do not.
     *
     * @param standardUncertainty of the other calliper's zero, 0 or more
     */
    public BenchUncertainty blankCalliperZero(Quantity<Length> standardUncertainty) {
        return new BenchUncertainty(values().amount(BLANK_ZERO, standardUncertainty));
    }

    /**
     * {@return these with a cut scatter that is well known}
     *
     * @param standardDeviation of the places of cuts at one setting, 0 or more
     */
    public BenchUncertainty cutScatter(Quantity<Length> standardDeviation) {
        return new BenchUncertainty(values().without(SCATTER_FROM).amount(CUT_SCATTER, standardDeviation));
    }

    /**
     * {@return these with a cut scatter found from a few cuts at one setting; the uncertainties; probabilities then use
     * Student's law with one degree of freedom less than cuts}
     *
     * @param standardDeviation of their places, 0 or more
     * @param cuts how many they were, 2 to 1000
     */
    public BenchUncertainty cutScatter(Quantity<Length> standardDeviation, int cuts) {
        return new BenchUncertainty(
                values().amount(CUT_SCATTER, standardDeviation).with(SCATTER_FROM, cuts));
    }

    /**
     * {@return these with another scatter of fence moves}
     *
     * @param standardDeviation of a move at the cutter, feeler gauges not counted, 0 or more
     */
    public BenchUncertainty moveScatter(Quantity<Length> standardDeviation) {
        return new BenchUncertainty(values().amount(MOVE_SCATTER, standardDeviation));
    }

    /** {@return the repeatability of one reading in mm; one standard deviation, more than 0} */
    public double repeatabilityMm() {
        return values().libraryValue(REPEATABILITY);
    }

    /** {@return the resolution of the instrument in mm; 0 where it is contained in the repeatability} */
    public double resolutionMm() {
        return values().libraryValue(RESOLUTION);
    }

    /** {@return the standard uncertainty of the calliper's zero in mm; 0 or more} */
    public double calliperZeroMm() {
        return values().libraryValue(CALLIPER_ZERO);
    }

    /**
     * {@return the standard uncertainty of the zero of the calliper that the blank was read by, in mm; 0 or more;
     * nothing where it is the calliper of the trial pieces}
     */
    public OptionalDouble blankCalliperZeroMm() {
        return values().has(BLANK_ZERO) ? OptionalDouble.of(values().libraryValue(BLANK_ZERO)) : OptionalDouble.empty();
    }

    /** {@return the scatter of cuts at one setting in mm; one standard deviation, 0 or more} */
    public double cutScatterMm() {
        return values().libraryValue(CUT_SCATTER, DEFAULT_CUT_SCATTER_MM);
    }

    /** {@return the degrees of freedom of the cut scatter; infinite where it is well known} */
    public double cutScatterDegreesOfFreedom() {
        return isCutScatterDefault()
                ? GUESSED_DEGREES
                : cutScatterCuts().map(cuts -> cuts - 1.0).orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * {@return how many cuts the cut scatter was found from, if it was; nothing where it is well known or a default}
     */
    public Optional<Integer> cutScatterCuts() {
        return values().find(SCATTER_FROM);
    }

    /** {@return whether the cut scatter is the default of common practice; false where it was given} */
    public boolean isCutScatterDefault() {
        return !values().has(CUT_SCATTER);
    }

    /**
     * {@return the scatter of a fence move at the cutter in mm, feeler gauges not counted; one standard deviation, 0 or
     * more}
     */
    public double moveScatterMm() {
        return values().libraryValue(MOVE_SCATTER);
    }

    private static Form<BenchUncertainty> sentences() {
        return TABLE.facts("bench-uncertainty")
                .finds("bench", "Bench, standard uncertainties")
                .line("repeatability", "reading", "{repeatability:small}")
                .line("resolution", "resolution", bench -> bench.resolutionMm() == 0, "contained in it")
                .line("resolution", "resolution", bench -> bench.resolutionMm() > 0, "{resolution:small} a step")
                .line("calliperZero", "calliper zero", "{calliperZero:small}")
                .line("blankCalliperZero", "of the blank's", "{blankCalliperZero:small}")
                .row("scatterOfCuts", "cut scatter", Kind.answer(scatter()), "at one setting", bench -> bench)
                .line("moveUncertainty", "fence move", "{moveScatter:small}");
    }

    /** The scatter of cuts and where it comes from, such as {@code 0.020 mm, common practice}. */
    static Form<BenchUncertainty> scatter() {
        return Form.<BenchUncertainty>of("cut-scatter")
                .fact(
                        "standardDeviation",
                        Kind.MM,
                        "of the places of cuts at one setting",
                        BenchUncertainty::cutScatterMm)
                .factIfAny("cuts", Kind.WHOLE, "how many it was found from", BenchUncertainty::cutScatterCuts)
                .finds(
                        "common-practice",
                        BenchUncertainty::isCutScatterDefault,
                        "{standardDeviation:small}, common practice: make ten cuts at one setting to know it")
                .finds("from-cuts", "{standardDeviation:small}, from {cuts} cuts")
                .finds("well-known", "{standardDeviation:small}");
    }
}
