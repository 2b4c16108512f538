package org.neckgeom.shop;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * A straight cutter, such as {@code 6 mm straight cutter, 2 flutes, carbide}. Immutable.
 *
 * <p>Unless told: two flutes, fluted for three diameters, a shank as thick as the cutter, standing out of the collet by
 * its flutes and one diameter, of steel, running true.
 */
public final class Cutter implements Answer, SaysLengths<Cutter> {

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

        /**
         * Returns Young's modulus in MPa.
         *
         * @return the modulus
         */
        public double modulusMPa() {
            return modulusMPa;
        }
    }

    private static final int USUAL_FLUTES = 2;
    private static final double USUAL_FLUTED_DIAMETERS = 3;

    private final double diameter;
    private final int flutes;
    private final double fluteLength;
    private final double shank;
    private final double standOut;
    private final Material material;
    private final double runout;
    private final ShopUnit<Length> unit;

    private Cutter(
            double diameter,
            int flutes,
            double fluteLength,
            double shank,
            double standOut,
            Material material,
            double runout,
            ShopUnit<Length> unit) {
        this.diameter = diameter;
        this.flutes = flutes;
        this.fluteLength = HouseUnits.finite(fluteLength, "flute length", "mm");
        this.shank = shank;
        this.standOut = HouseUnits.finite(standOut, "stand-out", "mm");
        this.material = material;
        this.runout = runout;
        this.unit = unit;
    }

    /**
     * Returns a straight cutter with the usual proportions.
     *
     * @param diameter more than 0
     * @return the cutter
     */
    public static Cutter straight(Quantity<Length> diameter) {
        double d = HouseUnits.mmPositive(diameter, "cutter diameter");
        double fluted = USUAL_FLUTED_DIAMETERS * d;
        ShopUnit<Length> unit = LengthStyle.of(diameter).unit();
        return new Cutter(d, USUAL_FLUTES, fluted, d, fluted + d, Material.STEEL, 0, unit);
    }

    /**
     * Returns this cutter with its flutes. It then stands out by no less than them.
     *
     * @param count 1 or more
     * @param length fluted length, more than 0
     * @return the cutter
     */
    public Cutter flutes(int count, Quantity<Length> length) {
        if (count < 1) {
            throw Refusal.of("flutes", "at-least", "be 1 or more", "were", count);
        }
        double mm = HouseUnits.mmPositive(length, "flute length");
        return new Cutter(diameter, count, mm, shank, Math.max(standOut, mm), material, runout, unit);
    }

    /**
     * Returns this cutter with its shank.
     *
     * @param shankDiameter more than 0
     * @return the cutter
     */
    public Cutter shank(Quantity<Length> shankDiameter) {
        double mm = HouseUnits.mmPositive(shankDiameter, "shank diameter");
        return new Cutter(diameter, flutes, fluteLength, mm, standOut, material, runout, unit);
    }

    /**
     * Returns this cutter standing out of the collet by a length.
     *
     * @param length from the collet to the tip, no less than the flutes
     * @return the cutter
     */
    public Cutter standOut(Quantity<Length> length) {
        double mm = HouseUnits.mmPositive(length, "stand-out");
        if (!(mm >= fluteLength)) {
            throw HouseUnits.refused(
                    "stand-out",
                    "at-least",
                    "the flute length of " + Amount.ofHouse(fluteLength, unit) + " or more",
                    length);
        }
        return new Cutter(diameter, flutes, fluteLength, shank, mm, material, runout, unit);
    }

    /**
     * Returns this cutter of solid carbide.
     *
     * @return the cutter
     */
    public Cutter carbide() {
        return new Cutter(diameter, flutes, fluteLength, shank, standOut, Material.CARBIDE, runout, unit);
    }

    /**
     * Returns this cutter of steel.
     *
     * @return the cutter
     */
    public Cutter steel() {
        return new Cutter(diameter, flutes, fluteLength, shank, standOut, Material.STEEL, runout, unit);
    }

    /**
     * Returns this cutter with its runout.
     *
     * @param totalIndicatorReading what a dial indicator swings through in one turn, 0 or more
     * @return the cutter
     */
    public Cutter runout(Quantity<Length> totalIndicatorReading) {
        double mm = HouseUnits.mmNotNegative(totalIndicatorReading, "runout");
        return new Cutter(diameter, flutes, fluteLength, shank, standOut, material, mm, unit);
    }

    /**
     * Returns the diameter.
     *
     * @return more than 0
     */
    public Amount<Length> diameter() {
        return Amount.ofHouse(diameter, unit);
    }

    /**
     * Returns the diameter in mm.
     *
     * @return more than 0
     */
    public double diameterMm() {
        return diameter;
    }

    /**
     * Returns the number of flutes.
     *
     * @return 1 or more
     */
    public int flutes() {
        return flutes;
    }

    /**
     * Returns the fluted length in mm.
     *
     * @return more than 0
     */
    public double fluteLengthMm() {
        return fluteLength;
    }

    /**
     * Returns the shank's diameter in mm.
     *
     * @return more than 0
     */
    public double shankMm() {
        return shank;
    }

    /**
     * Returns how far the tip stands out of the collet, in mm.
     *
     * @return the fluted length or more
     */
    public double standOutMm() {
        return standOut;
    }

    /**
     * Returns the material.
     *
     * @return the material
     */
    public Material material() {
        return material;
    }

    /**
     * Returns the runout as a total indicator reading in mm.
     *
     * @return 0 or more
     */
    public double runoutMm() {
        return runout;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    @Override
    public Form<Cutter> form() {
        return Sentences.FORM;
    }

    @Override
    public Cutter in(LengthStyle other) {
        return new Cutter(
                diameter,
                flutes,
                fluteLength,
                shank,
                standOut,
                material,
                runout,
                Objects.requireNonNull(other, "style").unit());
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Cutter other
                && Double.compare(diameter, other.diameter) == 0
                && flutes == other.flutes
                && Double.compare(fluteLength, other.fluteLength) == 0
                && Double.compare(shank, other.shank) == 0
                && Double.compare(standOut, other.standOut) == 0
                && material == other.material
                && Double.compare(runout, other.runout) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(diameter, flutes, fluteLength, shank, standOut, material, runout);
    }

    /** Returns such as {@code 6 mm straight cutter, 2 flutes of 22 mm, shank 12.7 mm, stands out 30 mm, carbide}. */
    @Override
    public String toString() {
        return text(style());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<Cutter> FORM = Form.<Cutter>of("cutter")
                .fact("diameter", Kind.MM, "of the straight cutter", Cutter::diameterMm)
                .fact("flutes", Kind.WHOLE, "how many cutting edges", Cutter::flutes)
                .fact("fluteLength", Kind.MM, "fluted length", Cutter::fluteLengthMm)
                .fact("shank", Kind.MM, "diameter of the shank", Cutter::shankMm)
                .fact("stickOut", Kind.MM, "from the collet to the tip", Cutter::standOutMm)
                .fact("material", Kind.code(Material.class), "of the body", Cutter::material)
                .fact("runout", Kind.MM, "total indicator reading, 0 or more", Cutter::runoutMm)
                .phrase("running", cutter -> cutter.runout > 0, ", runout {runout}")
                .finds(
                        "straight",
                        "{diameter} straight cutter, {flutes:of flute/flutes} of {fluteLength}, shank {shank}, "
                                + "stands out {stickOut}, {material}{running}");
    }
}
