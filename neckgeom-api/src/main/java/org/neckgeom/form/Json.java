package org.neckgeom.form;

import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;

/** Maps, lists, texts, numbers and booleans written as JSON (RFC 8259), indented by two blanks. */
public final class Json {

    private static final int MOST_INLINE = 60;

    private Json() {}

    /**
     * Reads JSON.
     *
     * @param text a document of at most 10,000,000 characters
     * @return the value that the text holds
     * @throws IllegalArgumentException with line and column of the first mistake: what the grammar refuses, a name given
     *     twice, a number beyond a double, more than 100 levels, a text of more than 100,000 characters
     */
    public static Tree read(String text) {
        return JsonReader.read(Objects.requireNonNull(text, "text"));
    }

    /**
     * {@return an answer, a tree, or plain data, as JSON; ending in a line feed}
     *
     * @param value an {@link Answer}, a {@link Tree}, or a map, list, text, number or boolean
     */
    public static String of(Object value) {
        StringBuilder out = new StringBuilder();
        new Writer(out).write(Objects.requireNonNull(value, "value"), "");
        return out.append('\n').toString();
    }

    /**
     * A number as it shall be written.
     *
     * @param text its digits
     */
    public record Figure(String text) {

        /**
         * Takes what is a number in JSON.
         *
         * @param text its digits
         */
        public Figure {
            if (JsonReader.numberEnd(Objects.requireNonNull(text, "text"), 0) != text.length()) {
                throw Refusal.of("figure", "number", "be a number as JSON writes it", Words.quoted(text));
            }
        }

        /** Returns the digits. */
        @Override
        public String toString() {
            return text;
        }
    }

    /**
     * {@return a number to twelve digits where that gives it back, and else in all its digits}
     *
     * @param value finite
     * @throws IllegalArgumentException if the value is NaN or infinite, which JSON has no number for
     */
    public static Figure number(double value) {
        String text = Numbers.plain(value);
        return new Figure(Double.isFinite(value) && Double.parseDouble(text) != value ? Double.toString(value) : text);
    }

    /** What is written so far. */
    private record Writer(StringBuilder out) {

        void write(@Nullable Object value, String indent) {
            if (value == null) {
                out.append("null");
            } else if (value instanceof Tree tree) {
                write(tree.plain(), indent);
            } else if (value instanceof Double number) {
                out.append(number(number));
            } else if (value instanceof Answer answer) {
                write(Form.dataOf(answer), indent);
            } else if (value instanceof Map<?, ?> map) {
                block('{', '}', map.entrySet().iterator(), indent);
            } else if (value instanceof List<?> list) {
                block('[', ']', list.iterator(), indent);
            } else if (value instanceof Map.Entry<?, ?> entry) {
                quote(entry.getKey().toString());
                out.append(": ");
                write(entry.getValue(), indent);
            } else if (value instanceof Number || value instanceof Boolean) {
                out.append(value);
            } else if (value instanceof Figure figure) {
                out.append(figure.text());
            } else {
                quote(value.toString());
            }
        }

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
            inOneLineIfShort(start);
        }

        /** A line end with its indent becomes a blank; looked at no farther than a line goes. */
        private void inOneLineIfShort(int start) {
            StringBuilder tight = new StringBuilder();
            for (int i = start; i < out.length(); i++) {
                char c = out.charAt(i);
                tight.append(c == '\n' ? ' ' : c);
                while (c == '\n' && i + 1 < out.length() && out.charAt(i + 1) == ' ') {
                    i++;
                }
                if (tight.length() > MOST_INLINE) {
                    return;
                }
            }
            out.replace(start, out.length(), tight.toString());
        }

        private void quote(String text) {
            out.append('"');
            int from = 0;
            for (int i = 0; i < text.length(); i++) {
                char c = text.charAt(i);
                if (c >= ' ' && c != '"' && c != '\\' && !Character.isSurrogate(c)) {
                    continue;
                }
                if (Character.isHighSurrogate(c)
                        && i + 1 < text.length()
                        && Character.isLowSurrogate(text.charAt(i + 1))) {
                    i++;
                    continue;
                }
                out.append(text, from, i).append(escaped(c));
                from = i + 1;
            }
            out.append(text, from, text.length()).append('"');
        }

        private static String escaped(char c) {
            return switch (c) {
                case '"' -> "\\\"";
                case '\\' -> "\\\\";
                case '\n' -> "\\n";
                case '\r' -> "\\r";
                case '\t' -> "\\t";
                default -> String.format(Locale.ROOT, "\\u%04x", (int) c);
            };
        }
    }
}
