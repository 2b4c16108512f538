package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Length;
import org.neckgeom.channel.Offset;
import org.neckgeom.design.Head;
import org.neckgeom.measure.Estimate;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;

/** The part of a plan that lists what has been read on the neck, and says where readings contradict each other. */
final class ReadParts {

    /** Two readings of one thing farther apart than three of their standard uncertainties are not of one thing. */
    private static final double APART = 3;

    private static final double HAIR = 1e-9;

    private ReadParts() {}

    static Optional<PlanPart> of(NeckPlan plan) {
        return plan.readings().isEmpty() ? Optional.empty() : Optional.of(read(plan));
    }

    private static PlanPart read(NeckPlan plan) {
        NeckReadings readings = plan.readings();
        PlanSection.Draft draft = PlanSection.titled("Read on the neck");
        for (NeckFeature feature : NeckFeature.values()) {
            readings.of(feature).ifPresent(reading -> draft.row(feature.toString(), reading));
        }
        readings.scarfAngle().ifPresent(reading -> draft.row("scarf angle", reading));
        LengthStyle style = plan.style();
        readings.backDepths()
                .forEach((x, depth) -> draft.row("back at " + style.brief(x), depth + "; drawn " + drawn(plan, x)));
        return PlanPart.of(
                draft.note("each takes the place of what was assumed, and the rest is judged on it"), agree(plan));
    }

    private static String drawn(NeckPlan plan, double x) {
        return plan.style().brief(AsMade.of(plan).drawnDepthMm(x));
    }

    private static PlanCheck agree(NeckPlan plan) {
        List<String> quarrels = quarrels(plan);
        int count = plan.readings().count();
        return quarrels.isEmpty()
                ? new PlanCheck(
                        "readings agree",
                        Outcome.GOOD,
                        count == 1 ? "1 reading" : count + " readings",
                        "no two contradict each other",
                        "Go on with what is left.")
                : new PlanCheck(
                        "readings agree",
                        Outcome.OPEN,
                        quarrels.get(0),
                        "no two contradict each other",
                        quarrels.size() == 1
                                ? "Read both again before you go on."
                                : "Read again before you go on. Besides: "
                                        + String.join("; ", quarrels.subList(1, quarrels.size())) + ".");
    }

    private static List<String> quarrels(NeckPlan plan) {
        List<String> quarrels = new ArrayList<>();
        channelUnread(plan).ifPresent(quarrels::add);
        tooDeep(plan).ifPresent(quarrels::add);
        carvedThrough(plan).ifPresent(quarrels::add);
        slotElsewhere(plan).ifPresent(quarrels::add);
        scarfElsewhere(plan).ifPresent(quarrels::add);
        return quarrels;
    }

    /** What closes or undercuts the channel has been read, and nothing of the channel. */
    private static Optional<String> channelUnread(NeckPlan plan) {
        NeckReadings read = plan.readings();
        Set<String> proofs = read.proofs().keySet();
        if (proofs.contains("cut rod channel")) {
            return Optional.empty();
        }
        String late = proofs.contains("carve the neck")
                ? "the back has been read as carved"
                : proofs.contains("glue fingerboard") ? "the board has been read as glued" : "";
        return late.isEmpty()
                ? Optional.empty()
                : Optional.of(late + ", of the channel under it nothing: it is taken as drawn, if it was cut before");
    }

    private static Optional<String> tooDeep(NeckPlan plan) {
        double thick = plan.blank().thicknessMm();
        LengthStyle style = plan.style();
        Optional<Estimate<Length>> depth = plan.readings().of(NeckFeature.CHANNEL_DEPTH);
        if (depth.filter(read -> read.valueHouse() >= thick).isPresent()) {
            return Optional.of("the channel reads " + style.brief(depth.get().valueHouse()) + " deep in a blank "
                    + style.brief(thick) + " thick");
        }
        boolean hasHeel = plan.design().heel().isPresent();
        double shaft = hasHeel ? AsMade.of(plan).heelStartMm() : Double.POSITIVE_INFINITY;
        for (Map.Entry<Double, Estimate<Length>> back :
                plan.readings().backDepths().entrySet()) {
            double over = back.getValue().valueHouse() - thick;
            if (back.getKey() < shaft && over > APART * back.getValue().uncertaintyHouse() + HAIR) {
                return Optional.of(
                        "the back reads " + style.brief(back.getValue().valueHouse()) + " deep at "
                                + style.brief(back.getKey()) + ", in a blank " + style.brief(thick) + " thick");
            }
        }
        return Optional.empty();
    }

    private static Optional<String> carvedThrough(NeckPlan plan) {
        AsMade made = AsMade.of(plan);
        LengthStyle style = plan.style();
        for (Map.Entry<Double, Estimate<Length>> back :
                plan.readings().backDepths().entrySet()) {
            double floor = made.channel().depthAtMm(back.getKey());
            if (floor >= back.getValue().valueHouse()) {
                return Optional.of("at " + style.brief(back.getKey()) + " the back reads "
                        + style.brief(back.getValue().valueHouse()) + " deep over a channel of " + style.brief(floor)
                        + ": carved through to the rod");
            }
        }
        return Optional.empty();
    }

    private static Optional<String> slotElsewhere(NeckPlan plan) {
        Optional<Estimate<Length>> read = plan.readings().of(NeckFeature.SLOT_OFFSET);
        if (read.isEmpty() || plan.steps().isEmpty()) {
            return Optional.empty();
        }
        Offset promised = plan.rounds().place().start();
        double apart = read.get().valueHouse() - promised.amountMm();
        double u = StrictMath.hypot(read.get().uncertaintyHouse(), promised.uncertaintyMm());
        return Math.abs(apart) > APART * u + HAIR
                ? Optional.of("the slot lies " + plan.style().small(Math.abs(apart))
                        + " from where the trial cuts put it, u " + plan.style().small(u)
                        + ": the fence or the blank moved, or the other edge rode the fence")
                : Optional.empty();
    }

    /** A saw is set to half a degree; a scarf farther off than that and its reading was drawn otherwise. */
    private static Optional<String> scarfElsewhere(NeckPlan plan) {
        double most = Math.toRadians(5);
        return plan.readings().scarfAngle().flatMap(read -> {
            double drawn = plan.design().head().map(Head::pitchRad).orElse(read.valueHouse());
            double off = read.valueHouse() - drawn;
            return Math.abs(off) > most
                    ? Optional.of("the scarf reads " + Numbers.fixed(Math.toDegrees(Math.abs(off)), 1) + " deg "
                            + (off > 0 ? "steeper" : "flatter") + " than drawn: was another angle read?")
                    : Optional.empty();
        });
    }
}
