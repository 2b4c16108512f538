package org.neckgeom.heel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import javax.measure.quantity.Angle;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Interval;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;

class NeckAngleSpreadTest {

    @Test
    void interval_endsWhereTheRisesIntervalEnds() {
        NormalDistribution rise = NormalDistribution.of(0, 0.15);

        Interval<Angle> interval =
                set(15.2).angleWith(ErrorDistribution.normal(mm(0.15))).interval(percent(95));

        assertThat(interval.libraryLow())
                .isCloseTo(
                        set(15.2 + rise.inverseCumulativeProbability(0.025))
                                .angle()
                                .angle()
                                .libraryValue(),
                        offset(1e-12));
        assertThat(interval.libraryHigh())
                .isCloseTo(
                        set(15.2 + rise.inverseCumulativeProbability(0.975))
                                .angle()
                                .angle()
                                .libraryValue(),
                        offset(1e-12));
    }

    @Test
    void standardUncertainty_isTheCentralDifference() {
        double slope = (set(15.201).angle().angle().libraryValue()
                        - set(15.199).angle().angle().libraryValue())
                / 0.002;

        assertThat(set(15.2)
                        .angleWith(ErrorDistribution.normal(mm(0.15)))
                        .standardUncertainty()
                        .libraryValue())
                .isCloseTo(0.15 * slope, offset(1e-10));
    }

    @Test
    void interval_ofABiasIsOnePoint() {
        Interval<Angle> interval =
                set(15.2).angleWith(ErrorDistribution.bias(mm(0.3))).interval(percent(95));

        assertThat(interval.libraryLow()).isEqualTo(interval.libraryHigh());
        assertThat(interval.libraryLow()).isCloseTo(set(15.5).angle().angle().libraryValue(), offset(1e-15));
    }

    private static BackSet set(double saddle) {
        return BackSet.of(
                Scale.of(mm(560)),
                14,
                NeckSet.saddle(mm(saddle))
                        .atNut(mm(0.4))
                        .action(mm(2.0))
                        .fretPlane(mm(7.1))
                        .compensation(mm(2.2)));
    }
}
