package org.neckgeom.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Limits;
import org.neckgeom.state.DatumTree;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** Laws that errors which add up keep, each at 1,000 places or more. */
class BudgetPropertiesTest {

    private static final long SEED = 20_261_131;
    private static final int CASES = 1_000;

    private final SplittableRandom random = new SplittableRandom(SEED);

    private static String at(int i) {
        return "seed " + SEED + ", case " + i;
    }

    private ErrorDistribution<Length> spread(boolean bounded) {
        Amount<Length> size = mm(Math.pow(10, random.nextDouble(-2, 0)));
        ErrorDistribution<Length> spread = switch (random.nextInt(bounded ? 5 : 6)) {
            case 0 -> ErrorDistribution.rectangular(size);
            case 1 -> ErrorDistribution.triangular(size);
            case 2 -> ErrorDistribution.trapezoidal(size, size.times(random.nextDouble()));
            case 3 -> ErrorDistribution.samples(List.of(size, size.negated(), size.times(0.3), mm(0)));
            case 4 -> ErrorDistribution.bias(size);
            default -> ErrorDistribution.normal(size);
        };
        return random.nextInt(3) == 0 ? spread.shifted(mm(random.nextDouble(-0.2, 0.2))) : spread;
    }

    private Budget<Length> budget(boolean bounded) {
        Budget<Length> budget =
                Budget.named("random").with("first", ErrorDistribution.rectangular(mm(random.nextDouble(0.1, 1))));
        for (int n = random.nextInt(5); n > 0; n--) {
            budget = budget.with("part " + n, random.nextDouble(-2, 2), spread(bounded));
        }
        return budget;
    }

    /** No error drawn within its bounds is ever larger than the worst case says. */
    @Test
    void worstCase_isNeverPassedByASample() {
        for (int i = 0; i < CASES; i++) {
            Budget<Length> budget = budget(true);
            WorstCase<Length> worst = budget.worstCase();

            Simulated<Length> trials = budget.simulate(i).trials(2_000);

            assertThat(trials.interval(percent(99.9)).libraryLow())
                    .as(at(i))
                    .isGreaterThanOrEqualTo(worst.range().libraryLow() - 1e-12);
            assertThat(trials.interval(percent(99.9)).libraryHigh())
                    .as(at(i))
                    .isLessThanOrEqualTo(worst.range().libraryHigh() + 1e-12);
        }
    }

    /** The exact distribution agrees with trials within the trials' own error. */
    @Test
    void distribution_agreesWithTrialsWithinTheirError() {
        int trials = 4_096;
        int beyondTwo = 0;
        for (int i = 0; i < CASES; i++) {
            Budget<Length> budget = budget(false);
            ResultDistribution<Length> exact = budget.distribution();
            double p = random.nextDouble(0.1, 0.9);
            Limits<Length> limits = Limits.atMost(exact.quantile(percent(100 * p)));
            // Samples put weight on single values, so the chance up to the quantile may be more than asked.
            double chance = exact.chance(limits);

            double seen = budget.simulate(SEED + i)
                    .withLimits(limits)
                    .withoutQuantiles()
                    .trials(trials)
                    .yield()
                    .probability();

            double error = Math.sqrt(chance * (1 - chance) / trials);
            assertThat(seen).as(at(i)).isCloseTo(chance, within(5 * error + 1e-12));
            beyondTwo += Math.abs(seen - chance) > 1.96 * error ? 1 : 0;
        }
        assertThat(beyondTwo)
                .as("seed %d: of 1,000 some 50 lie beyond 1.96 deviations", SEED)
                .isBetween(25, 80);
    }

    /** k times the errors make k times the quantiles, and the same in inches. */
    @Test
    void distribution_scalesAndDoesNotCareForUnits() {
        for (int i = 0; i < CASES; i++) {
            Budget<Length> budget = budget(false);
            double k = Math.pow(10, random.nextDouble(-2, 2));
            Budget<Length> larger = Budget.named("larger");
            Budget<Length> inches = Budget.of("inches", ShopUnit.INCH);
            for (UncertaintyComponent one : budget.components()) {
                larger = larger.with(one.name(), k * one.sensitivity(), one.spread());
                inches = inches.with(one.name(), one.sensitivity(), one.spread());
            }
            double p = random.nextDouble(1, 99);
            double quantile = budget.distribution().quantile(percent(p)).libraryValue();

            double slack = 1e-9 * (1 + Math.abs(quantile));
            assertThat(larger.distribution().quantile(percent(p)).libraryValue())
                    .as(at(i))
                    .isCloseTo(k * quantile, within(k * slack));
            assertThat(inches.distribution().quantile(percent(p)).libraryValue())
                    .as(at(i))
                    .isEqualTo(quantile);
        }
    }

