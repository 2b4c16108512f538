package org.neckgeom.examples;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDPage;

/** The straight lines of a PDF's page, read back from its content stream, in mm from its lower left corner. */
final class PdfLines {

    private static final double MM_PER_POINT = 25.4 / 72;

    /** A line from one point to another. */
    record Line(double u1, double v1, double u2, double v2) {

        double length() {
            return Math.hypot(u2 - u1, v2 - v1);
        }

        boolean isLevel() {
            return v1 == v2;
        }

        boolean isUpright() {
            return u1 == u2;
        }
    }

    private PdfLines() {}

    /** Path construction by ISO 32000-1, table 59: {@code m} begins, {@code l} goes on; a page that turned its axes is refused. */
    static List<Line> of(PDPage page) throws IOException {
        List<Line> lines = new ArrayList<>();
        List<Double> operands = new ArrayList<>();
        double u = 0;
        double v = 0;
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSNumber number) {
                operands.add(number.floatValue() * MM_PER_POINT);
            } else if (token instanceof Operator operator) {
                switch (operator.getName()) {
                    case "m" -> {
                        u = operands.get(0);
                        v = operands.get(1);
                    }
                    case "l" -> {
                        lines.add(new Line(u, v, operands.get(0), operands.get(1)));
                        u = operands.get(0);
                        v = operands.get(1);
                    }
                    case "cm", "c", "v", "y" -> throw new AssertionError("not read here: " + operator.getName());
                    default -> {}
                }
                operands.clear();
            } else if (token instanceof COSBase) {
                operands.clear();
            }
        }
        return lines;
    }
}
