package org.neckgeom.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** Laws that readings, limits and verdicts keep, each at 1,000 places or more. */
class MeasurePropertiesTest {

    private static final long SEED = 20_261_127;
    private static final int CASES = 2_000;

    private final SplittableRandom random = new SplittableRandom(SEED);

    private Estimate<Length> estimate() {
        double degrees = random.nextBoolean() ? Double.POSITIVE_INFINITY : random.nextDouble(1, 40);
        return Estimate.of(mm(random.nextDouble(-1, 1)), mm(random.nextDouble(0.001, 0.5)), degrees);
    }

    private Limits<Length> limits() {
        double low = random.nextDouble(-1, 0.5);
        return Limits.between(mm(low), mm(low + random.nextDouble(0.01, 1.5)));
    }

    /** Limits made wider never make a value less likely to keep them. */
    @Test
    void probability_growsWithTheLimits() {
        for (int i = 0; i < CASES; i++) {
            Estimate<Length> estimate = estimate();
            Limits<Length> narrow = limits();
            Limits<Length> wide = Limits.between(
                    mm(narrow.libraryLower() - random.nextDouble(0, 0.5)),
                    mm(narrow.libraryUpper() + random.nextDouble(0, 0.5)));

            assertThat(Verdict.of(estimate, wide).probability())
                    .as("seed %d, case %d, %s in %s", SEED, i, estimate, narrow)
                    .isGreaterThanOrEqualTo(Verdict.of(estimate, narrow).probability() - 1e-15);
        }
    }

    /** A value within its limits stays so when the limits get wider, and is within them with 2 u to spare. */
    @Test
    void call_withinMeansTwoUncertaintiesToSpare() {
        for (int i = 0; i < CASES; i++) {
            Estimate<Length> estimate = estimate();
            Limits<Length> limits = limits();
            double spare = Math.min(
                    estimate.libraryValue() - limits.libraryLower(), limits.libraryUpper() - estimate.libraryValue());

            Decision call = Verdict.of(estimate, limits).call();

            assertThat(call == Decision.WITHIN)
                    .as("seed %d, case %d, %s in %s", SEED, i, estimate, limits)
                    .isEqualTo(spare >= guard(estimate) * estimate.libraryUncertainty());
        }
    }

    /** Two for known uncertainties, else Student's quantile at the normal law's chance of 2, by commons-statistics. */
    private static double guard(Estimate<Length> estimate) {
        double nu = estimate.degreesOfFreedom();
        return Double.isInfinite(nu)
                ? 2
                : TDistribution.of(nu)
                        .inverseSurvivalProbability(NormalDistribution.of(0, 1).survivalProbability(2));
    }

    /** Seen in a mirror, value and limits turned over, a verdict is the same. */
    @Test
    void verdict_isTheSameInTheMirror() {
        for (int i = 0; i < CASES; i++) {
            Estimate<Length> estimate = estimate();
            Limits<Length> limits = limits();
            Estimate<Length> turned = Estimate.ofLibrary(
                    -estimate.libraryValue(),
                    estimate.libraryUncertainty(),
                    estimate.degreesOfFreedom(),
                    ShopUnit.MILLIMETRE);
            Limits<Length> mirrored = Limits.between(mm(-limits.libraryUpper()), mm(-limits.libraryLower()));

            Verdict<Length> one = Verdict.of(estimate, limits);
            Verdict<Length> other = Verdict.of(turned, mirrored);

            assertThat(other.call()).as("seed %d, case %d", SEED, i).isEqualTo(one.call());
            assertThat(other.probability()).as("seed %d, case %d", SEED, i).isCloseTo(one.probability(), within(1e-14));
        }
    }

    /** Readings told in inches or thou give the estimate of the same readings in millimetres. */
    @Test
    void repeated_doesNotCareForUnits() {
        for (int i = 0; i < CASES; i++) {
            List<Amount<Length>> metric = new ArrayList<>();
            List<Amount<Length>> mixed = new ArrayList<>();
            for (int n = 2 + random.nextInt(6); n > 0; n--) {
                Amount<Length> inches = ShopUnits.inch(random.nextDouble(0.9, 1.1));
                metric.add(inches.in(ShopUnit.MILLIMETRE));
                mixed.add(random.nextBoolean() ? inches : inches.in(ShopUnit.THOU));
            }

            Estimate<Length> one = Estimate.repeated(metric);
            Estimate<Length> other = Estimate.repeated(mixed);

            assertThat(other.libraryValue())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(one.libraryValue(), within(1e-13));
            assertThat(other.libraryUncertainty())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(one.libraryUncertainty(), within(1e-13));
        }
    }

    /** Readings all moved by d move the mean by d and leave its uncertainty; their order is of no account. */
    @Test
    void repeated_movesWithItsReadings() {
        for (int i = 0; i < CASES; i++) {
            double moved = random.nextDouble(-100, 100);
            List<Amount<Length>> here = new ArrayList<>();
            List<Amount<Length>> there = new ArrayList<>();
            for (int n = 2 + random.nextInt(6); n > 0; n--) {
                double x = random.nextDouble(30, 31);
                here.add(mm(x));
                there.add(mm(x + moved));
            }
            Collections.reverse(there);

            assertThat(Estimate.repeated(there).libraryValue())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(Estimate.repeated(here).libraryValue() + moved, within(1e-12));
            assertThat(Estimate.repeated(there).libraryUncertainty())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(Estimate.repeated(here).libraryUncertainty(), within(1e-12));
        }
    }

    /** More coverage never gives a narrower interval, fewer degrees of freedom neither. */
    @Test
    void interval_growsWithCoverageAndDoubt() {
        for (int i = 0; i < CASES; i++) {
            double p = random.nextDouble(0.1, 0.99);
            double degrees = random.nextDouble(1, 60);
            Estimate<Length> few = Estimate.of(mm(0), mm(1), degrees);
            Estimate<Length> more = Estimate.of(mm(0), mm(1), degrees + random.nextDouble(0, 30));

            double half = few.expanded(ShopUnit.ONE.of(p)).libraryValue();

            assertThat(few.expanded(ShopUnit.ONE.of(p + 0.005)).libraryValue())
                    .as("seed %d, case %d", SEED, i)
                    .isGreaterThan(half);
            assertThat(more.expanded(ShopUnit.ONE.of(p)).libraryValue())
                    .as("seed %d, case %d", SEED, i)
                    .isLessThanOrEqualTo(half * (1 + 1e-13));
        }
    }
}
