package org.neckgeom.examples;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A process of its own that writes sets of files into a folder, for tests that race it or kill it. */
final class ForkedWriter {

    private static final Duration LONG = Duration.ofMinutes(2);
    private static final List<String> NAMES = List.of("plan.html", "templates.svg", "templates.pdf", "frets.csv");

    private ForkedWriter() {}

    /** Starts one; where {@code haltAt} is 0 or more it holds the folder for good at that step. */
    static Process start(Path folder, String name, int times, int haltAt) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        classPath(),
                        ForkedWriter.class.getName(),
                        folder.toString(),
                        name,
                        String.valueOf(times),
                        String.valueOf(haltAt))
                .redirectErrorStream(true)
                .start();
    }

    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    /** Files of one writing, each of which names it, and their list. */
    static Map<Path, byte[]> set(Path into, String writing) {
        Map<Path, byte[]> files = new LinkedHashMap<>();
        Map<String, String> hashes = new TreeMap<>();
        for (String name : NAMES) {
            byte[] bytes = (writing + " " + name + "\n").repeat(500).getBytes(UTF_8);
            files.put(into.resolve(name), bytes);
            hashes.put(name, Hash.of(bytes));
        }
        StringBuilder list = new StringBuilder("{\"format\": \"neckgeom set\", \"version\": 1, \"set\": \"" + writing
                + "\", \"plan's hash\": \"" + Hash.of(writing.getBytes(UTF_8))
                + "\", \"neck file\": \"own.yaml\", \"units\": \"mm\", \"files\": {");
        hashes.forEach((name, hash) -> list.append("\"" + name + "\": \"" + hash + "\", "));
        list.setLength(list.length() - 2);
        files.put(into.resolve(OutputSet.NAME), list.append("}}\n").toString().getBytes(UTF_8));
        return files;
    }

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        int times = Integer.parseInt(args[2]);
        boolean isHolding = Integer.parseInt(args[3]) >= 0;
        boolean isEndless = times == Integer.MAX_VALUE;
        int whole = 0;
        for (int i = 0; i < times; i++) {
            OutputFiles.write(
                    set(folder, args[1] + "-" + i),
                    what -> {
                        if (isHolding && what.startsWith("move")) {
                            hold();
                        }
                    },
                    LONG);
            if (isEndless) {
                if (i == 0) {
                    System.out.println("begun");
                }
                continue;
            }
            FolderLock alone = FolderLock.of(folder, LONG);
            try {
                OutputSet.Checked found = OutputSet.check(folder);
                if (!found.isWhole()) {
                    System.out.print(found.text());
                    System.exit(1);
                }
                whole++;
            } finally {
                alone.close();
            }
        }
        System.out.println(whole + " times whole");
    }

    private static void hold() {
        System.out.println("holding");
        try {
            Thread.sleep(LONG.toMillis());
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
