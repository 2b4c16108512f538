package org.neckgeom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.measure.Limits;
import org.neckgeom.search.Search;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * What a search costs of itself: four variables, three limits and a formula for a plan, beside the same designs made and asked
 * in a loop; time and memory of one design.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(SearchBenchmark.DESIGNS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class SearchBenchmark {

    /** What the search may ask, and asks. */
    static final int DESIGNS = 400;

    private static final Amount<Dimensionless> ZERO = one(0);

    private final List<double[]> asked = new ArrayList<>();
    private final Search<double[]> search = search(SearchBenchmark::aim);

    private static Search<double[]> search(Function<double[], Amount<Dimensionless>> aim) {
        Search<double[]> search = Search.of(new double[4]);
        for (int k = 0; k < 4; k++) {
            int place = k;
            search = search.between("x" + k, one(-10), one(10), (x, v) -> with(x, place, v.value()));
        }
        return search.least("f", aim)
                .within("g1", SearchBenchmark::first, Limits.atMost(ZERO))
                .within("g2", SearchBenchmark::second, Limits.atMost(ZERO))
                .within("g3", SearchBenchmark::third, Limits.atMost(ZERO))
                .designs(DESIGNS);
    }

    private static Amount<Dimensionless> one(double value) {
        return Amount.of(value, ShopUnit.ONE);
    }

    private static double[] with(double[] x, int place, double value) {
        double[] changed = x.clone();
        changed[place] = value;
        return changed;
    }

    /** Rosen and Suzuki's problem, as in the search's tests. */
    private static Amount<Dimensionless> aim(double[] x) {
        return one(
                x[0] * x[0] + x[1] * x[1] + 2 * x[2] * x[2] + x[3] * x[3] - 5 * x[0] - 5 * x[1] - 21 * x[2] + 7 * x[3]);
    }

    private static Amount<Dimensionless> first(double[] x) {
        return one(x[0] * x[0] + x[1] * x[1] + x[2] * x[2] + x[3] * x[3] + x[0] - x[1] + x[2] - x[3] - 8);
    }

    private static Amount<Dimensionless> second(double[] x) {
        return one(x[0] * x[0] + 2 * x[1] * x[1] + x[2] * x[2] + 2 * x[3] * x[3] - x[0] - x[3] - 10);
    }

    private static Amount<Dimensionless> third(double[] x) {
        return one(2 * x[0] * x[0] + x[1] * x[1] + x[2] * x[2] + 2 * x[0] - x[1] - x[3] - 5);
    }

    /** Notes the designs that the search asks. */
    @Setup
    public void note() {
        int count = search(x -> {
                    asked.add(x);
                    return aim(x);
                })
                .result()
                .asked();
        if (count != DESIGNS) {
            throw new IllegalStateException("the search asked " + count + " designs");
        }
    }

    /** The search, of which every design is made by four changes. */
    @Benchmark
    public int search() {
        return search.result().asked();
    }

    /** The baseline: the same designs, made by the same four changes and asked. */
    @Benchmark
    public double loop() {
        double sum = 0;
        for (int i = 0; i < DESIGNS; i++) {
            double[] x = new double[4];
            for (int k = 0; k < 4; k++) {
                x = with(x, k, one(asked.get(i)[k]).value());
            }
            sum += aim(x).value() + first(x).value() + second(x).value() + third(x).value();
        }
        return sum;
    }
}
