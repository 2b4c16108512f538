package org.neckgeom.neck;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.BiFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LinearDensity;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * The strings, from bass to treble: pitch, string tension and diameter of each course, such as
 * {@code 4 courses of 2, 95 N a string}. Immutable.
 *
 * <p>Each course has a pitch. Its tension is given in newtons, or follows from linear density or plain-wire diameter
 * (Mersenne's law). All are more than 0. Default: single courses.
 *
 * <pre>{@code
 * println(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4")).doubled().tensions(newton(95)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * 4 courses of 2 at 98.00, 146.83, 220.00, 329.63 Hz, 95 N a string
 * }</pre>
 */
public final class StringSet extends Noun<StringSet> {

    private static final String[] NOTES = {"C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"};

    private static final int MOST = 24;

    /** Diameter in mm up to which a steel string given by its diameter alone is plain: common practice for steel guitar strings. */
    public static final double THICKEST_PLAIN_MM = 0.55;

    /** Mass of a solid string of the heaviest listed materials, nickel and copper (8908 and 8920 kg/m3), over one of steel. */
    private static final double HEAVIEST = 1.14;

    /** Its keys. */
    public static final Table<StringSet> TABLE =
            Table.of("strings", "the strings", StringSet::new).printedBy(StringSet::sentences);

    private static final Key<StringSet, List<Amount<Frequency>>> PITCHES = TABLE.needed(
                    "pitches",
                    Types.list(
                            Types.text(
                                    "a note with its octave, such as G2, F#3 or Bb1 (A4 is 440 Hz)",
                                    StringSet::pitch,
                                    StringSet::note,
                                    new TreeMap<>(Map.of("type", "string", "pattern", "^[A-G][#b]?-?[0-9]+$|Hz$"))),
                            1,
                            MOST),
                    "notes of the courses, from bass to treble")
            .called("pitches");
    private static final Key<StringSet, Boolean> DOUBLED =
            TABLE.usual("doubled", Types.YES_OR_NO, false, "whether each course has two strings. Default: no");
    private static final Key<StringSet, List<Amount<Force>>> TENSIONS = TABLE.optional(
                    "tensions",
                    Types.oneOrMore(Types.FORCE.moreThan(ShopUnits.newton(0)).atMost(ShopUnits.newton(2000)), MOST),
                    "tension of a single string: one for all, or one for each course")
            .called("string tension");
    private static final Key<StringSet, List<Amount<LinearDensity>>> MASSES = TABLE.optional(
                    "linear densities",
                    Types.oneOrMore(Types.LINEAR_DENSITY.moreThan(ShopUnits.gramPerMetre(0)), MOST),
                    "linear density of a single string, as printed for wound strings: one for all, or one for each course")
            .called("linear density");
    private static final Key<StringSet, List<Amount<Length>>> DIAMETERS = TABLE.optional(
                    "diameters",
                    Types.oneOrMore(
                            Types.LENGTH
                                    .moreThan(ShopUnits.mm(0))
                                    .atMost(ShopUnits.mm(6))
                                    .suchAs("0.43 mm or 17 thou"),
                            MOST),
                    "diameter of a single string: one for all, or one for each course")
            .called("string diameter");
    private static final Key<StringSet, List<StringMaterial>> MATERIALS = TABLE.optional(
            "materials",
            Types.oneOrMore(Types.words(StringMaterial.class, StringMaterial::toString), MOST),
            "material of a plain string or of the core: one for all, or one for each course. Default: steel");
    private static final Key<StringSet, List<Amount<Length>>> CORES = TABLE.optional(
                    "cores",
                    Types.oneOrMore(
                            Types.LENGTH
                                    .atLeast(ShopUnits.mm(0))
                                    .atMost(ShopUnits.mm(6))
                                    .suchAs("0.45 mm or 18 thou"),
                            MOST),
                    "core diameter of a wound string, 0 mm for a plain one: one for all, or one for each course")
            .called("core diameter");
    private static final Key<StringSet, List<StringMaterial>> WRAPS = TABLE.optional(
            "wraps",
            Types.oneOrMore(Types.words(StringMaterial.class, StringMaterial::toString), MOST),
            "material of the wrap round a core, one close layer: one for all, or one for each course");
    private static final Key<StringSet, Across> ACROSS =
            TABLE.optional("across", Types.group(Across.TABLE), "string spacing. Default: not planned");

    static {
        TABLE.moved(Moves.none().and("masses per length", "linear densities"));
        TABLE.together(CORES, WRAPS);
    }

    private final double[] hertz;
    private final int inCourse;
    private final double[] tensions;
    private final double[] gramsPerMetre;
    private final double[] diameters;
    private final double[] cores;
    private final List<StringMaterial> materials;
    private final List<StringMaterial> wraps;

    private StringSet(Values<StringSet> values) {
        super(once(once(once(values, TENSIONS), MASSES), DIAMETERS));
        this.hertz = each(PITCHES);
        this.inCourse = values.at(DOUBLED) ? 2 : 1;
        this.tensions = each(TENSIONS);
        this.gramsPerMetre = each(MASSES);
        this.diameters = each(DIAMETERS);
        this.cores = each(CORES);
        this.materials = eachOf(MATERIALS);
        this.wraps = eachOf(WRAPS);
        checkBuild();
        for (double pitch : hertz) {
            if (!(pitch > 0)) {
                throw values.refused(PITCHES, "more-than", "be more than 0 Hz", ShopUnits.hertz(pitch));
            }
        }
        Optional<Across> across = values.find(ACROSS);
        if (across.isPresent() && diameters.length == 0) {
            throw Refusal.because(
                    DIAMETERS.name(), "missing", "strings spread across need their diameters, but have none");
        }
        if (across.isPresent() && inCourse > 1 && across.get().inPair().isEmpty()) {
            throw Refusal.because(ACROSS + ".in pair", "missing", "in pair is missing; doubled strings need it");
        }
    }

    /** What is the same for all courses is kept once. */
    private static <Q extends Quantity<Q>> Values<StringSet> once(
            Values<StringSet> values, Key<StringSet, List<Amount<Q>>> key) {
        List<Amount<Q>> all = values.find(key).orElse(List.of());
        boolean isCounted = all.size() == values.find(PITCHES).map(List::size).orElse(0);
        return isCounted && all.size() > 1 && all.stream().distinct().count() == 1
                ? values.with(key, all.subList(0, 1))
                : values;
    }

    /** A core lies inside its string, and no string is heavier than solid metal of the heaviest kind. */
    private void checkBuild() {
        if (cores.length > 0 && diameters.length == 0) {
            throw Refusal.because(
                    DIAMETERS.name(), "missing", "strings with cores need their diameters, but have none");
        }
        for (int i = 0; i < hertz.length; i++) {
            if (cores.length > 0 && !(cores[i] < diameters[i])) {
                throw Refusal.of(
                        CORES.name(),
                        "less-than",
                        "be less than " + length(diameters[i]) + ", the diameter of string " + (i + 1),
                        length(cores[i]));
            }
            double heaviest = diameters.length == 0
                    ? Double.POSITIVE_INFINITY
                    : HEAVIEST * 1000 * StringMaterial.STEEL.plainKgPerM(diameters[i]);
            if (gramsPerMetre.length > 0 && gramsPerMetre[i] > heaviest) {
                throw Refusal.of(
                        MASSES.name(),
                        "too-heavy",
                        "be " + Numbers.plain(Math.floor(10 * heaviest) / 10) + " g/m or less for string " + (i + 1)
                                + " of " + length(diameters[i]) + ", as heavy as solid nickel",
                        Numbers.plain(gramsPerMetre[i]) + " g/m");
            }
        }
    }

    private String length(double mm) {
        return Amount.ofLibrary(mm, diameters().get(0).unit()).toString();
    }

    private List<StringMaterial> eachOf(Key<StringSet, List<StringMaterial>> key) {
        List<StringMaterial> given = values().find(key).orElse(List.of());
        requireAsMany(key, given.size());
        return given.size() == 1 ? Collections.nCopies(courses(), given.get(0)) : given;
    }

    private <Q extends Quantity<Q>> double[] each(Key<StringSet, List<Amount<Q>>> key) {
        List<Amount<Q>> given = values().find(key).orElse(List.of());
        requireAsMany(key, given.size());
        double[] values = new double[given.isEmpty() ? 0 : values().at(PITCHES).size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = given.get(given.size() == 1 ? 0 : i).libraryValue();
        }
        return values;
    }

    private void requireAsMany(Key<StringSet, ?> key, int given) {
        int courses = values().at(PITCHES).size();
        if (given > 1 && given != courses) {
            throw Refusal.of(
                    key.name(),
                    "as-many",
                    "be given once for all or once for each of the " + courses + " courses",
                    "was",
                    "given " + given + " times");
        }
    }

    /** A note, or a frequency for a string tuned to none. */
    private static Amount<Frequency> pitch(String text) {
        return text.endsWith("Hz") ? ShopUnits.parse(text, Frequency.class) : ShopUnits.pitch(text);
    }

    private static String note(Amount<Frequency> pitch) {
        double steps = 69 + 12 * StrictMath.log(pitch.libraryValue() / 440) / StrictMath.log(2);
        int step = (int) Math.rint(steps);
        int octave = Math.floorDiv(step, 12) - 1;
        String note = NOTES[Math.floorMod(step, 12)] + octave;
        boolean isOne = Math.abs(octave) <= 9 && ShopUnits.pitch(note).libraryValue() == pitch.libraryValue();
        return isOne
                ? note
                : Amount.ofLibrary(pitch.libraryValue(), ShopUnit.HERTZ).lossless();
    }

    private static <Q extends Quantity<Q>> List<Amount<Q>> amounts(List<? extends Quantity<Q>> given, Key<?, ?> key) {
        return Objects.requireNonNull(given, key.name()).stream()
                .<Amount<Q>>map(one -> Amount.from(one, key.name()))
                .toList();
    }

    private <Q extends Quantity<Q>> StringSet with(Key<StringSet, List<Amount<Q>>> key, Quantity<Q>[] given) {
        return new StringSet(values().with(
                        key, amounts(Arrays.asList(Objects.requireNonNull(given, key.name())), key)));
    }

    /**
     * {@return single strings tuned to pitches}
     *
     * @param pitches one or more, from bass to treble as they lie, each more than 0
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read, into a list
    public static StringSet of(Quantity<Frequency>... pitches) {
        return of(Arrays.asList(Objects.requireNonNull(pitches, "pitches")));
    }

    /**
     * {@return single strings tuned to pitches}
     *
     * @param pitches 1 to 24, from bass to treble as they lie, each more than 0
     */
    public static StringSet of(List<? extends Quantity<Frequency>> pitches) {
        return new StringSet(TABLE.values().with(PITCHES, amounts(pitches, PITCHES)));
    }

    /** {@return these strings in pairs: two to each course} */
    public StringSet doubled() {
        return new StringSet(values().with(DOUBLED, true));
    }

    /**
     * {@return these strings with the tension of each single string given}
     *
     * @param pulls one for all, or one to each course from bass to treble, each more than 0
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read, into a list
    public final StringSet tensions(Quantity<Force>... pulls) {
        return with(TENSIONS, pulls);
    }

    /**
     * {@return these strings with the linear density of each single string given, as printed for wrapped strings}
     *
     * @param masses one for all, or one to each course from bass to treble, each more than 0
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read, into a list
    public final StringSet linearDensities(Quantity<LinearDensity>... masses) {
        return with(MASSES, masses);
    }

    /**
     * {@return these strings with the diameter of each single string given}
     *
     * @param gauges one for all, or one to each course from bass to treble, each more than 0
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read, into a list
    public final StringSet diameters(Quantity<Length>... gauges) {
        return with(DIAMETERS, gauges);
    }

    /**
     * {@return these strings of a material each; that of a plain string or of the core; steel where not given}
     *
     * @param each one for all, or one to each course from bass to treble
     */
    public StringSet materials(StringMaterial... each) {
        Objects.requireNonNull(each, MATERIALS.name());
        List<StringMaterial> all = Arrays.stream(each)
                .map(one -> Objects.requireNonNull(one, MATERIALS.name()))
                .toList();
        return new StringSet(values().with(MATERIALS, all));
    }

    /**
     * {@return these strings with cores under one close layer of round wire; how heavy they are then follows}
     *
     * @param wrap what the wire is made of
     * @param diameters of the cores, one for all or one to each course from bass to treble, each less than the string's
     *     diameter; 0 for a plain string
     */
    @SafeVarargs
    @SuppressWarnings("varargs") // only read, into a list
    public final StringSet cores(StringMaterial wrap, Quantity<Length>... diameters) {
        return new StringSet(values().with(WRAPS, List.of(Objects.requireNonNull(wrap, "wrap")))
                .with(CORES, amounts(Arrays.asList(Objects.requireNonNull(diameters, CORES.name())), CORES)));
    }

    /**
     * {@return these strings spread across nut and saddle}
     *
     * @param spread how
     */
    public StringSet across(Across spread) {
        return new StringSet(values().with(ACROSS, spread));
    }

    /** {@return how the strings are spread; how, or nothing when it was not given} */
    public Optional<Across> across() {
        return values().find(ACROSS);
    }

    /**
     * {@return the distance between the outermost strings' centres, where their outer edges lie a span apart, in mm}
     *
     * @param spanMm from outer edge to outer edge, in mm
     */
    double spreadMm(double spanMm) {
        return hertz.length == 1
                ? across().flatMap(Across::inPair)
                        .filter(pair -> inCourse > 1)
                        .map(Amount::libraryValue)
                        .orElse(0.0)
                : spanMm - (diameters[0] + diameters[diameters.length - 1]) / 2;
    }

    /** {@return the number of courses; 1 or more} */
    public int courses() {
        return hertz.length;
    }

    /** {@return the number of strings to a course; 1 or 2} */
    public int inCourse() {
        return inCourse;
    }

    /** {@return the pitches in Hz, from bass to treble; one to a course} */
    public double[] pitchesHz() {
        return hertz.clone();
    }

    /** {@return the tension of a single string of each course in N, where given; one to a course, or empty} */
    public double[] tensionsN() {
        return tensions.clone();
    }

    /** {@return the material of a plain string or the core of each course, from bass to treble} */
    public List<StringMaterial> materials() {
        return materials.isEmpty() ? Collections.nCopies(courses(), StringMaterial.STEEL) : materials;
    }

    /** {@return the core diameter of a single string of each course in mm, 0 for a plain one; one to a course, or empty} */
    public double[] coresMm() {
        return cores.clone();
    }

    /**
     * {@return the linear density of a single string of a course, in g/m: as given, or of its core with its wrap, or of a plain
     * string of its diameter and material; nothing where it is not known}
     *
     * <p>A steel string given by its diameter alone is plain up to 0.55 mm (common practice); a thicker one is wound, and its
     * mass not known.
     *
     * @param course 0 for the one farthest on the bass side
     */
    public OptionalDouble gramPerMetre(int course) {
        if (course < 0 || course >= hertz.length) {
            throw Refusal.of("course", "range", "be between 0 and " + (hertz.length - 1), course);
        }
        if (gramsPerMetre.length > 0) {
            return OptionalDouble.of(gramsPerMetre[course]);
        }
        if (diameters.length == 0) {
            return OptionalDouble.empty();
        }
        StringMaterial material = materials().get(course);
        if (cores.length > 0 && cores[course] > 0) {
            double wire = (diameters[course] - cores[course]) / 2;
            return OptionalDouble.of(1000 * material.woundKgPerM(cores[course], wraps.get(course), wire));
        }
        boolean isPlain = cores.length > 0 || !materials.isEmpty() || diameters[course] <= THICKEST_PLAIN_MM;
        return isPlain ? OptionalDouble.of(1000 * material.plainKgPerM(diameters[course])) : OptionalDouble.empty();
    }

    /**
     * {@return the linear density of a single string of each course in g/m, where given; one to a course, or empty}
     */
    public double[] linearDensitiesGramPerMetre() {
        return gramsPerMetre.clone();
    }

    /** {@return the diameter of a single string of each course in mm, where given; one to a course, or empty} */
    public double[] diametersMm() {
        return diameters.clone();
    }

    /**
     * {@return the diameters of a single string of each course, from bass to treble, in the unit they were given in;
     * empty when not given}
     */
    public List<Amount<Length>> diameters() {
        List<Amount<Length>> given = values().find(DIAMETERS).orElse(List.of());
        return given.size() == 1 ? Collections.nCopies(courses(), given.get(0)) : given;
    }

    private List<Amount<?>> gauges(ShopUnit<Length> unit) {
        return Arrays.stream(diameters)
                .<Amount<?>>mapToObj(mm -> Amount.ofLibrary(mm, unit))
                .toList();
    }

    private static Form<StringSet> sentences() {
        return sentences((set, style) -> set.gauges(
                set.diameters.length > 0 && style == set.style()
                        ? set.diameters().get(0).unit()
                        : style.inTables().unit()));
    }

    /** The same with diameters in the unit of the neck, for a row of it. */
    static Form<StringSet> inNeck() {
        return sentences((set, style) -> set.gauges(style.inTables().unit()));
    }

    private static Form<StringSet> sentences(BiFunction<StringSet, LengthStyle, List<Amount<?>>> gauges) {
        return TABLE.facts("strings")
                .fact("courses", Kind.WHOLE, "strings, where single", StringSet::courses)
                .fact("stringsPerCourse", Kind.WHOLE, "1 or 2", StringSet::inCourse)
                .fact(
                        "frequencies",
                        Kind.list(Kind.libraryValue(ShopUnit.HERTZ)),
                        "of the courses, bass to treble",
                        set -> Arrays.stream(set.hertz).boxed().toList())
                .fact("gauges", Kind.list(Kind.AMOUNT), "diameter of a string of each; empty: not given", gauges)
                .phrase("count", set -> set.inCourse == 1, "{courses} strings")
                .phrase("count", "{courses} courses of {stringsPerCourse}")
                .phrase(
                        "tuned",
                        set -> Arrays.stream(set.hertz).allMatch(f -> f < 1e6),
                        "{frequencies:2 first 12 once}")
                .phrase("tuned", "{frequencies:first 12 once}")
                .phrase("pull", set -> isEven(set.tensions), ", {tensions:first 1} a string")
                .phrase("pull", ", {tensions:first 12 once} a string")
                .phrase("gauge", set -> set.diameters.length == 0, "")
                .phrase("gauge", set -> isEven(set.diameters), ", {gauges:given first 1} thick")
                .phrase("gauge", ", {gauges:given first 12 once} thick")
                .finds("strings", "{count} at {tuned}{pull}{gauge}");
    }

    private static boolean isEven(double[] values) {
        return Arrays.stream(values).allMatch(value -> value == values[0]);
    }
}
