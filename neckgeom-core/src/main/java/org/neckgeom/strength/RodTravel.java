package org.neckgeom.strength;

import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Interval;
import org.neckgeom.units.Amount;

/**
 * The range of relief that a truss rod reaches under the strings, such as {@code from 1.6 mm to -0.5 mm}. Immutable.
 *
 * <p>Estimate, with the assumptions of {@link Relief}, at the rod's force limit: both ways for a two-way rod, from
 * slack for a single-action rod.
 */
public final class RodTravel extends ValueAnswer {

    private static final Form<RodTravel> FORM = Form.<RodTravel>of("rod-travel")
            .fact("neck", Kind.NAME, "its name", x -> x.question.name())
            .fact("reliefUpper", Likely.KIND, "relief, the rod slack or turned all the way forward", x -> x.most)
            .finds("rod-travel", "Rod travel of {neck}")
            .phrase("loose", x -> x.question.isTwoWay(), "rod forward")
            .phrase("loose", "rod slack")
            .line("reliefUpper", "{loose}", "{reliefUpper}")
            .row("reliefLower", "rod tight", Likely.KIND, "relief; negative where the neck is humped", x -> x.least)
            .row("rodLimit", "rod limit", StrungNeck.ROD_LIMIT, "at most", x -> x.question)
            .row("straightedge", "straightedge", StrungNeck.STRAIGHTEDGE, "where it lies", x -> x.question)
            .note("estimate", "Estimate, at the rod's force limit; wood and glue may fail before.");

    private final StrungNeck question;
    private final Likely<Length> most;
    private final Likely<Length> least;

    RodTravel(StrungNeck question) {
        super(FORM, question.style());
        this.question = question;
        StrungNeck.Bench bench = question.bench();
        double strongest = question.limit();
        double weakest = question.isTwoWay() ? -strongest : 0;
        List<double[]> intervals = bench.intervals(List.of(x -> x.bow(weakest), x -> x.bow(strongest)));
        this.most = Likely.of(intervals.get(0), style().unit());
        this.least = Likely.of(intervals.get(1), style().unit());
    }

    /** {@return the relief with the rod slack, or a two-way rod turned all the way forward} */
    public Amount<Length> most() {
        return most.amount();
    }

    /** {@return the 95 % interval of the most relief over pairs of woods} */
    public Interval<Length> mostInterval() {
        return most.interval();
    }

    /** {@return the relief with the rod at its force limit; negative where it humps the neck} */
    public Amount<Length> least() {
        return least.amount();
    }

    /** {@return the 95 % interval of the least relief over pairs of woods} */
    public Interval<Length> leastInterval() {
        return least.interval();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {question};
    }
}
