package org.neckgeom.measure;

/** The call of a verdict: the result of the decision rule (ISO 14253-1). */
public enum Decision {
    /** Surely enough within the limits: go on. */
    WITHIN,
    /** Surely enough outside the limits: correct it. */
    OUTSIDE,
    /** Too near a limit for what is known: read again, or read better. */
    UNDECIDED
}
