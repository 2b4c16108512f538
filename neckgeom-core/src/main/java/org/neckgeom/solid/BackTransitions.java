package org.neckgeom.solid;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;
import org.neckgeom.kernel.NeckSetKernel;

/**
 * Depth that the two transitions of a back leave on beyond its profile, and what carving has made of it so far, on plain
 * doubles in mm. Immutable.
 */
final class BackTransitions {

    static final BackTransitions NONE =
            new BackTransitions(0, 1, Double.POSITIVE_INFINITY, 1, Collections.emptyNavigableMap());

    private final double volute;
    private final double voluteLength;
    private final double heelStart;
    private final double heelRadius;

    /** How much deeper than drawn the back was carved, by station. */
    private final NavigableMap<Double, Double> carved;

    private BackTransitions(
            double volute,
            double voluteLength,
            double heelStart,
            double heelRadius,
            NavigableMap<Double, Double> carved) {
        this.volute = volute;
        this.voluteLength = voluteLength;
        this.heelStart = heelStart;
        this.heelRadius = heelRadius;
        this.carved = Collections.unmodifiableNavigableMap(carved);
    }

    BackTransitions volute(double extra, double length) {
        return new BackTransitions(extra, length, heelStart, heelRadius, carved);
    }

    BackTransitions heel(double start, double radius) {
        return new BackTransitions(volute, voluteLength, start, radius, carved);
    }

    BackTransitions carved(double station, double deeper) {
        NavigableMap<Double, Double> more = new TreeMap<>(carved);
        more.put(station, deeper);
        return new BackTransitions(volute, voluteLength, heelStart, heelRadius, more);
    }

    double voluteMm() {
        return volute;
    }

    double voluteLengthMm() {
        return voluteLength;
    }

    double heelStartMm() {
        return heelStart;
    }

    double heelRadiusMm() {
        return heelRadius;
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

    int carvedStations() {
        return carved.size();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BackTransitions that
                && Double.compare(volute, that.volute) == 0
                && Double.compare(voluteLength, that.voluteLength) == 0
                && Double.compare(heelStart, that.heelStart) == 0
                && Double.compare(heelRadius, that.heelRadius) == 0
                && carved.equals(that.carved);
    }

    @Override
    public int hashCode() {
        return Objects.hash(volute, voluteLength, heelStart, heelRadius, carved);
    }
}
