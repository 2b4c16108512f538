package org.neckgeom.units;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.neckgeom.text.Numbers;

/**
 * Amounts as a person reads them: what may have been typed whole, what was computed to the digits a shop can use.
 *
 * <p>Lengths keep 3 decimals of a millimetre or 4 of an inch, angles 2 of a degree, never fewer than two digits;
 * everything else keeps four digits, and all that stand before its point.
 */
final class AmountText {

    private static final double FINEST_MM = 0.001;
    private static final double FINEST_MM_IN_INCHES = 0.00254;
    private static final double FINEST_RAD = Math.toRadians(0.01);
    private static final int DIGITS = 4;
    private static final int TYPED_DIGITS = 6;

    private AmountText() {}

    static String of(double value, double libraryValue, ShopUnit<?> unit) {
        if ((ShopUnit<?>) unit == ShopUnit.INCH_FRACTION) {
            return LengthStyle.INCH_FRACTIONS.brief(libraryValue);
        }
        String number = number(value, unit);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    private static String number(double value, ShopUnit<?> unit) {
        String exact = Numbers.plain(value);
        double finest = finest(unit);
        int digitsBeforePoint = value == 0 ? 1 : 1 + (int) Math.floor(StrictMath.log10(Math.abs(value)));
        if (Double.isNaN(finest)) {
            if (digits(exact) <= TYPED_DIGITS) {
                return exact;
            }
            String rounded = rounded(value, DIGITS - digitsBeforePoint, exact);
            // What is nearly certain must not read as certain.
            boolean certain = unit.kind() == (Class<?>) Dimensionless.class && rounded.matches("0|100");
            return certain ? exact : rounded;
        }
        int places = Math.max(0, (int) Math.round(StrictMath.log10(unit.toLibrary(1) / finest)));
        // A binary part of an inch such as 1/128 takes 7 decimals; of a millimetre, only a small one is typed with 4.
        int typed = (ShopUnit<?>) unit == ShopUnit.INCH ? places + 3 : Math.abs(value) < 1 ? places + 1 : places;
        boolean whole = exact.contains("E") ? digits(exact) <= TYPED_DIGITS : decimals(exact) <= typed;
        return whole ? exact : rounded(value, Math.max(places, 2 - digitsBeforePoint), exact);
    }

    /** The least that is read of a kind, in its library unit; NaN where digits count instead. */
    private static double finest(ShopUnit<?> unit) {
        if (unit.kind() == (Class<?>) Length.class) {
            boolean inches = LengthStyle.ofUnit(ShopUnit.sameKind(unit, Length.class)) != LengthStyle.MILLIMETRES;
            return inches ? FINEST_MM_IN_INCHES : FINEST_MM;
        }
        return unit.kind() == (Class<?>) Angle.class ? FINEST_RAD : Double.NaN;
    }

    private static String rounded(double value, int places, String exact) {
        return exact.contains("E") ? Numbers.significant(value, DIGITS) : Numbers.trimmed(value, Math.max(0, places));
    }

    private static int decimals(String number) {
        int point = number.indexOf('.');
        return point < 0 ? 0 : number.length() - point - 1;
    }

    private static long digits(String number) {
        int end = number.indexOf('E') < 0 ? number.length() : number.indexOf('E');
        return number.substring(0, end)
                .replaceFirst("^-?0*\\.?0*", "")
                .chars()
                .filter(Character::isDigit)
                .count();
    }
}
