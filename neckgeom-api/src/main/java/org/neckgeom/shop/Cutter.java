package org.neckgeom.shop;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * A straight cutter ({@index "router bit"}, bit) of a spindle shaper or router table, such as
 * {@code 6 mm straight cutter, 2 flutes, carbide}. Immutable.
 *
 * <p>Lengths are more than 0; runout is total indicator reading (TIR), 0 or more. Defaults (common practice): two flutes,
 * three diameters long; a shank as thick as the cutter; stick-out (free length beyond the collet) of four diameters; steel;
 * no runout.
 *
 * <pre>{@code
 * println(Cutter.straight(mm(6)).flutes(2, mm(22)).shank(mm(12.7)).stickOut(mm(30)).carbide());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 6 mm straight cutter, 2 flutes of 22 mm, shank 12.7 mm, stick-out 30 mm, carbide
 * }</pre>
 */
public final class Cutter extends Noun<Cutter> {

    /** What the cutter's body is made of. */
    public enum Material {
        /** Steel, 200 GPa. Source: OpenStax, University Physics 1, Table 12.1. */
        STEEL(200_000),
        /** Solid carbide, 600 GPa; from memory, grades run from 550 to 650. */
        CARBIDE(600_000);

        private final double modulusMPa;

        Material(double modulusMPa) {
            this.modulusMPa = modulusMPa;
        }

        /** {@return Young's modulus in MPa} */
        public double modulusMPa() {
            return modulusMPa;
        }
    }

    /** Its keys. */
    public static final Table<Cutter> TABLE =
            Table.of("cutter", "the cutter for the channel", Cutter::new).printedBy(Cutter::sentences);

    private static final int USUAL_FLUTES = 2;
    private static final int MOST_FLUTES = 8;
    private static final double USUAL_FLUTED_DIAMETERS = 3;

    private static final Key<Cutter, Amount<Length>> DIAMETER =
            TABLE.needed("diameter", Types.SIZE, "diameter of the straight cutting part");
    private static final Key<Cutter, Integer> FLUTES = TABLE.usual(
                    "flutes",
                    Types.whole(1, MOST_FLUTES),
                    USUAL_FLUTES,
                    "number of flutes (cutting edges), given together with the flute length. Default: 2")
            .called("flutes");
    private static final Key<Cutter, Amount<Length>> FLUTE_LENGTH = TABLE.optional(
                    "flute length", Types.SIZE, "length of the flutes. Default: three diameters")
            .called("flute length");
    private static final Key<Cutter, Amount<Length>> SHANK = TABLE.optional(
                    "shank", Types.SIZE, "diameter of the shank. Default: diameter of the cutter")
            .called("shank diameter");
    private static final Key<Cutter, Amount<Length>> STICK_OUT = TABLE.optional(
                    "stick-out",
                    Types.SIZE,
                    "length of the cutter beyond the collet. Default: four diameters, but no less than the flutes")
            .called("stick-out");
    private static final Key<Cutter, Material> MATERIAL =
            TABLE.usual("material", materials(), Material.STEEL, "material of the cutter. Default: steel");
    private static final Key<Cutter, Amount<Length>> RUNOUT = TABLE.usual(
                    "runout",
                    Types.SIZE_OR_NOTHING,
                    ShopUnits.mm(0),
                    "runout at the cutter, total indicator reading (TIR). Default: 0")
            .called("runout");

    static {
        TABLE.moved(Moves.none().and("stand-out", "stick-out"));
        TABLE.together(FLUTES, FLUTE_LENGTH);
    }

    private Cutter(Values<Cutter> values) {
        super(values);
        if (!(stickOutMm() >= fluteLengthMm())) {
            Amount<Length> flutes = style().amount(fluteLengthMm());
            throw values.refused(
                    STICK_OUT, "at-least", "be " + flutes + " or more, the flute length", values.at(STICK_OUT));
        }
    }

    private static Type<Material> materials() {
        Map<String, Material> words = new LinkedHashMap<>();
        words.put("carbide", Material.CARBIDE);
        words.put("steel", Material.STEEL);
        return Types.words(words);
    }

