package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.Fret;
import org.neckgeom.board.FretTable;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.head.SlantedScarf;
import org.neckgeom.heel.BackSet;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Tenon;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** The parts of a plan that belong to the neck's shape: scarf, frets, neck angle, heel; and the order of all of them. */
final class ShapeParts {

    /** How far the line of the frets may miss its height at the bridge; common practice, from memory. */
    private static final double PROJECTION_MM = 0.5;

    private static final double PROJECTION_THOU = 20;

    private ShapeParts() {}

    static List<PlanPart> of(NeckPlan plan) {
        List<PlanPart> parts = new ArrayList<>();
        StockParts.of(plan).ifPresent(parts::add);
        plan.asMade().scarf().ifPresent(joint -> parts.add(scarf(plan, joint)));
        OnePieceParts.of(plan).ifPresent(parts::add);
        HeadParts.of(plan).ifPresent(parts::add);
        parts.add(frets(plan));
        FannedFrets.of(plan.design()).ifPresent(fan -> parts.add(fanned(plan, fan)));
        parts.addAll(BoardParts.of(plan));
        parts.addAll(BackParts.of(plan));
        plan.neckSet().ifPresent(set -> parts.add(neckSet(plan, set)));
        plan.design().heel().ifPresent(heel -> parts.add(heel(plan, heel)));
        return parts;
    }

    private static PlanPart scarf(NeckPlan plan, ScarfJoint joint) {
        PlanSection.Draft draft =
                PlanSection.titled("scarf", "Scarf", plan.style()).row("joint", "joint", joint);
        Head head = plan.design().head().orElse(null);
        if (plan.isDone(Operation.CUT_SCARF)) {
            return PlanPart.of(draft.row("done", "done", sawn(plan)));
        }
        if (head == null) {
            return PlanPart.of(draft);
        }
        double shaftEnd = StockParts.shaftEndMm(plan);
        ScarfBoard board =
                joint.board(plan.style().amount(shaftEnd), plan.style().amount(head.lengthMm()));
        draft.row("board", "board", board);
        boolean reaches = board.length().libraryValue() <= plan.blank().lengthMm();
        return PlanPart.of(
                draft.note(
                        "shaft-end",
                        "the shaft is reckoned to the "
                                + (shaftEnd > plan.design().bodyJointMm()
                                        ? "end of its tenon or dovetail"
                                        : "body joint")
                                + "; what is over makes the heel blocks"),
                StockParts.reaches(
                        plan,
                        board.length().libraryValue(),
                        reaches
                                ? draft.words("saw-once", "One saw cut does it.")
                                : draft.words("longer-blank", "Take a longer blank, or the head from another board.")),
                nutLine(plan, board));
    }

    private static Statement sawn(NeckPlan plan) {
        return plan.readings()
                .scarfAngle()
                .map(angle -> plan.words(
                                "sawn-as-read",
                                "sawn: {angle}; drawn {drawn}, the lines above are those of the angle read")
                        .with("angle", Kind.ESTIMATE, angle)
                        .with(
                                "drawn",
                                Kind.AMOUNT,
                                plan.design().head().orElseThrow().angle()))
                .orElse(plan.words("sawn", "sawn; its angle has not been read and is taken as drawn"));
    }

    /** Stops and marks run from the blank's head end, the board's marks from the shaft's: one nut line must serve both. */
    private static PlanCheck nutLine(NeckPlan plan, ScarfBoard board) {
        double needed = board.length().libraryValue() - StockParts.shaftEndMm(plan);
        double there = plan.blank().nutFromHeadEndMm();
        boolean enough = there >= needed;
        return PlanCheck.of(
                "nut-line-leaves-room",
                "nut line leaves room for head and saw cut",
                enough ? Outcome.GOOD : Outcome.OPEN,
                StockParts.fromHeadEnd(plan, there),
                plan.words("at-least", "{least:brief} or more").with("least", Kind.MM, needed),
                enough
                        ? plan.words("same-end", "Lay out nut line, stops and saw cut from the same end.")
                        : plan.words(
                                "move-the-nut-line",
                                "Lay the nut line out farther in, or the stops and the saw cut do not share one blank."));
    }

