package org.neckgeom.budget;

import java.util.Arrays;
import java.util.Objects;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.kernel.Powers;

/**
 * How the exact distribution of a sum is best computed: which of the large rectangles are taken out in closed form, how
 * far the rest reaches, and how many nodes its characteristic function then needs.
 *
 * @param out rectangles taken out, counted from the largest
 * @param samplesOut whether the samples are taken out as well
 * @param reach of what stays in; beyond it lies a probability under 1e-15
 * @param nodes of the characteristic function of what stays in
 * @param accuracy largest error of a probability
 */
record ChainPlan(int out, boolean samplesOut, double reach, int nodes, double accuracy) {

    /** Terms of the inversion are dropped where their envelope is below {@code exp(-35) = 6e-16}. */
    private static final double LOG_DROP = -35.0;

    private static final int CHEAP_NODES = 20_000;

    /** Where several arcsines fall too slowly, the inversion stops here and reports its error bound. */
    private static final int MOST_NODES = 50_000;

    /** Sines and cosines that samples may cost in all. */
    private static final int MOST_SAMPLE_TERMS = 2_000_000;

    private static final int MOST_OUT = 14;
    private static final int MOST_KNOTS = 1 << 14;
    private static final int FEW_SAMPLES = 256;
    private static final double SMALL_AMPLIFICATION = 300.0;
    private static final double LARGE_AMPLIFICATION = 1e5;

    private ChainPlan(int out, boolean samplesOut, double reach, double nodes) {
        this(out, samplesOut, reach, reach == 0.0 ? 0 : (int) Math.min(Math.ceil(nodes), 1e7), ExactLaw.ACCURACY);
    }

    boolean isCheap() {
        return nodes <= CHEAP_NODES;
    }

    static ChainPlan of(Parts parts) {
        return of(parts, LOG_DROP);
    }

    /**
     * Everything stays in and the inversion is cut off, for several arcsines hardly smoothed. Past the highest frequency T
     * the envelope e falls at least as {@code t^-q}, q half the number of arcsines over their first bend; the terms left
     * out are {@code |phi|/(k pi)} and so add up to no more than {@code e(T)/(q pi)}.
     */
    static ChainPlan cut(Parts parts) {
        int samples = parts.samples.stream().mapToInt(set -> set.length).sum();
        int nodes = Math.min(MOST_NODES, MOST_SAMPLE_TERMS / Math.max(1, samples));
        double bounded = Math.max(parts.bounded(), parts.mirrored().bounded());
        double reach = bounded * (1.0 + 1e-12) + ExactLaw.FARTHEST_SDS * Math.sqrt(parts.normalVariance);
        double top = nodes * Math.PI / reach;
        long bent = Arrays.stream(parts.arcsines).filter(a -> a * top > 1.0).count();
        double left = StrictMath.exp(logEnvelope(top, parts, logs(parts), squares(parts)));
        return new ChainPlan(0, false, reach, nodes, ExactLaw.ACCURACY + left / (0.5 * bent * Math.PI));
    }

    private static ChainPlan of(Parts parts, double logDrop) {
        long count = 1;
        for (double[] set : parts.samples) {
            count = Math.min(count * set.length, 1L << 40);
        }
        if (parts.samples.isEmpty()) {
            return of(parts, false, 1, logDrop);
        }
        ChainPlan in = count <= FEW_SAMPLES ? null : of(parts, false, 1, logDrop);
        if (in != null && in.isCheap()) {
            return in;
        }
        if (count > 1L << 22) {
            throw NoAnswer.because(
                    "distribution",
                    "too-many-sums",
                    "the samples make " + count
                            + " sums and nothing smooths them; give fewer samples, or simulate the budget");
        }
        return of(parts, true, count, logDrop);
    }

