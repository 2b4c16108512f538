package org.neckgeom.form;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;

/**
 * Plain data: maps by name, lists, texts, numbers, true, false and null, as every JSON library reads and writes them.
 * Immutable. {@link Json#read} gives one, {@link #of} takes the maps of another library, {@link #plain} gives them back.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Tree {

    static final int DEEPEST = 100;
    static final int LONGEST_TEXT = 100_000;

    private static final int MOST_SHOWN = 900;

    private final @Nullable Object root;

    private Tree(@Nullable Object root) {
        this.root = root;
    }

    /**
     * {@return the tree of plain data, of another tree, or of an answer; the tree; numbers are doubles}
     *
     * @param data maps with texts as keys, lists, texts, numbers, booleans, null; an {@link Answer} or a tree in them too
     * @throws IllegalArgumentException if something else is in it, with its place; if it is deeper than 100 levels, has a text
     *     of more than 100,000 characters, or a number that is not finite
     */
    public static Tree of(Object data) {
        return new Tree(copy(Objects.requireNonNull(data, "data"), "", 0));
    }

    /** Takes what the reader has made, which no one else has. */
    static Tree read(@Nullable Object root) {
        return new Tree(root);
    }

    private static @Nullable Object copy(@Nullable Object data, String path, int depth) {
        if (depth > DEEPEST) {
            throw refused(path, "depth", "have no more than " + DEEPEST + " levels", "deeper");
        }
        if (data == null || data instanceof Boolean) {
            return data;
        }
        if (data instanceof Tree tree) {
            return copy(tree.root, path, depth);
        }
        if (data instanceof Answer answer) {
            return copy(Form.dataOf(answer), path, depth);
        }
        if (data instanceof Json.Figure figure) {
            return Double.valueOf(figure.text());
        }
        if (data instanceof Number number) {
            return finite(number.doubleValue(), path);
        }
        if (data instanceof CharSequence text) {
            return shortEnough(text.toString(), path);
        }
        if (data instanceof Map<?, ?> map) {
            return copyOf(map, path, depth);
        }
        if (data instanceof List<?> list) {
            List<@Nullable Object> all = new ArrayList<>();
            for (Object one : list) {
                all.add(copy(one, path + "[" + all.size() + "]", depth + 1));
            }
            return Collections.unmodifiableList(all);
        }
        throw refused(
                path,
                "kind",
                "be a map, a list, a text, a number, true, false or null",
                data.getClass().getSimpleName());
    }

    private static Map<String, @Nullable Object> copyOf(Map<?, ?> map, String path, int depth) {
        Map<String, @Nullable Object> all = new LinkedHashMap<>();
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            if (!(entry.getKey() instanceof String key)) {
                throw refused(path, "name", "have texts as names", String.valueOf(entry.getKey()));
            }
            String name = shortEnough(key, path);
            all.put(name, copy(entry.getValue(), path.isEmpty() ? name : path + "." + name, depth + 1));
        }
        return Collections.unmodifiableMap(all);
    }

    private static Double finite(double number, String path) {
        if (!Double.isFinite(number)) {
            throw refused(path, "finite", "be a finite number", Numbers.plain(number));
        }
        return number + 0.0;
    }

    private static String shortEnough(String text, String path) {
        if (text.length() > LONGEST_TEXT) {
            throw refused(
                    path,
                    "at-most",
                    "have no text of more than " + LONGEST_TEXT + " characters",
                    "of " + text.length());
        }
        return text;
    }

    private static Refusal refused(String path, String rule, String must, String given) {
        return Refusal.of(path.isEmpty() ? "tree" : path, rule, must, given);
    }

    /** {@return the plain data, which cannot be changed; list, text, double, boolean or null} */
    public @Nullable Object plain() {
        return root;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Tree that && Objects.equals(root, that.root);
    }

    @Override
    public int hashCode() {
        return Objects.hashCode(root);
    }

    /** Returns the JSON, cut where a shell would cut it. */
    @Override
    public String toString() {
        String json = Json.of(this).strip();
        return json.length() <= MOST_SHOWN ? json : json.substring(0, MOST_SHOWN) + " ...";
    }
}
