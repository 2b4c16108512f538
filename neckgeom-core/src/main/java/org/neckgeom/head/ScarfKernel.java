package org.neckgeom.head;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.neckgeom.kernel.HeadPlanes;
import org.neckgeom.neck.Head;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The scarf's lines on plain doubles: millimetres and radians.
 *
 * <p>Seen from the side the shaft's face is {@code z = 0}, its back {@code z = -T}. The head's face leaves the origin
 * (the break line) along {@code u = (-cos a, -sin a)}; its outward normal is {@code n = (-sin a, cos a)}, its back lies
 * {@code t} below the face. Every length here is where two of these four planes meet.
 *
 * <p>Behind a nut that slants by s the head's face is {@code z = tan a (x - y tan s)}. All lines where these planes meet
 * are parallel to the nut line, and in the plane y = 0 they lie where those of a square nut lie whose thicknesses square
 * to the head's face are multiplied by {@link #acrossHead}.
 */
final class ScarfKernel {

    /** Under it the slope is longer than any head. */
    private static final double LEAST_PITCH_DEGREES = 1;

    private static final double GREATEST_SLANT_DEGREES = 30;

    private ScarfKernel() {}

    /** The head angle of a scarf, checked. */
    static double pitchRad(Quantity<Angle> pitch) {
        double rad = LibraryUnits.rad(pitch, "head angle");
        if (!(rad >= ShopUnit.DEGREE.toLibrary(LEAST_PITCH_DEGREES) && isPitch(rad))) {
            throw LibraryUnits.refused("head angle", "range", "from 1 to 45 deg", pitch);
        }
        return rad;
    }

    /** Whether an angle is no greater than that of any head; one that is 45 deg in any unit is not. */
    static boolean isPitch(double rad) {
        return rad <= ShopUnit.DEGREE.toLibrary(Head.GREATEST_ANGLE_DEGREES);
    }

    /** The nut line's angle from square in plan, checked. */
    static double slantRad(Quantity<Angle> slant) {
        // Without + 0.0 a slant of -0 would be another value than 0.
        return LibraryUnits.radBetween(slant, -GREATEST_SLANT_DEGREES, GREATEST_SLANT_DEGREES, "nut slant") + 0.0;
    }

    /** Length of a slope of pitch a through a thickness: {@code thickness / sin a}. */
    static double slope(double thicknessMm, double pitchRad) {
        return thicknessMm / StrictMath.sin(pitchRad);
    }

    /** Run of the same slope along the face: {@code thickness / tan a}. */
    static double run(double thicknessMm, double pitchRad) {
        return thicknessMm / StrictMath.tan(pitchRad);
    }

    /**
     * Where the break line goes when {@code head} is planed off the head's face and {@code shaft} off the shaft's:
     * {@code x = head / sin a - shaft / tan a}, positive toward the body. A veneer is a negative planing. Of all the wood
     * that is there it is where the head's back meets the shaft's back, the same for both joints.
     */
    static double breakLineShift(double headMm, double shaftMm, double pitchRad) {
        // 1/sin a - 1/tan a = tan(a/2): of two near numbers only the thicknesses are subtracted.
        return (headMm - shaftMm) / StrictMath.sin(pitchRad) + shaftMm * StrictMath.tan(pitchRad / 2);
    }

    /** Slope across the neck of a ramp whose saw line is g out of square in plan: {@code atan(tan a sin g)}. */
    static double roll(double pitchRad, double outOfSquareRad) {
        return StrictMath.atan(StrictMath.tan(pitchRad) * StrictMath.sin(outOfSquareRad));
    }

    /** Pitch along the centreline of the same ramp: {@code atan(tan a cos g)}. */
    static double pitchAlong(double pitchRad, double outOfSquareRad) {
        return StrictMath.atan(StrictMath.tan(pitchRad) * StrictMath.cos(outOfSquareRad));
    }

    /**
     * Angle between the head's face and the fingerboard's glue face, measured square to a nut line that slants by s:
     * {@code atan(tan a / cos s)}.
     */
    static double dihedral(double pitchRad, double slantRad) {
        return HeadPlanes.dihedral(pitchRad, slantRad);
    }

    /**
     * Angle of the nut line from square, measured in the head's own face: {@code asin(cos a sin s)}, a little less than
     * s. A head piece cut at s instead swings sideways by {@link #foldYaw}.
     */
    static double headMitre(double pitchRad, double slantRad) {
        return StrictMath.asin(StrictMath.cos(pitchRad) * StrictMath.sin(slantRad));
    }

    /**
     * Factor on each thickness square to the head's face behind a slanted nut: {@code cos m / cos s}, m the
     * {@link #headMitre}; 1 for a square nut, else more. As {@code sin d cos s = sin a cos s / cos m} is the share of the
     * face's normal along x, a plane moved by h along that normal moves by {@code h cos m / (cos s sin a)} along x.
     */
    static double acrossHead(double pitchRad, double slantRad) {
        return StrictMath.cos(headMitre(pitchRad, slantRad)) / StrictMath.cos(slantRad);
    }

    /** Roll of the head about its own centreline behind a slanted nut: {@code asin(sin d sin s cos a)}. */
    static double slantRoll(double pitchRad, double slantRad) {
        return StrictMath.asin(
                StrictMath.sin(dihedral(pitchRad, slantRad)) * StrictMath.sin(slantRad) * StrictMath.cos(pitchRad));
    }

    /**
     * Swing in plan of a head folded about a slanted nut line by d:
     * {@code atan(sin s cos s (1 - cos d) / (sin^2 s + cos^2 s cos d))}.
     */
    static double foldYaw(double dihedralRad, double slantRad) {
        double sin = StrictMath.sin(slantRad);
        double cos = StrictMath.cos(slantRad);
        double half = StrictMath.sin(dihedralRad / 2);
        // 1 - cos d = 2 sin^2(d/2) keeps its digits at small pitch.
        return StrictMath.atan(sin * cos * 2 * half * half / (sin * sin + cos * cos * StrictMath.cos(dihedralRad)));
    }
}
