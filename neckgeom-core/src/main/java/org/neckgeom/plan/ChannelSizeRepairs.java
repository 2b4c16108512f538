package org.neckgeom.plan;

import static org.neckgeom.order.Operation.CARVE_THE_NECK;
import static org.neckgeom.order.Operation.FIT_HEEL_TO_BODY;
import static org.neckgeom.order.Operation.GLUE_FINGERBOARD;
import static org.neckgeom.order.Operation.LAY_IN_THE_ROD;
import static org.neckgeom.order.Operation.REST_THE_STOCK;
import static org.neckgeom.order.Operation.ROUGH_OUT_THE_BACK;
import static org.neckgeom.order.Operation.TAPER_THE_SIDES;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.solid.WoodAt;

/** The repairs of a channel cut too deep, too shallow, too wide, too narrow, too long or too short. All limits: common practice. */
final class ChannelSizeRepairs {

    private static final double DEEPER_MM = 0.1;
    private static final double WIDER_MM = 0.1;
    private static final double ENDS_MM = 0.5;
    private static final double LOOSE_MM = 0.2;
    private static final double SLEEVED_MM = 0.5;
    private static final double VENEERED_MM = 1.5;
    private static final double FIT_MM = 0.1;
    private static final double BLOCK_LONGER_MM = 10;
    private static final int PLACES = 400;

    private ChannelSizeRepairs() {}

    static List<Repair> of(Stages plan) {
        List<Repair> all = new ArrayList<>();
        MeasuredNeck read = plan.measured();
        Channel drawn = plan.job().channel();
        if (drawn.isLocatingGroove()) {
            return all; // nothing lies in it that it could be too small or too large for
        }
        double tall = drawn.reinforcement().heightMm() + drawn.filletMm();
        double wide = drawn.reinforcement().widthMm();
        read.of(NeckFeature.CHANNEL_DEPTH).ifPresent(depth -> {
            double d = depth.libraryValue();
            all.addAll(
                    d < drawn.depthMm()
                            ? judged(
                                    plan,
                                    NeckFeature.CHANNEL_DEPTH,
                                    depth,
                                    tall,
                                    true,
                                    ways -> shallow(plan, ways, tall, d))
                            : judged(
                                    plan,
                                    NeckFeature.CHANNEL_DEPTH,
                                    depth,
                                    drawn.depthMm() + DEEPER_MM,
                                    false,
                                    ways -> deep(plan, ways, d - drawn.depthMm())));
        });
        read.of(NeckFeature.CHANNEL_WIDTH).ifPresent(width -> {
            double w = width.libraryValue();
            all.addAll(
                    w < drawn.widthMm()
                            ? judged(
                                    plan,
                                    NeckFeature.CHANNEL_WIDTH,
                                    width,
                                    wide,
                                    true,
                                    ways -> narrow(plan, ways, wide, w))
                            : judged(
                                    plan,
                                    NeckFeature.CHANNEL_WIDTH,
                                    width,
                                    Math.max(wide + LOOSE_MM, drawn.widthMm() + WIDER_MM),
                                    false,
                                    ways -> loose(plan, ways, w - wide)));
        });
        end(plan, NeckFeature.CHANNEL_START, drawn.startMm(), 1).ifPresent(all::addAll);
        end(plan, NeckFeature.CHANNEL_END, drawn.endMm(), -1).ifPresent(all::addAll);
        return all;
    }

    private static List<Repair> judged(
            Stages plan,
            NeckFeature feature,
            Estimate<Length> value,
            double limit,
            boolean least,
            Consumer<ReadingRepairs> fill) {
        Limits<Length> limits = least
                ? Limits.atLeast(plan.style().amount(limit))
                : Limits.atMost(plan.style().amount(limit));
        return ReadingRepairs.of(plan, feature.toString(), Verdict.of(value, limits), REST_THE_STOCK, fill);
    }

    private static Statement size(Stages plan, String code, String words, double d) {
        return plan.words(code, words).with("size", Kind.MM, d);
    }

    private static void shallow(Stages plan, ReadingRepairs ways, double wanted, double read) {
        RepairedNeck after = RepairedNeck.asItIs(plan).reading(NeckFeature.CHANNEL_DEPTH, wanted);
        ways.way(
                        RepairCode.ANOTHER_PASS,
                        size(
                                plan,
                                "one-more-pass",
                                "{size:small} deeper, the fence left as it is; if it was moved, a new trial cut first.",
                                wanted - read))
                .before(GLUE_FINGERBOARD, TAPER_THE_SIDES, CARVE_THE_NECK)
                .undoes(LAY_IN_THE_ROD)
                .leavesEnough(after);
        ways.way(
                        RepairCode.ROUTER_PLANE,
                        size(
                                plan,
                                "plane-the-floor",
                                "As wide as the slot, {size:small} off the floor.",
                                wanted - read))
                .before(GLUE_FINGERBOARD)
                .undoes(LAY_IN_THE_ROD)
                .leavesEnough(after);
    }

