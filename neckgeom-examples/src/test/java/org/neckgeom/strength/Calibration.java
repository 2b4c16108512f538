package org.neckgeom.strength;

import org.neckgeom.neck.Neck;

/** Opens what is known of a neck's causes, which has no public door of its own, to the benchmarks. */
public final class Calibration {

    private final StrungNeck strung;

    /** A neck with readings, worked out once. */
    public Calibration(Neck neck, StiffnessReadings readings) {
        strung = StrungNeck.usual(neck).knowing(readings);
        uncertainty(readings);
    }

    /** Takes all readings in, and returns the relative uncertainty that they leave of relief. */
    public double uncertainty(StiffnessReadings readings) {
        StrungNeck known = strung.knowing(readings);
        return known.state().deviation(known.effects());
    }
}
