package org.neckgeom.plan;

import static org.neckgeom.plan.NeckFeature.CHANNEL_DEPTH;
import static org.neckgeom.plan.NeckFeature.CHANNEL_END;
import static org.neckgeom.plan.NeckFeature.CHANNEL_START;
import static org.neckgeom.plan.NeckFeature.CHANNEL_WIDTH;
import static org.neckgeom.plan.NeckFeature.FINGERBOARD_OFFSET;
import static org.neckgeom.plan.NeckFeature.HEAD_THICKNESS;
import static org.neckgeom.plan.NeckFeature.HEIGHT_AT_BRIDGE;
import static org.neckgeom.plan.NeckFeature.OFFSET_AT_BRIDGE;
import static org.neckgeom.plan.NeckFeature.SLOT_OFFSET;
import static org.neckgeom.plan.NeckFeature.SLOT_OFFSET_AT_HEEL;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Supplier;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.NeckTree;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.HeelCorners;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.solid.BackShape;
import org.neckgeom.units.Amount;

/** A plan's neck with what has been read on it put in the place of what was drawn. */
final class AsMade {

    /** The places of two of the budgets among the four of a plan. */
    private static final int STRING_LINE = 0;

    private static final int PROJECTION = 3;

    private final NeckPlan plan;
    private final MeasuredNeck read;
    private final Supplier<Channel> channel = new Once<>(this::asCut);
    private final Supplier<Neck> withHead = new Once<>(this::headAndChannel);
    private final Supplier<Neck> design = new Once<>(this::carved);
    private final Supplier<BackShape> back = new Once<>(() -> carved(BackShape.of(withHead())));

    private AsMade(NeckPlan plan) {
        this.plan = plan;
        this.read = plan.readings();
    }

    static AsMade of(NeckPlan plan) {
        return new AsMade(plan);
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
        Neck design = plan.design().channel(channel());
        return design.head().map(head -> design.head(head(head))).orElse(design);
    }

    Channel channel() {
        return channel.get();
    }

    private Channel asCut() {
        Channel drawn = plan.design().channel().orElseThrow();
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

    /** The straight line through the two depths as they have become, for what bends. */
    private BackProfile profile(Neck design) {
        BackProfile drawn = plan.design().back();
        return drawn.depths(amount(carvedMm(design, drawn.firstFret())), amount(carvedMm(design, drawn.secondFret())));
    }

    private double carvedMm(Neck design, double fret) {
        double x = design.scale().fretMm(fret);
        BackShape plain = BackShape.of(design);
        double more = depthMm(carved(plain), x) - depthMm(plain, x);
        return design.back().depthAtMm(x, design.scale()) + more;
    }

    private double depthMm(BackShape back, double x) {
        return back.at(amount(x)).depth().libraryValue();
    }

    /** Where the slot runs: as read on the neck, and else as it stands at the machine. */
    SlotPlace slotPlace() {
        SlotPlace set = plan.rounds().place();
        Optional<Estimate<Length>> head = read.of(SLOT_OFFSET);
        if (read.has(SLOT_OFFSET_AT_HEEL)) {
            Channel cut = channel();
            return SlotPlace.read(
                    head.orElseGet(() -> set.start().estimate()),
                    amount(cut.startMm()),
                    read.of(SLOT_OFFSET_AT_HEEL).orElseThrow(),
                    amount(cut.endMm()));
        }
        return head.map(set::readAtStart).orElse(set);
    }

    /** How far the drawing's back lies under the glue face at a station. */
    double drawnDepthMm(double x) {
        return depthMm(drawnBack(), x);
    }

    /** Where the back begins to turn into the heel. */
    double heelStartMm() {
        double joint = plan.design().bodyJointMm();
        return Math.min(drawnBack().heelStartMm().orElse(joint), joint);
    }

    /** How well the depths that were carved are known at a station: nothing where none was read near enough. */
    Optional<Estimate<Length>> carvedAt(double x) {
        SortedMap<Double, Estimate<Length>> depths = read.backDepths();
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
                Estimate.ofLibrary(0, u, Double.POSITIVE_INFINITY, plan.style().unit()));
    }

    /** GOOD within its limits, STOP outside, OPEN where the reading cannot tell. */
    static Outcome outcome(Verdict<?> verdict) {
        return switch (verdict.call()) {
            case WITHIN -> Outcome.GOOD;
            case UNDECIDED -> Outcome.OPEN;
            case OUTSIDE -> Outcome.STOP;
        };
    }

    /** The back with its transitions, through the depths read. */
    BackShape back() {
        return back.get();
    }

    private BackShape drawnBack() {
        return BackShape.of(plan.design());
    }

    private BackShape carved(BackShape back) {
        BackShape carved = back;
        for (Map.Entry<Double, Estimate<Length>> depth : read.backDepths().entrySet()) {
            carved = carved.carved(amount(depth.getKey()), depth.getValue().value());
        }
        return carved;
    }

    /** The joint at the angle that was read. */
    Optional<ScarfJoint> scarf() {
        return plan.scarf()
                .map(joint -> read.scarfAngle()
                        .map(angle ->
                                ScarfJoint.of(plan.design().head().orElseThrow().angle(angle.value()), plan.blank()))
                        .orElse(joint));
    }

    /** What comes off the heel so that height and centreline come to where they belong at the bridge. */
    Optional<HeelCorners> heelCorners() {
        Heel heel = plan.design().heel().orElse(null);
        if (heel == null || plan.neckSet().isEmpty() || !(read.has(HEIGHT_AT_BRIDGE) || read.has(OFFSET_AT_BRIDGE))) {
            return Optional.empty();
        }
        double tooHigh = read.of(HEIGHT_AT_BRIDGE).map(Estimate::libraryValue).orElse(0.0);
        double aside = read.of(OFFSET_AT_BRIDGE).map(Estimate::libraryValue).orElse(0.0);
        return Optional.of(plan.neckSet().get().correction(heel, amount(-tooHigh), amount(aside)));
    }

    /** The four budgets: what was read on the way in the place of its guess, what was read at the bridge in that of all. */
    List<Budget<Length>> budgets() {
        NeckTree tree = NeckTree.fromTheChannel(plan.design()).with(plan.workmanship());
        if (read.has(FINGERBOARD_OFFSET)) {
            tree = tree.measured("fingerboard", read.of(FINGERBOARD_OFFSET).orElseThrow());
        }
        List<Budget<Length>> budgets = new ArrayList<>(tree.budgets());
        read.of(OFFSET_AT_BRIDGE).ifPresent(line -> budgets.set(STRING_LINE, asRead(budgets.get(STRING_LINE), line)));
        read.of(HEIGHT_AT_BRIDGE).ifPresent(high -> budgets.set(PROJECTION, asRead(budgets.get(PROJECTION), high)));
        return List.copyOf(budgets);
    }

    private static Budget<Length> asRead(Budget<Length> guess, Estimate<Length> reading) {
        return Budget.of(guess.title(), guess.unit()).with("reading at the bridge", ErrorDistribution.of(reading));
    }

    private Amount<Length> value(NeckFeature feature) {
        return read.of(feature).orElseThrow().value();
    }

    private Amount<Length> amount(double mm) {
        return plan.style().amount(mm);
    }
}
