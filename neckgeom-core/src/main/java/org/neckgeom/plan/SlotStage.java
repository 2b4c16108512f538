package org.neckgeom.plan;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.neckgeom.channel.BlankOnFence;
import org.neckgeom.channel.CentringRounds;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.HeadInterference;
import org.neckgeom.channel.PassPlan;
import org.neckgeom.channel.Passes;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.channel.SlotOffset;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.channel.Spacer;
import org.neckgeom.channel.StopBlocks;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.kernel.Once;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.order.Operation;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.solid.ToolPath;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** The channel at the machine: trial cuts and moves so far, the one decision, where the slot runs, passes and stops. */
final class SlotStage {

    /** A stop set by rule and eye: uniform, half-width 0.5 mm (common practice; GUM 4.3.7). */
    private static final Amount<Length> RULE_AND_EYE = ShopUnit.MILLIMETRE.of(0.5 / Math.sqrt(3));

    /** How far the head keeps clear of the fence beside a spacer; common practice, the same in every unit. */
    private static final double SPACER_CLEARANCE_MM = 1;

    private final Inputs job;
    private final ShapeStage shape;
    private final OrderStage order;
    private final MeasuredStage made;
    private final Supplier<CentringRounds> rounds = new Once<>(this::roundsSoFar);
    private final Supplier<SlotVerdict> verdict = new Once<>(() -> rounds().next(job().slotLimit()));
    private final Supplier<SlotPlace> place = new Once<>(this::whereItRuns);

    SlotStage(Inputs job, ShapeStage shape, OrderStage order, MeasuredStage made) {
        this.job = job;
        this.shape = shape;
        this.order = order;
        this.made = made;
    }

    private Inputs job() {
        return job;
    }

    CentringRounds rounds() {
        return rounds.get();
    }

    private CentringRounds roundsSoFar() {
        CentringRounds rounds = noRounds();
        for (CentringStep step : job.steps()) {
            rounds = rounds.then(step);
        }
        return rounds;
    }

    private CentringRounds noRounds() {
        return CentringRounds.on(atTheFence())
                .bench(job.shop().uncertainty())
                .decision(job.shop().decision())
                .leaves(job.shop().feelerGauges());
    }

    /** Where one trial cut alone has the setting of the fence, the scatter of the cut counted; nothing where it does not show it. */
    Optional<SlotOffset> shownBy(TrialCut cut) {
        CentringRounds alone = noRounds().then(CentringStep.read(cut));
        return Attempt.at(() -> Optional.of(alone.estimate())).answer();
    }

    /** Whether the neck may be cut, and else what comes next. */
    SlotVerdict verdict() {
        return verdict.get();
    }

    /** Where the slot runs: as read on the neck, and else as it is set at the machine. */
    SlotPlace place() {
        return place.get();
    }

    private SlotPlace whereItRuns() {
        SlotPlace set = rounds().place();
        Optional<Estimate<Length>> head = job.measured().of(NeckFeature.SLOT_OFFSET);
        Optional<Estimate<Length>> heel = job.measured().of(NeckFeature.SLOT_OFFSET_AT_HEEL);
        if (heel.isPresent()) {
            Channel cut = made.channel();
            return SlotPlace.read(
                    head.orElseGet(() -> set.start().estimate()),
                    job.style().amount(cut.startMm()),
                    heel.get(),
                    job.style().amount(cut.endMm()));
        }
        return head.map(set::readAtStart).orElse(set);
    }

    /** Whether the slot keeps its limit: where it is farthest off, or at an end where that is less sure. */
    Verdict<Length> kept() {
        SlotPlace place = place();
        Limits<Length> limits = Limits.within(job.slotLimit());
        return Stream.of(place.worst(), place.start(), place.end())
                .map(there -> Verdict.of(there.estimate(), limits))
                .min(Comparator.comparing(SlotStage::sureness))
                .orElseThrow();
    }

    private static int sureness(Verdict<Length> verdict) {
        return switch (verdict.call()) {
            case OUTSIDE -> 0;
            case UNDECIDED -> 1;
            case WITHIN -> 2;
        };
    }

    /** The spacer beside a head that is on. */
    Spacer spacer(Head head) {
        return headBesideIt(head).spacer(job.style().amount(SPACER_CLEARANCE_MM));
    }

    /** The spacer that the channel is cut on, beside a head that is on by then and stands proud; nothing where none is needed. */
    Optional<Spacer> spacer() {
        return made.design().head().filter(head -> isHeadOn()).map(this::spacer).filter(Spacer::isNeeded);
    }

