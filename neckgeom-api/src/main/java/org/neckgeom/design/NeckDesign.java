package org.neckgeom.design;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.stock.Wood;
import org.neckgeom.text.Words;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * A neck as designed: scale, frets, body joint, and whatever parts have been decided so far. Immutable.
 *
 * <p>Parts may be told in any order. A question that needs a part which has not been told refuses with one sentence that
 * names it. Unless told there are 20 frets, and the body joint is at the 12th.
 */
public final class NeckDesign implements Answer, SaysLengths<NeckDesign> {

    /** Rounded to two decimals of a mm or three of an inch the centreline's scale is near enough to be given so. */
    private static final double SCALE_TOLERANCE_MM = 0.02;

    private static final int USUAL_DIVISIONS = 12;
    private static final int MOST_DIVISIONS = 1200;
    private static final int USUAL_FRETS = 20;
    private static final int USUAL_BODY_FRET = 12;
    private static final int MOST_FRETS = 200;

    private final String name;
    private final @Nullable Scale scale;
    private final @Nullable Scale ownScale;
    private final int divisions;
    private final @Nullable Fan fan;
    private final int frets;
    private final int bodyAtFret;
    private final @Nullable Fingerboard fingerboard;
    private final @Nullable BackProfile back;
    private final @Nullable Wood wood;
    private final @Nullable Channel channel;
    private final @Nullable StringSet strings;
    private final @Nullable Head head;
    private final @Nullable Heel heel;

    private NeckDesign(Parts parts) {
        this.name = parts.name;
        this.divisions = parts.divisions;
        this.fan = parts.fan;
        Scale centreline = centreline(parts);
        this.ownScale = centreline == null ? parts.scale : null;
        this.scale = fan == null ? parts.scale : centreline;
        this.frets = parts.frets;
        this.bodyAtFret = parts.bodyAtFret;
        this.fingerboard = parts.fingerboard;
        this.back = parts.back;
        this.wood = parts.wood;
        this.channel = parts.channel;
        this.strings = parts.strings;
        this.head = parts.head;
        this.heel = parts.heel;
    }

    /** The parts on their way from one design to the next; never leaves this class. */
    private static final class Parts {
        private final String name;
        private @Nullable Scale scale;
        private int divisions = USUAL_DIVISIONS;
        private @Nullable Fan fan;
        private int frets = USUAL_FRETS;
        private int bodyAtFret = USUAL_BODY_FRET;
        private @Nullable Fingerboard fingerboard;
        private @Nullable BackProfile back;
        private @Nullable Wood wood;
        private @Nullable Channel channel;
        private @Nullable StringSet strings;
        private @Nullable Head head;
        private @Nullable Heel heel;

        private Parts(String name) {
            this.name = name;
        }
    }

    private NeckDesign with(Consumer<Parts> change) {
        Parts parts = new Parts(name);
        parts.scale = ownScale;
        parts.divisions = divisions;
        parts.fan = fan;
        parts.frets = frets;
        parts.bodyAtFret = bodyAtFret;
        parts.fingerboard = fingerboard;
        parts.back = back;
        parts.wood = wood;
        parts.channel = channel;
        parts.strings = strings;
        parts.head = head;
        parts.heel = heel;
        change.accept(parts);
        return new NeckDesign(parts);
    }

    /** The scale on the centreline between fanned frets; nothing until fan, board and strings across are given. */
    private static @Nullable Scale centreline(Parts parts) {
        Across across = parts.strings == null ? null : parts.strings.across().orElse(null);
        if (parts.fan == null || parts.fingerboard == null || across == null) {
            return null;
        }
        double atNut = parts.fingerboard.nutWidthMm() - 2 * across.edgeAtNut().house();
        double mm = parts.fan.centrelineScaleMm(
                parts.strings.spreadMm(atNut),
                parts.strings.spreadMm(across.spanAtSaddle().house()));
        LengthStyle style = parts.fan.style();
        if (parts.scale != null && !(Math.abs(parts.scale.lengthMm() - mm) <= SCALE_TOLERANCE_MM)) {
            throw Refusal.of(
                    "scale",
                    "same-scale",
                    "be " + parts.scale.style().brief(mm) + ", that of the fanned frets on the centreline",
                    parts.scale.length());
        }
        return Scale.of(style.amount(mm)).divisions(parts.divisions);
    }

    /**
     * Returns a design of which only the name is known.
     *
     * @param name what the maker calls it, not blank, up to 100 characters
     * @return the design
     */
    public static NeckDesign named(String name) {
        return new NeckDesign(new Parts(Words.name(name, "a neck's name")));
    }

