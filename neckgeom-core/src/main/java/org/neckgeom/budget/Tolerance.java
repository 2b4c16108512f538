package org.neckgeom.budget;

/** The numerical tolerance of JCGM 101:2008, 7.9.2. */
final class Tolerance {

    private Tolerance() {}

    /** 7.9.2: u written as c times 10^l with an integer c of so many digits; half of 10^l. */
    static double of(double u, int digits) {
        if (u == 0.0) {
            return 0.0;
        }
        int exponent = (int) Math.floor(StrictMath.log10(u)) - (digits - 1);
        double c = Math.rint(u / StrictMath.pow(10.0, exponent));
        // 0.0996 to one digit is 1 x 10^-1, not 10 x 10^-2.
        if (c >= StrictMath.pow(10.0, digits)) {
            exponent++;
        }
        return 0.5 * StrictMath.pow(10.0, exponent);
    }
}
