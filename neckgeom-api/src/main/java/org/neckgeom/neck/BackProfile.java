package org.neckgeom.neck;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Branch;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;

/**
 * The back ({@index "neck profile"}, {@index "neck shape"}: C, D, V): the neck depth at two frets and the curve across.
 * Immutable.
 *
 * <p>The neck depth ({@index "neck thickness"}) runs from glue face to back, fingerboard not included, and is more than 0. It
 * is linear through the two frets, and beyond. Across, each side follows {@code |y/a|^p + |z/b|^p = 1}, a the half-width and
 * b the depth: p = 2 is half an ellipse, larger is fuller, smaller more pointed. Volute and heel transition add depth.
 * Defaults: 1st and 12th fret, rounded (p = 2). Source: the superellipse is a model; the four named powers are common practice.
 *
 * <pre>{@code
 * println(BackProfile.between(mm(14.5), mm(16.5)).rounded());
 * println(BackProfile.between(mm(14.5), mm(16.5)).flatBacked().atFrets(1, 10));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * back 14.5 mm deep at fret 1, 16.5 mm at fret 12, rounded
 * back 14.5 mm deep at fret 1, 16.5 mm at fret 10, flat-backed
 * }</pre>
 */
public final class BackProfile extends Noun<BackProfile> {

    /** Exponent of a rounded back: half an ellipse. */
    public static final double ROUNDED = 2;

    /** Exponent of a full back, with high shoulders. */
    public static final double FULL = 2.5;

    /** Exponent of a flat back with quick shoulders. */
    public static final double FLAT_BACKED = 3.5;

    /** Exponent of a pointed back, with a soft ridge on the middle. */
    public static final double POINTED = 1.5;

    /** Its keys. */
    public static final Table<BackProfile> TABLE =
            Table.of("back", "the back of the neck", BackProfile::new).printedBy(BackProfile::sentences);

    private static final Key<BackProfile, List<Depth>> DEPTHS = TABLE.needed(
                    "depths",
                    Types.list(Types.group(Depth.TABLE), 2, 2),
                    "depths of the neck at two frets, glue face to back, fingerboard not included")
            .called("depths of the back");
    private static final Key<BackProfile, Double> SHAPE =
            TABLE.usual("shape", Types.words(shapes()), ROUNDED, "curve across in a word. Default: rounded");
    private static final Key<BackProfile, List<Double>> CURVE = TABLE.optional(
                    "curve",
                    Types.list(Types.number(1, 20), 2, 2),
                    "exponents of the curve across, bass side, then treble side, instead of a word. 2: half an ellipse. More:"
                            + " fuller")
            .called("exponents of the two sides");
    private static final Key<BackProfile, Volute> VOLUTE =
            TABLE.optional("volute", Types.group(Volute.TABLE), "volute behind the nut. Default: none");
    private static final Key<BackProfile, HeelTransition> HEEL_TRANSITION = TABLE.optional(
            "heel transition",
            Types.group(HeelTransition.TABLE),
            "transition from the back to the heel. Default: the back runs straight on");

    static {
        TABLE.atMostOne(SHAPE, CURVE);
        TABLE.moved(Moves.none()
                .and("first depth, second depth, at frets -> depths", BackProfile::depthsWithFrets)
                .and("heel turn", "heel transition"));
    }

    /** Two depths, then their two frets, are two depths each with its fret. */
    private static Branch depthsWithFrets(Branch old) {
        if (!old.has("first depth") && !old.has("second depth") && !old.has("at frets")) {
            return old;
        }
        return old.moved("first depth", "depths[1].depth")
                .moved("second depth", "depths[2].depth")
                .moved("at frets[2]", "depths[2].fret")
                .moved("at frets[1]", "depths[1].fret")
                .with("depths[1].fret", 1)
                .with("depths[2].fret", 12);
    }

    /** The depth of the neck at a fret. */
    private static final class Depth extends Noun<Depth> {

        static final Table<Depth> TABLE =
                Table.of("depth of the back", "a depth at a fret", Depth::new).printedBy(Depth::sentences);

        static final Key<Depth, Integer> FRET = TABLE.needed(
                        "fret", Types.whole(0, 200), "fret of this depth. 0: the nut")
                .called("fret of the depth");
        static final Key<Depth, Amount<Length>> DEPTH = TABLE.needed(
                        "depth", Types.SIZE, "depth at this fret, glue face to back")
                .called("depth of the back");

