package org.neckgeom.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.fault.Refusal;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelInserts;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.PlateScrews;
import org.neckgeom.neck.SpanishFoot;
import org.neckgeom.neck.Tenon;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;
import org.neckgeom.units.Amount;

/** The heel's joint at full size: a dovetail seen on the glue face and from its end, a tenon from the side. */
final class JointView {

    private static final double SMALL = 3;
    private static final double BETWEEN = 24;
    private static final double BEYOND = 6;
    private static final double CROSS = 3;

    private final Shown shown;
    private final List<Mark> marks = new ArrayList<>();

    private JointView(NeckShape shape) {
        this.shown = new Shown(shape.design().style());
    }

    /** True for a tenon, inserts, plate screws, a Spanish foot, and for a dovetail whose size was given. */
    static boolean canBeDrawn(Neck design) {
        return design.heel()
                .map(Heel::joint)
                .filter(joint ->
                        joint.below().isPresent() || joint instanceof PlateScrews || joint instanceof SpanishFoot)
                .isPresent();
    }

    static List<Mark> of(NeckShape shape) {
        if (!canBeDrawn(shape.design())) {
            throw Refusal.of(
                    "\"" + shape.design().name() + "\"",
                    "missing",
                    "have a tenon, or a dovetail with its size, for this",
                    "has",
                    "none");
        }
        JointView view = new JointView(shape);
        Heel heel = shape.design().heel().orElseThrow();
        heel.tenon().ifPresent(tenon -> view.tenon(tenon, heel));
        heel.dovetail().ifPresent(dovetail -> view.dovetail(dovetail, heel));
        if (heel.joint() instanceof HeelInserts inserts) {
            view.inserts(inserts, heel);
        } else if (heel.joint() instanceof PlateScrews screws) {
            view.screws(screws, heel);
        } else if (heel.joint() instanceof SpanishFoot foot) {
            view.foot(foot, heel, shape.design().bodyJointMm());
        }
        return view.marks;
    }

    /** On the left from the glue face, the neck coming from the left; on the right from the body, its glue face up. */
    private void dovetail(Dovetail seat, Heel heel) {
        double length = mm(seat.pastShoulder());
        double end = mm(seat.widthAtEnd()) / 2;
        double shoulder = mm(seat.widthAtShoulder()) / 2;
        double height = mm(seat.below());
        double in = mm(seat.closesIn());
        // Half the heel's width at its top, and never less than the joint's own.
        double cheek = Math.max(end, heel.widthMm() / 2);
        line(Layer.OUTLINE, 0, -cheek, 0, -shoulder, length, -end, length, end, 0, shoulder, 0, cheek);
        line(Layer.ENVELOPE, 0, in - shoulder, length, in - end, length, end - in, 0, shoulder - in);
        line(Layer.CENTRE, -BEYOND, 0, length + BEYOND, 0);
        words(length / 2, cheek + 2, "on the glue face; dashed at the lower end");
        words(length / 2, -cheek - SMALL - 2, "dovetail " + shown.length(length) + " long");

        double middle = length + BETWEEN + 2 * cheek;
        double low = -height + cheek;
        line(Layer.OUTLINE, middle - cheek, cheek, middle - end, cheek);
        line(Layer.OUTLINE, middle + end, cheek, middle + cheek, cheek);
        fromTheEnd(Layer.OUTLINE, middle, end, end - in, low, cheek);
        fromTheEnd(Layer.ENVELOPE, middle, shoulder, shoulder - in, low, cheek);
        line(Layer.CENTRE, middle, cheek + BEYOND, middle, low - BEYOND);
        words(middle, cheek + BEYOND + 2, "from its end; dashed at the shoulder");
        words(
                middle,
                low - BEYOND - SMALL - 2,
                shown.length(2 * end) + " at the glue face, " + shown.length(2 * (end - in)) + " wide "
                        + shown.length(height) + " below it");
    }

    private void fromTheEnd(Layer layer, double middle, double top, double bottom, double low, double high) {
        marks.add(Stroke.round(
                layer, middle - top, high, middle - bottom, low, middle + bottom, low, middle + top, high));
    }

    private static double mm(Optional<Amount<Length>> part) {
        return part.orElseThrow().libraryValue();
    }

