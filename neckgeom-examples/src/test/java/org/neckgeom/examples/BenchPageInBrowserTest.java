package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.examples.neck.ShippedNecks;

/** The bench page as a browser lays it out, by WCAG 2.2: reflow, contrast 1.4.3, target size 2.5.5, labels 3.3.2, order 2.4.3. */
class BenchPageInBrowserTest {

    /** Writes what a hand, an eye or a keyboard would miss. */
    private static final String HANDS = """
            <script>addEventListener('load', () => {
              const wrong = [];
              const all = q => [...document.querySelectorAll(q)];
              const fields = all('input:not([type=hidden]), select');
              fields.forEach(e => {
                const label = document.querySelector('label[for="' + e.id + '"]');
                if (!label || !label.textContent.trim()) wrong.push('no label: ' + e.name);
                (e.getAttribute('aria-describedby') || 'none').split(' ')
                  .forEach(id => document.getElementById(id) || wrong.push('described by nothing: ' + e.name));
                if (e.tagName === 'INPUT' && e.inputMode !== 'decimal') wrong.push('no decimal keys: ' + e.name);
              });
              const reached = all('input:not([type=hidden]), select, button, summary, a');
              let last = null;
              reached.forEach(e => {
                const r = e.getBoundingClientRect();
                if (r.width < 44 || r.height < 44) wrong.push('small: ' + e.tagName + ' ' + r.width + ' x ' + r.height);
                if (e.tabIndex !== 0) wrong.push('out of order: ' + e.tagName);
                if (last && r.top < last.top - 1 && r.left < last.left + 1) wrong.push('up again: ' + e.tagName);
                last = r;
              });
              const ids = all('[id]').map(e => e.id);
              if (new Set(ids).size !== ids.length) wrong.push('an id twice');
              if (all('h1').length !== 1 || all('main').length !== 1) wrong.push('not one h1 and main');
              const form = document.querySelector('form');
              if (form && form.querySelector('button').value !== FIRST) wrong.push('ENTER does ' + form.querySelector('button').value);
              const rgb = c => (c.match(/[0-9.]+/g) || []).map(Number);
              const light = c => { const [r, g, b] = c.map(v => { v /= 255; return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4; });
                return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
              const ground = e => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor);
                if (c.length === 3 || c[3] === 1) return c; } return [255, 255, 255]; };
              let texts = 0;
              all('body *:not(svg *):not(script):not(style)').filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim())).forEach(e => {
                const a = light(rgb(getComputedStyle(e).color)), b = light(ground(e).slice(0, 3));
                const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
                texts++;
                if (ratio < 4.5) wrong.push('contrast ' + ratio.toFixed(2) + ': ' + e.textContent.slice(0, 30));
              });
              const pre = parent.document.createElement('pre');
              pre.id = 'report';
              pre.textContent = [fields.length + ' fields', texts + ' texts', ...wrong].join('\\n');
              parent.document.body.replaceChildren(pre);
            });
            </script>
            """;

    @TempDir
    Path folder;

    private BenchFile bench(String neck) throws IOException {
        Path file = Files.writeString(folder.resolve("my-neck.yaml"), ShippedNecks.text(neck));
        return BenchFile.at(file);
    }

    private static Map<String, String> walls(String near, String far) {
        Map<String, String> walls = new LinkedHashMap<>();
        walls.put("near-wall", near);
        walls.put("far-wall", far);
        walls.put("slot", "6.02");
        walls.put("piece", "61.02");
        return walls;
    }

    private static String page(BenchFile file, BenchFile.Answer answer, Map<String, String> typed) {
        return BenchPage.of(file, "0".repeat(32), Optional.of(answer), typed);
    }

    private void isRight(String page, int width, String first, int fields) throws Exception {
        List<String> layout = Browser.opened(folder, page, width, SheetInBrowserTest.LAYOUT)
                .lines()
                .toList();
        assertThat(layout).hasSize(2).first().isEqualTo(width + " wide");
        List<String> hands = Browser.opened(folder, page, width, HANDS.replace("FIRST", "'" + first + "'"))
                .lines()
                .toList();
        assertThat(hands).hasSize(2).first().isEqualTo(fields + " fields");
        assertThat(Integer.parseInt(hands.get(1).split(" ")[0])).isGreaterThan(20);
    }

    /** At the trial cut with a reading refused; at the move; at the cut. Then what other steps ask. */
    @ParameterizedTest
    @CsvSource({"390", "1280"})
    void page_isRightForHandEyeAndKeyboard(int width) throws Exception {
        BenchFile file = bench("octave-mandolin.yaml");
        Map<String, String> wrong = walls("-5", "28.21");
        isRight(page(file, file.enter(wrong), wrong), width, "keep", 4);
        isRight(page(file, file.enter(walls("26.79", "28.21")), Map.of()), width, "keep", 2);
        file.enter(Map.of("moved", "0.71 away"));
        isRight(page(file, file.enter(walls("27.5", "27.5")), Map.of()), width, "keep", 6);
    }

    @Test
    void page_isRightInInches() throws Exception {
        BenchFile file = bench("short-scale-bass.yaml");
        isRight(
                BenchPage.of(file, "0".repeat(32), Optional.empty(), Map.of()),
                390,
                "keep",
                file.session().questions().size());
    }
}
