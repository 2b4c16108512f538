package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Assumptions;

/**
 * A list in {@code src/test/resources/api} that was read and approved, so that every change of it is seen in review. A run
 * with {@code -Dneckgeom.approve=true} writes it anew and skips the test.
 */
final class ApprovedList {

    private static final Path FOLDER = Path.of("src", "test", "resources", "api");

    private final Path file;
    private final String what;
    private final UnaryOperator<List<String>> entries;

    private ApprovedList(Path file, String what, UnaryOperator<List<String>> entries) {
        this.file = file;
        this.what = what;
        this.entries = entries;
    }

    /** The list of a name, of what is on it, in words, and how its lines become entries that differ from each other. */
    static ApprovedList of(String name, String what, UnaryOperator<List<String>> entries) {
        return new ApprovedList(FOLDER.resolve(name + ".txt"), what, entries);
    }

    /** What was approved; nothing before the first time. */
    List<String> approved() {
        try {
            return Files.exists(file) ? entries.apply(Files.readAllLines(file)) : List.of();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void hold(String text) throws IOException {
        if (Boolean.getBoolean("neckgeom.approve")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, text);
            Assumptions.abort("approved anew: " + file + "; read the change before keeping it");
        }
        List<String> approved = approved();
        List<String> now = entries.apply(text.lines().toList());

        assertThat(now.stream().filter(line -> !approved.contains(line)))
                .as("new in %s; if it is meant, run this test with -Dneckgeom.approve=true", what)
                .isEmpty();
        assertThat(approved.stream().filter(line -> !now.contains(line)))
                .as("gone from %s; see the rules for versions in DEVELOPERS.md before approving", what)
                .isEmpty();
        assertThat(now).as("%s in its order", what).isEqualTo(approved);
    }
}
