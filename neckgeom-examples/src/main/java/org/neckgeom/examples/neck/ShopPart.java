package org.neckgeom.examples.neck;

import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Shop;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The shop in a neck file: what cuts the channel, what guides it, what reads it. */
final class ShopPart {

    static final Key<Section> CUTTER = Key.needed("cutter", CutterPart.SHAPE, "the cutter for the channel");
    static final Key<Section> FENCE =
            Key.optional("fence", FencePart.SHAPE, "what the blank runs along; one piece of 600 mm when left out");
    static final Key<Section> LEAVES =
            Key.optional("feeler leaves", LeavesPart.SHAPE, "what the fence is moved by; the common set when left out");
    static final Key<Amount<Length>> READS_WITHIN = Key.optional(
            "reads within",
            Lengths.SIZE,
            "one standard deviation of one reading of the calliper; 0.05 mm when left out");
    static final Key<Amount<Length>> DEEPEST_PASS =
            Key.optional("deepest pass", Lengths.SIZE, "no pass is deeper; half the cutter's diameter when left out");
    static final Key<Amount<Length>> LAST_PASS =
            Key.optional("last pass", Lengths.SIZE_OR_NOTHING, "depth of a light last pass; none when left out");

    static final Key<Amount<Speed>> FEED = Key.optional(
            "feed",
            QuantityKind.speed().moreThan(ShopUnits.mmPerMinute(0)).atMost(ShopUnits.mmPerMinute(60_000)),
            "how fast the blank runs past the cutter; nothing about its load when left out");
    static final Key<Amount<Frequency>> SPEED = Key.optional(
            "speed",
            QuantityKind.turning().moreThan(ShopUnits.rpm(0)).atMost(ShopUnits.rpm(60_000)),
            "how fast the cutter turns; to be told together with the feed");

    static final Shape SHAPE = Shape.of(
            "what the shop has for cutting the channel",
            CUTTER,
            FENCE,
            LEAVES,
            READS_WITHIN,
            DEEPEST_PASS,
            LAST_PASS,
            FEED,
            SPEED);

    private ShopPart() {}

    static Found<Shop> of(Section section) {
        // All three are made before any is asked for, so that each one's problems are noted.
        Found<Cutter> cutter = section.at(CUTTER).then(CutterPart::of);
        var fence = section.at(FENCE).then(FencePart::of);
        var leaves = section.at(LEAVES).then(LeavesPart::of);
        return section.make(() -> {
            Shop shop = Shop.with(cutter.value());
            if (!fence.isAbsent()) {
                shop = shop.fence(fence.value());
            }
            if (!leaves.isAbsent()) {
                shop = shop.leaves(leaves.value());
            }
            if (!section.at(READS_WITHIN).isAbsent()) {
                shop = shop.readsWithin(section.at(READS_WITHIN).value());
            }
            if (section.at(FEED).isAbsent() != section.at(SPEED).isAbsent()) {
                throw new IllegalArgumentException("feed and speed must be told together; give both, or neither");
            }
            if (!section.at(FEED).isAbsent()) {
                shop = shop.feed(section.at(FEED).value(), section.at(SPEED).value());
            }
            if (section.at(DEEPEST_PASS).isAbsent() && section.at(LAST_PASS).isAbsent()) {
                return shop;
            }
            return shop.passes(
                    section.at(DEEPEST_PASS).orElse(shop.deepestPass()),
                    section.at(LAST_PASS).orElse(ShopUnits.mm(0)));
        });
    }
}
