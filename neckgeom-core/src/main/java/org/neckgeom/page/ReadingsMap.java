package org.neckgeom.page;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Estimate;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.plan.NeckReadings;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** What has been read on the neck as data and back. */
final class ReadingsMap {

    private static final Pattern NEXT_WORD = Pattern.compile(" (.)");

    private ReadingsMap() {}

    static DataMap of(NeckReadings readings) {
        DataMap data = DataMap.empty();
        for (NeckFeature feature : NeckFeature.values()) {
            readings.of(feature).ifPresent(reading -> data.put(key(feature), SpreadMap.estimate(reading)));
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
            if (data.has(key(feature))) {
                readings = readings.read(
                        feature, data.one(key(feature), part -> SpreadMap.estimateFrom(part, DataUnits.LENGTH)));
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

    /** Such as {@code channelDepth}. */
    private static String key(NeckFeature feature) {
        return NEXT_WORD
                .matcher(feature.toString())
                .replaceAll(next -> next.group(1).toUpperCase(Locale.ROOT));
    }
}
