package org.neckgeom.kernel;

/** A vector of three doubles, for the tests' own geometry. */
public record Vec(double x, double y, double z) {

    public static final Vec X = new Vec(1, 0, 0);
    public static final Vec Y = new Vec(0, 1, 0);
    public static final Vec Z = new Vec(0, 0, 1);

    public Vec plus(Vec o) {
        return new Vec(x + o.x, y + o.y, z + o.z);
    }

    public Vec minus(Vec o) {
        return new Vec(x - o.x, y - o.y, z - o.z);
    }

    public Vec times(double k) {
        return new Vec(k * x, k * y, k * z);
    }

    public double dot(Vec o) {
        return x * o.x + y * o.y + z * o.z;
    }

    public Vec cross(Vec o) {
        return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    public Vec unit() {
        return times(1 / length());
    }

    public double angleTo(Vec o) {
        return Math.atan2(cross(o).length(), dot(o));
    }

    /** Turned about an axis through the origin by the right-hand rule (Rodrigues). */
    public Vec turned(Vec axis, double angle) {
        Vec k = axis.unit();
        return times(Math.cos(angle))
                .plus(k.cross(this).times(Math.sin(angle)))
                .plus(k.times(k.dot(this) * (1 - Math.cos(angle))));
    }

    /** Where two lines of the x-z plane meet, each given by its normal and its distance from the origin along it. */
    public static Vec meet(Vec n1, double d1, Vec n2, double d2) {
        double det = n1.x * n2.z - n1.z * n2.x;
        return new Vec((d1 * n2.z - n1.z * d2) / det, 0, (n1.x * d2 - d1 * n2.x) / det);
    }
}
