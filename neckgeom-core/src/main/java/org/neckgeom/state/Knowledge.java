package org.neckgeom.state;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.kernel.Once;
import org.neckgeom.text.Nearest;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/** Causes and readings, both sorted by name so that their order changes no bit, and what the readings make of the causes. */
final class Knowledge {

    private static final int MOST = 2_000;

    private final List<Cause> causes;
    private final List<NeckReading> readings;
    private final LengthStyle style;
    private final Map<String, Integer> places;
    private final Supplier<Solved> solved = new Once<>(() -> solved(cause -> 1.0));

    private Knowledge(List<Cause> causes, Map<String, Integer> places, List<NeckReading> readings, LengthStyle style) {
        this.causes = causes;
        this.places = places;
        this.readings = readings;
        this.style = style;
    }

    private static Knowledge of(List<Cause> causes, List<NeckReading> readings, LengthStyle style) {
        List<Cause> sorted = sorted(causes, Comparator.comparing(Cause::name));
        if (sorted.size() > MOST) {
            throw Refusal.of("causes", "at-most", "be " + MOST + " or fewer", sorted.size() + " were given");
        }
        Map<String, Integer> places = new HashMap<>();
        for (Cause cause : sorted) {
            if (places.put(cause.name(), places.size()) != null) {
                throw Refusal.of(
                        "causes", "once", "have different names", "", Words.quoted(cause.name()) + " was given twice");
            }
        }
        return new Knowledge(sorted, places, readings, style);
    }

    private static <T> List<T> sorted(List<T> some, Comparator<T> order) {
        return some.stream().sorted(order).toList();
    }

    static Knowledge of(List<Cause> causes, LengthStyle style) {
        return of(causes, List.of(), style);
    }

    Knowledge with(Cause cause) {
        return of(more(causes, Objects.requireNonNull(cause, "cause")), readings, style);
    }

    Knowledge read(NeckReading reading) {
        requireKnown(reading.of());
        int at = Collections.binarySearch(readings, reading, Comparator.comparing(NeckReading::name));
        if (at >= 0) {
            throw Refusal.of(
                    "readings",
                    "once",
                    "have different names",
                    "",
                    Words.quoted(reading.name())
                            + " was given twice; withdraw the first, or name the second otherwise");
        }
        List<NeckReading> more = new ArrayList<>(readings);
        more.add(-at - 1, reading);
        return new Knowledge(causes, places, List.copyOf(more), style);
    }

    private static <T> List<T> more(List<T> some, T one) {
        List<T> more = new ArrayList<>(some);
        more.add(one);
        return more;
    }

    Knowledge withdraw(String reading) {
        List<NeckReading> rest =
                readings.stream().filter(one -> !one.name().equals(reading)).toList();
        if (rest.size() == readings.size()) {
            throw Refusal.because(
                    "reading", "unknown", "there is no reading " + Words.quoted(reading) + " to withdraw");
        }
        return new Knowledge(causes, places, rest, style);
    }

    /** Before anything was read. */
    Knowledge unread() {
        return new Knowledge(causes, places, List.of(), style);
    }

    /** The same with the spread of every cause of a step times a factor. */
    Knowledge scaled(String step, double factor) {
        return of(
                causes.stream()
                        .map(one -> one.step().equals(step)
                                ? new Cause(one.name(), step, one.spread().scaled(factor), one.basis())
                                : one)
                        .toList(),
                readings,
                style);
    }

    List<Cause> causes() {
        return causes;
    }

    List<NeckReading> readings() {
        return readings;
    }

    LengthStyle style() {
        return style;
    }

    Cause cause(String name) {
        return causes.get(place(name));
    }

    int place(String name) {
        return Objects.requireNonNull(places.get(name));
    }

    Solved solved() {
        return solved.get();
    }

    /** As if the spread of each cause were so many times as wide. */
    Solved solved(ToDoubleFunction<Cause> factor) {
        double[] means = new double[causes.size()];
        double[] sds = new double[causes.size()];
        for (int i = 0; i < means.length; i++) {
            Cause cause = causes.get(i);
            means[i] = cause.spread().libraryMean();
            sds[i] = cause.sd() * factor.applyAsDouble(cause);
        }
        return new Solved(places, means, sds, readings);
    }

    void requireKnown(Deviation of) {
        for (String name : of.causes()) {
            if (!places.containsKey(name)) {
                throw Refusal.because(
                        "cause",
                        "unknown",
                        "the state of the neck has no cause " + Words.quoted(name)
                                + Nearest.to(
                                                name,
                                                causes.stream().map(Cause::name).toList())
                                        .map(nearest -> "; did you mean " + Words.quoted(nearest) + "?")
                                        .orElse(""));
            }
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Knowledge that && causes.equals(that.causes) && readings.equals(that.readings);
    }

    @Override
    public int hashCode() {
        return 31 * causes.hashCode() + readings.hashCode();
    }
}
