package org.neckgeom.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.neckgeom.form.Tree;
import org.neckgeom.table.Key;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Values;

/** A table of one key, by which a value of a type is written and read. */
public final class OneKey<V> {

    private record Held<V>(V value) {}

    private final List<Key<Held<V>, V>> key = new ArrayList<>();
    private final Table<Held<V>> table =
            Table.of("", "a value", values -> new Held<>(values.at(key.get(0))), this::values);

    public OneKey(Type<V> type) {
        key.add(table.needed("value", type, "the value"));
    }

    private Values<Held<V>> values(Held<V> held) {
        return table.values().with(key.get(0), held.value());
    }

    public Tree written(V value, Spelling spelling) {
        return Tree.of(((Map<?, ?>) table.write(new Held<>(value), spelling).plain()).get("value"));
    }

    public V read(Tree tree) {
        return table.read(Tree.of(Map.of("value", tree))).value();
    }
}
