package org.neckgeom.solid;

/**
 * How a section's half axes change along the neck, and what the nearest point of one quarter in space comes to from there: one
 * Newton step in the station and the place on the curve together, whose last part is added in closed form. Not shared.
 *
 * <p>With Q half the squared distance, g its slopes and H its second derivatives in both: the step is {@code -H^-1 g}, and Q
 * falls by {@code g H^-1 g / 2}. It needs no power beyond those of the section.
 */
final class AlongNeck {

    /** A step along the curve that changes its slope by more than this share is not trusted. */
    private static final double MOST_TURN = 0.02;

    private final double offset;
    private final double wide1;
    private final double wide2;
    private final double deep1;
    private final double deep2;
    private double step = Double.NaN;
    private double squared = Double.NaN;

    /**
     * At one station.
     *
     * @param offset of the section from the point, along the neck
     * @param wide1 slope of the half-width
     * @param wide2 its second derivative
     * @param deep1 slope of the depth
     * @param deep2 its second derivative
     */
    AlongNeck(double offset, double wide1, double wide2, double deep1, double deep2) {
        this.offset = offset;
        this.wide1 = wide1;
        this.wide2 = wide2;
        this.deep1 = deep1;
        this.deep2 = deep2;
    }

    /** The step to the nearest point's station; not a number where the curve's end is nearest or no step is trusted. */
    double step() {
        return step;
    }

    /** The squared distance in space that the step foretells. */
    double squared() {
        return squared;
    }

    /** Another that was nearer. */
    void take(AlongNeck nearer) {
        step = nearer.step;
        squared = nearer.squared;
    }

    AlongNeck again() {
        return new AlongNeck(offset, wide1, wide2, deep1, deep2);
    }

    /**
     * Takes the foot on {@code (a t, b w(t))}.
     *
     * @param byWidth whether t runs along the half-width; else along the depth
     * @param foot the place and what the section's own search ended with
     */
    void at(boolean byWidth, Foot foot) {
        double t1 = byWidth ? wide1 : deep1;
        double t2 = byWidth ? wide2 : deep2;
        double w1 = byWidth ? deep1 : wide1;
        double w2 = byWidth ? deep2 : wide2;
        double u1 = t1 * foot.t;
        double v1 = w1 * foot.w;
        double gx = offset + foot.du * u1 + foot.dv * v1;
        double hxx = 1 + u1 * u1 + v1 * v1 + foot.du * t2 * foot.t + foot.dv * w2 * foot.w;
        double hxt = foot.du * t1 + foot.a * u1 + foot.dv * w1 * foot.slope / foot.b + foot.slope * v1;
        double det = hxx * foot.curvature - hxt * hxt;
        double along = -(gx * foot.curvature - foot.g * hxt) / det;
        double around = -(foot.g * hxx - gx * hxt) / det;
        boolean trusted = det > 0 && Math.abs(around) * foot.turn < MOST_TURN;
        step = trusted ? along : Double.NaN;
        squared = offset * offset + foot.squared + (trusted ? gx * along + foot.g * around : 0);
    }

    /**
     * A foot on the unit curve scaled by a and b.
     *
     * @param t place along the first axis, on the unit curve
     * @param w the unit curve's other coordinate there
     * @param a the first half axis
     * @param b the other
     * @param du from the point to the foot along the first axis
     * @param dv along the other
     * @param slope of the other coordinate by t
     * @param g half the slope of the squared distance by t
     * @param curvature half its second derivative
     * @param squared the squared distance in the section
     * @param turn share by which the slope changes per t
     */
    record Foot(
            double t,
            double w,
            double a,
            double b,
            double du,
            double dv,
            double slope,
            double g,
            double curvature,
            double squared,
            double turn) {}
}
