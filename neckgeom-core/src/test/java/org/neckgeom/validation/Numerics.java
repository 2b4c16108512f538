package org.neckgeom.validation;

import java.util.Locale;
import java.util.function.Supplier;
import org.hipparchus.dfp.Dfp;
import org.hipparchus.dfp.DfpField;
import org.hipparchus.dfp.DfpMath;

/**
 * Compares a kernel in doubles with the same formula in 40-digit arithmetic at many places, relative to the result.
 *
 * <p>The formula is written as the textbook has it; its cancellations cost the 40 digits nothing.
 */
public final class Numerics {

    private static final DfpField FIELD = new DfpField(40);

    public static final Dfp ONE = FIELD.getOne();
    public static final Dfp TWO = FIELD.getTwo();
    public static final Dfp PI = FIELD.getPi();

    private final Check check;
    private final double share;
    private final int count;

    private Numerics(Check check, double share, int count) {
        this.check = check;
        this.share = share;
        this.count = count;
    }

    /** One place: the exact result and ours. */
    public record Point(Dfp exact, double ours) {}

    /** Begins a comparison; the figure of the report is the largest relative difference. */
    public static Numerics worst(Checks checks, String what, String domain, double share, int count) {
        return new Numerics(
                checks.check(
                        what + String.format(Locale.ROOT, ", %,d places: largest relative difference", count),
                        Source.HIPPARCHUS,
                        domain,
                        Status.LIBRARY,
                        ""),
                share,
                count);
    }

    /** Compares at all places. */
    public Check points(Supplier<Point> next) {
        double worst = 0;
        for (int i = 0; i < count; i++) {
            Point point = next.get();
            Dfp off = of(point.ours()).subtract(point.exact());
            double relative =
                    off.isZero() ? 0 : Math.abs(off.divide(point.exact()).toDouble());
            worst = Double.isNaN(relative) ? Double.NaN : Math.max(worst, relative);
        }
        // Shown as a power of ten above it, as the last bits are the machine's.
        double shown = worst == 0 ? 0 : Math.max(1e-15, Math.pow(10, Math.ceil(Math.log10(worst))));
        return check.figure(0, worst > share || Double.isNaN(worst) ? worst : shown, share);
    }

    public static Dfp of(double value) {
        return FIELD.newDfp(value);
    }

    public static Dfp sin(Dfp x) {
        return DfpMath.sin(x);
    }

    public static Dfp cos(Dfp x) {
        return DfpMath.cos(x);
    }

    public static Dfp tan(Dfp x) {
        return DfpMath.tan(x);
    }

    public static Dfp asin(Dfp x) {
        return DfpMath.asin(x);
    }

    public static Dfp atan(Dfp x) {
        return DfpMath.atan(x);
    }

    public static Dfp pow(Dfp base, Dfp exponent) {
        return DfpMath.pow(base, exponent);
    }

    public static Dfp log(Dfp x) {
        return DfpMath.log(x);
    }

    /** {@code r - sqrt(r^2 - y^2)}. */
    public static Dfp sagitta(double r, double y) {
        Dfp radius = of(r);
        return radius.subtract(
                radius.multiply(radius).subtract(of(y).multiply(of(y))).sqrt());
    }
}
