package org.neckgeom.sweep;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * How many designs of a sweep will do, and between which values of its axes they lie. Immutable.
 *
 * <p>The ranges are those of the axes one by one: not every design inside all of them must do.
 *
 * @param <D> the kind of design
 */
public final class SweepSummary<D> implements SaysLengths<SweepSummary<D>> {

    private static final int MOST_ROWS = 8;
    private static final int MOST_REASON_CHARACTERS = 200;
    private static final int MOST_CHOICES = 3;

    private final long asked;
    private final long kept;
    private final long refused;
    private final Map<String, Range> ranges;
    private final @Nullable SweepResult<D, Boolean> first;
    private final String reason;

    private SweepSummary(Tally<D> tally) {
        this.asked = tally.asked;
        this.kept = tally.kept;
        this.refused = tally.refused;
        this.ranges = Collections.unmodifiableMap(tally.ranges);
        this.first = tally.first;
        this.reason = tally.reason;
    }

    private SweepSummary(SweepSummary<D> other, LengthStyle style) {
        this.asked = other.asked;
        this.kept = other.kept;
        this.refused = other.refused;
        Map<String, Range> said = new LinkedHashMap<>(other.ranges);
        said.replaceAll((name, range) -> range.in(style));
        this.ranges = Collections.unmodifiableMap(said);
        this.first = other.first == null ? null : other.first.in(style);
        this.reason = other.reason;
    }

    /** The values of an axis that did: from the least to the greatest of a quantity, or the choices in their order. */
    private record Range(List<Object> values) {

        static Range of(Object value) {
            return new Range(List.of(value));
        }

        Range with(Range other) {
            if (values.containsAll(other.values)) {
                return this;
            }
            return values.get(0) instanceof Amount<?> ? widerBy(other) : longerBy(other);
        }

        private Range widerBy(Range other) {
            Comparator<Object> order = Comparator.comparingDouble(value -> ((Amount<?>) value).house());
            Object least = Stream.concat(values.stream(), other.values.stream())
                    .min(order)
                    .orElseThrow();
            Object greatest = Stream.concat(values.stream(), other.values.stream())
                    .max(order)
                    .orElseThrow();
            return new Range(List.of(least, greatest));
        }

        private Range longerBy(Range other) {
            return new Range(Stream.concat(values.stream(), other.values.stream())
                    .distinct()
                    .toList());
        }

        Range in(LengthStyle style) {
            return new Range(
                    values.stream().map(value -> Shown.in(style, value)).toList());
        }

        @Override
        public String toString() {
            if (values.get(0) instanceof Amount<?>) {
                return values.stream().distinct().map(Shown::brief).collect(Collectors.joining(" to "));
            }
            String shown = values.stream().limit(MOST_CHOICES).map(Shown::brief).collect(Collectors.joining(", "));
            return values.size() <= MOST_CHOICES ? shown : shown + " and " + (values.size() - MOST_CHOICES) + " more";
        }
    }

    /** Counts on the way; one for each part of a parallel stream. */
    private static final class Tally<D> {
        private long asked;
        private long kept;
        private long refused;
        private final Map<String, Range> ranges = new LinkedHashMap<>();
        private @Nullable SweepResult<D, Boolean> first;
        private String reason = "";

        void add(SweepResult<D, Boolean> result) {
            asked++;
            if (result.answer().isEmpty()) {
                refused++;
                reason = reason.isEmpty() ? result.refusal() : reason;
            } else if (result.answer().get()) {
                kept++;
                first = first == null ? result : first;
                result.settings().forEach((name, value) -> ranges.merge(name, Range.of(value), Range::with));
            }
        }

        /** The other part comes later in the sweep. */
        Tally<D> with(Tally<D> other) {
            asked += other.asked;
            kept += other.kept;
            refused += other.refused;
            first = first == null ? other.first : first;
            reason = reason.isEmpty() ? other.reason : reason;
            other.ranges.forEach((name, range) -> ranges.merge(name, range, Range::with));
            return this;
        }
    }

    static <D> Collector<SweepResult<D, Boolean>, ?, SweepSummary<D>> collector() {
        return Collector.of(Tally<D>::new, Tally::add, Tally::with, SweepSummary::new);
    }

    /**
     * Returns how many designs were asked.
     *
     * @return 1 or more
     */
    public long asked() {
        return asked;
    }

    /**
     * Returns how many will do.
     *
     * @return 0 or more
     */
    public long kept() {
        return kept;
    }

    /**
     * Returns how many could not be made or asked.
     *
     * @return 0 or more
     */
    public long refused() {
        return refused;
    }

    /**
     * Returns the first design that will do.
     *
     * @return its result, or nothing when none will
     */
    public Optional<SweepResult<D, Boolean>> first() {
        return Optional.ofNullable(first);
    }

    /** Returns the same with ranges and first design said in a style; the first refusal keeps its words. */
    @Override
    public SweepSummary<D> in(LengthStyle style) {
        return new SweepSummary<>(this, Objects.requireNonNull(style, "style"));
    }

    /** True for the same counts, ranges and first design. */
    @Override
    public boolean equals(Object obj) {
        return obj instanceof SweepSummary<?> other
                && asked == other.asked
                && kept == other.kept
                && refused == other.refused
                && ranges.equals(other.ranges)
                && Objects.equals(first, other.first)
                && reason.equals(other.reason);
    }

    @Override
    public int hashCode() {
        return Objects.hash(asked, kept, refused, ranges, first, reason);
    }

    /** Returns the counts, then the values of each axis between which designs will do. */
    @Override
    public String toString() {
        Report report = Report.titled(kept + " of " + asked + " designs will do");
        ranges.entrySet().stream().limit(MOST_ROWS).forEach(range -> report.row(range.getKey(), range.getValue()));
        if (refused > 0) {
            String why = reason.length() <= MOST_REASON_CHARACTERS
                    ? reason
                    : reason.substring(0, MOST_REASON_CHARACTERS) + "...";
            report.row("refused", refused + ", the first: " + why);
        }
        return report.toString();
    }
}
