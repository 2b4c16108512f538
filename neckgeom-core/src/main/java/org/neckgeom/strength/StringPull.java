package org.neckgeom.strength;

/**
 * The strings as one load on the neck: a section at x carries {@code M(x) = m0 + m1 x - P zN(x)}.
 *
 * <p>The strings leave the nut in straight lines toward the saddle, so cutting neck and strings at x leaves on the head
 * side nothing but their tension. With tension T, slope angle s and height h0 at the nut over the glue face each string adds
 * {@code T cos s} to P, {@code T cos s h0} to m0 and {@code T sin s} to m1. Exact for the straight neck; what the bow adds
 * is left to {@link BeamScan}. M is positive when it bows the neck forward.
 *
 * @param pull P, N
 * @param atNut m0, N mm
 * @param perMm m1, N
 * @param overSaddle sum of each string's part of P over the x of its saddle, N/mm
 */
record StringPull(double pull, double atNut, double perMm, double overSaddle) {

    static final StringPull NONE = new StringPull(0, 0, 0, 0);

    /** Adds a string that lies h0 over the glue face at the nut and h1 over it at the saddle, at x1. */
    StringPull plus(double tension, double h0, double h1, double x1) {
        double length = Math.sqrt(x1 * x1 + (h1 - h0) * (h1 - h0));
        double along = tension * x1 / length;
        return new StringPull(
                pull + along, atNut + along * h0, perMm + tension * (h1 - h0) / length, overSaddle + along / x1);
    }

    double moment(double x, double neutralAxis) {
        return atNut + perMm * x - pull * neutralAxis;
    }

    /** What the bow adds at x: the strings run from the lifted nut to the saddle while the neck there has risen. */
    double momentOfBow(double x, double nutLift, double rise) {
        return nutLift * (pull - x * overSaddle) - pull * rise;
    }
}