    /**
     * Returns this design with a scale divided in twelve.
     *
     * @param length more than 0
     * @return the design
     */
    public NeckDesign scale(Quantity<Length> length) {
        return scale(Scale.of(length));
    }

    /**
     * Returns this design with a scale.
     *
     * @param newScale the scale
     * @return the design
     */
    public NeckDesign scale(Scale newScale) {
        Objects.requireNonNull(newScale, "scale");
        return with(parts -> {
            parts.scale = newScale;
            parts.divisions = newScale.divisions();
        });
    }

    /**
     * Returns this design with frets fanned between two scales. Its scale is then the one on their centreline, which follows
     * from the fan, the fingerboard's width and how the strings are spread.
     *
     * @param newFan the fan
     * @return the design
     */
    public NeckDesign fannedFrets(Fan newFan) {
        return with(parts -> parts.fan = Objects.requireNonNull(newFan, "fan"));
    }

    /**
     * Returns this design with another equal division of the octave.
     *
     * @param divisions 1 to 1200
     * @return the design
     */
    public NeckDesign fretsToTheOctave(int divisions) {
        if (divisions < 1 || divisions > MOST_DIVISIONS) {
            throw Refusal.of("frets to the octave", "range", "be between 1 and " + MOST_DIVISIONS, "were", divisions);
        }
        return with(parts -> {
            parts.scale = parts.scale == null ? null : parts.scale.divisions(divisions);
            parts.divisions = divisions;
        });
    }

    /**
     * Returns this design with a number of frets.
     *
     * @param count 1 to 200
     * @return the design
     */
    public NeckDesign frets(int count) {
        if (count < 1 || count > MOST_FRETS) {
            throw Refusal.of("frets", "range", "be between 1 and " + MOST_FRETS, "were", count);
        }
        return with(parts -> parts.frets = count);
    }

    /**
     * Returns this design with the fret at which the body begins.
     *
     * @param fret 1 or more
     * @return the design
     */
    public NeckDesign bodyAtFret(int fret) {
        if (fret < 1 || fret > MOST_FRETS) {
            throw Refusal.of("fret at the body", "range", "be between 1 and " + MOST_FRETS, fret);
        }
        return with(parts -> parts.bodyAtFret = fret);
    }

    /**
     * Returns this design with a fingerboard.
     *
     * @param board the fingerboard
     * @return the design
     */
    public NeckDesign fingerboard(Fingerboard board) {
        return with(parts -> parts.fingerboard = Objects.requireNonNull(board, "fingerboard"));
    }

    /**
     * Returns this design with the shape of its back.
     *
     * @param profile the back
     * @return the design
     */
    public NeckDesign back(BackProfile profile) {
        return with(parts -> parts.back = Objects.requireNonNull(profile, "back"));
    }

    /**
     * Returns this design of a wood.
     *
     * @param kind the wood of the neck
     * @return the design
     */
    public NeckDesign wood(Wood kind) {
        return with(parts -> parts.wood = Objects.requireNonNull(kind, "wood"));
    }

    /**
     * Returns this design with a rod in the plainest channel for it.
     *
     * @param rod the rod
     * @return the design
     */
    public NeckDesign rod(Rod rod) {
        return channel(Channel.forRod(rod));
    }

    /**
     * Returns this design with a channel and the rod in it.
     *
     * @param newChannel the channel
     * @return the design
     */
    public NeckDesign channel(Channel newChannel) {
        return with(parts -> parts.channel = Objects.requireNonNull(newChannel, "channel"));
    }

    /**
     * Returns this design with strings.
     *
     * @param set the strings
     * @return the design
     */
    public NeckDesign strings(StringSet set) {
        return with(parts -> parts.strings = Objects.requireNonNull(set, "strings"));
    }

    /**
     * Returns this design with a head.
     *
     * @param newHead the head
     * @return the design
     */
    public NeckDesign head(Head newHead) {
        return with(parts -> parts.head = Objects.requireNonNull(newHead, "head"));
    }

    /**
     * Returns this design with a heel.
     *
     * @param newHeel the heel
     * @return the design
     */
    public NeckDesign heel(Heel newHeel) {
        return with(parts -> parts.heel = Objects.requireNonNull(newHeel, "heel"));
    }

    /**
     * Returns the name.
     *
     * @return not blank
     */
    public String name() {
        return name;
    }

    /**
     * Returns the scale: with fanned frets that on their centreline.
     *
     * @return the scale
     * @throws IllegalArgumentException if it has not been given, or does not follow yet
     */
    public Scale scale() {
        if (fan != null && scale == null) {
            throw Refusal.because(
                    "fanned frets",
                    "missing",
                    "fanned frets are given, but not how the strings are spread: give across of the strings");
        }
        return told(scale, "scale");
    }

