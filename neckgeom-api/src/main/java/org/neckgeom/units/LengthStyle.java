package org.neckgeom.units;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import org.neckgeom.text.Numbers;

/**
 * How lengths are printed for people: in millimetres, in decimal inches with thou for small ones, or in fractions of an
 * inch to the nearest 1/64 with the remainder stated.
 *
 * <p>An answer keeps the style of the first length it was asked with, or prints in another by {@code text(style)}; an
 * amount, an estimate, limits, a spread, a verdict has {@code in(style)}. Nothing is set globally.
 */
public enum LengthStyle {

    /** {@code 0.710 mm}. */
    MILLIMETRES(ShopUnit.MILLIMETRE, 3, "mm"),

    /** {@code 1.2030 in}, and {@code 0.8 thou} for what is under a tenth of an inch. */
    DECIMAL_INCHES(ShopUnit.INCH, 4, "inch"),

    /**
     * {@code 1 3/4 in + 2.0 thou}, and {@code 2.0 thou} for what is nearer to 1/64 in or nothing than to 1/32 in. Numbers to be compared with others
     * stay decimal: uncertainties, lengths under a tenth of an inch beside their uncertainty, spreads and budgets are in
     * thou; intervals, limits, gauges and tables in thou or decimal inches.
     */
    INCH_FRACTIONS(ShopUnit.INCH_FRACTION, 4, "fractions");

    /** A tenth of an inch: what is shorter is said in thou beside its uncertainty. */
    static final double SMALL_MM = 2.54;

    private static final int FINEST = 64;

    /** Past this nothing is set by a rule, and sixty-fourths are lost in a double's last digits. */
    private static final double MOST_MARKED_IN = 1e9;

    private static final double MM_PER_INCH = 25.4;

    private final ShopUnit<Length> unit;
    private final int decimals;
    private final String word;

    LengthStyle(ShopUnit<Length> unit, int decimals, String word) {
        this.unit = unit;
        this.decimals = decimals;
        this.word = word;
    }

    /**
     * {@return what makers call it, in a neck file and on a command line; mm, inch (decimals and thou) or fractions (to
     * 1/64 in)}
     */
    public String word() {
        return word;
    }

    /**
     * {@return the style a length was given in: decimal inches for inch, thou and foot, otherwise millimetres}
     *
     * @param length of any provider
     */
    public static LengthStyle of(Quantity<Length> length) {
        return ofUnit(Amount.from(length, "length").unit());
    }

    /**
     * {@return the style of a unit: that of {@link ShopUnit#INCH_FRACTION} its own, decimal inches for inch, thou and
     * foot, otherwise millimetres}
     *
     * @param unit of length; one of another kind has the style of millimetres
     */
    public static LengthStyle ofUnit(ShopUnit<?> unit) {
        if (unit == ShopUnit.MILLIMETRE) {
            return MILLIMETRES; // asked first, as the border has just asked the same of most lengths
        }
        if (unit == ShopUnit.INCH_FRACTION) {
            return INCH_FRACTIONS;
        }
        boolean inches = unit == ShopUnit.INCH || unit == ShopUnit.THOU || unit == ShopUnit.FOOT;
        return inches ? DECIMAL_INCHES : MILLIMETRES;
    }

    /** {@return the unit in which this style hands out lengths; mm or in} */
    public ShopUnit<Length> unit() {
        return unit;
    }

    /**
     * {@return the style for tables of many lengths, where decimals are easier to compare: this, or decimal inches for
     * fractions; millimetres or decimal inches}
     */
    public LengthStyle inTables() {
        return this == INCH_FRACTIONS ? DECIMAL_INCHES : this;
    }

    /** {@return the unit in which this style hands out small differences, such as spreads and budgets; mm or thou} */
    public ShopUnit<Length> fineUnit() {
        return this == MILLIMETRES ? ShopUnit.MILLIMETRE : ShopUnit.THOU;
    }

    /**
     * {@return the unit in which this style hands out amounts of any kind: its own for a length, mm or in a minute for
     * a speed in one of them, and for anything else the unit given; the unit to read it in}
     *
     * @param <Q> the kind of quantity
     * @param given the unit it is in
     */
    public <Q extends Quantity<Q>> ShopUnit<Q> unitFor(ShopUnit<Q> given) {
        if (Objects.requireNonNull(given, "unit").kind() == (Class<?>) Length.class) {
            return ShopUnit.sameKind(unit, given.kind());
        }
        boolean feed = (ShopUnit<?>) given == ShopUnit.MM_PER_MINUTE || (ShopUnit<?>) given == ShopUnit.INCH_PER_MINUTE;
        return feed ? ShopUnit.sameKind(feedUnit(), given.kind()) : given;
    }

    /**
     * {@return the unit in which this style hands out small differences of any kind: {@link #fineUnit} for a length,
     * and for anything else the unit given; the unit to read it in}
     *
     * @param <Q> the kind of quantity
     * @param given the unit it is in
     */
    public <Q extends Quantity<Q>> ShopUnit<Q> fineUnitFor(ShopUnit<Q> given) {
        boolean length = Objects.requireNonNull(given, "unit").kind() == (Class<?>) Length.class;
        return length ? ShopUnit.sameKind(fineUnit(), given.kind()) : given;
    }

    private ShopUnit<Speed> feedUnit() {
        return this == MILLIMETRES ? ShopUnit.MM_PER_MINUTE : ShopUnit.INCH_PER_MINUTE;
    }

