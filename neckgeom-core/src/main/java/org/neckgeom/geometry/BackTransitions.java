package org.neckgeom.geometry;

import java.util.Objects;
import org.neckgeom.units.LengthStyle;

/** Depth that the two transitions of a back leave on beyond its profile, on plain doubles in mm. Immutable. */
final class BackTransitions {

    static final BackTransitions NONE = new BackTransitions(0, 1, Double.POSITIVE_INFINITY, 1);

    private final double volute;
    private final double voluteLength;
    private final double heelStart;
    private final double heelRadius;

    private BackTransitions(double volute, double voluteLength, double heelStart, double heelRadius) {
        this.volute = volute;
        this.voluteLength = voluteLength;
        this.heelStart = heelStart;
        this.heelRadius = heelRadius;
    }

    BackTransitions volute(double extra, double length) {
        return new BackTransitions(extra, length, heelStart, heelRadius);
    }

    BackTransitions heel(double start, double radius) {
        return new BackTransitions(volute, voluteLength, start, radius);
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

    String words(LengthStyle style) {
        String text = volute > 0
                ? ", volute " + style.brief(volute) + " run out " + style.brief(voluteLength) + " from the nut"
                : "";
        return Double.isInfinite(heelStart)
                ? text
                : text + ", heel from " + style.brief(heelStart) + " with radius " + style.brief(heelRadius);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BackTransitions that
                && Double.compare(volute, that.volute) == 0
                && Double.compare(voluteLength, that.voluteLength) == 0
                && Double.compare(heelStart, that.heelStart) == 0
                && Double.compare(heelRadius, that.heelRadius) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(volute, voluteLength, heelStart, heelRadius);
    }
}
