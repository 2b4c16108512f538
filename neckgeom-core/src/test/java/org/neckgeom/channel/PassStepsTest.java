package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PassStepsTest {

    @Test
    void of_makesEqualPassesAndALightLastOne() {
        double[] steps = Passes.steps(9.2, 3, 0.5);

        assertThat(steps).hasSize(4);
        assertThat(steps).containsExactly(new double[] {2.9, 2.9, 2.9, 0.5}, within(1e-12));
    }

    @Test
    void of_doesNotGainAPassFromRounding() {
        // 0.1 * 3 and 0.3 differ in the last bit; on paper they are three passes.
        assertThat(Passes.steps(0.1 + 0.2, 0.1, 0)).hasSize(3);
        assertThat(Passes.steps(11.1, 3.7, 0)).hasSize(3);
    }

    @Test
    void of_takesOnePassWhenTheRuleAllowsIt() {
        assertThat(Passes.steps(2, 3, 0)).containsExactly(2);
    }

    @Test
    void of_addsUpAndStaysUnderTheRule() {
        long seed = 5;
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 1000; trial++) {
            double depth = random.nextDouble(2, 20);
            double most = random.nextDouble(0.2, 5);
            double last = random.nextBoolean() ? 0 : random.nextDouble(0.05, 1);

            double[] steps = Passes.steps(depth, most, last);

            String where = "seed " + seed + " trial " + trial;
            int rough = last > 0 ? steps.length - 1 : steps.length;
            assertThat(Arrays.stream(steps).sum()).as(where).isCloseTo(depth, within(1e-12));
            assertThat(steps[0]).as(where).isLessThanOrEqualTo(most * (1 + 1e-8));
            assertThat((rough - 1) * most)
                    .as(where + ": one pass fewer would do")
                    .isLessThan(depth - last);
        }
    }
}
