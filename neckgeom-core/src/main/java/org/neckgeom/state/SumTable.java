package org.neckgeom.state;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The distribution of a sum of causes in one deviation about its mean, by a Fourier series: a table with cubic interpolation, right
 * to about 1e-6.
 */
final class SumTable {

    private static final int MOST_WAVES = 64;
    private static final int CELLS = 256;
    private static final double SMALL = 1e-7;

    private final double farthest;
    private final double[] cdf;

    private SumTable(double farthest, double[] waves, int count) {
        this.farthest = farthest;
        this.cdf = new double[CELLS + 3];
        double step = Math.PI / CELLS;
        for (int i = 0; i < cdf.length; i++) {
            double angle = (i - 1) * step;
            // sin(k a) by its recurrence.
            double twice = 2.0 * StrictMath.cos(angle);
            double before = 0.0;
            double sine = StrictMath.sin(angle);
            double sum = 0.5 + angle / (2.0 * Math.PI);
            for (int k = 1; k <= count; k++) {
                sum += waves[k] * sine / (Math.PI * k);
                double next = twice * sine - before;
                before = sine;
                sine = next;
            }
            cdf[i] = sum;
        }
    }

    /** The sum of some causes of a group and of a normal part in deviation j; null where the series would be too long. */
    static @Nullable SumTable of(List<Group.Other> causes, int j, double normal) {
        double farthest = GroupSeries.REACH * Math.sqrt(GroupSeries.widest(causes, j, normal * normal));
        LawTable[] laws = GroupSeries.tables(causes);
        double[] waves = new double[MOST_WAVES + 1];
        int small = 0;
        for (int k = 1; k <= MOST_WAVES; k++) {
            double s = Math.PI * k / farthest;
            double value = StrictMath.exp(-0.5 * s * s * normal * normal);
            for (int i = 0; i < laws.length; i++) {
                Group.Other one = causes.get(i);
                value *= laws[i].at(s * one.coefficients()[j] * one.scale());
            }
            waves[k] = value;
            small = Math.abs(value) < SMALL ? small + 1 : 0;
            if (small == 2) {
                return new SumTable(farthest, waves, k);
            }
        }
        return null;
    }

    /** Probability of a sum from low to high. */
    double between(double low, double high) {
        return Math.max(0.0, cdf(high) - cdf(low));
    }

    private double cdf(double x) {
        double out = Math.abs(x);
        double above = out < farthest ? Cubic.at(cdf, out / farthest * CELLS) : 1.0;
        return x < 0.0 ? 1.0 - above : above;
    }
}
