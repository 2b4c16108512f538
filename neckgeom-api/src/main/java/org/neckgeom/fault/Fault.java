package org.neckgeom.fault;

import java.io.Serializable;
import java.util.Objects;

/**
 * A fault of a value or of a question: its path, the rule, the requirement and the value given. Immutable.
 *
 * @param path of the value, such as {@code near wall} or {@code heel.dovetail.height}
 * @param rule a stable code, lower case with hyphens, such as {@code more-than}, {@code missing}, {@code no-section}
 * @param must what the value must be, such as {@code be more than 0 mm}; the whole sentence where nothing was given
 * @param given what was given, in words with its unit; empty where that is not one value
 * @serial exclude
 */
@SuppressWarnings("InvalidBlockTag") // the tag keeps Javadoc from asking for a comment on each serial field
public record Fault(String path, String rule, String must, String given) implements Serializable {

    private static final long serialVersionUID = 1;

    /**
     * Takes what is there.
     *
     * @param path of the value
     * @param rule its code
     * @param must what must be
     * @param given what was given
     */
    public Fault {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(must, "must");
        Objects.requireNonNull(given, "given");
    }

    /** Returns one sentence, such as {@code near wall must be more than 0 mm, but was -3 mm}. */
    @Override
    public String toString() {
        return given.isEmpty() ? must : path + " must " + must + ", but was " + given;
    }
}
