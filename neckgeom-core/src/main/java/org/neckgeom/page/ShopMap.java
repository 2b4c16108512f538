package org.neckgeom.page;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.fault.Refusal;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.DecisionRule;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** What a shop has, and what was done at its machine, as data and back. */
final class ShopMap {

    private ShopMap() {}

    static DataMap of(Shop shop) {
        DataMap data = DataMap.empty()
                .put("cutter", cutter(shop.cutter()))
                .put("fence", fence(shop.fence()))
                .put("leaves", leaves(shop.leaves()))
                .quantity("repeatability", shop.repeatability())
                .put(
                        "uncertainty",
                        uncertainty(shop.uncertainty(), shop.cutter().style()))
                .put("decision", decision(shop.decision()))
                .quantity("deepestPass", shop.deepestPass())
                .quantity("lastPass", shop.lastPass());
        shop.feed().ifPresent(feed -> data.quantity("feed", feed));
        shop.turning().ifPresent(turning -> data.quantity("turning", turning));
        return data;
    }

    static Shop from(DataSource data) {
        Shop shop = Shop.with(data.one("cutter", ShopMap::cutterFrom))
                .fence(data.one("fence", ShopMap::fenceFrom))
                .leaves(data.one("leaves", ShopMap::leavesFrom))
                .uncertainty(
                        data.has("uncertainty")
                                ? data.one(
                                        "uncertainty", source -> uncertaintyFrom(source, data.length("repeatability")))
                                : BenchUncertainty.withDefaults().reading(data.length("repeatability")))
                .decision(
                        data.has("decision")
                                ? data.one("decision", ShopMap::decisionFrom)
                                : DecisionRule.withDefaults())
                .passes(data.length("deepestPass"), data.length("lastPass"));
        return data.has("feed") || data.has("turning")
                ? shop.feed(data.quantity("feed", DataUnits.SPEED), data.quantity("turning", DataUnits.FREQUENCY))
                : shop;
    }

    private static DataMap uncertainty(BenchUncertainty bench, LengthStyle style) {
        DataMap data = DataMap.empty()
                .length("resolution", bench.resolutionMm(), style)
                .length("calliperZero", bench.calliperZeroMm(), style)
                .length("moveScatter", bench.moveScatterMm(), style);
        bench.blankCalliperZeroMm().ifPresent(zero -> data.length("blankCalliperZero", zero, style));
        if (!bench.isCutScatterDefault()) {
            data.length("cutScatter", bench.cutScatterMm(), style);
            bench.cutScatterCuts().ifPresent(cuts -> data.put("cutScatterCuts", cuts));
        }
        return data;
    }

    private static BenchUncertainty uncertaintyFrom(DataSource data, Amount<Length> reading) {
        BenchUncertainty bench = BenchUncertainty.withDefaults()
                .reading(reading)
                .resolution(data.length("resolution"))
                .calliperZero(data.length("calliperZero"))
                .moveScatter(data.length("moveScatter"));
        if (data.has("blankCalliperZero")) {
            bench = bench.blankCalliperZero(data.length("blankCalliperZero"));
        }
        if (data.has("cutScatterCuts")) {
            return bench.cutScatter(data.length("cutScatter"), data.count("cutScatterCuts"));
        }
        return data.has("cutScatter") ? bench.cutScatter(data.length("cutScatter")) : bench;
    }

    private static DataMap decision(DecisionRule rule) {
        return DataMap.empty()
                .number("wantedChance", rule.wantedChance())
                .number("spoiledNeckCost", rule.spoiledNeckCost())
                .number("readingAgainCost", rule.readingAgainCost())
                .number("trialCutCost", rule.trialCutCost())
                .number("fenceMoveCost", rule.fenceMoveCost());
    }

    private static DecisionRule decisionFrom(DataSource data) {
        return DecisionRule.withDefaults()
                .wantedChance(Amount.ofHouse(data.number("wantedChance"), ShopUnit.PERCENT))
                .spoiledNeck(data.number("spoiledNeckCost"))
                .readingAgain(data.number("readingAgainCost"))
                .trialCut(data.number("trialCutCost"))
                .fenceMove(data.number("fenceMoveCost"));
    }

    private static DataMap cutter(Cutter cutter) {
        LengthStyle style = cutter.style();
        return DataMap.empty()
                .quantity("diameter", cutter.diameter())
                .put("flutes", cutter.flutes())
                .length("fluteLength", cutter.fluteLengthMm(), style)
                .length("shank", cutter.shankMm(), style)
                .length("standOut", cutter.standOutMm(), style)
                .put("material", DataSource.word(cutter.material()))
                .length("runout", cutter.runoutMm(), style);
    }

    private static Cutter cutterFrom(DataSource data) {
        Cutter cutter = Cutter.straight(data.length("diameter"))
                .flutes(data.count("flutes"), data.length("fluteLength"))
                .shank(data.length("shank"))
                .standOut(data.length("standOut"))
                .runout(data.length("runout"));
        return data.word("material", Cutter.Material.values()) == Cutter.Material.CARBIDE
                ? cutter.carbide()
                : cutter.steel();
    }

