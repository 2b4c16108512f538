package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.channel.BlankOnFence;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.Closure;
import org.neckgeom.channel.CutterLoad;
import org.neckgeom.channel.HeadInterference;
import org.neckgeom.channel.PassPlan;
import org.neckgeom.channel.Passes;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.channel.Spacer;
import org.neckgeom.channel.StopBlocks;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Wood;
import org.neckgeom.stock.WoodFigure;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** The parts of a plan that belong to the machine: centring, channel, what stands in the way. */
final class SetUpParts {

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
        Channel channel = plan.asMade().channel();
        if (plan.isDone(Operation.CUT_ROD_CHANNEL)) {
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
        PlanSection.Draft draft = PlanSection.titled("centring", CENTRING_TITLE, plan.style());
        record(plan, draft);
        if (plan.isDone(Operation.CUT_ROD_CHANNEL)) {
            return CutParts.centring(plan, draft);
        }
        SlotVerdict verdict = plan.slot();
        Limits<Length> limits = Limits.within(plan.centredWithin());
        boolean isKnown = verdict.chance().isPresent();
        if (isKnown) {
            draft.row("inTheBlank", "in the blank", plan.slotPlace());
        }
        Statement limit = draft.words("limit", "{limit}" + (isKnown ? ", chance {conformanceProbability}" : ""))
                .with("limit", Kind.LIMITS, limits);
        if (isKnown) {
            limit = limit.with(
                    "conformanceProbability", Kind.PROBABILITY, verdict.chance().getAsDouble());
        }
        draft.row("limit", "limit", limit).row("next", "next", verdict);
        Outcome outcome = verdict.mayCut() ? Outcome.GOOD : verdict.isStop() ? Outcome.STOP : Outcome.OPEN;
        Answer result = isKnown
                ? plan.slotPlace().worst()
                : verdict.contradiction().isPresent()
                        ? draft.words("contradiction", "readings and moves contradict each other")
                        : draft.words("not-read", "not read yet");
        Optional<Statement> question = question(plan);
        Statement next = draft.words(
                        verdict.step().code(),
                        "{verdict:capital}." + (question.isPresent() ? " {question:capital}" : ""))
                .with("verdict", Kind.ANSWER, verdict);
        if (question.isPresent()) {
            next = next.with("question", Kind.ANSWER, question.get());
        }
        return PlanPart.of(
                draft,
                PlanCheck.of(CutParts.CENTRED, CutParts.CENTRED_NAME, outcome, result, plan.limit(limits), next));
    }

    /** Everything read and moved so far. */
    private static void record(NeckPlan plan, PlanSection.Draft draft) {
        Iterator<Closure> closures = plan.rounds().closures().iterator();
        int cuts = 0;
        int reads = 0;
        int moves = 0;
        for (CentringStep step : plan.steps()) {
            if (step.cut().isEmpty()) {
                double toward = step.move().orElseThrow().towardMm();
                draft.row(
                        "move" + ++moves,
                        "fence moved",
                        draft.words(
                                        "moved",
                                        "{toward:size brief} " + (toward < 0 ? "away from" : "toward") + " the cutter")
                                .with("toward", Kind.MM, toward));
                continue;
            }
            cuts += step.isReadAgain() ? 0 : 1;
            Centring centring = Centring.of(step.cut().get().readAt(plan.shop().uncertainty()));
            draft.row(
                    "reading" + ++reads,
                    draft.words("cut", "cut {cut}" + (step.isReadAgain() ? " again" : "") + ", its piece")
                            .with("cut", Kind.WHOLE, cuts),
                    centring.offset());
            Closure closure = closures.next();
            if (closure.isComplete() || closure.outcome() != Closure.Outcome.CLOSES) {
                draft.row("closure" + reads, "", closure);
            }
        }
        question(plan).ifPresent(draft::note);
    }

    /** Whether the right piece was read, where its width is far from the blank's; asked of the last cut. */
    private static Optional<Statement> question(NeckPlan plan) {
        return plan.steps().stream()
                .flatMap(step -> step.cut().stream())
                .reduce((before, last) -> last)
                .flatMap(cut -> cut.question(plan.blank().width()));
    }

    /** Every pass: a cutter is set by them. */
    private static Statement whole(PassPlan passes) {
        return Statement.of("every-pass", "{passes:whole}", passes.style()).with("passes", Kind.ANSWER, passes);
    }

    /** The passes of the channel. */
    static PassPlan passes(NeckPlan plan) {
        return RodSlot.of(plan.design().channel().orElseThrow())
                .passes(passes(plan.shop()))
                .settingUncertainty(plan.shop().repeatability());
    }

    /** Where the stops are clamped. */
    static StopBlocks stops(NeckPlan plan) {
        StopBlocks stops = RodSlot.of(plan.design().channel().orElseThrow())
                .stops(plan.shop().cutter(), plan.blank());
        return atItsEnds(plan, stops).settingUncertainty(RULE_AND_EYE);
    }

