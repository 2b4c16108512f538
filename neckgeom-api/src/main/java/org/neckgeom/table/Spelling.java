package org.neckgeom.table;

import java.util.Locale;

/** How keys and quantities are written: as a maker writes them, or as programs do. Both are read everywhere. */
public enum Spelling {
    /** Keys in words, quantities as a text such as {@code 44.5 mm}: a neck file. */
    WORDS,

    /** Keys in camel case, quantities as objects of value and unit: JSON. */
    JSON;

    /** A key in this spelling. */
    String of(String words) {
        if (this == WORDS) {
            return words;
        }
        StringBuilder camel = new StringBuilder();
        for (String word : words.split("[ -]")) {
            camel.append(camel.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
        }
        return camel.toString();
    }
}
