package org.neckgeom.template;

import java.util.List;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Arc;
import org.neckgeom.template.Mark.Run;
import org.neckgeom.template.Mark.Words;
import org.neckgeom.text.Numbers;

/**
 * Marks as a drawing exchange file of release 12, in ASCII: header, line types, layers, then LINE, ARC and TEXT, closed by
 * EOF. One drawing unit is a millimetre.
 */
final class Dxf {

    private static final int DECIMALS = 6;
    private static final int ANGLE_DECIMALS = 9;

    private final StringBuilder out = new StringBuilder();

    private Dxf() {}

    static String of(List<Mark> marks, double width, double height) {
        Dxf dxf = new Dxf();
        dxf.group(999, "full size, one unit is one millimetre");
        dxf.header(width, height);
        dxf.tables();
        dxf.group(0, "SECTION").group(2, "ENTITIES");
        marks.forEach(dxf::mark);
        dxf.group(0, "ENDSEC").group(0, "EOF");
        return dxf.out.toString();
    }

    private void header(double width, double height) {
        group(0, "SECTION").group(2, "HEADER");
        group(9, "$ACADVER").group(1, "AC1009");
        group(9, "$EXTMIN").number(10, 0).number(20, 0).number(30, 0);
        group(9, "$EXTMAX").number(10, width).number(20, height).number(30, 0);
        group(9, "$LIMMIN").number(10, 0).number(20, 0);
        group(9, "$LIMMAX").number(10, width).number(20, height);
        // Decimal lengths and degrees, angles from the positive first axis, counter-clockwise.
        group(9, "$LUNITS").group(70, "2");
        group(9, "$AUNITS").group(70, "0");
        group(9, "$ANGBASE").number(50, 0);
        group(9, "$ANGDIR").group(70, "0");
        group(0, "ENDSEC");
    }

    private void tables() {
        group(0, "SECTION").group(2, "TABLES");
        group(0, "TABLE").group(2, "LTYPE").group(70, "1");
        group(0, "LTYPE").group(2, "CONTINUOUS").group(70, "0").group(3, "Solid line");
        group(72, "65").group(73, "0").number(40, 0);
        group(0, "ENDTAB");
        Layer[] layers = Layer.values();
        group(0, "TABLE").group(2, "LAYER").group(70, String.valueOf(layers.length));
        for (Layer layer : layers) {
            group(0, "LAYER").group(2, layer.name()).group(70, "0");
            group(62, String.valueOf(layer.colour())).group(6, "CONTINUOUS");
        }
        group(0, "ENDTAB");
        group(0, "TABLE").group(2, "STYLE").group(70, "1");
        group(0, "STYLE")
                .group(2, "STANDARD")
                .group(70, "0")
                .number(40, 0)
                .number(41, 1)
                .number(50, 0);
        group(71, "0").number(42, 3).group(3, "txt").group(4, "");
        group(0, "ENDTAB");
        group(0, "ENDSEC");
    }

    private void mark(Mark mark) {
        if (mark instanceof Run run) {
            for (int i = 1; i < run.points().size(); i++) {
                line(run.layer(), run.points().get(i - 1), run.points().get(i));
            }
        } else if (mark instanceof Arc arc) {
            group(0, "ARC").group(8, arc.layer().name());
            point(10, arc.centre()).number(40, arc.radius());
            angle(50, arc.from()).angle(51, arc.to());
        } else if (mark instanceof Words words) {
            group(0, "TEXT").group(8, words.layer().name());
            point(10, words.at()).number(40, words.size()).group(1, ascii(words.text()));
            if (words.centred()) {
                group(72, "1");
                point(11, words.at());
            }
        }
    }

    private void line(Layer layer, Spot from, Spot to) {
        group(0, "LINE").group(8, layer.name());
        point(10, from);
        point(11, to);
    }

    private Dxf point(int code, Spot p) {
        return number(code, p.uMm()).number(code + 10, p.vMm()).number(code + 20, 0);
    }

    private Dxf number(int code, double value) {
        return group(code, Numbers.fixed(value, DECIMALS));
    }

    /** An angle in degrees, fine enough for the flattest arch: 1e-9 deg at 100 m is 2e-6 mm. */
    private Dxf angle(int code, double rad) {
        return group(code, Numbers.fixed(Math.toDegrees(rad), ANGLE_DECIMALS));
    }

    private Dxf group(int code, String value) {
        String number = String.valueOf(code);
        out.append(" ".repeat(3 - number.length()))
                .append(number)
                .append('\n')
                .append(value)
                .append('\n');
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
