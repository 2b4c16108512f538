package org.neckgeom.plan;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.ShopUnit;

/**
 * What a bench session asks to be read, such as {@code near wall, usually 22.5 to 32.5 mm}: with its code, its unit and
 * the range that it usually lies in. Immutable.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class BenchQuestion {

    private final String code;
    private final String words;
    private final @Nullable ShopUnit<?> unit;
    private final @Nullable Limits<?> usual;
    private final List<String> choices;
    private final boolean needed;

    private BenchQuestion(
            String code,
            String words,
            @Nullable ShopUnit<?> unit,
            @Nullable Limits<?> usual,
            List<String> choices,
            boolean needed) {
        this.code = code;
        this.words = words;
        this.unit = unit;
        this.usual = usual;
        this.choices = List.copyOf(choices);
        this.needed = needed;
    }

    static BenchQuestion of(String code, String words, ShopUnit<?> unit, Limits<?> usual) {
        return new BenchQuestion(code, words, unit, usual, List.of(), true);
    }

    static BenchQuestion choice(String code, String words, List<String> choices) {
        return new BenchQuestion(code, words, null, null, choices, true);
    }

    /** The same, which may be left out. */
    BenchQuestion notNeeded() {
        return new BenchQuestion(code, words, unit, usual, choices, false);
    }

    /** {@return what is read; lower case with hyphens, stable} */
    public String code() {
        return code;
    }

    /** {@return what is read, in words} */
    public String words() {
        return words;
    }

    /** {@return the unit in which a number without a unit is taken; nothing where a word is asked for} */
    public Optional<ShopUnit<?>> unit() {
        return Optional.ofNullable(unit);
    }

    /** {@return the range that the reading usually lies in; nothing where a word is asked for} */
    public Optional<Limits<?>> usual() {
        return Optional.ofNullable(usual);
    }

    /** {@return the words to choose from; none where a quantity is asked for} */
    public List<String> choices() {
        return choices;
    }

    /** {@return whether the step needs the answer; false where it may be left out} */
    public boolean isNeeded() {
        return needed;
    }

    /** True for a question of the same code, asked in the same words for the same range. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BenchQuestion that
                && code.equals(that.code)
                && words.equals(that.words)
                && unit().equals(that.unit())
                && usual().equals(that.usual())
                && choices.equals(that.choices)
                && needed == that.needed;
    }

    @Override
    public int hashCode() {
        return code.hashCode();
    }

    /** Returns such as {@code near wall, usually 22.5 to 32.5 mm}. */
    @Override
    public String toString() {
        return words
                + usual().map(range -> ", usually " + range).orElse("")
                + (choices.isEmpty() ? "" : ": " + String.join(" or ", choices))
                + (needed ? "" : " (may be left out)");
    }
}
