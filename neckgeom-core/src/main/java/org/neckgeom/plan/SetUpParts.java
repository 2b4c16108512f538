package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.CentringRounds;
import org.neckgeom.channel.Closure;
import org.neckgeom.channel.CutterLoad;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.HeadAtFence;
import org.neckgeom.channel.NextStep;
import org.neckgeom.channel.Offset;
import org.neckgeom.channel.Pass;
import org.neckgeom.channel.PassPlan;
import org.neckgeom.channel.Passes;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.channel.SlotLine;
import org.neckgeom.channel.SlotStops;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Head;
import org.neckgeom.measure.Call;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
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
        Session session = new Session(plan);
        if (plan.isDone(NeckPlan.CHANNEL)) {
            PlanSection.Draft draft = PlanSection.titled(CENTRING_TITLE);
            session.told.forEach(row -> draft.row(row.label(), row.value()));
            return CutParts.centring(plan, draft, promised(plan));
        }
        return plan.steps().isEmpty() ? beforeCuts(plan) : afterCuts(plan, session);
    }

    /** Nothing has been cut: what the shop's instrument can promise. */
    private static PlanPart beforeCuts(NeckPlan plan) {
        Shop shop = plan.shop();
        // e = (a - b)/2, so u(e) = u_r/sqrt(2): formula of a single trial cut.
        double u = shop.repeatability().house() / Math.sqrt(2);
        Estimate<Length> promised =
                Estimate.ofHouse(0, u, Double.POSITIVE_INFINITY, plan.style().unit());
        Verdict<Length> best = Verdict.of(promised, Limits.within(plan.centredWithin()));
        PlanSection.Draft draft = PlanSection.titled(CENTRING_TITLE)
                .row("now", "no trial cut has been read yet")
                .row("do", "run a test piece as wide as the blank, read both walls, fence side first")
                .row("one cut tells", "the offset to u " + plan.style().small(u))
                .row("limit", Limits.within(plan.centredWithin()));
        String found = "not read yet";
        String allowed = Limits.within(plan.centredWithin()).toString();
        return PlanPart.of(
                draft,
                best.isReachable()
                        ? new PlanCheck("channel centred", Outcome.OPEN, found, allowed, "Make the trial cut.")
                        : new PlanCheck(
                                "channel centred",
                                Outcome.STOP,
                                "one reading is uncertain by u " + plan.style().small(u),
                                allowed,
                                "No single cut can prove this limit: read better or more often, or widen it."));
    }

    /** Where trial cuts and moves, all taken together, put the slot; nothing before the first cut. */
    static Optional<Estimate<Length>> promised(NeckPlan plan) {
        return Optional.ofNullable(new Session(plan).rounds)
                .map(rounds -> rounds.estimate().estimate());
    }

    /** How the blank's edges make the slot lie askew. */
    static SlotLine askew(NeckPlan plan) {
        return RodSlot.of(plan.design().channel().orElseThrow()).skewFrom(plan.blank());
    }

    /** Where the slot lies: as read on the neck, else by the trial cuts, else as well as the instrument can promise. */
    static Estimate<Length> offsetNow(NeckPlan plan) {
        Optional<Estimate<Length>> known =
                plan.readings().of(NeckFeature.SLOT_OFFSET).or(() -> promised(plan));
        if (known.isPresent()) {
            return known.get().in(plan.style().unit());
        }
        double u = plan.shop().repeatability().house() / Math.sqrt(2);
        return Estimate.ofHouse(0, u, Double.POSITIVE_INFINITY, plan.style().unit());
    }

    private static PlanPart afterCuts(NeckPlan plan, Session session) {
        PlanSection.Draft draft = PlanSection.titled(CENTRING_TITLE);
        session.told.forEach(row -> draft.row(row.label(), row.value()));
        Limits<Length> limits = Limits.within(plan.centredWithin());
        if (session.lastMisread != null) {
            draft.note("that cut is left out: its readings contradict each other, so it says nothing of the fence");
        }
        if (session.rounds == null) {
            // Every cut so far contradicts itself, the last one too.
            return PlanPart.of(
                    draft.row("limit", limits), misread(Objects.requireNonNull(session.lastMisread), limits));
        }
        CentringRounds rounds = session.rounds;
        Verdict<Length> verdict = Verdict.of(rounds.estimate().estimate(), limits);
        NextStep next = rounds.next(plan.centredWithin());
        draft.row("all told", rounds.estimate())
                .row("limit", limits + ", chance " + Numbers.percent(verdict.probability()));
        if (session.lastMisread != null) {
            return PlanPart.of(draft, misread(session.lastMisread, limits));
        }
        draft.row("next", next);
        if (verdict.call() != Call.WITHIN) {
            FenceMove move = rounds.move();
            draft.row("leaves", move.leaves(plan.shop().leaves()));
            if (plan.shop().fence().leverage() != 1) {
                draft.row("stop block", move.at(plan.shop().fence()));
            }
        }
        return PlanPart.of(draft, centred(rounds.estimate(), verdict, next, limits));
    }

    private static PlanCheck misread(Closure closure, Limits<Length> limits) {
        return new PlanCheck(
                "channel centred",
                Outcome.STOP,
                closure.toString().lines().findFirst().orElseThrow(),
                limits.toString(),
                "Read again before moving.");
    }

    private static PlanCheck centred(Offset offset, Verdict<Length> verdict, NextStep next, Limits<Length> limits) {
        String found = offset.toString();
        return switch (verdict.call()) {
            case WITHIN -> new PlanCheck("channel centred", Outcome.GOOD, found, limits.toString(), "Cut the neck.");
            case OUTSIDE ->
                new PlanCheck("channel centred", Outcome.STOP, found, limits.toString(), "Do not cut: " + next);
            case UNDECIDED ->
                new PlanCheck("channel centred", Outcome.OPEN, found, limits.toString(), "Not sure yet: " + next);
        };
    }

    /** Everything read and moved so far: the rows to show, and one estimate of where the slot lies now. */
    private static final class Session {

        private final List<PlanSection.Row> told = new ArrayList<>();
        private @Nullable CentringRounds rounds;
        private @Nullable Closure lastMisread;

        Session(NeckPlan plan) {
            int cuts = 0;
            for (CentringStep step : plan.steps()) {
                if (step.cut().isEmpty()) {
                    moved(plan, step.moveMm());
                } else {
                    cuts++;
                    read("cut " + cuts, Centring.of(step.cut().get()).in(plan.style()));
                }
            }
        }

        private void moved(NeckPlan plan, double mm) {
            Amount<Length> size = plan.style().amount(Math.abs(mm));
            String direction = mm < 0 ? " away from the cutter" : " toward the cutter";
            told.add(new PlanSection.Row("fence moved", plan.style().brief(Math.abs(mm)) + direction));
            if (rounds != null) {
                rounds = mm < 0 ? rounds.movedAwayFromTheCutter(size) : rounds.movedTowardTheCutter(size);
            }
        }

        private void read(String label, Centring centring) {
            told.add(new PlanSection.Row(label, centring.offset().toString()));
            Closure closure = centring.closure();
            lastMisread = closure.closes() ? null : closure;
            if (closure.isComplete() || lastMisread != null) {
                told.add(new PlanSection.Row("", closure.toString()));
            }
            if (lastMisread == null) {
                rounds = rounds == null ? CentringRounds.start(centring) : rounds.then(centring);
            }
        }
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
        SlotStops stops = slot.stops(shop.cutter(), plan.blank()).setWithin(RULE_AND_EYE);
        PlanSection.Draft draft = PlanSection.titled(CHANNEL_TITLE)
                .row("channel", channel)
                .row("depth", slot.depth())
                .row("passes", slot.passes(rule).setWithin(shop.repeatability()).table())
                .row(
                        "after each pass",
                        "a depth more than "
                                + plan.style().small(2 * shop.repeatability().house())
                                + " off its step means that the cutter creeps: stop and clamp it again")
                .row("stops", stops)
                .row("", stops.turned());
        beyondTheFence(plan, stops).ifPresent(draft::note);
        if (channel.hasPocket()) {
            draft.row(
                    "pocket",
                    slot.pocketPasses(rule).setWithin(shop.repeatability()).table());
        }
        if (plan.blank().outOfParallelMm() != 0) {
            draft.row("edges", slot.skewFrom(plan.blank()));
        }
        List<PlanCheck> checks = new ArrayList<>(List.of(depthOfPass(plan, slot.passes(rule))));
        pastTheJoint(plan, channel).ifPresent(checks::add);
        return new PlanPart(draft.done(), checks);
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
        HeadAtFence atFence = HeadAtFence.of(head, plan.blank(), plan.shop().fence());
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
