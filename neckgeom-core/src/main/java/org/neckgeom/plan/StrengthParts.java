package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.strength.Bow;
import org.neckgeom.strength.NeckWeather;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.RodForce;
import org.neckgeom.strength.SlotFit;
import org.neckgeom.strength.StringHeights;
import org.neckgeom.strength.StringLoad;
import org.neckgeom.units.LengthStyle;

/** The parts of a plan that belong to load and weather: what bends, and what swells. */
final class StrengthParts {

    private static final String RELIEF = "relief";

    /** A channel is widened in steps of this, a feeler gauge's; common practice. */
    private static final double WIDENED_BY_MM = 0.01;

    private StrengthParts() {}

    static List<PlanPart> of(NeckPlan plan) {
        List<PlanPart> parts = new ArrayList<>();
        Neck design = plan.design();
        if (design.isReadyForLoad()) {
            parts.add(through(plan).orElseGet(() -> relief(plan)));
            parts.add(weather(plan));
        }
        return parts;
    }

    /** Where no wood is left there is nothing to reckon with; how much is missing the wood left says. */
    private static Optional<PlanPart> through(NeckPlan plan) {
        WoodAt least = FloorThickness.under(plan.asMade().design()).least();
        if (least.woodMm() > 0) {
            return Optional.empty();
        }
        PlanSection.Draft draft = draft(plan);
        return Optional.of(PlanPart.of(draft.note(draft.words(
                        "through-the-back",
                        "the channel is through the back {station:brief} from the nut: relief and the rod's force can be"
                                + " told once some wood is left there")
                .with("station", Kind.MM, least.stationMm()))));
    }

    private static PlanSection.Draft draft(NeckPlan plan) {
        return PlanSection.titled("strings-and-relief", "Strings and relief, estimated", plan.style());
    }

    /** What strings and rod do to the neck, where enough is known of it. */
    static Optional<Relief> bending(NeckPlan plan) {
        Neck made = plan.asMade().design();
        return plan.design().isReadyForLoad()
                        && FloorThickness.under(made).least().woodMm() > 0
                ? Optional.of(Relief.of(made).heights(heights(plan)))
                : Optional.empty();
    }

    private static PlanPart relief(NeckPlan plan) {
        StringHeights heights = heights(plan);
        Relief relief = bending(plan).orElseThrow();
        PlanSection.Draft draft = draft(plan)
                .row("load", "load", StringLoad.of(plan.design()).heights(heights))
                .row("rodSlack", "rod slack", relief.underStrings());
        if (plan.design().channel().orElseThrow().rod().isEmpty()) {
            return PlanPart.of(draft, noRodToSet(plan, relief.underStrings()));
        }
        RodForce force = relief.rodForceFor(plan.relief());
        return PlanPart.of(draft.row("rod", "rod", force), reliefCheck(plan, force));
    }

    private static PlanCheck noRodToSet(NeckPlan plan, Bow bow) {
        return new PlanCheck(
                RELIEF,
                wanted(plan, "relief of {relief:brief}"),
                Outcome.OPEN,
                plan.words("no-rod", "about {relief:small}, and no rod to set it")
                        .with("relief", Kind.MM, bow.relief().libraryValue()),
                wanted(plan, "{relief:brief}"),
                plan.words("plane-it-in", "Plane or level what is missing in, or take a rod that can be set."));
    }

    private static Statement wanted(NeckPlan plan, String words) {
        return plan.words("relief-wanted", words)
                .with("relief", Kind.MM, plan.relief().libraryValue());
    }

    /**
     * A rod that grips its channel cannot be set and may split the neck; a bar that is glued in does not move. What is less than
     * the machine can be set to is no task for it.
     */
    private static PlanPart weather(NeckPlan plan) {
        boolean moves = plan.design().channel().orElseThrow().rod().isPresent();
        double settable = plan.shop().uncertainty().moveScatterMm();
        NeckWeather then = plan.weather().on(plan.asMade().design());
        PlanSection.Draft draft = PlanSection.titled("weather", "Weather, estimated", plan.style())
                .row("fromAndTo", "from and to", plan.weather())
                .row("then", "then", then);
        Optional<PlanCheck> binds = then.slotFit()
                .filter(fit -> moves && fit.playAfter().libraryValue() < -settable)
                .map(fit -> PlanCheck.of(
                        "rod-play",
                        "rod's play in the worst air",
                        Outcome.OPEN,
                        draft.words("too-tight", "{play:size small} too tight")
                                .with("play", Kind.MM, fit.playAfter().libraryValue()),
                        draft.words("some-play", "some play"),
                        wider(fit, plan.isDone(Operation.CUT_ROD_CHANNEL), plan.style())));
        return new PlanPart(draft.done(), binds.map(List::of).orElse(List.of()));
    }

    /**
     * What to cut so that the rod has play then too: the channel shrinks in proportion to its width. A second pass farther from the
     * cutter takes the far wall, against the turn; half of the widening is set before the first, or the slot's middle would move.
     * A channel that is cut is widened by hand.
     */
    private static Statement wider(SlotFit fit, boolean isCut, LengthStyle style) {
        double now = fit.slot().before().libraryValue();
        double rod = now - fit.playBefore().libraryValue();
        double wanted = now * rod / fit.slot().after().libraryValue();
        double more = Math.ceil((wanted - now) / WIDENED_BY_MM) * WIDENED_BY_MM;
        String words = isCut
                ? "Take {half:table small} off each wall of the channel: it is then {width:table text} wide."
                : "Cut the channel {wider:table small} wider, {width:table text}: a first pass with the fence"
                        + " {half:table small} nearer the cutter than centred, a second with it {wider:table small} farther"
                        + " away.";
        return Statement.of(isCut ? "widen-by-hand" : "cut-wider", words, style)
                .with("wider", Kind.MM, more)
                .with("half", Kind.MM, more / 2)
                .with("width", Kind.MM, now + more);
    }

    private static StringHeights heights(NeckPlan plan) {
        StringHeights usual = plan.design()
                .fingerboard()
                .fretHeight()
                .map(frets -> StringHeights.usual().frets(frets.in(plan.style())))
                .orElseGet(StringHeights::usual);
        return plan.neckSet()
                .map(set ->
                        usual.atNut(set.heights().atNut()).action(set.heights().action()))
                .orElse(usual);
    }

    private static PlanCheck reliefCheck(NeckPlan plan, RodForce force) {
        Outcome outcome = force.reach() == RodForce.Reach.CAN ? Outcome.GOOD : Outcome.OPEN;
        Statement next = switch (force.reach()) {
            case CAN -> plan.words("adjust", "Adjust under full string tension, an eighth of a turn at a time.");
            case MAY ->
                plan.words("bend-a-strip", "Weigh and bend a strip of the same board, and tell the plan its modulus.");
            case CANNOT -> plan.words("another-rod", "Another rod, a stiffer neck, or another relief.");
        };
        Statement result = force.force()
                .map(n -> plan.words(
                                "rod-force",
                                "{reach}, about {force:size 0}" + (n.value() < 0 ? ", bowing the neck forward" : ""))
                        .with("force", Kind.AMOUNT, n))
                .orElse(plan.words("no-force", "{reach}, at no force"))
                .with("reach", Kind.code(RodForce.Reach.class), force.reach())
                .with("wanted", Kind.AMOUNT, plan.relief());
        return new PlanCheck(
                RELIEF,
                wanted(plan, "relief of {relief:brief}"),
                outcome,
                result,
                plan.words("rod-stands-it", "a force the rod stands"),
                next);
    }
}
