package org.neckgeom.examples.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every script in {@code src/main/jshell} runs and prints what {@code src/test/resources/scripts} has approved. See
 * {@link Approved} for how to approve a text anew.
 */
class ScriptsTest {

    private static ScriptShell shell;

    private static final Path APPROVED = Path.of("src/test/resources/scripts");

    static List<String> scripts() throws IOException {
        try (Stream<Path> files = Files.list(TestShell.SCRIPTS)) {
            return files.filter(file -> file.toString().endsWith(".jsh") && !file.equals(TestShell.STARTUP))
                    .map(file -> file.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    @BeforeAll
    static void open() throws ScriptFailed {
        shell = TestShell.open();
    }

    @AfterAll
    static void close() {
        shell.close();
    }

    @BeforeEach
    void forget() {
        shell.forget();
    }

    @ParameterizedTest(name = "{0}", allowZeroInvocations = true)
    @MethodSource("scripts")
    void script_printsWhatWasApproved(String name) throws Exception {
        String text = TestShell.read(TestShell.SCRIPTS.resolve(name));

        String printed = Printed.by(
                () -> assertThat(shell.run(name, text)).as("status of %s", name).isZero());

        assertThat(printed).as("what %s printed", name).isNotBlank();
        Approved.check(APPROVED.resolve(name.replace(".jsh", ".txt")), printed);
    }

    @Test
    void approvedFiles_haveTheirScript() throws IOException {
        List<String> wanted =
                scripts().stream().map(name -> name.replace(".jsh", ".txt")).toList();

        List<String> orphans = List.of();
        if (Files.isDirectory(APPROVED)) {
            try (Stream<Path> files = Files.list(APPROVED)) {
                orphans = files.map(file -> file.getFileName().toString())
                        .filter(name -> !wanted.contains(name))
                        .toList();
            }
        }

        assertThat(orphans).as("approved files without a script").isEmpty();
    }
}
