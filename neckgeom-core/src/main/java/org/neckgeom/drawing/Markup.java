package org.neckgeom.drawing;

import java.util.ArrayDeque;
import java.util.Deque;
import org.neckgeom.text.Words;

/**
 * Writes elements that are well formed by construction, as both HTML and XML: every text is escaped, every element that
 * is opened is closed by the same writer. Not shared between threads.
 */
public final class Markup {

    private static final char REPLACEMENT = '\uFFFD';

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes are names and values in turn. */
    public Markup open(String name, String... attributes) {
        start(name, attributes);
        out.append('>');
        open.push(name);
        return this;
    }

    /** Writes an element without content; HTML takes this form only for its void elements. */
    public Markup empty(String name, String... attributes) {
        start(name, attributes);
        out.append("/>");
        return this;
    }

    /** Writes an element that holds nothing but a text. */
    public Markup element(String name, String text, String... attributes) {
        return open(name, attributes).text(text).close();
    }

    public Markup text(String text) {
        out.append(escaped(text));
        return this;
    }

    /** Appends what another writer has closed, or a style sheet without markup of its own. */
    public Markup append(String wellFormed) {
        out.append(wellFormed);
        return this;
    }

    public Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    private void start(String name, String... attributes) {
        // A line of its own keeps changes readable; after text a line feed would show as a space.
        if (out.length() > 0 && out.charAt(out.length() - 1) == '>') {
            out.append('\n');
        }
        out.append('<').append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            out.append(escaped(attributes[i + 1])).append('"');
        }
    }

    /** Returns the text; an element left open is a mistake of ours. */
    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("element left open: " + open.peek());
        }
        return out.toString();
    }

    /** Returns the text as it may stand between tags and inside quotes; what XML 1.0 forbids, or does not show as it reads, becomes U+FFFD. */
    public static String escaped(String text) {
        if (isSafe(text)) {
            return text;
        }
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '&' -> safe.append("&amp;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isAllowed(c) ? c : REPLACEMENT);
            }
        });
        return safe.toString();
    }

    /** Whether each letter is written as it is: most texts are, and need no copy. */
    private static boolean isSafe(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c > '~' || c == '<' || c == '>' || c == '&' || c == '"' || c == '\'') {
                return false;
            }
        }
        return true;
    }

    private static boolean isAllowed(int c) {
        return Words.isPrintable(c) || c == '\n' || c == '\t' || c == '\r';
    }
}
