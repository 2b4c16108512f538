package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.examples.PdfLines.Line;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.template.Paper;
import org.neckgeom.template.Template;
import org.neckgeom.template.TemplatePage;
import org.neckgeom.template.TemplatePart;

/** The PDF of the templates parsed back, and rendered: what a rule on the print would read. */
class TemplatePdfTest {

    private static final double READ = 0.01;
    private static final Template OCTAVE = Template.of(NeckFile.read("octave-mandolin.yaml"));

    @TempDir
    Path folder;

    /** ISO 216: A4 is 210 mm x 297 mm. ANSI/ASME Y14.1: size A is 8 1/2 in x 11 in. A point is 1/72 in. */
    @ParameterizedTest
    @CsvSource({"A4, 297, 210", "LETTER, 279.4, 215.9"})
    void pages_areOfThePaper_andAskNotToBeScaled(Paper paper, double across, double down) throws IOException {
        try (PDDocument document = read(OCTAVE, paper)) {
            assertThat(document.getNumberOfPages()).isGreaterThan(4);
            for (PDPage page : document.getPages()) {
                assertThat(page.getMediaBox().getWidth() / 72 * 25.4).isCloseTo(across, within(1e-4));
                assertThat(page.getMediaBox().getHeight() / 72 * 25.4).isCloseTo(down, within(1e-4));
                assertThat(page.getMediaBox().getLowerLeftX()).isZero();
                assertThat(page.getCropBox().getWidth())
                        .isEqualTo(page.getMediaBox().getWidth());
                assertThat(page.getRotation()).isZero();
                assertThat(page.getUserUnit()).isEqualTo(1);
            }
            // ISO 32000-1, table 150: a reader then prints at 100 % unless told otherwise.
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
        }
    }

    @ParameterizedTest
    @CsvSource({"A4", "LETTER"})
    void bars_areHundredMillimetresAndFourInches_onTheMapAndOnceAPart(Paper paper) throws IOException {
        int parts = OCTAVE.parts().size();
        try (PDDocument document = read(OCTAVE, paper)) {
            assertThat(count(document, Line::isLevel, 100)).isEqualTo(1 + parts);
            // 4 in is 101.6 mm: the international inch, 25.4 mm exactly (1959).
            assertThat(count(document, Line::isLevel, 101.6)).isEqualTo(1 + parts);
            assertThat(count(document, Line::isUpright, 100)).isEqualTo(parts);
        }
    }

    /** By hand: 34 mm at the nut; fret 5 at 560 (1 - 2^(-5/12)); the head 185 mm long, from 60 to 76 mm wide. */
    @ParameterizedTest
    @CsvSource({"A4", "LETTER"})
    void outline_isAsLongAsItsDesign(Paper paper) throws IOException {
        try (PDDocument document = read(OCTAVE.only(TemplatePart.PLAN), paper)) {
            List<Line> first = PdfLines.of(document.getPage(1));
            Line nut = first.stream()
                    .filter(line -> line.isUpright() && Math.abs(line.length() - 34) < READ)
                    .findFirst()
                    .orElseThrow();
            double fret5 = 560 * (1 - Math.pow(2, -5 / 12.0));
            double joint = 560 * (1 - Math.pow(2, -14 / 12.0));
            assertThat(first).anySatisfy(line -> {
                assertThat(line.isUpright()).isTrue();
                assertThat(line.u1() - nut.u1()).isCloseTo(fret5, within(READ));
                assertThat(line.length()).isCloseTo(34 + 12 * fret5 / joint, within(READ));
            });
        }
        try (PDDocument document = read(OCTAVE.only(TemplatePart.HEAD), paper)) {
            List<Line> lines = lines(document);
            assertThat(lines).anySatisfy(line -> assertThat(line.length()).isCloseTo(76, within(READ)));
            assertThat(lines)
                    .filteredOn(line -> Math.abs(line.length() - Math.hypot(185, 8)) < READ)
                    .hasSizeGreaterThanOrEqualTo(2);
        }
    }

    /** A point of the sheet lies on both of two neighbours, a page's step apart: 297 - 20 - 10 mm. */
    @Test
    void crosses_standOnBothOfTwoNeighbours() throws IOException {
        try (PDDocument document = read(OCTAVE.only(TemplatePart.PLAN), Paper.A4)) {
            List<Line> one = strokes(document.getPage(1));
            List<Line> next = strokes(document.getPage(2));
            long shared = one.stream()
                    .filter(a -> next.stream()
                            .anyMatch(b -> Math.abs(a.u1() - 267 - b.u1()) < READ && Math.abs(a.v1() - b.v1()) < READ))
                    .count();

            assertThat(shared).isGreaterThanOrEqualTo(2);
        }
    }

