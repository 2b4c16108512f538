package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;

/**
 * Runs trials in blocks of {@value #BLOCK}, each seeded by its own number and summed in their order, so that the bits do
 * not depend on the number of threads. Memory is the same for any number of trials, and 8 bytes a trial where the values
 * are kept for quantiles.
 */
final class BlockEngine {

    static final int BLOCK = 4096;
    private static final int WAVE = 256;

    /** Fills a block with results; one per thread, as it may hold scratch space. */
    interface Filler {

        /** Overwrites the first n of out; what has no value becomes NaN. */
        void fill(Draws draws, double[] out, int n);

        /** Why the first trial of the last block without a value has none, if that is known. */
        default @Nullable String trouble() {
            return null;
        }
    }

    /** Makes a filler for a thread. */
    interface FillerSource {

        Filler filler();
    }

    /**
     * What a run came to; mean and deviation are of the results less the reference. Trials without a value count among the
     * trials alone, and are NaN among the values.
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
    record Tally(
            long trials,
            double mean,
            double variance,
            long inside,
            long undefined,
            @Nullable String trouble,
            double least,
            double most,
            double @Nullable [] values) {}

    private final FillerSource source;
    private final long seed;
    private final int threads;

    BlockEngine(FillerSource source, long seed, int threads) {
        this.source = source;
        this.seed = seed;
        this.threads = threads;
    }

    /** Runs the trials; counts those in [low, high]; keeps the values when asked. */
    Tally run(long trials, double low, double high, boolean keep) {
        double @Nullable [] values = keep ? new double[Math.toIntExact(trials)] : null;
        long blocks = (trials + BLOCK - 1) / BLOCK;
        int workers = (int) Math.min(threads, blocks);
        Part totals = new Part();
        if (workers <= 1) {
            Worker worker = new Worker(low, high);
            Part part = new Part();
            for (long block = 0; block < blocks; block++) {
                worker.run(block, trials, values, part);
                totals.add(part);
            }
            return totals.tally(values);
        }
        ExecutorService pool = Executors.newFixedThreadPool(workers, task -> {
            Thread thread = new Thread(task, "neckgeom-trials");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Worker> crew = new ArrayList<>();
            for (int i = 0; i < workers; i++) {
                crew.add(new Worker(low, high));
            }
            Part[] parts = new Part[WAVE];
            for (int i = 0; i < WAVE; i++) {
                parts[i] = new Part();
            }
            for (long start = 0; start < blocks; start += WAVE) {
                wave(pool, crew, parts, start, (int) Math.min(WAVE, blocks - start), trials, values);
                for (int i = 0; i < Math.min(WAVE, blocks - start); i++) {
                    totals.add(parts[i]);
                }
            }
        } finally {
            pool.shutdownNow();
        }
        return totals.tally(values);
    }

    private static void wave(
            ExecutorService pool,
            List<Worker> crew,
            Part[] parts,
            long start,
            int count,
            long trials,
            double @Nullable [] values) {
        List<Callable<Void>> tasks = new ArrayList<>();
        for (int w = 0; w < crew.size(); w++) {
            Worker worker = crew.get(w);
            int first = w;
            tasks.add(() -> {
                for (int i = first; i < count; i += crew.size()) {
                    worker.run(start + i, trials, values, parts[i]);
                }
                return null;
            });
        }
        try {
            for (Future<Void> done : pool.invokeAll(tasks)) {
                done.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the trials were interrupted", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private final class Worker {

        private final Filler filler = source.filler();
        private final double[] out = new double[BLOCK];
        private final double low;
        private final double high;

        Worker(double low, double high) {
            this.low = low;
            this.high = high;
        }

        void run(long block, long trials, double @Nullable [] values, Part part) {
            long start = block * BLOCK;
            int n = (int) Math.min(BLOCK, trials - start);
            filler.fill(new Draws(seed, block), out, n);
            // Two running sums each, as one would wait for its own addition; their order is fixed.
            double sum0 = 0.0;
            double sum1 = 0.0;
            double square0 = 0.0;
            double square1 = 0.0;
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            long outside = 0;
            int i = 0;
            for (; i + 1 < n; i += 2) {
                double x = out[i];
                double y = out[i + 1];
                sum0 += x;
                sum1 += y;
                square0 += x * x;
                square1 += y * y;
                outside += outside(x) + outside(y);
                // Math.min and Math.max cost several times as much, for the sake of NaN and of the sign of 0.
                if (x < least) {
                    least = x;
                }
                if (y < least) {
                    least = y;
                }
                if (x > most) {
                    most = x;
                }
                if (y > most) {
                    most = y;
                }
            }
            if (i < n) {
                double x = out[i];
                sum0 += x;
                square0 += x * x;
                outside += outside(x);
                least = Math.min(least, x);
                most = Math.max(most, x);
            }
            part.n = n;
            part.sum = sum0 + sum1;
            part.square = square0 + square1;
            part.inside = n - outside;
            part.undefined = 0;
            part.trouble = null;
            part.least = least;
            part.most = most;
            // What is no number among the values is none in their sum of squares.
            if (!Double.isFinite(part.square)) {
                sumDefined(n, part);
            }
            if (values != null) {
                System.arraycopy(out, 0, values, (int) start, n);
            }
        }

        /** 1 past a limit, else 0, by the signs of two differences: a branch would be guessed wrong as often as a trial is outside. */
        private long outside(double x) {
            return (Double.doubleToRawLongBits(x - low) | Double.doubleToRawLongBits(high - x)) >>> (Long.SIZE - 1);
        }

        /** The block's sums over the trials that have a value; the others become NaN. */
        private void sumDefined(int n, Part part) {
            part.sum = 0.0;
            part.square = 0.0;
            part.least = Double.POSITIVE_INFINITY;
            part.most = Double.NEGATIVE_INFINITY;
            part.inside = 0;
            part.trouble = filler.trouble();
            for (int i = 0; i < n; i++) {
                double x = out[i];
                if (!Double.isFinite(x)) {
                    out[i] = Double.NaN;
                    part.undefined++;
                    continue;
                }
                part.sum += x;
                part.square += x * x;
                part.inside += x >= low && x <= high ? 1 : 0;
                part.least = Math.min(part.least, x);
                part.most = Math.max(part.most, x);
            }
        }
    }

    /** Sums over some trials. */
    private static final class Part {
        private long n;
        private double sum;
        private double square;
        private long inside;
        private long undefined;
        private @Nullable String trouble;
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;

        void add(Part part) {
            n += part.n;
            sum += part.sum;
            square += part.square;
            inside += part.inside;
            undefined += part.undefined;
            trouble = trouble == null ? part.trouble : trouble;
            least = Math.min(least, part.least);
            most = Math.max(most, part.most);
        }

        Tally tally(double @Nullable [] values) {
            long defined = n - undefined;
            double mean = defined > 0 ? sum / defined : 0.0;
            double variance = defined > 1 ? Math.max(0.0, (square - sum * mean) / (defined - 1)) : 0.0;
            return new Tally(n, mean, variance, inside, undefined, trouble, least, most, values);
        }
    }
}
