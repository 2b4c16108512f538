package org.neckgeom.neck;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.stock.Wood;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * A neck as designed: name, scale, fingerboard and back, and the parts given so far. Immutable.
 *
 * <p>Scale, fingerboard and back come first, in this order. Every other part may be given in any order; its accessor returns
 * an {@link Optional}. Defaults: 20 frets, the body joint at the 12th. A question that needs a missing part throws
 * {@code IllegalArgumentException} and names the part.
 *
 * <p>Stations count from the nut line along the centreline, positive toward the body.
 *
 * <pre>{@code
 * var neck = Neck.named("Practice neck").scale(mm(560)).
 *     fingerboard(Fingerboard.tapered(mm(34), mm(46))).
 *     back(BackProfile.between(mm(14.5), mm(16.5))).
 *     trussRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))).
 *     bodyAtFret(14);
 * println(neck);
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Practice neck
 *   scale        560 mm, 20 frets, body at fret 14
 *   fingerboard  34 mm at the nut, 46 mm at the body joint, 6 mm thick, flat
 *   back         14.5 mm deep at fret 1, 16.5 mm at fret 12, rounded
 *   truss rod    two-way rod, 300 mm x 6 mm x 9 mm, adjusted at the head
 *   channel      0 mm to 300 mm from the nut, 6 mm wide, 9 mm deep
 * }</pre>
 */
public final class Neck extends Noun<Neck> {

    private static final double SCALE_TOLERANCE_MM = 0.02;
    private static final int MOST_FRETS = 200;
    private static final int MOST_STRIPS = 15;

    /** Its keys. */
    public static final Table<Neck> TABLE = Table.of("", "a neck", Neck::new).printedBy(Neck::sentences);

    private static final Key<Neck, String> NAME = TABLE.needed(
            "name", Types.named(name -> Words.name(name, "a neck's name"), name -> name), "name of the neck");
    private static final Key<Neck, Amount<Length>> SCALE = TABLE.neededLike(Scale.LENGTH);
    private static final Key<Neck, Integer> DIVISIONS = TABLE.optionalLike(Scale.DIVISIONS);
    private static final Key<Neck, Integer> FRETS =
            TABLE.usual("frets", Types.whole(1, MOST_FRETS), 20, "number of frets");
    private static final Key<Neck, Fan> FAN = TABLE.optional(
            "fanned frets",
            Types.group(Fan.TABLE),
            "frets fanned between two scale lengths. The scale on the centreline then follows. Default: not fanned");
    private static final Key<Neck, Integer> BODY_AT_FRET =
            TABLE.usual("body at fret", Types.whole(1, MOST_FRETS), 12, "fret at the body joint");
    private static final Key<Neck, Wood> WOOD = TABLE.optional(
            "wood", Wood.TYPE, "wood of the neck. Default: that of the middle strip where laminated, else not known");
    private static final Key<Neck, Fingerboard> FINGERBOARD = TABLE.needed(
            "fingerboard", Types.group(Fingerboard.TABLE, () -> Fingerboard.sentences("")), "fingerboard (fretboard)");
    private static final Key<Neck, BackProfile> BACK =
            TABLE.needed("back", Types.group(BackProfile.TABLE, () -> BackProfile.sentences("")), "back of the neck");
    private static final Key<Neck, Channel> CHANNEL = TABLE.inlineOptional(Channel.TABLE);
    private static final Key<Neck, Bars> BARS = TABLE.optional(
            "bars",
            Types.group(Bars.TABLE),
            "two stiffening bars glued in beside the middle, with or without a truss rod. Default: none");
    private static final Key<Neck, List<Strip>> STRIPS = TABLE.optional(
            "laminated",
            Types.list(Types.group(Strip.TABLE), 2, MOST_STRIPS),
            "strips of a laminated shaft, from the bass side to the treble side. Default: one piece");
    private static final Key<Neck, Amount<Length>> ANCHOR = TABLE.optional(
            "string anchor",
            Types.SIZE,
            "headless neck: length of the wood past the nut line that carries the string anchor. Common practice: 15 to 30 mm");
    private static final Key<Neck, Integer> ANCHOR_SCREWS = TABLE.optional(
            "anchor screws",
            Types.whole(1, 12),
            "headless neck: number of screws that hold the string anchor. Default: not known");
    private static final Key<Neck, Head> HEAD = TABLE.optional(
            "head", Types.group(Head.TABLE, () -> Head.sentences("")), "head (headstock). Default: not planned");
    private static final Key<Neck, Heel> HEEL =
            TABLE.optional("heel", Types.group(Heel.TABLE, () -> Heel.sentences("")), "heel. Default: not planned");
    private static final Key<Neck, NeckSet> NECK_SET = TABLE.optional(
            "neck set", Types.group(NeckSet.TABLE), "the neck's place and angle on the body. Default: not planned");
    private static final Key<Neck, StringSet> STRINGS = TABLE.optional(
            "strings", Types.group(StringSet.TABLE, StringSet::inNeck), "strings. Default: no string load");

