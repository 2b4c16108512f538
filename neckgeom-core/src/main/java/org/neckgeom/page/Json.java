package org.neckgeom.page;

import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Maps, lists, texts, numbers and booleans written as JSON (RFC 8259), indented by two blanks. */
final class Json {

    private static final int MOST_INLINE = 60;

    private final StringBuilder out = new StringBuilder();

    private Json() {}

    /** Returns the text, ending in a line feed. */
    static String of(Object value) {
        Json json = new Json();
        json.write(value, "");
        return json.out.append('\n').toString();
    }

    private void write(Object value, String indent) {
        if (value instanceof Map<?, ?> map) {
            block('{', '}', map.entrySet().iterator(), indent);
        } else if (value instanceof List<?> list) {
            block('[', ']', list.iterator(), indent);
        } else if (value instanceof Map.Entry<?, ?> entry) {
            quote(entry.getKey().toString());
            out.append(": ");
            write(entry.getValue(), indent);
        } else if (value instanceof Double || value instanceof Integer || value instanceof Boolean) {
            out.append(value);
        } else if (value instanceof Figure figure) {
            out.append(figure.text());
        } else {
            quote(value.toString());
        }
    }

    /** A number as it shall be written. */
    record Figure(String text) {}

    /** On one line while short, so that a value stays beside its unit. */
    private void block(char open, char close, Iterator<?> parts, String indent) {
        int start = out.length();
        String inner = indent + "  ";
        out.append(open);
        boolean any = parts.hasNext();
        while (parts.hasNext()) {
            out.append('\n').append(inner);
            write(parts.next(), inner);
            out.append(parts.hasNext() ? "," : "");
        }
        out.append(any ? "\n" + indent : "").append(close);
        String tight = out.substring(start).replaceAll("\n *", " ");
        if (tight.length() <= MOST_INLINE) {
            out.setLength(start);
            out.append(tight);
        }
    }

    private void quote(String text) {
        out.append('"');
        text.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (c < 0x20 || c >= 0xD800 && c <= 0xDFFF) {
                        out.append(String.format(Locale.ROOT, "\\u%04x", c));
                    } else {
                        out.appendCodePoint(c);
                    }
                }
            }
        });
        out.append('"');
    }
}
