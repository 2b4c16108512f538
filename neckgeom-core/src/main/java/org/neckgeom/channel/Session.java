package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.measure.Estimate;
import org.neckgeom.numeric.StudentLaw;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.TrialCut;

/**
 * The setting as a record of trial cuts and fence moves shows it: its state and the contradictions. Lengths in mm.
 *
 * <p>A cut whose readings do not close is left out until it is read again: it is refused by the number of cuts checked
 * when it was read, and more cuts after it do not clear it. A warning goes by the number of cuts checked by now. A cut
 * that lies where it should not (a two-sided probability under a thousandth, shared by all cuts of the record) is kept
 * apart: read again it may come to agree; another cut with the fence untouched shows whether the setting or the odd cut
 * was wrong. Each is done once.
 */
final class Session {

    private static final double REFUSED = 0.001;
    private static final double DIRECTION_SIGMAS = 3;
    /** Two cuts at one setting agree when their difference is inside its two-sided 99 % interval. */
    private static final double AGREE_SIGMAS = 2.58;

    private final BenchUncertainty bench;
    private final @Nullable BlankOnFence run;
    private final double cutVariance;
    private int innovations;
    private int checkedCuts;

    /** How many of them have been read so far. */
    private int checkedSoFar;

    private @Nullable SettingState state;

    private @Nullable SettingState before;

    /** The odd cut: its distance and variance, while it is kept apart. */
    private @Nullable Seen odd;

    private double movedSinceCut;
    private int resets;
    private int leftOut;
    private @Nullable Seen last;

    private boolean isRead;
    private int readingsOfLastCut;
    private int cuts;
    private boolean isWarned;
    private boolean isEachWallReadTwice;
    private boolean isPieceMissing;
    private double readingVariance;
    private double biasVariance;

    private SlotVerdict.@Nullable Contradiction contradiction;

    private @Nullable Closure lastClosure;

    /** The check of each cut's readings, in the order of the record. */
    private final List<Closure> closures = new ArrayList<>();

    private final List<Evidence.LeftOut> missed = new ArrayList<>();
    private double firstPiece = Double.NaN;

    /** One cut as it was read: the setting it shows, the variance of its readings and how well that is known. */
    private record Seen(double y, double variance, double degreesOfFreedom) {

        /** The same cut read by two sets of readings, each weighed by its variance. */
        Seen with(Seen other) {
            double sum = variance + other.variance;
            if (!(sum > 0)) {
                return new Seen((y + other.y) / 2, 0, degreesOfFreedom);
            }
            double mean = (y * other.variance + other.y * variance) / sum;
            double both = variance * other.variance / sum;
            double doubt = both * both / degreesOfFreedom + both * both / other.degreesOfFreedom;
            return new Seen(mean, both, doubt > 0 ? both * both / doubt : Double.POSITIVE_INFINITY);
        }

        Seen moved(double toward, double moveVariance) {
            return new Seen(y - toward, variance + moveVariance, degreesOfFreedom);
        }
    }

    private Session(BenchUncertainty bench, @Nullable BlankOnFence run) {
        this.bench = bench;
        this.run = run;
        this.cutVariance = bench.cutScatterMm() * bench.cutScatterMm();
    }

    static Evidence of(List<CentringStep> steps, BenchUncertainty bench, @Nullable BlankOnFence run) {
        Session session = new Session(bench, run);
        int cuts = 0;
        for (CentringStep step : steps) {
            if (step.cut().isPresent() && !step.isReadAgain()) {
                cuts++;
                session.checkedCuts += session.isChecked(step.cut().get()) ? 1 : 0;
            }
        }
        session.innovations = Math.max(1, cuts - 1);
        for (CentringStep step : steps) {
            step.move().ifPresent(session::moved);
            step.cut().ifPresent(cut -> session.read(cut, step.isReadAgain()));
        }
        return session.evidence();
    }

    private Evidence evidence() {
        return new Evidence(
                state,
                before,
                isRead,
                readingsOfLastCut,
                isEachWallReadTwice,
                cuts,
                isWarned,
                isPieceMissing,
                readingVariance,
                biasVariance,
                contradiction,
                lastClosure,
                List.copyOf(closures),
                List.copyOf(missed));
    }

    /** Variance of one reading. */
    static double single(BenchUncertainty bench) {
        return bench.repeatabilityMm() * bench.repeatabilityMm() + square(bench.resolutionMm()) / 12;
    }