    private static void deep(Stages plan, ReadingRepairs ways, double d) {
        WoodAt least = plan.floor().wood().least();
        if (least.woodMm() <= 0) {
            through(plan, ways);
            return;
        }
        Channel drawn = plan.job().channel();
        double limit = plan.job().floorLimit().libraryValue();
        RepairedNeck asItIs = RepairedNeck.asItIs(plan);
        RepairedNeck filled = asItIs.reading(NeckFeature.CHANNEL_DEPTH, drawn.depthMm());
        Statement strip = plan.words(
                        "strip-deep",
                        "{thick:text} thick, {width:text} wide, from 0 at the last good pass where the cutter crept.")
                .with("thick", Kind.MM, d)
                .with("width", Kind.MM, plan.made().channel().widthMm() - FIT_MM);
        if (least.woodMm() < limit) {
            ways.way(
                            RepairCode.STRIP_ON_THE_FLOOR,
                            plan.words(
                                            "strip-with-epoxy",
                                            "{thick:text} thick, {width:text} wide, glued to the floor with epoxy; carve that"
                                                    + " zone last and fuller.")
                                    .with("thick", Kind.MM, d)
                                    .with(
                                            "width",
                                            Kind.MM,
                                            plan.made().channel().widthMm() - FIT_MM))
                    .before(GLUE_FINGERBOARD)
                    .undoes(LAY_IN_THE_ROD)
                    .leavesEnough(filled);
        }
        ways.way(RepairCode.STRIP_UNDER_THE_ROD, strip)
                .before(GLUE_FINGERBOARD)
                .undoes(LAY_IN_THE_ROD)
                .unless(
                        least.woodMm() < limit,
                        plan.words("floor-too-thin", "the floor is {wood:small} of {limit:brief}: it wants epoxy")
                                .with("wood", Kind.MM, least.woodMm())
                                .with("limit", Kind.MM, limit))
                .leavesEnough(filled);
        boolean fixed = drawn.hasAdjusterPocket()
                && drawn.rod()
                        .filter(rod -> rod.kind() == TrussRod.Kind.TWO_WAY)
                        .isPresent();
        ways.way(
                        RepairCode.THICKER_FILLET,
                        size(plan, "low-rod", "{size:text} thicker; the rod stays at the floor.", d))
                .before(GLUE_FINGERBOARD)
                .unless(fixed, plan.words("fixed-adjuster", "the two-way rod's adjuster sits in its pocket"))
                .leavesEnough(asItIs);
        ways.way(RepairCode.TALLER_ROD, size(plan, "rod-taller-by", "{size:text} taller, of the same width.", d))
                .before(GLUE_FINGERBOARD)
                .leavesEnough(asItIs);
        deeper(plan, ways, d);
    }

    private static void deeper(Stages plan, ReadingRepairs ways, double d) {
        RepairedNeck after = RepairedNeck.asItIs(plan).deeper(d);
        double deepest = Math.max(
                after.after().neck().back().firstDepthMm(),
                after.after().neck().back().secondDepthMm());
        ways.way(RepairCode.DEEPER_SHAFT, size(plan, "shaft-deeper-by", "{size:text} deeper over the channel.", d))
                .before(CARVE_THE_NECK, ROUGH_OUT_THE_BACK)
                .unless(
                        deepest > plan.blank().thicknessMm(),
                        plan.words("thin-blank", "the blank is {blank:brief} thick, and {deep:brief} are wanted")
                                .with("blank", Kind.MM, plan.blank().thicknessMm())
                                .with("deep", Kind.MM, deepest))
                .leavesEnough(after)
                .looks("felt", "0.5 mm of depth is felt");
    }

    private static void through(Stages plan, ReadingRepairs ways) {
        double[] hole = plan.floor().wood().along(PLACES).stream()
                .filter(one -> one.woodMm() <= 0)
                .mapToDouble(WoodAt::stationMm)
                .sorted()
                .toArray();
        double length = hole.length == 0 ? 0 : hole[hole.length - 1] - hole[0];
        double thick = plan.job().floorLimit().libraryValue();
        Channel cut = plan.made().channel();
        ways.way(
                        RepairCode.STRIPE_THROUGH,
                        plan.words(
                                        "stripe",
                                        "Cut right through from the back, {width:brief} wide, and glue a contrasting strip in"
                                                + " up to the rod: all along it looks meant.")
                                .with("width", Kind.MM, cut.widthMm() + 2))
                .before(GLUE_FINGERBOARD)
                .undoes(LAY_IN_THE_ROD)
                .looks("stripe-shows", "a stripe along the back");
        ways.way(
                        RepairCode.PATCH,
                        plan.words(
                                        "patch-1-in-8",
                                        "{thick:brief} thick over the hole of {hole:text}, its slopes 1 in 8: {length:text}"
                                                + " long.")
                                .with("thick", Kind.MM, thick)
                                .with("hole", Kind.MM, length)
                                .with("length", Kind.MM, length + 16 * thick))
                .unless(
                        isUnderTheAdjuster(cut, hole),
                        plan.words("hole-under-the-adjuster", "the hole is under the adjuster"))
                .looks("patch-shows", "a patch on the back");
        ways.way(
                        RepairCode.BACK_LAMINATION,
                        plan.words(
                                        "new-back",
                                        "Plane the back flat to the channel's floor and glue on {thick:brief} or more under"
                                                + " it.")
                                .with("thick", Kind.MM, thick))
                .before(FIT_HEEL_TO_BODY)
                .undoes(ROUGH_OUT_THE_BACK, CARVE_THE_NECK)
                .looks("joint-line", "a joint line along both sides");
    }

