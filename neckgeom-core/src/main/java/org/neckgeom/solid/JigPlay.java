package org.neckgeom.solid;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Channel;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * The play of a jig that a key or two pins locate in the rod channel: how far it can lie off at a station, and how far it can turn.
 * Immutable.
 *
 * <p>A pin, or an end of the key, at x1 and at x2 with plays p1 and p2 (channel's width less its own), {@code l = (x - x1)/(x2 -
 * x1)}:
 *
 * <pre>
 * worst at x                  (p1 |1 - l| + p2 |l|)/2
 * standard uncertainty at x   sqrt((p1 (1 - l))^2 + (p2 l)^2)/(2 sqrt 3)     each uniform, independent
 * worst angle                 atan((p1 + p2)/(2 (x2 - x1)))
 * </pre>
 *
 * Exact for rigid walls. Pressed to the same marked wall each time, the play is a known shift and no longer uncertain. A good fit,
 * 0.02 to 0.05 mm, slides without shake: common practice.
 */
public final class JigPlay extends ValueAnswer {

    private record Place(double station, double worst, double uncertainty) {
        private static final Form<Place> FORM = Form.<Place>of("jig-play-place")
                .fact("station", Kind.MM, "from the nut, negative in the head", Place::station)
                .fact("worst", Kind.MM, "off the channel's centreline at most", Place::worst)
                .fact("uncertainty", Kind.MM, "standard uncertainty", Place::uncertainty)
                .phrase("place", place -> place.station == 0, "at the nut")
                .phrase("place", "at {station:brief}");
    }

    private static final Form<JigPlay> FORM = Form.<JigPlay>of("jig-play")
            .fact("first", Kind.MM, "station of the first pin or end of the key", p -> p.x1)
            .fact("second", Kind.MM, "station of the second", p -> p.x2)
            .fact("firstPlay", Kind.MM, "channel's width less the pin's", p -> p.p1)
            .fact("secondPlay", Kind.MM, "channel's width less the pin's", p -> p.p2)
            .fact("isPressed", Kind.FLAG, "whether it is pressed to one marked wall each time", p -> p.pressed)
            .fact("angle", Kind.RAD, "worst", p -> p.angleRad())
            .fact("places", Kind.table(Place.FORM), "at both ends and midway", JigPlay::places)
            .phrase("wall", p -> p.pressed, ", pressed to one wall")
            .finds("play", "Jig located at {first:brief} and {second:brief}{wall}: turns by {angle:3} at most")
            .each("places", "{place}", "{worst:small} at most, u {uncertainty:small}")
            .note("fit", "common practice: 0.02 to 0.05 mm of play slides without shake");

    private final double x1;
    private final double p1;
    private final double x2;
    private final double p2;
    private final boolean pressed;

    private JigPlay(double x1, double p1, double x2, double p2, boolean pressed, LengthStyle style) {
        super(FORM, style);
        this.x1 = x1;
        this.p1 = p1;
        this.x2 = x2;
        this.p2 = p2;
        this.pressed = pressed;
    }

    /**
     * {@return the play of two pins}
     *
     * @param first station of the first pin from the nut
     * @param firstPlay channel's width less the first pin's diameter, 0 or more
     * @param second station of the second pin, more than the first
     * @param secondPlay channel's width less the second pin's diameter, 0 or more
     */
    public static JigPlay pins(
            Quantity<Length> first,
            Quantity<Length> firstPlay,
            Quantity<Length> second,
            Quantity<Length> secondPlay) {
        double from = LibraryUnits.mm(first, "first pin");
        double to = LibraryUnits.mm(second, "second pin");
        LengthStyle style = LengthStyle.of(first);
        if (!(to > from)) {
            throw LibraryUnits.refused("second pin", "more-than", "past the first at " + style.brief(from), second);
        }
        return new JigPlay(
                from,
                LibraryUnits.mmNotNegative(firstPlay, "play of the first pin"),
                to,
                LibraryUnits.mmNotNegative(secondPlay, "play of the second pin"),
                false,
                style);
    }

    /**
     * {@return the play of two pins of one diameter in a channel}
     *
     * @param channel as wide as drawn
     * @param diameter of both pins, more than 0, no more than the channel's width
     * @param first station of the first pin, all of it in the channel
     * @param second station of the second pin, past the first, all of it in the channel
     */
    public static JigPlay pins(
            Channel channel, Quantity<Length> diameter, Quantity<Length> first, Quantity<Length> second) {
        double wide = LibraryUnits.mmPositive(diameter, "pin's diameter");
        LengthStyle style = Objects.requireNonNull(channel, "channel").style();
        return pins(
                first,
                style.amount(playIn(channel, wide, first, "first pin", diameter)),
                second,
                style.amount(playIn(channel, wide, second, "second pin", diameter)));
    }

