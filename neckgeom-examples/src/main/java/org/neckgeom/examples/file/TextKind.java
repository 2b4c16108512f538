package org.neckgeom.examples.file;

import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * A kind whose value is written as one text.
 *
 * @param <T> the type of the value read
 */
final class TextKind<T> implements Kind<T> {

    private final String allowed;
    private final Function<String, T> reader;
    private final Map<String, Object> schema;

    /**
     * A kind.
     *
     * @param allowed what may be written, such as {@code a whole number}
     * @param reader gives the value; refuses by an {@link IllegalArgumentException} whose message goes on after
     *     {@code key is "text", }
     * @param schema the JSON Schema fragment
     */
    TextKind(String allowed, Function<String, T> reader, Map<String, Object> schema) {
        this.allowed = Objects.requireNonNull(allowed, "allowed");
        this.reader = Objects.requireNonNull(reader, "reader");
        this.schema = Objects.requireNonNull(schema, "schema");
    }

    @Override
    public Found<T> read(Node node, Problems problems) {
        String path = node.place().path();
        if (!(node instanceof Node.Text text)) {
            problems.add(node.place(), path + " is " + node.found() + ", but must be " + allowed);
            return Found.unusable();
        }
        try {
            return Found.of(reader.apply(text.text()));
        } catch (IllegalArgumentException refused) {
            problems.add(node.place(), path + " is " + node.found() + ", " + refused.getMessage());
            return Found.unusable();
        }
    }

    @Override
    public String allowed() {
        return allowed;
    }

    @Override
    public Map<String, Object> schema() {
        return schema;
    }
}
