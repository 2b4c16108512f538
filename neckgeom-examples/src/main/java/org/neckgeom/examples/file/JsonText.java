package org.neckgeom.examples.file;

import java.util.Collection;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;

/** Maps, lists, texts, numbers and booleans written as JSON (RFC 8259), indented by two blanks. */
public final class JsonText {

    private final StringBuilder out = new StringBuilder();

    private JsonText() {}

    /**
     * A value as JSON.
     *
     * @param value maps with text keys, collections, texts, numbers, booleans
     * @return the text, ending in a line feed
     */
    public static String of(Object value) {
        JsonText json = new JsonText();
        json.write(value, "");
        return json.out.append('\n').toString();
    }

    private void write(Object value, String indent) {
        if (value instanceof Map<?, ?> map) {
            Iterator<?> entries = map.entrySet().iterator();
            block('{', '}', entries, indent, entry -> {
                quote(((Map.Entry<?, ?>) entry).getKey().toString());
                out.append(": ");
                write(((Map.Entry<?, ?>) entry).getValue(), indent + "  ");
            });
        } else if (value instanceof Collection<?> items) {
            block('[', ']', items.iterator(), indent, item -> write(item, indent + "  "));
        } else if (value instanceof Double number && number == Math.rint(number) && Math.abs(number) < 1e9) {
            out.append(number.longValue());
        } else if (value instanceof Number || value instanceof Boolean) {
            out.append(value);
        } else {
            quote(value.toString());
        }
    }

    private void block(char open, char close, Iterator<?> parts, String indent, Consumer<Object> each) {
        out.append(open);
        boolean any = parts.hasNext();
        while (parts.hasNext()) {
            out.append('\n').append(indent).append("  ");
            each.accept(parts.next());
            out.append(parts.hasNext() ? "," : "");
        }
        if (any) {
            out.append('\n').append(indent);
        }
        out.append(close);
    }

    private void quote(String text) {
        out.append('"');
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                out.append('\\').append((char) c);
            } else if (c < 0x20) {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                out.append((char) c);
            }
        });
        out.append('"');
    }
}
