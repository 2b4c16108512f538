package org.neckgeom.channel;

import java.util.List;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.shop.Fence;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * What the fence does to the slot when a head's side is proud and rides on it: the shaft lies askew between the head and
 * its own far end. Immutable.
 *
 * <p>Where both contacts are on the fence the corner with the greatest {@code p/(L_s + x_h)} governs, p how far it is proud
 * and x_h how far it lies in front of the nut: skew {@code phi = atan(p/(L_s + x_h))}, and the slot lies nearer the
 * fence-side edge by {@code (L_s - x) tan phi} at station x. Where the fence is shorter, its ends are the contacts, and the
 * slot bends: the least concave majorant of all that touches. A split fence's own step is in it. Exact.
 */
public final class HeadSkew extends ValueAnswer {

    private static final Form<Place> PLACE = Form.<Place>of("offset-at-station")
            .fact("station", Kind.MM, "from the nut", Place::station)
            .fact("offset", Kind.answer(SlotOffset.Sentences.FORM), "of the slot there", Place::offset)
            .phrase("at", place -> place.station == 0, "the nut")
            .phrase("at", "{station:brief}");

    private static final Form<HeadSkew> FORM = Form.<HeadSkew>of("head-skew")
            .findsOnly("no-skew", skew -> skew.proudMm() == 0, "no skew: the head stays inside the shaft's edge")
            .fact(
                    "skew",
                    Kind.RAD,
                    "at the nut, positive: the head end is held off the fence",
                    skew -> StrictMath.atan(skew.riding().slopeAt(0)))
            .fact("proud", Kind.MM, "how far the head is proud at its prouder corner", HeadSkew::proudMm)
            .finds("skewed", "slot skewed by {skew:3} at the nut: the head stands proud by {proud:text}")
            .fact("places", Kind.table(PLACE), "from the nut to the shaft's far end", HeadSkew::places)
            .each("places", "at {at}", "{offset}")
            .fact("fenceReach", Kind.MM, "of the fence, either side of the cutter", skew -> skew.fence.lengthMm() / 2)
            .note(
                    "fence-ends",
                    skew -> skew.fence.lengthMm() / 2 < Math.max(skew.shaftMm, -skew.side[HeadContact.TIP_X]),
                    "the fence reaches {fenceReach:brief} either side of the cutter: the slot bends where a contact runs off its end")
            .note("spacer", "a parallel spacer on the fence side keeps the head clear");

    private record Place(double station, SlotOffset offset) {}

    private final double[] side;
    private final double shaftMm;
    private final Fence fence;

    /**
     * The skew of a shaft with a head's side before it.
     *
     * @param side both corners, as {@link HeadContact#side} gives them
     * @param shaftMm the shaft's far end, from the nut
     */
    HeadSkew(double[] side, double shaftMm, Fence fence, LengthStyle style) {
        super(FORM, style);
        this.side = side.clone();
        this.shaftMm = shaftMm;
        this.fence = fence;
    }

    private double proudMm() {
        return Math.max(0, Math.max(side[HeadContact.NUT_PROUD], side[HeadContact.TIP_PROUD]));
    }

    private Riding riding() {
        double[] proud = proudMm() > 0 ? side : new double[0];
        return new Riding(0, shaftMm, true, fence, null, proud);
    }

    /** {@return how far the head stands proud at its prouder corner; 0 when it stays inside} */
    public Amount<Length> proud() {
        return style().amount(proudMm());
    }

    /**
     * {@return the angle of shaft and fence, a station at the cutter; positive: head end held off the fence}
     *
     * @param station from the nut, positive toward the body
     */
    public Amount<Angle> angleAt(Quantity<Length> station) {
        double x = LibraryUnits.mm(station, "station");
        return Amount.ofLibrary(StrictMath.atan(riding().slopeAt(x)), ShopUnit.DEGREE);
    }

    /**
     * {@return the slot's offset at a station; negative: nearer the fence}
     *
     * @param station from the nut, positive toward the body, no farther than the shaft's end
     * @throws IllegalArgumentException if the station lies beyond the shaft
     */
    public SlotOffset at(Quantity<Length> station) {
        double x = LibraryUnits.mm(station, "station");
        if (!(x <= shaftMm)) {
            throw LibraryUnits.refused(
                    "station", "at-most", "no farther than the shaft's end at " + style().brief(shaftMm), station);
        }
        return offset(x);
    }

    private List<Place> places() {
        return IntStream.rangeClosed(0, 4)
                .mapToDouble(i -> shaftMm * i / 4)
                .mapToObj(x -> new Place(x, offset(x)))
                .toList();
    }

    private SlotOffset offset(double x) {
        return SlotOffset.ofMm(-riding().at(x), 0, style());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {side, shaftMm, fence};
    }
}
