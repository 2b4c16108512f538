package org.neckgeom.page;

import java.util.Arrays;
import java.util.List;
import org.neckgeom.strength.Climate;
import org.neckgeom.strength.Weather;
import org.neckgeom.units.ShopUnit;

/** The weather as data and back. */
final class StockMap {

    private StockMap() {}

    static DataMap weather(Weather weather) {
        return DataMap.empty().put("before", climate(weather.before())).put("after", climate(weather.after()));
    }

    private static DataMap climate(Climate climate) {
        return DataMap.empty().quantity("humidity", climate.humidity()).quantity("temperature", climate.temperature());
    }

    static Weather weatherFrom(DataSource data) {
        return Weather.between(data.one("before", StockMap::climateFrom), data.one("after", StockMap::climateFrom));
    }

    private static Climate climateFrom(DataSource data) {
        return Climate.of(
                data.quantity("humidity", DataUnits.RATIO), data.quantity("temperature", DataUnits.TEMPERATURE));
    }

    static List<DataMap> quantities(double[] house, ShopUnit<?> unit) {
        return Arrays.stream(house)
                .mapToObj(value -> DataMap.quantity(value, unit))
                .toList();
    }
}
