package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.solid.BackCurve;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.Facets;
import org.neckgeom.solid.FloorProbability;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.solid.WoodSpreads;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** The parts of a plan that belong to the back of the neck: how it is carved, and what it leaves under the channel. */
final class BackParts {

    private static final double CARVED_WITHIN_MM = 0.5;
    private static final ErrorDistribution<Length> CARVED_BY_HAND =
            ErrorDistribution.rectangular(ShopUnits.mm(CARVED_WITHIN_MM));
    private static final double ACCEPTED_CHANCE = 0.05;
    private static final double AT_THE_NUT_MM = 1e-5;

    private BackParts() {}

    static List<PlanPart> of(NeckPlan plan) {
        return List.of(back(plan), woodLeft(plan));
    }

    private static PlanPart back(NeckPlan plan) {
        Neck design = plan.design();
        BackShape shape = plan.asMade().back();
        PlanSection.Draft draft =
                PlanSection.titled("back", "Back and its flats", plan.style()).row("back", "back", shape);
        if (plan.isDone(Operation.CARVE_THE_NECK)) {
            return PlanPart.of(draft.row(
                    "done", "done", draft.words("carved", "carved; its depths stand with what has been read")));
        }
        for (double fret :
                new double[] {design.back().firstFret(), design.back().secondFret()}) {
            BackCurve curve = shape.at(plan.style().amount(design.scale().fretMm(fret)));
            boolean first = fret == design.back().firstFret();
            if (isEven(design)) {
                facets(draft, first, "", fret, curve.facets(true));
            } else {
                facets(draft, first, "bass", fret, curve.facets(false));
                facets(draft, first, "treble", fret, curve.facets(true));
            }
        }
        return PlanPart.of(draft.note(
                "order-of-flats", "plane the flats from one fret to the other, the first set before the second"));
    }

    private static void facets(PlanSection.Draft draft, boolean first, String side, double fret, Facets facets) {
        draft.row(
                side + (side.isEmpty() ? first ? "first" : "second" : first ? "First" : "Second"),
                draft.words("fret", "fret {fret}" + (side.isEmpty() ? "" : ", " + side + " side"))
                        .with("fret", Kind.RATIO, fret),
                facets);
    }

    private static boolean isEven(Neck design) {
        BackProfile back = design.back();
        return back.bassPower() == back.treblePower();
    }

    /** Common practice: a back carved by hand comes out within half a millimetre of the drawing. */
    private static PlanPart woodLeft(NeckPlan plan) {
        AsMade made = plan.asMade();
        SlotPlace place = plan.slotPlace();
        double offset = place.offsetMmAt(made.channel().startMm());
        Amount<Angle> skew = place.skew();
        FloorThickness wood = plan.woodLeft();
        Amount<Length> limit = plan.woodLeftAtLeast();
        WoodAt least = wood.least();
        Optional<Estimate<Length>> carved = made.carvedAt(least.stationMm());
        FloorProbability chance = chance(plan, wood, limit, carved);
        LengthStyle style = plan.style();
        PlanSection.Draft draft = PlanSection.titled("wood-left", "Wood left under the channel", style);
        if (offset != 0 || skew.libraryValue() != 0) {
            draft.row(
                    "offTheMiddle",
                    "channel off the middle",
                    draft.words("off-the-middle", "{offset:size text} at its head end, as it stands now")
                            .with("offset", Kind.MM, offset));
        }
        Statement less = carved.map(depth -> draft.words(
                                "less-as-read",
                                "{probability}, the carved depth as read, u {standardUncertainty:small}")
                        .with("standardUncertainty", Kind.MM, depth.libraryUncertainty()))
                .orElse(draft.words(
                                "less-as-usual",
                                "{probability}, depths carved within {halfWidth:small}, anywhere alike (common practice)")
                        .with("halfWidth", Kind.MM, CARVED_WITHIN_MM));
        draft.row("least", "least", least)
                .row("limit", "limit", Kind.LIMITS, Limits.atLeast(limit))
                .row(
                        "chanceOfLess",
                        "chance of less",
                        less.with("probability", Kind.PROBABILITY, chance.probability()));
        boolean enough = least.woodMm() >= limit.libraryValue();
        boolean sure = chance.probability() < ACCEPTED_CHANCE;
        Outcome outcome = !enough ? Outcome.STOP : sure ? Outcome.GOOD : Outcome.OPEN;
        Statement next = carved.isPresent()
                ? !enough
                        ? draft.words(
                                "spare-the-rod", "Take no more off there: say what the rod may pull before it does.")
                        : sure
                                ? draft.words("leave-it", "Leave it at that.")
                                : draft.words("take-no-more", "Take no more off there.")
                : !enough
                        ? tooThin(
                                plan,
                                least,
                                (channel, back) -> wood(plan, channel, back, offset, skew)
                                        .least()
                                        .woodMm())
                        : plan.isDone(Operation.CARVE_THE_NECK)
                                ? draft.words("read-the-back", "It is carved: read the back's depth there.")
                                : sure
                                        ? draft.words("carve", "Carve to the drawing.")
                                        : draft.words("carve-shy", "Carve shy of the drawing there, and measure.");
        return PlanPart.of(
                draft,
                PlanCheck.of(
                        "wood-left",
                        "wood left under the channel",
                        outcome,
                        draft.words(
                                        least.woodMm() > 0 ? "wood" : "through",
                                        (least.woodMm() > 0
                                                        ? "{wood:text}"
                                                        : "none, the channel is through by {wood:size text}")
                                                + where(least.stationMm()))
                                .with("wood", Kind.MM, least.woodMm())
                                .with("station", Kind.MM, least.stationMm()),
                        plan.limit(Limits.atLeast(limit)),
                        next));
    }

