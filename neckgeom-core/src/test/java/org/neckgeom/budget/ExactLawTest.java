package org.neckgeom.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TrapezoidalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.numeric.NormalLaw;

/** The exact distribution against mpmath (chains.csv), closed forms and published figures. */
class ExactLawTest {

    @Test
    void lower_agreesWithTheMpmathTable() {
        int rows = 0;
        double worst = 0.0;
        for (ChainTable.Row row : ChainTable.rows()) {
            if (row.quantity().equals("cdf")) {
                Parts parts = ChainTable.parts(row.parts());
                double actual = ExactLaws.of(parts).lower(row.argument() - parts.mean);
                assertThat(actual)
                        .as("%s at %s", row.name(), row.argument())
                        .isCloseTo(row.value(), within(ExactLaw.ACCURACY));
                worst = Math.max(worst, Math.abs(actual - row.value()));
                rows++;
            }
        }
        assertThat(rows).isGreaterThan(900);
        assertThat(worst)
                .as("worst of all, which was 7e-15 when this was written")
                .isLessThan(1e-13);
    }

    @Test
    void upper_isTheComplement() {
        for (ChainTable.Row row : ChainTable.rows()) {
            if (row.quantity().equals("cdf")) {
                Parts parts = ChainTable.parts(row.parts());
                assertThat(ExactLaws.of(parts).upper(row.argument() - parts.mean))
                        .as("%s at %s", row.name(), row.argument())
                        .isCloseTo(1.0 - row.value(), within(ExactLaw.ACCURACY));
            }
        }
    }

    @Test
    void quantile_agreesWithTheMpmathTableInProbability() {
        int rows = 0;
        for (ChainTable.Row row : ChainTable.rows()) {
            if (row.quantity().equals("quantile")) {
                Parts parts = ChainTable.parts(row.parts());
                ExactLaw law = ExactLaws.of(parts);
                double actual = law.quantile(row.argument());
                double off = Math.abs(actual + parts.mean - row.value()) * law.density(actual);
                assertThat(off)
                        .as("%s at %s: %s for %s", row.name(), row.argument(), actual + parts.mean, row.value())
                        .isLessThan(ExactLaw.ACCURACY);
                rows++;
            }
        }
        assertThat(rows).isGreaterThan(450);
    }

    /** Central half-widths of 1 to 12 equal rectangles, 20 digits: the closed form of Irwin and Hall, by mpmath. */
    @Test
    void quantile_agreesWithIrwinAndHall() throws IOException {
        int rows = 0;
        for (String[] row : table("irwin-hall-quantiles.csv")) {
            int n = Integer.parseInt(row[0]);
            double p = Double.parseDouble(row[1]);
            Parts.Builder builder = new Parts.Builder();
            IntStream.range(0, n).forEach(i -> builder.rectangle(1.0));
            double actual = ExactLaws.of(builder.build()).quantile(0.5 + 0.5 * p);
            // 0.5 + p/2 is itself rounded, by up to 1e-16 in probability.
            assertThat(actual).as("%s rectangles, %s", n, p).isCloseTo(Double.parseDouble(row[2]), within(4e-13));
            rows++;
        }
        assertThat(rows).isEqualTo(60);
    }

    /** Distribution values of sums of equal and unequal rectangles, exact fractions printed to 25 digits. */
    @Test
    void lower_agreesWithTheTableOfSumsOfRectangulars() throws IOException {
        int rows = 0;
        for (String[] row : table("sum-of-rectangulars-cdf.csv")) {
            Parts.Builder builder = new Parts.Builder();
            if (row[1].equals("h95")) {
                for (String width : row[0].replace(" (half-widths)", "").split("\\+")) {
                    builder.rectangle(Double.parseDouble(width));
                }
                assertThat(ExactLaws.of(builder.build()).quantile(0.975))
                        .as(row[0])
                        .isCloseTo(Double.parseDouble(row[2]), within(1e-12));
            } else {
                IntStream.range(0, Integer.parseInt(row[0])).forEach(i -> builder.rectangle(1.0));
                assertThat(ExactLaws.of(builder.build()).lower(Double.parseDouble(row[1])))
                        .as("%s at %s", row[0], row[1])
                        .isCloseTo(Double.parseDouble(row[2]), within(1e-14));
            }
            rows++;
        }
        assertThat(rows).isEqualTo(30);
    }

