package org.neckgeom.template;

import java.text.Normalizer;

/**
 * How wide words are in the letters of the printed pages. The widths are those of Helvetica, which the common sans-serif fonts
 * share: a letter with an accent is as wide as without, any other that is not in the table counts as the widest.
 */
final class LetterWidths {

    /** Size of a font whose capitals are 1 high. */
    static final double FONT = 1.3;

    private static final int FIRST = ' ';
    private static final int WIDEST = 1015;

    /** In thousandths of the font's size, from the space on: Helvetica's metrics; a test compares them with a font's. */
    private static final int[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
                556,
        556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556,
                833,
        722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500,
                556,
        556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500,
                334,
        260, 334, 584
    };

    private LetterWidths() {}

    /** Returns the width in mm of words whose capitals are so high. */
    static double mm(String words, double capital) {
        return mm(thousandths(words), capital);
    }

    /** Returns the same of words so many thousandths of the font's size wide. */
    static double mm(int thousandths, double capital) {
        return thousandths / 1000.0 * FONT * capital;
    }

    /** Returns the width of words in thousandths of the font's size. */
    static int thousandths(String words) {
        int all = 0;
        for (int i = 0; i < words.length(); i += Character.charCount(words.codePointAt(i))) {
            all += thousandths(words.codePointAt(i));
        }
        return all;
    }

    /** Whether words have letters, all of them in the table. */
    static boolean areKnown(String words) {
        return !words.isEmpty() && words.codePoints().allMatch(LetterWidths::isKnown);
    }

    private static boolean isKnown(int letter) {
        return isInTable(plain(letter));
    }

    private static boolean isInTable(int letter) {
        return letter >= FIRST && letter < FIRST + WIDTHS.length;
    }

    /** Without its accent; an i with an accent on it is as wide as an I. */
    private static int plain(int letter) {
        if (isInTable(letter)) {
            return letter;
        }
        int base = Normalizer.normalize(Character.toString(letter), Normalizer.Form.NFD)
                .codePointAt(0);
        return base == 'i' ? 'I' : base;
    }

    private static int thousandths(int letter) {
        int plain = plain(letter);
        return isInTable(plain) ? WIDTHS[plain - FIRST] : WIDEST;
    }
}
