package org.neckgeom.strength;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.Torque;

/**
 * The force in the rod that leaves a wanted relief, and whether the rod can do it, such as {@code 640 N (95 %: 420 to
 * 790 N): the rod can do it}. Immutable.
 *
 * <p>Estimate, with the assumptions of {@link Relief}. A two-way rod bends the neck by its force times the distance of its
 * bars; a single-action rod by its force times its distance from the neutral axis, station by station.
 */
public final class RodForce extends ValueAnswer {

    /** Whether the rod can leave the wanted relief. */
    public enum Reach {
        /** It can, over the whole interval. */
        CAN("the rod can do it"),
        /** In part of the interval it can. */
        MAY("the rod may do it, it depends on the wood"),
        /** It cannot, over the whole interval. */
        CANNOT("the rod cannot do it");

        private final String words;

        Reach(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    private static final Creep YEAR = Creep.after(365.25);

    private static final Form<RodForce> OBSTACLE = Form.<RodForce>of("obstacle")
            .fact("slackRelief", Likely.KIND, "under the strings alone", x -> x.slack)
            .fact("limit", Kind.libraryValue(ShopUnit.NEWTON), "greatest force of the rod", x -> x.question.limit())
            .finds("no-rod", x -> !x.question.hasRod(), "the neck has no adjustable rod")
            .finds(
                    "wrong-side",
                    x -> Double.isNaN(x.force.value()),
                    "the rod lies on the wrong side of the neutral axis, its tension does not straighten the neck")
            .finds(
                    "only-less-relief",
                    x -> x.force.low() < x.question.leastForce(),
                    "the strings leave {slackRelief}, and a single-action rod can only take relief away")
            .finds("too-weak", "the rod's limit is {limit:0}");

    /** In a row of another answer. */
    static final Kind<RodForce> IN_ROW = Kind.answer(Form.<RodForce>of("rod-force-in-row")
            .fact("reach", Kind.code(Reach.class), "of the rod", RodForce::reach)
            .factIfAny("force", Likely.KIND, "positive straightens the neck", RodForce::likely)
            .finds("no-force", x -> x.likely().isEmpty(), "{reach}")
            .finds("force", "{force}: {reach}"));

    private static final Form<RodForce> FORM = Form.<RodForce>of("rod-force")
            .fact("wanted", Kind.MM, "relief, positive forward", x -> x.wanted)
            .fact("reach", Kind.code(Reach.class), "of the rod", RodForce::reach)
            .fact("rodArm", Kind.MM, "between the axes of a two-way rod's bars", x -> x.question.arm())
            .finds("rod-force", "Rod for {wanted:brief} of relief: {reach}")
            .factIfAny("obstacle", Kind.answer(OBSTACLE), "why it cannot, or not on every neck", RodForce::obstructed)
            .line("because", "because", "{obstacle}")
            .factIfAny("force", Likely.KIND, "positive straightens the neck", RodForce::likely)
            .line("force", "force", "{force}")
            .factIfAny("moment", Likely.KIND, "of a two-way rod", RodForce::moment)
            .line("moment", "moment", "{moment}")
            .factIfAny(
                    "rodLimit", StrungNeck.ROD_LIMIT, "at most", x -> x.likely().map(f -> x.question))
            .line("rodLimit", "rod limit", "{rodLimit}")
            .row("slackRelief", "rod slack", Likely.KIND, "under the strings alone", x -> x.slack)
            .factIfAny(
                    "afterAYear",
                    Likely.KIND,
                    "relief so set, after a year of creep",
                    x -> x.set()
                            .map(set -> YEAR.of(set, x.question.bench().middle().ownBow())))
            .line("afterAYear", "after a year", "{afterAYear} by creep, if left alone")
            .fact("hump", Kind.MM, "left beside the relief, 0 or more", x -> x.hump)
            .line("hump", "hump left", x -> x.hump > 0, "{hump:text}: the neck is an S")
            .row("straightedge", "straightedge", StrungNeck.STRAIGHTEDGE, "where it lies", x -> x.question)
            .note(
                    "estimate",
                    x -> x.question.isTwoWay(),
                    "Estimate: bars {rodArm:brief} apart, whole moment passed to the wood;")
            .note("estimate", x -> !x.question.isTwoWay(), "Estimate: rod on the channel's floor, no friction;")
            .note("estimate", "95 % interval over woods, model and arm of the rod.")
            .note("turn-slowly", x -> x.question.hasRod(), "An eighth of a turn at a time; stop where it turns hard.");

    private final StrungNeck question;
    private final double wanted;
    private final Likely<Length> slack;
    private final Likely<Force> force;
    private final double hump;

    static RodForce of(StrungNeck question, Quantity<Length> wanted) {
        return new RodForce(question, LibraryUnits.mm(wanted, "relief wanted"), LengthStyle.of(wanted));
    }

    private RodForce(StrungNeck question, double wanted, LengthStyle style) {
        super(FORM, style);
        this.question = question;
        this.wanted = wanted;
        StrungNeck.Bench bench = question.bench();
        List<double[]> intervals = question.found(
                wanted,
                () -> bench.intervals(
                        List.of(x -> x.bow(0), x -> question.hasRod() ? x.forceFor(wanted) : Double.NaN)));
        double[] found = intervals.get(1);
        this.slack = Likely.of(intervals.get(0), style.unit());
        this.force = Likely.of(found, ShopUnit.NEWTON);
        this.hump = Double.isNaN(found[0]) ? 0 : bench.middle().hump(found[0]);
    }

    /** {@return whether the rod can do it; may, or cannot} */
    public Reach reach() {
        if (!force.isWhole()) {
            return Double.isNaN(force.value()) ? Reach.CANNOT : Reach.MAY;
        }
        double least = Math.max(question.leastForce(), -question.limit());
        double most = question.limit();
        if (force.low() >= least && force.high() <= most) {
            return Reach.CAN;
        }
        return force.high() < least || force.low() > most ? Reach.CANNOT : Reach.MAY;
    }

    /** {@return why the rod cannot do it, or not on every neck; the reason in words, nothing if it can} */
    public Optional<String> obstacle() {
        return obstructed().map(force -> OBSTACLE.text(force, style()));
    }

    private Optional<RodForce> obstructed() {
        return reach() == Reach.CAN ? Optional.empty() : Optional.of(this);
    }

    /** {@return the force needed, even above the rod's limit; positive straightens; nothing where none does} */
    public Optional<Amount<Force>> force() {
        return Double.isNaN(force.value()) ? Optional.empty() : Optional.of(force.amount());
    }

    /** {@return the 95 % interval of the force over pairs of woods; nothing where part of them have no answer} */
    public Optional<Interval<Force>> interval() {
        return force.isWhole() ? Optional.of(force.interval()) : Optional.empty();
    }

    /** {@return the relief with the rod slack; the relief under the strings alone} */
    public Amount<Length> slackRelief() {
        return slack.amount();
    }

    /**
     * {@return how far this force bows the neck sideways if the rod lies off its middle: {@code F e L^2/(8 E I)} over the rod's
     * length, I of the section halfway about its vertical axis; toward the side it lies away from; estimate} 0 for a two-way rod,
     * whose bars pull against each other, and where no force does it.
     *
     * @param off distance of the rod from the neck's middle, either sign
     */
    public Amount<Length> sidewaysBow(Quantity<Length> off) {
        double e = LibraryUnits.mm(off, "offset of the rod");
        boolean pulls = !question.isTwoWay() && !Double.isNaN(force.value());
        return style().amount(pulls ? e * force.value() * perMoment() : 0.0);
    }

    private double perMoment() {
        double start = question.neck().channel().orElseThrow().startMm();
        double length = question.neck().channel().orElseThrow().reinforcement().lengthMm();
        NeckBeam beam = question.beam();
        return length * length / (8 * beam.sidewaysStiffness(Math.min(beam.length(), start + length / 2)));
    }

    /** {@return the hump that is left beside the relief: rod and strings never undo each other exactly; 0 or more} */
    public Amount<Length> hump() {
        return style().amount(hump);
    }

    /** A force that no rod of this kind can give is no answer to anyone. */
    private Optional<Likely<Force>> likely() {
        return force.isWhole() && force.high() >= question.leastForce() ? Optional.of(force) : Optional.empty();
    }

    /** The relief that the rod leaves, where it can. */
    private Optional<Likely<Length>> set() {
        return wanted > 0 && reach() != Reach.CANNOT
                ? Optional.of(new Likely<>(wanted, wanted, wanted, style().unit()))
                : Optional.empty();
    }

    private Optional<Likely<Torque>> moment() {
        double arm = question.arm();
        return likely().filter(any -> question.isTwoWay())
                .map(f -> new Likely<>(arm * f.value(), arm * f.low(), arm * f.high(), ShopUnit.NEWTON_METRE));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {question, wanted};
    }
}
