package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Fault;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Limits;
import org.neckgeom.order.Operation;
import org.neckgeom.shop.Caution;
import org.neckgeom.strength.Bow;
import org.neckgeom.strength.NeckWeather;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.RodForce;
import org.neckgeom.strength.SlotFit;

/** The parts of a plan that belong to load and weather: what bends, and what swells. */
final class StrengthParts {

    /** A channel is widened in steps of this, a feeler gauge's; common practice. */
    private static final double WIDENED_BY_MM = 0.01;

    /** Usual relief, mm; common practice. */
    private static final double LEAST_RELIEF_MM = 0.05;

    private static final double MOST_RELIEF_MM = 0.3;

    private StrengthParts() {}

    static List<PlanPart> of(Stages plan) {
        List<PlanPart> parts = new ArrayList<>();
        if (plan.strength().isKnown()) {
            StrengthStage strength = plan.strength();
            strength.unanswered().ifPresent(why -> parts.add(unanswered(plan, why)));
            strength.relief().ifPresent(relief -> parts.add(relief(plan, relief)));
            if (!(strength.thinnest().woodMm() > 0)) {
                parts.add(through(plan));
            }
            strength.weather().ifPresent(then -> parts.add(weather(plan, then)));
        }
        return parts;
    }

    private static PlanPart unanswered(Stages plan, Fault why) {
        return PlanPart.unanswered(
                plan,
                SectionCode.STRINGS_AND_RELIEF,
                CheckCode.STRENGTH,
                why.rule().equals(Attempt.NO_FIGURE)
                        ? new Finding.Pending(Finding.Missing.WOOD_FIGURE, Optional.empty())
                        : new Finding.NoSolution(why),
                why,
                "every figure of the wood that load and air need",
                plan.words("give-the-figure", "Give the missing figure, or use a wood of the table."));
    }

    /** Where no wood is left there is nothing to compute; the wood under the channel states how much is missing. */
    private static PlanPart through(Stages plan) {
        PlanSection.Draft draft = draft(plan);
        return PlanPart.of(draft.note(draft.words(
                        "through-the-back",
                        "the channel is through the back {station:brief} from the nut: relief and the rod's force can be"
                                + " computed once some wood is left there")
                .with("station", Kind.MM, plan.strength().thinnest().stationMm())));
    }

    private static PlanSection.Draft draft(Stages plan) {
        return PlanSection.titled(SectionCode.STRINGS_AND_RELIEF, plan.style());
    }

    private static PlanPart relief(Stages plan, Relief relief) {
        PlanSection.Draft draft = draft(plan)
                .row("load", "load", plan.strength().load())
                .row(
                        "rodSlack",
                        plan.job().channel().rod().isPresent() ? "rod slack" : "no rod",
                        relief.underStrings());
        if (!plan.job().measured().stiffness().isEmpty()) {
            draft = draft.row("stiffness", "stiffness", relief.stiffness());
        }
        if (!plan.job().channel().rod().isPresent()) {
            return PlanPart.of(draft, fromStringsAlone(plan, relief.underStrings()));
        }
        RodForce force = relief.rodForceFor(plan.job().relief());
        PlanSection.Draft set = draft.row("rod", "rod", force);
        return PlanPart.of(
                plan.strength()
                        .rodTurns()
                        .map(how -> set.row("turns", "turns", how))
                        .orElse(set),
                reliefCheck(plan, force));
    }

    /** Without a rod the strings alone make the relief, and it stays: it must be in the usual range. */
    private static PlanCheck fromStringsAlone(Stages plan, Bow bow) {
        double relief = bow.relief().libraryValue();
        Limits<Length> usual = Limits.between(
                plan.style().amount(LEAST_RELIEF_MM), plan.style().amount(MOST_RELIEF_MM));
        Finding finding = new Finding.Computed(plan.style().amount(relief), usual, Outcome.OPEN);
        Statement next = relief < LEAST_RELIEF_MM
                ? plan.words("plane-it-in", "Plane or level what is missing in: no rod sets it later.")
                : relief > MOST_RELIEF_MM
                        ? plan.words(
                                "stiffer-neck",
                                "A deeper back, a stiffer wood, or bars glued in beside the middle: no rod takes it out.")
                        : plan.words(
                                "leave-it-to-the-strings", "Level the frets on a straight neck: the strings add it.");
        return new PlanCheck(
                CheckCode.RELIEF,
                finding,
                plan.words("no-rod", "about {relief:small} from the strings alone")
                        .with("relief", Kind.MM, relief),
                plan.words("usual-range", "{least:small} to {most:small} (common practice)")
                        .with("least", Kind.MM, LEAST_RELIEF_MM)
                        .with("most", Kind.MM, MOST_RELIEF_MM),
                next);
    }

