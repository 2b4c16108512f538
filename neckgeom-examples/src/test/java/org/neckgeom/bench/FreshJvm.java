package org.neckgeom.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Processes started from here with this JVM and class path, timed and listened to. */
final class FreshJvm {

    private static final int STARTS = 12;

    /** Milliseconds of a JVM that does nothing, gives a first result, gives one from Indriya's quantities; best of {@value #STARTS}. */
    record Times(double nothing, double own, double foreign) {}

    private FreshJvm() {}

    static Times times() throws IOException, InterruptedException {
        String[] kinds = {"nothing", "own", "foreign"};
        double[] best = new double[kinds.length];
        Arrays.fill(best, Double.POSITIVE_INFINITY);
        for (int round = 0; round < STARTS; round++) {
            for (int i = 0; i < kinds.length; i++) {
                long start = System.nanoTime();
                lines(List.of(), FirstResult.class, kinds[i]);
                best[i] = Math.min(best[i], (System.nanoTime() - start) * 1e-6);
            }
        }
        return new Times(best[0], best[1], best[2]);
    }

    /** How many classes of Indriya a first result loads; with {@code foreign}, proof that they would be seen. */
    static long indriyaClasses(String kind) throws IOException, InterruptedException {
        Path log = Files.createTempFile("classes", ".log");
        try {
            lines(List.of("-Xlog:class+load:file=" + log), FirstResult.class, kind);
            try (var lines = Files.lines(log)) {
                return lines.filter(line -> line.contains(" tech.units.")).count();
            }
        } finally {
            Files.delete(log);
        }
    }

    /** What a main class of this class path prints. */
    static List<String> lines(List<String> jvmArgs, Class<?> main, String... args)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(jvmArgs);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(List.of(args));
        return lines(command);
    }

    /** What a command prints; nothing where it cannot be started or fails. */
    static List<String> lines(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> lines = new String(
                        process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
                .lines()
                .toList();
        if (!process.waitFor(10, TimeUnit.MINUTES) || process.exitValue() != 0) {
            throw new IOException(command.get(command.size() - 1) + " failed: " + String.join("\n", lines));
        }
        return lines;
    }
}
