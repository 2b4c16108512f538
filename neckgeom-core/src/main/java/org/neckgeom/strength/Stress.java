package org.neckgeom.strength;

import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.neckgeom.measure.Interval;
import org.neckgeom.stock.Wood;
import org.neckgeom.stock.WoodFigure.Kind;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * Whether a neck stands its strings: the greatest stress along the grain in the neck's wood and in the fingerboard, beside
 * what the wood bears, such as {@code 5.2 MPa, 5 % of the bending strength}. Immutable.
 *
 * <p>{@code stress = E (N/EA - M (z - zN)/EI)}, tension positive, at the outer faces of 241 sections; N is the pull of the
 * strings and of a single-action rod, M their moment on the bent neck. Estimate: clear straight-grained wood under a
 * steady load. Runout, knots, the short grain of a head sawn from the plank, and a fall are not in it.
 */
public final class Stress implements SaysLengths<Stress> {

    /** Coefficient of variation of bending strength, Wood Handbook (2010) Table 5-6; from memory. */
    private static final double STRENGTH_VARIATION = 0.16;

    private static final int STATIONS = 241;

    private final Relief question;
    private final double force;
    private final Likely<Pressure> neck;
    private final Likely<Pressure> board;
    private final double neckAt;
    private final double boardAt;

    private Stress(Relief question, double force) {
        this.question = question;
        this.force = force;
        NeckBeam beam = question.beam();
        ModulusSpread spread = Relief.spread(question.neck());
        Peak middle = peak(beam, 1, 1);
        this.neckAt = middle.backAt;
        this.boardAt = middle.boardAt;
        this.neck = Likely.of(spread.interval((back, top) -> peak(beam, back, top).back), ShopUnit.MEGAPASCAL);
        this.board = Likely.of(spread.interval((back, top) -> peak(beam, back, top).board), ShopUnit.MEGAPASCAL);
    }

    static Stress of(Relief question, double force) {
        return new Stress(question, force);
    }

    /** The greatest stresses of a neck, without their sign, and where they are. */
    private static final class Peak {
        private double back;
        private double backAt;
        private double board;
        private double boardAt;
    }

    private Peak peak(NeckBeam beam, double backFactor, double boardFactor) {
        NeckBeam other = beam.withModuli(
                backFactor * beam.back().modulus(), boardFactor * beam.board().modulus());
        StringPull pull = question.pull();
        RodPull rod = force == 0 ? null : question.rodPull();
        BeamScan scan = BeamScan.of(other, pull, rod, BeamScan.USUAL_PANELS);
        Bend byOneNewton = scan.rod();
        Bend bent = (byOneNewton == null ? scan.strings() : scan.strings().plus(byOneNewton, force)).clampedAtEnd();
        SectionMoments section = new SectionMoments();
        Peak peak = new Peak();
        for (int i = 0; i < STATIONS; i++) {
            double x = Math.min(beam.length(), beam.length() * i / (STATIONS - 1));
            other.section(x, section);
            double axis = section.neutralAxis();
            double moment = pull.moment(x, axis) + pull.momentOfBow(x, bent.riseAt(0), bent.riseAt(x));
            double push = pull.pull();
            if (rod != null) {
                moment += force * rod.moment(x, axis);
                push += rod.push(x) * force;
            }
            double atFace = section.strain(push, moment, 0);
            double atBack = section.strain(push, moment, -other.back().depth().at(x));
            double atTop =
                    section.strain(push, moment, other.board().thickness().at(x));
            double back = other.back().modulus() * Math.max(Math.abs(atFace), Math.abs(atBack));
            double board = other.board().modulus() * Math.max(Math.abs(atFace), Math.abs(atTop));
            if (back > peak.back) {
                peak.back = back;
                peak.backAt = x;
            }
            if (board > peak.board) {
                peak.board = board;
                peak.boardAt = x;
            }
        }
        return peak;
    }

    /**
     * Returns the greatest stress in the neck's wood, without its sign.
     *
     * @return the stress
     */
    public Amount<Pressure> inNeck() {
        return neck.amount();
    }

    /**
     * Returns the interval of the greatest stress in the neck's wood.
     *
     * @return where it lies for 95 of 100 pairs of woods
     */
    public Interval<Pressure> inNeckInterval() {
        return neck.interval();
    }

    /**
     * Returns where the neck's wood is stressed most.
     *
     * @return distance from the nut
     */
    public Amount<Length> place() {
        return question.style().amount(neckAt);
    }

    /**
     * Returns the greatest stress in the fingerboard, without its sign.
     *
     * @return the stress
     */
    public Amount<Pressure> inFingerboard() {
        return board.amount();
    }

    /**
     * Returns the interval of the greatest stress in the fingerboard.
     *
     * @return where it lies for 95 of 100 pairs of woods
     */
    public Interval<Pressure> inFingerboardInterval() {
        return board.interval();
    }

    /**
     * Returns what part of its bending strength the neck's wood bears, nothing if the strength is not known.
     *
     * @return greatest stress over bending strength, a ratio; the neck stands while it is well below 1
     */
    public Optional<Double> shareOfStrength() {
        Wood wood = question.neck().wood();
        return wood.has(Kind.BENDING_STRENGTH)
                ? Optional.of(neck.value() / wood.bendingStrengthMPa())
                : Optional.empty();
    }

    /** Share of the strength with its interval: that of the stress, and pieces of a species being 16 % apart. */
    private static String share(Likely<Pressure> stress, Wood wood) {
        if (!wood.has(Kind.BENDING_STRENGTH)) {
            return "bending strength of " + wood.name() + " not known";
        }
        double share = 100 * stress.value() / wood.bendingStrengthMPa();
        double ofStress = StrictMath.log(stress.high() / stress.low()) / (2 * ModulusSpread.K95);
        double spread = ModulusSpread.K95 * StrictMath.hypot(ofStress, STRENGTH_VARIATION);
        return Numbers.fixed(share, 1) + " % of its bending strength (95 %: "
                + Numbers.fixed(share * StrictMath.exp(-spread), 1) + " to "
                + Numbers.fixed(share * StrictMath.exp(spread), 1)
                + " %)";
    }

    @Override
    public Stress in(LengthStyle other) {
        return new Stress(question.in(other), force);
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Stress other
                && question.equals(other.question)
                && Double.compare(force, other.force) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(question, force);
    }

    /** Returns the greatest stresses, where they are, and what part of the woods' strength they are. */
    @Override
    public String toString() {
        Wood wood = question.neck().wood();
        Wood top = NeckModel.boardWood(question.neck());
        Report report = Report.titled(
                "Stress in " + question.neck().name() + ": " + Numbers.fixed(neck.value(), 1) + " MPa in the neck");
        if (force != 0) {
            report.row("rod at", Numbers.fixed(force, 0) + " N");
        }
        return report.row(wood.name(), neck + " at " + Likely.place(question.style(), neckAt) + " from the nut")
                .row("", share(neck, wood))
                .row(top.name() + " board", board + " at " + Likely.place(question.style(), boardAt) + " from the nut")
                .row("", share(board, top))
                .note("Estimate: clear straight grain, steady load. Runout, knots, short grain at the head,")
                .note("the adjuster's pocket under pressure, and a fall are not in it.")
                .toString();
    }
}
