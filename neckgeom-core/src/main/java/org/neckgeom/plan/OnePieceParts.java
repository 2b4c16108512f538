package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Head;
import org.neckgeom.order.Operation;
import org.neckgeom.solid.OnePieceHead;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;

/** The part of a plan that belongs to a head in one piece with the shaft: whether the blank holds both. */
final class OnePieceParts {

    /** Grain of one in so much; Wood Handbook's table, from memory: about half of the bending strength. */
    private static final double LEAST_RUN = 5;

    private OnePieceParts() {}

    static Optional<PlanPart> of(Stages plan) {
        if (!plan.shape().isHeadInOnePiece()) {
            return Optional.empty();
        }
        return plan.made().solid().head().map(head -> part(plan, OnePieceHead.of(head)));
    }

    private static PlanPart part(Stages plan, OnePieceHead head) {
        PlanSection.Draft draft =
                PlanSection.titled(SectionCode.HEAD_IN_ONE_PIECE, plan.style()).row("head", "head", head);
        if (plan.isDone(Operation.SAW_OUT_THE_HEAD)) {
            return PlanPart.of(draft.row("done", "done", draft.words("sawn", "sawn")));
        }
        if (plan.shape().isHeadSawnFromTheBlank()) {
            Amount<Length> shaft =
                    plan.style().amount(plan.shape().solid().depth().valueAt(0));
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
        grain(plan, draft).ifPresent(checks::add);
        return new PlanPart(draft.done(), checks);
    }

    /** The grain runs along the shaft, so in the head it runs out one in {@code 1/tan a}; volute or back veneer holds it. */
    private static Optional<PlanCheck> grain(Stages plan, PlanSection.Draft draft) {
        Head head = plan.neck().head().orElseThrow();
        double tan = StrictMath.tan(head.angleRad());
        if (!(tan > 0)) {
            return Optional.empty();
        }
        boolean held = head.backVeneerMm() > 0 || plan.neck().back().volute().isPresent();
        draft.row(
                "grain",
                "grain",
                plan.words(
                                held ? "short-grain-held" : "short-grain",
                                "runs out of the head one in {run:1}"
                                        + (held ? "; volute or back veneer bridges it" : ""))
                        .with("run", Kind.RATIO, 1 / tan));
        if (held) {
            return Optional.empty();
        }
        Finding finding = new Finding.Computed(
                head.angle(),
                Limits.atMost(Amount.ofLibrary(StrictMath.atan(1 / LEAST_RUN), ShopUnit.DEGREE)),
                Outcome.OPEN);
        return Optional.of(new PlanCheck(
                CheckCode.GRAIN_OF_THE_HEAD,
                finding,
                plan.words("one-in", "short grain, one in {run:1}").with("run", Kind.RATIO, 1 / tan),
                plan.words(
                                "least-run",
                                "one in {least:0} or longer: there about half the bending strength is left (from memory)")
                        .with("least", Kind.RATIO, LEAST_RUN),
                finding.outcome() == Outcome.OK
                        ? plan.words("grain-along", "Choose a blank whose grain runs along the shaft.")
                        : plan.words("volute-or-strap", "Leave a volute, or glue a veneer on the head's back.")));
    }

    private static PlanCheck thick(Stages plan, OnePieceHead head) {
        double needed = head.thicknessMm() + 2 * plan.blank().planingMm();
        boolean holds = plan.blank().thicknessMm() >= needed;
        boolean turned = plan.shape().isHeadSawnFromTheBlank();
        return new PlanCheck(
                CheckCode.BLANK_THICK_ENOUGH,
                new Finding.Computed(
                        plan.blank().thickness(), Limits.atLeast(plan.style().amount(needed)), Outcome.STOP),
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

    private static PlanCheck reaches(Stages plan, OnePieceHead head) {
        double needed = head.lengthMm() + plan.shape().shaftEndMm();
        boolean reaches = plan.blank().lengthMm() >= needed;
        return StockParts.reaches(
                plan,
                needed,
                reaches
                        ? plan.words("square-it", "Square it and mark the nut line.")
                        : plan.words("longer-blank", "A longer blank, or a shorter head."));
    }

    /** Where head and shaft together are longer than the blank no nut line leaves room for both. */
    private static Finding room(Stages plan, double head, double there, double behind) {
        LengthStyle style = plan.style();
        return head > behind
                ? new Finding.Conflicting(1, true)
                : new Finding.Computed(
                        style.amount(there), Limits.between(style.amount(head), style.amount(behind)), Outcome.OPEN);
    }

    /** A nut line that is not given counts as none: the head then has no room before it. */
    private static PlanCheck nutLine(Stages plan, OnePieceHead head) {
        double there = plan.blank().nutFromHeadEndMm();
        double behind = plan.blank().lengthMm() - plan.shape().shaftEndMm();
        boolean enough = there >= head.lengthMm() && there <= behind;
        Statement room = plan.words(
                        "room", head.lengthMm() > behind ? "{least:brief} or more" : "{least:brief} to {most:brief}")
                .with("least", Kind.MM, head.lengthMm())
                .with("most", Kind.MM, behind);
        return new PlanCheck(
                CheckCode.NUT_LINE_LEAVES_ROOM,
                room(plan, head.lengthMm(), there, behind),
                there > 0 ? StockParts.fromHeadEnd(plan, there) : plan.words("not-given", "not given"),
                room,
                enough
                        ? plan.words("same-end", "Lay out nut line and stops from the same end.")
                        : plan.words(
                                "move-the-nut-line", "Move the nut line so that head and shaft both fit the blank."));
    }
}
