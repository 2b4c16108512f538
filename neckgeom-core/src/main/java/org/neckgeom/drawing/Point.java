package org.neckgeom.drawing;

/** A point of a drawing's plane, in mm of the neck or in units of the drawing, by context. */
public record Point(double u, double v) {

    public Point plus(double du, double dv) {
        return new Point(u + du, v + dv);
    }

    public double distanceTo(Point other) {
        return StrictMath.hypot(other.u - u, other.v - v);
    }
}
