package org.neckgeom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;

/**
 * Holds texts to the files that were looked at and approved, in {@code src/test/resources/sheet}. To approve new texts run
 * the tests with {@code -Dneckgeom.approve=true}, look at what changed in the files, and commit them; such a run writes
 * the files and skips the test, so that it never counts as passed.
 */
final class Approved {

    private static final Path FOLDER = Path.of("src", "test", "resources", "sheet");

    private Approved() {}

    /** Holds each text to the file of its name. */
    static void hold(Map<String, String> texts) {
        boolean approving = Boolean.getBoolean("neckgeom.approve");
        try {
            for (Map.Entry<String, String> text : texts.entrySet()) {
                Path path = FOLDER.resolve(text.getKey());
                if (approving) {
                    Files.createDirectories(FOLDER);
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
}
