package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.solid.WoodLeft;
import org.neckgeom.strength.Bow;
import org.neckgeom.strength.NeckWeather;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.RodForce;
import org.neckgeom.strength.SlotFit;
import org.neckgeom.strength.StringHeights;
import org.neckgeom.strength.StringLoad;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;

/** The parts of a plan that belong to load and weather: what bends, and what swells. */
final class StrengthParts {

    /** A channel is widened in steps of this, a feeler gauge's; common practice. */
    private static final double WIDENED_BY_MM = 0.01;

    private StrengthParts() {}

    static List<PlanPart> of(NeckPlan plan) {
        List<PlanPart> parts = new ArrayList<>();
        NeckDesign design = plan.design();
        if (design.isReadyForLoad()) {
            parts.add(through(plan).orElseGet(() -> relief(plan)));
            parts.add(weather(plan));
        }
        return parts;
    }

    /** Where no wood is left there is nothing to reckon with; how much is missing the wood left says. */
    private static Optional<PlanPart> through(NeckPlan plan) {
        WoodAt least = WoodLeft.under(AsMade.of(plan).design()).least();
        if (least.woodMm() > 0) {
            return Optional.empty();
        }
        return Optional.of(PlanPart.of(PlanSection.titled("Strings and relief, estimated")
                .note("the channel is through the back " + plan.style().brief(least.stationMm())
                        + " from the nut: relief and the rod's force can be told once some wood is left there")));
    }

    private static PlanPart relief(NeckPlan plan) {
        StringHeights heights = heights(plan);
        Relief relief = Relief.of(AsMade.of(plan).design()).heights(heights);
        PlanSection.Draft draft = PlanSection.titled("Strings and relief, estimated")
                .row("load", StringLoad.of(plan.design()).heights(heights))
                .row("rod slack", relief.underStrings());
        if (!plan.design().channel().orElseThrow().rod().isAdjustable()) {
            return PlanPart.of(draft, noRodToSet(plan, relief.underStrings()));
        }
        RodForce force = relief.rodForceFor(plan.relief());
        return PlanPart.of(draft.row("rod", force), reliefCheck(plan, force));
    }

    private static PlanCheck noRodToSet(NeckPlan plan, Bow bow) {
        String wanted = plan.style().brief(plan.relief().house());
        return new PlanCheck(
                "relief of " + wanted,
                Outcome.OPEN,
                "about " + plan.style().small(bow.reliefMm()) + ", and no rod to set it",
                wanted,
                "Plane or level what is missing in, or take a rod that can be set.");
    }

    /**
     * A rod that grips its channel cannot be set and may split the neck; a bar that is glued in does not move. What is less than
     * the machine can be set to is no task for it.
     */
    private static PlanPart weather(NeckPlan plan) {
        boolean moves = plan.design().channel().orElseThrow().rod().isAdjustable();
        double settable = plan.shop().uncertainty().moveScatterMm();
        NeckWeather then = plan.weather().on(AsMade.of(plan).design());
        PlanSection.Draft draft = PlanSection.titled("Weather, estimated")
                .row("from and to", plan.weather())
                .row("then", then);
        Optional<PlanCheck> binds = then.slotFit()
                .filter(fit -> moves && fit.playAfter().house() < -settable)
                .map(fit -> new PlanCheck(
                        "rod's play in the worst air",
                        Outcome.OPEN,
                        plan.style().small(-fit.playAfter().house()) + " too tight",
                        "some play",
                        wider(fit, plan.isDone(NeckPlan.CHANNEL), plan.style().inTables())));
        return new PlanPart(draft.done(), binds.map(List::of).orElse(List.of()));
    }

    /**
     * What to cut so that the rod has play then too: the channel shrinks in proportion to its width. A second pass farther from the
     * cutter takes the far wall, against the turn; half of the widening is set before the first, or the slot's middle would move.
     * A channel that is cut is widened by hand.
     */
    private static String wider(SlotFit fit, boolean isCut, LengthStyle style) {
        double now = fit.slot().before().house();
        double rod = now - fit.playBefore().house();
        double wanted = now * rod / fit.slot().after().house();
        double more = Math.ceil((wanted - now) / WIDENED_BY_MM) * WIDENED_BY_MM;
        if (isCut) {
            return "Take " + style.small(more / 2) + " off each wall of the channel: it is then "
                    + style.text(now + more) + " wide.";
        }
        return "Cut the channel " + style.small(more) + " wider, " + style.text(now + more)
                + ": a first pass with the fence " + style.small(more / 2)
                + " nearer the cutter than centred, a second with it " + style.small(more) + " farther away.";
    }

    private static StringHeights heights(NeckPlan plan) {
        OptionalDouble frets = plan.details().fretHeightMm();
        StringHeights usual = frets.isPresent()
                ? StringHeights.usual().frets(plan.style().amount(frets.getAsDouble()))
                : StringHeights.usual();
        return plan.neckSet()
                .map(set -> usual.atNut(set.atNut()).action(set.action()))
                .orElse(usual);
    }

    private static PlanCheck reliefCheck(NeckPlan plan, RodForce force) {
        Outcome outcome = force.reach() == RodForce.Reach.CAN ? Outcome.GOOD : Outcome.OPEN;
        String todo = switch (force.reach()) {
            case CAN -> "Adjust under full string tension, an eighth of a turn at a time.";
            case MAY -> "Weigh and bend a strip of the same board, and tell the plan its modulus.";
            case CANNOT -> "Another rod, a stiffer neck, or another relief.";
        };
        String found = force.reach() + ", "
                + force.force()
                        .map(n -> "about " + Numbers.fixed(Math.abs(n.value()), 0) + " N"
                                + (n.value() < 0 ? ", bowing the neck forward" : ""))
                        .orElse("at no force");
        return new PlanCheck(
                "relief of " + plan.style().brief(plan.relief().house()),
                outcome,
                found,
                "a force the rod stands",
                todo);
    }
}
