package org.neckgeom.channel;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.shop.TrialCut;

/**
 * A step at the machine: a trial cut that was read, the same cut read once more, or a fence move, such as
 * {@code fence moved 0.7 mm toward the cutter}. Immutable.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class CentringStep extends ValueAnswer {

    private static final Form<CentringStep> FORM = Form.<CentringStep>of("centring-step")
            .factIfAny("cut", Kind.ANSWER, "the readings", CentringStep::cut)
            .factIfAny(
                    "move",
                    Kind.MM,
                    "at the cutter, positive toward it",
                    s -> s.move().map(FenceMove::towardMm))
            .finds("cut-read-again", CentringStep::isReadAgain, "The same cut read again: {cut}")
            .finds("cut-read", "{cut}")
            .finds(
                    "moved-away",
                    step -> step.move().filter(move -> move.towardMm() < 0).isPresent(),
                    "fence moved {move:size brief} away from the cutter")
            .finds("moved-toward", "fence moved {move:size brief} toward the cutter");

    private final @Nullable TrialCut cut;
    private final boolean again;
    private final @Nullable FenceMove move;

    private CentringStep(@Nullable TrialCut cut, boolean again, @Nullable FenceMove move) {
        super(FORM, cut != null ? cut.style() : Objects.requireNonNull(move).style());
        this.cut = cut;
        this.again = again;
        this.move = move;
    }

    /**
     * {@return a trial cut that was read}
     *
     * @param cut the readings
     */
    public static CentringStep read(TrialCut cut) {
        return new CentringStep(Objects.requireNonNull(cut, "trial cut"), false, null);
    }

    /**
     * {@return the last trial cut read once more: the same slot, measured anew}
     *
     * @param cut the new readings
     */
    public static CentringStep readAgain(TrialCut cut) {
        return new CentringStep(Objects.requireNonNull(cut, "trial cut"), true, null);
    }

    /**
     * {@return a fence move}
     *
     * @param move at the cutter
     * @throws ArithmeticException if it is a move that was not advised
     */
    public static CentringStep moved(FenceMove move) {
        Objects.requireNonNull(move, "fence move").towardMm();
        return new CentringStep(null, false, move);
    }

    /** {@return the trial cut; the readings, or nothing for a move} */
    public Optional<TrialCut> cut() {
        return Optional.ofNullable(cut);
    }

    /** {@return whether the readings are of a cut that was read before; false for a new cut and for a move} */
    public boolean isReadAgain() {
        return again;
    }

    /** {@return the fence move; the move at the cutter, or nothing for a cut} */
    public Optional<FenceMove> move() {
        return Optional.ofNullable(move);
    }

    @Override
    protected @Nullable Object[] parts() {
        return new Object[] {cut, again, move};
    }
}
