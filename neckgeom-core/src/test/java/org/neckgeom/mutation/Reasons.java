package org.neckgeom.mutation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Why mistakes live that were looked at: lines of class, method, kind and reason; {@code *} stands for any. */
record Reasons(List<Reason> all) {

    record Reason(String type, String method, String kind, String why) {

        static Reason parse(String line) {
            String[] parts = line.split(";", 4);
            if (parts.length < 4) {
                throw new IllegalArgumentException("a reason is: class;method;kind;why, but was: " + line);
            }
            return new Reason(parts[0].strip(), parts[1].strip(), parts[2].strip(), parts[3].strip());
        }

        boolean isFor(Mutant mutant) {
            return same(type, mutant.type()) && same(method, mutant.method()) && same(kind, mutant.kind());
        }

        private static boolean same(String wanted, String found) {
            return wanted.equals("*") || wanted.equals(found);
        }
    }

    static Reasons read(Path file) throws IOException {
        return new Reasons(Files.readAllLines(file).stream()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .map(Reason::parse)
                .toList());
    }

    /** The first that fits, or nothing. */
    String of(Mutant mutant) {
        return all.stream()
                .filter(reason -> reason.isFor(mutant))
                .map(Reason::why)
                .findFirst()
                .orElse("");
    }

    /** Reasons for mistakes that no longer live. */
    List<String> unused(List<Mutant> living) {
        return all.stream()
                .filter(reason -> living.stream().noneMatch(reason::isFor))
                .map(Reason::toString)
                .toList();
    }
}
