package org.neckgeom.kernel;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * An answer worked out when it is first asked for, and kept. The question must be pure and its answer immutable: threads
 * that ask together may each work it out, to the same answer.
 */
public final class Once<T> implements Supplier<T> {

    private final Supplier<T> question;
    private volatile @Nullable T answer;

    public Once(Supplier<T> question) {
        this.question = question;
    }

    @Override
    public T get() {
        T known = answer;
        if (known == null) {
            known = question.get();
            answer = known;
        }
        return known;
    }
}
