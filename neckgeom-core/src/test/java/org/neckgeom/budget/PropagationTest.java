package org.neckgeom.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.SplittableRandom;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.hipparchus.analysis.differentiation.Gradient;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

class PropagationTest {

    private static Amount<Dimensionless> one(double value) {
        return Amount.of(value, ShopUnit.ONE);
    }

    private static ErrorDistribution<Dimensionless> normal(double sd) {
        return ErrorDistribution.normal(one(sd));
    }

    private static ErrorDistribution<Dimensionless> rectangular(double a) {
        return ErrorDistribution.rectangular(one(a));
    }

    /** JCGM 101:2008, 9.3: mass calibration, mg and kg/m3; exact figures by mpmath beside the model. */
    static final Propagation<Dimensionless> MASS = Propagation.to("mass difference", ShopUnit.ONE)
            .input("m_Rc", one(100_000.0), normal(0.05))
            .input("dm_Rc", one(1.234), normal(0.02))
            .input("rho_a", one(1.2), rectangular(0.1))
            .input("rho_W", one(8000.0), rectangular(1000.0))
            .input("rho_R", one(8000.0), rectangular(50.0))
            .through(x -> (x[0] + x[1]) * (1.0 + (x[2] - 1.2) * (1.0 / x[3] - 1.0 / x[4])) - 100_000.0);

    /**
     * JCGM 101:2008, 9.5: gauge block in nm, four inputs of few degrees of freedom drawn from Student's law; the two
     * curvilinear trapezoids by an input each for their half-width's own width. Exact deviation 35.808 (36 is printed),
     * half-widths 70.3492 and 93.7319, by characteristic function with mpmath.
     */
    static final Propagation<Dimensionless> BLOCK = Propagation.to("length difference", ShopUnit.ONE)
            .input("L_s", one(50_000_623.0), normal(25.0).degreesOfFreedom(18.0))
            .input("D", one(215.0), normal(6.0).degreesOfFreedom(24.0))
            .input("d1", one(0.0), normal(4.0).degreesOfFreedom(5.0))
            .input("d2", one(0.0), normal(7.0).degreesOfFreedom(8.0))
            .input("alpha_s", one(11.5e-6), rectangular(2e-6))
            .input("theta_0", one(-0.1), normal(0.2))
            .input("Delta", one(0.0), ErrorDistribution.arcsine(one(0.5)))
            .input("dalpha", one(0.0), rectangular(1.0))
            .input("dalpha width", one(1.0e-6), rectangular(0.1e-6))
            .input("dtheta", one(0.0), rectangular(1.0))
            .input("dtheta width", one(0.050), rectangular(0.025))
            .through(x -> x[0]
                    + x[1]
                    + x[2]
                    + x[3]
                    - x[0] * (x[7] * x[8] * (x[5] + x[6]) + x[4] * x[9] * x[10])
                    - 50_000_000.0);

    @Test
    void firstOrder_agreesWithSupplement1MassCalibration() {
        assertThat(MASS.value().libraryValue()).isCloseTo(1.234, within(1e-10));
        assertThat(MASS.firstOrder().libraryUncertainty()).isCloseTo(0.0538516480713450403125071, within(1e-8));
    }

    @Test
    void simulate_agreesWithSupplement1MassCalibration() {
        Simulated<Dimensionless> trials = MASS.simulate(3).trials(1_000_000);

        assertThat(trials.mean().libraryValue()).isCloseTo(1.234, within(5.0 * 0.0755 / 1000.0));
        assertThat(trials.standardDeviation().libraryValue()).isCloseTo(0.07547973995542332, within(0.0003));
        Interval<Dimensionless> interval = trials.interval(percent(95));
        assertThat(interval.libraryLow()).isCloseTo(1.234 - 0.149566740254, within(0.001));
        assertThat(interval.libraryHigh()).isCloseTo(1.234 + 0.149566740254, within(0.001));
    }

    @Test
    void compared_warnsWhereFirstOrderFails() {
        Comparison<Dimensionless> comparison = MASS.compared(1, 1);

        assertThat(comparison.isValidated()).isFalse();
        assertThat(comparison.toString()).startsWith("mass difference: first order DISAGREES with the trials");
        assertThat(comparison.difference().libraryValue()).isCloseTo(0.149566740254 - 0.10554728, within(0.004));
    }

