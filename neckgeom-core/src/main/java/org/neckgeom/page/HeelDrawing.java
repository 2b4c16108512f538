package org.neckgeom.page;

import java.util.List;
import org.neckgeom.drawing.Shown;
import org.neckgeom.heel.HeelCorners;
import org.neckgeom.neck.Heel;
import org.neckgeom.shape.Spot;

/** The heel's mating face, seen from the body, with what comes off at its corners. */
final class HeelDrawing {

    private static final double MOST_HEIGHT = 190;
    private static final double MOST_WIDTH = 110;
    private static final double TOP = 42;

    private HeelDrawing() {}

    /**
     * Draws the face with a correction.
     *
     * @param heel its size
     * @param corners what comes off
     * @param why what the correction is for, a sentence
     */
    static Figure of(Heel heel, HeelCorners corners, String why, Shown shown) {
        double scale =
                Math.min(MOST_HEIGHT / heel.heightMm(), MOST_WIDTH / Math.max(heel.widthMm(), heel.capWidthMm()));
        double w = heel.widthMm() * scale / 2;
        double cap = heel.capWidthMm() * scale / 2;
        double h = heel.heightMm() * scale;
        double middle = Drawing.WIDTH / 2;
        double height = TOP + h + 40;
        Drawing drawing = new Drawing(
                "Heel face",
                "The face of the heel that meets the body, seen from the body, bass side to the left. " + why
                        + " Off the top edge: bass " + corners.topBass() + ", treble " + corners.topTreble()
                        + "; off the cap: bass " + corners.capBass() + ", treble " + corners.capTreble() + ".",
                height);
        Spot topLeft = new Spot(middle - w, TOP);
        Spot topRight = new Spot(middle + w, TOP);
        Spot capRight = new Spot(middle + cap, TOP + h);
        Spot capLeft = new Spot(middle - cap, TOP + h);
        drawing.shape("wood", List.of(topLeft, topRight, capRight, capLeft));
        double most = Math.max(
                Math.max(corners.topBass().libraryValue(), corners.topTreble().libraryValue()),
                Math.max(corners.capBass().libraryValue(), corners.capTreble().libraryValue()));
        corner(drawing, topLeft, corners.topBass().libraryValue(), most, shown, true);
        corner(drawing, topRight, corners.topTreble().libraryValue(), most, shown, false);
        corner(drawing, capLeft, corners.capBass().libraryValue(), most, shown, true);
        corner(drawing, capRight, corners.capTreble().libraryValue(), most, shown, false);
        drawing.label("words", "middle", middle, TOP - 26, "top edge, " + shown.length(heel.widthMm()) + " wide");
        drawing.label("words", "middle", middle, TOP + h + 24, "cap, " + shown.length(heel.heightMm()) + " below");
        drawing.label("words", "end", middle - w - 20, TOP + h / 2, "bass cheek");
        drawing.label("words", "start", middle + w + 20, TOP + h / 2, "treble cheek");
        return new Figure(
                "heel", drawing, why + " Numbers: wood to take off; 0 where none is. Read again after each pass.");
    }

    /** A corner's cut: its number outside, and a block as high as its share of the largest cut. */
    private static void corner(Drawing drawing, Spot at, double cut, double most, Shown shown, boolean left) {
        double side = left ? -1 : 1;
        double block = most > 0 ? 14 * cut / most : 0;
        if (block > 0) {
            drawing.shape("offcut", List.of(at, at.plus(side * 12, 0), at.plus(side * 12, -block), at.plus(0, -block)));
        }
        drawing.label("number", left ? "end" : "start", at.uMm() + side * 18, at.vMm() + 4, shown.length(cut));
    }
}
