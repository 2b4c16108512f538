package org.neckgeom.plan;

import static org.neckgeom.order.Operation.CARVE_THE_NECK;
import static org.neckgeom.order.Operation.CUT_ROD_CHANNEL;
import static org.neckgeom.order.Operation.GLUE_FINGERBOARD;
import static org.neckgeom.order.Operation.LAY_IN_THE_ROD;
import static org.neckgeom.order.Operation.REST_THE_STOCK;
import static org.neckgeom.order.Operation.TAPER_THE_SIDES;
import static org.neckgeom.order.Operation.TRIM_TO_THE_FINGERBOARD;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.TrussRod;

/** The repairs of a channel that is off the middle or askew. All limits here are common practice. */
final class ChannelRepairs {

    /** What sawing and planing to new lines takes off an edge. */
    static final double CUT_MM = 0.5;

    private static final double MOST_PACKED_MM = 0.5;
    private static final double LEAST_STRIP_MM = 1;
    private static final double LEAST_WALL_MM = 5;
    private static final double STRIP_LONGER_MM = 20;

    private ChannelRepairs() {}

    static List<Repair> of(Stages plan) {
        if (!plan.measured().has(NeckFeature.SLOT_OFFSET)) {
            return List.of();
        }
        SlotPlace place = plan.slot().place();
        double off = place.offsetMmAt(place.worstStationMm());
        return ReadingRepairs.of(
                plan, NeckFeature.SLOT_OFFSET.toString(), plan.slot().kept(), REST_THE_STOCK, ways -> {
                    moveTheLines(plan, ways);
                    fillAndCut(plan, ways, Math.abs(off));
                    widen(plan, ways, off);
                    keep(plan, ways, off);
                });
    }

    private static void moveTheLines(Stages plan, ReadingRepairs ways) {
        double spare = CutParts.spareMm(plan) - CUT_MM;
        double skew = plan.slot().place().skew().libraryValue();
        double tip = plan.neck().head().map(Head::lengthMm).orElse(0.0) * Math.abs(StrictMath.tan(skew));
        Statement how = plan.words(
                        skew == 0 ? "from-the-channel" : "from-the-channel-askew",
                        "Draw the neck from the channel: {spare:brief} to spare on the tight side."
                                + (skew == 0
                                        ? ""
                                        : " Its lines turn by {skew:size 2}; the head's tip comes {tip:text} off the old"
                                                + " line: draw its outline again."))
                .with("spare", Kind.MM, spare)
                .with("skew", Kind.RAD, skew)
                .with("tip", Kind.MM, tip);
        ways.way(RepairCode.MOVE_THE_LINES, how)
                .before(TAPER_THE_SIDES, TRIM_TO_THE_FINGERBOARD, CARVE_THE_NECK)
                .unless(
                        spare < 0,
                        plan.words(
                                        "no-spare",
                                        "the neck about this channel is {missing:size brief} too wide for the blank")
                                .with("missing", Kind.MM, spare))
                .leavesEnough(RepairedNeck.asItIs(plan).centred())
                .looks("lamination-shows", "a lamination in the middle shows the offset")
                .budget("leaves-the-chains", "the offset leaves every later chain; no edge is a reference any more");
    }

    private static void fillAndCut(Stages plan, ReadingRepairs ways, double off) {
        Channel cut = plan.made().channel();
        double opened = openedMm(cut.widthMm(), off);
        double wall = DoubleStream.of(cut.startMm(), cut.endMm())
                .map(x -> plan.neck().halfWidthAtMm(x)
                        - Math.abs(plan.slot().place().offsetMmAt(x))
                        - opened / 2)
                .min()
                .orElseThrow();
        fill(plan, ways, opened)
                .unless(
                        wall < LEAST_WALL_MM,
                        plan.words("thin-wall", "{wall:size brief} of {least:brief} would be left beside it")
                                .with("wall", Kind.MM, wall)
                                .with("least", Kind.MM, LEAST_WALL_MM));
    }

    /** Wide enough that a strip is left at both walls, in half millimetres. */
    static double openedMm(double width, double off) {
        return Math.ceil(2 * (width + 2 * (off + LEAST_STRIP_MM)) - 1e-9) / 2;
    }