    /** JCGM 101:2008, 9.2.2 to 9.2.4: exact half-widths by mpmath, and the printed 3.92, 3.88 and 17.0. */
    @Test
    void quantile_agreesWithTheAdditiveModelOfSupplement1() {
        Parts.Builder normal = new Parts.Builder();
        Parts.Builder equal = new Parts.Builder();
        Parts.Builder dominated = new Parts.Builder().rectangle(10.0 * Math.sqrt(3.0));
        for (int i = 0; i < 4; i++) {
            normal.normal(1.0);
            equal.rectangle(Math.sqrt(3.0));
            if (i < 3) {
                dominated.rectangle(Math.sqrt(3.0));
            }
        }

        assertThat(ExactLaws.of(normal.build()).quantile(0.975))
                .isCloseTo(3.91992796908010847104918886104, within(4e-14))
                .isCloseTo(3.92, within(0.005));
        assertThat(ExactLaws.of(equal.build()).quantile(0.975))
                .isCloseTo(3.87940674134782075642855390575, within(4e-14))
                .isCloseTo(3.88, within(0.005));
        assertThat(ExactLaws.of(dominated.build()).quantile(0.975))
                .isCloseTo(17.0158140998666749262389612768, within(4e-13))
                .isCloseTo(17.0, within(0.05));
    }

    @Test
    void oneNormal_isTheNormalLaw() {
        ExactLaw law = ExactLaws.of(new Parts.Builder().normal(0.25).build());

        for (double z = -6.0; z <= 6.0; z += 0.37) {
            assertThat(law.lower(0.25 * z)).isCloseTo(NormalLaw.cdf(z), within(2e-15));
            assertThat(law.density(0.25 * z)).isCloseTo(4.0 * NormalLaw.density(z), within(1e-13));
        }
    }

    /** One part alone against the distributions of commons-statistics. */
    @Test
    void onePartAlone_agreesWithCommonsStatistics() {
        ContinuousDistribution[] peers = {
            UniformContinuousDistribution.of(-0.3, 0.3),
            TriangularDistribution.of(-0.3, 0.0, 0.3),
            TrapezoidalDistribution.of(-0.3, -0.1, 0.1, 0.3),
            NormalDistribution.of(0.0, 0.3)
        };
        String[] parts = {"r:0.3", "t:0.3", "z:0.3/0.1", "n:0.3"};
        for (int i = 0; i < peers.length; i++) {
            ExactLaw law = ExactLaws.of(ChainTable.parts(parts[i]));
            for (double y = -0.35; y < 0.36; y += 0.0137) {
                assertThat(law.lower(y))
                        .as("%s at %s", parts[i], y)
                        .isCloseTo(peers[i].cumulativeProbability(y), within(2e-15));
                assertThat(law.density(y)).as("%s at %s", parts[i], y).isCloseTo(peers[i].density(y), within(1e-12));
            }
            assertThat(law.quantile(0.9)).isCloseTo(peers[i].inverseCumulativeProbability(0.9), within(1e-14));
        }
    }

    /** The work counted, not timed: few nodes for the usual budget, and never many, however the widths lie. */
    @Test
    void plan_staysSmall() {
        assertThat(ChainPlan.of(ChainTable.parts("n:0.05 n:0.02 r:0.08 r:0.05 r:0.1 r:0.03 t:0.06 t:0.09"))
                        .nodes())
                .isLessThan(50);
        SplittableRandom random = new SplittableRandom(5_000L);
        for (int i = 0; i < 5_000; i++) {
            assertThat(ChainPlan.of(random(random)).nodes())
                    .as("seed 5000, chain %s", i)
                    .isLessThan(20_000);
        }
    }

    @Test
    void nothingWide_isAStep() {
        ExactLaw law = ExactLaws.of(new Parts.Builder()
                .shift(0.2)
                .rectangle(0.0)
                .normal(0.0)
                .arcsine(0.0)
                .build());

        assertThat(law.lower(-1e-12)).isZero();
        assertThat(law.lower(0.0)).isEqualTo(1.0);
        assertThat(law.upper(0.0)).isZero();
        assertThat(law.quantile(0.3)).isZero();
        assertThat(law.between(0.0, 0.0)).isEqualTo(1.0);
    }

