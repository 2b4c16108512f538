package org.neckgeom.design;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
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
public final class StringSet implements Answer, SaysLengths<StringSet> {

    private static final double[] NOT_TOLD = {};

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

    /**
     * Returns the style these strings are printed in: that of their diameters.
     *
     * @return the style; millimetres while no diameter is given
     */
    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(gaugeUnit);
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

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        private static final Form<StringSet> FORM = form((set, style) -> set.gauges(
                style == set.style() ? set.gaugeUnit : style.inTables().unit()));

        /** The same with diameters in the unit of the neck, for a row of it. */
        static final Form<StringSet> IN_NECK =
                form((set, style) -> set.gauges(style.inTables().unit()));

        private static Form<StringSet> form(BiFunction<StringSet, LengthStyle, List<Amount<?>>> gauges) {
            return Form.<StringSet>of("strings")
                    .fact("courses", Kind.WHOLE, "strings, where single", StringSet::courses)
                    .fact("stringsPerCourse", Kind.WHOLE, "1 or 2", StringSet::inCourse)
                    .fact("pitches", listOf(ShopUnit.HERTZ), "of the courses, bass to treble", set -> listed(set.hertz))
                    .fact(
                            "tensions",
                            listOf(ShopUnit.NEWTON),
                            "of a string of each; empty: not given",
                            set -> listed(set.tensions))
                    .fact(
                            "massesPerLength",
                            listOf(ShopUnit.GRAM_PER_METRE),
                            "of a string of each; empty: not given",
                            set -> listed(set.gramsPerMetre))
                    .fact("diameters", Kind.list(Kind.AMOUNT), "of a string of each; empty: not given", gauges)
                    .phrase("count", set -> set.inCourse == 1, "{courses} strings")
                    .phrase("count", "{courses} courses of {stringsPerCourse}")
                    .phrase(
                            "tuned",
                            set -> Arrays.stream(set.hertz).allMatch(f -> f < 1e6),
                            "{pitches:2 first 12 once}")
                    .phrase("tuned", "{pitches:first 12 once}")
                    .phrase("pull", set -> set.tensions.length == 0, "")
                    .phrase("pull", set -> isEven(set.tensions), ", {tensions:first 1} a string")
                    .phrase("pull", ", {tensions:first 12 once} a string")
                    .phrase("gauge", set -> set.diameters.length == 0, "")
                    .phrase("gauge", set -> isEven(set.diameters), ", {diameters:given first 1} thick")
                    .phrase("gauge", ", {diameters:given first 12 once} thick")
                    .finds("strings", "{count} at {tuned}{pull}{gauge}");
        }

        private static <Q extends Quantity<Q>> Kind<List<Double>> listOf(ShopUnit<Q> unit) {
            return Kind.list(Kind.house(unit));
        }

        private static List<Double> listed(double[] values) {
            return Arrays.stream(values).boxed().toList();
        }

        private static boolean isEven(double[] values) {
            return Arrays.stream(values).allMatch(value -> value == values[0]);
        }
    }

    private List<Amount<?>> gauges(ShopUnit<Length> unit) {
        return Arrays.stream(diameters)
                .<Amount<?>>mapToObj(mm -> Amount.ofHouse(mm, unit))
                .toList();
    }

    @Override
    public Form<StringSet> form() {
        return Sentences.FORM;
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
        return text(style());
    }
}