    private static PlanPart frets(NeckPlan plan) {
        Neck design = plan.design();
        PlanSection.Draft draft =
                PlanSection.titled(PlanSection.FRETS, "Frets and stations, from the nut", plan.style());
        for (Fret fret : FretTable.of(design).frets()) {
            double x = fret.fromNutMm();
            draft.row(
                    key(fret.number()),
                    label(draft, fret.number()),
                    draft.words("fret", "{fromNut:text}, board {width:text} wide")
                            .with("fromNut", Kind.MM, x)
                            .with("width", Kind.MM, 2 * design.halfWidthAtMm(x)));
        }
        draft.note("from-the-nut", "measure every fret from the nut: steps added up add up their errors");
        if (design.frets() >= design.bodyAtFret()) {
            return PlanPart.of(draft);
        }
        return PlanPart.of(
                draft,
                PlanCheck.of(
                        "frets-reach-the-body",
                        "frets reach the body",
                        Outcome.OPEN,
                        draft.words("frets", "{frets} frets, body at fret {body}")
                                .with("frets", Kind.WHOLE, design.frets())
                                .with("body", Kind.WHOLE, design.bodyAtFret()),
                        draft.words("frets-at-least", "{body} frets or more")
                                .with("body", Kind.WHOLE, design.bodyAtFret()),
                        draft.words("ask", "Is one of the two a slip?")));
    }

    /** Of the row of a fret; the nut is fret 0. */
    static String key(int fret) {
        return fret == 0 ? "nut" : "fret" + fret;
    }

    static Statement label(PlanSection.Draft draft, int fret) {
        return fret == 0
                ? draft.words("nut", "nut")
                : draft.words("fret", "fret {fret}").with("fret", Kind.WHOLE, fret);
    }

    /** Where the slanted lines meet the board's edges, and the saws for a scarf behind a slanted nut. */
    private static PlanPart fanned(NeckPlan plan, FannedFrets fan) {
        Neck design = plan.design();
        PlanSection.Draft draft = PlanSection.titled(
                        PlanSection.FANNED, "Fanned frets, at the board's edges", plan.style())
                .row("frets", "frets", fan);
        for (int fret = 0; fret <= design.frets(); fret++) {
            draft.row(
                    key(fret),
                    label(draft, fret),
                    draft.words("fanned-fret", "bass {bass:text}, treble {treble:text}")
                            .with("bass", Kind.MM, fan.onBassEdge(fret, design).libraryValue())
                            .with(
                                    "treble",
                                    Kind.MM,
                                    fan.onTrebleEdge(fret, design).libraryValue()));
        }
        double slant = fan.slant(0).libraryValue();
        design.head()
                .filter(head -> plan.scarf().isPresent() && slant != 0)
                .ifPresent(head -> draft.row(
                        "scarf",
                        "scarf",
                        SlantedScarf.of(
                                Amount.ofLibrary(head.angleRad(), ShopUnit.DEGREE),
                                Amount.ofLibrary(slant, ShopUnit.DEGREE))));
        return PlanPart.of(draft.note(
                "along-the-centreline",
                "all along the centreline from where the nut line crosses it; less than 0 before the nut"));
    }

    private static PlanPart neckSet(NeckPlan plan, BackSet set) {
        Amount<Angle> step = ShopUnits.deg(0.1);
        PlanSection.Draft draft = PlanSection.titled("neck-angle", "Neck angle", plan.style())
                .row("angle", "angle", set.angle())
                .row("heelFace", "heel face", set.heelFace());
        return PlanPart.of(draft.row(
                "tenthOfADegree",
                draft.words("more", "{step} more").with("step", Kind.AMOUNT, step),
                set.actionPer(step)));
    }

