package org.neckgeom.examples;

import java.io.PrintStream;

/** How far long work is, on one line of a terminal that is cleared when it is done; nothing where there is no terminal. */
final class Progress {

    private static final int ERRORS = 2;
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
    static Progress ofThisProcess() {
        return Terminal.isSeen(ERRORS) ? on(System.err) : none();
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
