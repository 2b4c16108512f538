package org.neckgeom.heel;

import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * A dovetail whose two sides come together by a taper, such as 3 deg a side: 0.1 mm of shim lifts it 1.9 mm. Immutable.
 *
 * <p>Shims are measured square to the dovetail's sides, alike on both; the taper is each side's angle from the
 * direction in which the neck goes home. {@code rise = shim / sin(taper)}. Exact. Wood planed off a side lowers the
 * seat by as much.
 *
 * <p>Its size may be told: how far it reaches past the shoulder, its widths at the glue face, where it is wider at its end
 * than at the shoulder by the flare that holds it in, and its height. With the flare f on each side, {@code
 * tan f = (end - shoulder) / 2 / length}, the sides close in on its end face by {@code tan(taper) / cos f} of the height.
 */
public final class DovetailSeat implements Answer {

    private static final Form<DovetailSeat> FORM = Form.<DovetailSeat>of("dovetail-seat")
            .fact("taper", Kind.RAD, "of each side, from the way in which the neck goes home", s -> s.taper)
            .fact("length", Kind.MM, "past the shoulder", s -> s.length)
            .fact("endWidth", Kind.MM, "at the glue face", s -> s.atEnd)
            .fact("shoulderWidth", Kind.MM, "at the glue face", s -> s.atShoulder)
            .fact("height", Kind.MM, "from the glue face down", s -> s.height)
            .fact("lowerEndWidth", Kind.MM, "at its lower end", s -> s.atEnd - 2 * s.closesInMm())
            .fact("lowerShoulderWidth", Kind.MM, "at its lower end", s -> s.atShoulder - 2 * s.closesInMm())
            .fact("shim", Kind.AMOUNT, "on each side, as an example", (s, style) -> shim(style))
            .fact(
                    "rise",
                    Kind.MM,
                    "of the neck by that shim",
                    (s, style) -> shim(style).house() / StrictMath.sin(s.taper))
            .phrase("long", ", {length:brief} long")
            .finds("dovetail", "Dovetail, {taper:2} a side{long}")
            .line(
                    "atGlueFace",
                    "at the glue face",
                    "{endWidth:brief} wide at its end, {shoulderWidth:brief} at the shoulder")
            .line(
                    "atLowerEnd",
                    "{height:brief} below it",
                    "{lowerEndWidth:brief} wide at its end, {lowerShoulderWidth:brief} at the shoulder")
            .line("rise", "{shim:fine} each side", "lifts the neck {rise:text}");

    private static final Amount<Length> METRIC_SHIM = Amount.of(0.1, ShopUnit.MILLIMETRE);
    private static final Amount<Length> INCH_SHIM = Amount.of(4, ShopUnit.THOU);

    private final double taper;
    private final double length;
    private final double atEnd;
    private final double atShoulder;
    private final double height;
    private final LengthStyle style;

    private DovetailSeat(
            double taper, double length, double atEnd, double atShoulder, double height, LengthStyle style) {
        this.taper = taper;
        this.length = length;
        this.atEnd = atEnd;
        this.atShoulder = atShoulder;
        this.height = height;
        this.style = style;
    }

    /**
     * Returns a dovetail of which only the taper is told.
     *
     * @param perSide taper of each side, more than 0 and less than 45 deg
     * @return the dovetail
     */
    public static DovetailSeat tapered(Quantity<Angle> perSide) {
        double rad = HouseUnits.radBetween(perSide, 0, 45, "dovetail taper");
        return new DovetailSeat(rad, Double.NaN, Double.NaN, Double.NaN, Double.NaN, LengthStyle.MILLIMETRES);
    }

    /**
     * Returns this dovetail with its length.
     *
     * @param pastTheShoulder how far it reaches into the body, more than 0
     * @return the dovetail, without widths and height
     */
    public DovetailSeat length(Quantity<Length> pastTheShoulder) {
        double mm = HouseUnits.mmPositive(pastTheShoulder, "dovetail length");
        return new DovetailSeat(taper, mm, Double.NaN, Double.NaN, Double.NaN, LengthStyle.of(pastTheShoulder));
    }

