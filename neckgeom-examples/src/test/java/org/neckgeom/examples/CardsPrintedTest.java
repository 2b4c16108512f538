package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.Job;
import org.neckgeom.template.Cards;
import org.neckgeom.template.Paper;

/**
 * Cards as they come out of a printer: our PDF, and the page as Chromium prints it, both read back by a general PDF library. Every
 * letter is on its card's half of the sheet. Without Chromium its tests are skipped, and say so.
 */
class CardsPrintedTest {

    private static final double MM_PER_POINT = 25.4 / 72;

    /** White edges of the sheet, and on each side of the cut. */
    private static final double MARGIN = 10;

    private static final double EDGE = 5;

    /** A letter's box has a little room beside it. */
    private static final double ROOM = 0.3;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "octave-mandolin.yaml, A4, false",
        "octave-mandolin.yaml, LETTER, true",
        "short-scale-bass.yaml, LETTER, false",
        "fanned-baritone.yaml, A4, true",
        "parlour-guitar.yaml, LETTER, false",
        "src/test/resources/kinds/bars-and-inserts.yaml, A4, false",
        "src/test/resources/kinds/slotted-steel-strings.yaml, LETTER, true"
    })
    void pdf_hasTwoCardsOnASheet_andEveryLetterOnItsHalf(String neck, Paper paper, boolean landscape)
            throws IOException {
        Job job = NeckFile.read(neck);
        byte[] pdf = Output.CARDS_PDF.of(new Output.Asked(job, paper, landscape, Progress.none()));

        try (PDDocument document = Loader.loadPDF(pdf)) {
            isWhole(document, job, paper, landscape);
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "octave-mandolin.yaml, A4, false",
        "fanned-baritone.yaml, LETTER, true",
        "src/test/resources/kinds/wings-before-channel.yaml, A4, false"
    })
    void page_isPrintedByABrowserWithEveryLetterOnItsHalf(String neck, Paper paper, boolean landscape)
            throws Exception {
        Job job = NeckFile.read(neck);
        Cards cards = landscape ? Cards.of(job).landscape() : Cards.of(job);

        try (PDDocument document = Loader.loadPDF(Browser.printed(folder, cards.toPages(paper)))) {
            isWhole(document, job, paper, landscape);
        }
    }

    /** On a machine that lacks the fonts that the page names, its letters keep the room that they were given. */
    @Test
    void page_printedInWideLetters_isWhole() throws Exception {
        Job job = NeckFile.read("octave-mandolin.yaml");
        String named = "text{font-family:\"Liberation Sans\",Arial,Helvetica,sans-serif}";
        String html = Cards.of(job).toPages(Paper.A4);
        assertThat(html).contains(named);

        String wide = html.replace(named, "text{font-family:monospace}");

        try (PDDocument document = Loader.loadPDF(Browser.printed(folder, wide))) {
            isWhole(document, job, Paper.A4, false);
        }
    }

    /** Widths of words against the metrics of Helvetica that PDFBox brings (Core 14 AFM); letters that it lacks are left out. */
    @Test
    void words_areAsWideAsInHelvetica() throws IOException {
        String name =
                "M\u00fcller, \u00c5ngstr\u00f6m, Ni\u00f1o, na\u00efve, Fran\u00e7ois, \u0160koda @#$%*+[]_{|}~ QXYZJ qxjz";
        String text = ShippedNecks.text("octave-mandolin.yaml")
                .replaceFirst("(?m)^name:.*$", "name: '" + name.replace("$", "\\$") + "'");
        Job renamed = NeckFile.parse("renamed.yaml", text);
        Matcher words = Pattern.compile(
                        "<text [^>]*font-size=\"([0-9.]+)\"[^>]* textLength=\"([0-9.]+)\"[^>]*>([^<]+)</text>")
                .matcher(Cards.of(renamed).toPages(Paper.A4));
        PDType1Font font = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
        StringBuilder seen = new StringBuilder();

        while (words.find()) {
            String said = words.group(3)
                    .replace("&lt;", "<")
                    .replace("&gt;", ">")
                    .replace("&quot;", "\"")
                    .replace("&#39;", "'")
                    .replace("&amp;", "&");
            seen.append(said);
            assertThat(Double.parseDouble(words.group(2)))
                    .as(said)
                    .isCloseTo(font.getStringWidth(said) / 1000 * Double.parseDouble(words.group(1)), within(2e-4));
        }

        assertThat(seen).contains("M\u00fcller", "na\u00efve", "\u0160koda", "{|}~");
        assertThat(seen.chars().distinct().count()).isGreaterThan(80);
    }

    /** 20 mm at 13 deg run 20/tan 13 deg = 86.6 mm: so far the saw marks of face and back are apart. */
    @Test
    void scarf_hasItsSawLine_markedOnFaceAndBack() throws IOException {
        Job job = NeckFile.read("octave-mandolin.yaml");
        byte[] pdf = Output.CARDS_PDF.of(new Output.Asked(job, Paper.A4, false, Progress.none()));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String words = new PDFTextStripper().getText(document);
            double face = after(words, "face ([0-9.]+) mm");
            double back = after(words, "back ([0-9.]+) mm");

            assertThat(back - face).isCloseTo(20 / Math.tan(Math.toRadians(13)), within(0.1));
            assertThat(words).contains("13.0 deg");
        }
    }

    private static double after(String words, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(words);
        assertThat(found.find()).as(pattern).isTrue();
        return Double.parseDouble(found.group(1));
    }

    private static void isWhole(PDDocument document, Job job, Paper paper, boolean landscape) throws IOException {
        int cards = BenchCard.operations(job).size();
        double across = landscape ? paper.downMm() : paper.acrossMm();
        double down = landscape ? paper.acrossMm() : paper.downMm();
        double half = (landscape ? down : across) / 2;
        assertThat(document.getNumberOfPages()).isEqualTo((cards + 1) / 2);
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < document.getNumberOfPages(); i++) {
            PDPage page = document.getPage(i);
            // Browsers round a page's size to a whole point.
            assertThat(page.getMediaBox().getWidth() * MM_PER_POINT).isCloseTo(across, within(0.4));
            assertThat(page.getMediaBox().getHeight() * MM_PER_POINT).isCloseTo(down, within(0.4));
            List<TextPosition> letters = letters(document, i + 1, all);
            assertThat(letters).hasSizeGreaterThan(100);
            for (TextPosition letter : letters) {
                double left = letter.getXDirAdj() * MM_PER_POINT;
                double right = left + letter.getWidthDirAdj() * MM_PER_POINT;
                double foot = letter.getYDirAdj() * MM_PER_POINT;
                double head = foot - letter.getHeightDir() * MM_PER_POINT;
                assertThat(left).isGreaterThanOrEqualTo(MARGIN - ROOM);
                assertThat(right).as(letter.getUnicode()).isLessThanOrEqualTo(across - MARGIN + ROOM);
                assertThat(foot).isLessThanOrEqualTo(down - MARGIN);
                if (foot < MARGIN - 2) {
                    continue; // the heading of the sheet, in its white edge
                }
                boolean isFirst = landscape ? foot <= half - EDGE + ROOM : right <= half - EDGE + ROOM;
                boolean isSecond = landscape ? head >= half + EDGE - ROOM : left >= half + EDGE - ROOM;
                assertThat(isFirst || isSecond)
                        .as("%s at %.1f, %.1f of sheet %d", letter.getUnicode(), left, foot, i + 1)
                        .isTrue();
            }
        }
        for (int number = 1; number <= cards; number++) {
            assertThat(all).contains("card " + number + " of " + cards);
        }
        BenchCard.operations(job)
                .forEach(operation ->
                        assertThat(all.toString()).contains(operation.name().toUpperCase(Locale.ROOT)));
    }

    private static List<TextPosition> letters(PDDocument document, int page, StringBuilder all) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        PDFTextStripper words = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) throws IOException {
                positions.stream()
                        .filter(position -> !position.getUnicode().isBlank())
                        .forEach(letters::add);
                super.writeString(text, positions);
            }
        };
        words.setStartPage(page);
        words.setEndPage(page);
        all.append(words.getText(document));
        return letters;
    }
}
