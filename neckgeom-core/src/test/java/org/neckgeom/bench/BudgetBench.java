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
    private final double[] x = {1.1, 0.7, 2.3, 0.4, 1.9, 0.6, 1.4, 0.8};

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
        return plain(x);
    }

    @Benchmark
    public double gradientDual() {
        Dual[] in = new Dual[8];
        for (int i = 0; i < 8; i++) {
            in[i] = Dual.input(x[i], i);
        }
        Dual out = in[0].times(in[1])
                .plus(in[2].dividedBy(in[3]))
                .plus(in[4].times(in[5]).sqrt())
                .minus(in[6].squared().plus(in[7].squared()).sqrt().times(in[0]));
        return out.value() + out.derivative(3);
    }

    @Benchmark
    public double gradientHipparchus() {
        Gradient[] in = new Gradient[8];
        for (int i = 0; i < 8; i++) {
            in[i] = Gradient.variable(8, i, x[i]);
        }
        Gradient out = in[0].multiply(in[1])
                .add(in[2].divide(in[3]))
                .add(in[4].multiply(in[5]).sqrt())
                .subtract(
                        in[6].multiply(in[6]).add(in[7].multiply(in[7])).sqrt().multiply(in[0]));
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
            double above = plain(at);
            at[i] = middle - h;
            sum += (above - plain(at)) / (2.0 * h);
            at[i] = middle;
        }
        return sum;
    }

    private static double plain(double[] v) {
        return v[0] * v[1] + v[2] / v[3] + Math.sqrt(v[4] * v[5]) - Math.sqrt(v[6] * v[6] + v[7] * v[7]) * v[0];
    }
}
