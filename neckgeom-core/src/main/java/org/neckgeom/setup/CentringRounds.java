package org.neckgeom.setup;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.numeric.StudentLaw;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * Several rounds of trial cut and fence move, and what they say together of the offset now. Immutable: every step is a
 * new value.
 *
 * <p>The estimate is the weighted least-squares one from all readings, each carried through the moves since, found
 * one step at a time (scalar Kalman recursion). A move m takes m off the offset and adds its own variance; a reading z
 * pulls the estimate by {@code K = P/(P + u_z^2)} of its distance. Exact for normal errors. A reading whose uncertainty
 * rests on few degrees of freedom counts with u widened by Student's factor over the normal one, at 95 %.
 *
 * <p>A fence moved on leaves against a block is taken to come to rest within {@link #USUAL_MOVE_MM}, one standard
 * deviation, unless {@link #movesWithin} says otherwise.
 */
public final class CentringRounds implements SaysLengths<CentringRounds> {

    /** How well a fence moved on leaves against a stop repeats, one standard deviation; common practice, from memory. */
    public static final double USUAL_MOVE_MM = 0.02;

    private static final double USUAL_CHANCE = 0.95;
    private static final double COVERAGE = 0.95;
    private static final double SURPRISE = 3;

    private final ScalarFilter filter;
    /** NaN until told. */
    private final double toldMoveMm;

    private final double lastReadingMm;
    private final int readings;
    private final int moves;
    private final double surprise;
    private final LengthStyle style;

    private CentringRounds(
            ScalarFilter filter,
            double toldMoveMm,
            double lastReadingMm,
            int readings,
            int moves,
            double surprise,
            LengthStyle style) {
        this.filter = filter;
        this.toldMoveMm = toldMoveMm;
        this.lastReadingMm = lastReadingMm;
        this.readings = readings;
        this.moves = moves;
        this.surprise = surprise;
        this.style = style;
    }

    /**
     * Starts with the first trial cut.
     *
     * @param first its centring
     * @return the rounds so far
     * @throws ArithmeticException if its readings contradict each other
     */
    public static CentringRounds start(Centring first) {
        requireClosed(first);
        double u = uncertainty(first.offset());
        ScalarFilter filter = ScalarFilter.start(first.offset().amountMm(), u);
        return new CentringRounds(filter, Double.NaN, u, 1, 0, 0, first.offset().style());
    }

    /**
     * Returns the same rounds with a fence of its own repeatability, for the moves that follow.
     *
     * @param uncertainty of a move, one standard deviation, 0 or more
     * @return the rounds
     * @throws IllegalArgumentException if it is below 0
     */
    public CentringRounds movesWithin(Quantity<Length> uncertainty) {
        double u = HouseUnits.mmNotNegative(uncertainty, "move uncertainty");
        return new CentringRounds(filter, u, lastReadingMm, readings, moves, surprise, style);
    }

    /**
     * Returns the rounds after a move in the direction the estimate asks for; toward the cutter where it asks for none.
     *
     * @param size of the move, 0 or more
     * @return the rounds
     * @throws IllegalArgumentException if the size is below 0
     */
    public CentringRounds moved(Quantity<Length> size) {
        return moved(Math.copySign(HouseUnits.mmNotNegative(size, "move"), filter.mean()), 0);
    }

    /**
     * Returns the rounds after a move by a stack of leaves in the direction the estimate asks for; the stack's own
     * uncertainty counts as well.
     *
     * @param stack the leaves the fence was moved by
     * @return the rounds
     */
    public CentringRounds moved(LeafStack stack) {
        return moved(
                Math.copySign(Objects.requireNonNull(stack, "stack").heightMm(), filter.mean()), stack.uncertaintyMm());
    }

    /**
     * Returns the rounds after the fence went toward the cutter.
     *
     * @param size of the move, 0 or more
     * @return the rounds
     * @throws IllegalArgumentException if the size is below 0
     */
    public CentringRounds movedTowardTheCutter(Quantity<Length> size) {
        return moved(HouseUnits.mmNotNegative(size, "move"), 0);
    }

    /**
     * Returns the rounds after the fence went away from the cutter.
     *
     * @param size of the move, 0 or more
     * @return the rounds
     * @throws IllegalArgumentException if the size is below 0
     */
    public CentringRounds movedAwayFromTheCutter(Quantity<Length> size) {
        return moved(-HouseUnits.mmNotNegative(size, "move"), 0);
    }

    private double moveMm() {
        return Double.isNaN(toldMoveMm) ? USUAL_MOVE_MM : toldMoveMm;
    }

    private CentringRounds moved(double mm, double stackMm) {
        ScalarFilter after = filter.moved(mm, StrictMath.hypot(moveMm(), stackMm));
        return new CentringRounds(after, toldMoveMm, lastReadingMm, readings, moves + 1, surprise, style);
    }

    /**
     * Returns the rounds with one more trial cut.
     *
     * @param next its centring
     * @return the rounds
     * @throws ArithmeticException if its readings contradict each other
     */
    public CentringRounds then(Centring next) {
        requireClosed(next);
        double u = uncertainty(next.offset());
        double z = next.offset().amountMm();
        double worst = Math.max(surprise, filter.surprise(z, u));
        return new CentringRounds(filter.read(z, u), toldMoveMm, u, readings + 1, moves, worst, style);
    }

    private static void requireClosed(Centring centring) {
        if (!Objects.requireNonNull(centring, "centring").closure().closes()) {
            throw NoAnswer.because(
                    "rounds",
                    "contradiction",
                    "this trial cut says nothing of the fence: "
                            + centring.closure().objection());
        }
    }

    private static double uncertainty(Offset offset) {
        double widen = StudentLaw.coverageFactor(COVERAGE, offset.degreesOfFreedom())
                / StudentLaw.coverageFactor(COVERAGE, Double.POSITIVE_INFINITY);
        return offset.uncertaintyMm() * widen;
    }

    /**
     * Returns the offset as it is now, from all readings and moves.
     *
     * @return the estimate
     */
    public Offset estimate() {
        return Offset.ofMm(filter.mean(), filter.u(), style);
    }

    /**
     * Returns the move that the estimate asks for.
     *
     * @return the move
     */
    public FenceMove move() {
        return FenceMove.of(estimate());
    }

    /**
     * Returns whether the slot is within its limits, from all rounds together.
     *
     * @param limits for the offset
     * @return the verdict, with a guard band of twice the standard uncertainty
     */
    public Verdict<Length> verdict(Limits<Length> limits) {
        return Verdict.of(estimate().estimate(), limits);
    }

    /**
     * Returns the chance that the slot is within a limit now.
     *
     * @param limit either side of the middle, more than 0
     * @return the chance
     * @throws IllegalArgumentException if the limit is not more than 0
     */
    public Chance chanceWithin(Quantity<Length> limit) {
        double mm = limitMm(limit);
        return new Chance(within(mm, filter.mean(), filter.u()), mm, false, LengthStyle.of(limit));
    }

    /**
     * Returns the chance that the slot is within a limit after one more move by the estimate, without another reading.
     *
     * @param limit either side of the middle, more than 0
     * @return the chance
     * @throws IllegalArgumentException if the limit is not more than 0
     */
    public Chance chanceAfterOneMore(Quantity<Length> limit) {
        double mm = limitMm(limit);
        return new Chance(afterMove(mm), mm, true, LengthStyle.of(limit));
    }

    private double afterMove(double limitMm) {
        return within(limitMm, 0, StrictMath.hypot(filter.u(), moveMm()));
    }

    /**
     * Returns what to do next for a 95 % chance of being within a limit.
     *
     * @param limit either side of the middle, more than 0
     * @return the advice
     * @throws IllegalArgumentException if the limit is not more than 0
     */
    public NextStep next(Quantity<Length> limit) {
        return next(limitMm(limit), USUAL_CHANCE, LengthStyle.of(limit));
    }

    /**
     * Returns what to do next for a wanted chance of being within a limit.
     *
     * @param limit either side of the middle, more than 0
     * @param wanted the chance wanted, more than 0 and less than 100 percent
     * @return the advice
     * @throws IllegalArgumentException if a value is out of its range
     */
    public NextStep next(Quantity<Length> limit, Quantity<Dimensionless> wanted) {
        return next(limitMm(limit), HouseUnits.probability(wanted, "wanted chance"), LengthStyle.of(limit));
    }

    private NextStep next(double limitMm, double wanted, LengthStyle shown) {
        double now = within(limitMm, filter.mean(), filter.u());
        double moved = afterMove(limitMm);
        double readAgain = 1 / Math.sqrt(1 / (filter.u() * filter.u()) + 1 / (lastReadingMm * lastReadingMm));
        double readThenMoved = within(limitMm, 0, StrictMath.hypot(readAgain, moveMm()));
        double best = within(limitMm, 0, moveMm());
        NextStep.Kind kind;
        if (!isConsistent()) {
            kind = NextStep.Kind.READ_AGAIN;
        } else if (now >= wanted) {
            kind = NextStep.Kind.CUT;
        } else if (moved >= wanted) {
            kind = NextStep.Kind.MOVE;
        } else if (readThenMoved >= wanted) {
            kind = NextStep.Kind.READ_AGAIN;
        } else if (moved > now) {
            kind = NextStep.Kind.MOVE;
        } else {
            // A move would make it worse; reading again helps only while the offset itself is in doubt.
            kind = filter.u() > limitMm / 4 ? NextStep.Kind.READ_AGAIN : NextStep.Kind.FINER_MEANS;
        }
        return new NextStep(kind, isConsistent(), move().in(shown), now, moved, best, limitMm, shown);
    }

    /**
     * Returns whether each reading came out about where the earlier readings and the moves put it.
     *
     * @return false when one was off by more than 3 standard deviations: the fence slipped or a reading is wrong
     */
    public boolean isConsistent() {
        return surprise <= SURPRISE;
    }

    private static double limitMm(Quantity<Length> limit) {
        return HouseUnits.mmPositive(limit, "limit");
    }

    private static double within(double limitMm, double mean, double u) {
        Estimate<Length> estimate = Estimate.ofHouse(mean, u, Double.POSITIVE_INFINITY, ShopUnit.MILLIMETRE);
        return Verdict.of(estimate, Limits.within(ShopUnit.MILLIMETRE.of(limitMm)))
                .probability();
    }

    /**
     * Returns the same rounds, printed in another style.
     *
     * @param style how to print lengths
     * @return the rounds
     */
    @Override
    public CentringRounds in(LengthStyle style) {
        return new CentringRounds(
                filter, toldMoveMm, lastReadingMm, readings, moves, surprise, Objects.requireNonNull(style, "style"));
    }

    /** Returns the estimate and how many rounds it rests on. */
    @Override
    public String toString() {
        Report report = Report.titled("Centring rounds: " + estimate())
                .row(
                        "rounds",
                        Words.count(readings, "trial cut", "trial cuts") + ", " + Words.count(moves, "move", "moves"))
                .row(
                        "moves within",
                        style.small(moveMm()) + " (one standard deviation"
                                + (Double.isNaN(toldMoveMm) ? ", taken as none was told: common practice)" : ")"));
        if (!isConsistent()) {
            report.note(
                    "a reading came out " + Numbers.fixed(surprise, 1)
                            + " standard deviations from where the move should have put it: the fence slipped or a reading is wrong");
        }
        return report.toString();
    }
}
