package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.quantity.Length;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Bars;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Strip;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.strength.Sections;
import org.neckgeom.strength.StringLoad;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** The parts of a plan that belong to a shaft of more than one piece: bars beside the middle, strips, a string anchor. */
final class ShaftParts {

    /** Rips and glue lines of a stack, mm; common practice. */
    private static final double STACK_WITHIN_MM = 0.2;

    /** Wood of the middle strip beside the channel; common practice. */
    private static final double STRIP_BESIDE_MM = 1;

    private static final double ON_A_JOINT_MM = 1e-6;

    private ShaftParts() {}

    static List<PlanPart> of(Stages plan) {
        List<PlanPart> parts = new ArrayList<>();
        plan.neck().bars().ifPresent(bars -> parts.add(bars(plan, bars)));
        if (!plan.neck().strips().isEmpty()) {
            parts.add(strips(plan));
        }
        plan.neck().stringAnchor().ifPresent(anchor -> parts.add(anchor(plan, anchor)));
        return parts;
    }

    private static PlanPart bars(Stages plan, Bars bars) {
        double joint = plan.neck().bodyJointMm();
        Channel cut = bars.channel();
        PlanSection.Draft draft = PlanSection.titled(SectionCode.BARS, plan.style())
                .row("bars", "bars", bars)
                .row(
                        "channels",
                        "channels",
                        plan.words(
                                        "two-channels",
                                        "{width:text} wide, {depth:text} deep, {start:brief} to {end:brief} from the nut")
                                .with("width", Kind.MM, cut.widthMm())
                                .with("depth", Kind.MM, cut.depthMm())
                                .with("start", Kind.MM, cut.startMm())
                                .with("end", Kind.MM, cut.endMm()))
                .row(
                        "fence",
                        "from the middle",
                        plan.words("from-the-middle", "{near:text} at the nut, {far:text} at the body joint, each side")
                                .with("near", Kind.MM, bars.asideMm(0, joint))
                                .with("far", Kind.MM, bars.asideMm(joint, joint)));
        draft.row("atTheFence", "at the fence", atTheFence(plan, bars, cut));
        WoodAt least = leastBesideBars(plan, bars, cut);
        draft.row("least", "wood left", least);
        Amount<Length> limit = plan.job().floorLimit();
        Finding finding = new Finding.Computed(
                plan.style().amount(least.woodMm()),
                Limits.atLeast(limit),
                least.woodMm() > 0 ? Outcome.OPEN : Outcome.STOP);
        return PlanPart.of(
                draft.note(
                        "bonded",
                        "The bars are bonded: they count in the bending stiffness, and nothing sets them later."),
                new PlanCheck(
                        CheckCode.BARS_INSIDE_THE_BACK,
                        finding,
                        plan.words("wood-at", "{wood:text} outside the lower corner, {station:brief} from the nut")
                                .with("wood", Kind.MM, least.woodMm())
                                .with("station", Kind.MM, least.stationMm()),
                        plan.limit(Limits.atLeast(limit)),
                        finding.outcome() == Outcome.OK
                                ? plan.words("cut-both", "Cut both from the same edge, the piece turned end for end.")
                                : plan.words(
                                        "bars-in",
                                        "Move the bars in or fan them with the taper, or take lower bars.")));
    }

    /**
     * One fence setting cuts both, each from its own edge. Bars that fan come nearer to it toward the body: there a wedge fills what
     * the edge is to keep off the fence.
     */
    private static Statement atTheFence(Stages plan, Bars bars, Channel cut) {
        double joint = plan.neck().bodyJointMm();
        double rise = bars.asideMm(cut.endMm(), joint) - bars.asideMm(cut.startMm(), joint);
        double edge = plan.blank().widthMm() / 2 - bars.asideMm(cut.startMm(), joint);
        return plan.words(
                        rise == 0 ? "from-each-edge" : "on-a-taper",
                        "middle {edge:text} from the nearer edge"
                                + (rise == 0
                                        ? ", each bar from its own edge"
                                        : " at its head end; the blank on a wedge of {rise:size text} over {length:brief}, "
                                                + (rise > 0 ? "thin" : "thick")
                                                + " end toward the head, turned over for the other"))
                .with("edge", Kind.MM, edge)
                .with("rise", Kind.MM, rise)
                .with("length", Kind.MM, cut.lengthMm());
    }

    /** The least of both sides: of an uneven back one is thinner. */
    private static WoodAt leastBesideBars(Stages plan, Bars bars, Channel cut) {
        double joint = plan.neck().bodyJointMm();
        Channel inTheNeck = cut.endMm() > joint ? cut.cutTo(plan.style().amount(joint)) : cut;
        double near = bars.asideMm(cut.startMm(), joint);
        double skew = StrictMath.atan2(bars.asideMm(joint, joint) - bars.asideMm(0, joint), joint);
        return IntStream.of(-1, 1)
                .mapToObj(side -> FloorThickness.under(inTheNeck, plan.made().back())
                        .offCentre(plan.style().amount(side * near))
                        .skewed(Amount.ofLibrary(side * skew, ShopUnit.DEGREE))
                        .least())
                .min(Comparator.comparingDouble(WoodAt::woodMm))
                .orElseThrow();
    }