    static {
        TABLE.moved(Moves.none().and("scarf", "head.scarf"));
        TABLE.unless(SCALE, FAN);
        TABLE.atMostOne(WOOD, STRIPS);
    }

    /** The keys that must be given of a neck before it can be planned, besides those that every neck has. */
    public static final List<Key<Neck, ?>> OF_A_WHOLE_NECK = List.of(FRETS, BODY_AT_FRET, CHANNEL);

    /** Made on the first question: most steps on the way to a neck ask none. */
    private final @Nullable Scale[] scale = new Scale[1];

    private Neck(Values<Neck> values) {
        super(withoutScaleOfFan(values));
        refuseTwoEnds();
        refuseHiddenAdjuster();
        refuseBars();
    }

    /** A headless neck has neither head nor what belongs to one. */
    private void refuseTwoEnds() {
        if (values().has(ANCHOR) && values().has(HEAD)) {
            throw Refusal.because(
                    HEAD.name(),
                    "headless",
                    "a neck with a string anchor is headless: it has no head, no wings, no veneers and no scarf. Leave the head"
                            + " or the string anchor out");
        }
        if (values().has(ANCHOR_SCREWS) && !values().has(ANCHOR)) {
            throw Refusal.because(
                    ANCHOR_SCREWS.name(),
                    "headless",
                    "anchor screws hold a string anchor, but no string anchor is given");
        }
    }

    /** Behind the nut the middle web of a slotted head is solid: what turns the rod needs a way through it. */
    private void refuseHiddenAdjuster() {
        Optional<Head> slotted = head().filter(Head::hasSlots);
        Optional<Channel> adjusted = channel()
                .filter(channel ->
                        channel.rod().filter(rod -> rod.adjuster() == End.HEAD).isPresent());
        if (slotted.isEmpty() || adjusted.isEmpty()) {
            return;
        }
        Channel channel = adjusted.get();
        if (!(channel.startMm() < 0)) {
            throw Refusal.because(
                    "truss rod.adjuster",
                    "covered",
                    "the middle web of the slotted head covers an adjuster at the head: put the adjuster at the heel, or begin the"
                            + " channel before the nut line, in the web");
        }
        double wide = channel.widthAtMm(channel.startMm());
        if (!(wide < slotted.get().slotWebMm())) {
            throw Refusal.of(
                    "head.slot aside",
                    "more-than",
                    "leave a middle web wider than " + style().brief(wide) + ", the channel in it",
                    style().brief(slotted.get().slotWebMm()));
        }
    }

    /** Two bars have their places, outside the channel and inside the neck. */
    private void refuseBars() {
        if (!values().has(BARS)) {
            return;
        }
        Bars bars = values().at(BARS);
        double joint = bodyJointMm();
        Channel own = bars.channel();
        for (double x : sharedStations(own, joint)) {
            double aside = bars.asideMm(x, joint);
            double half = own.widthMm() / 2;
            double middle = channel().map(channel -> channel.widthAtMm(x) / 2).orElse(0.0);
            if (!(aside - half > middle && aside + half < halfWidthAtMm(x))) {
                throw Refusal.of(
                        BARS + "." + (x == own.startMm() ? "aside" : "far aside"),
                        "range",
                        "be from " + style().brief(middle + half) + " to " + style().brief(halfWidthAtMm(x) - half)
                                + " at " + style().brief(x)
                                + " from the nut, between the middle channel and the neck's edge",
                        style().brief(aside));
            }
        }
    }

