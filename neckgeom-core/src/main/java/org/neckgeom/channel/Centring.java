package org.neckgeom.channel;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.TestPiece;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * Centring of the truss rod channel: the slot offset that a trial cut (test cut) shows, the fence move and the verdict.
 *
 * <p>The near wall a is on the fence side, the far wall b on the other side. Offset: {@code e = (a - b)/2}, positive
 * when the slot is too far from the fence. The fence moves by e, not by a - b. Exact. Standard uncertainty: {@code
 * sqrt(u_a^2 + u_b^2 - 2 rho u_a u_b)/2} (JCGM 100, 5.2.2); a zero error common to both walls cancels. Degrees of
 * freedom: Welch-Satterthwaite (JCGM 100, G.4). Slot and piece, if read, add nothing to this estimate: their misclosure
 * is not correlated with it. They check the walls, and they carry the offset over to another width.
 *
 * <p>Errors: when the readings contradict each other, {@link #verdict} throws {@link org.neckgeom.fault.NoAnswer} (an
 * {@code ArithmeticException}); limits narrower than the guard bands throw {@link org.neckgeom.fault.Refusal} (an
 * {@code IllegalArgumentException}). Immutable.
 *
 * <pre>{@code
 * var centring = Centring.of(TrialCut.walls(mm(29.84), mm(31.26)).repeatability(mm(0.02)));
 * println(centring.verdict(Limits.within(mm(0.1))));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * OUTSIDE: conformance probability below 0.1 % (within 0.1 mm)
 *   estimate  -0.710 mm, u 0.014 mm
 *   limit     within 0.1 mm
 *   guard     2 u on the safe side
 * }</pre>
 *
 * @see CentringRounds
 * @see Closure
 */
public final class Centring implements Answer {

    private static final double KNOWN = Double.POSITIVE_INFINITY;

    /** The offset's parts and not the offset, so that a centring asked once and dropped costs no memory. */
    private final double offsetMm;

    private final double uncertaintyMm;
    private final SlotOffset.Background background;
    private final TrialCut trial;
    /** Whether the trial piece's own edge still locates the slot, so that another width can be answered for. */
    private final boolean fromTheEdge;

    private Centring(
            double offsetMm,
            double uncertaintyMm,
            SlotOffset.Background background,
            TrialCut trial,
            boolean fromTheEdge) {
        this.offsetMm = offsetMm;
        this.uncertaintyMm = uncertaintyMm;
        this.background = background;
        this.trial = trial;
        this.fromTheEdge = fromTheEdge;
    }

    /**
     * {@return the centring that a trial cut shows; the centring of the trial piece itself}
     *
     * @param trial the readings
     */
    public static Centring of(TrialCut trial) {
        Estimate<Length> a = Objects.requireNonNull(trial, "trial").nearWall();
        Estimate<Length> b = trial.farWall();
        double ua = a.libraryUncertainty();
        double ub = b.libraryUncertainty();
        double e = (a.libraryValue() - b.libraryValue()) / 2;
        double u = Math.sqrt(Math.max(0, ua * ua + ub * ub - 2 * trial.wallCorrelation() * ua * ub)) / 2;
        double nu = degreesOfFreedom(u, ua / 2, a.degreesOfFreedom(), ub / 2, b.degreesOfFreedom());
        return new Centring(e, u, SlotOffset.Background.of(nu, trial.style()), trial, true);
    }

    private static double degreesOfFreedom(double u, double u1, double nu1, double u2, double nu2) {
        if (u == 0 || Double.isInfinite(nu1) && Double.isInfinite(nu2)) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = fourth(u1) / nu1 + fourth(u2) / nu2;
        return sum == 0 ? Double.POSITIVE_INFINITY : fourth(u) / sum;
    }

    private static double fourth(double u) {
        return u * u * u * u;
    }

    /** {@return how far off the middle the slot is; the offset with its uncertainty} */
    public SlotOffset offset() {
        return new SlotOffset(offsetMm, uncertaintyMm, background);
    }

