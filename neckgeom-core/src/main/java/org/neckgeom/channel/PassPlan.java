package org.neckgeom.channel;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.measure.Estimate;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * The passes of a slot in order, each with the gauge-block step that sets the cutter for it, such as
 * {@code 3 x 2.9, 0.5 mm}. Immutable.
 */
public final class PassPlan implements SaysLengths<PassPlan> {

    /** More passes than this is a slip of the unit, not a plan. */
    static final int MOST_PASSES = 100;

    private static final int SHOWN = 10;

    private final List<Pass> passes;
    private final boolean lightLast;
    private final double settingMm;
    private final LengthStyle style;

    PassPlan(List<Pass> passes, boolean lightLast, LengthStyle style) {
        this(passes, lightLast, 0, style);
    }

    private PassPlan(List<Pass> passes, boolean lightLast, double settingMm, LengthStyle style) {
        this.passes = List.copyOf(passes);
        this.lightLast = lightLast;
        this.settingMm = settingMm;
        this.style = style;
    }

    /**
     * Returns this plan with the uncertainty of setting the cutter's height to the block. Each pass is set anew, so the
     * errors do not add up from pass to pass.
     *
     * @param standardUncertainty of one setting, 0 or more
     * @return the plan
     */
    public PassPlan setWithin(Quantity<Length> standardUncertainty) {
        double u = HouseUnits.mmNotNegative(standardUncertainty, "uncertainty of setting");
        return new PassPlan(passes, lightLast, u, style);
    }

    /**
     * Returns the depth of the finished slot with the uncertainty of its last setting.
     *
     * @return the depth; u is 0 where none was told
     */
    public Estimate<Length> depthAsSet() {
        return Estimate.of(depth(), style.amount(settingMm));
    }

    /**
     * Returns the passes in the order they are run.
     *
     * @return at least one
     */
    public List<Pass> passes() {
        return passes;
    }

    /**
     * Returns the heights of a stepped gauge block that sets all the passes.
     *
     * @return rising, the last is the slot's depth
     */
    public List<Amount<Length>> gaugeBlockSteps() {
        return passes.stream().map(Pass::height).toList();
    }

    /**
     * Returns the depth of the finished slot.
     *
     * @return the last pass's height
     */
    public Amount<Length> depth() {
        return passes.get(passes.size() - 1).height();
    }

    /**
     * Starts the check that is made after each pass: has the cutter crept in its collet?
     *
     * @param uncertainty standard uncertainty of one reading of the slot's depth, more than 0
     * @return the check, without readings yet
     * @throws IllegalArgumentException if the uncertainty is not more than 0
     */
    public CreepCheck creepCheck(Quantity<Length> uncertainty) {
        return CreepCheck.start(this, HouseUnits.mmPositive(uncertainty, "depth gauge repeatability"), style);
    }

    @Override
    public PassPlan in(LengthStyle other) {
        return new PassPlan(
                passes.stream().map(pass -> pass.in(other)).toList(),
                lightLast,
                settingMm,
                Objects.requireNonNull(other, "style"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PassPlan that
                && passes.equals(that.passes)
                && Double.compare(settingMm, that.settingMm) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(passes, settingMm);
    }

    /** Returns the passes as {@code 3 x 2.9, 0.5 mm} and the height of the cutter for each. */
    @Override
    public String toString() {
        return listed(SHOWN);
    }

    /**
     * Returns the same with every pass, however many.
     *
     * @return the text; may be longer than 1,000 characters
     */
    public String table() {
        return listed(passes.size());
    }

    private String listed(int shown) {
        int equal = lightLast ? passes.size() - 1 : passes.size();
        // Depths are set by gauge blocks, which have no fractions.
        LengthStyle table = style.inTables();
        String unit = table.unit().symbol();
        String title = equal + " x " + number(passes.get(0).stepMm());
        if (lightLast) {
            title += ", " + number(passes.get(passes.size() - 1).stepMm());
        }
        Report report = Report.titled(title + " " + unit + ": " + Words.count(passes.size(), "pass", "passes"));
        for (Pass pass : passes.subList(0, Math.min(shown, passes.size()))) {
            report.row(
                    "pass " + pass.number(),
                    "takes " + table.brief(pass.stepMm()) + ", gauge-block step " + table.brief(pass.heightMm()));
        }
        if (passes.size() > shown) {
            report.note("and " + (passes.size() - shown) + " more, down to "
                    + table.brief(passes.get(passes.size() - 1).heightMm()));
        }
        if (settingMm > 0) {
            report.note("each set within u " + style.small(settingMm) + ", and so is the finished depth");
        }
        return report.toString();
    }

    private String number(double mm) {
        return Numbers.trimmed(style.inTables().unit().fromHouse(mm), 4);
    }
}