    /**
     * Returns the fan of the frets.
     *
     * @return the fan, or nothing where all frets are square to the centreline
     */
    public Optional<Fan> fannedFrets() {
        return Optional.ofNullable(fan);
    }

    /**
     * Returns the equal divisions of the octave.
     *
     * @return 1 to 1200
     */
    public int fretsToTheOctave() {
        return divisions;
    }

    /**
     * Returns the number of frets.
     *
     * @return 1 or more
     */
    public int frets() {
        return frets;
    }

    /**
     * Returns the fret at which the body begins.
     *
     * @return 1 or more
     */
    public int bodyAtFret() {
        return bodyAtFret;
    }

    /**
     * Returns the fingerboard.
     *
     * @return the fingerboard
     * @throws IllegalArgumentException if it has not been told
     */
    public Fingerboard fingerboard() {
        return told(fingerboard, "fingerboard");
    }

    /**
     * Returns the back.
     *
     * @return the back
     * @throws IllegalArgumentException if it has not been told
     */
    public BackProfile back() {
        return told(back, "back");
    }

    /**
     * Returns the wood.
     *
     * @return the wood
     * @throws IllegalArgumentException if it has not been told
     */
    public Wood wood() {
        return told(wood, "wood");
    }

    /**
     * Returns the channel, if there is one.
     *
     * @return the channel, or nothing for a neck without rod
     */
    public Optional<Channel> channel() {
        return Optional.ofNullable(channel);
    }

    /**
     * Returns the strings.
     *
     * @return the strings
     * @throws IllegalArgumentException if they have not been told
     */
    public StringSet strings() {
        return told(strings, "strings");
    }

    /**
     * Says whether the strings have been told.
     *
     * @return true when {@link #strings} has an answer
     */
    public boolean hasStrings() {
        return strings != null;
    }

    /**
     * Returns the head, if it has been told.
     *
     * @return the head, or nothing
     */
    public Optional<Head> head() {
        return Optional.ofNullable(head);
    }

    /**
     * Returns the heel, if it has been told.
     *
     * @return the heel, or nothing
     */
    public Optional<Heel> heel() {
        return Optional.ofNullable(heel);
    }

    /**
     * Says whether all that bends has been told: strings, the neck's wood and the fingerboard's.
     *
     * @return true when relief can be asked for
     */
    public boolean isReadyForLoad() {
        boolean woods =
                wood != null && fingerboard != null && fingerboard.wood().isPresent();
        return woods && strings != null;
    }

    private <T> T told(@Nullable T part, String what) {
        if (part == null) {
            throw Refusal.because(
                    what,
                    "missing",
                    "\"" + name + "\" needs its " + what + " for this, but has none: add ." + what + "(...)");
        }
        return part;
    }

    /**
     * Returns the station of the body joint in mm.
     *
     * @return x of the fret at which the body begins
     */
    public double bodyJointMm() {
        return scale().fretMm(bodyAtFret);
    }

    /**
     * Returns half the neck's width at a station, which is that of the fingerboard: linear through the nut and the board's
     * second place.
     *
     * @param xMm station in mm
     * @return half-width in mm; may be 0 or less far before the nut
     */
    public double halfWidthAtMm(double xMm) {
        Fingerboard board = fingerboard();
        return between(board.nutWidthMm(), board.secondWidthMm(), xMm) / 2;
    }

    /**
     * Returns the fingerboard's thickness on the centreline at a station.
     *
     * @param xMm station in mm
     * @return thickness in mm
     */
    public double boardThicknessAtMm(double xMm) {
        Fingerboard board = fingerboard();
        return between(board.nutThicknessMm(), board.secondThicknessMm(), xMm);
    }

    /**
     * Returns the crown's radius at a station.
     *
     * @param xMm station in mm
     * @return radius in mm, infinite for a flat board
     */
    public double crownRadiusAtMm(double xMm) {
        Fingerboard board = fingerboard();
        return board.crown() == Fingerboard.Crown.FLAT
                ? Double.POSITIVE_INFINITY
                : between(board.nutRadiusMm(), board.secondRadiusMm(), xMm);
    }

    private double between(double atNut, double atSecond, double xMm) {
        double second = scale().fretMm(fingerboard().secondFret(bodyAtFret));
        return atNut + (atSecond - atNut) * HouseUnits.stationMm(xMm) / second;
    }

    /**
     * Returns the depth of the neck's wood below the glue face on the centreline at a station, volute, heel and channel not
     * counted.
     *
     * @param xMm station in mm
     * @return depth in mm
     */
    public double backDepthAtMm(double xMm) {
        return back().depthAtMm(xMm, scale());
    }