    private static Passes passes(Shop shop) {
        Passes rule = Passes.noDeeperThan(shop.deepestPass());
        return shop.lastPass().libraryValue() > 0 ? rule.lastPass(shop.lastPass()) : rule;
    }

    private static PlanPart channel(NeckPlan plan) {
        Shop shop = plan.shop();
        Channel channel = plan.design().channel().orElseThrow();
        RodSlot slot = RodSlot.of(channel);
        Passes rule = passes(shop);
        StopBlocks stops = stops(plan);
        PlanSection.Draft draft = CutParts.section(plan)
                .row("channel", "channel", Kind.ANSWER, channel)
                .row("depth", "depth", slot.depth())
                .row("passes", "passes", whole(passes(plan)));
        draft.row(
                        "afterEachPass",
                        "after each pass",
                        draft.words(
                                        "creep",
                                        "a depth more than {creep:small} off its step means that the cutter creeps: stop"
                                                + " and clamp it again")
                                .with("creep", Kind.MM, 2 * shop.repeatability().libraryValue()))
                .row("stops", "stops", stops);
        beyondTheFence(plan, stops).ifPresent(draft::note);
        if (channel.hasAdjusterPocket()) {
            draft.row("pocket", "pocket", whole(slot.pocketPasses(rule).settingUncertainty(shop.repeatability())));
        }
        if (plan.blank().outOfParallelMm() != 0) {
            draft.row("edges", "edges", plan.rounds().place());
        }
        if (!plan.slot().mayCut()) {
            draft.note("when-it-may-be-cut", "for when the slot may be cut: see " + CENTRING_TITLE);
        }
        List<PlanCheck> checks = new ArrayList<>(List.of(depthOfPass(plan, slot.passes(rule))));
        pastTheJoint(plan, channel).ifPresent(checks::add);
        return new PlanPart(draft.done(), checks);
    }

    /** The stops at the ends that are there when the channel is cut: a scarf sawn, a head on, a heel joint cut. */
    private static StopBlocks atItsEnds(NeckPlan plan, StopBlocks stops) {
        StopBlocks heel = plan.isDone(Operation.CUT_HEEL_JOINT)
                ? stops.heelEndAt(plan.style().amount(StockParts.shaftEndMm(plan)))
                : stops;
        Optional<Head> head = plan.asMade().design().head();
        if (head.isPresent() && isHeadOn(plan)) {
            return heel.headOn(head.get().width(HeadLayout.of(head.get()).widthAtTip()));
        }
        Optional<ScarfJoint> sawn = plan.asMade().scarf().filter(joint -> plan.isDone(Operation.CUT_SCARF));
        return sawn.isPresent() ? heel.headEndAt(plan.style().amount(thinEndMm(sawn.get()))) : heel;
    }

    /**
     * The blank at the fence, as it is when the channel is cut. Beside a head that is on, the shaft alone meets the fence, on a spacer
     * where the head stands proud; the trial piece runs on the same spacer. On a straight fence that changes nothing.
     */
    static BlankOnFence atTheFence(NeckPlan plan) {
        Fence fence = plan.shop().fence();
        BlankOnFence square =
                BlankOnFence.of(plan.blank(), plan.design().channel().orElseThrow(), fence);
        Optional<Head> head = plan.design().head().filter(its -> fence.outOfLineMm() != 0 && isHeadOn(plan));
        if (head.isEmpty()) {
            return square;
        }
        Spacer spacer = headBesideIt(plan, head.get()).spacer(plan.style().amount(SPACER_CLEARANCE_MM));
        return spacer.isNeeded()
                ? square.strip(Estimate.of(spacer.leastThickness(), plan.style().amount(0)))
                : square.headOn(head.get());
    }

    private static boolean isHeadOn(NeckPlan plan) {
        return plan.headComesFirst() || plan.isDone(Operation.GLUE_HEAD) || plan.isDone(Operation.SAW_OUT_THE_HEAD);
    }

    /** Where the shaft's sawn slope ends in its back. */
    private static double thinEndMm(ScarfJoint joint) {
        double begins = joint.place() == JointPlace.IN_THE_SHAFT ? joint.frontLineMm() : 0;
        return begins - joint.scarf().run().libraryValue();
    }

    private static Optional<PlanCheck> pastTheJoint(NeckPlan plan, Channel channel) {
        double past = channel.endMm() - plan.design().bodyJointMm();
        if (!(past > 0)) {
            return Optional.empty();
        }
        return Optional.of(PlanCheck.of(
                "channel-ends-in-the-neck",
                "channel ends within the neck",
                Outcome.OPEN,
                plan.words("past", "{past:brief} past the body joint").with("past", Kind.MM, past),
                plan.words("body-joint", "to the body joint or short of it"),
                plan.words(
                        "shorten",
                        "A shorter rod, or let heel and body take it: then the neck does not come off without it.")));
    }

