package org.neckgeom.solid;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The wood left under the channel at one station, such as {@code 5.098 mm at 31.4 mm from the nut}. Immutable.
 *
 * <p>The least distance, in the section across the neck, from the channel's floor and its two corners to the back. It
 * is negative, by how much the channel has come through, where there is no wood left.
 */
public final class WoodAt extends LeanAnswer {

    /** A station nearer the nut than this cannot be read on a rule. */
    private static final double AT_THE_NUT_MM = 1e-5;

    private final double station;
    private final double wood;
    private final double straightDown;
    private final boolean towardTreble;

    WoodAt(double station, double wood, double straightDown, boolean towardTreble, LengthStyle style) {
        super(style);
        this.station = station + 0.0;
        this.wood = wood + 0.0;
        this.straightDown = straightDown + 0.0;
        this.towardTreble = towardTreble;
    }

    /**
     * {@return the wood left at a station as measured or computed elsewhere, thinnest straight down; the wood left
     * there}
     *
     * @param station from the nut
     * @param wood least distance from channel to back, negative where the channel is through
     */
    public static WoodAt of(Quantity<Length> station, Quantity<Length> wood) {
        double mm = LibraryUnits.mm(wood, "wood left");
        return new WoodAt(LibraryUnits.mm(station, "station"), mm, mm, false, LengthStyle.of(station));
    }

    /** {@return the station; x from the nut, positive toward the body} */
    public Amount<Length> station() {
        return style().amount(station);
    }

    /** {@return the station in mm; x in mm} */
    public double stationMm() {
        return station;
    }

    /** {@return the wood left; negative where the channel is through} */
    public Amount<Length> wood() {
        return style().amount(wood);
    }

    /** {@return the wood left in mm} */
    public double woodMm() {
        return wood;
    }

    /** {@return the wood straight under the floor's middle, as a depth gauge shows; never less than {@link #wood}} */
    public Amount<Length> straightDown() {
        return style().amount(straightDown);
    }

    /**
     * {@return whether the thinnest place lies on the treble side of straight down from its corner} It is on the bass side
     * otherwise, and on both for a centred channel under an even back.
     */
    public boolean isTowardTreble() {
        return towardTreble;
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        static final Form<WoodAt> FORM = form("wood-at", "Wood left: ");

        /** The same without its title, for the row of another answer. */
        static final Form<WoodAt> UNTITLED = form("wood-at-station", "");

        private static Form<WoodAt> form(String name, String title) {
            return Form.<WoodAt>of(name)
                    .fact("station", Kind.MM, "from the nut; negative: in the head", WoodAt::stationMm)
                    .fact("wood", Kind.MM, "left square to the back; negative: through", WoodAt::woodMm)
                    .phrase("where", w -> Math.abs(w.station) < AT_THE_NUT_MM, "at the nut")
                    .phrase("where", w -> w.station < 0, "at {station:size 1|2} before the nut")
                    .phrase("where", "at {station:1|2} from the nut")
                    .findsOnly(
                            "through",
                            w -> !(w.wood > 0),
                            title + "none, the channel is through by {wood:size text} {where}")
                    .finds("wood-left", title + "{wood:text} {where}")
                    .fact("straightDown", Kind.MM, "from the floor's middle to the back", w -> w.straightDown)
                    .line("straightDown", "straight down", "{straightDown:text}");
        }
    }

    @Override
    public Form<WoodAt> form() {
        return Sentences.FORM;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {station, wood, straightDown, towardTreble};
    }
}
