package org.neckgeom.channel;

import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.numeric.StudentLaw;

/**
 * The normal law, or Student's of some degrees of freedom, as pieces of polynomials: distribution and density to 1e-9 in a few
 * nanoseconds, for integrals that ask thousands of times.
 *
 * <p>Student's law is smooth in {@code s = t/sqrt(nu + t^2)}: its density there is {@code C (1 - s^2)^(nu/2 - 1)}. Each piece is
 * the polynomial of degree 7 that has the law's value and three derivatives at both of its ends. Past the last piece the
 * tail is in pieces of {@code w = sqrt(1 - s^2)}, and past the last of these by its own series (Abramowitz and Stegun 26.5.4,
 * from memory).
 */
final class LawTable {

    private static final double NORMAL_END = 8.5;
    private static final double NORMAL_STEP = 0.25;
    /** Differences from the normal law are under 1e-6 of a chance. */
    private static final double AS_GOOD_AS_NORMAL = 1e5;

    private static final double STUDENT_END = 0.9;
    private static final int STUDENT_PIECES = 24;
    private static final double PIECES_GROW_FROM = 30;
    private static final int TERMS = 13;
    private static final int DEGREE = 8;
    private static final int HALVINGS = 20;
    private static final double MOST = 1e6;

    private static final LawTable NORMAL = normal();

    private final double degreesOfFreedom;
    private final double step;
    private final double end;
    private final double height;
    private final double[] pieces;
    /** The tail's pieces in w, from 0 to where {@link #end} is; none for the normal law. */
    private final double[] far;

    private final double farStep;
    private final double[] tail;

    private LawTable(
            double degreesOfFreedom,
            double step,
            double end,
            double height,
            double[] pieces,
            double[] far,
            double farStep) {
        this.degreesOfFreedom = degreesOfFreedom;
        this.step = step;
        this.end = end;
        this.height = height;
        this.pieces = pieces;
        this.far = far;
        this.farStep = farStep;
        this.tail = new double[Double.isInfinite(degreesOfFreedom) ? 0 : TERMS];
        double half = degreesOfFreedom / 2;
        double term = 1;
        for (int k = 0; k < tail.length; k++) {
            tail[k] = height * term / (2 * (half + k));
            term *= (k + 0.5) / (k + 1);
        }
    }

    static LawTable of(double degreesOfFreedom) {
        return degreesOfFreedom > AS_GOOD_AS_NORMAL ? NORMAL : student(degreesOfFreedom);
    }

    private static LawTable normal() {
        int count = (int) Math.round(NORMAL_END / NORMAL_STEP);
        double[][] nodes = new double[count + 1][];
        for (int i = 0; i <= count; i++) {
            double z = i * NORMAL_STEP;
            double f = NormalLaw.density(z);
            nodes[i] = new double[] {NormalLaw.cdf(z), f, -z * f, (z * z - 1) * f};
        }
        return new LawTable(
                Double.POSITIVE_INFINITY, NORMAL_STEP, NORMAL_END, 0, pieces(nodes, NORMAL_STEP), new double[0], 1);
    }

    private static LawTable student(double nu) {
        int count = STUDENT_PIECES * (int) Math.ceil(Math.sqrt(Math.max(1, nu / PIECES_GROW_FROM)));
        double step = STUDENT_END / count;
        double height = StudentLaw.density(0, nu) * Math.sqrt(nu);
        double power = nu / 2 - 1;
        double[][] nodes = new double[count + 1][];
        double cdf = 0.5;
        for (int i = 0; i <= count; i++) {
            double s = i * step;
            double q = 1 - s * s;
            double f = height * StrictMath.pow(q, power);
            double slope = -2 * power * s / q;
            double bend = slope * slope - 2 * power * (1 + s * s) / (q * q);
            nodes[i] = new double[] {0, f, f * slope, f * bend};
            if (i > 0) {
                cdf += integral(nodes[i - 1], nodes[i], step);
            }
            nodes[i][0] = cdf;
        }
        double farStep = Math.sqrt(1 - STUDENT_END * STUDENT_END) / count;
        return new LawTable(
                nu, step, STUDENT_END, height, pieces(nodes, step), far(nu, height, 1 - cdf, count, farStep), farStep);
    }

    /** The tail over {@code w = sqrt(1 - s^2)}: its slope is {@code C w^(nu-1)/sqrt(1 - w^2)}. */
    private static double[] far(double nu, double height, double atEnd, int count, double step) {
        double[][] nodes = new double[count + 1][];
        double above = atEnd;
        for (int i = count; i > 0; i--) {
            double w = i * step;
            double q = 1 - w * w;
            double f = height * StrictMath.pow(w, nu - 1) / Math.sqrt(q);
            double slope = (nu - 1) / w + w / q;
            double bend = slope * slope - (nu - 1) / (w * w) + (1 + w * w) / (q * q);
            nodes[i] = new double[] {0, f, f * slope, f * bend};
            if (i < count) {
                above -= integral(nodes[i], nodes[i + 1], step);
            }
            nodes[i][0] = above;
        }
        // The piece next to 0 is never asked: the series has it.
        nodes[0] = nodes[1];
        return pieces(nodes, step);
    }

