package org.neckgeom.board;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * How deep a nut slot is filed (first-fret action): its bottom over the fret plane and over the fingerboard, from the gap over
 * the first fret and the action at the octave fret. Immutable.
 *
 * <p>With L the scale length, x1 and x3 frets 1 and 3, a the height over the fret plane at the nut and A the action at L/2, the
 * string is {@code a + (A - a) 2 x/L} over the plane at x:
 *
 * <pre>
 * gap over fret 1                     g = a + (A - a) 2 x1/L
 * slot over the fret plane            a = (g - 2 A x1/L)/(1 - 2 x1/L)
 * gap over fret 1, held at fret 3     a (x3 - x1)/x3
 * slot over the fingerboard           a + fret height
 * </pre>
 *
 * Exact for frets in one plane: relief adds to the gap. {@link #LEAST_HELD_MM} is common practice.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class NutSlot extends ValueAnswer {

    /** Least gap over fret 1 with the string held at fret 3, in mm: common practice. */
    public static final double LEAST_HELD_MM = 0.05;

    private static final int HELD_AT = 3;

    private static final Form<NutSlot> FORM = Form.<NutSlot>of("nut-slot")
            .fact("atNut", Kind.MM, "slot over the fret plane; below 0: under it", s -> s.atNut)
            .fact("action", Kind.MM, "over the octave fret", s -> s.action)
            .fact("gap", Kind.MM, "over fret 1, string open", NutSlot::gapMm)
            .fact("held", Kind.MM, "over fret 1, string held at fret 3; below 0: it bears on fret 1", NutSlot::heldMm)
            .fact("leastHeld", Kind.MM, "common practice", s -> LEAST_HELD_MM)
            .factIfAny("overBoard", Kind.AMOUNT, "slot over the fingerboard", NutSlot::overBoard)
            .finds("under", s -> s.atNut < 0, "Nut slot {atNut:size text} under the fret plane: too deep")
            .finds("over", "Nut slot {atNut:text} over the fret plane")
            .line("overBoard", "over the board", s -> s.fretHeight != null, "{overBoard:text}")
            .line("gap", "gap over fret 1", "{gap:text} open, {held:text} held at fret 3")
            .line("action", "action", "{action:brief} over the octave fret")
            .note(
                    "too-deep",
                    NutSlot::isTooDeep,
                    "held at fret 3 the gap is under {leastHeld:brief} (common practice): the open string will buzz");

    private final Scale scale;
    private final double atNut;
    private final double action;
    private final @Nullable Double fretHeight;

    private NutSlot(Scale scale, double atNut, double action, @Nullable Double fretHeight, LengthStyle style) {
        super(FORM, style);
        this.scale = scale;
        this.atNut = atNut + 0.0;
        this.action = action;
        this.fretHeight = fretHeight;
    }

    /**
     * {@return the slot of a string whose gap over the first fret was read}
     *
     * @param scale of the string, three frets or more to the octave
     * @param gap over the first fret, string open, 0 or more
     * @param action over the octave fret, 0 or more
     */
    public static NutSlot of(Scale scale, Quantity<Length> gap, Quantity<Length> action) {
        double share = share(scale, 1);
        double open = LibraryUnits.mmNotNegative(gap, "gap over fret 1");
        double octave = LibraryUnits.mmNotNegative(action, "action");
        return new NutSlot(scale, (open - share * octave) / (1 - share), octave, null, LengthStyle.of(gap));
    }

    /**
     * {@return the slot of a string of a neck as its neck set has it, on the bass side}
     *
     * @param neck with scale and neck set
     * @throws IllegalArgumentException if it has no neck set
     */
    public static NutSlot of(Neck neck) {
        return ofNeck(neck, 0);
    }

    /**
     * {@return the slot of the outer treble string of a neck as its neck set has it}
     *
     * @param neck with scale and neck set
     * @throws IllegalArgumentException if it has no neck set
     */
    public static NutSlot ofTreble(Neck neck) {
        return ofNeck(neck, 1);
    }

    private static NutSlot ofNeck(Neck neck, double across) {
        StringHeights heights = Objects.requireNonNull(neck, "neck")
                .neckSet()
                .map(NeckSet::heights)
                .orElseThrow(() -> Refusal.because(
                        "neck set", "missing", "\"" + neck.name() + "\" has no string heights: add .neckSet(...)"));
        share(neck.scale(), 1);
        return new NutSlot(
                neck.scale(),
                heights.atNutMm(across),
                heights.actionMm(across),
                neck.fingerboard().fretHeight().map(Amount::libraryValue).orElse(null),
                neck.style());
    }

    private static double share(Scale scale, int fret) {
        if (Objects.requireNonNull(scale, "scale").divisions() < HELD_AT) {
            throw Refusal.of("frets to the octave", "at-least", "be " + HELD_AT + " or more", scale.divisions());
        }
        return 2 * scale.fretMm(fret) / scale.lengthMm();
    }

    /**
     * {@return a copy with the frets' height, so that the depth over the fingerboard is known}
     *
     * @param overBoard height of the frets over the board, more than 0
     */
    public NutSlot fretHeight(Quantity<Length> overBoard) {
        return new NutSlot(scale, atNut, action, LibraryUnits.mmPositive(overBoard, "fret height"), style());
    }

    /**
     * {@return the slot filed until the gap over the first fret is as wanted: the saddle stays, so that the action at the octave
     * falls by half of what is filed}
     *
     * @param gap wanted over the first fret, 0 or more, no more than it is now: a file takes wood off
     */
    public NutSlot filedTo(Quantity<Length> gap) {
        double wanted = LibraryUnits.mmNotNegative(gap, "gap over fret 1");
        if (!(wanted <= gapMm())) {
            throw LibraryUnits.refused(
                    "gap over fret 1", "at-most", "no more than " + style().brief(gapMm()) + " as it is", gap);
        }
        double off = (gapMm() - wanted) / (1 - share(scale, 1) / 2);
        return new NutSlot(scale, atNut - off, action - off / 2, fretHeight, style());
    }

    private double gapMm() {
        return atNut + (action - atNut) * share(scale, 1);
    }

    private double heldMm() {
        return atNut * (1 - share(scale, 1) / share(scale, HELD_AT));
    }

    /** {@return the bottom of the slot over the fret plane; negative: under it} */
    public Amount<Length> atNut() {
        return style().amount(atNut);
    }

    /** {@return the action over the octave fret} */
    public Amount<Length> action() {
        return style().amount(action);
    }

    /** {@return the gap over the first fret, string open} */
    public Amount<Length> gap() {
        return style().amount(gapMm());
    }

    /** {@return the gap over the first fret, string held at fret 3: the quick check; negative: it bears on the first fret} */
    public Amount<Length> gapHeldAtThird() {
        return style().amount(heldMm());
    }

    /** {@return the bottom of the slot over the fingerboard; nothing without the frets' height} */
    public Optional<Amount<Length>> overBoard() {
        return Optional.ofNullable(fretHeight).map(frets -> style().amount(frets + atNut));
    }

    /** {@return whether the gap, held at fret 3, is under {@link #LEAST_HELD_MM}} */
    public boolean isTooDeep() {
        return heldMm() < LEAST_HELD_MM;
    }

    @Override
    protected @Nullable Object[] parts() {
        return new @Nullable Object[] {scale, atNut, action, fretHeight};
    }
}