    /** {@return the fence move that would centre the slot; without advice when the readings contradict each other} */
    public FenceMove move() {
        Closure closure = closure();
        return closure.closes() ? FenceMove.of(offset()) : FenceMove.refused(offset(), closure);
    }

    /**
     * {@return the verdict on the slot offset, with a guard band of twice the standard uncertainty}
     *
     * @param limits for the offset
     * @throws IllegalArgumentException if the limits are narrower than the guard bands, so that no verdict could be
     *     WITHIN; the message states how often to read instead
     * @throws ArithmeticException if the readings contradict each other
     */
    public Verdict<Length> verdict(Limits<Length> limits) {
        if (!closure().closes()) {
            throw NoAnswer.because(
                    "verdict", "contradiction", "no verdict: " + closure().objection(style()));
        }
        Verdict<Length> verdict = Verdict.of(offset().estimate(), limits);
        if (!verdict.isReachable()) {
            double guard = verdict.guardBand().libraryValue();
            double room = (limits.libraryUpper() - limits.libraryLower()) / 2;
            LengthStyle style = background.style();
            String remedy = room > 0
                    ? "; read each wall " + (int) Math.min(1e6, Math.ceil(guard * guard / (room * room)))
                            + " times as often, or use a finer instrument"
                    : "";
            throw Refusal.of(
                    "limit",
                    "at-least",
                    "be " + style.small(guard)
                            + " or more (the guard band: twice the standard uncertainty of the offset)",
                    style.small(room) + remedy);
        }
        return verdict;
    }

    /** {@return the check of the readings against each other} */
    public Closure closure() {
        return Closure.of(trial, background.style());
    }

    /**
     * {@return what the same fence does to a piece of another width: {@code e + (W_t - W)/2}}
     *
     * @param width of that piece, read with the same instrument; more than the slot's distance from the fence
     * @throws IllegalArgumentException if the slot would not lie in the piece
     * @throws ArithmeticException if neither the trial piece nor its slot was read
     */
    public Centring onWidth(Quantity<Length> width) {
        double w = LibraryUnits.mmPositive(width, "piece width");
        return onWidth(Estimate.ofLibrary(
                w, singleReadingMm(), KNOWN, LengthStyle.of(width).unit()));
    }

    /**
     * {@return what the same fence does to a piece of another width: {@code e + (W_t - W)/2}}
     *
     * @param width of that piece with its uncertainty; more than the slot's distance from the fence
     * @throws IllegalArgumentException if the slot would not lie in the piece
     * @throws ArithmeticException if neither the trial piece nor its slot was read
     */
    public Centring onWidth(Estimate<Length> width) {
        Estimate<Length> slot = slotFromTheEdge();
        double centre = slot.libraryValue();
        double w = Objects.requireNonNull(width, "width").libraryValue();
        if (!(w > centre)) {
            throw LibraryUnits.refused(
                    "piece width",
                    "more-than",
                    "more than the slot's distance from the fence, "
                            + background.style().text(centre),
                    width.value());
        }
        double u = StrictMath.hypot(slot.libraryUncertainty(), width.libraryUncertainty() / 2);
        return with(centre - w / 2, u, true);
    }

    /**
     * {@return what the fence does to a neck when the trial piece is a copy of it, ripped at the same setting and
     * neither of them measured: the same offset, with half of two rips' scatter added to its uncertainty; the neck's
     * centring}
     *
     * @param piece a copied test piece
     * @throws IllegalArgumentException if the piece was measured: give the neck's width too
     */
    public Centring onNeckCopiedBy(TestPiece piece) {
        if (!Objects.requireNonNull(piece, "piece").isCopied()) {
            throw Refusal.of(
                    "piece", "copy", "be a copy of the neck", "measured: give the neck's width as well, by onNeck");
        }
        return shifted(piece.widerThan(offset().estimate()));
    }

    /**
     * {@return the neck's centring, where the trial piece and the neck were measured beforehand}
     *
     * @param neckWidth the neck's width
     * @param piece the test piece
     */
    public Centring onNeck(Estimate<Length> neckWidth, TestPiece piece) {
        return shifted(Objects.requireNonNull(piece, "piece").widerThan(neckWidth));
    }