        private Depth(Values<Depth> values) {
            super(values);
        }

        static Depth at(int fret, Quantity<Length> depth) {
            return new Depth(TABLE.values().with(FRET, fret).amount(DEPTH, depth));
        }

        int fret() {
            return values().at(FRET);
        }

        Amount<Length> depth() {
            return values().at(DEPTH);
        }

        private static Form<Depth> sentences() {
            return TABLE.facts("back-depth").finds("back-depth", "{depth} at fret {fret}");
        }
    }

    private final double firstDepth;
    private final double secondDepth;
    private final double firstFret;
    private final double secondFret;
    private final double bassPower;
    private final double treblePower;

    private BackProfile(Values<BackProfile> values) {
        super(inAWord(values));
        Depth first = values.at(DEPTHS).get(0);
        Depth second = values.at(DEPTHS).get(1);
        this.firstDepth = first.depth().libraryValue();
        this.secondDepth = second.depth().libraryValue();
        this.firstFret = first.fret();
        this.secondFret = second.fret();
        List<Double> curve = values.find(CURVE).orElseGet(() -> both(values.at(SHAPE)));
        this.bassPower = curve.get(0);
        this.treblePower = curve.get(1);
        if (!(secondFret > firstFret)) {
            throw values.refused(
                    DEPTHS, "ascending", "be at ascending frets", "at frets " + first.fret() + " and " + second.fret());
        }
    }

    private static Map<String, Double> shapes() {
        Map<String, Double> words = new LinkedHashMap<>();
        words.put("rounded", ROUNDED);
        words.put("full", FULL);
        words.put("flat-backed", FLAT_BACKED);
        words.put("pointed", POINTED);
        return words;
    }

    private static List<Double> both(double power) {
        return List.of(power, power);
    }

    /** A curve that has a word of its own is kept as the word. */
    private static Values<BackProfile> inAWord(Values<BackProfile> values) {
        if (values.has(CURVE) && !values.has(SHAPE)) {
            for (double power : shapes().values()) {
                if (values.at(CURVE).equals(both(power))) {
                    return values.without(CURVE).with(SHAPE, power);
                }
            }
        }
        return values;
    }

    /**
     * {@return a rounded back between two depths}
     *
     * @param first depth of the wood at the 1st fret, more than 0; its unit is the one answers are given in
     * @param second depth of the wood at the 12th fret, more than 0
     */
    public static BackProfile between(Quantity<Length> first, Quantity<Length> second) {
        return new BackProfile(TABLE.values().with(DEPTHS, List.of(Depth.at(1, first), Depth.at(12, second))));
    }

    /**
     * {@return this back with other depths at its two frets}
     *
     * @param first depth of the wood at the first fret, more than 0
     * @param second depth of the wood at the second fret, more than 0
     */
    public BackProfile depths(Quantity<Length> first, Quantity<Length> second) {
        List<Depth> old = values().at(DEPTHS);
        return new BackProfile(values().with(
                        DEPTHS,
                        List.of(
                                Depth.at(old.get(0).fret(), first),
                                Depth.at(old.get(1).fret(), second))));
    }

    /**
     * {@return this back with its depths at other frets}
     *
     * @param first 0 (the nut) or more
     * @param second more than the first, 200 or less
     */
    public BackProfile atFrets(int first, int second) {
        List<Depth> old = values().at(DEPTHS);
        return new BackProfile(values().with(
                        DEPTHS,
                        List.of(
                                Depth.at(first, old.get(0).depth()),
                                Depth.at(second, old.get(1).depth()))));
    }

    /**
     * {@return this back with a volute behind the nut}
     *
     * @param volute the volute
     */
    public BackProfile volute(Volute volute) {
        return new BackProfile(values().with(VOLUTE, volute));
    }

    /**
     * {@return this back with its heel transition (heel curve)}
     *
     * @param transition the transition
     */
    public BackProfile heelTransition(HeelTransition transition) {
        return new BackProfile(values().with(HEEL_TRANSITION, transition));
    }

    /** {@return this back rounded: half an ellipse} */
    public BackProfile rounded() {
        return power(ROUNDED);
    }

    /** {@return this back full, with high shoulders} */
    public BackProfile full() {
        return power(FULL);
    }