    private static Statement tooThin(NeckPlan plan, WoodAt least, ToDoubleBiFunction<Channel, BackShape> wood) {
        if (least.stationMm() <= 0) {
            // Ahead of the nut the head's thickness stands behind the channel, not the back.
            return plan.words(
                    "thin-at-the-head",
                    "Do not carve to this: a shallower channel, one that begins nearer the body, a thicker head, or a"
                            + " lower rod.");
        }
        return new WoodWanted(plan, wood).statement();
    }

    /** What was read is as uncertain as its reading, what was not as practice has it. */
    private static FloorProbability chance(
            NeckPlan plan, FloorThickness wood, Amount<Length> limit, Optional<Estimate<Length>> carved) {
        ErrorDistribution<Length> carving = carved.map(ErrorDistribution::of).orElse(CARVED_BY_HAND);
        Optional<ErrorDistribution<Length>> depth = open(plan, NeckFeature.CHANNEL_DEPTH);
        Optional<ErrorDistribution<Length>> offset = open(plan, NeckFeature.SLOT_OFFSET);
        if (depth.isEmpty() && offset.isEmpty()) {
            return wood.probabilityBelow(limit, carving);
        }
        WoodSpreads spreads = WoodSpreads.ofDepth(
                        depth.orElse(ErrorDistribution.bias(plan.style().amount(0))))
                .carving(carving);
        return wood.probabilityBelow(limit, offset.isPresent() ? spreads.offset(offset.get()) : spreads);
    }

    /** What a reading leaves open, about its value. */
    private static Optional<ErrorDistribution<Length>> open(NeckPlan plan, NeckFeature feature) {
        return plan.readings()
                .of(feature)
                .map(reading -> ErrorDistribution.of(Estimate.ofLibrary(
                        0,
                        reading.libraryUncertainty(),
                        reading.degreesOfFreedom(),
                        plan.style().unit())));
    }

    static FloorThickness wood(NeckPlan plan) {
        AsMade made = plan.asMade();
        return wood(
                plan,
                made.channel(),
                made.back(),
                plan.slotPlace().offsetMmAt(made.channel().startMm()),
                plan.slotPlace().skew());
    }

    /** Ahead of the nut the back is not known that well: what is told of it is the least there can be. */
    private static String where(double x) {
        if (Math.abs(x) < AT_THE_NUT_MM) {
            return " at the nut";
        }
        return x < 0 ? " or more at {station:size brief} into the head" : " at {station:brief} from the nut";
    }

    /** Which edge ran along the fence is not told, so of an uneven back the thinner way counts, where the ways differ. */
    private static FloorThickness wood(
            NeckPlan plan, Channel channel, BackShape back, double offset, Amount<Angle> skew) {
        FloorThickness centred = FloorThickness.under(channel, back);
        List<FloorThickness> ways = new ArrayList<>();
        for (int way : new int[] {1, -1}) {
            ways.add(centred.offCentre(plan.style().amount(way * offset))
                    .skewed(Amount.ofLibrary(way * skew.libraryValue(), ShopUnit.DEGREE)));
        }
        boolean alike = isEven(plan.design()) || offset == 0 && skew.libraryValue() == 0;
        boolean first =
                alike || ways.get(0).least().woodMm() <= ways.get(1).least().woodMm();
        return ways.get(first ? 0 : 1);
    }
}
