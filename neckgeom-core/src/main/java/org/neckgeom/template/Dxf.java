package org.neckgeom.template;

import java.util.List;
import java.util.Locale;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;
import org.neckgeom.text.Numbers;

/**
 * Marks as a drawing exchange file of release 12, in ASCII, lines parted by CR LF: header, tables of line types, layers
 * and text styles, then POLYLINE with bulges and TEXT, closed by EOF. One drawing unit is a millimetre; release 12 has no
 * variable for that, so the bars on the layer SCALE show it.
 */
final class Dxf {

    /** So that an area of some 0.1 m2 comes back to 1e-6 mm2. */
    private static final int DECIMALS = 9;

    private static final int BULGE_DECIMALS = 15;

    private final StringBuilder out = new StringBuilder();

    private Dxf() {}

    static String of(List<Mark> marks) {
        Dxf dxf = new Dxf();
        dxf.group(999, "full size, one unit is one millimetre");
        dxf.header(Mark.box(marks));
        dxf.tables();
        dxf.group(0, "SECTION").group(2, "ENTITIES");
        marks.forEach(dxf::mark);
        dxf.group(0, "ENDSEC").group(0, "EOF");
        return dxf.out.toString();
    }

    private void header(double[] box) {
        group(0, "SECTION").group(2, "HEADER");
        group(9, "$ACADVER").group(1, "AC1009");
        group(9, "$EXTMIN").number(10, box[0]).number(20, box[1]).number(30, 0);
        group(9, "$EXTMAX").number(10, box[2]).number(20, box[3]).number(30, 0);
        group(9, "$LIMMIN").number(10, box[0]).number(20, box[1]);
        group(9, "$LIMMAX").number(10, box[2]).number(20, box[3]);
        // Decimal lengths and degrees, angles from the positive first axis, counter-clockwise.
        group(9, "$LUNITS").group(70, "2");
        group(9, "$AUNITS").group(70, "0");
        group(9, "$ANGBASE").number(50, 0);
        group(9, "$ANGDIR").group(70, "0");
        group(0, "ENDSEC");
    }

    private void tables() {
        group(0, "SECTION").group(2, "TABLES");
        LineType[] types = LineType.values();
        group(0, "TABLE").group(2, "LTYPE").group(70, String.valueOf(types.length));
        for (LineType type : types) {
            lineType(type);
        }
        group(0, "ENDTAB");
        Layer[] layers = Layer.values();
        group(0, "TABLE").group(2, "LAYER").group(70, String.valueOf(layers.length));
        for (Layer layer : layers) {
            group(0, "LAYER").group(2, layer.name()).group(70, "0");
            group(62, String.valueOf(layer.colour())).group(6, layer.lineType().name());
        }
        group(0, "ENDTAB");
        group(0, "TABLE").group(2, "STYLE").group(70, "1");
        group(0, "STYLE").group(2, "STANDARD").group(70, "0");
        number(40, 0).number(41, 1).number(50, 0);
        group(71, "0").number(42, 3).group(3, "txt").group(4, "");
        group(0, "ENDTAB");
        group(0, "ENDSEC");
    }

    /** Dashes are lengths, gaps lengths less than nothing; with their count and whole length. */
    private void lineType(LineType type) {
        double[] dashes = type.dashesMm();
        double whole = 0;
        for (double dash : dashes) {
            whole += dash;
        }
        group(0, "LTYPE").group(2, type.name()).group(70, "0").group(3, type.words());
        group(72, "65").group(73, String.valueOf(dashes.length)).number(40, whole);
        for (int i = 0; i < dashes.length; i++) {
            number(49, i % 2 == 0 ? dashes[i] : -dashes[i]);
        }
    }

    private void mark(Mark mark) {
        if (mark instanceof Stroke stroke) {
            polyline(stroke.layer().name(), stroke.line());
        } else if (mark instanceof Words words) {
            group(0, "TEXT").group(8, words.layer().name());
            point(10, words.at()).number(40, words.size()).group(1, ascii(words.text()));
            if (words.centred()) {
                group(72, "1");
                point(11, words.at());
            }
        }
    }

    private void polyline(String layer, Polyline line) {
        group(0, "POLYLINE").group(8, layer).group(66, "1");
        number(10, 0).number(20, 0).number(30, 0);
        group(70, line.isClosed() ? "1" : "0");
        double[] bulges = line.bulges();
        for (int i = 0; i < bulges.length; i++) {
            group(0, "VERTEX").group(8, layer);
            point(10, line.spots().get(i));
            if (bulges[i] != 0) {
                group(42, Numbers.fixed(bulges[i], BULGE_DECIMALS));
            }
        }
        group(0, "SEQEND").group(8, layer);
    }

    private Dxf point(int code, Spot p) {
        return number(code, p.uMm()).number(code + 10, p.vMm()).number(code + 20, 0);
    }

    /** With a decimal point and without useless zeros. */
    private Dxf number(int code, double value) {
        boolean whole = Numbers.isNothing(value - Math.rint(value), DECIMALS);
        return group(code, whole ? Numbers.fixed(value, 1) : Numbers.trimmed(value, DECIMALS));
    }

    private Dxf group(int code, String value) {
        out.append(String.format(Locale.ROOT, "%3d", code))
                .append("\r\n")
                .append(value)
                .append("\r\n");
        return this;
    }

    /** What release 12 can hold on one line; other letters become question marks. */
    private static String ascii(String text) {
        return text.codePoints()
                .map(c -> c >= 0x20 && c < 0x7F ? c : '?')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
