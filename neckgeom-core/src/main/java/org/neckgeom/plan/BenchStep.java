package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.neck.Channel;
import org.neckgeom.order.Operation;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;

/**
 * The step at hand of a job: its operation, and what is still to be read on it.
 *
 * <p>It is the operation read last while something of it is unread, else the first one left on which something is read, else
 * the first one left. What comes before it in the order is taken as done once something is read on it.
 *
 * @param operation at hand
 * @param before operations of the order before it, on which nothing is read
 * @param then the operation after it
 * @param asks what is unread, in the order in which it is read
 */
record BenchStep(Operation operation, List<Operation> before, Optional<Operation> then, List<BenchAsk> asks) {

    /** Readings of a trial cut, which are kept together. */
    static final String CUT = "trial-cut";

    /** The two walls on the neck, which make one offset. */
    static final String WALLS = "walls";

    /** A fence move. */
    static final String MOVE = "fence-move";

    /** The width of a piece that was cut already. */
    static final String PIECE = "piece";

    /** Which way the fence went. */
    static final String WAY = "fence-way";

    static final String SCARF_ANGLE = "scarf-angle";

    /** Before the number of the fret. */
    static final String BACK_DEPTH = "back-depth-at-fret-";

    static final String TOWARD = "toward";
    static final String AWAY = "away";

    /** A fence set by rule and eye puts a slot this near the middle (common practice). */
    private static final double BY_RULE_MM = 5;

    /** Less than this is no wall, no slot and no depth. */
    private static final double LEAST_MM = 0.01;

    private static final double WIDTHS_MM = 1;
    private static final double SIZES_MM = 1;
    private static final double ENDS_MM = 3;
    private static final double OFFSETS_MM = 1;
    private static final String TREBLE = " (positive: toward the treble side)";
    private static final double BRIDGE_MM = 5;
    private static final double ANGLES_DEGREES = 2;

    static Optional<BenchStep> of(Job job) {
        Stages plan = job.stages();
        List<Operation> left = plan.order().plan().steps().stream()
                .map(step -> step.operation())
                .toList();
        Optional<Operation> begun = begun(job, plan);
        if (begun.isPresent()) {
            return Optional.of(
                    new BenchStep(begun.get(), List.of(), left.stream().findFirst(), asks(plan, begun.get())));
        }
        for (int i = 0; i < left.size(); i++) {
            List<BenchAsk> asks = asks(plan, left.get(i));
            if (!asks.isEmpty()) {
                return Optional.of(new BenchStep(left.get(i), left.subList(0, i), after(left, i), asks));
            }
        }
        return left.stream().findFirst().map(first -> new BenchStep(first, List.of(), after(left, 0), List.of()));
    }

    private static Optional<Operation> after(List<Operation> left, int i) {
        return i + 1 < left.size() ? Optional.of(left.get(i + 1)) : Optional.empty();
    }

