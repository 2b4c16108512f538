package org.neckgeom.template;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.neckgeom.drawing.HeadShape;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.drawing.Stations;
import org.neckgeom.fault.Refusal;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;

/** The views of a template at full size, each in its own plane with the nut, or the section's middle, at 0. */
final class TemplateViews {

    private static final double SMALL = 3;
    private static final double BEYOND = 6;
    private static final double BETWEEN_SECTIONS = 24;
    private static final double BETWEEN_ROWS = 26;
    private static final double CROSS = 3;

    /** The fret beside which a plan names its sides. */
    private static final int SIDES_NAMED_AT = 5;

    private final NeckShape shape;
    private final Neck design;
    private final Shown shown;
    private final Optional<ScarfJoint> joint;
    private final List<Mark> marks = new ArrayList<>();

    private TemplateViews(NeckShape shape, Optional<ScarfJoint> joint) {
        this.shape = shape;
        this.design = shape.design();
        this.shown = new Shown(design.style());
        this.joint = joint;
    }

    /** Returns the marks of a view. */
    static List<Mark> of(TemplatePart part, NeckShape shape, Optional<ScarfJoint> joint) {
        TemplateViews view = new TemplateViews(shape, joint);
        switch (part) {
            case PLAN -> view.plan();
            case SIDE -> view.side();
            case SECTIONS -> view.sections();
            case HEAD -> view.head();
            case HEAD_BACK -> view.headBack();
            case JOINT -> view.marks.addAll(JointView.of(shape));
            case SAW_MARKS -> view.marks.addAll(SawMarksView.of(shape));
            case JIG -> throw new IllegalStateException("a jig has a view of its own");
        }
        return List.copyOf(view.marks);
    }

    private void plan() {
        double end = shape.boardEnd();
        List<Spot> board = new ArrayList<>(shape.edge(-1));
        board.add(shape.edge(1).get(1));
        board.add(shape.edge(1).get(0));
        round(Layer.OUTLINE, board);
        shape.strings().forEach(string -> run(Layer.STRINGS, string));
        line(Layer.CENTRE, -BEYOND, 0, end + BEYOND, 0);
        double joint = shape.bodyJoint();
        line(Layer.CENTRE, joint, -shape.halfWidth(joint) - BEYOND, joint, shape.halfWidth(joint));
        words(joint, -shape.halfWidth(joint) - BEYOND - SMALL - 1, true, "Body joint, " + shown.length(joint));
        for (int n = 1; n <= design.frets(); n++) {
            List<Spot> fret = shape.fretLine(n);
            run(Layer.FRETS, fret);
            words(fret.get(1).uMm(), fret.get(1).vMm() + 1.5, true, String.valueOf(n));
        }
        design.channel()
                .ifPresent(channel -> marks.add(
                        new Stroke(Layer.CHANNEL, shape.channelPlan(channel).reversed())));
        shape.barsPlan().forEach(bar -> round(Layer.CHANNEL, bar));
        shape.anchorPlan().ifPresent(anchor -> round(Layer.OUTLINE, anchor));
        double fifth = shape.fret(SIDES_NAMED_AT);
        words(fifth, -shape.halfWidth(fifth) - SMALL - 2, true, "BASS");
        words(fifth, shape.halfWidth(fifth) + 2 * SMALL, true, "TREBLE");
        Spot nut = shape.fretLine(0).get(0);
        words(nut.uMm() - BEYOND - 1, nut.vMm() - SMALL - 3, false, "nut, " + shown.length(2 * shape.halfWidth(0)));
    }

    private void side() {
        double x = shape.bodyJoint();
        double end = shape.woodEnd();
        line(Layer.OUTLINE, 0, 0, end, 0);
        if (shape.anchorEnd() < 0) {
            double low = -shape.drawnDepth(0);
            line(Layer.OUTLINE, 0, 0, shape.anchorEnd(), 0, shape.anchorEnd(), low, 0, low);
        }
        run(Layer.BACK, shape.backLine());
        line(Layer.CENTRE, 0, -shape.drawnDepth(0) - BEYOND, 0, design.boardThicknessAtMm(0) + BEYOND);
        words(1, design.boardThicknessAtMm(0) + BEYOND - SMALL, false, "nut");
        List<Spot> board = new ArrayList<>();
        board.add(new Spot(0, 0));
        board.addAll(shape.boardTop());
        board.add(new Spot(shape.boardEnd(), 0));
        round(Layer.OUTLINE, board);
        design.channel().ifPresent(channel -> marks.add(new Stroke(Layer.CHANNEL, shape.channelSide(channel))));
        shape.head().ifPresent(head -> headSide());
        if (end > x) {
            line(Layer.OUTLINE, end, 0, end, -shape.drawnDepth(x));
            line(Layer.CENTRE, x, 0, x, -shape.drawnDepth(x) - BEYOND);
        } else {
            heel(x);
        }
    }

