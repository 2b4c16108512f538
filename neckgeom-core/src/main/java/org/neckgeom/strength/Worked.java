package org.neckgeom.strength;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.neckgeom.kernel.Once;

/**
 * What has been worked out for a strung neck and rests on no reading of it, kept so that one more reading costs little. It follows
 * from the neck, so that it is no part of what makes two answers equal: any two are.
 */
final class Worked {

    private final Map<Object, MadeNeck.Effects> effects = new ConcurrentHashMap<>();
    private final Map<Object, Straightedge> laid = new ConcurrentHashMap<>();
    private final Map<Object, List<double[]>> found = new ConcurrentHashMap<>();
    private final Supplier<MadeNeck> made;

    Worked(Supplier<MadeNeck> made) {
        this.made = new Once<>(made);
    }

    /** The beam with its load, worked out at the first call. */
    MadeNeck made() {
        return made.get();
    }

    /** An answer under a name of its own, worked out at the first call. */
    MadeNeck.Effects effects(Object name, Supplier<MadeNeck.Effects> answer) {
        MadeNeck.Effects known = effects.get(name);
        if (known == null) {
            known = answer.get();
            effects.put(name, known);
        }
        return known;
    }

    /** The straightedge on the neck under a name of its own, laid at the first call. */
    Straightedge laid(Object name, Supplier<Straightedge> answer) {
        return laid.computeIfAbsent(name, absent -> answer.get());
    }

    /** Intervals under a name of their own, worked out at the first call. */
    List<double[]> found(Object name, Supplier<List<double[]>> answer) {
        return found.computeIfAbsent(name, absent -> answer.get());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Worked;
    }

    @Override
    public int hashCode() {
        return 0;
    }
}
