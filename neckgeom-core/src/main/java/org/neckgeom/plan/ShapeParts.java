package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.Fret;
import org.neckgeom.board.FretTable;
import org.neckgeom.design.Head;
import org.neckgeom.design.Heel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.head.SlantedScarf;
import org.neckgeom.heel.DovetailSeat;
import org.neckgeom.heel.NeckSet;
import org.neckgeom.heel.TenonBolts;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
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
        AsMade.of(plan).scarf().ifPresent(joint -> parts.add(scarf(plan, joint)));
        OnePieceParts.of(plan).ifPresent(parts::add);
        HeadParts.of(plan).ifPresent(parts::add);
        parts.add(frets(plan));
        plan.details().fannedFrets().ifPresent(fan -> parts.add(fanned(plan, fan)));
        parts.addAll(BoardParts.of(plan));
        parts.addAll(BackParts.of(plan));
        plan.neckSet().ifPresent(set -> parts.add(neckSet(plan, set)));
        plan.design().heel().ifPresent(heel -> parts.add(heel(plan, heel)));
        return parts;
    }

    private static PlanPart scarf(NeckPlan plan, ScarfJoint joint) {
        PlanSection.Draft draft = PlanSection.titled("Scarf").row("joint", joint.text(plan.style()));
        Head head = plan.design().head().orElse(null);
        if (plan.isDone("cut scarf")) {
            return PlanPart.of(draft.row("done", sawn(plan)));
        }
        if (head == null) {
            return PlanPart.of(draft);
        }
        double shaftEnd = StockParts.shaftEndMm(plan);
        ScarfBoard board =
                joint.board(plan.style().amount(shaftEnd), plan.style().amount(head.lengthMm()));
        draft.row("board", board.text(plan.style()));
        boolean reaches = board.lengthMm() <= plan.blank().lengthMm();
        return PlanPart.of(
                draft.note("the shaft is reckoned to the "
                        + (shaftEnd > plan.design().bodyJointMm() ? "end of its tenon or dovetail" : "body joint")
                        + "; what is over makes the heel blocks"),
                new PlanCheck(
                        "blank reaches for shaft and head",
                        reaches ? Outcome.GOOD : Outcome.STOP,
                        plan.blank().length().toString(),
                        plan.style().brief(board.lengthMm()) + " or more",
                        reaches ? "One saw cut does it." : "Take a longer blank, or the head from another board."),
                nutLine(plan, board));
    }

    private static String sawn(NeckPlan plan) {
        return plan.readings()
                .scarfAngle()
                .map(angle -> "sawn: " + angle + "; drawn "
                        + plan.design().head().orElseThrow().pitch() + ", the lines above are those of the angle read")
                .orElse("sawn; its angle has not been read and is taken as drawn");
    }

    /** Stops and marks run from the blank's head end, the board's marks from the shaft's: one nut line must serve both. */
    private static PlanCheck nutLine(NeckPlan plan, ScarfBoard board) {
        double needed = board.lengthMm() - StockParts.shaftEndMm(plan);
        double there = plan.blank().nutFromHeadEndMm();
        boolean enough = there >= needed;
        return new PlanCheck(
                "nut line leaves room for head and saw cut",
                enough ? Outcome.GOOD : Outcome.OPEN,
                plan.style().brief(there) + " from the head end",
                plan.style().brief(needed) + " or more",
                enough
                        ? "Lay out nut line, stops and saw cut from the same end."
                        : "Lay the nut line out farther in, or the stops and the saw cut do not share one blank.");
    }

    private static PlanPart frets(NeckPlan plan) {
        NeckDesign design = plan.design();
        PlanSection.Draft draft = PlanSection.titled(PlanSection.FRETS);
        for (Fret fret : FretTable.of(design).frets()) {
            double x = fret.fromNutMm();
            draft.row(
                    fret.number() == 0 ? "nut" : "fret " + fret.number(),
                    plan.style().text(x) + ", board " + plan.style().text(2 * design.halfWidthAtMm(x)) + " wide");
        }
        draft.note("measure every fret from the nut: steps added up add up their errors");
        if (design.frets() >= design.bodyAtFret()) {
            return PlanPart.of(draft);
        }
        return PlanPart.of(
                draft,
                new PlanCheck(
                        "frets reach the body",
                        Outcome.OPEN,
                        design.frets() + " frets, body at fret " + design.bodyAtFret(),
                        design.bodyAtFret() + " frets or more",
                        "Is one of the two a slip?"));
    }

    /** Where the slanted lines meet the board's edges, and the saws for a scarf behind a slanted nut. */
    private static PlanPart fanned(NeckPlan plan, FannedFrets fan) {
        NeckDesign design = plan.design();
        PlanSection.Draft draft =
                PlanSection.titled("Fanned frets, at the board's edges").row("frets", fan);
        for (int fret = 0; fret <= design.frets(); fret++) {
            draft.row(
                    fret == 0 ? "nut" : "fret " + fret,
                    "bass " + plan.style().text(fan.onBassEdge(fret, design).house()) + ", treble "
                            + plan.style().text(fan.onTrebleEdge(fret, design).house()));
        }
        double slant = fan.slant(0).house();
        design.head()
                .filter(head -> plan.scarf().isPresent() && slant != 0)
                .ifPresent(head -> draft.row(
                        "scarf",
                        SlantedScarf.of(
                                Amount.ofHouse(head.pitchRad(), ShopUnit.DEGREE),
                                Amount.ofHouse(slant, ShopUnit.DEGREE))));
        if (design.hasStrings() && design.strings().tensionsN().length == 0) {
            draft.note(
                    "the strings' pull is reckoned on the centreline's scale: tell tensions to have each on its own");
        }
        return PlanPart.of(
                draft.note("all along the centreline from where the nut line crosses it; less than 0 before the nut"));
    }

    private static PlanPart neckSet(NeckPlan plan, NeckSet set) {
        return PlanPart.of(PlanSection.titled("Neck angle")
                .row("angle", set.angle().text(plan.style()))
                .row("heel face", set.heelFace())
                .row("0.1 deg more", set.actionPer(ShopUnits.deg(0.1)).text(plan.style())));
    }

    /** The body's end is taken as square to its top, and the mating face as high as the heel is told to be. */
    private static PlanPart heel(NeckPlan plan, Heel heel) {
        PlanSection.Draft draft =
                PlanSection.titled("Heel").row("stack", StockParts.heel(plan).orElseThrow());
        Amount<Length> low = plan.style().nearMillimetre();
        Amount<Length> off = low.times(0.5);
        plan.neckSet()
                .ifPresent(set -> draft.row(
                                plan.style().brief(low.house()) + " too low at the bridge",
                                set.wedge(plan.style().amount(heel.heightMm()), low)
                                        .text(plan.style()))
                        .row(
                                plan.style().brief(off.house()) + " off its middle",
                                set.cheek(plan.style().amount(heel.widthMm()), off)
                                        .text(plan.style())));
        List<PlanCheck> checks = new ArrayList<>();
        plan.details().dovetail().ifPresent(seat -> {
            draft.row("dovetail", seat.text(plan.style()));
            if (seat.hasSize()) {
                checks.add(dovetail(plan, heel, seat));
            }
        });
        plan.details()
                .tenon()
                .ifPresent(tenon -> checks.add(tenon(plan, heel, draft.row("tenon", tenon.text(plan.style())), tenon)));
        checks.addAll(atBridge(plan, draft));
        return new PlanPart(draft.done(), checks);
    }

    private static PlanCheck dovetail(NeckPlan plan, Heel heel, DovetailSeat seat) {
        LengthStyle style = plan.style();
        boolean inside = seat.heightMm() <= heel.heightMm() && seat.endMm() < heel.widthMm();
        return new PlanCheck(
                "dovetail inside the heel",
                inside ? Outcome.GOOD : Outcome.STOP,
                style.brief(seat.heightMm()) + " high, " + style.brief(seat.endMm()) + " wide",
                "no higher than the heel's " + style.brief(heel.heightMm()) + ", less than its "
                        + style.brief(heel.widthMm()) + " of width",
                inside ? "Cut it while the heel is square." : "A lower or narrower dovetail, or a larger heel.");
    }

    private static PlanCheck tenon(NeckPlan plan, Heel heel, PlanSection.Draft draft, TenonBolts tenon) {
        double wood = tenon.leastWood().house();
        boolean inHeel = tenon.height().house() <= heel.heightMm();
        draft.note("the bolts' holes in the body are wide enough for the neck to shift; finger tight is enough (common"
                + " practice)");
        return new PlanCheck(
                "bolts inside tenon and heel",
                wood > 0 && inHeel ? Outcome.GOOD : Outcome.STOP,
                plan.style().text(wood) + " of wood around a hole, tenon "
                        + plan.style().brief(tenon.height().house()) + " high",
                "some wood around every hole, tenon no higher than the heel's "
                        + plan.style().brief(heel.heightMm()),
                wood > 0 && inHeel
                        ? "Drill while the heel is square."
                        : "Move the holes, or make the tenon longer or lower.");
    }

    /** What was read at the bridge with a straightedge or a string, and what it asks off the heel. */
    private static List<PlanCheck> atBridge(NeckPlan plan, PlanSection.Draft draft) {
        AsMade.of(plan).heelCorners().ifPresent(corners -> draft.row("take off", corners.text(plan.style())));
        return plan.readings()
                .of(NeckFeature.HEIGHT_AT_BRIDGE)
                .map(high -> List.of(projection(plan, high)))
                .orElse(List.of());
    }

    private static PlanCheck projection(NeckPlan plan, Estimate<Length> high) {
        double limit = plan.style() == LengthStyle.MILLIMETRES ? PROJECTION_MM : ShopUnit.THOU.toHouse(PROJECTION_THOU);
        Limits<Length> limits = Limits.within(plan.style().amount(limit));
        Outcome outcome = AsMade.outcome(Verdict.of(high, limits)) == Outcome.GOOD ? Outcome.GOOD : Outcome.OPEN;
        return new PlanCheck(
                "projection height at the bridge",
                outcome,
                Estimate.ofHouse(
                                Math.abs(high.valueHouse()),
                                high.uncertaintyHouse(),
                                high.degreesOfFreedom(),
                                high.unit())
                        + (high.valueHouse() < 0 ? ", too low" : ", too high"),
                limits + " (common practice: the saddle takes up the rest)",
                outcome == Outcome.GOOD
                        ? "Leave the heel at that."
                        : "Take off what the heel's corners ask for, a part at a time, and read again.");
    }
}
