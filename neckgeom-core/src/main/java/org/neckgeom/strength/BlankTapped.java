package org.neckgeom.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * The tap tone of a blank, held at 0.224 of its length from both ends and tapped in the middle: the first bending tone, free at
 * both ends, with the blank's weight. Immutable.
 *
 * <p>{@code E = 0.94642 m f^2 L^3/(b h^3) T}, {@code T = 1 + h^2/(12 L^2) (49.48 + 12.30 x 1.2 E/G)} (Goens and Hearmon: shear and
 * rotary inertia; within 0.02 % of the exact beam for h/L under 1/25), E/G 14. A vibrating blank is stiffer than one bent slowly: the
 * modulus is divided by 1.05, standard uncertainty 3 %.
 *
 * <pre>{@code
 * println(BlankTapped.of(mm(700)).section(mm(70), mm(25)).rings(newton(8.4), hertz(219.5)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Blank of 700 mm by 70 mm by 25 mm, 219.5 Hz: modulus 12.0 GPa
 * }</pre>
 */
public final class BlankTapped extends Noun<BlankTapped> {

    /** 48 pi^2 over the fourth power of 4.730041, the first root of a free bar. */
    private static final double FREE_BAR = 0.94642;

    private static final double ROTARY = 49.48;
    private static final double SHEAR = 12.30;
    private static final double SHEAR_FACTOR = 1.2;

    /** Modulus of a vibrating blank over that of a bent one. */
    private static final double DYNAMIC = 1.05;

    private static final double GRAVITY = 9.80665;

    /** Its keys. */
    public static final Table<BlankTapped> TABLE =
            Table.of("", "the tap tone of a blank", BlankTapped::new).printedBy(BlankTapped::sentences);

    private static final Key<BlankTapped, Amount<Length>> LENGTH =
            TABLE.needed("length", Types.SIZE, "length of the blank");
    private static final Key<BlankTapped, Amount<Length>> WIDTH =
            TABLE.needed("width", Types.SIZE, "width of the blank");
    private static final Key<BlankTapped, Amount<Length>> THICKNESS =
            TABLE.needed("thickness", Types.SIZE, "thickness of the blank, in the direction of the tap");
    private static final Key<BlankTapped, Amount<Force>> WEIGHT =
            TABLE.needed("weight", Types.FORCE.moreThan(ShopUnits.newton(0)), "weight of the blank");
    private static final Key<BlankTapped, Amount<Frequency>> TONE = TABLE.needed(
            "tone", Types.TONE.moreThan(ShopUnits.hertz(0)), "lowest tone of the blank held at 0.224 of its length");

    private static final Key<BlankTapped, Amount<Frequency>> TONE_U = TABLE.usual(
            "standard uncertainty",
            Types.TONE.moreThan(ShopUnits.hertz(0)),
            ShopUnits.hertz(0.2),
            "standard uncertainty of the tone. Default: 0.2 Hz");
    private static final Key<BlankTapped, Amount<Length>> THICKNESS_U =
            TABLE.usual("thickness uncertainty", Types.SIZE, BlankBent.CALLIPER, BlankBent.CALLIPER_MEANING);

    private BlankTapped(Values<BlankTapped> values) {
        super(values);
        if (!(values.libraryValue(THICKNESS) < values.libraryValue(LENGTH) / 8)) {
            throw values.refused(
                    THICKNESS,
                    "less-than",
                    "be less than an eighth of the length, " + style().brief(values.libraryValue(LENGTH) / 8),
                    values.at(THICKNESS));
        }
    }

    /**
     * Begins with the length of the blank.
     *
     * @param length more than 0
     * @return the length, to be followed by {@code section}
     */
    public static NeedsSection of(Quantity<Length> length) {
        return new NeedsSection(TABLE.values().amount(LENGTH, length));
    }

    /** A length without a section yet. Immutable. */
    public static final class NeedsSection extends Unfinished<BlankTapped> {

        private NeedsSection(Values<BlankTapped> values) {
            super(values, "Blank to be tapped, section not given yet");
        }

        /**
         * Adds the blank's section.
         *
         * @param width more than 0
         * @param thickness in the direction of the tap, less than an eighth of the length
         * @return the same, to be followed by {@code rings}
         */
        public NeedsTone section(Quantity<Length> width, Quantity<Length> thickness) {
            return new NeedsTone(values().amount(WIDTH, width).amount(THICKNESS, thickness));
        }
    }

    /** A blank without its tone yet. Immutable. */
    public static final class NeedsTone extends Unfinished<BlankTapped> {

        private NeedsTone(Values<BlankTapped> values) {
            super(values, "Blank to be tapped, tone not given yet");
        }

        /**
         * Adds weight and tone.
         *
         * @param weight of the blank, more than 0
         * @param tone lowest tone, more than 0
         * @return the reading
         */
        public BlankTapped rings(Quantity<Force> weight, Quantity<Frequency> tone) {
            return new BlankTapped(values().amount(WEIGHT, weight).amount(TONE, tone));
        }
    }

    /**
     * {@return this reading with the uncertainty of its tone}
     *
     * @param ofTheTone standard uncertainty, more than 0; 0.2 Hz unless given
     */
    public BlankTapped standardUncertainty(Quantity<Frequency> ofTheTone) {
        return new BlankTapped(values().amount(TONE_U, ofTheTone));
    }

    /**
     * {@return this reading with the uncertainty of the blank's thickness}
     *
     * @param standard standard uncertainty, more than 0; 0.03 mm unless given
     */
    public BlankTapped thicknessUncertainty(Quantity<Length> standard) {
        return new BlankTapped(values().amount(THICKNESS_U, standard));
    }

    /** {@return the modulus of elasticity along the grain as bending has it: that of the tone over 1.05} Estimate. */
    public Amount<Pressure> modulus() {
        return Amount.ofLibrary(modulusMPa(), ShopUnit.GIGAPASCAL);
    }

    double widthMm() {
        return values().libraryValue(WIDTH);
    }

    double modulusMPa() {
        return vibratingMPa() / DYNAMIC;
    }

    /** As the tone has it. */
    double vibratingMPa() {
        double length = values().libraryValue(LENGTH) / 1000;
        double thickness = values().libraryValue(THICKNESS) / 1000;
        double hertz = values().libraryValue(TONE);
        double pascal = FREE_BAR
                * (values().libraryValue(WEIGHT) / GRAVITY)
                * hertz
                * hertz
                * length
                * length
                * length
                / (values().libraryValue(WIDTH) / 1000 * thickness * thickness * thickness);
        return pascal / 1e6 * ends();
    }

    /** What shear and rotary inertia take from the tone. */
    double ends() {
        double slender = values().libraryValue(THICKNESS) / values().libraryValue(LENGTH);
        return 1 + slender * slender / 12 * (ROTARY + SHEAR * SHEAR_FACTOR * BlankBent.MODULUS_OVER_SHEAR);
    }

    /** Standard uncertainty of the modulus's logarithm beside what all tap tones share: thickness, tone, 1 % of the rest. */
    double uncertainty() {
        double thick = 3 * values().libraryValue(THICKNESS_U) / values().libraryValue(THICKNESS);
        double tone = 2 * values().libraryValue(TONE_U) / values().libraryValue(TONE);
        return StrictMath.hypot(StrictMath.hypot(thick, tone), 0.01);
    }

    private static Form<BlankTapped> sentences() {
        return TABLE.facts("blank-tapped")
                .fact("modulus", Kind.libraryValue(ShopUnit.GIGAPASCAL), "along the grain", BlankTapped::modulusMPa)
                .fact(
                        "hertz",
                        Kind.libraryValue(ShopUnit.HERTZ),
                        "lowest tone",
                        blank -> blank.values().libraryValue(TONE))
                .finds("blank-tapped", "Blank of {length} by {width} by {thickness}, {hertz:1}: modulus {modulus:1}");
    }
}
