package org.neckgeom.kernel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Values by name, in the order they came. Immutable, and grown cheaply: a copy with one more shares all but a few of its
 * nodes, so that a budget of thousands, made a component at a time, costs n log n and not n squared.
 *
 * <p>A treap (R. Seidel and C. Aragon, Algorithmica 16, 1996): a binary tree by name, a heap by a number mixed from the
 * name, which keeps it shallow.
 */
public final class Named<T> {

    private record Node<T>(
            String name,
            T value,
            int place,
            long rank,
            @Nullable Node<T> left,
            @Nullable Node<T> right) {

        Node<T> with(@Nullable Node<T> itsLeft, @Nullable Node<T> itsRight) {
            return new Node<>(name, value, place, rank, itsLeft, itsRight);
        }
    }

    private final @Nullable Node<T> root;
    private final int size;

    private Named(@Nullable Node<T> root, int size) {
        this.root = root;
        this.size = size;
    }

    public static <T> Named<T> none() {
        return new Named<>(null, 0);
    }

    public int size() {
        return size;
    }

    /** The value of a name, or null. */
    public @Nullable T find(String name) {
        Node<T> node = node(name);
        return node == null ? null : node.value;
    }

    private @Nullable Node<T> node(String name) {
        @Nullable Node<T> node = root;
        while (node != null) {
            int order = name.compareTo(node.name);
            if (order == 0) {
                return node;
            }
            node = order < 0 ? node.left : node.right;
        }
        return null;
    }

    /** A copy with the value under the name: last when the name is new, otherwise in the place of the old value. */
    public Named<T> with(String name, T value) {
        @Nullable Node<T> old = node(name);
        Node<T> fresh = new Node<>(name, value, old == null ? size : old.place, Mix.of(name.hashCode()), null, null);
        return new Named<>(put(root, fresh), old == null ? size + 1 : size);
    }

    private static <T> Node<T> put(@Nullable Node<T> here, Node<T> fresh) {
        if (here == null) {
            return fresh;
        }
        int order = fresh.name.compareTo(here.name);
        if (order == 0) {
            return fresh.with(here.left, here.right);
        }
        if (order < 0) {
            Node<T> left = put(here.left, fresh);
            return left.rank > here.rank
                    ? left.with(left.left, here.with(left.right, here.right))
                    : here.with(left, here.right);
        }
        Node<T> right = put(here.right, fresh);
        return right.rank > here.rank
                ? right.with(here.with(here.left, right.left), right.right)
                : here.with(here.left, right);
    }

    /** The values in the order their names came. */
    public List<T> values() {
        List<T> all = new ArrayList<>(size);
        nodes().forEach(node -> all.add(node.value));
        return Collections.unmodifiableList(all);
    }

    /** The names in the order they came. */
    public List<String> names() {
        return nodes().stream().map(Node::name).toList();
    }

    private List<Node<T>> nodes() {
        @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type cannot be made otherwise
        Node<T>[] all = new Node[size];
        gather(root, all);
        return Arrays.asList(all);
    }

    private static <T> void gather(@Nullable Node<T> node, Node<T>[] all) {
        if (node != null) {
            all[node.place] = node;
            gather(node.left, all);
            gather(node.right, all);
        }
    }

    /** True for the same values under the same names, in any order. */
    @Override
    public boolean equals(Object obj) {
        return obj instanceof Named<?> other
                && size == other.size
                && nodes().stream().allMatch(node -> node.value.equals(other.find(node.name)));
    }

    @Override
    public int hashCode() {
        return nodes().stream()
                .mapToInt(node -> node.name.hashCode() ^ node.value.hashCode())
                .sum();
    }
}