    /**
     * Returns this dovetail with its widths at the glue face and its height, its length told before.
     *
     * @param end width of its far end
     * @param shoulder width at the shoulder, more than 0 and less than the end's: it could be drawn out else
     * @param high from the glue face down, so that the end face has some width left at the bottom
     * @return the dovetail
     * @throws IllegalArgumentException if the length has not been told, or the sides would meet
     */
    public DovetailSeat sized(Quantity<Length> end, Quantity<Length> shoulder, Quantity<Length> high) {
        double narrow = HouseUnits.mmPositive(shoulder, "dovetail width at the shoulder");
        double wide = HouseUnits.mmPositive(end, "dovetail width at its end");
        if (!hasLength()) {
            throw Refusal.because(
                    "length", "missing", "a dovetail needs its length for its widths, but has none: add .length(...)");
        }
        if (!(wide > narrow)) {
            throw HouseUnits.refused(
                    "dovetail width at its end",
                    "more-than",
                    "more than the " + style.brief(narrow) + " at the shoulder",
                    end);
        }
        double mm = HouseUnits.mmPositive(high, "dovetail height");
        DovetailSeat told = new DovetailSeat(taper, length, wide, narrow, mm, style);
        if (!(told.closesInMm() * 2 < narrow)) {
            throw HouseUnits.refused(
                    "dovetail height",
                    "less-than",
                    "less than " + style.brief(mm * narrow / (2 * told.closesInMm()))
                            + ", where its sides meet at the shoulder",
                    high);
        }
        return told;
    }

    @Override
    public Form<DovetailSeat> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return style;
    }

    /**
     * Returns how much higher the neck seats with a shim on each side.
     *
     * @param perSide thickness of each shim; negative for wood taken off
     * @return the rise, with the shim's sign
     */
    public Amount<Length> riseFrom(Quantity<Length> perSide) {
        return LengthStyle.of(perSide).amount(HouseUnits.mm(perSide, "shim") / StrictMath.sin(taper));
    }

    /**
     * Returns the shim on each side that lifts the seat by a height.
     *
     * @param rise wanted; negative to let the neck down
     * @return the shim, negative for wood to take off
     */
    public Amount<Length> shimFor(Quantity<Length> rise) {
        return LengthStyle.of(rise).amount(HouseUnits.mm(rise, "rise") * StrictMath.sin(taper));
    }

    /**
     * Returns the taper of each side.
     *
     * @return the angle
     */
    public Amount<Angle> taper() {
        return Amount.ofHouse(taper, ShopUnit.DEGREE);
    }

    /**
     * Says whether its length was told.
     *
     * @return true when {@link #lengthMm} is not 0
     */
    public boolean hasLength() {
        return !Double.isNaN(length);
    }

    /**
     * Says whether its widths and height were told.
     *
     * @return true when it can be drawn
     */
    public boolean hasSize() {
        return !Double.isNaN(height);
    }

    /**
     * Returns how far it reaches past the shoulder, in mm.
     *
     * @return 0 unless told
     */
    public double lengthMm() {
        return hasLength() ? length : 0;
    }

    /**
     * Returns its width at its end, at the glue face, in mm.
     *
     * @return 0 unless told
     */
    public double endMm() {
        return hasSize() ? atEnd : 0;
    }

    /**
     * Returns its width at the shoulder, at the glue face, in mm.
     *
     * @return 0 unless told
     */
    public double shoulderMm() {
        return hasSize() ? atShoulder : 0;
    }

    /**
     * Returns its height in mm.
     *
     * @return from the glue face down; 0 unless told
     */
    public double heightMm() {
        return hasSize() ? height : 0;
    }

    /**
     * Returns how much each side comes in from the glue face to the lower end, across the neck, in mm:
     * {@code height tan(taper) / cos f}, f the flare.
     *
     * @return 0 unless the size was told
     */
    public double closesInMm() {
        if (!hasSize()) {
            return 0;
        }
        double flare = (atEnd - atShoulder) / 2 / length;
        // The taper is the angle between side and way home; the end face cuts the side aslant of that by the flare.
        return height * StrictMath.tan(taper) * StrictMath.sqrt(1 + flare * flare);
    }

    private double[] parts() {
        return new double[] {taper, length, atEnd, atShoulder, height};
    }

    /** True for the same taper and size. */
    @Override
    public boolean equals(Object other) {
        return other instanceof DovetailSeat that && Arrays.equals(parts(), that.parts());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(parts());
    }

    /** Returns the taper, the size as far as told, and what a thin shim does: 0.1 mm, or 4 thou. */
    @Override
    public String toString() {
        return text(style);
    }

    private static Amount<Length> shim(LengthStyle style) {
        return style == LengthStyle.MILLIMETRES ? METRIC_SHIM : INCH_SHIM;
    }
}
