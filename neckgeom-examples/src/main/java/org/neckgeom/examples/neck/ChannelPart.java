package org.neckgeom.examples.neck;

import java.util.function.BiFunction;
import javax.measure.quantity.Length;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Rod;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.units.Amount;

/** The rod's channel in a neck file. */
final class ChannelPart {

    static final Key<Amount<Length>> START = Key.optional(
            "starts at", Lengths.EITHER_WAY, "from the nut, toward the body; before the nut is negative; 0");
    static final Key<Amount<Length>> END_PLAY =
            Key.optional("end play", Lengths.SIZE_OR_NOTHING, "how much longer than the rod; 0 when left out");
    static final Key<Amount<Length>> SIDE_PLAY =
            Key.optional("side play", Lengths.SIZE_OR_NOTHING, "how much wider than the rod; 0 when left out");
    static final Key<Amount<Length>> COVER = Key.optional(
            "cover strip", Lengths.SIZE_OR_NOTHING, "thickness of a strip over the rod; none when left out");
    static final Key<Amount<Length>> CLEARANCE =
            Key.optional("clearance", Lengths.SIZE_OR_NOTHING, "how much deeper than rod and strip; 0 when left out");
    static final Key<Amount<Length>> ARCH = Key.optional(
            "deeper in the middle",
            Lengths.EITHER_WAY,
            "how much deeper the middle is than the ends; flat when left out");
    static final Key<Amount<Length>> POCKET_LENGTH = Key.needed("length", Lengths.SIZE, "along the neck");
    static final Key<Amount<Length>> POCKET_WIDTH = Key.needed("width", Lengths.SIZE, "across the neck");
    static final Key<Amount<Length>> POCKET_DEPTH = Key.needed("depth", Lengths.SIZE, "below the glue face");
    static final Key<Section> POCKET = Key.optional(
            "pocket",
            Shape.of("the recess for the adjuster", POCKET_LENGTH, POCKET_WIDTH, POCKET_DEPTH),
            "the recess for the adjuster, at its end of the channel; none when left out");

    static final Shape SHAPE =
            Shape.of("the rod's channel", START, END_PLAY, SIDE_PLAY, COVER, CLEARANCE, ARCH, POCKET);

    private ChannelPart() {}

    static Found<Channel> of(Section section, Rod rod) {
        return section.make(() -> {
            Channel channel = Channel.forRod(rod);
            channel = with(section, START, channel, Channel::startingAt);
            channel = with(section, END_PLAY, channel, Channel::endPlay);
            channel = with(section, SIDE_PLAY, channel, Channel::sidePlay);
            channel = with(section, COVER, channel, Channel::coveredBy);
            channel = with(section, CLEARANCE, channel, Channel::clearance);
            channel = with(section, ARCH, channel, Channel::arched);
            if (section.at(POCKET).isAbsent()) {
                return channel;
            }
            Section pocket = section.at(POCKET).value();
            return channel.pocket(
                    pocket.at(POCKET_LENGTH).value(),
                    pocket.at(POCKET_WIDTH).value(),
                    pocket.at(POCKET_DEPTH).value());
        });
    }

    private static Channel with(
            Section section,
            Key<Amount<Length>> key,
            Channel channel,
            BiFunction<Channel, Amount<Length>, Channel> change) {
        return section.at(key).isAbsent()
                ? channel
                : change.apply(channel, section.at(key).value());
    }
}
