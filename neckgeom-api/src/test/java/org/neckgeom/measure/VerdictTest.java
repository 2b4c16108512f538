package org.neckgeom.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.testing.ReferenceTable;

/** Conformance against JCGM 106 examples and exact values; the calls of ISO 14253-1; Student's law by a general library. */
class VerdictTest {

    private static final String CONFORMITY = "/measure/conformity.csv";

    private static Verdict<Length> verdict(double value, double u, Limits<Length> limits) {
        return Verdict.of(Estimate.of(mm(value), mm(u)), limits);
    }

    private static double exact(String quantity) {
        var row = ReferenceTable.row(CONFORMITY, "quantity", quantity);
        return Double.parseDouble(row.get("exact").isEmpty() ? row.get("value") : row.get("exact"));
    }

    @Test
    void probability_meetsTheExamplesOfJcgm106() {
        // The numbers are volts and mm2/s there; the law does not care.
        double diode = verdict(-5.47, 0.05, Limits.atMost(mm(-5.4))).probability();
        double oil = verdict(13.6, 1.8, Limits.between(mm(12.5), mm(16.3))).probability();

        assertThat(diode).isCloseTo(exact("one-sided, y = -5.47 V, u = 0.05 V, limit V <= -5.4 V: p_c"), within(1e-14));
        assertThat(diode).isCloseTo(0.92, within(0.005)); // as printed, from memory
        assertThat(oil).isCloseTo(exact("two-sided, T = 12.5 to 16.3 mm2/s, y = 13.6, u = 1.8: p_c"), within(1e-14));
        assertThat(oil).isCloseTo(0.66, within(0.005)); // as printed, from memory
    }