    /**
     * {@return a straight cutter with default proportions}
     *
     * @param diameter more than 0
     */
    public static Cutter straight(Quantity<Length> diameter) {
        return new Cutter(TABLE.values().amount(DIAMETER, diameter));
    }

    /**
     * {@return this cutter with its flutes}
     *
     * @param count 1 to 8
     * @param length fluted length, more than 0, no more than the stick-out where that was given
     */
    public Cutter flutes(int count, Quantity<Length> length) {
        return new Cutter(values().with(FLUTES, count).amount(FLUTE_LENGTH, length));
    }

    /**
     * {@return this cutter with its shank}
     *
     * @param shankDiameter more than 0
     */
    public Cutter shank(Quantity<Length> shankDiameter) {
        return new Cutter(values().amount(SHANK, shankDiameter));
    }

    /**
     * {@return this cutter with its stick-out}
     *
     * @param length from the collet to the tip, no less than the flutes
     */
    public Cutter stickOut(Quantity<Length> length) {
        return new Cutter(values().amount(STICK_OUT, length));
    }

    /** {@return this cutter of solid carbide} */
    public Cutter carbide() {
        return new Cutter(values().with(MATERIAL, Material.CARBIDE));
    }

    /** {@return this cutter of steel} */
    public Cutter steel() {
        return new Cutter(values().with(MATERIAL, Material.STEEL));
    }

    /**
     * {@return this cutter with its runout}
     *
     * @param totalIndicatorReading what a dial indicator swings through in one turn, 0 or more
     */
    public Cutter runout(Quantity<Length> totalIndicatorReading) {
        return new Cutter(values().amount(RUNOUT, totalIndicatorReading));
    }

    /** {@return the diameter; more than 0} */
    public Amount<Length> diameter() {
        return values().at(DIAMETER);
    }

    /** {@return the diameter in mm; more than 0} */
    public double diameterMm() {
        return values().libraryValue(DIAMETER);
    }

    /** {@return the number of flutes; 1 to 8} */
    public int flutes() {
        return values().at(FLUTES);
    }

    /** {@return the fluted length in mm; more than 0} */
    public double fluteLengthMm() {
        return values().libraryValue(FLUTE_LENGTH, USUAL_FLUTED_DIAMETERS * diameterMm());
    }

    /** {@return the shank's diameter in mm; more than 0} */
    public double shankMm() {
        return values().libraryValue(SHANK, diameterMm());
    }

    /** {@return the stick-out from collet to tip in mm; the fluted length or more} */
    public double stickOutMm() {
        double diameter = diameterMm();
        return values().libraryValue(
                        STICK_OUT, Math.max(USUAL_FLUTED_DIAMETERS * diameter + diameter, fluteLengthMm()));
    }

    /** {@return the material} */
    public Material material() {
        return values().at(MATERIAL);
    }

    /** {@return the runout as a total indicator reading in mm; 0 or more} */
    public double runoutMm() {
        return values().libraryValue(RUNOUT);
    }

    /** {@return the width of the slot that one run cuts in mm: diameter and runout, which does not move its middle; more than 0} */
    public double slotWidthMm() {
        return diameterMm() + runoutMm();
    }

    private static Form<Cutter> sentences() {
        return TABLE.facts("cutter")
                .fact("cuttingEdges", Kind.WHOLE, "number, given or default", Cutter::flutes)
                .fact("cuttingLength", Kind.MM, "of the flutes, given or default", Cutter::fluteLengthMm)
                .fact("shankDiameter", Kind.MM, "given or default", Cutter::shankMm)
                .fact("reach", Kind.MM, "stick-out, given or default", Cutter::stickOutMm)
                .phrase("running", cutter -> cutter.runoutMm() > 0, ", runout {runout}")
                .finds(
                        "straight",
                        "{diameter} straight cutter, {cuttingEdges:of flute/flutes} of {cuttingLength}, "
                                + "shank {shankDiameter}, stick-out {reach}, {material}{running}");
    }
}
