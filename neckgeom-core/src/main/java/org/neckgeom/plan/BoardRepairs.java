package org.neckgeom.plan;

import static org.neckgeom.order.Operation.CARVE_THE_NECK;
import static org.neckgeom.order.Operation.FIT_HEEL_TO_BODY;
import static org.neckgeom.order.Operation.FIT_THE_NUT;
import static org.neckgeom.order.Operation.FRET_THE_FINGERBOARD;
import static org.neckgeom.order.Operation.GLUE_FINGERBOARD;
import static org.neckgeom.order.Operation.LEVEL_THE_FRETS;
import static org.neckgeom.order.Operation.REST_THE_STOCK;
import static org.neckgeom.order.Operation.TRIM_TO_THE_FINGERBOARD;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ObjDoubleConsumer;
import javax.measure.quantity.Length;
import org.neckgeom.form.Kind;
import org.neckgeom.heel.BackSet;
import org.neckgeom.heel.HeelCheek;
import org.neckgeom.heel.HeelWedge;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.StringSet;

/** The repairs of a board glued off the channel, and of a heel that leads the strings too high, too low or aside. */
final class BoardRepairs {

    private static final double LEAST_MARGIN_MM = 3;
    private static final double MOST_PLANED_MM = 1;

    private BoardRepairs() {}

    static List<Repair> of(Stages plan) {
        List<Repair> all = new ArrayList<>(board(plan));
        plan.shape()
                .neckSet()
                .ifPresent(set -> plan.neck().heel().ifPresent(heel -> {
                    plan.measured()
                            .of(NeckFeature.HEIGHT_AT_BRIDGE)
                            .ifPresent(read -> all.addAll(atTheBridge(
                                    plan,
                                    NeckFeature.HEIGHT_AT_BRIDGE,
                                    BudgetCode.PROJECTION_HEIGHT,
                                    (ways, high) -> height(plan, ways, set, heel, -high))));
                    plan.measured()
                            .of(NeckFeature.OFFSET_AT_BRIDGE)
                            .ifPresent(read -> all.addAll(atTheBridge(
                                    plan,
                                    NeckFeature.OFFSET_AT_BRIDGE,
                                    BudgetCode.STRING_LINE,
                                    (ways, offset) -> aside(plan, ways, set, heel, offset))));
                }));
        return all;
    }

    /** By all that is known of it, of which the reading is the most: as its check and the heel's corners have it. */
    private static List<Repair> atTheBridge(
            Stages plan, NeckFeature read, BudgetCode of, ObjDoubleConsumer<ReadingRepairs> fill) {
        Estimate<Length> known = plan.state().known(of).estimate();
        return ReadingRepairs.of(
                plan,
                read.toString(),
                Verdict.of(known, plan.job().limits(of)),
                REST_THE_STOCK,
                ways -> fill.accept(ways, known.libraryValue()));
    }

    private static List<Repair> board(Stages plan) {
        TreeMap<Double, Estimate<Length>> read = new TreeMap<>();
        plan.measured()
                .of(NeckFeature.FINGERBOARD_OFFSET)
                .ifPresent(one -> read.put(plan.neck().bodyJointMm(), one));
        plan.measured().offsets().stream()
                .filter(one -> one.feature() == MeasuredNeck.Located.FINGERBOARD)
                .forEach(one -> read.put(one.station().libraryValue(), one.offset()));
        Limits<Length> limits = plan.job().limits(BudgetCode.BOARD_AT_BODY_JOINT);
        Optional<Estimate<Length>> worst =
                read.values().stream().max(Comparator.comparing(one -> Math.abs(one.libraryValue())));
        return worst.map(one -> ReadingRepairs.of(
                        plan,
                        NeckFeature.FINGERBOARD_OFFSET.toString(),
                        Verdict.of(one, limits),
                        REST_THE_STOCK,
                        ways -> boardOff(plan, ways, read)))
                .orElse(List.of());
    }

