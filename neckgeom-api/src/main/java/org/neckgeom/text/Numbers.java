package org.neckgeom.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.neckgeom.fault.Refusal;

/** Numbers as text: at most twelve significant digits, rounded by their uncertainty, never {@code -0}. */
public final class Numbers {

    /** Significant digits that a plain text carries at most: enough for any shop value, too few for rounding noise. */
    public static final int PLAIN_DIGITS = 12;

    private static final MathContext PLAIN = new MathContext(PLAIN_DIGITS, RoundingMode.HALF_EVEN);
    private static final int HUGE_DIGITS = 6;
    private static final int MOST_DECIMALS = 9;
    private static final double EXPONENT_FROM = 1e15;

    /** Of a hundred percent: what one decimal shows at least. */
    private static final double LEAST_SHARE = 1e-3;

    private static final int MOST_PLACES = 100;
    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

    private Numbers() {}

    /**
     * {@return the number without rounding noise, trailing zeros or grouping: {@code 647.7} for 647.6999999999999; at
     * most twelve significant digits} Numbers of 1e15 and more, or under 1e-7, get an exponent.
     *
     * @param value any double; NaN and the infinities are named
     */
    public static String plain(double value) {
        if (!Double.isFinite(value)) {
            return special(value);
        }
        if (value == 0) {
            return "0";
        }
        if (value == Math.rint(value) && Math.abs(value) < 1e9) {
            return Long.toString((long) value);
        }
        double size = Math.abs(value);
        String shortest = Double.toString(value);
        if (size >= 1e-3 && size < 1e7 && shortest.length() <= PLAIN_DIGITS + 1) {
            return shortest; // with its point, so of no more digits than asked for
        }
        BigDecimal rounded = denoised(value).stripTrailingZeros();
        return size < 1e-7 || size >= EXPONENT_FROM ? rounded.toString() : rounded.toPlainString();
    }

    /**
     * {@return the number with a fixed count of decimals, halves away from zero as on a calliper card: {@code 0.710}}
     * Numbers of 1e15 and more keep {@value #HUGE_DIGITS} digits and an exponent.
     *
     * @param value any double; NaN and the infinities are named
     * @param decimals 0 to 100
     * @throws IllegalArgumentException if there are fewer or more decimals
     */
    public static String fixed(double value, int decimals) {
        checkPlaces(decimals);
        if (!(Math.abs(value) < EXPONENT_FROM)) {
            return significant(value, HUGE_DIGITS);
        }
        long nearest = nearest(value, decimals);
        String digits = nearest < 0
                ? denoised(value)
                        .abs()
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .unscaledValue()
                        .toString()
                : Long.toString(nearest);
        String padded = "0".repeat(Math.max(0, decimals + 1 - digits.length())) + digits;
        int point = padded.length() - decimals;
        String sign = value < 0 && !digits.equals("0") ? "-" : "";
        return sign + padded.substring(0, point) + (decimals == 0 ? "" : "." + padded.substring(point));
    }

    /**
     * {@return whether {@link #fixed} prints nothing but noughts; true for what rounds to 0}
     *
     * @param value any double
     * @param decimals 0 or more
     */
    public static boolean isNothing(double value, int decimals) {
        if (!(Math.abs(value) < 1)) {
            return false;
        }
        long nearest = nearest(value, decimals);
        return nearest < 0
                ? denoised(value).setScale(decimals, RoundingMode.HALF_UP).signum() == 0
                : nearest == 0;
    }

    /**
     * {@return the number rounded to some decimals, without the zeros at its end: {@code 8.5} for 8.500}
     *
     * @param value any double; NaN and the infinities are named
     * @param mostDecimals 0 to 100
     * @throws IllegalArgumentException if there are fewer or more decimals
     */
    public static String trimmed(double value, int mostDecimals) {
        String text = fixed(value, mostDecimals);
        int end = text.length();
        if (mostDecimals == 0 || !(Math.abs(value) < EXPONENT_FROM)) {
            return text;
        }
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /**
     * {@return the number rounded to some digits, without the zeros at its end, with an exponent as {@link #plain}
     * would write it: {@code 1.235E-9}}
     *
     * @param value any double; NaN and the infinities are named
     * @param digits 1 or more
     */
    public static String significant(double value, int digits) {
        if (!Double.isFinite(value)) {
            return special(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
        double near = rounded.doubleValue();
        // The largest double rounds to what is none.
        return Double.isFinite(near)
                ? plain(near)
                : rounded.stripTrailingZeros().toString();
    }

    /**
     * {@return how many decimals a value deserves beside its standard uncertainty: two significant digits of the
     * uncertainty (GUM 7.2.6), between 0 and 9}
     *
     * @param uncertainty standard uncertainty, more than 0 and finite, else {@code otherwise} is returned
     * @param otherwise decimals where there is no usable uncertainty
     */
    public static int decimalsFor(double uncertainty, int otherwise) {
        if (!(uncertainty > 0) || Double.isInfinite(uncertainty)) {
            return otherwise;
        }
        for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
            double size = uncertainty * POWERS[decimals];
            if (size > 9.951) {
                return decimals;
            }
            if (size > 9.949) {
                break; // too near the edge for a product
            }
        }
        BigDecimal two = new BigDecimal(uncertainty).round(new MathContext(2, RoundingMode.HALF_UP));
        int decimals = two.scale() + (two.precision() == 1 ? 1 : 0);
        return Math.max(0, Math.min(MOST_DECIMALS, decimals));
    }

    /**
     * {@return a probability as percent with one decimal, and never as certain: {@code 95.0 %}, {@code more than 99.9 %},
     * {@code below 0.1 %}} More nines would rest on spreads that are seldom known so well: a {@link
     * org.neckgeom.measure.Chance} shows those that are earned.
     *
     * @param probability in [0, 1]
     */
    public static String percent(double probability) {
        if (!(probability >= 0.0005)) {
            return "below 0.1 %";
        }
        return 1 - probability < LEAST_SHARE ? "more than 99.9 %" : fixed(100 * probability, 1) + " %";
    }

    private static void checkPlaces(int decimals) {
        if (decimals < 0 || decimals > MOST_PLACES) {
            throw Refusal.of("decimals", "fit", "be 0 to " + MOST_PLACES, "were", decimals);
        }
    }

    /** The whole number of last places nearest to a value's size; -1 where only all of its digits show which that is. */
    private static long nearest(double value, int decimals) {
        if (decimals > MOST_DECIMALS) {
            return -1;
        }
        double places = Math.abs(value) * POWERS[decimals];
        // Rounded to twelve digits first: that moves a value by half of the twelfth at most, which is at or after the
        // last place.
        double moved = places < 1e11 ? 5e-12 * places : 0;
        boolean isClear = places < 1e12 && Math.abs(places - Math.floor(places) - 0.5) > 1e-3 + moved;
        return isClear ? Math.round(places) : -1;
    }

    /** Twelve digits first, so that 0.1 + 0.2 rounds as 0.3 would. */
    private static BigDecimal denoised(double value) {
        return new BigDecimal(value).round(PLAIN);
    }

    private static String special(double value) {
        if (Double.isNaN(value)) {
            return "NaN";
        }
        return value > 0 ? "infinity" : "-infinity";
    }
}
