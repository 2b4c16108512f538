package org.neckgeom.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StudentLawTest {

    @Test
    void everyMethod_agreesWithTheMpmathTable() {
        int rows = 0;
        for (String[] row : LawTable.rows("laws.csv")) {
            double x = Double.parseDouble(row[1]);
            double n = LawTable.dof(row[2]);
            double expected = Double.parseDouble(row[3]);
            double actual;
            switch (row[0]) {
                case "student-upper" -> actual = StudentLaw.upperTail(x, n);
                case "student-density" -> actual = StudentLaw.density(x, n);
                case "student-quantile" -> actual = StudentLaw.quantile(x, n);
                default -> {
                    continue;
                }
            }
            rows++;
            assertThat(LawTable.relative(actual, expected))
                    .as("%s at %s, %s degrees of freedom: %s for %s", row[0], x, n, actual, expected)
                    .isLessThan(StudentLaw.RELATIVE_ACCURACY * Math.max(1.0, 1.0 / n));
        }
        assertThat(rows).isGreaterThan(600);
    }

    /** JCGM 100:2008 Table G.2 and more of its kind, 30 digits; the printed rounding is checked beside it. */
    @Test
    void coverageFactor_agreesWithTableG2() {
        int rows = 0;
        for (String[] row : LawTable.rows("student-t.csv")) {
            double k = StudentLaw.coverageFactor(Double.parseDouble(row[1]), LawTable.dof(row[2]));
            rows++;
            assertThat(LawTable.relative(k, Double.parseDouble(row[3])))
                    .as("p %s, %s degrees of freedom: %s for %s", row[1], row[2], k, row[3])
                    .isLessThan(1e-13);
            assertThat(k).isCloseTo(Double.parseDouble(row[4]), within(0.00501));
        }
        assertThat(rows).isEqualTo(168);
    }

    @Test
    void everyMethod_agreesWithCommonsStatistics() {
        SplittableRandom random = new SplittableRandom(11L);

        for (int i = 0; i < 3_000; i++) {
            double n = StrictMath.exp(StrictMath.log(0.5) + 12.0 * random.nextDouble());
            double t = 20.0 * random.nextDouble() - 10.0;
            double expected = TDistribution.of(n).cumulativeProbability(t);
            assertThat(StudentLaw.cdf(t, n))
                    .as("seed 11, t %s, %s degrees of freedom", t, n)
                    .isCloseTo(expected, within(1e-11 * expected));
        }
    }

    @Test
    void quantile_invertsTheCdf() {
        SplittableRandom random = new SplittableRandom(12L);

        for (int i = 0; i < 3_000; i++) {
            double n = StrictMath.exp(-1.0 + 20.0 * random.nextDouble());
            double p = random.nextDouble();
            assertThat(StudentLaw.cdf(StudentLaw.quantile(p, n), n))
                    .as("seed 12, p %s, %s degrees of freedom", p, n)
                    .isCloseTo(p, within(2.0 * StudentLaw.RELATIVE_ACCURACY * Math.min(p, 1.0 - p)));
        }
    }

    /** Closed forms: 1 degree of freedom is the law of Cauchy, 2 has an algebraic quantile. */
    @Test
    void quantile_hasTheClosedFormsOfOneAndTwo() {
        for (double p = 0.51; p < 1.0; p += 0.02) {
            double cauchy = Math.tan(Math.PI * (p - 0.5));
            double two = (2.0 * p - 1.0) / Math.sqrt(2.0 * p * (1.0 - p));
            assertThat(StudentLaw.quantile(p, 1.0)).isCloseTo(cauchy, within(3e-14 * cauchy));
            assertThat(StudentLaw.quantile(p, 2.0)).isCloseTo(two, within(3e-14 * two));
        }
    }

    @Test
    void infinityDegreesOfFreedom_isTheNormalLaw() {
        double many = Double.POSITIVE_INFINITY;

        assertThat(StudentLaw.cdf(1.3, many)).isEqualTo(NormalLaw.cdf(1.3));
        assertThat(StudentLaw.density(1.3, many)).isEqualTo(NormalLaw.density(1.3));
        assertThat(StudentLaw.quantile(0.9, many)).isEqualTo(NormalLaw.quantile(0.9));
        assertThat(StudentLaw.coverageFactor(0.95, many)).isEqualTo(NormalLaw.coverageFactor(0.95));
    }

    @Test
    void everyMethod_knowsItsEnds() {
        assertThat(StudentLaw.cdf(Double.NEGATIVE_INFINITY, 3.0)).isZero();
        assertThat(StudentLaw.cdf(Double.POSITIVE_INFINITY, 3.0)).isEqualTo(1.0);
        assertThat(StudentLaw.cdf(0.0, 0.2)).isEqualTo(0.5);
        assertThat(StudentLaw.quantile(0.5, 3.0)).isZero();
        assertThat(StudentLaw.quantile(0.0, 3.0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(StudentLaw.quantile(1.0, 3.0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(StudentLaw.quantile(1e-12, 0.01)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(StudentLaw.cdf(Double.NaN, 3.0)).isNaN();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -1.0, Double.NaN})
    void everyMethod_rejectsDegreesOfFreedomNotAboveZero(double n) {
        assertThatThrownBy(() -> StudentLaw.cdf(1.0, n))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("degreesOfFreedom must be more than 0, but was " + n);
        assertThatThrownBy(() -> StudentLaw.quantile(0.9, n)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void quantile_rejectsWhatIsNoChance(double p) {
        assertThatThrownBy(() -> StudentLaw.quantile(p, 3.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("p must be in [0, 1], but was " + p);
        assertThatThrownBy(() -> StudentLaw.coverageFactor(p, 3.0)).isInstanceOf(IllegalArgumentException.class);
    }
}
