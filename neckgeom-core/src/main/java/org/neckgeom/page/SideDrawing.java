package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Spot;
import org.neckgeom.text.Numbers;

/** The neck from its side, head up, strings to the left: board, back, channel and rod, scarf, heel. */
final class SideDrawing {

    /** How far the chords of an arc may leave it. */
    private static final double ARC_MM = 0.02;

    private final NeckShape shape;
    private final Neck design;
    private final Shown shown;
    private final Optional<ScarfJoint> joint;
    private final Upright page;
    private final LabelColumn stations = LabelColumn.leftOf(Upright.LEFT_EDGE - 8);
    private final LabelColumn depths = LabelColumn.rightOf(Upright.RIGHT_EDGE + 8);

    private SideDrawing(NeckShape shape, Shown shown, Optional<ScarfJoint> joint) {
        this.shape = shape;
        this.design = shape.design();
        this.shown = shown;
        this.joint = joint;
        double deepest = Math.max(shape.drawnDepth(0), shape.drawnDepth(shape.bodyJoint()));
        deepest = Math.max(deepest, design.heel().map(Heel::heightMm).orElse(0.0));
        deepest = Math.max(
                deepest,
                -shape.head()
                        .map(head -> shape.headSide(head.lengthMm(), head.thicknessMm())
                                .vMm())
                        .orElse(0.0));
        double tip = shape.head()
                .map(head -> shape.headSide(head.lengthMm(), 0).uMm())
                .orElse(Math.min(-10, shape.anchorEnd()));
        double top = Math.max(design.boardThicknessAtMm(0), design.boardThicknessAtMm(shape.boardEnd()));
        this.page = Upright.fitting(tip, shape.boardEnd(), -top, deepest, 2);
    }

    static Drawing of(NeckShape shape, Shown shown, Optional<ScarfJoint> joint) {
        return new SideDrawing(shape, shown, joint).drawn();
    }

    private Drawing drawn() {
        String scale = page.stretch() == 1
                ? "Depths and lengths at one scale."
                : "Depths are drawn " + Numbers.trimmed(page.stretch(), 2) + " times as large as lengths.";
        Drawing drawing = new Drawing(
                "Side view",
                "The neck from its side, head at the top, strings to the left. " + scale + " " + words(),
                page.height());
        neck(drawing);
        heel(drawing);
        shape.head().ifPresent(head -> head(drawing, head));
        design.channel().ifPresent(channel -> channel(drawing, channel));
        joint.ifPresent(glued -> glueLine(drawing, glued));
        label();
        stations.drawOn(drawing, 2, page.height() - 2);
        depths.drawOn(drawing, 2, page.height() - 2);
        return drawing;
    }

    private String words() {
        StringBuilder words = new StringBuilder("Wood ");
        words.append(shown.length(shape.drawnDepth(shape.fret(1)))).append(" deep at fret 1, ");
        words.append(shown.length(shape.drawnDepth(shape.fret(12)))).append(" at fret 12.");
        design.channel()
                .ifPresent(channel -> words.append(" A ").append(channel).append('.'));
        design.head().ifPresent(head -> words.append(" A ").append(head).append('.'));
        design.heel().ifPresent(heel -> words.append(" A ").append(heel).append('.'));
        return words.toString();
    }

    private void neck(Drawing drawing) {
        List<Spot> wood = new ArrayList<>();
        wood.addAll(shape.head().isPresent() ? shape.headSide() : anchor());
        wood.addAll(shape.backLineToFace());
        wood.add(new Spot(shape.woodEnd(), 0));
        drawing.shape("wood", page.turned(wood));
        List<Spot> board = new ArrayList<>(shape.boardTop());
        board.add(new Spot(shape.boardEnd(), 0));
        board.add(new Spot(0, 0));
        drawing.shape("board", page.turned(board));
    }

    /** The wood from the nut line's end, under a string anchor where there is one. */
    private List<Spot> anchor() {
        double end = shape.anchorEnd();
        return end < 0 ? List.of(new Spot(end, 0), new Spot(end, -shape.drawnDepth(0))) : List.of(new Spot(0, 0));
    }

