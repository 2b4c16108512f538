package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the outlier (suspect reading) among the readings of a trial cut that do not close.
 *
 * <p>Each reading in turn is taken to be wrong by an unknown amount, and the misclosure (chi-square) of everything else
 * is found. That all readings of one thing are wrong by the same amount (a tilted piece) is possible too, but the rarer
 * the more they are: {@link #SAME_SLIP_AGAIN}. Four single readings cannot identify the outlier: without any one of
 * them the other three always agree. What shows something are repeated readings: they clear the readings that agree,
 * and mark those that disagree; and what the slot (the cutter) and the piece (the blank) should be. A reading stays
 * suspect while its misclosure (chi-square) exceeds the least by at most {@link #ODDS}. Single walls are never set
 * apart: both enter with plus.
 */
final class Blame {

    /** Difference in chi-square that clears a reading: odds of exp(6/2), 20 to 1, for normal errors. */
    static final double ODDS = 6;

    /** Chi-square of making the same slip in one more reading, 2 ln(100): one in a hundred, common practice. */
    static final double SAME_SLIP_AGAIN = 9.2;

    private final double u;
    private double zeros;
    private final List<Part> parts = new ArrayList<>();

    private Blame(double u) {
        this.u = u;
    }

    /**
     * Starts with the two walls.
     *
     * @param fence readings of the fence-side wall, at least one
     * @param far readings of the far wall, at least one
     * @param u standard uncertainty of one reading, more than 0
     */
    static Blame of(double[] fence, double[] far, double u) {
        Blame blame = new Blame(u);
        blame.parts.add(new Part(TrialReading.NEAR_WALL, fence, 1));
        blame.parts.add(new Part(TrialReading.FAR_WALL, far, 1));
        return blame;
    }

    Blame slot(double... readings) {
        parts.add(new Part(TrialReading.SLOT, readings, 1));
        return this;
    }

    Blame piece(double... readings) {
        parts.add(new Part(TrialReading.PIECE, readings, -1));
        return this;
    }

    /** Gives the variance that the callipers' zeros add to the sum of all parts. */
    Blame zeros(double variance) {
        zeros = variance;
        return this;
    }

    /** Gives what a part should be from elsewhere, with its standard uncertainty. */
    Blame shouldBe(TrialReading reading, double value, double uncertainty) {
        Part part = part(reading);
        part.elsewhere = value;
        part.elsewhereVariance = uncertainty * uncertainty;
        return this;
    }

    /** Returns the suspects, most likely first. */
    List<TrialReading> suspects() {
        double limit = parts.stream().mapToDouble(this::misfit).min().orElseThrow() + ODDS;
        return parts.stream()
                .filter(part -> misfit(part) <= limit)
                .sorted(Comparator.comparingDouble(this::misfit))
                .map(part -> part.reading)
                .toList();
    }

    /** The least misclosure that is left when one part's reading, or all its readings by one amount, may be wrong. */
    double misfitWithout(TrialReading freed) {
        return misfit(part(freed));
    }

    /** Which of a part's readings is the outlier, counted from 0; -1 when all are off by one amount. */
    int oddReading(TrialReading freed) {
        Part part = part(freed);
        int odd = -1;
        double least = misfit(part, -1);
        for (int i = 0; i < part.readings.length; i++) {
            double misfit = misfit(part, i);
            if (misfit < least) {
                odd = i;
                least = misfit;
            }
        }
        return odd;
    }

    private Part part(TrialReading reading) {
        return parts.stream()
                .filter(part -> part.reading == reading)
                .findFirst()
                .orElseThrow();
    }

    private double misfit(Part freed) {
        double least = misfit(freed, -1);
        for (int i = 0; i < freed.readings.length; i++) {
            least = Math.min(least, misfit(freed, i));
        }
        return least;
    }

    private double misfit(Part freed, int odd) {
        double misfit = odd < 0 ? (freed.readings.length - 1) * SAME_SLIP_AGAIN : 0;
        double closure = 0;
        double variance = zeros;
        for (Part part : parts) {
            Known known = part == freed ? part.without(odd, u) : part.whole(u);
            misfit += known.misfit;
            closure += part.sign * known.value;
            variance += known.variance;
        }
        // A part known from nowhere else has infinite variance and takes the closure with it.
        return Double.isInfinite(variance) ? misfit : misfit + closure * closure / variance;
    }

    /** What is known of one part, and how badly its own readings disagree about it. */
    private record Known(double value, double variance, double misfit) {}

    private static final class Part {
        private final TrialReading reading;
        private final double[] readings;
        private final int sign;
        private double elsewhere;
        private double elsewhereVariance = Double.POSITIVE_INFINITY;

        private Part(TrialReading reading, double[] readings, int sign) {
            this.reading = reading;
            this.readings = readings.clone();
            this.sign = sign;
        }

        private Known whole(double u) {
            return withElsewhere(mean(readings), u * u / readings.length, scatter(readings, u));
        }

        private Known without(int odd, double u) {
            if (odd < 0) {
                return new Known(elsewhere, elsewhereVariance, scatter(readings, u));
            }
            double[] rest = new double[readings.length - 1];
            System.arraycopy(readings, 0, rest, 0, odd);
            System.arraycopy(readings, odd + 1, rest, odd, rest.length - odd);
            return rest.length == 0
                    ? new Known(elsewhere, elsewhereVariance, 0)
                    : withElsewhere(mean(rest), u * u / rest.length, scatter(rest, u));
        }

        private Known withElsewhere(double mean, double variance, double scatter) {
            if (Double.isInfinite(elsewhereVariance)) {
                return new Known(mean, variance, scatter);
            }
            double sum = variance + elsewhereVariance;
            double miss = mean - elsewhere;
            return new Known(
                    (mean * elsewhereVariance + elsewhere * variance) / sum,
                    variance * elsewhereVariance / sum,
                    scatter + miss * miss / sum);
        }

        private static double mean(double[] values) {
            double sum = 0;
            for (double value : values) {
                sum += value;
            }
            return sum / values.length;
        }

        private static double scatter(double[] values, double u) {
            double mean = mean(values);
            double squares = 0;
            for (double value : values) {
                squares += (value - mean) * (value - mean);
            }
            return squares / (u * u);
        }
    }
}
