package org.neckgeom.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The distribution of an error that has not been read (error distribution, spread, scatter), such as {@code
 * rectangular, half-width 0.05 mm} (GUM 4.3; JCGM 101:2008, 6.4).
 *
 * <p>Each law is symmetric about its shift, except measured samples. Default shift: 0. The scale is a standard
 * deviation for the normal law and a half-width for the others, in the library unit. Errors: a scale below 0 or not
 * finite throws {@link org.neckgeom.fault.Refusal} (an {@code IllegalArgumentException}). Immutable.
 *
 * @see Estimate
 * @param <Q> the kind of quantity
 */
public final class ErrorDistribution<Q extends Quantity<Q>> {

    /** The laws a spread can have. */
    public enum Law {
        /** Gauss's, unbounded; scale = standard deviation. */
        NORMAL,
        /** Uniform up to the half-width. */
        RECTANGULAR,
        /** Highest in the middle, down to nothing at the half-width. */
        TRIANGULAR,
        /** A flat top narrower than the base: the sum of two rectangular ones. */
        TRAPEZOIDAL,
        /** Mostly near the ends, as a steady swing: U-shaped. */
        ARCSINE,
        /** No spread at all: a known shift. */
        BIAS,
        /** Measured in the shop: each sample as likely as the next, stretched about their mean for the next error. */
        SAMPLES
    }

    private static final double[] NO_SAMPLES = {};

    private final Law law;
    private final double shift;
    private final double scale;
    private final double topScale;
    private final double degreesOfFreedom;
    private final double[] samples;
    private final ShopUnit<Q> unit;

    private ErrorDistribution(
            Law law,
            double shift,
            double scale,
            double topScale,
            double degreesOfFreedom,
            double[] samples,
            ShopUnit<Q> unit) {
        this.law = law;
        this.shift = LibraryUnits.finite(shift, "shift", unit.symbol());
        this.scale = LibraryUnits.finite(scale, "scale", unit.symbol());
        this.topScale = topScale + 0.0;
        this.degreesOfFreedom = degreesOfFreedom;
        this.samples = samples;
        this.unit = unit;
        LibraryUnits.finite(libraryVariance(), "variance", "");
        LibraryUnits.finite(unit.fromLibrary(shift), "shift", unit.symbol());
        LibraryUnits.finite(unit.fromLibrary(scale), "scale", unit.symbol());
    }

    /**
     * {@return a normal spread}
     *
     * @param <Q> the kind of quantity
     * @param standardDeviation 0 or more
     */
    public static <Q extends Quantity<Q>> ErrorDistribution<Q> normal(Quantity<Q> standardDeviation) {
        return symmetric(Law.NORMAL, standardDeviation, "standard deviation");
    }

    /**
     * {@return a rectangular spread: {@code u = a/sqrt(3)}}
     *
     * @param <Q> the kind of quantity
     * @param halfWidth a, 0 or more
     */
    public static <Q extends Quantity<Q>> ErrorDistribution<Q> rectangular(Quantity<Q> halfWidth) {
        return symmetric(Law.RECTANGULAR, halfWidth, "half-width");
    }

    /**
     * {@return a triangular spread: {@code u = a/sqrt(6)}}
     *
     * @param <Q> the kind of quantity
     * @param halfWidth a, 0 or more
     */
    public static <Q extends Quantity<Q>> ErrorDistribution<Q> triangular(Quantity<Q> halfWidth) {
        return symmetric(Law.TRIANGULAR, halfWidth, "half-width");
    }

    /**
     * {@return an arcsine (U-shaped) spread: {@code u = a/sqrt(2)}}
     *
     * @param <Q> the kind of quantity
     * @param halfWidth a, 0 or more
     */
    public static <Q extends Quantity<Q>> ErrorDistribution<Q> arcsine(Quantity<Q> halfWidth) {
        return symmetric(Law.ARCSINE, halfWidth, "half-width");
    }

