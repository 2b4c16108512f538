package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.BudgetKernels;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.state.DatumTree;
import org.neckgeom.strength.ReliefScan;

/** Time and memory of a single thread against the size of the question; prints {@code subject;size;microseconds;bytes}. */
final class Growth {

    private static final int[] COMPONENTS = {2, 5, 10, 20, 50, 100, 200, 500, 1_000, 2_000};
    private static final int[] STATIONS = {10, 30, 100, 300, 1_000, 3_000, 10_000, 30_000, 100_000};
    private static final int[] TRIALS = {10_000, 100_000, 1_000_000, 10_000_000, 100_000_000};
    private static final int[] FEATURES = {2, 5, 10, 20, 50, 100, 200, 500, 1_000, 2_000, 5_000};
    private static final long ENOUGH_NANOS = 250_000_000L;
    private static final long FINE_NANOS = 100_000L;
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private static double sink;

    private Growth() {}

    /**
     * Measures all subjects.
     *
     * @param args none
     */
    public static void main(String[] args) {
        measure(
                "budget made one component at a time",
                COMPONENTS,
                n -> budget(n).components().size());
        Budget<Length>[] budgets = budgets();
        measure(
                "exact distribution, interval and yield of components",
                COMPONENTS,
                n -> answer(budgets[indexOf(COMPONENTS, n)]));
        FloorThickness wood = wood();
        measure("wood left at stations", STATIONS, n -> wood.alongMm(n)[n / 2]);
        ReliefScan scan = new ReliefScan(channel(), 2.4);
        measure("relief at stations", STATIONS, scan::relief);
        BudgetKernels kernels = new BudgetKernels();
        measure("trials", TRIALS, n -> kernels.trials(n, 1));
        measure("trials with percentiles", TRIALS, n -> kernels.fullJob(n, 1));
        measure("tree made one feature at a time", FEATURES, n -> tree(n).hashCode());
        DatumTree[] trees = trees();
        measure(
                "budget of two features of a tree, exactly",
                FEATURES,
                n -> answer(trees[indexOf(FEATURES, n)].across("feature 1", "feature " + n, mm(100))));
        if (Double.isNaN(sink)) {
            throw new AssertionError("an answer was no number");
        }
    }

    /** The best of as many runs as fit a quarter of a second, two at least, after as long a warming up. */
    private static void measure(String subject, int[] sizes, IntToDoubleFunction work) {
        int warm = sizes[Math.min(2, sizes.length - 1)];
        long end = System.nanoTime() + ENOUGH_NANOS;
        while (System.nanoTime() < end) {
            sink += work.applyAsDouble(warm);
        }
        for (int size : sizes) {
            long best = Long.MAX_VALUE;
            long bytes = Long.MAX_VALUE;
            long spent = 0;
            for (int run = 0; run < 2 || spent < ENOUGH_NANOS && run < 20_000; run++) {
                long before = THREADS.getCurrentThreadAllocatedBytes();
                long busy = THREADS.getCurrentThreadCpuTime();
                long start = System.nanoTime();
                sink += work.applyAsDouble(size);
                long nanos = System.nanoTime() - start;
                // Long work is interrupted by whatever else runs: its own time counts, as far as it is told finely
                // enough.
                nanos = nanos < FINE_NANOS ? nanos : THREADS.getCurrentThreadCpuTime() - busy;
                bytes = Math.min(bytes, THREADS.getCurrentThreadAllocatedBytes() - before);
                best = Math.min(best, nanos);
                spent += nanos;
            }
            System.out.println(String.format(Locale.ROOT, "%s;%d;%.3f;%d", subject, size, best * 1e-3, bytes));
        }
    }

    private static int indexOf(int[] sizes, int size) {
        int i = 0;
        while (sizes[i] != size) {
            i++;
        }
        return i;
    }

    private static double answer(Budget<Length> budget) {
        var law = budget.distribution();
        return law.interval(percent(95)).libraryLow() + law.chance(Limits.within(mm(0.1)));
    }

    private static Budget<Length> budget(int count) {
        Budget<Length> budget = Budget.named("many");
        for (int i = 0; i < count; i++) {
            double size = 0.01 * (1 + i % 7);
            budget = budget.with(
                    "error " + i,
                    switch (i % 3) {
                        case 0 -> ErrorDistribution.normal(mm(size));
                        case 1 -> ErrorDistribution.rectangular(mm(size));
                        default -> ErrorDistribution.triangular(mm(size));
                    });
        }
        return budget;
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type cannot be made otherwise
    private static Budget<Length>[] budgets() {
        Budget<Length>[] all = new Budget[COMPONENTS.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = budget(COMPONENTS[i]);
        }
        return all;
    }

    /** Each feature on the one before: the longest way there is. */
    private static DatumTree tree(int count) {
        DatumTree tree = DatumTree.from("feature 1", ErrorDistribution.normal(mm(0.05)));
        for (int i = 2; i <= count; i++) {
            tree = tree.place("feature " + i)
                    .on("feature " + (i - 1))
                    .at(mm(10), mm(400))
                    .each(ErrorDistribution.normal(mm(0.05)))
                    .cut(ErrorDistribution.rectangular(mm(0.02)));
        }
        return tree;
    }

    private static DatumTree[] trees() {
        DatumTree[] all = new DatumTree[FEATURES.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = tree(FEATURES[i]);
        }
        return all;
    }

    private static Channel channel() {
        return Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                .startingAt(mm(3))
                .depthClearance(mm(0.2));
    }

    private static FloorThickness wood() {
        return FloorThickness.under(Neck.named("growth")
                .scale(Scale.of(mm(560)))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                .back(BackProfile.between(mm(14.5), mm(16.5)))
                .bodyAtFret(14)
                .channel(channel()));
    }
}
