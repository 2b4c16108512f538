package org.neckgeom.neck;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnits;

/**
 * Two stiffening bars beside the middle, each glued into a channel of its own, such as {@code two carbon bars, 330 mm x 3.2 mm
 * x 9.5 mm, 10 mm aside}. Immutable.
 *
 * <p>They lie as far to the bass side as to the treble side, with or without a truss rod between them, their tops at the glue
 * face. Lengths are more than 0, clearances 0 or more. Common practice: 10 to 12 mm from the centreline, or along the taper;
 * channels 0.05 to 0.15 mm wider and 0.1 to 0.2 mm deeper than the bar.
 */
public final class Bars extends Noun<Bars> {

    /** Its keys, those of one bar among them. */
    public static final Table<Bars> TABLE =
            Table.of("bars", "two stiffening bars beside the middle", Bars::new).printedBy(Bars::sentences);

    private static final Key<Bars, Bar> BAR = TABLE.inline(Bar.TABLE, List.of());
    private static final Key<Bars, Amount<Length>> ASIDE =
            TABLE.needed("aside", Types.SIZE, "distance of each bar's middle from the centreline at the nut line");
    private static final Key<Bars, Amount<Length>> FAR_ASIDE = TABLE.optional(
            "far aside",
            Types.SIZE,
            "distance of each bar's middle from the centreline at the body joint, where they fan. Default: as at the nut");
    private static final Key<Bars, Amount<Length>> START = TABLE.usual(
                    "starts at",
                    Types.EITHER_WAY,
                    ShopUnits.mm(0),
                    "distance from the nut line to the head ends of the bars. Default: 0")
            .called("bars' start");
    private static final Key<Bars, Amount<Length>> WIDER = TABLE.usual(
            "side clearance",
            Types.SIZE_OR_NOTHING,
            ShopUnits.mm(0.1),
            "width of each channel minus width of the bar, room for glue. Default: 0.1 mm");
    private static final Key<Bars, Amount<Length>> DEEPER = TABLE.usual(
            "depth clearance",
            Types.SIZE_OR_NOTHING,
            ShopUnits.mm(0.15),
            "depth of each channel minus height of the bar, room for glue. Default: 0.15 mm");

    private Bars(Values<Bars> values) {
        super(values);
    }

    /**
     * {@return two bars, straight along the neck}
     *
     * @param bar one of the two
     * @param aside of each bar's middle from the centreline, more than 0
     */
    public static Bars of(Bar bar, Quantity<Length> aside) {
        return new Bars(TABLE.values().with(BAR, bar).amount(ASIDE, aside));
    }

    /**
     * {@return these bars fanned with the taper}
     *
     * @param farAside of each bar's middle from the centreline at the body joint, more than 0
     */
    public Bars fanned(Quantity<Length> farAside) {
        return new Bars(values().amount(FAR_ASIDE, farAside));
    }

    /**
     * {@return these bars with another start}
     *
     * @param x of their head ends, positive toward the body
     */
    public Bars startingAt(Quantity<Length> x) {
        return new Bars(values().amount(START, x));
    }

    /** {@return one of the two} */
    public Bar bar() {
        return values().at(BAR);
    }

    /** {@return the channel of one of the two, as it would lie in the middle} */
    public Channel channel() {
        return Channel.forBar(bar())
                .startingAt(values().at(START))
                .sideClearance(values().at(WIDER))
                .depthClearance(values().at(DEEPER));
    }

    /**
     * {@return the distance of each bar's middle from the centreline at a station, straight from nut line to body joint; in mm}
     *
     * @param xMm station in mm
     * @param bodyJointMm station of the body joint in mm, 1 or more
     */
    public double asideMm(double xMm, double bodyJointMm) {
        if (!(bodyJointMm >= 1 && bodyJointMm <= LibraryUnits.MOST)) {
            throw Refusal.of(
                    "body joint",
                    "range",
                    "be 1 mm or more and no more than " + Numbers.plain(LibraryUnits.MOST) + " mm",
                    Numbers.plain(bodyJointMm) + " mm");
        }
        double near = values().libraryValue(ASIDE);
        double far = values().libraryValue(FAR_ASIDE, near);
        return near + (far - near) * LibraryUnits.stationMm(xMm) / bodyJointMm;
    }

    private static Form<Bars> sentences() {
        return TABLE.facts("bars")
                .phrase("fan", ", {aside} aside at the nut and {farAside} at the body joint")
                .phrase("fan", ", {aside} aside")
                .finds("bars", "two {material} bars, {length} x {width} x {height}{fan}");
    }
}
