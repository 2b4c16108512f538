package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.shop.DecisionRule;

/**
 * The chance against another way to it: the density of one end times the chance of the other given it, by the laws of
 * commons-statistics and Simpson's rule.
 */
class SlotChanceTest {

    private static final double LIMIT = 0.1;
    private static final double[][] PARTS = {{0, 1}, {0, 0.02, 0.5, 0.98, 1}, {0, 0.3, 1}};
    private static final double[][] SHIFTS = {{0, 0}, {0.1, 0.096, 0.0909, 0.0968, 0.0968}, {0, 0.15, -0.02}};

    @ParameterizedTest
    @ValueSource(doubles = {1, 2.5, 5.6, 15, 60, 1000, Double.POSITIVE_INFINITY})
    void keeps_isTheIntegralOfOneEndTimesTheOther(double nu) {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 60; i++) {
            double[] parts = PARTS[i % PARTS.length];
            double[] shifts = SHIFTS[i % PARTS.length];
            double e1 = random.nextDouble(-0.15, 0.15);
            double e2 = e1 + random.nextDouble(-0.05, 0.05);
            double u = random.nextDouble(0.01, 0.05);
            double u1 = random.nextDouble(0.002, 0.02);
            double u2 = i % 4 == 0 ? u1 : random.nextDouble(0.002, 0.02);
            SlotChance law = new SlotChance(LIMIT, parts, shifts, nu);
            double exact = simpson(parts, shifts, nu, e1, e2, u * u, u1, u2);

            assertThat(law.keeps(e1, e2, u * u, u1, u2))
                    .as(e1 + " " + e2 + " u " + u + " " + u1 + " " + u2)
                    .isCloseTo(exact, within(5e-7));
            assertThat(law.breaks(e1, e2, u * u, u1, u2, 0.04)).isCloseTo(Math.min(0.04, 1 - exact), within(5e-7));
        }
    }

    /** A knot 5 mm off the line between the ends: no slot keeps 0.1 mm at both ends and there. */
    @Test
    void keeps_isNothingWhereNoSlotKeepsEveryKnot() {
        SlotChance law = new SlotChance(LIMIT, new double[] {0, 0.3, 0.6, 1}, new double[] {0, 5, 0, 0}, 15);

        assertThat(law.keeps(0, 0, 4e-4, 0.01, 0.01)).isZero();
        assertThat(law.breaks(0, 0, 4e-4, 0.01, 0.01, 1)).isEqualTo(1);
    }

    private static double simpson(
            double[] parts, double[] shifts, double nu, double e1, double e2, double v, double u1, double u2) {
        boolean isNormal = Double.isInfinite(nu);
        ContinuousDistribution one = isNormal ? NormalDistribution.of(0, 1) : TDistribution.of(nu);
        ContinuousDistribution other = isNormal ? one : TDistribution.of(nu + 1);
        double s1 = Math.sqrt(v + u1 * u1);
        double pull = v / (s1 * s1);
        double rest = Math.sqrt(v + u2 * u2 - v * pull);
        int steps = 4000;
        double from = shifts[0] - LIMIT;
        double step = 2 * LIMIT / steps;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double x = from + i * step;
            double low = Double.NEGATIVE_INFINITY;
            double high = Double.POSITIVE_INFINITY;
            for (int k = 1; k < parts.length; k++) {
                double known = (1 - parts[k]) * x;
                high = Math.min(high, (LIMIT + shifts[k] - known) / parts[k]);
                low = Math.max(low, (-LIMIT + shifts[k] - known) / parts[k]);
            }
            double z = (x - e1) / s1;
            double scale = isNormal ? rest : rest * Math.sqrt((nu + z * z) / (nu + 1));
            double mean = e2 + pull * (x - e1);
            double part = high > low
                    ? other.cumulativeProbability((high - mean) / scale)
                            - other.cumulativeProbability((low - mean) / scale)
                    : 0;
            sum += (i == 0 || i == steps ? 1 : 2 + 2 * (i % 2)) * part * one.density(z) / s1;
        }
        return sum * step / 3;
    }

    @Test
    void keeps_isNothingWhereTheFenceAloneBreaksTheLimit() {
        SlotChance law = new SlotChance(LIMIT, new double[] {0, 0.5, 1}, new double[] {0, 0.3, 0}, 5);

        assertThat(law.keeps(0.1, 0.1, 0.0004, 0.01, 0.01)).isZero();
        assertThat(law.keeps(0.1, 0.1, 0.0004, 0, 0)).isZero();
    }

    /** Steps that are left out early because they cannot be the cheapest are never the cheapest. */
    @Test
    void choice_isTheLeastOfAllCosts() {
        SplittableRandom random = new SplittableRandom(13);
        int[] taken = new int[SlotChoice.COSTED.size()];
        for (int i = 0; i < 1500; i++) {
            int shape = i % PARTS.length == 2 ? 0 : i % PARTS.length;
            double nu = i % 3 == 0 ? Double.POSITIVE_INFINITY : random.nextDouble(3, 30);
            double r = StrictMath.pow(random.nextDouble(0.01, 0.025), 2);
            double c = StrictMath.pow(random.nextDouble(0.005, 0.035), 2);
            double taper = random.nextDouble(-0.08, 0.08);
            double middle = 30 + (shape == 1 ? 0.096 : 0);
            SettingState before =
                    SettingState.first(middle + random.nextDouble(-0.08, 0.08), r, c, Double.POSITIVE_INFINITY);
            SettingState state = before.cut(before.mean() + random.nextDouble(-0.03, 0.03), r, c, nu);
            SlotChoice.Facts facts = new SlotChoice.Facts(
                    state, before, i % 5 != 0, 1, 2, i % 7 == 0, r, c, 0, r, 60, 60 + taper, 0.01, true, 0.02);
            SlotChoice choice = new SlotChoice(
                    facts,
                    new SlotChance(LIMIT, PARTS[shape], SHIFTS[shape], nu),
                    DecisionRule.withDefaults(),
                    wanted -> wanted);
            SlotChoice.Chosen chosen = choice.choose();
            double[] costs = choice.costs(chosen);
            int place = SlotChoice.COSTED.indexOf(chosen.step());
            if (place >= 0) {
                taken[place]++;
                for (double cost : costs) {
                    // The integrals are good to 1e-7.
                    assertThat(Double.isNaN(cost) || costs[place] <= cost + 2e-7)
                            .as(facts + " nu " + nu + ": " + chosen.step() + " of " + java.util.Arrays.toString(costs))
                            .isTrue();
                }
            }
        }
        assertThat(taken).as("each step is taken sometimes").doesNotContain(0);
    }
}
