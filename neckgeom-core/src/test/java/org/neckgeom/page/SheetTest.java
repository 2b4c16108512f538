package org.neckgeom.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.drawing.Xml;
import org.neckgeom.form.Statement;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.shop.Caution;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.testing.Approved;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SheetTest {

    private static final Contents OCTAVE = Necks.octaveContents();
    private static final Contents WORK = Necks.workContents();
    private static final Contents BASS = Necks.bassContents();

    @Test
    void toText_isTheApprovedOne() {
        Approved.hold(
                "page",
                Map.of(
                        "octave.txt",
                        PlainText.of(OCTAVE),
                        "work.txt",
                        PlainText.of(WORK),
                        "bass.txt",
                        PlainText.of(BASS)));
    }

    @Test
    void toHtml_isTheApprovedOne() {
        Approved.hold(
                "page", Map.of("octave.html", Page.of(OCTAVE), "work.html", Page.of(WORK), "bass.html", Page.of(BASS)));
    }

    /** An answer in an answer in a row: each one's labels are a column of their own. */
    @Test
    void answersInsideAnswers_areLaidOutOneUnderTheOther() {
        LengthStyle style = LengthStyle.MILLIMETRES;
        Statement named = Statement.of("label", "piece", style);
        PlanSection inner = PlanSection.of(
                "inner",
                "two sides",
                List.of(
                        new PlanSection.Row("left", named, Statement.of("left", "left,\nthe near one", style)),
                        new PlanSection.Row(
                                "right",
                                Statement.of("label", "other piece", style),
                                Statement.of("right", "right", style))),
                List.of(Statement.of("note", "a  note", style)),
                style);
        PlanSection outer =
                PlanSection.of("outer", "Outer", List.of(new PlanSection.Row("row", named, inner)), List.of(), style);
        Contents octave = Necks.octaveContents();
        Contents sheet = new Contents(
                octave.design(),
                octave.settled(),
                style,
                octave.scarf(),
                octave.neckSet(),
                List.of(),
                List.of(),
                List.of(outer),
                Optional.empty(),
                List.of(),
                () -> "0f1e2d3c",
                Optional.empty());

        assertTrue(PlainText.of(sheet)
                .contains(String.join(
                        "\n",
                        "  piece  two sides",
                        "           piece        left,",
                        "                        the near one",
                        "           other piece  right",
                        "           a note\n")));
        List<Element> rows = Xml.all(Xml.parsed(Page.of(sheet)), "dd");
        assertEquals(1, rows.size());
        assertEquals(
                List.of("two sides", "piece left,", "the near one", "other piece right", "a  note"),
                Xml.all(rows.get(0), "span").stream()
                        .filter(span -> Set.of("first", "more").contains(span.getAttribute("class")))
                        .map(span -> span.getTextContent().strip().replace("\n", ""))
                        .toList());
    }

    @Test
    void toText_keepsToEightyColumns() {
        for (Contents sheet : List.of(OCTAVE, WORK, BASS)) {
            PlainText.of(sheet).lines().forEach(line -> assertTrue(line.length() <= 80, line));
        }
    }

    @Test
    void toText_saysWhatToStopForFirst() {
        String text = PlainText.of(OCTAVE);

        int stop = text.indexOf("STOP  channel centred");
        int open = text.indexOf("OPEN  readings agree");
        int good = text.indexOf("OK  wood under the channel");
        int settings = text.indexOf("Centre the cutter\n");
        assertTrue(stop > 0 && stop < open && open < good && good < settings, text);
    }

    @Test
    void toHtml_readsAsXml_andKeepsNamesAsTheyAre() {
        Document page = Xml.parsed(Page.of(BASS));

        assertEquals(Necks.bass().name(), Xml.all(page, "h1").get(0).getTextContent());
        Document octave = Xml.parsed(Page.of(OCTAVE));
        assertTrue(Xml.all(octave, "dt").stream()
                .anyMatch(dt -> dt.getTextContent().equals("<b>&\"")));
        assertEquals(0, octave.getElementsByTagName("script").getLength());
    }

    @Test
    void toHtml_isCompleteInItself() {
        for (Contents sheet : List.of(OCTAVE, WORK, BASS)) {
            String html = Page.of(sheet);
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
        for (Contents sheet : List.of(OCTAVE, WORK, BASS)) {
            Document page = Xml.parsed(Page.of(sheet));
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
        Document page = Xml.parsed(Page.of(WORK));
        List<Element> drawings = Xml.all(page, "svg");

        assertEquals(12, drawings.size(), "neck, two of the budget, plan, side, order, scarf, heel and four sections");
        for (Element svg : drawings) {
            assertEquals("img", svg.getAttribute("role"));
            assertFalse(Xml.all(svg, "title").get(0).getTextContent().isBlank());
            String words = Xml.all(svg, "desc").get(0).getTextContent();
            assertTrue(words.length() > 60, words);
        }
    }

    @Test
    void toHtml_saysHowManyToStopFor() {
        Document page = Xml.parsed(Page.of(OCTAVE));

        assertEquals("1 STOP", Xml.all(page, "li", "stop").get(0).getTextContent());
        assertEquals(
                List.of("STOP", "OPEN", "OK"),
                Xml.all(page, "span", "mark").stream()
                        .map(Element::getTextContent)
                        .toList());
    }

    @Test
    void toHtml_barsAreAsLongAsTheirShares() {
        Document page = Xml.parsed(Page.of(WORK));
        List<Element> bars = Xml.all(page, "polygon", "bar");
        // Variances: normal 0.05^2; rectangular a^2/3; triangular a^2/6 (JCGM 100:2008, 4.3.7 and 4.3.9).
        double[] variances = {0.6 * 0.6 / 6, 0.35 * 0.35 / 3, 0.2 * 0.2 / 3, 0.05 * 0.05};
        double all = Arrays.stream(variances).sum();

        assertEquals(4, bars.size());
        for (int i = 0; i < 4; i++) {
            String[] points = bars.get(i).getAttribute("points").split("[ ,]");
            double length = Double.parseDouble(points[2]) - Double.parseDouble(points[0]);
            assertEquals(320 * variances[i] / all, length, 0.011, "bar " + i);
        }
    }

    @Test
    void toHtml_curveHasItsHighestPointAtTheMean_betweenTheLimits() {
        Document page = Xml.parsed(Page.of(WORK));
        String[] points =
                Xml.all(page, "polygon", "curve").get(0).getAttribute("points").split("[ ,]");
        double highest = Double.POSITIVE_INFINITY;
        double at = 0;
        for (int i = 0; i < points.length; i += 2) {
            if (Double.parseDouble(points[i + 1]) < highest) {
                highest = Double.parseDouble(points[i + 1]);
                at = Double.parseDouble(points[i]);
            }
        }
        List<Element> limits = Xml.all(page, "line", "limit");

        assertEquals(2, limits.size());
        double middle = (Xml.number(limits.get(0), "x1") + Xml.number(limits.get(1), "x1")) / 2;
        assertEquals(middle, at, 2.1, "all parts are even about 0, so the hump is midway between the limits");
    }

    @Test
    void toHtml_ordersTheStepsAndNamesTheConflict() {
        Document page = Xml.parsed(Page.of(WORK));
        List<String> steps = Xml.all(page, "ol", "steps").stream()
                .flatMap(list -> Xml.all(list, "h3").stream())
                .map(Element::getTextContent)
                .toList();

        assertTrue(steps.indexOf("glue wings") < steps.indexOf("cut rod channel"), steps.toString());
        assertTrue(page.getElementsByTagName("main").item(0).getTextContent().contains("wings in the way"));
        assertTrue(PlainText.of(WORK).contains("wings in the way"));
    }

    @Test
    void toHtml_headingsNeverSkipALevel() {
        Document page = Xml.parsed(Page.of(OCTAVE));
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
        Job plan = Necks.octavePlan();
        String text = words(Sheet.of(plan).toText());
        String page = words(
                Xml.all(Xml.parsed(Sheet.of(plan).toHtml()), "main").get(0).getTextContent());

        assertFalse(plan.plan().sections().isEmpty()
                || plan.plan().checks().isEmpty()
                || plan.plan().cautions().isEmpty());
        for (String sheet : List.of(text, page)) {
            for (PlanSection section : plan.plan().sections()) {
                assertTrue(sheet.contains(words(section.title())), section.title());
                for (PlanSection.Row row : section.rows()) {
                    boolean listed = section.code().equals(SectionCode.ORDER_OF_WORK.code());
                    boolean tabled = section.code().equals(SectionCode.FRETS.code());
                    // Steps lose their numbers on the page, where the list has them; places of frets are in the table.
                    String label = listed || tabled ? "" : words(row.label());
                    // A step and its reason: the page has a word between the two.
                    List<String> values =
                            listed ? row.value().lines().toList() : List.of(tabled ? rounded(row) : row.value());
                    assertTrue(sheet.contains(label), row.label());
                    values.forEach(value -> assertTrue(sheet.contains(words(value)), row.value()));
                }
                section.notes().forEach(note -> assertTrue(sheet.contains(words(note.toString())), note.toString()));
            }
            for (PlanCheck check : plan.plan().checks()) {
                for (String part : List.of(check.name(), check.found(), check.allowed(), check.todo())) {
                    assertTrue(sheet.contains(words(part)), part);
                }
            }
            for (Caution caution : plan.plan().cautions()) {
                assertTrue(sheet.contains(words(caution.text())), caution.text());
                assertTrue(sheet.contains(words(caution.why())), caution.why());
            }
        }
    }

    /** A fret's place on the scale of 560 mm to two decimals, by the twelfth root of 2. */
    private static String rounded(PlanSection.Row row) {
        int fret = row.label().equals("nut") ? 0 : Integer.parseInt(row.label().split(" ")[1]);
        double place = 560 * (1 - Math.pow(2, -fret / 12.0));
        return new BigDecimal(place).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    /** The text without its spaces and line feeds, which wrapping may change. */
    private static String words(String text) {
        return text.replaceAll("\\s+", "");
    }

    @Test
    void toString_isShort_andSaysHowChecksStand() {
        String text = Sheet.of(Necks.octavePlan()).toString();

        assertTrue(text.length() < 1000);
        assertTrue(text.matches("(?s).*\\d+ of \\d+ checks OK, \\d+ open.*"), text);
    }

    @Test
    void printIn_changesWhatIsPrinted_notTheSheet() {
        Sheet sheet = Sheet.of(Necks.octavePlan());
        Sheet inches = Sheet.of(Necks.octavePlan().printIn(LengthStyle.DECIMAL_INCHES));

        assertEquals(sheet, inches);
        assertEquals(sheet.hashCode(), inches.hashCode());
        assertFalse(sheet.toText().equals(inches.toText()));
        assertFalse(sheet.equals(Sheet.of(Necks.octavePlan().relief(ShopUnits.mm(0.3)))));
    }

    private static Job bassPlan() {
        return Job.of(
                Necks.bass(),
                Blank.ofLength(ShopUnits.inch(38))
                        .section(ShopUnits.inch(4), ShopUnits.inch(1))
                        .nutAt(ShopUnits.inch(8)),
                Shop.with(Cutter.straight(ShopUnits.inch("1/4"))));
    }

    /** Safety, said in both units, and leaves, called as they are stamped, aside. */
    @Tag("long")
    @Test
    void printIn_leavesNothingInAnotherUnit() {
        for (LengthStyle style : List.of(LengthStyle.DECIMAL_INCHES, LengthStyle.INCH_FRACTIONS)) {
            for (Job plan : List.of(Necks.octavePlan(), bassPlan())) {
                String text = Sheet.of(plan.printIn(style)).toText().replaceAll("[\\d.]+ mm lea", "lea");
                List<String> metric = text.lines()
                        .filter(line ->
                                line.matches(".*\\d mm\\b.*") && !line.matches(".*\\d mm \\([^)]* (in|thou)\\).*"))
                        .toList();
                assertEquals(List.of(), metric, style + " of " + plan.neck().name());
            }
        }
        for (Job plan : List.of(Necks.octavePlan(), bassPlan())) {
            List<String> imperial = Sheet.of(plan.printIn(LengthStyle.MILLIMETRES))
                    .toText()
                    .lines()
                    .filter(line -> line.matches(".*\\d (in(?! \\d)|thou)\\b.*") && !line.contains(" mm ("))
                    .toList();
            assertEquals(List.of(), imperial, plan.neck().name());
        }
    }
}
