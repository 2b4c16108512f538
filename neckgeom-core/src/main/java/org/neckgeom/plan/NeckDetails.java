package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.board.FallAway;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.solid.BackShape;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;

/**
 * What else has been settled about a neck's shape, such as its strings' places and its volute, for
 * {@link NeckPlan#details}. Immutable.
 *
 * <p>Every part may be left out; the plan then has no section for it, or reckons it plain: the back without volute or
 * heel. Lengths are kept in mm.
 */
public final class NeckDetails implements Answer {

    private static final Form<NeckDetails> FORM = Form.<NeckDetails>of("neck-details")
            .fact("parts", Kind.list(Kind.NAME), "what has been settled", NeckDetails::parts)
            .factIfAny("stringsAtNut", Kind.ANSWER, "from bass to treble", NeckDetails::stringsAtNut)
            .factIfAny("stringsAtSaddle", Kind.ANSWER, "from bass to treble", NeckDetails::stringsAtSaddle)
            .factIfAny("fannedFrets", Kind.ANSWER, "between two scales", NeckDetails::fannedFrets)
            .fact("fretHeight", Kind.MM, "over the board", details -> details.fretHeight)
            .factIfAny("fallAway", Kind.ANSWER, "of the fingerboard past the body joint", NeckDetails::fallAway)
            .factIfAny("back", Kind.ANSWER, "with its volute or heel", NeckDetails::back)
            .finds("none", details -> details.parts().isEmpty(), "details: none told")
            .finds("details", "details: {parts}");

    /** Nothing more than the design. */
    private static final NeckDetails NONE = new NeckDetails(new Parts());

    private final @Nullable StringPlaces nut;
    private final @Nullable StringPlaces saddle;
    private final @Nullable FannedFrets fan;
    private final double fretHeight;
    private final @Nullable FallAway fallAway;
    private final @Nullable BackShape back;

    private NeckDetails(Parts parts) {
        this.nut = parts.nut;
        this.saddle = parts.saddle;
        this.fan = parts.fan;
        this.fretHeight = parts.fretHeight;
        this.fallAway = parts.fallAway;
        this.back = parts.back;
    }

    /** The parts on their way from one value to the next; never leaves this class. */
    private static final class Parts {
        private @Nullable StringPlaces nut;
        private @Nullable StringPlaces saddle;
        private @Nullable FannedFrets fan;
        private double fretHeight = Double.NaN;
        private @Nullable FallAway fallAway;
        private @Nullable BackShape back;
    }

    private NeckDetails with(Consumer<Parts> change) {
        Parts parts = new Parts();
        parts.nut = nut;
        parts.saddle = saddle;
        parts.fan = fan;
        parts.fretHeight = fretHeight;
        parts.fallAway = fallAway;
        parts.back = back;
        change.accept(parts);
        return new NeckDetails(parts);
    }

    /**
     * Returns a start of which nothing has been told.
     *
     * @return nothing more than the design
     */
    public static NeckDetails none() {
        return NONE;
    }

    /**
     * Returns these details with the strings' places.
     *
     * @param atNut from bass to treble
     * @param atSaddle the same strings at the saddle
     * @return the details
     */
    public NeckDetails strings(StringPlaces atNut, StringPlaces atSaddle) {
        Objects.requireNonNull(atNut, "places at the nut");
        Objects.requireNonNull(atSaddle, "places at the saddle");
        return with(parts -> {
            parts.nut = atNut;
            parts.saddle = atSaddle;
        });
    }

    /**
     * Returns these details with frets fanned between two scales. The design's scale is then the one on the centreline.
     *
     * @param frets the frets, nut and saddle among them
     * @return the details
     */
    public NeckDetails fannedFrets(FannedFrets frets) {
        Objects.requireNonNull(frets, "fanned frets");
        return with(parts -> parts.fan = frets);
    }

