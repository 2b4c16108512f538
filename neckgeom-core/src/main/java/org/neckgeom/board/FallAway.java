package org.neckgeom.board;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * Fall-away ({@index drop-off}, ramp): the slope planed off a fingerboard past the body joint so that the last frets do not
 * rise, such as 0.3 mm from 310 mm to 384 mm. Immutable.
 *
 * <p>A plane: nothing at its start, the whole drop at its end, straight between. Heights are square to the glue face.
 */
public final class FallAway extends ValueAnswer {

    private static final Form<FallAway> FORM = Form.<FallAway>of("fall-away")
            .fact("drop", Kind.MM, "at the end", slope -> slope.drop)
            .fact("start", Kind.MM, "station at which it begins, from the nut", slope -> slope.start)
            .fact("end", Kind.MM, "station at which the drop is reached, from the nut", slope -> slope.end)
            .fact("angle", Kind.AMOUNT, "between the sloped part and the fret plane", FallAway::angle)
            .finds("fall-away", "Fall-away: {drop:text}")
            .line("run", "from, to", "{start:brief}, {end:brief} from the nut")
            .line("angle", "angle", "{angle:2}");

    private final double start;
    private final double end;
    private final double drop;

    private FallAway(double start, double end, double drop, LengthStyle style) {
        super(FORM, style);
        this.start = start;
        this.end = end;
        this.drop = drop;
    }

    /**
     * {@return the fall-away of a neck's fingerboard, from the body joint to the last fret; the fall-away, or nothing
     * where the board runs straight on}
     *
     * @param neck with scale and fingerboard given
     * @throws IllegalArgumentException if the last fret does not lie past the body joint
     */
    public static Optional<FallAway> of(Neck neck) {
        Optional<Amount<Length>> drop =
                Objects.requireNonNull(neck, "neck").fingerboard().fallAway();
        if (drop.isPresent() && neck.frets() <= neck.bodyAtFret()) {
            throw Refusal.because(
                    "fingerboard.fall-away",
                    "past-the-body",
                    "fingerboard.fall-away begins at the body joint, fret " + neck.bodyAtFret()
                            + ", but there is no fret past it: leave it out, or give more frets");
        }
        return drop.map(low ->
                new FallAway(neck.bodyJointMm(), neck.scale().fretMm(neck.frets()), low.libraryValue(), neck.style()));
    }

    /** {@return the station at which it begins; 0 or more} */
    public Amount<Length> start() {
        return style().amount(start);
    }

    /** {@return the station at which the drop is reached; more than the start} */
    public Amount<Length> end() {
        return style().amount(end);
    }

    /** {@return the drop at the end; 0 or more} */
    public Amount<Length> drop() {
        return style().amount(drop);
    }

    /**
     * {@return the drop at a station, past the end too; 0 before the start, growing from there}
     *
     * @param station from the nut
     */
    public Amount<Length> at(Quantity<Length> station) {
        double x = LibraryUnits.mm(station, "station");
        return style().amount(x <= start ? 0 : drop * (x - start) / (end - start));
    }

    /** {@return the angle between the sloped part and the fret plane: {@code atan(drop / (end - start))}; 0 or more} */
    public Amount<Angle> angle() {
        return Amount.ofLibrary(StrictMath.atan2(drop, end - start), ShopUnit.DEGREE);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {start, end, drop};
    }
}
