package org.neckgeom.plan;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.neckgeom.fault.Refusal;

/** Checks and finds the names a maker gives to conditions, operations and remedies. */
final class Names {

    private static final int LONGEST = 50;
    private static final int LONGEST_SENTENCE = 100;
    private static final int LONGEST_LIST = 120;
    private static final int FARTHEST_GUESS = 4;

    private Names() {}

    /** Returns the name without spaces around it, or refuses it: 1 to 50 characters on one line. */
    static String checked(String name, String what) {
        return checked(name, what, LONGEST);
    }

    /** Returns the words without spaces around them, or refuses them: 1 to 100 characters on one line. */
    static String sentence(String words, String what) {
        return checked(words, what, LONGEST_SENTENCE);
    }

    private static String checked(String text, String what, int longest) {
        String trimmed = Objects.requireNonNull(text, what).strip();
        boolean isOneLine = trimmed.chars().noneMatch(Character::isISOControl);
        if (trimmed.isEmpty() || trimmed.length() > longest || !isOneLine) {
            throw Refusal.of(
                    what, "range", "be 1 to " + longest + " characters on one line", "\"" + brief(text) + "\"");
        }
        return trimmed;
    }

    /** Returns the exception for a name that is not among the known ones, with the nearest known one if it is near. */
    static IllegalArgumentException unknown(String name, String what, Collection<String> known) {
        List<String> near = known.stream()
                .filter(other -> distance(name, other) <= FARTHEST_GUESS)
                .sorted(Comparator.<String>comparingInt(other -> distance(name, other))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        String guess = near.isEmpty() ? "" : "; did you mean \"" + near.get(0) + "\"?";
        return Refusal.of(what, "unknown", "be one that this order of work has", "\"" + brief(name) + "\"" + guess);
    }

    /** Returns the names as one phrase: {@code a, b and c}. */
    static String phrase(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** Returns the names parted by commas, as many as fit a line or two, and the count of the rest. */
    static String shortList(List<String> names) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < names.size(); i++) {
            if (out.length() + names.get(i).length() > LONGEST_LIST) {
                return out + " and " + (names.size() - i) + " more";
            }
            out.append(i == 0 ? "" : ", ").append(names.get(i));
        }
        return out.toString();
    }

    /** Copies a list that must have no hole, or says which list has one. */
    static <T> List<T> all(List<T> list, String what) {
        Objects.requireNonNull(list, what).forEach(element -> Objects.requireNonNull(element, what));
        return List.copyOf(list);
    }

    /** The same of what a caller told one after the other. */
    static <T> List<T> all(T[] told, String what) {
        return all(Arrays.asList(Objects.requireNonNull(told, what)), what);
    }

    private static String brief(String name) {
        return Objects.requireNonNull(name, "name").length() <= LONGEST ? name : name.substring(0, LONGEST) + "...";
    }

    /** Returns how many letters must be put in, left out or changed to make one name the other. */
    private static int distance(String one, String other) {
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
