package org.neckgeom.strength;

import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.neck.Strip;
import org.neckgeom.stock.Wood;
import org.neckgeom.stock.WoodFigure;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * The greatest stress along the grain in the neck's wood and in the fingerboard under the strings, beside the wood's
 * bending strength, such as {@code 5.2 MPa, 5 % of the bending strength}. Immutable.
 *
 * <p>{@code stress = E (N/EA - M (z - zN)/EI)}, tension positive, at the outer faces of 241 sections; N is the tension of the
 * strings and of a single-action rod, M their moment on the bent neck. Estimate: clear straight-grained wood under a
 * steady load. Runout, knots, the short grain of a head sawn from the plank, and a fall are not in it.
 */
public final class Stress extends ValueAnswer {

    /** Coefficient of variation of bending strength, Wood Handbook (2010) Table 5-6; from memory. */
    private static final double STRENGTH_VARIATION = 0.16;

    private static final int STATIONS = 241;

    /** Part of the strength with its interval: that of the stress, and pieces of a species being 16 % apart. */
    private record VarianceShare(String wood, double value, double logSpread) {
        static final Form<VarianceShare> FORM = Form.<VarianceShare>of("share-of-strength")
                .fact("wood", Kind.NAME, "the wood under the stress", VarianceShare::wood)
                .fact("share", Kind.RATIO, "stress over bending strength, where that is known", VarianceShare::value)
                .fact("lower", Kind.RATIO, "end of the interval", x -> x.value * StrictMath.exp(-x.logSpread))
                .fact("upper", Kind.RATIO, "end of the interval", x -> x.value * StrictMath.exp(x.logSpread))
                .finds(
                        "known",
                        "{share:percent 1} of its bending strength (95 %: {lower:percent 1 bare} to {upper:percent 1})")
                .finds("not-known", "bending strength of {wood} not known");

        static VarianceShare of(Likely<Pressure> stress, Wood wood) {
            double strength = wood.has(WoodFigure.Kind.BENDING_STRENGTH)
                    ? wood.bendingStrength().libraryValue()
                    : Double.NaN;
            double ofStress = StrictMath.log(stress.high() / stress.low()) / (2 * ModulusSpread.K95);
            double spread = ModulusSpread.K95 * StrictMath.hypot(ofStress, STRENGTH_VARIATION);
            return new VarianceShare(wood.name(), stress.value() / strength, spread);
        }
    }

    private static final Form<Stress> FORM = Form.<Stress>of("stress")
            .fact("neck", Kind.NAME, "its name", x -> x.question.name())
            .fact("stress", Kind.libraryValue(ShopUnit.MEGAPASCAL), "greatest in the neck", x -> x.neck.value())
            .fact("rodForce", Kind.libraryValue(ShopUnit.NEWTON), "positive straightens the neck", x -> x.force)
            .finds("stress", "Stress in {neck}: {stress:1} in the neck")
            .line("rodForce", "rod at", x -> x.force != 0, "{rodForce:0}")
            .fact(
                    "neckWood",
                    Kind.NAME,
                    "of the neck, or of its strip stressed most",
                    x -> x.wood().name())
            .fact("inNeck", Likely.KIND, "greatest, without its sign", x -> x.neck)
            .fact("inNeckAt", Kind.MM, "from the nut", x -> x.neckAt)
            .line("inNeck", "{neckWood}", "{inNeck} at {inNeckAt:0|1} from the nut")
            .row("neckShare", "", Kind.answer(VarianceShare.FORM), "borne", x -> VarianceShare.of(x.neck, x.wood()))
            .fact(
                    "boardWood",
                    Kind.NAME,
                    "of the fingerboard",
                    x -> x.boardWood().name())
            .fact("inBoard", Likely.KIND, "greatest, without its sign", x -> x.board)
            .fact("inBoardAt", Kind.MM, "from the nut", x -> x.boardAt)
            .line("inBoard", "{boardWood} board", "{inBoard} at {inBoardAt:0|1} from the nut")
            .row(
                    "boardShare",
                    "",
                    Kind.answer(VarianceShare.FORM),
                    "borne",
                    x -> VarianceShare.of(x.board, x.boardWood()))
            .note("estimate", "Estimate: clear straight grain, steady load. Runout, knots, short grain at the head,")
            .note("estimate", "the adjuster's pocket under pressure, and a fall are not in it.");

