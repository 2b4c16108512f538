package org.neckgeom.examples.neck;

import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.shop.BenchUncertainty;
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
    static final Key<Amount<Length>> RESOLUTION = Key.optional(
            "resolution",
            Lengths.SIZE_OR_NOTHING,
            "smallest step that the calliper shows; contained in reads within when left out");
    static final Key<Amount<Length>> CALLIPER_ZERO = Key.optional(
            "calliper zero",
            Lengths.SIZE_OR_NOTHING,
            "standard uncertainty of the calliper's zero; 0.01 mm when left out");
    static final Key<Amount<Length>> BLANK_ZERO = Key.optional(
            "blank calliper zero",
            Lengths.SIZE_OR_NOTHING,
            "the same of another calliper that the blank was read by; the blank is read by the same one when left out");
    static final Key<Amount<Length>> CUT_SCATTER = Key.optional(
            "cut scatter",
            Lengths.SIZE_OR_NOTHING,
            "one standard deviation of where cuts at one setting lie; 0.02 mm when left out");
    static final Key<Integer> SCATTER_FROM = Key.optional(
            "cut scatter from",
            Kinds.wholeNumber(2, 1000),
            "how many cuts it was found from; well known when left out");
    static final Key<Amount<Length>> MOVE_SCATTER = Key.optional(
            "move scatter",
            Lengths.SIZE_OR_NOTHING,
            "one standard deviation of a fence move, leaves not counted; 0.02 mm when left out");
    static final Key<Section> DECISION =
            Key.optional("decision", DecisionPart.SHAPE, "when the neck may be cut, and what steps on the way cost");
    static final Key<Amount<Length>> DEEPEST_PASS =
            Key.optional("deepest pass", Lengths.SIZE, "no pass is deeper; half the cutter's diameter when left out");
    static final Key<Amount<Length>> LAST_PASS =
            Key.optional("last pass", Lengths.SIZE_OR_NOTHING, "depth of a light last pass; none when left out");

    static final Key<Amount<Speed>> FEED = Key.optional(
            "feed",
            QuantityKind.speed().moreThan(ShopUnits.mmPerMinute(0)).atMost(ShopUnits.mmPerMinute(30_000)),
            "how fast the blank goes past the cutter; told together with the turning");
    static final Key<Amount<Frequency>> TURNING = Key.optional(
            "turning",
            QuantityKind.turning().moreThan(ShopUnits.rpm(0)).atMost(ShopUnits.rpm(60_000)),
            "how fast the cutter turns");

    static final Shape SHAPE = Shape.of(
            "what the shop has for cutting the channel",
            CUTTER,
            FENCE,
            LEAVES,
            READS_WITHIN,
            RESOLUTION,
            CALLIPER_ZERO,
            BLANK_ZERO,
            CUT_SCATTER,
            SCATTER_FROM,
            MOVE_SCATTER,
            DECISION,
            DEEPEST_PASS,
            LAST_PASS,
            FEED,
            TURNING);

    private ShopPart() {}

    static Found<Shop> of(Section section) {
        // All three are made before any is asked for, so that each one's problems are noted.
        Found<Cutter> cutter = section.at(CUTTER).then(CutterPart::of);
        var fence = section.at(FENCE).then(FencePart::of);
        var leaves = section.at(LEAVES).then(LeavesPart::of);
        var decision = section.at(DECISION).then(DecisionPart::of);
        return section.make(() -> {
            Shop shop = Shop.with(cutter.value());
            if (!fence.isAbsent()) {
                shop = shop.fence(fence.value());
            }
            if (!leaves.isAbsent()) {
                shop = shop.leaves(leaves.value());
            }
            shop = shop.uncertainty(uncertainty(section, shop.uncertainty()));
            if (!decision.isAbsent()) {
                shop = shop.decision(decision.value());
            }
            if (!section.at(DEEPEST_PASS).isAbsent() || !section.at(LAST_PASS).isAbsent()) {
                shop = shop.passes(
                        section.at(DEEPEST_PASS).orElse(shop.deepestPass()),
                        section.at(LAST_PASS).orElse(ShopUnits.mm(0)));
            }
            return withFeed(section, shop);
        });
    }

    private static BenchUncertainty uncertainty(Section section, BenchUncertainty usual) {
        BenchUncertainty bench = usual;
        if (!section.at(READS_WITHIN).isAbsent()) {
            bench = bench.reading(section.at(READS_WITHIN).value());
        }
        if (!section.at(RESOLUTION).isAbsent()) {
            bench = bench.resolution(section.at(RESOLUTION).value());
        }
        if (!section.at(CALLIPER_ZERO).isAbsent()) {
            bench = bench.calliperZero(section.at(CALLIPER_ZERO).value());
        }
        if (!section.at(BLANK_ZERO).isAbsent()) {
            bench = bench.blankCalliperZero(section.at(BLANK_ZERO).value());
        }
        if (!section.at(MOVE_SCATTER).isAbsent()) {
            bench = bench.moveScatter(section.at(MOVE_SCATTER).value());
        }
        if (section.at(CUT_SCATTER).isAbsent()) {
            if (!section.at(SCATTER_FROM).isAbsent()) {
                throw new IllegalArgumentException("cut scatter from must have a cut scatter beside it, but has none");
            }
            return bench;
        }
        return section.at(SCATTER_FROM).isAbsent()
                ? bench.cutScatter(section.at(CUT_SCATTER).value())
                : bench.cutScatter(
                        section.at(CUT_SCATTER).value(),
                        section.at(SCATTER_FROM).value());
    }

    private static Shop withFeed(Section section, Shop shop) {
        if (section.at(FEED).isAbsent() != section.at(TURNING).isAbsent()) {
            throw new IllegalArgumentException("feed and turning must be told together, but one is missing");
        }
        return section.at(FEED).isAbsent()
                ? shop
                : shop.feed(section.at(FEED).value(), section.at(TURNING).value());
    }
}