    /** The stations at which bars that lie straight can be nearest to the middle channel or to the neck's edge. */
    private double[] sharedStations(Channel own, double joint) {
        double end = Math.min(own.endMm(), joint);
        DoubleStream ofTheChannel = channel().stream()
                .flatMapToDouble(channel -> DoubleStream.of(
                        channel.startMm(),
                        channel.endMm(),
                        channel.adjusterPocketStartMm(),
                        channel.adjusterPocketStartMm() + channel.adjusterPocketLengthMm()));
        return DoubleStream.concat(DoubleStream.of(own.startMm(), end), ofTheChannel)
                .filter(x -> x >= own.startMm() && x <= end)
                .toArray();
    }

    private static Scale scaleOf(Values<Neck> values) {
        Amount<Length> length = values.has(FAN) ? centreline(values) : values.at(SCALE);
        return Scale.of(length).divisions(values.at(DIVISIONS));
    }

    /** The scale on the centreline between fanned frets. */
    private static Amount<Length> centreline(Values<Neck> values) {
        Across across = values.find(STRINGS)
                .flatMap(StringSet::across)
                .orElseThrow(() -> Refusal.because(
                        FAN.name(),
                        "missing",
                        "fanned frets are given, but not the string spacing: give strings.across"));
        StringSet strings = values.at(STRINGS);
        double atNut =
                values.at(FINGERBOARD).nutWidthMm() - 2 * across.edgeMargin().libraryValue();
        double mm = values.at(FAN)
                .centrelineScaleMm(
                        strings.spreadMm(atNut),
                        strings.spreadMm(across.spanAtSaddle().libraryValue()));
        return values.at(FAN).style().amount(mm);
    }

    /** A scale beside a fan is held to the fan's own and then dropped: it follows from the fan. */
    private static Values<Neck> withoutScaleOfFan(Values<Neck> values) {
        if (!values.has(FAN)) {
            return values;
        }
        double follows = centreline(values.complete()).libraryValue();
        if (!values.has(SCALE)) {
            return values;
        }
        Amount<Length> given = values.at(SCALE);
        if (!(Math.abs(given.libraryValue() - follows) <= SCALE_TOLERANCE_MM)) {
            throw values.refused(
                    SCALE,
                    "same-scale",
                    "be " + LengthStyle.of(given).brief(follows) + ", that of the fanned frets on the centreline",
                    given);
        }
        return values.without(SCALE);
    }

    /**
     * Begins a neck.
     *
     * @param name what the maker calls it, not blank, up to 100 characters
     * @return what needs a scale or a fan, then a fingerboard, then a back to be a neck
     */
    public static Named named(String name) {
        return new Begun(TABLE.values().with(NAME, Words.name(name, "a neck's name")));
    }

    /** A neck of which only the name is known. */
    public sealed interface Named {

        /**
         * {@return the neck with a scale divided in twelve}
         *
         * @param length more than 0; its unit is the one answers are given in
         */
        default NeedsFingerboard scale(Quantity<Length> length) {
            return scale(Scale.of(length));
        }

        /**
         * {@return the neck with a scale}
         *
         * @param scale the scale
         */
        NeedsFingerboard scale(Scale scale);

        /**
         * {@return the neck with frets fanned between two scales} Its own scale is the one on their centreline, which
         * follows from the fan, the fingerboard's width and how the strings are spread.
         *
         * @param fan the fan
         * @param strings the strings, with how they are spread across
         */
        NeedsFingerboard fannedFrets(Fan fan, StringSet strings);
    }

    /** A neck that needs a fingerboard and a back. */
    public sealed interface NeedsFingerboard {

        /**
         * {@return the neck with its fingerboard}
         *
         * @param board the fingerboard
         */
        NeedsBack fingerboard(Fingerboard board);
    }

