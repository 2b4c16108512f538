package org.neckgeom.kernel;

import org.neckgeom.text.Numbers;

/** Numbers of this package as people read them. */
public final class Texts {

    private Texts() {}

    public static String deg(double rad) {
        return Numbers.fixed(Math.toDegrees(rad), 2) + " deg";
    }
}