    /** Every sensitivity turned over, the distribution is seen in the mirror. */
    @Test
    void distribution_isMirroredByTheSigns() {
        for (int i = 0; i < CASES; i++) {
            Budget<Length> budget = budget(false);
            Budget<Length> turned = Budget.named("turned");
            for (UncertaintyComponent one : budget.components()) {
                turned = turned.with(one.name(), -one.sensitivity(), one.spread());
            }
            Amount<Length> x = mm(random.nextDouble(-1, 1));

            assertThat(turned.distribution().probabilityAbove(x.negated()))
                    .as(at(i))
                    .isCloseTo(1 - budget.distribution().probabilityAbove(x), within(1e-11));
        }
    }

    /** A component more never lowers the uncertainty or the worst case; wider limits never lower the yield. */
    @Test
    void answers_growWithWhatIsAdded() {
        for (int i = 0; i < CASES; i++) {
            Budget<Length> budget = budget(false);
            Budget<Length> more = budget.with("more", random.nextDouble(-2, 2), ErrorDistribution.triangular(mm(0.3)));
            double limit = random.nextDouble(0.1, 2);

            assertThat(more.rootSumSquare().libraryUncertainty())
                    .as(at(i))
                    .isGreaterThanOrEqualTo(budget.rootSumSquare().libraryUncertainty());
            assertThat(more.worstCase().range().libraryHigh())
                    .as(at(i))
                    .isGreaterThanOrEqualTo(budget.worstCase().range().libraryHigh());
            assertThat(budget.distribution().chance(Limits.within(mm(1.3 * limit))))
                    .as(at(i))
                    .isGreaterThanOrEqualTo(budget.distribution().chance(Limits.within(mm(limit))) - 1e-12);
        }
    }

    /** The allowed spread put in place of its own keeps the limits just as often as was asked. */
    @Test
    void allowance_isTheInverseOfTheYield() {
        for (int i = 0; i < CASES; i++) {
            Budget<Length> budget = Budget.named("two")
                    .with("rest", ErrorDistribution.triangular(mm(random.nextDouble(0.05, 0.3))))
                    .with("asked", random.nextDouble(0.5, 2), ErrorDistribution.rectangular(mm(0.1)));
            Limits<Length> limits = Limits.within(mm(random.nextDouble(0.5, 1)));

            Allowance<Length> allowance = budget.allowance("asked", limits, percent(99));

            assertThat(budget.replaced("asked", allowance.spread())
                            .distribution()
                            .chance(limits))
                    .as(at(i))
                    .isCloseTo(0.99, within(1e-6));
        }
    }

    /** Derivatives carried along agree with differences of the function itself. */
    @Test
    void derivatives_agreeWithDifferences() {
        for (int i = 0; i < CASES; i++) {
            Propagation<Dimensionless> function = Propagation.to("f", ShopUnit.ONE);
            for (String name : List.of("a", "b", "c")) {
                function = function.input(name, one(random.nextDouble(0.2, 0.9)), ErrorDistribution.normal(one(0.01)));
            }
            double k = random.nextDouble(0.5, 2);
            Propagation<Dimensionless> carried = function.throughDual(x -> x[0].times(k)
                    .sin()
                    .plus(x[1].atan2(x[2]))
                    .times(x[1].exp())
                    .dividedBy(x[2].sqrt().plus(1)));

            double[] exact = carried.derivatives();
            double[] near = carried.differences();

            for (int n = 0; n < 3; n++) {
                assertThat(near[n]).as(at(i)).isCloseTo(exact[n], within(1e-7 * (1 + Math.abs(exact[n]))));
            }
        }
    }

    private static Amount<Dimensionless> one(double value) {
        return Amount.of(value, ShopUnit.ONE);
    }

    /** Seen the other way a feature is off by the opposite; what two share leaves no trace. */
    @Test
    void registration_turnsItsSignAndForgetsWhatIsShared() {
        for (int i = 0; i < CASES; i++) {
            double x = random.nextDouble(-100, 700);
            DatumTree work = DatumTree.from("channel", ErrorDistribution.normal(mm(random.nextDouble(0.01, 1))))
                    .place("board")
                    .on("channel")
                    .at(mm(20), mm(random.nextDouble(200, 300)))
                    .each(ErrorDistribution.rectangular(mm(0.05)).shifted(mm(random.nextDouble(-0.1, 0.1))))
                    .place("heel")
                    .on("channel")
                    .at(mm(random.nextDouble(0, 50)), mm(290))
                    .each(ErrorDistribution.triangular(mm(0.08)));

            Budget<Length> there = work.across("board", "heel", mm(x));
            Budget<Length> back = work.across("heel", "board", mm(x));

            assertThat(back.rootSumSquare().libraryValue())
                    .as(at(i))
                    .isCloseTo(-there.rootSumSquare().libraryValue(), within(1e-12));
            assertThat(back.rootSumSquare().libraryUncertainty())
                    .as(at(i))
                    .isCloseTo(there.rootSumSquare().libraryUncertainty(), within(1e-12));
            List<String> steps = new ArrayList<>();
            there.components().forEach(one -> steps.add(one.step()));
            assertThat(steps).as(at(i)).doesNotContain("channel");
        }
    }
}
