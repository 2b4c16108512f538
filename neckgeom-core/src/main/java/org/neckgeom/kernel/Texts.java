package org.neckgeom.kernel;

import org.neckgeom.text.Numbers;

/** Numbers of this package as people read them. */
public final class Texts {

    private Texts() {}

    public static String deg(double rad) {
        return Numbers.fixed(Math.toDegrees(rad), 2) + " deg";
    }

    /** An angle that is positive toward the treble side: {@code 11.76 deg toward the bass side}. */
    public static String aside(double rad) {
        String size = deg(Math.abs(rad));
        return rad == 0 ? size : size + " toward the " + (rad > 0 ? "treble" : "bass") + " side";
    }

    /** A roll that is positive with the treble side low: {@code 1.32 deg, treble side low}. */
    public static String roll(double rad) {
        String size = deg(Math.abs(rad));
        return rad == 0 ? size : size + (rad > 0 ? ", treble side low" : ", bass side low");
    }

    public static String newton(double force) {
        return Numbers.fixed(force, 1) + " N";
    }
}