    private static PlanPart strips(Stages plan) {
        List<Strip> strips = plan.neck().strips();
        List<Double> edges = plan.neck().stripEdgesMm();
        PlanSection.Draft draft = PlanSection.titled(SectionCode.LAMINATED, plan.style());
        for (int i = 0; i < strips.size(); i++) {
            Strip strip = strips.get(i);
            draft.row(
                    "strip" + (i + 1),
                    draft.words("strip", "strip {number}").with("number", Kind.WHOLE, i + 1),
                    draft.words("strip-of", "{strip}, to {edge:text} from the middle")
                            .with("strip", Kind.ANSWER, strip)
                            .with("edge", Kind.MM, edges.get(i + 1)));
        }
        if (plan.neck().isReadyForLoad() && plan.strength().thinnest().woodMm() > 0) {
            int fret = Math.max(1, plan.neck().bodyAtFret() / 2);
            draft.row(
                    "stiffness",
                    "stiffness",
                    plan.words("stiffness-by-parts", "EI {stiffness} N m2 at fret {fret}, strip by strip")
                            .with("stiffness", Kind.WHOLE, (int)
                                    Math.round(Sections.of(plan.made().design())
                                            .atFret(fret)
                                            .stiffnessNm2()))
                            .with("fret", Kind.WHOLE, fret));
        }
        draft.note("from-the-bass-side", "From the bass side; negative: on the bass side of the middle.");
        draft.note(
                "lines-show", "The glue lines show at heel and volute: an offset of channel or taper is seen there.");
        double sum = edges.get(edges.size() - 1) - edges.get(0);
        double wide = plan.blank().widthMm();
        Finding adds = new Finding.Computed(
                plan.style().amount(sum),
                Limits.between(
                        plan.style().amount(wide - STACK_WITHIN_MM),
                        plan.style().amount(wide + STACK_WITHIN_MM)),
                Outcome.OPEN);
        double wall = wallInTheStrip(plan, edges);
        Finding inside = new Finding.Computed(
                plan.style().amount(wall), Limits.atLeast(plan.style().amount(STRIP_BESIDE_MM)), Outcome.OPEN);
        return PlanPart.of(
                draft,
                new PlanCheck(
                        CheckCode.STRIPS_ADD_UP,
                        adds,
                        plan.words("sum", "{sum:text} together").with("sum", Kind.MM, sum),
                        plan.words("blank-width", "{wide:brief}, the blank's width, within {within:brief}")
                                .with("wide", Kind.MM, wide)
                                .with("within", Kind.MM, STACK_WITHIN_MM),
                        adds.outcome() == Outcome.OK
                                ? plan.words(
                                        "read-the-stack",
                                        "Read the stack's width, and take its middle for the centreline.")
                                : plan.words("correct-the-strips", "Correct a strip or the blank's width.")),
                new PlanCheck(
                        CheckCode.CHANNEL_INSIDE_A_STRIP,
                        inside,
                        plan.words("wall-of-the-strip", "{wall:text} of the middle strip beside the channel")
                                .with("wall", Kind.MM, wall),
                        plan.words("a-mm-or-on-a-joint", "{least:brief} or more, or the channel's middle on a joint")
                                .with("least", Kind.MM, STRIP_BESIDE_MM),
                        inside.outcome() == Outcome.OK
                                ? plan.words("channel-in-one-wood", "Cut the channel in the middle.")
                                : plan.words("wider-strip", "A wider middle strip, or a joint in the middle.")));
    }

    /** From the channel's wall to the next joint, the channel as far off as it was read; a joint in its middle is no wall. */
    private static double wallInTheStrip(Stages plan, List<Double> edges) {
        SlotPlace place = plan.slot().place();
        double off =
                plan.measured().has(NeckFeature.SLOT_OFFSET) ? Math.abs(place.offsetMmAt(place.worstStationMm())) : 0;
        double half = plan.made().channel().widthMm() / 2 + off;
        return edges.stream()
                .mapToDouble(Math::abs)
                .filter(edge -> edge > ON_A_JOINT_MM)
                .map(edge -> edge - half)
                .min()
                .orElseThrow();
    }

    private static PlanPart anchor(Stages plan, Amount<Length> anchor) {
        double needed = anchor.libraryValue() + plan.blank().endAllowanceMm();
        PlanSection.Draft draft = PlanSection.titled(SectionCode.STRING_ANCHOR, plan.style())
                .row(
                        "anchor",
                        "anchor",
                        plan.words("past-the-nut", "on {length:brief} of wood past the nut line")
                                .with("length", Kind.MM, anchor.libraryValue()));
        Optional<Integer> screws = plan.neck().anchorScrews();
        if (plan.neck().isReadyForLoad() && screws.isPresent()) {
            StringLoad load = plan.strength().load();
            draft.row(
                    "screws",
                    "screws",
                    plan.words("shear", "{screws}, {each:size 0} of shear on each from all strings")
                            .with("screws", Kind.WHOLE, screws.get())
                            .with(
                                    "each",
                                    Kind.AMOUNT,
                                    Amount.ofLibrary(load.total().libraryValue() / screws.get(), ShopUnit.NEWTON)));
        }
        draft.note(
                "end-grain",
                "Screws along the grain hold little: drill the pilots as wide as the core, and let the anchor bear on the neck's"
                        + " end or pin it across (common practice).");
        if (plan.made().channel().startMm() <= -anchor.libraryValue()) {
            draft.note("no-stop", "The channel runs out at the nut end: no stop there.");
        }
        double there = plan.blank().nutFromHeadEndMm();
        Finding finding = new Finding.Computed(
                plan.style().amount(there), Limits.atLeast(plan.style().amount(needed)), Outcome.OPEN);
        return PlanPart.of(
                draft,
                new PlanCheck(
                        CheckCode.NUT_LINE_LEAVES_ROOM,
                        finding,
                        StockParts.fromHeadEnd(plan, there),
                        plan.words("at-least", "{least:brief} or more").with("least", Kind.MM, needed),
                        finding.outcome() == Outcome.OK
                                ? plan.words("one-end", "Lay out nut line, stops and anchor from the same end.")
                                : plan.words(
                                        "longer-past-the-nut",
                                        "Lay the nut line out farther in: the anchor needs the wood.")));
    }
}
