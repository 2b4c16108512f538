package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.neckgeom.channel.SecondPass;
import org.neckgeom.channel.SlotOffset;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Decision;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.Operation;
import org.neckgeom.shop.Caution;
import org.neckgeom.units.LengthStyle;

/** The parts of a plan that belong to a channel that is cut: where it came to lie, and whether its rod goes in. */
final class CutParts {

    /** The sizes of a channel that can be read. */
    static final List<NeckFeature> SIZES = List.of(
            NeckFeature.CHANNEL_DEPTH, NeckFeature.CHANNEL_WIDTH, NeckFeature.CHANNEL_START, NeckFeature.CHANNEL_END);

    private CutParts() {}

    /** What is left to judge of the centring: no fence moves the slot any more. */
    static PlanPart centring(Stages plan, PlanSection.Draft draft) {
        Limits<Length> limits = Limits.within(plan.job().slotLimit());
        Optional<Estimate<Length>> read = plan.measured().of(NeckFeature.SLOT_OFFSET);
        if (read.isEmpty()) {
            Statement found = plan.job().steps().isEmpty()
                    ? draft.words("not-read", "not read")
                    : draft.words("by-the-trial-cuts", "{offset} by the trial cuts")
                            .with("offset", Kind.ANSWER, plan.slot().place().worst());
            return PlanPart.of(
                    draft.row(
                                    "done",
                                    "done",
                                    draft.words("cut", "the channel is cut; where it came to lie has not been read"))
                            .row("limit", "limit", Kind.LIMITS, limits),
                    new PlanCheck(
                            CheckCode.CHANNEL_CENTRED,
                            new Finding.Pending(Finding.Missing.SLOT_OFFSET, Optional.of(limits)),
                            found,
                            plan.limit(limits),
                            isClosed(plan)
                                    ? underTheBoard(plan)
                                    : draft.words("read-both-walls", "Read both walls on the neck itself.")));
        }
        draft.row(
                        "done",
                        "done",
                        draft.words("read", "{offset}, read on the neck")
                                .with("offset", Kind.ANSWER, offset(plan, read.get())))
                .row("limit", "limit", Kind.LIMITS, limits);
        plan.measured()
                .of(NeckFeature.SLOT_OFFSET_AT_HEEL)
                .ifPresent(heel -> draft.row(
                        "atTheHeelEnd",
                        "at its heel end",
                        draft.words("read-at-the-heel-end", "{offset}, read on the neck")
                                .with("offset", Kind.ANSWER, offset(plan, heel))));
        return PlanPart.of(draft, centred(plan, plan.slot().kept()));
    }

    private static SlotOffset offset(Stages plan, Estimate<Length> estimate) {
        LengthStyle style = plan.style();
        return SlotOffset.of(style.amount(estimate.libraryValue()), style.amount(estimate.libraryUncertainty()));
    }

    /** A slot off the middle costs wood on one side; what is located on it follows it. */
    private static PlanCheck centred(Stages plan, Verdict<Length> verdict) {
        double spare = spareMm(plan);
        boolean outside = verdict.call() == Decision.OUTSIDE;
        Finding finding = new Finding.Measured(verdict, spare > 0 ? Outcome.OPEN : Outcome.STOP);
        Statement next = !outside
                ? finding.outcome() == Outcome.OK
                        ? plan.words("locate-on-the-channel", "Locate taper, heel and board on the channel.")
                        : isClosed(plan)
                                ? underTheBoard(plan)
                                : plan.words("read-again", "Not sure: read again, or read better.")
                : (spare > 0
                                ? plan.words(
                                        "never-on-an-edge",
                                        "Locate taper, heel and board on the channel, never on an edge: the blank has"
                                                + " {spare:brief} to spare on its thin side.")
                                : plan.words(
                                        "glue-a-strip",
                                        "The neck no longer fits the blank about this channel, by {spare:size brief}:"
                                                + " glue a strip to that edge before tapering."))
                        .with("spare", Kind.MM, spare);
        return new PlanCheck(
                CheckCode.CHANNEL_CENTRED,
                finding,
                offset(plan, verdict.estimate()),
                plan.limit(verdict.limits()),
                next);
    }

