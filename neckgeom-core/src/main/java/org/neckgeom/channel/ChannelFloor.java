package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Channel;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The floor of a channel along its length, as a template for it is laid out: radius and depths at nine stations, such as
 * {@code floor arched, radius 3612.5 mm}. Immutable.
 *
 * <p>An arched floor is the circle through both ends and the middle: with length L and sagitta s its radius is
 * {@code R = (L^2/4 + s^2)/(2 s)}. Exact. The pocket is not counted.
 */
public final class ChannelFloor extends ValueAnswer {

    /** The depth at a place. */
    private record Station(double mm, double depthMm) {
        private static final Form<Station> FORM = Form.<Station>of("floor-station")
                .fact("station", Kind.MM, "from the nut, positive toward the body", Station::mm)
                .fact("depth", Kind.MM, "of the floor under the glue face", Station::depthMm);
    }

    private static final Form<ChannelFloor> FORM = Form.<ChannelFloor>of("channel-floor")
            .fact("start", Kind.MM, "of the channel, from the nut", floor -> floor.channel.startMm())
            .fact("end", Kind.MM, "of the channel, from the nut", floor -> floor.channel.endMm())
            .fact("depth", Kind.MM, "at the ends", floor -> floor.channel.depthMm())
            .fact(
                    "radius",
                    Kind.MM,
                    "of an arched floor, negative when its middle is shallower",
                    ChannelFloor::radiusMm)
            .fact("stations", Kind.table(Station.FORM), "the floor, end to end", ChannelFloor::stations)
            .phrase("shallow", floor -> !(floor.channel.archMm() > 0), ", middle shallow")
            .findsOnly("flat", ChannelFloor::isFlat, "floor flat, {depth:brief} deep from {start:brief} to {end:brief}")
            .finds("arched", "floor arched, radius {radius:size ..1}{shallow}")
            .each("stations", "{station:brief} from the nut", "{depth:text} deep");

    private static final int PARTS = 8;

    private final Channel channel;

    ChannelFloor(Channel channel, LengthStyle style) {
        super(FORM, style);
        this.channel = channel;
    }

    /** {@return whether the floor is flat; true for a floor without sagitta} */
    public boolean isFlat() {
        return channel.archMm() == 0;
    }

    /**
     * {@return the radius of an arched floor, negative when the middle is shallower than the ends}
     *
     * @throws ArithmeticException if the floor is flat
     */
    public Amount<Length> radius() {
        if (isFlat()) {
            throw NoAnswer.because("radius", "flat", "a flat floor has no radius");
        }
        return style().amount(radiusMm());
    }

    private List<Station> stations() {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i <= PARTS; i++) {
            // The last station is the end itself, not a sum that might lie beyond it.
            double x = i == PARTS ? channel.endMm() : channel.startMm() + channel.lengthMm() * i / PARTS;
            stations.add(new Station(x, channel.floorDepthAtMm(x)));
        }
        return stations;
    }

    /** Infinite where the floor is flat. */
    private double radiusMm() {
        double s = channel.archMm();
        double half = channel.lengthMm() / 2;
        return (half * half + s * s) / (2 * s);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {channel};
    }
}
