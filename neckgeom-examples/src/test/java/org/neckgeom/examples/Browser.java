package org.neckgeom.examples;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** Chromium without a window, for tests of pages as they are laid out; where there is none they are skipped, and say so. */
final class Browser {

    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");
    private static final Optional<Path> FOUND = find();

    private Browser() {}

    private static Optional<Path> find() {
        Optional<Path> browser = found(NAMES);
        if (browser.isEmpty()) {
            System.err.println("SKIPPED: pages were not opened in a browser, none of " + NAMES + " is installed");
        }
        return browser;
    }

    /** The first program of some names on the path. */
    static Optional<Path> found(List<String> names) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(":"))
                .flatMap(folder -> names.stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    static Optional<Path> chromium() {
        return FOUND;
    }

    /** Opens a page in a frame of a width, as headless windows can't be narrower than 500 pixels; returns its report. */
    static String opened(Path folder, String page, int width, String script) throws IOException, InterruptedException {
        Assumptions.assumeTrue(FOUND.isPresent(), "no Chromium installed: pages were not opened in a browser");
        String inner = page.replace("</body>", script + "</body>");
        String frame = "<!DOCTYPE html><html><body><iframe width=\"" + width + "\" height=\"3000\" style=\"border:0\""
                + " srcdoc=\"" + inner.replace("&", "&amp;").replace("\"", "&quot;") + "\"></iframe></body></html>";
        Path file = Files.writeString(folder.resolve("frame.html"), frame);
        Path dump = folder.resolve("dump.html");
        run(folder, dump, "--window-size=1400,3000", "--dump-dom", file.toUri().toString());
        String dom = Files.readString(dump, StandardCharsets.UTF_8);
        Matcher report = Pattern.compile("<pre id=\"report\">(.*?)</pre>", Pattern.DOTALL)
                .matcher(dom);
        assertTrue(report.find(), () -> "no report from the browser: " + dom.substring(0, Math.min(500, dom.length())));
        return report.group(1).replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
    }

    /** A page as it is printed to a PDF. */
    static byte[] printed(Path folder, String page) throws IOException, InterruptedException {
        Assumptions.assumeTrue(FOUND.isPresent(), "no Chromium installed: pages were not printed by a browser");
        Path file = Files.writeString(folder.resolve("printed.html"), page);
        Path pdf = folder.resolve("printed.pdf");
        run(
                folder,
                folder.resolve("said.txt"),
                "--no-pdf-header-footer",
                "--print-to-pdf=" + pdf,
                file.toUri().toString());
        return Files.readAllBytes(pdf);
    }

    private static void run(Path folder, Path said, String... more) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                FOUND.orElseThrow().toString(),
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + folder.resolve("profile")));
        command.addAll(List.of(more));
        Process process = new ProcessBuilder(command)
                .redirectOutput(said.toFile())
                .redirectError(folder.resolve("errors.txt").toFile())
                .start();
        if (!process.waitFor(90, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("the browser did not end within 90 s");
        }
    }
}
