package org.neckgeom.examples;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Whether a person sees what this process prints, and in which colours. */
final class Terminal {

    private static final int OUTPUT = 1;
    private static final String PLAIN = "\u001b[0m";

    /** The colours of a verdict; each is also a word, so that none is needed. */
    private static final Map<String, String> OF_VERDICT =
            Map.of("OK", "\u001b[1;32m", "OPEN", "\u001b[1;33m", "STOP", "\u001b[1;31m");

    private final boolean hasColours;

    private Terminal(boolean hasColours) {
        this.hasColours = hasColours;
    }

    /** Prints no control codes. */
    static Terminal plain() {
        return new Terminal(false);
    }

    /** Prints in colours. */
    static Terminal inColours() {
        return new Terminal(true);
    }

    /** In colours where standard output is a terminal that has them, and NO_COLOR does not turn them off. */
    static Terminal ofThisProcess() {
        return new Terminal(hasColours(System.getenv()) && isSeen(OUTPUT));
    }

    /** Common practice: any NO_COLOR but an empty one turns colours off; a terminal called dumb has none. */
    static boolean hasColours(Map<String, String> environment) {
        String kind = environment.getOrDefault("TERM", "dumb");
        return environment.getOrDefault("NO_COLOR", "").isEmpty() && !kind.equals("dumb") && !kind.isEmpty();
    }

    /**
     * {@return whether a stream of this process is a terminal: never in a pipe or a file}
     *
     * @param descriptor 1 for output, 2 for errors
     */
    @SuppressWarnings("SystemConsoleNull") // up to Java 21 there is none in a pipe; later ones are asked below
    static boolean isSeen(int descriptor) {
        Console console = System.console();
        return console != null && isTerminal(console) && isDevice(descriptor);
    }

    /** From Java 22 on there is a console in a pipe too, and it can be asked. */
    private static boolean isTerminal(Console console) {
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException older) {
            return true;
        }
    }

    /** The console covers input and output alone; where the system shows it, look where the stream goes. */
    private static boolean isDevice(int descriptor) {
        Path stream = Path.of("/proc/self/fd/" + descriptor);
        try {
            return !Files.exists(stream) || Files.readSymbolicLink(stream).startsWith("/dev/");
        } catch (IOException | UnsupportedOperationException unknown) {
            return true;
        }
    }

    /** The same text, its verdict in colour where there are colours. */
    String verdict(String screen) {
        if (!hasColours) {
            return screen;
        }
        String text = screen;
        for (Map.Entry<String, String> colour : OF_VERDICT.entrySet()) {
            text = text.replaceFirst(
                    "(?m)^VERDICT  " + colour.getKey() + ":",
                    "VERDICT  " + colour.getValue() + colour.getKey() + PLAIN + ":");
        }
        return text;
    }
}