    /**
     * {@return a trapezoidal spread: {@code u = a sqrt((1 + beta^2)/6)}, {@code beta = top/base}} It is the sum of two
     * rectangular ones of half-widths {@code (a + b)/2} and {@code (a - b)/2}.
     *
     * @param <Q> the kind of quantity
     * @param halfBase a, 0 or more
     * @param halfTop b, 0 to a
     */
    public static <Q extends Quantity<Q>> ErrorDistribution<Q> trapezoidal(Quantity<Q> halfBase, Quantity<Q> halfTop) {
        Amount<Q> base = notNegative(Amount.from(halfBase, "half-base"), "half-base");
        Amount<Q> top = notNegative(Amount.from(halfTop, base.unit(), "half-top"), "half-top");
        if (!(top.libraryDifference() <= base.libraryDifference())) {
            throw LibraryUnits.refused("half-top", "at-most", base + " or less", top);
        }
        return of(Law.TRAPEZOIDAL, 0, base.libraryDifference(), top.libraryDifference(), base.unit());
    }

    /**
     * {@return a known shift without any spread}
     *
     * @param <Q> the kind of quantity
     * @param shift either sign
     */
    public static <Q extends Quantity<Q>> ErrorDistribution<Q> bias(Quantity<Q> shift) {
        Amount<Q> known = Amount.from(shift, "bias");
        return of(Law.BIAS, known.libraryDifference(), 0, 0, known.unit());
    }

    /**
     * {@return the spread of the next error of a kind that was measured n times: normal about the mean, with {@code s sqrt(1 +
     * 1/n)} and n - 1 degrees of freedom, s the experimental standard deviation} The next error is Student's.
     *
     * @param <Q> the kind of quantity
     * @param errors two or more; the first one's unit is the one the spread is read in
     */
    public static <Q extends Quantity<Q>> ErrorDistribution<Q> repeated(List<? extends Quantity<Q>> errors) {
        Estimate<Q> mean = Estimate.repeated(errors);
        double u = mean.libraryUncertainty() * Math.sqrt(errors.size() + 1.0);
        return of(Estimate.ofLibrary(mean.libraryValue(), u, mean.degreesOfFreedom(), mean.unit()));
    }

    /**
     * {@return the spread of errors measured in the shop, each sample as likely as the next, of n - 1 degrees of freedom}
     *
     * <p>It keeps the shape of the n samples. They are stretched about their mean by {@code sqrt((n + 1)/(n - 1))}, so that the
     * variance is that of the next error, {@code s^2 (1 + 1/n)}. Nothing rarer than 1 in n + 1 can be read off them; {@link
     * #repeated} can be used where the error is normal.
     *
     * @param <Q> the kind of quantity
     * @param errors two or more; the first one's unit is the one the spread is read in
     */
    public static <Q extends Quantity<Q>> ErrorDistribution<Q> samples(List<? extends Quantity<Q>> errors) {
        ShopUnit<Q> unit = unitOf(errors);
        double[] values = new double[errors.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = Amount.from(errors.get(i), unit, "sample").libraryDifference();
        }
        Arrays.sort(values);
        double mean = mean(values);
        for (int i = 0; i < values.length; i++) {
            values[i] -= mean;
        }
        return ofSamples(mean, values, unit);
    }

    /**
     * {@return a spread from samples whose mean has been taken off: one read back from a record of it; its shift 0}
     *
     * @param <Q> the kind of quantity
     * @param fromTheirMean two or more, ascending, adding up to nothing; the first one's unit is the one the spread is read in
     */
    public static <Q extends Quantity<Q>> ErrorDistribution<Q> centredSamples(
            List<? extends Quantity<Q>> fromTheirMean) {
        ShopUnit<Q> unit = unitOf(fromTheirMean);
        double[] values = new double[fromTheirMean.size()];
        double sum = 0;
        double size = 0;
        for (int i = 0; i < values.length; i++) {
            values[i] = Amount.from(fromTheirMean.get(i), unit, "sample").libraryDifference();
            sum += values[i];
            size += Math.abs(values[i]);
            if (i > 0 && !(values[i] >= values[i - 1])) {
                throw LibraryUnits.refused(
                        "sample", "ascending", "as large as the one before or larger", fromTheirMean.get(i));
            }
        }
        // As near to nothing as rounding leaves a mean that was taken off.
        if (!(Math.abs(sum) <= 1e-9 * size)) {
            throw LibraryUnits.refused(
                    "sum of the samples", "centred", "nothing", Amount.ofLibrary(sum, unit.forDifferences()));
        }
        return ofSamples(0, values, unit);
    }