    /** {@return this back flat, with quick shoulders} */
    public BackProfile flatBacked() {
        return power(FLAT_BACKED);
    }

    /** {@return this back pointed, with a soft ridge on the middle} */
    public BackProfile pointed() {
        return power(POINTED);
    }

    /**
     * {@return this back with an exponent of its own}
     *
     * @param p in [1, 20]: 1 is a wedge, 2 half an ellipse, 20 nearly a box
     */
    public BackProfile power(double p) {
        return asymmetric(p, p);
    }

    /**
     * {@return this back with another shape on each side; the two meet on the centreline, at the full depth}
     *
     * @param bass exponent on the bass side, in [1, 20]
     * @param treble exponent on the treble side, in [1, 20]
     */
    public BackProfile asymmetric(double bass, double treble) {
        return new BackProfile(values().without(SHAPE).with(CURVE, List.of(bass, treble)));
    }

    /** {@return the depth of the wood at the first of its two frets, in mm; more than 0} */
    public double firstDepthMm() {
        return firstDepth;
    }

    /** {@return the depth of the wood at the second of its two frets, in mm; more than 0} */
    public double secondDepthMm() {
        return secondDepth;
    }

    /** {@return the fret of the first depth; 0 or more} */
    public double firstFret() {
        return firstFret;
    }

    /** {@return the fret of the second depth; more than the first} */
    public double secondFret() {
        return secondFret;
    }

    /** {@return the exponent on the bass side, y &lt; 0; in [1, 20]} */
    public double bassPower() {
        return bassPower;
    }

    /** {@return the exponent on the treble side, y &gt; 0; in [1, 20]} */
    public double treblePower() {
        return treblePower;
    }

    /** {@return the volute; the volute, or nothing for a back without one} */
    public Optional<Volute> volute() {
        return values().find(VOLUTE);
    }

    /** {@return the heel transition; the transition, or nothing where the back runs straight on} */
    public Optional<HeelTransition> heelTransition() {
        return values().find(HEEL_TRANSITION);
    }

    /**
     * {@return the depth at a station without volute and heel: linear through the two frets' stations; depth in mm; may
     * be 0 or less far outside the two frets}
     *
     * @param xMm station in mm
     * @param scale the scale the frets belong to
     */
    public double depthAtMm(double xMm, Scale scale) {
        double from = Objects.requireNonNull(scale, "scale").fretMm(firstFret);
        double to = scale.fretMm(secondFret);
        return firstDepth + (secondDepth - firstDepth) * (LibraryUnits.stationMm(xMm) - from) / (to - from);
    }

    private static Form<BackProfile> sentences() {
        return sentences("back ");
    }

    /** With a title before them, or none for the row of a neck. */
    static Form<BackProfile> sentences(String title) {
        Form<BackProfile> form = TABLE.facts("back")
                .fact("depthAtFirst", Kind.MM, "at the first fret", BackProfile::firstDepthMm)
                .fact("depthAtSecond", Kind.MM, "at the second fret", BackProfile::secondDepthMm)
                .fact("firstFret", Kind.WHOLE, "where the first depth is; 0: the nut", BackProfile::firstFret)
                .fact("secondFret", Kind.WHOLE, "where the second depth is", BackProfile::secondFret)
                .fact("bassExponent", Kind.RATIO, "2: half an ellipse; larger: fuller", BackProfile::bassPower)
                .fact("trebleExponent", Kind.RATIO, "the same on the treble side", BackProfile::treblePower);
        form = shape(shape(form, "bass", BackProfile::bassPower), "treble", BackProfile::treblePower);
        return form.phrase("curved", back -> back.bassPower == back.treblePower, "{bass}")
                .phrase("curved", "{bass} on the bass side, {treble} on the treble side")
                .finds(
                        "back",
                        title
                                + "{depthAtFirst} deep at fret {firstFret}, {depthAtSecond} at fret {secondFret}, {curved}");
    }

    private static Form<BackProfile> shape(
            Form<BackProfile> form, String side, ToDoubleFunction<BackProfile> exponent) {
        Form<BackProfile> shaped = form;
        for (Map.Entry<String, Double> shape : shapes().entrySet()) {
            double power = shape.getValue();
            shaped = shaped.phrase(side, back -> exponent.applyAsDouble(back) == power, shape.getKey());
        }
        return shaped.phrase(side, "exponent {" + side + "Exponent}");
    }
}
