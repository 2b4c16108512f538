package org.neckgeom.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.channel.FeelerStack;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.Pass;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.channel.Spacer;
import org.neckgeom.channel.StopBlocks;
import org.neckgeom.channel.StopPlace;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.head.ScarfSaw;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.order.Operation;
import org.neckgeom.shop.Shop;
import org.neckgeom.strength.RodForce;
import org.neckgeom.strength.RodTurns;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** What to set for the step at hand: three to six rows, with digits that a shop can use. */
final class BenchSettings {

    /** What a test of the angle is run on. */
    private static final double TESTED_MM = 150;

    private static final double TESTED_IN_MM = 6 * 25.4;

    private final Stages plan;
    private final PlanSection.Draft draft;

    private BenchSettings(Stages plan, String code, String title) {
        this.plan = plan;
        this.draft = PlanSection.titled(code, title, plan.style());
    }

    static PlanSection of(Job job, Optional<BenchStep> step) {
        Stages plan = job.stages();
        if (step.isEmpty()) {
            return new BenchSettings(plan, "all-done", "All operations are done").draft.done();
        }
        return of(plan, step.get().operation());
    }

    static PlanSection of(Stages plan, Operation operation) {
        BenchSettings settings = new BenchSettings(plan, operation.code(), title(plan, operation));
        settings.rows(BenchStep.usualName(operation));
        return settings.draft.done();
    }

    /** What is set for a trial cut, made already or not. */
    static PlanSection trialCut(Stages plan) {
        BenchSettings settings = new BenchSettings(plan, "trial-cut", "Trial cut");
        settings.trialCut();
        settings.limit();
        return settings.draft.done();
    }

    /** What is set to cut the channel, may it be cut now or not. */
    static PlanSection cut(Stages plan, Operation operation) {
        BenchSettings settings = new BenchSettings(plan, operation.code(), cutting(operation));
        settings.cut(plan.slot().verdict());
        plan.slot().pocketStops().ifPresent(pocket -> settings.runs("pocketRuns", "two runs, pocket", pocket));
        return settings.draft.done();
    }

    /** Such as {@code Cut the rod channel}. */
    private static String cutting(Operation operation) {
        return "Cut the " + operation.name().substring("cut ".length());
    }

