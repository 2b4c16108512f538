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
 * Estimate, with the assumptions of {@link Relief}; its interval is the 95 % interval over pairs of woods.
 */
public final class Bow extends ValueAnswer {

    private static final Form<Bow> FORM = Form.<Bow>of("bow")
            .fact("neck", Kind.NAME, "its name", bow -> bow.question.name())
            .fact("rodForce", Kind.libraryValue(ShopUnit.NEWTON), "positive straightens the neck", bow -> bow.force)
            .finds("strings", bow -> !bow.question.hasRod(), "{neck} under strings")
            .finds("rod-slack", bow -> bow.force == 0, "{neck} under strings, rod slack")
            .finds("rod-set", "{neck} under strings, rod at {rodForce:0}")
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
            .row("straightedge", "straightedge", StrungNeck.STRAIGHTEDGE, "where it lies", bow -> bow.question)
            .row("lift", "nut lifted", Likely.KIND, "of the nut, the neck held at the body", x -> x.lift)
            .row("woods", "woods", StrungNeck.WOODS, "of neck and fingerboard", bow -> bow.question.woods())
            .note("estimate", "Estimate: elastic beam clamped at the body joint, fingerboard bonded, frets, heel and")
            .note("estimate", "creep left out; 95 % interval over pairs of woods.");

    private final StrungNeck question;
    private final double force;
    private final Straightedge edge;
    private final Likely<Length> relief;
    private final Likely<Length> lift;

    Bow(StrungNeck question, double force) {
        super(FORM, question.style());
        this.question = question;
        this.force = force;
        StrungNeck.Bench bench = question.bench();
        this.edge = bench.with(1, 1);
        List<double[]> intervals = bench.intervals(
                List.of(x -> x.bow(force), x -> x.under(force).clampedAtEnd().riseAt(0)));
        this.relief = Likely.of(intervals.get(0), style().unit());
        this.lift = Likely.of(intervals.get(1), style().unit());
    }

    /** {@return the bow: relief less hump, positive forward; what is left of the two where the neck is an S} */
    public Amount<Length> relief() {
        return relief.amount();
    }

    /** {@return the 95 % interval of the bow over pairs of woods} */
    public Interval<Length> interval() {
        return relief.interval();
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
        return new Object[] {question, force};
    }
}
