package org.neckgeom.drawing;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.shape.Spot;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * A head in plan: its outline from the nut line to the tip, its posts and wings, in mm, x toward the body. Turned flat, or
 * seen square to the neck and so foreshortened by its pitch. A swung head turns about the nut line's middle.
 *
 * @param nutLine slope of the nut line on the head's face
 */
public record HeadShape(Head head, HeadLayout layout, double nutLine) {

    public static HeadShape of(Neck design, Head head) {
        HeadLayout layout = HeadLayout.of(head);
        double onFace =
                layout.nutSlanted(FannedFrets.nutSlant(design)).nutLine().libraryValue();
        return new HeadShape(head, layout, StrictMath.tan(onFace));
    }

    /** Whether the outline is the head's own; otherwise only the room for it. */
    public boolean hasOutline() {
        return layout.hasOutline();
    }

    /** The outline, closed: nut line's bass end, tip, nut line's treble end. */
    public List<Spot> outline(double foreshortening) {
        double l = head.lengthMm();
        List<Spot> points = new ArrayList<>();
        points.add(placed(fromNutLine(-1), -halfWidth(fromNutLine(-1)), foreshortening));
        points.add(placed(l, -halfWidth(l), foreshortening));
        points.add(placed(l, halfWidth(l), foreshortening));
        points.add(placed(fromNutLine(1), halfWidth(fromNutLine(1)), foreshortening));
        return points;
    }

    /** The slanted line through the nut on the face, between the edges of a neck so wide there. */
    public List<Spot> nutLine(double halfWidth) {
        return List.of(new Spot(-nutLine * halfWidth, -halfWidth), new Spot(nutLine * halfWidth, halfWidth));
    }

    /** Where the head's edge of a side leaves the nut line, along the head's own axis; less than 0 before the break line. */
    private double fromNutLine(int side) {
        // The line x = k y in the turned head's own axes, k the tangent of its angle to them, on the edge y = side (a +
        // b l).
        double swing = StrictMath.tan(StrictMath.atan(nutLine) - head.swingRad());
        double atBreak = halfWidth(0);
        double growth = (halfWidth(head.lengthMm()) - atBreak) / head.lengthMm();
        return -swing * side * atBreak / (1 + swing * side * growth);
    }

    /** Width of the outline so far along the head's face. */
    public double widthAtMm(double along) {
        return 2 * halfWidth(along);
    }

    private double halfWidth(double along) {
        double atBreak = layout.width(Amount.ofLibrary(0, ShopUnit.MILLIMETRE)).libraryValue();
        double atTip = layout.width(Amount.ofLibrary(head.lengthMm(), ShopUnit.MILLIMETRE))
                .libraryValue();
        return (atBreak + (atTip - atBreak) * along / head.lengthMm()) / 2;
    }

    /** Where each string leaves its post, from bass to treble. */
    public List<Spot> posts(double foreshortening) {
        List<Spot> points = new ArrayList<>();
        for (TunerPost post : layout.posts()) {
            points.add(placed(post.along().libraryValue(), post.aside().libraryValue(), foreshortening));
        }
        return points;
    }

    /** The seams of the wings with stock so wide, one a side; none where it is wide enough. */
    public List<List<Spot>> wings(double stock, double foreshortening) {
        if (!(stock > 0) || !(2 * Math.max(halfWidth(0), halfWidth(head.lengthMm())) > stock)) {
            return List.of();
        }
        List<List<Spot>> seams = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            double from = begin(stock / 2, side);
            double to = end(stock / 2);
            seams.add(List.of(
                    placed(from, side * stock / 2, foreshortening), placed(to, side * stock / 2, foreshortening)));
        }
        return seams;
    }

    /** Where the outline has grown wider than the stock, or the nut line where it is so from the start. */
    private double begin(double half, int side) {
        return halfWidth(0) >= half ? fromNutLine(side) : Math.min(crossing(half), head.lengthMm());
    }

    private double end(double half) {
        return halfWidth(head.lengthMm()) >= half ? head.lengthMm() : crossing(half);
    }

    private double crossing(double half) {
        double growth = (halfWidth(head.lengthMm()) - halfWidth(0)) / head.lengthMm();
        return (half - halfWidth(0)) / growth;
    }

    private Spot placed(double along, double aside, double foreshortening) {
        double sin = StrictMath.sin(head.swingRad());
        double cos = StrictMath.cos(head.swingRad());
        return new Spot(-(along * cos - aside * sin) * foreshortening, along * sin + aside * cos);
    }
}
