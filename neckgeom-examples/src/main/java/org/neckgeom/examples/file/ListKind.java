package org.neckgeom.examples.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A list of values of one kind.
 *
 * @param <T> the type of an item
 */
final class ListKind<T> implements Kind<List<T>> {

    private final Kind<T> item;
    private final int fewest;
    private final int most;

    ListKind(Kind<T> item, int fewest, int most) {
        if (fewest < 0 || most < fewest) {
            throw new IllegalArgumentException(
                    "fewest must be from 0 to most, but fewest was " + fewest + " and most " + most);
        }
        this.item = Objects.requireNonNull(item, "item");
        this.fewest = fewest;
        this.most = most;
    }

    @Override
    public Found<List<T>> read(Node node, Problems problems) {
        if (!(node instanceof Node.Items items)
                || items.items().size() < fewest
                || items.items().size() > most) {
            problems.add(node.place(), node.place().path() + " is " + node.found() + ", but must be " + allowed());
            return Found.unusable();
        }
        List<Found<T>> read = new ArrayList<>();
        for (Node each : items.items()) {
            read.add(item.read(each, problems));
        }
        boolean whole = read.stream().allMatch(Found::isThere);
        return whole ? Found.of(read.stream().map(Found::value).toList()) : Found.unusable();
    }

    @Override
    public String allowed() {
        String count = fewest == most ? "" + most : fewest + " to " + most;
        String items = most == 1 ? " item" : " items";
        return "a list of " + count + items + ", each " + item.allowed();
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "array");
        schema.put("items", item.schema());
        schema.put("minItems", fewest);
        schema.put("maxItems", most);
        return schema;
    }

    @Override
    public Optional<Shape> inside() {
        return item.inside();
    }
}
