package org.neckgeom.examples.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The shell of the tests: the library on its class path, the start-up script run. */
final class TestShell {

    static final Path SCRIPTS = Path.of("src/main/jshell");
    static final Path STARTUP = SCRIPTS.resolve("startup.jsh");

    private TestShell() {}

    /** The class path of the tests; Surefire keeps the real one apart. */
    static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    static ScriptShell open() throws ScriptFailed {
        ScriptShell shell = ScriptShell.open(classPath());
        shell.run("startup.jsh", read(STARTUP));
        shell.keep();
        return shell;
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
