package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.channel.StopBlocks;
import org.neckgeom.channel.StopPlace;
import org.neckgeom.drawing.Shown;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.shape.Spot;

/**
 * The machine as it is set for the step at hand, seen from above with the fence beyond the cutter: fence, cutter with its turn,
 * piece, stops and feed. The cutter turns anticlockwise and the feed goes from right to left, as the caution {@code CLIMB_FEED}
 * has it. Along the fence it is to scale, across it is not.
 */
final class SetUpDrawing {

    private static final double HEIGHT = 222;
    private static final double EDGE = 16;
    private static final double FENCE = 52;
    private static final double PIECE = 64;
    private static final double BELOW = 128;
    private static final double MIDDLE = (PIECE + BELOW) / 2;
    private static final double SIZES = 154;
    private static final double FEED = 196;
    private static final double STOP = 12;
    private static final double CUTTER = 7;
    private static final double TURN = 17;

    /** The key of the row that sets the fence. */
    private static final String FENCE_ROW = "fence";

    private final Job job;
    private final Shown shown;
    private final StopBlocks stops;
    private final PlanSection settings;
    private final double scale;
    private final double cutter;
    private final Drawing drawing;

    private SetUpDrawing(Job job, String words) {
        this.job = job;
        this.shown = new Shown(job.style());
        this.stops = job.plan().stops();
        this.settings = BenchSession.of(job).settings();
        double rear = stops.rear().fromCentre().libraryValue();
        double front = Math.max(
                stops.front().fromCentre().libraryValue(), stops.workLength().libraryValue() - rear);
        this.scale = (Drawing.WIDTH - 2 * (EDGE + STOP)) / (front + rear);
        this.cutter = EDGE + STOP + front * scale;
        this.drawing = new Drawing("Set-up, seen from above", words, HEIGHT);
    }

    /** As an SVG picture; nothing where no cutter is set for the step at hand. */
    static Optional<String> of(Job job) {
        boolean isSet = BenchSession.of(job)
                .operation()
                .filter(Operation::cutsTheChannel)
                .filter(cut -> !job.plan().work().finished().contains(cut))
                .isPresent();
        return isSet ? Optional.of(svg(job)) : Optional.empty();
    }

    private static String svg(Job job) {
        SlotVerdict slot = job.plan().slot();
        String words = "The fence lies beyond a cutter that turns anticlockwise; the feed goes from right to left.";
        SetUpDrawing setUp = new SetUpDrawing(job, words);
        setUp.machine();
        if (slot.mayCut()) {
            setUp.blank();
            setUp.stop("rearStop", "rear stop", setUp.stops.rear(), 1);
            setUp.stop("frontStop", "front stop", setUp.stops.front(), -1);
        } else {
            setUp.testPiece();
            if (slot.step() == SlotStep.MOVE) {
                setUp.move(slot.move());
            } else if (job.steps().isEmpty()) {
                setUp.gap();
            }
        }
        setUp.feed();
        return setUp.drawing.toSvg("set-up");
    }

    private void machine() {
        double half = job.shop().fence().lengthMm() / 2 * scale;
        double left = Math.max(2, cutter - half);
        double right = Math.min(Drawing.WIDTH - 2, cutter + half);
        drawing.shape("rod", box(left, FENCE, right, PIECE));
        drawing.label("words", "end", right, FENCE - 5, "fence");
    }

    private void piece(double left, double right) {
        drawing.shape("wood", box(left, PIECE, right, BELOW));
    }

    private void cutter() {
        drawing.shape("hollow", arc(CUTTER, 0, 345));
        drawing.through("least", arc(TURN, -50, 200));
        head(at(TURN, 200), at(TURN, 160));
        drawing.label(
                "words halo",
                "middle",
                cutter,
                BELOW - 5,
                shown.length(job.shop().cutter().diameterMm()));
    }

    /** The work where the cut begins: its trailing end lies against the rear stop. */
    private void blank() {
        double right = cutter + stops.rear().fromCentre().libraryValue() * scale;
        double left = right - stops.workLength().libraryValue() * scale;
        piece(left, right);
        double radius = job.shop().cutter().slotWidthMm() / 2;
        double cut = job.neck()
                .channel()
                .map(channel -> channel.endMm() - channel.startMm())
                .orElse(2 * radius);
        drawing.shape(
                "hidden",
                box(cutter - radius * scale, MIDDLE - CUTTER, cutter + (cut - radius) * scale, MIDDLE + CUTTER));
        cutter();
        drawing.label("words", "start", left + 3, PIECE + 12, stops.leading() + " end");
    }

