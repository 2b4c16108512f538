package org.neckgeom.plan;

import java.util.Optional;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Kind;
import org.neckgeom.neck.Heel;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.units.LengthStyle;

/** What a plan has to spare: wood under the channel, width of the blank. */
final class SpareParts {

    private SpareParts() {}

    static PlanSection of(Stages plan) {
        PlanSection.Draft draft = PlanSection.titled("spare", "Spare", plan.style());
        String wood = ShopDigits.wood(plan.style());
        least(plan)
                .ifPresent(least -> draft.row(
                        "wood",
                        "wood under the channel",
                        draft.words(
                                        "wood",
                                        ("{wood:W} at {x:size W} " + (least.stationMm() < 0 ? "before" : "from")
                                                        + " the nut, limit {limit:W}")
                                                .replace("W}", wood + "}"))
                                .with("wood", Kind.MM, ShopDigits.roundedDown(plan.style(), least.woodMm()))
                                .with("x", Kind.MM, least.stationMm())
                                .with("limit", Kind.MM, plan.job().floorLimit().libraryValue())));
        double joint = plan.neck().halfWidthAtMm(plan.neck().bodyJointMm());
        double heel = plan.neck().heel().map(Heel::widthMm).orElse(0.0) / 2;
        boolean isRead = plan.measured().has(NeckFeature.SLOT_OFFSET);
        double spare = isRead ? CutParts.spareAtTheJointMm(plan) : CutParts.spareAtTheJointMm(plan, 0);
        LengthStyle style = plan.style();
        return draft.row(
                        "width",
                        "width",
                        draft.words(
                                        isRead ? "width-on-the-thin-side" : "width",
                                        (isRead ? "{width:W} on the thin side at the " : "{width:W} a side at the ")
                                                        .replace(":W", ":" + wood)
                                                + (heel > joint ? "heel" : "body joint"))
                                .with("width", Kind.MM, ShopDigits.roundedDown(style, spare)))
                .done();
    }

    private static Optional<WoodAt> least(Stages plan) {
        try {
            return Optional.of(plan.floor().wood().least());
        } catch (NoAnswer none) {
            return Optional.empty();
        }
    }
}
