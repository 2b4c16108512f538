package org.neckgeom.examples;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Which neckgeom this is. */
final class Version {

    private Version() {}

    /** As its build names it. */
    static String current() {
        try (InputStream in = Version.class.getResourceAsStream("/version.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
