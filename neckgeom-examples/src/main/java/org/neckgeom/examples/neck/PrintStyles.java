package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.neckgeom.units.LengthStyle;

/** What makers call the styles in which lengths are printed, in a neck file and on the command line. */
public final class PrintStyles {

    private static final Map<String, LengthStyle> WORDS = words();

    private PrintStyles() {}

    private static Map<String, LengthStyle> words() {
        Map<String, LengthStyle> words = new LinkedHashMap<>();
        words.put("mm", LengthStyle.MILLIMETRES);
        words.put("inch", LengthStyle.DECIMAL_INCHES);
        words.put("fractions", LengthStyle.INCH_FRACTIONS);
        return words;
    }

    /**
     * Returns every style by its word.
     *
     * @return mm, inch, fractions
     */
    static Map<String, LengthStyle> all() {
        return WORDS;
    }

    /**
     * Returns the word of a style.
     *
     * @param style one of the styles
     * @return such as {@code fractions}
     */
    public static String word(LengthStyle style) {
        return WORDS.entrySet().stream()
                .filter(word -> word.getValue() == style)
                .findFirst()
                .orElseThrow()
                .getKey();
    }

    /**
     * Returns the style of a word.
     *
     * @param word such as {@code fractions}
     * @return the style, or nothing for another word
     */
    public static Optional<LengthStyle> named(String word) {
        return Optional.ofNullable(WORDS.get(word));
    }
}
