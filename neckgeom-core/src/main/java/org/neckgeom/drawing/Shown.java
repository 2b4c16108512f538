package org.neckgeom.drawing;

import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** Lengths and angles as drawings and tables show them: to what can be marked out, a hundredth of a mm or a thou. */
public record Shown(LengthStyle style) {

    private static final int MM_DECIMALS = 2;
    private static final int INCH_DECIMALS = 3;

    /** A length without useless zeros: {@code 46.5 mm}. */
    public String length(double mm) {
        return style == LengthStyle.INCH_FRACTIONS ? style.brief(mm) : label(mm);
    }

    /** The same beside a drawing, where a fraction with its thou has no room: decimals of the unit. */
    public String label(double mm) {
        return Numbers.trimmed(style.unit().fromLibrary(mm), decimals()) + " "
                + style.unit().symbol();
    }

    /** The number alone, zeros kept, for a column whose head names the unit. */
    public String column(double mm) {
        return Numbers.fixed(style.unit().fromLibrary(mm), decimals());
    }

    /** Two or more lengths with the unit once: {@code 6.2 x 9.2 mm}. */
    public String by(double firstMm, double secondMm) {
        if (style == LengthStyle.INCH_FRACTIONS) {
            return style.brief(firstMm) + " x " + style.brief(secondMm);
        }
        return Numbers.trimmed(style.unit().fromLibrary(firstMm), decimals()) + " x " + length(secondMm);
    }

    public String unit() {
        return style.unit().symbol();
    }

    /** The unit as in a heading: {@code inches}. */
    public String unitInWords() {
        return style == LengthStyle.MILLIMETRES ? unit() : "inches";
    }

    public static String degrees(double rad) {
        return Numbers.trimmed(ShopUnit.DEGREE.fromLibrary(rad), 2) + " deg";
    }

    private int decimals() {
        return style == LengthStyle.MILLIMETRES ? MM_DECIMALS : INCH_DECIMALS;
    }
}
