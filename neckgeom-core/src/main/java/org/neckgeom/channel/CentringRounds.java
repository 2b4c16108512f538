package org.neckgeom.channel;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.DecisionRule;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * Centring rounds (iterations): trial cuts and fence moves in the order they were made, and the decision that follows
 * from all of them.
 *
 * <p>The setting of the fence is estimated with its variance (scalar Kalman filter, exact for normal errors); offsets
 * are positive when the slot is too far from the fence. Every cut has a scatter of its own besides its readings; the
 * neck's own cut has it once more. A cut too far from the place that earlier cuts and moves give is not averaged in:
 * see {@link SlotVerdict#contradiction}.
 *
 * <p>Without {@link #on} the answers are for a piece as wide as the test pieces. With it they are for the blank, along
 * the whole channel; then give the width of each test piece or its slot, or rip the piece with the blank.
 *
 * <p>{@link #next} gives the decision for a limit: cut the neck, or the next step. Errors: null throws {@code
 * NullPointerException}; a limit of 0 or less throws {@link org.neckgeom.fault.Refusal} (an {@code
 * IllegalArgumentException}). Immutable: every step returns a new value.
 *
 * <pre>{@code
 * var first = TrialCut.walls(mm(29.84), mm(31.26)).repeatability(mm(0.02));
 * var second = TrialCut.walls(mm(30.53), mm(30.59)).repeatability(mm(0.02));
 * println(CentringRounds.of(first).fenceMoved(FenceMove.away(mm(0.70))).trialCut(second).next(mm(0.1)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * cut the neck: 98.3 % conformance probability, limit 0.1 mm
 *   assumes: scatter of cuts 0.020 mm (common practice); ten cuts at one setting would show it
 * }</pre>
 *
 * @see Centring
 * @see SlotVerdict
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class CentringRounds extends LeanAnswer {

    /** A strip planed to a taper on the bench, standard uncertainty in mm; common practice. */
    private static final double STRIP_MM = 0.02;

    private final List<CentringStep> steps;
    private final BenchUncertainty bench;
    private final DecisionRule rule;
    private final @Nullable BlankOnFence run;
    private final @Nullable FeelerSet leaves;
    final Evidence evidence;

    private CentringRounds(
            List<CentringStep> steps,
            BenchUncertainty bench,
            DecisionRule rule,
            @Nullable BlankOnFence run,
            @Nullable FeelerSet leaves,
            LengthStyle style) {
        super(style);
        this.steps = steps;
        this.bench = bench;
        this.rule = rule;
        this.run = run;
        this.leaves = leaves;
        this.evidence = Session.of(steps, bench, run);
    }

    /**
     * {@return the rounds that begin with the first trial cut, printed in its unit}
     *
     * @param first its readings
     */
    public static CentringRounds of(TrialCut first) {
        return none(Objects.requireNonNull(first, "trial cut").style()).trialCut(first);
    }

    /**
     * {@return no rounds yet, for a blank on a fence, printed in the blank's unit}
     *
     * @param run how the blank runs along the fence
     */
    public static CentringRounds on(BlankOnFence run) {
        return none(Objects.requireNonNull(run, "blank on the fence").style()).inBlank(run);
    }

    private static CentringRounds none(LengthStyle style) {
        return new CentringRounds(
                List.of(), BenchUncertainty.withDefaults(), DecisionRule.withDefaults(), null, null, style);
    }

    /**
     * {@return the same rounds judged in a neck blank, along its whole channel}
     *
     * @param blank how the blank runs along the fence
     */
    public CentringRounds inBlank(BlankOnFence blank) {
        Objects.requireNonNull(blank, "blank on the fence");
        return new CentringRounds(steps, bench, rule, blank, leaves, style());
    }

    /**
     * {@return the same rounds with their bench's uncertainties; a trial cut's own repeatability goes before them}
     *
     * @param uncertainty of readings, cuts and moves
     */
    public CentringRounds bench(BenchUncertainty uncertainty) {
        Objects.requireNonNull(uncertainty, "bench uncertainty");
        return new CentringRounds(steps, uncertainty, rule, run, leaves, style());
    }

    /**
     * {@return the same rounds with another rule for when the neck may be cut}
     *
     * @param decision the wanted conformance probability and the costs
     */
    public CentringRounds decision(DecisionRule decision) {
        Objects.requireNonNull(decision, "decision rule");
        return new CentringRounds(steps, bench, decision, run, leaves, style());
    }

    /**
     * {@return the same rounds with feeler gauges at hand: the moves advised are then those that the gauges make}
     *
     * @param set of gauges
     */
    public CentringRounds leaves(FeelerSet set) {
        return new CentringRounds(steps, bench, rule, run, Objects.requireNonNull(set, "leaves"), style());
    }

    /**
     * {@return the rounds with one more trial cut}
     *
     * @param cut its readings
     */
    public CentringRounds trialCut(TrialCut cut) {
        return then(CentringStep.read(cut));
    }

    /**
     * {@return the rounds with the last trial cut read once more}
     *
     * @param cut the new readings of the same slot
     * @throws IllegalArgumentException if there is no cut to read again, or the fence was moved since
     */
    public CentringRounds readAgain(TrialCut cut) {
        return then(CentringStep.readAgain(cut));
    }

    /**
     * {@return the rounds with the fence moved}
     *
     * @param move as it was made, at the cutter, such as {@code FenceMove.away(mm(0.7))}; a move made at a stop block of a
     *     pivoting fence by {@code FenceMove.by(stack)}
     * @throws IllegalArgumentException if no trial cut came before
     */
    public CentringRounds fenceMoved(FenceMove move) {
        return then(CentringStep.moved(move));
    }

    /**
     * {@return the rounds with one more step}
     *
     * @param step a cut, a cut read again or a fence move
     * @throws IllegalArgumentException if the step cannot follow the steps so far
     */
    public CentringRounds then(CentringStep step) {
        Objects.requireNonNull(step, "step");
        boolean isCutBefore = steps.stream().anyMatch(s -> s.cut().isPresent());
        if (step.move().isPresent() && !isCutBefore) {
            throw Refusal.of("a fence move", "after-a-cut", "follow a trial cut", "", step + " came first");
        }
        if (step.isReadAgain()
                && (steps.isEmpty() || steps.get(steps.size() - 1).cut().isEmpty())) {
            throw Refusal.of(
                    "a cut read again",
                    "fit",
                    "follow that cut",
                    "",
                    (isCutBefore ? "a fence move" : "nothing") + " came before it");
        }
        return new CentringRounds(
                Stream.concat(steps.stream(), Stream.of(step)).toList(), bench, rule, run, leaves, style());
    }

    /** {@return the steps so far; in order} */
    public List<CentringStep> steps() {
        return steps;
    }

    /**
     * {@return the offset that a fence move can take away: of the setting now, from all cuts and moves together} In a
     * blank that is the middle of the band of offsets along the channel.
     *
     * @throws ArithmeticException if no cut yet shows where the slot lies
     */
    public SlotOffset estimate() {
        return estimate(style());
    }

    private SlotOffset estimate(LengthStyle shown) {
        SettingState state = state();
        double middle = run == null ? 0 : run.centredSettingMm();
        double nu = state.degreesOfFreedom(0, 0, bench.cutScatterDegreesOfFreedom());
        return SlotOffset.ofMm(state.mean() - middle, Math.sqrt(state.variance()), nu, shown);
    }

    private SettingState state() {
        if (evidence.state() == null) {
            throw NoAnswer.because(
                    "offset",
                    "no-cut",
                    "no trial cut yet shows where the slot lies"
                            + (evidence.isPieceMissing() ? ": measure the test piece too" : ""));
        }
        return evidence.state();
    }

    /**
     * {@return the move that the estimate asks for; the move at the cutter}
     *
     * @throws ArithmeticException if no cut yet shows where the slot lies
     */
    public FenceMove move() {
        return FenceMove.of(estimate());
    }

    /**
     * {@return where the neck's slot would run if it were cut now: the scatter of its own cut counted; the place;
     * without a blank, in a piece as wide as the trial pieces} Before the first cut: where a fence set by one cut would
     * put it.
     */
    public SlotPlace place() {
        SettingState state = evidence.state() != null ? evidence.state() : expected();
        double known = knownVariance();
        double variance = state.variance() + cutVariance() + known;
        double nu = state.degreesOfFreedom(cutVariance(), known, bench.cutScatterDegreesOfFreedom());
        return run == null
                ? SlotPlace.inPieces(state.mean(), variance, nu, style())
                : run.place(state.mean(), variance, widthUncertainty(), nu, style());
    }

    /** The setting that one cut and the best move after it are expected to leave. */
    private SettingState expected() {
        double best = run == null ? 0 : run.centredSettingMm();
        return SettingState.first(best, readingVariance(), cutVariance(), Double.POSITIVE_INFINITY);
    }

    private double knownVariance() {
        return evidence.biasVariance() + (run == null ? 0 : run.stripVariance());
    }

    private double cutVariance() {
        return bench.cutScatterMm() * bench.cutScatterMm();
    }

    private long count(Predicate<CentringStep> which) {
        return steps.stream().filter(which).count();
    }

    private double moveVariance() {
        return bench.moveScatterMm() * bench.moveScatterMm();
    }

    /** Of the last cut, or of one to come: both walls, and in a blank the piece too, read once. */
    private double readingVariance() {
        return evidence.state() != null
                ? evidence.readingVariance()
                : (run == null ? 0.5 : 0.75) * Session.single(bench);
    }

    /** Each end's own part of the offset: half of what the blank's width is read to there. */
    private double widthUncertainty() {
        return run == null ? 0 : Math.sqrt(Session.single(bench)) / 2;
    }

    /**
     * {@return what to do next for a limit on the offset}
     *
     * @param limit either side of the middle, more than 0
     * @throws IllegalArgumentException if the limit is not more than 0
     */
    public SlotVerdict next(Quantity<Length> limit) {
        double limitMm = LibraryUnits.mmPositive(limit, "limit");
        LengthStyle shown = LengthStyle.of(limit);
        SlotPlace place = place();
        SlotChoice choice = new SlotChoice(facts(), place.law(limitMm), rule, this::nearestMm);
        SlotChoice.Chosen chosen = choice.choose();
        SlotStep step = evidence.step(chosen.step());
        boolean isKnown = evidence.contradiction() == null && evidence.state() != null;
        if (!isKnown) {
            double nan = Double.NaN;
            chosen = new SlotChoice.Chosen(step, nan, nan, nan, chosen.reach());
        }
        FenceMove move = evidence.state() == null ? FenceMove.toward(shown.amount(0)) : FenceMove.of(estimate(shown));
        StopGap gap = isKnown && run != null ? move.at(run.fence()) : null;
        FeelerStack stack = isKnown && leaves != null && move.amountMm() > 0
                ? (gap == null ? move.leaves(leaves) : gap.leaves(leaves))
                : null;
        return new SlotVerdict(
                chosen,
                isKnown ? choice : null,
                evidence.contradiction(),
                evidence.lastClosure(),
                limiting(place),
                move,
                gap,
                stack,
                bench,
                evidence.cuts() == 0,
                limitMm,
                shown);
    }

    SlotChoice.Facts facts() {
        return new SlotChoice.Facts(
                evidence.state(),
                evidence.before(),
                evidence.isRead(),
                evidence.readingsOfLastCut(),
                evidence.cuts(),
                evidence.isWarned(),
                readingVariance(),
                cutVariance(),
                knownVariance(),
                moveVariance(),
                run == null ? 0 : run.widthMm(run.channel().startMm()),
                run == null ? 0 : run.widthMm(run.channel().endMm()),
                widthUncertainty(),
                run != null && run.mayBePlaned(),
                STRIP_MM);
    }

    /** The move at the cutter that the gauges make in the place of a wanted one. */
    private double nearestMm(double wantedMm) {
        if (leaves == null || wantedMm == 0) {
            return wantedMm;
        }
        double lever = run == null ? 1 : run.fence().leverage();
        double gap = Math.abs(wantedMm) * lever;
        return Math.copySign(FeelerStack.nearestMm(leaves, gap) / lever, wantedMm);
    }

    private SlotVerdict.Limiting limiting(SlotPlace place) {
        SlotVerdict.Limiting most = new SlotVerdict.Limiting(SlotVerdict.Cause.CUT_SCATTER, bench.cutScatterMm());
        most = most(most, SlotVerdict.Cause.CALLIPER_ZERO, Math.sqrt(evidence.biasVariance()));
        most = most(most, SlotVerdict.Cause.WIDTH, widthUncertainty());
        most = most(most, SlotVerdict.Cause.READING, Math.sqrt(readingVariance() / SlotChoice.MOST_CUTS));
        if (run != null) {
            double taper = Math.abs(run.widthMm(run.channel().endMm())
                    - run.widthMm(run.channel().startMm()));
            most = most(most, SlotVerdict.Cause.TAPER, taper / 4);
            most = most(most, SlotVerdict.Cause.FENCE, place.shiftRangeMm() / 2);
        }
        return most;
    }

    private static SlotVerdict.Limiting most(SlotVerdict.Limiting so, SlotVerdict.Cause cause, double mm) {
        return mm > so.mm() ? new SlotVerdict.Limiting(cause, mm) : so;
    }

    /**
     * {@return the check of each cut's readings, with the bench's calliper and the number of cuts that were checked;
     * one for each trial cut and each reading again, in the order of the steps}
     */
    public List<Closure> closures() {
        return evidence.closures();
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        private static final Form<Evidence.LeftOut> LEFT_OUT = Form.<Evidence.LeftOut>of("left-out")
                .fact("why", Kind.code(Evidence.LeftOut.class), "left out", leftOut -> leftOut);

        private static final Form<CentringRounds> FORM = Form.<CentringRounds>of("centring-rounds")
                .factIfAny(
                        "estimate",
                        Kind.answer(SlotOffset.Sentences.FORM),
                        "of the setting now, from all cuts and moves",
                        rounds -> Optional.ofNullable(rounds.evidence.state()).map(state -> rounds.estimate()))
                .finds("placed", "Centring rounds: {estimate}")
                .finds("not-placed", "Centring rounds: nothing known of the slot yet")
                .fact(
                        "trialCuts",
                        Kind.WHOLE,
                        "how many",
                        r -> r.count(step -> step.cut().isPresent() && !step.isReadAgain()))
                .fact(
                        "moves",
                        Kind.WHOLE,
                        "of the fence, how many",
                        r -> r.count(step -> step.move().isPresent()))
                .line("rounds", "rounds", "{trialCuts:of trial cut/trial cuts}, {moves:of move/moves}")
                .fact("cutScatter", Kind.MM, "standard deviation of one cut", rounds -> rounds.bench.cutScatterMm())
                .phrase("default", rounds -> rounds.bench.isCutScatterDefault(), ", common practice")
                .line("cutScatter", "cut scatter", "{cutScatter:small}{default}")
                .fact("moveScatter", Kind.MM, "standard deviation of one move", rounds -> rounds.bench.moveScatterMm())
                .line("moveScatter", "move scatter", "{moveScatter:small}")
                .fact("leftOut", Kind.table(LEFT_OUT), "cuts that do not count", rounds -> rounds.evidence.leftOut())
                .noteEach("leftOut", "{why}");
    }

    @Override
    public Form<CentringRounds> form() {
        return Sentences.FORM;
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {steps, bench, rule, run, leaves};
    }
}
