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
import org.neckgeom.head.HeadLayout;
import org.neckgeom.heel.DovetailSeat;
import org.neckgeom.heel.TenonBolts;
import org.neckgeom.measure.Limits;
import org.neckgeom.solid.BackShape;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * What else has been settled about a neck's shape, such as its strings' places, its posts and its volute, for
 * {@link NeckPlan#details}. Immutable.
 *
 * <p>Every part may be left out; the plan then has no section for it, or reckons it plain: the back without volute or
 * heel, the glue face level with the body's top. Lengths are kept in mm.
 */
public final class NeckDetails implements Answer, SaysLengths<NeckDetails> {

    private static final Form<NeckDetails> FORM = Form.<NeckDetails>of("neck-details")
            .fact("parts", Kind.list(Kind.NAME), "what has been settled", NeckDetails::parts)
            .factIfAny("stringsAtNut", Kind.ANSWER, "from bass to treble", NeckDetails::stringsAtNut)
            .factIfAny("stringsAtSaddle", Kind.ANSWER, "from bass to treble", NeckDetails::stringsAtSaddle)
            .factIfAny("fannedFrets", Kind.ANSWER, "between two scales", NeckDetails::fannedFrets)
            .factIfAny("headLayout", Kind.ANSWER, "outline and posts", NeckDetails::headLayout)
            .fact(
                    "slotHeight",
                    Kind.MM,
                    "floor of the nut's slots over the glue face",
                    details -> details.head == null ? Double.NaN : details.slot)
            .fact("fretHeight", Kind.MM, "over the board", details -> details.fretHeight)
            .factIfAny("tuners", Kind.LIMITS, "head thickness they take, veneers included", NeckDetails::tuners)
            .factIfAny("fallAway", Kind.ANSWER, "of the fingerboard past the body joint", NeckDetails::fallAway)
            .factIfAny("back", Kind.ANSWER, "with its volute or heel", NeckDetails::back)
            .fact("overstand", Kind.MM, "glue face over the body's top at the joint", NeckDetails::overstandMm)
            .factIfAny("dovetail", Kind.ANSWER, "the heel goes home in", NeckDetails::dovetail)
            .factIfAny("tenon", Kind.ANSWER, "with its bolts", NeckDetails::tenon)
            .fact("heelBlockLength", Kind.MM, "along the grain", details -> details.blockLength)
            .finds("none", details -> details.parts().isEmpty(), "details: none told")
            .finds("details", "details: {parts}");

    /** Nothing more than the design. */
    private static final NeckDetails NONE = new NeckDetails(new Parts());

    private final @Nullable StringPlaces nut;
    private final @Nullable StringPlaces saddle;
    private final @Nullable FannedFrets fan;
    private final @Nullable HeadLayout head;
    private final @Nullable DovetailSeat dovetail;
    private final @Nullable TenonBolts tenon;
    private final double slot;
    private final double fretHeight;
    private final @Nullable Limits<Length> tuners;
    private final @Nullable FallAway fallAway;
    private final @Nullable BackShape back;
    private final double overstand;
    private final double blockLength;

    private NeckDetails(Parts parts) {
        this.nut = parts.nut;
        this.saddle = parts.saddle;
        this.fan = parts.fan;
        this.head = parts.head;
        this.dovetail = parts.dovetail;
        this.tenon = parts.tenon;
        this.slot = parts.slot;
        this.fretHeight = parts.fretHeight;
        this.tuners = parts.tuners;
        this.fallAway = parts.fallAway;
        this.back = parts.back;
        this.overstand = parts.overstand;
        this.blockLength = parts.blockLength;
    }

    /** The parts on their way from one value to the next; never leaves this class. */
    private static final class Parts {
        private @Nullable StringPlaces nut;
        private @Nullable StringPlaces saddle;
        private @Nullable FannedFrets fan;
        private @Nullable HeadLayout head;
        private @Nullable DovetailSeat dovetail;
        private @Nullable TenonBolts tenon;
        private double slot;
        private double fretHeight = Double.NaN;
        private @Nullable Limits<Length> tuners;
        private @Nullable FallAway fallAway;
        private @Nullable BackShape back;
        private double overstand;
        private double blockLength = Double.NaN;
    }

    private NeckDetails with(Consumer<Parts> change) {
        Parts parts = new Parts();
        parts.nut = nut;
        parts.saddle = saddle;
        parts.fan = fan;
        parts.head = head;
        parts.dovetail = dovetail;
        parts.tenon = tenon;
        parts.slot = slot;
        parts.fretHeight = fretHeight;
        parts.tuners = tuners;
        parts.fallAway = fallAway;
        parts.back = back;
        parts.overstand = overstand;
        parts.blockLength = blockLength;
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
     * Returns these details with the head's outline and posts.
     *
     * @param layout outline and posts; each string's break is reckoned when its posts and the strings' places are told
     * @param slotHeight of the floor of the nut's slots over the glue face, 0 or more
     * @return the details
     */
    public NeckDetails head(HeadLayout layout, Quantity<Length> slotHeight) {
        Objects.requireNonNull(layout, "head layout");
        double mm = HouseUnits.mmNotNegative(slotHeight, "nut slot's height");
        return with(parts -> {
            parts.head = layout;
            parts.slot = mm;
        });
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
     * Returns these details with the head thickness the tuners take, veneers included.
     *
     * @param thickness least and greatest
     * @return the details
     */
    public NeckDetails tuners(Limits<Length> thickness) {
        Objects.requireNonNull(thickness, "thickness for the tuners");
        return with(parts -> parts.tuners = thickness);
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
     * Returns these details with the height at which the neck stands over the body.
     *
     * @param glueFace over the body's top at the joint, 0 or more
     * @return the details
     */
    public NeckDetails overstand(Quantity<Length> glueFace) {
        double mm = HouseUnits.mmNotNegative(glueFace, "overstand");
        return with(parts -> parts.overstand = mm);
    }

    /**
     * Returns these details with the length along the grain of a heel block.
     *
     * @param each more than 0
     * @return the details
     */
    public NeckDetails heelBlocks(Quantity<Length> each) {
        double mm = HouseUnits.mmPositive(each, "heel block length");
        return with(parts -> parts.blockLength = mm);
    }

    /**
     * Returns these details with a heel that goes home in a dovetail.
     *
     * @param seat its taper
     * @return the details
     */
    public NeckDetails dovetail(DovetailSeat seat) {
        Objects.requireNonNull(seat, "dovetail");
        return with(parts -> parts.dovetail = seat);
    }

    /**
     * Returns these details with a heel held by a bolted tenon.
     *
     * @param bolts the tenon and its holes, one or more
     * @return the details
     * @throws IllegalArgumentException if no hole has been told: a plan judges the wood around each
     */
    public NeckDetails tenon(TenonBolts bolts) {
        Objects.requireNonNull(bolts, "tenon").leastWood();
        return with(parts -> parts.tenon = bolts);
    }

    /**
     * Returns the dovetail.
     *
     * @return its taper, or nothing when there is none
     */
    public Optional<DovetailSeat> dovetail() {
        return Optional.ofNullable(dovetail);
    }

    /**
     * Returns the bolted tenon.
     *
     * @return the tenon and its holes, or nothing when there is none
     */
    public Optional<TenonBolts> tenon() {
        return Optional.ofNullable(tenon);
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
     * Returns the head's outline and posts.
     *
     * @return the layout, or nothing when it has not been told
     */
    public Optional<HeadLayout> headLayout() {
        return Optional.ofNullable(head);
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
     * Returns the height of the floor of the nut's slots over the glue face, in mm.
     *
     * @return 0 or more; 0 where no head was told
     */
    public double slotMm() {
        return slot;
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
     * Returns the head thickness the tuners take, if it was told.
     *
     * @return least and greatest, or nothing
     */
    public Optional<Limits<Length>> tuners() {
        return Optional.ofNullable(tuners);
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
     * Returns how high the glue face stands over the body's top at the joint, in mm.
     *
     * @return 0 unless told
     */
    public double overstandMm() {
        return overstand;
    }

    /**
     * Returns the length along the grain of a heel block in mm, if it was told.
     *
     * @return the length, or nothing
     */
    public OptionalDouble blockLengthMm() {
        return told(blockLength);
    }

    private List<@Nullable Object> all() {
        List<@Nullable Object> all = new ArrayList<>();
        all.add(nut);
        all.add(saddle);
        all.add(fan);
        all.add(head);
        all.add(dovetail);
        all.add(tenon);
        all.add(slot);
        all.add(fretHeight);
        all.add(tuners);
        all.add(fallAway);
        all.add(back);
        all.add(overstand);
        all.add(blockLength);
        return all;
    }

    @Override
    public Form<NeckDetails> form() {
        return FORM;
    }

    /** Returns the style of the first part that has one: of a shape, or of the tuners' limits. */
    @Override
    public LengthStyle style() {
        return Stream.of(nut, fan, head, fallAway, back, dovetail, tenon)
                .flatMap(Stream::ofNullable)
                .map(Answer::style)
                .findFirst()
                .or(() -> tuners().map(limits -> LengthStyle.ofUnit(limits.unit())))
                .orElse(LengthStyle.MILLIMETRES);
    }

    @Override
    public NeckDetails in(LengthStyle other) {
        return with(parts -> {
            parts.tuners = SaysLengths.said(tuners, other);
        });
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
        add(told, head, "head layout");
        add(told, Double.isNaN(fretHeight) ? null : this, "fret height");
        add(told, tuners, "tuners");
        add(told, fallAway, "fall-away");
        add(told, back, "back");
        add(told, dovetail, "dovetail");
        add(told, tenon, "tenon");
        add(told, Double.isNaN(blockLength) ? null : this, "heel blocks");
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
