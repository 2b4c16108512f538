package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.Fret;
import org.neckgeom.board.FretTable;
import org.neckgeom.fault.Fault;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.neck.Tenon;
import org.neckgeom.order.Operation;
import org.neckgeom.solid.ChannelEnd;
import org.neckgeom.units.Amount;

/** The parts of a plan that belong to the neck's shape: scarf, frets, neck angle, heel; and the order of all of them. */
final class ShapeParts {

    private static final double HAIR = 1e-9;
    private static final double ZERO_FRET_MOST_MM = 0.1;

    private ShapeParts() {}

    static List<PlanPart> of(Stages plan) {
        List<PlanPart> parts = new ArrayList<>();
        StockParts.of(plan).ifPresent(parts::add);
        plan.made().scarf().ifPresent(joint -> parts.add(scarf(plan, joint)));
        OnePieceParts.of(plan).ifPresent(parts::add);
        HeadParts.of(plan).ifPresent(parts::add);
        parts.add(frets(plan));
        FannedFrets.of(plan.neck()).ifPresent(fan -> parts.add(fanned(plan, fan)));
        parts.addAll(BoardParts.of(plan));
        parts.addAll(ShaftParts.of(plan));
        parts.addAll(BackParts.of(plan));
        plan.shape().neckSet().ifPresent(set -> parts.add(neckSet(plan, set)));
        plan.shape().noNeckSet().ifPresent(why -> parts.add(noNeckSet(plan, why)));
        plan.neck().heel().ifPresent(heel -> parts.add(heel(plan, heel)));
        return parts;
    }

    private static PlanPart scarf(Stages plan, ScarfJoint joint) {
        PlanSection.Draft draft =
                PlanSection.titled(SectionCode.SCARF, plan.style()).row("joint", "joint", joint);
        if (plan.isDone(Operation.CUT_SCARF)) {
            return PlanPart.of(draft.row("done", "done", sawn(plan)));
        }
        double shaftEnd = plan.shape().shaftEndMm();
        ScarfBoard board = plan.shape().scarfBoard().orElseThrow();
        draft.row("board", "board", board);
        boolean reaches = board.length().libraryValue() <= plan.blank().lengthMm();
        return PlanPart.of(
                draft.note(draft.words(
                                "shaft-end",
                                "The shaft ends {end:text} from the nut line, "
                                        + (shaftEnd > plan.neck().bodyJointMm()
                                                ? "with the " + StockParts.pastTheJoint(plan)
                                                : "at the body joint")
                                        + ": marks count from there, not from the blank's end. The rest makes the heel blocks.")
                        .with("end", Kind.MM, shaftEnd)),
                StockParts.reaches(
                        plan,
                        board.length().libraryValue(),
                        reaches
                                ? saw(plan)
                                : draft.words("longer-blank", "Take a longer blank, or the head from another board.")),
                nutLine(plan, board));
    }

    private static Statement saw(Stages plan) {
        return plan.shape().nutSlant().libraryValue() == 0
                ? plan.words("saw-once", "One saw cut does it.")
                : plan.words("saw-twice", "Two cuts of opposite hand, each at its own marks.");
    }

    private static Statement sawn(Stages plan) {
        return plan.measured()
                .scarfAngle()
                .map(angle -> plan.words(
                                "sawn-as-read",
                                "sawn: {angle}; drawn {drawn}, the lines above are those of the angle read")
                        .with("angle", Kind.ESTIMATE, angle)
                        .with(
                                "drawn",
                                Kind.AMOUNT,
                                plan.neck().head().orElseThrow().angle()))
                .orElse(plan.words("sawn", "sawn; its angle has not been read and is taken as drawn"));
    }

    /** Stops and marks run from the blank's head end, the board's marks from the shaft's: one nut line must serve both. */
    private static PlanCheck nutLine(Stages plan, ScarfBoard board) {
        double needed = board.length().libraryValue() - plan.shape().shaftEndMm();
        double there = plan.blank().nutFromHeadEndMm();
        boolean enough = there >= needed;
        return new PlanCheck(
                CheckCode.NUT_LINE_LEAVES_ROOM,
                new Finding.Computed(
                        plan.style().amount(there), Limits.atLeast(plan.style().amount(needed)), Outcome.OPEN),
                StockParts.fromHeadEnd(plan, there),
                plan.words("at-least", "{least:brief} or more").with("least", Kind.MM, needed),
                enough
                        ? plan.words("same-end", "Lay out nut line, stops and saw cut from the same end.")
                        : plan.words(
                                "move-the-nut-line",
                                "Lay the nut line out farther in, or the stops and the saw cut do not share one blank."));
    }

