package org.neckgeom.solid;

import java.util.Objects;
import java.util.Set;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.End;

/** The ends at which a channel, and a pocket that reaches as far, runs out of the work; none, one or both. Immutable. */
record OpenEnds(Set<End> ends) {

    static final OpenEnds NONE = new OpenEnds(Set.of());

    private static final double SAME_MM = 1e-6;

    OpenEnds {
        ends = Set.copyOf(Objects.requireNonNull(ends, "open ends"));
    }

    /** Whether what begins at a station of the channel is open there. */
    boolean isOpenAtHead(Channel channel, double start) {
        return ends.contains(End.HEAD) && start - channel.startMm() <= SAME_MM;
    }

    /** Whether what ends at a station of the channel is open there. */
    boolean isOpenAtHeel(Channel channel, double end) {
        return ends.contains(End.HEEL) && channel.endMm() - end <= SAME_MM;
    }
}
