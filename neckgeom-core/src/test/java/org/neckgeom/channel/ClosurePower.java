package org.neckgeom.channel;

import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;

/** How often closure warns and refuses, by simulation with a seed. */
final class ClosurePower {

    static final double READING_MM = 0.02;
    static final double ZERO_MM = 0.01;

    private static final BenchUncertainty BENCH =
            BenchUncertainty.withDefaults().repeatability(mm(READING_MM)).calliperZero(mm(ZERO_MM));

    private ClosurePower() {}

    /** Shares of warned cuts, the refused among them, and of refused cuts alone. */
    record Rates(double warned, double refused) {}

    /**
     * Cuts with one reading wrong, each among m of its session.
     *
     * @param freedom behind the repeatability, by which all four readings of a cut are judged; infinite where it is known
     */
    static Rates of(int m, double freedom, double wrongByMm, int trials, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int warned = 0;
        int refused = 0;
        for (int i = 0; i < trials; i++) {
            Closure.Outcome outcome =
                    Double.isInfinite(freedom) ? closed(random, m, wrongByMm) : judged(random, m, freedom, wrongByMm);
            warned += outcome == Closure.Outcome.CLOSES ? 0 : 1;
            refused += outcome == Closure.Outcome.REFUSED ? 1 : 0;
        }
        return new Rates(warned / (double) trials, refused / (double) trials);
    }

    private static Closure.Outcome closed(SplittableRandom random, int m, double wrongByMm) {
        double outside = ZERO_MM * random.nextGaussian();
        double inside = ZERO_MM * random.nextGaussian();
        double[] wrong = new double[4];
        int which = random.nextInt(4);
        wrong[which] = which == 3 ? -wrongByMm : wrongByMm;
        return Closure.of(cut(random, 1, outside, inside, wrong).repeatability(mm(READING_MM)))
                .bench(BENCH)
                .inSession(m)
                .outcome();
    }

    /** The repeatability drawn with its degrees of freedom: a trial cut has no place for such a one, the factors have. */
    private static Closure.Outcome judged(SplittableRandom random, int m, double freedom, double wrongByMm) {
        double squares = 0;
        for (int i = 0; i < freedom; i++) {
            double z = random.nextGaussian();
            squares += z * z;
        }
        double single = READING_MM * READING_MM * squares / freedom;
        double u = Math.sqrt(4 * single + 2 * ZERO_MM * ZERO_MM);
        double true2 = 4 * READING_MM * READING_MM + 2 * ZERO_MM * ZERO_MM;
        double f = Math.abs(Math.sqrt(true2) * random.nextGaussian() + wrongByMm);
        if (f > Closure.factor(Closure.REFUSED / m, freedom) * u) {
            return Closure.Outcome.REFUSED;
        }
        return f > Closure.factor(Closure.WARNED / m, freedom) * u ? Closure.Outcome.WARNS : Closure.Outcome.CLOSES;
    }

    /**
     * Sessions of honest readings: the share of those in which any cut warns or is refused. One calliper is used for the whole
     * session, and its zeros stay what they are.
     *
     * @param isRepeatabilityGiven else several readings have their own scatter to go by
     */
    static Rates falseAlarms(int cuts, int readings, boolean isRepeatabilityGiven, int sessions, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int warned = 0;
        int refused = 0;
        double[] right = new double[4];
        for (int i = 0; i < sessions; i++) {
            double outside = ZERO_MM * random.nextGaussian();
            double inside = ZERO_MM * random.nextGaussian();
            boolean anyWarned = false;
            boolean anyRefused = false;
            for (int k = 0; k < cuts; k++) {
                TrialCut cut = cut(random, readings, outside, inside, right);
                Closure.Outcome outcome = Closure.of(isRepeatabilityGiven ? cut.repeatability(mm(READING_MM)) : cut)
                        .bench(BENCH)
                        .inSession(cuts)
                        .outcome();
                anyWarned |= outcome != Closure.Outcome.CLOSES;
                anyRefused |= outcome == Closure.Outcome.REFUSED;
            }
            warned += anyWarned ? 1 : 0;
            refused += anyRefused ? 1 : 0;
        }
        return new Rates(warned / (double) sessions, refused / (double) sessions);
    }

    private static TrialCut cut(SplittableRandom random, int n, double outside, double inside, double[] wrong) {
        return TrialCut.walls(
                        readings(random, n, 27.5 + outside + wrong[0]), readings(random, n, 27.5 + outside + wrong[1]))
                .slot(readings(random, n, 6 + inside + wrong[2]))
                .piece(readings(random, n, 61 + outside + wrong[3]));
    }

    private static List<Amount<Length>> readings(SplittableRandom random, int n, double mean) {
        List<Amount<Length>> readings = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            readings.add(mm(mean + READING_MM * random.nextGaussian()));
        }
        return readings;
    }
}
