package org.neckgeom.geometry;

/** A vector of three doubles, for the tests' own geometry. */
record Vec(double x, double y, double z) {

    static final Vec X = new Vec(1, 0, 0);
    static final Vec Y = new Vec(0, 1, 0);
    static final Vec Z = new Vec(0, 0, 1);

    Vec plus(Vec o) {
        return new Vec(x + o.x, y + o.y, z + o.z);
    }

    Vec minus(Vec o) {
        return new Vec(x - o.x, y - o.y, z - o.z);
    }

    Vec times(double k) {
        return new Vec(k * x, k * y, k * z);
    }

    double dot(Vec o) {
        return x * o.x + y * o.y + z * o.z;
    }

    Vec cross(Vec o) {
        return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    Vec unit() {
        return times(1 / length());
    }

    double angleTo(Vec o) {
        return Math.atan2(cross(o).length(), dot(o));
    }

    /** Turned about an axis through the origin by the right-hand rule (Rodrigues). */
    Vec turned(Vec axis, double angle) {
        Vec k = axis.unit();
        return times(Math.cos(angle))
                .plus(k.cross(this).times(Math.sin(angle)))
                .plus(k.times(k.dot(this) * (1 - Math.cos(angle))));
    }

    /** Where two lines of the x-z plane meet, each given by its normal and its distance from the origin along it. */
    static Vec meet(Vec n1, double d1, Vec n2, double d2) {
        double det = n1.x * n2.z - n1.z * n2.x;
        return new Vec((d1 * n2.z - n1.z * d2) / det, 0, (n1.x * d2 - d1 * n2.x) / det);
    }
}
