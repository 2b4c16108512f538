package org.neckgeom.solid;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.shape.Direction;
import org.neckgeom.shape.Frame;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * A string in space: its underside from the nut to the saddle, and on over the nut to its post. Immutable.
 *
 * <p>Its own scale is the distance in plan from its nut point to its saddle point before compensation. Its middle line runs
 * half a gauge above the underside. On the head it runs to the tangent point of its post, on the side of the head's axis.
 * Exact.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class StringLine extends ValueAnswer {

    private static final Form<StringLine> FORM = Form.<StringLine>of("string-line")
            .fact("string", Kind.WHOLE, "1: the outermost on the bass side", s -> s.number)
            .fact("scale", Kind.MM, "its own, in plan, without compensation", s -> s.scale)
            .fact("speaking", Kind.MM, "length in space, compensation counted", s -> s.underside.lengthMm())
            .fact("gauge", Kind.MM, "diameter", s -> s.gauge)
            .fact(
                    "nutHeight",
                    Kind.MM,
                    "of the underside over the glue face",
                    s -> s.underside.from().zMm())
            .fact(
                    "saddleHeight",
                    Kind.MM,
                    "of the underside over the glue face",
                    s -> s.underside.to().zMm())
            .factIfAny("break", Kind.RAD, "over the nut, below the glue face", StringLine::breakRad)
            .factIfAny("side", Kind.RAD, "in plan past the nut; positive: toward the treble side", StringLine::sideRad)
            .factIfAny("turn", Kind.RAD, "whole bend over the nut", StringLine::turnRad)
            .finds("string", "String {string}: scale {scale:text}, speaking length {speaking:text}")
            .line(
                    "heights",
                    "underside",
                    "{nutHeight:text} over the glue face at the nut, {saddleHeight:text} at the saddle")
            .line("break", "over the nut", s -> s.post != null, "{break:2} down, {turn:2} in all");

    private final int number;
    private final Line underside;
    private final double scale;
    private final double gauge;
    private final @Nullable Line post;

    StringLine(StringRuns.Run run, double gauge, @Nullable Line post, LengthStyle style) {
        super(FORM, style);
        this.number = run.index() + 1;
        this.underside = run.underside();
        this.scale = run.scale();
        this.gauge = gauge;
        this.post = post;
    }

    /**
     * {@return the strings of a neck over its board at heights of their own, without its head, from bass to treble: one for
     * each string, or where their places across were not given, one for each course} Defaults, common practice: frets 1.1 mm
     * high; courses spread evenly between 3 mm from either edge, at the nut and at half the scale.
     *
     * @param neck with scale, fingerboard and strings
     * @param heights of the strings over the fret tops
     */
    public static List<StringLine> overBoard(Neck neck, StringHeights heights) {
        StringRuns runs = new StringRuns(Objects.requireNonNull(neck, "neck"), FannedFrets.of(neck));
        double frets = neck.fingerboard().fretHeight().orElse(usualFretHeight()).libraryValue();
        Optional<StringHeights> high = Optional.of(Objects.requireNonNull(heights, "heights"));
        return IntStream.range(0, runs.count())
                .mapToObj(i -> new StringLine(runs.run(i, frets, high), runs.gaugeMm(i), null, neck.style()))
                .toList();
    }

    /** {@return the height of the frets over the board where none was given, common practice; 1.1 mm} */
    public static Amount<Length> usualFretHeight() {
        return ShopUnits.mm(StringRuns.USUAL_FRETS_MM);
    }

    /**
     * The way of a string's middle from the nut to its post: to the tangent point in the post's own plane, on the side of the
     * head's axis.
     *
     * @param nut where the string's middle lies over the nut
     * @param centre of the post, in the head's frame, at the height of the string
     * @param radius of the post, 0 where the place is that of the string
     */
    static Line toPost(Point nut, Frame head, Point centre, double radius) {
        Point from = head.toHere(nut);
        double du = centre.xMm() - from.xMm();
        double dv = centre.yMm() - from.yMm();
        double away = Math.sqrt(du * du + dv * dv);
        double u = centre.xMm();
        double v = centre.yMm();
        if (radius > 0 && away > radius) {
            double sin = radius / away;
            double cos = Math.sqrt((1 - sin) * (1 + sin));
            double reach = away * cos * cos;
            double aside = away * cos * sin;
            double best = Double.POSITIVE_INFINITY;
            for (int turn : new int[] {-1, 1}) {
                double pu = from.xMm() + (reach * du - turn * aside * dv) / away;
                double pv = from.yMm() + (reach * dv + turn * aside * du) / away;
                if (Math.abs(pv) < best) {
                    best = Math.abs(pv);
                    u = pu;
                    v = pv;
                }
            }
        }
        return new Line(nut, head.toNeck(new Point(u, v, centre.zMm())));
    }

    /** {@return its number, 1 for the outermost on the bass side} */
    public int number() {
        return number;
    }

    /** {@return its underside, from the nut to the saddle} */
    public Line underside() {
        return underside;
    }

    /** {@return its middle line on the head, from the nut to where it leaves the post; nothing without posts} */
    public Optional<Line> overHead() {
        return Optional.ofNullable(post);
    }

    /** {@return its own scale in plan, without compensation; more than 0} */
    public Amount<Length> scale() {
        return style().amount(scale);
    }

    /** {@return its speaking length in space, compensation counted; more than 0} */
    public Amount<Length> speakingLength() {
        return style().amount(underside.lengthMm());
    }

    /** {@return its diameter; 0 where it was not given} */
    public Amount<Length> gauge() {
        return style().amount(gauge);
    }

    /** {@return how steeply it falls from the nut to its post, below the glue face; nothing without posts} */
    public Optional<Amount<Angle>> breakAngle() {
        return angle(breakRad());
    }

    /** {@return how far it is turned aside in plan past the nut, positive toward the treble side; nothing without posts} */
    public Optional<Amount<Angle>> sideAngle() {
        return angle(sideRad());
    }

    /** {@return the whole bend between both sides of the nut, in space; nothing without posts} */
    public Optional<Amount<Angle>> turn() {
        return angle(turnRad());
    }

    /**
     * {@return the force that presses it down on the nut, square to the glue face: {@code tension (sin(break) - sin(rise))}, the
     * rise that of its speaking side; negative when it lifts off} Estimate: no friction in the slot. 0 without posts.
     *
     * @param tension of the string, 0 or more
     */
    public Amount<Force> nutForce(Quantity<Force> tension) {
        double pull = LibraryUnits.notNegative(tension, ShopUnit.NEWTON, "string tension");
        double down = overHead().map(way -> way.direction().z()).orElse(0.0);
        return Amount.ofLibrary(
                overHead().isPresent() ? pull * (-down - underside.direction().z()) : 0, ShopUnit.NEWTON);
    }

    private static Optional<Amount<Angle>> angle(Optional<Double> rad) {
        return rad.map(r -> Amount.ofLibrary(r, ShopUnit.DEGREE));
    }

    private Optional<Double> breakRad() {
        return overHead()
                .map(line -> StrictMath.atan2(
                        line.from().zMm() - line.to().zMm(),
                        StrictMath.hypot(
                                line.to().xMm() - line.from().xMm(),
                                line.to().yMm() - line.from().yMm())));
    }

    /** From straight on toward the head. */
    private Optional<Double> sideRad() {
        return overHead()
                .map(line -> StrictMath.atan2(
                                line.to().yMm() - line.from().yMm(),
                                line.from().xMm() - line.to().xMm())
                        + 0.0);
    }

    private Optional<Double> turnRad() {
        Direction speaking = underside.direction().opposite();
        return overHead().map(line -> line.direction().angleTo(speaking).libraryValue());
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {number, underside, scale, gauge, post};
    }
}