    /** A stop can be clamped to the fence only as far as the fence reaches. */
    private static Optional<Statement> beyondTheFence(NeckPlan plan, StopBlocks stops) {
        double reach = plan.shop().fence().lengthMm() / 2;
        double farthest = Math.max(
                stops.rear().fromCentre().libraryValue(),
                stops.front().fromCentre().libraryValue());
        if (!(farthest > reach)) {
            return Optional.empty();
        }
        return Optional.of(plan.words(
                        "beyond-the-fence",
                        "a stop {stop:mark} from the cutter lies beyond a fence that reaches {reach:brief} either side:"
                                + " clamp it to the table, or work by the marks")
                .with("stop", Kind.MM, farthest)
                .with("reach", Kind.MM, reach));
    }

    /** Common practice: no pass deeper than half the cutter's diameter in softwood, a quarter in hardwood. */
    private static PlanCheck depthOfPass(NeckPlan plan, PassPlan passes) {
        double deepest = deepest(passes);
        double half = plan.shop().cutter().diameterMm() / 2;
        boolean soft = plan.design()
                .wood()
                .filter(wood -> wood.has(WoodFigure.Kind.DENSITY))
                .map(wood -> wood.densityKgPerM3() < SOFT_KG_PER_M3)
                .orElse(false);
        double most = soft ? half : half / 2;
        Outcome outcome = deepest <= most * (1 + ROUNDING)
                ? Outcome.GOOD
                : deepest <= half * (1 + ROUNDING) ? Outcome.OPEN : Outcome.STOP;
        Statement next = switch (outcome) {
            case GOOD -> plan.words("read-the-depth", "Read the depth after every pass.");
            case OPEN -> plan.words("lighter-passes", "More and lighter passes in wood this hard.");
            case STOP ->
                plan.words("much-lighter-passes", "More and lighter passes: a deep one burns, bends and snatches.");
        };
        String share = soft ? "half the cutter's diameter" : "a quarter of the cutter's diameter in hardwood";
        return PlanCheck.of(
                "depth-of-a-pass",
                "depth of a pass",
                outcome,
                plan.words("deepest", "{deepest:table brief}").with("deepest", Kind.MM, deepest),
                plan.words("at-most", "{most:table brief} or less, " + share + " (common practice)")
                        .with("most", Kind.MM, most),
                next);
    }

    /** What the cutter goes through in the deepest pass, where feed and speed are told. */
    private static Optional<PlanPart> cutterLoad(NeckPlan plan) {
        Shop shop = plan.shop();
        Optional<Wood> wood = plan.design().wood();
        if (shop.feed().isEmpty() || shop.turning().isEmpty() || wood.isEmpty()) {
            return Optional.empty();
        }
        Channel channel = plan.design().channel().orElseThrow();
        RodSlot slot = RodSlot.of(channel);
        Passes rule = passes(shop);
        double deepest = Math.max(
                deepest(slot.passes(rule)), channel.hasAdjusterPocket() ? deepest(slot.pocketPasses(rule)) : 0);
        CutterLoad load = CutterLoad.of(
                shop.cutter(),
                wood.get(),
                shop.feed().get(),
                shop.turning().get(),
                plan.style().amount(deepest));
        return Optional.of(PlanPart.of(PlanSection.titled("cutter-load", "Cutter under load, estimated", plan.style())
                .row("deepestPass", "deepest pass", load)));
    }

    private static double deepest(PassPlan passes) {
        return passes.passes().stream()
                .mapToDouble(pass -> pass.step().libraryValue())
                .max()
                .orElseThrow();
    }

    private static HeadInterference headBesideIt(NeckPlan plan, Head head) {
        HeadLayout layout = HeadLayout.of(head);
        return HeadInterference.of(head, plan.blank(), plan.shop().fence())
                .outline(layout.widthAtBreakLine(), layout.widthAtTip());
    }

    private static PlanPart headAtFence(NeckPlan plan, Head head) {
        HeadInterference atFence = headBesideIt(plan, head);
        PlanSection.Draft draft = PlanSection.titled(
                        "head-at-the-fence",
                        plan.headComesFirst() ? "The head at the fence" : "If the head is on before the channel",
                        plan.style())
                .row("spacer", "spacer", atFence.spacer(plan.style().amount(SPACER_CLEARANCE_MM)));
        if (head.swingRad() != 0) {
            draft.row("skew", "swung head", atFence.skew());
        }
        if (head.veneerMm() > 0) {
            draft.row("rocking", "veneer on it", atFence.rocking());
        }
        if (!plan.headComesFirst()) {
            draft.note("channel-first", "cut the channel first, on the square blank, and none of this is needed");
        }
        return PlanPart.of(draft);
    }
}
