package org.neckgeom.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Tree;
import org.neckgeom.text.Words;

/**
 * One group of a document while its keys are moved; each value keeps the place where the maker wrote it. Immutable.
 *
 * <p>A path is a key in words, or keys with points between, such as {@code lock.pins}; {@code pins[2]} is the second item of a
 * list. A key is found in either spelling.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class Branch {

    private final Node root;

    /** A value with its place in the document as written; no place where a move has put it there. */
    private record Node(@Nullable Object content, @Nullable String place) {

        static Node of(@Nullable Object plain, String place) {
            if (plain instanceof Map<?, ?> map) {
                Map<String, Node> all = new LinkedHashMap<>();
                map.forEach((key, value) -> all.put(key.toString(), of(value, below(place, key.toString()))));
                return new Node(all, place);
            }
            if (plain instanceof List<?> list) {
                List<Node> all = new ArrayList<>();
                list.forEach(value -> all.add(of(value, item(place, all.size() + 1))));
                return new Node(all, place);
            }
            return new Node(plain, place);
        }

        static Node put(@Nullable Object plain) {
            if (plain instanceof Map<?, ?> map) {
                Map<String, Node> all = new LinkedHashMap<>();
                map.forEach((key, value) -> all.put(key.toString(), put(value)));
                return new Node(all, null);
            }
            return new Node(
                    plain instanceof List<?> list ? list.stream().map(Node::put).toList() : plain, null);
        }

        @SuppressWarnings("unchecked") // made above
        Optional<Map<String, Node>> group() {
            return content instanceof Map<?, ?> ? Optional.of((Map<String, Node>) content) : Optional.empty();
        }

        @SuppressWarnings("unchecked") // made above
        Optional<List<Node>> items() {
            return content instanceof List<?> ? Optional.of((List<Node>) content) : Optional.empty();
        }

        boolean isEmpty() {
            return group().map(Map::isEmpty).orElse(false)
                    || items().map(List::isEmpty).orElse(false);
        }

        @Nullable
        Object plain() {
            if (group().isPresent()) {
                Map<String, @Nullable Object> all = new LinkedHashMap<>();
                group().get().forEach((key, node) -> all.put(key, node.plain()));
                return all;
            }
            if (items().isPresent()) {
                List<@Nullable Object> all = new ArrayList<>();
                items().get().forEach(node -> all.add(node.plain()));
                return all;
            }
            return content;
        }

        void places(String now, Map<String, Optional<String>> all) {
            all.put(now, Optional.ofNullable(place));
            group().ifPresent(group -> group.forEach((key, node) -> node.places(below(now, key), all)));
            items().ifPresent(items -> {
                for (int i = 0; i < items.size(); i++) {
                    items.get(i).places(item(now, i + 1), all);
                }
            });
        }
    }

    /** A key, or an item of a list by its number from 1. */
    private record Step(String key, int item) {

        static List<Step> of(String path, String name) {
            List<Step> steps = new ArrayList<>();
            for (String part : Objects.requireNonNull(path, name).split("\\.", -1)) {
                int bracket = part.indexOf('[');
                String key = bracket < 0 ? part : part.substring(0, bracket);
                boolean isItem = bracket > 0 && part.matches("[^\\[\\]]+\\[[1-9]\\d{0,3}]");
                if (key.isBlank() || !Words.isLine(key) || bracket >= 0 && !isItem) {
                    throw Refusal.of(
                            name, "path", "be keys with points between, such as lock.pins", Faults.shown(path));
                }
                steps.add(new Step(key, 0));
                if (isItem) {
                    steps.add(new Step("", Integer.parseInt(part.substring(bracket + 1, part.length() - 1))));
                }
            }
            return steps;
        }

        boolean isItem() {
            return item > 0;
        }
    }

    private Branch(Node root) {
        this.root = root;
    }

    /**
     * {@return a whole document}
     *
     * @param document its keys, each with plain data
     */
    public static Branch of(Map<?, ?> document) {
        Tree tree = Tree.of(Objects.requireNonNull(document, "document"));
        return of((Map<?, ?>) Objects.requireNonNull(tree.plain()), "");
    }

    /** A group of a document, written at a place. */
    static Branch of(Map<?, ?> group, String place) {
        return new Branch(Node.of(group, place));
    }

    /** Refuses what is no path. */
    static String path(String path, String name) {
        Step.of(path, name);
        return path;
    }

    private static String below(String place, String key) {
        return place.isEmpty() ? key : place + "." + key;
    }

    private static String item(String place, int number) {
        return place + "[" + number + "]";
    }

    /** {@return the group as plain data} */
    public Map<?, ?> plain() {
        return (Map<?, ?>) Objects.requireNonNull(root.plain());
    }

    /**
     * {@return whether there is something at a path}
     *
     * @param path of keys
     */
    public boolean has(String path) {
        return node(root, Step.of(path, "path")).isPresent();
    }

    /**
     * {@return the plain data at a path, if there is any: a text, a number, a map or a list}
     *
     * @param path of keys
     */
    public Optional<Object> value(String path) {
        return node(root, Step.of(path, "path")).map(Node::plain);
    }

    /**
     * {@return the text at a path, if there is one}
     *
     * @param path of keys
     */
    public Optional<String> text(String path) {
        return value(path).filter(String.class::isInstance).map(String.class::cast);
    }

    /**
     * {@return how many items the list at a path has; 0 where there is none}
     *
     * @param path of keys
     */
    public int count(String path) {
        return node(root, Step.of(path, "path"))
                .flatMap(Node::items)
                .map(List::size)
                .orElse(0);
    }

    /**
     * {@return this branch with what is at one path put at another; unchanged where nothing is there, or where the new
     * place lies in what is no group} A group or list that is left empty goes too.
     *
     * @param from the old path
     * @param to the new path
     * @throws IllegalArgumentException if something is at both
     */
    public Branch moved(String from, String to) {
        List<Step> source = Step.of(from, "from");
        List<Step> target = Step.of(to, "to");
        Optional<Node> moving = node(root, source);
        if (moving.isEmpty()) {
            return this;
        }
        Optional<Node> there = node(root, target);
        if (there.isPresent()) {
            throw Refusal.because(
                    at(from),
                    "twice",
                    at(from) + " is given, and " + here(to, there.get().place()) + " too; keep one of them");
        }
        Node put = put(root, target, moving.get());
        return put == null ? this : new Branch(Objects.requireNonNull(removed(put, source, true)));
    }

    /** Where another value of this group was written, from this group on. */
    private String here(String path, @Nullable String written) {
        String start = root.place() == null ? "" : below(root.place(), "");
        return written == null ? path : written.substring(written.startsWith(start) ? start.length() : 0);
    }

    private String at(String path) {
        return root.place() == null || root.place().isEmpty() ? path : below(root.place(), path);
    }

    /**
     * {@return this branch with plain data at a path; unchanged where something is there already}
     *
     * @param path of keys
     * @param plain a text, a number, a map or a list
     */
    public Branch with(String path, Object plain) {
        List<Step> steps = Step.of(path, "path");
        if (node(root, steps).isPresent()) {
            return this;
        }
        Node put = put(root, steps, Node.put(Objects.requireNonNull(plain, "plain")));
        return put == null ? this : new Branch(put);
    }

    /**
     * {@return this branch with other words for some texts at a path; any other value stays}
     *
     * @param path of keys
     * @param words from the old text to the new one
     */
    public Branch worded(String path, Map<String, String> words) {
        List<Step> steps = Step.of(path, "path");
        Objects.requireNonNull(words, "words");
        Optional<Node> old = node(root, steps);
        if (old.isEmpty()
                || !(old.get().content() instanceof String text)
                || !words.containsKey(text)
                || text.equals(words.get(text))) {
            return this;
        }
        Node put = put(root, steps, new Node(words.get(text), old.get().place()));
        return put == null ? this : new Branch(put);
    }

    /**
     * {@return this branch without what is at a path}
     *
     * @param path of keys
     */
    public Branch without(String path) {
        List<Step> steps = Step.of(path, "path");
        return has(path) ? new Branch(Objects.requireNonNull(removed(root, steps, false))) : this;
    }

    /**
     * {@return this branch with each group of the list at a path changed; unchanged where there is no such list}
     *
     * @param path of keys
     * @param change of one group
     */
    public Branch each(String path, UnaryOperator<Branch> change) {
        List<Step> steps = Step.of(path, "path");
        Objects.requireNonNull(change, "change");
        Optional<List<Node>> items = node(root, steps).flatMap(Node::items);
        if (items.isEmpty()) {
            return this;
        }
        List<Node> changed = items.get().stream()
                .map(item -> item.group().isPresent() ? change.apply(new Branch(item)).root : item)
                .toList();
        Node put = put(root, steps, new Node(changed, node(root, steps).get().place()));
        return put == null ? this : new Branch(put);
    }

    private static Optional<Node> node(Node from, List<Step> path) {
        Optional<Node> at = Optional.of(from);
        for (Step step : path) {
            at = at.flatMap(node -> child(node, step));
        }
        return at;
    }

    private static Optional<Node> child(Node node, Step step) {
        return step.isItem()
                ? node.items().filter(all -> step.item() <= all.size()).map(all -> all.get(step.item() - 1))
                : node.group().flatMap(group -> Optional.ofNullable(group.get(written(group, step.key()))));
    }

    /** The name of a key as it is written in a group. */
    private static String written(Map<String, ?> group, String words) {
        String json = Spelling.JSON.of(words);
        return !group.containsKey(words) && group.containsKey(json) ? json : words;
    }

    /** The node with another inside; null where what is there is no group and no list, which its reader refuses. */
    private static @Nullable Node put(Node node, List<Step> path, Node value) {
        if (path.isEmpty()) {
            return value;
        }
        Step step = path.get(0);
        boolean hasRoom = step.isItem()
                ? node.items().filter(all -> step.item() <= all.size() + 1).isPresent()
                : node.group().isPresent();
        if (!hasRoom) {
            return null;
        }
        Node empty = new Node(path.size() > 1 && path.get(1).isItem() ? List.of() : Map.of(), null);
        Node inner = put(child(node, step).orElse(empty), path.subList(1, path.size()), value);
        return inner == null ? null : with(node, step, inner);
    }

    private static Node with(Node node, Step step, Node inner) {
        if (step.isItem()) {
            List<Node> all = new ArrayList<>(node.items().orElseThrow());
            if (step.item() > all.size()) {
                all.add(inner);
            } else {
                all.set(step.item() - 1, inner);
            }
            return new Node(List.copyOf(all), node.place());
        }
        Map<String, Node> all = new LinkedHashMap<>(node.group().orElseThrow());
        all.put(written(all, step.key()), inner);
        return new Node(all, node.place());
    }

    /** The node without what is at a path; null where nothing is left of it and an empty one shall go. */
    private static @Nullable Node removed(Node node, List<Step> path, boolean isEmptyToGo) {
        if (path.isEmpty()) {
            return null;
        }
        Step step = path.get(0);
        Node old = child(node, step).orElseThrow();
        Node inner = removed(old, path.subList(1, path.size()), isEmptyToGo);
        if (inner != null && !(isEmptyToGo && inner.isEmpty())) {
            return with(node, step, inner);
        }
        if (step.isItem()) {
            List<Node> all = new ArrayList<>(node.items().orElseThrow());
            all.remove(step.item() - 1);
            return new Node(List.copyOf(all), node.place());
        }
        Map<String, Node> all = new LinkedHashMap<>(node.group().orElseThrow());
        all.remove(written(all, step.key()));
        return new Node(all, node.place());
    }

    /** A fault of this branch as read, with its path where the maker wrote it. */
    Fault asWritten(Fault fault, String now) {
        Map<String, Optional<String>> places = new LinkedHashMap<>();
        root.places(now, places);
        String known = fault.path();
        while (!places.containsKey(known)) {
            int end = Math.max(known.lastIndexOf('.'), known.lastIndexOf('['));
            if (end <= 0) {
                return fault;
            }
            known = known.substring(0, end);
        }
        Optional<String> place = places.get(known);
        if (place.isEmpty() || place.get().equals(known)) {
            return fault;
        }
        String must =
                fault.must().startsWith(known) ? place.get() + fault.must().substring(known.length()) : fault.must();
        return new Fault(place.get() + fault.path().substring(known.length()), fault.rule(), must, fault.given());
    }

    /** Returns the plain data. */
    @Override
    public String toString() {
        return plain().toString();
    }
}
