package org.neckgeom.neck;

import java.util.Locale;

/**
 * One of the two ends of a neck: head end or heel end.
 */
public enum End {
    /** Where the tuners are: the smaller x. */
    HEAD,
    /** Where the body is: the larger x. */
    HEEL;

    /** Returns {@code head} or {@code heel}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
