package org.neckgeom.shape;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A point in a plane, such as {@code (45, -21) mm}. Immutable.
 *
 * @param uMm first coordinate in mm
 * @param vMm second coordinate in mm, counter-clockwise of the first
 */
public record Spot(double uMm, double vMm) {

    private static final int DECIMALS = 4;

    /**
     * Checks the two numbers; a negative zero becomes zero.
     *
     * @param uMm first coordinate in mm
     * @param vMm second coordinate in mm
     */
    public Spot {
        uMm = mm(uMm, "u");
        vMm = mm(vMm, "v");
    }

    /** {@return the first coordinate as a length} */
    public Amount<Length> u() {
        return Amount.ofLibrary(uMm, ShopUnit.MILLIMETRE);
    }

    /** {@return the second coordinate as a length} */
    public Amount<Length> v() {
        return Amount.ofLibrary(vMm, ShopUnit.MILLIMETRE);
    }

    /**
     * {@return the distance to another spot; 0 or more}
     *
     * @param other in the same plane
     */
    public Amount<Length> distanceTo(Spot other) {
        return Amount.ofLibrary(distanceMm(other), ShopUnit.MILLIMETRE);
    }

    /**
     * {@return the distance to another spot in mm; 0 or more}
     *
     * @param other in the same plane
     */
    public double distanceMm(Spot other) {
        double du = uMm - Objects.requireNonNull(other, "other").uMm;
        double dv = vMm - other.vMm;
        return Math.sqrt(du * du + dv * dv);
    }

    /**
     * {@return the spot moved by a step}
     *
     * @param du along the first axis in mm
     * @param dv along the second axis in mm
     */
    public Spot plus(double du, double dv) {
        return new Spot(uMm + du, vMm + dv);
    }

    /** {@return u and v in mm; a fresh array of two} */
    public double[] toMm() {
        return new double[] {uMm, vMm};
    }

    /** A number of mm that may be anything on a neck: finite, up to 1e9 either way. */
    static double mm(double value, String name) {
        if (Math.abs(LibraryUnits.finite(value, name, "mm")) > LibraryUnits.MOST) {
            throw Refusal.of(name, "range", "be from -1e9 to 1e9 mm", Numbers.plain(value) + " mm");
        }
        return value + 0.0;
    }

    static String text(double mm) {
        return Numbers.trimmed(mm, DECIMALS);
    }

    /** {@return such as {@code (45, -21) mm}, to 1e-4 mm} */
    @Override
    public String toString() {
        return "(" + text(uMm) + ", " + text(vMm) + ") mm";
    }
}