    private static void boardOff(Stages plan, ReadingRepairs ways, NavigableMap<Double, Estimate<Length>> read) {
        double most = read.values().stream()
                .mapToDouble(one -> Math.abs(one.libraryValue()))
                .max()
                .orElseThrow();
        double spare = CutParts.spareMm(plan, most);
        ways.way(
                        RepairCode.TRIM_THE_NECK,
                        plan.words("trim-to-the-board", "{spare:brief} to spare on the tight side.")
                                .with("spare", Kind.MM, spare - ChannelRepairs.CUT_MM))
                .before(TRIM_TO_THE_FINGERBOARD, CARVE_THE_NECK)
                .unless(
                        spare < ChannelRepairs.CUT_MM,
                        plan.words(
                                        "no-spare",
                                        "the neck about this board is {missing:size brief} too wide for the blank")
                                .with("missing", Kind.MM, spare - ChannelRepairs.CUT_MM))
                .budget("board-is-the-line", "the board's offset stays in the string line");
        double nut = atMm(read, 0);
        double saddle = atMm(read, plan.neck().scale().lengthMm());
        ways.way(
                        RepairCode.MOVE_THE_STRINGS,
                        plan.words(
                                        "nut-and-bridge",
                                        "The nut by {nut:small}, the bridge by {bridge:small}, toward the side the board lies"
                                                + " to; only before the bridge is on.")
                                .with("nut", Kind.MM, Math.abs(nut))
                                .with("bridge", Kind.MM, Math.abs(saddle)))
                .before(FIT_THE_NUT)
                .budget("bridge-follows", "the bridge is set to the board's line");
        Optional<Double> margin = plan.neck()
                .strings()
                .flatMap(StringSet::across)
                .map(Across::edgeMargin)
                .map(one -> one.libraryValue() - most);
        margin.ifPresent(left -> ways.way(
                        RepairCode.KEEP,
                        plan.words("margin-left", "{margin:text} from an outer string to the board's edge.")
                                .with("margin", Kind.MM, left))
                .unless(
                        left < LEAST_MARGIN_MM,
                        plan.words(
                                        "margin-too-small",
                                        "{margin:text} of {least:brief} would be left beside an outer string")
                                .with("margin", Kind.MM, left)
                                .with("least", Kind.MM, LEAST_MARGIN_MM)));
        ways.way(RepairCode.TAKE_THE_BOARD_OFF, plan.words("heat-and-pins", "With heat; refit it with fresh pins."))
                .undoes(GLUE_FINGERBOARD, TRIM_TO_THE_FINGERBOARD);
    }

    /** Along the straight line through the first and the last reading; one alone is of a board that lies parallel. */
    private static double atMm(NavigableMap<Double, Estimate<Length>> read, double x) {
        Map.Entry<Double, Estimate<Length>> first = read.firstEntry();
        Map.Entry<Double, Estimate<Length>> last = read.lastEntry();
        double y = first.getValue().libraryValue();
        return read.size() == 1
                ? y
                : y + (last.getValue().libraryValue() - y) * (x - first.getKey()) / (last.getKey() - first.getKey());
    }

    /**
     * @param change wanted at the bridge, positive higher
     */
    private static void height(Stages plan, ReadingRepairs ways, BackSet set, Heel heel, double change) {
        HeelWedge wedge =
                set.wedge(plan.style().amount(heel.heightMm()), plan.style().amount(change));
        ways.way(
                        RepairCode.HEEL_WEDGE,
                        plan.words(
                                        wedge.isAtCap() ? "wedge-at-the-cap" : "wedge-at-the-top",
                                        "{cut:text} off the cheeks at the "
                                                + (wedge.isAtCap()
                                                        ? "cap, nothing at the top."
                                                        : "top edge, nothing at the cap."))
                                .with("cut", Kind.MM, wedge.cut().libraryValue()))
                .before(FIT_HEEL_TO_BODY)
                .budget("read-again-after", "read the height again after each pass");
        ways.way(
                RepairCode.OTHER_SADDLE,
                plan.words(
                                change > 0 ? "lower-saddle" : "higher-saddle",
                                "{change:size small} " + (change > 0 ? "lower" : "higher")
                                        + ", no more than a third of it out of its seat.")
                        .with("change", Kind.MM, change));
        double joint = plan.neck().bodyJointMm();
        double scale = plan.neck().scale().lengthMm();
        double planed = Math.abs(change) * joint / (change > 0 ? scale - joint : scale);
        ways.way(
                        RepairCode.PLANE_THE_BOARD,
                        plan.words(
                                        change > 0 ? "plane-at-the-nut" : "plane-at-the-joint",
                                        "{planed:text} off at the "
                                                + (change > 0 ? "nut, 0 at the joint." : "joint, 0 at the nut."))
                                .with("planed", Kind.MM, planed))
                .unless(
                        Math.abs(change) > MOST_PLANED_MM,
                        plan.words(
                                        "board-too-thin",
                                        "more than {most:brief} at the bridge takes too much off the board")
                                .with("most", Kind.MM, MOST_PLANED_MM))
                .undoes(FRET_THE_FINGERBOARD, LEVEL_THE_FRETS);
    }

    private static void aside(Stages plan, ReadingRepairs ways, BackSet set, Heel heel, double offset) {
        HeelCheek cheek =
                set.cheek(plan.style().amount(heel.widthMm()), plan.style().amount(offset));
        ways.way(
                        RepairCode.HEEL_CHEEK,
                        plan.words(
                                        cheek.isOnTreble() ? "cheek-on-the-treble-side" : "cheek-on-the-bass-side",
                                        "{cut:text} off the " + (cheek.isOnTreble() ? "treble" : "bass")
                                                + " side, nothing at the other.")
                                .with("cut", Kind.MM, cheek.cut().libraryValue()))
                .before(FIT_HEEL_TO_BODY)
                .budget("read-again-after", "read the height again after each pass");
    }
}