    /**
     * Returns these details with the height of the frets, over which the strings' load is reckoned.
     *
     * @param overBoard more than 0
     * @return the details
     */
    public NeckDetails fretHeight(Quantity<Length> overBoard) {
        double mm = HouseUnits.mmPositive(overBoard, "fret height");
        return with(parts -> parts.fretHeight = mm);
    }

    /**
     * Returns these details with a fingerboard that falls away past the body joint.
     *
     * @param slope the slope
     * @return the details
     */
    public NeckDetails fallAway(FallAway slope) {
        Objects.requireNonNull(slope, "fall-away");
        return with(parts -> parts.fallAway = slope);
    }

    /**
     * Returns these details with a back that has a volute or turns into the heel.
     *
     * @param shape the back of this very design
     * @return the details
     */
    public NeckDetails back(BackShape shape) {
        Objects.requireNonNull(shape, "back");
        return with(parts -> parts.back = shape);
    }

    /**
    }

    /**
     * Returns the strings' places at the nut.
     *
     * @return from bass to treble, or nothing when they have not been told
     */
    public Optional<StringPlaces> stringsAtNut() {
        return Optional.ofNullable(nut);
    }

    /**
     * Returns the strings' places at the saddle.
     *
     * @return from bass to treble, or nothing when they have not been told
     */
    public Optional<StringPlaces> stringsAtSaddle() {
        return Optional.ofNullable(saddle);
    }

    /**
     * Returns the fanned frets.
     *
     * @return the frets, or nothing where they all stand square
     */
    public Optional<FannedFrets> fannedFrets() {
        return Optional.ofNullable(fan);
    }

    /**
     * Says whether the strings' places have been told.
     *
     * @return true when {@link #stringsAtNut} and {@link #stringsAtSaddle} have an answer
     */
    public boolean hasStrings() {
        return nut != null;
    }

    /**
     * Returns the height of the frets over the board in mm, if it was told.
     *
     * @return the height, or nothing
     */
    public OptionalDouble fretHeightMm() {
        return told(fretHeight);
    }

    private static OptionalDouble told(double mm) {
        return Double.isNaN(mm) ? OptionalDouble.empty() : OptionalDouble.of(mm);
    }

    /**
     * Returns the slope of the fingerboard past the body joint, if it was told.
     *
     * @return the slope, or nothing
     */
    public Optional<FallAway> fallAway() {
        return Optional.ofNullable(fallAway);
    }

    /**
     * Returns the back with its volute and its turn into the heel, if it was told.
     *
     * @return the back, or nothing
     */
    public Optional<BackShape> back() {
        return Optional.ofNullable(back);
    }

    /**
    }

    private List<@Nullable Object> all() {
        List<@Nullable Object> all = new ArrayList<>();
        all.add(nut);
        all.add(saddle);
        all.add(fan);
        all.add(fretHeight);
        all.add(fallAway);
        all.add(back);
        return all;
    }

    @Override
    public Form<NeckDetails> form() {
        return FORM;
    }

    /** Returns the style of the first part that has one. */
    @Override
    public LengthStyle style() {
        return Stream.of(nut, fan, fallAway, back)
                .flatMap(Stream::ofNullable)
                .map(Answer::style)
                .findFirst()
                .orElse(LengthStyle.MILLIMETRES);
    }

    /** True when everything told is equal. */
    @Override
    public boolean equals(Object obj) {
        return obj instanceof NeckDetails other && all().equals(other.all());
    }

    @Override
    public int hashCode() {
        return all().hashCode();
    }

    private List<String> parts() {
        List<String> told = new ArrayList<>();
        add(told, nut, "strings across");
        add(told, fan, "fanned frets");
        add(told, Double.isNaN(fretHeight) ? null : this, "fret height");
        add(told, fallAway, "fall-away");
        add(told, back, "back");
        return told;
    }

    /** Returns what has been settled, in a line. */
    @Override
    public String toString() {
        return text(style());
    }

    private static void add(List<String> told, @Nullable Object part, String name) {
        if (part != null) {
            told.add(name);
        }
    }
}
