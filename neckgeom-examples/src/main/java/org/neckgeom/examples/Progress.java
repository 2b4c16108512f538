package org.neckgeom.examples;

import java.io.Console;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** How far long work is, on one line of a terminal that is cleared when it is done; nothing where there is no terminal. */
final class Progress {

    private static final String CLEARED = "\r\u001b[K";

    private final PrintStream terminal;

    private Progress(PrintStream terminal) {
        this.terminal = terminal;
    }

    /** Shows nothing. */
    static Progress none() {
        return new Progress(null);
    }

    /** Shows progress on a terminal. */
    static Progress on(PrintStream terminal) {
        return new Progress(terminal);
    }

    /** Shows progress on standard error if that is a terminal: never in a pipe or a file. */
    @SuppressWarnings("SystemConsoleNull") // up to Java 21 there is none in a pipe; later ones are asked below
    static Progress ofThisProcess() {
        Console console = System.console();
        return console != null && isTerminal(console) && isErrorSeen() ? on(System.err) : none();
    }

    /** From Java 22 on there is a console in a pipe too, and it can be asked. */
    private static boolean isTerminal(Console console) {
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException older) {
            return true;
        }
    }

    /** The console covers input and output alone; where the system shows it, look where errors go. */
    private static boolean isErrorSeen() {
        Path errors = Path.of("/proc/self/fd/2");
        try {
            return !Files.exists(errors) || Files.readSymbolicLink(errors).startsWith("/dev/");
        } catch (IOException | UnsupportedOperationException unknown) {
            return true;
        }
    }

    /** Shows the present step in place of the one before. */
    void at(String what) {
        if (terminal != null) {
            terminal.print(CLEARED + what);
            terminal.flush();
        }
    }

    /** Clears the line. */
    void end() {
        if (terminal != null) {
            terminal.print(CLEARED);
            terminal.flush();
        }
    }
}