    @Test
    void compared_agreesWhereTheFunctionIsStraight() {
        Propagation<Dimensionless> sum = Propagation.to("sum", ShopUnit.ONE)
                .input("a", one(1.0), normal(1.0))
                .input("b", one(2.0), normal(1.0))
                .through(x -> x[0] + x[1]);

        assertThat(sum.compared(1, 1).isValidated()).isTrue();
    }

    /** JCGM 101:2008, 9.4: comparison loss, X1^2 + X2^2 about 0, where first order gives 0: exact mean and deviation. */
    @Test
    void simulate_agreesWithSupplement1ComparisonLoss() {
        for (double[] row : new double[][] {
            {0.0, 0.00005, 0.00005},
            {0.010, 0.00015, 0.00011180339887498948482},
            {0.050, 0.00255, 0.00050249378105604451}
        }) {
            Propagation<Dimensionless> loss = Propagation.to("loss", ShopUnit.ONE)
                    .input("x1", one(row[0]), normal(0.005))
                    .input("x2", one(0.0), normal(0.005))
                    .through(x -> x[0] * x[0] + x[1] * x[1]);
            Simulated<Dimensionless> trials = loss.simulate(6).trials(1_000_000);
            assertThat(trials.mean().libraryValue()).isCloseTo(row[1], within(5.0 * row[2] / 1000.0));
            assertThat(trials.standardDeviation().libraryValue()).isCloseTo(row[2], within(0.01 * row[2]));
        }
    }

    /** The shortest 95 % interval of 9.4 at x1 = 0 starts at 0: the law is exponential, its end {@code -2 s^2 ln 0.05}. */
    @Test
    void shortestInterval_agreesWithTheExponentialLaw() {
        Propagation<Dimensionless> loss = Propagation.to("loss", ShopUnit.ONE)
                .input("x1", one(0.0), normal(0.005))
                .input("x2", one(0.0), normal(0.005))
                .through(x -> x[0] * x[0] + x[1] * x[1]);

        Interval<Dimensionless> shortest = loss.simulate(6).trials(1_000_000).shortestInterval(percent(95));

        assertThat(shortest.libraryLow()).isCloseTo(0.0, within(1e-6));
        assertThat(shortest.libraryHigh()).isCloseTo(-2.0 * 0.005 * 0.005 * Math.log(0.05), within(2e-6));
    }

    @Tag("long")
    @Test
    void simulate_agreesWithSupplement1GaugeBlock() {
        Simulated<Dimensionless> trials = BLOCK.simulate(12).trials(2_000_000);

        assertThat(trials.mean().libraryValue()).isCloseTo(838.0, within(0.13));
        assertThat(trials.standardDeviation().libraryValue()).isCloseTo(35.808078603007, within(0.1));
        Interval<Dimensionless> i95 = trials.interval(percent(95));
        Interval<Dimensionless> i99 = trials.interval(percent(99));
        assertThat(0.5 * (i95.libraryHigh() - i95.libraryLow())).isCloseTo(70.3492, within(0.25));
        assertThat(0.5 * (i99.libraryHigh() - i99.libraryLow())).isCloseTo(93.7319, within(0.5));
    }

    /** NPL Report DEM-ES-011, 9.2: ln of a rectangular quantity; exact mean, deviation and shortest interval. */
    @Test
    void simulate_agreesWithTheLogarithmExample() {
        Propagation<Dimensionless> log = Propagation.to("ln x", ShopUnit.ONE)
                .input("x", one(0.6), rectangular(0.5))
                .through(x -> StrictMath.log(x[0]));

        Simulated<Dimensionless> trials = log.simulate(2).trials(1_000_000);

        assertThat(trials.mean().libraryValue()).isCloseTo(-0.66490029291583808555, within(0.003));
        assertThat(trials.standardDeviation().libraryValue()).isCloseTo(0.60622669742929920889, within(0.003));
        Interval<Dimensionless> shortest = trials.shortestInterval(percent(95));
        assertThat(shortest.libraryLow()).isCloseTo(-1.89711998488588, within(0.02));
        assertThat(shortest.libraryHigh()).isCloseTo(0.0953101798043249, within(0.001));
        assertThat(log.compared(2, 1).isValidated()).isFalse();
    }

