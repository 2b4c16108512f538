package org.neckgeom.stock;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;
import org.neckgeom.units.LibraryUnits;

/**
 * One property of a wood with its source, such as {@code modulus along the grain 11600 MPa, Wood Handbook (2010) Table 5-3}.
 * Immutable.
 *
 * @param kind of property; its unit follows from the kind
 * @param value in the unit of its kind, more than 0
 * @param source in one line
 * @param standing evidence class of the figure
 */
public record WoodFigure(Kind kind, double value, String source, Standing standing) implements Answer {

    /** Its keys. */
    public static final Table<WoodFigure> TABLE = Table.of(
                    "figure", "one figure of a wood with its source", WoodFigure::of, WoodFigure::values)
            .printedBy(WoodFigure::sentences);

    private static final int LONGEST_SOURCE = 200;

    private static final Key<WoodFigure, Kind> KIND =
            TABLE.needed("kind", Types.words(Kind.class, WoodFigure::word), "kind of figure");
    private static final Key<WoodFigure, Double> VALUE_IN_UNIT =
            TABLE.needed("value", Types.number(0, LibraryUnits.MOST), "value in the unit of its kind, more than 0");
    private static final Key<WoodFigure, String> UNIT = TABLE.needed("unit", Types.TEXT, "unit of its kind");
    private static final Key<WoodFigure, String> SOURCE = TABLE.needed(
            "source",
            Types.named(text -> Words.line(text, "source", LONGEST_SOURCE), text -> text),
            "source of the figure");
    private static final Key<WoodFigure, Standing> STANDING =
            TABLE.needed("standing", Types.words(Standing.class, WoodFigure::word), "standing of the source");

    private static final int LABEL_WIDTH = 24;

    /** What a figure is, and its unit. */
    public enum Kind {
        /** Mass of a piece at 12 % moisture over its volume at 12 % moisture. */
        DENSITY("density at 12 % moisture", "kg/m3"),
        /** Modulus of elasticity along the grain at 12 % moisture, from bending tests. */
        MODULUS("modulus along the grain", "MPa"),
        /** Coefficient of variation of the modulus between pieces of one species. */
        MODULUS_VARIATION("modulus varies by", "%"),
        /** Modulus of rupture at 12 % moisture: the greatest stress of a small clear piece broken in bending. */
        BENDING_STRENGTH("bending strength", "MPa"),
        /** Shrinkage along the rays, green to ovendry, in percent of the green size. */
        RADIAL_SHRINKAGE("shrinkage, radial", "%"),
        /** Shrinkage along the growth rings, green to ovendry, in percent of the green size. */
        TANGENTIAL_SHRINKAGE("shrinkage, tangential", "%"),
        /** Change of size along the rays for one percent of moisture, 6 to 14 % moisture. */
        RADIAL_CHANGE("change, radial", "per %"),
        /** Change of size along the growth rings for one percent of moisture, 6 to 14 % moisture. */
        TANGENTIAL_CHANGE("change, tangential", "per %");

        private final String label;
        private final String unit;

        Kind(String label, String unit) {
            this.label = label;
            this.unit = unit;
        }

        /** {@return the words for this kind of figure, such as {@code modulus along the grain}} */
        public String label() {
            return label;
        }

        /** {@return the unit figures of this kind are in, such as {@code MPa}} */
        public String unit() {
            return unit;
        }

        /** Returns the words for this kind of figure. */
        @Override
        public String toString() {
            return label;
        }
    }

    /** How far a figure may be trusted. */
    public enum Standing {
        /** Printed in the source, seen in a reproduction of it. */
        PRINTED("printed"),
        /** Worked out from printed figures by a formula the source line names. */
        DERIVED("derived"),
        /** Written down from memory: no text was seen. Have it confirmed before much depends on it. */
        FROM_MEMORY("from memory"),
        /** Given by whoever made this wood. */
        OWN("own value");

        private final String label;

        Standing(String label) {
            this.label = label;
        }

        @Override
        public String toString() {
            return label;
        }
    }

    /**
     * Makes a figure and checks it.
     *
     * @param kind what the figure is
     * @param value the figure in the unit of its kind, more than 0
     * @param source where it comes from, in one line
     * @param standing how far it may be trusted
     * @throws IllegalArgumentException if the value is 0 or less or more than 1e9, or the source is blank
     */
    public WoodFigure {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(standing, "standing");
        if (!(value > 0 && value <= LibraryUnits.MOST)) {
            throw Refusal.of(
                    kind.label(),
                    "range",
                    "be more than 0 and no more than " + Numbers.plain(LibraryUnits.MOST) + " " + kind.unit(),
                    Numbers.plain(value) + " " + kind.unit());
        }
        Words.line(source, "the source of " + kind.label(), LONGEST_SOURCE);
    }

    private static WoodFigure of(Values<WoodFigure> values) {
        Kind kind = values.at(KIND);
        if (!values.at(UNIT).equals(kind.unit())) {
            throw values.refused(UNIT, "unit", "be " + kind.unit() + " for " + kind.label(), values.at(UNIT));
        }
        return new WoodFigure(kind, values.at(VALUE_IN_UNIT), values.at(SOURCE), values.at(STANDING));
    }

    private Values<WoodFigure> values() {
        return TABLE.values()
                .with(KIND, kind)
                .with(VALUE_IN_UNIT, value)
                .with(UNIT, kind.unit())
                .with(SOURCE, source)
                .with(STANDING, standing);
    }

    /** Such as {@code from memory} for {@code FROM_MEMORY}. */
    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * {@return the figure as a line of text: kind, value, unit, source and standing; such a line as {@code modulus
     * along the grain 11600 MPa Wood Handbook (2010) Table 5-3, printed}}
     */
    @Override
    public String toString() {
        return text(style());
    }

    /** Under those of other figures, however long its label is. */
    private String column() {
        String gap = " ".repeat(LABEL_WIDTH - kind.label().length());
        return gap + String.format(Locale.ROOT, " %8s %-6s", number(), kind.unit());
    }

    @Override
    public Form<WoodFigure> form() {
        return TABLE.form();
    }

    /** Returns millimetres: a figure has no lengths. */
    private String number() {
        return switch (kind) {
            case DENSITY, MODULUS -> Numbers.fixed(value, 0);
            case BENDING_STRENGTH, MODULUS_VARIATION, RADIAL_SHRINKAGE, TANGENTIAL_SHRINKAGE -> Numbers.fixed(value, 1);
            case RADIAL_CHANGE, TANGENTIAL_CHANGE -> Numbers.fixed(value, 5);
        };
    }

    private static Form<WoodFigure> sentences() {
        org.neckgeom.form.Kind<WoodFigure> column = org.neckgeom.form.Kind.own(
                (figure, style) -> figure.column(), (figure, style) -> figure.value, Map.of("type", "number"));
        return TABLE.facts("wood-figure")
                .fact("column", column, "the value as it is printed", figure -> figure)
                .finds("figure", "{kind}{column} {source}, {standing}");
    }
}
