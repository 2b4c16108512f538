package org.neckgeom.state;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.ErrorDistribution.Law;
import org.neckgeom.numeric.NormalLaw;

/** How a cause spreads about its mean, both ways: the probability of a value up to x, and the value not exceeded with p. */
final class ColumnLaw {

    private static final Set<Law> BY_TABLE = EnumSet.of(Law.NORMAL, Law.RECTANGULAR, Law.TRIANGULAR);
    private static final Map<Law, Guess> GUESSES =
            new EnumMap<Law, Guess>(BY_TABLE.stream().collect(Collectors.toMap(law -> law, Guess::new)));

    /** Of the normal part: unit scale. */
    static final ColumnLaw NORMAL = new ColumnLaw(Law.NORMAL, 1.0, 0.0, new double[0], null);

    private final Law law;
    private final double scale;
    private final double top;
    private final double[] samples;
    private final @Nullable Guess guess;

    private ColumnLaw(Law law, double scale, double top, double[] samples, @Nullable Guess guess) {
        this.law = law;
        this.scale = scale;
        this.top = top;
        this.samples = samples;
        this.guess = guess;
    }

    /** The law of a cause; of a guess averaged over what its own scale may be. */
    static ColumnLaw of(Group.Other one) {
        ErrorDistribution<?> spread = one.cause().spread();
        boolean guessed = one.logDeviation() == Cause.GUESS && BY_TABLE.contains(one.law());
        return new ColumnLaw(
                one.law(),
                one.scale(),
                one.top(),
                samples(spread, one.factor()),
                guessed ? GUESSES.get(one.law()) : null);
    }

    /** The law of a spread as given. */
    static ColumnLaw of(ErrorDistribution<?> spread) {
        return new ColumnLaw(spread.law(), spread.libraryScale(), spread.libraryTopScale(), samples(spread, 1.0), null);
    }

    private static double[] samples(ErrorDistribution<?> spread, double factor) {
        return spread.law() == Law.SAMPLES
                ? Arrays.stream(spread.libraryCentredSamples())
                        .map(x -> x * factor)
                        .sorted()
                        .toArray()
                : new double[0];
    }

    /** Whether what its scale may be is in it already. */
    boolean isAveraged() {
        return guess != null;
    }

    /** Probability of a value up to x. */
    double cdf(double x) {
        if (guess != null) {
            return guess.cdf(x / scale);
        }
        return switch (law) {
            case SAMPLES -> upTo(x);
            case BIAS -> x >= 0.0 ? 1.0 : 0.0;
            default -> cdf(law, x / scale, top / scale);
        };
    }

    private double upTo(double x) {
        int at = Arrays.binarySearch(samples, x);
        int count = at < 0 ? -at - 1 : at + 1;
        while (count < samples.length && samples[count] <= x) {
            count++;
        }
        return (double) count / samples.length;
    }

    /** Value about the mean that is not exceeded with probability p. */
    double quantile(double p) {
        if (guess != null) {
            return scale * guess.quantile(p);
        }
        return switch (law) {
            case NORMAL -> scale * NormalLaw.quantile(p);
            case RECTANGULAR -> scale * (2.0 * p - 1.0);
            case TRIANGULAR, TRAPEZOIDAL -> trapezoid(scale, law == Law.TRIANGULAR ? 0.0 : top, p);
            case ARCSINE -> -scale * StrictMath.cos(Math.PI * p);
            case BIAS -> 0.0;
            case SAMPLES -> samples[(int) Math.min(samples.length - 1.0, p * samples.length)];
        };
    }

    private static double trapezoid(double a, double b, double p) {
        double density = 1.0 / (a + b);
        double corner = 0.5 * (a - b) * density;
        if (p < corner) {
            return -a + Math.sqrt(2.0 * p * (a - b) / density);
        }
        return p > 1.0 - corner ? a - Math.sqrt(2.0 * (1.0 - p) * (a - b) / density) : -b + (p - corner) / density;
    }

    /** Of unit scale; b half the width of a trapezoid's top. */
    private static double cdf(Law law, double x, double b) {
        if (law == Law.NORMAL) {
            return NormalLaw.cdf(x);
        }
        if (!(Math.abs(x) < 1.0)) {
            return x > 0.0 ? 1.0 : 0.0;
        }
        double out = Math.abs(x);
        double half = switch (law) {
            case RECTANGULAR -> 0.5 * out;
            case ARCSINE -> StrictMath.asin(out) / Math.PI;
            default -> {
                double top = law == Law.TRIANGULAR ? 0.0 : b;
                yield out <= top
                        ? out / (1.0 + top)
                        : 0.5 - (1.0 - out) * (1.0 - out) / (2.0 * (1.0 - top) * (1.0 + top));
            }
        };
        return x < 0.0 ? 0.5 - half : 0.5 + half;
    }

    /** A law of unit scale, averaged over what the scale of a guess may be: tables with cubic interpolation. */
    private static final class Guess {

        private static final double FARTHEST = 14.0;
        private static final double STEP = 0.02;
        private static final double LAST_DEVIATE = 7.0;
        private static final double DEVIATE_STEP = 0.05;
        private static final int HALVINGS = 50;

        private final double[] cdf;
        private final double[] values;

        Guess(Law law) {
            this.cdf = new double[(int) Math.round(FARTHEST / STEP) + 4];
            for (int i = 0; i < cdf.length; i++) {
                cdf[i] = averaged(law, (i - 1) * STEP);
            }
            this.values = new double[(int) Math.round(LAST_DEVIATE / DEVIATE_STEP) + 4];
            for (int i = 1; i < values.length; i++) {
                values[i] = value(NormalLaw.cdf((i - 1) * DEVIATE_STEP));
            }
            values[0] = -values[2];
        }

        private static double averaged(Law law, double x) {
            double sum = 0.0;
            for (int m = 0; m < Scales.FINE.size(); m++) {
                sum += Scales.FINE.weights[m] * ColumnLaw.cdf(law, x / Scales.factor(Scales.FINE.z[m]), 0.0);
            }
            return sum;
        }

        private double value(double p) {
            double low = 0.0;
            double high = FARTHEST;
            for (int i = 0; i < HALVINGS; i++) {
                double middle = 0.5 * (low + high);
                if (cdf(middle) < p) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return low;
        }

        double cdf(double x) {
            double out = Math.abs(x);
            double above = out < FARTHEST ? Cubic.at(cdf, out / STEP) : 1.0;
            return x < 0.0 ? 1.0 - above : above;
        }

        double quantile(double p) {
            double deviate = NormalLaw.quantile(p);
            double out = Cubic.at(values, Math.min(LAST_DEVIATE, Math.abs(deviate)) / DEVIATE_STEP);
            return deviate < 0.0 ? -out : out;
        }
    }
}