    private void testPiece() {
        piece(EDGE + 40, Drawing.WIDTH - EDGE - 40);
        cutter();
        drawing.label("words", "start", EDGE + 43, PIECE + 12, "test piece");
    }

    private void stop(String key, String name, StopPlace stop, int way) {
        if (stop.isOpen()) {
            drawing.label("words", way > 0 ? "end" : "start", cutter + way * 60, SIZES + 12, name + ": none");
            return;
        }
        double face = cutter + way * stop.fromCentre().libraryValue() * scale;
        drawing.shape("offcut", box(face, PIECE - 6, face + way * STOP, BELOW + 6));
        size(cutter, face, SIZES);
        double middle = (cutter + face) / 2;
        drawing.label("number halo", "middle", middle, SIZES - 5, figure(key));
        drawing.label("words", "middle", middle, SIZES + 13, name);
    }

    /** What the settings of the step at hand set, with the digits they have. */
    private String figure(String key) {
        return settings.rows().stream()
                .filter(row -> row.key().equals(key))
                .findFirst()
                .flatMap(PlanSection.Row::figure)
                .orElse("");
    }

    /** From the fence to the cutter's near edge, as a rule is laid. */
    private void gap() {
        double u = cutter + TURN + 12;
        drawing.line("least", u, PIECE, u, MIDDLE - CUTTER);
        head(new Spot(u, PIECE), new Spot(u, PIECE + 12));
        head(new Spot(u, MIDDLE - CUTTER), new Spot(u, PIECE + 8));
        drawing.label("number halo", "start", u + 6, (PIECE + MIDDLE) / 2 + 5, figure(FENCE_ROW));
    }

    private void move(FenceMove move) {
        double from = move.isTowardTheCutter() ? 14 : 42;
        double to = move.isTowardTheCutter() ? 42 : 14;
        drawing.line("least", cutter, from, cutter, to);
        head(new Spot(cutter, to), new Spot(cutter, from));
        boolean isLeft = cutter > Drawing.WIDTH / 2;
        String anchor = isLeft ? "end" : "start";
        double u = cutter + (isLeft ? -12 : 12);
        drawing.label("number", anchor, u, 24, figure(FENCE_ROW));
        drawing.label("words", anchor, u, 40, (move.isTowardTheCutter() ? "toward" : "away from") + " the cutter");
    }

    private void feed() {
        drawing.line("least", Drawing.WIDTH - 60, FEED, 60, FEED);
        head(new Spot(60, FEED), new Spot(90, FEED));
        drawing.label("words", "middle", Drawing.WIDTH / 2, FEED + 18, "feed from right to left, along the fence");
    }

    private void size(double from, double to, double v) {
        drawing.line("leader", from, v, to, v);
        head(new Spot(to, v), new Spot(from, v));
        drawing.line("leader", from, BELOW, from, v + 4);
    }

    /** An arrow's head at a point, as it is seen coming from another. */
    private void head(Spot tip, Spot from) {
        double du = tip.uMm() - from.uMm();
        double dv = tip.vMm() - from.vMm();
        double length = tip.distanceMm(from);
        double u = du / length;
        double v = dv / length;
        drawing.shape(
                "dot",
                List.of(
                        tip,
                        new Spot(tip.uMm() - 8 * u - 4 * v, tip.vMm() - 8 * v + 4 * u),
                        new Spot(tip.uMm() - 8 * u + 4 * v, tip.vMm() - 8 * v - 4 * u)));
    }

    /** About the cutter; angles anticlockwise from the right, in degrees. */
    private Spot at(double radius, double degrees) {
        double t = Math.toRadians(degrees);
        return new Spot(cutter + radius * StrictMath.cos(t), MIDDLE - radius * StrictMath.sin(t));
    }

    private List<Spot> arc(double radius, int from, int to) {
        List<Spot> points = new ArrayList<>();
        for (int degrees = from; degrees <= to; degrees += 15) {
            points.add(at(radius, degrees));
        }
        return points;
    }

    private static List<Spot> box(double left, double top, double right, double bottom) {
        return List.of(new Spot(left, top), new Spot(right, top), new Spot(right, bottom), new Spot(left, bottom));
    }
}
