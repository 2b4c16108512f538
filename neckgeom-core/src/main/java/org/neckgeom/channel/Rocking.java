package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * What a veneer on the head's face does to the slot's depth: the neck, face down on the table, stands on the veneer's
 * edge and on its own far end. Immutable.
 *
 * <p>A veneer t on a head pitched by alpha, stopping q short of the nut line, stands proud of the glue face by
 * {@code h = max(0, t cos alpha - q sin alpha)}, at {@code x_v = q cos alpha + t sin alpha} in front of the nut. The slot
 * is shallow by {@code h (L_c - x)/(L_c + x_v)} at station x, L_c the far contact. Exact but for the cosine of the tilt.
 */
public final class Rocking implements SaysLengths<Rocking> {

    private final double heightMm;
    private final double reachMm;
    private final double farMm;
    private final LengthStyle style;

    Rocking(double heightMm, double reachMm, double farMm, LengthStyle style) {
        this.heightMm = heightMm + 0.0;
        this.reachMm = reachMm + 0.0;
        this.farMm = farMm;
        this.style = style;
    }

    /**
     * Returns whether the neck rocks at all.
     *
     * @return false when the veneer stays under the glue face's plane
     */
    public boolean isRocking() {
        return heightMm > 0;
    }

    /**
     * Returns how far the veneer stands proud of the glue face: what a shim under the shaft makes up for.
     *
     * @return 0 or more
     */
    public Amount<Length> height() {
        return style.amount(heightMm);
    }

    /**
     * Returns how much too shallow the slot comes out at a station.
     *
     * @param station from the nut, positive toward the body
     * @return 0 or more
     */
    public Amount<Length> shallowAt(Quantity<Length> station) {
        double x = HouseUnits.mm(station, "station");
        return style.amount(HeadContact.shallow(x, heightMm, reachMm, farMm));
    }

    @Override
    public Rocking in(LengthStyle other) {
        return new Rocking(heightMm, reachMm, farMm, Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Rocking that
                && Double.compare(heightMm, that.heightMm) == 0
                && Double.compare(reachMm, that.reachMm) == 0
                && Double.compare(farMm, that.farMm) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(heightMm, reachMm, farMm);
    }

    /** Returns how much too shallow the slot is and where, and the remedy. */
    @Override
    public String toString() {
        if (!isRocking()) {
            return "no rocking: the veneer stays below the glue face";
        }
        Report report = Report.titled(
                "veneer stands proud of the glue face by " + style.text(heightMm) + ": the slot comes out shallow");
        for (int i = 0; i <= 2; i++) {
            double x = farMm * i / 2;
            report.row(
                    i == 0 ? "at the nut" : "at " + style.brief(x),
                    "by " + style.text(HeadContact.shallow(x, heightMm, reachMm, farMm)));
        }
        return report.note("lay the shaft on a flat raised table of " + style.text(heightMm)
                        + " or more, clear of the head, and set the cutter from that")
                .toString();
    }
}