    /** The passes of the channel. */
    PassPlan passes() {
        return slot().passes(rule()).settingUncertainty(job.shop().repeatability());
    }

    /** The way of the cutter's tip through those passes and the pocket's. */
    ToolPath path() {
        return closedPath().openAt(stops().openEnds());
    }

    /** The same with both ends closed, as the gate asks. */
    ToolPath closedPath() {
        return ToolPath.of(job.channel(), job.shop().cutter(), rule());
    }

    /** Where the stops are clamped. */
    StopBlocks stops() {
        return atItsEnds(slot().stops(job.shop().cutter(), job.blank()));
    }

    /** The same for the pocket, where there is one: it is cut by the same cutter from the same ends. */
    Optional<StopBlocks> pocketStops() {
        return job.channel().hasAdjusterPocket()
                ? Optional.of(atItsEnds(slot().pocketStops(job.shop().cutter(), job.blank())))
                : Optional.empty();
    }

    /** The passes of the pocket, where there is one. */
    Optional<PassPlan> pocketPasses() {
        return job.channel().hasAdjusterPocket()
                ? Optional.of(slot().pocketPasses(rule())
                        .settingUncertainty(job.shop().repeatability()))
                : Optional.empty();
    }

    private RodSlot slot() {
        return RodSlot.of(job.channel());
    }

    private Passes rule() {
        Shop shop = job.shop();
        Passes rule = Passes.noDeeperThan(shop.deepestPass());
        return shop.lastPass().libraryValue() > 0 ? rule.lastPass(shop.lastPass()) : rule;
    }

    /** The stops at the ends that are there when the channel is cut: a scarf sawn, a head on, a heel joint cut; none past them. */
    private StopBlocks atItsEnds(StopBlocks ofTheBlank) {
        StopBlocks stops = ofTheBlank.settingUncertainty(RULE_AND_EYE);
        StopBlocks heel = order.isDoneAtTheChannel(Operation.CUT_HEEL_JOINT)
                ? stops.heelEndAt(job.style()
                        .amount(Math.max(shape.shaftEndMm(), job.channel().endMm())))
                : stops;
        Optional<Head> head = made.design().head();
        if (head.isPresent() && isHeadOn()) {
            return heel.headOn(head.get().width(HeadLayout.of(head.get()).widthAtTip()));
        }
        Optional<ScarfJoint> sawn = made.scarf().filter(joint -> order.isDoneAtTheChannel(Operation.CUT_SCARF));
        return sawn.isPresent()
                ? heel.headEndAt(job.style()
                        .amount(Math.min(thinEndMm(sawn.get()), job.channel().startMm())))
                : heel;
    }

    /**
     * The blank at the fence, as it is when the channel is cut. Beside a head that is on, the shaft alone meets the fence, on a spacer
     * where the head stands proud; the trial piece runs on the same spacer. On a straight fence that changes nothing.
     */
    private BlankOnFence atTheFence() {
        Fence fence = job.shop().fence();
        BlankOnFence square = BlankOnFence.of(job.blank(), job.channel(), fence);
        Optional<Head> head = made.design().head().filter(its -> fence.outOfLineMm() != 0 && isHeadOn());
        if (head.isEmpty()) {
            return square;
        }
        Spacer spacer = spacer(head.get());
        return spacer.isNeeded()
                ? square.strip(Estimate.of(spacer.leastThickness(), job.style().amount(0)))
                : square.headOn(head.get());
    }

    private boolean isHeadOn() {
        return shape.headComesFirst()
                || order.isDoneAtTheChannel(Operation.GLUE_HEAD)
                || order.isDoneAtTheChannel(Operation.SAW_OUT_THE_HEAD);
    }

    /** Where the shaft's sawn slope ends in its back, behind a slanted nut at the edge that reaches farther. */
    private double thinEndMm(ScarfJoint joint) {
        double begins = joint.place() == JointPlace.IN_THE_SHAFT ? joint.frontLineMm() : 0;
        double run = joint.scarf().run().libraryValue();
        return begins - run - shape.slantedMm(job.blank().widthMm() / 2);
    }

    /** A head that is on, beside the fence. */
    HeadInterference headBesideIt(Head head) {
        HeadLayout layout = HeadLayout.of(head);
        return HeadInterference.of(head, job.blank(), job.shop().fence())
                .outline(layout.widthAtBreakLine(), layout.widthAtTip());
    }
}