    /** A neck that needs a back. */
    public sealed interface NeedsBack {

        /**
         * {@return the neck}
         *
         * @param profile the shape of its back
         * @throws IllegalArgumentException if frets are fanned and the strings are not spread across
         */
        Neck back(BackProfile profile);
    }

    private record Begun(Values<Neck> values) implements Named, NeedsFingerboard, NeedsBack {

        @Override
        public NeedsFingerboard scale(Scale scale) {
            return new Begun(withScale(values, scale));
        }

        @Override
        public NeedsFingerboard fannedFrets(Fan fan, StringSet strings) {
            return new Begun(values.with(FAN, fan).with(STRINGS, strings));
        }

        @Override
        public NeedsBack fingerboard(Fingerboard board) {
            return new Begun(values.with(FINGERBOARD, board));
        }

        @Override
        public Neck back(BackProfile profile) {
            return new Neck(values.with(BACK, profile));
        }

        /** Returns such as {@code neck "bench neck", not all of it given yet}. */
        @Override
        public String toString() {
            return "neck \"" + values.at(NAME) + "\", not all of it given yet";
        }
    }

    private static Values<Neck> withScale(Values<Neck> values, Scale scale) {
        return values.with(SCALE, Objects.requireNonNull(scale, "scale").length())
                .with(DIVISIONS, scale.divisions());
    }

    /**
     * {@return this design with a scale divided in twelve; with fanned frets only that on their centreline}
     *
     * @param length more than 0
     */
    public Neck scale(Quantity<Length> length) {
        return scale(Scale.of(length));
    }

    /**
     * {@return this design with a scale; with fanned frets only that on their centreline}
     *
     * @param newScale the scale
     */
    public Neck scale(Scale newScale) {
        return new Neck(withScale(values(), newScale));
    }

    /**
     * {@return this design with frets fanned between two scales, which give its scale}
     *
     * @param newFan the fan
     * @throws IllegalArgumentException if the strings are not spread across, or the scale given is not the fan's
     */
    public Neck fannedFrets(Fan newFan) {
        return with(FAN, newFan);
    }

    /**
     * {@return this design with another equal division of the octave}
     *
     * @param divisions 1 to 1200
     */
    public Neck fretsToTheOctave(int divisions) {
        return with(DIVISIONS, divisions);
    }

    /**
     * {@return this design with a number of frets}
     *
     * @param count 1 to 200
     */
    public Neck frets(int count) {
        return with(FRETS, count);
    }

    /**
     * {@return this design with the fret at which the body begins}
     *
     * @param fret 1 or more
     */
    public Neck bodyAtFret(int fret) {
        return with(BODY_AT_FRET, fret);
    }

    /**
     * {@return this design with a fingerboard}
     *
     * @param board the fingerboard
     */
    public Neck fingerboard(Fingerboard board) {
        return with(FINGERBOARD, board);
    }

    /**
     * {@return this design with the shape of its back}
     *
     * @param profile the back
     */
    public Neck back(BackProfile profile) {
        return with(BACK, profile);
    }

    /**
     * {@return this design of a wood}
     *
     * @param kind the wood of the neck
     */
    public Neck wood(Wood kind) {
        return with(WOOD, kind);
    }

    /**
     * {@return this design with a truss rod, in a channel as wide, long and deep as the rod}
     *
     * @param rod the rod
     */
    public Neck trussRod(TrussRod rod) {
        return channel(Channel.forRod(rod));
    }

    /**
     * {@return this design with a stiffening bar, in a channel as wide, long and deep as the bar}
     *
     * @param bar the bar
     */
    public Neck bar(Bar bar) {
        return channel(Channel.forBar(bar));
    }

    /**
     * {@return this design with a channel and the rod or bar in it}
     *
     * @param newChannel the channel
     */
    public Neck channel(Channel newChannel) {
        return with(CHANNEL, Objects.requireNonNull(newChannel, "channel"));
    }

    /**
     * {@return this design with two stiffening bars beside the middle}
     *
     * @param bars the two
     */
    public Neck bars(Bars bars) {
        return with(BARS, bars);
    }

