package org.neckgeom.sweep;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collector;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;

/**
 * How many designs of a sweep will do, and between which values of its axes they lie. Immutable.
 *
 * <p>The ranges are those of the axes one by one: not every design inside all of them must do.
 *
 * @param <D> the kind of design
 */
public final class SweepSummary<D> extends ValueAnswer {

    private static final int MOST_CHOICES = 3;

    private static final Form<SweepSummary<?>> FORM = Form.<SweepSummary<?>>of("sweep-summary")
            .fact("asked", Kind.WHOLE, "designs", SweepSummary::asked)
            .fact("kept", Kind.WHOLE, "designs that will do", SweepSummary::kept)
            .fact("refused", Kind.WHOLE, "designs that could not be made or asked", SweepSummary::refused)
            .factIfAny("reason", Kind.NAME, "why the first was refused", SweepSummary::firstReason)
            .fact("ranges", Kind.table(Range.FORM), "of each axis", x -> List.copyOf(x.ranges.values()))
            .finds("kept", "{kept} of {asked} designs will do")
            .each("ranges", "{axis}", "{range}", 8, "")
            .line("refused", "refused", "{refused}, the first: {reason:cut 200}");

    private final long asked;
    private final long kept;
    private final long refused;
    private final Map<String, Range> ranges;
    private final @Nullable SweepResult<D, Boolean> first;
    private final String reason;

    private SweepSummary(Tally<D> tally) {
        super(
                FORM,
                SweepAxis.styleOf(
                        tally.ranges.values().stream()
                                .flatMap(range -> range.values.stream())
                                .toList(),
                        null));
        this.asked = tally.asked;
        this.kept = tally.kept;
        this.refused = tally.refused;
        this.ranges = Collections.unmodifiableMap(tally.ranges);
        this.first = tally.first;
        this.reason = tally.reason;
    }

    /** The values of an axis that did: from the least to the greatest of a quantity, or the choices in their order. */
    private record Range(String axis, List<Object> values) {

        static final Form<Range> FORM = Form.<Range>of("range")
                .fact("axis", Kind.NAME, "its name", Range::axis)
                .factIfAny("lower", Kind.AMOUNT, "least value that will do", Range::lower)
                .factIfAny("upper", Kind.AMOUNT, "greatest value that will do", Range::upper)
                .factIfAny("choices", Kind.list(Kind.ANY), "that will do", Range::choices)
                .factIfAny("others", Kind.WHOLE, "choices beyond three", Range::others)
                .phrase("range", range -> range.values.size() == 1, "{lower}")
                .phrase("range", "{lower} to {upper}")
                .phrase("range", "{choices:first 3 cut 60} and {others} more")
                .phrase("range", "{choices:cut 60}");

        Range with(Range other) {
            if (values.containsAll(other.values)) {
                return this;
            }
            return isAmount() ? widerBy(other) : longerBy(other);
        }

        private Range widerBy(Range other) {
            Comparator<Object> order = Comparator.comparingDouble(value -> ((Amount<?>) value).libraryValue());
            List<Object> all = both(other).sorted(order).toList();
            return new Range(axis, List.of(all.get(0), all.get(all.size() - 1)));
        }

        private Stream<Object> both(Range other) {
            return Stream.concat(values.stream(), other.values.stream());
        }

        private Range longerBy(Range other) {
            return new Range(axis, both(other).distinct().toList());
        }

        private boolean isAmount() {
            return values.get(0) instanceof Amount<?>;
        }

        Optional<Amount<?>> lower() {
            return isAmount() ? Optional.of((Amount<?>) values.get(0)) : Optional.empty();
        }

        Optional<Amount<?>> upper() {
            return isAmount() ? Optional.of((Amount<?>) values.get(values.size() - 1)) : Optional.empty();
        }

        Optional<List<Object>> choices() {
            return isAmount() ? Optional.empty() : Optional.of(values);
        }

        Optional<Integer> others() {
            return choices().map(List::size).filter(size -> size > MOST_CHOICES).map(size -> size - MOST_CHOICES);
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
                result.settings()
                        .forEach((name, value) -> ranges.merge(name, new Range(name, List.of(value)), Range::with));
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

    /** {@return how many designs were asked; 1 or more} */
    public long asked() {
        return asked;
    }

    /** {@return how many will do; 0 or more} */
    public long kept() {
        return kept;
    }

    /** {@return how many could not be made or asked; 0 or more} */
    public long refused() {
        return refused;
    }

    /** {@return the first design that will do; its result, or nothing when none will} */
    public Optional<SweepResult<D, Boolean>> first() {
        return Optional.ofNullable(first);
    }

    private Optional<String> firstReason() {
        return refused > 0 ? Optional.of(reason) : Optional.empty();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {asked, kept, refused, ranges, first(), reason};
    }
}
