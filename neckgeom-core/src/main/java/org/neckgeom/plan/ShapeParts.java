package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.design.Head;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.geometry.Fret;
import org.neckgeom.geometry.FretTable;
import org.neckgeom.geometry.NeckSet;
import org.neckgeom.geometry.ScarfBoard;
import org.neckgeom.geometry.ScarfJoint;
import org.neckgeom.geometry.WoodAt;
import org.neckgeom.geometry.WoodChance;
import org.neckgeom.geometry.WoodLeft;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Spread;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The parts of a plan that belong to the neck's shape: scarf, frets, wood left, neck angle. */
final class ShapeParts {

    private static final Spread<Length> CARVED_BY_HAND = Spread.rectangular(ShopUnits.mm(0.5));
    private static final double ACCEPTED_CHANCE = 0.05;

    private ShapeParts() {}

    static List<PlanPart> of(NeckPlan plan) {
        List<PlanPart> parts = new ArrayList<>();
        plan.scarf().ifPresent(joint -> parts.add(scarf(plan, joint)));
        parts.add(frets(plan));
        parts.add(woodLeft(plan));
        plan.neckSet().ifPresent(set -> parts.add(neckSet(set)));
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
                        reaches ? "One saw cut does it." : "Take a longer blank, or the head from another board."));
    }

    private static PlanPart frets(NeckPlan plan) {
        NeckDesign design = plan.design();
        PlanSection.Draft draft = PlanSection.titled("Frets and stations, from the nut");
        for (Fret fret : FretTable.of(design).frets()) {
            double x = fret.fromNutMm();
            draft.row(
                    fret.number() == 0 ? "nut" : "fret " + fret.number(),
                    plan.style().text(x) + ", board " + plan.style().text(2 * design.halfWidthAtMm(x)) + " wide");
        }
        return PlanPart.of(draft.note("measure every fret from the nut: steps added up add up their errors"));
    }

    /** Common practice: a back carved by hand comes out within half a millimetre of the drawing. */
    private static PlanPart woodLeft(NeckPlan plan) {
        WoodLeft wood = WoodLeft.under(plan.design());
        Amount<Length> limit = plan.woodLeftAtLeast();
        WoodAt least = wood.least();
        WoodChance chance = wood.chanceBelow(limit, CARVED_BY_HAND);
        PlanSection.Draft draft = PlanSection.titled("Wood left under the channel")
                .row("least", least)
                .row("limit", Limits.atLeast(limit))
                .row(
                        "chance of less",
                        Numbers.percent(chance.probability()) + ", depths carved " + CARVED_BY_HAND
                                + " (common practice)");
        boolean enough = least.woodMm() >= limit.house();
        boolean sure = chance.probability() < ACCEPTED_CHANCE;
        Outcome outcome = !enough ? Outcome.STOP : sure ? Outcome.GOOD : Outcome.OPEN;
        String todo = !enough
                ? "Do not carve to this: a shallower channel, a deeper back, or a lower rod."
                : sure ? "Carve to the drawing." : "Carve shy of the drawing there, and measure.";
        return PlanPart.of(
                draft,
                new PlanCheck(
                        "wood left under the channel",
                        outcome,
                        plan.style().text(least.woodMm()) + " at "
                                + plan.style().brief(least.stationMm()) + " from the nut",
                        Limits.atLeast(limit).toString(),
                        todo));
    }

    private static PlanPart neckSet(NeckSet set) {
        return PlanPart.of(PlanSection.titled("Neck angle")
                .row("angle", set.angle())
                .row("heel face", set.heelFace())
                .row("0.1 deg more", set.actionPer(ShopUnits.deg(0.1))));
    }
}
