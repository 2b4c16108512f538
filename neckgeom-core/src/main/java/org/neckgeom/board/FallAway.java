package org.neckgeom.board;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * The slope taken off a fingerboard past the body joint so that the last frets do not rise, such as 0.3 mm from 310 mm
 * to 384 mm. Immutable.
 *
 * <p>A plane: nothing at its start, the whole drop at its end, straight between. Heights are square to the glue face.
 */
public final class FallAway implements Answer {

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
    private final LengthStyle style;

    private FallAway(double start, double end, double drop, LengthStyle style) {
        this.start = start;
        this.end = end;
        this.drop = drop;
        this.style = style;
    }

    /**
     * {@return the fall-away of a neck's fingerboard, from the body joint to the last fret; the fall-away, or nothing
     * where the board runs straight on}
     *
     * @param neck with scale and fingerboard given
     * @throws IllegalArgumentException if the last fret does not lie past the body joint
     */
    public static Optional<FallAway> of(NeckDesign neck) {
        Optional<Amount<Length>> drop =
                Objects.requireNonNull(neck, "neck").fingerboard().fallAway();
        if (drop.isPresent() && neck.frets() <= neck.bodyAtFret()) {
            throw Refusal.because(
                    "fingerboard.fall-away",
                    "past-the-body",
                    "fingerboard.fall-away begins at the body joint, fret " + neck.bodyAtFret()
                            + ", but there is no fret past it: leave it out, or give more frets");
        }
        LengthStyle style = neck.style();
        return drop.map(low ->
                of(style.amount(neck.bodyJointMm()), style.amount(neck.scale().fretMm(neck.frets())), low));
    }

    /**
     * {@return a fall-away}
     *
     * @param start station at which it begins, usually the body joint, 0 or more
     * @param end station at which the drop is reached, more than the start
     * @param drop at the end, 0 or more
     */
    public static FallAway of(Quantity<Length> start, Quantity<Length> end, Quantity<Length> drop) {
        double from = HouseUnits.mmNotNegative(start, "start of the fall-away");
        double to = HouseUnits.mm(end, "end of the fall-away");
        if (!(to > from)) {
            throw HouseUnits.refused("end of the fall-away", "more-than", "more than its start", end);
        }
        return new FallAway(from, to, HouseUnits.mmNotNegative(drop, "fall-away"), LengthStyle.of(start));
    }

    /** {@return the station at which it begins; 0 or more} */
    public Amount<Length> start() {
        return style.amount(start);
    }

    /** {@return the station at which the drop is reached; more than the start} */
    public Amount<Length> end() {
        return style.amount(end);
    }

    /** {@return the drop at the end; 0 or more} */
    public Amount<Length> drop() {
        return style.amount(drop);
    }

    /**
     * {@return the drop at a station, past the end too; 0 before the start, growing from there}
     *
     * @param station from the nut
     */
    public Amount<Length> at(Quantity<Length> station) {
        double x = HouseUnits.mm(station, "station");
        return style.amount(x <= start ? 0 : drop * (x - start) / (end - start));
    }

    /** {@return the angle between the sloped part and the fret plane: {@code atan(drop / (end - start))}; 0 or more} */
    public Amount<Angle> angle() {
        return Amount.ofHouse(StrictMath.atan2(drop, end - start), ShopUnit.DEGREE);
    }

    private double[] parts() {
        return new double[] {start, end, drop};
    }

    @Override
    public Form<FallAway> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return style;
    }

    /** True for the same figures. */
    @Override
    public boolean equals(Object other) {
        return other instanceof FallAway that && Arrays.equals(parts(), that.parts());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(parts());
    }

    /** Returns the drop and where it runs. */
    @Override
    public String toString() {
        return text(style);
    }
}
