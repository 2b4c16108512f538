package org.neckgeom.units;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.text.Numbers;

/**
 * How lengths are printed for people: in millimetres, in decimal inches with thou for small ones, or in fractions of an
 * inch to the nearest 1/64 with the remainder stated.
 *
 * <p>An answer keeps the style of the first length it was asked with; nothing is set globally.
 */
public enum LengthStyle {

    /** {@code 0.710 mm}. */
    MILLIMETRES(ShopUnit.MILLIMETRE, 3),

    /** {@code 1.2030 in}, and {@code 0.8 thou} for what is under a tenth of an inch. */
    DECIMAL_INCHES(ShopUnit.INCH, 4),

    /** {@code 1 3/4 in + 2.0 thou}. */
    INCH_FRACTIONS(ShopUnit.INCH, 4);

    private static final int FINEST = 64;
    private static final double MM_PER_INCH = 25.4;
    private static final double SMALL_INCHES = 0.1;

    private final ShopUnit<Length> unit;
    private final int decimals;

    LengthStyle(ShopUnit<Length> unit, int decimals) {
        this.unit = unit;
        this.decimals = decimals;
    }

    /**
     * Returns the style a length was given in: decimal inches for inch, thou and foot, otherwise millimetres.
     *
     * @param length of any provider
     * @return its style
     */
    public static LengthStyle of(Quantity<Length> length) {
        return ofUnit(Amount.from(length, "length").unit());
    }

    /**
     * Returns the style of a unit: decimal inches for inch, thou and foot, otherwise millimetres.
     *
     * @param unit of length
     * @return its style
     */
    public static LengthStyle ofUnit(ShopUnit<Length> unit) {
        boolean inches = unit == ShopUnit.INCH || unit == ShopUnit.THOU || unit == ShopUnit.FOOT;
        return inches ? DECIMAL_INCHES : MILLIMETRES;
    }

    /**
     * Returns the unit in which this style hands out lengths.
     *
     * @return mm or in
     */
    public ShopUnit<Length> unit() {
        return unit;
    }

    /**
     * Returns a length in this style's unit.
     *
     * @param mm in mm, finite
     * @return the amount
     */
    public Amount<Length> amount(double mm) {
        return Amount.ofHouse(mm, unit);
    }

    /**
     * Returns a round length near a millimetre, to quote rates by: 1 mm, 0.04 in, or 1/32 in.
     *
     * @return the amount
     */
    public Amount<Length> nearMillimetre() {
        return Amount.of(
                switch (this) {
                    case MILLIMETRES -> 1;
                    case DECIMAL_INCHES -> 0.04;
                    case INCH_FRACTIONS -> 1.0 / 32;
                },
                unit);
    }

    /**
     * Returns a length to the usual three decimals of a millimetre or four of an inch, zeros kept: {@code 0.710 mm}.
     *
     * @param mm in mm
     * @return the text with its unit
     */
    public String text(double mm) {
        if (this == INCH_FRACTIONS) {
            return fraction(mm);
        }
        if (isSmall(mm)) {
            return thou(mm, 1);
        }
        return Numbers.fixed(unit.fromHouse(mm), decimals) + " " + unit.symbol();
    }

    /**
     * Returns a length as short as it can be said to the same place: {@code 8.5 mm}.
     *
     * @param mm in mm
     * @return the text with its unit
     */
    public String brief(double mm) {
        if (this == INCH_FRACTIONS) {
            return fraction(mm);
        }
        return Numbers.trimmed(unit.fromHouse(mm), decimals) + " " + unit.symbol();
    }

    /**
     * Returns a length rounded by its standard uncertainty: {@code 0.710 mm} beside 0.014 mm.
     *
     * @param mm in mm
     * @param standardUncertaintyMm in mm; where it is 0 the length prints as {@link #text}
     * @return the text with its unit
     */
    public String text(double mm, double standardUncertaintyMm) {
        if (!(standardUncertaintyMm > 0) || this == INCH_FRACTIONS) {
            return text(mm);
        }
        ShopUnit<Length> shown = isSmall(mm) ? ShopUnit.THOU : unit;
        int places = Numbers.decimalsFor(shown.fromHouse(standardUncertaintyMm), decimals);
        return Numbers.fixed(shown.fromHouse(mm), places) + " " + shown.symbol();
    }

    /**
     * Returns a standard uncertainty or another small length to two significant digits: {@code 0.014 mm}.
     *
     * @param mm in mm, 0 or more
     * @return the text with its unit
     */
    public String small(double mm) {
        ShopUnit<Length> shown =
                unit == ShopUnit.INCH && Math.abs(mm) < SMALL_INCHES * MM_PER_INCH ? ShopUnit.THOU : unit;
        double value = shown.fromHouse(mm);
        return Numbers.fixed(value, Numbers.decimalsFor(Math.abs(value), 0)) + " " + shown.symbol();
    }

    private boolean isSmall(double mm) {
        return unit == ShopUnit.INCH && mm != 0 && Math.abs(mm) < SMALL_INCHES * MM_PER_INCH;
    }

    private static String thou(double mm, int decimals) {
        return Numbers.fixed(ShopUnit.THOU.fromHouse(mm), decimals) + " thou";
    }

    private static String fraction(double mm) {
        double inches = ShopUnit.INCH.fromHouse(Math.abs(mm));
        if (!(inches < 1e9)) {
            return Numbers.plain(ShopUnit.INCH.fromHouse(mm)) + " in";
        }
        long parts = Math.round(inches * FINEST);
        String remainder = remainder((inches - (double) parts / FINEST) * MM_PER_INCH);
        long whole = parts / FINEST;
        long over = parts % FINEST;
        long under = FINEST;
        while (over != 0 && over % 2 == 0) {
            over /= 2;
            under /= 2;
        }
        String text = over == 0 ? Long.toString(whole) : (whole == 0 ? "" : whole + " ") + over + "/" + under;
        String inWords = text + " in" + remainder;
        if (mm >= 0 || parts == 0 && remainder.isEmpty()) {
            return inWords;
        }
        return remainder.isEmpty() ? "-" + inWords : "-(" + inWords + ")";
    }

    private static String remainder(double mm) {
        String size = thou(Math.abs(mm), 1);
        if (size.equals("0.0 thou")) {
            return "";
        }
        return (mm < 0 ? " - " : " + ") + size;
    }
}
