package org.neckgeom.examples.release;

import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/** The two sums that a Maven repository asks for beside each file. */
final class Checksums {

    /** The endings of their files, and how the JDK calls them. */
    private static final Map<String, String> ALGORITHMS = Map.of(".md5", "MD5", ".sha1", "SHA-1");

    private Checksums() {}

    /** Where a sum that stands beside a file is read. */
    @FunctionalInterface
    interface Beside {
        String text(String ending) throws IOException;
    }

    static List<String> problems(String file, byte[] bytes, Beside beside) throws IOException {
        List<String> problems = new ArrayList<>();
        for (String ending : List.of(".md5", ".sha1")) {
            String said = beside.text(ending).strip();
            String is = of(bytes, ending);
            if (!said.isEmpty() && !said.equals(is)) {
                problems.add(file + ending + " says " + said + ", but the file has " + is);
            }
        }
        return problems;
    }

    static String of(byte[] bytes, String ending) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance(ALGORITHMS.get(ending)).digest(bytes));
        } catch (NoSuchAlgorithmException everyJdkHasIt) {
            throw new IllegalStateException(everyJdkHasIt);
        }
    }
}
