package org.neckgeom.sweep;

import java.util.Spliterator;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;

/** The results between two places of a sweep: ordered, of exact size, split by halves. */
final class SweepSpliterator<D, R> implements Spliterator<SweepResult<D, R>> {

    private final LongFunction<SweepCursor<D>> places;
    private final Function<? super D, ? extends R> question;
    private final @Nullable Countdown countdown;
    private long next;
    private final long end;
    private @Nullable SweepCursor<D> cursor;

    SweepSpliterator(
            LongFunction<SweepCursor<D>> places,
            Function<? super D, ? extends R> question,
            @Nullable Countdown countdown,
            long next,
            long end) {
        this.places = places;
        this.question = question;
        this.countdown = countdown;
        this.next = next;
        this.end = end;
    }

    @Override
    public boolean tryAdvance(Consumer<? super SweepResult<D, R>> action) {
        if (next >= end) {
            return false;
        }
        if (countdown != null) {
            countdown.goOn();
        }
        SweepCursor<D> here = cursor;
        if (here == null) {
            here = places.apply(next);
            cursor = here;
        } else {
            here.moveOn();
        }
        SweepResult<D, R> result = SweepResult.of(next, here.settings(), here.made(), question);
        next++;
        if (countdown != null) {
            countdown.count();
        }
        action.accept(result);
        return true;
    }

    @Override
    public @Nullable Spliterator<SweepResult<D, R>> trySplit() {
        long middle = next + (end - next) / 2;
        if (middle <= next) {
            return null;
        }
        SweepSpliterator<D, R> before = new SweepSpliterator<>(places, question, countdown, next, middle);
        next = middle;
        cursor = null;
        return before;
    }

    @Override
    public long estimateSize() {
        return end - next;
    }

    @Override
    public int characteristics() {
        return ORDERED | SIZED | SUBSIZED | IMMUTABLE | NONNULL;
    }
}
