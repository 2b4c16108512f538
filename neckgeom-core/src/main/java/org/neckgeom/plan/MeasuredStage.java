package org.neckgeom.plan;

import static org.neckgeom.plan.NeckFeature.CHANNEL_DEPTH;
import static org.neckgeom.plan.NeckFeature.CHANNEL_END;
import static org.neckgeom.plan.NeckFeature.CHANNEL_START;
import static org.neckgeom.plan.NeckFeature.CHANNEL_WIDTH;
import static org.neckgeom.plan.NeckFeature.HEAD_THICKNESS;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Supplier;
import javax.measure.quantity.Length;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.kernel.Once;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.units.Amount;

/** The neck with what has been read on it in the place of what was drawn: channel, head and back. */
final class MeasuredStage {

    /** Places along the neck at which the carved back is compared with the drawn one. */
    private static final int STATIONS = 400;

    /** A thinnest place is sought, and so comes this near to a reading that it is at. */
    private static final double SAME_PLACE_MM = 1e-3;

    private final Inputs job;
    private final ShapeStage shape;
    private final MeasuredNeck read;
    private final Supplier<Channel> channel = new Once<>(this::asCut);
    private final Supplier<Neck> withHead = new Once<>(this::headAndChannel);
    private final Supplier<NeckSolid> solid = new Once<>(this::solidWithHead);
    private final Supplier<Neck> design = new Once<>(this::carved);
    private final Supplier<BackShape> back = new Once<>(() -> carved(BackShape.of(withHead())));

    MeasuredStage(Inputs job, ShapeStage shape) {
        this.job = job;
        this.shape = shape;
        this.read = job.measured();
    }

    /** The design, its channel as cut, its head and its back as they have become. */
    Neck design() {
        return design.get();
    }

    private Neck carved() {
        Neck design = withHead();
        return read.backDepths().isEmpty() ? design : design.back(profile(design));
    }

    private Neck withHead() {
        return withHead.get();
    }

    private Neck headAndChannel() {
        Neck design = job.neck().channel(channel());
        return design.head().map(head -> design.head(head(head))).orElse(design);
    }

    /** The shape of the neck with its head as it has become. */
    NeckSolid solid() {
        return solid.get();
    }

    private NeckSolid solidWithHead() {
        return read.scarfAngle().isPresent() || read.has(HEAD_THICKNESS) ? NeckSolid.of(withHead()) : shape.solid();
    }

    Channel channel() {
        return channel.get();
    }

    private Channel asCut() {
        Channel drawn = job.channel();
        Channel cut = drawn;
        if (read.has(CHANNEL_START)) {
            cut = cut.startingAt(value(CHANNEL_START)).cutTo(amount(drawn.endMm()));
        }
        if (read.has(CHANNEL_END)) {
            cut = cut.cutTo(value(CHANNEL_END));
        }
        if (read.has(CHANNEL_WIDTH)) {
            cut = cut.cutWide(value(CHANNEL_WIDTH));
        }
        return read.has(CHANNEL_DEPTH) ? cut.cutDeep(value(CHANNEL_DEPTH)) : cut;
    }

    private Head head(Head drawn) {
        Head made = read.scarfAngle().map(angle -> drawn.angle(angle.value())).orElse(drawn);
        return read.has(HEAD_THICKNESS) ? made.thickness(value(HEAD_THICKNESS)) : made;
    }

    /**
     * The straight back that bends as the one carved does, for what bends: the least squares of what was carved more, each
     * place weighted by how much a bend there adds to the relief, {@code x (L - x)}. A thin place lowers it by its share.
     */
    private BackProfile profile(Neck design) {
        BackShape plain = BackShape.of(design);
        BackShape carved = carved(plain);
        double joint = design.bodyJointMm();
        double weights = 0;
        double more = 0;
        double squares = 0;
        double moments = 0;
        for (int i = 0; i < STATIONS; i++) {
            double x = joint * (i + 0.5) / STATIONS;
            double weight = x * (joint - x);
            double off = x - joint / 2;
            double here = carved.depthAtMm(x) - plain.depthAtMm(x);
            weights += weight;
            more += weight * here;
            squares += weight * off * off;
            moments += weight * off * here;
        }
        double middle = more / weights;
        double slope = moments / squares;
        BackProfile drawn = design.back();
        double first = design.scale().fretMm(drawn.firstFret()) - joint / 2;
        double second = design.scale().fretMm(drawn.secondFret()) - joint / 2;
        return drawn.depths(
                amount(drawn.firstDepthMm() + middle + slope * first),
                amount(drawn.secondDepthMm() + middle + slope * second));
    }

    private double depthMm(BackShape back, double x) {
        return back.at(amount(x)).depth().libraryValue();
    }

    /** How far the drawing's back lies under the glue face at a station. */
    double drawnDepthMm(double x) {
        return depthMm(drawnBack(), x);
    }

    /** Where the back begins to turn into the heel. */
    double heelStartMm() {
        double joint = job.neck().bodyJointMm();
        return Math.min(drawnBack().heelStartMm().orElse(joint), joint);
    }

    /** How well the depths that were carved are known at a station: nothing where none was read near enough. */
    Optional<Estimate<Length>> carvedAt(double station) {
        SortedMap<Double, Estimate<Length>> depths = read.backDepths();
        double x = depths.keySet().stream()
                .filter(one -> Math.abs(one - station) <= SAME_PLACE_MM)
                .findFirst()
                .orElse(station);
        if (depths.isEmpty() || x < depths.firstKey() || x > depths.lastKey()) {
            return Optional.empty();
        }
        double u = Math.max(
                depths.headMap(Math.nextUp(x)).values().stream()
                        .reduce((one, later) -> later)
                        .orElseThrow()
                        .libraryUncertainty(),
                depths.tailMap(x).values().stream().findFirst().orElseThrow().libraryUncertainty());
        return Optional.of(
                Estimate.ofLibrary(0, u, Double.POSITIVE_INFINITY, job.style().unit()));
    }

    /** The back with its transitions, through the depths read. */
    BackShape back() {
        return back.get();
    }

    private BackShape drawnBack() {
        return BackShape.of(job.neck());
    }

    private BackShape carved(BackShape back) {
        BackShape carved = back;
        for (Map.Entry<Double, Estimate<Length>> depth : read.backDepths().entrySet()) {
            carved = carved.carved(amount(depth.getKey()), depth.getValue().value());
        }
        return carved;
    }

    /** The joint of the head as it has become. */
    Optional<ScarfJoint> scarf() {
        return shape.scarf().map(drawn -> shape.joint(withHead().head().orElseThrow()));
    }

    private Amount<Length> value(NeckFeature feature) {
        return read.of(feature).orElseThrow().value();
    }

    private Amount<Length> amount(double mm) {
        return job.style().amount(mm);
    }
}
