package org.neckgeom.neck;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.stock.Wood;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnits;

/**
 * The fingerboard ({@index fretboard}): widths, thickness, and radius or {@index "compound radius"} of the board that the
 * frets are set in. Immutable.
 *
 * <p>The width is linear through the nut width and the far width, and beyond. The thickness counts on the centreline; the
 * fingerboard radius ({@index camber}) is that of the crown across. Two radii make a compound radius (conical board). Lengths
 * are more than 0. Defaults: the far width is at the body joint; the board is 6 mm thick, and flat (common practice).
 *
 * <pre>{@code
 * println(Fingerboard.tapered(mm(34), mm(46)).radius(mm(400)));
 * println(Fingerboard.tapered(inch("1 11/16"), inch("2 1/4")).radius(inch(10), inch(16)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * fingerboard 34 mm at the nut, 46 mm at the body joint, 6 mm thick, radius 400 mm
 * fingerboard 1.6875 in at the nut, 2.25 in at the body joint, 0.2362 in thick, radius 10 in to 16 in
 * }</pre>
 */
public final class Fingerboard extends Noun<Fingerboard> {

    /** How the crown's radius runs along the board. */
    public enum Crown {
        /** No crown. */
        FLAT,
        /** The same radius all along: a cylinder. */
        CYLINDER,
        /** The radius grows in a straight line from the nut to the far width: a cone (compound radius). */
        CONE
    }

    /** Its keys. */
    public static final Table<Fingerboard> TABLE =
            Table.of("fingerboard", "the fingerboard", Fingerboard::new).printedBy(Fingerboard::sentences);

    private static final Amount<Length> USUAL_THICKNESS = ShopUnits.mm(6);

    private static final Key<Fingerboard, Amount<Length>> NUT_WIDTH =
            TABLE.needed("nut width", Types.SIZE, "width at the nut line").called("nut width");
    private static final Key<Fingerboard, FarWidth> FAR = TABLE.needed(
            "far width",
            Types.group(FarWidth.TABLE),
            "width toward the body, with its fret. Straight from the nut width");
    private static final Key<Fingerboard, Amount<Length>> THICKNESS = TABLE.needed(
                    "thickness", Types.SIZE, "thickness on the centreline at the nut. Constant without a far thickness")
            .called("board thickness");
    private static final Key<Fingerboard, Amount<Length>> FAR_THICKNESS = TABLE.optional(
                    "far thickness",
                    Types.SIZE,
                    "thickness on the centreline at the fret of the far width. Default: constant")
            .called("board thickness at the far width");
    private static final Key<Fingerboard, Amount<Length>> RADIUS = TABLE.optional(
                    "radius", Types.RADIUS, "radius of the crown at the nut. Default: a flat board")
            .called("radius at the nut");
    private static final Key<Fingerboard, Amount<Length>> FAR_RADIUS = TABLE.optional(
                    "far radius",
                    Types.RADIUS,
                    "radius at the fret of the far width, for a compound radius. Default: constant")
            .called("radius at the far width");
    private static final Key<Fingerboard, Amount<Length>> FRET_HEIGHT = TABLE.optional(
                    "fret height", Types.SIZE, "height of the frets over the board. Default: not known")
            .called("fret height");
    private static final Key<Fingerboard, Amount<Length>> FALL_AWAY = TABLE.optional(
                    "fall-away",
                    Types.SIZE_OR_NOTHING,
                    "drop of the board at the last fret, in a straight slope from the body joint. Default: none")
            .called("fall-away");
    private static final Key<Fingerboard, Boolean> ZERO_FRET = TABLE.usual(
            "zero fret",
            Types.YES_OR_NO,
            false,
            "whether a fret on the nut line carries the strings, and the nut behind it only spaces them. Default: no");
    private static final Key<Fingerboard, Wood> WOOD =
            TABLE.optional("wood", Wood.TYPE, "wood of the fingerboard. Default: not known");

    static {
        TABLE.moved(Moves.none()
                .and("width at nut", "nut width")
                .and("second width", "far width.width")
                .and("second at fret", "far width.fret")
                .and("second thickness", "far thickness")
                .and("second radius", "far radius"));
    }

    /** The second width that gives the taper, with its place. */
    private static final class FarWidth extends Noun<FarWidth> {
        private static final Table<FarWidth> TABLE = Table.of("far width", "the width toward the body", FarWidth::new)
                .printedBy(FarWidth::sentences);
        private static final Key<FarWidth, Integer> FRET = TABLE.optional(
                        "fret", Types.whole(1, 200), "fret of this width. Default: the body joint")
                .called("fret of the far width");
        private static final Key<FarWidth, Amount<Length>> WIDTH =
                TABLE.needed("width", Types.SIZE, "width at this fret").called("far width");

        private FarWidth(Values<FarWidth> values) {
            super(values);
        }

        private FarWidth at(int fret) {
            return new FarWidth(values().with(FRET, fret));
        }

        private Optional<Integer> fret() {
            return values().find(FRET);
        }

        private Amount<Length> width() {
            return values().at(WIDTH);
        }

        private static Form<FarWidth> sentences() {
            return TABLE.facts("far-width").finds("far-width", "{width}");
        }
    }

    private final double nutWidth;
    private final double farWidth;
    private final double nutThickness;
    private final double farThickness;
    private final double nutRadius;
    private final double farRadius;