    @Test
    void samplesAlone_areCounted() {
        ExactLaw law = ExactLaws.of(ChainTable.parts("s:-3/-1/0/4"));

        assertThat(law.lower(-3.5)).isZero();
        assertThat(law.lower(-3.0)).isEqualTo(0.25);
        assertThat(law.lower(-0.5)).isEqualTo(0.5);
        assertThat(law.between(-1.0, 0.0)).isEqualTo(0.5);
        assertThat(law.quantile(0.25)).isCloseTo(-3.0, within(1e-15));
        assertThat(law.quantile(0.26)).isCloseTo(-1.0, within(1e-14));
        assertThat(law.quantile(0.9)).isCloseTo(4.0, within(1e-14));
    }

    /** Several arcsines alone: inversion cut off and integration over angles check each other. */
    @Test
    void severalArcsines_areRightToTheAccuracyTheySay() {
        for (String text : new String[] {"a:1 a:0.7", "a:1 a:1", "a:1 a:0.01", "a:1 a:0.7 a:0.4"}) {
            Parts parts = ChainTable.parts(text);
            ExactLaw cut = new ChainLaw(parts, ChainPlan.cut(parts));
            ExactLaw angles = ExactLaws.overArcsine(parts);
            assertThat(cut.accuracy()).as(text).isBetween(1e-9, 1e-4);
            for (double z = -1.4; z < 1.5; z += 0.7) {
                double y = z * angles.sd();
                assertThat(cut.lower(y))
                        .as("%s at %s", text, y)
                        .isCloseTo(angles.lower(y), within(cut.accuracy() + angles.accuracy()));
            }
        }
    }

    /**
     * Two arcsines under a little normal smoothing s: away from the bends, the pair's own law averaged over the normal
     * one by Gauss and Hermite's three points, {@code (F(y - h) + 4 F(y) + F(y + h))/6, h = s sqrt(3)}.
     */
    @Test
    void smoothedArcsines_areThePairsAveraged() {
        double s = 1e-4;
        ExactLaw pair = ExactLaws.of(ChainTable.parts("a:1 a:0.7"));
        ExactLaw smoothed = ExactLaws.of(ChainTable.parts("a:1 a:0.7 n:0.0001"));
        double h = s * Math.sqrt(3.0);
        for (double y : new double[] {-1.5, -1.2084, -0.7, -0.1, 0.0, 0.15, 0.9, 1.6}) {
            double expected = (pair.lower(y - h) + 4.0 * pair.lower(y) + pair.lower(y + h)) / 6.0;
            assertThat(smoothed.lower(y)).as("at %s", y).isCloseTo(expected, within(1e-10));
        }
    }

    /** Two arcsines alone: half the values lie under 0; at a + b and beyond all of them; b after a as a after b. */
    @Test
    void arcsinePair_hasItsEndsAndItsMiddle() {
        ExactLaw law = ExactLaws.of(ChainTable.parts("a:1 a:0.7"));

        assertThat(law).isInstanceOf(ArcsineLaw.class);
        assertThat(law.lower(0)).isCloseTo(0.5, within(1e-12));
        assertThat(law.lower(1.7)).isCloseTo(1.0, within(1e-12));
        assertThat(law.upper(-1.7)).isCloseTo(1.0, within(1e-12));
        assertThat(law.lower(law.quantile(0.9))).isCloseTo(0.9, within(1e-10));
    }

    /** The work counted, not timed: however the widths of arcsines lie, no plan takes more nodes than this. */
    @Tag("long")
    @Test
    void arcsines_areBoundedInWork() {
        SplittableRandom random = new SplittableRandom(77L);
        for (int i = 0; i < 300; i++) {
            Parts.Builder builder = new Parts.Builder();
            for (int n = 2 + random.nextInt(5); n > 0; n--) {
                builder.arcsine(Math.pow(10.0, random.nextDouble(-3.0, 0.0)));
            }
            if (random.nextBoolean()) {
                builder.normal(Math.pow(10.0, random.nextDouble(-8.0, -3.0)));
            }
            Parts parts = builder.build();
            ExactLaw law = ExactLaws.of(parts);

            assertThat(ChainPlan.cut(parts).nodes()).isLessThanOrEqualTo(50_000);
            assertThat(law.accuracy()).as("seed 77, chain %s", i).isLessThan(2e-4);
            assertThat(law.lower(0.0)).as("seed 77, chain %s", i).isCloseTo(0.5, within(law.accuracy()));
        }
    }

