package org.neckgeom.strength;

import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * The bow of a neck under its strings and its truss rod: relief (up-bow) when positive, {@index back-bow} when negative, such
 * as {@code relief 0.55 mm (95 %: 0.37 to 0.86 mm), 187 mm from the nut}. Immutable.
 *
 * <p>Relief is the greatest gap under the straightedge; a hump is the greatest rise over the line between its two frets.
 * Where relief with slack strings, or at pitch before the rod was turned, was read, the neck is taken to have an even bow of its own
 * before strings and rod add theirs.
 * Estimate, with the assumptions of {@link Relief}; its interval is the 95 % interval over pairs of
 * woods and over what the beam leaves out: fret slots, a slack rod in touch, glue line, joint, heel, run-out of the grain, shear in
 * table moduli, moisture, sizes, tension and heights, each with a size of its own.
 */
public final class Bow extends ValueAnswer {

    private static final Form<BowKnowledge.Share> MODEL = Form.<BowKnowledge.Share>of("model-part")
            .fact(
                    "part",
                    Kind.NAME,
                    "what the beam leaves out",
                    share -> share.cause().toString())
            .fact("shift", Kind.RATIO, "of the logarithm of relief", BowKnowledge.Share::shift)
            .fact("deviation", Kind.RATIO, "standard uncertainty of the logarithm", BowKnowledge.Share::deviation)
            .finds("model-part", "{part} {deviation:percent 0}");

    private static final Form<Bow> FORM = Form.<Bow>of("bow")
            .fact("neck", Kind.NAME, "its name", bow -> bow.question.name())
            .fact("rodForce", Kind.libraryValue(ShopUnit.NEWTON), "positive straightens the neck", bow -> bow.force)
            .fact("days", Kind.RATIO, "under the strings; 0: an hour after tuning", bow -> bow.creep.days())
            .phrase("when", bow -> bow.creep.days() == 0, "")
            .phrase("when", ", after {days:..2} days")
            .finds("strings", bow -> !bow.question.hasRod(), "{neck} under strings{when}")
            .finds("rod-slack", bow -> bow.force == 0, "{neck} under strings, rod slack{when}")
            .finds("rod-set", "{neck} under strings, rod at {rodForce:0}{when}")
            .row("relief", "relief", Likely.KIND, "positive forward", Bow::likely)
            .fact("greatestAt", Kind.AMOUNT, "where the gap is greatest, from the nut", Bow::place)
            .fact("nearestFret", Kind.WHOLE, "to that place", Bow::nearestFret)
            .line(
                    "greatestAt",
                    "greatest at",
                    bow -> bow.edge.relief(bow.force) > 0,
                    "{greatestAt:0|1} from the nut, near fret {nearestFret}")
            .fact("hump", Kind.AMOUNT, "greatest rise over the straightedge's line, 0 or more", Bow::hump)
            .line("hump", "hump", bow -> bow.edge.hump(bow.force) > 0, "{hump:text}: the neck is an S")
            .fact("ownBow", Kind.MM, "without strings and rod, as read; 0 where it was not", bow -> bow.edge.ownBow())
            .line(
                    "ownBow",
                    "own bow",
                    bow -> bow.edge.before() != 0,
                    "{ownBow:text} without strings; uncertainty is of what they add")
            .row("straightedge", "straightedge", StrungNeck.STRAIGHTEDGE, "where it lies", bow -> bow.question)
            .row("lift", "nut lifted", Likely.KIND, "of the nut, the neck held at the body", x -> x.lift)
            .row("woods", "woods", StrungNeck.WOODS, "of neck and fingerboard", bow -> bow.question.woods())
            .fact(
                    "uncertainty",
                    Kind.RATIO,
                    "of what strings and rod add, standard, relative",
                    Bow::relativeUncertainty)
            .fact("byWood", Kind.RATIO, "of it, by the two woods alone", bow -> bow.knowledge.deviationOfWoods())
            .fact("byModel", Kind.RATIO, "of it, by what the beam leaves out", bow -> bow.knowledge.deviationOfModel())
            .fact(
                    "model",
                    Kind.table(MODEL),
                    "what the beam leaves out, the largest first",
                    bow -> bow.knowledge.model())
            .fact(
                    "largest",
                    Kind.answer(MODEL),
                    "of the model",
                    bow -> bow.knowledge.model().get(0))
            .line(
                    "uncertainty",
                    "uncertainty",
                    "{uncertainty:percent 0}: wood {byWood:percent 0}, model {byModel:percent 0}, most of it {largest}")
            .fact("inPureBending", Kind.RATIO, "modulus used over that of a bending table", bow -> MadeNeck.TABLE)
            .note(
                    "table-moduli",
                    Bow::isOfTable,
                    "Moduli from bending tables contain shear: {inPureBending:2} of them is used.")
            .note(
                    "estimate",
                    bow -> bow.creep.days() == 0,
                    "Estimate an hour after tuning: beam clamped at the body joint. 95 % interval over woods")
            .note(
                    "estimate",
                    bow -> bow.creep.days() > 0,
                    "Estimate with creep: beam clamped at the body joint. 95 % interval over woods, creep")
            .note("estimate", "and over what the beam leaves out.");

