package org.neckgeom.template;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.fault.Refusal;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfSaw;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;
import org.neckgeom.units.Amount;

/**
 * The board of a scarfed head at full size round its saw marks, glue face up: the shaft's end lies to the right, the treble side
 * above, as in the plan. Each mark has a number, and a row that names its side and its distance.
 */
final class SawMarksView {

    private static final double SMALL = 3;
    private static final double BEYOND = 20;

    private final Shown shown;
    private final double half;
    private final List<Mark> marks = new ArrayList<>();
    private final List<String> rows = new ArrayList<>();

    private SawMarksView(NeckShape shape) {
        this.shown = new Shown(shape.design().style());
        this.half = shape.stockMm() / 2;
    }

    static List<Mark> of(NeckShape shape) {
        ScarfBoard board = shape.board()
                .orElseThrow(() -> Refusal.of(
                        "\"" + shape.design().name() + "\"",
                        "missing",
                        "have a scarf that is still to be sawn, in a plan with its blank, for this",
                        "has",
                        "none"));
        SawMarksView view = new SawMarksView(shape);
        view.draw(board);
        return view.marks;
    }

    private void draw(ScarfBoard board) {
        boolean two = !board.headCut().equals(board.shaftCut());
        cut(two ? "shaft" : "saw", board.shaftCut());
        if (two) {
            cut("head piece", board.headCut());
        }
        double[] box = Mark.box(marks);
        double left = box[0] - BEYOND;
        double right = box[2] + BEYOND;
        for (double v : new double[] {-half, half}) {
            marks.add(Stroke.through(Layer.OUTLINE, left, v, right, v));
        }
        marks.add(Stroke.through(Layer.CENTRE, left, 0, right, 0));
        words(right, half + 2, "TREBLE");
        words(right, -half - SMALL - 2, "BASS");
        words(left, half + 2, "glue face up; shaft's end to the right");
        double v = -half - 2 * SMALL - 4;
        for (String row : rows) {
            words(left, v, row);
            v -= 1.5 * SMALL;
        }
    }

    private void cut(String name, ScarfSaw saw) {
        mark(Layer.CUT, name + ", face", saw.faceMark(), saw.bassFace(), saw.trebleFace());
        mark(Layer.ENVELOPE, name + ", back", saw.backMark(), saw.bassBack(), saw.trebleBack());
    }

    private void mark(Layer layer, String name, Amount<?> centre, Amount<?> bass, Amount<?> treble) {
        int number = rows.size() + 1;
        double middle = centre.libraryValue();
        double atBass = bass.libraryValue();
        double atTreble = treble.libraryValue();
        marks.add(Stroke.through(layer, -atBass, -half, -atTreble, half));
        words(-middle + 1, 1 + (number - 1) % 2 * 2 * SMALL, String.valueOf(number));
        boolean slanted = DoubleStream.of(atBass, atTreble).anyMatch(edge -> edge != middle);
        rows.add(number + " " + name + ": " + shown.length(middle) + " from the shaft's end"
                + (slanted ? ", bass " + shown.length(atBass) + ", treble " + shown.length(atTreble) : ""));
    }

    private void words(double u, double v, String text) {
        marks.add(new Words(new Spot(u, v), SMALL, false, text));
    }
}
