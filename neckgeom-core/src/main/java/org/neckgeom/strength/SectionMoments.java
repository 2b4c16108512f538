package org.neckgeom.strength;

/**
 * Sums of a transformed section: area and moments about the glue face, each part weighted with its modulus.
 *
 * <p>Parts are added one after the other, a void with a negative modulus. Then {@code zN = EQ/EA} and
 * {@code EI = EJ - EQ^2/EA}. Exact for bonded parts whose sections stay plane. Mutable, so that a scan over stations
 * makes no garbage; never leaves the package.
 */
final class SectionMoments {

    /** Half-angles whose sine is above this take the closed form of the crown, smaller ones its series. */
    private static final double SERIES_UP_TO = 0.25;

    /** Terms of the crown's series: enough for 1/16 to the fifteenth power. */
    private static final int TERMS = 15;

    /** Eight terms do up to here, which is every ordinary crown. */
    private static final double FEW_UP_TO = 0.01;

    // 1 - sqrt(1 - t^2) = sum b_j t^2j. Its square is 2 sum b_j t^2j from j = 2 on, and its cube sum (4 b_j - b_(j-1))
    // t^2j
    // from j = 3 on: the terms that cancel in the closed form are gone. Integrated from 0, over t^3.
    private static final double[] CROWN_1 = new double[TERMS];
    private static final double[] CROWN_2 = new double[TERMS];
    private static final double[] CROWN_3 = new double[TERMS];

    static {
        double b = 0.5;
        double previous = 0;
        for (int j = 1; j <= TERMS; j++) {
            CROWN_1[j - 1] = b / (2 * j + 1);
            CROWN_2[j - 1] = j < 2 ? 0 : 2 * b / (2 * j + 1);
            CROWN_3[j - 1] = j < 3 ? 0 : (4 * b - previous) / (2 * j + 1);
            previous = b;
            b *= (2.0 * j - 1) / (2.0 * j + 2);
        }
    }

    /** Divisions are what costs most here. */
    private static final double THIRD = 1.0 / 3;

    private double ea;
    private double eq;
    private double ej;

    void clear() {
        ea = 0;
        eq = 0;
        ej = 0;
    }

    /** Adds a rectangle from z = bottom to z = top. */
    void rectangle(double modulus, double width, double bottom, double top) {
        double a = modulus * width * (top - bottom);
        ea += a;
        eq += a * (bottom + top) / 2;
        ej += a * (bottom * bottom + bottom * top + top * top) * THIRD;
    }

    /** Adds a half superellipse below z = 0. */
    void superellipse(double modulus, double halfWidth, double depth, Superellipse shape) {
        double k = modulus * halfWidth * depth;
        ea += k * shape.area();
        eq -= k * depth * shape.first();
        ej += k * depth * depth * shape.second();
    }

    /** Adds what lies under z = 0 between two distances from the middle in a half superellipse. */
    void strip(double modulus, double from, double to, double halfWidth, double depth, Superellipse shape) {
        double[] near = shape.strips().outTo(from / halfWidth);
        double[] far = shape.strips().outTo(to / halfWidth);
        double k = modulus * halfWidth * depth;
        ea += k * (far[0] - near[0]);
        eq -= k * depth * (far[1] - near[1]) / 2;
        ej += k * depth * depth * (far[2] - near[2]) * THIRD;
    }

    /**
     * Adds a fingerboard on z = 0: middle thickness t, crown of radius R, so that its top is at
     * {@code t - (R - sqrt(R^2 - y^2))}.
     *
     * @param radius R, infinite for a flat board
     */
    void board(double modulus, double width, double thickness, double radius) {
        if (radius == Double.POSITIVE_INFINITY) {
            rectangle(modulus, width, 0, thickness);
            return;
        }
        double e = width / 2 / radius;
        if (e > SERIES_UP_TO) {
            double s = Math.sqrt(1 - e * e);
            double half = (e * s + StrictMath.asin(e)) / 2; // integral of sqrt(1 - t^2) from 0 to e
            double square = e - e * e * e / 3;
            double cube = (e * s * s * s + 3 * half) / 4;
            crowned(
                    modulus,
                    width,
                    thickness,
                    radius,
                    e - half,
                    e - 2 * half + square,
                    e - 3 * half + 3 * square - cube);
        } else {
            double t2 = e * e;
            double cubed = e * t2;
            crowned(
                    modulus,
                    width,
                    thickness,
                    radius,
                    cubed * series(CROWN_1, t2),
                    cubed * series(CROWN_2, t2),
                    cubed * series(CROWN_3, t2));
        }
    }

    /** Adds a board whose top has fallen by the crown: d1 to d3 are the integrals of the fall and its powers, over the radius. */
    private void crowned(double modulus, double width, double t, double r, double d1, double d2, double d3) {
        double drop = 2 * r * r * d1;
        double drop2 = 2 * r * r * r * d2;
        double drop3 = 2 * r * r * r * r * d3;
        ea += modulus * (width * t - drop);
        eq += modulus * (width * t * t - 2 * t * drop + drop2) / 2;
        ej += modulus * (width * t * t * t - 3 * t * t * drop + 3 * t * drop2 - drop3) * THIRD;
    }

    private static double series(double[] c, double t2) {
        if (t2 < FEW_UP_TO) {
            return few(c, t2);
        }
        double sum = 0;
        for (int i = TERMS - 1; i >= 0; i--) {
            sum = sum * t2 + c[i];
        }
        return sum;
    }

    /** The same by its first eight terms, in pairs that do not wait for each other: the rest of the section waits for the sum. */
    private static double few(double[] c, double t) {
        double square = t * t;
        double low = c[0] + t * c[1] + square * (c[2] + t * c[3]);
        double high = c[4] + t * c[5] + square * (c[6] + t * c[7]);
        return low + square * square * high;
    }

    /** Stiffness in tension, N. */
    double stretchStiffness() {
        return ea;
    }

    /** Height of the neutral axis over the glue face, mm. */
    double neutralAxis() {
        return eq / ea;
    }

    /** Bending stiffness about the neutral axis, N mm2. */
    double bendingStiffness() {
        return ej - neutralAxis() * eq;
    }

    /** Strain at a height, positive in tension, under a push along the neck and a moment that bows it forward. */
    double strain(double push, double moment, double z) {
        return -push / ea - moment * (z - neutralAxis()) / bendingStiffness();
    }
}
