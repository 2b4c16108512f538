package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.design.Head;
import org.neckgeom.design.Heel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.geometry.Fret;
import org.neckgeom.geometry.FretTable;
import org.neckgeom.geometry.NeckSet;
import org.neckgeom.geometry.ScarfBoard;
import org.neckgeom.geometry.ScarfJoint;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The parts of a plan that belong to the neck's shape: scarf, frets, neck angle, heel; and the order of all of them. */
final class ShapeParts {

    private static final Amount<Length> ONE_AT_BRIDGE = ShopUnits.mm(1);
    private static final Amount<Length> HALF_AT_BRIDGE = ShopUnits.mm(0.5);

    private ShapeParts() {}

    static List<PlanPart> of(NeckPlan plan) {
        List<PlanPart> parts = new ArrayList<>();
        StockParts.of(plan).ifPresent(parts::add);
        plan.scarf().ifPresent(joint -> parts.add(scarf(plan, joint)));
        HeadParts.of(plan).ifPresent(parts::add);
        parts.add(frets(plan));
        parts.addAll(BoardParts.of(plan));
        parts.addAll(BackParts.of(plan));
        plan.neckSet().ifPresent(set -> parts.add(neckSet(set)));
        plan.design().heel().ifPresent(heel -> parts.add(heel(plan, heel)));
        return parts;
    }

    private static PlanPart scarf(NeckPlan plan, ScarfJoint joint) {
        PlanSection.Draft draft = PlanSection.titled("Scarf").row("joint", joint);
        Head head = plan.design().head().orElse(null);
        if (head == null) {
            return PlanPart.of(draft);
        }
        ScarfBoard board = joint.board(
                plan.style().amount(plan.design().bodyJointMm()), plan.style().amount(head.lengthMm()));
        draft.row("board", board);
        boolean reaches = board.lengthMm() <= plan.blank().lengthMm();
        return PlanPart.of(
                draft.note("the shaft is reckoned to the body joint; what is over makes the heel blocks"),
                new PlanCheck(
                        "blank reaches for shaft and head",
                        reaches ? Outcome.GOOD : Outcome.STOP,
                        plan.blank().length().toString(),
                        plan.style().brief(board.lengthMm()) + " or more",
                        reaches ? "One saw cut does it." : "Take a longer blank, or the head from another board."),
                nutLine(plan, board));
    }

    /** Stops and marks run from the blank's head end, the board's marks from the shaft's: one nut line must serve both. */
    private static PlanCheck nutLine(NeckPlan plan, ScarfBoard board) {
        double needed = board.lengthMm() - plan.design().bodyJointMm();
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

    private static PlanPart neckSet(NeckSet set) {
        return PlanPart.of(PlanSection.titled("Neck angle")
                .row("angle", set.angle())
                .row("heel face", set.heelFace())
                .row("0.1 deg more", set.actionPer(ShopUnits.deg(0.1))));
    }

    /** The body's end is taken as square to its top, and the mating face as high as the heel is told to be. */
    private static PlanPart heel(NeckPlan plan, Heel heel) {
        PlanSection.Draft draft =
                PlanSection.titled("Heel").row("stack", StockParts.heel(plan).orElseThrow());
        plan.neckSet()
                .ifPresent(set -> draft.row(
                                ONE_AT_BRIDGE + " too low at the bridge",
                                set.wedge(plan.style().amount(heel.heightMm()), ONE_AT_BRIDGE))
                        .row(
                                HALF_AT_BRIDGE + " off its middle",
                                set.cheek(plan.style().amount(heel.widthMm()), HALF_AT_BRIDGE)));
        return PlanPart.of(draft);
    }
}
