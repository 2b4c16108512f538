package org.neckgeom.units;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import org.neckgeom.text.Numbers;

/**
 * Numbers with their unit that read back as the same double in the library unit. Digits are tried from few to many, because
 * {@code Double.toString} has not the fewest on every JDK.
 */
final class Lossless {

    private static final int MOST_DIGITS = 17;
    private static final double PLAIN_FROM = 1e-7;
    private static final double PLAIN_TO = 1e15;

    private Lossless() {}

    static String text(double libraryValue, ShopUnit<?> unit) {
        String own = digits(libraryValue, unit);
        ShopUnit<?> shown = own == null ? unit.libraryValue() : unit;
        // In the library unit seventeen digits are always enough.
        String number = own == null ? String.valueOf(digits(libraryValue, shown)) : own;
        return shown.symbol().isEmpty() ? number : number + " " + shown.symbol();
    }

    /** The fewest digits from twelve on, of the value in a unit or of its neighbours, that give the house value back. */
    private static @Nullable String digits(double libraryValue, ShopUnit<?> unit) {
        double value = unit.fromLibrary(libraryValue);
        if (!Double.isFinite(value)) {
            return null;
        }
        String plain = Numbers.plain(value);
        if (unit.toLibrary(Double.parseDouble(plain)) == libraryValue) {
            return plain;
        }
        for (int count = Numbers.PLAIN_DIGITS + 1; count <= MOST_DIGITS; count++) {
            for (double near : new double[] {value, Math.nextUp(value), Math.nextDown(value)}) {
                if (!Double.isFinite(near)) {
                    continue;
                }
                BigDecimal rounded =
                        new BigDecimal(near).round(new MathContext(count)).stripTrailingZeros();
                if (unit.toLibrary(rounded.doubleValue()) == libraryValue) {
                    return written(rounded);
                }
            }
        }
        return null;
    }

    private static String written(BigDecimal number) {
        double size = Math.abs(number.doubleValue());
        return size < PLAIN_FROM || size >= PLAIN_TO ? number.toString() : number.toPlainString();
    }
}
