package org.neckgeom.design;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * The heel and its mating face, such as {@code heel 78 mm high, 54 mm wide at the top}. Immutable.
 *
 * <p>Height runs down the mating face from the glue face to the cap; width is that of the face at its top. Unless told,
 * blocks are as thick as the shaft.
 */
public final class Heel implements Answer, SaysLengths<Heel> {

    private final double height;
    private final double width;
    private final double blockThickness;
    private final ShopUnit<Length> unit;

    private Heel(double height, double width, double blockThickness, ShopUnit<Length> unit) {
        this.height = height;
        this.width = width;
        this.blockThickness = blockThickness;
        this.unit = unit;
    }

    /**
     * Returns a heel.
     *
     * @param height from the glue face to the cap, more than 0; its unit is the one answers are given in
     * @param width of the mating face at its top, more than 0
     * @return the heel
     */
    public static Heel of(Quantity<Length> height, Quantity<Length> width) {
        return new Heel(
                HouseUnits.mmPositive(height, "heel height"),
                HouseUnits.mmPositive(width, "heel width"),
                Double.NaN,
                LengthStyle.of(height).unit());
    }

    /**
     * Returns this heel stacked from blocks of a thickness.
     *
     * @param thickness of each block, more than 0
     * @return the heel
     */
    public Heel blocks(Quantity<Length> thickness) {
        return new Heel(height, width, HouseUnits.mmPositive(thickness, "heel block thickness"), unit);
    }

    /**
     * Returns the height in mm.
     *
     * @return more than 0
     */
    public double heightMm() {
        return height;
    }

    /**
     * Returns the width in mm.
     *
     * @return more than 0
     */
    public double widthMm() {
        return width;
    }

    /**
     * Says whether the thickness of the blocks was told.
     *
     * @return false where it is the shaft's
     */
    public boolean hasBlockThickness() {
        return !Double.isNaN(blockThickness);
    }

    /**
     * Returns the thickness of each block in mm.
     *
     * @param shaftThicknessMm what it is unless told
     * @return more than 0
     */
    public double blockThicknessMm(double shaftThicknessMm) {
        if (!(shaftThicknessMm > 0 && shaftThicknessMm <= HouseUnits.MOST)) {
            throw Refusal.of(
                    "shaft's thickness",
                    "range",
                    "be more than 0 and no more than " + Numbers.plain(HouseUnits.MOST) + " mm",
                    Numbers.plain(shaftThicknessMm) + " mm");
        }
        return Double.isNaN(blockThickness) ? shaftThicknessMm : blockThickness;
    }

    /**
     * Returns the style answers about this heel are printed in.
     *
     * @return the style
     */
    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    @Override
    public Heel in(LengthStyle other) {
        return new Heel(
                height,
                width,
                blockThickness,
                Objects.requireNonNull(other, "style").unit());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        private static final Form<Heel> FORM = form("heel ");

        /** The same without its title, for the row of a neck. */
        static final Form<Heel> UNTITLED = form("");

        private static Form<Heel> form(String title) {
            return Form.<Heel>of("heel")
                    .fact("height", Kind.MM, "from the glue face to the cap", Heel::heightMm)
                    .fact("width", Kind.MM, "of the mating face at its top", Heel::widthMm)
                    .fact(
                            "blockThickness",
                            Kind.MM,
                            "of each block, where not the shaft's",
                            heel -> heel.blockThickness)
                    .phrase("stacked", ", blocks of {blockThickness}")
                    .finds("heel", title + "{height} high, {width} wide at the top{stacked}");
        }
    }

    @Override
    public Form<Heel> form() {
        return Sentences.FORM;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Heel other
                && Double.compare(height, other.height) == 0
                && Double.compare(width, other.width) == 0
                && Double.compare(blockThickness, other.blockThickness) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(height, width, blockThickness);
    }

    /** Returns such as {@code heel 78 mm high, 54 mm wide at the top}. */
    @Override
    public String toString() {
        return text(style());
    }
}
