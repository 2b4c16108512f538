package org.neckgeom.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/**
 * A centring round as a maker notes it: the fence move, and the trial cut read after it. It may be a cut without a
 * move, the same cut read again, or a move after which nothing has been cut yet. Immutable.
 */
public final class CentringRound extends Noun<CentringRound> {

    /** Its keys. */
    public static final Table<CentringRound> TABLE =
            Table.of("", "one trial cut", CentringRound::new).printedBy(CentringRound::sentences);

    private static final Key<CentringRound, Amount<Length>> TOWARD = TABLE.optional(
            "moved toward cutter",
            Types.SIZE_OR_NOTHING,
            "how far the fence was moved toward the cutter before this cut, at the cutter, not at a stop block");
    private static final Key<CentringRound, Amount<Length>> AWAY = TABLE.optional(
            "moved away from cutter", Types.SIZE_OR_NOTHING, "the same, away from the cutter; one of the two");
    private static final Key<CentringRound, Amount<Length>> SETTING = TABLE.optional(
            "setting uncertainty",
            Types.SIZE_OR_NOTHING,
            "standard uncertainty of what the move was set by, at the cutter; 0 when left out");
    private static final Key<CentringRound, Boolean> AGAIN =
            TABLE.usual("again", Types.YES_OR_NO, false, "yes: the cut before was read once more; no: a new cut");
    private static final Key<CentringRound, TrialCut> CUT = TABLE.inlineOptional(TrialCut.TABLE);

    static {
        TABLE.atMostOne(TOWARD, AWAY);
    }

    private CentringRound(Values<CentringRound> values) {
        super(values);
        boolean isMoved = isMoved(values);
        if (isMoved && values.at(AGAIN)) {
            throw Refusal.because(
                    AGAIN.name(),
                    "one-of",
                    "again is given, and a move of the fence too: a cut read again comes before the move; keep one");
        }
        if (values.has(SETTING) && !isMoved) {
            throw Refusal.because(
                    SETTING.name(), "together", "setting uncertainty is given, but no move of the fence that it is of");
        }
        if (!values.has(CUT) && (!isMoved || values.at(AGAIN))) {
            throw Refusal.because(
                    "fence wall",
                    "missing",
                    "fence wall is missing; give both walls of a trial cut, or a move of the fence");
        }
    }

    /**
     * {@return the rounds that steps make: a move and the cut after it are one round; whose steps are these}
     *
     * @param steps at the machine, in their order
     */
    public static List<CentringRound> of(List<CentringStep> steps) {
        List<CentringRound> rounds = new ArrayList<>();
        Values<CentringRound> open = TABLE.values();
        for (CentringStep step : Objects.requireNonNull(steps, "steps")) {
            Optional<FenceMove> move = Objects.requireNonNull(step, "step").move();
            if (move.isPresent() || step.isReadAgain()) {
                if (isMoved(open)) {
                    rounds.add(new CentringRound(open));
                }
                open = move.map(CentringRound::values).orElseGet(TABLE::values);
            }
            if (step.cut().isPresent()) {
                Values<CentringRound> read = open.with(CUT, step.cut().get());
                rounds.add(new CentringRound(step.isReadAgain() ? read.with(AGAIN, true) : read));
                open = TABLE.values();
            }
        }
        if (isMoved(open)) {
            rounds.add(new CentringRound(open));
        }
        return List.copyOf(rounds);
    }

    private static boolean isMoved(Values<CentringRound> values) {
        return values.has(TOWARD) || values.has(AWAY);
    }

    private static Values<CentringRound> values(FenceMove move) {
        Amount<Length> size = move.style().amount(Math.abs(move.towardMm()));
        Values<CentringRound> values = TABLE.values().with(move.towardMm() < 0 ? AWAY : TOWARD, size);
        double u = move.settingUncertaintyMm();
        return u == 0 ? values : values.with(SETTING, move.style().amount(u));
    }

    /** {@return what was done, step by step; the move if there was one, then the cut if there was one} */
    public List<CentringStep> steps() {
        return Stream.concat(move().map(CentringStep::moved).stream(), cut().map(this::read).stream())
                .toList();
    }

    private CentringStep read(TrialCut cut) {
        return values().at(AGAIN) ? CentringStep.readAgain(cut) : CentringStep.read(cut);
    }

    private Optional<TrialCut> cut() {
        return values().find(CUT);
    }

    private Optional<FenceMove> move() {
        return values().find(TOWARD)
                .map(FenceMove::toward)
                .or(() -> values().find(AWAY).map(FenceMove::away))
                .map(move ->
                        values().find(SETTING).map(move::settingUncertainty).orElse(move));
    }

    private static Form<CentringRound> sentences() {
        return TABLE.facts("centring-round")
                .factIfAny("cut", Kind.ANSWER, "the readings", CentringRound::cut)
                .phrase("moved", "fence moved {movedTowardCutter:brief} toward the cutter")
                .phrase("moved", "fence moved {movedAwayFromCutter:brief} away from the cutter")
                .finds("cut-read-again", x -> x.values().at(AGAIN), "The same cut read again: {cut}")
                .finds("moved-and-cut", x -> isMoved(x.values()) && x.values().has(CUT), "{moved}, then {cut}")
                .finds("moved", x -> isMoved(x.values()), "{moved}")
                .finds("cut-read", "{cut}");
    }
}