    /** Integral of a density over a piece, from its value and two derivatives at both ends. */
    private static double integral(double[] a, double[] b, double step) {
        return step * (a[1] + b[1]) / 2 + step * step * (a[2] - b[2]) / 10 + step * step * step * (a[3] + b[3]) / 120;
    }

    /** From value and three derivatives at both ends of each piece, its coefficients in the part of the piece. */
    private static double[] pieces(double[][] nodes, double h) {
        double[] pieces = new double[DEGREE * (nodes.length - 1)];
        for (int i = 0; i + 1 < nodes.length; i++) {
            double[] l = nodes[i];
            double[] r = nodes[i + 1];
            double c1 = h * l[1];
            double c2 = h * h * l[2] / 2;
            double c3 = h * h * h * l[3] / 6;
            double a = r[0] - l[0] - c1 - c2 - c3;
            double b = h * r[1] - c1 - 2 * c2 - 3 * c3;
            double c = h * h * r[2] / 2 - c2 - 3 * c3;
            double d = h * h * h * r[3] / 6 - c3;
            int at = DEGREE * i;
            pieces[at] = l[0];
            pieces[at + 1] = c1;
            pieces[at + 2] = c2;
            pieces[at + 3] = c3;
            pieces[at + 4] = 35 * a - 15 * b + 5 * c - d;
            pieces[at + 5] = -84 * a + 39 * b - 14 * c + 3 * d;
            pieces[at + 6] = 70 * a - 34 * b + 13 * c - 3 * d;
            pieces[at + 7] = -20 * a + 10 * b - 4 * c + d;
        }
        return pieces;
    }

    /** The chance of a value up to z. */
    double cdf(double z) {
        double upper = fromMiddleUp(Math.abs(z));
        return z < 0 ? 1 - upper : upper;
    }

    private double fromMiddleUp(double z) {
        if (Double.isInfinite(degreesOfFreedom)) {
            return z < end ? value(pieces, z / step) : 1;
        }
        if (Double.isInfinite(z)) {
            return 1;
        }
        double s = z / Math.sqrt(degreesOfFreedom + z * z);
        if (s < end) {
            return value(pieces, s / step);
        }
        double q = degreesOfFreedom / (degreesOfFreedom + z * z);
        double w = Math.sqrt(q);
        if (w >= farStep) {
            return 1 - value(far, w / farStep);
        }
        double sum = 0;
        for (int k = TERMS - 1; k >= 0; k--) {
            sum = sum * q + tail[k];
        }
        return 1 - StrictMath.pow(q, degreesOfFreedom / 2) * sum;
    }

    private static double value(double[] pieces, double place) {
        int piece = Math.min((int) place, pieces.length / DEGREE - 1);
        double t = place - piece;
        int at = DEGREE * piece;
        double sum = pieces[at + 7];
        for (int k = 6; k >= 0; k--) {
            sum = sum * t + pieces[at + k];
        }
        return sum;
    }

    /** A value that is exceeded with a chance, found by halving: never above the true one by more than the last step; 0 for a half. */
    double upperQuantile(double chance) {
        double low = 0;
        double high = 1;
        while (high < MOST && 1 - cdf(high) > chance) {
            low = high;
            high *= 2;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (1 - cdf(middle) > chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The density at z. */
    double density(double z) {
        double size = Math.abs(z);
        if (Double.isInfinite(degreesOfFreedom)) {
            return size < end ? slope(pieces, size / step) / step : 0;
        }
        double q = degreesOfFreedom / (degreesOfFreedom + z * z);
        double stretch = q * Math.sqrt(q / degreesOfFreedom);
        double s = size / Math.sqrt(degreesOfFreedom + z * z);
        if (s < end) {
            return slope(pieces, s / step) / step * stretch;
        }
        double w = Math.sqrt(q);
        // The tail falls with s as it grows with w: ds/dw = -w/s.
        return w >= farStep
                ? slope(far, w / farStep) / farStep * s / w * stretch
                : height * StrictMath.pow(q, degreesOfFreedom / 2 - 1) * stretch;
    }

    private static double slope(double[] pieces, double place) {
        int piece = Math.min((int) place, pieces.length / DEGREE - 1);
        double t = place - piece;
        int at = DEGREE * piece;
        double sum = 7 * pieces[at + 7];
        for (int k = 6; k >= 1; k--) {
            sum = sum * t + k * pieces[at + k];
        }
        return sum;
    }
}
