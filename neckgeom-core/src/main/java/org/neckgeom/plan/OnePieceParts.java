package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.head.OnePieceHead;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.solid.BackShape;
import org.neckgeom.units.Amount;

/** The part of a plan that belongs to a head in one piece with the shaft: whether the blank holds both. */
final class OnePieceParts {

    private OnePieceParts() {}

    static Optional<PlanPart> of(NeckPlan plan) {
        if (!plan.isHeadInOnePiece()) {
            return Optional.empty();
        }
        return plan.asMade().design().head().map(head -> part(plan, OnePieceHead.of(head)));
    }

    private static PlanPart part(NeckPlan plan, OnePieceHead head) {
        PlanSection.Draft draft = PlanSection.titled("head-in-one-piece", "Head and shaft in one piece", plan.style())
                .row("head", "head", head);
        if (plan.isDone(Operation.SAW_OUT_THE_HEAD)) {
            return PlanPart.of(draft.row("done", "done", draft.words("sawn", "sawn")));
        }
        if (plan.isHeadSawnFromTheBlank()) {
            Amount<Length> shaft =
                    plan.style().amount(BackShape.of(plan.design()).depthAtMm(0));
            double meets = head.backMeets(shaft).libraryValue();
            draft.row(
                    "backMeets",
                    "its back",
                    draft.words(
                                    "back-meets",
                                    "comes to the depth of the back at the nut {meets:size text} "
                                            + (meets < 0 ? "before" : "behind") + " the nut line")
                            .with("meets", Kind.MM, meets));
        }
        List<PlanCheck> checks = new ArrayList<>();
        checks.add(thick(plan, head));
        checks.add(reaches(plan, head));
        checks.add(nutLine(plan, head));
        return new PlanPart(draft.done(), checks);
    }

    private static PlanCheck thick(NeckPlan plan, OnePieceHead head) {
        double needed = head.thicknessMm() + 2 * plan.blank().planingMm();
        boolean holds = plan.blank().thicknessMm() >= needed;
        boolean turned = plan.isHeadSawnFromTheBlank();
        return PlanCheck.of(
                "blank-thick-enough",
                "blank thick enough for the head",
                holds ? Outcome.GOOD : Outcome.STOP,
                plan.words("thickness", "{thickness}")
                        .with("thickness", Kind.AMOUNT, plan.blank().thickness()),
                plan.words("at-least", "{least:brief} or more, head and shaft in one piece")
                        .with("least", Kind.MM, needed),
                holds
                        ? turned
                                ? plan.words("lay-out-the-head", "Lay out the head on the blank's side.")
                                : plan.words("thin-the-head", "Thin the head to its size.")
                        : turned
                                ? plan.words(
                                        "thicker-blank-or-scarf",
                                        "A thicker blank, a flatter or shorter head, or a head scarfed on.")
                                : plan.words("thicker-blank", "A thicker blank, or a thinner head."));
    }

    private static PlanCheck reaches(NeckPlan plan, OnePieceHead head) {
        double needed = head.lengthMm() + StockParts.shaftEndMm(plan);
        boolean reaches = plan.blank().lengthMm() >= needed;
        return StockParts.reaches(
                plan,
                needed,
                reaches
                        ? plan.words("square-it", "Square it and mark the nut line.")
                        : plan.words("longer-blank", "A longer blank, or a shorter head."));
    }

    /** A nut line that is not told counts as none: the head then has no room before it. */
    private static PlanCheck nutLine(NeckPlan plan, OnePieceHead head) {
        double there = plan.blank().nutFromHeadEndMm();
        double behind = plan.blank().lengthMm() - StockParts.shaftEndMm(plan);
        boolean enough = there >= head.lengthMm() && there <= behind;
        Statement room = plan.words(
                        "room", head.lengthMm() > behind ? "{least:brief} or more" : "{least:brief} to {most:brief}")
                .with("least", Kind.MM, head.lengthMm())
                .with("most", Kind.MM, behind);
        return PlanCheck.of(
                "nut-line-leaves-room",
                "nut line leaves room for head and shaft",
                enough ? Outcome.GOOD : Outcome.OPEN,
                there > 0 ? StockParts.fromHeadEnd(plan, there) : plan.words("not-given", "not told"),
                room,
                enough
                        ? plan.words("same-end", "Lay out nut line and stops from the same end.")
                        : plan.words(
                                "move-the-nut-line",
                                "Lay the nut line out so that head and shaft both come out of the blank."));
    }
}
