package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.Closure;
import org.neckgeom.channel.CutterLoad;
import org.neckgeom.channel.HeadInterference;
import org.neckgeom.channel.PassPlan;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.channel.StopBlocks;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.PlateScrews;
import org.neckgeom.neck.Tenon;
import org.neckgeom.order.Operation;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Wood;
import org.neckgeom.stock.WoodFigure;

/** The parts of a plan that belong to the machine: centring, channel, head at the fence. */
final class SetUpParts {

    private static final double ROUNDING = 1e-9;
    private static final int STRIP_PLACES = 4;
    private static final int ARCH_FROM_FRET = 5;
    private static final int ARCH_TO_FRET = 8;

    /** Under this density a wood cuts like a softwood; between spruce and the lighter maples. */
    private static final double SOFT_KG_PER_M3 = 500;

    private SetUpParts() {}

    static List<PlanPart> of(Stages plan) {
        List<PlanPart> parts = new ArrayList<>();
        parts.add(centring(plan));
        Channel channel = plan.made().channel();
        if (plan.isDone(Operation.CUT_ROD_CHANNEL)) {
            parts.add(CutParts.channel(plan, pastTheJoint(plan, channel)));
            return parts;
        }
        parts.add(channel(plan));
        cutterLoad(plan).ifPresent(parts::add);
        headFirst(plan, true).ifPresent(parts::add);
        return parts;
    }

