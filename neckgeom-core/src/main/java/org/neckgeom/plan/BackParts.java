package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Spread;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.solid.BackCurve;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.solid.WoodChance;
import org.neckgeom.solid.WoodLeft;
import org.neckgeom.solid.WoodSpreads;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** The parts of a plan that belong to the back of the neck: how it is carved, and what it leaves under the channel. */
final class BackParts {

    private static final double CARVED_WITHIN_MM = 0.5;
    private static final Spread<Length> CARVED_BY_HAND = Spread.rectangular(ShopUnits.mm(CARVED_WITHIN_MM));
    private static final double ACCEPTED_CHANCE = 0.05;
    private static final double AT_THE_NUT_MM = 1e-5;

    private BackParts() {}

    static List<PlanPart> of(NeckPlan plan) {
        return List.of(back(plan), woodLeft(plan));
    }

    private static PlanPart back(NeckPlan plan) {
        NeckDesign design = plan.design();
        BackShape shape = AsMade.of(plan).back();
        PlanSection.Draft draft = PlanSection.titled("Back and its flats").row("back", shape);
        if (plan.isDone("carve the neck")) {
            return PlanPart.of(draft.row("done", "carved; its depths stand with what has been read"));
        }
        for (double fret :
                new double[] {design.back().firstFret(), design.back().secondFret()}) {
            BackCurve curve = shape.at(plan.style().amount(design.scale().fretMm(fret)));
            String at = "fret " + Numbers.plain(fret);
            if (isEven(design)) {
                draft.row(at, curve.facets(true));
            } else {
                draft.row(at + ", bass side", curve.facets(false)).row(at + ", treble side", curve.facets(true));
            }
        }
        return PlanPart.of(draft.note("plane the flats from one fret to the other, the first set before the second"));
    }

    private static boolean isEven(NeckDesign design) {
        BackProfile back = design.back();
        return back.bassPower() == back.treblePower();
    }

    /** Common practice: a back carved by hand comes out within half a millimetre of the drawing. */
    private static PlanPart woodLeft(NeckPlan plan) {
        AsMade made = AsMade.of(plan);
        SlotPlace place = plan.slotPlace();
        double offset = place.offsetMmAt(made.channel().startMm());
        Amount<Angle> skew = place.skew();
        WoodLeft wood = wood(plan, made.channel(), made.back(), offset, skew);
        Amount<Length> limit = plan.woodLeftAtLeast();
        WoodAt least = wood.least();
        Optional<Estimate<Length>> carved = made.carvedAt(least.stationMm());
        WoodChance chance = chance(plan, wood, limit, carved);
        PlanSection.Draft draft = PlanSection.titled("Wood left under the channel");
        if (offset != 0 || skew.house() != 0) {
            draft.row(
                    "channel off the middle",
                    plan.style().text(Math.abs(offset)) + " at its head end, as it stands now");
        }
        draft.row("least", least)
                .row("limit", Limits.atLeast(limit))
                .row(
                        "chance of less",
                        Numbers.percent(chance.probability())
                                + carved.map(depth -> ", the carved depth as read, u "
                                                + plan.style().small(depth.uncertaintyHouse()))
                                        .orElse(", depths carved within "
                                                + plan.style().small(CARVED_WITHIN_MM)
                                                + ", anywhere alike (common practice)"));
        boolean enough = least.woodMm() >= limit.house();
        boolean sure = chance.probability() < ACCEPTED_CHANCE;
        Outcome outcome = !enough ? Outcome.STOP : sure ? Outcome.GOOD : Outcome.OPEN;
        String todo = carved.isPresent()
                ? !enough
                        ? "Take no more off there: say what the rod may pull before it does."
                        : sure ? "Leave it at that." : "Take no more off there."
                : !enough
                        ? tooThin(
                                plan,
                                least,
                                (channel, back) -> wood(plan, channel, back, offset, skew)
                                        .least()
                                        .woodMm())
                        : plan.isDone("carve the neck")
                                ? "It is carved: read the back's depth there."
                                : sure ? "Carve to the drawing." : "Carve shy of the drawing there, and measure.";
        return PlanPart.of(
                draft,
                new PlanCheck(
                        "wood left under the channel",
                        outcome,
                        (least.woodMm() > 0
                                        ? plan.style().text(least.woodMm())
                                        : "none, the channel is through by "
                                                + plan.style().text(-least.woodMm()))
                                + where(plan, least.stationMm()),
                        Limits.atLeast(limit).toString(),
                        todo));
    }

