package org.neckgeom.neck;

import java.util.Locale;
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
        return TABLE.facts("bar").finds("bar", "{material} bar, {length} x {width} x {height}");
    }
}
