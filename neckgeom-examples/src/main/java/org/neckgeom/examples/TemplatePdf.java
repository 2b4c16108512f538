package org.neckgeom.examples;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.neckgeom.template.TemplateCanvas;
import org.neckgeom.template.TemplatePage;

/**
 * Full-size templates as a PDF: a page of paper a page, asking the reader not to scale in print. The same templates give
 * the same bytes.
 *
 * <p>The letters are the ones that come with the PDF library, embedded: no font of the system is looked for, and so no list
 * of them is left in anyone's home.
 */
final class TemplatePdf {

    private static final String LETTERS = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final double POINTS_PER_MM = 72 / 25.4;

    private TemplatePdf() {}

    /**
     * Returns the file.
     *
     * @param title what readers show as its name
     * @param pages one or more
     */
    static byte[] of(String title, List<TemplatePage> pages, Progress progress) {
        try (PDDocument document = new PDDocument();
                InputStream letters = PDDocument.class.getResourceAsStream(LETTERS)) {
            document.setDocumentId(0L); // otherwise made of the clock
            document.getDocumentInformation().setTitle(title);
            document.getDocumentCatalog().setLanguage("en");
            PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
            shown.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            shown.setDisplayDocTitle(true);
            document.getDocumentCatalog().setViewerPreferences(shown);
            PDType0Font font = PDType0Font.load(document, letters, true);
            for (int i = 0; i < pages.size(); i++) {
                progress.at("page " + (i + 1) + " of " + pages.size());
                draw(document, font, pages.get(i));
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
    }

    private static void draw(PDDocument document, PDType0Font font, TemplatePage template) throws IOException {
        PDPage page = new PDPage(new PDRectangle(points(template.acrossMm()), points(template.downMm())));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            PageCanvas canvas = new PageCanvas(content, font);
            template.drawOn(canvas);
            canvas.end();
        }
    }

    private static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }

    /** A page's content, in points. */
    private static final class PageCanvas implements TemplateCanvas {

        /** Of a font's size, that the letters look as high as in the other forms of the templates. */
        private static final double SIZE_OF_CAPITAL = 1.3;

        private final PDPageContentStream content;
        private final PDType0Font font;
        private boolean isInWindow;

        private PageCanvas(PDPageContentStream content, PDType0Font font) {
            this.content = content;
            this.font = font;
        }

        @Override
        public void window(double leftMm, double bottomMm, double widthMm, double heightMm) {
            written(() -> {
                leave();
                content.saveGraphicsState();
                isInWindow = true;
                content.addRect(points(leftMm), points(bottomMm), points(widthMm), points(heightMm));
                content.clip();
            });
        }

        @Override
        public void pen(double widthMm, double... dashesMm) {
            float[] dashes = new float[dashesMm.length];
            for (int i = 0; i < dashes.length; i++) {
                dashes[i] = points(dashesMm[i]);
            }
            written(() -> {
                content.setLineWidth(points(widthMm));
                content.setLineDashPattern(dashes, 0);
            });
        }

        @Override
        public void through(double... uvMm) {
            written(() -> {
                content.moveTo(points(uvMm[0]), points(uvMm[1]));
                for (int i = 2; i < uvMm.length; i += 2) {
                    content.lineTo(points(uvMm[i]), points(uvMm[i + 1]));
                }
                content.stroke();
            });
        }

        @Override
        public void words(double uMm, double vMm, double sizeMm, boolean centred, String text) {
            written(() -> {
                String known = known(text);
                float size = points(sizeMm * SIZE_OF_CAPITAL);
                float wide = font.getStringWidth(known) / 1000 * size;
                content.beginText();
                content.setFont(font, size);
                content.newLineAtOffset(points(uMm) - (centred ? wide / 2 : 0), points(vMm));
                content.showText(known);
                content.endText();
            });
        }

        /** The text with a question mark for each letter that the font lacks. */
        private String known(String text) {
            StringBuilder known = new StringBuilder();
            text.codePoints().forEach(letter -> known.append(has(letter) ? Character.toString(letter) : "?"));
            return known.toString();
        }

        private boolean has(int letter) {
            try {
                return font.encode(Character.toString(letter)).length > 0;
            } catch (IOException | IllegalArgumentException lacking) {
                return false;
            }
        }

        private void end() throws IOException {
            leave();
        }

        private void leave() throws IOException {
            if (isInWindow) {
                content.restoreGraphicsState();
                isInWindow = false;
            }
        }

        private static void written(Step step) {
            try {
                step.write();
            } catch (IOException inMemory) {
                throw new UncheckedIOException(inMemory);
            }
        }

        private interface Step {
            void write() throws IOException;
        }
    }
}