    private Fingerboard(Values<Fingerboard> values) {
        super(once(values));
        this.nutWidth = values.libraryValue(NUT_WIDTH);
        this.farWidth = values.at(FAR).width().libraryValue();
        this.nutThickness = values.libraryValue(THICKNESS);
        this.farThickness = values.libraryValue(FAR_THICKNESS, nutThickness);
        this.nutRadius = values.libraryValue(RADIUS, Double.POSITIVE_INFINITY);
        this.farRadius = values.libraryValue(FAR_RADIUS, nutRadius);
        if (values.has(FAR_RADIUS) && !values.has(RADIUS)) {
            throw Refusal.because(
                    FAR_RADIUS.name(),
                    "together",
                    "a far radius is given, but no radius; give both, or neither for a flat board");
        }
        requireOver(RADIUS, nutRadius, nutWidth);
        requireOver(values.has(FAR_RADIUS) ? FAR_RADIUS : RADIUS, farRadius, farWidth);
    }

    /** What is the same at the far width is given once. */
    private static Values<Fingerboard> once(Values<Fingerboard> values) {
        return once(once(values, THICKNESS, FAR_THICKNESS), RADIUS, FAR_RADIUS);
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
     * @param atFar width at the body joint, or at the fret given to {@link #farWidthAtFret}, more than 0
     */
    public static Fingerboard tapered(Quantity<Length> atNut, Quantity<Length> atFar) {
        return new Fingerboard(TABLE.values()
                .amount(NUT_WIDTH, atNut)
                .with(FAR, new FarWidth(FarWidth.TABLE.values().amount(FarWidth.WIDTH, atFar)))
                .with(THICKNESS, USUAL_THICKNESS));
    }

    /**
     * {@return this board with its far width at a fret instead of the body joint}
     *
     * @param fret 1 to 200
     */
    public Fingerboard farWidthAtFret(int fret) {
        return new Fingerboard(values().with(FAR, values().at(FAR).at(fret)));
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
     * {@return this board with its thickness in a straight line from the nut to the far width}
     *
     * @param atNut on the centreline at the nut, more than 0
     * @param atFar on the centreline at the far width, more than 0
     */
    public Fingerboard thickness(Quantity<Length> atNut, Quantity<Length> atFar) {
        return new Fingerboard(values().amount(THICKNESS, atNut).amount(FAR_THICKNESS, atFar));
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
     * @param atFar more than half the width there
     */
    public Fingerboard radius(Quantity<Length> atNut, Quantity<Length> atFar) {
        return new Fingerboard(values().amount(RADIUS, atNut).amount(FAR_RADIUS, atFar));
    }

    /**
     * {@return this board with frets of a height}
     *
     * @param overBoard more than 0
     */
    public Fingerboard fretHeight(Quantity<Length> overBoard) {
        return new Fingerboard(values().amount(FRET_HEIGHT, overBoard));
    }

    /** {@return this board with a zero fret: a fret on the nut line that carries the strings instead of the nut} */
    public Fingerboard zeroFret() {
        return new Fingerboard(values().with(ZERO_FRET, true));
    }

    /** {@return whether a zero fret carries the strings instead of the nut} */
    public boolean hasZeroFret() {
        return values().at(ZERO_FRET);
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

    /** {@return the far width in mm; more than 0} */
    public double farWidthMm() {
        return farWidth;
    }

    /**
     * {@return the fret of the far width; 1 or more}
     *
     * @param bodyJointFret the fret at the body joint, which it is unless another is given
     */
    public double farFret(double bodyJointFret) {
        if (!(bodyJointFret >= 1 && bodyJointFret <= LibraryUnits.MOST)) {
            throw Refusal.of("fret at the body", "at-least", "be 1 or more", Numbers.plain(bodyJointFret));
        }
        Optional<Integer> far = values().at(FAR).fret();
        return far.isPresent() ? far.get() : bodyJointFret;
    }

    /** {@return the thickness on the centreline at the nut in mm; more than 0} */
    public double nutThicknessMm() {
        return nutThickness;
    }

    /** {@return the thickness on the centreline at the far width in mm; more than 0} */
    public double farThicknessMm() {
        return farThickness;
    }

    /** {@return the crown's radius at the nut in mm; infinite for a flat board} */
    public double nutRadiusMm() {
        return nutRadius;
    }

    /** {@return the crown's radius at the far width in mm; infinite for a flat board} */
    public double farRadiusMm() {
        return farRadius;
    }

    /** {@return how the crown runs} */
    public Crown crown() {
        if (Double.isInfinite(nutRadius)) {
            return Crown.FLAT;
        }
        return nutRadius == farRadius ? Crown.CYLINDER : Crown.CONE;
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
                .fact("widthThere", Kind.MM, "far width", Fingerboard::farWidthMm)
                .factIfAny(
                        "farFret",
                        Kind.WHOLE,
                        "fret of the far width",
                        board -> board.values().at(FAR).fret().map(Integer::doubleValue))
                .phrase("far", "fret {farFret}")
                .phrase("far", "the body joint")
                .phrase("thick", "{thickness} to {farThickness}")
                .phrase("thick", "{thickness}")
                .phrase("crowned", "radius {radius} to {farRadius}")
                .phrase("crowned", "radius {radius}")
                .phrase("crowned", "flat")
                .phrase("made", ", {wood}")
                .finds(
                        "fingerboard",
                        title + "{nutWidth} at the nut, {widthThere} at {far}, {thick} thick, {crowned}{made}");
    }
}
