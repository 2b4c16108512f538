package org.neckgeom.strength;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;

/**
 * What readings of stiffness leave open of a neck's relief, such as {@code relief 0.34 mm (95 %: 0.32 to 0.36 mm), before 0.24 to
 * 0.48 mm}. Immutable.
 *
 * <p>Each wood's modulus is log-normal about the mean of its species; what the beam leaves out has a size by part. A reading is
 * linear in their logarithms, so each narrows all of them together (normal conditioning); what readings of one kind share (tap
 * tone against bending, weights, blank against neck) is not narrowed by repeating. The order of the readings does not matter.
 * Estimate.
 */
public final class StiffnessKnowledge extends ValueAnswer {

    private static final Form<Step> STEP = Form.<Step>of("stiffness-step")
            .fact("reading", Kind.NAME, "what was read", Step::words)
            .fact("overExpected", Kind.RATIO, "modulus, fall or relief over that of the table's woods", Step::ratio)
            .fact("uncertainty", Kind.RATIO, "of relief, relative, with this reading and those above", Step::left)
            .fact("off", Kind.RATIO, "from what those above lead to, in standard uncertainties", Step::off)
            .finds(
                    "stiffness-step",
                    "{reading}: {overExpected:2} of the table, relief then to {uncertainty:percent 1}");

    private static final Form<StiffnessKnowledge> FORM = Form.<StiffnessKnowledge>of("stiffness-knowledge")
            .fact("neck", Kind.NAME, "its name", x -> x.after.name())
            .fact("count", Kind.WHOLE, "how many readings", x -> x.readings.count())
            .finds("nothing", x -> x.readings.isEmpty(), "Stiffness of {neck}: nothing read yet")
            .finds("readings", "Stiffness of {neck}: {count:of reading/readings}")
            .fact(
                    "farthest",
                    Kind.RATIO,
                    "of a reading from those above it, in standard uncertainties",
                    x -> x.steps.stream().mapToDouble(Step::off).max().orElse(0))
            .fact(
                    "farthestReading",
                    Kind.NAME,
                    "which",
                    x -> x.odd().map(Step::words).orElse("none"))
            .fact("steps", Kind.table(STEP), "what each reading narrows", x -> x.steps)
            .each("steps", "{reading}", "{overExpected:2} of the table; relief then known to {uncertainty:percent 1}")
            .row("relief", "relief", Likely.KIND, "under the strings, rod slack", x -> x.bowAfter.likely())
            .row("before", "before", Likely.KIND, "without the readings", x -> x.bowBefore.likely())
            .fact("narrower", Kind.RATIO, "interval of relief before over that after", StiffnessKnowledge::narrower)
            .note(
                    "odd",
                    x -> x.odd().isPresent(),
                    "Read again what lies {farthest:1} standard uncertainties from the readings above it: {farthestReading}.")
            .line("narrower", "interval", x -> !x.readings.isEmpty(), "{narrower:1} times narrower")
            .note("estimate", "Estimate: same climate and rod slack as when it was read; tension and heights stay.");

    /** A reading, over what the table leads to, and what is left after it. */
    private record Step(String words, double ratio, double left, double off) {}

    /** From here on a reading contradicts those before it: one in 370 does by chance. */
    private static final double MOST_OFF = 3;

    private final StrungNeck after;
    private final StiffnessReadings readings;
    private final List<Step> steps;
    private final Bow bowBefore;
    private final Bow bowAfter;

    StiffnessKnowledge(StrungNeck strung) {
        super(FORM, strung.style());
        this.after = strung;
        this.readings = strung.readings();
        this.steps = steps(strung);
        this.bowBefore = new Bow(strung.knowing(StiffnessReadings.none()), 0);
        this.bowAfter = new Bow(strung, 0);
    }

    private static List<Step> steps(StrungNeck strung) {
        List<Step> steps = new ArrayList<>();
        CauseState state = CauseState.prior();
        double[] effects = strung.effects();
        for (BenchRows.Named row : strung.rows()) {
            double off = Math.abs(state.surprise(row.row()));
            state = state.after(row.row());
            steps.add(new Step(row.words(), row.overExpected(), state.deviation(effects), off));
        }
        return List.copyOf(steps);
    }

    private Optional<Step> odd() {
        return steps.stream().max(Comparator.comparingDouble(Step::off)).filter(step -> step.off > MOST_OFF);
    }

    /** {@return whether a reading lies more than three standard uncertainties from what the others lead to} */
    public boolean isContradictory() {
        return odd().isPresent();
    }

    /** {@return the readings} */
    public StiffnessReadings readings() {
        return readings;
    }

    /** {@return the bow under the strings with these readings, the rod slack} */
    public Bow bow() {
        return bowAfter;
    }

    /** {@return the bow under the strings without any reading, the rod slack} */
    public Bow before() {
        return bowBefore;
    }

    /** {@return how many times narrower the interval of relief has become: 1 without readings} */
    public double narrower() {
        return width(bowBefore) / width(bowAfter);
    }

    private static double width(Bow bow) {
        return bow.likely().high() - bow.likely().low();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {after};
    }
}