    /** What the blank has outside the neck on the side to which the slot lies, at the wider of nut and body joint. */
    static double spareMm(Stages plan) {
        return spareMm(plan, 0);
    }

    /** The same of a neck that lies off the slot, to the worse side: which edge ran along the fence is not known. */
    static double spareMm(Stages plan, double aside) {
        SlotPlace place = plan.slot().place();
        return Stream.of(0.0, plan.neck().bodyJointMm())
                .mapToDouble(x -> spareMm(plan, x, Math.abs(place.offsetMmAt(x)) + aside))
                .min()
                .orElseThrow();
    }

    /** The same at the body joint. */
    static double spareAtTheJointMm(Stages plan) {
        return spareAtTheJointMm(
                plan, plan.slot().place().offsetMmAt(plan.neck().bodyJointMm()));
    }

    /** The same of a slot so far off there. */
    static double spareAtTheJointMm(Stages plan, double off) {
        return spareMm(plan, plan.neck().bodyJointMm(), Math.abs(off));
    }

    /** The same at a station, of a neck so far off the blank's middle; at the joint the heel counts too. */
    private static double spareMm(Stages plan, double x, double off) {
        Neck design = plan.neck();
        double heel =
                x < design.bodyJointMm() ? 0 : design.heel().map(Heel::widthMm).orElse(0.0) / 2;
        return plan.blank().widthAtMm(x) / 2 - Math.max(heel, design.halfWidthAtMm(x)) - off;
    }

    /** The section on the channel, cut or not. */
    static PlanSection.Draft section(Stages plan) {
        Channel channel = plan.job().channel();
        if (channel.isLocatingGroove()) {
            return PlanSection.titled(SectionCode.CHANNEL, "Locating groove", plan.style());
        }
        return channel.bar().isPresent()
                ? PlanSection.titled(SectionCode.CHANNEL, "Bar channel", plan.style())
                : PlanSection.titled(SectionCode.CHANNEL, plan.style());
    }

    static PlanPart channel(Stages plan, Optional<PlanCheck> pastTheJoint) {
        Channel cut = plan.made().channel();
        PlanSection.Draft draft = section(plan);
        draft.row("done", "done", draft.words("cut", "cut: {channel}").with("channel", Kind.ANSWER, cut));
        List<String> unread = new ArrayList<>();
        for (NeckFeature size : SIZES) {
            plan.measured()
                    .of(size)
                    .ifPresentOrElse(
                            reading -> draft.row(
                                    size.key(),
                                    size.toString(),
                                    draft.words("read", "{reading}; drawn {drawn:brief}")
                                            .with("reading", Kind.ESTIMATE, reading)
                                            .with("drawn", Kind.MM, drawnMm(plan, size))),
                            () -> unread.add(size.toString()));
        }
        if (!unread.isEmpty()) {
            draft.note(draft.words("not-read", "not read, taken as drawn: {features}")
                    .with("features", Kind.list(Kind.NAME), unread));
        }
        List<PlanCheck> checks = new ArrayList<>(cut.isLocatingGroove() ? List.of() : rodFits(plan, cut));
        pastTheJoint.ifPresent(checks::add);
        return new PlanPart(draft.done(), checks);
    }

    static double drawnMm(Stages plan, NeckFeature size) {
        Channel channel = plan.job().channel();
        return switch (size) {
            case CHANNEL_DEPTH -> channel.depthMm();
            case CHANNEL_WIDTH -> channel.widthMm();
            case CHANNEL_START -> channel.startMm();
            default -> channel.endMm();
        };
    }