    private static double square(double x) {
        return x * x;
    }

    private boolean isChecked(TrialCut cut) {
        return closure(cut, 1).isChecked();
    }

    private Closure closure(TrialCut cut, int ofCuts) {
        return Closure.of(cut.readAt(bench)).bench(bench).inSession(Math.max(1, ofCuts));
    }

    /** By the cuts so far where they refuse it, else by all. */
    private Closure closure(TrialCut cut) {
        Closure whenRead = closure(cut, checkedSoFar);
        return whenRead.closes() ? closure(cut, checkedCuts) : whenRead;
    }

    private void moved(FenceMove move) {
        double variance = square(bench.moveScatterMm()) + square(move.settingUncertaintyMm());
        movedSinceCut += move.towardMm();
        isRead = false;
        readingsOfLastCut = 0;
        if (state != null) {
            state = state.movedTowardCutter(move.towardMm(), variance);
        }
        odd = odd == null ? null : odd.moved(move.towardMm(), variance);
    }

    private void read(TrialCut given, boolean again) {
        TrialCut cut = given.readAt(bench);
        checkedSoFar += !again && isChecked(given) ? 1 : 0;
        Closure closure = closure(given);
        lastClosure = closure;
        closures.add(closure);
        isPieceMissing = false;
        if (!closure.closes()) {
            contradiction = SlotVerdict.Contradiction.READINGS;
            missed.add(Evidence.LeftOut.MISREAD_CUT);
            return;
        }
        isWarned = closure.warns();
        Optional<Seen> maybe = seen(cut);
        if (maybe.isEmpty()) {
            isPieceMissing = true;
            return;
        }
        Seen now = maybe.get();
        isEachWallReadTwice = cut.nearReadingsMm().length > 1 && cut.farReadingsMm().length > 1;
        Seen earlier = again && contradiction != SlotVerdict.Contradiction.READINGS ? last : null;
        boolean sameCut = earlier != null;
        if (earlier != null) {
            now = now.with(earlier);
            readingsOfLastCut++;
        } else {
            readingsOfLastCut = 1;
            cuts++;
        }
        contradiction = null;
        last = now;
        readingVariance = now.variance;
        isRead = true;
        if (odd != null && !sameCut) {
            settle(now);
        } else {
            weigh(now, sameCut ? before : state, sameCut);
        }
        movedSinceCut = sameCut ? movedSinceCut : 0;
    }

    /** A cut against the state before it. */
    private void weigh(Seen now, @Nullable SettingState prior, boolean sameCut) {
        odd = null;
        before = prior;
        if (prior == null) {
            state = SettingState.first(now.y, now.variance, cutVariance, now.degreesOfFreedom);
            return;
        }
        double noise = now.variance + cutVariance;
        double innovation = now.y - prior.mean();
        double s = Math.sqrt(prior.variance() + noise);
        if (!agrees(innovation, s, prior)) {
            odd = now;
            state = prior;
            boolean wrongWay =
                    movedSinceCut != 0 && !sameCut && Math.abs(innovation - 2 * movedSinceCut) <= DIRECTION_SIGMAS * s;
            contradiction = wrongWay ? SlotVerdict.Contradiction.DIRECTION : SlotVerdict.Contradiction.SETTING;
            return;
        }
        state = prior.cut(now.y, now.variance, cutVariance, now.degreesOfFreedom);
    }

    private boolean agrees(double innovation, double s, SettingState prior) {
        if (innovation == 0) {
            return true;
        }
        double nu = prior.degreesOfFreedom(cutVariance, 0, bench.cutScatterDegreesOfFreedom());
        return 2 * StudentLaw.upperTail(Math.abs(innovation) / s, nu) >= REFUSED / innovations;
    }

    /** A cut after an odd one, the fence untouched since: which of the two was wrong? */
    private void settle(Seen now) {
        Seen odd = this.odd;
        SettingState old = state;
        if (odd == null || old == null) {
            throw new IllegalStateException("no odd cut");
        }
        double both = Math.sqrt(odd.variance + now.variance + 2 * cutVariance);
        double s = Math.sqrt(old.variance() + now.variance + cutVariance);
        this.odd = null;
        if (Math.abs(now.y - odd.y) <= AGREE_SIGMAS * both) {
            resets++;
            missed.add(Evidence.LeftOut.STEPS_BEFORE);
            before = SettingState.first(odd.y, odd.variance, cutVariance, odd.degreesOfFreedom);
            state = before.cut(now.y, now.variance, cutVariance, now.degreesOfFreedom);
            cuts = 2;
        } else if (agrees(now.y - old.mean(), s, old)) {
            leftOut++;
            missed.add(Evidence.LeftOut.ODD_CUT);
            before = old;
            state = old.cut(now.y, now.variance, cutVariance, now.degreesOfFreedom);
        } else {
            contradiction = SlotVerdict.Contradiction.FENCE_LOST;
        }
        if (resets > 1 || leftOut > 1 && 5 * leftOut > cuts) {
            contradiction = SlotVerdict.Contradiction.FENCE_LOST;
        }
    }

