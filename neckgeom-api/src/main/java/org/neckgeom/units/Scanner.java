package org.neckgeom.units;

/**
 * Reads a number as makers write it: {@code 44.5}, {@code 3/4}, {@code 1 3/4}, {@code 1-3/4}, {@code -0.02}, {@code
 * 1.5e-3}. Decimal point only; the locale has no say.
 */
final class Scanner {

    private static final double[] TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };
    private static final long EXACT = 1L << 53;

    private final String text;
    private final int end;
    private int at;

    Scanner(String text) {
        this.text = text;
        int last = text.length();
        while (last > 0 && text.charAt(last - 1) == ' ') {
            last--;
        }
        this.end = last;
        skipSpaces();
    }

    /** Reads the number, or returns NaN where there is none. */
    double number() {
        boolean negative = at < end && text.charAt(at) == '-';
        if (negative || (at < end && text.charAt(at) == '+')) {
            at++;
        }
        int start = at;
        double first = decimal();
        if (Double.isNaN(first)) {
            return Double.NaN;
        }
        boolean whole = isDigits(start, at);
        double value = first;
        if (whole && at < end && text.charAt(at) == '/') {
            value = over(0, first);
        } else if (whole && at + 1 < end && (text.charAt(at) == ' ' || text.charAt(at) == '-') && isDigit(at + 1)) {
            at++;
            int top = at;
            double numerator = decimal();
            if (!isDigits(top, at) || at >= end || text.charAt(at) != '/') {
                return Double.NaN;
            }
            value = over(first, numerator);
            if (!(value < first + 1)) {
                return Double.NaN; // 1 5/4 is a slip of the pen; NaN goes this way too
            }
        }
        return negative ? -value : value;
    }

    /** What follows the number, without the spaces around it. */
    String rest() {
        skipSpaces();
        return text.substring(Math.min(at, end), end);
    }

    /** In one division, so that 1 2/3 is the double nearest to five thirds. */
    private double over(double whole, double numerator) {
        at++;
        int start = at;
        double denominator = decimal();
        return isDigits(start, at) && denominator > 0 ? (whole * denominator + numerator) / denominator : Double.NaN;
    }

    private double decimal() {
        int start = at;
        long digits = 0;
        int decimals = 0;
        int count = 0;
        boolean point = false;
        while (at < end) {
            char c = text.charAt(at);
            if (c >= '0' && c <= '9') {
                count++;
                if (count <= 18) {
                    digits = digits * 10 + (c - '0');
                }
                decimals += point ? 1 : 0;
            } else if (c == '.' && !point) {
                point = true;
            } else {
                break;
            }
            at++;
        }
        if (count == 0 || text.charAt(at - 1) == '.') {
            return Double.NaN;
        }
        int last = at;
        if (exponentFollows()) {
            return notLost(Double.parseDouble(text.substring(start, at)), start, last);
        }
        // Both exactly doubles, so one correctly rounded division gives the nearest double.
        return count <= 18 && digits <= EXACT && decimals < TEN.length
                ? digits / TEN[decimals]
                : notLost(Double.parseDouble(text.substring(start, at)), start, last);
    }

    /** NaN for a number that is not 0 but so small that a double of it is. */
    private double notLost(double value, int from, int to) {
        for (int i = from; value == 0 && i < to; i++) {
            if (text.charAt(i) >= '1' && text.charAt(i) <= '9') {
                return Double.NaN;
            }
        }
        return value;
    }

    private boolean exponentFollows() {
        if (at >= end || (text.charAt(at) | 0x20) != 'e') {
            return false;
        }
        int digit = at + 1;
        if (digit < end && (text.charAt(digit) == '-' || text.charAt(digit) == '+')) {
            digit++;
        }
        if (!isDigit(digit)) {
            return false;
        }
        while (isDigit(digit)) {
            digit++;
        }
        at = digit;
        return true;
    }

    private boolean isDigits(int from, int to) {
        for (int i = from; i < to; i++) {
            if (!isDigit(i)) {
                return false;
            }
        }
        return to > from;
    }

    private boolean isDigit(int index) {
        return index < end && text.charAt(index) >= '0' && text.charAt(index) <= '9';
    }

    private void skipSpaces() {
        while (at < end && text.charAt(at) == ' ') {
            at++;
        }
    }
}
