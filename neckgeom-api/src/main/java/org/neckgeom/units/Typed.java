package org.neckgeom.units;

/** Replaces the characters that phones and word processors insert by the plain ones that were typed. */
final class Typed {

    private Typed() {}

    /** The text with its spaces, minus signs and primes as a keyboard has them; the same object where it has no other. */
    static String plain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (plain(text.charAt(i)) != text.charAt(i)) {
                StringBuilder plain = new StringBuilder(text);
                for (int k = i; k < text.length(); k++) {
                    plain.setCharAt(k, plain(text.charAt(k)));
                }
                return plain.toString();
            }
        }
        return text;
    }

    private static char plain(char c) {
        return switch (c) {
            case '\u2212' -> '-'; // minus
            case '\u2033', '\u201D' -> '"'; // double prime, closing quotes
            case '\u2032', '\u2019' -> '\''; // prime, apostrophe
            default -> c == '\t' || Character.getType(c) == Character.SPACE_SEPARATOR ? ' ' : c;
        };
    }
}