    private void heel(double x) {
        run(Layer.OUTLINE, shape.heelFace());
        design.heel().map(Heel::heightMm).ifPresent(high -> {
            double middle = x - 45;
            words(middle, -high * 0.7, true, "heel face " + shown.length(high));
            words(middle, -high * 0.7 - 1.5 * SMALL, true, Shown.degrees(shape.heelFaceRad()) + " to the glue face");
        });
    }

    private void headSide() {
        run(Layer.OUTLINE, shape.headSide());
        shape.veneersSide().forEach(veneer -> round(Layer.OUTLINE, veneer));
        joint.ifPresent(glued -> run(Layer.CUT, shape.glueLine(glued)));
    }

    /** Two in a row, so that they come together on one page. */
    private void sections() {
        List<Stations.Station> cuts = shape.stations().cuts();
        double deepest =
                cuts.stream().mapToDouble(cut -> shape.backDepth(cut.x())).max().orElse(0);
        double highest = cuts.stream()
                .mapToDouble(cut -> design.boardThicknessAtMm(cut.x()))
                .max()
                .orElse(0);
        double widest = 2
                * cuts.stream()
                        .mapToDouble(cut -> shape.halfWidth(cut.x()))
                        .max()
                        .orElse(0);
        double row = deepest + highest + BETWEEN_ROWS;
        for (int i = 0; i < cuts.size(); i++) {
            Stations.Station cut = cuts.get(i);
            Spot middle = new Spot(i % 2 * (widest + BETWEEN_SECTIONS), -(i / 2) * row);
            section(cut.x(), middle);
            double low = middle.vMm() - shape.backDepth(cut.x()) - 3 * SMALL;
            words(middle.uMm(), low, true, cut.name());
            words(middle.uMm(), low - 1.5 * SMALL, true, "x " + shown.length(cut.x()) + " from the nut");
            shape.sectionChannel()
                    .filter(channel -> channel.depthAtMm(cut.x()) > 0)
                    .flatMap(channel -> shape.channelOff(cut.x(), shown))
                    .ifPresent(off -> words(middle.uMm(), low - 3 * SMALL, true, "channel " + off));
        }
    }

    private void section(double x, Spot middle) {
        double a = shape.halfWidth(x);
        double top = design.boardThicknessAtMm(x);
        List<Mark> here = new ArrayList<>();
        here.add(Stroke.round(Layer.BACK, shape.section(x)));
        double edge = top - shape.crownDrop(x);
        // From edge to edge over the crown: half its angle is asin(a / R); a flat board has none.
        double crown = StrictMath.tan(StrictMath.asin(a / design.crownRadiusAtMm(x)) / 2);
        here.add(new Stroke(
                Layer.OUTLINE,
                Polyline.closed(
                        List.of(new Spot(-a, 0), new Spot(a, 0), new Spot(a, edge), new Spot(-a, edge)),
                        0,
                        0,
                        crown,
                        0)));
        here.add(Stroke.through(Layer.CENTRE, 0, -shape.backDepth(x) - 3, 0, top + 3));
        here.add(new Words(new Spot(-a, top + 1.5), SMALL, false, "BASS"));
        here.add(new Words(new Spot(a - 2 * SMALL, top + 1.5), SMALL, true, "TREBLE"));
        shape.sectionChannel().filter(channel -> channel.depthAtMm(x) > 0).ifPresent(channel -> {
            double half = channel.widthAtMm(x) / 2;
            double depth = channel.depthAtMm(x);
            double left = shape.channelMiddle(x) - half;
            double right = shape.channelMiddle(x) + half;
            here.add(Stroke.round(Layer.CHANNEL, left, 0, left, -depth, right, -depth, right, 0));
        });
        shape.barsAcross(x).forEach(bar -> here.add(new Stroke(Layer.CHANNEL, Polyline.closed(bar))));
        shape.stripsAcross(x).forEach(joint -> here.add(new Stroke(Layer.ENVELOPE, Polyline.open(joint))));
        here.forEach(mark -> marks.add(mark.moved(middle.uMm(), middle.vMm())));
    }

    private Head headOrRefuse() {
        return design.head()
                .orElseThrow(() -> Refusal.of(
                        "\"" + design.name() + "\"", "missing", "have a head for this", "has", "none: add .head(...)"));
    }

