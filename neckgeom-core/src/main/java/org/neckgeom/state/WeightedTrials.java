package org.neckgeom.state;

import java.util.Arrays;
import java.util.List;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.ErrorDistribution.Law;
import org.neckgeom.numeric.NormalLaw;

/**
 * What is known of a deviation with each cause by its own law, the spreads as given: points drawn from the normal answer, spread
 * 1.2 times as wide, each weighted by its prior and its likelihood over the density it was drawn with. Sixteen fixed shifts of
 * one lattice give the error; the points double until enough of them count.
 */
final class WeightedTrials {

    private static final int SHIFTS = 16;
    private static final int FIRST = 1 << 10;
    private static final int MOST = 1 << 13;
    private static final double WIDER = 1.2;
    private static final double ENOUGH = 500.0;

    private final double[] weights;
    private final double[] values;
    private final double effective;

    WeightedTrials(Knowledge state, Deviation of) {
        List<Cause> causes = state.causes();
        for (NeckReading reading : state.readings()) {
            if (reading.uncertainty() == 0.0) {
                throw NoAnswer.because(
                        "trials",
                        "exact",
                        "trials need readings with an uncertainty, and " + reading.name() + " has none");
            }
        }
        Solved solved = state.solved();
        int[] touched = new int[causes.size()];
        int n = 0;
        int others = 0;
        for (int i = 0; i < touched.length; i++) {
            Cause cause = causes.get(i);
            boolean counts = cause.sd() > 0.0;
            touched[i] = counts && solved.isTouched(cause.name()) ? solved.touchedPlace(cause.name()) : -1;
            n += touched[i] >= 0 ? 1 : 0;
            others += counts && touched[i] < 0 && of.coefficient(cause.name()) != 0.0 ? 1 : 0;
            if (counts && touched[i] >= 0 && cause.spread().law() == Law.SAMPLES) {
                throw NoAnswer.because(
                        "trials",
                        "samples",
                        "trials need a law with a density, and " + cause.name() + " has single samples");
            }
        }
        Lattice lattice = new Lattice(n + others, SHIFTS);
        int points = FIRST;
        double[] w = new double[0];
        double[] v = new double[0];
        double count = 0.0;
        while (true) {
            w = new double[SHIFTS * points];
            v = new double[w.length];
            double[] xi = new double[n];
            double[] x = new double[touched.length];
            double most = Double.NEGATIVE_INFINITY;
            for (int s = 0; s < SHIFTS; s++) {
                for (int p = 0; p < points; p++) {
                    int at = s * points + p;
                    w[at] = draw(state, solved, touched, lattice, s, p + 1, xi, x, n, of);
                    most = Math.max(most, w[at]);
                    double value = of.constantMm();
                    for (int i = 0; i < of.size(); i++) {
                        value += of.coefficient(i) * x[state.place(of.name(i))];
                    }
                    v[at] = value;
                }
            }
            double sum = 0.0;
            double squares = 0.0;
            for (int i = 0; i < w.length; i++) {
                w[i] = StrictMath.exp(w[i] - most);
                sum += w[i];
                squares += w[i] * w[i];
            }
            count = sum * sum / squares;
            if (count >= ENOUGH || points >= MOST) {
                break;
            }
            points *= 2;
        }
        this.weights = w;
        this.values = v;
        this.effective = count;
        if (!(effective >= ENOUGH)) {
            throw NoAnswer.because(
                    "trials",
                    "few",
                    "too few trials agree with the readings: look for one that contradicts the others");
        }
    }

    /** Values of the causes at a point, and the log of its weight. */
    private static double draw(
            Knowledge state,
            Solved solved,
            int[] touched,
            Lattice lattice,
            int shift,
            int p,
            double[] xi,
            double[] x,
            int n,
            Deviation of) {
        double log = 0.0;
        for (int k = 0; k < n; k++) {
            xi[k] = NormalLaw.quantile(lattice.at(p, k, shift));
            log += 0.5 * xi[k] * xi[k];
        }
        int next = n;
        for (int i = 0; i < touched.length; i++) {
            Cause cause = state.causes().get(i);
            ErrorDistribution<?> spread = cause.spread();
            x[i] = spread.libraryMean();
            if (touched[i] >= 0) {
                double off = cause.sd() * solved.deviate(touched[i], xi, WIDER);
                x[i] += off;
                log += logDensity(spread, off);
            } else if (cause.sd() > 0.0 && of.coefficient(cause.name()) != 0.0) {
                x[i] += ColumnLaw.of(spread).quantile(lattice.at(p, next++, shift));
            }
        }
        for (NeckReading reading : state.readings()) {
            Deviation its = reading.of();
            double miss = reading.value().libraryValue() - its.constantMm();
            for (int i = 0; i < its.size(); i++) {
                miss -= its.coefficient(i) * x[state.place(its.name(i))];
            }
            miss /= reading.uncertainty();
            log -= 0.5 * miss * miss;
        }
        return log;
    }

    /** But for a constant; about the mean. */
    private static double logDensity(ErrorDistribution<?> spread, double x) {
        double a = spread.libraryScale();
        double out = Math.abs(x) / a;
        if (spread.law() == Law.NORMAL) {
            return -0.5 * out * out;
        }
        if (!(out < 1.0)) {
            return Double.NEGATIVE_INFINITY;
        }
        double top = spread.law() == Law.TRAPEZOIDAL ? spread.libraryTopScale() / a : 0.0;
        return switch (spread.law()) {
            case RECTANGULAR -> 0.0;
            case ARCSINE -> -0.5 * StrictMath.log(1.0 - out * out);
            default -> out <= top ? 0.0 : StrictMath.log((1.0 - out) / (1.0 - top));
        };
    }

    double effective() {
        return effective;
    }

    double mean() {
        double sum = 0.0;
        for (int i = 0; i < values.length; i++) {
            sum += weights[i] * values[i];
        }
        return sum / Arrays.stream(weights).sum();
    }

    double deviation() {
        double mean = mean();
        double sum = 0.0;
        for (int i = 0; i < values.length; i++) {
            sum += weights[i] * (values[i] - mean) * (values[i] - mean);
        }
        return Math.sqrt(sum / Arrays.stream(weights).sum());
    }

    /** Chance of breaking limits and its error, three times the standard error of the sixteen. */
    double[] outside(double low, double high) {
        int points = values.length / SHIFTS;
        double all = Arrays.stream(weights).sum();
        double out = 0.0;
        double square = 0.0;
        double[] outs = new double[SHIFTS];
        double[] sums = new double[SHIFTS];
        for (int i = 0; i < values.length; i++) {
            sums[i / points] += weights[i];
            outs[i / points] += values[i] < low || values[i] > high ? weights[i] : 0.0;
        }
        for (int s = 0; s < SHIFTS; s++) {
            out += outs[s] / all;
        }
        for (int s = 0; s < SHIFTS; s++) {
            // Linear in both sums: a ratio of means (JCGM 101:2008 has none; any text on sampling).
            double residual = (outs[s] - out * sums[s]) / all * SHIFTS;
            square += residual * residual;
        }
        return new double[] {out, 3.0 * Math.sqrt(square / SHIFTS / (SHIFTS - 1.0))};
    }
}