    /** The body's end is taken as square to its top, and the mating face as high as the heel is told to be. */
    private static PlanPart heel(NeckPlan plan, Heel heel) {
        PlanSection.Draft draft = PlanSection.titled("heel", "Heel", plan.style())
                .row("stack", "stack", StockParts.heel(plan).orElseThrow());
        Amount<Length> low = plan.style().nearMillimetre();
        Amount<Length> off = low.times(0.5);
        plan.neckSet()
                .ifPresent(set -> draft.row(
                                "tooLow",
                                draft.words("too-low", "{low:brief} too low at the bridge")
                                        .with("low", Kind.MM, low.libraryValue()),
                                set.wedge(plan.style().amount(heel.heightMm()), low))
                        .row(
                                "offItsMiddle",
                                draft.words("off-its-middle", "{off:brief} off its middle")
                                        .with("off", Kind.MM, off.libraryValue()),
                                set.cheek(plan.style().amount(heel.widthMm()), off)));
        List<PlanCheck> checks = new ArrayList<>();
        heel.dovetail().ifPresent(seat -> {
            draft.row("dovetail", "dovetail", seat);
            seat.widthAtEnd().ifPresent(width -> checks.add(dovetail(plan, heel, seat, width)));
        });
        heel.tenon().ifPresent(tenon -> checks.add(tenon(heel, draft.row("tenon", "tenon", tenon), tenon)));
        checks.addAll(atBridge(plan, draft));
        return new PlanPart(draft.done(), checks);
    }

    private static PlanCheck dovetail(NeckPlan plan, Heel heel, Dovetail seat, Amount<Length> width) {
        boolean inside = width.libraryValue() < heel.widthMm();
        return PlanCheck.of(
                "dovetail-inside-the-heel",
                "dovetail inside the heel",
                inside ? Outcome.GOOD : Outcome.STOP,
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
                "the bolts' holes in the body are wide enough for the neck to shift; finger tight is enough (common"
                        + " practice)");
        return PlanCheck.of(
                "bolts-inside",
                "bolts inside tenon and heel",
                wood > 0 ? Outcome.GOOD : Outcome.STOP,
                draft.words("around-a-hole", "{wood:text} of wood around a hole, tenon {height:brief} high")
                        .with("wood", Kind.MM, wood)
                        .with("height", Kind.MM, tenon.height().libraryValue()),
                draft.words("some-wood", "some wood around every hole, tenon no higher than the heel's {height:brief}")
                        .with("height", Kind.MM, heel.heightMm()),
                wood > 0
                        ? draft.words("cut-while-square", "Drill while the heel is square.")
                        : draft.words("move-the-holes", "Move the holes, or make the tenon longer or lower."));
    }

    /** What was read at the bridge with a straightedge or a string, and what it asks off the heel. */
    private static List<PlanCheck> atBridge(NeckPlan plan, PlanSection.Draft draft) {
        plan.asMade().heelCorners().ifPresent(corners -> draft.row("takeOff", "take off", corners));
        return plan.readings()
                .of(NeckFeature.HEIGHT_AT_BRIDGE)
                .map(high -> List.of(projection(plan, high)))
                .orElse(List.of());
    }

    private static PlanCheck projection(NeckPlan plan, Estimate<Length> high) {
        double limit =
                plan.style() == LengthStyle.MILLIMETRES ? PROJECTION_MM : ShopUnit.THOU.toLibrary(PROJECTION_THOU);
        Limits<Length> limits = Limits.within(plan.style().amount(limit));
        Outcome outcome = AsMade.outcome(Verdict.of(high, limits)) == Outcome.GOOD ? Outcome.GOOD : Outcome.OPEN;
        return PlanCheck.of(
                "projection-height",
                "projection height at the bridge",
                outcome,
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
                outcome == Outcome.GOOD
                        ? plan.words("leave-the-heel", "Leave the heel at that.")
                        : plan.words("take-off-the-heel", BudgetParts.TAKE_OFF));
    }
}
