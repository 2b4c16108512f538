package org.neckgeom.examples.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Json;
import org.neckgeom.form.Tree;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Table;

/** A noun of the library, read by its own table of keys. */
public record TableKind<T>(Table<T> table) implements Kind<T> {

    @Override
    public Found<T> read(Node node, Problems problems) {
        Map<String, Place> places = new LinkedHashMap<>();
        Object plain = plain(node, places);
        try {
            return Found.of(table.read(Tree.of(plain), node.place().path()));
        } catch (Refusal refusal) {
            for (Fault fault : refusal.faults()) {
                problems.add(place(fault.path(), places, node.place()), fault.toString());
            }
            return Found.unusable();
        }
    }

    private static Place place(String path, Map<String, Place> places, Place top) {
        String known = path;
        while (!places.containsKey(known)) {
            int end = Math.max(known.lastIndexOf('.'), known.lastIndexOf('['));
            if (end < 0) {
                return top;
            }
            known = known.substring(0, end);
        }
        return places.get(known);
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
        return table.about();
    }

    @Override
    @SuppressWarnings("unchecked") // a schema is an object
    public Map<String, Object> schema() {
        return (Map<String, Object>) Json.read(table.schema("", Spelling.WORDS)).plain();
    }

    @Override
    public String help() {
        return table.help();
    }
}