    /** Opened, filled with a strip along the grain, and cut again. */
    static Repair.Draft fill(Stages plan, ReadingRepairs ways, double opened) {
        Channel drawn = plan.job().channel();
        double off = Math.abs(plan.slot().place().offsetMmAt(plan.slot().place().worstStationMm()));
        Statement how = plan.words(
                        "open-fill-cut",
                        "Open to {opened:brief}, glue in a strip {opened:brief} x {deep:brief} x {length:brief}, grain along;"
                                + " plane it flush, make a trial cut, cut again. {thick:text} and {thin:text} of it stay at"
                                + " the walls.")
                .with("opened", Kind.MM, opened)
                .with("deep", Kind.MM, plan.made().channel().depthMm() + 1)
                .with("length", Kind.MM, plan.made().channel().lengthMm() + STRIP_LONGER_MM)
                .with("thick", Kind.MM, (opened - drawn.widthMm()) / 2 + off)
                .with("thin", Kind.MM, (opened - drawn.widthMm()) / 2 - off);
        RepairedNeck after = RepairedNeck.asItIs(plan).centred();
        for (NeckFeature size : CutParts.SIZES) {
            if (plan.measured().has(size)) {
                after = after.reading(size, CutParts.drawnMm(plan, size));
            }
        }
        return ways.way(RepairCode.FILL_AND_CUT_AGAIN, how)
                .before(GLUE_FINGERBOARD, TAPER_THE_SIDES, CARVE_THE_NECK)
                .undoes(CUT_ROD_CHANNEL, LAY_IN_THE_ROD)
                .leavesEnough(after)
                .looks("two-glue-lines", "two glue lines under the board")
                .budget("new-centring", "the uncertainty of the new centring takes the offset's place");
    }

    private static void widen(Stages plan, ReadingRepairs ways, double off) {
        double e = Math.abs(off);
        double wide = plan.made().channel().widthMm() + 2 * e;
        Statement how = plan.words(
                        off > 0 ? "widen-turned" : "widen-away",
                        (off > 0
                                        ? "Turn the blank end for end, the fence left as it is:"
                                        : "Same edge on the fence, the fence {twice:small} away from the cutter:")
                                + " {width:brief} wide. Pack each wall with {pack:small}.")
                .with("twice", Kind.MM, 2 * e)
                .with("width", Kind.MM, wide)
                .with("pack", Kind.MM, e);
        ways.way(RepairCode.WIDEN_AND_PACK, how)
                .before(GLUE_FINGERBOARD, TAPER_THE_SIDES, CARVE_THE_NECK)
                .unless(
                        e > MOST_PACKED_MM,
                        plan.words("packed-too-far", "{off:small} is more than the {most:small} that are packed")
                                .with("off", Kind.MM, e)
                                .with("most", Kind.MM, MOST_PACKED_MM))
                .undoes(LAY_IN_THE_ROD)
                .leavesEnough(RepairedNeck.asItIs(plan).centred().reading(NeckFeature.CHANNEL_WIDTH, wide))
                .budget("packed-to-the-middle", "the packed rod lies in the middle; the walls stay off it");
    }

    private static void keep(Stages plan, ReadingRepairs ways, double off) {
        boolean single = plan.job()
                .channel()
                .rod()
                .filter(rod -> rod.kind() == TrussRod.Kind.SINGLE_ACTION)
                .isPresent();
        double line = plan.state().known(BudgetCode.STRING_LINE).estimate().libraryValue();
        Optional<Double> bow = plan.strength()
                .relief()
                .filter(relief -> single)
                .map(relief -> relief.rodForceFor(plan.job().relief()))
                .map(rod -> Math.abs(rod.sidewaysBow(plan.style().amount(off)).libraryValue()));
        ways.way(
                        RepairCode.KEEP,
                        plan.words(
                                        bow.isPresent() ? "keep-single-by" : single ? "keep-single" : "keep-two-way",
                                        (bow.isPresent()
                                                        ? "The single-action rod bows the neck {bow:small} sideways, and the"
                                                        : single
                                                                ? "The single-action rod bows the neck a little sideways,"
                                                                        + " and the"
                                                                : "The")
                                                + " offset moves what is located on the channel.")
                                .with("bow", Kind.MM, bow.orElse(0.0)))
                .unless(
                        !plan.job().limits(BudgetCode.STRING_LINE).allowLibrary(line),
                        plan.words("string-line-off", "the string line would be {line:small} off at the bridge")
                                .with("line", Kind.MM, Math.abs(line)))
                .leavesEnough(RepairedNeck.asItIs(plan))
                .budget("stays-in-the-chains", "the offset stays in the wood beside the channel");
    }
}
