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
import org.neckgeom.table.Branch;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
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

    private static final Key<CentringRound, Moved> MOVED = TABLE.optional(
            "moved", Types.group(Moved.TABLE), "fence move before this trial cut, at the cutter. Default: none");
    private static final Key<CentringRound, Boolean> AGAIN = TABLE.usual(
            "again",
            Types.YES_OR_NO,
            false,
            "yes: the trial cut before, read again. no: a new trial cut. Default: no.");
    private static final Key<CentringRound, TrialCut> CUT = TABLE.inlineOptional(TrialCut.TABLE);

    static {
        TABLE.moved(Moves.none()
                .and("moved toward cutter -> moved", old -> moved(old, Direction.TOWARD))
                .and("moved away from cutter -> moved", old -> moved(old, Direction.AWAY))
                .and("setting uncertainty", "moved.setting uncertainty"));
    }

    /** The direction was in the key. */
    private static Branch moved(Branch old, Direction direction) {
        String key = "moved " + direction;
        return old.has(key) ? old.moved(key, "moved.distance").with("moved.direction", direction.toString()) : old;
    }

    /** Where the fence goes. */
    private enum Direction {
        TOWARD("toward cutter"),
        AWAY("away from cutter");

        private final String words;

        Direction(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /** A fence move as a maker notes it. */
    private static final class Moved extends Noun<Moved> {
        private static final Table<Moved> TABLE =
                Table.of("fence move", "a fence move", Moved::new).printedBy(Moved::sentences);
        private static final Key<Moved, Amount<Length>> DISTANCE = TABLE.needed(
                "distance", Types.SIZE_OR_NOTHING, "distance of the move at the cutter, not at a stop block");
        private static final Key<Moved, Direction> DIRECTION =
                TABLE.needed("direction", Types.words(Direction.class, Direction::toString), "direction of the move");
        private static final Key<Moved, Amount<Length>> SETTING = TABLE.optional(
                "setting uncertainty",
                Types.SIZE_OR_NOTHING,
                "standard uncertainty of the setting of the move, at the cutter. Default: 0");

        private Moved(Values<Moved> values) {
            super(values);
        }

        private static Moved of(FenceMove move) {
            Values<Moved> values = TABLE.values()
                    .with(DISTANCE, move.style().amount(Math.abs(move.towardMm())))
                    .with(DIRECTION, move.towardMm() < 0 ? Direction.AWAY : Direction.TOWARD);
            double u = move.settingUncertaintyMm();
            return new Moved(u == 0 ? values : values.with(SETTING, move.style().amount(u)));
        }

        private FenceMove move() {
            Amount<Length> distance = values().at(DISTANCE);
            FenceMove move =
                    values().at(DIRECTION) == Direction.AWAY ? FenceMove.away(distance) : FenceMove.toward(distance);
            return values().find(SETTING).map(move::settingUncertainty).orElse(move);
        }

        private static Form<Moved> sentences() {
            return TABLE.facts("fence-moved")
                    .phrase("way", moved -> moved.values().at(DIRECTION) == Direction.AWAY, "away from")
                    .phrase("way", "toward")
                    .finds("fence-moved", "fence moved {distance:brief} {way} the cutter");
        }
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
        if (!values.has(CUT) && (!isMoved || values.at(AGAIN))) {
            throw Refusal.because(
                    "near wall",
                    "missing",
                    "near wall is missing; give both walls of a trial cut, or a move of the fence");
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
                open = move.map(fence -> TABLE.values().with(MOVED, Moved.of(fence)))
                        .orElseGet(TABLE::values);
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
        return values.has(MOVED);
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
        return values().find(MOVED).map(Moved::move);
    }

    private static Form<CentringRound> sentences() {
        return TABLE.facts("centring-round")
                .factIfAny("cut", Kind.ANSWER, "the readings", CentringRound::cut)
                .finds("cut-read-again", x -> x.values().at(AGAIN), "The same cut read again: {cut}")
                .finds("moved-and-cut", x -> isMoved(x.values()) && x.values().has(CUT), "{moved}, then {cut}")
                .finds("moved", x -> isMoved(x.values()), "{moved}")
                .finds("cut-read", "{cut}");
    }
}
