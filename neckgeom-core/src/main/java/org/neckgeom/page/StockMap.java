package org.neckgeom.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.neckgeom.fault.Refusal;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.stock.WoodFigure;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** Wood, blank and weather as data and back. */
final class StockMap {

    private StockMap() {}

    static DataMap wood(Wood wood) {
        return DataMap.empty()
                .put("name", wood.name())
                .put("botanicalName", wood.botanicalName())
                .putAll(
                        "figures",
                        wood.figures(),
                        figure -> DataMap.empty()
                                .put("kind", DataSource.word(figure.kind()))
                                .number("value", figure.value())
                                .put("unit", figure.kind().unit())
                                .put("source", figure.source())
                                .put("standing", DataSource.word(figure.standing())));
    }

    static Wood woodFrom(DataSource data) {
        return Wood.of(
                data.text("name"),
                data.has("botanicalName") ? data.text("botanicalName") : "",
                data.all("figures", StockMap::figureFrom));
    }

    private static WoodFigure figureFrom(DataSource data) {
        WoodFigure.Kind kind = data.word("kind", WoodFigure.Kind.values());
        String unit = data.text("unit");
        if (!unit.equals(kind.unit())) {
            throw Refusal.of("unit of " + kind.label(), "unit", "be \"" + kind.unit() + "\"", "\"" + unit + "\"");
        }
        return new WoodFigure(
                kind, data.number("value"), data.text("source"), data.word("standing", WoodFigure.Standing.values()));
    }

    static DataMap blank(Blank blank) {
        LengthStyle style = blank.style();
        DataMap data = DataMap.empty()
                .quantity("length", blank.length())
                .quantity("width", blank.width())
                .quantity("thickness", blank.thickness())
                .length("nutFromHeadEnd", blank.nutFromHeadEndMm(), style)
                .length("outOfParallel", blank.outOfParallelMm(), style);
        blank.wood().ifPresent(wood -> data.put("wood", wood(wood)));
        return data;
    }

    static Blank blankFrom(DataSource data) {
        Blank blank = Blank.of(data.length("length"), data.length("width"), data.length("thickness"))
                .nutAt(data.length("nutFromHeadEnd"))
                .outOfParallel(data.length("outOfParallel"));
        Optional<Wood> wood = data.oneIfTold("wood", StockMap::woodFrom);
        return wood.isPresent() ? blank.wood(wood.get()) : blank;
    }

    static List<DataMap> quantities(double[] house, ShopUnit<?> unit) {
        return Arrays.stream(house)
                .mapToObj(value -> DataMap.quantity(value, unit))
                .toList();
    }
}
