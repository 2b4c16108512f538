package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Length;
import org.hipparchus.analysis.differentiation.Gradient;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.BudgetKernels;
import org.neckgeom.budget.Dual;
import org.neckgeom.budget.ResultDistribution;
import org.neckgeom.measure.Limits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Budgets of twelve mixed components, exactly; gradients beside plain evaluation, differences and Hipparchus. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class BudgetBenchmark {

    private final BudgetKernels kernels = new BudgetKernels();
    private final Budget<Length> budget = BudgetKernels.budget();
    private final ResultDistribution<Length> distribution = budget.distribution();
    private final Limits<Length> limits = Limits.within(mm(0.2));
    private double p = 0.975;
    private double y = 0.13;
    private final double[] x = {648.0, 2.5, 9.0, 4.0, 6.5, 1.2, 0.5, 2.3};

    /** From bare parts: build, two quantiles, chance inside. */
    @Benchmark
    public double exactCold() {
        return kernels.cold();
    }

    /** From the budget a user holds: two quantiles and the yield. */
    @Benchmark
    public double exactBudget() {
        ResultDistribution<Length> fresh = budget.distribution();
        return fresh.interval(percent(95)).libraryLow() + fresh.chance(limits);
    }

    @Benchmark
    public double exactCdf() {
        return kernels.cdf(y);
    }

    @Benchmark
    public double exactQuantile() {
        return kernels.quantile(p);
    }

    /** The chance of keeping limits, the distribution there already. */
    @Benchmark
    public double exactYield() {
        return distribution.chance(limits);
    }

    @Benchmark
    public double gradientPlainFunction() {
        return BudgetKernels.neckAngle(x);
    }

    @Benchmark
    public double gradientDual() {
        Dual[] in = new Dual[8];
        for (int i = 0; i < 8; i++) {
            in[i] = Dual.input(x[i], i);
        }
        Dual reach = in[0].times(0.5).plus(in[1]);
        Dual rise = in[2].plus(in[3]).minus(in[4].plus(in[5]));
        Dual action = in[6].plus(in[7].minus(in[6]).times(in[0].plus(in[1])).dividedBy(in[0].times(0.5)));
        Dual out = rise.dividedBy(reach.squared().plus(action.squared()).sqrt())
                .asin()
                .minus(action.atan2(reach));
        return out.value() + out.derivative(3);
    }

    @Benchmark
    public double gradientHipparchus() {
        Gradient[] in = new Gradient[8];
        for (int i = 0; i < 8; i++) {
            in[i] = Gradient.variable(8, i, x[i]);
        }
        Gradient reach = in[0].multiply(0.5).add(in[1]);
        Gradient rise = in[2].add(in[3]).subtract(in[4].add(in[5]));
        Gradient action =
                in[6].add(in[7].subtract(in[6]).multiply(in[0].add(in[1])).divide(in[0].multiply(0.5)));
        Gradient out =
                rise.divide(reach.square().add(action.square()).sqrt()).asin().subtract(action.atan2(reach));
        return out.getValue() + out.getPartialDerivative(3);
    }

    @Benchmark
    public double gradientDifferences() {
        double[] at = x.clone();
        double sum = 0.0;
        for (int i = 0; i < 8; i++) {
            double middle = at[i];
            double h = 6e-6 * middle;
            at[i] = middle + h;
            double above = BudgetKernels.neckAngle(at);
            at[i] = middle - h;
            sum += (above - BudgetKernels.neckAngle(at)) / (2.0 * h);
            at[i] = middle;
        }
        return sum;
    }
}