    /**
     * {@return this design with a shaft laminated of strips}
     *
     * @param strips from the bass side to the treble side, 2 to 15
     */
    public Neck laminated(Strip... strips) {
        for (Strip strip : Objects.requireNonNull(strips, "strips")) {
            Objects.requireNonNull(strip, "strip");
        }
        return with(STRIPS, List.of(strips));
    }

    /**
     * {@return this design without head, its strings held by an anchor past the nut line}
     *
     * @param length of the wood past the nut line that carries the anchor, more than 0
     */
    public Neck stringAnchor(Quantity<Length> length) {
        return new Neck(values().amount(ANCHOR, length));
    }

    /**
     * {@return this design with strings}
     *
     * @param set the strings
     */
    public Neck strings(StringSet set) {
        return with(STRINGS, set);
    }

    /**
     * {@return this design with a head}
     *
     * @param newHead the head
     */
    public Neck head(Head newHead) {
        return with(HEAD, newHead);
    }

    /**
     * {@return this design with a heel}
     *
     * @param newHeel the heel
     */
    public Neck heel(Heel newHeel) {
        return with(HEEL, newHeel);
    }

    /**
     * {@return this design with its neck set: the neck's place and angle on the body}
     *
     * @param set saddle, action and overstand; scale and board are this design's
     */
    public Neck neckSet(NeckSet set) {
        return with(NECK_SET, set);
    }

    private <V> Neck with(Key<Neck, V> key, V value) {
        return new Neck(values().with(key, value));
    }

    /** {@return the name; not blank} */
    public String name() {
        return values().at(NAME);
    }

    /** {@return the scale: with fanned frets that on their centreline} */
    public Scale scale() {
        Scale known = scale[0];
        if (known == null) {
            known = scaleOf(values());
            scale[0] = known;
        }
        return known;
    }

    /** {@return the fan of the frets; the fan, or nothing where all frets are square to the centreline} */
    public Optional<Fan> fannedFrets() {
        return values().find(FAN);
    }

    /** {@return the number of frets; 1 or more} */
    public int frets() {
        return values().at(FRETS);
    }

    /** {@return the fret at which the body begins; 1 or more} */
    public int bodyAtFret() {
        return values().at(BODY_AT_FRET);
    }

    /** {@return the fingerboard} */
    public Fingerboard fingerboard() {
        return values().at(FINGERBOARD);
    }

    /** {@return the back} */
    public BackProfile back() {
        return values().at(BACK);
    }

    /** {@return the wood; that of the middle strip where only strips were given; nothing when neither was given} */
    public Optional<Wood> wood() {
        List<Strip> strips = strips();
        return values().find(WOOD)
                .or(() -> strips.isEmpty()
                        ? Optional.empty()
                        : Optional.of(strips.get(strips.size() / 2).wood()));
    }

    /** {@return the strips of a laminated shaft, from the bass side to the treble side; empty for one piece} */
    public List<Strip> strips() {
        return values().find(STRIPS).orElse(List.of());
    }

    /**
     * {@return where the strips of a laminated shaft meet, in mm from the middle of the stack, positive toward the treble side: both
     * outer faces first and last; ascending; empty for one piece}
     */
    public List<Double> stripEdgesMm() {
        List<Strip> strips = strips();
        if (strips.isEmpty()) {
            return List.of();
        }
        List<Double> edges = new ArrayList<>();
        double edge = -strips.stream().mapToDouble(Strip::widthMm).sum() / 2;
        edges.add(edge);
        for (Strip strip : strips) {
            edge += strip.widthMm();
            edges.add(edge);
        }
        return List.copyOf(edges);
    }

    /** {@return the two stiffening bars beside the middle, if there are any; the bars, or nothing} */
    public Optional<Bars> bars() {
        return values().find(BARS);
    }

    /** {@return the length of the wood past the nut line that carries the string anchor of a headless neck; nothing with a head} */
    public Optional<Amount<Length>> stringAnchor() {
        return values().find(ANCHOR);
    }

