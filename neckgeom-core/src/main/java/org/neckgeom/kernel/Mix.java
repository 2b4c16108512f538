package org.neckgeom.kernel;

/** Whole numbers mixed, so that like ones become unlike. */
public final class Mix {

    private Mix() {}

    /** SplitMix64's finisher (G. L. Steele, D. Lea and C. H. Flood, OOPSLA 2014). */
    public static long of(long z) {
        long y = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        y = (y ^ (y >>> 27)) * 0x94D049BB133111EBL;
        return y ^ (y >>> 31);
    }
}
