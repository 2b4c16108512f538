package org.neckgeom.table;

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
        StringBuilder camel = new StringBuilder(words.length());
        boolean isNewWord = false;
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            boolean isBetween = c == ' ' || c == '-';
            if (!isBetween) {
                camel.append(isNewWord ? Character.toUpperCase(c) : c);
            }
            isNewWord = isBetween;
        }
        return camel.toString();
    }
}
