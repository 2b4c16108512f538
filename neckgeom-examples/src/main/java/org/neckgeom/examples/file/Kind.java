package org.neckgeom.examples.file;

import java.util.Map;
import java.util.Optional;

/**
 * What sort of value a key takes, and how it is read.
 *
 * @param <T> the type of the value read
 */
public interface Kind<T> {

    /**
     * Reads a node.
     *
     * @param node what the file holds
     * @param problems where anything wrong is noted
     * @return the value, or unusable when a problem was noted
     */
    Found<T> read(Node node, Problems problems);

    /**
     * What may be written, in a maker's words.
     *
     * @return such as {@code a length such as 648 mm or 25 1/2 in}
     */
    String allowed();

    /**
     * The same as a JSON Schema (draft 2020-12) fragment, as far as a schema can say it.
     *
     * @return keys of the fragment, values being texts, numbers, booleans, lists and maps of those
     */
    Map<String, Object> schema();

    /**
     * The keys inside a value of this kind.
     *
     * @return the shape of a group, or of the groups in a list; nothing for texts
     */
    default Optional<Shape> inside() {
        return Optional.empty();
    }

    /** The lines of help about the keys of a noun that has a table of its own. */
    default String help() {
        return "";
    }
}