    /** The operation read last, while something of it is unread and it was not given as done. */
    private static Optional<Operation> begun(Job job, Stages plan) {
        List<Operation> finished = plan.order().left().finished();
        for (int i = finished.size() - 1; i >= 0; i--) {
            Operation last = finished.get(i);
            if (job.measured().proofs().contains(usualName(last))) {
                boolean isOpen =
                        !job.done().contains(last.name()) && !asks(plan, last).isEmpty();
                return isOpen ? Optional.of(last) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** What is unread of an operation: of a channel that may not be cut yet what its setting needs. */
    private static List<BenchAsk> asks(Stages plan, Operation operation) {
        boolean isToBeSet = operation.cutsTheChannel()
                && !plan.isDone(Operation.CUT_ROD_CHANNEL)
                && !plan.slot().verdict().mayCut();
        return isToBeSet ? setting(plan, plan.slot().verdict().step()) : readings(plan, operation);
    }

    /** What is read of a trial cut. */
    static List<BenchAsk> trial(Stages plan) {
        return setting(plan, SlotStep.TRIAL_CUT);
    }

    /** What the usual neck's operation in its place is called: a groove or a bar's channel is set and read as a rod's. */
    static String usualName(Operation operation) {
        return operation.cutsTheChannel() ? Operation.CUT_ROD_CHANNEL : operation.name();
    }

    /** What is unread of an operation that is done. */
    static List<BenchAsk> readings(Stages plan, Operation operation) {
        List<BenchAsk> asks = new ArrayList<>();
        switch (usualName(operation)) {
            case Operation.CUT_ROD_CHANNEL -> channel(plan, asks);
            case Operation.CUT_SCARF, Operation.SAW_OUT_THE_HEAD -> scarfAngle(plan, asks);
            case Operation.GLUE_HEAD ->
                add(plan, asks, NeckFeature.SCARF_STEP, " (positive: the shaft stands proud)", 0, SIZES_MM);
            case Operation.TRUE_THE_HEAD -> head(plan, asks);
            case Operation.CUT_HEEL_JOINT -> {
                add(
                        plan,
                        asks,
                        NeckFeature.HEIGHT_AT_BRIDGE,
                        " of the fret line (below the bridge top: negative)",
                        0,
                        BRIDGE_MM);
                add(plan, asks, NeckFeature.OFFSET_AT_BRIDGE, TREBLE, 0, BRIDGE_MM);
            }
            case Operation.GLUE_FINGERBOARD ->
                add(plan, asks, NeckFeature.FINGERBOARD_OFFSET, " at the body joint" + TREBLE, 0, OFFSETS_MM);
            case Operation.CARVE_THE_NECK -> back(plan, asks);
            default -> {
                // Nothing is read on it.
            }
        }
        return List.copyOf(asks);
    }

    private static void channel(Stages plan, List<BenchAsk> asks) {
        Channel cut = plan.job().channel();
        add(plan, asks, NeckFeature.CHANNEL_DEPTH, "", cut.depthMm(), SIZES_MM);
        add(plan, asks, NeckFeature.CHANNEL_WIDTH, "", cut.widthMm(), SIZES_MM);
        add(plan, asks, NeckFeature.CHANNEL_START, " from the nut", cut.startMm(), ENDS_MM);
        add(plan, asks, NeckFeature.CHANNEL_END, " from the nut", cut.endMm(), ENDS_MM);
        if (!plan.measured().has(NeckFeature.SLOT_OFFSET)) {
            walls(plan, WALLS, " at the head end").stream()
                    .map(ask -> ask.code().equals("near-wall") ? ask.leftOut() : ask)
                    .forEach(asks::add);
        }
    }

    /** Each wall of a slot in the middle of the blank, and so from the fence to the cutter's near edge. */
    static double wallMm(Stages plan) {
        return (plan.blank().widthMm() - plan.shop().cutter().diameterMm()) / 2;
    }

    private static List<BenchAsk> walls(Stages plan, String group, String where) {
        double blank = plan.blank().widthMm();
        double half = wallMm(plan);
        return List.of(
                wall(plan, "near-wall", "near wall" + where, group, half, blank),
                wall(plan, "far-wall", "far wall" + where, group, half, blank));
    }

    private static BenchAsk wall(Stages plan, String code, String words, String group, double half, double most) {
        return BenchAsk.length(code, words, group, plan.style(), half, BY_RULE_MM, LEAST_MM, 2 * most);
    }

    private static List<BenchAsk> setting(Stages plan, SlotStep step) {
        List<BenchAsk> asks = new ArrayList<>();
        LengthStyle style = plan.style();
        double width = plan.blank().widthMm();
        BenchAsk piece = BenchAsk.length(
                "piece", "width of the test piece", PIECE, style, width, WIDTHS_MM, LEAST_MM, 2 * width);
        switch (step) {
            case TRIAL_CUT, READ_AGAIN -> {
                asks.addAll(walls(plan, CUT, ""));
                double cutter = plan.shop().cutter().diameterMm();
                asks.add(
                        BenchAsk.length("slot", "width of the slot", CUT, style, cutter, WIDTHS_MM / 2, LEAST_MM, width)
                                .leftOut());
                asks.add(new BenchAsk(piece.question(), CUT, piece.lowest(), piece.highest()).leftOut());
            }
            case MEASURE_PIECE -> asks.add(piece);
            case MOVE -> {
                double move = plan.slot().verdict().move().amountMm();
                asks.add(BenchAsk.length("moved", "fence moved by", MOVE, style, move, move / 2, 0, width));
            }
            case CHECK_MOVE -> asks.add(BenchAsk.choice("way", "which way the fence went last", WAY, TOWARD, AWAY));
            case CUT, SQUARE_EDGES, TAPERED_STRIP, CANNOT -> {
                // No reading helps: the verdict states what does.
            }
        }
        return List.copyOf(asks);
    }

    private static void scarfAngle(Stages plan, List<BenchAsk> asks) {
        if (plan.measured().scarfAngle().isEmpty()) {
            plan.neck()
                    .head()
                    .map(head -> BenchAsk.angle(
                                    SCARF_ANGLE, "head angle as sawn", SCARF_ANGLE, head.angleRad(), ANGLES_DEGREES)
                            .leftOut())
                    .ifPresent(asks::add);
        }
    }

    private static void head(Stages plan, List<BenchAsk> asks) {
        plan.neck().head().ifPresent(head -> {
            add(plan, asks, NeckFeature.HEAD_THICKNESS, " without veneers", head.thicknessMm(), 2 * SIZES_MM);
            for (NeckFeature side : List.of(NeckFeature.HEAD_WIDTH_BASS, NeckFeature.HEAD_WIDTH_TREBLE)) {
                add(plan, asks, side, " from the channel's middle", HeadRepairs.widestMm(head, side), ENDS_MM);
            }
        });
    }

    private static void back(Stages plan, List<BenchAsk> asks) {
        backAt(plan, asks, plan.neck().back().firstFret());
        backAt(plan, asks, plan.neck().back().secondFret());
    }

    private static void backAt(Stages plan, List<BenchAsk> asks, double fret) {
        double x = plan.neck().scale().fretMm(fret);
        if (!plan.measured().backDepths().containsKey(x)) {
            String number = Numbers.trimmed(fret, 2);
            asks.add(BenchAsk.length(
                            BACK_DEPTH + number,
                            "depth of the carved back at fret " + number,
                            BACK_DEPTH + number,
                            plan.style(),
                            plan.neck().backDepthAtMm(x),
                            2 * SIZES_MM,
                            LEAST_MM,
                            plan.blank().thicknessMm() * 2)
                    .leftOut());
        }
    }

    static String code(NeckFeature feature) {
        return feature.toString().replace(' ', '-');
    }

    private static void add(
            Stages plan, List<BenchAsk> asks, NeckFeature feature, String more, double middle, double about) {
        if (!plan.measured().has(feature)) {
            String code = code(feature);
            double most = plan.blank().lengthMm();
            asks.add(BenchAsk.length(
                            code,
                            feature + more,
                            code,
                            plan.style(),
                            middle,
                            about,
                            feature.isSize() ? LEAST_MM : -most,
                            most)
                    .leftOut());
        }
    }
}
