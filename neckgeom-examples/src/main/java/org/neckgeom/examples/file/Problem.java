package org.neckgeom.examples.file;

import java.util.Objects;
import org.neckgeom.text.Words;

/**
 * An error in a file, in one sentence, such as {@code my-neck.yaml, line 12: blank.length is "640", which has
 * no unit; write a length such as 648 mm or 25 1/2 in}. Immutable.
 *
 * @param place its place in the file
 * @param sentence what was found and what is allowed, without the place
 */
public record Problem(Place place, String sentence) {

    public Problem {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(sentence, "sentence");
    }

    /** The place, then the sentence, on one line of printable letters. */
    @Override
    public String toString() {
        return Words.shown(place + ": " + sentence);
    }
}
