package org.neckgeom.search;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * What a binding limit costs ({@index "shadow price"}): the gain in the aims when this limit alone is eased by one of its
 * units. Immutable.
 *
 * <p>The gain is a finite difference: the search is run again from the best design with the eased limit, over the same
 * variables, steps and all. A limit without a figure is left out instead.
 */
public final class SearchPrice extends ValueAnswer {

    private static final Form<Map.Entry<String, Amount<?>>> GAIN = Form.<Map.Entry<String, Amount<?>>>of("search-gain")
            .fact("aim", Kind.NAME, "its name", Map.Entry::getKey)
            .fact("gain", Kind.AMOUNT, "how much better, 0 or more", Map.Entry::getValue)
            .finds("gain", "{aim} {gain} better");

    static final Form<SearchPrice> FORM = Form.<SearchPrice>of("search-price")
            .fact("limit", Kind.NAME, "its name, the code of a check", SearchPrice::limit)
            .factIfAny("easedBy", Kind.AMOUNT, "one unit of the limit; nothing: left out", SearchPrice::easedBy)
            .fact("gains", Kind.shortList(Kind.answer(GAIN)), "in each aim", x -> List.copyOf(x.gains.entrySet()))
            .phrase("how", "eased by {easedBy}")
            .phrase("how", "left out")
            .finds("price", "{limit} {how}: {gains}");

    private final String limit;
    private final Optional<Amount<?>> easedBy;
    private final Map<String, Amount<?>> gains;

    SearchPrice(String limit, Optional<Amount<?>> easedBy, Map<String, Amount<?>> gains, LengthStyle style) {
        super(FORM, style);
        this.limit = limit;
        this.easedBy = easedBy;
        this.gains = Collections.unmodifiableMap(new LinkedHashMap<>(gains));
    }

    /** {@return the limit that binds; its name, the code of a check} */
    public String limit() {
        return limit;
    }

    /** {@return by how much it was eased; one unit of the limit, nothing where it was left out} */
    public Optional<Amount<?>> easedBy() {
        return easedBy;
    }

    /** {@return how much better each aim gets by its name, unmodifiable; 0 or more, of several aims none gets worse} */
    public Map<String, Amount<?>> gains() {
        return gains;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {limit, easedBy, gains};
    }
}
