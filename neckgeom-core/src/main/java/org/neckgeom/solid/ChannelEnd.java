package org.neckgeom.solid;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Tenon;
import org.neckgeom.shape.Direction;
import org.neckgeom.shape.Plane;
import org.neckgeom.shape.Point;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * The body end of the truss rod channel beside the heel's joint: how far it ends from the mating face, and the least wood
 * between it and a dovetail's sides, a tenon's holes, the lower and the far end of either. Immutable.
 *
 * <p>Each wall is a plane of the solid and each hole a cylinder across it; the channel counts with square ends, as deep as it is
 * where the wall is nearest. Exact for a level floor. A wall counts only where the channel reaches into the joint; holes and the
 * far end always, but the far end of a rod that is adjusted at the heel, which may lie open.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class ChannelEnd extends ValueAnswer {

    /** What is nearest to the channel. */
    public enum Place {
        /** A side of the dovetail. */
        SIDE("the dovetail's side"),
        /** The lower end of dovetail or tenon. */
        LOWER_END("the joint's lower end"),
        /** The end of dovetail or tenon in the body. */
        FAR_END("the joint's far end"),
        /** A hole for a barrel or an insert. */
        HOLE("a hole of the tenon");

        private final String words;

        Place(String words) {
            this.words = words;
        }

        /** Returns it in words, such as {@code a hole of the tenon}. */
        @Override
        public String toString() {
            return words;
        }
    }

    private static final Form<ChannelEnd> FORM = Form.<ChannelEnd>of("channel-end")
            .fact("pastFace", Kind.MM, "past the mating face; negative: short of it", e -> e.past)
            .factIfAny(
                    "wood",
                    Kind.MM,
                    "least to the joint; negative: runs into it",
                    e -> e.least().map(Wood::mm))
            .factIfAny("place", Kind.code(Place.class), "what is nearest", ChannelEnd::place)
            .phrase("joint", e -> e.nearest != null && e.nearest.mm < 0, ", runs {wood:size digits 2} into {place}")
            .phrase("joint", e -> e.nearest != null, ", {wood:1|2} to {place}")
            .finds("past", e -> e.past > 0, "Channel ends {pastFace:1|2} past the mating face{joint}")
            .finds("channel-end", "Channel ends {pastFace:size 1|2} before the mating face{joint}");

    /** Wood between the channel and one thing of the joint, in mm. */
    private record Wood(Place place, double mm) {}

    private final double past;
    private final @Nullable Wood nearest;

    private ChannelEnd(double past, @Nullable Wood nearest, LengthStyle style) {
        super(FORM, style);
        this.past = past + 0.0;
        this.nearest = nearest;
    }

    /**
     * {@return the end of a channel at a face and its joint}
     *
     * @param under the channel as it lies
     * @param face the mating face
     * @param joint where it meets the glue face
     */
    static ChannelEnd of(
            FloorThickness under, Plane face, double joint, Optional<Dovetail> dovetail, Optional<Tenon> tenon) {
        Channel channel = under.channel();
        double end = channel.endMm();
        Direction out = face.normal();
        double lean = Math.max(0, -out.z() / out.x());
        double past = end - joint + channel.depthAtMm(end) * lean;
        Stream<Wood> all = Stream.concat(
                dovetail.stream().flatMap(seat -> dovetail(under, seat, joint)),
                tenon.stream().flatMap(its -> tenon(channel, its, out, joint)));
        return new ChannelEnd(
                past, all.min(Comparator.comparingDouble(Wood::mm)).orElse(null), channel.style());
    }

    private static Stream<Wood> dovetail(FloorThickness under, Dovetail seat, double joint) {
        Channel channel = under.channel();
        if (seat.pastShoulder().isEmpty()) {
            return Stream.empty();
        }
        double length = mm(seat.pastShoulder());
        Stream<Wood> far = farEnd(channel, joint + length);
        if (seat.below().isEmpty() || !(channel.endMm() > joint)) {
            return far;
        }
        double shoulder = mm(seat.widthAtShoulder()) / 2;
        double flare = StrictMath.atan((mm(seat.widthAtEnd()) / 2 - shoulder) / length);
        double taper = seat.taper().libraryValue();
        Direction out = new Direction(
                -StrictMath.sin(flare) * StrictMath.cos(taper),
                StrictMath.cos(flare) * StrictMath.cos(taper),
                -StrictMath.sin(taper));
        Plane side = Plane.through(new Point(joint, shoulder, 0), out);
        double[] inside = inside(channel, joint);
        double aside = DoubleStream.of(inside)
                .map(x -> -side.heightOfMm(new Point(
                        x, Math.abs(under.channelMiddleMm(x)) + channel.widthAtMm(x) / 2, -channel.depthAtMm(x))))
                .min()
                .orElseThrow();
        double low = mm(seat.below()) - deepest(channel, inside);
        return Stream.concat(far, Stream.of(new Wood(Place.SIDE, aside), new Wood(Place.LOWER_END, low)));
    }

    private static Stream<Wood> farEnd(Channel channel, double end) {
        return channel.rod().filter(rod -> rod.adjuster() == End.HEEL).isPresent()
                ? Stream.empty()
                : Stream.of(new Wood(Place.FAR_END, end - channel.endMm()));
    }

    private static Stream<Wood> tenon(Channel channel, Tenon tenon, Direction out, double joint) {
        double end = channel.endMm();
        Stream<Wood> far = farEnd(channel, joint + tenon.length().libraryValue());
        Stream<Wood> low = end > joint
                ? Stream.of(new Wood(
                        Place.LOWER_END, tenon.height().libraryValue() - deepest(channel, inside(channel, joint))))
                : Stream.empty();
        double back = tenon.centreFromShoulder().libraryValue();
        Stream<Wood> holes = tenon.depths().stream()
                .map(deep -> new Point(
                        joint + back * out.x() + deep.libraryValue() * out.z(),
                        0,
                        back * out.z() - deep.libraryValue() * out.x()))
                .map(hole -> new Wood(
                        Place.HOLE, away(channel, hole) - tenon.holeDiameter().libraryValue() / 2));
        return Stream.of(far, low, holes).flatMap(wood -> wood);
    }

    /** From a point of the side view to the channel: level with it, under it, or from its lower corner. */
    private static double away(Channel channel, Point hole) {
        double beyond = Math.max(0, hole.xMm() - channel.endMm());
        double floor = channel.depthAtMm(Math.max(channel.startMm(), Math.min(channel.endMm(), hole.xMm())));
        double under = -hole.zMm() - floor;
        return under < 0 && beyond == 0 ? under : StrictMath.hypot(beyond, Math.max(0, under));
    }

    /** The stations in the joint at which a corner of the channel can be the nearest. */
    private static double[] inside(Channel channel, double joint) {
        double pocket = channel.adjusterPocketStartMm();
        return DoubleStream.of(joint, pocket, pocket + channel.adjusterPocketLengthMm(), channel.endMm())
                .filter(x -> x >= joint && x >= channel.startMm() && x <= channel.endMm())
                .toArray();
    }

    private static double deepest(Channel channel, double[] stations) {
        return DoubleStream.of(stations).map(channel::depthAtMm).max().orElseThrow();
    }

    private static double mm(Optional<Amount<Length>> given) {
        return given.orElseThrow().libraryValue();
    }

    /** {@return how far it ends past the mating face, along the neck; negative: short of it} */
    public Amount<Length> pastFace() {
        return style().amount(past);
    }

    /** {@return the least wood between it and the joint; negative: it runs into it; nothing without a joint of given length} */
    public Optional<Amount<Length>> wood() {
        return least().map(wood -> style().amount(wood.mm()));
    }

    /** {@return what of the joint is nearest; nothing without a joint of given length} */
    public Optional<Place> place() {
        return least().map(Wood::place);
    }

    private Optional<Wood> least() {
        return Optional.ofNullable(nearest);
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {past, nearest};
    }
}
