package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.neckgeom.channel.Cautions;
import org.neckgeom.channel.Offset;
import org.neckgeom.channel.SecondPass;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.design.Channel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.measure.Call;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.units.LengthStyle;

/** The parts of a plan that belong to a channel that is cut: where it came to lie, and whether its rod goes in. */
final class CutParts {

    static final String CENTRED = "channel centred";
    private static final String WIDER = "wider";
    private static final List<NeckFeature> SIZES = List.of(
            NeckFeature.CHANNEL_DEPTH, NeckFeature.CHANNEL_WIDTH, NeckFeature.CHANNEL_START, NeckFeature.CHANNEL_END);

    private CutParts() {}

    /** What is left to judge of the centring: no fence moves the slot any more. */
    static PlanPart centring(NeckPlan plan, PlanSection.Draft draft) {
        Limits<Length> limits = Limits.within(plan.centredWithin());
        Optional<Estimate<Length>> read = plan.readings().of(NeckFeature.SLOT_OFFSET);
        if (read.isEmpty()) {
            String found =
                    plan.steps().isEmpty() ? "not read" : plan.slotPlace().worst() + " by the trial cuts";
            return PlanPart.of(
                    draft.row("done", "the channel is cut; where it came to lie has not been read")
                            .row("limit", limits),
                    new PlanCheck(
                            CENTRED, Outcome.OPEN, found, limits.toString(), "Read both walls on the neck itself."));
        }
        draft.row("done", offset(plan, read.get()) + ", read on the neck").row("limit", limits);
        return PlanPart.of(draft, centred(plan, Verdict.of(read.get(), limits)));
    }

    private static Offset offset(NeckPlan plan, Estimate<Length> estimate) {
        LengthStyle style = plan.style();
        return Offset.of(style.amount(estimate.valueHouse()), style.amount(estimate.uncertaintyHouse()));
    }

    /** A slot off the middle costs wood on one side; what is located on it follows it. */
    private static PlanCheck centred(NeckPlan plan, Verdict<Length> verdict) {
        String found = offset(plan, verdict.estimate()).toString();
        String allowed = verdict.limits().toString();
        double spare = spareMm(plan);
        if (verdict.call() == Call.WITHIN) {
            return new PlanCheck(CENTRED, Outcome.GOOD, found, allowed, "Locate taper, heel and board on the channel.");
        }
        if (verdict.call() == Call.UNDECIDED) {
            return new PlanCheck(CENTRED, Outcome.OPEN, found, allowed, "Not sure: read again, or read better.");
        }
        return spare > 0
                ? new PlanCheck(
                        CENTRED,
                        Outcome.OPEN,
                        found,
                        allowed,
                        "Locate taper, heel and board on the channel, never on an edge: the blank has "
                                + plan.style().brief(spare) + " to spare on its thin side.")
                : new PlanCheck(
                        CENTRED,
                        Outcome.STOP,
                        found,
                        allowed,
                        "The neck no longer fits the blank about this channel, by "
                                + plan.style().brief(-spare) + ": glue a strip to that edge before tapering.");
    }

    /** What the blank has outside the neck on the side to which the slot lies, at the wider of nut and body joint. */
    private static double spareMm(NeckPlan plan) {
        NeckDesign design = plan.design();
        SlotPlace place = plan.slotPlace();
        return Stream.of(0.0, design.bodyJointMm())
                .mapToDouble(
                        x -> plan.blank().widthAtMm(x) / 2 - design.halfWidthAtMm(x) - Math.abs(place.offsetMmAt(x)))
                .min()
                .orElseThrow();
    }

