package org.neckgeom.board;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.NeckSetKernel;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The fingerboard's section at one station, such as 40 mm wide, 6 mm thick in the middle and 5.5 mm at the edge.
 * Immutable.
 *
 * <p>The crown is an arc of a circle: {@code drop(y) = R - sqrt(R^2 - y^2)} below the middle. Exact.
 */
public final class BoardSection extends ValueAnswer {

    private static final Form<BoardSection> FORM = Form.<BoardSection>of("board-section")
            .fact("station", Kind.MM, "from the nut", section -> section.station)
            .fact("width", Kind.MM, "of the board", section -> section.width)
            .fact("middleThickness", Kind.MM, "on the centreline", section -> section.middle)
            .fact("edgeThickness", Kind.MM, "below 0 where the crown comes through the board", BoardSection::edgeMm)
            .fact("radius", Kind.MM, "of the crown; not there where the board is flat", BoardSection::radiusMm)
            .phrase("crown", "{radius:text}")
            .phrase("crown", "flat")
            .finds("section", "Fingerboard at {station:text} from the nut")
            .line("width", "width", "{width:text}")
            .line("thickness", "thick", "{middleThickness:text} in the middle, {edgeThickness:text} at the edges")
            .line("radius", "radius", "{crown}");

    private final double station;
    private final double width;
    private final double middle;
    private final double radius;

    private BoardSection(double station, double width, double middle, double radius, LengthStyle style) {
        super(FORM, style);
        this.station = station;
        this.width = width;
        this.middle = middle;
        this.radius = radius;
    }

    static BoardSection ofMm(double station, double width, double middle, double radius, LengthStyle style) {
        if (!(width > 0 && middle > 0)) {
            throw NoAnswer.because(
                    "fingerboard",
                    "no-section",
                    "the fingerboard has no section at " + style.brief(station) + " from the nut: width "
                            + style.brief(width) + ", thickness " + style.brief(middle));
        }
        if (!(radius > width / 2)) {
            throw NoAnswer.because(
                    "fingerboard",
                    "too-small",
                    "the crown's radius must be more than half the width at " + style.brief(station)
                            + " from the nut, but was " + style.brief(radius));
        }
        return new BoardSection(station, width, middle, radius, style);
    }

    /** {@return the station; x from the nut} */
    public Amount<Length> station() {
        return style().amount(station);
    }

    /** {@return the width; more than 0} */
    public Amount<Length> width() {
        return style().amount(width);
    }

    /** {@return the thickness on the centreline; more than 0} */
    public Amount<Length> middle() {
        return style().amount(middle);
    }

    /** {@return the thickness at the edges in mm; negative when the crown comes down through the board} */
    public double edgeMm() {
        return middle - NeckSetKernel.drop(radius, width / 2);
    }

    /** {@return the crown's radius in mm; infinite for a flat board} */
    public double radiusMm() {
        return radius;
    }

    /**
     * {@return how far the crown has dropped below the middle; 0 or more}
     *
     * @param y from the centreline, either way, within the board
     */
    public Amount<Length> drop(Quantity<Length> y) {
        double aside = Math.abs(LibraryUnits.mm(y, "distance from the centreline"));
        if (!(aside <= width / 2)) {
            throw LibraryUnits.refused(
                    "distance from the centreline",
                    "at-most",
                    "no more than half the width of " + style().brief(width),
                    y);
        }
        return style().amount(NeckSetKernel.drop(radius, aside));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {station, width, middle, radius};
    }
}
