package org.neckgeom.channel;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Head;
import org.neckgeom.shop.Cutter;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The stop blocks that limit a slot: their distances along the fence from the cutter's centre and from both its edges.
 * Immutable.
 *
 * <p>The slot ends beyond the cutter's centre by half the slot that one run cuts: the cutter's radius and half its runout. The
 * work starts with its trailing end against the rear stop and is fed until its leading end meets the front stop. For a slot from x_s to x_e in work from x_h to x_b and a
 * cutter of that half r, head end leading: rear stop {@code x_b - (x_s + r)}, front stop {@code (x_e - r) - x_h}. Exact. The
 * ends are the blank's until {@link #headOn}, {@link #headEndAt} or {@link #heelEndAt} gives the real ones. Where the
 * slot runs out of the work there is no stop.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class StopBlocks extends ValueAnswer {

    /** Less than a tenth of a thou is not printed. */
    private static final double SEEN_MM = 0.00254;

    private static final double OPEN_MM = 1e-9;

    /** How far a stop block reaches over the head's tip; common practice. */
    private static final double OVER_THE_TIP_MM = 3;

    private static final Form<StopBlocks> FORM = Form.<StopBlocks>of("slot-stops")
            .fact("leading", Kind.code(End.class), "which end of the blank meets the cutter first", StopBlocks::leading)
            .finds("stops", "Stops, {leading} end leading")
            .factIfAny(
                    "rear",
                    Kind.answer(StopPlace.FORM),
                    "where the trailing end lies when the cut begins",
                    stops -> closed(stops.rear()))
            .line("rear", "rear stop", "{rear}")
            .line("rear", "rear stop", stops -> stops.rear().isOpen(), "none: the slot is open there, feed in")
            .factIfAny("front", Kind.answer(StopPlace.FORM), "the end of the cut", stops -> closed(stops.front()))
            .line("front", "front stop", "{front}")
            .line("front", "front stop", stops -> stops.front().isOpen(), "none: the slot is open there, feed through")
            .fact("cutterRadius", Kind.MM, "with half the runout; also of the slot's ends", stops -> stops.radiusMm)
            .fact("start", Kind.ESTIMATE, "of the slot from the nut: the end cut first", StopBlocks::start)
            .fact("end", Kind.ESTIMATE, "of the slot from the nut: the end cut last", StopBlocks::end)
            .line(
                    "marks",
                    "or marks",
                    "on the fence {cutterRadius:mark} before and behind the cutter's centre, on the blank at"
                            + " {start:mark} and {end:mark} from the nut:\nstart with the first over the mark in front, stop with the second over the mark behind")
            .note(
                    "round-ends",
                    (stops, style) -> !stops.rear().isOpen() && !stops.front().isOpen(),
                    "the slot ends are round, radius {cutterRadius:brief}: chisel them square, or run {cutterRadius:brief} farther")
            .note(
                    "round-end",
                    (stops, style) -> stops.rear().isOpen() != stops.front().isOpen(),
                    "the slot's closed end is round, radius {cutterRadius:brief}: chisel it square, or run {cutterRadius:brief} farther")
            .fact("tipBeforeNut", Kind.MM, "where the stop meets a head that is on", s -> s.ofHead(-s.headEndMm))
            .fact(
                    "tipHeight",
                    Kind.MM,
                    "of a head that is on, glue face down",
                    s -> s.ofHead(s.tipHeight().libraryValue()))
            .fact(
                    "leastBlock",
                    Kind.MM,
                    "height, for a head that is on",
                    s -> s.ofHead(s.leastBlock().libraryValue()))
            .note(
                    "head-on",
                    "the head is on: its stop meets the tip, {tipBeforeNut:mark} before the nut and, glue face down,"
                            + " {tipHeight:mark} above the table: a block of {leastBlock:mark} or more with a pad on it; a lower one lifts the head")
            .fact("offMark", Kind.MM, "how far stops and marks are from those of a rule at most", StopBlocks::offMarkMm)
            .note(
                    "off-the-mark",
                    (stops, style) -> stops.offMarkMm(style) > SEEN_MM,
                    "stops and marks to the nearest 1/64 in: up to {offMark:small} off")
            .note("setting", "standard uncertainty of stops and channel ends: {start:u}")
            .fact("firstMove", Kind.MM, "toward the cutter, for two runs", s -> s.ofTwoRuns(s.runApartMm / 2))
            .fact("secondMove", Kind.MM, "away from the cutter, for two runs", s -> s.ofTwoRuns(s.runApartMm))
            .note(
                    "two-runs",
                    "the slot is wider than the cutter: two runs, first the fence {firstMove:text} toward the cutter"
                            + " from the middle, then {secondMove:text} away from it: " + SecondPass.FENCE_AWAY)
            .fact("oneRun", Kind.MM, "wide, of a slot that takes more than two", StopBlocks::oneRunMm)
            .note("ridge", "between them run no more than {oneRun:brief} apart, or a ridge stays");

    private final End leading;
    private final double startMm;
    private final double endMm;
    private final double headEndMm;
    private final double heelEndMm;
    private final double radiusMm;
    private final double runApartMm;
    private final double settingMm;
    private final @Nullable Head head;

    private StopBlocks(
            End leading,
            double startMm,
            double endMm,
            double headEndMm,
            double heelEndMm,
            double radiusMm,
            double runApartMm,
            double settingMm,
            @Nullable Head head,
            LengthStyle style) {
        super(FORM, style);
        this.leading = leading;
        this.startMm = startMm;
        this.endMm = endMm;
        this.headEndMm = headEndMm;
        this.heelEndMm = heelEndMm;
        this.radiusMm = radiusMm;
        this.runApartMm = runApartMm;
        this.settingMm = settingMm;
        this.head = head;
    }

    /**
     * The stops for a slot from one station to another in a blank.
     *
     * @param startMm head end of the slot in mm from the nut
     * @param endMm heel end of the slot
     * @param widthMm wanted width, which may take two runs
     */
    static StopBlocks headLeading(
            double startMm, double endMm, double widthMm, Cutter cutter, Blank blank, LengthStyle style) {
        double head = -blank.nutFromHeadEndMm();
        double apart = Math.max(0, widthMm - cutter.slotWidthMm());
        double r = cutter.slotWidthMm() / 2;
        return new StopBlocks(End.HEAD, startMm, endMm, head, head + blank.lengthMm(), r, apart, 0, null, style);
    }

    /**
     * {@return the stops for the other end leading} The two distances change places, and so do the edges: the other one
     * rides the fence, and an offset changes its side in the blank.
     */
    public StopBlocks turned() {
        End other = leading == End.HEAD ? End.HEEL : End.HEAD;
        return new StopBlocks(
                other, startMm, endMm, headEndMm, heelEndMm, radiusMm, runApartMm, settingMm, head, style());
    }

    /**
     * {@return these stops with the head on already: the stop at the head end meets the head's tip, at {@code x_tip = L
     * cos(pitch) cos(swing) + (W/2) sin|swing|} before the nut} Exact. With the glue face down the tip is {@code L
     * sin(pitch)} above the table, and a lower block lifts the head.
     *
     * @param itsHead as it is now, its width that of its tip
     * @throws IllegalArgumentException if the slot begins beyond the tip
     */
    public StopBlocks headOn(Head itsHead) {
        double tip = HeadContact.tipX(Objects.requireNonNull(itsHead, "head"));
        return headEnd(tip, style().amount(tip), itsHead);
    }

    /**
     * {@return these stops with another head end of the work, where some of the blank is sawn off}
     *
     * @param station from the nut, negative before it, no farther than the slot's start
     * @throws IllegalArgumentException if the slot begins beyond it
     */
    public StopBlocks headEndAt(Quantity<Length> station) {
        return headEnd(LibraryUnits.mm(station, "head end"), station, null);
    }

    private StopBlocks headEnd(double mm, Quantity<Length> station, @Nullable Head on) {
        if (!(mm <= startMm + OPEN_MM)) {
            throw LibraryUnits.refused(
                    "head end", "at-most", style().brief(startMm) + " or less (the slot's start)", station);
        }
        return new StopBlocks(leading, startMm, endMm, mm, heelEndMm, radiusMm, runApartMm, settingMm, on, style());
    }

    /**
     * {@return these stops with another heel end of the work, where some of the blank is sawn off}
     *
     * @param station from the nut, no nearer than the slot's end
     * @throws IllegalArgumentException if the slot ends beyond it
     */
    public StopBlocks heelEndAt(Quantity<Length> station) {
        double mm = LibraryUnits.mm(station, "heel end");
        if (!(mm >= endMm - OPEN_MM)) {
            throw LibraryUnits.refused(
                    "heel end", "at-least", style().brief(endMm) + " or more (the slot's end)", station);
        }
        return new StopBlocks(leading, startMm, endMm, headEndMm, mm, radiusMm, runApartMm, settingMm, head, style());
    }

    /** {@return how high the tip of a head that is on is above the table, the glue face down; 0 where no head is on} */
    public Amount<Length> tipHeight() {
        return style().amount(head == null ? 0 : HeadContact.tipHeight(head));
    }

    /** Not there without a head, or where the head end is open. */
    private double ofHead(double mm) {
        return head != null && !atHeadEnd().isOpen() ? mm : Double.NaN;
    }

    private double ofTwoRuns(double mm) {
        return runApartMm > OPEN_MM ? mm : Double.NaN;
    }

    /** Not there where two runs leave nothing between them. */
    private double oneRunMm() {
        return runApartMm > 2 * radiusMm + OPEN_MM ? 2 * radiusMm : Double.NaN;
    }

    /** {@return how far apart the two runs are of a slot wider than its cutter cuts; 0 where one run is enough} */
    public Amount<Length> runsApart() {
        return style().amount(runApartMm > OPEN_MM ? runApartMm : 0);
    }

    private static Optional<StopPlace> closed(StopPlace place) {
        return place.isOpen() ? Optional.empty() : Optional.of(place);
    }

    /** {@return the least block at the head end, face down: 3 mm over the tip of a head (common practice), or 3 mm} */
    public Amount<Length> leastBlock() {
        return style().amount(tipHeight().libraryValue() + OVER_THE_TIP_MM);
    }

    /**
     * {@return these stops, checked against the block that is at the head end}
     *
     * @param height of the block over the table, {@link #leastBlock} or more
     * @throws IllegalArgumentException if it is lower: the head's face rides up on it
     */
    public StopBlocks block(Quantity<Length> height) {
        double mm = LibraryUnits.mmPositive(height, "stop block height");
        if (mm >= leastBlock().libraryValue()) {
            return this;
        }
        String why = head == null || mm >= tipHeight().libraryValue()
                ? ""
                : "; a lower one meets the head's face " + style().brief(-HeadContact.meetsFaceX(head, mm))
                        + " before the nut and lifts it";
        throw LibraryUnits.refused(
                "stop block height",
                "at-least",
                leastBlock() + " or more (the head's tip is "
                        + style().brief(tipHeight().libraryValue()) + " above the table" + why + ")",
                height);
    }

    /**
     * {@return these stops with the uncertainty of setting one} The channel's end is off by what its stop is off.
     *
     * @param standardUncertainty of one stop, 0 or more
     */
    public StopBlocks settingUncertainty(Quantity<Length> standardUncertainty) {
        double u = LibraryUnits.mmNotNegative(standardUncertainty, "uncertainty of setting");
        return new StopBlocks(leading, startMm, endMm, headEndMm, heelEndMm, radiusMm, runApartMm, u, head, style());
    }

    private double firstMarkMm() {
        return leading == End.HEAD ? startMm : endMm;
    }

    private double lastMarkMm() {
        return leading == End.HEAD ? endMm : startMm;
    }

    private StopPlace atHeadEnd() {
        return new StopPlace(endMm - radiusMm - headEndMm, radiusMm, heelEndMm - endMm <= OPEN_MM, style());
    }

    private StopPlace atHeelEnd() {
        return new StopPlace(heelEndMm - startMm - radiusMm, radiusMm, startMm - headEndMm <= OPEN_MM, style());
    }

    /** {@return how long the work is that lies against the stops: the blank, or what is left of it with a head that is on} */
    public Amount<Length> workLength() {
        return style().amount(heelEndMm - headEndMm);
    }

    /** {@return the ends of the work at which the slot is open; none, one or both} */
    public Set<End> openEnds() {
        Set<End> open = EnumSet.noneOf(End.class);
        if (atHeelEnd().isOpen()) {
            open.add(End.HEAD);
        }
        if (atHeadEnd().isOpen()) {
            open.add(End.HEEL);
        }
        return Collections.unmodifiableSet(open);
    }

    /** {@return where the channel begins, from the nut: the end cut first; u of its stop, 0 where none was given} */
    public Estimate<Length> start() {
        return Estimate.of(style().amount(firstMarkMm()), style().amount(settingMm));
    }

    /** {@return where the channel ends, from the nut: the end cut last; u of its stop, 0 where none was given} */
    public Estimate<Length> end() {
        return Estimate.of(style().amount(lastMarkMm()), style().amount(settingMm));
    }

    /** {@return which end of the blank meets the cutter first} */
    public End leading() {
        return leading;
    }

    /** {@return the stop behind, which the trailing end lies against when the cut begins} */
    public StopPlace rear() {
        return leading == End.HEAD ? atHeelEnd() : atHeadEnd();
    }

    /** {@return the stop in front, which ends the cut} */
    public StopPlace front() {
        return leading == End.HEAD ? atHeadEnd() : atHeelEnd();
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {leading, startMm, endMm, headEndMm, heelEndMm, radiusMm, runApartMm, settingMm, head};
    }

    private double offMarkMm(LengthStyle shown) {
        double marks = Math.max(Math.abs(shown.offMarkMm(startMm)), Math.abs(shown.offMarkMm(endMm)));
        StopPlace rear = rear();
        StopPlace front = front();
        double ends = Math.max(rear.isOpen() ? 0 : rear.offMarkMm(shown), front.isOpen() ? 0 : front.offMarkMm(shown));
        return Math.max(Math.abs(shown.offMarkMm(radiusMm)), Math.max(marks, ends));
    }
}
