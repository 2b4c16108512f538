package org.neckgeom.shape;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * A point in space, such as {@code (120, 0, -15) mm}. Immutable.
 *
 * @param xMm along the centreline in mm, positive toward the body
 * @param yMm across in mm, positive toward the treble side
 * @param zMm square to the glue face in mm, positive toward the strings
 */
public record Point(double xMm, double yMm, double zMm) {

    /** The middle of the nut line on the glue face. */
    public static final Point ORIGIN = new Point(0, 0, 0);

    /**
     * Checks the three numbers; a negative zero becomes zero.
     *
     * @param xMm along the centreline in mm
     * @param yMm across in mm
     * @param zMm square to the glue face in mm
     */
    public Point {
        xMm = Spot.mm(xMm, "x");
        yMm = Spot.mm(yMm, "y");
        zMm = Spot.mm(zMm, "z");
    }

    /** {@return x as a length} */
    public Amount<Length> x() {
        return Amount.ofLibrary(xMm, ShopUnit.MILLIMETRE);
    }

    /** {@return y as a length} */
    public Amount<Length> y() {
        return Amount.ofLibrary(yMm, ShopUnit.MILLIMETRE);
    }

    /** {@return z as a length} */
    public Amount<Length> z() {
        return Amount.ofLibrary(zMm, ShopUnit.MILLIMETRE);
    }

    /**
     * {@return the distance to another point; 0 or more}
     *
     * @param other the other point
     */
    public Amount<Length> distanceTo(Point other) {
        return Amount.ofLibrary(distanceMm(other), ShopUnit.MILLIMETRE);
    }

    /**
     * {@return the distance to another point in mm; 0 or more}
     *
     * @param other the other point
     */
    public double distanceMm(Point other) {
        Objects.requireNonNull(other, "other");
        return Direction.length(xMm - other.xMm, yMm - other.yMm, zMm - other.zMm);
    }

    /**
     * {@return the point so far along a direction}
     *
     * @param direction the way
     * @param mm how far in mm, negative the other way
     */
    public Point plus(Direction direction, double mm) {
        Objects.requireNonNull(direction, "direction");
        return new Point(xMm + mm * direction.x(), yMm + mm * direction.y(), zMm + mm * direction.z());
    }

    /**
     * {@return how far it lies along a direction from the origin, in mm}
     *
     * @param direction the direction
     */
    public double alongMm(Direction direction) {
        Objects.requireNonNull(direction, "direction");
        return direction.x() * xMm + direction.y() * yMm + direction.z() * zMm;
    }

    /** {@return x, y and z in mm; a fresh array of three} */
    public double[] toMm() {
        return new double[] {xMm, yMm, zMm};
    }

    /** {@return such as {@code (120, 0, -15) mm}, to 1e-4 mm} */
    @Override
    public String toString() {
        return "(" + Spot.text(xMm) + ", " + Spot.text(yMm) + ", " + Spot.text(zMm) + ") mm";
    }
}
