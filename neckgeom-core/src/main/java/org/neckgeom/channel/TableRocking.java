package org.neckgeom.channel;

import java.util.List;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * Depth error of the slot when a head veneer lifts the neck off the table: face down, the neck rests on the veneer's
 * edge and on its own far end. Immutable.
 *
 * <p>A veneer t on a head angled by alpha, stopping q short of the nut line, stands proud of the glue face by
 * {@code h = max(0, t cos alpha - q sin alpha)}, at {@code x_v = q cos alpha + t sin alpha} in front of the nut. The slot
 * is shallow by {@code h (L_c - x)/(L_c + x_v)} at station x, L_c the far contact. Exact but for the cosine of the tilt.
 */
public final class TableRocking extends ValueAnswer {

    /** How much too shallow the slot is at a place. */
    private record Station(double mm, double shallowMm) {
        private static final Form<Station> FORM = Form.<Station>of("rocking-station")
                .fact("station", Kind.MM, "from the nut, positive toward the body", Station::mm)
                .fact("shallow", Kind.MM, "how much too shallow the slot is", Station::shallowMm)
                .phrase("place", station -> station.mm == 0, "at the nut")
                .phrase("place", "at {station:brief}");
    }

    private static final Form<TableRocking> FORM = Form.<TableRocking>of("rocking")
            .fact("proud", Kind.MM, "how far the veneer stands proud of the glue face", rocking -> rocking.heightMm)
            .fact("stations", Kind.table(Station.FORM), "from the nut to the far contact", TableRocking::stations)
            .findsOnly("none", rocking -> !rocking.isRocking(), "no rocking: the veneer stays below the glue face")
            .finds("rocks", "veneer stands proud of the glue face by {proud:text}: the slot is too shallow")
            .each("stations", "{place}", "by {shallow:text}")
            .note(
                    "raised-table",
                    "lay the shaft on a flat raised table of {proud:text} or more, clear of the head, and set the cutter from"
                            + " that");

    private final double heightMm;
    private final double reachMm;
    private final double farMm;

    TableRocking(double heightMm, double reachMm, double farMm, LengthStyle style) {
        super(FORM, style);
        this.heightMm = heightMm + 0.0;
        this.reachMm = reachMm + 0.0;
        this.farMm = farMm;
    }

    /** {@return whether the neck rocks at all; false when the veneer stays under the glue face's plane} */
    public boolean isRocking() {
        return heightMm > 0;
    }

    /** {@return how far the veneer is proud of the glue face, which a shim under the shaft makes up for; 0 or more} */
    public Amount<Length> height() {
        return style().amount(heightMm);
    }

    /**
     * {@return how much too shallow the slot is at a station; 0 or more}
     *
     * @param station from the nut, positive toward the body
     */
    public Amount<Length> shallowAt(Quantity<Length> station) {
        double x = LibraryUnits.mm(station, "station");
        return style().amount(HeadContact.shallow(x, heightMm, reachMm, farMm));
    }

    private List<Station> stations() {
        return IntStream.rangeClosed(0, 2)
                .mapToDouble(i -> farMm * i / 2)
                .mapToObj(x -> new Station(x, HeadContact.shallow(x, heightMm, reachMm, farMm)))
                .toList();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {heightMm, reachMm, farMm};
    }
}
