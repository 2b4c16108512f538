package org.neckgeom.examples.neck;

import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.strength.Climate;
import org.neckgeom.strength.Weather;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The change of weather to be ready for, in a neck file. */
final class WeatherPart {

    static final Key<Amount<Dimensionless>> HUMIDITY = Key.needed(
            "humidity",
            QuantityKind.percent().atLeast(ShopUnits.percent(0)).atMost(ShopUnits.percent(99)),
            "relative humidity of the air");
    static final Key<Amount<Temperature>> TEMPERATURE = Key.needed(
            "temperature",
            QuantityKind.temperature().atLeast(ShopUnits.celsius(-20)).atMost(ShopUnits.celsius(100)),
            "temperature of the air");
    static final Shape AIR = Shape.of("an air that wood has come to balance with", HUMIDITY, TEMPERATURE);
    static final Key<Section> SHOP_AIR = Key.needed("shop air", AIR, "the air the neck is made in");
    static final Key<Section> WORST_AIR =
            Key.needed("worst air", AIR, "the air farthest from it that the neck shall meet");

    static final Shape SHAPE = Shape.of("a change of weather", SHOP_AIR, WORST_AIR);

    private WeatherPart() {}

    static Found<Weather> of(Section section) {
        return section.make(() -> air(section.at(SHOP_AIR).value())
                .to(
                        section.at(WORST_AIR).value().at(HUMIDITY).value(),
                        section.at(WORST_AIR).value().at(TEMPERATURE).value()));
    }

    private static Climate air(Section section) {
        return Weather.from(
                section.at(HUMIDITY).value(), section.at(TEMPERATURE).value());
    }
}
