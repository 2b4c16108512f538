package org.neckgeom.head;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.Texts;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The break angle ({@index "string angle"}, {@index down-bearing}) of a string between nut and tuner post, such as head angle
 * 13 deg, post 60 mm out, string 8 mm above the head's face. Immutable.
 *
 * <p>The string bears on the nut straight above the break line, h over the fingerboard's glue face. The post is at d
 * along the head's face from the break line; the string leaves it p above that face and w to one side of its own slot.
 * With a the pitch:
 *
 * <pre>
 * x = -d cos a - p sin a,  z = -d sin a + p cos a
 * angle = atan((h - z) / sqrt(x^2 + w^2))     below the glue face's plane
 * side  = atan(w / -x)                        in plan
 * </pre>
 *
 * Exact. {@link #turn} is the whole bend in space between the string's two sides; the speaking side is taken level
 * unless its rise toward the body is given. Forces take the nut without friction, so the tension is the same on both
 * sides: an estimate that a sticking slot can double or lose.
 */
public final class BreakAngle extends ValueAnswer {

    /** Angle under which a nut commonly needs a retainer, in degrees; common practice. */
    public static final double LEAST_DEGREES = 5;

    private static final Form<BreakAngle> FORM = Form.<BreakAngle>of("string-break")
            .fact("angle", Kind.RAD, "over the nut, below the glue face", BreakAngle::angleRad)
            .fact("along", Kind.MM, "the head's face from the break line to the post", s -> s.along)
            .fact("above", Kind.MM, "height of the string over the face at the post", s -> s.above)
            .fact("slot", Kind.MM, "height of the nut slot over the glue face", s -> s.slot)
            .fact("side", Kind.RAD, "in plan; positive: toward the treble side", BreakAngle::sideRad)
            .fact("turn", Kind.RAD, "whole bend over the nut", BreakAngle::turnRad)
            .phrase("aside", s -> s.sideRad() > 0, " toward the treble side")
            .phrase("aside", s -> s.sideRad() < 0, " toward the bass side")
            .finds("over-the-nut", "String over the nut: {angle:2}")
            .line("post", "post", "{along:brief} from the break line, string {above:brief} over the face")
            .line("slot", "nut slot", "{slot:brief} over the glue face")
            .line("side", "aside in plan", s -> s.sideways != 0, "{side:size 2}{aside}")
            .line("turn", "whole bend", s -> s.sideways != 0, "{turn:2}")
            .note("no-pressure", s -> !s.presses(), "the string does not press on the nut")
            .note(
                    "few-degrees",
                    s -> s.presses() && s.angleRad() < Math.toRadians(LEAST_DEGREES),
                    "under 5 deg: a retainer is commonly wanted");

    private final double pitch;
    private final double along;
    private final double above;
    private final double slot;
    private final double sideways;
    private final double rise;

    private BreakAngle(
            double pitch, double along, double above, double slot, double sideways, double rise, LengthStyle style) {
        super(FORM, style);
        this.pitch = pitch;
        this.along = along;
        this.above = above;
        this.slot = slot;
        this.sideways = sideways;
        this.rise = rise;
    }

    /**
     * Begins with head and nut.
     *
     * @param pitch angle between the head's face and the fingerboard's glue face, [0, 45] deg; 0 is a flat head
     * @param nutSlot height of the slot's floor over the fingerboard's glue face, 0 or more
     * @return both, to be followed by {@code post}
     */
    public static OverNut over(Quantity<Angle> pitch, Quantity<Length> nutSlot) {
        double rad = LibraryUnits.rad(pitch, "head angle");
        if (!(rad >= 0 && ScarfKernel.isPitch(rad))) {
            throw LibraryUnits.refused("head angle", "range", "from 0 to 45 deg", pitch);
        }
        return new OverNut(rad, LibraryUnits.mmNotNegative(nutSlot, "nut slot's height"));
    }

    static BreakAngle ofMm(
            double pitchRad, double along, double above, double slot, double sideways, LengthStyle style) {
        return new BreakAngle(pitchRad, along, above, slot, sideways + 0.0, 0, style);
    }

    /** A head's pitch and a nut slot without a post yet. Immutable. */
    public static final class OverNut {

        private final double pitch;
        private final double slot;

        private OverNut(double pitch, double slot) {
            this.pitch = pitch;
            this.slot = slot;
        }

        /**
         * Adds the post.
         *
         * @param along distance along the head's face from the break line, more than 0
         * @param above height over that face at which the string leaves the post; on a head dropped without pitch a
         *     negative height is below the glue face
         * @return the string's way over the nut, straight in plan and level on the speaking side
         */
        public BreakAngle post(Quantity<Length> along, Quantity<Length> above) {
            BreakAngle string = new BreakAngle(
                    pitch,
                    LibraryUnits.mmPositive(along, "post's distance from the break line"),
                    LibraryUnits.mm(above, "string's height at the post"),
                    slot,
                    0,
                    0,
                    LengthStyle.of(along));
            if (!(string.runMm() > 0)) {
                throw Refusal.of(
                        "post",
                        "before-the-nut",
                        "lie in front of the nut",
                        "",
                        "its string leaves it " + string.style().brief(-string.runMm()) + " behind the break line");
            }
            return string;
        }

        /** Returns the pitch in words. */
        @Override
        public String toString() {
            return "String over the nut, head at " + Texts.deg(pitch) + ", post not given yet";
        }
    }

    /**
     * {@return a copy whose post is to one side of the slot; the string's way}
     *
     * @param offset of the string at the post from its slot at the nut, positive toward the treble side
     */
    public BreakAngle sideways(Quantity<Length> offset) {
        return new BreakAngle(pitch, along, above, slot, LibraryUnits.mm(offset, "side offset"), rise, style());
    }

    /**
     * {@return a copy whose speaking side rises from the nut toward the saddle; the string's way}
     *
     * @param angle of the string over the glue face, under 10 deg either way, positive when it rises toward the body
     */
    public BreakAngle speakingSide(Quantity<Angle> angle) {
        return new BreakAngle(
                pitch,
                along,
                above,
                slot,
                sideways,
                LibraryUnits.radBetween(angle, -10, 10, "rise of the speaking side"),
                style());
    }

    /**
     * {@return how steeply the string falls from the nut to its post, below the plane of the glue face; the angle;
     * negative when the string would lift off the nut}
     */
    public Amount<Angle> angle() {
        return Amount.ofLibrary(angleRad(), ShopUnit.DEGREE);
    }

    /** {@return how far the string is turned aside in plan, positive toward the treble side} */
    public Amount<Angle> side() {
        return Amount.ofLibrary(sideRad(), ShopUnit.DEGREE);
    }

    private double sideRad() {
        return StrictMath.atan2(sideways, runMm()) + 0.0;
    }

    /** {@return the whole bend between the speaking side and the side toward the post, in space; 0 or more} */
    public Amount<Angle> turn() {
        return Amount.ofLibrary(turnRad(), ShopUnit.DEGREE);
    }

    /**
     * {@return the force that presses the string down on the nut, square to the glue face: {@code tension (sin(angle) -
     * sin(rise))}; negative when the string lifts off} Estimate: no friction in the slot.
     *
     * @param tension of the string, 0 or more
     */
    public Amount<Force> nutForce(Quantity<Force> tension) {
        double pull = LibraryUnits.notNegative(tension, ShopUnit.NEWTON, "string tension");
        return Amount.ofLibrary(pull * (StrictMath.sin(angleRad()) - StrictMath.sin(rise)), ShopUnit.NEWTON);
    }

    /**
     * {@return the force that pushes the string against the side of its slot: {@code tension cos(angle) sin(side)};
     * positive toward the treble side} Estimate: no friction in the slot.
     *
     * @param tension of the string, 0 or more
     */
    public Amount<Force> sideForce(Quantity<Force> tension) {
        double pull = LibraryUnits.notNegative(tension, ShopUnit.NEWTON, "string tension");
        double length = StrictMath.sqrt(runMm() * runMm() + sideways * sideways + fallMm() * fallMm());
        return Amount.ofLibrary(pull * sideways / length + 0.0, ShopUnit.NEWTON);
    }

    double angleRad() {
        return StrictMath.atan2(fallMm(), StrictMath.hypot(runMm(), sideways));
    }

    double turnRad() {
        double run = runMm();
        // Directions: along the speaking side toward the head, and on toward the post.
        double ux = StrictMath.cos(rise);
        double uz = -StrictMath.sin(rise);
        double fall = -fallMm();
        double crossX = sideways * uz;
        double crossY = ux * fall - uz * run;
        double crossZ = -ux * sideways;
        double cross = StrictMath.sqrt(crossX * crossX + crossY * crossY + crossZ * crossZ);
        return StrictMath.atan2(cross, ux * run + uz * fall);
    }

    private boolean presses() {
        return angleRad() > rise;
    }

    private double runMm() {
        return along * StrictMath.cos(pitch) + above * StrictMath.sin(pitch);
    }

    private double fallMm() {
        return slot + along * StrictMath.sin(pitch) - above * StrictMath.cos(pitch);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {pitch, along, above, slot, sideways, rise};
    }
}
