package org.neckgeom.channel;

import java.util.Optional;
import org.neckgeom.text.Numbers;

/**
 * Slips of the eye and the pen that would explain a wrong reading: two neighbouring digits that changed places, or a whole
 * division miscounted. Numbers are in the unit that was read.
 *
 * <p>By chance alone a misfit of 0.15 to 2 mm is explained by one of the two in two of five cases (tolerance 0.12 mm): a slip is
 * a hint, and no proof.
 */
final class Slips {

    private static final double[] MM_DIVISIONS = {10, 5, 1, 0.5};
    private static final double[] INCH_DIVISIONS = {1, 0.1, 0.05, 0.025};

    /** No longer number is written down by hand: it was converted. */
    private static final int MOST_WRITTEN = 8;

    private Slips() {}

    /**
     * {@return the reading with two neighbouring digits changed that takes an error away; nothing if none does}
     *
     * @param written the reading as it was written
     * @param error of the reading, positive when it is too large
     * @param tolerance error left that counts as none
     */
    static Optional<String> swapped(String written, double error, double tolerance) {
        if (written.length() > MOST_WRITTEN || written.indexOf('E') >= 0) {
            return Optional.empty();
        }
        double read = Double.parseDouble(written);
        for (int i = 0; i + 1 < written.length(); i++) {
            int j = written.charAt(i + 1) == '.' ? i + 2 : i + 1;
            if (written.charAt(i) == '.' || j >= written.length() || written.charAt(i) == written.charAt(j)) {
                continue;
            }
            StringBuilder other = new StringBuilder(written);
            other.setCharAt(i, written.charAt(j));
            other.setCharAt(j, written.charAt(i));
            if (Math.abs(error + Double.parseDouble(other.toString()) - read) <= tolerance) {
                return Optional.of(other.toString());
            }
        }
        return Optional.empty();
    }

    /**
     * {@return the whole division that an error is about; the division; nothing when none is near}
     *
     * @param error of the reading
     * @param tolerance error left that counts as none
     * @param isInches whether it was read in inches, else in mm
     */
    static Optional<Double> division(double error, double tolerance, boolean isInches) {
        for (double division : isInches ? INCH_DIVISIONS : MM_DIVISIONS) {
            if (Math.abs(Math.abs(error) - division) <= tolerance) {
                return Optional.of(division);
            }
        }
        return Optional.empty();
    }

    /** How many decimals a reading has. */
    static int decimals(double value) {
        String text = Numbers.plain(value);
        int point = text.indexOf('.');
        return point < 0 || text.indexOf('E') >= 0 ? 0 : text.length() - point - 1;
    }
}
