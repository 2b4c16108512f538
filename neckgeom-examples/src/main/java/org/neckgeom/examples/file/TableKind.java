package org.neckgeom.examples.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Tree;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Table;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;

/** A value of the library, read by its own type. */
public record TableKind<T>(Type<T> type) implements Kind<T> {

    /** A noun, read by its own table of keys. */
    public TableKind(Table<T> table) {
        this(Types.group(table));
    }

    @Override
    public Found<T> read(Node node, Problems problems) {
        Map<String, Place> places = new LinkedHashMap<>();
        Object plain = plain(node, places);
        problems.know(places);
        try {
            return Found.of(type.read(Tree.of(plain), node.place().path()));
        } catch (Refusal refusal) {
            for (Fault fault : refusal.faults()) {
                problems.add(problems.place(fault.path(), node.place()), fault.toString());
            }
            return Found.unusable();
        }
    }

    private static Object plain(Node node, Map<String, Place> places) {
        places.put(node.place().path(), node.place());
        if (node instanceof Node.Text text) {
            return text.text();
        }
        if (node instanceof Node.Items items) {
            List<Object> all = new ArrayList<>();
            items.items().forEach(item -> all.add(plain(item, places)));
            return all;
        }
        Map<String, Object> map = new LinkedHashMap<>();
        ((Node.Entries) node).entries().forEach((name, value) -> map.put(name, plain(value, places)));
        return map;
    }

    @Override
    public String allowed() {
        return type.allowed();
    }

    @Override
    @SuppressWarnings("unchecked") // a schema is an object
    public Map<String, Object> schema() {
        return (Map<String, Object>) type.fragment(Spelling.WORDS).plain();
    }

    @Override
    public String help() {
        return type.help();
    }
}
