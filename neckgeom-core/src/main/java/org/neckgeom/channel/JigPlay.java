package org.neckgeom.channel;

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

    private static final double LEAST_FIT_MM = 0.02;
    private static final double GREATEST_FIT_MM = 0.05;

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
            .fact("leastFit", Kind.MM, "play, common practice", p -> LEAST_FIT_MM)
            .fact("greatestFit", Kind.MM, "play, common practice", p -> GREATEST_FIT_MM)
            .note("fit", "common practice: a play of {leastFit:small} to {greatestFit:small} slides without shake");

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
     * {@return two pins, or the two ends of a key, without play yet}
     *
     * @param first station of the first from the nut
     * @param second station of the second, more than the first
     */
    public static JigPlay at(Quantity<Length> first, Quantity<Length> second) {
        double from = LibraryUnits.mm(first, "first pin");
        double to = LibraryUnits.mm(second, "second pin");
        LengthStyle style = LengthStyle.of(first);
        if (!(to > from)) {
            throw LibraryUnits.refused("second pin", "more-than", "past the first at " + style.brief(from), second);
        }
        return new JigPlay(from, 0, to, 0, false, style);
    }

    /**
     * {@return a copy with the same play at both} Default: none.
     *
     * @param ofBoth channel's width less the pin's diameter or the key's width, 0 or more
     */
    public JigPlay play(Quantity<Length> ofBoth) {
        return play(ofBoth, ofBoth);
    }

    /**
     * {@return a copy with another play at each}
     *
     * @param ofFirst channel's width less the first pin's diameter, 0 or more
     * @param ofSecond channel's width less the second pin's diameter, 0 or more
     */
    public JigPlay play(Quantity<Length> ofFirst, Quantity<Length> ofSecond) {
        return new JigPlay(
                x1,
                LibraryUnits.mmNotNegative(ofFirst, "play of the first pin"),
                x2,
                LibraryUnits.mmNotNegative(ofSecond, "play of the second pin"),
                pressed,
                style());
    }

    /**
     * {@return a copy with the play that pins of one diameter have in a channel}
     *
     * @param channel as wide as drawn, both pins wholly in it
     * @param diameter of both pins, more than 0, no more than the channel's width
     */
    public JigPlay pinsIn(Channel channel, Quantity<Length> diameter) {
        double wide = LibraryUnits.mmPositive(diameter, "pin's diameter");
        Objects.requireNonNull(channel, "channel");
        double first = playIn(channel, wide, "first pin", x1, diameter);
        double second = playIn(channel, wide, "second pin", x2, diameter);
        return new JigPlay(x1, first, x2, second, pressed, style());
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

    private double playIn(Channel channel, double wide, String pin, double x, Quantity<Length> diameter) {
        if (!(x - wide / 2 >= channel.startMm() && x + wide / 2 <= channel.endMm())) {
            throw LibraryUnits.refused(
                    pin,
                    "range",
                    "all in the channel, from " + channel.style().brief(channel.startMm()) + " to "
                            + channel.style().brief(channel.endMm()),
                    style().amount(x));
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
