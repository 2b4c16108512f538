package org.neckgeom.template;

import java.util.List;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;
import org.neckgeom.units.LengthStyle;

/** Marks on a sheet of a size, v upwards from its lower edge. */
record Sheet(List<Mark> marks, double width, double height) {

    static final Form<Sheet> FORM = Form.<Sheet>of("template-sheet")
            .fact("width", Kind.MM, "of the sheet", Sheet::width)
            .fact("height", Kind.MM, "of the sheet", Sheet::height)
            .finds("sheet", (x, style) -> style == LengthStyle.INCH_FRACTIONS, "{width:brief} x {height:brief}")
            .finds("sheet", "{width:..2|3 bare} x {height:..2|3}");

    static final double METRIC_BAR_MM = 100;
    static final double INCH_BAR_MM = 4 * 25.4;

    /** Two level bars from a point to the right, the second 8 mm below the first. */
    static void bars(List<Mark> marks, double u, double v) {
        bar(marks, u, v, METRIC_BAR_MM, "100 mm");
        bar(marks, u, v - 8, INCH_BAR_MM, "4 in");
    }

    private static void bar(List<Mark> marks, double u, double v, double length, String words) {
        marks.add(Stroke.through(Layer.SCALE, u, v, u + length, v));
        marks.add(Stroke.through(Layer.SCALE, u, v - 2, u, v + 2));
        marks.add(Stroke.through(Layer.SCALE, u + length, v - 2, u + length, v + 2));
        marks.add(new Words(Layer.SCALE, new Spot(u + length / 2, v + 1.2), 3, true, words));
    }
}