    private static DataMap fence(Fence fence) {
        LengthStyle style = fence.style();
        DataMap data =
                DataMap.empty().put("build", DataSource.word(fence.build())).length("length", fence.lengthMm(), style);
        return switch (fence.build()) {
            case ONE_PIECE -> data;
            case SPLIT -> data.length("outOfLine", fence.outOfLineMm(), style).length("gap", fence.gapMm(), style);
            case PIVOTING ->
                data.length("cutterFromPivot", fence.cutterFromPivotMm(), style)
                        .length("stopFromPivot", fence.stopFromPivotMm(), style);
        };
    }

    private static Fence fenceFrom(DataSource data) {
        Amount<Length> length = data.length("length");
        return switch (data.word("build", Fence.Build.values())) {
            case ONE_PIECE -> Fence.onePiece(length);
            case SPLIT -> {
                Fence split = Fence.split(length, data.length("outOfLine"));
                yield data.has("gap") ? split.gap(data.length("gap")) : split;
            }
            case PIVOTING -> Fence.pivoting(length, data.length("cutterFromPivot"), data.length("stopFromPivot"));
        };
    }

    private static DataMap leaves(FeelerSet set) {
        return DataMap.empty()
                .putAll(
                        "leaves",
                        StockMap.quantities(set.leavesMm(), set.stampedIn().unit()))
                .length("eachWithin", set.leafHalfWidthMm(), set.stampedIn());
    }

    private static FeelerSet leavesFrom(DataSource data) {
        return FeelerSet.of(data.quantities("leaves", DataUnits.LENGTH)).eachWithin(data.length("eachWithin"));
    }

    static DataMap step(CentringStep step) {
        return step.cut()
                .map(cut -> DataMap.empty().put(step.isReadAgain() ? "readAgain" : "trialCut", cut(cut)))
                .orElseGet(() -> moved(step.move().orElseThrow(), step.style()));
    }

    private static DataMap moved(FenceMove move, LengthStyle style) {
        DataMap data = DataMap.empty().length("fenceTowardCutter", move.towardMm(), style);
        double u = move.settingUncertaintyMm();
        return u == 0 ? data : data.length("settingUncertainty", u, style);
    }

    static CentringStep stepFrom(DataSource data) {
        long kinds = Stream.of("fenceTowardCutter", "trialCut", "readAgain")
                .filter(data::has)
                .count();
        if (kinds != 1) {
            throw Refusal.of(
                    "a step",
                    "unknown",
                    "be one of trialCut, readAgain or fenceTowardCutter",
                    "",
                    (kinds == 0 ? "was none" : "had " + kinds));
        }
        if (data.has("fenceTowardCutter")) {
            Amount<Length> toward = data.length("fenceTowardCutter");
            FenceMove move = toward.house() < 0 ? FenceMove.away(toward.negated()) : FenceMove.toward(toward);
            return CentringStep.moved(
                    data.has("settingUncertainty") ? move.settingUncertainty(data.length("settingUncertainty")) : move);
        }
        return data.has("trialCut")
                ? CentringStep.read(data.one("trialCut", ShopMap::cutFrom))
                : CentringStep.readAgain(data.one("readAgain", ShopMap::cutFrom));
    }

    private static DataMap cut(TrialCut cut) {
        LengthStyle style = cut.style();
        DataMap data = DataMap.empty()
                .putAll("fenceWall", StockMap.quantities(cut.fenceReadingsMm(), style.unit()))
                .putAll("farWall", StockMap.quantities(cut.farReadingsMm(), style.unit()));
        if (cut.slot().isPresent()) {
            data.putAll("slot", StockMap.quantities(cut.slotReadingsMm(), style.unit()));
        }
        if (cut.piece().isPresent()) {
            data.putAll("piece", StockMap.quantities(cut.pieceReadingsMm(), style.unit()));
        }
        cut.ripScatter().ifPresent(scatter -> data.quantity("ripScatter", scatter));
        cut.repeatability().ifPresent(u -> data.quantity("repeatability", u));
        return data.number("wallCorrelation", cut.wallCorrelation());
    }

    private static TrialCut cutFrom(DataSource data) {
        List<Amount<Length>> fence = data.quantities("fenceWall", DataUnits.LENGTH);
        List<Amount<Length>> far = data.quantities("farWall", DataUnits.LENGTH);
        TrialCut cut = TrialCut.walls(fence, far).wallsCorrelated(data.number("wallCorrelation"));
        cut = data.has("slot") ? cut.slot(data.oneOrMore("slot", DataUnits.LENGTH)) : cut;
        cut = data.has("piece") ? cut.piece(data.oneOrMore("piece", DataUnits.LENGTH)) : cut;
        cut = data.has("ripScatter") ? cut.rippedWithBlank(data.length("ripScatter")) : cut;
        return data.has("repeatability") ? cut.readWithin(data.length("repeatability")) : cut;
    }
}