    /**
     * {@return the play of a key as long as the channel}
     *
     * @param channel as wide as drawn
     * @param width of the key, more than 0, no more than the channel's width
     */
    public static JigPlay key(Channel channel, Quantity<Length> width) {
        double wide = LibraryUnits.mmPositive(width, "key's width");
        double play = Objects.requireNonNull(channel, "channel").widthMm() - wide;
        if (!(play >= 0)) {
            throw tooWide("key's width", channel.widthMm(), channel.style(), width);
        }
        return new JigPlay(channel.startMm(), play, channel.endMm(), play, false, channel.style());
    }

    private static double playIn(
            Channel channel, double wide, Quantity<Length> station, String pin, Quantity<Length> diameter) {
        double x = LibraryUnits.mm(station, pin);
        if (!(x - wide / 2 >= channel.startMm() && x + wide / 2 <= channel.endMm())) {
            throw LibraryUnits.refused(
                    pin,
                    "range",
                    "all in the channel, from " + channel.style().brief(channel.startMm()) + " to "
                            + channel.style().brief(channel.endMm()),
                    station);
        }
        double play = channel.widthAtMm(x) - wide;
        if (!(play >= 0)) {
            throw tooWide("pin's diameter", channel.widthAtMm(x), channel.style(), diameter);
        }
        return play;
    }

    private static Refusal tooWide(String name, double most, LengthStyle style, Quantity<Length> given) {
        return LibraryUnits.refused(name, "at-most", "no more than the channel's width, " + style.brief(most), given);
    }

    /** {@return a copy that is pressed to the same marked wall each time: its play is then a known shift} */
    public JigPlay pressed() {
        return new JigPlay(x1, p1, x2, p2, true, style());
    }

    /** {@return whether it is pressed to the same marked wall each time} */
    public boolean isPressed() {
        return pressed;
    }

    /**
     * {@return how far the jig lies off the channel's centreline at a station at most; 0 or more} Pressed to one wall it is the known
     * shift toward that wall, for which the jig can be cut.
     *
     * @param station from the nut, negative in the head
     */
    public Amount<Length> worstAt(Quantity<Length> station) {
        return style().amount(worstMm(LibraryUnits.mm(station, "station")));
    }

    /**
     * {@return the standard uncertainty at a station; 0 where it is pressed to one wall}
     *
     * @param station from the nut, negative in the head
     */
    public Amount<Length> uncertaintyAt(Quantity<Length> station) {
        return style().amount(uncertaintyMm(LibraryUnits.mm(station, "station")));
    }

    /** {@return how far it can turn at most, against the channel; 0 or more} */
    public Amount<Angle> worstAngle() {
        return Amount.ofLibrary(angleRad(), ShopUnit.DEGREE);
    }

    double worstMm(double x) {
        double l = share(x);
        return pressed ? Math.abs(p1 * (1 - l) + p2 * l) / 2 : (p1 * Math.abs(1 - l) + p2 * Math.abs(l)) / 2;
    }

    private double uncertaintyMm(double x) {
        double l = share(x);
        double first = p1 * (1 - l);
        double second = p2 * l;
        return pressed ? 0 : Math.sqrt(first * first + second * second) / (2 * Math.sqrt(3));
    }

    private double angleRad() {
        return StrictMath.atan((pressed ? Math.abs(p2 - p1) : p1 + p2) / (2 * (x2 - x1)));
    }

    private double share(double x) {
        return (x - x1) / (x2 - x1);
    }

    /** {@return the station of its first pin, or of the key's end toward the head} */
    public Amount<Length> first() {
        return style().amount(x1);
    }

    /** {@return the station of its second pin, or of the key's end toward the body} */
    public Amount<Length> second() {
        return style().amount(x2);
    }

    /** {@return the play of its first pin; 0 or more} */
    public Amount<Length> firstPlay() {
        return style().amount(p1);
    }

    /** {@return the play of its second pin; 0 or more} */
    public Amount<Length> secondPlay() {
        return style().amount(p2);
    }

    private List<Place> places() {
        return List.of(x1, (x1 + x2) / 2, x2).stream()
                .map(x -> new Place(x, worstMm(x), uncertaintyMm(x)))
                .toList();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {x1, p1, x2, p2, pressed};
    }
}
