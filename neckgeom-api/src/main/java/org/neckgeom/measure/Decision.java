package org.neckgeom.measure;

/** What a verdict comes to. */
public enum Decision {
    /** Surely enough within the limits: go on. */
    WITHIN,
    /** Surely enough outside the limits: correct it. */
    OUTSIDE,
    /** Too near a limit for what is known: read again, or read better. */
    UNDECIDED
}