    private static boolean isUnderTheAdjuster(Channel cut, double[] hole) {
        double start = cut.adjusterPocketStartMm();
        return cut.hasAdjusterPocket()
                && Arrays.stream(hole).anyMatch(x -> x >= start && x <= start + cut.adjusterPocketLengthMm());
    }

    private static void loose(Stages plan, ReadingRepairs ways, double play) {
        RepairedNeck asItIs = RepairedNeck.asItIs(plan);
        if (play <= SLEEVED_MM) {
            ways.way(
                            RepairCode.SLEEVE,
                            size(plan, "sleeve", "Heat-shrink tube or dabs of silicone, {size:small} of play.", play))
                    .before(GLUE_FINGERBOARD)
                    .undoes(LAY_IN_THE_ROD)
                    .leavesEnough(asItIs);
        }
        if (play <= VENEERED_MM) {
            ways.way(
                            RepairCode.VENEER_THE_WALLS,
                            size(plan, "veneer-each-wall", "{size:small} on each wall.", (play - FIT_MM) / 2))
                    .before(GLUE_FINGERBOARD)
                    .undoes(LAY_IN_THE_ROD)
                    .leavesEnough(asItIs);
        } else {
            ChannelRepairs.fill(
                    plan, ways, ChannelRepairs.openedMm(plan.made().channel().widthMm(), 0));
        }
    }

    private static void narrow(Stages plan, ReadingRepairs ways, double rod, double read) {
        double wide = rod + FIT_MM;
        ways.way(
                        RepairCode.WIDEN_BOTH_WALLS,
                        size(
                                plan,
                                "fence-away-and-turn",
                                "Fence {size:small} away from the cutter, cut, turn end for end, cut: each wall loses that,"
                                        + " the middle stays.",
                                (wide - read) / 2))
                .before(GLUE_FINGERBOARD, TAPER_THE_SIDES, CARVE_THE_NECK)
                .leavesEnough(RepairedNeck.asItIs(plan).reading(NeckFeature.CHANNEL_WIDTH, wide));
    }

    /**
     * @param inward 1 where a greater station makes the channel shorter, -1 where it makes it longer
     */
    private static Optional<List<Repair>> end(Stages plan, NeckFeature feature, double drawn, int inward) {
        return plan.measured().of(feature).map(read -> {
            double shorter = inward * (read.libraryValue() - drawn);
            Limits<Length> limits = Limits.between(
                    plan.style().amount(drawn - ENDS_MM), plan.style().amount(drawn + ENDS_MM));
            return ReadingRepairs.of(
                    plan,
                    feature.toString(),
                    Verdict.of(read, limits),
                    REST_THE_STOCK,
                    ways -> end(plan, ways, feature, drawn, shorter));
        });
    }

    private static void end(Stages plan, ReadingRepairs ways, NeckFeature feature, double drawn, double shorter) {
        RepairedNeck after = RepairedNeck.asItIs(plan).reading(feature, drawn);
        if (shorter > 0) {
            ways.way(
                            RepairCode.CHISEL_THE_END,
                            size(plan, "chisel-on", "{size:text} farther; the round end counts its radius.", shorter))
                    .before(GLUE_FINGERBOARD)
                    .undoes(LAY_IN_THE_ROD)
                    .leavesEnough(after);
            return;
        }
        Channel cut = plan.made().channel();
        ways.way(
                        RepairCode.BLOCK_AT_THE_END,
                        plan.words("block", "{width:brief} x {deep:brief} x {length:brief}, grain along, flush.")
                                .with("width", Kind.MM, cut.widthMm())
                                .with("deep", Kind.MM, cut.depthMm())
                                .with("length", Kind.MM, BLOCK_LONGER_MM - shorter))
                .before(GLUE_FINGERBOARD)
                .undoes(LAY_IN_THE_ROD)
                .leavesEnough(after);
        boolean nut = drawn + shorter <= 0 && feature == NeckFeature.CHANNEL_START;
        ways.way(RepairCode.KEEP, plan.words("keep-the-gap", "The rod is stopped by a dab of silicone."))
                .unless(nut, plan.words("open-under-the-nut", "the channel is open under the nut"))
                .leavesEnough(RepairedNeck.asItIs(plan));
    }
}
