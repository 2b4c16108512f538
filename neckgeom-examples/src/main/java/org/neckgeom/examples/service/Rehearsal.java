package org.neckgeom.examples.service;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.page.Document;

/** One of each request to a service of its own, so that a JVM that archives its classes has met them all. */
final class Rehearsal {

    static final String OPTION = "--try";

    private static final String CUT = "{\"nearWall\": \"26.79 mm\", \"farWall\": \"28.21 mm\"}";

    private Rehearsal() {}

    static void run() throws Refused {
        try {
            Path folder = Files.createTempDirectory("necks");
            try (NeckService service = NeckService.start(folder.resolve("necks.db"), 0)) {
                String neck = service.address() + "/necks/octave";
                put(neck, Document.PLAN.json(NeckFile.read(ShippedNecks.DEFAULT)));
                put(neck + "/cuts/first", CUT);
                get(neck);
                get(neck + "/page");
            } finally {
                removed(folder);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void put(String address, String json) throws IOException {
        HttpURLConnection connection = opened(address);
        connection.setRequestMethod("PUT");
        connection.setRequestProperty("Content-Type", "application/json");
        connection.setDoOutput(true);
        connection.getOutputStream().write(json.getBytes(StandardCharsets.UTF_8));
        read(connection);
    }

    private static void get(String address) throws IOException {
        read(opened(address));
    }

    private static HttpURLConnection opened(String address) throws IOException {
        return (HttpURLConnection) URI.create(address).toURL().openConnection();
    }

    private static void read(HttpURLConnection connection) throws IOException {
        if (connection.getInputStream().readAllBytes().length == 0) {
            throw new IOException(connection.getURL() + " gives nothing");
        }
    }

    private static void removed(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
