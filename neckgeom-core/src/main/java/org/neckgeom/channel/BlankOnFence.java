package org.neckgeom.channel;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.shop.Fence;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * How a neck blank runs along the fence: its edges, the fence, a strip between them, a head that is on already. Immutable.
 *
 * <p>It places the slot in the blank along the whole channel. With c the distance from the fence to the slot's middle, the
 * offset at a station is {@code e(x) = c - r(x) - t(x) + E(x) - W(x)/2}, positive when the slot lies too far from the fence: W
 * the blank's width, t the strip's thickness, E how far the edge on the fence is proud of its chord, r how far the fence
 * holds the edge's line off the line of its infeed half. A one-piece fence and a straight edge have r = 0. What the trial
 * piece saw of r and t is in c already and is taken out again. Exact.
 *
 * <p>Defaults: the head end leads, no strip, the head not on, edges straight, a trial piece of 200 mm read at its middle, the
 * edges may be planed. Every station is from the nut, positive toward the body.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class BlankOnFence extends ValueAnswer {

    private static final Form<BlankOnFence> FORM = Form.<BlankOnFence>of("blank-on-fence")
            .finds("head-end-leads", run -> run.headLeads, "Blank on the fence, head end leading")
            .finds("heel-end-leads", "Blank on the fence, heel end leading")
            .row("blank", "blank", Kind.ANSWER, "with its nut line", run -> run.blank)
            .row("channel", "channel", Kind.ANSWER, "to be cut", BlankOnFence::channel)
            .row("fence", "fence", Kind.ANSWER, "the cutter at the middle of its length", BlankOnFence::fence)
            .factIfAny(
                    "stripStart",
                    Kind.MM,
                    "thickness at its head end",
                    r -> r.strip().map(Strip::atStartMm))
            .factIfAny(
                    "stripEnd",
                    Kind.MM,
                    "thickness at its heel end",
                    r -> r.strip().map(Strip::atEndMm))
            .factIfAny(
                    "stripAtTheTrial",
                    Kind.FLAG,
                    "whether the trial cut had it",
                    r -> r.strip().map(Strip::atTheTrial))
            .phrase(
                    "to",
                    run -> run.strip()
                            .filter(strip -> strip.atStartMm != strip.atEndMm)
                            .isPresent(),
                    " to {stripEnd}")
            .phrase("trial", run -> run.strip().filter(Strip::atTheTrial).isPresent(), ", at the trial cut too")
            .phrase("trial", ", not at the trial cut")
            .line("strip", "strip", "{stripStart}{to}{trial}")
            .factIfAny("head", Kind.ANSWER, "on already", run -> Optional.ofNullable(run.head))
            .line("head", "head on", "{head}")
            .fact("crown", Kind.MM, "of the edge on the fence; below 0 for a hollow", run -> run.crown)
            .line("crown", "edge", run -> run.crown > 0, "crowned by {crown:size small}")
            .line("crown", "edge", run -> run.crown < 0, "hollow by {crown:size small}");

    /** Length of the trial piece where none is given, in mm; common practice. */
    public static final double DEFAULT_TRIAL_PIECE_MM = 200;

    /** Places between two changes of contact at which a shift that curves is looked at. */
    private static final int PER_PHASE = 8;

    private static final double STRAIGHT_MM = 1e-9;

    private final Blank blank;
    private final Channel channel;
    private final Fence fence;
    private final boolean headLeads;
    private final double crown;
    private final @Nullable Strip strip;
    private final @Nullable Head head;
    private final double trialPiece;
    private final boolean mayBePlaned;

    /** A strip on the fence side of the shaft: thickness at two stations, its uncertainty, and whether the trial had it. */
    private record Strip(
            double startMm, double endMm, double atStartMm, double atEndMm, double uncertaintyMm, boolean atTheTrial) {

        double thicknessMm(double x) {
            return atStartMm + (atEndMm - atStartMm) * (x - startMm) / (endMm - startMm);
        }
    }

    private BlankOnFence(
            Blank blank,
            Channel channel,
            Fence fence,
            boolean headLeads,
            double crown,
            @Nullable Strip strip,
            @Nullable Head head,
            double trialPiece,
            boolean mayBePlaned) {
        super(FORM, blank.style());
        this.blank = blank;
        this.channel = channel;
        this.fence = fence;
        this.headLeads = headLeads;
        this.crown = crown;
        this.strip = strip;
        this.head = head;
        this.trialPiece = trialPiece;
        this.mayBePlaned = mayBePlaned;
    }

    /**
     * {@return a blank on a fence, its head end leading}
     *
     * @param blank with its nut line laid out
     * @param channel to be cut
     * @param fence with the cutter at the middle of its length
     * @throws IllegalArgumentException if the channel does not lie in the blank
     */
    public static BlankOnFence of(Blank blank, Channel channel, Fence fence) {
        Objects.requireNonNull(blank, "blank");
        Objects.requireNonNull(fence, "fence");
        RodSlot.of(channel).requireFits(blank);
        return new BlankOnFence(blank, channel, fence, true, 0, null, null, DEFAULT_TRIAL_PIECE_MM, true);
    }

    /** {@return the same with the heel end leading; the blank on the fence} */
    public BlankOnFence heelLeading() {
        return new BlankOnFence(blank, channel, fence, false, crown, strip, head, trialPiece, mayBePlaned);
    }

    /**
     * {@return the same with an edge that is not straight; the blank on the fence}
     *
     * @param proudInTheMiddle how far the edge on the fence is proud of the chord through its ends, below 0 for a hollow edge
     */
    public BlankOnFence edgeCrowned(Quantity<Length> proudInTheMiddle) {
        double mm = LibraryUnits.mm(proudInTheMiddle, "crown of the edge");
        return new BlankOnFence(blank, channel, fence, headLeads, mm, strip, head, trialPiece, mayBePlaned);
    }

    /**
     * {@return the same with a parallel strip, nut to heel end, at the trial cut too: of it only its u stays}
     *
     * @param thickness with its standard uncertainty, more than 0
     */
    public BlankOnFence strip(Estimate<Length> thickness) {
        double t = stripMm(thickness);
        return withStrip(new Strip(0, heelEndMm(), t, t, thickness.libraryUncertainty(), true));
    }

    /**
     * {@return the same with a strip that is thicker at one end, nut to heel end, at the trial cut too}
     *
     * @param atNut thickness at the nut with its standard uncertainty, more than 0
     * @param atHeelEnd thickness at the heel end, more than 0
     */
    public BlankOnFence strip(Estimate<Length> atNut, Quantity<Length> atHeelEnd) {
        double end = LibraryUnits.mmPositive(atHeelEnd, "strip thickness at the heel end");
        return withStrip(new Strip(0, heelEndMm(), stripMm(atNut), end, atNut.libraryUncertainty(), true));
    }

    private static double stripMm(Estimate<Length> thickness) {
        if (!(Objects.requireNonNull(thickness, "strip thickness").libraryValue() > 0)) {
            throw LibraryUnits.refused(
                    "strip thickness", "more-than", "more than 0 " + thickness.unit(), thickness.value());
        }
        return thickness.libraryValue();
    }

    /**
     * {@return the same with the strip missing at the trial cut: its thickness moves the slot by all of itself}
     *
     * @throws IllegalArgumentException if there is no strip
     */
    public BlankOnFence trialWithoutStrip() {
        if (strip == null) {
            throw Refusal.of("a trial without the strip", "fit", "follow strip(thickness)", "there is no strip", "");
        }
        return withStrip(
                new Strip(strip.startMm, strip.endMm, strip.atStartMm, strip.atEndMm, strip.uncertaintyMm, false));
    }

    /** A strip whose thickness was read at two stations. */
    BlankOnFence stripMm(double startMm, double endMm, double atStartMm, double atEndMm, boolean atTheTrial) {
        return withStrip(new Strip(startMm, endMm, atStartMm, atEndMm, 0, atTheTrial));
    }

    private Optional<Strip> strip() {
        return Optional.ofNullable(strip);
    }

    private BlankOnFence withStrip(Strip with) {
        return new BlankOnFence(blank, channel, fence, headLeads, crown, with, head, trialPiece, mayBePlaned);
    }

    /**
     * {@return the same with a head that is on already and rides on the fence: no strip keeps it clear}
     *
     * @param itsHead wings and all; a swing counts as toward the fence
     */
    public BlankOnFence headOn(Head itsHead) {
        Objects.requireNonNull(itsHead, "head");
        return new BlankOnFence(blank, channel, fence, headLeads, crown, strip, itsHead, trialPiece, mayBePlaned);
    }

    /**
     * {@return the same with another trial piece, read at its middle; it counts on a split fence only}
     *
     * @param length more than 0
     */
    public BlankOnFence trialPiece(Quantity<Length> length) {
        double mm = LibraryUnits.mmPositive(length, "trial piece length");
        return new BlankOnFence(blank, channel, fence, headLeads, crown, strip, head, mm, mayBePlaned);
    }

    /** {@return the same with edges that may not be planed any more; the blank on the fence} */
    public BlankOnFence edgesStay() {
        return new BlankOnFence(blank, channel, fence, headLeads, crown, strip, head, trialPiece, false);
    }

    /** {@return the blank} */
    public Blank blank() {
        return blank;
    }

    /** {@return the channel} */
    public Channel channel() {
        return channel;
    }

    /** {@return the fence} */
    public Fence fence() {
        return fence;
    }

    boolean mayBePlaned() {
        return mayBePlaned;
    }

    private double headEndMm() {
        return -blank.nutFromHeadEndMm();
    }

    private double heelEndMm() {
        return blank.lengthMm() - blank.nutFromHeadEndMm();
    }

    double widthMm(double x) {
        return blank.widthAtMm(x);
    }

    /** Variance that a strip adds to the slot's place: none where the trial piece ran on it too. */
    double stripVariance() {
        return strip == null || strip.atTheTrial ? 0 : strip.uncertaintyMm * strip.uncertaintyMm;
    }

    /**
     * How far the slot lies nearer the fence at a station than straight edges on a straight fence would put it, less what the
     * trial piece saw of that: r(x) + t(x) - E(x).
     */
    double shiftMm(double x) {
        return shift(riding(), x);
    }

    private double shift(Riding riding, double x) {
        return riding.at(x) - edgeMm(x) + stripMm(x) - trialShift();
    }

    private double stripMm(double x) {
        return strip == null || strip.atTheTrial && strip.atStartMm == strip.atEndMm
                ? 0
                : strip.thicknessMm(x) - (strip.atTheTrial ? strip.thicknessMm((strip.startMm + strip.endMm) / 2) : 0);
    }

    private double edgeMm(double x) {
        return strip == null ? crownMm(x) : 0;
    }

    private double crownMm(double x) {
        if (crown == 0) {
            return 0;
        }
        double part = (2 * x - headEndMm() - heelEndMm()) / blank.lengthMm();
        return crown * (1 - part * part);
    }

    private double trialShift() {
        return new Riding(0, trialPiece, true, fence, null).at(trialPiece / 2);
    }

    private Riding riding() {
        DoubleUnaryOperator edge = crown == 0 || strip != null ? null : this::crownMm;
        double from = strip != null || head != null ? 0 : headEndMm();
        return new Riding(from, heelEndMm(), headLeads, fence, edge, headSide());
    }

    /** The head's side from its corner by the nut to its tip, where they reach past the shaft's edge. */
    private double[] headSide() {
        if (head == null) {
            return new double[0];
        }
        double shaft = blank.widthMm() / 2 + (strip == null ? 0 : strip.atStartMm);
        return HeadContact.side(head, head.widthMm(), Math.abs(head.swingRad()), shaft);
    }

    /** Stations of the channel at which the shift is needed: its ends, and where it bends. */
    double[] knots() {
        double start = channel.startMm();
        double end = channel.endMm();
        Riding riding = riding();
        if (riding.isStraight()) {
            return new double[] {start, end};
        }
        double[] changes = changes(start, end);
        DoubleStream.Builder knots = DoubleStream.builder().add(start);
        for (int i = 1; i < changes.length; i++) {
            double from = changes[i - 1];
            double to = changes[i];
            double bend = shift(riding, (from + to) / 2) - (shift(riding, from) + shift(riding, to)) / 2;
            if (Math.abs(bend) > STRAIGHT_MM) {
                for (int k = 1; k < PER_PHASE; k++) {
                    knots.add(from + (to - from) * k / PER_PHASE);
                }
            }
            knots.add(to);
        }
        return knots.build().toArray();
    }

    /** Stations at which an end of the work comes to, or leaves, an end of a half of the fence. */
    private double[] changes(double start, double end) {
        double half = fence.lengthMm() / 2;
        double gap = fence.gapMm() / 2;
        double[] ends = {strip != null || head != null ? 0 : headEndMm(), heelEndMm()};
        double[] sides = headSide();
        DoubleStream.Builder all = DoubleStream.builder().add(start).add(end);
        for (double at : ends) {
            add(all, at, gap, half, start, end);
        }
        for (int i = 0; i < sides.length; i += 2) {
            add(all, sides[i], gap, half, start, end);
        }
        return Arrays.stream(all.build().toArray()).sorted().distinct().toArray();
    }

    private static void add(DoubleStream.Builder all, double at, double gap, double half, double start, double end) {
        for (double along : new double[] {-half, -gap, gap, half}) {
            // A drop at a half's end: both of its sides are looked at.
            for (double x : new double[] {at + along, Math.nextUp(at + along), Math.nextDown(at + along)}) {
                if (x > start && x < end) {
                    all.add(x);
                }
            }
        }
    }

    /** {@return where the slot runs when the fence centres the band of its offsets best, nothing uncertain} */
    public SlotPlace centred() {
        return place(centredSettingMm(), 0, 0, Double.POSITIVE_INFINITY, style());
    }

    /** The setting of the fence that centres the slot best. */
    double centredSettingMm() {
        return -place(0, 0, 0, Double.POSITIVE_INFINITY, style()).middleMm();
    }

    /**
     * The place for a setting.
     *
     * @param setting distance from the fence to the slot's middle
     * @param variance that all stations share: of the setting and of the neck's own cut
     * @param endUncertainty of each end's own part of the offset
     */
    SlotPlace place(
            double setting, double variance, double endUncertainty, double degreesOfFreedom, LengthStyle shown) {
        double[] stations = knots();
        double[] shifts = Arrays.stream(stations).map(this::shiftMm).toArray();
        double[] offsets = new double[stations.length];
        for (int i = 0; i < offsets.length; i++) {
            offsets[i] = setting - shifts[i] - widthMm(stations[i]) / 2;
        }
        return new SlotPlace(
                stations, offsets, shifts, variance, endUncertainty, endUncertainty, degreesOfFreedom, shown);
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {blank, channel, fence, headLeads, crown, strip, head, trialPiece, mayBePlaned};
    }
}