    /** Mirrored about the neck's axis, the tip on the left again: the treble side lies below. */
    private void headBack() {
        Head head = headOrRefuse();
        HeadShape there = shape.headShape().orElseThrow();
        List<Spot> outline = mirrored(there.outline());
        round(there.hasOutline() ? Layer.OUTLINE : Layer.ENVELOPE, outline);
        double high = outline.stream().mapToDouble(Spot::vMm).max().orElse(0);
        double low = outline.stream().mapToDouble(Spot::vMm).min().orElse(0);
        words(-head.lengthMm() / 2, high + 3, true, "BACK, bass side");
        words(-head.lengthMm() / 2, low - SMALL - 3, true, "BACK, treble side");
        there.wings(shape.stockMm()).forEach(seam -> wing(mirrored(seam)));
        there.slots()
                .forEach(slot -> marks.add(new Stroke(
                        Layer.OUTLINE,
                        Polyline.closed(
                                mirrored(slot.spots()),
                                Arrays.stream(slot.bulges())
                                        .map(bulge -> -bulge)
                                        .toArray()))));
        mirrored(there.posts()).forEach(this::cross);
        double along = head.lengthMm() + BEYOND;
        Spot axis = there.solid().neckAxis();
        line(Layer.CENTRE, BEYOND, 0, 0, 0, -along * axis.uMm(), along * axis.vMm());
    }

    private static List<Spot> mirrored(List<Spot> spots) {
        return spots.stream().map(s -> new Spot(s.uMm(), -s.vMm())).toList();
    }

    private void cross(Spot post) {
        line(Layer.POSTS, post.uMm() - CROSS, post.vMm(), post.uMm() + CROSS, post.vMm());
        line(Layer.POSTS, post.uMm(), post.vMm() - CROSS, post.uMm(), post.vMm() + CROSS);
    }

    private void head() {
        Head head = headOrRefuse();
        double half = shape.halfWidth(0);
        HeadShape there = shape.headShape().orElseThrow();
        round(there.hasOutline() ? Layer.OUTLINE : Layer.ENVELOPE, there.outline());
        double treble = there.outline().stream().mapToDouble(Spot::vMm).max().orElse(0);
        double bass = there.outline().stream().mapToDouble(Spot::vMm).min().orElse(0);
        words(-head.lengthMm() / 2, treble + 3, true, "FACE, treble side");
        words(-head.lengthMm() / 2, bass - SMALL - 3, true, "FACE, bass side");
        there.wings(shape.stockMm()).forEach(seam -> wing(seam));
        there.slots().forEach(slot -> marks.add(new Stroke(Layer.OUTLINE, slot)));
        strings(there);
        List<Spot> nut = there.nutLine(half);
        run(Layer.OUTLINE, nut);
        for (int side : new int[] {-1, 1}) {
            line(Layer.OUTLINE, nut.get(side < 0 ? 0 : 1).uMm(), side * half, 30, side * shape.halfWidth(30));
        }
        line(Layer.CENTRE, 0, 0, 30 + BEYOND, 0);
        double along = head.lengthMm() + BEYOND;
        Spot axis = there.solid().neckAxis();
        line(Layer.CENTRE, 0, 0, -along * axis.uMm(), -along * axis.vMm());
        double corner = Math.max(0, there.outline().get(0).uMm());
        words(corner + 2, half + 2, false, "nut, " + shown.length(2 * half));
        joint.filter(glued -> glued.place() == JointPlace.IN_THE_HEAD).ifPresent(glued -> {
            // On the wood's own face, under the veneer, the shaft's back meets the head's face so far from the nut
            // line.
            double onWood = glued.shaftThickness().libraryValue() / StrictMath.sin(head.angleRad());
            run(Layer.CUT, there.across(onWood));
            words(-onWood + 1, 1.5, false, "scarf " + shown.length(onWood));
        });
        if (head.veneerMm() > 0 && head.veneerShortOfNutMm() > 0) {
            run(Layer.CUT, there.acrossOnAxis(head.veneerShortOfNutMm()));
        }
    }

    private void wing(List<Spot> seam) {
        run(Layer.ENVELOPE, seam);
        Spot end = seam.get(1);
        boolean treble = end.vMm() > 0;
        words(end.uMm() + 3, end.vMm() + (treble ? 1.5 : -SMALL - 1.5), false, "wing");
    }

    /** Crosses where the strings leave their posts, and the strings down to the nut. */
    private void strings(HeadShape there) {
        List<Spot> posts = there.posts();
        List<List<Spot>> strings = shape.strings();
        for (int i = 0; i < posts.size(); i++) {
            Spot post = posts.get(i);
            cross(post);
            if (strings.size() == posts.size()) {
                run(Layer.STRINGS, List.of(post, strings.get(i).get(0)));
            }
        }
    }

    private void line(Layer layer, double... uv) {
        marks.add(Stroke.through(layer, uv));
    }

    private void run(Layer layer, List<Spot> points) {
        marks.add(new Stroke(layer, Polyline.open(points)));
    }

    private void round(Layer layer, List<Spot> points) {
        marks.add(Stroke.round(layer, points));
    }

    private void words(double u, double v, boolean centred, String text) {
        marks.add(new Words(new Spot(u, v), SMALL, centred, text));
    }
}
