package org.neckgeom.page;

import java.util.List;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.shape.Spot;

/** The scarf joint from its side at its true angle, head to the left, its lines lettered. */
final class ScarfDrawing {

    private static final double BEYOND_MM = 28;
    private static final double EDGE = 26;

    private final NeckShape shape;
    private final ScarfJoint joint;
    private final Head head;
    private final Shown shown;
    private final double scale;
    private final double left;
    private final double right;

    private ScarfDrawing(NeckShape shape, ScarfJoint joint, Head head, Shown shown) {
        this.shape = shape;
        this.joint = joint;
        this.head = head;
        this.shown = shown;
        List<Spot> glue = shape.glueLine(joint);
        double first = Math.min(0, Math.min(glue.get(0).uMm(), glue.get(1).uMm()));
        double last = Math.max(0, Math.max(glue.get(0).uMm(), glue.get(1).uMm()));
        this.left = first - BEYOND_MM;
        this.right = last + BEYOND_MM;
        this.scale = (Drawing.WIDTH - 2 * EDGE) / (right - left);
    }

    static Figure of(NeckShape shape, ScarfJoint joint, Head head, Shown shown) {
        return new ScarfDrawing(shape, joint, head, shown).figure();
    }

    private Figure figure() {
        List<Spot> glue = shape.glueLine(joint);
        double depth = joint.shaftThickness().libraryValue();
        double thick = joint.headThickness().libraryValue();
        double along = -left / StrictMath.cos(head.angleRad());
        Spot faceEnd = shape.headSide(along, 0);
        Spot backEnd = shape.headSide(along, head.thicknessMm());
        double height = -backEnd.vMm() * scale + 64;
        boolean inHead = joint.place() == JointPlace.IN_THE_HEAD;
        Drawing drawing = new Drawing(
                "Scarf " + joint.place(),
                "The scarf joint from its side at its true angle of " + Shown.degrees(head.angleRad())
                        + ", head to the left. Letters are explained under the drawing.",
                height);
        Spot nutLine = new Spot(0, 0);
        Spot breakLine = new Spot(joint.breakLineShiftMm(), 0);
        Spot shaftTop = new Spot(right, 0);
        Spot shaftBottom = new Spot(right, -depth);
        if (inHead) {
            drawing.shape("wood", page(List.of(nutLine, glue.get(0), glue.get(1), shaftBottom, shaftTop)));
            drawing.shape("wood other", page(List.of(glue.get(0), faceEnd, backEnd, glue.get(1))));
        } else {
            drawing.shape("wood", page(List.of(glue.get(0), glue.get(1), shaftBottom, shaftTop)));
            drawing.shape("wood other", page(List.of(nutLine, glue.get(0), glue.get(1), backEnd, faceEnd)));
        }
        // The shaft is still as thick as glued: the head's back begins at the joint's line on it.
        shape.veneersSide(glue.get(1).uMm(), along).forEach(veneer -> drawing.shape("board", page(veneer)));
        drawing.through("glue", page(glue));
        letter(drawing, "A", breakLine, 6, -8);
        letter(drawing, "B", glue.get(0), inHead ? -4 : 6, -8);
        letter(drawing, "C", glue.get(1), 0, 20);
        Spot middle = new Spot(
                (glue.get(0).uMm() + glue.get(1).uMm()) / 2,
                (glue.get(0).vMm() + glue.get(1).vMm()) / 2);
        drawing.label("number halo", "middle", at(middle).uMm(), at(middle).vMm() + 5, "D");
        String shift = joint.breakLineShiftMm() == 0
                ? ""
                : ", " + shown.length(Math.abs(joint.breakLineShiftMm())) + " toward the "
                        + (joint.breakLineShiftMm() > 0 ? "body" : "tip") + " from where it was laid out";
        return new Figure("scarf", drawing, "At its true angle.")
                .key("A", "break line: all is measured from here" + shift)
                .key(
                        "B",
                        "line on the front, " + shown.length(joint.frontLineMm())
                                + (inHead ? " along the head's face" : " behind the break line, under the fingerboard"))
                .key("C", "line on the back, " + backLine())
                .key("D", "glue face, " + shown.length(joint.glueFaceMm()) + " long, " + joint.place())
                .key(
                        "",
                        "shaft " + shown.length(depth) + ", head " + shown.length(thick) + " with veneers, head angle "
                                + Shown.degrees(head.angleRad()));
    }

    private String backLine() {
        double x = joint.backLineMm();
        return shown.length(Math.abs(x)) + (x < 0 ? " toward the tip" : " toward the body");
    }

    private void letter(Drawing drawing, String letter, Spot at, double du, double dv) {
        Spot on = at(at);
        drawing.dot(on).label("number halo", "middle", on.uMm() + du, on.vMm() + dv, letter);
    }

    private List<Spot> page(List<Spot> points) {
        return points.stream().map(this::at).toList();
    }

    private Spot at(Spot p) {
        return new Spot(EDGE + (p.uMm() - left) * scale, 26 - p.vMm() * scale);
    }
}
