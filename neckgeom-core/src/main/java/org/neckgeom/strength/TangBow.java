package org.neckgeom.strength;

import java.util.Objects;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.LibraryUnits;

/**
 * The back-bow that fret tangs wider than their slots bring (compression fretting): at which interference, from fret 1 to the fret
 * at the body, strings off and rod slack. Immutable.
 *
 * <p>A tang that is wider than its slot by i holds the slot open by f i, the rest is crushed. The layer of the board with the
 * slots, s deep, its middle z over the neutral axis, turns the neck at each fret by {@code f i E_b A_s z/(E I)}; the bow is that of
 * all these turns. With frets evenly d apart and one section over L: {@code f i/d E_b A_s z/(E I) L^2/8}.
 *
 * <p>Estimate: f is 0.1 to 0.3, from memory. Fit it from one fretted neck, {@link #fitted}; it then holds for the same wire, wood and
 * slots.
 */
public final class TangBow extends ValueAnswer {

    private static final double LEAST_SHARE = 0.1;
    private static final double MOST_SHARE = 0.3;
    private static final double USUAL_SLOT_MM = 2.5;
    private static final double MOST_MM = 0.5;

    private static final Form<TangBow> FORM = Form.<TangBow>of("tang-bow")
            .fact("interference", Kind.MM, "tang less slot", b -> b.interference)
            .fact("slotDepth", Kind.MM, "of the fret slots", b -> b.slot)
            .fact("leastShare", Kind.RATIO, "of it that is not crushed", b -> b.least)
            .fact("mostShare", Kind.RATIO, "of it that is not crushed", b -> b.most)
            .fact("least", Kind.MM, "back-bow; estimate", b -> b.mm(b.least))
            .fact("most", Kind.MM, "back-bow; estimate", b -> b.mm(b.most))
            .fact("isFitted", Kind.FLAG, "whether a fretted neck was read", TangBow::isFitted)
            .finds(
                    "fitted",
                    TangBow::isFitted,
                    "Tangs {interference:text} wider than their slots: back-bow {least:text} (fitted)")
            .finds(
                    "estimate",
                    "Tangs {interference:text} wider than their slots: back-bow {least:text} to {most:text} (estimate)")
            .line("slot", "slots", "{slotDepth:brief} deep")
            .line("fitted", "not crushed", TangBow::isFitted, "{leastShare:..2} of it")
            .line("share", "not crushed", b -> !b.isFitted(), "{leastShare:..2} to {mostShare:..2} of it")
            .note("fit", b -> !b.isFitted(), "from memory: read one fretted neck, then ask again with .fitted(...)");

    private final Neck neck;
    private final double interference;
    private final double slot;
    private final double least;
    private final double most;
    private final double unit;

    private TangBow(Neck neck, double interference, double slot, double least, double most) {
        super(FORM, neck.style());
        this.neck = neck;
        this.interference = interference;
        this.slot = slot;
        this.least = least;
        this.most = most;
        double[] frets = IntStream.rangeClosed(1, neck.bodyAtFret())
                .mapToDouble(n -> neck.scale().fretMm(n))
                .toArray();
        this.unit = perInterference(NeckModel.beam(neck), frets, slot);
    }

    /**
     * {@return the back-bow of a neck with slots 2.5 mm deep}
     *
     * @param neck with scale, fingerboard and its wood, back and wood
     * @param interference how much wider the tangs are than their slots, 0 to 0.5 mm
     */
    public static TangBow of(Neck neck, Quantity<Length> interference) {
        double mm = LibraryUnits.mm(interference, "interference");
        if (!(mm >= 0 && mm <= MOST_MM)) {
            throw LibraryUnits.refused("interference", "range", "from 0 to 0.5 mm", interference);
        }
        return new TangBow(Objects.requireNonNull(neck, "neck"), mm, USUAL_SLOT_MM, LEAST_SHARE, MOST_SHARE);
    }

    /**
     * {@return a copy with slots of another depth} Default: 2.5 mm.
     *
     * @param depth of the slots, more than 0, less than the board's thickness
     */
    public TangBow slotDepth(Quantity<Length> depth) {
        double mm = LibraryUnits.mmPositive(depth, "slot's depth");
        double board = Math.min(neck.boardThicknessAtMm(0), neck.boardThicknessAtMm(neck.bodyJointMm()));
        if (!(mm < board)) {
            throw LibraryUnits.refused(
                    "slot's depth", "less-than", "less than the board's thickness, " + style().brief(board), depth);
        }
        return new TangBow(neck, interference, mm, least, most);
    }

    /**
     * {@return a copy with the share that a fretted neck of this kind has shown} Ask it of the neck that was read, then
     * {@link #interference} for the next.
     *
     * @param backBow read after fretting less that before, 0 or more
     * @throws ArithmeticException if the tangs are no wider than the slots, so that nothing can be fitted
     */
    public TangBow fitted(Quantity<Length> backBow) {
        double read = LibraryUnits.mmNotNegative(backBow, "back-bow");
        if (interference == 0) {
            throw NoAnswer.because("interference", "none", "tangs no wider than their slots bring no back-bow to fit");
        }
        double share = read / (unit * interference);
        if (!(share <= 1)) {
            throw LibraryUnits.refused(
                    "back-bow",
                    "at-most",
                    "no more than " + style().brief(unit * interference) + " by these tangs",
                    backBow);
        }
        return new TangBow(neck, interference, slot, share, share);
    }

    /**
     * {@return a copy with another interference, the share as it is}
     *
     * @param other how much wider the tangs are than their slots, 0 to 0.5 mm
     */
    public TangBow interference(Quantity<Length> other) {
        TangBow next = of(neck, other);
        return new TangBow(neck, next.interference, slot, least, most);
    }

    /** {@return the back-bow, from the least share to the most; estimate} */
    public Interval<Length> backBow() {
        return Interval.of(style().amount(mm(least)), style().amount(mm(most)));
    }

    private boolean isFitted() {
        return least == most;
    }

    private double mm(double share) {
        return share * unit * interference;
    }

    /** Bow in mm for each mm that the slots are held open, from the first of the frets to the last. */
    static double perInterference(NeckBeam beam, double[] frets, double slot) {
        double from = frets[0];
        double to = frets[frets.length - 1];
        double[] turns = new double[frets.length];
        SectionMoments section = new SectionMoments();
        for (int i = 0; i < frets.length; i++) {
            turns[i] = turn(beam, Math.min(frets[i], beam.length()), slot, section);
        }
        double greatest = 0;
        for (double x : frets) {
            double bow = 0;
            for (int i = 0; i < frets.length; i++) {
                double first = Math.min(x, frets[i]) - from;
                double last = to - Math.max(x, frets[i]);
                bow += to == from ? 0 : turns[i] * first * last / (to - from);
            }
            greatest = Math.max(greatest, bow);
        }
        return greatest;
    }

    private static double turn(NeckBeam beam, double x, double slot, SectionMoments section) {
        beam.section(x, section);
        NeckBeam.Board board = beam.board();
        double middle = board.thickness().at(x) - slot / 2;
        double push = board.modulus() * board.width().at(x) * slot;
        return push * (middle - section.neutralAxis()) / section.bendingStiffness();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {neck, interference, slot, least, most};
    }
}
