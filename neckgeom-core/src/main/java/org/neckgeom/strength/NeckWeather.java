package org.neckgeom.strength;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.Once;
import org.neckgeom.measure.Interval;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The effect of a change of air on a neck: fret ends, neck against board, rod in its channel, relief. Immutable.
 *
 * <p>Estimate, as {@link Weather}: across the grain parts are taken to move freely; along it the glued fingerboard bows the neck,
 * positive forward. With a number of days, fingerboard and neck have each done their own share of the change ({@link AirInWood}, one
 * face glued); on the way to balance the thin board is ahead and bows the neck, even where both end with no bow.
 */
public final class NeckWeather extends ValueAnswer {

    /** Where the neck's depth is taken for its share. */
    private static final double MIDDLE = 0.5;

    private record Reached(AirInWood board, AirInWood neck) {
        static final Form<Reached> FORM = Form.<Reached>of("reached")
                .fact("days", Kind.RATIO, "in the new air", x -> x.board.days())
                .fact("board", Kind.RATIO, "share of the change done in the fingerboard", x -> x.board.shareDone())
                .fact("neck", Kind.RATIO, "share of the change done in the neck", x -> x.neck.shareDone())
                .finds(
                        "reached",
                        "{days:..2} days: {board:percent 0} of it in the fingerboard, {neck:percent 0} in the neck");
    }

    private record Lag(MoistureBow.Lag lag, LengthStyle style) {
        static final Form<Lag> FORM = Form.<Lag>of("lag")
                .fact("relief", Kind.MM, "added then; negative: taken away", x -> x.lag.relief())
                .fact("days", Kind.RATIO, "after the change of air", x -> x.lag.days())
                .phrase("sign", x -> x.lag.relief() < 0, "less")
                .phrase("sign", "more")
                .finds("lag", "{relief:size text} {sign} after {days:0} days, the fingerboard ahead");
    }

    private static final Form<NeckWeather> FORM = Form.<NeckWeather>of("neck-weather")
            .fact("neck", Kind.NAME, "its name", x -> x.neck.name())
            .fact("moisture", Moistures.KIND, "of the wood, at balance", x -> x.moistures)
            .fact("fretEndsAtNut", FretSprout.SIDE, "on each side", NeckWeather::fretEndsAtNut)
            .fact("fretEndsAtLastFret", FretSprout.SIDE, "on each side", NeckWeather::fretEndsAtLastFret)
            .fact(
                    "neckAtBody",
                    Likely.KIND,
                    "change of its width there",
                    x -> x.neckAtBody().likely())
            .factIfAny(
                    "rodPlay", Likely.KIND, "channel less rod", x -> x.slotFit().map(SlotFit::likely))
            .factIfAny(
                    "rodFit",
                    Kind.code(SlotFit.Fit.class),
                    "of the rod",
                    x -> x.slotFit().map(SlotFit::fit))
            .factIfAny("reached", Kind.answer(Reached.FORM), "how far the air has reached", NeckWeather::reached)
            .factIfAny("relief", Likely.KIND, "added to it; positive forward", NeckWeather::likelyRelief)
            .factIfAny("lag", Kind.answer(Lag.FORM), "the most on the way to balance", NeckWeather::lag)
            .finds("neck-weather", "{neck}, moisture {moisture}")
            .line("reached", "so far", "{reached}")
            .line("fretEndsAtNut", "fret ends at nut", "{fretEndsAtNut} on each side")
            .line("fretEndsAtLastFret", "at the last fret", "{fretEndsAtLastFret} on each side")
            .line("neckAtBody", "neck at the body", "{neckAtBody} in width")
            .line("rodPlay", "rod clearance", "{rodPlay}: {rodFit}")
            .line("relief", "relief", "{relief} added")
            .line("lag", "relief on the way", "{lag}")
            .line("rings", "rings", "not known: any way they can lie")
            .note(
                    "estimate",
                    x -> x.given().isEmpty(),
                    "Estimate (Wood Handbook 2010, Eq. 4-5 and 13-3): balance before and after, bare wood,")
            .note(
                    "estimate",
                    x -> x.given().isPresent(),
                    "Estimate (Wood Handbook 2010, Eq. 4-5 and 13-3): balance before, bare wood,")
            .note("estimate", "parts free to move across; a finish slows it.");

    private final Moistures moistures;
    /** In the new air; NaN until the wood is in balance. */
    private final double days;

    private final Neck neck;
    private final StiffnessReadings readings;
    private final Supplier<Optional<Likely<Length>>> relief = new Once<>(this::reliefAdded);
    private final Supplier<Optional<Lag>> lag = new Once<>(this::lagOnTheWay);
    private final Supplier<MoistureBow.Bends> bends;

    NeckWeather(Moistures moistures, OptionalDouble days, Neck neck, StiffnessReadings readings) {
        this(moistures, days, neck, readings, new Once<>(() -> bends(neck, readings)));
    }

