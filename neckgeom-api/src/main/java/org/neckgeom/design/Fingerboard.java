package org.neckgeom.design;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.stock.Wood;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * The fingerboard, such as {@code fingerboard 34 mm at the nut, 46 mm at the body joint, 6 mm thick, radius 400 mm}.
 * Immutable.
 *
 * <p>Width is linear between the nut and the second place, and beyond. Unless told, the second place is the body joint,
 * the board is 6 mm thick on its centreline all along, and flat.
 */
public final class Fingerboard implements Answer, SaysLengths<Fingerboard> {

    /** How the crown's radius runs along the board. */
    public enum Crown {
        /** No crown. */
        FLAT,
        /** The same radius all along: a cylinder. */
        CYLINDER,
        /** The radius grows in a straight line from the nut to the second place: a cone. */
        CONE
    }

    private static final double USUAL_THICKNESS_MM = 6;

    private final double nutWidth;
    private final double secondWidth;
    private final double secondFret;
    private final double nutThickness;
    private final double secondThickness;
    private final double nutRadius;
    private final double secondRadius;
    private final @Nullable Wood wood;
    private final ShopUnit<Length> unit;

    private Fingerboard(
            double nutWidth,
            double secondWidth,
            double secondFret,
            double nutThickness,
            double secondThickness,
            double nutRadius,
            double secondRadius,
            @Nullable Wood wood,
            ShopUnit<Length> unit) {
        this.nutWidth = nutWidth;
        this.secondWidth = secondWidth;
        this.secondFret = secondFret;
        this.nutThickness = nutThickness;
        this.secondThickness = secondThickness;
        this.nutRadius = nutRadius;
        this.secondRadius = secondRadius;
        this.wood = wood;
        this.unit = unit;
    }

    /**
     * Returns a tapered board.
     *
     * @param atNut width at the nut, more than 0; its unit is the one answers are given in
     * @param atSecond width at the body joint, or at the fret given to {@link #secondAtFret}, more than 0
     * @return the board
     */
    public static Fingerboard tapered(Quantity<Length> atNut, Quantity<Length> atSecond) {
        return new Fingerboard(
                HouseUnits.mmPositive(atNut, "width at the nut"),
                HouseUnits.mmPositive(atSecond, "second width"),
                Double.NaN,
                USUAL_THICKNESS_MM,
                USUAL_THICKNESS_MM,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                null,
                LengthStyle.of(atNut).unit());
    }

    /**
     * Returns this board with its second place at a fret instead of the body joint.
     *
     * @param fret 1 or more
     * @return the board
     */
    public Fingerboard secondAtFret(int fret) {
        if (fret < 1) {
            throw Refusal.of("fret of the second width", "at-least", "be 1 or more", fret);
        }
        return new Fingerboard(
                nutWidth, secondWidth, fret, nutThickness, secondThickness, nutRadius, secondRadius, wood, unit);
    }

    /**
     * Returns this board equally thick on its centreline all along.
     *
     * @param onCentreline more than 0
     * @return the board
     */
    public Fingerboard thickness(Quantity<Length> onCentreline) {
        return thickness(onCentreline, onCentreline);
    }

    /**
     * Returns this board with its thickness in a straight line from the nut to the second place.
     *
     * @param atNut on the centreline at the nut, more than 0
     * @param atSecond on the centreline at the second place, more than 0
     * @return the board
     */
    public Fingerboard thickness(Quantity<Length> atNut, Quantity<Length> atSecond) {
        double nut = HouseUnits.mmPositive(atNut, "board thickness");
        double second = HouseUnits.mmPositive(atSecond, "board thickness at the second place");
        return new Fingerboard(nutWidth, secondWidth, secondFret, nut, second, nutRadius, secondRadius, wood, unit);
    }

    /**
     * Returns this board with one radius.
     *
     * @param crown more than half of either width
     * @return the board
     */
    public Fingerboard radius(Quantity<Length> crown) {
        return radius(crown, crown);
    }

    /**
     * Returns this board with a compound radius: a cone whose radius grows in a straight line.
     *
     * @param atNut more than half the width there
     * @param atSecond more than half the width there
     * @return the board
     */
    public Fingerboard radius(Quantity<Length> atNut, Quantity<Length> atSecond) {
        double nut = radiusOver(nutWidth, atNut, "radius at the nut");
        double second = radiusOver(secondWidth, atSecond, "radius at the second place");
        return new Fingerboard(
                nutWidth, secondWidth, secondFret, nutThickness, secondThickness, nut, second, wood, unit);
    }

    private double radiusOver(double width, Quantity<Length> radius, String name) {
        double mm = HouseUnits.mmPositive(radius, name);
        if (!(mm > width / 2)) {
            throw HouseUnits.refused(
                    name,
                    "more-than",
                    "more than half the width of " + Amount.ofHouse(width, unit).toString(),
                    radius);
        }
        return mm;
    }

    /**
     * Returns this board of a wood.
     *
     * @param kind the wood
     * @return the board
     */
    public Fingerboard wood(Wood kind) {
        Objects.requireNonNull(kind, "wood");
        return new Fingerboard(
                nutWidth, secondWidth, secondFret, nutThickness, secondThickness, nutRadius, secondRadius, kind, unit);
    }

    /**
     * Returns the width at the nut in mm.
     *
     * @return more than 0
     */
    public double nutWidthMm() {
        return nutWidth;
    }