    private static <Q extends Quantity<Q>> ShopUnit<Q> unitOf(List<? extends Quantity<Q>> samples) {
        int n = Objects.requireNonNull(samples, "samples").size();
        if (n < 2) {
            throw Refusal.of("samples", "at-least", "be 2 or more", "were", n);
        }
        return Amount.from(samples.get(0), "sample").unit();
    }

    private static <Q extends Quantity<Q>> ErrorDistribution<Q> ofSamples(
            double mean, double[] centred, ShopUnit<Q> unit) {
        double largest = stretch(centred.length) * Math.max(-centred[0], centred[centred.length - 1]);
        return new ErrorDistribution<>(
                Law.SAMPLES, mean, largest, 0, centred.length - 1.0, centred, unit.forDifferences());
    }

    /** From n samples to the next error. */
    private static double stretch(int n) {
        return Math.sqrt((n + 1.0) / (n - 1.0));
    }

    /**
     * {@return what an estimate leaves open: normal about its value, with its degrees of freedom}
     *
     * @param <Q> the kind of quantity
     * @param estimate the estimate
     */
    public static <Q extends Quantity<Q>> ErrorDistribution<Q> of(Estimate<Q> estimate) {
        return new ErrorDistribution<>(
                Law.NORMAL,
                Objects.requireNonNull(estimate, "estimate").libraryValue(),
                estimate.libraryUncertainty(),
                0,
                estimate.degreesOfFreedom(),
                NO_SAMPLES,
                estimate.unit().forDifferences());
    }

    /**
     * {@return this spread about another place}
     *
     * @param by added to the shift, either sign
     */
    public ErrorDistribution<Q> shifted(Quantity<Q> by) {
        double moved = shift + Amount.from(by, unit, "shift").libraryDifference();
        return new ErrorDistribution<>(law, moved, scale, topScale, degreesOfFreedom, samples, unit);
    }

    /**
     * {@return this spread, its size scaled and its shift kept, as allocation and allowance need it}
     *
     * @param factor 0 or more
     */
    public ErrorDistribution<Q> scaled(double factor) {
        if (!(factor >= 0) || Double.isInfinite(factor)) {
            throw Refusal.of("factor", "at-least", "be 0 or more", Numbers.plain(factor));
        }
        double[] wider = Arrays.stream(samples).map(x -> x * factor + 0.0).toArray();
        return new ErrorDistribution<>(law, shift, scale * factor, topScale * factor, degreesOfFreedom, wider, unit);
    }

    /**
     * {@return this spread with the degrees of freedom its standard uncertainty is known by (GUM G.4.2)}
     *
     * @param degrees 1 or more
     */
    public ErrorDistribution<Q> degreesOfFreedom(double degrees) {
        if (!(degrees >= 1)) {
            throw Refusal.of("degrees of freedom", "at-least", "be 1 or more", "were", Numbers.plain(degrees));
        }
        return new ErrorDistribution<>(law, shift, scale, topScale, degrees, samples, unit);
    }

    /** {@return the law} */
    public Law law() {
        return law;
    }

    /** {@return the mean, which is the shift, in the library unit} */
    public double libraryMean() {
        return shift;
    }

    /**
     * {@return the scale in the library unit: the standard deviation of a normal spread, the half-width of a bounded
     * one, 0 for a bias; 0 or more}
     */
    public double libraryScale() {
        return scale;
    }

    /** {@return the half-width of a trapezoid's top in the library unit; 0 for every other law} */
    public double libraryTopScale() {
        return topScale;
    }

    /**
     * {@return the errors that are as likely as each other, in the library unit, less their mean, ascending: the samples,
     * stretched for the next error; empty for every law but samples}
     */
    public double[] libraryCentredSamples() {
        double[] next = samples.clone();
        for (int i = 0; i < next.length; i++) {
            next[i] *= stretch(next.length);
        }
        return next;
    }

    /** {@return the samples as measured, less their mean, ascending; in the library unit; empty for every other law} */
    public double[] librarySamples() {
        return samples.clone();
    }

