package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.design.End;
import org.neckgeom.measure.Estimate;
import org.neckgeom.shop.Cutter;
import org.neckgeom.stock.Blank;
import org.neckgeom.text.Report;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * Where the stop blocks sit that begin and end a slot: distances along the fence from the cutter's centre and from both
 * its edges. Immutable.
 *
 * <p>The slot ends a cutter radius beyond the cutter's centre. The blank starts with its trailing end against the rear
 * stop and is fed until its leading end meets the front stop. For a slot from x_s to x_e in a blank from x_h to x_b and
 * a cutter of radius r, head end leading: rear stop {@code x_b - (x_s + r)}, front stop {@code (x_e - r) - x_h}. Exact.
 * Where the slot runs out of the blank there is no stop.
 */
public final class SlotStops implements SaysLengths<SlotStops> {

    /** Less than a tenth of a thou is not said. */
    private static final double SEEN_MM = 0.00254;

    private static final double OPEN_MM = 1e-9;

    private final End leading;
    private final StopPlace rear;
    private final StopPlace front;
    private final double startMarkMm;
    private final double endMarkMm;
    private final double radiusMm;
    private final double runApartMm;
    private final double settingMm;
    private final LengthStyle style;

    private SlotStops(
            End leading,
            StopPlace rear,
            StopPlace front,
            double startMarkMm,
            double endMarkMm,
            double radiusMm,
            double runApartMm,
            double settingMm,
            LengthStyle style) {
        this.leading = leading;
        this.rear = rear;
        this.front = front;
        this.startMarkMm = startMarkMm;
        this.endMarkMm = endMarkMm;
        this.radiusMm = radiusMm;
        this.runApartMm = runApartMm;
        this.settingMm = settingMm;
        this.style = style;
    }

    /**
     * The stops for a slot from one station to another in a blank.
     *
     * @param startMm head end of the slot in mm from the nut
     * @param endMm heel end of the slot
     * @param widthMm wanted width, which may take two runs
     */
    static SlotStops headLeading(
            double startMm, double endMm, double widthMm, Cutter cutter, Blank blank, LengthStyle style) {
        double r = cutter.diameterMm() / 2;
        double head = -blank.nutFromHeadEndMm();
        double heel = blank.lengthMm() - blank.nutFromHeadEndMm();
        boolean openAtHead = startMm - head <= OPEN_MM;
        boolean openAtHeel = heel - endMm <= OPEN_MM;
        StopPlace rear = new StopPlace(heel - startMm - r, r, openAtHead, style);
        StopPlace front = new StopPlace(endMm - r - head, r, openAtHeel, style);
        double apart = Math.max(0, widthMm - cutter.diameterMm() - cutter.runoutMm());
        return new SlotStops(End.HEAD, rear, front, startMm, endMm, r, apart, 0, style);
    }

    /**
     * Returns the stops for the other end leading. The two distances change places, and so do the edges: the other one
     * rides the fence, and an offset changes its side in the blank.
     *
     * @return the stops
     */
    @SuppressWarnings("ArgumentSelectionDefectChecker") // the ends do change places
    public SlotStops turned() {
        return new SlotStops(
                leading == End.HEAD ? End.HEEL : End.HEAD,
                front,
                rear,
                endMarkMm,
                startMarkMm,
                radiusMm,
                runApartMm,
                settingMm,
                style);
    }

    /**
     * Returns these stops with the uncertainty of setting one. The channel's end is off by what its stop is off.
     *
     * @param standardUncertainty of one stop, 0 or more
     * @return the stops
     */
    public SlotStops setWithin(Quantity<Length> standardUncertainty) {
        double u = HouseUnits.mmNotNegative(standardUncertainty, "uncertainty of setting");
        return new SlotStops(leading, rear, front, startMarkMm, endMarkMm, radiusMm, runApartMm, u, style);
    }

    /**
     * Returns where the channel begins, seen from the nut, with the uncertainty of its stop.
     *
     * @return x of the end cut first; u is 0 where none was told
     */
    public Estimate<Length> start() {
        return Estimate.of(style.amount(startMarkMm), style.amount(settingMm));
    }

    /**
     * Returns where the channel ends, seen from the nut, with the uncertainty of its stop.
     *
     * @return x of the end cut last; u is 0 where none was told
     */
    public Estimate<Length> end() {
        return Estimate.of(style.amount(endMarkMm), style.amount(settingMm));
    }

    /**
     * Returns which end of the blank meets the cutter first.
     *
     * @return the leading end
     */
    public End leading() {
        return leading;
    }

    /**
     * Returns the stop behind, which the trailing end lies against when the cut begins.
     *
     * @return its place
     */
    public StopPlace rear() {
        return rear;
    }

    /**
     * Returns the stop in front, which ends the cut.
     *
     * @return its place
     */
    public StopPlace front() {
        return front;
    }

    @Override
    public SlotStops in(LengthStyle other) {
        return new SlotStops(
                leading,
                rear.in(other),
                front.in(other),
                startMarkMm,
                endMarkMm,
                radiusMm,
                runApartMm,
                settingMm,
                other);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SlotStops that
                && leading == that.leading
                && rear.equals(that.rear)
                && front.equals(that.front)
                && Double.compare(startMarkMm, that.startMarkMm) == 0
                && Double.compare(endMarkMm, that.endMarkMm) == 0
                && Double.compare(runApartMm, that.runApartMm) == 0
                && Double.compare(settingMm, that.settingMm) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(leading, rear, front, startMarkMm, endMarkMm, runApartMm, settingMm);
    }

    private double offMarkMm() {
        double marks = Math.max(Math.abs(style.offMarkMm(startMarkMm)), Math.abs(style.offMarkMm(endMarkMm)));
        double ends = Math.max(rear.isOpen() ? 0 : rear.offMarkMm(), front.isOpen() ? 0 : front.offMarkMm());
        return Math.max(Math.abs(style.offMarkMm(radiusMm)), Math.max(marks, ends));
    }

    /** Returns both stops, the marks that do instead of them, and what the round cutter leaves at the ends. */
    @Override
    public String toString() {
        Report report = Report.titled("Stops, " + leading + " end leading")
                .row("rear stop", rear.isOpen() ? "none: the slot is open there, feed in" : rear)
                .row("front stop", front.isOpen() ? "none: the slot is open there, feed through" : front)
                .row(
                        "or marks",
                        "on the fence " + style.mark(radiusMm) + " before and behind the cutter's centre, on the"
                                + " blank at " + style.mark(startMarkMm) + " and " + style.mark(endMarkMm)
                                + ":\nstart with the first over the mark in front, stop with the second over the mark behind")
                .note("the ends come out round, radius " + style.brief(radiusMm)
                        + ": chisel them square, or run that much farther");
        double off = offMarkMm();
        if (off > SEEN_MM) {
            report.note("stops and marks to the nearest 1/64 in: up to " + style.small(off) + " off");
        }
        if (settingMm > 0) {
            report.note("each stop set within u " + style.small(settingMm) + ", and so is the channel's end");
        }
        if (runApartMm > OPEN_MM) {
            report.note("the channel is wider than the cutter: two runs, the fence " + style.text(runApartMm / 2)
                    + " either side of the middle");
        }
        return report.note("turned end for end the two distances change places and the other edge rides the fence")
                .toString();
    }
}