    private final StrungNeck question;
    private final double force;
    private final Likely<Pressure> neck;
    private final Likely<Pressure> board;
    private final double neckAt;
    /** Of a laminated shaft: the one stressed most. */
    private final int strip;

    private final double boardAt;

    Stress(StrungNeck question, double force) {
        super(FORM, question.style());
        this.question = question;
        this.force = force;
        NeckBeam beam = question.beam();
        ModulusSpread spread = NeckModel.spread(question.neck());
        Peak middle = peak(beam, 1, 1);
        this.neckAt = middle.backAt;
        this.strip = middle.strip;
        this.boardAt = middle.boardAt;
        this.neck = Likely.of(spread.interval((back, top) -> peak(beam, back, top).back), ShopUnit.MEGAPASCAL);
        this.board = Likely.of(spread.interval((back, top) -> peak(beam, back, top).board), ShopUnit.MEGAPASCAL);
    }

    /** The greatest stresses of a neck, without their sign, and where they are. */
    private static final class Peak {
        private double back;
        private double backAt;
        private int strip;
        private double board;
        private double boardAt;
    }

    private Peak peak(NeckBeam beam, double backFactor, double boardFactor) {
        NeckBeam other = beam.stiffer(backFactor, boardFactor);
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
            double atTop =
                    section.strain(push, moment, other.board().thickness().at(x));
            double board = other.board().modulus() * Math.max(Math.abs(atFace), Math.abs(atTop));
            for (int strip = 0; strip < other.back().strips(); strip++) {
                double deep = other.back().depthOf(strip, x);
                double most = Math.max(Math.abs(atFace), Math.abs(section.strain(push, moment, -deep)));
                double back = deep > 0 ? other.back().modulusOf(strip) * most : 0;
                if (back > peak.back) {
                    peak.back = back;
                    peak.backAt = x;
                    peak.strip = strip;
                }
            }
            if (board > peak.board) {
                peak.board = board;
                peak.boardAt = x;
            }
        }
        return peak;
    }

    /** {@return the greatest stress in the neck's wood, without its sign} */
    public Amount<Pressure> inNeck() {
        return neck.amount();
    }

    /** {@return the 95 % interval of the greatest stress in the neck's wood over pairs of woods} */
    public Interval<Pressure> inNeckInterval() {
        return neck.interval();
    }

    /** {@return where the neck's wood is stressed most; distance from the nut} */
    public Amount<Length> place() {
        return style().amount(neckAt);
    }

    /** {@return the greatest stress in the fingerboard, without its sign} */
    public Amount<Pressure> inFingerboard() {
        return board.amount();
    }

    /** {@return the 95 % interval of the greatest stress in the fingerboard over pairs of woods} */
    public Interval<Pressure> inFingerboardInterval() {
        return board.interval();
    }

    /**
     * {@return what part of its bending strength the neck's wood bears, nothing if the strength is not known; greatest
     * stress over bending strength, a ratio; the neck bears its strings while the ratio is well below 1}
     */
    public Optional<Double> shareOfStrength() {
        double share = VarianceShare.of(neck, wood()).value();
        return Double.isNaN(share) ? Optional.empty() : Optional.of(share);
    }

    private Wood wood() {
        List<Strip> strips = question.neck().strips();
        return strips.isEmpty()
                ? NeckModel.wood(question.neck())
                : strips.get(strip).wood();
    }

    private Wood boardWood() {
        return NeckModel.boardWood(question.neck());
    }

    @Override
    protected Object[] parts() {
        return new Object[] {question, force};
    }
}