    @Tag("long")
    @Test
    void derivatives_ofDualsAgreeWithDifferences() {
        Propagation<Angle> angle = Propagation.to("neck angle", ShopUnit.DEGREE)
                .input("rise", mm(10.3), ErrorDistribution.normal(mm(0.2)))
                .input("reach", mm(295.0), ErrorDistribution.rectangular(mm(0.5)))
                .input("action", mm(2.4), ErrorDistribution.normal(mm(0.1)))
                .throughDual(
                        x -> x[0].dividedBy(x[1].squared().plus(x[2].squared()).sqrt())
                                .asin()
                                .minus(x[2].atan2(x[1])));

        double[] exact = angle.derivatives();
        double[] differences = angle.differences();

        for (int i = 0; i < exact.length; i++) {
            assertThat(differences[i]).as("input %s", i).isCloseTo(exact[i], within(1e-9 * Math.abs(exact[i]) + 1e-13));
        }
        assertThat(angle.firstOrder().unit()).isEqualTo(ShopUnit.DEGREE);
        assertThat(angle.compared(5, 1).isValidated()).isTrue();
    }

    private static Propagation<Length> root(double sd) {
        return Propagation.to("root", ShopUnit.MILLIMETRE)
                .input("x", mm(1), ErrorDistribution.normal(mm(sd)))
                .through(x -> Math.sqrt(x[0]));
    }

