package org.neckgeom.budget;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Interval;
import org.neckgeom.units.ShopUnits;

/** A coverage interval as a row: its coverage probability and its ends. */
record Coverage(double probability, Interval<?> interval) {

    static final Form<Coverage> FORM = Form.<Coverage>of("coverage-interval")
            .fact("coverage", Kind.RATIO, "probability of the interval, 0 to 1", Coverage::probability)
            .fact("interval", Kind.INTERVAL, "that holds the result so often", Coverage::interval);

    static List<Coverage> all(Function<Quantity<Dimensionless>, Interval<?>> interval, double... percents) {
        return Arrays.stream(percents)
                .mapToObj(percent -> new Coverage(percent / 100, interval.apply(ShopUnits.percent(percent))))
                .toList();
    }
}