    private static List<PlanCheck> rodFits(Stages plan, Channel cut) {
        MeasuredNeck read = plan.measured();
        List<PlanCheck> checks = new ArrayList<>();
        read.of(NeckFeature.CHANNEL_DEPTH)
                .ifPresent(depth -> checks.add(fits(
                        plan,
                        CheckCode.CHANNEL_DEEP_ENOUGH,
                        depth,
                        cut.reinforcement().heightMm() + cut.filletMm())));
        read.of(NeckFeature.CHANNEL_WIDTH)
                .ifPresent(width -> checks.add(fits(
                        plan,
                        CheckCode.CHANNEL_WIDE_ENOUGH,
                        width,
                        cut.reinforcement().widthMm())));
        if (read.has(NeckFeature.CHANNEL_START) || read.has(NeckFeature.CHANNEL_END)) {
            Estimate<Length> length = Estimate.ofLibrary(
                    cut.lengthMm(),
                    StrictMath.hypot(u(read, NeckFeature.CHANNEL_START), u(read, NeckFeature.CHANNEL_END)),
                    Double.POSITIVE_INFINITY,
                    plan.style().unit());
            checks.add(fits(
                    plan,
                    CheckCode.CHANNEL_LONG_ENOUGH,
                    length,
                    cut.reinforcement().lengthMm()));
        }
        if (checks.isEmpty()) {
            checks.add(new PlanCheck(
                    CheckCode.CHANNEL_TAKES_THE_ROD,
                    new Finding.Pending(Finding.Missing.CHANNEL_DEPTH, Optional.empty()),
                    plan.words("not-read", "not read"),
                    plan.words("size-of-the-rod", "the rod's size or more"),
                    isClosed(plan)
                            ? underTheBoard(plan)
                            : plan.words("read-the-depth", "Read its depth at both ends before the rod goes in.")));
        }
        return checks;
    }

    /** The board over the channel ends what can be read and done in it. */
    static boolean isClosed(Stages plan) {
        return plan.isDone(Operation.GLUE_FINGERBOARD);
    }

    private static Statement underTheBoard(Stages plan) {
        return plan.words("board-over-it", "The board is on over it. Go on with what is left.");
    }

    private static double u(MeasuredNeck read, NeckFeature feature) {
        return read.of(feature).map(Estimate::libraryUncertainty).orElse(0.0);
    }

    /** How a channel too small for its rod is made larger. */
    private static Statement more(Stages plan, CheckCode code) {
        return switch (code) {
            case CHANNEL_WIDE_ENOUGH ->
                plan.words(
                        "widen-about-the-middle",
                        "Make it {missing:size small} wider: the fence {half:size small} away from the cutter, cut, turn"
                                + " end for end, cut, and the middle stays: " + SecondPass.FENCE_AWAY + ". "
                                + Caution.known("CLIMB_FEED").text() + ".");
            case CHANNEL_DEEP_ENOUGH -> plan.words("cut-deeper", "Make it {missing:size small} deeper.");
            default -> plan.words("cut-longer", "Make it {missing:size small} longer.");
        };
    }

    private static PlanCheck fits(Stages plan, CheckCode code, Estimate<Length> reading, double needed) {
        LengthStyle style = plan.style();
        Limits<Length> limits = Limits.atLeast(style.amount(needed));
        boolean closed = isClosed(plan);
        Finding finding = new Finding.Measured(Verdict.of(reading, limits), Outcome.STOP);
        Statement next = switch (finding.outcome()) {
            case OK -> closed ? underTheBoard(plan) : plan.words("try-the-rod", "Try the rod in it, then lay it in.");
            case OPEN ->
                closed
                        ? underTheBoard(plan)
                        : plan.words("try-or-read", "Not sure: try the rod in it, or read better.");
            case STOP ->
                (closed
                                ? plan.words(
                                        "closed",
                                        "The board is on over a channel that is {missing:size small} too small for its"
                                                + " rod: was one of the two misread?")
                                : more(plan, code))
                        .with("missing", Kind.MM, needed - reading.libraryValue())
                        .with("half", Kind.MM, (needed - reading.libraryValue()) / 2);
        };
        return new PlanCheck(
                code,
                finding,
                plan.words("reading", "{reading}").with("reading", Kind.ESTIMATE, reading),
                plan.limit(limits),
                next);
    }
}
