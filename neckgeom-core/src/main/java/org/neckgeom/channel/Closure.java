package org.neckgeom.channel;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.numeric.StudentLaw;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The closure of a trial cut (sum check): do its readings agree? Its misclosure (misfit) is walls plus slot minus piece
 * width, such as {@code readings close: 0.3 thou short, limit 4.1}.
 *
 * <p>With walls a and b, slot d and piece W: {@code f = a + d + b - W}, which must be near 0. Its variance is that of
 * the readings, {@code sum u_i^2}, and of the zero errors: one zero error z is in all outside readings, of which the
 * piece enters with minus, and the inside jaws of the slot have a zero error of their own: {@code z^2 + z_i^2}. Where a
 * trial cut has a correlation rho, the outside zero error is in its uncertainties: {@code 2 rho (u_a u_b - u_a u_W -
 * u_b u_W)}. Degrees of freedom after Welch-Satterthwaite (JCGM 100, G.4).
 *
 * <p>If something was read several times and the instrument's repeatability is given, its readings must agree as well.
 * The two walls alone must leave room for a slot in the piece.
 *
 * <p>Honest readings of a whole session are warned of with a probability of at most 1 % and refused with at most 0.1 %,
 * two-sided: with m cuts each has a share of 1/m, see {@link #inSession}; where readings were repeated, closure and
 * agreement have half of it each.
 *
 * <p>Four single readings cannot identify the outlier: any one of them could be wrong. Repeated readings can, and so
 * can the sizes that slot and piece should have: {@link #cutBy}, {@link #slotShouldBe}, {@link #pieceShouldBe}.
 * Immutable.
 */
public final class Closure extends LeanAnswer {

    /** What the readings of a cut show of themselves. */
    public enum Outcome {
        /** Nothing speaks against the readings. */
        CLOSES("closes"),
        /** They may be right, but the neck is not cut on them alone. */
        WARNS("closes-with-a-warning"),
        /** A reading is wrong: the cut shows nothing until it is read again. */
        REFUSED("does-not-close");

        private final String code;

        Outcome(String code) {
            this.code = code;
        }

        /** {@return the outcome's code; lower case with hyphens} */
        public String code() {
            return code;
        }
    }

    /** Probability that honest readings of a session are warned of, two-sided; common practice. */
    static final double WARNED = 0.01;

    /** Probability that honest readings of a session are refused, two-sided; common practice. */
    static final double REFUSED = 0.001;

    /** What a width should be clears or blames a reading from this many standard uncertainties of their difference on. */
    private static final double SHOWN_FROM = 3.3;

    /** A slip explains a misfit if it leaves no more than this many standard uncertainties of it. */
    private static final double EXPLAINED_WITHIN = 3;

    /** How far a cutter's slot may differ from its diameter, one standard deviation; common practice, from memory. */
    private static final double CUTTER_WITHIN_MM = 0.1;

    private final TrialCut trial;
    private final Expected expected;
    private final Zeros zeros;
    private final int cuts;
    private final double misfitMm;
    private final double uncertaintyMm;
    private final double degreesOfFreedom;
    private final boolean wallsExceedPiece;

    /** What slot and piece should be, in mm; an uncertainty of NaN where that is not known. */
    private record Expected(double slotMm, double slotWithinMm, double pieceMm, double pieceWithinMm) {

        static final Expected NOTHING = new Expected(0, Double.NaN, 0, Double.NaN);
    }

    /** The calliper behind the readings, in mm: its zero, its step, and whether the slot was read with the outside zero. */
    private record Zeros(double zeroMm, double stepMm, boolean isSlotAlike) {

        static final Zeros NONE = new Zeros(0, 0, false);

        double varianceOfStep() {
            return stepMm * stepMm / 12;
        }

        /** What the zeros add to the variance of the misfit where the outside one is not in the readings' own. */
        double variance(boolean isOutsideInReadings) {
            double square = zeroMm * zeroMm;
            if (isOutsideInReadings) {
                return isSlotAlike ? 0 : square;
            }
            return isSlotAlike ? 4 * square : 2 * square;
        }
    }

    private Closure(TrialCut trial, Expected expected, Zeros zeros, int cuts, LengthStyle style) {
        super(style);
        this.trial = trial;
        this.expected = expected;
        this.zeros = zeros;
        this.cuts = cuts;
        Estimate<Length> a = trial.nearWall();
        Estimate<Length> b = trial.farWall();
        if (isComplete()) {
            Estimate<Length> d = trial.slot().orElseThrow();
            Estimate<Length> w = trial.piece().orElseThrow();
            misfitMm = a.libraryValue() + d.libraryValue() + b.libraryValue() - w.libraryValue() + 0.0;
            double variance = variance(a, b, d, w);
            uncertaintyMm = Math.sqrt(variance);
            double doubt = doubt(a) + doubt(b) + doubt(d) + doubt(w);
            degreesOfFreedom = doubt > 0 ? variance * variance / doubt : Double.POSITIVE_INFINITY;
        } else {
            misfitMm = 0;
            uncertaintyMm = 0;
            degreesOfFreedom = Double.POSITIVE_INFINITY;
        }
        wallsExceedPiece = trial.piece()
                .filter(w -> !(a.libraryValue() + b.libraryValue() < w.libraryValue()))
                .isPresent();
    }

    private double variance(Estimate<Length> a, Estimate<Length> b, Estimate<Length> d, Estimate<Length> w) {
        double va = variance(a);
        double vb = variance(b);
        double vd = variance(d);
        double vw = variance(w);
        double ua = Math.sqrt(va);
        double ub = Math.sqrt(vb);
        double uw = Math.sqrt(vw);
        double shared = ua * ub - ua * uw - ub * uw;
        if (zeros.isSlotAlike) {
            shared += Math.sqrt(vd) * (ua + ub - uw);
        }
        double rho = trial.wallCorrelation();
        return va + vb + vd + vw + 2 * rho * shared + zeros.variance(rho != 0);
    }

    private double variance(Estimate<Length> reading) {
        return reading.libraryUncertainty() * reading.libraryUncertainty() + zeros.varianceOfStep();
    }

    private double doubt(Estimate<Length> reading) {
        double variance = variance(reading);
        return variance * variance / reading.degreesOfFreedom();
    }

    /**
     * {@return the check of a trial cut's readings}
     *
     * @param trial the readings
     */
    public static Closure of(TrialCut trial) {
        return of(Objects.requireNonNull(trial, "trial"), trial.style());
    }

    static Closure of(TrialCut trial, LengthStyle style) {
        return new Closure(trial, Expected.NOTHING, Zeros.NONE, 1, style);
    }

    /**
     * {@return the check with the bench's calliper: its zero, the same in all outside readings, as uncertain a one of
     * its inside jaws, and its resolution} Unless given, readings have no such zeros.
     *
     * @param bench its uncertainties
     */
    public Closure bench(BenchUncertainty bench) {
        Objects.requireNonNull(bench, "bench uncertainty");
        Zeros own = new Zeros(bench.calliperZeroMm(), bench.resolutionMm(), zeros.isSlotAlike);
        return new Closure(trial, expected, own, cuts, style());
    }

    /**
     * {@return the check with a slot that was read with the same zero as walls and piece, as with an electronic
     * calliper that was set to zero once; unless given, its inside jaws have a zero of their own}
     */
    public Closure slotBySameZero() {
        return new Closure(trial, expected, new Zeros(zeros.zeroMm, zeros.stepMm, true), cuts, style());
    }

    /**
     * {@return the check as one of a session: the more cuts are checked, the rarer may each fail by chance}
     *
     * @param checkedCuts m, 1 or more; 1 unless given
     */
    public Closure inSession(int checkedCuts) {
        if (!(checkedCuts >= 1)) {
            throw Refusal.of("cuts of a session", "at-least", "be 1 or more", "were", checkedCuts);
        }
        return new Closure(trial, expected, zeros, checkedCuts, style());
    }

    /**
     * {@return the check with what the slot's width should be}
     *
     * @param width expected, more than 0
     * @param within its standard uncertainty, more than 0
     * @throws IllegalArgumentException if a length is out of its range
     */
    public Closure slotShouldBe(Quantity<Length> width, Quantity<Length> within) {
        return slotShouldBe(
                LibraryUnits.mmPositive(width, "expected slot width"),
                LibraryUnits.mmPositive(within, "expected slot width's uncertainty"));
    }

    /**
     * {@return the check with the cutter that made the slot: its diameter and runout, with a half-width of 0.1 mm}
     *
     * @param cutter that made the slot
     */
    public Closure cutBy(Cutter cutter) {
        return slotShouldBe(Objects.requireNonNull(cutter, "cutter").slotWidthMm(), CUTTER_WITHIN_MM);
    }

    private Closure slotShouldBe(double mm, double withinMm) {
        Expected both = new Expected(mm, withinMm, expected.pieceMm, expected.pieceWithinMm);
        return new Closure(trial, both, zeros, cuts, style());
    }

    /**
     * {@return the check with what the piece's width should be}
     *
     * @param width expected, more than 0
     * @param within its standard uncertainty, more than 0
     * @throws IllegalArgumentException if a length is out of its range
     */
    public Closure pieceShouldBe(Quantity<Length> width, Quantity<Length> within) {
        Expected both = new Expected(
                expected.slotMm,
                expected.slotWithinMm,
                LibraryUnits.mmPositive(width, "expected piece width"),
                LibraryUnits.mmPositive(within, "expected piece width's uncertainty"));
        return new Closure(trial, both, zeros, cuts, style());
    }

    /** {@return whether slot and piece were read as well, so that the readings can close or not} */
    public boolean isComplete() {
        return trial.slot().isPresent() && trial.piece().isPresent();
    }

    /**
     * Whether anything was read that honest readings could fail by chance: such cuts share a session's probabilities.
     */
    boolean isChecked() {
        return isComplete() || comparedReadings() > 0;
    }

    /** {@return whether the widths close, if all four were read, and what was read several times agrees} */
    public Outcome outcome() {
        if (wallsExceedPiece || isRarer(REFUSED)) {
            return Outcome.REFUSED;
        }
        return isRarer(WARNED) ? Outcome.WARNS : Outcome.CLOSES;
    }

    private boolean isRarer(double chance) {
        return isMisfitRarer(chance) || disagreeing(chance).isPresent();
    }

    private boolean isMisfitRarer(double chance) {
        return isComplete() && Math.abs(misfitMm) > limitMm(chance);
    }

    /** How large a misclosure is rarer than a probability that the session's checks share. */
    private double limitMm(double chance) {
        return isComplete()
                ? factor(chance / cuts / (comparedReadings() > 0 ? 2 : 1), degreesOfFreedom) * uncertaintyMm
                : 0;
    }

    /** How many standard uncertainties are exceeded, either way, with a probability. */
    static double factor(double chance, double degreesOfFreedom) {
        return -StudentLaw.quantile(chance / 2, degreesOfFreedom);
    }

    /** {@return whether the readings count; false when they are refused, true when they are warned of} */
    public boolean closes() {
        return outcome() != Outcome.REFUSED;
    }

    /** {@return whether the readings count, but not enough to cut a neck on them; false when refused} */
    public boolean warns() {
        return outcome() == Outcome.WARNS;
    }

    /** {@return by how much walls and slot exceed the piece, negative when short; 0 when not all were read} */
    public Amount<Length> misfit() {
        return style().amount(misfitMm);
    }

    /** {@return by how much walls and slot exceed the piece in mm, negative when short; 0 when not all were read} */
    public double misfitMm() {
        return misfitMm;
    }

    /** {@return the standard uncertainty of the misfit, in mm; mm; 0 when not all were read} */
    public double uncertaintyMm() {
        return uncertaintyMm;
    }

    /** {@return how large the misfit may be without a warning; more than 0; 0 when not all were read} */
    public Amount<Length> allowed() {
        return style().amount(allowedMm());
    }

    /** {@return how large the misfit may be without a warning, in mm; more than 0; 0 when not all were read} */
    public double allowedMm() {
        return limitMm(WARNED);
    }

    /** {@return the misfit in mm above which the readings are refused; 0 when not all were read} */
    public double refusedAboveMm() {
        return limitMm(REFUSED);
    }

    /** {@return the readings that may be wrong; most likely first; empty unless the readings are refused} */
    public List<TrialReading> suspects() {
        if (closes()) {
            return List.of();
        }
        if (isComplete()) {
            return blame().suspects();
        }
        return disagreeing(REFUSED)
                .map(List::of)
                .orElse(List.of(TrialReading.NEAR_WALL, TrialReading.FAR_WALL, TrialReading.PIECE));
    }

    private Blame blame() {
        double single = Math.sqrt(varianceOfOneReading());
        Blame blame = Blame.of(readings(TrialReading.NEAR_WALL), readings(TrialReading.FAR_WALL), single)
                .slot(readings(TrialReading.SLOT))
                .piece(readings(TrialReading.PIECE))
                .zeros(zeros.variance(false));
        if (isShownBy(expected.slotWithinMm)) {
            blame.shouldBe(TrialReading.SLOT, expected.slotMm, expected.slotWithinMm);
        }
        if (isShownBy(expected.pieceWithinMm)) {
            blame.shouldBe(TrialReading.PIECE, expected.pieceMm, expected.pieceWithinMm);
        }
        return blame;
    }

    /**
     * Whether the misclosure is so large that a width known elsewhere with this standard uncertainty clears or marks a
     * reading.
     */
    private boolean isShownBy(double withinMm) {
        return Math.abs(misfitMm) > SHOWN_FROM * StrictMath.hypot(uncertaintyMm, withinMm);
    }

    private double varianceOfOneReading() {
        double u = trial.repeatability().map(Amount::libraryValue).orElse(BenchUncertainty.USUAL_REPEATABILITY_MM);
        return u * u + zeros.varianceOfStep();
    }

    /** How many readings are compared with others of the same width; of two, one is as far from their mean as the other. */
    private int comparedReadings() {
        if (trial.repeatability().isEmpty()) {
            return 0;
        }
        int compared = 0;
        for (TrialReading reading : TrialReading.values()) {
            int n = readings(reading).length;
            compared += n > 2 ? n : Math.max(0, n - 1);
        }
        return compared;
    }

    /** What was read several times with readings that disagree, where the instrument's repeatability shows that they do. */
    private Optional<TrialReading> disagreeing(double chance) {
        int compared = comparedReadings();
        if (compared == 0) {
            return Optional.empty();
        }
        double share = chance / cuts / compared / (isComplete() ? 2 : 1);
        double limit = factor(share, Double.POSITIVE_INFINITY) * Math.sqrt(varianceOfOneReading());
        return Arrays.stream(TrialReading.values())
                .filter(reading -> isScattered(readings(reading), limit))
                .findFirst();
    }

    private static boolean isScattered(double[] readings, double limit) {
        if (readings.length < 2) {
            return false;
        }
        double mean = Arrays.stream(readings).average().orElseThrow();
        double share = Math.sqrt((readings.length - 1.0) / readings.length);
        return Arrays.stream(readings).anyMatch(reading -> Math.abs(reading - mean) > limit * share);
    }

    /** Why no move is advised. */
    String objection(LengthStyle shown) {
        return Sentences.OBJECTION.text(this, shown);
    }

    private Optional<Estimate<Length>> estimate() {
        return isComplete()
                ? Optional.of(Estimate.ofLibrary(misfitMm, uncertaintyMm, degreesOfFreedom, style().unit()))
                : Optional.empty();
    }

    /** How many readings may be the one that does not close; 0 where they close. */
    private int suspectsOfMisfit() {
        return isMisfitRarer(REFUSED) ? suspects().size() : 0;
    }

    /** Decimal inches print what is nearly 0 in thou, and 0 in inches. */
    private boolean isExact(LengthStyle shown) {
        return misfitMm == 0 || shown != LengthStyle.DECIMAL_INCHES && shown.isNothing(misfitMm, 0);
    }

    private boolean areWallsReadOnce() {
        return trial.nearReadingsMm().length == 1 && trial.farReadingsMm().length == 1;
    }

    /** How well readings that were taken once are assumed to repeat, where their repeatability was not given. */
    private Optional<Double> assumedMm() {
        boolean anyOnce = Arrays.stream(TrialReading.values()).anyMatch(reading -> readings(reading).length == 1);
        return trial.repeatability().isEmpty() && anyOnce
                ? Optional.of(BenchUncertainty.USUAL_REPEATABILITY_MM)
                : Optional.empty();
    }

    /** A slip of the eye or the pen: two digits swapped, or a division of the scale misread. */
    private record Slip(
            TrialReading reading,
            @Nullable String written,
            @Nullable String instead,
            @Nullable Amount<Length> division) {}

    /** What slip would explain a reading that alone is under suspicion. */
    private Optional<Slip> slip() {
        if (suspectsOfMisfit() != 1) {
            return Optional.empty();
        }
        TrialReading named = suspects().get(0);
        double[] readings = readings(named);
        int odd = readings.length == 1 ? 0 : blame().oddReading(named);
        if (odd < 0) {
            return Optional.empty();
        }
        double value = readings[odd];
        double error = named == TrialReading.PIECE ? -misfitMm : misfitMm;
        if (readings.length > 1) {
            error = value - (Arrays.stream(readings).sum() - value) / (readings.length - 1);
        }
        // Slips are made in the unit that was read.
        ShopUnit<Length> unit = trial.style().unit();
        double wrongBy = unit.fromLibrary(error);
        double within = unit.fromLibrary(EXPLAINED_WITHIN * uncertaintyMm);
        String written = Numbers.fixed(unit.fromLibrary(value), mostDecimals(unit));
        Optional<Slip> swapped =
                Slips.swapped(written, wrongBy, within).map(other -> new Slip(named, written, other, null));
        // Never both: what explains so much explains nothing.
        return swapped.or(() -> Slips.division(wrongBy, within, trial.style() != LengthStyle.MILLIMETRES)
                .map(division -> new Slip(named, null, null, Amount.of(division, unit))));
    }

    private int mostDecimals(ShopUnit<Length> unit) {
        return Arrays.stream(TrialReading.values())
                .flatMapToDouble(reading -> Arrays.stream(readings(reading)))
                .mapToInt(mm -> Slips.decimals(unit.fromLibrary(mm)))
                .max()
                .orElseThrow();
    }

    private double[] readings(TrialReading reading) {
        return switch (reading) {
            case NEAR_WALL -> trial.nearReadingsMm();
            case FAR_WALL -> trial.farReadingsMm();
            case SLOT -> trial.slotReadingsMm();
            case PIECE -> trial.pieceReadingsMm();
        };
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        private static final Form<Slip> SLIP = Form.<Slip>of("slip")
                .fact("reading", Kind.code(TrialReading.class), "which of them", Slip::reading)
                .factIfAny("written", Kind.NAME, "as it was", s -> Optional.ofNullable(s.written))
                .factIfAny("instead", Kind.NAME, "as it should have been", s -> Optional.ofNullable(s.instead))
                .factIfAny("division", Kind.AMOUNT, "of the scale that was read", s -> Optional.ofNullable(s.division))
                .finds("digits-swapped", "the {reading} written as {written} instead of {instead} would explain it")
                .finds(
                        "division-misread",
                        "a whole division of the {reading} misread, {division:given}, would explain it");

        /** What the readings show of themselves, without what was assumed of them. */
        static final Form<Closure> CHECK = facts("closure")
                .finds("do-not-close", c -> c.isMisfitRarer(REFUSED), "{wrong}")
                .finds("disagree", c -> c.disagreeing(REFUSED).isPresent(), "{wrong}; read {again}")
                .finds("no-room", c -> !c.closes(), "{wrong}; read {again}")
                .finds(
                        "hardly-close",
                        c -> c.isMisfitRarer(WARNED),
                        "{warning}; read it again, or close a further cut, before the neck is cut")
                .finds(
                        "hardly-agree",
                        Closure::warns,
                        "{warning}; read it again, or close a further cut, before the neck is cut")
                .finds("not-checked", c -> !c.isComplete(), "not checked: read the slot and the piece as well")
                .finds("close-exactly", Closure::isExact, "readings agree exactly; limit {misfitLimit:text}")
                .finds("close", "readings close: {misfitWords}")
                .note(
                        "suspect",
                        c -> c.suspectsOfMisfit() == 1,
                        "suspect the {suspects}: without it everything else agrees")
                .note("slip", "{slip}")
                .note(
                        "suspects",
                        c -> c.suspectsOfMisfit() == 4,
                        "any of the four may be wrong; read each again, or give the sizes that slot and piece should have")
                .note(
                        "suspects",
                        c -> c.suspectsOfMisfit() > 1 && c.suspectsOfMisfit() < 4,
                        "possibly wrong: {suspects:or}; read each again, or give the sizes that slot and piece should have")
                .note("no-move", c -> c.isMisfitRarer(REFUSED), "no move is advised on these readings");

        static final Form<Closure> FORM = assuming(CHECK, closure -> closure, Closure::isComplete);

        /** Why no move is advised, in one line. */
        static final Form<Closure> OBJECTION = facts("closure-objection").finds("objection", "{wrong}; read {again}");

        /** What refuses readings or warns of them, in one line. */
        static final Form<Closure> REASON = facts("closure-reason")
                .finds("warning", Closure::warns, "{warning}")
                .finds("refusal", "{wrong}");

        private static Form<Closure> facts(String name) {
            return Form.<Closure>of(name)
                    .factIfAny("misfit", Kind.ESTIMATE, "walls and slot less the piece", Closure::estimate)
                    .factIfAny(
                            "misfitLimit",
                            Kind.MM,
                            "without a warning",
                            c -> c.estimate().map(e -> c.allowedMm()))
                    .factIfAny(
                            "disagreeing",
                            Kind.code(TrialReading.class),
                            "of the repeated readings, the first that disagree",
                            c -> c.disagreeing(REFUSED).or(() -> c.disagreeing(WARNED)))
                    .fact(
                            "suspects",
                            Kind.list(Kind.code(TrialReading.class)),
                            "most likely first; none unless the readings are refused",
                            Closure::suspects)
                    .factIfAny("slip", Kind.answer(SLIP), "that explains the misfit", Closure::slip)
                    .phrase("way", c -> c.misfitMm < 0, "short")
                    .phrase("way", "too long")
                    .phrase("misfitWords", "{misfit:size text} {way}, limit {misfitLimit:size text after misfit}")
                    .phrase("wrong", c -> c.isMisfitRarer(REFUSED), "readings do not close: {misfitWords}")
                    .phrase(
                            "wrong",
                            c -> c.disagreeing(REFUSED).isPresent(),
                            "readings of the {disagreeing} disagree by more than their repeatability allows")
                    .phrase("wrong", "the walls together leave no room for a slot in the piece")
                    .phrase("again", c -> c.suspects().size() == 4, "all four again")
                    .phrase("again", "again: {suspects:and}")
                    .phrase("warning", c -> c.isMisfitRarer(WARNED), "readings hardly close: {misfitWords}")
                    .phrase("warning", "readings of the {disagreeing} hardly agree");
        }

        /** Adds how well readings that were taken once are assumed to repeat. */
        static <T> Form<T> assuming(Form<T> form, Function<T, Closure> check, Predicate<T> when) {
            return form.factIfAny(
                            "assumedRepeatability",
                            Kind.MM,
                            "of readings taken once, where none was given; common practice",
                            x -> check.apply(x).assumedMm())
                    .phrase("readings", x -> check.apply(x).areWallsReadOnce(), "readings")
                    .phrase("readings", "single readings")
                    .note(
                            "assumed-repeatability",
                            when,
                            "assumes: repeatability of {readings} {assumedRepeatability:2|1 fine} (common practice)");
        }
    }

    @Override
    public Form<Closure> form() {
        return Sentences.FORM;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {trial, expected, zeros, cuts};
    }
}
