package org.neckgeom.design;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * The head, such as {@code head pitched 13 deg, 185 mm long, 76 mm wide, 15 mm thick}. Immutable.
 *
 * <p>Its length runs along its face from the nut line. Unless told it is 180 mm long, 75 mm wide and 15 mm thick, in
 * line with the shaft, without veneers.
 */
public final class Head implements Answer, SaysLengths<Head> {

    private static final double USUAL_LENGTH_MM = 180;
    private static final double USUAL_WIDTH_MM = 75;
    private static final double USUAL_THICKNESS_MM = 15;
    private static final double STEEPEST_DEG = 45;
    private static final double WIDEST_SWING_DEG = 45;

    private final double pitch;
    private final double length;
    private final double width;
    private final double thickness;
    private final double swing;
    private final double veneer;
    private final double veneerShortOfNut;
    private final double backVeneer;
    private final ShopUnit<Length> unit;

    private Head(
            double pitch,
            double length,
            double width,
            double thickness,
            double swing,
            double veneer,
            double veneerShortOfNut,
            double backVeneer,
            ShopUnit<Length> unit) {
        this.pitch = pitch;
        this.length = length;
        this.width = width;
        this.thickness = thickness;
        this.swing = swing;
        this.veneer = veneer;
        this.veneerShortOfNut = veneerShortOfNut;
        this.backVeneer = backVeneer;
        this.unit = unit;
    }

    /**
     * Returns a head turned back from the shaft.
     *
     * @param pitch angle between the head's face and the fingerboard's glue face, more than 0, less than 45 degrees
     * @return the head, of the usual size
     */
    public static Head pitched(Quantity<Angle> pitch) {
        double alpha = HouseUnits.radBetween(pitch, 0, STEEPEST_DEG, "head pitch");
        return usual(alpha);
    }

    /**
     * Returns a head whose face is parallel to the fingerboard's glue face.
     *
     * @return the head, of the usual size
     */
    public static Head flat() {
        return usual(0);
    }

    private static Head usual(double pitch) {
        return new Head(pitch, USUAL_LENGTH_MM, USUAL_WIDTH_MM, USUAL_THICKNESS_MM, 0, 0, 0, 0, ShopUnit.MILLIMETRE);
    }

    /**
     * Returns this head with its length.
     *
     * @param alongFace from the nut line, more than 0; its unit is the one answers are given in
     * @return the head
     */
    public Head length(Quantity<Length> alongFace) {
        double mm = HouseUnits.mmPositive(alongFace, "head length");
        ShopUnit<Length> shown = LengthStyle.of(alongFace).unit();
        return new Head(pitch, mm, width, thickness, swing, veneer, veneerShortOfNut, backVeneer, shown);
    }

    /**
     * Returns this head with its width, ears and all.
     *
     * @param atWidest more than 0
     * @return the head
     */
    public Head width(Quantity<Length> atWidest) {
        double mm = HouseUnits.mmPositive(atWidest, "head width");
        return new Head(pitch, length, mm, thickness, swing, veneer, veneerShortOfNut, backVeneer, unit);
    }

    /**
     * Returns this head with its thickness, veneers not counted.
     *
     * @param wood more than 0
     * @return the head
     */
    public Head thickness(Quantity<Length> wood) {
        double mm = HouseUnits.mmPositive(wood, "head thickness");
        return new Head(pitch, length, width, mm, swing, veneer, veneerShortOfNut, backVeneer, unit);
    }

    /**
     * Returns this head swung out of line in plan, about the nut.
     *
     * @param towardTreble angle between head and shaft in plan, positive toward the treble side, within 45 degrees
     * @return the head
     */
    public Head swung(Quantity<Angle> towardTreble) {
        double rad = HouseUnits.radBetween(towardTreble, -WIDEST_SWING_DEG, WIDEST_SWING_DEG, "head swing");
        return new Head(pitch, length, width, thickness, rad, veneer, veneerShortOfNut, backVeneer, unit);
    }

    /**
     * Returns this head with a veneer on its face.
     *
     * @param veneerThickness 0 or more
     * @param shortOfNut how far before the nut line it stops, measured along the head's face, 0 or more
     * @return the head
     */
    public Head veneer(Quantity<Length> veneerThickness, Quantity<Length> shortOfNut) {
        double t = HouseUnits.mmNotNegative(veneerThickness, "head veneer");
        double q = HouseUnits.mmNotNegative(shortOfNut, "veneer's distance from the nut line");
        return new Head(pitch, length, width, thickness, swing, t, q, backVeneer, unit);
    }

