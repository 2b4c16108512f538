package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;

import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Neck;

/** Bars beside the rod against the parallel-axis theorem on a neck summed from layers. */
class BarsAddedTest {

    private static final Bar BAR = Bar.carbon(mm(320)).section(mm(3.2), mm(9.5));

    @Test
    void stifferRatio_isThatOfTheParallelAxisTheorem() {
        Neck neck = SampleNecks.guitar();
        BarsAdded bars = Relief.of(neck).addingBars(BAR, mm(9));
        double x = bars.before().place().libraryValue();
        double[] bare = FiniteDifferenceNeck.layers(neck, x);
        double depth = neck.backDepthAtMm(x);
        // Add 2 x 3.2 mm x 9.5 mm of (130000 - 12600) MPa, its middle 4.75 mm below the glue face, to EA and EI about
        // the
        // bare axis, then move the axis: EI' = EI + EJ + EA EB/(EA + EB) d^2.
        double eb = 2 * 3.2 * 9.5 * (130_000 - 12_600);
        double own = eb * 9.5 * 9.5 / 12;
        double ea = stretch(neck, x);
        double d = -4.75 - bare[0];
        double stiff = bare[1] + own + ea * eb / (ea + eb) * d * d;

        assertThat(depth).isGreaterThan(9.5);
        assertThat(bars.stifferRatio()).isCloseTo(stiff / bare[1], withinPercentage(0.1));
    }

    /** EA of the guitar, from its areas: board with crown, back, channel less strip. */
    private static double stretch(Neck neck, double x) {
        double half = neck.halfWidthAtMm(x);
        double board = 0;
        double back = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double y = half * (i + 0.5) / n;
            double r = neck.crownRadiusAtMm(x);
            board += 2 * half / n * (neck.boardThicknessAtMm(x) - (r - Math.sqrt(r * r - y * y)));
            back += 2 * half / n * neck.backDepthAtMm(x) * Math.pow(1 - Math.pow(y / half, 2.5), 1 / 2.5);
        }
        double channel = 4.8 * (neck.channel().orElseThrow().floorDepthAtMm(x) - 1);
        return 12_600 * (board + back - channel);
    }

    @Test
    void after_hasLessReliefThanBefore() {
        BarsAdded bars = Relief.of(SampleNecks.guitar()).addingBars(BAR, mm(9));

        assertThat(bars.stifferRatio()).isGreaterThan(1.1);
        assertThat(bars.after().relief().libraryValue())
                .isLessThan(bars.before().relief().libraryValue());
        assertThat(bars.difference().libraryValue())
                .isCloseTo(
                        bars.before().relief().libraryValue()
                                - bars.after().relief().libraryValue(),
                        withinPercentage(1e-9));
        assertThat(bars.after())
                .isEqualTo(Relief.of(SampleNecks.guitar()).withBars(BAR, mm(9)).underStrings());
    }

    /**
     * A neck weighed down before the bars go in: read as the woods' table has it, its wood is as it was, and the bars take away as
     * much as of a neck not weighed; of softer wood the same bars take more.
     */
    @Test
    void after_restsOnWhatWasReadWithoutTheBars() {
        Relief plain = Relief.of(SampleNecks.guitar());
        double fall = 80 * BenchRows.fall(StrungNeck.usual(SampleNecks.guitar()).made(), true);
        double table = left(plain);
        double asExpected = left(plain.knowing(weighed(fall)));
        double softer = left(plain.knowing(weighed(1.1 * fall)));

        assertThat(table).isBetween(0.85, 0.95);
        assertThat(asExpected).isCloseTo(table, withinPercentage(2));
        assertThat(softer).isBetween(0.97 * table, 0.999 * table);
    }

    private static StiffnessReadings weighed(double fall) {
        return StiffnessReadings.none().neck(NeckBent.supported(newton(80), mm(fall)));
    }

    /** Relief with bars over relief without. */
    private static double left(Relief relief) {
        BarsAdded bars = relief.addingBars(BAR, mm(9));
        return bars.after().relief().libraryValue() / bars.before().relief().libraryValue();
    }

    @Test
    void rodForceFor_saysWhenTheReliefIsGone() {
        double slack = Relief.of(SampleNecks.guitar()).underStrings().relief().libraryValue();
        BarsAdded bars =
                Relief.of(SampleNecks.guitar()).addingBars(Bar.carbon(mm(400)).section(mm(6), mm(11)), mm(10));

        assertThat(bars.rodForceFor(mm(slack * 1.3)).reach()).isEqualTo(RodForce.Reach.CANNOT);
    }

    @Test
    void addingBars_refusesWhatHasNoPlace() {
        Relief relief = Relief.of(SampleNecks.guitar());

        assertThatThrownBy(() -> relief.addingBars(BAR, mm(3)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("clear of each other and of the channel, but was 3 mm");
        assertThatThrownBy(() -> relief.addingBars(Bar.carbon(mm(320)).section(mm(3.2), mm(16)), mm(9)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageStartingWith("a bar breaks through the back");
    }
}