    /** Seen from the treble side, the shoulder on the left and the glue face up. */
    private void tenon(Tenon tenon, Heel heel) {
        double length = tenon.length().libraryValue();
        double height = tenon.height().libraryValue();
        double low = -heel.heightMm();
        marks.add(Stroke.round(Layer.OUTLINE, 0, 0, length, 0, length, -height, 0, -height));
        if (low < -height) {
            line(Layer.OUTLINE, 0, -height, 0, low);
        }
        double across = tenon.centreFromShoulder().libraryValue();
        for (Amount<?> depth : tenon.depths()) {
            hole(new Spot(across, -depth.libraryValue()), tenon.holeDiameter().libraryValue() / 2);
            marks.add(new Words(
                    new Spot(length + 3, -depth.libraryValue() - SMALL / 2),
                    SMALL,
                    false,
                    shown.length(depth.libraryValue()) + " below the glue face"));
        }
        marks.add(new Words(
                new Spot(0, low - SMALL - 3),
                SMALL,
                false,
                "tenon " + shown.length(length) + " long, shoulder on the left"));
    }

    /** The mating face seen from the body, the glue face up. */
    private void inserts(HeelInserts inserts, Heel heel) {
        double half = heel.widthMm() / 2;
        double cap = heel.capWidthMm() / 2;
        double low = -heel.heightMm();
        marks.add(Stroke.round(Layer.OUTLINE, -half, 0, half, 0, cap, low, -cap, low));
        line(Layer.CENTRE, 0, BEYOND, 0, low - BEYOND);
        for (double deep : inserts.depthsMm()) {
            hole(new Spot(0, -deep), inserts.diameterMm() / 2);
            marks.add(new Words(
                    new Spot(half + 3, -deep - SMALL / 2), SMALL, false, shown.length(deep) + " below the glue face"));
        }
        words(0, low - BEYOND - SMALL - 2, "heel's face, inserts " + shown.length(inserts.diameterMm()) + " outside");
    }

    /** The heel's underside in its pocket, the body joint on the left. */
    private void screws(PlateScrews screws, Heel heel) {
        double half = heel.widthMm() / 2;
        double end = mm(screws.pastShoulder());
        marks.add(Stroke.round(Layer.OUTLINE, 0, -half, end, -half, end, half, 0, half));
        line(Layer.CENTRE, -BEYOND, 0, end + BEYOND, 0);
        for (double row : screws.rowsMm()) {
            for (int side = -1; side <= 1; side += 2) {
                hole(new Spot(row, side * screws.acrossMm() / 2), screws.diameterMm() / 2);
            }
            words(row, half + 2, shown.length(row));
        }
        words(
                end / 2,
                -half - SMALL - 2,
                "heel from below, body joint on the left; screws " + shown.length(screws.acrossMm()) + " across");
    }

    /** Heel and foot from the glue face, the neck coming from the left: the side slots begin at the body joint. */
    private void foot(SpanishFoot foot, Heel heel, double bodyJoint) {
        double half = heel.widthMm() / 2;
        double in = half - foot.slotDepthMm();
        double wide = foot.slotWidthMm();
        double end = foot.lengthMm();
        marks.add(Stroke.round(
                Layer.OUTLINE,
                -BETWEEN,
                -half,
                0,
                -half,
                0,
                -in,
                wide,
                -in,
                wide,
                -half,
                end,
                -half,
                end,
                half,
                wide,
                half,
                wide,
                in,
                0,
                in,
                0,
                half,
                -BETWEEN,
                half));
        line(Layer.CENTRE, -BETWEEN - BEYOND, 0, end + BEYOND, 0);
        words(end / 2, half + 2, "foot " + shown.length(end) + " past the body joint");
        words(
                end / 2,
                -half - SMALL - 2,
                "side slots " + shown.length(wide) + " wide, " + shown.length(foot.slotDepthMm()) + " deep, "
                        + shown.length(bodyJoint) + " from the nut");
    }

    private void hole(Spot centre, double radius) {
        marks.add(new Stroke(Layer.OUTLINE, Polyline.circle(centre, radius).reversed()));
        line(Layer.CENTRE, centre.uMm() - radius - CROSS, centre.vMm(), centre.uMm() + radius + CROSS, centre.vMm());
        line(Layer.CENTRE, centre.uMm(), centre.vMm() - radius - CROSS, centre.uMm(), centre.vMm() + radius + CROSS);
    }

    private void line(Layer layer, double... uv) {
        marks.add(Stroke.through(layer, uv));
    }

    private void words(double u, double v, String text) {
        marks.add(new Words(new Spot(u, v), SMALL, true, text));
    }
}
