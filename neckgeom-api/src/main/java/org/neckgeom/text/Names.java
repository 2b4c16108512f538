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
                .filter(other -> distance(name, other) <= FARTHEST_GUESS)
                .sorted(Comparator.<String>comparingInt(other -> distance(name, other))
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
     * Copies a list that must have no hole, or says which list has one.
     *
     * @param list the list
     * @param what what each of it is
     * @param <T> what it holds
     * @return an unmodifiable copy
     */
    public static <T> List<T> all(List<T> list, String what) {
        Objects.requireNonNull(list, what).forEach(element -> Objects.requireNonNull(element, what));
        return List.copyOf(list);
    }

    /**
     * Copies what a caller gave one after the other, or says which list has a hole.
     *
     * @param given each of them not null
     * @param what what each of them is
     * @param <T> what it holds
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
        String words =
                Objects.requireNonNull(name, "name").toLowerCase(Locale.ROOT).replace("'", "");
        String code = words.replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return code.isEmpty() ? name : code;
    }

    private static String brief(String name) {
        String cut =
                Objects.requireNonNull(name, "name").length() <= LONGEST ? name : name.substring(0, LONGEST) + "...";
        return Words.shown(cut);
    }

    /**
     * {@return how many letters must be put in, left out or changed to make one name the other}
     *
     * @param one a name
     * @param other another
     */
    public static int distance(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int changed = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[other.length()];
    }
}
