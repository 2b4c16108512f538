package org.neckgeom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Length;
import org.neckgeom.channel.FeelerStack;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.SlotOffset;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The exact leaf search beside a plain loop over every stack of up to four leaves. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class LeavesBenchmark {

    /** How many leaves the set has. */
    @Param({"10", "20", "40"})
    public int leaves;

    /** The most leaves in a stack. */
    @Param({"4", "6"})
    public int most;

    private double[] mm;
    private FeelerSet set;
    private FenceMove move;

    /** Makes a set of odd leaves, so that no stack is exact and nothing ends early. */
    @Setup
    public void leaves() {
        SplittableRandom random = new SplittableRandom(leaves);
        mm = random.doubles(leaves, 0.03, 1.0).toArray();
        List<Amount<Length>> list = new ArrayList<>();
        for (double leaf : mm) {
            list.add(ShopUnits.mm(leaf));
        }
        set = FeelerSet.of(list);
        // A move beyond doubt, so that the stack counts as close and no remedy is sought.
        move = FenceMove.of(SlotOffset.of(ShopUnits.mm(1.2345678), ShopUnits.mm(0.5)));
    }

    /** The library's search, value in and value out. */
    @Benchmark
    public FeelerStack search() {
        return move.leaves(set, most);
    }

    /** The baseline: four nested loops on doubles, fewer leaves by leaving loops out; the same for both limits. */
    @Benchmark
    public double everyStackOfFour() {
        double best = 1.2345678;
        for (int i = 0; i < mm.length; i++) {
            best = Math.min(best, Math.abs(mm[i] - 1.2345678));
            for (int j = i + 1; j < mm.length; j++) {
                double two = mm[i] + mm[j];
                best = Math.min(best, Math.abs(two - 1.2345678));
                for (int k = j + 1; k < mm.length; k++) {
                    double three = two + mm[k];
                    best = Math.min(best, Math.abs(three - 1.2345678));
                    for (int l = k + 1; l < mm.length; l++) {
                        best = Math.min(best, Math.abs(three + mm[l] - 1.2345678));
                    }
                }
            }
        }
        return best;
    }
}
