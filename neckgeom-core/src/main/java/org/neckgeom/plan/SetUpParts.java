package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.Closure;
import org.neckgeom.channel.CutterLoad;
import org.neckgeom.channel.HeadAtFence;
import org.neckgeom.channel.Pass;
import org.neckgeom.channel.PassPlan;
import org.neckgeom.channel.Passes;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.channel.SlotStops;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Head;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.head.JointPlace;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.WoodFigure;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** The parts of a plan that belong to the machine: centring, channel, what stands in the way. */
final class SetUpParts {

    static final String CHANNEL_TITLE = "Channel for the rod";
    private static final String CENTRING_TITLE = "Centring the cutter";
    private static final double ROUNDING = 1e-9;

    /** How far the head keeps clear of the fence beside a spacer; common practice, the same in every unit. */
    private static final double SPACER_CLEARANCE_MM = 1;

    /** Under this density a wood cuts like a softwood; between spruce and the lighter maples. */
    private static final double SOFT_KG_PER_M3 = 500;

    /** A stop set by rule and eye: half a millimetre either way (common practice), anywhere alike (GUM 4.3.7). */
    private static final Amount<Length> RULE_AND_EYE = ShopUnit.MILLIMETRE.of(0.5 / Math.sqrt(3));

    private SetUpParts() {}

    static List<PlanPart> of(NeckPlan plan) {
        List<PlanPart> parts = new ArrayList<>();
        parts.add(centring(plan));
        Channel channel = AsMade.of(plan).channel();
        if (plan.isDone(NeckPlan.CHANNEL)) {
            parts.add(CutParts.channel(plan, pastTheJoint(plan, channel)));
            return parts;
        }
        parts.add(channel(plan));
        cutterLoad(plan).ifPresent(parts::add);
        // A head in one piece is sawn out of the square blank, which is what the fence meets.
        plan.design()
                .head()
                .filter(head -> !plan.isHeadInOnePiece())
                .ifPresent(head -> parts.add(headAtFence(plan, head)));
        return parts;
    }

    private static PlanPart centring(NeckPlan plan) {
        PlanSection.Draft draft = PlanSection.titled(CENTRING_TITLE);
        record(plan, draft);
        if (plan.isDone(NeckPlan.CHANNEL)) {
            return CutParts.centring(plan, draft);
        }
        SlotVerdict verdict = plan.slot();
        Limits<Length> limits = Limits.within(plan.centredWithin());
        boolean isKnown = verdict.chance().isPresent();
        if (isKnown) {
            draft.row("in the blank", plan.slotPlace());
        }
        draft.row(
                        "limit",
                        isKnown
                                ? limits + ", chance "
                                        + Numbers.percent(verdict.chance().getAsDouble())
                                : limits.toString())
                .row("next", verdict);
        Outcome outcome = verdict.mayCut() ? Outcome.GOOD : verdict.isStop() ? Outcome.STOP : Outcome.OPEN;
        String found = isKnown
                ? plan.slotPlace().worst().toString()
                : verdict.contradiction().isPresent() ? "readings and moves contradict each other" : "not read yet";
        return PlanPart.of(
                draft,
                new PlanCheck("channel centred", outcome, found, limits.toString(), verdict.sentence() + asked(plan)));
    }

    /** The question as a sentence that follows another. */
    private static String asked(NeckPlan plan) {
        return question(plan)
                .map(text -> " " + Character.toUpperCase(text.charAt(0)) + text.substring(1))
                .orElse("");
    }

    /** Everything read and moved so far. */
    private static void record(NeckPlan plan, PlanSection.Draft draft) {
        Iterator<Closure> closures = plan.rounds().closures().iterator();
        int cuts = 0;
        for (CentringStep step : plan.steps()) {
            if (step.cut().isEmpty()) {
                draft.row("fence moved", step.text(plan.style()).substring("fence moved ".length()));
                continue;
            }
            cuts += step.isReadAgain() ? 0 : 1;
            Centring centring = Centring.of(step.cut().get().readAt(plan.shop().uncertainty()));
            draft.row(
                    "cut " + cuts + (step.isReadAgain() ? " again" : "") + ", its piece",
                    centring.offset().text(plan.style()));
            Closure closure = closures.next();
            if (closure.isComplete() || closure.outcome() != Closure.Outcome.CLOSES) {
                draft.row("", closure.text(plan.style()));
            }
        }
        question(plan).ifPresent(draft::note);
    }