    /**
     * {@return a length in this style's unit}
     *
     * @param mm in mm, finite
     */
    public Amount<Length> amount(double mm) {
        return Amount.ofLibrary(mm, unit);
    }

    /** {@return a round length near a millimetre, to quote rates by: 1 mm, 0.04 in, or 1/32 in} */
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
     * {@return a length to the usual three decimals of a millimetre or four of an inch, zeros kept: {@code 0.710 mm};
     * the text with its unit}
     *
     * @param mm in mm
     */
    public String text(double mm) {
        if (this == INCH_FRACTIONS) {
            return fraction(mm);
        }
        if (isSmall(mm)) {
            return thou(mm, 1);
        }
        return Numbers.fixed(unit.fromLibrary(mm), decimals) + " " + unit.symbol();
    }

    /**
     * {@return a length as short as it can be said to the same place: {@code 8.5 mm}; the text with its unit}
     *
     * @param mm in mm
     */
    public String brief(double mm) {
        if (this == INCH_FRACTIONS) {
            return fraction(mm);
        }
        return Numbers.trimmed(unit.fromLibrary(mm), decimals) + " " + unit.symbol();
    }

    /**
     * {@return a length as it is set by a rule: in fractions to the nearest mark, a sixty-fourth of an inch, without
     * what is over, and else as {@link #brief}; the text with its unit; as {@link #brief} where the nearest mark is 0}
     * What is left out is under 8 thou, and {@link #offMarkMm} says how much it is.
     *
     * @param mm in mm
     */
    public String mark(double mm) {
        double nearest = mm - offMarkMm(mm);
        return brief(nearest);
    }

    /**
     * {@return how much more a length is than its {@link #mark}, in mm, within half of a sixty-fourth of an inch in
     * fractions; 0 in other styles}
     *
     * @param mm in mm
     */
    public double offMarkMm(double mm) {
        if (this != INCH_FRACTIONS || !(Math.abs(mm) < ShopUnit.INCH.toLibrary(MOST_MARKED_IN))) {
            return 0;
        }
        double marks = Math.rint(ShopUnit.INCH.fromLibrary(mm) * FINEST);
        return marks == 0 ? 0 : mm - ShopUnit.INCH.toLibrary(marks / FINEST);
    }

    /**
     * {@return a length rounded by its standard uncertainty: {@code 0.710 mm} beside 0.014 mm; the text with its unit}
     *
     * @param mm in mm
     * @param standardUncertaintyMm in mm; where it is 0 the length prints as {@link #text}
     */
    public String text(double mm, double standardUncertaintyMm) {
        if (!(standardUncertaintyMm > 0) || this == INCH_FRACTIONS && !isSmall(mm)) {
            return text(mm);
        }
        ShopUnit<Length> shown = isSmall(mm) ? ShopUnit.THOU : unit;
        int places = Numbers.decimalsFor(shown.fromLibrary(standardUncertaintyMm), decimals);
        return Numbers.fixed(shown.fromLibrary(mm), places) + " " + shown.symbol();
    }

    /**
     * {@return whether {@link #text(double, double)} prints a length as 0; true for a length that is lost beside its
     * uncertainty, or under the usual decimals}
     *
     * @param mm in mm
     * @param standardUncertaintyMm in mm
     */
    public boolean isNothing(double mm, double standardUncertaintyMm) {
        ShopUnit<Length> shown = isSmall(mm) ? ShopUnit.THOU : unit;
        int usual = isSmall(mm) ? 1 : decimals;
        boolean plain = !(standardUncertaintyMm > 0) || this == INCH_FRACTIONS && !isSmall(mm);
        int places = plain ? usual : Numbers.decimalsFor(shown.fromLibrary(standardUncertaintyMm), decimals);
        return Numbers.isNothing(shown.fromLibrary(mm), places);
    }

    /**
     * {@return a standard uncertainty or another small length to two significant digits: {@code 0.014 mm}; the text
     * with its unit}
     *
     * @param mm in mm, 0 or more
     */
    public String small(double mm) {
        ShopUnit<Length> shown = Math.abs(mm) < SMALL_MM ? fineUnit() : unit;
        double value = shown.fromLibrary(mm);
        return Numbers.fixed(value, Numbers.decimalsFor(Math.abs(value), 0)) + " " + shown.symbol();
    }

    private boolean isSmall(double mm) {
        return this != MILLIMETRES && mm != 0 && Math.abs(mm) < SMALL_MM;
    }

    private static String thou(double mm, int decimals) {
        return Numbers.fixed(ShopUnit.THOU.fromLibrary(mm), decimals) + " thou";
    }

    private static String fraction(double mm) {
        double inches = ShopUnit.INCH.fromLibrary(Math.abs(mm));
        if (!(inches < 1e9)) {
            return Numbers.plain(ShopUnit.INCH.fromLibrary(mm)) + " in";
        }
        long parts = Math.round(inches * FINEST);
        String remainder = remainder((inches - (double) parts / FINEST) * MM_PER_INCH);
        if (parts <= 1 && !remainder.isEmpty()) {
            return thou(mm, 1);
        }
        long whole = parts / FINEST;
        long over = parts % FINEST;
        long under = FINEST;
        while (over != 0 && over % 2 == 0) {
            over /= 2;
            under /= 2;
        }
        String text = over == 0 ? Long.toString(whole) : (whole == 0 ? "" : whole + " ") + over + "/" + under;
        String inWords = text + " in" + remainder;
        if (mm >= 0 || parts == 0) {
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
