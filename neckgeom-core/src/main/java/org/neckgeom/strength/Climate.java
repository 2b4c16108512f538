package org.neckgeom.strength;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/**
 * The air that wood is kept in, such as {@code 45 % humidity, 21 degC}, and the moisture it comes to there. Immutable.
 */
public final class Climate implements Answer {

    static final Form<Climate> FORM = Form.<Climate>of("climate")
            .fact("humidity", Kind.AMOUNT, "relative humidity", Climate::humidity)
            .fact("temperature", Kind.AMOUNT, "of the air", Climate::temperature)
            .fact("moisture", Kind.AMOUNT, "that wood comes to, of its ovendry mass", Climate::moisture)
            .finds("climate", "{humidity:..1} humidity, {temperature:..1}: wood at {moisture:1} moisture");

    private static final double COLDEST = -20;
    private static final double WARMEST = 100;

    private final double humidity;
    private final double celsius;

    private Climate(double humidity, double celsius) {
        this.humidity = humidity;
        this.celsius = celsius;
    }

    /**
     * Returns a climate.
     *
     * @param humidity relative humidity, 0 % or more and less than 100 %
     * @param temperature between -20 and 100 degrees Celsius
     * @return the climate
     * @throws IllegalArgumentException if one is out of its range
     */
    public static Climate of(Quantity<Dimensionless> humidity, Quantity<Temperature> temperature) {
        double h = HouseUnits.ratio(humidity, "humidity");
        if (!(h >= 0 && h < 1)) {
            throw HouseUnits.refused("humidity", "less-than", "0 % or more and less than 100 %", humidity);
        }
        double t = HouseUnits.celsius(temperature, "temperature");
        if (!(t >= COLDEST && t <= WARMEST)) {
            throw HouseUnits.refused("temperature", "range", "between -20 and 100 degrees Celsius", temperature);
        }
        return new Climate(h, t);
    }

    /**
     * Returns the weather that turns this climate into another.
     *
     * @param humidity relative humidity afterwards, 0 % or more and less than 100 %
     * @param temperature afterwards, between -20 and 100 degrees Celsius
     * @return the change
     */
    public Weather to(Quantity<Dimensionless> humidity, Quantity<Temperature> temperature) {
        return Weather.between(this, of(humidity, temperature));
    }

    /**
     * Returns the relative humidity.
     *
     * @return humidity in percent
     */
    public Amount<Dimensionless> humidity() {
        return Amount.ofHouse(humidity, ShopUnit.PERCENT);
    }

    /**
     * Returns the temperature.
     *
     * @return temperature in degrees Celsius
     */
    public Amount<Temperature> temperature() {
        return Amount.ofHouse(celsius, ShopUnit.CELSIUS);
    }

    /**
     * Returns the moisture content that wood comes to here after long enough, of its ovendry mass.
     *
     * <p>Estimate: Wood Handbook (FPL-GTR-190, 2010) Eq. 4-5, a fit over many woods; one wood can differ by a percent of
     * moisture, and what it was before by another.
     *
     * @return moisture in percent
     */
    public Amount<Dimensionless> moisture() {
        return Amount.of(moisturePercent(), ShopUnit.PERCENT);
    }

    /**
     * Returns the moisture content that wood comes to here.
     *
     * @return moisture in percent of the ovendry mass
     */
    public double moisturePercent() {
        return EquilibriumMoisture.percent(humidity, celsius);
    }

    @Override
    public Form<Climate> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.MILLIMETRES;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Climate other
                && Double.compare(humidity, other.humidity) == 0
                && Double.compare(celsius, other.celsius) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(humidity, celsius);
    }

    /** Returns humidity, temperature and moisture: {@code 45 % humidity, 21 degC: wood at 8.5 % moisture}. */
    @Override
    public String toString() {
        return text(style());
    }
}
