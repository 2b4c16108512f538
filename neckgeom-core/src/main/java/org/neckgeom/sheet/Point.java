package org.neckgeom.sheet;

/** A point of a drawing's plane, in mm of the neck or in units of the drawing as the place says. */
record Point(double u, double v) {

    Point plus(double du, double dv) {
        return new Point(u + du, v + dv);
    }

    double distanceTo(Point other) {
        return StrictMath.hypot(other.u - u, other.v - v);
    }
}