    private final StrungNeck question;
    private final double force;
    private final Creep creep;
    private final Straightedge edge;
    private final Likely<Length> relief;
    private final Likely<Length> lift;
    private final BowKnowledge knowledge;

    Bow(StrungNeck question, double force) {
        this(question, force, Creep.NONE);
    }

    private Bow(StrungNeck question, double force, Creep creep) {
        super(FORM, question.style());
        this.question = question;
        this.force = force;
        this.creep = creep;
        StrungNeck.Bench bench = question.bench();
        this.edge = bench.middle().softer(creep.logSinceTuning(0), 0, 0);
        this.knowledge = bench.knowledge();
        List<double[]> intervals = bench.intervals(
                creep,
                List.of(x -> x.bow(force), x -> x.added(force).clampedAtEnd().riseAt(0)));
        this.relief = Likely.of(intervals.get(0), style().unit());
        this.lift = Likely.of(intervals.get(1), style().unit());
    }

    /**
     * {@return this bow after some days under the same strings with the same force in the rod: creep bows the neck further}
     *
     * @param days from 0, an hour after tuning, to 36,525
     */
    public Bow after(double days) {
        return new Bow(question, force, Creep.after(days));
    }

    /** {@return the bow: relief less hump, positive forward; what is left of the two where the neck is an S} */
    public Amount<Length> relief() {
        return relief.amount();
    }

    /** {@return what strings and rod add of it to the neck without either, whose own bow may have been read} */
    public Amount<Length> added() {
        return edge.before() == 0 ? relief() : style().amount(edge.bowed(0).bow(force));
    }

    /** {@return the 95 % interval of the bow over pairs of woods} */
    public Interval<Length> interval() {
        return relief.interval();
    }

    private boolean isOfTable() {
        return question.woods().stream().anyMatch(wood -> MadeNeck.pureBending(wood) != 1);
    }

    /** {@return the standard uncertainty of what strings and rod add, relative: that of its logarithm} */
    public double relativeUncertainty() {
        return StrictMath.hypot(knowledge.deviation(), uncertaintyOfCreep());
    }

    private double uncertaintyOfCreep() {
        return (creep.logSinceTuning(1) - creep.logSinceTuning(-1)) / 2;
    }

    /** {@return what of the relative uncertainty comes from the two woods alone} */
    public double uncertaintyOfWood() {
        return knowledge.deviationOfWoods();
    }

    /** {@return what of the relative uncertainty comes from what the beam leaves out} */
    public double uncertaintyOfModel() {
        return knowledge.deviationOfModel();
    }

    Likely<Length> likely() {
        return relief;
    }

    /** {@return where the gap is greatest; distance from the nut} */
    public Amount<Length> place() {
        return style().amount(edge.reliefAt(force));
    }

    /** {@return the greatest rise over the line between the straightedge's frets; 0 for a neck that hangs all along} */
    public Amount<Length> hump() {
        return style().amount(edge.hump(force));
    }

    /**
     * {@return the gap under the straightedge at a fret, for a feeler; negative where the neck rises over the line}
     *
     * @param fret between the straightedge's two
     */
    public Amount<Length> gapAtFret(int fret) {
        if (fret < question.fromFret() || fret > question.toFret()) {
            throw Refusal.of(
                    "fret",
                    "range",
                    "be between the straightedge's, " + question.fromFret() + " and " + question.toFret(),
                    fret);
        }
        double x = question.neck().scale().fretMm(fret);
        return style().amount(edge.under(force).gapAt(x, edge.from(), edge.to()));
    }

    /** {@return how far the nut is lifted, the neck held at the body joint, positive toward the strings} */
    public Amount<Length> lift() {
        return lift.amount();
    }

    /** {@return the 95 % interval of the nut's lift over pairs of woods} */
    public Interval<Length> liftInterval() {
        return lift.interval();
    }

    private long nearestFret() {
        double along = edge.reliefAt(force) / question.neck().scale().lengthMm();
        return Math.round(-question.neck().scale().divisions() * StrictMath.log(1 - along) / StrictMath.log(2));
    }

    @Override
    protected Object[] parts() {
        return new Object[] {question, force, creep};
    }
}
