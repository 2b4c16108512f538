package org.neckgeom.plan;

import java.util.Locale;

/** How a check is decided, from the best to the worst. */
public enum Outcome {
    /** It keeps its limit: go on. */
    OK,
    /** Not measured, too near the limit to decide, or outside it in a way that the step shown puts right. */
    OPEN,
    /** It breaks its limit: do not cut. */
    STOP;

    /** Returns such as {@code ok}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
