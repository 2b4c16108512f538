package org.neckgeom.examples.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * A text compared with the one approved earlier, kept in a file beside the tests.
 *
 * <p>{@code mvn -B -ntp verify -Dneckgeom.approve=true} writes what was printed as approved and skips the test, so that
 * such a run never counts as passed. Read the change before keeping it: an approved file is a claim that the text is
 * right, and its numbers must be checked against something other than the code.
 */
public final class Approved {

    /** The system property that approves anew. */
    static final String PROPERTY = "neckgeom.approve";

    private Approved() {}

    /** Fails with the first differing line when the text is not the approved one. */
    public static void check(Path approved, String printed) throws IOException {
        if (Boolean.getBoolean(PROPERTY)) {
            Files.createDirectories(approved.toAbsolutePath().getParent());
            Files.writeString(approved, printed);
            Assumptions.abort("approved anew: " + approved + "; read the change before keeping it");
        }
        if (!Files.exists(approved)) {
            Assertions.fail("there is no approved file " + approved + "; this was printed:\n" + printed
                    + "\nCheck it, then run with" + " -D" + PROPERTY + "=true to keep it.");
        }
        String expected = Files.readString(approved).replace("\r\n", "\n");
        if (!expected.equals(printed)) {
            Assertions.fail(difference(approved.toString(), expected, printed));
        }
    }

    /** Where two texts part, with the line before, and both whole lines. */
    static String difference(String name, String expected, String printed) {
        List<String> wanted = expected.lines().toList();
        List<String> got = printed.lines().toList();
        int at = 0;
        while (at < wanted.size() && at < got.size() && wanted.get(at).equals(got.get(at))) {
            at++;
        }
        if (at == wanted.size() && at == got.size()) {
            return name + ": the texts differ in their line ends only";
        }
        return name + ", line " + (at + 1) + " (of " + wanted.size() + " approved, " + got.size() + " printed)\n"
                + "  approved: " + line(wanted, at) + "\n"
                + "  printed:  " + line(got, at) + "\n"
                + "If the new text is right, run with -D" + PROPERTY + "=true to keep it. All that was printed:\n"
                + printed;
    }

    private static String line(List<String> lines, int at) {
        return at < lines.size() ? lines.get(at) : "(nothing more)";
    }
}
