package org.neckgeom.text;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known word nearest to one that is not known: for the slip of a finger, not for guessing. */
public final class Nearest {

    private Nearest() {}

    /**
     * {@return the known word with the fewest slips from the given one; the first of equals; empty when none is within
     * a third of the word's length}
     *
     * @param word the unknown word
     * @param known the words to choose from
     */
    public static Optional<String> to(String word, Collection<String> known) {
        String plain = plain(word);
        int most = Math.max(1, plain.length() / 3);
        String best = null;
        int fewest = most + 1;
        for (String candidate : known) {
            int slips = slips(plain, plain(candidate));
            if (slips < fewest) {
                best = candidate;
                fewest = slips;
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * {@return the nearest known word as a question to end a sentence with, such as {@code ; did you mean "length"?};
     * empty when none is near}
     *
     * @param word the unknown word
     * @param known the words to choose from
     */
    public static String question(String word, Collection<String> known) {
        return to(word, known).map(near -> "; did you mean \"" + near + "\"?").orElse("");
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ').strip();
    }

    /**
     * Slips from one word to another: letters added, left out, replaced, or two neighbours swapped (optimal string
     * alignment distance).
     */
    static int slips(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int replaced = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                d[i][j] = Math.min(replaced, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