    private static Statement wanted(Stages plan, String words) {
        return plan.words("relief-wanted", words)
                .with("relief", Kind.MM, plan.job().relief().libraryValue());
    }

    /**
     * A rod that grips its channel cannot be set and may split the neck; a bar that is glued in does not move. What is less than
     * the machine can be set to is no task for it.
     */
    private static PlanPart weather(Stages plan, NeckWeather then) {
        boolean moves = plan.job().channel().rod().isPresent();
        double settable = plan.shop().uncertainty().moveScatterMm();
        PlanSection.Draft draft = PlanSection.titled(SectionCode.WEATHER, plan.style())
                .row("fromAndTo", "from and to", plan.job().weather())
                .row("then", "then", then);
        Optional<PlanCheck> binds = then.slotFit()
                .filter(fit -> moves && fit.clearanceAfter().libraryValue() < -settable)
                .map(fit -> new PlanCheck(
                        CheckCode.ROD_PLAY,
                        new Finding.Computed(
                                fit.clearanceAfter(),
                                Limits.atLeast(plan.style().amount(0)),
                                Outcome.OPEN),
                        draft.words("too-tight", "{play:size small} too tight")
                                .with("play", Kind.MM, fit.clearanceAfter().libraryValue()),
                        plan.limit(Limits.atLeast(plan.style().amount(0))),
                        CutParts.isClosed(plan)
                                ? plan.words(
                                        "keep-from-that-air", "The board is on over it. Keep the neck from that air.")
                                : wider(plan, fit)));
        return new PlanPart(draft.done(), binds.map(List::of).orElse(List.of()));
    }

    /**
     * What to cut so that the rod has play then too: the channel shrinks in proportion to its width. A second pass farther from the
     * cutter takes the far wall, against the turn; half of what the two are apart is set before the first, or the slot's middle
     * would move; a channel wider than its cutter needs them apart already. A channel that is cut is widened by hand.
     */
    private static Statement wider(Stages plan, SlotFit fit) {
        double now = fit.slot().before().libraryValue();
        double rod = now - fit.clearanceBefore().libraryValue();
        double wanted = now * rod / fit.slot().after().libraryValue();
        double more = Math.ceil((wanted - now) / WIDENED_BY_MM) * WIDENED_BY_MM;
        boolean isCut = plan.isDone(Operation.CUT_ROD_CHANNEL);
        double apart = isCut ? more : plan.slot().stops().runsApart().libraryValue() + more;
        String words = isCut
                ? "Take {half:table small} off each wall of the channel: it is then {width:table text} wide."
                : "Cut the channel {wider:table small} wider, {width:table text}: a first pass with the fence"
                        + " {half:table text} nearer the cutter than centred, a second with it {apart:table text} farther"
                        + " away.";
        return plan.words(isCut ? "widen-by-hand" : "cut-wider", words)
                .with("wider", Kind.MM, more)
                .with("apart", Kind.MM, apart)
                .with("half", Kind.MM, apart / 2)
                .with("width", Kind.MM, now + more);
    }

    private static PlanCheck reliefCheck(Stages plan, RodForce force) {
        Statement next = switch (force.reach()) {
            case CAN -> plan.words("adjust", Caution.known("ROD_AT_PITCH").text() + ".");
            case MAY -> plan.words("bend-a-strip", "Weigh and bend a strip of the same board, and give its modulus.");
            case CANNOT -> plan.words("another-rod", "Another rod, a stiffer neck, or another relief.");
        };
        Statement result = force.force()
                .map(n -> plan.words(
                                "rod-force",
                                "{reach}, about {force:size 0}" + (n.value() < 0 ? ", bowing the neck forward" : ""))
                        .with("force", Kind.AMOUNT, n))
                .orElse(plan.words("no-force", "{reach}, at no force"))
                .with("reach", Kind.code(RodForce.Reach.class), force.reach())
                .with("wanted", Kind.AMOUNT, plan.job().relief());
        return new PlanCheck(
                CheckCode.RELIEF,
                new Finding.Reach(force),
                result,
                wanted(plan, "{relief:brief}, by a force that the rod can take"),
                next);
    }
}
