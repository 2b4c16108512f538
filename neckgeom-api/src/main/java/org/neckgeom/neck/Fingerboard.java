package org.neckgeom.neck;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.stock.Wood;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnits;

/**
 * The fingerboard, such as {@code fingerboard 34 mm at the nut, 46 mm at the body joint, 6 mm thick, radius 400 mm}.
 * Immutable.
 *
 * <p>Width is linear between the nut and the second place, and beyond. Unless given, the second place is the body joint,
 * the board is 6 mm thick on its centreline all along, and flat.
 */
public final class Fingerboard extends Noun<Fingerboard> {

    /** How the crown's radius runs along the board. */
    public enum Crown {
        /** No crown. */
        FLAT,
        /** The same radius all along: a cylinder. */
        CYLINDER,
        /** The radius grows in a straight line from the nut to the second place: a cone. */
        CONE
    }

    /** Its keys. */
    public static final Table<Fingerboard> TABLE =
            Table.of("fingerboard", "the fingerboard", Fingerboard::new).printedBy(Fingerboard::sentences);

    private static final Amount<Length> USUAL_THICKNESS = ShopUnits.mm(6);

    private static final Key<Fingerboard, Amount<Length>> NUT_WIDTH = TABLE.needed(
                    "width at nut", Types.SIZE, "how wide the board is at the nut")
            .called("width at the nut");
    private static final Key<Fingerboard, Amount<Length>> SECOND_WIDTH = TABLE.needed(
                    "second width", Types.SIZE, "how wide it is at its second place")
            .called("second width");
    private static final Key<Fingerboard, Integer> SECOND_FRET = TABLE.optional(
                    "second at fret", Types.whole(1, 200), "the fret of the second place; the body joint when left out")
            .called("fret of the second width");
    private static final Key<Fingerboard, Amount<Length>> THICKNESS = TABLE.needed(
                    "thickness", Types.SIZE, "on the centreline, at the nut; all along without a second")
            .called("board thickness");
    private static final Key<Fingerboard, Amount<Length>> SECOND_THICKNESS = TABLE.optional(
                    "second thickness", Types.SIZE, "on the centreline at the second place")
            .called("board thickness at the second place");
    private static final Key<Fingerboard, Amount<Length>> RADIUS = TABLE.optional(
                    "radius", Types.RADIUS, "radius of the crown, at the nut; a flat board when left out")
            .called("radius at the nut");
    private static final Key<Fingerboard, Amount<Length>> SECOND_RADIUS = TABLE.optional(
                    "second radius", Types.RADIUS, "radius at the second place; the same when left out")
            .called("radius at the second place");
    private static final Key<Fingerboard, Amount<Length>> FRET_HEIGHT = TABLE.optional(
                    "fret height", Types.SIZE, "of the frets over the board; unknown when left out")
            .called("fret height");
    private static final Key<Fingerboard, Amount<Length>> FALL_AWAY = TABLE.optional(
                    "fall-away",
                    Types.SIZE_OR_NOTHING,
                    "how much lower the board is at the last fret, in a straight slope from the body joint; none when"
                            + " left out")
            .called("fall-away");
    private static final Key<Fingerboard, Wood> WOOD = TABLE.optional("wood", Wood.TYPE, "the board's wood");

    private final double nutWidth;
    private final double secondWidth;
    private final double nutThickness;
    private final double secondThickness;
    private final double nutRadius;
    private final double secondRadius;

    private Fingerboard(Values<Fingerboard> values) {
        super(once(values));
        this.nutWidth = values.libraryValue(NUT_WIDTH);
        this.secondWidth = values.libraryValue(SECOND_WIDTH);
        this.nutThickness = values.libraryValue(THICKNESS);
        this.secondThickness = values.libraryValue(SECOND_THICKNESS, nutThickness);
        this.nutRadius = values.libraryValue(RADIUS, Double.POSITIVE_INFINITY);
        this.secondRadius = values.libraryValue(SECOND_RADIUS, nutRadius);
        if (values.has(SECOND_RADIUS) && !values.has(RADIUS)) {
            throw Refusal.because(
                    SECOND_RADIUS.name(),
                    "together",
                    "a second radius is given, but no radius; give both, or neither for a flat board");
        }
        requireOver(RADIUS, nutRadius, nutWidth);
        requireOver(values.has(SECOND_RADIUS) ? SECOND_RADIUS : RADIUS, secondRadius, secondWidth);
    }

    /** What is the same at the second place needs no second figure. */
    private static Values<Fingerboard> once(Values<Fingerboard> values) {
        return once(once(values, THICKNESS, SECOND_THICKNESS), RADIUS, SECOND_RADIUS);
    }

    private static Values<Fingerboard> once(
            Values<Fingerboard> values, Key<Fingerboard, Amount<Length>> key, Key<Fingerboard, ?> second) {
        return values.find(key).isPresent() && values.find(key).equals(values.find(second))
                ? values.without(second)
                : values;
    }

    private void requireOver(Key<Fingerboard, ?> key, double radius, double width) {
        if (!(radius > width / 2)) {
            throw values().refused(
                            key,
                            "more-than",
                            "be more than half the width of " + style().amount(width),
                            style().amount(radius));
        }
    }

    /**
     * {@return a tapered board}
     *
     * @param atNut width at the nut, more than 0; its unit is the one answers are given in
     * @param atSecond width at the body joint, or at the fret given to {@link #secondAtFret}, more than 0
     */
    public static Fingerboard tapered(Quantity<Length> atNut, Quantity<Length> atSecond) {
        return new Fingerboard(TABLE.values()
                .amount(NUT_WIDTH, atNut)
                .amount(SECOND_WIDTH, atSecond)
                .with(THICKNESS, USUAL_THICKNESS));
    }

