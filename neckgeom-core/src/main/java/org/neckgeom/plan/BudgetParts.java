package org.neckgeom.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Chance;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Interval;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.state.Basis;
import org.neckgeom.state.Cause;
import org.neckgeom.state.JointChance;
import org.neckgeom.state.Known;
import org.neckgeom.state.NeckErrors.Located;
import org.neckgeom.state.Share;

/** The part of a plan that adds up the errors of its steps. */
final class BudgetParts {

    static final String TAKE_OFF = "Take off what the heel's corners ask for, a part at a time, and read again.";

    private static final Set<String> AT_THE_BRIDGE =
            Set.of(NeckFeature.OFFSET_AT_BRIDGE.toString(), NeckFeature.HEIGHT_AT_BRIDGE.toString());
    private static final String WITHIN = "{coverage:percent 0} interval {interval:own}";

    private static final double WANTED_YIELD = 0.95;

    private BudgetParts() {}

    static PlanPart of(Stages plan) {
        PlanSection.Draft draft = PlanSection.titled(SectionCode.ERRORS, plan.style());
        for (BudgetCode code : BudgetCode.values()) {
            Known known = plan.state().known(code);
            Share largest = known.shares().get(0);
            draft.row(
                    code.key(),
                    code.toString(),
                    draft.words(
                                    "budget",
                                    WITHIN + "\n{limit}: {yield}\nlargest share: {largest}, {share:percent 0} of the"
                                            + " variance")
                            .with("coverage", Kind.RATIO, Known.USUAL)
                            .with("interval", Kind.INTERVAL, usual(known))
                            .with("limit", Kind.LIMITS, plan.job().limits(code))
                            .with("yield", Kind.CHANCE, known.chance(plan.job().limits(code)))
                            .with("largest", Kind.NAME, largest.name())
                            .with("share", Kind.RATIO, largest.fraction()));
            plan.state()
                    .byTrials(code)
                    .ifPresent(trials -> draft.row(
                            code.key() + "ByTrials",
                            code + ", by trials",
                            draft.words("by-trials", "{yield}: a reading lies far off, where normal laws are too rough")
                                    .with("yield", Kind.CHANCE, trials)));
        }
        all(plan, draft);
        if (!plan.measured().has(NeckFeature.OFFSET_AT_BRIDGE)) {
            draft.row(
                    "fromAnEdge",
                    "if heel and taper were located from the edge",
                    draft.words(
                                    "from-an-edge",
                                    BudgetCode.STRING_LINE + " " + WITHIN
                                            + " from the edge that the channel was cut along, {opposite:own} from the"
                                            + " opposite one")
                            .with("coverage", Kind.RATIO, Known.USUAL)
                            .with("interval", Kind.INTERVAL, usual(plan.state().stringLine(Located.SAME_EDGE)))
                            .with("opposite", Kind.INTERVAL, usual(plan.state().stringLine(Located.OPPOSITE_EDGE))));
        }
        yours(plan, draft);
        return PlanPart.of(
                draft.note("common-practice", "Workmanship is common practice until it is measured."), bridge(plan));
    }

    private static void all(Stages plan, PlanSection.Draft draft) {
        JointChance all = plan.state().all();
        draft.row(
                "all",
                "all of them together",
                draft.words("all", "{chance}").with("chance", Kind.CHANCE, all.chance()));
        plan.state()
                .nextReading()
                .ifPresent(next -> draft.row(
                        "nextReading",
                        "reading most worth taking",
                        (AT_THE_BRIDGE.contains(next.reading().name())
                                        ? draft.words("next-reading-at-the-bridge", "{name}, once the heel is fitted")
                                        : draft.words("next-reading", "{name}"))
                                .with("name", Kind.NAME, next.reading().name())));
    }

    /** What rests on readings of this shop, each with its degrees of freedom. */
    private static void yours(Stages plan, PlanSection.Draft draft) {
        Map<String, Double> learnt = new LinkedHashMap<>();
        for (Cause cause : plan.state().state().causes()) {
            if (cause.basis() == Basis.READINGS && !cause.step().equals("rod channel")) {
                learnt.merge(cause.step(), cause.spread().degreesOfFreedom(), Math::min);
            }
        }
        int row = 0;
        for (Map.Entry<String, Double> one : learnt.entrySet()) {
            draft.row(
                    "yours" + ++row,
                    one.getKey(),
                    draft.words("yours", "by your own readings, {degrees:0} degrees of freedom")
                            .with("degrees", Kind.RATIO, one.getValue()));
        }
    }

    private static Interval<Length> usual(Known known) {
        return known.interval(Known.USUAL);
    }

    private static PlanCheck bridge(Stages plan) {
        Known line = plan.state().known(BudgetCode.STRING_LINE);
        Limits<Length> limits = plan.job().limits(BudgetCode.STRING_LINE);
        Optional<Estimate<Length>> read = plan.measured().of(NeckFeature.OFFSET_AT_BRIDGE);
        if (read.isPresent()) {
            return asRead(plan, line.estimate(), limits);
        }
        Chance yield = line.chance(limits);
        boolean good = yield.probability() >= WANTED_YIELD;
        return new PlanCheck(
                CheckCode.STRING_LINE,
                new Finding.Likely(line.estimate().value(), limits, yield.probability(), WANTED_YIELD, Outcome.OPEN),
                plan.words("yield", "yield {yield}").with("yield", Kind.CHANCE, yield),
                plan.limit(limits),
                good ? plan.words("go-on", "No change needed.") : improved(plan));
    }

    /** A step that is done can be improved no more. */
    private static Statement improved(Stages plan) {
        return plan.state().worthImproving(BudgetCode.STRING_LINE).stream()
                .findFirst()
                .map(one -> plan.words("improve", "Improve this step first: {step}.")
                        .with("step", Kind.NAME, one.step()))
                .orElseGet(() ->
                        plan.words("read-at-the-bridge", "All its steps are done: read the offset at the bridge."));
    }

    /** Read where it counts: what is known is all but the reading. */
    private static PlanCheck asRead(Stages plan, Estimate<Length> known, Limits<Length> limits) {
        Finding finding = new Finding.Measured(Verdict.of(known, limits), Outcome.OPEN);
        return new PlanCheck(
                CheckCode.STRING_LINE,
                finding,
                plan.words("read", "{reading} by what was read at the bridge").with("reading", Kind.ESTIMATE, known),
                plan.limit(limits),
                finding.outcome() == Outcome.OK
                        ? plan.words("leave-the-heel", "Leave the heel's cheeks at that.")
                        : plan.words("take-off-the-heel", TAKE_OFF));
    }
}
