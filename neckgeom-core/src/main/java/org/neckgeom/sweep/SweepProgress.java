package org.neckgeom.sweep;

/** Receives the progress of a sweep, and can stop it. */
@FunctionalInterface
public interface SweepProgress {

    /**
     * Called after each result, by the thread that made it; in a parallel stream several threads call at once. A sweep of
     * many quick questions should do next to nothing here, as by {@code done % 10_000 != 0 || ...}.
     *
     * @param done how many results there are by now, 1 or more
     * @param size how many there will be
     * @return false to cancel: the stream then ends in a {@link java.util.concurrent.CancellationException}
     */
    boolean goesOn(long done, long size);
}
