package org.neckgeom.shape;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.units.LibraryUnits;

/**
 * A plane with wood on one side: the points p with {@code normal . p = offset}, the wood where it is less. Immutable.
 *
 * @param normal pointing out of the wood
 * @param offsetMm how far along the normal it lies from the origin, in mm
 */
public record Plane(Direction normal, double offsetMm) {

    /** The fingerboard's glue face, wood below it. */
    public static final Plane GLUE_FACE = new Plane(Direction.UP, 0);

    private static final double PARALLEL = 1e-12;

    /**
     * Checks both parts.
     *
     * @param normal pointing out of the wood
     * @param offsetMm along the normal from the origin, in mm
     */
    public Plane {
        Objects.requireNonNull(normal, "normal");
        offsetMm = Spot.mm(offsetMm, "offset of a plane");
    }

    /**
     * {@return the plane through a point}
     *
     * @param point on the plane
     * @param normal pointing out of the wood
     */
    public static Plane through(Point point, Direction normal) {
        return new Plane(normal, Objects.requireNonNull(point, "point").alongMm(normal));
    }

    /**
     * {@return how far a point lies outside the wood, in mm; negative inside}
     *
     * @param point the point
     */
    public double heightOfMm(Point point) {
        return Objects.requireNonNull(point, "point").alongMm(normal) - offsetMm;
    }

    /**
     * {@return this plane moved out of the wood: a veneer; planing moves it inward}
     *
     * @param outward along the normal, negative into the wood
     */
    public Plane moved(Quantity<Length> outward) {
        return movedMm(LibraryUnits.mm(outward, "distance between planes"));
    }

    /**
     * {@return this plane moved out of the wood}
     *
     * @param mm along the normal in mm, negative into the wood
     */
    public Plane movedMm(double mm) {
        return new Plane(normal, offsetMm + mm);
    }

    /**
     * {@return the line that two planes share, as 1 mm of it}
     *
     * @param other not parallel to this
     */
    public Line with(Plane other) {
        double cos = normal.dot(Objects.requireNonNull(other, "other").normal);
        double rest = 1 - cos * cos;
        if (!(rest > PARALLEL)) {
            throw NoAnswer.because("line of two planes", "parallel", "two parallel planes share no line");
        }
        double a = (offsetMm - cos * other.offsetMm) / rest;
        double b = (other.offsetMm - cos * offsetMm) / rest;
        Point from = Point.ORIGIN.plus(normal, a).plus(other.normal, b);
        return new Line(from, from.plus(normal.cross(other.normal), 1));
    }

    /**
     * {@return the point that three planes share}
     *
     * @param second the second plane
     * @param third the third plane; no two may be parallel, nor all three share a direction
     */
    public Point with(Plane second, Plane third) {
        Direction n1 = normal;
        Direction n2 = Objects.requireNonNull(second, "second").normal;
        Direction n3 = Objects.requireNonNull(third, "third").normal;
        double[] c23 = cross(n2, n3);
        double det = n1.x() * c23[0] + n1.y() * c23[1] + n1.z() * c23[2];
        if (!(Math.abs(det) > PARALLEL)) {
            throw NoAnswer.because("point of three planes", "parallel", "three such planes share no single point");
        }
        double[] c31 = cross(n3, n1);
        double[] c12 = cross(n1, n2);
        double[] p = new double[3];
        for (int i = 0; i < 3; i++) {
            p[i] = (offsetMm * c23[i] + second.offsetMm * c31[i] + third.offsetMm * c12[i]) / det;
        }
        return new Point(p[0], p[1], p[2]);
    }

    private static double[] cross(Direction a, Direction b) {
        return new double[] {a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x()
        };
    }

    /** {@return such as {@code plane 12 mm along direction (0, 0, 1)}} */
    @Override
    public String toString() {
        return "plane " + Spot.text(offsetMm) + " mm along " + normal;
    }
}