    /**
     * Returns the width at the second place in mm.
     *
     * @return more than 0
     */
    public double secondWidthMm() {
        return secondWidth;
    }

    /**
     * Says whether a fret was told for the second place; unless, it is the one at the body joint.
     *
     * @return true when one was told
     */
    public boolean hasSecondFret() {
        return !Double.isNaN(secondFret);
    }

    /**
     * Returns the fret of the second place.
     *
     * @param bodyJointFret the fret at the body joint, which it is unless told
     * @return 1 or more
     */
    public double secondFret(double bodyJointFret) {
        if (!(bodyJointFret >= 1 && bodyJointFret <= HouseUnits.MOST)) {
            throw Refusal.of("fret at the body", "at-least", "be 1 or more", Numbers.plain(bodyJointFret));
        }
        return Double.isNaN(secondFret) ? bodyJointFret : secondFret;
    }

    /**
     * Returns the thickness on the centreline at the nut in mm.
     *
     * @return more than 0
     */
    public double nutThicknessMm() {
        return nutThickness;
    }

    /**
     * Returns the thickness on the centreline at the second place in mm.
     *
     * @return more than 0
     */
    public double secondThicknessMm() {
        return secondThickness;
    }

    /**
     * Returns the crown's radius at the nut in mm.
     *
     * @return infinite for a flat board
     */
    public double nutRadiusMm() {
        return nutRadius;
    }

    /**
     * Returns the crown's radius at the second place in mm.
     *
     * @return infinite for a flat board
     */
    public double secondRadiusMm() {
        return secondRadius;
    }

    /**
     * Returns how the crown runs.
     *
     * @return the crown
     */
    public Crown crown() {
        if (Double.isInfinite(nutRadius)) {
            return Crown.FLAT;
        }
        return nutRadius == secondRadius ? Crown.CYLINDER : Crown.CONE;
    }

    /**
     * Returns the wood, if it was told.
     *
     * @return the wood, or nothing
     */
    public Optional<Wood> wood() {
        return Optional.ofNullable(wood);
    }

    /**
     * Returns the style answers about this board are printed in.
     *
     * @return the style
     */
    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    @Override
    public Fingerboard in(LengthStyle other) {
        return new Fingerboard(
                nutWidth,
                secondWidth,
                secondFret,
                nutThickness,
                secondThickness,
                nutRadius,
                secondRadius,
                wood,
                Objects.requireNonNull(other, "style").unit());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        private static final Form<Fingerboard> FORM = form("fingerboard ");

        /** The same without its title, for the row of a neck. */
        static final Form<Fingerboard> UNTITLED = form("");

        private static Form<Fingerboard> form(String title) {
            return Form.<Fingerboard>of("fingerboard")
                    .fact("nutWidth", Kind.MM, "at the nut", Fingerboard::nutWidthMm)
                    .fact("secondWidth", Kind.MM, "at the second place", Fingerboard::secondWidthMm)
                    .fact("secondFret", Kind.WHOLE, "the second place, where not the body joint", b -> b.secondFret)
                    .fact("nutThickness", Kind.MM, "on the centreline at the nut", Fingerboard::nutThicknessMm)
                    .fact("secondThickness", Kind.MM, "at the second place", Fingerboard::secondThicknessMm)
                    .fact("crown", Kind.code(Crown.class), "how its radius runs", Fingerboard::crown)
                    .fact("nutRadius", Kind.MM, "of the crown at the nut", Fingerboard::nutRadiusMm)
                    .fact("secondRadius", Kind.MM, "of the crown at the second place", Fingerboard::secondRadiusMm)
                    .factIfAny(
                            "wood", Kind.NAME, "by name", board -> board.wood().map(Wood::name))
                    .phrase("second", "fret {secondFret}")
                    .phrase("second", "the body joint")
                    .phrase("thick", board -> board.nutThickness == board.secondThickness, "{nutThickness}")
                    .phrase("thick", "{nutThickness} to {secondThickness}")
                    .phrase("crowned", board -> board.crown() == Crown.CYLINDER, "radius {nutRadius}")
                    .phrase("crowned", "radius {nutRadius} to {secondRadius}")
                    .phrase("crowned", "flat")
                    .phrase("made", ", {wood}")
                    .finds(
                            "fingerboard",
                            title + "{nutWidth} at the nut, {secondWidth} at {second}, {thick} thick, {crowned}{made}");
        }
    }

    @Override
    public Form<Fingerboard> form() {
        return Sentences.FORM;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Fingerboard other
                && Double.compare(nutWidth, other.nutWidth) == 0
                && Double.compare(secondWidth, other.secondWidth) == 0
                && Double.compare(secondFret, other.secondFret) == 0
                && Double.compare(nutThickness, other.nutThickness) == 0
                && Double.compare(secondThickness, other.secondThickness) == 0
                && Double.compare(nutRadius, other.nutRadius) == 0
                && Double.compare(secondRadius, other.secondRadius) == 0
                && Objects.equals(wood, other.wood);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                nutWidth, secondWidth, secondFret, nutThickness, secondThickness, nutRadius, secondRadius, wood);
    }

    /** Returns such as {@code fingerboard 34 mm at the nut, 46 mm at the body joint, 6 mm thick, radius 400 mm}. */
    @Override
    public String toString() {
        return text(style());
    }
}