    @ParameterizedTest
    @CsvSource({
        "6.02, 0.02, 6.0, 6.08, 'p_c for y=6.02, u=0.02, T=[6.0, 6.08]'",
        "6.0, 0.01, 6.0, 6.03, 'p_c for y=6.0, u=0.01, T=[6.0, 6.03]'",
        "25.0, 0.05, 24.9, 25.1, 'p_c for y=25.0, u=0.05, T=[24.9, 25.1]'",
        "25.07, 0.02, 24.9, 25.1, 'p_c for y=25.07, u=0.02, T=[24.9, 25.1]'",
    })
    void probability_meetsTheExactValues(double y, double u, double low, double high, String quantity) {
        // 25.1 - 25 over 0.05 loses two digits before the law sees it.
        assertThat(verdict(y, u, Limits.between(mm(low), mm(high))).probability())
                .isCloseTo(exact(quantity), within(2e-13));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.80", "0.90", "0.95", "0.99", "0.999"})
    void probability_ofOneSidedLimitsMeetsTheTable(String p) {
        double z = exact("z for conformance probability " + p + ", exact");

        assertThat(verdict(0, 1, Limits.atMost(mm(z))).probability()).isCloseTo(Double.parseDouble(p), within(1e-15));
        assertThat(verdict(0, 1, Limits.atLeast(mm(-z))).probability()).isCloseTo(Double.parseDouble(p), within(1e-15));
    }

    @Test
    void probability_agreesWithAGeneralLibrary() {
        SplittableRandom random = new SplittableRandom(106);
        for (int i = 0; i < 5_000; i++) {
            double value = random.nextDouble() - 0.5;
            double u = 0.01 + random.nextDouble();
            double low = -random.nextDouble();
            double high = low + 0.001 + random.nextDouble();
            double nu = 1 + random.nextInt(60);
            Limits<Length> limits = Limits.between(mm(low), mm(high));
            double a = (low - value) / u;
            double b = (high - value) / u;

            assertThat(Verdict.of(Estimate.of(mm(value), mm(u)), limits).probability())
                    .as("seed 106, trial %d", i)
                    .isCloseTo(NormalDistribution.of(0, 1).probability(a, b), within(1e-13));
            assertThat(Verdict.of(Estimate.of(mm(value), mm(u), nu), limits).probability())
                    .as("seed 106, trial %d, %s degrees of freedom", i, nu)
                    .isCloseTo(TDistribution.of(nu).probability(a, b), within(1e-12));
        }
    }

    @Test
    void probability_keepsTheDigitsOfASmallChance() {
        // Normal tail at 10, and what of it lies short of 12: erfc(x/sqrt(2))/2 by mpmath 1.3.0, 30 digits.
        double tail = 7.61985302416052606597334325163e-24;
        double part = 7.61985302238404395389566425393e-24;

        assertThat(verdict(11, 1, Limits.within(mm(1))).probability()).isCloseTo(part, within(1e-13 * tail));
        assertThat(verdict(-11, 1, Limits.within(mm(1))).probability()).isCloseTo(part, within(1e-13 * tail));
        assertThat(verdict(11, 1, Limits.atMost(mm(1))).probability()).isCloseTo(tail, within(1e-13 * tail));
    }

    @Test
    void probability_withoutUncertaintyIsCertain() {
        assertThat(verdict(0.1, 0, Limits.within(mm(0.1))).probability()).isEqualTo(1);
        assertThat(verdict(0.100001, 0, Limits.within(mm(0.1))).probability()).isZero();
        assertThat(verdict(0.1, 0, Limits.within(mm(0.1))).call()).isEqualTo(Decision.WITHIN);
        assertThat(verdict(0.100001, 0, Limits.within(mm(0.1))).call()).isEqualTo(Decision.OUTSIDE);
    }

    /** Student's quantiles at Phi(2) = 0.97725, by scipy 1.11 ({@code slot/make.py}): a few readings need a wider band. */
    @Test
    void guardBand_growsForFewDegreesOfFreedom() {
        double[][] table = {{2, 4.526537}, {4, 2.869309}, {9, 2.319806}, {20, 2.133025}};
        for (double[] row : table) {
            Verdict<Length> verdict = Verdict.of(Estimate.of(mm(0.05), mm(0.02), row[0]), Limits.within(mm(0.1)));

            assertThat(verdict.guardBand().libraryValue()).isCloseTo(0.02 * row[1], within(1e-6));
        }
        // Once called within at a probability of 70.5 %: e 0.05, u 0.02, one degree of freedom.
        assertThat(Verdict.of(Estimate.of(mm(0.05), mm(0.02), 1), Limits.within(mm(0.1)))
                        .call())
                .isEqualTo(Decision.UNDECIDED);
        assertThat(Verdict.of(Estimate.of(mm(0), mm(0.02), 4), Limits.within(mm(0.1)))
                        .toString())
                .contains("2.87 u on the safe side, 2 u but for 4 degrees of freedom");
    }

    @Test
    void call_usesTheAcceptanceZoneOfTheStandard() {
        // Hole 6 H9, u = 0.004: conformity is proven from 6.008 to 6.022 with k = 2 (ISO 14253-1, computed).
        Limits<Length> hole = Limits.between(mm(6), mm(6.03));
        assertThat(verdict(6.0080001, 0.004, hole).call()).isEqualTo(Decision.WITHIN);
        assertThat(verdict(6.0079999, 0.004, hole).call()).isEqualTo(Decision.UNDECIDED);
        assertThat(verdict(6.0219999, 0.004, hole).call()).isEqualTo(Decision.WITHIN);
        assertThat(verdict(6.0220001, 0.004, hole).call()).isEqualTo(Decision.UNDECIDED);
        assertThat(verdict(5.9920001, 0.004, hole).call()).isEqualTo(Decision.UNDECIDED);
        assertThat(verdict(5.9919999, 0.004, hole).call()).isEqualTo(Decision.OUTSIDE);
        assertThat(verdict(6.0380001, 0.004, hole).call()).isEqualTo(Decision.OUTSIDE);

        // The same with the edition of 2017: g = 1.6449 u, from 6.00657941451 to 6.02342058549.
        double k = exact("z for conformance probability 0.95, exact");
        assertThat(verdict(6.0065795, 0.004, hole).guardedBy(k).call()).isEqualTo(Decision.WITHIN);
        assertThat(verdict(6.0065794, 0.004, hole).guardedBy(k).call()).isEqualTo(Decision.UNDECIDED);
        assertThat(verdict(6.0234205, 0.004, hole).guardedBy(k).call()).isEqualTo(Decision.WITHIN);
        assertThat(verdict(6.0234206, 0.004, hole).guardedBy(k).call()).isEqualTo(Decision.UNDECIDED);
        assertThat(verdict(6.02, 0.004, hole).guardBand()).isEqualTo(mm(0.008));
    }

    @Test
    void deciding_hasThreeWays() {
        Limits<Length> limits = Limits.within(mm(0.15));
        Verdict<Length> justInside = verdict(0.14, 0.02, limits);
        Verdict<Length> justOutside = verdict(0.16, 0.02, limits);
        Verdict<Length> farOutside = verdict(0.3, 0.02, limits);

        assertThat(justInside.call()).isEqualTo(Decision.UNDECIDED);
        assertThat(justInside.acceptedSimply()).isTrue();
        assertThat(justInside.acceptedUnlessProvenOutside()).isTrue();
        assertThat(justOutside.call()).isEqualTo(Decision.UNDECIDED);
        assertThat(justOutside.acceptedSimply()).isFalse();
        assertThat(justOutside.acceptedUnlessProvenOutside()).isTrue();
        assertThat(farOutside.call()).isEqualTo(Decision.OUTSIDE);
        assertThat(farOutside.acceptedSimply()).isFalse();
        assertThat(farOutside.acceptedUnlessProvenOutside()).isFalse();
        assertThat(justInside.guardedBy(0).call()).isEqualTo(Decision.WITHIN);
        assertThat(justOutside.guardedBy(0).call()).isEqualTo(Decision.OUTSIDE);
    }

    @Test
    void narrowLimits_cannotBeReached() {
        Verdict<Length> hopeless = verdict(0, 0.03, Limits.within(mm(0.05)));

        assertThat(hopeless.isReachable()).isFalse();
        assertThat(hopeless.call()).isEqualTo(Decision.UNDECIDED);
        assertThat(hopeless.toString())
                .contains("the limits are narrower than the guard bands: measure better or widen the limits");
        assertThat(verdict(0, 0.025, Limits.within(mm(0.05))).isReachable()).isTrue();
        assertThat(verdict(0, 0.025, Limits.within(mm(0.05))).call()).isEqualTo(Decision.WITHIN);
        assertThat(verdict(0, 99, Limits.atMost(mm(0.05))).isReachable()).isTrue();
    }

    @Test
    void isReachable_agreesWithTheBestValue() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 2_000; i++) {
            double limit = 0.01 + random.nextDouble();
            double u = random.nextDouble();

            Verdict<Length> middle = verdict(0, u, Limits.within(mm(limit)));

            assertThat(middle.isReachable()).as("seed 5, trial %d", i).isEqualTo(middle.call() == Decision.WITHIN);
        }
    }

    @Test
    void fewDegreesOfFreedom_leaveMoreDoubt() {
        Limits<Length> limits = Limits.within(mm(0.1));
        double many = verdict(0.05, 0.03, limits).probability();
        double few = Verdict.of(Estimate.of(mm(0.05), mm(0.03), 2), limits).probability();

        assertThat(few).isLessThan(many);
        // Student with 2 degrees of freedom has the closed form F(t) = 1/2 + t/(2 sqrt(2 + t^2)).
        double a = -0.15 / 0.03;
        double b = 0.05 / 0.03;
        double closed = b / (2 * Math.sqrt(2 + b * b)) - a / (2 * Math.sqrt(2 + a * a));
        assertThat(few).isCloseTo(closed, within(1e-13));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void guardedBy_refusesWhatIsNoFactor(double factor) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> verdict(0, 1, Limits.within(mm(1))).guardedBy(factor))
                .withMessageStartingWith("guard factor must be 0 to 10, but was ");
    }

    @Test
    void toString_showsTheCallAndTheProbabilityFirst() {
        assertThat(verdict(0.14, 0.02, Limits.within(mm(0.15))))
                .hasToString(String.join(
                        "\n",
                        "UNDECIDED: conformance probability 69.1 % (within 0.15 mm)",
                        "  estimate  0.140 mm, u 0.020 mm",
                        "  limit     within 0.15 mm",
                        "  guard     2 u on the safe side",
                        "  read again, or use a finer instrument"));
        assertThat(verdict(4, 0.1, Limits.atLeast(mm(3))).toString())
                .startsWith("WITHIN: conformance probability more than 99.9 % (3 mm or more)");
        assertThat(verdict(4, 0.1, Limits.atMost(mm(3))).toString())
                .startsWith("OUTSIDE: conformance probability below 0.1 % (3 mm or less)");
        assertThat(verdict(4, 0.1, Limits.between(mm(3), mm(5))).toString())
                .startsWith("WITHIN: conformance probability more than 99.9 % (3 to 5 mm)");
    }

    /** A limit belongs to the zone it bounds: ISO 14253-1 proves conformity where the value with its guard keeps it. */
    @Test
    void call_atTheEdgesOfTheZones() {
        Limits<Length> limits = Limits.between(mm(6), mm(8));

        assertThat(verdict(6.5, 0.25, limits).call()).isEqualTo(Decision.WITHIN);
        assertThat(verdict(7.5, 0.25, limits).call()).isEqualTo(Decision.WITHIN);
        assertThat(verdict(5.5, 0.25, limits).call()).isEqualTo(Decision.UNDECIDED);
        assertThat(verdict(8.5, 0.25, limits).call()).isEqualTo(Decision.UNDECIDED);
        assertThat(verdict(7, 0.5, limits).isReachable()).isTrue();
        assertThat(verdict(7, 0.51, limits).isReachable()).isFalse();
    }

    @Test
    void verdict_handsBackWhatItRestsOn() {
        Estimate<Length> estimate = Estimate.of(mm(7), mm(0.25));
        Limits<Length> limits = Limits.between(mm(6), mm(8));

        assertThat(Verdict.of(estimate, limits).estimate()).isEqualTo(estimate);
        assertThat(Verdict.of(estimate, limits).limits()).isEqualTo(limits);
        assertThat(Verdict.of(estimate, limits).guardedBy(-0.0))
                .isEqualTo(Verdict.of(estimate, limits).guardedBy(0));
    }

    @Test
    void toString_neverCallsWhatIsUncertainCertain() {
        assertThat(verdict(7, 0.01, Limits.between(mm(6), mm(8))).toString())
                .startsWith("WITHIN: conformance probability more than 99.9 % (6 to 8 mm)");
    }
}