    /** At 300 pixels to the inch 100 mm are 1181.1 pixels. */
    @Test
    void bar_isRenderedAtFullSize() throws IOException {
        try (PDDocument document = read(OCTAVE.only(TemplatePart.HEAD), Paper.A4)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 300, ImageType.GRAY);
            List<Integer> runs = new ArrayList<>();
            for (int y = 0; y < page.getHeight(); y++) {
                runs.add(longestRun(page, y));
            }

            assertThat(page.getWidth()).isBetween(3507, 3509);
            // The frame and the drawing are no runs of these lengths.
            assertThat(runs).anySatisfy(run -> assertThat(run).isBetween(1180, 1186));
            assertThat(runs).anySatisfy(run -> assertThat(run).isBetween(1199, 1205));
        }
    }

    private static int longestRun(BufferedImage page, int y) {
        int longest = 0;
        int run = 0;
        for (int x = 0; x < page.getWidth(); x++) {
            run = (page.getRGB(x, y) & 0xFF) < 128 ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    @Test
    void map_namesEveryPage_andPagesSayWhichTheyAre() throws IOException {
        List<TemplatePage> pages = OCTAVE.pages(Paper.A4);
        try (PDDocument document = read(OCTAVE, Paper.A4)) {
            PDFTextStripper words = new PDFTextStripper();
            words.setEndPage(1);
            String map = words.getText(document);
            assertThat(map)
                    .containsPattern(
                            "Octave mandolin, walnut \\(set [0-9a-f]{8}\\): map of " + (pages.size() - 1) + " pages")
                    .contains("A1", "A2", "plan, ", "side, ", "sections, ", "head, ", "100 mm", "4 in")
                    .contains("Print at 100 %");
            for (int i = 1; i < pages.size(); i++) {
                words.setStartPage(i + 1);
                words.setEndPage(i + 1);
                assertThat(words.getText(document)).contains(pages.get(i).heading());
            }
        }
    }

    @Test
    void of_givesTheSameBytesForTheSameTemplates() {
        assertThat(bytes(OCTAVE.only(TemplatePart.HEAD), Paper.A4))
                .isEqualTo(bytes(OCTAVE.only(TemplatePart.HEAD), Paper.A4));
    }

    /** Greek and accents are in the font, Chinese is not. */
    @Test
    void of_writesAQuestionMarkForALetterTheFontLacks() throws IOException {
        String file = ShippedNecks.text("octave-mandolin.yaml")
                .replace("name: Octave mandolin, walnut", "name: Lo\u00fft \u03c8 \u7b8f");
        Template named = Template.of(NeckFile.parse("own.yaml", file));
        try (PDDocument document = read(named.only(TemplatePart.HEAD), Paper.A4)) {
            assertThat(new PDFTextStripper().getText(document))
                    .containsPattern("Lo\u00fft \u03c8 \\? \\(set [0-9a-f]{8}\\): head, page A1 of 1");
        }
    }

    /** The library would look for fonts and leave a list of them in the home folder, if it were asked for one by name. */
    @Test
    void main_writesThePdfAndNothingIntoTheHomeFolder() throws Exception {
        Path home = Files.createDirectory(folder.resolve("home"));
        Path pdf = folder.resolve("new").resolve("neck.pdf");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Duser.home=" + home,
                        "-cp",
                        System.getProperty("java.class.path"),
                        PlanANeck.class.getName(),
                        "--pdf",
                        pdf.toString())
                .redirectError(folder.resolve("errors.txt").toFile())
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();

        assertThat(process.waitFor(90, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
        assertThat(Files.readAllLines(folder.resolve("said.txt")))
                .hasSize(3)
                .endsWith("made the folder " + pdf.getParent(), "templates cut into pages, as PDF: " + pdf);
        try (Stream<Path> left = Files.list(home)) {
            assertThat(left).isEmpty();
        }
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("Octave mandolin, walnut: templates on A4");
        }
    }

    private static long count(PDDocument document, Predicate<Line> way, double length) throws IOException {
        return lines(document).stream()
                .filter(way)
                .filter(line -> Math.abs(line.length() - length) < READ)
                .count();
    }

    private static List<Line> lines(PDDocument document) throws IOException {
        List<Line> all = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            all.addAll(PdfLines.of(page));
        }
        return all;
    }

    /** Level strokes of 8 mm: the crosses. */
    private static List<Line> strokes(PDPage page) throws IOException {
        return PdfLines.of(page).stream()
                .filter(line -> line.isLevel() && Math.abs(line.length() - 8) < READ)
                .toList();
    }

    private static PDDocument read(Template template, Paper paper) throws IOException {
        return Loader.loadPDF(bytes(template, paper));
    }

    private static byte[] bytes(Template template, Paper paper) {
        return TemplatePdf.of("test", template.pages(paper), Progress.none());
    }
}
