package org.neckgeom.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * Holds texts to the files that were looked at and approved, in a folder of {@code src/test/resources}. To approve new texts run
 * the tests with {@code -Dneckgeom.approve=true}, look at what changed in the files, and commit them; such a run writes
 * the files and skips the test, so that it never counts as passed.
 */
public final class Approved {

    private Approved() {}

    /**
     * Holds each text to the file of its name.
     *
     * @param topic the folder
     * @param texts each by the name of its file
     */
    public static void hold(String topic, Map<String, String> texts) {
        Path folder = Path.of("src", "test", "resources", topic);
        boolean approving = Boolean.getBoolean("neckgeom.approve");
        try {
            for (Map.Entry<String, String> text : texts.entrySet()) {
                Path path = folder.resolve(text.getKey());
                if (approving) {
                    Files.createDirectories(folder);
                    Files.writeString(path, text.getValue());
                } else {
                    assertTrue(Files.exists(path), () -> path + " is missing: approve it and look at it");
                    assertEquals(Files.readString(path), text.getValue(), () -> "differs from the approved " + path);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Assumptions.assumeFalse(approving, "approved anew: look at the files, then run without the property");
    }

    /**
     * Puts what values print into one text, each under the name of its type.
     *
     * @param values any
     * @return the text
     */
    public static String texts(Stream<?> values) {
        return values.map(value -> "== " + value.getClass().getSimpleName() + "\n" + value + "\n")
                .collect(Collectors.joining("\n"));
    }
}
