package org.neckgeom.examples.shell;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** What a piece of work prints on standard output. Not for tests that run beside others in one JVM. */
final class Printed {

    /** A piece of work that may fail. */
    interface Work {
        void run() throws Exception;
    }

    private Printed() {}

    /** The printed text, line ends as line feeds. */
    static String by(Work work) throws Exception {
        PrintStream before = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
            System.setOut(out);
            work.run();
        } finally {
            System.setOut(before);
        }
        return bytes.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }
}
