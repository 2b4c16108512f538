package org.neckgeom.bench;

import java.util.concurrent.TimeUnit;
import org.hipparchus.analysis.differentiation.Gradient;
import org.neckgeom.budget.BenchKernels;
import org.neckgeom.budget.Dual;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Budgets of twelve mixed contributors: the exact distribution against a million trials, the trials against a bare
 * generator that draws the same variates, percentiles against sorting, gradients against plain evaluation.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms512m", "-Xmx512m", "-XX:+AlwaysPreTouch"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class BudgetBench {

    private static final int MILLION = 1_000_000;

    private final BenchKernels kernels = new BenchKernels();
    private double p = 0.975;
    private double y = 0.13;
    private final double[] x = {648.0, 2.5, 9.0, 4.0, 6.5, 1.2, 0.5, 2.3};

    @Benchmark
    public double exactCold() {
        return kernels.cold();
    }

    @Benchmark
    public double exactCdf() {
        return kernels.cdf(y);
    }

    @Benchmark
    public double exactQuantile() {
        return kernels.quantile(p);
    }

    @Benchmark
    public double trialsBareGenerator() {
        return kernels.bareDraws(MILLION);
    }

    @Benchmark
    public double trialsOneThread() {
        return kernels.trials(MILLION, 1);
    }

    @Benchmark
    public double trialsTwoThreads() {
        return kernels.trials(MILLION, 2);
    }

    @Benchmark
    public double trialsFullJobOneThread() {
        return kernels.fullJob(MILLION, 1);
    }

    @Benchmark
    public double percentilesOfAMillion() {
        return kernels.percentiles();
    }

    @Benchmark
    public double percentilesOfAMillionBySorting() {
        return kernels.percentilesBySorting();
    }

    @Benchmark
    public double gradientPlainFunction() {
        return neckAngle(x);
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
            double above = neckAngle(at);
            at[i] = middle - h;
            sum += (above - neckAngle(at)) / (2.0 * h);
            at[i] = middle;
        }
        return sum;
    }

    /** Scale, compensation, bridge and saddle over the body, board and stand-off, string over nut and twelfth fret. */
    private static double neckAngle(double[] v) {
        double reach = 0.5 * v[0] + v[1];
        double rise = v[2] + v[3] - (v[4] + v[5]);
        double action = v[6] + (v[7] - v[6]) * (v[0] + v[1]) / (0.5 * v[0]);
        return StrictMath.asin(rise / Math.sqrt(reach * reach + action * action)) - StrictMath.atan2(action, reach);
    }
}