    @Test
    void density_isTheSlopeOfTheDistribution() {
        for (String text : new String[] {"n:0.05 r:0.1 t:0.06", "r:1 t:0.3", "a:1 n:0.3", "a:1 r:0.4", "r:1 n:0.001"}) {
            ExactLaw law = ExactLaws.of(ChainTable.parts(text));
            double h = 1e-4 * law.sd();
            for (double z = -2.03; z < 2.1; z += 0.31) {
                double y = z * law.sd();
                double slope = (law.lower(y + h) - law.lower(y - h)) / (2.0 * h);
                assertThat(law.density(y)).as("%s at %s", text, y).isCloseTo(slope, within(2e-5 / law.sd()));
            }
        }
    }

    @Test
    void quantile_invertsTheDistribution_forRandomChains() {
        SplittableRandom random = new SplittableRandom(5_000L);
        for (int i = 0; i < 2_000; i++) {
            Parts parts = random(random);
            ExactLaw law = ExactLaws.of(parts);
            double p = random.nextDouble();
            double y = law.quantile(p);
            assertThat(law.lower(y)).as("seed 5000, chain %s, p %s", i, p).isCloseTo(p, within(1e-12));
            assertThat(law.lower(-y)).as("seed 5000, chain %s", i).isCloseTo(law.upper(y), within(1e-13));
        }
    }

    /** A law that counts how often it is asked, as each time costs as much as all its nodes. */
    private static final class Counted extends ExactLaw {

        private final ExactLaw law;
        private int asked;

        private Counted(Parts parts) {
            super(parts);
            law = ExactLaws.of(parts);
        }

        @Override
        double accuracy() {
            return law.accuracy();
        }

        @Override
        double lower(double y) {
            return law.lower(y);
        }

        @Override
        double upper(double y) {
            return law.upper(y);
        }

        @Override
        double density(double y) {
            return law.density(y);
        }

        @Override
        double[] breaks() {
            return law.breaks();
        }

        @Override
        void tailAndDensity(double y, boolean above, double[] out) {
            asked++;
            law.tailAndDensity(y, above, out);
        }
    }

    @Test
    void quantile_asksASmoothLawFourTimesOrSo() {
        for (String text : new String[] {"n:0.05 r:0.1 t:0.06", "r:1 t:0.3 r:0.2 r:0.5", "n:0.3 r:0.4"}) {
            Counted law = new Counted(ChainTable.parts(text));
            int most = 0;
            for (int i = 1; i < 1_000; i++) {
                law.asked = 0;
                // 0.5 * (1 - 0.95) is not 0.025, and rounds about it differently.
                law.quantile(0.5 * (1.0 - i / 1_000.0));
                most = Math.max(most, law.asked);
            }
            assertThat(most).as(text).isBetween(2, 7);
        }
    }

    @Test
    void lower_neverFalls_forRandomChains() {
        SplittableRandom random = new SplittableRandom(31L);
        for (int i = 0; i < 200; i++) {
            ExactLaw law = ExactLaws.of(random(random));
            double last = 0.0;
            for (double z = -5.0; z <= 5.0; z += 0.05) {
                double value = law.lower(z * law.sd());
                assertThat(value).as("seed 31, chain %s, %s sd", i, z).isBetween(last - 1e-13, 1.0);
                last = value;
            }
        }
    }

    @Test
    void oneLaw_serves_manyThreadsAlike() {
        ExactLaw law = ExactLaws.of(ChainTable.parts("n:0.05 n:0.03 r:0.08 r:0.05 t:0.06 t:0.09"));
        double[] alone = IntStream.range(0, 2_000)
                .mapToDouble(i -> law.quantile((i + 0.5) / 2_000.0))
                .toArray();

        double[] together = IntStream.range(0, 2_000)
                .parallel()
                .mapToDouble(i -> law.quantile((i + 0.5) / 2_000.0))
                .toArray();

        assertThat(together).isEqualTo(alone);
    }

    private static Parts random(SplittableRandom random) {
        Parts.Builder builder = new Parts.Builder();
        int count = 1 + random.nextInt(12);
        for (int n = 0; n < count; n++) {
            double size = StrictMath.pow(10.0, 4.0 * random.nextDouble() - 3.0);
            switch (random.nextInt(4)) {
                case 0 -> builder.normal(size);
                case 1 -> builder.triangle(size);
                default -> builder.rectangle(size);
            }
        }
        return builder.build();
    }

    private static List<String[]> table(String file) throws IOException {
        List<String[]> rows = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                ExactLawTest.class.getResourceAsStream("/budget/" + file), StandardCharsets.UTF_8))) {
            in.lines().skip(1).forEach(line -> rows.add(line.split(",")));
        }
        return rows;
    }
}
