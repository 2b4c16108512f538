package org.neckgeom.design;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LinearDensity;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * The strings, from bass to treble, such as {@code 4 courses of 2, 95 N a string}. Immutable.
 *
 * <p>Each course has a pitch. Its pull is told, or follows from its mass per length or its plain-wire diameter. Unless
 * told, courses are single.
 */
public final class StringSet implements SaysLengths<StringSet> {

    private static final double[] NOT_TOLD = {};
    private static final int MOST_SHOWN = 12;

    private final double[] hertz;
    private final int inCourse;
    private final double[] tensions;
    private final double[] gramsPerMetre;
    private final double[] diameters;
    private final ShopUnit<Length> gaugeUnit;

    private StringSet(
            double[] hertz,
            int inCourse,
            double[] tensions,
            double[] gramsPerMetre,
            double[] diameters,
            ShopUnit<Length> gaugeUnit) {
        this.hertz = hertz;
        this.inCourse = inCourse;
        this.tensions = tensions;
        this.gramsPerMetre = gramsPerMetre;
        this.diameters = diameters;
        this.gaugeUnit = gaugeUnit;
    }

    /**
     * Returns single strings tuned to pitches.
     *
     * @param pitches one or more, from bass to treble as they lie, each more than 0
     * @return the strings
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read, into a list
    public static StringSet of(Quantity<Frequency>... pitches) {
        return of(Arrays.asList(Objects.requireNonNull(pitches, "pitches")));
    }

    /**
     * Returns single strings tuned to pitches.
     *
     * @param pitches one or more, from bass to treble as they lie, each more than 0
     * @return the strings
     */
    public static StringSet of(List<? extends Quantity<Frequency>> pitches) {
        if (Objects.requireNonNull(pitches, "pitches").isEmpty()) {
            throw Refusal.of("strings", "at-least", "be 1 or more", "there were none", "");
        }
        double[] hertz = pitches.stream()
                .mapToDouble(pitch -> HouseUnits.positive(pitch, ShopUnit.HERTZ, "pitch"))
                .toArray();
        return new StringSet(hertz, 1, NOT_TOLD, NOT_TOLD, NOT_TOLD, ShopUnit.MILLIMETRE);
    }

    /**
     * Returns these strings in pairs: two to each course.
     *
     * @return the strings
     */
    public StringSet doubled() {
        return new StringSet(hertz, 2, tensions, gramsPerMetre, diameters, gaugeUnit);
    }

    /**
     * Returns these strings with the pull of each single string told.
     *
     * @param pulls one for all, or one to each course from bass to treble, each more than 0
     * @return the strings
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read, into a list
    public final StringSet tensions(Quantity<Force>... pulls) {
        double[] newtons = each(pulls, ShopUnit.NEWTON, "string tension");
        return new StringSet(hertz, inCourse, newtons, gramsPerMetre, diameters, gaugeUnit);
    }

    /**
     * Returns these strings with the mass per length of each single string told, as printed for wrapped strings.
     *
     * @param masses one to each course from bass to treble, each more than 0
     * @return the strings
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read, into a list
    public final StringSet massesPerLength(Quantity<LinearDensity>... masses) {
        double[] grams = each(masses, ShopUnit.GRAM_PER_METRE, "mass per length");
        return new StringSet(hertz, inCourse, tensions, grams, diameters, gaugeUnit);
    }

    /**
     * Returns these strings with the diameter of each single string told.
     *
     * @param gauges one to each course from bass to treble, each more than 0
     * @return the strings
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read, into a list
    public final StringSet diameters(Quantity<Length>... gauges) {
        double[] mm = each(gauges, ShopUnit.MILLIMETRE, "string diameter");
        ShopUnit<Length> unit = Amount.from(gauges[0], "string diameter").unit();
        return new StringSet(hertz, inCourse, tensions, gramsPerMetre, mm, unit);
    }

    private <Q extends Quantity<Q>> double[] each(Quantity<Q>[] given, ShopUnit<Q> house, String name) {
        if (Objects.requireNonNull(given, name).length != 1 && given.length != hertz.length) {
            throw Refusal.of(
                    name,
                    "as-many",
                    "be told once for all or once for each of the " + hertz.length + " courses",
                    "told " + given.length + " times");
        }
        double[] values = new double[hertz.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = HouseUnits.positive(given[given.length == 1 ? 0 : i], house, name);
        }
        return values;
    }

    /**
     * Returns the number of courses.
     *
     * @return 1 or more
     */
    public int courses() {
        return hertz.length;
    }

