package org.neckgeom.stock;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * A squared piece of wood a neck is made from, such as {@code blank 640 mm x 61 mm x 20 mm}. Immutable.
 *
 * <p>Its length runs along the neck. Unless told, its edges are parallel and the nut line lies at its head end.
 */
public final class Blank implements Answer, SaysLengths<Blank> {

    private final double length;
    private final double width;
    private final double thickness;
    private final double outOfParallel;
    private final double nutFromHeadEnd;
    private final @Nullable Wood wood;
    private final ShopUnit<Length> unit;

    private Blank(
            double length,
            double width,
            double thickness,
            double outOfParallel,
            double nutFromHeadEnd,
            @Nullable Wood wood,
            ShopUnit<Length> unit) {
        this.length = length;
        this.width = width;
        this.thickness = thickness;
        this.outOfParallel = outOfParallel;
        this.nutFromHeadEnd = nutFromHeadEnd;
        this.wood = wood;
        this.unit = unit;
    }

    /**
     * Returns a blank with parallel edges.
     *
     * @param length along the neck, more than 0; its unit is the one answers are given in
     * @param width across the neck, more than 0
     * @param thickness from the glue face to the back, more than 0
     * @return the blank
     */
    public static Blank of(Quantity<Length> length, Quantity<Length> width, Quantity<Length> thickness) {
        return new Blank(
                HouseUnits.mmPositive(length, "blank length"),
                HouseUnits.mmPositive(width, "blank width"),
                HouseUnits.mmPositive(thickness, "blank thickness"),
                0,
                0,
                null,
                LengthStyle.of(length).unit());
    }

    /**
     * Returns this blank of a wood.
     *
     * @param kind the wood
     * @return the blank
     */
    public Blank wood(Wood kind) {
        Objects.requireNonNull(kind, "wood");
        return new Blank(length, width, thickness, outOfParallel, nutFromHeadEnd, kind, unit);
    }

    /**
     * Returns this blank with its edges out of parallel.
     *
     * @param widerAtHeelEnd width at the heel end less width at the head end, either sign, smaller than the width
     * @return the blank
     */
    public Blank outOfParallel(Quantity<Length> widerAtHeelEnd) {
        double mm = HouseUnits.mm(widerAtHeelEnd, "edges out of parallel");
        if (!(Math.abs(mm) < width)) {
            throw HouseUnits.refused(
                    "edges out of parallel",
                    "less-than",
                    "less than the blank's width of " + width().toString(),
                    widerAtHeelEnd);
        }
        return new Blank(length, width, thickness, mm, nutFromHeadEnd, wood, unit);
    }

    /**
     * Returns this blank with its nut line laid out.
     *
     * @param fromHeadEnd distance from the blank's head end to the nut line, 0 or more, less than the length
     * @return the blank
     */
    public Blank nutAt(Quantity<Length> fromHeadEnd) {
        double mm = HouseUnits.mmNotNegative(fromHeadEnd, "nut line's distance from the head end");
        if (!(mm < length)) {
            throw HouseUnits.refused(
                    "nut line's distance from the head end",
                    "less-than",
                    "less than the blank's length of " + length().toString(),
                    fromHeadEnd);
        }
        return new Blank(length, width, thickness, outOfParallel, mm, wood, unit);
    }

    /**
     * Returns the length.
     *
     * @return more than 0
     */
    public Amount<Length> length() {
        return Amount.ofHouse(length, unit);
    }

    /**
     * Returns the width at the middle of the length.
     *
     * @return more than 0
     */
    public Amount<Length> width() {
        return Amount.ofHouse(width, unit);
    }

    /**
     * Returns the thickness.
     *
     * @return more than 0
     */
    public Amount<Length> thickness() {
        return Amount.ofHouse(thickness, unit);
    }

    /**
     * Returns the length in mm.
     *
     * @return more than 0
     */
    public double lengthMm() {
        return length;
    }

    /**
     * Returns the width at the middle of the length in mm.
     *
     * @return more than 0
     */
    public double widthMm() {
        return width;
    }

    /**
     * Returns the thickness in mm.
     *
     * @return more than 0
     */
    public double thicknessMm() {
        return thickness;
    }

    /**
     * Returns how much wider the blank is at its heel end than at its head end, in mm.
     *
     * @return either sign; 0 for parallel edges
     */
    public double outOfParallelMm() {
        return outOfParallel;
    }

    /**
     * Returns the distance from the blank's head end to the nut line, in mm.
     *
     * @return 0 or more
     */
    public double nutFromHeadEndMm() {
        return nutFromHeadEnd;
    }

    /**
     * Returns the width at a station: {@code W(x) = W + t (s/L - 1/2)}, s the distance from the head end.
     *
     * @param xMm station along the neck in mm, 0 at the nut line, positive toward the body
     * @return the width in mm
     */
    public double widthAtMm(double xMm) {
        return width + outOfParallel * ((HouseUnits.stationMm(xMm) + nutFromHeadEnd) / length - 0.5);
    }

    /**
     * Returns the wood, if it was told.
     *
     * @return the wood, or nothing
     */
    public Optional<Wood> wood() {
        return Optional.ofNullable(wood);
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(unit);
    }

    @Override
    public Form<Blank> form() {
        return Sentences.FORM;
    }

    @Override
    public Blank in(LengthStyle other) {
        return new Blank(
                length,
                width,
                thickness,
                outOfParallel,
                nutFromHeadEnd,
                wood,
                Objects.requireNonNull(other, "style").unit());
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Blank other
                && Double.compare(length, other.length) == 0
                && Double.compare(width, other.width) == 0
                && Double.compare(thickness, other.thickness) == 0
                && Double.compare(outOfParallel, other.outOfParallel) == 0
                && Double.compare(nutFromHeadEnd, other.nutFromHeadEnd) == 0
                && Objects.equals(wood, other.wood);
    }

    @Override
    public int hashCode() {
        return Objects.hash(length, width, thickness, outOfParallel, nutFromHeadEnd, wood);
    }

    /** Returns such as {@code blank 640 mm x 61 mm x 20 mm, black walnut}. */
    @Override
    public String toString() {
        return text(style());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<Blank> FORM = Form.<Blank>of("blank")
                .fact("length", Kind.MM, "along the neck", Blank::lengthMm)
                .fact("width", Kind.MM, "at the middle of the length", Blank::widthMm)
                .fact("thickness", Kind.MM, "from the glue face to the back", Blank::thicknessMm)
                .fact("nutFromHeadEnd", Kind.MM, "from the head end to the nut line", Blank::nutFromHeadEndMm)
                .fact(
                        "outOfParallel",
                        Kind.MM,
                        "wider at the heel end; below 0 at the head end",
                        Blank::outOfParallelMm)
                .factIfAny("wood", Kind.answer(Wood.FORM), "it is of", Blank::wood)
                .phrase("ofWood", ", {wood:finding}")
                .phrase("edges", ", edges out of parallel by {outOfParallel:size}")
                .phrase("taper", blank -> blank.outOfParallel > 0, "{edges}, wider at the heel end")
                .phrase("taper", blank -> blank.outOfParallel < 0, "{edges}, wider at the head end")
                .finds("blank", "blank {length} x {width} x {thickness}{ofWood}{taper}");
    }
}