    private static String title(Stages plan, Operation operation) {
        if (operation.cutsTheChannel() && !plan.isDone(Operation.CUT_ROD_CHANNEL)) {
            return switch (plan.slot().verdict().step()) {
                case CUT -> cutting(operation);
                case READ_AGAIN -> "Read the same trial cut again";
                case MOVE -> "Move the fence";
                case TRIAL_CUT -> "Make a trial cut in a test piece";
                case MEASURE_PIECE -> "Measure the test piece";
                case CHECK_MOVE -> "Check which way the fence went";
                case SQUARE_EDGES -> "Plane the blank's edges parallel";
                case TAPERED_STRIP -> "Make a strip that tapers as the blank does";
                case CANNOT -> "Measure or set better before cutting";
            };
        }
        if (operation.cutsTheChannel()) {
            return "Read the channel that is cut";
        }
        String name = operation.name();
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    private void rows(String operation) {
        switch (operation) {
            case Operation.CUT_ROD_CHANNEL -> channel();
            case Operation.CUT_SCARF -> scarf();
            case Operation.SAW_OUT_THE_HEAD -> head(Optional.empty());
            case Operation.GLUE_HEAD, Operation.TRUE_THE_HEAD ->
                head(plan.measured().scarfAngle());
            case Operation.GLUE_HEEL_BLOCK, Operation.CUT_HEEL_JOINT, Operation.FIT_HEEL_TO_BODY -> heel();
            case Operation.TAPER_THE_SIDES, Operation.TRIM_TO_THE_FINGERBOARD -> taper();
            case Operation.ROUGH_OUT_THE_BACK, Operation.CARVE_THE_NECK -> back();
            case Operation.SAW_FRET_SLOTS, Operation.FRET_THE_FINGERBOARD -> frets();
            case Operation.GLUE_FINGERBOARD, Operation.TAPER_THE_FINGERBOARD -> board();
            case Operation.SQUARE_THE_EDGES, Operation.FLATTEN_THE_FACE -> blank();
            case Operation.FIT_THE_NUT -> setUp();
            case Operation.SET_UP -> {
                setUp();
                rod();
            }
            default -> {
                // Nothing is set for it.
            }
        }
    }

    private void row(String key, String label, String words, double mm) {
        draft.row(key, label, ShopDigits.words(code(key), words, plan.style(), mm));
    }

    private void row(String key, String label, String words) {
        draft.row(key, label, draft.words(code(key), words));
    }

    /** A key such as {@code rearStop} as the code of its sentence. */
    private static String code(String key) {
        return key.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    private void channel() {
        SlotVerdict verdict = plan.slot().verdict();
        if (plan.isDone(Operation.CUT_ROD_CHANNEL)) {
            drawn();
            return;
        }
        if (verdict.mayCut()) {
            cut(verdict);
            return;
        }
        switch (verdict.step()) {
            case TRIAL_CUT, READ_AGAIN -> trialCut();
            case MOVE -> move(verdict);
            default -> draft.row("next", "next", verdict);
        }
        limit();
    }

    private void limit() {
        draft.row(
                "limit",
                "limit",
                draft.words("limit", "slot offset {limit}")
                        .with("limit", Kind.LIMITS, Limits.within(plan.job().slotLimit())));
    }

    private void trialCut() {
        row(
                "testPiece",
                "test piece",
                "WOOD wide, ripped with the blank",
                plan.blank().widthMm());
        cutter();
        Pass first = plan.slot().passes().passes().get(0);
        row("depth", "depth", "FINE, one pass", first.step().libraryValue());
        boolean isOnSpacer = spacer();
        if (plan.job().steps().isEmpty()) {
            row(
                    "fence",
                    "fence",
                    isOnSpacer
                            ? "the spacer's face WOOD from the cutter's near edge, by a rule"
                            : "WOOD from the cutter's near edge, by a rule",
                    BenchStep.wallMm(plan));
        } else {
            row("fence", "fence", "as it is");
        }
        row("edge", "edge", "the edge that the blank will have at the fence");
    }

    /** The strip beside a head that is on, with which the trial piece is run too. */
    private boolean spacer() {
        Optional<Spacer> needed = plan.slot().spacer();
        needed.ifPresent(strip -> row(
                "spacer",
                "spacer",
                "WOOD or more, between fence and work",
                strip.leastThickness().libraryValue()));
        return needed.isPresent();
    }

    private void cutter() {
        Shop shop = plan.shop();
        Statement cutter = draft.words(
                        "cutter",
                        "{cutter:brief}, one that cuts on its end"
                                + (shop.turning().isPresent() ? ", {turning}" : ""))
                .with("cutter", Kind.MM, shop.cutter().diameterMm());
        draft.row(
                "cutter",
                "cutter",
                shop.turning().isPresent()
                        ? cutter.with("turning", Kind.AMOUNT, shop.turning().get())
                        : cutter);
    }

    private void move(SlotVerdict verdict) {
        FenceMove move = verdict.move();
        row(
                "fence",
                "fence",
                "FINE " + (move.isTowardTheCutter() ? "TOWARD the cutter" : "AWAY from the cutter"),
                move.amountMm());
        verdict.gap()
                .filter(gap -> gap.ratio() != 1)
                .ifPresent(gap ->
                        row("gap", "gap at the stop block", "FINE", gap.gap().libraryValue()));
        verdict.leaves()
                .filter(leaves -> !leaves.leaves().isEmpty())
                .ifPresent(leaves -> draft.row(
                        "gauges",
                        "feeler gauges",
                        draft.words("gauges", "{gauges}")
                                .with("gauges", Kind.list(Kind.AMOUNT), List.copyOf(leaves.leaves()))));
        verdict.leaves()
                .map(FeelerStack::remedy)
                .filter(instead -> !instead.isEmpty())
                .ifPresent(instead -> draft.row(
                        "instead",
                        "instead",
                        draft.words("instead", "{instead}").with("instead", Kind.NAME, instead)));
        row("how", "how", move.handling());
    }

    private void cut(SlotVerdict verdict) {
        drawn();
        cutter();
        spacer();
        OptionalDouble chance = verdict.chance();
        if (chance.isPresent()) {
            draft.row(
                    "fence",
                    "fence",
                    draft.words("fence", "as it is: {chance} sure to keep {limit}")
                            .with("chance", Kind.PROBABILITY, chance.getAsDouble())
                            .with("limit", Kind.LIMITS, Limits.within(plan.job().slotLimit())));
        }
        runs("runs", "two runs", plan.slot().stops());
        draft.row(
                "depths",
                "depth after a pass",
                depths(
                        draft.words(
                                "depths", steps(plan.slot().passes().passes().size())),
                        plan.slot().passes().gaugeBlockSteps()));
        plan.slot()
                .pocketPasses()
                .ifPresent(pocket -> draft.row(
                        "pocketDepths",
                        "in the pocket",
                        depths(
                                draft.words(
                                        "pocket-depths", steps(pocket.passes().size())),
                                pocket.gaugeBlockSteps())));
        stop("rearStop", "rear stop", plan.slot().stops().rear());
        stop("frontStop", "front stop", plan.slot().stops().front());
        plan.slot().pocketStops().ifPresent(this::pocketStop);
    }

    /** Words with lengths in the place of {@code {key:W}} as of wood, of {@code {key:F}} as of a depth or a move. */
    private String sized(String words) {
        return words.replace(":W}", ":" + ShopDigits.wood(plan.style()) + "}")
                .replace(":F}", ":" + ShopDigits.fine(plan.style()) + "}");
    }

    /** The pocket lies at one end of the channel: the stop of the other end is all that is moved for it. */
    private void pocketStop(StopBlocks pocket) {
        StopBlocks channel = plan.slot().stops();
        if (!pocket.rear().equals(channel.rear())) {
            stop("pocketRearStop", "rear stop, pocket", pocket.rear());
        }
        if (!pocket.front().equals(channel.front())) {
            stop("pocketFrontStop", "front stop, pocket", pocket.front());
        }
    }

    /** A channel or pocket wider than its cutter. */
    private void runs(String key, String label, StopBlocks stops) {
        double apart = stops.runsApart().libraryValue();
        if (apart > 0) {
            draft.row(
                    key,
                    label,
                    draft.words("runs", "fence {first:text} toward the cutter, then {second:text} away")
                            .with("first", Kind.MM, apart / 2)
                            .with("second", Kind.MM, apart));
        }
    }

    /** The channel as it is drawn. */
    private void drawn() {
        Channel channel = plan.job().channel();
        boolean isArched = channel.archMm() != 0;
        String words = "{depth:F} deep" + (isArched ? " at its ends, {middle:F} in the middle" : "")
                + ", {width:F} wide, {start:W} to {end:W} from the nut";
        Statement drawn = draft.words(isArched ? "arched-channel" : "channel", sized(words))
                .with("depth", Kind.MM, channel.depthMm())
                .with("width", Kind.MM, channel.widthMm())
                .with("start", Kind.MM, channel.startMm())
                .with("end", Kind.MM, channel.endMm());
        draft.row(
                "channel",
                "channel",
                isArched ? drawn.with("middle", Kind.MM, channel.depthMm() + channel.archMm()) : drawn);
        if (channel.hasAdjusterPocket()) {
            double start = channel.adjusterPocketStartMm();
            draft.row(
                    "pocket",
                    "adjuster pocket",
                    draft.words("pocket", sized("{depth:F} deep, {width:F} wide, {start:W} to {end:W}"))
                            .with("depth", Kind.MM, channel.adjusterPocketDepthMm())
                            .with("width", Kind.MM, channel.adjusterPocketWidthMm())
                            .with("start", Kind.MM, start)
                            .with("end", Kind.MM, start + channel.adjusterPocketLengthMm()));
        }
    }

    /** Such as {@code {step1:..2 bare}, {step2:..2}}. */
    private String steps(int count) {
        String way = ShopDigits.fine(plan.style());
        StringBuilder words = new StringBuilder();
        for (int i = 1; i <= count; i++) {
            words.append("{step").append(i).append(':').append(way).append(i == count ? "}" : " bare}, ");
        }
        return words.toString();
    }

    private static Statement depths(Statement words, List<Amount<Length>> steps) {
        Statement depths = words;
        for (int i = 0; i < steps.size(); i++) {
            depths = depths.with("step" + (i + 1), Kind.MM, steps.get(i).libraryValue());
        }
        return depths;
    }

    private void stop(String key, String label, StopPlace stop) {
        if (stop.isOpen()) {
            row(key, label, "none: the slot is open there");
            return;
        }
        double from = stop.fromCentre().libraryValue();
        boolean isBeyond = from > plan.shop().fence().lengthMm() / 2;
        row(key, label, "WOOD from the cutter's centre" + (isBeyond ? ", beyond the fence" : ""), from);
    }

    private void scarf() {
        plan.shape().scarf().ifPresent(joint -> {
            angle("angle", "saw angle", joint.scarf().angle().libraryValue());
            sawMarks(joint);
            row("slope", "slope", "WOOD long", joint.glueFaceMm());
            double along = plan.style() == LengthStyle.MILLIMETRES ? TESTED_MM : TESTED_IN_MM;
            row(
                    "test",
                    "test on scrap",
                    "drops FINE, " + plan.style().brief(along) + " along",
                    along * StrictMath.tan(joint.scarf().angle().libraryValue()));
        });
    }

    /**
     * From the shaft's end, which is not the blank's: its place is stated first. Behind a slanted nut the marks differ from edge to
     * edge: the plan's section has them, and here is the line between.
     */
    private void sawMarks(ScarfJoint joint) {
        plan.shape()
                .scarfBoard()
                .filter(board -> board.shaftCut().mitre().libraryValue() == 0)
                .ifPresentOrElse(
                        board -> {
                            ScarfSaw saw = board.shaftCut();
                            row(
                                    "shaftEnd",
                                    "shaft's end",
                                    "WOOD from the nut line toward the body",
                                    plan.shape().shaftEndMm());
                            String from = "WOOD from the shaft's end";
                            row(
                                    "faceMark",
                                    "saw mark on the face",
                                    from,
                                    saw.faceMark().libraryValue());
                            row(
                                    "backMark",
                                    "saw mark on the back",
                                    from,
                                    saw.backMark().libraryValue());
                        },
                        () -> {
                            double back = joint.backLineMm();
                            row(
                                    "back",
                                    "line on the back",
                                    "WOOD from the break line toward the " + (back < 0 ? "head" : "body"),
                                    Math.abs(back));
                        });
    }

    private void angle(String key, String label, double rad) {
        draft.row(key, label, draft.words(code(key), "{angle:1}").with("angle", Kind.RAD, rad));
    }

    /** With its angle as read, on what is done to a head that is sawn. */
    private void head(Optional<Estimate<Angle>> sawn) {
        plan.neck().head().ifPresent(head -> {
            row("thickness", "thickness of the wood", "WOOD", head.thicknessMm());
            row("width", "greatest width", "WOOD", head.widthMm());
            row("length", "length of the face", "WOOD", head.lengthMm());
            sawn.ifPresentOrElse(
                    read -> draft.row(
                            "angle",
                            "head angle",
                            draft.words("angle-as-read", "{angle:1}, as read; drawn {drawn:1}")
                                    .with("angle", Kind.RAD, read.libraryValue())
                                    .with("drawn", Kind.RAD, head.angleRad())),
                    () -> angle("angle", "head angle", head.angleRad()));
        });
    }

    private void heel() {
        plan.shape()
                .heelBlocks()
                .filter(blocks -> blocks.count() > 0)
                .ifPresent(blocks -> draft.row(
                        "blocks",
                        "blocks",
                        draft.words("blocks", "{blocks:of block/blocks} under the shaft")
                                .with("blocks", Kind.WHOLE, blocks.count())));
        plan.neck().heel().ifPresent(heel -> {
            row("height", "height of the mating face", "WOOD", heel.heightMm());
            row("width", "width of the mating face", "WOOD", heel.widthMm());
        });
        plan.shape().neckSet().ifPresent(set -> {
            double back = set.angle().angle().libraryValue();
            draft.row(
                    "neckAngle",
                    "neck angle",
                    draft.words("neck-angle", "{angle:size 2}, head " + (back < 0 ? "forward" : "back"))
                            .with("angle", Kind.RAD, back));
        });
    }

    private void taper() {
        double joint = plan.neck().bodyJointMm();
        row("nut", "width at the nut", "WOOD", 2 * plan.neck().halfWidthAtMm(0));
        row("body", "width at the body joint", "WOOD", 2 * plan.neck().halfWidthAtMm(joint));
        row("joint", "body joint", "WOOD from the nut", joint);
    }

    private void back() {
        depthAt("first", plan.neck().back().firstFret());
        depthAt("second", plan.neck().back().secondFret());
        row(
                "allowed",
                "wood under the channel",
                "WOOD at least",
                ShopDigits.roundedUp(plan.style(), plan.job().floorLimit().libraryValue()));
    }

    private void depthAt(String key, double fret) {
        double x = plan.neck().scale().fretMm(fret);
        draft.row(
                key,
                draft.words("at-fret", "depth at fret {fret}").with("fret", Kind.WHOLE, fret),
                draft.words("depth", "{depth:W}, {x:W} from the nut".replace(":W", ":" + ShopDigits.wood(plan.style())))
                        .with("depth", Kind.MM, plan.neck().backDepthAtMm(x))
                        .with("x", Kind.MM, x));
    }

    private void frets() {
        row("scale", "scale length", "WOOD", plan.neck().scale().lengthMm());
        draft.row("count", "frets", Kind.WHOLE, plan.neck().frets());
        double octave = plan.neck().scale().lengthMm() / 2;
        row("octave", "half the scale", "WOOD from the nut", octave);
    }

    private void board() {
        row("nut", "width at the nut", "WOOD", 2 * plan.neck().halfWidthAtMm(0));
        row(
                "body",
                "width at the body joint",
                "WOOD",
                2 * plan.neck().halfWidthAtMm(plan.neck().bodyJointMm()));
        row(
                "thickness",
                "thickness at the nut",
                "WOOD",
                plan.neck().fingerboard().nutThicknessMm());
    }

    private void blank() {
        row("length", "length", "WOOD", plan.blank().lengthMm());
        row("width", "width", "WOOD", plan.blank().widthMm());
        row("thickness", "thickness", "WOOD", plan.blank().thicknessMm());
    }

    /** How far to turn it, an estimate; nothing where no turn does it. */
    private void rod() {
        plan.strength()
                .rodTurns()
                .filter(turns -> turns.force().reach() != RodForce.Reach.CANNOT)
                .ifPresent(turns -> draft.row("rod", "rod", turned(turns)));
    }

    private Statement turned(RodTurns turns) {
        if (turns.way() == RodTurns.Way.LEAVE) {
            return draft.words("leave-it", "leave it slack");
        }
        String words = "from where it bites {fewest:2} to {most:2} turns, {way}";
        return (turns.seats().isPresent()
                        ? draft.words("turn", words)
                        : draft.words("turn-half", words + "; turn half, read the relief, and plan again"))
                .with("fewest", Kind.RATIO, turns.fewestTurns().orElseThrow())
                .with("most", Kind.RATIO, turns.mostTurns().orElseThrow())
                .with("way", Kind.code(RodTurns.Way.class), turns.way());
    }

    private void setUp() {
        row("relief", "relief", "FINE", plan.job().relief().libraryValue());
        plan.neck().neckSet().map(NeckSet::heights).ifPresent(strings -> {
            height("atNut", "strings over the fret tops at the nut", strings.atNut(), strings.trebleAtNut());
            height("action", "action at half the scale", strings.action(), strings.trebleAction());
        });
    }

    /** A height of the strings, and that of the outermost treble string where it is another. */
    private void height(String key, String label, Amount<Length> bass, Amount<Length> treble) {
        row(key, label, "FINE", bass.libraryValue());
        if (!treble.equals(bass)) {
            row(key + "Treble", "at the outermost treble string", "FINE", treble.libraryValue());
        }
    }
}
