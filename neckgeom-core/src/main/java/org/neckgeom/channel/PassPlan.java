package org.neckgeom.channel;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * The passes of a slot in order, each with the gauge-block (slip gauge) step that sets the cutter for it, such as
 * {@code 3 x 2.9, 0.5 mm}. Immutable.
 */
public final class PassPlan extends ValueAnswer {

    /** More passes than this is a slip of the unit, not a plan. */
    static final int MOST_PASSES = 100;

    private static final int SHOWN = 10;

    private static final Form<PassPlan> FORM = Form.<PassPlan>of("pass-plan")
            .fact("equalPasses", Kind.WHOLE, "how many equal passes", PassPlan::equal)
            .fact(
                    "equalStep",
                    Kind.MM,
                    "depth of each of them",
                    plan -> plan.passes.get(0).step().libraryValue())
            .factIfAny("lightStep", Kind.MM, "depth of a light last pass", PassPlan::lightStepMm)
            .fact("count", Kind.WHOLE, "how many passes", plan -> plan.passes.size())
            .fact("depth", Kind.ESTIMATE, "of the finished slot, by the last setting", PassPlan::depthAsSet)
            .fact("passes", Kind.table(Pass.FORM), "in the order they are run", PassPlan::passes)
            // Depths are set by gauge blocks, which have no fractions.
            .phrase("steps", "{equalPasses} x {equalStep:table ..4 bare}, {lightStep:table ..4}")
            .phrase("steps", "{equalPasses} x {equalStep:table ..4}")
            .finds("passes", "{steps}: {count:of pass/passes}")
            .each(
                    "passes",
                    "pass {number}",
                    "takes {step:table brief}, gauge-block step {height:table brief}",
                    SHOWN,
                    "and {more} more, down to {depth:table brief}")
            .note("setting", "standard uncertainty of settings and depth: {depth:u}");

    private final List<Pass> passes;
    private final boolean lightLast;
    private final double settingMm;

    PassPlan(List<Pass> passes, boolean lightLast, LengthStyle style) {
        this(passes, lightLast, 0, style);
    }

    private PassPlan(List<Pass> passes, boolean lightLast, double settingMm, LengthStyle style) {
        super(FORM, style);
        this.passes = List.copyOf(passes);
        this.lightLast = lightLast;
        this.settingMm = settingMm;
    }

    /**
     * {@return this plan with the uncertainty of setting the cutter's height to the block} Each pass is set anew, so
     * the errors do not add up from pass to pass.
     *
     * @param standardUncertainty of one setting, 0 or more
     */
    public PassPlan settingUncertainty(Quantity<Length> standardUncertainty) {
        double u = LibraryUnits.mmNotNegative(standardUncertainty, "uncertainty of setting");
        return new PassPlan(passes, lightLast, u, style());
    }

    /** {@return the depth of the finished slot; u is that of its last setting, 0 where none was given} */
    public Estimate<Length> depthAsSet() {
        return Estimate.of(depth(), style().amount(settingMm));
    }

    /** {@return the passes in the order they are run; at least one} */
    public List<Pass> passes() {
        return passes;
    }

    /** {@return the heights of a stepped gauge block that sets all the passes; rising, the last is the slot's depth} */
    public List<Amount<Length>> gaugeBlockSteps() {
        return passes.stream().map(Pass::height).toList();
    }

    /** {@return the depth of the finished slot; the last pass's height} */
    public Amount<Length> depth() {
        return passes.get(passes.size() - 1).height();
    }

    /**
     * {@return the check made after each pass, without readings yet: has the cutter crept in its collet?}
     *
     * @param uncertainty standard uncertainty of one reading of the slot's depth, more than 0
     * @throws IllegalArgumentException if the uncertainty is not more than 0
     */
    public CreepCheck creepCheck(Quantity<Length> uncertainty) {
        double u = LibraryUnits.mmPositive(uncertainty, "depth gauge repeatability");
        double[] set = passes.stream()
                .mapToDouble(pass -> pass.height().libraryValue())
                .toArray();
        return new CreepCheck(set, u, List.of(), style());
    }

    private int equal() {
        return lightLast ? passes.size() - 1 : passes.size();
    }

    private Optional<Double> lightStepMm() {
        return lightLast ? Optional.of(passes.get(passes.size() - 1).step().libraryValue()) : Optional.empty();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {passes, settingMm};
    }

    /** {@return the same with every pass, however many; the text; may be longer than 1,000 characters} */
    public String table() {
        return FORM.whole(this, style());
    }
}
