package org.neckgeom.neck;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * A stiffening bar ({@index "carbon bar"}, reinforcement): bonded in its channel, not adjustable, such as
 * {@code carbon bar, 300 mm x 6 mm x 9 mm}. Immutable.
 *
 * <p>Length, width and height are more than 0. {@code Relief} counts the bar as part of the section, with the modulus of its
 * material.
 */
public final class Bar extends Noun<Bar> implements Reinforcement {

    /** What the bar is made of. */
    public enum Material {
        /** Steel. */
        STEEL,
        /** Carbon fibre. */
        CARBON;

        /** Returns such as {@code steel}. */
        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Its keys. */
    public static final Table<Bar> TABLE =
            Table.of("bar", "a stiffening bar", Bar::new).printedBy(Bar::sentences);

    private static final Key<Bar, Material> MATERIAL =
            TABLE.needed("material", Types.words(Material.class, Material::toString), "material of the bar");
    private static final Key<Bar, Amount<Length>> LENGTH = TABLE.needed("length", Types.SIZE, "length of the bar");
    private static final Key<Bar, Amount<Length>> WIDTH =
            TABLE.needed("width", Types.SIZE, "width of the bar across the channel");
    private static final Key<Bar, Amount<Length>> HEIGHT =
            TABLE.needed("height", Types.SIZE, "height of the bar in the channel");

    private static final Key<Bar, Amount<Length>> ASIDE = TABLE.optional(
            "aside",
            Types.SIZE,
            "bars beside the middle: distance of each bar's middle from the centreline at the nut line. Common practice: 10 to 12 mm");
    private static final Key<Bar, Amount<Length>> FAR_ASIDE = TABLE.optional(
            "far aside",
            Types.SIZE,
            "bars beside the middle: the same at the body joint, where they fan with the taper. Default: as at the nut");
    private static final Key<Bar, Amount<Length>> START = TABLE.optional(
            "starts at",
            Types.EITHER_WAY,
            "bars beside the middle: distance from the nut line to their head ends. Default: 0");
    private static final Key<Bar, Amount<Length>> WIDER = TABLE.optional(
            "side clearance",
            Types.SIZE_OR_NOTHING,
            "bars beside the middle: width of their channels minus that of the bar, room for glue. Default: 0.1 mm");
    private static final Key<Bar, Amount<Length>> DEEPER = TABLE.optional(
            "depth clearance",
            Types.SIZE_OR_NOTHING,
            "bars beside the middle: depth of their channels minus height of the bar. Default: 0.15 mm");

    /** Room for glue beside and under a bar, mm; common practice: 0.05 to 0.15 and 0.1 to 0.2. */
    private static final double USUAL_WIDER_MM = 0.1;

    private static final double USUAL_DEEPER_MM = 0.15;

    private final double length;
    private final double width;
    private final double height;

    private Bar(Values<Bar> values) {
        super(values);
        this.length = values.libraryValue(LENGTH);
        this.width = values.libraryValue(WIDTH);
        this.height = values.libraryValue(HEIGHT);
    }

    /**
     * Begins a steel bar.
     *
     * @param length from end to end, more than 0; its unit is the one answers are given in
     * @return what needs a section to be a bar
     */
    public static NeedsSection steel(Quantity<Length> length) {
        return new NeedsSection(TABLE.values().with(MATERIAL, Material.STEEL).amount(LENGTH, length));
    }

    /**
     * Begins a bar of carbon fibre.
     *
     * @param length from end to end, more than 0; its unit is the one answers are given in
     * @return what needs a section to be a bar
     */
    public static NeedsSection carbon(Quantity<Length> length) {
        return new NeedsSection(TABLE.values().with(MATERIAL, Material.CARBON).amount(LENGTH, length));
    }

    /** A bar without its section yet. Immutable. */
    public static final class NeedsSection extends Unfinished<Bar> {

        private NeedsSection(Values<Bar> values) {
            super(values, values.at(MATERIAL) + " bar, section not given yet");
        }

        /**
         * Adds the section.
         *
         * @param width across the channel, more than 0
         * @param height in the channel, more than 0
         * @return the bar
         */
        public Bar section(Quantity<Length> width, Quantity<Length> height) {
            return new Bar(values().amount(WIDTH, width).amount(HEIGHT, height));
        }
    }

    /**
     * {@return this bar as one of two beside the middle, each in a channel of its own}
     *
     * @param fromCentreline of each bar's middle, more than half its width
     */
    public Bar aside(Quantity<Length> fromCentreline) {
        return new Bar(values().amount(ASIDE, fromCentreline));
    }

    /** The first key that only bars beside the middle have. */
    Optional<String> ofAPair() {
        return Stream.of(ASIDE, FAR_ASIDE, START, WIDER, DEEPER)
                .filter(values()::has)
                .map(Key::name)
                .findFirst();
    }

    boolean isAside() {
        return values().has(ASIDE);
    }

    /**
     * {@return the distance of the middle of each of two bars from the centreline at a station: straight from nut line to body
     * joint; in mm; 0 for one bar in the middle}
     *
     * @param xMm station in mm
     * @param bodyJointMm station of the body joint in mm, more than 0
     */
    public double asideMm(double xMm, double bodyJointMm) {
        double near = values().libraryValue(ASIDE, 0);
        double far = values().libraryValue(FAR_ASIDE, near);
        return near + (far - near) * LibraryUnits.stationMm(xMm) / bodyJointMm;
    }

    double startMm() {
        return values().libraryValue(START, 0);
    }

    double widerMm() {
        return values().libraryValue(WIDER, USUAL_WIDER_MM);
    }

    double deeperMm() {
        return values().libraryValue(DEEPER, USUAL_DEEPER_MM);
    }

    /** One of the two, without its place. */
    Bar alone() {
        Values<Bar> own = values();
        for (Key<Bar, Amount<Length>> key : List.of(ASIDE, FAR_ASIDE, START, WIDER, DEEPER)) {
            own = own.without(key);
        }
        return new Bar(own);
    }

    /** {@return the material} */
    public Material material() {
        return values().at(MATERIAL);
    }

    @Override
    public double lengthMm() {
        return length;
    }

    @Override
    public double widthMm() {
        return width;
    }

    @Override
    public double heightMm() {
        return height;
    }

    private static Form<Bar> sentences() {
        return TABLE.facts("bar")
                .phrase("asides", ", {aside} aside at the nut and {farAside} at the body joint")
                .phrase("asides", ", {aside} aside")
                .finds("bars", Bar::isAside, "two {material} bars, {length} x {width} x {height}{asides}")
                .finds("bar", "{material} bar, {length} x {width} x {height}");
    }
}