    /**
     * Returns the style answers about this neck are printed in: that of the scale, or else of the first part given.
     *
     * @return the style; millimetres while there is no part
     */
    @Override
    public LengthStyle style() {
        return Stream.<Optional<? extends Answer>>of(
                        Optional.ofNullable(scale),
                        Optional.ofNullable(fan),
                        Optional.ofNullable(fingerboard),
                        Optional.ofNullable(back),
                        Optional.ofNullable(channel),
                        Optional.ofNullable(heel),
                        Optional.ofNullable(head),
                        Optional.ofNullable(strings))
                .flatMap(Optional::stream)
                .findFirst()
                .map(Answer::style)
                .orElse(LengthStyle.MILLIMETRES);
    }

    @Override
    public NeckDesign in(LengthStyle other) {
        return with(parts -> {
            parts.scale = SaysLengths.said(ownScale, other);
            parts.fan = SaysLengths.said(fan, other);
            parts.fingerboard = SaysLengths.said(fingerboard, other);
            parts.back = SaysLengths.said(back, other);
            parts.channel = SaysLengths.said(channel, other);
            parts.strings = SaysLengths.said(strings, other);
            parts.head = SaysLengths.said(head, other);
            parts.heel = SaysLengths.said(heel, other);
        });
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        private static final Form<NeckDesign> FORM = Form.<NeckDesign>of("neck-design")
                .fact("name", Kind.NAME, "what the maker calls it", n -> n.name)
                .factIfAny("scale", Kind.answer(Scale.Sentences.IN_NECK), "of the frets", n -> maybe(n.scale))
                .fact("frets", Kind.WHOLE, "how many", n -> n.frets)
                .factIfAny("fannedFrets", Kind.ANSWER, "between two scales", NeckDesign::fannedFrets)
                .fact("bodyAtFret", Kind.WHOLE, "where the body begins", n -> n.bodyAtFret)
                .factIfAny(
                        "fingerboard",
                        Kind.answer(Fingerboard.Sentences.UNTITLED),
                        "with its crown",
                        n -> maybe(n.fingerboard))
                .factIfAny("back", Kind.answer(BackProfile.Sentences.UNTITLED), "its shape", n -> maybe(n.back))
                .factIfAny(
                        "wood",
                        Kind.NAME,
                        "of the neck, by name",
                        n -> maybe(n.wood).map(Wood::name))
                .factIfAny(
                        "rod",
                        Kind.answer(Rod.Sentences.FORM),
                        "in the channel",
                        n -> n.channel().map(Channel::rod))
                .factIfAny("channel", Kind.answer(Channel.Sentences.UNTITLED), "for the rod", NeckDesign::channel)
                .factIfAny("head", Kind.answer(Head.Sentences.UNTITLED), "with its veneers", NeckDesign::head)
                .factIfAny("heel", Kind.answer(Heel.Sentences.UNTITLED), "with its mating face", NeckDesign::heel)
                .factIfAny("strings", Kind.answer(StringSet.Sentences.IN_NECK), "bass to treble", n -> maybe(n.strings))
                .finds("neck-design", "{name}")
                .line("scale", "scale", "{scale}, {frets} frets, body at fret {bodyAtFret}")
                .line("fingerboard", "fingerboard", "{fingerboard}")
                .line("back", "back", "{back}")
                .line("wood", "wood", "{wood}")
                .line("rod", "rod", "{rod}")
                .line("channel", "channel", "{channel}")
                .line("head", "head", "{head}")
                .line("heel", "heel", "{heel}")
                .line("strings", "strings", "{strings}")
                .fitted();

        private static <P> Optional<P> maybe(@Nullable P part) {
            return Optional.ofNullable(part);
        }
    }

    @Override
    public Form<NeckDesign> form() {
        return Sentences.FORM;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof NeckDesign other
                && name.equals(other.name)
                && Objects.equals(ownScale, other.ownScale)
                && divisions == other.divisions
                && Objects.equals(fan, other.fan)
                && frets == other.frets
                && bodyAtFret == other.bodyAtFret
                && Objects.equals(fingerboard, other.fingerboard)
                && Objects.equals(back, other.back)
                && Objects.equals(wood, other.wood)
                && Objects.equals(channel, other.channel)
                && Objects.equals(strings, other.strings)
                && Objects.equals(head, other.head)
                && Objects.equals(heel, other.heel);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                name,
                ownScale,
                divisions,
                fan,
                frets,
                bodyAtFret,
                fingerboard,
                back,
                wood,
                channel,
                strings,
                head,
                heel);
    }

    /** Returns the name, then a row for each part that has been told. */
    @Override
    public String toString() {
        return text(style());
    }
}