    private NeckWeather(
            Moistures moistures,
            OptionalDouble days,
            Neck neck,
            StiffnessReadings readings,
            Supplier<MoistureBow.Bends> bends) {
        super(FORM, neck.style());
        NeckModel.boardWood(neck);
        this.bends = bends;
        this.moistures = moistures;
        this.days = days.orElse(Double.NaN);
        this.neck = neck;
        this.readings = readings;
    }

    /**
     * {@return the same with what has been read of the neck's stiffness}
     *
     * @param others in any order
     */
    public NeckWeather knowing(StiffnessReadings others) {
        return new NeckWeather(moistures, given(), neck, Objects.requireNonNull(others, "readings"));
    }

    /** The same neck in another air, its bends worked out once for both. */
    NeckWeather in(Moistures other, OptionalDouble otherDays) {
        return new NeckWeather(other, otherDays, neck, readings, bends);
    }

    private static MoistureBow.Bends bends(Neck neck, StiffnessReadings readings) {
        StrungNeck strung = StrungNeck.usual(neck).knowing(readings);
        return new MoistureBow.Bends(strung, neck.strings().isPresent() ? strung.pull() : StringPull.NONE);
    }

    private AirInWood inBoard(double after) {
        return AirInWood.of(style().amount(neck.boardThicknessAtMm(0)), after).gluedOnOneFace();
    }

    private AirInWood inNeck(double after) {
        double depth = neck.backDepthAtMm(MIDDLE * neck.bodyJointMm());
        return AirInWood.of(style().amount(depth), after).gluedOnOneFace();
    }

    private OptionalDouble given() {
        return Double.isNaN(days) ? OptionalDouble.empty() : OptionalDouble.of(days);
    }

    private Optional<Reached> reached() {
        return given().isEmpty() ? Optional.empty() : Optional.of(new Reached(inBoard(days), inNeck(days)));
    }

    private SizeChange ofBoard(double mm) {
        SizeChange change = SizeChange.of(moistures, mm, NeckModel.boardWood(neck), style());
        return reached().map(air -> change.after(air.board)).orElse(change);
    }

    private SizeChange ofNeck(double mm) {
        SizeChange change = neck.strips().isEmpty()
                ? SizeChange.of(moistures, mm, NeckModel.wood(neck), style())
                : SizeChange.of(moistures, mm, neck.strips(), neck.stripEdgesMm(), style());
        return reached().map(air -> change.after(air.neck)).orElse(change);
    }

    /** {@return the fret ends at the nut; against the fingerboard's edges there} */
    public FretSprout fretEndsAtNut() {
        return new FretSprout(ofBoard(2 * neck.halfWidthAtMm(0)));
    }

    /** {@return the fret ends at the last fret; against the fingerboard's edges there} */
    public FretSprout fretEndsAtLastFret() {
        double x = neck.scale().fretMm(neck.frets());
        return new FretSprout(ofBoard(2 * neck.halfWidthAtMm(x)));
    }

    /** {@return the change of the neck's width at the body joint, under the fingerboard} */
    public SizeChange neckAtBody() {
        return ofNeck(2 * neck.halfWidthAtMm(neck.bodyJointMm()));
    }

    /** {@return how the rod fits its channel, if there is one; the side clearance before and after, or nothing} */
    public Optional<SlotFit> slotFit() {
        return neck.channel()
                .filter(channel -> channel.rod().isPresent())
                .map(channel -> new SlotFit(
                        ofNeck(channel.widthMm()), channel.reinforcement().widthMm()));
    }

    /**
     * {@return the relief that the change of air adds, from fret 1 to the body joint, positive forward; nothing where no beam can
     * be made of the neck}
     */
    public Optional<Amount<Length>> relief() {
        return likelyRelief().map(Likely::amount);
    }

    /** {@return the 95 % interval of that relief: movement along the grain, speed of the moisture, woods} */
    public Optional<Interval<Length>> reliefInterval() {
        return likelyRelief().map(Likely::interval);
    }

    private Optional<Likely<Length>> likelyRelief() {
        return relief.get();
    }

    private Optional<Likely<Length>> reliefAdded() {
        return bend(bow -> bow.after(moistures.change(), style().unit()));
    }

    private Optional<Lag> lag() {
        return lag.get();
    }

    private Optional<Lag> lagOnTheWay() {
        return moistures.change() == 0
                ? Optional.empty()
                : bend(bow -> new Lag(bow.greatestLag(moistures.change()), style()));
    }

    /** Nothing where the channel is through the back, or the strings' tension is not known. */
    private <A> Optional<A> bend(Function<MoistureBow, A> answer) {
        try {
            double after = given().orElse(0);
            return Optional.of(
                    answer.apply(new MoistureBow(bends.get(), inBoard(after), inNeck(after), given().isEmpty())));
        } catch (IllegalArgumentException | ArithmeticException none) {
            return Optional.empty();
        }
    }

    @Override
    protected Object[] parts() {
        return new Object[] {moistures, days, neck, readings};
    }
}