    private static PlanPart frets(Stages plan) {
        Neck design = plan.neck();
        PlanSection.Draft draft = PlanSection.titled(SectionCode.FRETS, plan.style());
        for (Fret fret : FretTable.of(design).frets()) {
            double x = fret.fromNutMm();
            draft.row(
                    BoardParts.key(fret.number()),
                    BoardParts.label(draft, fret.number()),
                    draft.words("fret", "{fromNut:text}, board {width:text} wide")
                            .with("fromNut", Kind.MM, x)
                            .with("width", Kind.MM, 2 * design.halfWidthAtMm(x)));
        }
        draft.note("from-the-nut", "Measure every fret from the nut: added steps add their errors.");
        boolean zero = design.fingerboard().hasZeroFret();
        if (zero) {
            draft.note(
                    "zero-fret",
                    "A zero fret lies on the nut line and carries the strings. The nut behind it only spaces them: its slots are lower"
                            + " than the zero fret.");
        }
        List<PlanCheck> checks = new ArrayList<>();
        design.neckSet().filter(set -> zero).ifPresent(set -> checks.add(zeroFret(plan, set)));
        if (design.frets() >= design.bodyAtFret()) {
            return new PlanPart(draft.done(), checks);
        }
        checks.add(new PlanCheck(
                CheckCode.FRETS_REACH_THE_BODY,
                new Finding.Computed(
                        plan.style().amount(design.scale().fretMm(design.frets())),
                        Limits.atLeast(plan.style().amount(design.bodyJointMm())),
                        Outcome.OPEN),
                draft.words("frets", "{frets} frets, body at fret {body}")
                        .with("frets", Kind.WHOLE, design.frets())
                        .with("body", Kind.WHOLE, design.bodyAtFret()),
                draft.words("frets-at-least", "{body} frets or more").with("body", Kind.WHOLE, design.bodyAtFret()),
                draft.words("ask", "Correct one of the two.")));
        return new PlanPart(draft.done(), checks);
    }

    /** Over the tops of the others; common practice: none to a tenth higher. */
    private static PlanCheck zeroFret(Stages plan, NeckSet set) {
        Amount<Length> higher = plan.style().amount(set.heights().atNut().libraryValue());
        Finding finding = new Finding.Computed(
                higher, Limits.between(plan.style().amount(0), plan.style().amount(ZERO_FRET_MOST_MM)), Outcome.OPEN);
        return new PlanCheck(
                CheckCode.ZERO_FRET,
                finding,
                plan.words("higher", "{higher:small} over the other frets")
                        .with("higher", Kind.MM, higher.libraryValue()),
                plan.words("zero-fret-most", "none to {most:small} (common practice)")
                        .with("most", Kind.MM, ZERO_FRET_MOST_MM),
                finding.outcome() == Outcome.OK
                        ? plan.words("same-wire", "The same wire, or one a little higher; level it last.")
                        : plan.words(
                                "lower-zero-fret", "A zero fret of wire no more than that higher: neck set, at nut."));
    }

    /** Where the slanted lines meet the board's edges. */
    private static PlanPart fanned(Stages plan, FannedFrets fan) {
        Neck design = plan.neck();
        PlanSection.Draft draft =
                PlanSection.titled(SectionCode.FANNED_FRETS, plan.style()).row("frets", "frets", fan);
        for (int fret = 0; fret <= design.frets(); fret++) {
            draft.row(
                    BoardParts.key(fret),
                    BoardParts.label(draft, fret),
                    draft.words("fanned-fret", "bass {bass:text}, treble {treble:text}")
                            .with("bass", Kind.MM, fan.onBassEdge(fret, design).libraryValue())
                            .with(
                                    "treble",
                                    Kind.MM,
                                    fan.onTrebleEdge(fret, design).libraryValue()));
        }
        return PlanPart.of(draft.note(
                "along-the-centreline",
                "All along the centreline from where the nut line crosses it; negative before the nut."));
    }

    private static PlanPart noNeckSet(Stages plan, Fault why) {
        return PlanPart.unanswered(
                plan,
                SectionCode.NECK_ANGLE,
                CheckCode.NECK_ANGLE,
                new Finding.NoSolution(why),
                why,
                "an angle that brings the strings to the saddle",
                plan.words("change-the-neck-set", "Change the saddle's height, the overstand or the action."));
    }

    private static PlanPart neckSet(Stages plan, BackSet set) {
        PlanSection.Draft draft = PlanSection.titled(SectionCode.NECK_ANGLE, plan.style())
                .row("angle", "angle", set.angle())
                .row("heelFace", "heel face", set.heelFace());
        return PlanPart.of(draft, action(plan, plan.neck().neckSet().orElseThrow()));
    }