    /**
     * Returns the number of strings to a course.
     *
     * @return 1 or 2
     */
    public int inCourse() {
        return inCourse;
    }

    /**
     * Returns the pitches in Hz, from bass to treble.
     *
     * @return a fresh array, one to a course
     */
    public double[] pitchesHz() {
        return hertz.clone();
    }

    /**
     * Returns the pull of a single string of each course in N, where told.
     *
     * @return a fresh array, one to a course, or empty
     */
    public double[] tensionsN() {
        return tensions.clone();
    }

    /**
     * Returns the mass per length of a single string of each course in g/m, where told.
     *
     * @return a fresh array, one to a course, or empty
     */
    public double[] massesGramPerMetre() {
        return gramsPerMetre.clone();
    }

    /**
     * Returns the diameter of a single string of each course in mm, where told.
     *
     * @return a fresh array, one to a course, or empty
     */
    public double[] diametersMm() {
        return diameters.clone();
    }

    /**
     * Returns the diameters of a single string of each course.
     *
     * @return from bass to treble, in the unit they were told in; empty when not told
     */
    public List<Amount<Length>> diameters() {
        return Arrays.stream(diameters)
                .mapToObj(mm -> Amount.ofHouse(mm, gaugeUnit))
                .toList();
    }

    @Override
    public StringSet in(LengthStyle other) {
        return new StringSet(
                hertz,
                inCourse,
                tensions,
                gramsPerMetre,
                diameters,
                Objects.requireNonNull(other, "style") == LengthStyle.MILLIMETRES
                        ? ShopUnit.MILLIMETRE
                        : ShopUnit.INCH);
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof StringSet other
                && Arrays.equals(hertz, other.hertz)
                && inCourse == other.inCourse
                && Arrays.equals(tensions, other.tensions)
                && Arrays.equals(gramsPerMetre, other.gramsPerMetre)
                && Arrays.equals(diameters, other.diameters);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                Arrays.hashCode(hertz),
                inCourse,
                Arrays.hashCode(tensions),
                Arrays.hashCode(gramsPerMetre),
                Arrays.hashCode(diameters));
    }

    /** Returns such as {@code 4 courses of 2 at 98.00, 146.83, 220.00, 329.63 Hz, 95 N a string}, and the diameters where told. */
    @Override
    public String toString() {
        String text = (inCourse == 1 ? hertz.length + " strings" : hertz.length + " courses of " + inCourse) + " at "
                + listed(hertz, f -> f < 1e6 ? Numbers.fixed(f, 2) : Numbers.plain(f)) + " Hz";
        if (tensions.length > 0) {
            text += alike(tensions)
                    ? ", " + Amount.ofHouse(tensions[0], ShopUnit.NEWTON) + " a string"
                    : ", " + listed(tensions, Numbers::plain) + " N a string";
        }
        if (diameters.length > 0) {
            text += alike(diameters)
                    ? ", " + Amount.ofHouse(diameters[0], gaugeUnit) + " thick"
                    : ", " + listed(diameters, this::gauge) + " " + gaugeUnit + " thick";
        }
        return text;
    }

    private static boolean alike(double[] values) {
        return Arrays.stream(values).allMatch(value -> value == values[0]);
    }

    private String gauge(double mm) {
        String text = Amount.ofHouse(mm, gaugeUnit).toString();
        return text.substring(0, text.lastIndexOf(' '));
    }

    private static String listed(double[] values, DoubleFunction<String> text) {
        String first = Arrays.stream(values).limit(MOST_SHOWN).mapToObj(text).collect(Collectors.joining(", "));
        return values.length <= MOST_SHOWN ? first : first + " and " + (values.length - MOST_SHOWN) + " more";
    }
}
