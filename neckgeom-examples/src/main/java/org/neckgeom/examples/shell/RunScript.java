package org.neckgeom.examples.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.neckgeom.examples.file.Trouble;

/**
 * Runs one JShell script with the library on it: {@code RunScript STARTUP SCRIPT}.
 *
 * <p>Ends with 0 when the script ran to its end, with 1 when it does not compile or throws, with 2 when a file can't be
 * read, with 141 as other commands do when nothing reads its output any more. Output is written to standard output,
 * errors to standard error.
 */
public final class RunScript {

    private RunScript() {}

    /**
     * Runs the script and ends the JVM with its status.
     *
     * @param args the start-up script, then the script
     */
    public static void main(String[] args) {
        int status = run(args);
        System.out.flush();
        System.exit(status);
    }

    private static int run(String[] args) {
        if (args.length != 2) {
            System.err.println("wanted: a start-up script and a script, but got " + args.length + " arguments");
            return 2;
        }
        Path startup = Path.of(args[0]);
        Path script = Path.of(args[1]);
        String start;
        String text;
        Path read = startup;
        try {
            start = Files.readString(startup);
            read = script;
            text = Files.readString(script);
        } catch (NoSuchFileException missing) {
            System.err.println(read + ": there is no such script");
            return 2;
        } catch (IOException unreadable) {
            System.err.println(read + ": the script can't be read: " + Trouble.inWords(unreadable));
            return 2;
        }
        System.setOut(EndingOutput.ofThisProcess());
        try (ScriptShell shell = ScriptShell.open(System.getProperty("java.class.path"))) {
            shell.run(startup.toString(), start);
            return shell.run(script.toString(), text);
        } catch (ScriptFailed failed) {
            System.out.flush();
            System.err.println(failed.getMessage());
            return 1;
        }
    }
}
