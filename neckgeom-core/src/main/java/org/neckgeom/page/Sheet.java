package org.neckgeom.page;

import java.util.Objects;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.text.Report;

/**
 * The whole plan of a neck as something to read: plain text for a terminal, or one page with drawings to hang by the
 * machine. Immutable.
 *
 * <p>Both say first what stands, what to stop for and what to do next; then what can hurt; then the settings in order of
 * work; then drawings and tables.
 */
public final class Sheet {

    private final NeckPlan plan;
    private final Contents contents;

    private Sheet(NeckPlan plan) {
        this.plan = plan;
        this.contents = Contents.of(plan);
    }

    /**
     * {@return the sheet of a plan}
     *
     * @param plan the plan
     */
    public static Sheet of(NeckPlan plan) {
        return new Sheet(Objects.requireNonNull(plan, "plan"));
    }

    /**
     * {@return the whole plan as plain text, without drawings: lines of at most 80 characters, parted by line feeds;
     * ending in a line feed}
     */
    public String toText() {
        return PlainText.of(contents);
    }

    /**
     * {@return the whole plan as one page: HTML that is well-formed XML too, complete in itself, without script; the
     * page in UTF-8, ending in a line feed} It reads on a phone 360 pixels wide and prints on A4 and Letter; it is
     * light or dark as the device asks.
     *
     * <p>Lengths in drawings and tables are rounded to 0.01 mm or 0.001 in; settings print as the plan has them.
     */
    public String toHtml() {
        return Page.of(contents);
    }

    /** True for the sheet of the same contents. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Sheet that && plan.equals(that.plan);
    }

    @Override
    public int hashCode() {
        return plan.hashCode();
    }

    /** Returns what the sheet is of, and how its checks stand. */
    @Override
    public String toString() {
        return Report.titled("Sheet: " + contents.design().name())
                .row(
                        "checks",
                        contents.count(PlanCheck.Outcome.STOP) + " to stop for, "
                                + contents.count(PlanCheck.Outcome.OPEN) + " open, "
                                + contents.count(PlanCheck.Outcome.GOOD) + " good")
                .row("settings", contents.sections().size() + " sections")
                .note("toText() for a terminal, toHtml() for a page with drawings")
                .toString();
    }
}
