package org.neckgeom.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Parts of a sum against closed forms: a^2/3 and -2 a^4/15 of a rectangle, a^2/2 and -3 a^4/8 of an arcsine. */
class PartsTest {

    private static final double[] SAMPLES = {-0.2, -0.1, 0.3};

    private static Parts.Builder bounded() {
        return new Parts.Builder().shift(0.7).rectangle(0.6).arcsine(0.4).samples(SAMPLES, 1);
    }

    @Test
    void variance_isTheSumOfTheParts() {
        double samples = (0.04 + 0.01 + 0.09) / 3;

        assertThat(bounded().normal(0.3).build().variance()).isCloseTo(0.09 + 0.12 + 0.08 + samples, within(1e-15));
        assertThat(new Parts.Builder().triangle(0.6).build().variance()).isCloseTo(0.36 / 6, within(1e-15));
        // Base and top of a trapezoid: (a^2 + b^2)/6.
        assertThat(new Parts.Builder().trapezoid(0.6, 0.2).build().variance()).isCloseTo(0.4 / 6, within(1e-15));
    }

    @Test
    void fourthCumulant_isTheSumOfTheParts() {
        Parts parts =
                new Parts.Builder().normal(0.3).rectangle(0.6).arcsine(0.4).build();

        assertThat(parts.fourthCumulant())
                .isCloseTo(-2 * Math.pow(0.6, 4) / 15 - 3 * Math.pow(0.4, 4) / 8, within(1e-16));
    }

    @Test
    void highest_isTheSumOfTheGreatest() {
        assertThat(bounded().build().highest()).isCloseTo(0.6 + 0.4 + 0.3, within(1e-15));
        assertThat(bounded().normal(0.1).build().highest()).isInfinite();
        assertThat(bounded().normal(0.1).build().bounded()).isCloseTo(1.3, within(1e-15));
    }

    @Test
    void mirrored_turnsMeanAndSamples() {
        Parts turned = bounded().build().mirrored();

        assertThat(turned.mean).isEqualTo(-0.7);
        assertThat(turned.samples.get(0)).containsExactly(-0.3, 0.1, 0.2);
        assertThat(turned.rectangles).containsExactly(0.6);
        assertThat(turned.isSymmetric()).isFalse();
        assertThat(new Parts.Builder().rectangle(1).build().isSymmetric()).isTrue();
    }

    @Test
    void build_putsTheLargestFirstAndLeavesOutWhatHasNoWidth() {
        Parts.Builder many = new Parts.Builder();
        for (int i = 0; i < 20; i++) {
            many.rectangle((i * 7 % 20) / 10.0).arcsine((i * 3 % 20) / 10.0);
        }
        Parts parts = many.samples(new double[] {0, 0}, 3).build();
        double[] expected = new double[19];
        Arrays.setAll(expected, i -> (19 - i) / 10.0);

        assertThat(parts.rectangles).containsExactly(expected);
        assertThat(parts.arcsines).containsExactly(expected);
        assertThat(parts.samples).isEmpty();
        assertThat(parts.withoutLargestArcsine().arcsines).containsExactly(Arrays.copyOfRange(expected, 1, 19));
    }

    @Test
    void samples_takenTimesANegativeFactorAscendToo() {
        Parts parts = new Parts.Builder().samples(SAMPLES, -2).build();

        assertThat(parts.samples.get(0)).containsExactly(-0.6, 0.2, 0.4);
    }

    @Test
    void arcsinePair_isTwoArcsinesAndNothingElse() {
        assertThat(new Parts.Builder().arcsine(1).arcsine(2).build().isArcsinePair())
                .isTrue();
        assertThat(new Parts.Builder().arcsine(1).build().isArcsinePair()).isFalse();
        assertThat(new Parts.Builder().arcsine(1).arcsine(2).normal(1).build().isArcsinePair())
                .isFalse();
        assertThat(new Parts.Builder()
                        .arcsine(1)
                        .arcsine(2)
                        .rectangle(1)
                        .build()
                        .isArcsinePair())
                .isFalse();
        assertThat(new Parts.Builder()
                        .arcsine(1)
                        .arcsine(2)
                        .samples(SAMPLES, 1)
                        .build()
                        .isArcsinePair())
                .isFalse();
    }
}