    /** {@return the number of screws that hold the string anchor; nothing when not given} */
    public Optional<Integer> anchorScrews() {
        return values().find(ANCHOR_SCREWS);
    }

    /** {@return the neck's place and angle on the body, if it was given; the neck set, or nothing} */
    public Optional<NeckSet> neckSet() {
        return values().find(NECK_SET);
    }

    /** {@return the channel, if there is one; the channel, or nothing for a neck without rod} */
    public Optional<Channel> channel() {
        return values().find(CHANNEL);
    }

    /** {@return the strings; nothing when not given} */
    public Optional<StringSet> strings() {
        return values().find(STRINGS);
    }

    /** {@return the head, if it was given; the head, or nothing} */
    public Optional<Head> head() {
        return values().find(HEAD);
    }

    /** {@return the heel, if it was given; the heel, or nothing} */
    public Optional<Heel> heel() {
        return values().find(HEEL);
    }

    /**
     * {@return whether all that bends was given: strings, the neck's wood and the fingerboard's; true when relief can
     * be asked for}
     */
    public boolean isReadyForLoad() {
        return wood().isPresent()
                && fingerboard().wood().isPresent()
                && strings().isPresent();
    }

    /** {@return the station of the body joint in mm; x of the fret at which the body begins} */
    public double bodyJointMm() {
        return scale().fretMm(bodyAtFret());
    }

    /**
     * {@return half the neck's width at a station, which is that of the fingerboard: linear through the nut and the
     * board's far width; half-width in mm; may be 0 or less far before the nut}
     *
     * @param xMm station in mm
     */
    public double halfWidthAtMm(double xMm) {
        Fingerboard board = fingerboard();
        return between(board.nutWidthMm(), board.farWidthMm(), xMm) / 2;
    }

    /**
     * {@return the fingerboard's thickness on the centreline at a station; thickness in mm}
     *
     * @param xMm station in mm
     */
    public double boardThicknessAtMm(double xMm) {
        Fingerboard board = fingerboard();
        return between(board.nutThicknessMm(), board.farThicknessMm(), xMm);
    }

    /**
     * {@return the crown's radius at a station; radius in mm, infinite for a flat board}
     *
     * @param xMm station in mm
     */
    public double crownRadiusAtMm(double xMm) {
        Fingerboard board = fingerboard();
        return board.crown() == Fingerboard.Crown.FLAT
                ? Double.POSITIVE_INFINITY
                : between(board.nutRadiusMm(), board.farRadiusMm(), xMm);
    }

    private double between(double atNut, double atFar, double xMm) {
        double far = scale().fretMm(fingerboard().farFret(bodyAtFret()));
        return atNut + (atFar - atNut) * LibraryUnits.stationMm(xMm) / far;
    }

    /**
     * {@return the depth of the neck's wood below the glue face on the centreline at a station, volute, heel and
     * channel not counted; depth in mm}
     *
     * @param xMm station in mm
     */
    public double backDepthAtMm(double xMm) {
        return back().depthAtMm(xMm, scale());
    }

    private static Form<Neck> sentences() {
        return TABLE.facts("neck-design")
                .fact(
                        "centreline",
                        Kind.MM,
                        "the scale there, given or of the fan",
                        neck -> neck.scale().lengthMm())
                .factIfAny("slot", Kind.answer(Channel.sentences("")), "the channel as it is cut", Neck::channel)
                .finds("neck-design", "{name}")
                .line("scale", "scale", "{centreline}, {frets} frets, body at fret {bodyAtFret}")
                .line("fingerboard", "fingerboard", "{fingerboard}")
                .line("back", "back", "{back}")
                .line("wood", "wood", "{wood}")
                .line("rod", "truss rod", "{trussRod}")
                .line("bar", "bar", "{bar}")
                .line("bars", "bars", "{bars}")
                .line("channel", "channel", "{slot}")
                .line("head", "head", "{head}")
                .line("heel", "heel", "{heel}")
                .line("neckSet", "neck set", "{neckSet}")
                .line("strings", "strings", "{strings}")
                .fitted();
    }
}
