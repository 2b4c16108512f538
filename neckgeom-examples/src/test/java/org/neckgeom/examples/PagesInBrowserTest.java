package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.template.Cards;
import org.neckgeom.template.Paper;
import org.openqa.selenium.Keys;

/**
 * The pages in a Chromium that is driven by keyboard, on a phone's width in light colours and a desk's in dark: without violations
 * of WCAG 2.2 A and AA by axe-core, nothing past the edge, every drawing near the top.
 */
class PagesInBrowserTest {

    /** So far down a phone's page a drawing may begin, in its pixels: two screens and a half (own choice). */
    private static final long LOWEST_DRAWING = 2100;

    private static final String UNFOLD = "document.querySelectorAll('details').forEach(e => e.open = true); return 1";

    private static final String PAST_THE_EDGE = """
            return [...document.querySelectorAll('body *')].filter(e => {
              const r = e.getBoundingClientRect();
              return r.width > 0 && r.right > document.documentElement.clientWidth + 0.5 && !e.closest('.scroll') && !e.closest('svg');
            }).map(e => e.tagName + ' ' + e.textContent.slice(0, 60));
            """;

    /** Where the lowest drawing of the page begins that is seen with nothing unfolded. */
    private static final String LOWEST = """
            return Math.max(...[...document.querySelectorAll('figure svg')].filter(e => !e.closest('details') && !e.closest('#what-if'))
              .map(e => Math.round(e.getBoundingClientRect().top + scrollY)));
            """;

    @TempDir
    Path folder;

    private void open(Browser browser, String html) throws IOException {
        browser.open(
                Files.writeString(folder.resolve("page.html"), html).toUri().toString());
    }

    private void isClean(Browser browser) throws IOException {
        List<?> found = browser.axe();
        assertThat(Integer.parseInt(String.valueOf(found.get(0)))).isGreaterThan(10);
        assertThat(found.subList(1, found.size())).isEmpty();
        assertThat((List<?>) browser.run(PAST_THE_EDGE)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = {"PHONE", "DESK"})
    void plan_isCleanUnfolded_andItsDrawingsAreNearTheTopFolded(Browser.Kind kind) throws IOException {
        Browser browser = Browser.of(kind);
        for (String neck : ShippedNecks.names()) {
            open(browser, Sheet.of(NeckFile.read(neck)).toHtml());
            assertThat((Long) browser.run("return innerWidth")).isEqualTo(kind == Browser.Kind.PHONE ? 390 : 1280);
            assertThat(browser.run("return matchMedia('(prefers-color-scheme: dark)').matches"))
                    .isEqualTo(kind == Browser.Kind.DESK);
            assertThat((List<?>) browser.run(PAST_THE_EDGE)).isEmpty();
            assertThat((Long) browser.run(LOWEST)).as(neck).isBetween(100L, LOWEST_DRAWING);
            browser.run(UNFOLD);
            isClean(browser);
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"PHONE", "DESK"})
    void plan_isUnfoldedByTheKeyboard(Browser.Kind kind) throws IOException {
        Browser browser = Browser.of(kind);
        open(browser, Sheet.of(NeckFile.read("octave-mandolin.yaml")).toHtml());
        browser.tabTo("#closer summary");
        assertThat(browser.text("closer")).doesNotContain("head wide at tip");
        browser.type(Keys.ENTER);
        assertThat(browser.text("closer")).contains("head wide at tip");
    }

    @ParameterizedTest
    @EnumSource(names = {"PHONE", "DESK"})
    void cards_areClean(Browser.Kind kind) throws IOException {
        Browser browser = Browser.of(kind);
        for (String neck : ShippedNecks.names()) {
            open(browser, Cards.of(NeckFile.read(neck)).toPages(Paper.A4));
            List<?> found = browser.axe();
            assertThat(found.subList(1, found.size())).as(neck).isEmpty();
        }
    }

    /** Readings by hand: walls and slot add up to the piece, e = (near - far)/2; the second cut is misread by 1 mm. */
    @ParameterizedTest
    @EnumSource(names = {"PHONE", "DESK"})
    void bench_takesASessionOfTheChannelByTheKeyboardAlone(Browser.Kind kind) throws Exception {
        Path file = Files.writeString(folder.resolve("my-neck.yaml"), ShippedNecks.text("octave-mandolin.yaml"));
        Browser browser = Browser.of(kind);
        try (BenchServer server = BenchServer.start(BenchFile.at(file), Optional.empty())) {
            browser.open(server.address());
            isClean(browser);
            cut(browser, "26.79", "28.21");
            assertThat(browser.text("answer")).contains("OK: near wall 26.79 mm", "0.709 mm nearer the fence");
            isClean(browser);
            browser.tabTo("#moved");
            browser.type("0.71");
            browser.tabTo("select");
            browser.type("away");
            browser.tabTo("button[value=keep]");
            browser.send();
            assertThat(browser.text("answer")).contains("OK: fence moved by 0.71 mm away");
            cut(browser, "28.49", "27.51");
            assertThat(browser.text("answer")).contains("Read the same cut again");
            isClean(browser);
            browser.open(server.address());
            cut(browser, "27.10", "27.90");
            browser.tabTo("button[value=undo]");
            browser.send();
            assertThat(browser.text("answer")).contains("OK: taken back: near wall 27.1 mm");
            cut(browser, "27.50", "27.50");
            assertThat(browser.text("now")).contains("Cut the rod channel");
            isClean(browser);
        }
        Job kept = NeckFile.read(file);
        assertThat(kept.steps()).hasSize(3);
        assertThat(kept.plan().slot().step()).isEqualTo(SlotStep.CUT);
    }

    private static void cut(Browser browser, String near, String far) throws InterruptedException {
        browser.tabTo("#near-wall");
        browser.type(near);
        browser.tabTo("#far-wall");
        browser.type(far);
        browser.tabTo("#slot");
        browser.type("6.02");
        browser.tabTo("#piece");
        browser.type("61.02");
        browser.send();
    }
}
