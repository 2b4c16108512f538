package org.neckgeom.state;

/** Lagrange's cubic between the entries of a table, evenly spaced: the first lies one step before the place 0. */
final class Cubic {

    private static final double SIXTH = 1.0 / 6.0;

    private Cubic() {}

    /** The value at a place in steps, 0 to the table's length less 4. */
    static double at(double[] values, double place) {
        int i = (int) place;
        double s = place - i;
        double a = values[i];
        double b = values[i + 1];
        double c = values[i + 2];
        double d = values[i + 3];
        double r = s + 1.0;
        double t = s - 1.0;
        double w = s - 2.0;
        return s * t * SIXTH * (r * d - w * a) + 0.5 * r * w * (t * b - s * c);
    }
}
