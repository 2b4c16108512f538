package org.neckgeom.kernel;

import java.util.Arrays;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.numeric.NormalLaw;

/** Tails of a spread, and nodes to integrate over it, on plain doubles in library units. */
public final class SpreadLaw {

    private static final int LEGENDRE = 8;
    private static final double NORMAL_STEP = 0.35;
    private static final int NORMAL_REACH = 20;
    private static final int SWINGS = 32;
    private static final int HALVINGS = 70;
    private static final double[][] GAUSS = legendre();

    private final ErrorDistribution<?> spread;
    private final double shift;
    private final double scale;

    public SpreadLaw(ErrorDistribution<?> spread) {
        this.spread = spread;
        this.shift = spread.libraryMean();
        this.scale = spread.libraryScale();
    }

    public double variance() {
        return spread.libraryVariance();
    }

    public double mean() {
        return shift;
    }

    /** Probability of an error greater than x. */
    public double above(double x) {
        double u = x - shift;
        if (scale == 0) {
            return u < 0 ? 1 : 0;
        }
        return switch (spread.law()) {
            case NORMAL -> NormalLaw.upperTail(u / scale);
            case RECTANGULAR -> clamp(0.5 - 0.5 * u / scale);
            case TRIANGULAR -> aboveTriangle(u / scale);
            case TRAPEZOIDAL -> aboveTrapezoid(u);
            case ARCSINE -> 0.5 - StrictMath.asin(Math.max(-1, Math.min(1, u / scale))) / StrictMath.PI;
            case BIAS -> u < 0 ? 1 : 0;
            case SAMPLES -> {
                double[] samples = spread.libraryCentredSamples();
                int above = 0;
                for (double sample : samples) {
                    if (sample > u) {
                        above++;
                    }
                }
                yield (double) above / samples.length;
            }
        };
    }

    /** Probability of an error less than x, from its own tail: every law but the samples is even about its shift. */
    public double below(double x) {
        if (spread.law() == ErrorDistribution.Law.SAMPLES) {
            double[] samples = spread.libraryCentredSamples();
            return (double) Arrays.stream(samples).filter(s -> s < x - shift).count() / samples.length;
        }
        return above(2 * shift - x);
    }

    /** The error that is passed with probability p, by halving between the ends; p in (0, 1). */
    public double passedWith(double p) {
        double lo = lowest();
        double hi = highest();
        for (int i = 0; i < HALVINGS && lo < hi; i++) {
            double middle = 0.5 * (lo + hi);
            if (above(middle) > p) {
                lo = middle;
            } else {
                hi = middle;
            }
        }
        return hi;
    }

    /** An error that all but never is passed: the bound, or seven standard deviations. */
    public double highest() {
        return shift + (spread.isBounded() ? scale : NORMAL_STEP * NORMAL_REACH * scale);
    }

    /** The same on the low side. */
    public double lowest() {
        return shift - (spread.isBounded() ? scale : NORMAL_STEP * NORMAL_REACH * scale);
    }

    /** Whether it has a smooth tail that goes on for ever. */
    public boolean isNormal() {
        return spread.law() == ErrorDistribution.Law.NORMAL && scale > 0;
    }

    /**
     * Errors in the first row, their weights in the second; the weights add up to 1.
     *
     * @param parts into how many each smooth piece of a bounded law is split: more for integrands with edges
     */
    public double[][] nodes(int parts) {
        if (scale == 0) {
            return new double[][] {{shift}, {1}};
        }
        return switch (spread.law()) {
            case NORMAL -> normal();
            case RECTANGULAR -> pieces(new double[] {-scale, 0, scale}, scale, parts);
            case TRIANGULAR -> pieces(new double[] {-scale, 0, scale}, 0, parts);
            case TRAPEZOIDAL -> {
                double top = spread.libraryTopScale();
                yield pieces(new double[] {-scale, -top, 0, top, scale}, top, parts);
            }
            case ARCSINE -> swings();
            case BIAS -> new double[][] {{shift}, {1}};
            case SAMPLES -> samples();
        };
    }

