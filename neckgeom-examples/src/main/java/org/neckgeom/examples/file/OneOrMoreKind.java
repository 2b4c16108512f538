package org.neckgeom.examples.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One value, or a list of values of the same kind.
 *
 * @param item the kind of a value
 * @param list the kind of the list
 * @param <T> the type of an item
 */
record OneOrMoreKind<T>(Kind<T> item, Kind<List<T>> list) implements Kind<List<T>> {

    @Override
    public Found<List<T>> read(Node node, Problems problems) {
        if (node instanceof Node.Items) {
            return list.read(node, problems);
        }
        Found<T> one = item.read(node, problems);
        return one.isThere() ? Found.of(List.of(one.value())) : Found.unusable();
    }

    @Override
    public String allowed() {
        return item.allowed() + ", or a list of such";
    }

    @Override
    public Map<String, Object> schema() {
        return Fragment.of("oneOf", List.of(item.schema(), list.schema()));
    }

    @Override
    public Optional<Shape> inside() {
        return item.inside();
    }
}
