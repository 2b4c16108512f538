package org.neckgeom.kernel;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.neckgeom.measure.ErrorDistribution.Law;

/**
 * The characteristic function of a normal, a rectangular or a triangular error of unit scale, averaged over the scale of a
 * guess: a table, made at the first question, with Lagrange's quintic between its entries, right to 1e-12. Most errors of a
 * neck are guesses, and guesses differ by their size alone.
 */
final class GuessedWaves {

    /** Standard deviation of the logarithm of a guess's own scale. */
    static final double GUESS = 0.25 / Math.sqrt(2.0);

    /** The same with what all guesses share. */
    static final double WHOLE_GUESS = Math.sqrt(2.0) * GUESS;

    private static final double NOTHING = 1e-18;

    private static final Set<Law> LAWS = EnumSet.of(Law.NORMAL, Law.RECTANGULAR, Law.TRIANGULAR);
    private static final Map<Law, Supplier<GuessedWaves>> OWN = all(GUESS);
    private static final Map<Law, Supplier<GuessedWaves>> WHOLE = all(WHOLE_GUESS);

    private static final double STEP = 1.0 / 64.0;
    private static final int ALL = 96 * 64;
    private static final int BEFORE = 3;

    /** The function at {@code (k + 1/2) STEP}, from {@code k = -3} on. */
    private final double[] values;

    /** Where the waves are gone: under 1e-13. */
    private final double last;

    /** From there on the function is this divided by the square of its argument. */
    private final double beyond;

    private GuessedWaves(Law law, double logDeviation) {
        LogScales scales = law == Law.NORMAL
                ? LogScales.normal(logDeviation, Double.POSITIVE_INFINITY)
                : LogScales.waves(logDeviation, ALL * STEP, true);
        values = new double[BEFORE + ALL];
        switch (law) {
            case NORMAL -> bells(scales);
            case RECTANGULAR -> sincs(scales);
            default -> squares(scales);
        }
        for (int i = 0; i < BEFORE; i++) {
            values[BEFORE - 1 - i] = values[BEFORE + i];
        }
        double end = (ALL - 0.5) * STEP;
        last = end - BEFORE * STEP;
        beyond = values[BEFORE + ALL - 1] * end * end;
    }

    /** Normal: {@code exp(-x^2/2)}. */
    private void bells(LogScales scales) {
        for (int j = 0; j < scales.factor().length; j++) {
            double a = scales.factor()[j] * STEP;
            double bell = scales.weight()[j];
            for (int k = 0; k < ALL && bell > NOTHING; k++) {
                bell = scales.weight()[j] * StrictMath.exp(-0.5 * a * a * (k + 0.5) * (k + 0.5));
                values[BEFORE + k] += bell;
            }
        }
    }

    /** Rectangular: {@code sin(x)/x}. */
    private void sincs(LogScales scales) {
        double[] weight = scales.weight().clone();
        for (int j = 0; j < weight.length; j++) {
            weight[j] /= scales.factor()[j];
        }
        Turn turn = new Turn(scales.factor(), STEP, 0.5);
        for (int k = 0; k < ALL; k++) {
            values[BEFORE + k] = turn.sines(weight) / ((k + 0.5) * STEP);
            turn.next();
        }
    }

    /** Triangular: {@code (sin(x/2)/(x/2))^2}. */
    private void squares(LogScales scales) {
        double[] weight = scales.weight().clone();
        for (int j = 0; j < weight.length; j++) {
            weight[j] *= 4.0 / (scales.factor()[j] * scales.factor()[j]);
        }
        Turn half = new Turn(scales.factor(), 0.5 * STEP, 0.5);
        for (int k = 0; k < ALL; k++) {
            double x = (k + 0.5) * STEP;
            values[BEFORE + k] = half.products(half, weight) / (x * x);
            half.next();
        }
    }

    private static Map<Law, Supplier<GuessedWaves>> all(double logDeviation) {
        Map<Law, Supplier<GuessedWaves>> all = new EnumMap<>(Law.class);
        for (Law law : LAWS) {
            all.put(law, new Once<>(() -> new GuessedWaves(law, logDeviation)));
        }
        return all;
    }

    /** Of a law and the standard deviation of its scale's logarithm; null where there is no table. */
    static @Nullable GuessedWaves of(Law law, double logDeviation) {
        Map<Law, Supplier<GuessedWaves>> all =
                logDeviation == GUESS ? OWN : logDeviation == WHOLE_GUESS ? WHOLE : Map.of();
        Supplier<GuessedWaves> found = all.get(law);
        return found == null ? null : found.get();
    }

    /** Multiplies numbers by the function at {@code (k + 1/2) step}, k from {@code from} on. */
    void multiply(double step, int from, double[] by) {
        for (int k = 0; k < by.length; k++) {
            by[k] *= at((from + k + 0.5) * step);
        }
    }

    private double at(double x) {
        if (!(x < last)) {
            return beyond / (x * x);
        }
        double place = x * (1.0 / STEP) - 0.5 + BEFORE;
        int i = (int) place;
        double s = place - i;
        double[] v = values;
        double a = s + 2.0;
        double b = s + 1.0;
        double d = s - 1.0;
        double e = s - 2.0;
        double f = s - 3.0;
        double de = d * e;
        double ab = a * b;
        return s * f * (b * de * (-1.0 / 120.0) * v[i - 2] + a * de * (1.0 / 24.0) * v[i - 1])
                + f * ab * (de * (-1.0 / 12.0) * v[i] + s * e * (1.0 / 12.0) * v[i + 1])
                + s * ab * d * (f * (-1.0 / 24.0) * v[i + 2] + e * (1.0 / 120.0) * v[i + 3]);
    }
}