    /** What a cut shows of the setting; nothing where only its walls were read and it is to be judged in a blank. */
    private Optional<Seen> seen(TrialCut cut) {
        Estimate<Length> a = cut.nearWall();
        Estimate<Length> b = cut.farWall();
        double va = variance(a);
        double vb = variance(b);
        double walls = (va + vb - 2 * cut.wallCorrelation() * Math.sqrt(va * vb)) / 4;
        double e = (a.libraryValue() - b.libraryValue()) / 2;
        double nu = degreesOfFreedom(walls, va / 4, a.degreesOfFreedom(), vb / 4, b.degreesOfFreedom());
        if (run == null) {
            return Optional.of(inPieces(cut, e, walls, nu));
        }
        if (cut.piece().isPresent()) {
            Estimate<Length> piece = cut.piece().get();
            double all = walls + variance(piece) / 4;
            // Piece and blank by one calliper: its zero error cancels.
            biasVariance = bench.blankCalliperZeroMm().isPresent()
                    ? (square(bench.calliperZeroMm()) + square(blankZero())) / 4
                    : 0;
            return Optional.of(new Seen(e + piece.libraryValue() / 2, all, scaled(nu, walls, all)));
        }
        if (cut.ripScatter().isPresent()) {
            double width = run.widthMm((run.channel().startMm() + run.channel().endMm()) / 2);
            double all = walls + square(cut.ripScatter().get().libraryValue()) / 2;
            return Optional.of(new Seen(e + width / 2, all, scaled(nu, walls, all)));
        }
        if (cut.slot().isPresent()) {
            Estimate<Length> slot = cut.slot().get();
            double all = va + variance(slot) / 4;
            // Outside and inside jaws each have a zero of their own, the same in every reading; half of the outside one
            // goes
            // with the blank's width where that was read by the same calliper.
            double outside = bench.blankCalliperZeroMm().isPresent()
                    ? square(bench.calliperZeroMm()) + square(blankZero()) / 4
                    : square(bench.calliperZeroMm()) / 4;
            biasVariance = outside + square(bench.calliperZeroMm()) / 4;
            return Optional.of(new Seen(
                    a.libraryValue() + slot.libraryValue() / 2,
                    all,
                    degreesOfFreedom(all, va, a.degreesOfFreedom(), variance(slot) / 4, slot.degreesOfFreedom())));
        }
        return Optional.empty();
    }

    /** On a piece as wide as the first one; pieces that were measured are carried over to its width. */
    private Seen inPieces(TrialCut cut, double e, double walls, double nu) {
        if (cut.piece().isEmpty()) {
            return new Seen(e, walls, nu);
        }
        double width = cut.piece().get().libraryValue();
        if (Double.isNaN(firstPiece)) {
            firstPiece = width;
            return new Seen(e, walls, nu);
        }
        double all = walls + variance(cut.piece().get()) / 4;
        return new Seen(e + (width - firstPiece) / 2, all, scaled(nu, walls, all));
    }

    private double blankZero() {
        return bench.blankCalliperZeroMm().orElse(bench.calliperZeroMm());
    }

    private double variance(Estimate<Length> reading) {
        return square(reading.libraryUncertainty()) + square(bench.resolutionMm()) / 12;
    }

    private static double degreesOfFreedom(double all, double v1, double nu1, double v2, double nu2) {
        double doubt = v1 * v1 / nu1 + v2 * v2 / nu2;
        return doubt > 0 ? all * all / doubt : Double.POSITIVE_INFINITY;
    }

    /** The degrees of freedom of a variance of which a part alone is uncertain. */
    private static double scaled(double nu, double part, double all) {
        return part > 0 ? nu * square(all / part) : Double.POSITIVE_INFINITY;
    }
}