    /** Whether the right piece was read, where its width is far from the blank's; asked of the last cut. */
    private static Optional<String> question(NeckPlan plan) {
        return plan.steps().stream()
                .flatMap(step -> step.cut().stream())
                .reduce((before, last) -> last)
                .flatMap(cut -> cut.in(plan.style()).question(plan.blank().width()));
    }

    private static Passes passes(Shop shop) {
        Passes rule = Passes.noDeeperThan(shop.deepestPass());
        return shop.lastPass().house() > 0 ? rule.lastPass(shop.lastPass()) : rule;
    }

    private static PlanPart channel(NeckPlan plan) {
        Shop shop = plan.shop();
        Channel channel = plan.design().channel().orElseThrow();
        RodSlot slot = RodSlot.of(channel);
        Passes rule = passes(shop);
        SlotStops stops =
                atItsEnds(plan, slot.stops(shop.cutter(), plan.blank())).setWithin(RULE_AND_EYE);
        PlanSection.Draft draft = PlanSection.titled(CHANNEL_TITLE)
                .row("channel", channel)
                .row("depth", slot.depth())
                .row("passes", slot.passes(rule).setWithin(shop.repeatability()).table())
                .row(
                        "after each pass",
                        "a depth more than "
                                + plan.style().small(2 * shop.repeatability().house())
                                + " off its step means that the cutter creeps: stop and clamp it again")
                .row("stops", stops);
        beyondTheFence(plan, stops).ifPresent(draft::note);
        if (channel.hasPocket()) {
            draft.row(
                    "pocket",
                    slot.pocketPasses(rule).setWithin(shop.repeatability()).table());
        }
        if (plan.blank().outOfParallelMm() != 0) {
            draft.row("edges", plan.rounds().place());
        }
        if (!plan.slot().mayCut()) {
            draft.note("for when the slot may be cut: see " + CENTRING_TITLE);
        }
        List<PlanCheck> checks = new ArrayList<>(List.of(depthOfPass(plan, slot.passes(rule))));
        pastTheJoint(plan, channel).ifPresent(checks::add);
        return new PlanPart(draft.done(), checks);
    }

    /** The stops at the ends that are there when the channel is cut: a scarf sawn, a head on, a heel joint cut. */
    private static SlotStops atItsEnds(NeckPlan plan, SlotStops stops) {
        SlotStops heel = plan.isDone(NeckPlan.HEEL_JOINT)
                ? stops.heelEndAt(plan.style().amount(StockParts.shaftEndMm(plan)))
                : stops;
        Optional<Head> head = AsMade.of(plan).design().head();
        if (head.isPresent() && isHeadOn(plan)) {
            return heel.headOn(head.get().width(layout(plan, head.get()).widthAtTip()));
        }
        Optional<ScarfJoint> sawn = AsMade.of(plan).scarf().filter(joint -> plan.isDone(NeckPlan.SCARF));
        return sawn.isPresent() ? heel.headEndAt(plan.style().amount(thinEndMm(sawn.get()))) : heel;
    }

    private static boolean isHeadOn(NeckPlan plan) {
        return plan.headComesFirst() || plan.isDone(NeckPlan.HEAD) || plan.isDone(NeckPlan.ONE_PIECE_HEAD);
    }

    /** Where the shaft's sawn slope ends in its back. */
    private static double thinEndMm(ScarfJoint joint) {
        double begins = joint.place() == JointPlace.IN_THE_SHAFT ? joint.frontLineMm() : 0;
        return begins - joint.scarf().run().house();
    }

    private static HeadLayout layout(NeckPlan plan, Head head) {
        return plan.details().headLayout().map(drawn -> drawn.on(head)).orElse(HeadLayout.of(head));
    }

    private static Optional<PlanCheck> pastTheJoint(NeckPlan plan, Channel channel) {
        double past = channel.endMm() - plan.design().bodyJointMm();
        if (!(past > 0)) {
            return Optional.empty();
        }
        return Optional.of(new PlanCheck(
                "channel ends within the neck",
                Outcome.OPEN,
                plan.style().brief(past) + " past the body joint",
                "to the body joint or short of it",
                "A shorter rod, or let heel and body take it: then the neck does not come off without it."));
    }

