package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.heel.BackSet;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.PlateScrews;
import org.neckgeom.order.Operation;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** What a change or an error of a round size would ask for: apart from the settings, so that none of it is set. */
final class WhatIfParts {

    private final Stages plan;
    private final PlanSection.Draft draft;

    private WhatIfParts(Stages plan) {
        this.plan = plan;
        this.draft = PlanSection.titled(SectionCode.WHAT_IF, plan.style());
    }

    /** Of the neck set until the heel is fitted, and of the head until the channel is cut. */
    static List<PlanPart> of(Stages plan) {
        List<PlanPart> parts = new ArrayList<>();
        plan.shape()
                .neckSet()
                .filter(set -> !plan.isDone(Operation.FIT_HEEL_TO_BODY))
                .ifPresent(set -> parts.add(new WhatIfParts(plan).written(set)));
        SetUpParts.headFirst(plan, false).ifPresent(parts::add);
        return parts;
    }

    private PlanPart written(BackSet set) {
        Amount<Angle> step = ShopUnits.deg(0.1);
        draft.row(
                "tenthOfADegree",
                draft.words("more", "{step} more neck angle").with("step", Kind.AMOUNT, step),
                set.actionPer(step));
        // What was read at the bridge has its own correction, in the heel's section.
        if (plan.state().heelCorners().isEmpty()) {
            plan.neck().heel().ifPresent(heel -> atTheBridge(heel, set));
        }
        return PlanPart.of(draft);
    }

    private void atTheBridge(Heel heel, BackSet set) {
        Amount<Length> low = plan.style().nearMillimetre();
        Statement tooLow =
                draft.words("too-low", "{low:brief} too low at the bridge").with("low", Kind.MM, low.libraryValue());
        if (heel.joint() instanceof PlateScrews screws) {
            draft.row("tooLow", tooLow, set.shim(screws.pastShoulder().orElseThrow(), low));
        }
        if (heel.isFittedByItsFace()) {
            Amount<Length> off = low.times(0.5);
            draft.row("tooLow", tooLow, set.wedge(plan.style().amount(heel.heightMm()), low))
                    .row(
                            "offItsMiddle",
                            draft.words("off-its-middle", "{off:brief} off its middle at the bridge")
                                    .with("off", Kind.MM, off.libraryValue()),
                            set.cheek(plan.style().amount(heel.widthMm()), off));
        }
    }
}
