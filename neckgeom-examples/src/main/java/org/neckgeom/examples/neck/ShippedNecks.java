package org.neckgeom.examples.neck;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The invented necks that come with the examples, to be planned as they are or copied and changed. */
public final class ShippedNecks {

    /** The neck that is planned when none is named. */
    public static final String DEFAULT = "octave-mandolin.yaml";

    private static final List<String> NAMES =
            List.of(DEFAULT, "short-scale-bass.yaml", "fanned-baritone.yaml", "parlour-guitar.yaml");

    private ShippedNecks() {}

    /** {@return the file names of the shipped necks; the default first} */
    public static List<String> names() {
        return NAMES;
    }

    /**
     * {@return the text of a shipped neck}
     *
     * @param name one of {@link #names}
     * @throws IllegalArgumentException if there is no such neck
     */
    public static String text(String name) {
        try (InputStream in = ShippedNecks.class.getResourceAsStream("/necks/" + name)) {
            if (in == null || !NAMES.contains(name)) {
                throw new IllegalArgumentException(
                        "name must be one of " + String.join(", ", NAMES) + ", but was " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
