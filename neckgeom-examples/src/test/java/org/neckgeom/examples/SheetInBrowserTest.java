package org.neckgeom.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.template.Paper;
import org.neckgeom.template.Template;

/**
 * Pages as a browser lays them out: nothing runs off a phone, no label lies on another, full size is full size. Needs
 * Chromium (Debian: {@code apt-get install chromium}); without it these tests are skipped, and say so.
 */
class SheetInBrowserTest {

    static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");
    private static final double MM_PER_PIXEL = 25.4 / 96;

    /** Writes what is wrong into the outer page: labels on each other or outside their drawing, parts past the edge. */
    private static final String LAYOUT = """
            <script>addEventListener('load', () => {
              const wrong = [];
              const scroll = document.documentElement.scrollWidth;
              if (scroll > innerWidth) wrong.push('page is ' + scroll + ' wide');
              document.querySelectorAll('body *').forEach(e => {
                const r = e.getBoundingClientRect();
                if (r.width > 0 && r.right > innerWidth + 0.5 && !e.closest('.scroll'))
                  wrong.push('past the edge: ' + e.tagName + ' ' + e.textContent.slice(0, 40));
              });
              let labels = 0;
              document.querySelectorAll('svg').forEach(svg => {
                const s = svg.getBoundingClientRect();
                const title = svg.querySelector('title').textContent;
                const texts = [...svg.querySelectorAll('text')].map(e => [e.textContent, e.getBoundingClientRect()]);
                labels += texts.length;
                texts.forEach(([text, r]) => {
                  if (r.left < s.left - 0.5 || r.right > s.right + 0.5 || r.top < s.top - 0.5 || r.bottom > s.bottom + 0.5)
                    wrong.push('outside ' + title + ': ' + text);
                });
                texts.forEach(([text, a], i) => texts.slice(i + 1).forEach(([other, b]) => {
                  const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
                  const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
                  // Boxes of text hold room above and below the letters; three units of it may meet.
                  if (across > 0.5 && down > 3 * s.width / 336) wrong.push('on each other in ' + title + ': ' + text + ' / ' + other);
                }));
              });
              report([innerWidth + ' wide', labels + ' labels', ...wrong].join('\\n'));
            });
            function report(text) {
              const pre = parent.document.createElement('pre');
              pre.id = 'report';
              pre.textContent = text;
              parent.document.body.replaceChildren(pre);
            }
            </script>
            """;

    /** Writes the longest level check line of every drawing, in CSS pixels. */
    private static final String BARS = """
            <script>addEventListener('load', () => {
              const bars = [...document.querySelectorAll('g.scale line')].map(e => e.getBoundingClientRect())
                .filter(r => r.width > 300 && r.height < 5).map(r => r.width.toFixed(4));
              const pre = parent.document.createElement('pre');
              pre.id = 'report';
              pre.textContent = bars.join('\\n');
              parent.document.body.replaceChildren(pre);
            });
            </script>
            """;

    private static Optional<Path> browser;

    @TempDir
    Path folder;

    @BeforeAll
    static void find() {
        browser = Stream.of(System.getenv().getOrDefault("PATH", "").split(":"))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
        if (browser.isEmpty()) {
            System.err.println("SKIPPED: pages were not opened in a browser, none of " + NAMES + " is installed");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "octave-mandolin.yaml, 360",
        "octave-mandolin.yaml, 1280",
        "short-scale-bass.yaml, 360",
        "short-scale-bass.yaml, 1280",
        "fanned-baritone.yaml, 360",
        "fanned-baritone.yaml, 1280"
    })
    void page_hasNoLabelOnAnother_andNothingPastItsEdge(String neck, int width) throws Exception {
        Job plan = NeckFile.read(neck);

        String report = opened(Sheet.of(plan).toHtml(), width, LAYOUT);
        List<String> lines = report.lines().toList();

        assertEquals(width + " wide", lines.get(0));
        assertTrue(Integer.parseInt(lines.get(1).split(" ")[0]) > 60, lines.get(1));
        assertEquals(2, lines.size(), report);
    }

    @Test
    void templatePages_areFullSizeOnTheRenderedPage() throws Exception {
        Job plan = NeckFile.read("octave-mandolin.yaml");

        String report = opened(Template.of(plan).toPages(Paper.A4), 1280, BARS);
        double[] bars = report.lines()
                .mapToDouble(line -> Double.parseDouble(line) * MM_PER_PIXEL)
                .toArray();

        long metric =
                Arrays.stream(bars).filter(mm -> Math.abs(mm - 100) < 0.02).count();
        long inches =
                Arrays.stream(bars).filter(mm -> Math.abs(mm - 101.6) < 0.02).count();
        assertTrue(metric >= 4, report);
        assertEquals(metric, inches, report);
    }

    /** Opens a page in a frame of a width, as headless windows can't be narrower than 500 pixels; returns its report. */
    private String opened(String page, int width, String script) throws IOException, InterruptedException {
        Assumptions.assumeTrue(browser.isPresent(), "no Chromium installed: pages were not opened in a browser");
        String inner = page.replace("</body>", script + "</body>");
        String frame = "<!DOCTYPE html><html><body><iframe width=\"" + width + "\" height=\"3000\" style=\"border:0\""
                + " srcdoc=\"" + inner.replace("&", "&amp;").replace("\"", "&quot;") + "\"></iframe></body></html>";
        Path file = Files.writeString(folder.resolve("frame.html"), frame);
        Path dump = folder.resolve("dump.html");
        Process process = new ProcessBuilder(
                        browser.orElseThrow().toString(),
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--user-data-dir=" + folder.resolve("profile"),
                        "--window-size=1400,3000",
                        "--dump-dom",
                        file.toUri().toString())
                .redirectOutput(dump.toFile())
                .redirectError(folder.resolve("errors.txt").toFile())
                .start();
        if (!process.waitFor(90, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("the browser did not end within 90 s");
        }
        String dom = Files.readString(dump, StandardCharsets.UTF_8);
        Matcher report = Pattern.compile("<pre id=\"report\">(.*?)</pre>", Pattern.DOTALL)
                .matcher(dom);
        assertTrue(report.find(), () -> "no report from the browser: " + dom.substring(0, Math.min(500, dom.length())));
        return report.group(1).replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
    }
}