    /** A root of a negative number: P(x < 0) of the trials have none, x normal of mean 1. */
    @Test
    void trials_withoutAValueAreCountedAndShown() {
        int count = 100_000;
        Simulated<Length> trials =
                root(0.5).simulate(3).withLimits(Limits.atMost(mm(1))).trials(count);
        double lacking = NormalLaw.upperTail(2);

        assertThat(trials.undefined() / (double) count).isCloseTo(lacking, within(4 * Math.sqrt(lacking / count)));
        assertThat(trials.toString())
                .contains(trials.undefined() / 1000 + "," + "%03d".formatted(trials.undefined() % 1000)
                        + " of 100,000 trials have no value")
                .containsPattern("standard deviation +none");
        assertThatThrownBy(trials::mean)
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("there is no mean of root: " + trials.undefined() + " of 100000 trials have no value");
        assertThatThrownBy(trials::standardDeviation).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(trials::estimate).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> trials.shortestInterval(percent(95))).isInstanceOf(ArithmeticException.class);
        // The low end of 95 % may be among those: 2.3 % of the trials, against 2.5 %.
        assertThatThrownBy(() -> trials.interval(percent(95))).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> trials.interval(percent(99))).isInstanceOf(ArithmeticException.class);
        // Half keep the limit; the share of those without a value lies between.
        assertThat(trials.yield().leastProbability()).isLessThan(0.5 - lacking);
        assertThat(trials.yield().mostProbability()).isGreaterThan(0.5);
        assertThat(trials.yield().probability()).isCloseTo(0.5 - lacking, within(0.01));
    }

    /** So few have none that it does not matter where they lie: the interval holds both ways of placing them. */
    @Test
    void interval_ofTrialsIsGivenWhereThoseWithoutAValueDoNotMatter() {
        Simulated<Length> few = root(0.3).simulate(3).trials(200_000);
        assertThat(few.undefined()).isBetween(20L, 200L);

        Interval<Length> interval = few.interval(percent(95));

        assertThat(interval.libraryLow()).isCloseTo(Math.sqrt(1 - 1.96 * 0.3), within(0.01));
        assertThat(interval.libraryHigh()).isCloseTo(Math.sqrt(1 + 1.96 * 0.3), within(0.01));
    }

    @Test
    void compared_neverAgreesWhereATrialHasNoValue() {
        Propagation<Length> straight = Propagation.to("straight", ShopUnit.MILLIMETRE)
                .input("x", mm(0), ErrorDistribution.normal(mm(1)))
                .through(x -> x[0] > 3.5 ? Double.NaN : x[0]);

        Comparison<Length> comparison = straight.compared(7, 1);

        assertThat(comparison.trials().undefined()).isPositive();
        assertThat(comparison.difference().libraryValue())
                .isLessThan(comparison.tolerance().libraryValue());
        assertThat(comparison.isValidated()).isFalse();
        assertThat(comparison.toString()).startsWith("straight: first order is NOT PROVED: trials have no value");
    }

    /** What a function throws leaves a trial without a value, with the first one's message, on any number of threads. */
    @Test
    void trials_thatThrowHaveNoValue() {
        Propagation<Length> throwing = Propagation.to("throwing", ShopUnit.MILLIMETRE)
                .input("x", mm(0), ErrorDistribution.normal(mm(1)))
                .through(x -> {
                    if (x[0] > 2) {
                        throw new IllegalStateException("too far at " + x[0]);
                    }
                    return x[0];
                });

        Simulated<Length> one = throwing.simulate(7).withThreads(1).trials(50_000);
        Simulated<Length> four = throwing.simulate(7).withThreads(4).trials(50_000);

        assertThat(one.undefined()).isEqualTo(four.undefined()).isBetween(1_000L, 1_300L);
        assertThat(one.trouble().orElseThrow()).startsWith("too far at 2.");
        assertThat(four.trouble()).isEqualTo(one.trouble());
        assertThat(one.toString()).contains("too far at 2.");
        assertThatThrownBy(one::mean).hasMessageEndingWith("(" + one.trouble().orElseThrow() + ")");
    }

    /**
     * Student's law of 2 degrees of freedom has no standard deviation: the trials' own grows with their number, and a tolerance
     * made of it would let anything pass.
     */
    @Test
    void compared_ofTwoDegreesGoesByTheWidthOfTheInterval() {
        for (double degrees : new double[] {1, 2}) {
            Propagation<Length> square = Propagation.to("square", ShopUnit.MILLIMETRE)
                    .input("x", mm(10), ErrorDistribution.normal(mm(0.1)).degreesOfFreedom(degrees))
                    .through(x -> x[0] * x[0] / 20);
            Propagation<Length> straight = Propagation.to("straight", ShopUnit.MILLIMETRE)
                    .input("x", mm(10), ErrorDistribution.normal(mm(0.001)).degreesOfFreedom(degrees))
                    .through(x -> x[0]);

            Comparison<Length> bent = square.compared(1, 2);
            Comparison<Length> even = straight.compared(1, 1);

            assertThat(bent.isValidated()).as("%s degrees", degrees).isFalse();
            assertThat(even.isValidated()).as("%s degrees", degrees).isTrue();
            double width = even.trials().interval(percent(95)).libraryHigh()
                    - even.trials().interval(percent(95)).libraryLow();
            // Half a unit of the first digit of the width over 3.92.
            double unit = Math.pow(10, Math.floor(Math.log10(width / 3.919927969080108)));
            assertThat(even.tolerance().libraryValue()).isCloseTo(unit / 2, within(1e-12));
            assertThat(bent.toString()).contains("standard deviation: none");
            assertThatThrownBy(bent.trials()::standardDeviation)
                    .isInstanceOf(ArithmeticException.class)
                    .hasMessage(
                            "there is no standard deviation of square: an input has Student's law of 2 degrees of freedom"
                                    + " or fewer, which has no standard deviation; ask for an interval");
        }
    }

    /** Every operation of the dual numbers against Hipparchus' Gradient, at random places, with 3 and with 11 inputs. */
    @Test
    void dual_agreesWithHipparchus() {
        SplittableRandom random = new SplittableRandom(41L);
        for (int inputs : new int[] {3, 8, 11}) {
            for (int i = 0; i < 200; i++) {
                Dual[] x = new Dual[inputs];
                Gradient[] g = new Gradient[inputs];
                for (int n = 0; n < inputs; n++) {
                    double value = 0.1 + 0.8 * random.nextDouble();
                    x[n] = Dual.input(value, n);
                    g[n] = Gradient.variable(inputs, n, value);
                }
                Dual a = x[0];
                Dual b = x[inputs - 1];
                Gradient c = g[0];
                Gradient d = g[inputs - 1];
                check(a.plus(b).times(x[1]), c.add(d).multiply(g[1]), inputs, i);
                check(a.minus(b).dividedBy(x[1]), c.subtract(d).divide(g[1]), inputs, i);
                check(a.times(b).sqrt().negated(), c.multiply(d).sqrt().negate(), inputs, i);
                check(a.sin().times(b.cos()), c.sin().multiply(d.cos()), inputs, i);
                check(a.tan().plus(b.asin()), c.tan().add(d.asin()), inputs, i);
                check(a.acos().minus(b.atan()), c.acos().subtract(d.atan()), inputs, i);
                check(a.atan2(b), c.atan2(d), inputs, i);
                check(a.exp().times(b.log()), c.exp().multiply(d.log()), inputs, i);
                check(a.power(2.7).squared(), c.pow(2.7).square(), inputs, i);
                check(
                        a.plus(2.0).minus(0.5).times(3.0).dividedBy(7.0),
                        c.add(1.5).multiply(3.0 / 7.0),
                        inputs,
                        i);
            }
        }
    }

    @Test
    void dual_rejectsANegativeIndex() {
        assertThatThrownBy(() -> Dual.input(1.0, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Dual.constant(1.0).derivative(-1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("index must be 0 or more, but was -1");
        assertThat(Dual.constant(1.0).derivative(99)).isZero();
        assertThat(Dual.input(2.5, 9)).hasToString("2.5, by input 9 1").isEqualTo(Dual.input(2.5, 9));
    }

    /** What has no answer in real numbers (any textbook of analysis), and a square root's slope without end at 0. */
    @Test
    void dual_neverHasAValueThatIsNoNumber() {
        Dual minus = Dual.input(-1, 0);
        Dual nought = Dual.input(0, 0);

        assertThatThrownBy(minus::sqrt)
                .isInstanceOf(ArithmeticException.class)
                .hasMessage("square root of -1 has no answer: it must be 0 or more");
        assertThatThrownBy(minus::log).hasMessage("logarithm of -1 has no answer: it must be more than 0");
        assertThatThrownBy(nought::log).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(Dual.constant(2)::asin)
                .hasMessage("angle of the sine 2 has no answer: it must be from -1 to 1");
        assertThatThrownBy(Dual.constant(-2)::acos).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> minus.power(0.5)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> minus.dividedBy(nought)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> nought.dividedBy(0)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(Dual.constant(1000)::exp).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Dual.constant(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("value must be a finite number, but was NaN");
        assertThatThrownBy(() -> Dual.input(Double.NEGATIVE_INFINITY, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(nought.sqrt().derivative(1)).isZero();
        Dual none = nought.sqrt();
        for (Dual each : new Dual[] {none, none.times(none)}) {
            assertThatThrownBy(() -> each.derivative(0))
                    .isInstanceOf(ArithmeticException.class)
                    .hasMessage("the formula has no derivative by input 0 at this value");
        }
        assertThat(none).hasToString("0, by input 0 none").isEqualTo(none);
    }

    @Test
    void dual_refusesMoreInputsThanMemoryHolds() {
        assertThat(Dual.input(1, 9_999).derivative(9_999)).isEqualTo(1);
        assertThatThrownBy(() -> Dual.input(1, Integer.MAX_VALUE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("index must be less than 10000, but was 2147483647");
    }

    private static void check(Dual actual, Gradient expected, int inputs, int i) {
        assertThat(actual.value())
                .as("seed 41, %s", i)
                .isCloseTo(expected.getValue(), within(1e-13 * (1.0 + Math.abs(expected.getValue()))));
        for (int n = 0; n < inputs; n++) {
            double slope = expected.getPartialDerivative(n);
            assertThat(actual.derivative(n))
                    .as("seed 41, %s, by %s", i, n)
                    .isCloseTo(slope, within(1e-12 * (1.0 + Math.abs(slope))));
        }
    }

    @Test
    void simulate_hasTheSameBitsForAnyNumberOfThreads() {
        Simulated<Dimensionless> first = MASS.simulate(8).withThreads(1).trials(300_001);
        for (int threads : new int[] {2, 3, 8}) {
            Simulated<Dimensionless> other =
                    MASS.simulate(8).withThreads(threads).trials(300_001);
            assertThat(other.mean()).isEqualTo(first.mean());
            assertThat(other.interval(percent(95))).isEqualTo(first.interval(percent(95)));
        }
    }

    @Test
    void budget_takesEveryQuestionOfABudget() {
        assertThat(MASS.budget().shares().largest().name()).isEqualTo("m_Rc");
        assertThat(MASS.budget().rootSumSquare().libraryValue()).isZero();
    }

    @Test
    void input_rejectsANameTwice() {
        assertThatThrownBy(() -> MASS.input("rho_a", one(1.0), normal(1.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("inputs must have different names, but \"rho_a\" was given twice to mass difference");
    }

    @Test
    void everyQuestion_rejectsAFunctionWithoutAValue() {
        Propagation<Dimensionless> root = Propagation.to("root", ShopUnit.ONE)
                .input("x", one(-1.0), normal(0.1))
                .through(x -> Math.sqrt(x[0]));

        assertThatThrownBy(root::value)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("root must be a finite number, but was NaN");
        assertThatThrownBy(() -> Propagation.to("none", ShopUnit.ONE).firstOrder())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("needs its function for this");
    }

    private static Dual[] ten() {
        Dual[] x = new Dual[10];
        for (int i = 0; i < x.length; i++) {
            x[i] = Dual.input(1.5 + i, i);
        }
        return x;
    }

    /** The slopes of a sum are 1, of what is taken off -1, of a product the product without that factor. */
    @Test
    void dual_hasASlopeForEachOfTenInputs() {
        Dual[] x = ten();
        Dual sum = Dual.constant(0);
        Dual less = Dual.constant(0);
        Dual product = Dual.constant(1);
        Dual quotient = Dual.constant(1);
        double all = 1;
        for (Dual one : x) {
            sum = sum.plus(one);
            less = less.minus(one);
            product = product.times(one);
            quotient = quotient.dividedBy(one);
            all *= one.value();
        }

        assertThat(sum.value()).isCloseTo(60, within(1e-12));
        assertThat(less.value()).isCloseTo(-60, within(1e-12));
        for (int i = 0; i < 10; i++) {
            assertThat(sum.derivative(i)).isEqualTo(1);
            assertThat(sum.plus(sum).derivative(i)).isEqualTo(2);
            assertThat(less.derivative(i)).isEqualTo(-1);
            assertThat(sum.minus(less).derivative(i)).isEqualTo(2);
            assertThat(product.derivative(i)).isCloseTo(all / x[i].value(), within(1e-9 * all));
            assertThat(quotient.derivative(i)).isCloseTo(-1 / all / x[i].value(), within(1e-12 / all));
        }
        assertThat(sum.derivative(10)).isZero();
        assertThat(x[9])
                .isEqualTo(Dual.input(10.5, 9))
                .isNotEqualTo(Dual.input(10.5, 8))
                .isNotEqualTo(x[0]);
        assertThat(Dual.input(1, 11)).isNotEqualTo(Dual.input(1, 12));
    }

    @Test
    void derivatives_ofAProductAreItsOtherFactor() {
        Propagation<Length> area = Propagation.to("area over a side", ShopUnit.MILLIMETRE)
                .input("wide", mm(40), ErrorDistribution.normal(mm(0.1)))
                .input("long", mm(30), ErrorDistribution.normal(mm(0.2)).shifted(mm(0.5)))
                .throughDual(x -> x[0].times(x[1]).dividedBy(Dual.constant(10)));

        assertThat(area.value().libraryValue()).isCloseTo(40 * 30.5 / 10, within(1e-12));
        assertThat(area.derivatives()[0]).isCloseTo(3.05, within(1e-15));
        assertThat(area.derivatives()[1]).isCloseTo(4, within(1e-15));
        assertThat(area.differences()[0]).isCloseTo(3.05, within(1e-8));
        assertThat(area.budget().rootSumSquare().libraryUncertainty()).isCloseTo(Math.hypot(0.305, 0.8), within(1e-12));
        assertThat(area.budget().rootSumSquare().libraryValue()).isZero();
    }
}
