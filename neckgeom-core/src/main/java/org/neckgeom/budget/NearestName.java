package org.neckgeom.budget;

import java.util.Collection;
import java.util.Locale;

/** The known name that a mistyped one is nearest to: the fewest letters put in, taken out or changed (Levenshtein). */
final class NearestName {

    private NearestName() {}

    /** The nearest name, or the empty text where more than a third of the letters would have to change. */
    static String of(String typed, Collection<String> known) {
        String nearest = "";
        int least = Math.max(typed.length() / 3, 1) + 1;
        for (String name : known) {
            int changes = changes(typed.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
            if (changes < least) {
                least = changes;
                nearest = name;
            }
        }
        return nearest;
    }

    private static int changes(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int changed = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[other.length()];
    }
}
