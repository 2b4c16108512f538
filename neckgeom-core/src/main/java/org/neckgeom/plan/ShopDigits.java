package org.neckgeom.plan;

import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * Digits that a shop can use, on screen and on paper: lengths of wood to 0.1 mm or 1/64 in, moves and depths to 0.01 mm or a
 * thou. The facts keep all digits.
 */
final class ShopDigits {

    private static final double HAIR = 1e-9;

    private ShopDigits() {}

    /** How a length of wood is printed. */
    static String wood(LengthStyle style) {
        return style == LengthStyle.INCH_FRACTIONS ? "mark" : "..1|3";
    }

    /** How a depth or a move is printed: never in fractions, which no gauge has. */
    static String fine(LengthStyle style) {
        return style == LengthStyle.MILLIMETRES ? "..2" : "table ..3";
    }

    /** A length that is at least there: to the next lower mark that {@link #wood} prints. */
    static double roundedDown(LengthStyle style, double mm) {
        double step = switch (style) {
            case MILLIMETRES -> 0.1;
            case DECIMAL_INCHES -> ShopUnit.INCH.toLibrary(0.001);
            case INCH_FRACTIONS -> ShopUnit.INCH.toLibrary(1.0 / 64);
        };
        return Math.floor(mm / step + HAIR) * step;
    }

    /** A length that must be there: to the next higher mark. */
    static double roundedUp(LengthStyle style, double mm) {
        return -roundedDown(style, -mm);
    }

    /**
     * A sentence with one length.
     *
     * @param words with {@code WOOD} or {@code FINE} in the place of the length
     */
    static Statement words(String code, String words, LengthStyle style, double mm) {
        return Statement.of(
                        code,
                        words.replace("WOOD", "{length:" + wood(style) + "}")
                                .replace("FINE", "{length:" + fine(style) + "}"),
                        style)
                .with("length", Kind.MM, mm);
    }
}