    /**
     * Returns this head with a veneer on its back.
     *
     * @param veneerThickness 0 or more
     * @return the head
     */
    public Head backVeneer(Quantity<Length> veneerThickness) {
        double t = HouseUnits.mmNotNegative(veneerThickness, "back veneer");
        return new Head(pitch, length, width, thickness, swing, veneer, veneerShortOfNut, t, unit);
    }

    /**
     * Returns the pitch.
     *
     * @return in [0, 45) degrees
     */
    public Amount<Angle> pitch() {
        return Amount.ofHouse(pitch, ShopUnit.DEGREE);
    }

    /**
     * Returns the pitch in rad.
     *
     * @return 0 for a flat head
     */
    public double pitchRad() {
        return pitch;
    }

    /**
     * Returns the length along the face from the nut line, in mm.
     *
     * @return more than 0
     */
    public double lengthMm() {
        return length;
    }

    /**
     * Returns the width at its widest, in mm.
     *
     * @return more than 0
     */
    public double widthMm() {
        return width;
    }

    /**
     * Returns the thickness without veneers, in mm.
     *
     * @return more than 0
     */
    public double thicknessMm() {
        return thickness;
    }

    /**
     * Returns the angle in plan between head and shaft, in rad.
     *
     * @return positive toward the treble side
     */
    public double swingRad() {
        return swing;
    }

    /**
     * Returns the thickness of the veneer on the face, in mm.
     *
     * @return 0 or more
     */
    public double veneerMm() {
        return veneer;
    }

    /**
     * Returns how far before the nut line the face veneer stops, in mm along the face.
     *
     * @return 0 or more
     */
    public double veneerShortOfNutMm() {
        return veneerShortOfNut;
    }

    /**
     * Returns the thickness of the veneer on the back, in mm.
     *
     * @return 0 or more
     */
    public double backVeneerMm() {
        return backVeneer;
    }

    /**
     * Returns the style answers about this head are printed in.
     *
     * @return the style
     */
    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    /**
     * Returns the same head, printed in another style.
     *
     * @param style how to print lengths
     * @return an equal head
     */
    @Override
    public Head in(LengthStyle style) {
        ShopUnit<Length> shown = Objects.requireNonNull(style, "style").unit();
        return new Head(pitch, length, width, thickness, swing, veneer, veneerShortOfNut, backVeneer, shown);
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        private static final Form<Head> FORM = form("head ");

        /** The same without its title, for the row of a neck. */
        static final Form<Head> UNTITLED = form("");

        private static Form<Head> form(String title) {
            return Form.<Head>of("head")
                    .fact("angle", Kind.RAD, "of its face to the glue face; 0: flat", Head::pitchRad)
                    .fact("length", Kind.MM, "along its face from the nut line", Head::lengthMm)
                    .fact("width", Kind.MM, "at its widest", Head::widthMm)
                    .fact("thickness", Kind.MM, "without veneers", Head::thicknessMm)
                    .fact("swing", Kind.RAD, "in plan; positive: toward the treble side", Head::swingRad)
                    .fact("faceVeneer", Kind.MM, "thickness; 0: none", Head::veneerMm)
                    .fact("veneerShortOfNut", Kind.MM, "veneer's end to the nut line", Head::veneerShortOfNutMm)
                    .fact("backVeneer", Kind.MM, "thickness; 0: none", Head::backVeneerMm)
                    .phrase("turned", head -> head.pitch == 0, "flat head")
                    .phrase("turned", title + "pitched {angle}")
                    .phrase("swung", head -> head.swing > 0, ", swung {swing} toward the treble side")
                    .phrase("swung", head -> head.swing < 0, ", swung {swing:size} toward the bass side")
                    .phrase("faced", head -> head.veneer > 0, ", veneer {faceVeneer}")
                    .phrase("backed", head -> head.backVeneer > 0, ", back veneer {backVeneer}")
                    .finds("head", "{turned}, {length} long, {width} wide, {thickness} thick{swung}{faced}{backed}");
        }
    }

    @Override
    public Form<Head> form() {
        return Sentences.FORM;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Head other
                && Double.compare(pitch, other.pitch) == 0
                && Double.compare(length, other.length) == 0
                && Double.compare(width, other.width) == 0
                && Double.compare(thickness, other.thickness) == 0
                && Double.compare(swing, other.swing) == 0
                && Double.compare(veneer, other.veneer) == 0
                && Double.compare(veneerShortOfNut, other.veneerShortOfNut) == 0
                && Double.compare(backVeneer, other.backVeneer) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(pitch, length, width, thickness, swing, veneer, veneerShortOfNut, backVeneer);
    }

    /** Returns such as {@code head pitched 13 deg, 185 mm long, 76 mm wide, 15 mm thick}. */
    @Override
    public String toString() {
        return text(style());
    }
}
