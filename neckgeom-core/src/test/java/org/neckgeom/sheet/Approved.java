package org.neckgeom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Holds a text to the file that was looked at and approved, in {@code src/test/resources/sheet}. To approve new texts run
 * the tests with {@code -Dneckgeom.approve=true}, look at what changed in the files, and commit them.
 */
final class Approved {

    private static final Path FOLDER = Path.of("src", "test", "resources", "sheet");

    private Approved() {}

    static void holds(String file, String actual) {
        Path path = FOLDER.resolve(file);
        try {
            if (Boolean.getBoolean("neckgeom.approve")) {
                Files.createDirectories(FOLDER);
                Files.writeString(path, actual);
            }
            assertTrue(Files.exists(path), () -> path + " is missing: run with -Dneckgeom.approve=true and look at it");
            assertEquals(Files.readString(path), actual, () -> "differs from the approved " + path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
