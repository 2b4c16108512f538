package org.neckgeom.budget;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The exact distribution where an arcsine part is hardly smoothed by the others, so that its characteristic function
 * would fall too slowly: {@code F(y) = (1/pi) integral of F_rest(y - a cos theta)} over theta from 0 to pi, panel by panel
 * between the bends of the rest, by the double exponential rule (H. Takahasi and M. Mori, 1974).
 */
final class ArcsineLaw extends ExactLaw {

    /** Largest error of a probability; the double exponential rule itself is better. */
    static final double ARCSINE_ACCURACY = 1e-10;

    private static final int MOST_BREAKS = 64;
    private static final double STEP = 1.0 / 11.0;
    private static final int HALF_POINTS = 36;
    private static final double[] PLACE = new double[2 * HALF_POINTS + 1];
    private static final double[] FROM_END = new double[2 * HALF_POINTS + 1];
    private static final double[] WEIGHT = new double[2 * HALF_POINTS + 1];

    static {
        for (int i = -HALF_POINTS; i <= HALF_POINTS; i++) {
            double t = i * STEP;
            double s = 0.5 * Math.PI * StrictMath.sinh(t);
            int n = i + HALF_POINTS;
            PLACE[n] = 0.5 * (1.0 + StrictMath.tanh(s));
            FROM_END[n] = 1.0 / (1.0 + StrictMath.exp(2.0 * Math.abs(s)));
            double cosh = StrictMath.cosh(s);
            WEIGHT[n] = STEP * 0.25 * Math.PI * StrictMath.cosh(t) / (cosh * cosh);
        }
    }

    private final double halfWidth;
    private final @Nullable ExactLaw rest;
    private final @Nullable ExactLaw turned;
    private final double[] breaks;

    ArcsineLaw(Parts parts, @Nullable ExactLaw rest, @Nullable ExactLaw turned) {
        super(parts);
        this.halfWidth = parts.arcsines[0];
        this.rest = rest;
        this.turned = turned;
        this.breaks = rest == null ? new double[] {0.0} : rest.breaks();
    }

    @Override
    double accuracy() {
        return ARCSINE_ACCURACY;
    }

    @Override
    double lower(double y) {
        return y > 0.0 ? 1.0 - over(turned, -y, -1.0, false) : over(rest, y, 1.0, false);
    }

    @Override
    double upper(double y) {
        return y > 0.0 ? over(turned, -y, -1.0, false) : 1.0 - over(rest, y, 1.0, false);
    }

    @Override
    double density(double y) {
        return over(rest, y, 1.0, true);
    }

    @Override
    double[] breaks() {
        double[] all = new double[2 * breaks.length];
        for (int i = 0; i < breaks.length; i++) {
            all[2 * i] = breaks[i] - halfWidth;
            all[2 * i + 1] = breaks[i] + halfWidth;
        }
        return all;
    }

    private double over(@Nullable ExactLaw law, double y, double sign, boolean density) {
        if (law == null) {
            return alone(y, density);
        }
        double[] ends = new double[breaks.length + 2];
        int n = 0;
        ends[n++] = 0.0;
        for (double b : breaks.length <= MOST_BREAKS ? breaks : new double[] {breaks[0], 0.0, -breaks[0]}) {
            double cos = (y - sign * b) / halfWidth;
            if (cos > -1.0 && cos < 1.0) {
                ends[n++] = StrictMath.acos(cos);
            }
        }
        ends[n++] = Math.PI;
        Arrays.sort(ends, 0, n);
        double sum = 0.0;
        for (int i = 1; i < n; i++) {
            double width = ends[i] - ends[i - 1];
            if (width > 1e-15) {
                sum += panel(law, y, ends[i - 1], ends[i], density) * width;
            }
        }
        double value = sum / Math.PI;
        return density ? value : Math.max(0.0, Math.min(1.0, value));
    }

    private double panel(ExactLaw law, double y, double from, double to, boolean density) {
        double width = to - from;
        double sum = 0.0;
        for (int i = 0; i < PLACE.length; i++) {
            // Counted from the nearer end, where the bends are.
            double theta = PLACE[i] < 0.5 ? from + FROM_END[i] * width : to - FROM_END[i] * width;
            double u = y - halfWidth * StrictMath.cos(theta);
            sum += WEIGHT[i] * (density ? law.density(u) : law.lower(u));
        }
        return sum;
    }

    private double alone(double y, boolean density) {
        double r = y / halfWidth;
        if (density) {
            return Math.abs(r) < 1.0 ? 1.0 / (Math.PI * Math.sqrt((halfWidth - y) * (halfWidth + y))) : 0.0;
        }
        if (r <= -1.0) {
            return 0.0;
        }
        return r >= 1.0 ? 1.0 : StrictMath.acos(-r) / Math.PI;
    }
}