    /** A string is straight: where it is lower at half the scale than at the nut, it comes nearer every fret up to the last. */
    private static PlanCheck action(Stages plan, NeckSet set) {
        StringHeights heights = set.heights();
        double bass = heights.action().libraryValue() - heights.atNut().libraryValue();
        boolean treble =
                heights.trebleAction().libraryValue() - heights.trebleAtNut().libraryValue() < bass;
        Amount<Length> high = treble ? heights.trebleAction() : heights.action();
        Amount<Length> atNut = treble ? heights.trebleAtNut() : heights.atNut();
        Finding finding = new Finding.Computed(high, Limits.atLeast(atNut), Outcome.OPEN);
        return new PlanCheck(
                CheckCode.ACTION_ABOVE_THE_NUT,
                finding,
                plan.words("action", "{action} at half the scale").with("action", Kind.AMOUNT, high),
                plan.words("height-at-nut", "{atNut} or more, the height at the nut")
                        .with("atNut", Kind.AMOUNT, atNut),
                finding.outcome() == Outcome.OK
                        ? plan.neck().fingerboard().hasZeroFret()
                                ? plan.words("below-the-zero-fret", "Cut the nut's slots lower than the zero fret.")
                                : plan.words("cut-the-slots", "Cut the nut's slots to that height.")
                        : plan.words("lower-the-slots", "Cut the nut's slots lower, or give the strings more action."));
    }

    /** The body's end is taken as square to its top, and the mating face as high as the heel. */
    private static PlanPart heel(Stages plan, Heel heel) {
        PlanSection.Draft draft = PlanSection.titled(SectionCode.HEEL, plan.style())
                .row("stack", "stack", plan.shape().heelBlocks().orElseThrow());
        List<PlanCheck> checks = new ArrayList<>();
        heel.dovetail().ifPresent(seat -> {
            draft.row("dovetail", "dovetail", seat);
            seat.widthAtEnd().ifPresent(width -> checks.add(dovetail(plan, heel, seat, width)));
        });
        heel.tenon().ifPresent(tenon -> draft.row("tenon", "tenon", tenon));
        heel.tenon().filter(Tenon::isBolted).ifPresent(tenon -> checks.add(tenon(heel, draft, tenon)));
        checks.addAll(HeelKindParts.checks(plan, draft, heel));
        channelEnd(plan, draft).ifPresent(checks::add);
        plan.neck().back().heelTransition().ifPresent(turn -> checks.add(reachesTheHeel(plan, heel)));
        checks.addAll(atBridge(plan, draft));
        return new PlanPart(draft.done(), checks);
    }

    /** What the channel leaves of the joint; nothing where the mating face has no angle. */
    private static Optional<PlanCheck> channelEnd(Stages plan, PlanSection.Draft draft) {
        if (plan.shape().noNeckSet().isPresent()) {
            return Optional.empty();
        }
        Optional<ChannelEnd> there =
                plan.shape().solid().asMade(plan.floor().wood()).channelEnd();
        there.ifPresent(end -> draft.row("channelEnd", "channel", end));
        return there.flatMap(
                end -> end.wood().map(wood -> clear(plan, wood, end.place().orElseThrow())));
    }

    private static PlanCheck clear(Stages plan, Amount<Length> wood, ChannelEnd.Place place) {
        Finding finding = new Finding.Remaining(wood);
        return new PlanCheck(
                CheckCode.CHANNEL_CLEAR_OF_THE_JOINT,
                finding,
                Clearance.of(
                                plan,
                                wood,
                                "wood-to-the-joint",
                                "{clear} to {place}",
                                "channel-in-the-joint",
                                "the channel runs {clear} into {place}")
                        .with("place", Kind.code(ChannelEnd.Place.class), place),
                plan.words("some-wood", "some wood to its walls, its ends and its holes"),
                finding.outcome() == Outcome.OK
                        ? plan.words("cut-to-the-mark", "Stop the channel at its mark.")
                        : switch (place) {
                            case SIDE ->
                                plan.words("wider-shoulder", "End the channel sooner, or make the dovetail wider.");
                            case LOWER_END ->
                                plan.words("higher-joint", "End the channel sooner, or make the joint higher.");
                            case FAR_END ->
                                plan.words("longer-joint", "End the channel sooner, or make the joint longer.");
                            case HOLE -> plan.words("lower-holes", "End the channel sooner, or drill the holes lower.");
                        });
    }

