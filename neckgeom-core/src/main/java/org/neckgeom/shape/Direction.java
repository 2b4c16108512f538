package org.neckgeom.shape;

import java.util.Objects;
import javax.measure.quantity.Angle;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A direction in space: a unit vector, made unit when it is given. Immutable.
 *
 * @param x share along the centreline, positive toward the body
 * @param y share across, positive toward the treble side
 * @param z share square to the glue face, positive toward the strings
 */
public record Direction(double x, double y, double z) {

    /** Along the centreline toward the body. */
    public static final Direction TO_BODY = new Direction(1, 0, 0);

    /** Across toward the treble side. */
    public static final Direction TO_TREBLE = new Direction(0, 1, 0);

    /** Square to the glue face toward the strings. */
    public static final Direction UP = new Direction(0, 0, 1);

    private static final int DECIMALS = 6;

    /** A vector so near unit length is one already: made unit again it would not be equal. */
    private static final double UNIT = 4e-16;

    /**
     * Makes three shares a unit vector; they must not all be 0.
     *
     * @param x share along the centreline
     * @param y share across
     * @param z share square to the glue face
     */
    public Direction {
        double length = length(
                LibraryUnits.finite(x, "x of a direction", ""),
                LibraryUnits.finite(y, "y of a direction", ""),
                LibraryUnits.finite(z, "z of a direction", ""));
        if (!(length > 0)) {
            throw Refusal.of("direction", "more-than", "have a length of more than 0", "0");
        }
        if (Math.abs(length - 1) > UNIT) {
            x = x / length;
            y = y / length;
            z = z / length;
        }
        x = x + 0.0;
        y = y + 0.0;
        z = z + 0.0;
    }

    /**
     * {@return the cosine of the angle to another direction; -1 to 1}
     *
     * @param other the other direction
     */
    public double dot(Direction other) {
        return x * Objects.requireNonNull(other, "other").x + y * other.y + z * other.z;
    }

    /**
     * {@return the direction square to this and another, right-handed}
     *
     * @param other not parallel to this
     */
    public Direction cross(Direction other) {
        Objects.requireNonNull(other, "other");
        return new Direction(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /**
     * {@return the angle to another direction; 0 to 180 deg, exact near both ends}
     *
     * @param other the other direction
     */
    public Amount<Angle> angleTo(Direction other) {
        Objects.requireNonNull(other, "other");
        double cross = length(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
        return Amount.ofLibrary(StrictMath.atan2(cross, dot(other)), ShopUnit.DEGREE);
    }

    /** {@return the opposite direction} */
    public Direction opposite() {
        return new Direction(-x, -y, -z);
    }

    static double length(double x, double y, double z) {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** {@return the three shares; a fresh array of three} */
    public double[] toArray() {
        return new double[] {x, y, z};
    }

    /** {@return such as {@code direction (0.6, 0, 0.8)}} */
    @Override
    public String toString() {
        return "direction (" + Numbers.trimmed(x, DECIMALS) + ", " + Numbers.trimmed(y, DECIMALS) + ", "
                + Numbers.trimmed(z, DECIMALS) + ")";
    }
}
