package org.neckgeom.text;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.neckgeom.fault.Refusal;

/** Checks and finds the names a maker gives to conditions, operations and remedies. */
public final class Names {

    private static final int LONGEST = 50;
    private static final int LONGEST_SENTENCE = 100;
    private static final int LONGEST_LIST = 120;
    private static final int FARTHEST_GUESS = 4;

    private Names() {}

    /**
     * {@return words as a sentence begins; the first letter a capital}
     *
     * @param words one letter or more
     */
    public static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /**
     * {@return the name without spaces around it, or refuses it: 1 to 50 characters on one line}
     *
     * @param name as it was given
     * @param what what the name is of
     */
    public static String checked(String name, String what) {
        return checked(name, what, LONGEST);
    }

    /**
     * {@return the words without spaces around them, or refuses them: 1 to 100 characters on one line}
     *
     * @param words as they were given
     * @param what what the words are
     */
    public static String sentence(String words, String what) {
        return checked(words, what, LONGEST_SENTENCE);
    }

    private static String checked(String text, String what, int longest) {
        String trimmed = Objects.requireNonNull(text, what).strip();
        return Words.line(trimmed.isEmpty() ? text : trimmed, what, longest);
    }

    /**
     * {@return the exception for a name that is not among the known ones, with the nearest known one if it is near; not
     * thrown}
     *
     * @param name as it was given
     * @param what what the name is of
     * @param known the names there are
     */
    public static IllegalArgumentException unknown(String name, String what, Collection<String> known) {
        List<String> near = known.stream()
                .filter(other -> Nearest.slips(name, other) <= FARTHEST_GUESS)
                .sorted(Comparator.<String>comparingInt(other -> Nearest.slips(name, other))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        String guess = near.isEmpty() ? "" : "; did you mean \"" + near.get(0) + "\"?";
        return Refusal.of(what, "unknown", "be one that this order of work has", "\"" + brief(name) + "\"" + guess);
    }

    /**
     * {@return the names as one phrase: {@code a, b and c}}
     *
     * @param names any number
     */
    public static String phrase(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /**
     * {@return the names parted by commas, as many as fit a line or two, and the count of the rest}
     *
     * @param names any number
     */
    public static String shortList(List<String> names) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < names.size(); i++) {
            if (out.length() + names.get(i).length() > LONGEST_LIST) {
                return out + " and " + (names.size() - i) + " more";
            }
            out.append(i == 0 ? "" : ", ").append(names.get(i));
        }
        return out.toString();
    }

    /**
     * Copies a list; throws if an element is null, and names the list.
     *
     * @param list the list
     * @param what what each of it is
     * @param <T> the type of its elements
     * @return an unmodifiable copy
     */
    public static <T> List<T> all(List<T> list, String what) {
        Objects.requireNonNull(list, what).forEach(element -> Objects.requireNonNull(element, what));
        return List.copyOf(list);
    }

    /**
     * Copies a caller's arguments to a list; throws if one is null, and names the list.
     *
     * @param given each of them not null
     * @param what what each of them is
     * @param <T> the type of its elements
     * @return an unmodifiable copy
     */
    public static <T> List<T> all(T[] given, String what) {
        return all(Arrays.asList(Objects.requireNonNull(given, what)), what);
    }

    /**
     * {@return a name as a code, such as {@code cut-rod-channel} for {@code cut rod channel}; its letters and digits in
     * lower case, words parted by hyphens; the name itself where it has neither}
     *
     * @param name in words
     */
    public static String code(String name) {
        String words = Objects.requireNonNull(name, "name").toLowerCase(Locale.ROOT);
        StringBuilder code = new StringBuilder(words.length());
        boolean parted = false;
        for (int i = 0; i < words.length(); i += Character.charCount(words.codePointAt(i))) {
            int c = words.codePointAt(i);
            if (isOfAWord(c)) {
                code.append(parted && code.length() > 0 ? "-" : "").appendCodePoint(c);
                parted = false;
            } else if (c != '\'') {
                parted = true;
            }
        }
        return code.isEmpty() ? name : code.toString();
    }

    /** Letters, marks on them, numbers: the first categories of Unicode, in the order that Java counts them in. */
    private static boolean isOfAWord(int c) {
        int category = Character.getType(c);
        return category >= Character.UPPERCASE_LETTER && category <= Character.OTHER_NUMBER;
    }

    private static String brief(String name) {
        String cut =
                Objects.requireNonNull(name, "name").length() <= LONGEST ? name : name.substring(0, LONGEST) + "...";
        return Words.shown(cut);
    }
}