    private Centring shifted(Estimate<Length> wider) {
        return with(
                offsetMm + wider.libraryValue() / 2,
                StrictMath.hypot(uncertaintyMm, wider.libraryUncertainty() / 2),
                false);
    }

    /** Another offset, its uncertainty taken as known. */
    private Centring with(double mm, double itsUncertaintyMm, boolean itsEdge) {
        return new Centring(
                mm + 0.0, itsUncertaintyMm, SlotOffset.Background.of(KNOWN, background.style()), trial, itsEdge);
    }

    /**
     * {@return where the slot runs in a blank whose edges are out of parallel: the offset at any station, {@code e(x) =
     * e_ref + (W_ref - W(x))/2}; the slot's line against the blank's own middle}
     *
     * @param blank with its edges out of parallel; the line runs from its nut to its heel end
     * @throws ArithmeticException if neither the trial piece nor its slot was read
     */
    public SlotLine along(Blank blank) {
        Estimate<Length> slot = slotFromTheEdge();
        double centre = slot.libraryValue();
        double length = Objects.requireNonNull(blank, "blank").lengthMm() - blank.nutFromHeadEndMm();
        double halfWidth = singleReadingMm() / 2;
        return new SlotLine(
                centre - blank.widthAtMm(0) / 2,
                halfWidth,
                0,
                centre - blank.widthAtMm(length) / 2,
                halfWidth,
                length,
                slot.libraryUncertainty(),
                background.style());
    }

    /** The middle of the slot from the fence's edge. */
    private Estimate<Length> slotFromTheEdge() {
        if (!fromTheEdge || trial.piece().isEmpty() && trial.slot().isEmpty()) {
            throw NoAnswer.because(
                    "width",
                    "missing",
                    "another width needs the trial piece's own: read the piece or the slot as well");
        }
        if (trial.piece().isPresent()) {
            // The offset and half the piece.
            Centring seen = of(trial);
            Estimate<Length> w = trial.piece().get();
            return known(
                    seen.offsetMm + w.libraryValue() / 2,
                    StrictMath.hypot(seen.uncertaintyMm, w.libraryUncertainty() / 2));
        }
        Estimate<Length> a = trial.nearWall();
        Estimate<Length> d = trial.slot().orElseThrow();
        return known(
                a.libraryValue() + d.libraryValue() / 2,
                StrictMath.hypot(a.libraryUncertainty(), d.libraryUncertainty() / 2));
    }

    private static Estimate<Length> known(double mm, double uncertaintyMm) {
        return Estimate.ofLibrary(mm, uncertaintyMm, KNOWN, ShopUnit.MILLIMETRE);
    }

    private double singleReadingMm() {
        return trial.repeatability().map(Amount::libraryValue).orElse(BenchUncertainty.USUAL_REPEATABILITY_MM);
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        private static final Form<Centring> FORM = Closure.Sentences.assuming(
                Form.<Centring>of("centring")
                        .fact("offset", Kind.answer(SlotOffset.Sentences.FORM), "of the slot", Centring::offset)
                        .finds("centring", "Centring: {offset}")
                        .row("move", "do", Kind.answer(FenceMove.Sentences.FORM), "to the middle", Centring::move)
                        .row(
                                "check",
                                "check",
                                Kind.answer(Closure.Sentences.CHECK),
                                "of the readings",
                                Centring::closure),
                Centring::closure,
                centring -> true);
    }

    @Override
    public Form<Centring> form() {
        return Sentences.FORM;
    }

    @Override
    public LengthStyle style() {
        return background.style();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Centring that
                && offset().equals(that.offset())
                && fromTheEdge == that.fromTheEdge
                && trial.equals(that.trial);
    }

    @Override
    public int hashCode() {
        return Objects.hash(offset(), trial, fromTheEdge);
    }

    /** Returns the offset, the move, the check of the readings, and the repeatability assumed where none was given. */
    @Override
    public String toString() {
        return text(style());
    }
}
