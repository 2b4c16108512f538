package org.neckgeom.sweep;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;

/** Counts the results of one stream, whichever thread makes them. */
final class Countdown {

    private final long size;
    private final SweepProgress progress;
    private final AtomicLong done = new AtomicLong();
    private volatile boolean cancelled;

    Countdown(long size, SweepProgress progress) {
        this.size = size;
        this.progress = progress;
    }

    /** Called before a result is made, so that other threads stop too. */
    void goOn() {
        if (cancelled) {
            throw cancellation();
        }
    }

    /** Called when a result has been made. */
    void count() {
        if (!progress.goesOn(done.incrementAndGet(), size)) {
            cancelled = true;
            throw cancellation();
        }
    }

    private CancellationException cancellation() {
        return new CancellationException("the sweep was cancelled after " + done.get() + " of " + size + " designs");
    }
}
