package org.neckgeom.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Tree;
import org.neckgeom.text.Words;

/**
 * Where keys of earlier versions have gone: a list that turns an old tree into a new one and leaves a new one as it is.
 * Immutable.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Moves {

    private final List<Move> moves;

    /** From one path of keys to another. */
    private record Move(List<String> from, List<String> to) {
        String fromPath() {
            return String.join(".", from);
        }

        String toPath() {
            return String.join(".", to);
        }
    }

    private Moves(List<Move> moves) {
        this.moves = moves;
    }

    /** {@return no moves; every tree stays as it is} */
    public static Moves none() {
        return new Moves(List.of());
    }

    /**
     * {@return these moves with one more}
     *
     * @param from path of the old key in words, such as {@code scarf}
     * @param to path of the new one, such as {@code head.scarf}
     */
    public Moves and(String from, String to) {
        List<Move> more = new ArrayList<>(moves);
        more.add(new Move(steps(from, "from"), steps(to, "to")));
        return new Moves(List.copyOf(more));
    }

    private static List<String> steps(String path, String name) {
        List<String> steps = List.of(Objects.requireNonNull(path, name).split("\\.", -1));
        if (steps.stream().anyMatch(step -> step.isBlank() || !Words.isLine(step))) {
            throw Refusal.of(name, "path", "be keys with points between, such as lock.pins", Faults.shown(path));
        }
        return steps;
    }

    /**
     * {@return a tree with its old keys moved; the document as it would be written today}
     *
     * @param tree a document of any version
     * @throws IllegalArgumentException if something is given under the old key and under the new one
     */
    public Tree moved(Tree tree) {
        Object whole = Objects.requireNonNull(tree, "tree").plain();
        if (!(whole instanceof Map<?, ?> map)) {
            return tree;
        }
        Map<String, @Nullable Object> copy = copy(map);
        boolean any = false;
        for (Move move : moves) {
            any |= move(move, copy);
        }
        return any ? Tree.of(copy) : tree;
    }

    /** Each move, such as {@code pins -> lock.pins}. */
    @Override
    public String toString() {
        return moves.isEmpty()
                ? "no moves"
                : moves.stream()
                        .map(move -> move.fromPath() + " -> " + move.toPath())
                        .collect(Collectors.joining(", "));
    }

    /** A refusal of the moved tree, with each path where the maker wrote it. */
    Refusal given(Tree tree, Refusal refusal) {
        return Refusal.of(
                refusal.faults().stream().map(fault -> given(tree, fault)).toList());
    }

    private Fault given(Tree tree, Fault fault) {
        String path = fault.path();
        for (Move move : moves) {
            String to = move.toPath();
            boolean isUnder = path.equals(to) || path.startsWith(to + ".") || path.startsWith(to + "[");
            if (isUnder && tree.plain() instanceof Map<?, ?> map && find(map, move.from()) != null) {
                String must = fault.must().startsWith(to)
                        ? move.fromPath() + fault.must().substring(to.length())
                        : fault.must();
                return new Fault(move.fromPath() + path.substring(to.length()), fault.rule(), must, fault.given());
            }
        }
        return fault;
    }

    private static Map<String, @Nullable Object> copy(Map<?, ?> map) {
        Map<String, @Nullable Object> copy = new LinkedHashMap<>();
        map.forEach((key, value) -> copy.put(key.toString(), value instanceof Map<?, ?> inner ? copy(inner) : value));
        return copy;
    }

    private static boolean move(Move move, Map<String, @Nullable Object> root) {
        Map<String, @Nullable Object> from = root;
        for (String step : move.from().subList(0, move.from().size() - 1)) {
            Map<String, @Nullable Object> inner = inner(from, step);
            if (inner == null) {
                return false;
            }
            from = inner;
        }
        String last = written(from, move.from().get(move.from().size() - 1));
        if (!from.containsKey(last)) {
            return false;
        }
        Map<String, @Nullable Object> to = root;
        for (String step : move.to().subList(0, move.to().size() - 1)) {
            Map<String, @Nullable Object> inner = inner(to, step);
            if (inner == null) {
                if (to.containsKey(written(to, step))) {
                    return false; // what stands there is no group, which its reader refuses
                }
                inner = new LinkedHashMap<>();
                to.put(step, inner);
            }
            to = inner;
        }
        String name = move.to().get(move.to().size() - 1);
        if (to.containsKey(written(to, name))) {
            throw Refusal.of(List.of(new Fault(
                    move.fromPath(),
                    "twice",
                    move.fromPath() + " is given, and " + move.toPath() + " too; keep one of them",
                    "")));
        }
        to.put(name, from.remove(last));
        return true;
    }

    /** The name of a key as it is written in a map. */
    private static String written(Map<String, @Nullable Object> map, String words) {
        String json = Spelling.JSON.of(words);
        return !map.containsKey(words) && map.containsKey(json) ? json : words;
    }

    @SuppressWarnings("unchecked") // copied above with texts as keys
    private static @Nullable Map<String, @Nullable Object> inner(Map<String, @Nullable Object> map, String words) {
        return map.get(written(map, words)) instanceof Map<?, ?> inner ? (Map<String, @Nullable Object>) inner : null;
    }

    private static @Nullable Object find(Map<?, ?> map, List<String> path) {
        Object at = map;
        for (String step : path) {
            if (!(at instanceof Map<?, ?> inner)) {
                return null;
            }
            at = inner.containsKey(step) ? inner.get(step) : inner.get(Spelling.JSON.of(step));
        }
        return at;
    }
}
