package org.neckgeom.page;

import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Spread;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** Spreads, estimates and workmanship as data and back. */
final class SpreadMap {

    private SpreadMap() {}

    static <Q extends Quantity<Q>> DataMap of(Spread<Q> spread) {
        ShopUnit<Q> unit = spread.unit();
        DataMap data = DataMap.empty().put("law", DataSource.word(spread.law()));
        switch (spread.law()) {
            case NORMAL -> data.put("standardDeviation", DataMap.quantity(spread.scaleHouse(), unit));
            case TRAPEZOIDAL ->
                data.put("halfBase", DataMap.quantity(spread.scaleHouse(), unit))
                        .put("halfTop", DataMap.quantity(spread.topScaleHouse(), unit));
            case SAMPLES ->
                data.putAll(
                        "fromTheirMean",
                        Arrays.stream(spread.centredSamplesHouse())
                                .mapToObj(error -> DataMap.quantity(error, unit))
                                .toList());
            case BIAS -> {
                // Its shift says it all.
            }
            default -> data.put("halfWidth", DataMap.quantity(spread.scaleHouse(), unit));
        }
        data.put("shift", DataMap.quantity(spread.meanHouse(), unit));
        return Double.isInfinite(spread.degreesOfFreedom())
                ? data
                : data.number("degreesOfFreedom", spread.degreesOfFreedom());
    }

    static <Q extends Quantity<Q>> Spread<Q> from(DataSource data, DataUnits<Q> units) {
        Amount<Q> shift = data.quantity("shift", units);
        Spread<Q> spread = switch (data.word("law", Spread.Law.values())) {
            case NORMAL -> Spread.normal(data.quantity("standardDeviation", units));
            case RECTANGULAR -> Spread.rectangular(data.quantity("halfWidth", units));
            case TRIANGULAR -> Spread.triangular(data.quantity("halfWidth", units));
            case ARCSINE -> Spread.arcsine(data.quantity("halfWidth", units));
            case TRAPEZOIDAL -> Spread.trapezoidal(data.quantity("halfBase", units), data.quantity("halfTop", units));
            case BIAS -> Spread.bias(Amount.ofHouse(0, shift.unit()));
            case SAMPLES -> Spread.centredSamples(data.quantities("fromTheirMean", units));
        };
        spread = spread.shifted(shift);
        return data.has("degreesOfFreedom") ? spread.degreesOfFreedom(data.number("degreesOfFreedom")) : spread;
    }

    static <Q extends Quantity<Q>> DataMap estimate(Estimate<Q> estimate) {
        DataMap data = DataMap.empty()
                .quantity("value", estimate.value())
                .quantity("standardUncertainty", estimate.standardUncertainty());
        return Double.isInfinite(estimate.degreesOfFreedom())
                ? data
                : data.number("degreesOfFreedom", estimate.degreesOfFreedom());
    }

    static <Q extends Quantity<Q>> Estimate<Q> estimateFrom(DataSource data, DataUnits<Q> units) {
        return Estimate.of(
                data.quantity("value", units),
                data.quantity("standardUncertainty", units),
                data.has("degreesOfFreedom") ? data.number("degreesOfFreedom") : Double.POSITIVE_INFINITY);
    }

    static Spread<Length> ofLength(DataSource data) {
        return from(data, DataUnits.LENGTH);
    }
}
