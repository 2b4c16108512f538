package org.neckgeom.budget;

import java.util.Collection;
import java.util.Locale;
import org.neckgeom.text.Names;

/** The known name that a mistyped one is nearest to: the fewest letters put in, taken out or changed (Levenshtein). */
final class NearestName {

    private NearestName() {}

    /** The nearest name, or the empty text where more than a third of the letters would have to change. */
    static String of(String typed, Collection<String> known) {
        String nearest = "";
        int least = Math.max(typed.length() / 3, 1) + 1;
        for (String name : known) {
            int changes = Names.distance(typed.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
            if (changes < least) {
                least = changes;
                nearest = name;
            }
        }
        return nearest;
    }
}
