package org.neckgeom.template;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.neckgeom.channel.JigPlay;
import org.neckgeom.drawing.NeckShape;
import org.neckgeom.drawing.Shown;
import org.neckgeom.fault.Refusal;
import org.neckgeom.neck.Channel;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.ChannelJig;
import org.neckgeom.solid.JigCut;
import org.neckgeom.template.Mark.Stroke;
import org.neckgeom.template.Mark.Words;

/** A jig in the channel at full size, in its own plane with the nut line at 0; a heel jig seen along the neck, its shoulder aside. */
final class JigView {

    private static final double SMALL = 3;
    private static final double BEYOND = 6;
    private static final double CROSS = 3;

    /** Place of a heel jig after its four cheeks: the shoulder at the glue face, then at the cap. */
    private static final int SHOULDER = 4;

    /** Place of a sled: the treble end of its line on the back. */
    private static final int BACK_LINE = 3;

    private static final double SAW_WORDS = 32;

    private final NeckShape shape;
    private final ChannelJig jig;
    private final List<Mark> marks = new ArrayList<>();

    private JigView(NeckShape shape, ChannelJig jig) {
        this.shape = shape;
        this.jig = jig;
    }

    static List<Mark> of(NeckShape shape, @Nullable ChannelJig jig) {
        if (jig == null) {
            throw Refusal.because("jig", "missing", "a jig has a template of its own: use Template.of(jig)");
        }
        JigView view = new JigView(shape, jig);
        Layer layer = jig.cut() == JigCut.FRETTING ? Layer.FRETS : Layer.OUTLINE;
        jig.edges().forEach(edge -> view.marks.add(new Stroke(layer, edge)));
        if (jig.cut() == JigCut.SCARF) {
            view.sawLines();
        }
        switch (jig.cut()) {
            case HEEL -> view.heel();
            case SIDE_PROFILE -> view.side();
            default -> view.flat();
        }
        view.title();
        return view.marks;
    }

    private void title() {
        double[] box = Mark.box(marks);
        Shown shown = new Shown(jig.neck().style());
        String inside = jig.inside().libraryValue() > 0
                ? ", edges " + shown.length(jig.inside().libraryValue()) + " inside the wanted line"
                : "";
        words(box[0], box[3] + 2, jig.cut() + inside);
    }

    /** From above: the channel's centreline, the nut line, the channel and the pins. */
    private void flat() {
        double[] box = Mark.box(marks);
        Channel channel = jig.neck().channel().orElseThrow();
        double from = Math.min(box[0], 0) - BEYOND;
        double half = Math.max(box[3], -box[1]) + BEYOND;
        line(from, 0, Math.max(box[2], channel.endMm()) + BEYOND, 0);
        line(0, -half, 0, half);
        words(1, half - SMALL, "nut line");
        marks.add(new Stroke(Layer.CHANNEL, shape.channelPlan(channel)));
        if (jig.cut() == JigCut.HEAD) {
            int posts = jig.neck().head().orElseThrow().posts().size();
            jig.points().subList(0, posts).forEach(this::cross);
        }
        jig.play().ifPresent(play -> pins(play, channel));
    }

    /** Names beside the treble ends of the saw's lines on the glue face and on the back. */
    private void sawLines() {
        Point face = jig.points().get(1);
        Point back = jig.points().get(BACK_LINE);
        words(face.xMm() - SAW_WORDS, face.yMm() - SMALL, "saw, glue face");
        words(back.xMm() + 1, back.yMm() - SMALL, "saw, back");
    }

    private void pins(JigPlay play, Channel channel) {
        pin(play.first().libraryValue(), play.firstPlay().libraryValue(), channel);
        pin(play.second().libraryValue(), play.secondPlay().libraryValue(), channel);
    }

    private void pin(double x, double clearance, Channel channel) {
        double diameter = channel.widthAtMm(x) - clearance;
        if (diameter > 0) {
            marks.add(new Stroke(Layer.POSTS, Polyline.circle(new Spot(x, 0), diameter / 2)));
        }
    }

    private void cross(Point post) {
        marks.add(Stroke.through(Layer.POSTS, post.xMm() - CROSS, post.yMm(), post.xMm() + CROSS, post.yMm()));
        marks.add(Stroke.through(Layer.POSTS, post.xMm(), post.yMm() - CROSS, post.xMm(), post.yMm() + CROSS));
    }

    private void side() {
        double[] box = Mark.box(marks);
        line(-BEYOND, 0, box[2] + BEYOND, 0);
        line(0, box[1] - BEYOND, 0, BEYOND);
        words(1, BEYOND - SMALL, "nut line");
        marks.add(
                new Stroke(Layer.CHANNEL, shape.channelSide(jig.neck().channel().orElseThrow())));
    }

    /** The glue face and the channel's centreline; to the right the shoulder from the side, body on the right. */
    private void heel() {
        double[] box = Mark.box(marks);
        line(box[0] - BEYOND, 0, box[2] + BEYOND, 0);
        line(0, box[1] - BEYOND, 0, BEYOND);
        Point top = jig.points().get(SHOULDER);
        Point cap = jig.points().get(SHOULDER + 1);
        double aside = box[2] + 4 * BEYOND;
        double right = aside + Math.max(0, top.xMm() - cap.xMm());
        marks.add(Stroke.through(Layer.OUTLINE, right, top.zMm(), right - (top.xMm() - cap.xMm()), cap.zMm()));
        line(aside - BEYOND, 0, right + BEYOND, 0);
        words(aside - BEYOND, 1.5, "shoulder");
    }

    private void line(double... uv) {
        marks.add(Stroke.through(Layer.CENTRE, uv));
    }

    private void words(double u, double v, String text) {
        marks.add(new Words(new Spot(u, v), SMALL, false, text));
    }
}
