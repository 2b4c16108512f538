package org.neckgeom.channel;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;

/**
 * The one decision on the channel: whether the neck may be cut, and else the next step, such as
 * {@code cut the neck: 99.2 % chance of being within 0.1 mm}. Immutable.
 *
 * <p>It is judged for the neck's own cut, at the worst place of the channel. The neck may be cut when the chance is as wanted
 * and no step is expected to save more than it costs; else the step with the least expected cost comes next. Verdict, next
 * step and a plan's check all read this one value.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class SlotVerdict extends LeanAnswer {

    /** What contradicts what, where anything does. */
    public enum Contradiction {
        /** Walls, slot and piece of the last cut do not add up. */
        READINGS,
        /** The last cut lies where it would if the fence had moved the other way. */
        DIRECTION,
        /** The last cut does not lie where cuts and moves before it put it. */
        SETTING,
        /** Cuts with the fence untouched agree with nothing: the fence does not stay where it is set. */
        FENCE_LOST
    }

    /** What keeps a limit out of reach, the largest first. */
    enum Cause {
        CUT_SCATTER("the scatter of cuts"),
        CALLIPER_ZERO("the callipers' zeros"),
        WIDTH("the readings of the blank's width"),
        TAPER("the blank's edges, which are not parallel"),
        FENCE("the step of the fence, or what the blank rides on"),
        READING("the readings of a cut");

        private final String words;

        Cause(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /** The largest part of what keeps the limit out of reach, in mm. */
    record Limiting(Cause cause, double mm) {}

    private final SlotChoice.Chosen chosen;
    private final @Nullable SlotChoice choice;
    private final @Nullable Contradiction contradiction;
    private final @Nullable Closure closure;
    private final Limiting limiting;
    private final FenceMove move;
    private final @Nullable StopGap gap;
    private final @Nullable FeelerStack leaves;
    private final BenchUncertainty bench;
    private final boolean isFirst;
    private final double limitMm;

    SlotVerdict(
            SlotChoice.Chosen chosen,
            @Nullable SlotChoice choice,
            @Nullable Contradiction contradiction,
            @Nullable Closure closure,
            Limiting limiting,
            FenceMove move,
            @Nullable StopGap gap,
            @Nullable FeelerStack leaves,
            BenchUncertainty bench,
            boolean isFirst,
            double limitMm,
            LengthStyle style) {
        super(style);
        this.chosen = chosen;
        this.choice = choice;
        this.contradiction = contradiction;
        this.closure = closure;
        this.limiting = limiting;
        this.move = move;
        this.gap = gap;
        this.leaves = leaves;
        this.bench = bench;
        this.isFirst = isFirst;
        this.limitMm = limitMm;
    }

    /** {@return what to do next} */
    public SlotStep step() {
        return chosen.step();
    }

    /** {@return whether the neck may be cut now; true for {@link SlotStep#CUT} alone} */
    public boolean mayCut() {
        return step() == SlotStep.CUT;
    }

    /** {@return whether work stops here: no setting puts it right, or what was read contradicts itself} */
    public boolean isStop() {
        return contradiction != null
                || step() == SlotStep.SQUARE_EDGES
                || step() == SlotStep.TAPERED_STRIP
                || step() == SlotStep.CANNOT;
    }

    /** {@return what contradicts what; nothing where readings and moves agree} */
    public Optional<Contradiction> contradiction() {
        return Optional.ofNullable(contradiction);
    }

    /**
     * {@return the chance that the neck's slot is within the limit along the whole channel if it were cut now; a ratio
     * in [0, 1]; nothing before the first cut and where a contradiction leaves nothing to compute it from}
     */
    public OptionalDouble chance() {
        return known(chosen.chance());
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** {@return the best move at the cutter, next or not; it refuses its number where nothing is known} */
    public FenceMove move() {
        return move;
    }

    /** {@return the gap to set at the stop block for the move; nothing where no fence is known} */
    public Optional<StopGap> gap() {
        return Optional.ofNullable(gap);
    }

    /** {@return the feeler gauges for the move, at the stop block; nothing where none are at hand} */
    public Optional<FeelerStack> leaves() {
        return Optional.ofNullable(leaves);
    }

    /** {@return the chance after the move, by the gauges if any, without a cut; nothing where there is none now} */
    public OptionalDouble probabilityAfterMove() {
        return known(chosen.afterMove());
    }

    /** {@return the chance that this bench reaches, best placed after six further trial cuts; a ratio in [0, 1]} */
    public double reach() {
        return chosen.reach();
    }

    /**
     * {@return the expected cost of a step, a spoiled neck being 1; more than 0; nothing where the step is not offered}
     *
     * @param of one of CUT, READ_AGAIN, MOVE, TRIAL_CUT
     */
    public OptionalDouble expectedCost(SlotStep of) {
        int place = SlotChoice.COSTED.indexOf(Objects.requireNonNull(of, "step"));
        return choice == null || place < 0 ? OptionalDouble.empty() : known(choice.costs(chosen)[place]);
    }

    /** {@return the step after this one if its result is as expected; nothing where it cannot be foreseen} */
    public Optional<SlotStep> then() {
        return choice == null || contradiction != null ? Optional.empty() : choice.after(step());
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        private static final Form<SlotVerdict> FORM = Form.<SlotVerdict>of("slot-verdict")
                .fact("limit", Kind.MM, "of the offset, either side of the middle", verdict -> verdict.limitMm)
                .fact(
                        "conformanceProbability",
                        Kind.PROBABILITY,
                        "along the whole channel, if the neck were cut now",
                        v -> v.chosen.chance())
                .fact("conformanceProbabilityAfterMove", Kind.PROBABILITY, "without a cut", v -> v.chosen.afterMove())
                .fact("bestConformanceProbability", Kind.PROBABILITY, "that this bench reaches", SlotVerdict::reach)
                .fact("move", Kind.answer(FenceMove.Sentences.FORM), "the best one, next or not", SlotVerdict::move)
                .factIfAny("contradiction", Kind.code(Contradiction.class), "in the record", SlotVerdict::contradiction)
                .factIfAny(
                        "readings",
                        Kind.answer(Closure.Sentences.REASON),
                        "of the last cut, where they are refused or warned of",
                        SlotVerdict::doubted)
                .phrase("now", "{conformanceProbability} chance of being within {limit:brief}")
                .phrase("why", v -> v.contradiction == Contradiction.READINGS, "{readings}")
                .phrase(
                        "why",
                        v -> v.contradiction != null,
                        "it does not lie where the cuts and moves before it put it")
                .phrase("why", v -> v.step() == SlotStep.READ_AGAIN, "{readings}")
                .phrase("why", "{now}")
                .finds("cut", v -> v.step() == SlotStep.CUT, "cut the neck: {now}")
                .finds(
                        "move-fence",
                        v -> v.step() == SlotStep.MOVE,
                        "move the {move}: {conformanceProbabilityAfterMove} chance of being within {limit:brief} then, {conformanceProbability} now")
                .finds("read-again", v -> v.step() == SlotStep.READ_AGAIN, "read the same cut again: {why}")
                .finds(
                        "first-trial-cut",
                        v -> v.step() == SlotStep.TRIAL_CUT && v.contradiction == null && v.isFirst,
                        "make a trial cut in a test piece, and read both walls, the piece and the slot")
                .finds(
                        "trial-cut",
                        v -> v.step() == SlotStep.TRIAL_CUT,
                        "make another trial cut, the fence untouched: {why}")
                .finds(
                        "measure-piece",
                        v -> v.step() == SlotStep.MEASURE_PIECE,
                        "measure the test piece: walls alone do not place the slot in a blank of another width")
                .finds(
                        "check-move",
                        v -> v.step() == SlotStep.CHECK_MOVE,
                        "check which way the fence was moved: the cut lies where it would after the opposite move")
                .finds(
                        "square-edges",
                        v -> v.step() == SlotStep.SQUARE_EDGES,
                        "plane the blank's edges parallel: no setting of the fence keeps within {limit:brief} along the channel, {bestConformanceProbability} chance at best")
                .finds(
                        "tapered-strip",
                        v -> v.step() == SlotStep.TAPERED_STRIP,
                        "run the blank on a strip that tapers as the blank does: no setting of the fence keeps within {limit:brief} along the channel, {bestConformanceProbability} chance at best")
                .finds(
                        "fence-lost",
                        v -> v.contradiction == Contradiction.FENCE_LOST,
                        "do not cut: the fence does not stay where it is set")
                .finds(
                        "cannot",
                        "do not cut: this bench cannot show that the slot is within {limit:brief}, {bestConformanceProbability} chance at best")
                .factIfAny("gap", Kind.answer(StopGap.FORM), "at the stop block, for the move", SlotVerdict::gap)
                .line(
                        "gap",
                        "at the block",
                        v -> v.step() == SlotStep.MOVE
                                && v.gap != null
                                && v.move.amountMm() != v.gap.gap().libraryValue(),
                        "{gap}")
                .factIfAny("leaves", Kind.answer(FeelerStack.FORM), "feeler gauges for the move", SlotVerdict::leaves)
                .line("leaves", "feeler gauges", v -> v.step() == SlotStep.MOVE, "{leaves}")
                .fact("cause", Kind.code(Cause.class), "that most keeps the limit out of reach", v -> v.limiting.cause)
                .fact("causeSize", Kind.MM, "its part", v -> v.limiting.mm)
                .line("cause", "largest part", SlotVerdict::isOutOfReach, "{cause}, {causeSize:small}")
                .note(
                        "ten-cuts",
                        v -> v.isOutOfReach() && v.limiting.cause == Cause.CUT_SCATTER,
                        "make ten trial cuts at one setting and give their standard deviation, or widen the limit")
                .fact("cutScatter", Kind.MM, "standard deviation of one cut", v -> v.bench.cutScatterMm())
                .note(
                        "cut-scatter-default",
                        v -> v.bench.isCutScatterDefault() && v.chance().isPresent(),
                        "scatter of cuts taken as {cutScatter:small} (common practice): ten cuts at one setting would show it");
    }

    @Override
    public Form<SlotVerdict> form() {
        return Sentences.FORM;
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {
            step(), contradiction, chance(), probabilityAfterMove(), reach(), limiting.cause, move, gap, leaves, limitMm
        };
    }

    /** {@return step and reason in a line, such as {@code Cut the neck: 99.2 % chance of being within 0.1 mm.}} */
    public String sentence() {
        return Names.capital(Sentences.FORM.render(this, style()).finding()) + ".";
    }

    private boolean isOutOfReach() {
        return step() == SlotStep.CANNOT && contradiction == null;
    }

    private Optional<Closure> doubted() {
        return Optional.ofNullable(closure).filter(last -> contradiction == Contradiction.READINGS || last.warns());
    }
}
