package org.neckgeom.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * The air that wood is kept in, such as {@code 45 % humidity, 21 degC}, and the {@index "equilibrium moisture content"} (EMC)
 * of wood there. Immutable.
 */
public final class Climate extends Noun<Climate> {

    /** Its keys. */
    public static final Table<Climate> TABLE = Table.of("", "an air that wood has come to balance with", Climate::new)
            .printedBy(Climate::sentences);

    private static final Key<Climate, Amount<Dimensionless>> HUMIDITY = TABLE.needed(
            "humidity",
            Types.PERCENT.atLeast(ShopUnit.PERCENT.of(0)).lessThan(ShopUnit.PERCENT.of(100)),
            "relative humidity of the air");
    private static final Key<Climate, Amount<Temperature>> TEMPERATURE = TABLE.needed(
            "temperature",
            Types.TEMPERATURE.atLeast(ShopUnit.CELSIUS.of(-20)).atMost(ShopUnit.CELSIUS.of(100)),
            "temperature of the air");

    private Climate(Values<Climate> values) {
        super(values);
    }

    /**
     * {@return a climate}
     *
     * @param humidity relative humidity, 0 % or more and less than 100 %
     * @param temperature between -20 and 100 degrees Celsius
     * @throws IllegalArgumentException if one is out of its range
     */
    public static Climate of(Quantity<Dimensionless> humidity, Quantity<Temperature> temperature) {
        return new Climate(TABLE.values().amount(HUMIDITY, humidity).amount(TEMPERATURE, temperature));
    }

    /** {@return the relative humidity; humidity in percent} */
    public Amount<Dimensionless> humidity() {
        return values().at(HUMIDITY);
    }

    /** {@return the temperature; temperature in degrees Celsius} */
    public Amount<Temperature> temperature() {
        return values().at(TEMPERATURE);
    }

    /**
     * {@return the moisture content that wood comes to here after long enough, of its ovendry mass; moisture in
     * percent}
     *
     * <p>Estimate: Wood Handbook (FPL-GTR-190, 2010) Eq. 4-5, a fit over many woods; one wood can differ by a percent
     * of moisture, and its history by another.
     */
    public Amount<Dimensionless> moisture() {
        return Amount.of(moisturePercent(), ShopUnit.PERCENT);
    }

    /** {@return the moisture content that wood comes to here; moisture in percent of the ovendry mass} */
    public double moisturePercent() {
        return moisturePercent(values().libraryValue(HUMIDITY), values().libraryValue(TEMPERATURE));
    }

    /**
     * Moisture in percent of the ovendry mass:
     * {@code M = 1800/W (K h/(1 - K h) + (K1 K h + 2 K1 K2 K^2 h^2)/(1 + K1 K h + K1 K2 K^2 h^2))}.
     *
     * @param humidity relative humidity, a ratio in [0, 1)
     * @param celsius temperature in degrees Celsius
     */
    static double moisturePercent(double humidity, double celsius) {
        double t = celsius;
        double w = 349 + 1.29 * t + 0.0135 * t * t;
        double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
        double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
        double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
        double kh = k * humidity;
        double dissolved = kh / (1 - kh);
        double second = k1 * k2 * kh * kh;
        double hydrated = (k1 * kh + 2 * second) / (1 + k1 * kh + second);
        return 1800 / w * (dissolved + hydrated);
    }

    private static Form<Climate> sentences() {
        return TABLE.facts("climate")
                .fact(
                        "moisture",
                        Kind.AMOUNT,
                        "equilibrium moisture content, of the ovendry mass; estimate",
                        Climate::moisture)
                .finds("climate", "{humidity:..1} humidity, {temperature:..1}: wood at {moisture:1} moisture");
    }
}
