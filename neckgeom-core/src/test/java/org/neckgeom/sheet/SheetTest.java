package org.neckgeom.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.setup.Caution;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SheetTest {

    private static final Sheet OCTAVE = Sheet.of(Necks.octaveContents());
    private static final Sheet BASS = Sheet.of(Necks.bassContents());

    @Test
    void toText_isTheApprovedOne() {
        Approved.holds("octave.txt", OCTAVE.toText());
        Approved.holds("bass.txt", BASS.toText());
    }

    @Test
    void toHtml_isTheApprovedOne() {
        Approved.holds("octave.html", OCTAVE.toHtml());
        Approved.holds("bass.html", BASS.toHtml());
    }

    @Test
    void toText_keepsToEightyColumns() {
        for (Sheet sheet : List.of(OCTAVE, BASS)) {
            sheet.toText().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        }
    }

    @Test
    void toText_saysWhatToStopForFirst() {
        String text = OCTAVE.toText();

        int stop = text.indexOf("STOP  slot on the centre");
        int open = text.indexOf("OPEN  head clear of the fence");
        int good = text.indexOf("GOOD  wood left under the channel");
        int settings = text.indexOf("Centre the cutter\n");
        assertTrue(stop > 0 && stop < open && open < good && good < settings, text);
    }

    @Test
    void toHtml_readsAsXml_andKeepsNamesAsTheyAre() {
        Document page = Xml.parsed(BASS.toHtml());

        assertEquals(Necks.bass().name(), Xml.all(page, "h1").get(0).getTextContent());
        Document octave = Xml.parsed(OCTAVE.toHtml());
        assertTrue(Xml.all(octave, "dt").stream()
                .anyMatch(dt -> dt.getTextContent().equals("<b>&\"")));
        assertEquals(0, octave.getElementsByTagName("script").getLength());
    }

    @Test
    void toHtml_isCompleteInItself() {
        for (Sheet sheet : List.of(OCTAVE, BASS)) {
            String html = sheet.toHtml();
            assertFalse(html.contains("src="), "something is fetched");
            assertFalse(html.contains("url("), "something is fetched");
            assertFalse(html.contains("@import"), "something is fetched");
            assertFalse(html.contains("<link"), "something is fetched");
            for (Element link : Xml.all(Xml.parsed(html), "a")) {
                assertTrue(link.getAttribute("href").startsWith("#"), link.getAttribute("href"));
            }
        }
    }

    @Test
    void toHtml_linksAndLabelsLeadSomewhere() {
        for (Sheet sheet : List.of(OCTAVE, BASS)) {
            Document page = Xml.parsed(sheet.toHtml());
            Set<String> ids = new HashSet<>();
            for (Element any : Xml.all(page, "*")) {
                if (any.hasAttribute("id")) {
                    assertTrue(ids.add(any.getAttribute("id")), () -> "twice: " + any.getAttribute("id"));
                }
            }
            for (Element link : Xml.all(page, "a")) {
                assertTrue(ids.contains(link.getAttribute("href").substring(1)), link.getAttribute("href"));
            }
            for (Element svg : Xml.all(page, "svg")) {
                for (String id : svg.getAttribute("aria-labelledby").split(" ")) {
                    assertTrue(ids.contains(id), id);
                }
            }
        }
    }

    @Test
    void toHtml_everyDrawingHasATextAlternative() {
        Document page = Xml.parsed(OCTAVE.toHtml());
        List<Element> drawings = Xml.all(page, "svg");

        assertEquals(8, drawings.size(), "plan, side, scarf, heel and four sections");
        for (Element svg : drawings) {
            assertEquals("img", svg.getAttribute("role"));
            assertFalse(Xml.all(svg, "title").get(0).getTextContent().isBlank());
            String words = Xml.all(svg, "desc").get(0).getTextContent();
            assertTrue(words.length() > 60, words);
        }
    }

    @Test
    void toHtml_saysHowManyToStopFor() {
        Document page = Xml.parsed(OCTAVE.toHtml());

        assertEquals("1 STOP", Xml.all(page, "li", "stop").get(0).getTextContent());
        assertEquals(
                List.of("STOP", "OPEN", "GOOD"),
                Xml.all(page, "span", "mark").stream()
                        .map(Element::getTextContent)
                        .toList());
    }

    @Test
    void toHtml_headingsNeverSkipALevel() {
        Document page = Xml.parsed(OCTAVE.toHtml());
        int last = 0;
        for (Element any : Xml.all(page, "*")) {
            if (any.getTagName().matches("h[1-6]")) {
                int level = any.getTagName().charAt(1) - '0';
                assertTrue(level <= last + 1, any.getTextContent());
                last = level;
            }
        }
        assertTrue(last > 1, "no headings");
    }

    @Test
    void of_leavesNothingOfThePlanOut() {
        NeckPlan plan = Necks.octavePlan();
        String text = words(Sheet.of(plan).toText());
        String page = words(
                Xml.all(Xml.parsed(Sheet.of(plan).toHtml()), "main").get(0).getTextContent());

        assertFalse(plan.sections().isEmpty()
                || plan.checks().isEmpty()
                || plan.cautions().isEmpty());
        for (String sheet : List.of(text, page)) {
            for (PlanSection section : plan.sections()) {
                assertTrue(sheet.contains(words(section.title())), section.title());
                for (PlanSection.Row row : section.rows()) {
                    assertTrue(sheet.contains(words(row.label())), row.label());
                    assertTrue(sheet.contains(words(row.value())), row.value());
                }
                section.notes().forEach(note -> assertTrue(sheet.contains(words(note)), note));
            }
            for (PlanCheck check : plan.checks()) {
                for (String part : List.of(check.name(), check.found(), check.allowed(), check.todo())) {
                    assertTrue(sheet.contains(words(part)), part);
                }
            }
            for (Caution caution : plan.cautions()) {
                assertTrue(sheet.contains(words(caution.text())), caution.text());
                assertTrue(sheet.contains(words(caution.why())), caution.why());
            }
        }
    }

    /** The text without its spaces and line feeds, which wrapping may change. */
    private static String words(String text) {
        return text.replaceAll("\\s+", "");
    }

    @Test
    void toString_isShort_andSaysHowChecksStand() {
        assertTrue(OCTAVE.toString().length() < 1000);
        assertTrue(OCTAVE.toString().contains("1 to stop for, 1 open, 1 good"), OCTAVE.toString());
    }

    @Test
    void equals_isByContents() {
        assertEquals(OCTAVE, Sheet.of(Necks.octaveContents()));
        assertEquals(OCTAVE.hashCode(), Sheet.of(Necks.octaveContents()).hashCode());
        assertFalse(OCTAVE.equals(BASS));
    }
}
