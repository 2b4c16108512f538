package org.neckgeom.kernel;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The characteristic function of errors with a common factor, at steps that serve every factor of a range: a sum with other
 * errors, divided by the factor, is the sum with those errors divided by it.
 */
final class RoughTable {

    /** The series ends where the characteristic function has come down to this. */
    private static final double LEAST = 1e-12;

    private static final int FIRST_TERMS = 64;
    private static final int MOST_TERMS = 1 << 15;

    private final RoughParts scaled;
    private final RoughParts rest;
    private final double least;
    private final double most;
    private final double reach;
    private final double step;
    private final Waves own;
    private final RoughSeries atMost;
    private final Map<Double, RoughSeries> laws = new ConcurrentHashMap<>();

    private RoughTable(RoughParts scaled, RoughParts rest, double least, double most) {
        this.scaled = scaled;
        this.rest = rest;
        this.least = least;
        this.most = most;
        this.reach = RoughParts.reach(scaled, rest, 1.0 / least);
        this.step = reach > 0.0 ? Math.PI / reach : 1.0;
        this.own = new Waves();
        this.atMost = series(most);
    }

    static RoughTable of(RoughParts scaled, RoughParts rest, double least, double most) {
        return rest.isNothing() ? new RoughTable(scaled, rest, 1.0, 1.0) : new RoughTable(scaled, rest, least, most);
    }

    boolean serves(double from, double to) {
        return rest.isNothing() || from >= least && to <= most;
    }

    /** The law of the sum divided by a factor, kept for the next question. */
    RoughSeries law(double factor) {
        return rest.isNothing() || factor == most ? atMost : laws.computeIfAbsent(factor, this::series);
    }

    /** The widest factor comes first and finds how many terms there are. */
    private RoughSeries series(double factor) {
        boolean first = atMost == null;
        Waves others = new Waves();
        int n = 0;
        double left = 1.0;
        while (left > LEAST && n < (first ? MOST_TERMS : own.size())) {
            n = Math.min(MOST_TERMS, n + Math.max(FIRST_TERMS, n / 2));
            n = first ? n : Math.min(n, own.size());
            if (first) {
                own.extend(scaled, step, n);
            }
            others.extend(rest, step / factor, n);
            left = own.highest(others, n - n / 5);
        }
        double[][] product = own.product(others);
        return new RoughSeries(
                product[0],
                product[1],
                step,
                Math.min(reach, RoughParts.reach(scaled, rest, 1.0 / factor)),
                left,
                scaled.students(),
                rest.students(),
                factor);
    }

    /** A characteristic function at even steps: that of the smooth errors, and that of the samples. */
    private static final class Waves {

        private double[] smooth = {};
        private double[] re = {};
        private double[] im = {};

        int size() {
            return smooth.length;
        }

        void extend(RoughParts parts, double step, int to) {
            int from = smooth.length;
            double[] real = ones(to - from);
            double[] cos = ones(to - from);
            double[] sin = new double[to - from];
            for (RoughPart part : parts.smooth()) {
                part.multiply(step, from, real);
            }
            for (RoughPart part : parts.samples()) {
                part.multiply(step, from, cos, sin);
            }
            smooth = joined(smooth, real);
            re = joined(re, cos);
            im = joined(im, sin);
        }

        /** Largest product of the smooth errors' with others', from a term on to the last of the others. */
        double highest(Waves other, int from) {
            double most = 0.0;
            for (int k = from; k < other.size(); k++) {
                most = Math.max(most, Math.abs(smooth[k] * other.smooth[k]));
            }
            return most;
        }

        double[][] product(Waves other) {
            double[][] product = new double[2][other.size()];
            for (int k = 0; k < other.size(); k++) {
                double real = smooth[k] * other.smooth[k];
                product[0][k] = real * (re[k] * other.re[k] - im[k] * other.im[k]);
                product[1][k] = real * (re[k] * other.im[k] + im[k] * other.re[k]);
            }
            return product;
        }

        private static double[] ones(int n) {
            double[] ones = new double[n];
            Arrays.fill(ones, 1.0);
            return ones;
        }

        private static double[] joined(double[] one, double[] two) {
            double[] both = Arrays.copyOf(one, one.length + two.length);
            System.arraycopy(two, 0, both, one.length, two.length);
            return both;
        }
    }
}
