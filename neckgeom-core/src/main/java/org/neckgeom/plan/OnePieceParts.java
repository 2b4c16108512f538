package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.head.OnePieceHead;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** The part of a plan that belongs to a head in one piece with the shaft: whether the blank holds both. */
final class OnePieceParts {

    private OnePieceParts() {}

    static Optional<PlanPart> of(NeckPlan plan) {
        if (!plan.isHeadInOnePiece()) {
            return Optional.empty();
        }
        return AsMade.of(plan).design().head().map(head -> part(plan, OnePieceHead.of(head)));
    }

    private static PlanPart part(NeckPlan plan, OnePieceHead head) {
        PlanSection.Draft draft =
                PlanSection.titled("Head and shaft in one piece").row("head", head.text(plan.style()));
        if (plan.isDone(NeckPlan.ONE_PIECE_HEAD)) {
            return PlanPart.of(draft.row("done", "sawn"));
        }
        if (plan.isHeadSawnFromTheBlank()) {
            Amount<Length> shaft = plan.style().amount(plan.design().backDepthAtMm(0));
            draft.row("its back", "comes to the depth of the back at the nut " + beside(plan, head.backMeets(shaft)));
        }
        List<PlanCheck> checks = new ArrayList<>();
        checks.add(thick(plan, head));
        checks.add(reaches(plan, head));
        checks.add(nutLine(plan, head));
        return new PlanPart(draft.done(), checks);
    }

    private static String beside(NeckPlan plan, Amount<Length> x) {
        return plan.style().text(Math.abs(x.house()))
                + (x.house() < 0 ? " before the nut line" : " behind the nut line");
    }

    private static PlanCheck thick(NeckPlan plan, OnePieceHead head) {
        LengthStyle style = plan.style();
        double needed = head.thicknessMm() + 2 * plan.details().planingMm();
        boolean holds = plan.blank().thicknessMm() >= needed;
        boolean turned = plan.isHeadSawnFromTheBlank();
        return new PlanCheck(
                "blank thick enough for the head",
                holds ? Outcome.GOOD : Outcome.STOP,
                plan.blank().thickness().toString(),
                style.brief(needed) + " or more, head and shaft in one piece",
                holds
                        ? turned ? "Lay out the head on the blank's side." : "Thin the head to its size."
                        : turned
                                ? "A thicker blank, a flatter or shorter head, or a head scarfed on."
                                : "A thicker blank, or a thinner head.");
    }

    private static PlanCheck reaches(NeckPlan plan, OnePieceHead head) {
        double needed = head.lengthMm() + StockParts.shaftEndMm(plan);
        boolean reaches = plan.blank().lengthMm() >= needed;
        return new PlanCheck(
                "blank reaches for shaft and head",
                reaches ? Outcome.GOOD : Outcome.STOP,
                plan.blank().length().toString(),
                plan.style().brief(needed) + " or more",
                reaches ? "Square it and mark the nut line." : "A longer blank, or a shorter head.");
    }

    /** A nut line that is not told counts as none: the head then has no room before it. */
    private static PlanCheck nutLine(NeckPlan plan, OnePieceHead head) {
        double there = plan.blank().nutFromHeadEndMm();
        double behind = plan.blank().lengthMm() - StockParts.shaftEndMm(plan);
        boolean enough = there >= head.lengthMm() && there <= behind;
        return new PlanCheck(
                "nut line leaves room for head and shaft",
                enough ? Outcome.GOOD : Outcome.OPEN,
                there > 0 ? plan.style().brief(there) + " from the head end" : "not told",
                head.lengthMm() > behind
                        ? plan.style().brief(head.lengthMm()) + " or more"
                        : plan.style().brief(head.lengthMm()) + " to "
                                + plan.style().brief(behind),
                enough
                        ? "Lay out nut line and stops from the same end."
                        : "Lay the nut line out so that head and shaft both come out of the blank.");
    }
}