    private double[][] normal() {
        double[][] nodes = new double[2][2 * NORMAL_REACH + 1];
        double sum = 0;
        for (int i = 0; i < nodes[0].length; i++) {
            double z = NORMAL_STEP * (i - NORMAL_REACH);
            nodes[0][i] = shift + z * scale;
            nodes[1][i] = NormalLaw.density(z);
            sum += nodes[1][i];
        }
        return weighted(nodes, sum);
    }

    /**
     * Gauss-Legendre on each smooth piece of a density that is flat to the top's edge and falls straight from there.
     */
    private double[][] pieces(double[] edges, double top, int parts) {
        double[][] nodes = new double[2][(edges.length - 1) * parts * LEGENDRE];
        double sum = 0;
        int at = 0;
        for (int piece = 0; piece < edges.length - 1; piece++) {
            double half = 0.5 * (edges[piece + 1] - edges[piece]) / parts;
            for (int part = 0; part < parts; part++) {
                double middle = edges[piece] + (2 * part + 1) * half;
                for (int i = 0; i < LEGENDRE; i++) {
                    double u = middle + half * GAUSS[0][i];
                    double density = Math.abs(u) <= top ? 1 : (scale - Math.abs(u)) / (scale - top);
                    nodes[0][at] = shift + u;
                    nodes[1][at] = half * GAUSS[1][i] * density;
                    sum += nodes[1][at++];
                }
            }
        }
        return weighted(nodes, sum);
    }

    private double[][] swings() {
        double[][] nodes = new double[2][SWINGS];
        for (int i = 0; i < SWINGS; i++) {
            nodes[0][i] = shift + scale * StrictMath.sin(StrictMath.PI * ((i + 0.5) / SWINGS - 0.5));
            nodes[1][i] = 1.0 / SWINGS;
        }
        return nodes;
    }

    private double[][] samples() {
        double[] samples = spread.libraryCentredSamples();
        double[][] nodes = new double[2][samples.length];
        for (int i = 0; i < samples.length; i++) {
            nodes[0][i] = shift + samples[i];
            nodes[1][i] = 1.0 / samples.length;
        }
        return nodes;
    }

    private static double[][] weighted(double[][] nodes, double sum) {
        for (int i = 0; i < nodes[1].length; i++) {
            nodes[1][i] /= sum;
        }
        return nodes;
    }

    private static double aboveTriangle(double u) {
        if (u >= 0) {
            return u >= 1 ? 0 : 0.5 * (1 - u) * (1 - u);
        }
        return u <= -1 ? 1 : 1 - 0.5 * (1 + u) * (1 + u);
    }

    private double aboveTrapezoid(double u) {
        double top = spread.libraryTopScale();
        double size = Math.abs(u);
        double beyond;
        if (size >= scale) {
            beyond = 0;
        } else if (size > top) {
            beyond = 0.5 * (scale - size) * (scale - size) / ((scale - top) * (scale + top));
        } else {
            beyond = 0.5 - size / (scale + top);
        }
        return u >= 0 ? beyond : 1 - beyond;
    }

    private static double clamp(double p) {
        return Math.max(0, Math.min(1, p));
    }

    /** Nodes and weights on [-1, 1], by Newton's method on the Legendre polynomial. */
    private static double[][] legendre() {
        double[][] rule = new double[2][LEGENDRE];
        for (int i = 0; i < LEGENDRE; i++) {
            double x = -StrictMath.cos(StrictMath.PI * (i + 0.75) / (LEGENDRE + 0.5));
            double slope = 1;
            for (int step = 0; step < 50; step++) {
                double before = 1;
                double here = x;
                for (int k = 2; k <= LEGENDRE; k++) {
                    double next = ((2 * k - 1) * x * here - (k - 1) * before) / k;
                    before = here;
                    here = next;
                }
                slope = LEGENDRE * (x * here - before) / (x * x - 1);
                double change = here / slope;
                x -= change;
                if (Math.abs(change) < 1e-16) {
                    break;
                }
            }
            rule[0][i] = x;
            rule[1][i] = 2 / ((1 - x * x) * slope * slope);
        }
        return rule;
    }
}
