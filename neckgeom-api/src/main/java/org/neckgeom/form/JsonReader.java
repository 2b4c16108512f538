package org.neckgeom.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Words;

/**
 * Reads JSON (RFC 8259) into maps, lists, texts, doubles, booleans and null. Refuses what the grammar refuses,
 * names given twice, and what no plan is: numbers beyond a double, nesting deeper than {@value #Tree.DEEPEST} levels, a text of
 * more than {@value #Tree.LONGEST_TEXT} characters, a document of more than {@value #LONGEST}.
 */
final class JsonReader {

    private static final int LONGEST_NUMBER = 1000;
    private static final int LONGEST = 10_000_000;

    private final String text;
    private int at;
    private int depth;

    private JsonReader(String text) {
        this.text = text;
    }

    /**
     * Returns what a text holds.
     *
     * @throws IllegalArgumentException with line and column of the first mistake
     */
    static Tree read(String text) {
        if (text.length() > LONGEST) {
            throw Refusal.of("JSON", "at-most", "have " + LONGEST + " characters or fewer", "has", text.length());
        }
        JsonReader reader = new JsonReader(text);
        @Nullable Object value = reader.value();
        reader.space();
        if (reader.at < text.length()) {
            throw reader.wrong("nothing more");
        }
        return Tree.read(value);
    }

    private @Nullable Object value() {
        space();
        if (at >= text.length()) {
            throw wrong("a value");
        }
        return switch (text.charAt(at)) {
            case '{' -> object();
            case '[' -> array();
            case '"' -> string();
            case 't' -> word("true", true);
            case 'f' -> word("false", false);
            case 'n' -> word("null", null);
            default -> number();
        };
    }

    private Map<String, @Nullable Object> object() {
        deeper();
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        at++;
        space();
        if (take('}')) {
            depth--;
            return Collections.unmodifiableMap(map);
        }
        do {
            space();
            if (at >= text.length() || text.charAt(at) != '"') {
                throw wrong("a name in quotes");
            }
            String name = string();
            space();
            if (!take(':')) {
                throw wrong("a colon");
            }
            if (map.containsKey(name)) {
                throw wrong("\"" + Words.shown(name.substring(0, Math.min(40, name.length()))) + "\" once only");
            }
            map.put(name, value());
            space();
        } while (take(','));
        if (!take('}')) {
            throw wrong("a comma or }");
        }
        depth--;
        return Collections.unmodifiableMap(map);
    }

    private List<@Nullable Object> array() {
        deeper();
        List<@Nullable Object> list = new ArrayList<>();
        at++;
        space();
        if (take(']')) {
            depth--;
            return Collections.unmodifiableList(list);
        }
        do {
            list.add(value());
            space();
        } while (take(','));
        if (!take(']')) {
            throw wrong("a comma or ]");
        }
        depth--;
        return Collections.unmodifiableList(list);
    }

    private String string() {
        StringBuilder out = new StringBuilder();
        at++;
        while (at < text.length() && text.charAt(at) != '"') {
            char c = text.charAt(at++);
            if (c < 0x20) {
                at--;
                throw wrong("no bare control character");
            }
            out.append(c == '\\' ? escape() : c);
            if (out.length() > Tree.LONGEST_TEXT) {
                throw wrong("no text of more than " + Tree.LONGEST_TEXT + " characters");
            }
        }
        if (!take('"')) {
            throw wrong("closing quotes");
        }
        return out.toString();
    }

    private char escape() {
        int index = at < text.length() ? "\"\\/bfnrt".indexOf(text.charAt(at)) : -1;
        if (index >= 0) {
            at++;
            return "\"\\/\b\f\n\r\t".charAt(index);
        }
        if (at + 5 <= text.length() && text.substring(at, at + 5).matches("u[0-9a-fA-F]{4}")) {
            at += 5;
            return (char) Integer.parseInt(text.substring(at - 4, at), 16);
        }
        throw wrong("an escape such as \\n or \\u00e9");
    }

    private @Nullable Object word(String word, @Nullable Object meaning) {
        if (!text.startsWith(word, at)) {
            throw wrong("a value");
        }
        at += word.length();
        return meaning;
    }

    private Double number() {
        int end = numberEnd(text, at);
        if (end < 0) {
            throw wrong("a value");
        }
        if (end - at > LONGEST_NUMBER) {
            throw wrong("no number of more than " + LONGEST_NUMBER + " characters");
        }
        String number = text.substring(at, end);
        Double value = Double.valueOf(number);
        if (value.isInfinite()) {
            throw wrong("no number beyond " + Double.MAX_VALUE);
        }
        if (value == 0 && number.matches("-?[0.]*[1-9].*")) {
            throw wrong("no number but 0 that is less than " + Double.MIN_VALUE + " in size");
        }
        at = end;
        return value + 0.0;
    }

    /** Where a number that begins at a place ends; -1 where none begins there. */
    static int numberEnd(String text, int from) {
        int whole = from + (is(text, from, "-") ? 1 : 0);
        int point = is(text, whole, "0") ? whole + 1 : digitsEnd(text, whole);
        if (point == whole) {
            return -1;
        }
        int decimals = is(text, point, ".") ? digitsEnd(text, point + 1) : point + 1;
        int power = decimals > point + 1 ? decimals : point;
        if (!is(text, power, "eE")) {
            return power;
        }
        int digits = is(text, power + 1, "+-") ? power + 2 : power + 1;
        int end = digitsEnd(text, digits);
        return end > digits ? end : power;
    }

    private static boolean is(String text, int at, String oneOf) {
        return at < text.length() && oneOf.indexOf(text.charAt(at)) >= 0;
    }

    private static int digitsEnd(String text, int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }

    private void deeper() {
        if (++depth > Tree.DEEPEST) {
            throw wrong("no more than " + Tree.DEEPEST + " levels");
        }
    }

    private void space() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private boolean take(char c) {
        if (at < text.length() && text.charAt(at) == c) {
            at++;
            return true;
        }
        return false;
    }

    private IllegalArgumentException wrong(String wanted) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < Math.min(at, text.length()); i++) {
            if (text.charAt(i) == '\n') {
                line++;
                start = i + 1;
            }
        }
        String found =
                at < text.length() ? Words.quoted(text.substring(at, text.offsetByCodePoints(at, 1))) : "its end";
        return Refusal.of(
                "JSON", "syntax", "have " + wanted + " at line " + line + ", column " + (at - start + 1), "has", found);
    }
}
