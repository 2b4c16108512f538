package org.neckgeom.plan;

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
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.Operation;
import org.neckgeom.solid.BackCurve;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.Facets;
import org.neckgeom.solid.FloorProbability;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.solid.WoodSpreads;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/** The parts of a plan that belong to the back of the neck: how it is carved, and the wood under the channel. */
final class BackParts {

    private static final double CARVED_WITHIN_MM = 0.5;
    private static final ErrorDistribution<Length> CARVED_BY_HAND =
            ErrorDistribution.rectangular(ShopUnits.mm(CARVED_WITHIN_MM));
    private static final double ACCEPTED_CHANCE = 0.05;
    private static final double AT_THE_NUT_MM = 1e-5;

    private BackParts() {}

    static List<PlanPart> of(Stages plan) {
        return List.of(back(plan), woodLeft(plan));
    }

    private static PlanPart back(Stages plan) {
        Neck design = plan.neck();
        BackShape shape = plan.made().back();
        PlanSection.Draft draft =
                PlanSection.titled(SectionCode.BACK, plan.style()).row("back", "back", shape);
        if (plan.isDone(Operation.CARVE_THE_NECK)) {
            return PlanPart.of(draft.row(
                    "done",
                    "done",
                    plan.measured().backDepths().isEmpty()
                            ? draft.words("carved-unread", "carved; no depth of it has been read")
                            : draft.words("carved", "carved; see the depths measured on the neck")));
        }
        for (double fret :
                new double[] {design.back().firstFret(), design.back().secondFret()}) {
            BackCurve curve = shape.at(plan.style().amount(design.scale().fretMm(fret)));
            boolean first = fret == design.back().firstFret();
            if (plan.floor().isEven()) {
                facets(draft, first, "", fret, curve.facets(true));
            } else {
                facets(draft, first, "bass", fret, curve.facets(false));
                facets(draft, first, "treble", fret, curve.facets(true));
            }
        }
        return PlanPart.of(draft.note(
                "order-of-flats", "Plane the facets from one fret to the other, the first set before the second."));
    }

    private static void facets(PlanSection.Draft draft, boolean first, String side, double fret, Facets facets) {
        draft.row(
                side + (side.isEmpty() ? first ? "first" : "second" : first ? "First" : "Second"),
                draft.words("fret", "fret {fret}" + (side.isEmpty() ? "" : ", " + side + " side"))
                        .with("fret", Kind.RATIO, fret),
                facets);
    }

    /** Common practice: a hand-carved depth has a uniform error of half-width 0.5 mm. */
    private static PlanPart woodLeft(Stages plan) {
        MeasuredStage made = plan.made();
        SlotPlace place = plan.slot().place();
        double offset = place.offsetMmAt(made.channel().startMm());
        Amount<Angle> skew = place.skew();
        FloorThickness wood = plan.floor().wood();
        Amount<Length> limit = plan.job().floorLimit();
        WoodAt least = wood.least();
        Optional<Estimate<Length>> carved = made.carvedAt(least.stationMm());
        FloorProbability chance = chance(plan, wood, limit, carved);
        LengthStyle style = plan.style();
        PlanSection.Draft draft = PlanSection.titled(SectionCode.WOOD_LEFT, style);
        if (offset != 0 || skew.libraryValue() != 0) {
            draft.row(
                    "offTheMiddle",
                    "channel off the middle",
                    draft.words("off-the-middle", "{offset:size text} at its head end, as set or read so far")
                            .with("offset", Kind.MM, offset));
        }
        Statement less = carved.map(depth -> draft.words(
                                "less-as-read", "{probability}; carved depth as read, u {standardUncertainty:small}")
                        .with("standardUncertainty", Kind.MM, depth.libraryUncertainty()))
                .orElse(draft.words(
                                "less-as-usual",
                                "{probability}; carved depth: uniform, half-width {halfWidth:small} (common practice)")
                        .with("halfWidth", Kind.MM, CARVED_WITHIN_MM));
        draft.row("least", "least", least)
                .row("limit", "limit", Kind.LIMITS, Limits.atLeast(limit))
                .row(
                        "chanceOfLess",
                        "probability of less",
                        less.with("probability", Kind.PROBABILITY, chance.probability()));
        boolean enough = least.woodMm() >= limit.libraryValue();
        boolean sure = chance.probability() < ACCEPTED_CHANCE;
        Statement next = plan.isDone(Operation.CARVE_THE_NECK)
                ? carvedNext(draft, carved.isPresent(), enough, sure)
                : !enough
                        ? tooThin(
                                plan,
                                least,
                                (channel, back) -> plan.floor()
                                        .under(channel, back)
                                        .least()
                                        .woodMm())
                        : sure
                                ? draft.words("carve", "Carve to the drawing.")
                                : draft.words("carve-shy", "Carve less than the drawing there, and measure.");
        return PlanPart.of(
                draft,
                new PlanCheck(
                        CheckCode.WOOD_LEFT,
                        new Finding.Likely(
                                style.amount(least.woodMm()),
                                Limits.atLeast(limit),
                                1 - chance.probability(),
                                1 - ACCEPTED_CHANCE,
                                Outcome.STOP),
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

    /** What is done needs no advice how to do it. */
    private static Statement carvedNext(PlanSection.Draft draft, boolean read, boolean enough, boolean sure) {
        if (!read) {
            return draft.words("read-the-back", "It is carved: read the back's depth there.");
        }
        return !enough
                ? draft.words("spare-the-rod", "Take no more off there. Give the rod less tension.")
                : sure
                        ? draft.words("leave-it", "Leave it at that.")
                        : draft.words("take-no-more", "Take no more off there.");
    }

    private static Statement tooThin(Stages plan, WoodAt least, ToDoubleBiFunction<Channel, BackShape> wood) {
        if (least.stationMm() <= 0) {
            // Ahead of the nut the head's thickness is behind the channel, not the back.
            return plan.words(
                    "thin-at-the-head",
                    "Do not carve to this: a shallower channel, one that begins nearer the body, a thicker head, or a"
                            + " lower rod.");
        }
        return new WoodWanted(plan, wood).statement();
    }

    /** What was read is as uncertain as its reading, what was not as practice has it. */
    private static FloorProbability chance(
            Stages plan, FloorThickness wood, Amount<Length> limit, Optional<Estimate<Length>> carved) {
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
    private static Optional<ErrorDistribution<Length>> open(Stages plan, NeckFeature feature) {
        return plan.measured()
                .of(feature)
                .map(reading -> ErrorDistribution.of(Estimate.ofLibrary(
                        0,
                        reading.libraryUncertainty(),
                        reading.degreesOfFreedom(),
                        plan.style().unit())));
    }

    /** Ahead of the nut the thickness is a lower bound. */
    private static String where(double x) {
        if (Math.abs(x) < AT_THE_NUT_MM) {
            return " at the nut";
        }
        return x < 0 ? " or more at {station:size brief} before the nut" : " at {station:brief} from the nut";
    }
}