    /** {@return the degrees of freedom of the standard uncertainty; more than 0; infinite unless given, n - 1 for n samples} */
    public double degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /** {@return the variance about the mean, in the library unit squared; 0 or more} */
    public double libraryVariance() {
        return switch (law) {
            case NORMAL -> scale * scale;
            case RECTANGULAR -> scale * scale / 3;
            case TRIANGULAR -> scale * scale / 6;
            case TRAPEZOIDAL -> (scale * scale + topScale * topScale) / 6;
            case ARCSINE -> scale * scale / 2;
            case BIAS -> 0;
            case SAMPLES ->
                Arrays.stream(samples).map(x -> x * x).sum() / (samples.length - 1) * (1 + 1.0 / samples.length);
        };
    }

    /** {@return the standard uncertainty, the square root of the variance; u, 0 or more} */
    public Amount<Q> standardUncertainty() {
        return Amount.ofLibrary(Math.sqrt(libraryVariance()), unit);
    }

    /** {@return whether the error can never be larger than some bound; false for the normal law only} */
    public boolean isBounded() {
        return law != Law.NORMAL;
    }

    /** {@return the unit the spread is read in} */
    public ShopUnit<Q> unit() {
        return unit;
    }

    /**
     * {@return the same printed in a style of length; equal to this}
     *
     * @param other how lengths are printed
     */
    public ErrorDistribution<Q> in(LengthStyle other) {
        return new ErrorDistribution<>(
                law,
                shift,
                scale,
                topScale,
                degreesOfFreedom,
                samples,
                Objects.requireNonNull(other, "style").fineUnitFor(unit));
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof ErrorDistribution<?> other
                && law == other.law
                && unit.kind() == (Class<?>) other.unit.kind()
                && Double.compare(shift, other.shift) == 0
                && Double.compare(scale, other.scale) == 0
                && Double.compare(topScale, other.topScale) == 0
                && Double.compare(degreesOfFreedom, other.degreesOfFreedom) == 0
                && Arrays.equals(samples, other.samples);
    }

    @Override
    public int hashCode() {
        return Objects.hash(law, unit.kind(), shift, scale, topScale, degreesOfFreedom, Arrays.hashCode(samples));
    }

    /** Returns such as {@code rectangular, half-width 0.05 mm} or {@code normal, u 0.05 mm, shifted by 0.01 mm}. */
    @Override
    public String toString() {
        String text = switch (law) {
            case NORMAL -> "normal, u " + Amount.ofLibrary(scale, unit).toString();
            case TRAPEZOIDAL ->
                "trapezoidal, half-base " + Amount.ofLibrary(scale, unit) + ", half-top "
                        + Amount.ofLibrary(topScale, unit).toString();
            case BIAS -> "bias " + Amount.ofLibrary(shift, unit).toString();
            case SAMPLES ->
                samples.length + " samples, mean "
                        + Estimate.ofLibrary(shift, Math.sqrt(libraryVariance()), Double.POSITIVE_INFINITY, unit);
            default ->
                law.name().toLowerCase(java.util.Locale.ROOT) + ", half-width "
                        + Amount.ofLibrary(scale, unit).toString();
        };
        boolean saidAlready = law == Law.BIAS || law == Law.SAMPLES;
        return shift == 0 || saidAlready
                ? text
                : text + ", shifted by " + Amount.ofLibrary(shift, unit).toString();
    }

    private static <Q extends Quantity<Q>> ErrorDistribution<Q> symmetric(Law law, Quantity<Q> scale, String name) {
        Amount<Q> size = notNegative(Amount.from(scale, name), name);
        return of(law, 0, size.libraryDifference(), 0, size.unit());
    }

    private static <Q extends Quantity<Q>> ErrorDistribution<Q> of(
            Law law, double shift, double scale, double top, ShopUnit<Q> unit) {
        return new ErrorDistribution<>(
                law, shift, scale, top, Double.POSITIVE_INFINITY, NO_SAMPLES, unit.forDifferences());
    }

    private static <Q extends Quantity<Q>> Amount<Q> notNegative(Amount<Q> size, String name) {
        if (!(size.libraryDifference() >= 0)) {
            throw LibraryUnits.refused(name, "at-least", "0 " + size.unit().symbol() + " or more", size);
        }
        return size;
    }

    private static double mean(double[] values) {
        double first = values[0];
        double sum = 0;
        for (double value : values) {
            sum += value - first;
        }
        return first + sum / values.length;
    }
}
