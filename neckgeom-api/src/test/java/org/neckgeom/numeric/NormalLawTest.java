package org.neckgeom.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NormalLawTest {

    @Test
    void everyMethod_agreesWithTheMpmathTable() {
        int rows = 0;
        for (String[] row : LawTable.rows("laws.csv")) {
            double x = Double.parseDouble(row[1]);
            double expected = Double.parseDouble(row[3]);
            double actual;
            switch (row[0]) {
                case "normal-upper" -> actual = NormalLaw.upperTail(x);
                case "normal-density" -> actual = NormalLaw.density(x);
                case "normal-quantile" -> actual = NormalLaw.quantile(x);
                default -> {
                    continue;
                }
            }
            rows++;
            assertThat(LawTable.relative(actual, expected))
                    .as("%s at %s: %s for %s", row[0], x, actual, expected)
                    .isLessThan(NormalLaw.RELATIVE_ACCURACY);
        }
        assertThat(rows).isEqualTo(93);
    }

    /** Exact values of JCGM 106:2012, 7.3 Table 1 (z for a one-sided limit), 25 digits from sqrt(2) erfinv(2p - 1). */
    @ParameterizedTest
    @CsvSource({
        "0.80, 0.8416212335729142051787061",
        "0.90, 1.281551565544600466965103",
        "0.95, 1.644853626951472714863849",
        "0.99, 2.326347874040841100885606",
        "0.999, 3.0902323061678135415404"
    })
    void quantile_givesTheOneSidedFactors(double p, double z) {
        assertThat(NormalLaw.quantile(p)).isCloseTo(z, within(5e-15));
    }

    /** JCGM 106:2012, 7.4: chance of conforming between two limits; values by mpmath, 25 digits. */
    @ParameterizedTest
    @CsvSource({
        "6.02, 0.02, 6.0, 6.08, 0.8399948480369128540585807",
        "6.0, 0.01, 6.0, 6.03, 0.4986501019683699054733482",
        "25.0, 0.05, 24.9, 25.1, 0.9544997361036415855994347",
        "25.07, 0.02, 24.9, 25.1, 0.9331927987311419245159711",
        "13.6, 1.8, 12.5, 16.3, 0.66262978649530782536"
    })
    void between_givesTheChanceOfConforming(double y, double u, double low, double high, double expected) {
        // The limits themselves are rounded to doubles, which moves (T - y)/u by about 1e-13.
        assertThat(NormalLaw.between((low - y) / u, (high - y) / u)).isCloseTo(expected, within(1e-13));
    }

    @Test
    void between_keepsNarrowBandsInTheTail() {
        double expected = NormalLaw.upperTail(20.0) - NormalLaw.upperTail(21.0);

        assertThat(NormalLaw.between(20.0, 21.0)).isEqualTo(expected).isPositive();
        assertThat(NormalLaw.between(-21.0, -20.0)).isEqualTo(expected);
        assertThat(NormalLaw.between(-1e-9, 1e-9) / 7.978845608028654e-10).isCloseTo(1.0, within(1e-14));
    }

    @Test
    void everyMethod_agreesWithCommonsStatistics() {
        NormalDistribution peer = NormalDistribution.of(0.0, 1.0);
        SplittableRandom random = new SplittableRandom(20_260_101L);

        for (int i = 0; i < 5_000; i++) {
            double x = 40.0 * random.nextDouble() - 20.0;
            double p = StrictMath.exp(-60.0 * random.nextDouble());
            assertThat(LawTable.relative(NormalLaw.cdf(x), peer.cumulativeProbability(x)))
                    .as("seed 20260101, cdf of %s", x)
                    .isLessThan(1e-13);
            assertThat(LawTable.relative(NormalLaw.quantile(p), peer.inverseCumulativeProbability(p)))
                    .as("seed 20260101, quantile of %s", p)
                    .isLessThan(1e-13);
        }
    }

    @Test
    void coverageFactor_invertsTheChanceWithin() {
        SplittableRandom random = new SplittableRandom(7L);

        for (int i = 0; i < 2_000; i++) {
            double p = random.nextDouble();
            double k = NormalLaw.coverageFactor(p);
            assertThat(NormalLaw.between(-k, k)).as("seed 7, p %s", p).isCloseTo(p, within(3e-16));
        }
        assertThat(NormalLaw.coverageFactor(0.0)).isZero();
        assertThat(NormalLaw.coverageFactor(1.0)).isInfinite();
    }

    @Test
    void everyMethod_knowsItsEnds() {
        assertThat(NormalLaw.cdf(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(NormalLaw.cdf(Double.POSITIVE_INFINITY)).isEqualTo(1.0);
        assertThat(NormalLaw.cdf(0.0)).isEqualTo(0.5);
        assertThat(NormalLaw.cdf(Double.NaN)).isNaN();
        assertThat(NormalLaw.density(Double.POSITIVE_INFINITY)).isZero();
        assertThat(NormalLaw.quantile(0.0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(NormalLaw.quantile(1.0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(NormalLaw.between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY))
                .isEqualTo(1.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-300, 1.0000000000000002, Double.NaN})
    void quantile_rejectsWhatIsNoChance(double p) {
        assertThatThrownBy(() -> NormalLaw.quantile(p))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("p must be in [0, 1], but was " + p);
        assertThatThrownBy(() -> NormalLaw.coverageFactor(p)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void between_rejectsEndsTheWrongWayRound() {
        assertThatThrownBy(() -> NormalLaw.between(1.0, 0.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("high must be at least low = 1.0, but was 0.0");
    }
}
