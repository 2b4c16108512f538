package org.neckgeom.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.template.Paper;
import org.neckgeom.template.Template;

/**
 * Pages as a browser lays them out: nothing runs off a phone, no label lies on another, full size is full size. Needs
 * Chromium (Debian: {@code apt-get install chromium}); without it these tests are skipped, and say so.
 */
class SheetInBrowserTest {

    private static final double MM_PER_PIXEL = 25.4 / 96;

    /** Writes what is wrong into the outer page: labels on each other or outside their drawing, parts past the edge. */
    static final String LAYOUT = """
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

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "octave-mandolin.yaml, 360",
        "octave-mandolin.yaml, 1280",
        "short-scale-bass.yaml, 360",
        "short-scale-bass.yaml, 1280",
        "fanned-baritone.yaml, 360",
        "fanned-baritone.yaml, 1280",
        "parlour-guitar.yaml, 360",
        "parlour-guitar.yaml, 1280"
    })
    void page_hasNoLabelOnAnother_andNothingPastItsEdge(String neck, int width) throws Exception {
        Job plan = NeckFile.read(neck);

        String report = Browser.opened(folder, Sheet.of(plan).toHtml(), width, LAYOUT);
        List<String> lines = report.lines().toList();

        assertEquals(width + " wide", lines.get(0));
        assertTrue(Integer.parseInt(lines.get(1).split(" ")[0]) > 60, lines.get(1));
        assertEquals(2, lines.size(), report);
    }

    /** What is set for the channel is not parted over two sheets, and what is folded on a screen is open on paper. */
    @ParameterizedTest
    @ValueSource(
            strings = {"octave-mandolin.yaml", "short-scale-bass.yaml", "fanned-baritone.yaml", "parlour-guitar.yaml"})
    void print_hasTheChannelOnOneSheet_andAllThatIsFolded(String neck) throws Exception {
        Job job = NeckFile.read(neck);
        PlanSection channel = job.plan().section(SectionCode.CHANNEL).orElseThrow();
        List<String> sheets = new ArrayList<>();
        try (PDDocument document =
                Loader.loadPDF(Browser.printed(folder, Sheet.of(job).toHtml()))) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                sheets.add(squeezed(stripper.getText(document)));
            }
        }

        List<String> with = sheets.stream()
                .filter(sheet -> channel.rows().stream()
                        .map(row -> squeezed(row.value().lines().findFirst().orElseThrow()))
                        .allMatch(sheet::contains))
                .filter(sheet -> sheet.contains(squeezed(channel.title())))
                .toList();
        assertEquals(1, with.size(), channel.toString());
        String all = String.join("", sheets);
        job.plan()
                .order()
                .steps()
                .forEach(step -> assertTrue(
                        all.contains(squeezed(step.why())), step.operation().name()));
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", "");
    }

    @Test
    void templatePages_areFullSizeOnTheRenderedPage() throws Exception {
        Job plan = NeckFile.read("octave-mandolin.yaml");

        String report = Browser.opened(folder, Template.of(plan).toPages(Paper.A4), 1280, BARS);
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
}
