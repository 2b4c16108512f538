package org.neckgeom.page;

import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Estimate;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.plan.NeckReadings;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** What has been read on the neck as data and back. */
final class ReadingsMap {

    private ReadingsMap() {}

    static DataMap of(NeckReadings readings) {
        DataMap data = DataMap.empty();
        for (NeckFeature feature : NeckFeature.values()) {
            readings.of(feature).ifPresent(reading -> data.put(feature.key(), SpreadMap.estimate(reading)));
        }
        readings.scarfAngle().ifPresent(reading -> data.put("scarfAngle", SpreadMap.estimate(reading)));
        return data.putAll("backDepths", List.copyOf(readings.backDepths().entrySet()), ReadingsMap::depth);
    }

    private static DataMap depth(Map.Entry<Double, Estimate<Length>> depth) {
        return DataMap.empty()
                .length(
                        "station",
                        depth.getKey(),
                        LengthStyle.ofUnit(depth.getValue().unit()))
                .put("depth", SpreadMap.estimate(depth.getValue()));
    }

    static NeckReadings from(DataSource data) {
        NeckReadings readings = NeckReadings.none();
        for (NeckFeature feature : NeckFeature.values()) {
            if (data.has(feature.key())) {
                readings = readings.read(
                        feature, data.one(feature.key(), part -> SpreadMap.estimateFrom(part, DataUnits.LENGTH)));
            }
        }
        if (data.has("scarfAngle")) {
            readings =
                    readings.scarfAngle(data.one("scarfAngle", part -> SpreadMap.estimateFrom(part, DataUnits.ANGLE)));
        }
        for (Depth depth : data.all("backDepths", Depth::from)) {
            readings = readings.backDepth(depth.station(), depth.depth());
        }
        return readings;
    }

    private record Depth(Amount<Length> station, Estimate<Length> depth) {

        static Depth from(DataSource data) {
            return new Depth(
                    data.length("station"), data.one("depth", part -> SpreadMap.estimateFrom(part, DataUnits.LENGTH)));
        }
    }
}
