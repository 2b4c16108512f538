package org.neckgeom.heel;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;

/** The steps from a scale to a {@link BackSet}, one figure at a time. Each is immutable and can be used twice. */
public final class BackSetSteps {

    private static final int MOST_FRETS = 60;

    private BackSetSteps() {}

    static String unfinished(String missing) {
        return "Neck set, " + missing + " not given yet";
    }

    /** A scale, without the joint yet. Immutable. */
    public static final class OfScale {

        private final double scale;
        private final LengthStyle style;

        OfScale(double scale, LengthStyle style) {
            this.scale = scale;
            this.style = style;
        }

        /**
         * Adds the fret at which the neck meets the body, in twelve equal steps to the octave.
         *
         * @param fret from 1 to 60
         * @return the scale and joint, to be followed by {@code fretPlane}
         */
        public AtJoint bodyAtFret(int fret) {
            return bodyAtFret(fret, 12);
        }

        /**
         * Adds the fret at which the neck meets the body, for any equal division of the octave.
         *
         * @param fret from 1 to 60
         * @param divisions steps to the octave, 1 or more
         * @return the scale and joint, to be followed by {@code fretPlane}
         */
        public AtJoint bodyAtFret(int fret, int divisions) {
            if (fret < 1 || fret > MOST_FRETS) {
                throw Refusal.of("fret at the body", "range", "be from 1 to 60", fret);
            }
            if (divisions < 1) {
                throw Refusal.of("steps to the octave", "at-least", "be 1 or more", divisions);
            }
            return new AtJoint(scale, fret, divisions, style);
        }

        /** Returns the parts so far in words. */
        @Override
        public String toString() {
            return unfinished("joint");
        }
    }

    /** A scale and a joint, without heights yet. Immutable. */
    public static final class AtJoint {

        final double scale;
        final int fret;
        final int divisions;
        private final LengthStyle style;

        private AtJoint(double scale, int fret, int divisions, LengthStyle style) {
            this.scale = scale;
            this.fret = fret;
            this.divisions = divisions;
            this.style = style;
        }

        /**
         * Adds the height of the fret tops over the body's reference plane at the joint: fingerboard, fret and how far
         * the glue face stands off the body.
         *
         * @param height at the joint; negative where the fingerboard is let in
         * @return the same, to be followed by {@code saddle}
         */
        public WithFretPlane fretPlane(Quantity<Length> height) {
            return new WithFretPlane(this, HouseUnits.mm(height, "fret plane at the joint"));
        }

        /** Returns the parts so far in words. */
        @Override
        public String toString() {
            return unfinished("height of the fret plane");
        }
    }

    /** A fret plane at its joint, without the bridge yet. Immutable. */
    public static final class WithFretPlane {

        private final AtJoint joint;
        private final double plane;

        private WithFretPlane(AtJoint joint, double plane) {
            this.joint = joint;
            this.plane = plane;
        }

        /**
         * Adds the height of the strings' top at the saddle over the body's reference plane: bridge, saddle, and the
         * doming and belly under them unless {@link BackSet#overDome} counts the dome.
         *
         * @param height at the saddle, more than 0
         * @return the same, to be followed by {@code atNut}
         */
        public WithSaddle saddle(Quantity<Length> height) {
            return new WithSaddle(this, HouseUnits.mmPositive(height, "strings' top at the saddle"));
        }

        /** Returns the parts so far in words. */
        @Override
        public String toString() {
            return unfinished("saddle");
        }
    }

    /** A fret plane and a saddle, without the strings yet. Immutable. */
    public static final class WithSaddle {

        private final WithFretPlane plane;
        private final double saddle;

        private WithSaddle(WithFretPlane plane, double saddle) {
            this.plane = plane;
            this.saddle = saddle;
        }

        /**
         * Adds the string's height over the fret plane at the nut.
         *
         * @param height 0 or more
         * @return the same, to be followed by {@code action}
         */
        public WithNut atNut(Quantity<Length> height) {
            return new WithNut(this, HouseUnits.mmNotNegative(height, "string at the nut"));
        }

        /** Returns the parts so far in words. */
        @Override
        public String toString() {
            return unfinished("string at the nut");
        }
    }

    /** Everything but the action. Immutable. */
    public static final class WithNut {

        private final WithSaddle saddle;
        private final double atNut;

        private WithNut(WithSaddle saddle, double atNut) {
            this.saddle = saddle;
            this.atNut = atNut;
        }

        /**
         * Adds the action: the string's height over the fret plane at half the scale, the twelfth fret of twelve.
         *
         * @param height 0 or more
         * @return the neck set, without compensation, over a flat top
         */
        public BackSet action(Quantity<Length> height) {
            double action = HouseUnits.mmNotNegative(height, "action");
            AtJoint joint = saddle.plane.joint;
            return BackSet.ofMm(joint, saddle.plane.plane, saddle.saddle, atNut, action, joint.style);
        }

        /** Returns the parts so far in words. */
        @Override
        public String toString() {
            return unfinished("action");
        }
    }
}
