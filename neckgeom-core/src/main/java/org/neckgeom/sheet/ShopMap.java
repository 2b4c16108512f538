package org.neckgeom.sheet;

import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.plan.CentringStep;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** What a shop has, and what was done at its machine, as data and back. */
final class ShopMap {

    private ShopMap() {}

    static DataMap of(Shop shop) {
        DataMap data = DataMap.empty()
                .put("cutter", cutter(shop.cutter()))
                .put("fence", fence(shop.fence()))
                .put("leaves", leaves(shop.leaves()))
                .quantity("repeatability", shop.repeatability())
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
                .readsWithin(data.length("repeatability"))
                .passes(data.length("deepestPass"), data.length("lastPass"));
        return data.has("feed") || data.has("turning")
                ? shop.feed(data.quantity("feed", DataUnits.SPEED), data.quantity("turning", DataUnits.FREQUENCY))
                : shop;
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
            case SPLIT -> data.length("outOfLine", fence.outOfLineMm(), style);
            case PIVOTING ->
                data.length("cutterFromPivot", fence.cutterFromPivotMm(), style)
                        .length("stopFromPivot", fence.stopFromPivotMm(), style);
        };
    }

    private static Fence fenceFrom(DataSource data) {
        Amount<Length> length = data.length("length");
        return switch (data.word("build", Fence.Build.values())) {
            case ONE_PIECE -> Fence.onePiece(length);
            case SPLIT -> Fence.split(length, data.length("outOfLine"));
            case PIVOTING -> Fence.pivoting(length, data.length("cutterFromPivot"), data.length("stopFromPivot"));
        };
    }

    private static DataMap leaves(FeelerSet set) {
        return DataMap.empty()
                .putAll(
                        "leaves",
                        StockMap.quantities(set.leavesMm(), set.style().unit()))
                .length("eachWithin", set.leafHalfWidthMm(), set.style());
    }

    private static FeelerSet leavesFrom(DataSource data) {
        return FeelerSet.of(data.quantities("leaves", DataUnits.LENGTH)).eachWithin(data.length("eachWithin"));
    }

    static DataMap step(CentringStep step) {
        return step.cut()
                .map(cut -> DataMap.empty().put("trialCut", cut(cut)))
                .orElseGet(() -> DataMap.empty().length("fenceTowardCutter", step.moveMm(), step.style()));
    }

    static CentringStep stepFrom(DataSource data) {
        boolean isMove = data.has("fenceTowardCutter");
        if (isMove == data.has("trialCut")) {
            throw Refusal.of(
                    "a step", "unknown", "be one of trialCut or fenceTowardCutter", (isMove ? "both" : "neither"));
        }
        return isMove
                ? CentringStep.moved(data.length("fenceTowardCutter"))
                : CentringStep.read(data.one("trialCut", ShopMap::cutFrom));
    }

    private static DataMap cut(TrialCut cut) {
        LengthStyle style = cut.style();
        DataMap data = DataMap.empty()
                .putAll("fenceWall", StockMap.quantities(cut.fenceReadingsMm(), style.unit()))
                .putAll("farWall", StockMap.quantities(cut.farReadingsMm(), style.unit()));
        cut.slot().ifPresent(width -> data.length("slot", width.valueHouse(), style));
        cut.piece().ifPresent(width -> data.length("piece", width.valueHouse(), style));
        cut.repeatability().ifPresent(u -> data.quantity("repeatability", u));
        return data.number("wallCorrelation", cut.wallCorrelation());
    }

    private static TrialCut cutFrom(DataSource data) {
        List<Amount<Length>> fence = data.quantities("fenceWall", DataUnits.LENGTH);
        List<Amount<Length>> far = data.quantities("farWall", DataUnits.LENGTH);
        TrialCut cut = TrialCut.walls(fence, far).wallsCorrelated(data.number("wallCorrelation"));
        cut = data.has("slot") ? cut.slot(data.length("slot")) : cut;
        cut = data.has("piece") ? cut.piece(data.length("piece")) : cut;
        return data.has("repeatability") ? cut.readWithin(data.length("repeatability")) : cut;
    }
}