    private static PlanPart centring(Stages plan) {
        PlanSection.Draft draft = PlanSection.titled(SectionCode.CENTRING, plan.style());
        record(plan, draft);
        if (plan.isDone(Operation.CUT_ROD_CHANNEL)) {
            return CutParts.centring(plan, draft);
        }
        SlotVerdict verdict = plan.slot().verdict();
        Limits<Length> limits = Limits.within(plan.job().slotLimit());
        boolean isKnown = verdict.chance().isPresent();
        if (isKnown) {
            draft.row("inTheBlank", "in the blank", plan.slot().place());
        }
        Statement limit = draft.words(
                        "limit", "{limit}" + (isKnown ? ", conformance probability {conformanceProbability}" : ""))
                .with("limit", Kind.LIMITS, limits);
        if (isKnown) {
            limit = limit.with(
                    "conformanceProbability", Kind.PROBABILITY, verdict.chance().getAsDouble());
        }
        draft.row("limit", "limit", limit).row("next", "next", verdict);
        Answer result = isKnown
                ? plan.slot().place().worst()
                : verdict.contradiction().isPresent()
                        ? draft.words("contradiction", "readings and moves contradict each other")
                        : draft.words("not-read", "not measured");
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
                new PlanCheck(
                        CheckCode.CHANNEL_CENTRED,
                        new Finding.Decided(verdict, limits),
                        result,
                        plan.limit(limits),
                        next));
    }

    /** Everything read and moved so far. */
    private static void record(Stages plan, PlanSection.Draft draft) {
        Iterator<Closure> closures = plan.slot().rounds().closures().iterator();
        int cuts = 0;
        int reads = 0;
        int moves = 0;
        for (CentringStep step : plan.job().steps()) {
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
    private static Optional<Statement> question(Stages plan) {
        return plan.job().steps().stream()
                .flatMap(step -> step.cut().stream())
                .reduce((before, last) -> last)
                .flatMap(cut -> cut.question(plan.blank().width()));
    }

    /** Every pass: a cutter is set by them. */
    private static Statement whole(PassPlan passes) {
        return Statement.of("every-pass", "{passes:whole}", passes.style()).with("passes", Kind.ANSWER, passes);
    }

    private static PlanPart channel(Stages plan) {
        Shop shop = plan.shop();
        Channel channel = plan.job().channel();
        RodSlot slot = RodSlot.of(channel);
        PassPlan passes = plan.slot().passes();
        StopBlocks stops = plan.slot().stops();
        PlanSection.Draft draft = CutParts.section(plan)
                .row("channel", channel.isLocatingGroove() ? "groove" : "channel", Kind.ANSWER, channel);
        if (channel.isLocatingGroove()) {
            draft.note(
                    "datum",
                    "No rod, so no channel: the groove is the datum that taper, heel, head and board are located on, as they would be"
                            + " on a channel. The fingerboard covers it.");
        } else {
            draft.row("depth", "depth", slot.depth());
        }
        draft.row("passes", "passes", whole(passes));
        draft.row(
                        "afterEachPass",
                        "after each pass",
                        draft.words(
                                        "creep",
                                        "a depth more than {creep:small} off its step means cutter creep: stop and clamp"
                                                + " the cutter again")
                                .with("creep", Kind.MM, 2 * shop.repeatability().libraryValue()))
                .row("stops", "stops", stops);
        plan.slot().pocketPasses().ifPresent(pocket -> draft.row("pocket", "pocket", whole(pocket)));
        Optional<StopBlocks> ofThePocket = plan.slot().pocketStops();
        ofThePocket.ifPresent(pocket -> draft.row("pocketStops", "pocket's stops", pocket));
        beyondTheFence(plan, Stream.concat(Stream.of(stops), ofThePocket.stream()))
                .ifPresent(draft::note);
        if (plan.blank().outOfParallelMm() != 0) {
            draft.row("edges", "edges", plan.slot().rounds().place());
        }
        if (!plan.slot().verdict().mayCut()) {
            draft.note("when-it-may-be-cut", "For when the slot may be cut: see \"" + SectionCode.CENTRING + "\".");
        }
        List<PlanCheck> checks = new ArrayList<>(List.of(depthOfPass(plan)));
        if (channel.archMm() > 0) {
            checks.add(arch(plan, draft, channel));
        }
        pastTheJoint(plan, channel).ifPresent(checks::add);
        return new PlanPart(draft.done(), checks);
    }

    /**
     * How an arched floor is cut: by curved rails, of radius {@code (L^2/4 + s^2)/(2 s)}, or flat to the deepest with a strip glued to the
     * floor, thick {@code s - (d(x) - d_end)}. The rod follows the arc, and so is longer than the chord by {@code 2 R asin(L/2R) - L}.
     */
    private static PlanCheck arch(Stages plan, PlanSection.Draft draft, Channel channel) {
        double length = channel.lengthMm();
        double deep = channel.archMm();
        double radius = (length * length / 4 + deep * deep) / (2 * deep);
        draft.row(
                "rails",
                "rails",
                plan.words(
                                "rails",
                                "radius {radius:0|1}, {deep:brief} over {length:brief}, one at each side of the blank")
                        .with("radius", Kind.MM, radius)
                        .with("deep", Kind.MM, deep)
                        .with("length", Kind.MM, length));
        List<Double> thick = new ArrayList<>();
        for (int i = 0; i <= STRIP_PLACES; i++) {
            double x = channel.startMm() + length / 2 * i / STRIP_PLACES;
            thick.add(deep - (channel.floorDepthAtMm(x) - channel.depthMm()));
        }
        draft.row(
                "bottomStrip",
                "or a strip",
                plan.words(
                                "bottom-strip",
                                "cut flat to {floor:brief} and glue in a strip {thick:2|3} thick, every {step:brief} from either end")
                        .with("floor", Kind.MM, channel.depthMm() + deep)
                        .with("thick", Kind.list(Kind.MM), thick)
                        .with("step", Kind.MM, length / 2 / STRIP_PLACES));
        draft.row(
                "alongTheArc",
                "rod",
                plan.words(
                                "along-the-arc",
                                "{longer:2|3} longer than its chord; the fillet has the same curve, its grain along the neck")
                        .with("longer", Kind.MM, 2 * radius * StrictMath.asin(length / (2 * radius)) - length));
        double middle = channel.startMm() + length / 2;
        Limits<Length> limits = Limits.between(
                plan.style().amount(plan.neck().scale().fretMm(ARCH_FROM_FRET)),
                plan.style().amount(plan.neck().scale().fretMm(ARCH_TO_FRET)));
        Finding finding = new Finding.Computed(plan.style().amount(middle), limits, Outcome.OPEN);
        return new PlanCheck(
                CheckCode.ARCH_IN_THE_MIDDLE,
                finding,
                plan.words("arch-middle", "deepest {middle:brief} from the nut").with("middle", Kind.MM, middle),
                plan.words("between-frets", "between frets {from} and {to} (common practice)")
                        .with("from", Kind.WHOLE, ARCH_FROM_FRET)
                        .with("to", Kind.WHOLE, ARCH_TO_FRET),
                finding.outcome() == Outcome.OK
                        ? plan.words("make-the-rails", "Make the rails, or the strip, before the channel.")
                        : plan.words("move-the-arch", "Another start or length of the channel."));
    }

    private static Optional<PlanCheck> pastTheJoint(Stages plan, Channel channel) {
        double past = channel.endMm() - plan.neck().bodyJointMm();
        if (!(past > 0) || isUnderTheHeel(plan, channel)) {
            return Optional.empty();
        }
        return Optional.of(new PlanCheck(
                CheckCode.CHANNEL_ENDS_IN_THE_NECK,
                new Finding.Computed(
                        plan.style().amount(past), Limits.atMost(plan.style().amount(0)), Outcome.OPEN),
                plan.words("past", "{past:brief} past the body joint").with("past", Kind.MM, past),
                plan.words("body-joint", "to the body joint or short of it"),
                plan.words(
                        "shorten",
                        "A shorter rod, or let heel and body take it: then the neck does not come off without it.")));
    }

    /** A heel that lies in a pocket takes the channel's end with it. */
    private static boolean isUnderTheHeel(Stages plan, Channel channel) {
        return plan.neck()
                .heel()
                .map(Heel::joint)
                .filter(joint -> joint instanceof PlateScrews || joint instanceof Tenon tenon && !tenon.isBolted())
                .filter(joint -> channel.endMm() < plan.shape().shaftEndMm())
                .isPresent();
    }

    /** A stop can be clamped to the fence only as far as the fence reaches. */
    private static Optional<Statement> beyondTheFence(Stages plan, Stream<StopBlocks> stops) {
        double reach = plan.shop().fence().lengthMm() / 2;
        double farthest = stops.flatMap(each -> Stream.of(each.rear(), each.front()))
                .filter(stop -> !stop.isOpen())
                .mapToDouble(stop -> stop.fromCentre().libraryValue())
                .max()
                .orElse(0);
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
    private static PlanCheck depthOfPass(Stages plan) {
        double deepest = deepestPass(plan);
        double half = plan.shop().cutter().diameterMm() / 2;
        boolean soft = plan.neck()
                .wood()
                .filter(wood -> wood.has(WoodFigure.Kind.DENSITY))
                .map(wood -> wood.densityKgPerM3() < SOFT_KG_PER_M3)
                .orElse(false);
        double most = soft ? half : half / 2;
        // A double's rounding decides nothing.
        double found = deepest <= most * (1 + ROUNDING) ? Math.min(deepest, most) : deepest;
        Finding finding = new Finding.Computed(
                plan.style().amount(found),
                Limits.atMost(plan.style().amount(most)),
                deepest <= half * (1 + ROUNDING) ? Outcome.OPEN : Outcome.STOP);
        Statement next = switch (finding.outcome()) {
            case OK -> plan.words("read-the-depth", "Read the depth after every pass.");
            case OPEN -> plan.words("lighter-passes", "More and lighter passes in wood this hard.");
            case STOP ->
                plan.words("much-lighter-passes", "More and lighter passes: a deep one burns, bends and snatches.");
        };
        String share = soft ? "half the cutter's diameter" : "a quarter of the cutter's diameter in hardwood";
        return new PlanCheck(
                CheckCode.DEPTH_OF_A_PASS,
                finding,
                plan.words("deepest", "{deepest:table brief}").with("deepest", Kind.MM, deepest),
                plan.words("at-most", "{most:table brief} or less, " + share + " (common practice)")
                        .with("most", Kind.MM, most),
                next);
    }

    /** Forces on the cutter in the deepest pass, where feed and speed are given. */
    private static Optional<PlanPart> cutterLoad(Stages plan) {
        Shop shop = plan.shop();
        Optional<Wood> wood = plan.neck().wood();
        if (shop.feed().isEmpty() || shop.turning().isEmpty() || wood.isEmpty()) {
            return Optional.empty();
        }
        CutterLoad load = CutterLoad.of(
                shop.cutter(),
                wood.get(),
                shop.feed().get(),
                shop.turning().get(),
                plan.style().amount(deepestPass(plan)));
        return Optional.of(PlanPart.of(
                PlanSection.titled(SectionCode.CUTTER_LOAD, plan.style()).row("deepestPass", "deepest pass", load)));
    }

    /** Of channel and pocket. */
    private static double deepestPass(Stages plan) {
        return Math.max(
                deepest(plan.slot().passes()),
                plan.slot().pocketPasses().map(SetUpParts::deepest).orElse(0.0));
    }

    private static double deepest(PassPlan passes) {
        return passes.passes().stream()
                .mapToDouble(pass -> pass.step().libraryValue())
                .max()
                .orElseThrow();
    }

    /**
     * The head at the fence: a setting where the head is on before the channel, else the one it would need.
     *
     * @param isFirst which of the two is asked for
     */
    static Optional<PlanPart> headFirst(Stages plan, boolean isFirst) {
        // A head in one piece is sawn out of the square blank, which is what the fence meets.
        return plan.made()
                .design()
                .head()
                .filter(head -> !plan.isDone(Operation.CUT_ROD_CHANNEL))
                .filter(head -> plan.shape().headComesFirst() == isFirst)
                .filter(head -> !plan.shape().isHeadInOnePiece()
                        || head.onBeforeChannel().isPresent())
                .map(head -> headAtFence(plan, head));
    }

    private static PlanPart headAtFence(Stages plan, Head head) {
        HeadInterference atFence = plan.slot().headBesideIt(head);
        PlanSection.Draft draft = PlanSection.titled(SectionCode.HEAD_AT_THE_FENCE, plan.style())
                .row("spacer", "spacer", plan.slot().spacer(head));
        if (head.swingRad() != 0) {
            draft.row("skew", "swung head", atFence.skew());
        }
        if (head.veneerMm() > 0) {
            draft.row("rocking", "veneer on it", atFence.rocking());
        }
        head.onBeforeChannel().ifPresent(why -> {
            draft.row("why", "on before it", plan.words("why", "{why}").with("why", Kind.NAME, why));
            draft.row(
                    "centre",
                    "which centre",
                    plan.words(
                            "which-centre",
                            head.isSeamTheCentreline()
                                    ? "the seam of the veneer: read seam and shaft to one edge at two places, half the difference is their"
                                            + " offset"
                                    : "the shaft's: read both edges of shaft and head at two places, half the difference is their offset"));
            draft.note(
                    "fence-ends",
                    "Use a fence that ends before the wings where it can: then the shaft alone meets it.");
        });
        if (!plan.shape().headComesFirst()) {
            draft.note("channel-first", "Not needed if the channel is cut first, on the square blank.");
        }
        return PlanPart.of(draft);
    }
}