    private static ChainPlan of(Parts parts, boolean samplesOut, long sampleKnots, double logDrop) {
        double[] a = parts.rectangles;
        double top = highestFrequency(parts, logDrop);
        double restVariance = parts.normalVariance;
        double bounded = 0.0;
        for (double x : parts.arcsines) {
            restVariance += 0.5 * x * x;
            bounded += x;
        }
        if (!samplesOut) {
            for (double[] set : parts.samples) {
                double half = Math.max(-set[0], set[set.length - 1]);
                restVariance += half * half;
                bounded += half;
            }
        }
        for (double x : a) {
            restVariance += x * x / 3.0;
            bounded += x;
        }
        double normalReach = ExactLaw.FARTHEST_SDS * Math.sqrt(parts.normalVariance);
        double taken = 0.0;
        double weight = 1.0;
        double knots = sampleKnots;
        int run = 0;
        ChainPlan best = null;
        double bestCost = Double.POSITIVE_INFINITY;
        ChainPlan rough = null;
        double roughCost = Double.POSITIVE_INFINITY;
        for (int p = 0; p <= Math.min(MOST_OUT, a.length); p++) {
            if (p > 0) {
                double x = a[p - 1];
                taken += x;
                restVariance -= x * x / 3.0;
                bounded -= x;
                weight *= 2.0 * x * p;
                run = p > 1 && a[p - 2] == x ? run + 1 : 1;
                knots *= (run + 1.0) / run;
            }
            boolean empty = p == a.length
                    && parts.normalVariance == 0.0
                    && parts.arcsines.length == 0
                    && (samplesOut || parts.samples.isEmpty());
            double reach = empty
                    ? 0.0
                    : Math.min(
                            bounded * (1.0 + 1e-12) + normalReach,
                            ExactLaw.FARTHEST_SDS * Math.sqrt(Math.max(restVariance, 0.0) * (1.0 + 1e-12)));
            double nodes = empty ? 0.0 : 1.0 + top * reach / Math.PI;
            if (knots > MOST_KNOTS * (double) sampleKnots) {
                break;
            }
            double inside = taken > 0.0 ? Math.min(1.0, reach / taken) : 1.0;
            double cost = nodes * (3.0 * (a.length - p) + 5.0) + 10.0 * knots * (nodes * inside * 2.0 + p + 2.0);
            double amplification = raised(taken + reach, p) / weight;
            if (amplification <= SMALL_AMPLIFICATION && cost < bestCost) {
                bestCost = cost;
                best = new ChainPlan(p, samplesOut, reach, nodes);
            }
            if (amplification <= LARGE_AMPLIFICATION && cost < roughCost) {
                roughCost = cost;
                rough = new ChainPlan(p, samplesOut, reach, nodes);
            }
        }
        if (rough == null) {
            throw NoAnswer.because(
                    "distribution",
                    "too-different",
                    "the errors differ too much in size to be added up exactly; simulate the budget");
        }
        return best == null || !best.isCheap() ? Objects.requireNonNull(rough) : best;
    }

    private static double raised(double base, int exponent) {
        double power = 1.0;
        for (int i = 0; i < exponent; i++) {
            power *= base;
        }
        return power;
    }

    /**
     * The frequency above which the envelope of the characteristic function stays below a logarithm. A rectangle's
     * {@code sin(x)/x} is under {@code exp(-x*x/6)} up to its first zero and under {@code 1/x} everywhere; an arcsine's
     * {@code J0(x)} under {@code exp(-x*x/4)} up to 1 and under {@code sqrt(2/(pi x))} everywhere.
     */
    private static double highestFrequency(Parts parts, double logDrop) {
        double[] a = parts.rectangles;
        double[] logs = logs(parts);
        double[] squares = squares(parts);
        if (parts.normalVariance == 0.0 && a.length == 0 && parts.arcsines.length == 0) {
            return 0.0;
        }
        double t = ExactLaw.FARTHEST_SDS / Math.sqrt(Math.max(parts.variance(), Double.MIN_NORMAL));
        double under = 0.0;
        double over = t;
        while (logEnvelope(over, parts, logs, squares) > logDrop && over < 1e300) {
            under = over;
            over *= 4.0;
        }
        for (int i = 0; i < 40 && over > 1.03 * under; i++) {
            double middle = under == 0.0 ? 0.5 * over : Math.sqrt(under * over);
            if (logEnvelope(middle, parts, logs, squares) > logDrop) {
                under = middle;
            } else {
                over = middle;
            }
        }
        return over;
    }

    /** Sums of the logarithms of the largest rectangles. */
    private static double[] logs(Parts parts) {
        double[] logs = new double[parts.rectangles.length + 1];
        for (int i = 0; i < parts.rectangles.length; i++) {
            logs[i + 1] = logs[i] + Powers.ln(parts.rectangles[i]);
        }
        return logs;
    }

    /** Variances of the smallest rectangles, from each one on. */
    private static double[] squares(Parts parts) {
        double[] squares = new double[parts.rectangles.length + 1];
        for (int i = parts.rectangles.length - 1; i >= 0; i--) {
            squares[i] = squares[i + 1] + parts.rectangles[i] * parts.rectangles[i] / 3.0;
        }
        return squares;
    }

    private static double logEnvelope(double t, Parts parts, double[] logs, double[] squares) {
        double[] a = parts.rectangles;
        double border = 2.1 / t;
        int low = 0;
        int high = a.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (a[middle] > border) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        double sum = -0.5 * t * t * (parts.normalVariance + squares[low]) - logs[low];
        if (low > 0) {
            sum -= low * Powers.ln(t);
        }
        for (double x : parts.arcsines) {
            double y = x * t;
            sum -= y <= 1.0 ? 0.25 * y * y : 0.5 * Powers.ln(0.5 * Math.PI * y);
        }
        return sum;
    }
}
