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
 * A straight slot that is not parallel to the centreline: its slot offset at any station, and its skew, such as
 * {@code skew 0.0027 deg, 0.014 mm from end to end}. Immutable.
 *
 * <p>Offsets are positive where the slot lies too far from the fence. Stations are in mm from the nut, positive toward
 * the body.
 */
public final class SlotLine extends ValueAnswer {

    private static final Form<SlotLine> FORM = Form.<SlotLine>of("slot-line")
            .fact("skew", Kind.AMOUNT, "positive: the slot draws away from the fence toward the body", SlotLine::skew)
            .fact("skewUncertainty", Kind.AMOUNT, "of the skew", SlotLine::skewUncertainty)
            .fact("endToEnd", Kind.MM, "change of the offset from start to end", SlotLine::endToEndMm)
            .fact("length", Kind.MM, "from start to end", line -> line.endMm - line.startMm)
            .fact("start", Kind.MM, "station from the nut", line -> line.startMm)
            .fact("startOffset", Kind.ESTIMATE, "positive: too far from the fence", l -> l.estimate(l.startMm))
            .fact("end", Kind.MM, "station from the nut", line -> line.endMm)
            .fact("endOffset", Kind.ESTIMATE, "positive: too far from the fence", l -> l.estimate(l.endMm))
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
            .phrase("u", l -> l.startUncertaintyMm == l.endUncertaintyMm, ", u {startOffset:u}")
            .phrase("u", ", u {startOffset:u} and {endOffset:u}")
            .finds(
                    "line",
                    "skew {skew:size 4}, {endToEnd:size text} over {length:brief}: {startPlace} at {atStart}, {endPlace} at {atEnd}{u}");

    private final double startOffsetMm;
    private final double endOffsetMm;
    private final double startMm;
    private final double endMm;
    private final double startUncertaintyMm;
    private final double endUncertaintyMm;
    private final double sharedMm;

    /** A line with standard uncertainties of the offset at each end and of what both have in common. */
    SlotLine(
            double startOffsetMm,
            double startUncertaintyMm,
            double startMm,
            double endOffsetMm,
            double endUncertaintyMm,
            double endMm,
            double sharedMm,
            LengthStyle style) {
        super(FORM, style);
        this.startOffsetMm = startOffsetMm + 0.0;
        this.endOffsetMm = endOffsetMm + 0.0;
        this.startMm = startMm + 0.0;
        this.endMm = endMm + 0.0;
        this.startUncertaintyMm = startUncertaintyMm + 0.0;
        this.endUncertaintyMm = endUncertaintyMm + 0.0;
        this.sharedMm = sharedMm + 0.0;
    }

    /**
     * {@return a line from the offsets at two stations, read independently}
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
        Objects.requireNonNull(startOffset, "startOffset");
        Objects.requireNonNull(endOffset, "endOffset");
        return new SlotLine(
                startOffset.amountMm(),
                startOffset.uncertaintyMm(),
                x0,
                endOffset.amountMm(),
                endOffset.uncertaintyMm(),
                x1,
                0,
                startOffset.style());
    }

    /**
     * {@return the same line with an error that both of its offsets have in common, such as the zero of the instrument}
     *
     * @param uncertainty standard uncertainty of that error, beside those of the two offsets; 0 or more
     */
    public SlotLine sharing(Quantity<Length> uncertainty) {
        double u = LibraryUnits.mm(uncertainty, "shared uncertainty");
        if (!(u >= 0)) {
            throw LibraryUnits.refused("shared uncertainty", "at-least", "0 mm or more", uncertainty);
        }
        return new SlotLine(
                startOffsetMm, startUncertaintyMm, startMm, endOffsetMm, endUncertaintyMm, endMm, u, style());
    }

    /**
     * {@return the offset at a station; beyond the ends the line goes on straight}
     *
     * <p>Its standard uncertainty: {@code u^2 = (a u1)^2 + (b u2)^2 + us^2}, {@code a = (x2 - x)/(x2 - x1)}, {@code b = 1 -
     * a}. What both ends share counts once anywhere. Source: JCGM 100:2008, 5.2.2.
     *
     * @param station from the nut, positive toward the body
     */
    public SlotOffset at(Quantity<Length> station) {
        return SlotOffset.ofMm(
                offsetMmAt(LibraryUnits.mm(station, "station")),
                uncertaintyMmAt(LibraryUnits.mm(station, "station")),
                style());
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

    private double uncertaintyMmAt(double stationMm) {
        double b = (stationMm - startMm) / (endMm - startMm);
        double own = StrictMath.hypot((1 - b) * startUncertaintyMm, b * endUncertaintyMm);
        return StrictMath.hypot(own, sharedMm);
    }

    /** {@return the standard uncertainty of the skew; what both ends share does not turn the line} */
    public Amount<Angle> skewUncertainty() {
        double ofSlope = StrictMath.hypot(startUncertaintyMm, endUncertaintyMm) / (endMm - startMm);
        return Amount.ofLibrary(ofSlope / (1 + slope() * slope()), ShopUnit.DEGREE);
    }

    /** {@return by how much the offset changes from the line's start to its end; end less start} */
    public Amount<Length> endToEnd() {
        return style().amount(endToEndMm());
    }

    private double endToEndMm() {
        return endOffsetMm - startOffsetMm;
    }

    private Estimate<Length> estimate(double stationMm) {
        return Estimate.of(style().amount(offsetMmAt(stationMm)), style().amount(uncertaintyMmAt(stationMm)));
    }

    private double slope() {
        return (endOffsetMm - startOffsetMm) / (endMm - startMm);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {startOffsetMm, startUncertaintyMm, startMm, endOffsetMm, endUncertaintyMm, endMm, sharedMm
        };
    }
}
