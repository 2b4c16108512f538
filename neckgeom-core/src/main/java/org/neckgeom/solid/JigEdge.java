package org.neckgeom.solid;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;

/** Edges of jigs: a wanted line moved inward, square to itself. Library units. */
final class JigEdge {

    private static final int STEPS = 64;
    private static final int HALVINGS = 60;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private JigEdge() {}

    /** The straight edge of a taper. */
    static double taper(Neck neck, double x, double inside) {
        double slope = neck.halfWidthAtMm(x + 0.5) - neck.halfWidthAtMm(x - 0.5);
        return neck.halfWidthAtMm(x) - inside * Math.sqrt(1 + slope * slope);
    }

    /**
     * A curve of distances from a centreline, moved inward: what a disc of that radius leaves when it runs along the curve,
     * {@code min (c(x + t) - sqrt(g^2 - t^2))} for t from -g to g.
     */
    static double inward(DoubleUnaryOperator curve, double x, double inside) {
        if (inside == 0) {
            return curve.applyAsDouble(x);
        }
        DoubleUnaryOperator left = t -> curve.applyAsDouble(x + t) - Math.sqrt(Math.max(0, inside * inside - t * t));
        int best = 0;
        for (int i = 1; i <= STEPS; i++) {
            best = left.applyAsDouble(at(i, inside)) < left.applyAsDouble(at(best, inside)) ? i : best;
        }
        return least(left, at(Math.max(0, best - 1), inside), at(Math.min(STEPS, best + 1), inside));
    }

    private static double at(int step, double inside) {
        return inside * (2.0 * step / STEPS - 1);
    }

    /** By golden sections. */
    private static double least(DoubleUnaryOperator of, double from, double to) {
        double a = from;
        double b = to;
        for (int i = 0; i < HALVINGS; i++) {
            double c = b - GOLDEN * (b - a);
            double d = a + GOLDEN * (b - a);
            if (of.applyAsDouble(c) <= of.applyAsDouble(d)) {
                b = d;
            } else {
                a = c;
            }
        }
        return of.applyAsDouble((a + b) / 2);
    }

    /** How far an outline reaches to one side (1 treble, -1 bass) of the axis at a station along it; NaN past its end. */
    static double reach(Polyline outline, double u, int side) {
        List<Spot> spots = outline.spots();
        double reach = Double.NaN;
        for (int i = 0; i < spots.size(); i++) {
            Spot a = spots.get(i);
            Spot b = spots.get((i + 1) % spots.size());
            if (Math.min(a.uMm(), b.uMm()) <= u && u <= Math.max(a.uMm(), b.uMm())) {
                double share = a.uMm() == b.uMm() ? 0 : (u - a.uMm()) / (b.uMm() - a.uMm());
                double v = side * (a.vMm() + share * (b.vMm() - a.vMm()));
                reach = Double.isNaN(reach) ? v : Math.max(reach, v);
            }
        }
        return reach;
    }
}
