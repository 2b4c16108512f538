package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.mm;

import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import javax.measure.quantity.Angle;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.descriptive.Quantile;
import org.hipparchus.random.Well19937a;
import org.neckgeom.budget.BudgetKernels;
import org.neckgeom.budget.Propagation;
import org.neckgeom.budget.Simulation;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.units.ShopUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * A million trials of twelve components or of a function of eight, time of one trial: beside the same draws without a
 * model, and beside general generators row by row. Percentiles of a million values, time of one value.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(TrialsBenchmark.MILLION)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class TrialsBenchmark {

    static final int MILLION = 1_000_000;
    private static final int ROWS = 100_000;

    private final BudgetKernels kernels = new BudgetKernels();
    private final UniformRandomProvider xoshiro = RandomSource.XO_SHI_RO_256_PP.create(1L);
    private final ZigguratSampler.NormalizedGaussian ziggurat = ZigguratSampler.NormalizedGaussian.of(xoshiro);
    private final RandomGenerator mix = RandomGenerator.of("L64X128MixRandom");
    private final Well19937a well = new Well19937a(1);
    private final double[] x = {648.0, 2.5, 9.0, 4.0, 6.5, 1.2, 0.5, 2.3};
    private final Simulation<Angle> nonlinear =
            angle().simulate(1).withThreads(1).withoutQuantiles();

    private Propagation<Angle> angle() {
        Propagation<Angle> angle = Propagation.to("neck angle", ShopUnit.RADIAN);
        for (int i = 0; i < x.length; i++) {
            angle = angle.input("input " + i, mm(x[i]), ErrorDistribution.normal(mm(0.1)));
        }
        return angle.through(BudgetKernels::neckAngle);
    }

    @Benchmark
    public double bareDraws() {
        return kernels.bareDraws(MILLION);
    }

    @Benchmark
    public double oneThread() {
        return kernels.trials(MILLION, 1);
    }

    @Benchmark
    public double twoThreads() {
        return kernels.trials(MILLION, 2);
    }

    @Benchmark
    public double fullJob() {
        return kernels.fullJob(MILLION, 1);
    }

    /** Row by row as one writes it first: triangles by their inverse, which no general library draws otherwise. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double rowsOfXoshiroByInverse() {
        double sum = 0;
        for (int i = 0; i < ROWS; i++) {
            double trial = BudgetKernels.rowByInverse(ziggurat::sample, xoshiro::nextDouble);
            sum += trial * trial;
        }
        return sum;
    }

    /** The same with the JDK's generator. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double rowsOfTheJdkByInverse() {
        double sum = 0;
        for (int i = 0; i < ROWS; i++) {
            double trial = BudgetKernels.rowByInverse(mix::nextGaussian, mix::nextDouble);
            sum += trial * trial;
        }
        return sum;
    }

    /** Row by row at its best: triangles as differences of two draws. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double rowsOfXoshiroAndZiggurat() {
        double sum = 0;
        for (int i = 0; i < ROWS; i++) {
            double trial = BudgetKernels.row(ziggurat::sample, xoshiro::nextDouble);
            sum += trial * trial;
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double rowsOfTheJdk() {
        double sum = 0;
        for (int i = 0; i < ROWS; i++) {
            double trial = BudgetKernels.row(mix::nextGaussian, mix::nextDouble);
            sum += trial * trial;
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double rowsOfHipparchus() {
        double sum = 0;
        for (int i = 0; i < ROWS; i++) {
            double trial = BudgetKernels.row(well::nextGaussian, well::nextDouble);
            sum += trial * trial;
        }
        return sum;
    }

    @Benchmark
    public double nonlinear() {
        return nonlinear.trials(MILLION).standardDeviation().libraryValue();
    }

    /** The same function on rows of general draws. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double nonlinearRows() {
        double sum = 0;
        double[] row = new double[x.length];
        for (int i = 0; i < ROWS; i++) {
            for (int n = 0; n < row.length; n++) {
                row[n] = x[n] + 0.1 * ziggurat.sample();
            }
            double trial = BudgetKernels.neckAngle(row);
            sum += trial * trial;
        }
        return sum;
    }

    @Benchmark
    public double percentiles() {
        return kernels.percentiles();
    }

    @Benchmark
    public double percentilesBySorting() {
        return kernels.percentilesBySorting();
    }

    @Benchmark
    public double percentilesByStatistics() {
        return Quantile.withDefaults().withCopy(true).evaluate(kernels.million(), 0.025, 0.975)[1];
    }
}
