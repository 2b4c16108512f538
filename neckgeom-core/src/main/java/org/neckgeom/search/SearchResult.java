package org.neckgeom.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.LengthStyle;

/**
 * The result of a {@link Search}: the best design or the front of them, what binds there and what easing it would gain; or,
 * where no design keeps every limit, the nearest miss and which limits were broken. Immutable when designs are.
 *
 * @param <D> the kind of design
 */
public final class SearchResult<D> extends ValueAnswer {

    private static final int MOST_SHOWN = 4;
    private static final int MOST_OF_THE_FRONT = 6;

    /** How many designs were asked, and how the search went. */
    record Counts(int asked, int refused, String reason, boolean whole, boolean stopped) {}

    private static final Form<Map.Entry<String, Long>> BROKEN = Form.<Map.Entry<String, Long>>of("search-broken")
            .fact("limit", Kind.NAME, "its name, the code of a check", Map.Entry::getKey)
            .fact("designs", Kind.WHOLE, "how many did not keep it", Map.Entry::getValue)
            .finds("broken", "{limit} by {designs}");

    private static final Form<SearchResult<?>> FORM = Form.<SearchResult<?>>of("search-result")
            .fact("asked", Kind.WHOLE, "designs made and asked", SearchResult::asked)
            .fact("refused", Kind.WHOLE, "designs that could not be made or asked", SearchResult::refused)
            .factIfAny("reason", Kind.NAME, "why the first was refused", SearchResult::reason)
            .fact("whole", Kind.FLAG, "whether every design there is was asked", x -> x.counts.whole())
            .fact("stopped", Kind.FLAG, "whether it was stopped before its end", SearchResult::isStopped)
            .factIfAny("best", Kind.answer(SearchPoint.FORM), "keeps every limit", SearchResult::best)
            .factIfAny(
                    "nearest", Kind.answer(SearchPoint.FORM), "the nearest miss where none does", SearchResult::nearest)
            .fact("front", Kind.table(SearchPoint.FORM), "of several aims", x -> List.copyOf(x.front))
            .fact("count", Kind.WHOLE, "designs of the front", x -> x.front.size())
            .fact("prices", Kind.table(SearchPrice.FORM), "of the limits that bind at the best", SearchResult::prices)
            .fact(
                    "broken",
                    Kind.shortList(Kind.answer(BROKEN)),
                    "by how many designs each limit was",
                    x -> List.copyOf(x.brokenBy.entrySet()))
            .fact("settings", Kind.table(SearchPoint.SETTING), "of the best or nearest", SearchResult::shownSettings)
            .fact("margins", Kind.table(SearchMargin.FORM), "of the nearest", SearchResult::missed)
            .fact("others", Kind.table(SearchPoint.FORM), "the front where it has several", SearchResult::several)
            .finds("best", x -> x.front.size() == 1, "{best:finding} after {asked:of design/designs}")
            .finds(
                    "front",
                    x -> x.front.size() > 1,
                    "front of {count:of design/designs} after {asked:of design/designs}")
            .finds("none", x -> x.nearest().isPresent(), "none of {asked:of design/designs} keeps every limit")
            .finds("refused", "none of {asked:of design/designs} could be made or asked")
            .line("compromise", "compromise", x -> x.front.size() > 1, "{best:finding}")
            .each("settings", "{name}", "{value:cut 60}", 8, "")
            .each("others", "front", "{aims}", MOST_OF_THE_FRONT, "and {more} more in front()")
            .each("prices", "binds", "{limit} {how}: {gains}", MOST_SHOWN, "")
            .each("margins", "missed", "{limit}: {measured}", MOST_SHOWN, "")
            .line("broken", "broken", x -> x.nearest().isPresent(), "{broken}")
            .line("refused", "refused", "{refused}, the first: {reason:cut 200}")
            .note("stopped", SearchResult::isStopped, "stopped before its end");

    private final Counts counts;
    private final Optional<SearchPoint<D>> nearest;
    private final List<SearchPoint<D>> front;
    private final List<SearchPrice> prices;
    private final Map<String, Long> brokenBy;

    SearchResult(
            Counts counts,
            Optional<SearchPoint<D>> nearest,
            List<SearchPoint<D>> front,
            List<SearchPrice> prices,
            Map<String, Long> brokenBy,
            LengthStyle style) {
        super(FORM, style);
        this.counts = counts;
        this.nearest = nearest;
        this.front = List.copyOf(front);
        this.prices = List.copyOf(prices);
        this.brokenBy = Collections.unmodifiableMap(new LinkedHashMap<>(brokenBy));
    }

    /** {@return how many designs were made and asked, those of the prices among them; 1 or more} */
    public int asked() {
        return counts.asked();
    }

    /** {@return how many could not be made or asked; 0 or more} */
    public int refused() {
        return counts.refused();
    }

    /** {@return whether the caller stopped it before its end; true when stopped} */
    public boolean isStopped() {
        return counts.stopped();
    }

    /**
     * {@return the best design that keeps every limit; nothing where none does} Of several aims it is that of the front
     * which is nearest to the least of every aim, each in its range along the front.
     */
    public Optional<SearchPoint<D>> best() {
        return nearest.filter(point -> !front.isEmpty());
    }

    /** {@return where no design keeps every limit, the one that misses least, each limit in its own scale; else nothing} */
    public Optional<SearchPoint<D>> nearest() {
        return nearest.filter(point -> front.isEmpty());
    }

    /**
     * {@return the Pareto front: designs of which none is better in every aim, in the order of the first aim; of one aim
     * the best; empty where no design keeps every limit}
     */
    public List<SearchPoint<D>> front() {
        return front;
    }

    /**
     * {@return the limits that bind at {@link #best}, with what easing each would gain; empty where none binds, or where the
     * search was stopped before}
     */
    public List<SearchPrice> prices() {
        return prices;
    }

    /** {@return how many of the designs asked did not keep each limit, by its name, unmodifiable; refused ones do not count} */
    public Map<String, Long> brokenBy() {
        return brokenBy;
    }

    /** The points a later search may start from. */
    List<SearchPoint<D>> found() {
        List<SearchPoint<D>> all = new ArrayList<>(front);
        nearest.filter(point -> !all.contains(point)).ifPresent(all::add);
        return all;
    }

    private Optional<String> reason() {
        return refused() > 0 ? Optional.of(counts.reason()) : Optional.empty();
    }

    private List<Map.Entry<String, Object>> shownSettings() {
        return nearest.map(point -> List.copyOf(point.settings().entrySet())).orElse(List.of());
    }

    private List<SearchMargin> missed() {
        return nearest().stream()
                .flatMap(point -> point.margins().stream())
                .filter(margin -> !margin.isKept())
                .toList();
    }

    private List<SearchPoint<?>> several() {
        return front.size() > 1 ? List.copyOf(front) : List.of();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {counts, nearest, front, prices, brokenBy};
    }
}
