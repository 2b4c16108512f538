package org.neckgeom.strength;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What is known of a neck's bow: the moduli of its two woods, and in logarithms its softness beside them, its load and the arm of
 * its rod; jointly normal. Gives an answer that rests on them its interval.
 *
 * <p>The interval's ends are the answer at the two points that lie k standard deviations to either side in the direction in
 * which the answer changes fastest: exact where the answer is a product of powers, as relief nearly is. Estimate; checked
 * against simulation.
 */
final class BowKnowledge {

    private static final int SIZE = 5;
    private static final double HALF = 0.5;

    private final CauseState state;
    private final double[] effects;
    private final double[] mean = new double[SIZE];
    private final double[][] root;

    /**
     * What an answer rests on.
     *
     * @param neck modulus of its wood over the species' mean
     * @param board the same of the fingerboard's
     * @param softness logarithm, beside the woods
     * @param load logarithm
     * @param arm logarithm
     * @param own what only this answer rests on: independent standard normals
     * @param isMiddle whether moduli are at their means, for the answer itself and not for its interval
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
    record Given(double neck, double board, double softness, double load, double arm, double[] own, boolean isMiddle) {}

    /** Gives an answer. */
    interface Question {
        double answer(Given given);
    }

    /**
     * Takes what is known of the causes.
     *
     * @param effects of each cause on the logarithm of relief
     */
    BowKnowledge(CauseState state, double[] effects, ModulusSpread woods) {
        this.state = state;
        this.effects = effects;
        double[][] rows = new double[SIZE][Cause.COUNT];
        rows[0][Cause.NECK_WOOD.column()] = woods.back();
        rows[1][Cause.BOARD_WOOD.column()] = woods.board();
        for (Cause cause : Cause.values()) {
            int i = cause.column();
            switch (cause.part()) {
                case SOFTNESS -> rows[2][i] = effects[i];
                case LOAD -> rows[3][i] = effects[i];
                case ROD -> rows[4][i] = ARM_U;
                default -> {
                    // Woods are above, and a reading's own causes change no answer.
                }
            }
        }
        double[][] covariance = new double[SIZE][SIZE];
        for (int i = 0; i < SIZE; i++) {
            mean[i] = state.mean(rows[i]);
            for (int j = 0; j < SIZE; j++) {
                covariance[i][j] = state.covariance(rows[i], rows[j]);
            }
        }
        mean[0] -= woods.back() * woods.back() / 2;
        mean[1] -= woods.board() * woods.board() / 2;
        this.root = root(covariance);
    }

    /** Standard uncertainty of the arm of a rod, a ratio. */
    private static final double ARM_U = 0.05;

    /** The lower triangle whose product with its own transpose is a covariance. */
    private static double[][] root(double[][] covariance) {
        double[][] root = new double[SIZE][SIZE];
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j <= i; j++) {
                double left = covariance[i][j];
                for (int k = 0; k < j; k++) {
                    left -= root[i][k] * root[j][k];
                }
                if (i == j) {
                    root[i][i] = Math.sqrt(Math.max(0, left));
                } else {
                    root[i][j] = root[j][j] > 0 ? left / root[j][j] : 0;
                }
            }
        }
        return root;
    }

    /**
     * The answer at the means, then the lower and upper end of its 95 % interval. NaN where there is none.
     *
     * @param own how many standard normals of its own the answer rests on
     */
    double[] interval(Question question, int own) {
        double value = atMeans(question, own);
        double[] slope = new double[SIZE + own];
        double size = 0;
        for (int i = 0; i < slope.length; i++) {
            boolean isKnown = i < SIZE && root[i][i] == 0;
            slope[i] = isKnown ? 0 : along(question, i, slope.length, HALF) - along(question, i, slope.length, -HALF);
            size += slope[i] * slope[i];
        }
        size = Math.sqrt(size);
        if (size == 0) {
            return new double[] {value, value, value};
        }
        double[] direction = new double[slope.length];
        for (int i = 0; i < direction.length; i++) {
            // Where the answer does not exist beside the means, soft and stiff together is the direction that matters.
            direction[i] = Double.isNaN(size) ? (i < 2 ? Math.sqrt(HALF) : 0) : slope[i] / size;
        }
        double low = at(question, direction, -ModulusSpread.K95);
        double high = at(question, direction, ModulusSpread.K95);
        return low <= high ? new double[] {value, low, high} : new double[] {value, high, low};
    }

    /** Mean moduli; the rest at its median. */
    double atMeans(Question question, int own) {
        return question.answer(new Given(
                StrictMath.exp(mean[0] + root[0][0] * root[0][0] / 2),
                StrictMath.exp(mean[1] + (root[1][0] * root[1][0] + root[1][1] * root[1][1]) / 2),
                mean[2],
                mean[3],
                mean[4],
                new double[own],
                true));
    }

    private double along(Question question, int axis, int size, double deviations) {
        double[] direction = new double[size];
        direction[axis] = 1;
        return at(question, direction, deviations);
    }

    private double at(Question question, double[] direction, double deviations) {
        double[] x = mean.clone();
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j <= i; j++) {
                x[i] += root[i][j] * direction[j] * deviations;
            }
        }
        double[] own = new double[direction.length - SIZE];
        for (int i = 0; i < own.length; i++) {
            own[i] = direction[SIZE + i] * deviations;
        }
        return question.answer(new Given(StrictMath.exp(x[0]), StrictMath.exp(x[1]), x[2], x[3], x[4], own, false));
    }

    /** Standard uncertainty of the logarithm of relief. */
    double deviation() {
        return state.deviation(effects);
    }

    /** The same by the woods alone. */
    double deviationOfWoods() {
        return deviationOf(EnumSet.of(Cause.NECK_WOOD, Cause.BOARD_WOOD));
    }

    private double deviationOf(Set<Cause> some) {
        double[] row = new double[Cause.COUNT];
        some.forEach(cause -> row[cause.column()] = effects[cause.column()]);
        return state.deviation(row);
    }

    /** What a cause does to the logarithm of relief. */
    record Share(Cause cause, double shift, double deviation) {}

    /** All causes of the model that change relief, that with the largest uncertainty first. */
    List<Share> model() {
        return Arrays.stream(Cause.values())
                .filter(cause -> cause.part() == Cause.Part.SOFTNESS || cause.part() == Cause.Part.LOAD)
                .map(cause -> new Share(cause, shift(cause), deviationOf(EnumSet.of(cause))))
                .sorted(Comparator.comparingDouble((Share share) -> -share.deviation())
                        .thenComparing(Share::cause))
                .toList();
    }

    private double shift(Cause cause) {
        double[] row = new double[Cause.COUNT];
        row[cause.column()] = effects[cause.column()];
        return state.mean(row);
    }

    double deviationOfModel() {
        Set<Cause> model = EnumSet.noneOf(Cause.class);
        model().forEach(share -> model.add(share.cause()));
        return deviationOf(model);
    }
}