    static PlanPart channel(NeckPlan plan, Optional<PlanCheck> pastTheJoint) {
        Channel cut = AsMade.of(plan).channel();
        PlanSection.Draft draft =
                PlanSection.titled(SetUpParts.CHANNEL_TITLE).row("done", "cut: " + cut.in(plan.style()));
        List<String> unread = new ArrayList<>();
        for (NeckFeature size : SIZES) {
            plan.readings()
                    .of(size)
                    .ifPresentOrElse(
                            reading -> draft.row(size.toString(), reading + "; drawn " + drawn(plan, size)),
                            () -> unread.add(size.toString()));
        }
        if (!unread.isEmpty()) {
            draft.note("not read, taken as drawn: " + String.join(", ", unread));
        }
        List<PlanCheck> checks = new ArrayList<>(rodFits(plan, cut));
        pastTheJoint.ifPresent(checks::add);
        return new PlanPart(draft.done(), checks);
    }

    private static String drawn(NeckPlan plan, NeckFeature size) {
        Channel channel = plan.design().channel().orElseThrow();
        double mm = switch (size) {
            case CHANNEL_DEPTH -> channel.depthMm();
            case CHANNEL_WIDTH -> channel.widthMm();
            case CHANNEL_START -> channel.startMm();
            default -> channel.endMm();
        };
        return plan.style().brief(mm);
    }

    private static List<PlanCheck> rodFits(NeckPlan plan, Channel cut) {
        NeckReadings read = plan.readings();
        List<PlanCheck> checks = new ArrayList<>();
        read.of(NeckFeature.CHANNEL_DEPTH)
                .ifPresent(depth -> checks.add(fits(
                        plan,
                        "channel deep enough for the rod",
                        depth,
                        cut.rod().heightMm() + cut.coverMm(),
                        "deeper")));
        read.of(NeckFeature.CHANNEL_WIDTH)
                .ifPresent(width -> checks.add(fits(
                        plan,
                        "channel wide enough for the rod",
                        width,
                        cut.rod().widthMm(),
                        WIDER)));
        if (read.has(NeckFeature.CHANNEL_START) || read.has(NeckFeature.CHANNEL_END)) {
            Estimate<Length> length = Estimate.ofHouse(
                    cut.lengthMm(),
                    StrictMath.hypot(u(read, NeckFeature.CHANNEL_START), u(read, NeckFeature.CHANNEL_END)),
                    Double.POSITIVE_INFINITY,
                    plan.style().unit());
            checks.add(fits(
                    plan, "channel long enough for the rod", length, cut.rod().lengthMm(), "longer"));
        }
        if (checks.isEmpty()) {
            checks.add(new PlanCheck(
                    "channel takes the rod",
                    Outcome.OPEN,
                    "not read",
                    "the rod's size or more",
                    "Read its depth at both ends before the rod goes in."));
        }
        return checks;
    }

    private static double u(NeckReadings read, NeckFeature feature) {
        return read.of(feature).map(Estimate::uncertaintyHouse).orElse(0.0);
    }

    private static PlanCheck fits(NeckPlan plan, String name, Estimate<Length> reading, double needed, String more) {
        LengthStyle style = plan.style();
        Limits<Length> limits = Limits.atLeast(style.amount(needed));
        String missing = style.small(Math.abs(needed - reading.valueHouse()));
        boolean closed = plan.readings().has(NeckFeature.FINGERBOARD_OFFSET);
        Outcome outcome = AsMade.outcome(Verdict.of(reading, limits));
        String todo = switch (outcome) {
            case GOOD -> "Try the rod in it, then lay it in.";
            case OPEN -> "Not sure: try the rod in it, or read better.";
            case STOP ->
                closed
                        ? "The board is on over a channel that is " + missing
                                + " too small for its rod: was one of the two misread?"
                        : more.equals(WIDER)
                                ? "Make it " + missing + " wider: the same edge on the fence, the fence " + missing
                                        + " away from the cutter: " + SecondPass.FENCE_AWAY + ". " + Cautions.FEED
                                        + "."
                                : "Make it " + missing + " " + more + ".";
        };
        return new PlanCheck(name, outcome, reading.toString(), limits.toString(), todo);
    }
}
