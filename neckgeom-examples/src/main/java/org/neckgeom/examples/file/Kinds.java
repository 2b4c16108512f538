package org.neckgeom.examples.file;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.neckgeom.text.Nearest;
import org.neckgeom.text.Words;

/** The kinds of value that need no unit: words, numbers that count, lists. */
public final class Kinds {

    private static final int LONGEST_TEXT = 200;
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");
    private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d{1,9}(\\.\\d{1,12})?");

    private Kinds() {}

    /**
     * A text on one line, such as a name.
     *
     * @return the kind
     */
    public static Kind<String> text() {
        String allowed = "a text of at most " + LONGEST_TEXT + " characters on one line";
        return new TextKind<>(
                allowed,
                text -> {
                    if (text.length() > LONGEST_TEXT || !Words.isLine(text)) {
                        throw new IllegalArgumentException("but must be " + allowed);
                    }
                    return text;
                },
                Fragment.of("type", List.of("string", "number"), "maxLength", LONGEST_TEXT));
    }

    /**
     * A whole number.
     *
     * @param least the smallest allowed
     * @param most the largest allowed
     * @return the kind
     */
    public static Kind<Integer> wholeNumber(int least, int most) {
        String allowed = "a whole number from " + least + " to " + most;
        return new TextKind<>(
                allowed,
                text -> {
                    if (!WHOLE.matcher(text).matches()) {
                        throw new IllegalArgumentException("but must be " + allowed);
                    }
                    int number = Integer.parseInt(text);
                    if (number < least || number > most) {
                        throw new IllegalArgumentException("but must be " + allowed);
                    }
                    return number;
                },
                Fragment.of("type", "integer", "minimum", least, "maximum", most));
    }

    /**
     * A number without a unit, such as the exponent of a curve. A decimal point only.
     *
     * @param least the smallest allowed
     * @param most the largest allowed
     * @return the kind
     */
    public static Kind<Double> number(double least, double most) {
        String allowed = "a number from " + plain(least) + " to " + plain(most) + " without a unit";
        return new TextKind<>(
                allowed,
                text -> {
                    double number = DECIMAL.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
                    if (!(number >= least && number <= most)) {
                        throw new IllegalArgumentException("but must be " + allowed);
                    }
                    return number + 0.0;
                },
                Fragment.of(
                        "type",
                        "number",
                        "minimum",
                        new BigDecimal(plain(least)),
                        "maximum",
                        new BigDecimal(plain(most))));
    }

    /**
     * Yes or no.
     *
     * @return the kind
     */
    public static Kind<Boolean> yesOrNo() {
        Map<String, Boolean> meanings = new LinkedHashMap<>();
        meanings.put("yes", true);
        meanings.put("no", false);
        return choice(meanings);
    }

    /**
     * One of some words, written exactly so.
     *
     * @param <T> what a word stands for
     * @param meanings what each word stands for; listed in the map's order
     * @return the kind
     */
    public static <T> Kind<T> choice(Map<String, T> meanings) {
        List<String> words = List.copyOf(meanings.keySet());
        String allowed = words.size() == 1 ? "the word " + words.get(0) : "one of " + String.join(", ", words);
        Map<String, T> copy = new LinkedHashMap<>(meanings);
        return new TextKind<>(
                allowed,
                text -> {
                    T meaning = copy.get(text);
                    if (meaning == null) {
                        throw new IllegalArgumentException("but must be " + allowed + Nearest.question(text, words));
                    }
                    return meaning;
                },
                Fragment.of("type", "string", "enum", words));
    }

    /**
     * A list of values of one kind.
     *
     * @param <T> the type of an item
     * @param item the kind of each item
     * @param fewest the fewest items allowed
     * @param most the most items allowed
     * @return the kind
     */
    public static <T> Kind<List<T>> listOf(Kind<T> item, int fewest, int most) {
        return new ListKind<>(item, fewest, most);
    }

    /**
     * One value, or a list of values of the same kind: a wall read once, or several times.
     *
     * @param <T> the type of an item
     * @param item the kind of each item
     * @param most the most items allowed
     * @return the kind
     */
    public static <T> Kind<List<T>> oneOrMore(Kind<T> item, int most) {
        return new OneOrMoreKind<>(item, listOf(item, 1, most));
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
