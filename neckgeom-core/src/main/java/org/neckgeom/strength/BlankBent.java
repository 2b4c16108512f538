package org.neckgeom.strength;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
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
 * A blank bent under a weight, before it is carved: on two supports, the weight midway, its fall read there by a dial from a bar
 * that rests on the blank over the supports. Immutable.
 *
 * <p>{@code E = P L^3/(4 d b h^3) (1 + e)}, {@code e = 1.2 (E/G)(h/L)^2} the share of shear, E/G 14 (9 to 20 occur). The fall for
 * the weight is the slope of all falls through zero. Plane the blank true first: thickness counts three times.
 *
 * <pre>{@code
 * println(BlankBent.over(mm(600)).section(mm(70), mm(22)).fall(newton(49), mm(0.28)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Blank of 70 mm by 22 mm over 600 mm: modulus 13.0 GPa
 * }</pre>
 */
public final class BlankBent extends Noun<BlankBent> {

    /** Modulus along the grain over shear modulus, common for woods; 9 to 20 occur. */
    static final double MODULUS_OVER_SHEAR = 14;

    private static final double SHEAR_FACTOR = 1.2;

    /** A calliper's, over a planed blank. */
    static final Amount<Length> CALLIPER = ShopUnits.mm(0.03);

    static final String CALLIPER_MEANING = "standard uncertainty of the thickness. Default: 0.03 mm";

    /** Its keys. */
    public static final Table<BlankBent> TABLE = Table.of(
                    "", "a blank bent under a weight midway between two supports", BlankBent::new)
            .printedBy(BlankBent::sentences);

    private static final Key<BlankBent, Amount<Length>> SPAN =
            TABLE.needed("span", Types.SIZE, "distance between the supports");
    private static final Key<BlankBent, Amount<Length>> WIDTH = TABLE.needed("width", Types.SIZE, "width of the blank");
    private static final Key<BlankBent, Amount<Length>> THICKNESS =
            TABLE.needed("thickness", Types.SIZE, "thickness of the blank, in the direction of the fall");
    private static final Key<BlankBent, List<Amount<Force>>> WEIGHTS =
            TABLE.needed("weights", WeightReadings.WEIGHTS, "weights put on midway: one, or several");
    private static final Key<BlankBent, List<Amount<Length>>> FALLS =
            TABLE.needed("falls", WeightReadings.FALLS, "fall midway under each weight");

    private static final Key<BlankBent, Amount<Length>> FALL_U =
            TABLE.usual("standard uncertainty", Types.SIZE, WeightReadings.DIAL, WeightReadings.DIAL_MEANING);
    private static final Key<BlankBent, Amount<Length>> THICKNESS_U =
            TABLE.usual("thickness uncertainty", Types.SIZE, CALLIPER, CALLIPER_MEANING);

    private final WeightReadings readings;

    private BlankBent(Values<BlankBent> values) {
        super(values);
        this.readings = WeightReadings.of(values.at(WEIGHTS), values.at(FALLS), values.libraryValue(FALL_U));
        if (!(values.libraryValue(THICKNESS) < values.libraryValue(SPAN) / 4)) {
            throw values.refused(
                    THICKNESS,
                    "less-than",
                    "be less than a quarter of the span, " + style().brief(values.libraryValue(SPAN) / 4),
                    values.at(THICKNESS));
        }
    }

    /**
     * Begins with the distance of the supports.
     *
     * @param span more than 0
     * @return the span, to be followed by {@code section}
     */
    public static NeedsSection over(Quantity<Length> span) {
        return new NeedsSection(TABLE.values().amount(SPAN, span));
    }

    /** A span without a section yet. Immutable. */
    public static final class NeedsSection extends Unfinished<BlankBent> {

        private NeedsSection(Values<BlankBent> values) {
            super(values, "Blank on two supports, section not given yet");
        }

        /**
         * Adds the blank's section.
         *
         * @param width more than 0
         * @param thickness in the direction of the fall, less than a quarter of the span
         * @return the same, to be followed by {@code fall}
         */
        public NeedsFall section(Quantity<Length> width, Quantity<Length> thickness) {
            return new NeedsFall(values().amount(WIDTH, width).amount(THICKNESS, thickness));
        }
    }

    /** A blank without a reading yet. Immutable. */
    public static final class NeedsFall extends Unfinished<BlankBent> {

        private NeedsFall(Values<BlankBent> values) {
            super(values, "Blank on two supports, fall not given yet");
        }

        /**
         * Adds the fall under a weight.
         *
         * @param weight more than 0
         * @param fall midway, more than 0
         * @return the reading
         */
        public BlankBent fall(Quantity<Force> weight, Quantity<Length> fall) {
            return new BlankBent(values().with(WEIGHTS, WeightReadings.more(List.of(), weight, "weight"))
                    .with(FALLS, WeightReadings.more(List.of(), fall, "fall")));
        }
    }

    /**
     * {@return this reading with the fall under another weight}
     *
     * @param weight more than 0
     * @param fall midway, more than 0
     */
    public BlankBent fall(Quantity<Force> weight, Quantity<Length> fall) {
        return new BlankBent(values().with(WEIGHTS, WeightReadings.more(values().at(WEIGHTS), weight, "weight"))
                .with(FALLS, WeightReadings.more(values().at(FALLS), fall, "fall")));
    }

    /**
     * {@return this reading with the uncertainty of one fall}
     *
     * @param ofOneFall standard uncertainty, more than 0; 0.003 mm unless given
     */
    public BlankBent standardUncertainty(Quantity<Length> ofOneFall) {
        return new BlankBent(values().amount(FALL_U, ofOneFall));
    }

    /**
     * {@return this reading with the uncertainty of the blank's thickness}
     *
     * @param standard standard uncertainty, more than 0; 0.03 mm unless given
     */
    public BlankBent thicknessUncertainty(Quantity<Length> standard) {
        return new BlankBent(values().amount(THICKNESS_U, standard));
    }

    /** {@return the modulus of elasticity along the grain} Estimate: E/G 14. */
    public Amount<Pressure> modulus() {
        return Amount.ofLibrary(modulusMPa(), ShopUnit.GIGAPASCAL);
    }

    double widthMm() {
        return values().libraryValue(WIDTH);
    }

    double modulusMPa() {
        double span = values().libraryValue(SPAN);
        double thickness = values().libraryValue(THICKNESS);
        return span
                * span
                * span
                / (4 * readings.perNewton() * values().libraryValue(WIDTH) * thickness * thickness * thickness)
                * (1 + shear());
    }

    /** The share of shear in the fall. */
    double shear() {
        double slender = values().libraryValue(THICKNESS) / values().libraryValue(SPAN);
        return SHEAR_FACTOR * MODULUS_OVER_SHEAR * slender * slender;
    }

    /** Standard uncertainty of the modulus's logarithm: thickness, falls, E/G 14 +- 4, 0.5 % of the rest. */
    double uncertainty() {
        double thick = 3 * values().libraryValue(THICKNESS_U) / values().libraryValue(THICKNESS);
        double dial = readings.uncertainty();
        double ratio = shear() * 4 / MODULUS_OVER_SHEAR;
        return StrictMath.hypot(StrictMath.hypot(thick, dial), StrictMath.hypot(ratio, 0.005));
    }

    private static Form<BlankBent> sentences() {
        return TABLE.facts("blank-bent")
                .fact("modulus", Kind.libraryValue(ShopUnit.GIGAPASCAL), "along the grain", BlankBent::modulusMPa)
                .finds("blank-bent", "Blank of {width} by {thickness} over {span}: modulus {modulus:1}");
    }
}