    /** A stop can be clamped to the fence only as far as the fence reaches. */
    private static Optional<String> beyondTheFence(NeckPlan plan, SlotStops stops) {
        double reach = plan.shop().fence().lengthMm() / 2;
        double farthest = Math.max(stops.rear().fromCentreMm(), stops.front().fromCentreMm());
        if (!(farthest > reach)) {
            return Optional.empty();
        }
        return Optional.of(
                "a stop " + plan.style().mark(farthest) + " from the cutter lies beyond a fence that reaches "
                        + plan.style().brief(reach) + " either side: clamp it to the table, or work by the marks");
    }

    /** Common practice: no pass deeper than half the cutter's diameter in softwood, a quarter in hardwood. */
    private static PlanCheck depthOfPass(NeckPlan plan, PassPlan passes) {
        double deepest = deepest(passes);
        double half = plan.shop().cutter().diameterMm() / 2;
        boolean soft = plan.blank()
                .wood()
                .filter(wood -> wood.has(WoodFigure.Kind.DENSITY))
                .map(wood -> wood.densityKgPerM3() < SOFT_KG_PER_M3)
                .orElse(false);
        double most = soft ? half : half / 2;
        Outcome outcome = deepest <= most * (1 + ROUNDING)
                ? Outcome.GOOD
                : deepest <= half * (1 + ROUNDING) ? Outcome.OPEN : Outcome.STOP;
        String todo = switch (outcome) {
            case GOOD -> "Read the depth after every pass.";
            case OPEN -> "More and lighter passes in wood this hard.";
            case STOP -> "More and lighter passes: a deep one burns, bends and snatches.";
        };
        String share = soft ? "half the cutter's diameter" : "a quarter of the cutter's diameter in hardwood";
        return new PlanCheck(
                "depth of a pass",
                outcome,
                plan.style().inTables().brief(deepest),
                plan.style().inTables().brief(most) + " or less, " + share + " (common practice)",
                todo);
    }

    /** What the cutter goes through in the deepest pass, where feed and speed are told. */
    private static Optional<PlanPart> cutterLoad(NeckPlan plan) {
        Shop shop = plan.shop();
        if (shop.feed().isEmpty()
                || shop.turning().isEmpty()
                || plan.blank().wood().isEmpty()) {
            return Optional.empty();
        }
        Channel channel = plan.design().channel().orElseThrow();
        RodSlot slot = RodSlot.of(channel);
        Passes rule = passes(shop);
        double deepest =
                Math.max(deepest(slot.passes(rule)), channel.hasPocket() ? deepest(slot.pocketPasses(rule)) : 0);
        CutterLoad load = CutterLoad.of(shop.cutter(), plan.blank())
                .feed(shop.feed().get(), shop.turning().get())
                .pass(plan.style().amount(deepest));
        return Optional.of(
                PlanPart.of(PlanSection.titled("Cutter under load, estimated").row("deepest pass", load)));
    }

    private static double deepest(PassPlan passes) {
        return passes.passes().stream().mapToDouble(Pass::stepMm).max().orElseThrow();
    }

    private static PlanPart headAtFence(NeckPlan plan, Head head) {
        HeadLayout layout = layout(plan, head);
        HeadAtFence atFence = HeadAtFence.of(head, plan.blank(), plan.shop().fence())
                .outline(layout.widthAtBreakLine(), layout.widthAtTip());
        PlanSection.Draft draft = PlanSection.titled(
                        plan.headComesFirst() ? "The head at the fence" : "If the head is on before the channel")
                .row("spacer", atFence.spacer(plan.style().amount(SPACER_CLEARANCE_MM)));
        if (head.swingRad() != 0) {
            draft.row("swung head", atFence.skew());
        }
        if (head.veneerMm() > 0) {
            draft.row("veneer on it", atFence.rocking());
        }
        if (!plan.headComesFirst()) {
            draft.note("cut the channel first, on the square blank, and none of this is needed");
        }
        return PlanPart.of(draft);
    }
}
