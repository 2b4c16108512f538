package org.neckgeom.search;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * A design that a {@link Search} found, with the value of each variable, its aims, and its margin to each limit. Immutable
 * when designs are.
 *
 * @param <D> the kind of design
 */
public final class SearchPoint<D> extends ValueAnswer {

    static final Form<Map.Entry<String, Object>> SETTING = Form.<Map.Entry<String, Object>>of("search-setting")
            .fact("name", Kind.NAME, "of the variable", Map.Entry::getKey)
            .fact("value", Kind.ANY, "of the variable", Map.Entry::getValue);

    private static final Form<Map.Entry<String, Amount<?>>> AIM = Form.<Map.Entry<String, Amount<?>>>of("search-aim")
            .fact("aim", Kind.NAME, "its name", Map.Entry::getKey)
            .fact("value", Kind.AMOUNT, "of the design", Map.Entry::getValue)
            .finds("aim", "{aim} {value}");

    static final Form<SearchPoint<?>> FORM = Form.<SearchPoint<?>>of("search-point")
            .fact("aims", Kind.shortList(Kind.answer(AIM)), "of the design", x -> List.copyOf(x.aims.entrySet()))
            .fact("keepsAll", Kind.FLAG, "whether every limit is kept", SearchPoint::keepsAll)
            .fact("settings", Kind.table(SETTING), "of each variable", x -> List.copyOf(x.settings.entrySet()))
            .fact("margins", Kind.table(SearchMargin.FORM), "to each limit", SearchPoint::margins)
            .finds("keeps-all", SearchPoint::keepsAll, "{aims}")
            .finds("breaks", "{aims}, outside a limit")
            .each("settings", "{name}", "{value:cut 60}", 8, "")
            .each("margins", "{limit}", "{state}", 8, "");

    private final Map<String, Object> settings;
    private final Map<String, Amount<?>> aims;
    private final List<SearchMargin> margins;
    private final D design;

    SearchPoint(
            Map<String, Object> settings,
            Map<String, Amount<?>> aims,
            List<SearchMargin> margins,
            D design,
            LengthStyle style) {
        super(FORM, style);
        this.settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
        this.aims = Collections.unmodifiableMap(new LinkedHashMap<>(aims));
        this.margins = List.copyOf(margins);
        this.design = design;
    }

    /** {@return the value of each variable by its name, in their order, unmodifiable; an Amount for a quantity} */
    public Map<String, Object> settings() {
        return settings;
    }

    /** {@return each aim by its name, in their order, unmodifiable} */
    public Map<String, Amount<?>> aims() {
        return aims;
    }

    /** {@return how far inside each limit it is, in the order of the limits, unmodifiable} */
    public List<SearchMargin> margins() {
        return margins;
    }

    /** {@return the design} */
    public D design() {
        return design;
    }

    /** {@return whether it keeps every limit; true when it does} */
    public boolean keepsAll() {
        return margins.stream().allMatch(SearchMargin::isKept);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {settings, aims, margins, design};
    }
}
