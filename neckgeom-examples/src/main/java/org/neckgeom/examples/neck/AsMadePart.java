package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.measure.Estimate;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.plan.NeckReadings;
import org.neckgeom.shop.Shop;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** What has been read on the neck itself, in a neck file: each once or several times, nothing for what is still to do. */
final class AsMadePart {

    private static final int MOST_READINGS = 30;
    private static final int MOST_STATIONS = 50;
    private static final Kind<List<Amount<Length>>> SIZES = Kinds.oneOrMore(Lengths.SIZE, MOST_READINGS);
    private static final Kind<List<Amount<Length>>> EITHER_WAY = Kinds.oneOrMore(Lengths.EITHER_WAY, MOST_READINGS);
    private static final Amount<Angle> USUAL_ANGLE = ShopUnits.deg(0.1);

    static final Key<List<Amount<Length>>> CHANNEL_DEPTH =
            Key.optional("channel depth", SIZES, "as cut, at its ends where the floor is arched");
    static final Key<List<Amount<Length>>> CHANNEL_START =
            Key.optional("channel start", EITHER_WAY, "where it begins, from the nut toward the body");
    static final Key<List<Amount<Length>>> CHANNEL_END =
            Key.optional("channel end", EITHER_WAY, "where it ends, from the nut");
    static final Key<List<Amount<Length>>> CHANNEL_WIDTH =
            Key.optional("channel width", SIZES, "as cut, its pocket not counted");
    static final Key<List<Amount<Length>>> SLOT_OFFSET = Key.optional(
            "slot offset", EITHER_WAY, "off the neck's middle at its head end, positive too far from the fence's edge");
    static final Key<List<Amount<Length>>> SLOT_OFFSET_AT_HEEL =
            Key.optional("slot offset at heel", EITHER_WAY, "the same at its heel end");
    static final Key<List<Amount<Angle>>> SCARF_ANGLE = Key.optional(
            "scarf angle",
            Kinds.oneOrMore(QuantityKind.angle().atLeast(ShopUnits.deg(1)).atMost(ShopUnits.deg(45)), MOST_READINGS),
            "as sawn, between head face and glue face");
    static final Key<List<Amount<Length>>> HEAD_THICKNESS =
            Key.optional("head thickness", SIZES, "of its wood, veneers not counted");
    static final Key<List<Amount<Length>>> FINGERBOARD_OFFSET = Key.optional(
            "fingerboard offset", EITHER_WAY, "of the glued board's middle off the channel's, toward the treble side");
    static final Key<List<Amount<Length>>> HEIGHT_AT_BRIDGE = Key.optional(
            "height at bridge",
            EITHER_WAY,
            "how far the line of the frets meets the bridge too high; negative too low");
    static final Key<List<Amount<Length>>> OFFSET_AT_BRIDGE = Key.optional(
            "offset at bridge",
            EITHER_WAY,
            "how far the centreline meets the bridge off its middle, toward the treble");

    static final Key<Amount<Length>> STATION =
            Key.needed("station", Lengths.SIZE_OR_NOTHING, "where the carved depth was read, from the nut");
    static final Key<List<Amount<Length>>> DEPTH = Key.needed("depth", SIZES, "from the glue face to the back");
    static final Key<List<Section>> BACK = Key.optional(
            "back",
            Kinds.listOf(Shape.of("a carved depth", STATION, DEPTH), 1, MOST_STATIONS),
            "the back's depth at stations as carved");

    static final Key<Amount<Length>> READS_WITHIN = Key.optional(
            "reads within", Lengths.SIZE, "one standard deviation of one of these readings; the shop's when left out");
    static final Key<Amount<Angle>> ANGLE_WITHIN = Key.optional(
            "angle within",
            QuantityKind.angle().moreThan(ShopUnits.deg(0)).atMost(ShopUnits.deg(10)),
            "the same of the scarf angle; 0.1 deg when left out");

    static final Shape SHAPE = Shape.of(
            "what has been read on the neck itself",
            CHANNEL_DEPTH,
            CHANNEL_START,
            CHANNEL_END,
            CHANNEL_WIDTH,
            SLOT_OFFSET,
            SLOT_OFFSET_AT_HEEL,
            SCARF_ANGLE,
            HEAD_THICKNESS,
            BACK,
            FINGERBOARD_OFFSET,
            HEIGHT_AT_BRIDGE,
            OFFSET_AT_BRIDGE,
            READS_WITHIN,
            ANGLE_WITHIN);

    private AsMadePart() {}

    private static Map<Key<List<Amount<Length>>>, NeckFeature> lengths() {
        Map<Key<List<Amount<Length>>>, NeckFeature> lengths = new LinkedHashMap<>();
        lengths.put(CHANNEL_DEPTH, NeckFeature.CHANNEL_DEPTH);
        lengths.put(CHANNEL_START, NeckFeature.CHANNEL_START);
        lengths.put(CHANNEL_END, NeckFeature.CHANNEL_END);
        lengths.put(CHANNEL_WIDTH, NeckFeature.CHANNEL_WIDTH);
        lengths.put(SLOT_OFFSET, NeckFeature.SLOT_OFFSET);
        lengths.put(SLOT_OFFSET_AT_HEEL, NeckFeature.SLOT_OFFSET_AT_HEEL);
        lengths.put(HEAD_THICKNESS, NeckFeature.HEAD_THICKNESS);
        lengths.put(FINGERBOARD_OFFSET, NeckFeature.FINGERBOARD_OFFSET);
        lengths.put(HEIGHT_AT_BRIDGE, NeckFeature.HEIGHT_AT_BRIDGE);
        lengths.put(OFFSET_AT_BRIDGE, NeckFeature.OFFSET_AT_BRIDGE);
        return lengths;
    }

    static Found<NeckReadings> of(Section section, Shop shop) {
        Amount<Length> within = section.at(READS_WITHIN).orElse(shop.repeatability());
        return section.make(() -> {
            NeckReadings readings = NeckReadings.none();
            for (Map.Entry<Key<List<Amount<Length>>>, NeckFeature> key :
                    lengths().entrySet()) {
                if (!section.at(key.getKey()).isAbsent()) {
                    readings = readings.read(
                            key.getValue(), mean(section.at(key.getKey()).value(), within));
                }
            }
            if (!section.at(SCARF_ANGLE).isAbsent()) {
                readings = readings.scarfAngle(mean(
                        section.at(SCARF_ANGLE).value(),
                        section.at(ANGLE_WITHIN).orElse(USUAL_ANGLE)));
            }
            for (Section depth : section.at(BACK).orElse(List.of())) {
                readings = readings.backDepth(
                        depth.at(STATION).value(), mean(depth.at(DEPTH).value(), within));
            }
            return readings;
        });
    }

    /** The mean of readings that each repeat to one standard deviation: the mean's is less by the root of their count. */
    private static <Q extends Quantity<Q>> Estimate<Q> mean(List<Amount<Q>> readings, Amount<Q> within) {
        int n = readings.size();
        double sum = readings.stream().mapToDouble(Amount::house).sum();
        return Estimate.ofHouse(
                sum / n,
                within.house() / Math.sqrt(n),
                Double.POSITIVE_INFINITY,
                readings.get(0).unit());
    }
}