    /** Where a turn begins too late, or is too flat, the back is still above the heel's cap at the body joint. */
    private static PlanCheck reachesTheHeel(Stages plan, Heel heel) {
        double deep = plan.shape().solid().depth().valueAt(plan.neck().bodyJointMm());
        Finding finding = new Finding.Computed(
                plan.style().amount(deep),
                Limits.atLeast(plan.style().amount(heel.heightMm() * (1 - HAIR))),
                Outcome.OPEN);
        return new PlanCheck(
                CheckCode.BACK_REACHES_THE_HEEL,
                finding,
                plan.words("back-at-joint", "back {deep:brief} deep at the body joint")
                        .with("deep", Kind.MM, deep),
                plan.words("heel-height", "{height:brief}, the heel's height").with("height", Kind.MM, heel.heightMm()),
                finding.outcome() == Outcome.OK
                        ? plan.words("carve-the-turn", "Carve the turn down to the cap.")
                        : plan.words(
                                "earlier-turn", "Begin the turn nearer the nut, or make it steeper; or a lower heel."));
    }

    private static PlanCheck dovetail(Stages plan, Heel heel, Dovetail seat, Amount<Length> width) {
        boolean inside = width.libraryValue() < heel.widthMm();
        return new PlanCheck(
                CheckCode.DOVETAIL_INSIDE_THE_HEEL,
                new Finding.Remaining(plan.style().amount(heel.widthMm() - width.libraryValue())),
                plan.words("dovetail", "{height:brief} high, {width:brief} wide")
                        .with("height", Kind.MM, seat.below().orElseThrow().libraryValue())
                        .with("width", Kind.MM, width.libraryValue()),
                plan.words("heel", "no higher than the heel's {height:brief}, less than its {width:brief} of width")
                        .with("height", Kind.MM, heel.heightMm())
                        .with("width", Kind.MM, heel.widthMm()),
                inside
                        ? plan.words("cut-while-square", "Cut it while the heel is square.")
                        : plan.words("smaller-joint", "A lower or narrower dovetail, or a larger heel."));
    }

    private static PlanCheck tenon(Heel heel, PlanSection.Draft draft, Tenon tenon) {
        double wood = tenon.leastWood().libraryValue();
        draft.note(
                "holes-in-the-body",
                "Holes in the body: wide enough for the neck to shift; finger tight is enough (common" + " practice).");
        return new PlanCheck(
                CheckCode.BOLTS_INSIDE,
                new Finding.Remaining(tenon.leastWood()),
                draft.words("around-a-hole", "{wood:text} of wood around a hole, tenon {height:brief} high")
                        .with("wood", Kind.MM, wood)
                        .with("height", Kind.MM, tenon.height().libraryValue()),
                draft.words("some-wood", "some wood around every hole, tenon no higher than the heel's {height:brief}")
                        .with("height", Kind.MM, heel.heightMm()),
                wood > 0
                        ? draft.words("cut-while-square", "Drill while the heel is square.")
                        : draft.words("move-the-holes", "Move the holes, or make the tenon longer or lower."));
    }

    /** What was read at the bridge with a straightedge or a string, and what comes off the heel for it. */
    private static List<PlanCheck> atBridge(Stages plan, PlanSection.Draft draft) {
        boolean isFitted = plan.neck().heel().filter(Heel::isFittedByItsFace).isPresent();
        plan.state()
                .heelCorners()
                .filter(corners -> isFitted)
                .ifPresent(corners -> draft.row("takeOff", "take off", corners));
        return plan.measured()
                .of(NeckFeature.HEIGHT_AT_BRIDGE)
                .map(high -> List.of(projection(
                        plan, plan.state().known(BudgetCode.PROJECTION_HEIGHT).estimate())))
                .orElse(List.of());
    }

    private static PlanCheck projection(Stages plan, Estimate<Length> high) {
        Limits<Length> limits = plan.job().limits(BudgetCode.PROJECTION_HEIGHT);
        Finding finding = new Finding.Measured(Verdict.of(high, limits), Outcome.OPEN);
        return new PlanCheck(
                CheckCode.PROJECTION_HEIGHT,
                finding,
                plan.words("too-high", "{size}, too " + (high.libraryValue() < 0 ? "low" : "high"))
                        .with("height", Kind.ESTIMATE, high)
                        .with(
                                "size",
                                Kind.ESTIMATE,
                                Estimate.ofLibrary(
                                        Math.abs(high.libraryValue()),
                                        high.libraryUncertainty(),
                                        high.degreesOfFreedom(),
                                        high.unit())),
                plan.words("limit", "{limit} (common practice: the saddle takes up the rest)")
                        .with("limit", Kind.LIMITS, limits),
                finding.outcome() == Outcome.OK
                        ? plan.words("leave-the-heel", "Leave the heel at that.")
                        : plan.neck().heel().filter(Heel::isFittedByItsFace).isPresent()
                                ? plan.words("take-off-the-heel", BudgetParts.TAKE_OFF)
                                : plan.words(
                                        "no-heel-to-take-off",
                                        "A shim in the pocket, or another height of saddle or board."));
    }
}
