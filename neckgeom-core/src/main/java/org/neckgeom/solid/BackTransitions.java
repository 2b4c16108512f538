package org.neckgeom.solid;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Volute;

/**
 * Depth that the two transitions of a back leave on beyond its profile, and what carving has made of it so far, on plain
 * doubles in mm. Immutable.
 *
 * @param carved how much deeper than drawn the back was carved, by station; never changed
 */
record BackTransitions(
        double volute, double voluteLength, double heelStart, double heelRadius, NavigableMap<Double, Double> carved) {

    /** Those of a back that is not carved yet. */
    static BackTransitions of(BackProfile back) {
        return of(back, Collections.emptyNavigableMap());
    }

    /** Those of another back, carved the same. */
    BackTransitions on(BackProfile back) {
        return of(back, carved);
    }

    private static BackTransitions of(BackProfile back, NavigableMap<Double, Double> carved) {
        return new BackTransitions(
                back.volute().map(Volute::extraDepthMm).orElse(0.0),
                back.volute().map(Volute::lengthMm).orElse(1.0),
                back.heelTransition().map(HeelTransition::startMm).orElse(Double.POSITIVE_INFINITY),
                back.heelTransition().map(HeelTransition::radiusMm).orElse(1.0),
                carved);
    }

    BackTransitions deeper(double station, double by) {
        NavigableMap<Double, Double> more = new TreeMap<>(carved);
        more.put(station, by);
        return new BackTransitions(volute, voluteLength, heelStart, heelRadius, more);
    }

    /** Straight between two stations read, and as at the nearest of them beyond. */
    double carvedAt(double x) {
        if (carved.isEmpty()) {
            return 0;
        }
        Map.Entry<Double, Double> before = carved.floorEntry(x);
        Map.Entry<Double, Double> after = carved.ceilingEntry(x);
        if (before == null || after == null) {
            return (before == null ? after : before).getValue();
        }
        double run = after.getKey() - before.getKey();
        double share = run > 0 ? (x - before.getKey()) / run : 0;
        return before.getValue() + share * (after.getValue() - before.getValue());
    }

    double extraAt(double x) {
        double extra = 0;
        if (volute > 0 && Math.abs(x) < voluteLength) {
            extra += volute * 0.5 * (1 + StrictMath.cos(StrictMath.PI * x / voluteLength));
        }
        if (x > heelStart) {
            double run = Math.min(x - heelStart, heelRadius);
            extra += NeckSetKernel.drop(heelRadius, run);
        }
        return extra;
    }
}
