package org.neckgeom.examples.neck;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Twelve invented necks that between them have every kind of reinforcement, head, shaft and heel. */
public final class KindNecks {

    private static final Path FOLDER = Path.of("src/test/resources/kinds");

    private KindNecks() {}

    /** Returns their names, in order. */
    public static List<String> names() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString().replace(".yaml", ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the file of one. */
    public static Path file(String name) {
        return FOLDER.resolve(name + ".yaml");
    }

    /** Returns the text of one. */
    public static String text(String name) {
        try {
            return Files.readString(file(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
