package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A straight slot that does not run along the middle: its offset at two stations and any other, and its skew, such as
 * {@code skew 0.0027 deg, 0.014 mm from end to end}. Immutable.
 *
 * <p>Offsets are positive where the slot lies too far from the fence. Stations are in mm from the nut, positive toward
 * the body.
 */
public final class SlotLine extends ValueAnswer {

    private static final Form<SlotLine> FORM = Form.<SlotLine>of("slot-line")
            .fact("skew", Kind.AMOUNT, "positive: the slot draws away from the fence toward the body", SlotLine::skew)
            .fact("endToEnd", Kind.MM, "change of the offset from start to end", SlotLine::endToEndMm)
            .fact("length", Kind.MM, "from start to end", line -> line.endMm - line.startMm)
            .fact("start", Kind.MM, "station from the nut", line -> line.startMm)
            .fact("startOffset", Kind.ESTIMATE, "positive: too far from the fence", l -> l.estimate(l.startOffsetMm))
            .fact("end", Kind.MM, "station from the nut", line -> line.endMm)
            .fact("endOffset", Kind.ESTIMATE, "positive: too far from the fence", l -> l.estimate(l.endOffsetMm))
            .phrase("startPlace", line -> line.startOffsetMm == 0, "in the middle")
            .phrase("startPlace", line -> line.startOffsetMm < 0, "{startOffset:size value} nearer the fence")
            .phrase("startPlace", "{startOffset:size value} farther from the fence")
            .phrase("endPlace", line -> line.endOffsetMm == 0, "in the middle")
            .phrase("endPlace", line -> line.endOffsetMm < 0, "{endOffset:size value} nearer the fence")
            .phrase("endPlace", "{endOffset:size value} farther from the fence")
            .phrase("atStart", line -> line.startMm == 0, "the nut")
            .phrase("atStart", "{start:..3}")
            .phrase("atEnd", line -> line.endMm == 0, "the nut")
            .phrase("atEnd", "{end:..3}")
            .phrase("u", ", u {startOffset:u}")
            .finds(
                    "line",
                    "skew {skew:size 4}, {endToEnd:size text} over {length:brief}: {startPlace} at {atStart}, {endPlace} at {atEnd}{u}");

    private final double startOffsetMm;
    private final double endOffsetMm;
    private final double startMm;
    private final double endMm;
    private final double uncertaintyMm;

    SlotLine(
            double startOffsetMm,
            double endOffsetMm,
            double startMm,
            double endMm,
            double uncertaintyMm,
            LengthStyle style) {
        super(FORM, style);
        this.startOffsetMm = startOffsetMm + 0.0;
        this.endOffsetMm = endOffsetMm + 0.0;
        this.startMm = startMm + 0.0;
        this.endMm = endMm + 0.0;
        this.uncertaintyMm = uncertaintyMm + 0.0;
    }

    /**
     * {@return a line from the offsets at two stations, as uncertain as the less certain of its ends}
     *
     * @param startOffset offset at the first station
     * @param start first station from the nut
     * @param endOffset offset at the second station
     * @param end second station, more than the first
     * @throws IllegalArgumentException if the second station is not beyond the first
     */
    public static SlotLine of(
            SlotOffset startOffset, Quantity<Length> start, SlotOffset endOffset, Quantity<Length> end) {
        double x0 = LibraryUnits.mm(start, "first station");
        double x1 = LibraryUnits.mm(end, "second station");
        if (!(x1 > x0)) {
            throw LibraryUnits.refused(
                    "second station",
                    "more-than",
                    "more than the first, " + Amount.from(start, "start").toString(),
                    end);
        }
        double u = Math.max(
                Objects.requireNonNull(startOffset, "startOffset").uncertaintyMm(),
                Objects.requireNonNull(endOffset, "endOffset").uncertaintyMm());
        return new SlotLine(startOffset.amountMm(), endOffset.amountMm(), x0, x1, u, startOffset.style());
    }

    /**
     * {@return the offset at a station; beyond the ends the line goes on straight}
     *
     * @param station from the nut, positive toward the body
     */
    public SlotOffset at(Quantity<Length> station) {
        return SlotOffset.ofMm(offsetMmAt(LibraryUnits.mm(station, "station")), uncertaintyMm, style());
    }

    /**
     * {@return the offset at a station in mm, positive where the slot lies too far from the fence}
     *
     * @param stationMm from the nut in mm
     */
    public double offsetMmAt(double stationMm) {
        return startOffsetMm + slope() * (LibraryUnits.stationMm(stationMm) - startMm);
    }

    /** {@return the angle of slot and middle, positive where the slot draws away from the fence toward the body} */
    public Amount<Angle> skew() {
        return Amount.ofLibrary(StrictMath.atan(slope()), ShopUnit.DEGREE);
    }

    /** {@return by how much the offset changes from the line's start to its end; end less start} */
    public Amount<Length> endToEnd() {
        return style().amount(endToEndMm());
    }

    private double endToEndMm() {
        return endOffsetMm - startOffsetMm;
    }

    private Estimate<Length> estimate(double offsetMm) {
        return Estimate.of(style().amount(offsetMm), style().amount(uncertaintyMm));
    }

    private double slope() {
        return (endOffsetMm - startOffsetMm) / (endMm - startMm);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {startOffsetMm, endOffsetMm, startMm, endMm, uncertaintyMm};
    }
}