    private void head(Drawing drawing, Head head) {
        shape.veneersSide().forEach(veneer -> drawing.shape("board", page.turned(veneer)));
        depths.add(
                on(shape.headSide(head.lengthMm() * 0.7, head.thicknessMm())),
                shown.label(head.thicknessMm()),
                "head thick");
        stations.add(on(shape.headSide(head.lengthMm(), 0)), shown.label(head.lengthMm()), "head along face");
        stations.add(on(shape.headSide(head.lengthMm() * 0.45, 0)), Shown.degrees(head.angleRad()), "head angle");
    }

    /** The mating face of the heel down to its cap: its curve is the back's where the neck has one. */
    private void heel(Drawing drawing) {
        if (shape.woodEnd() > shape.bodyJoint()) {
            return;
        }
        design.heel().ifPresent(heel -> {
            List<Spot> face = shape.heelFace();
            drawing.through("face", page.turned(face));
            depths.add(on(face.get(1)), shown.label(heel.heightMm()), "heel high");
        });
    }

    private void channel(Drawing drawing, Channel channel) {
        drawing.shape(
                "hollow",
                page.turned(shape.channelSide(channel).straightened(ARC_MM).spots()));
        double rodEnd = channel.startMm() + channel.reinforcement().lengthMm();
        double top = -channel.filletMm();
        double bottom = top - channel.reinforcement().heightMm();
        if (channel.archMm() == 0 && !channel.isLocatingGroove()) {
            drawing.shape(
                    "rod",
                    page.turned(List.of(
                            new Spot(channel.startMm(), top),
                            new Spot(rodEnd, top),
                            new Spot(rodEnd, bottom),
                            new Spot(channel.startMm(), bottom))));
        }
        stations.add(
                on(new Spot(channel.startMm(), 0)),
                shown.label(channel.startMm()),
                channel.isLocatingGroove() ? "groove from" : "channel from");
        stations.add(
                on(new Spot(channel.endMm(), 0)),
                shown.label(channel.endMm()),
                channel.isLocatingGroove() ? "groove to" : "channel to");
        double middle = channel.startMm() + channel.lengthMm() / 2;
        double deepest = channel.floorDepthAtMm(middle);
        depths.add(
                on(new Spot(middle, -deepest)),
                shown.label(deepest),
                channel.isLocatingGroove() ? "groove deep" : channel.archMm() == 0 ? "channel deep" : "deep in middle");
        if (channel.hasAdjusterPocket()) {
            double at = channel.adjusterPocketStartMm() + channel.adjusterPocketLengthMm() / 2;
            depths.add(
                    on(new Spot(at, -channel.adjusterPocketDepthMm())),
                    shown.label(channel.adjusterPocketDepthMm()),
                    "pocket deep");
        }
    }

    private void glueLine(Drawing drawing, ScarfJoint glued) {
        Optional<Head> part = shape.head();
        if (part.isEmpty()) {
            return;
        }
        List<Spot> line = shape.glueLine(glued);
        drawing.through("glue", page.turned(line));
        if (glued.place() == JointPlace.IN_THE_SHAFT) {
            stations.add(on(line.get(0)), shown.label(glued.frontLineMm()), "scarf on front");
        }
        depths.add(on(line.get(1)), shown.label(glued.backLineMm()), "scarf on back");
    }

    private void label() {
        stations.add(on(new Spot(0, 0)), "nut", "all from here");
        stations.add(
                on(new Spot(shape.bodyJoint(), 0)),
                shown.label(shape.bodyJoint()),
                "body, fret " + design.bodyAtFret());
        double first = shape.fret(1);
        depths.add(on(new Spot(first, -shape.drawnDepth(first))), shown.label(shape.drawnDepth(first)), "fret 1");
        double twelfth = shape.fret(12);
        if (twelfth < shape.bodyJoint()) {
            double depth = shape.drawnDepth(twelfth);
            depths.add(on(new Spot(twelfth, -depth)), shown.label(depth), "fret 12");
        }
        double at = shape.bodyJoint() / 2;
        double board = design.boardThicknessAtMm(at);
        stations.add(on(new Spot(at, board)), shown.label(board), "board thick");
    }

    private Spot on(Spot inFrame) {
        return page.at(inFrame.uMm(), -inFrame.vMm());
    }
}