    /**
     * {@return this board with its second place at a fret instead of the body joint}
     *
     * @param fret 1 to 200
     */
    public Fingerboard secondAtFret(int fret) {
        return new Fingerboard(values().with(SECOND_FRET, fret));
    }

    /**
     * {@return this board equally thick on its centreline all along}
     *
     * @param onCentreline more than 0
     */
    public Fingerboard thickness(Quantity<Length> onCentreline) {
        return thickness(onCentreline, onCentreline);
    }

    /**
     * {@return this board with its thickness in a straight line from the nut to the second place}
     *
     * @param atNut on the centreline at the nut, more than 0
     * @param atSecond on the centreline at the second place, more than 0
     */
    public Fingerboard thickness(Quantity<Length> atNut, Quantity<Length> atSecond) {
        return new Fingerboard(values().amount(THICKNESS, atNut).amount(SECOND_THICKNESS, atSecond));
    }

    /**
     * {@return this board with one radius}
     *
     * @param crown more than half of either width
     */
    public Fingerboard radius(Quantity<Length> crown) {
        return radius(crown, crown);
    }

    /**
     * {@return this board with a compound radius: a cone whose radius grows in a straight line}
     *
     * @param atNut more than half the width there
     * @param atSecond more than half the width there
     */
    public Fingerboard radius(Quantity<Length> atNut, Quantity<Length> atSecond) {
        return new Fingerboard(values().amount(RADIUS, atNut).amount(SECOND_RADIUS, atSecond));
    }

    /**
     * {@return this board with frets of a height}
     *
     * @param overBoard more than 0
     */
    public Fingerboard fretHeight(Quantity<Length> overBoard) {
        return new Fingerboard(values().amount(FRET_HEIGHT, overBoard));
    }

    /**
     * {@return this board falling away in a straight slope from the body joint to the last fret}
     *
     * @param drop how much lower the board is at the last fret, 0 or more
     */
    public Fingerboard fallAway(Quantity<Length> drop) {
        return new Fingerboard(values().amount(FALL_AWAY, drop));
    }

    /**
     * {@return this board of a wood}
     *
     * @param kind the wood
     */
    public Fingerboard wood(Wood kind) {
        return new Fingerboard(values().with(WOOD, kind));
    }

    /** {@return the width at the nut in mm; more than 0} */
    public double nutWidthMm() {
        return nutWidth;
    }

    /** {@return the width at the second place in mm; more than 0} */
    public double secondWidthMm() {
        return secondWidth;
    }

    /**
     * {@return the fret of the second place; 1 or more}
     *
     * @param bodyJointFret the fret at the body joint, which it is unless another is given
     */
    public double secondFret(double bodyJointFret) {
        if (!(bodyJointFret >= 1 && bodyJointFret <= LibraryUnits.MOST)) {
            throw Refusal.of("fret at the body", "at-least", "be 1 or more", Numbers.plain(bodyJointFret));
        }
        Optional<Integer> second = values().find(SECOND_FRET);
        return second.isPresent() ? second.get() : bodyJointFret;
    }

    /** {@return the thickness on the centreline at the nut in mm; more than 0} */
    public double nutThicknessMm() {
        return nutThickness;
    }

    /** {@return the thickness on the centreline at the second place in mm; more than 0} */
    public double secondThicknessMm() {
        return secondThickness;
    }

    /** {@return the crown's radius at the nut in mm; infinite for a flat board} */
    public double nutRadiusMm() {
        return nutRadius;
    }

    /** {@return the crown's radius at the second place in mm; infinite for a flat board} */
    public double secondRadiusMm() {
        return secondRadius;
    }

    /** {@return how the crown runs} */
    public Crown crown() {
        if (Double.isInfinite(nutRadius)) {
            return Crown.FLAT;
        }
        return nutRadius == secondRadius ? Crown.CYLINDER : Crown.CONE;
    }

    /** {@return the height of the frets over the board; the height, or nothing when it was not given} */
    public Optional<Amount<Length>> fretHeight() {
        return values().find(FRET_HEIGHT);
    }

    /**
     * {@return how much lower the board is at the last fret than a straight one; the drop, or nothing where the board
     * runs straight on}
     */
    public Optional<Amount<Length>> fallAway() {
        return values().find(FALL_AWAY);
    }

    /** {@return the wood; the wood, or nothing when it was not given} */
    public Optional<Wood> wood() {
        return values().find(WOOD);
    }

    private static Form<Fingerboard> sentences() {
        return sentences("fingerboard ");
    }

    /** With a title before them, or none for the row of a neck. */
    static Form<Fingerboard> sentences(String title) {
        return TABLE.facts("fingerboard")
                .fact("crown", Kind.code(Crown.class), "how its radius runs", Fingerboard::crown)
                .phrase("second", "fret {secondAtFret}")
                .phrase("second", "the body joint")
                .phrase("thick", "{thickness} to {secondThickness}")
                .phrase("thick", "{thickness}")
                .phrase("crowned", "radius {radius} to {secondRadius}")
                .phrase("crowned", "radius {radius}")
                .phrase("crowned", "flat")
                .phrase("made", ", {wood}")
                .finds(
                        "fingerboard",
                        title + "{widthAtNut} at the nut, {secondWidth} at {second}, {thick} thick, {crowned}{made}");
    }
}
