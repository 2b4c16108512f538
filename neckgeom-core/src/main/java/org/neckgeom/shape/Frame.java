package org.neckgeom.shape;

import java.util.Objects;
import org.neckgeom.fault.Refusal;

/**
 * A place and three axes of its own, right-handed: where a piece lies on the neck. Immutable.
 *
 * <p>A mirror is no frame: its axes are left-handed, and are refused.
 *
 * @param origin where its own origin lies
 * @param u its first axis
 * @param v its second axis, square to the first
 * @param w its third axis, {@code u x v}
 */
public record Frame(Point origin, Direction u, Direction v, Direction w) {

    /** The neck's own frame. */
    public static final Frame NECK = new Frame(Point.ORIGIN, Direction.TO_BODY, Direction.TO_TREBLE, Direction.UP);

    private static final double TOLERANCE = 1e-12;

    /**
     * Checks that the axes are square to each other and right-handed, to 1e-12.
     *
     * @param origin where its own origin lies
     * @param u its first axis
     * @param v its second axis
     * @param w its third axis
     */
    public Frame {
        Objects.requireNonNull(origin, "origin");
        double handed =
                triple(Objects.requireNonNull(u, "u"), Objects.requireNonNull(v, "v"), Objects.requireNonNull(w, "w"));
        boolean square =
                Math.abs(u.dot(v)) <= TOLERANCE && Math.abs(u.dot(w)) <= TOLERANCE && Math.abs(v.dot(w)) <= TOLERANCE;
        if (!square || !(Math.abs(handed - 1) <= TOLERANCE)) {
            throw Refusal.of(
                    "axes of a frame",
                    "right-handed",
                    "be square to each other and right-handed",
                    "were",
                    u + ", " + v + ", " + w);
        }
    }

    private static double triple(Direction u, Direction v, Direction w) {
        return u.x() * (v.y() * w.z() - v.z() * w.y())
                + u.y() * (v.z() * w.x() - v.x() * w.z())
                + u.z() * (v.x() * w.y() - v.y() * w.x());
    }

    /**
     * {@return a point of the neck in this frame's own coordinates}
     *
     * @param point in the neck's coordinates
     */
    public Point toHere(Point point) {
        double x = Objects.requireNonNull(point, "point").xMm() - origin.xMm();
        double y = point.yMm() - origin.yMm();
        double z = point.zMm() - origin.zMm();
        return new Point(
                u.x() * x + u.y() * y + u.z() * z,
                v.x() * x + v.y() * y + v.z() * z,
                w.x() * x + w.y() * y + w.z() * z);
    }

    /**
     * {@return a point of this frame in the neck's coordinates}
     *
     * @param point in this frame's own coordinates
     */
    public Point toNeck(Point point) {
        Objects.requireNonNull(point, "point");
        return new Point(
                origin.xMm() + turned(point.xMm(), point.yMm(), point.zMm(), u.x(), v.x(), w.x()),
                origin.yMm() + turned(point.xMm(), point.yMm(), point.zMm(), u.y(), v.y(), w.y()),
                origin.zMm() + turned(point.xMm(), point.yMm(), point.zMm(), u.z(), v.z(), w.z()));
    }

    private static double turned(double a, double b, double c, double u, double v, double w) {
        return a * u + b * v + c * w;
    }

    private Direction turned(Direction d) {
        return new Direction(
                turned(d.x(), d.y(), d.z(), u.x(), v.x(), w.x()),
                turned(d.x(), d.y(), d.z(), u.y(), v.y(), w.y()),
                turned(d.x(), d.y(), d.z(), u.z(), v.z(), w.z()));
    }

    /**
     * {@return a frame that lies in this one, as it lies on the neck}
     *
     * @param inner in this frame's own coordinates
     */
    public Frame then(Frame inner) {
        Objects.requireNonNull(inner, "inner");
        return new Frame(toNeck(inner.origin), turned(inner.u), turned(inner.v), turned(inner.w));
    }

    /** {@return the frame in which the neck's own lies as this one lies on the neck} */
    public Frame inverse() {
        return new Frame(
                toHere(Point.ORIGIN),
                new Direction(u.x(), v.x(), w.x()),
                new Direction(u.y(), v.y(), w.y()),
                new Direction(u.z(), v.z(), w.z()));
    }

    /** {@return such as {@code frame at (0, 0, 0) mm, direction (1, 0, 0), ...}} */
    @Override
    public String toString() {
        return "frame at " + origin + ", " + u + ", " + v + ", " + w;
    }
}