    private static String tooThin(NeckPlan plan, WoodAt least, ToDoubleBiFunction<Channel, BackShape> wood) {
        if (least.stationMm() <= 0) {
            // Ahead of the nut the head's thickness stands behind the channel, not the back.
            return "Do not carve to this: a shallower channel, one that begins nearer the body, a thicker head, or a lower"
                    + " rod.";
        }
        String wanted = new WoodWanted(plan, wood).inWords();
        return wanted.isEmpty()
                ? "Do not carve to this: a shallower channel, a deeper back, or a lower rod."
                : "Do not carve to this: " + wanted + ".";
    }

    /** What was read is as uncertain as its reading, what was not as practice has it. */
    private static WoodChance chance(
            NeckPlan plan, WoodLeft wood, Amount<Length> limit, Optional<Estimate<Length>> carved) {
        Spread<Length> carving = carved.map(Spread::of).orElse(CARVED_BY_HAND);
        Optional<Spread<Length>> depth = open(plan, NeckFeature.CHANNEL_DEPTH);
        Optional<Spread<Length>> offset = open(plan, NeckFeature.SLOT_OFFSET);
        if (depth.isEmpty() && offset.isEmpty()) {
            return wood.chanceBelow(limit, carving);
        }
        WoodSpreads spreads = WoodSpreads.ofDepth(
                        depth.orElse(Spread.bias(plan.style().amount(0))))
                .carving(carving);
        return wood.chanceBelow(limit, offset.isPresent() ? spreads.offset(offset.get()) : spreads);
    }

    /** What a reading leaves open, about its value. */
    private static Optional<Spread<Length>> open(NeckPlan plan, NeckFeature feature) {
        return plan.readings()
                .of(feature)
                .map(reading -> Spread.of(Estimate.ofHouse(
                        0,
                        reading.uncertaintyHouse(),
                        reading.degreesOfFreedom(),
                        plan.style().unit())));
    }

    static WoodLeft wood(NeckPlan plan) {
        AsMade made = AsMade.of(plan);
        return wood(
                plan,
                made.channel(),
                made.back(),
                plan.slotPlace().offsetMmAt(made.channel().startMm()),
                plan.slotPlace().skew());
    }

    /** Ahead of the nut the back is not known that well: what is told of it is the least there can be. */
    private static String where(NeckPlan plan, double x) {
        String far = plan.style().brief(Math.abs(x));
        if (Math.abs(x) < AT_THE_NUT_MM) {
            return " at the nut";
        }
        return x < 0 ? " or more at " + far + " into the head" : " at " + far + " from the nut";
    }

    /** Which edge ran along the fence is not told, so of an uneven back the thinner way counts, where the ways differ. */
    private static WoodLeft wood(NeckPlan plan, Channel channel, BackShape back, double offset, Amount<Angle> skew) {
        WoodLeft centred = WoodLeft.under(channel, back);
        List<WoodLeft> ways = new ArrayList<>();
        for (int way : new int[] {1, -1}) {
            ways.add(centred.offCentre(plan.style().amount(way * offset))
                    .skewed(Amount.ofHouse(way * skew.house(), ShopUnit.DEGREE)));
        }
        boolean alike = isEven(plan.design()) || offset == 0 && skew.house() == 0;
        boolean first =
                alike || ways.get(0).least().woodMm() <= ways.get(1).least().woodMm();
        return ways.get(first ? 0 : 1);
    }
}
