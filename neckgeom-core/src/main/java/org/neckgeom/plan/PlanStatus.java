package org.neckgeom.plan;

import java.util.List;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.units.LengthStyle;

/**
 * The state of a plan in one line, such as {@code Plan of Octave mandolin, walnut: 13 of 15 checks OK, 2 open}. Immutable.
 *
 * <p>The neck may be worked on where nothing is {@link Outcome#STOP}; the channel may be cut where {@link Plan#slot} allows it.
 */
public final class PlanStatus extends ValueAnswer {

    private static final Form<PlanStatus> FORM = Form.<PlanStatus>of("plan-status")
            .fact("neck", Kind.NAME, "its name", status -> status.neck)
            .fact("outcome", Kind.code(Outcome.class), "the worst of the checks", PlanStatus::outcome)
            .fact("checks", Kind.WHOLE, "how many checks", PlanStatus::checks)
            .fact("ok", Kind.WHOLE, "how many are OK", PlanStatus::ok)
            .fact("open", Kind.WHOLE, "how many are open", PlanStatus::open)
            .fact("stop", Kind.WHOLE, "how many are to stop for", PlanStatus::stop)
            .fact("counts", Kind.NAME, "the counts in words", PlanStatus::counts)
            .finds("status", "Plan of {neck}: {counts}");

    private final String neck;
    private final int ok;
    private final int open;
    private final int stop;

    private PlanStatus(String neck, int ok, int open, int stop, LengthStyle style) {
        super(FORM, style);
        this.neck = neck;
        this.ok = ok;
        this.open = open;
        this.stop = stop;
    }

    static PlanStatus of(String neck, List<PlanCheck> checks, LengthStyle style) {
        return new PlanStatus(
                neck, count(checks, Outcome.OK), count(checks, Outcome.OPEN), count(checks, Outcome.STOP), style);
    }

    private static int count(List<PlanCheck> checks, Outcome outcome) {
        return (int) checks.stream().filter(check -> check.outcome() == outcome).count();
    }

    /** {@return the worst of the checks; OK where every check is} */
    public Outcome outcome() {
        return stop > 0 ? Outcome.STOP : open > 0 ? Outcome.OPEN : Outcome.OK;
    }

    /** {@return how many checks there are; 0 or more} */
    public int checks() {
        return ok + open + stop;
    }

    /** {@return how many checks are OK; 0 or more} */
    public int ok() {
        return ok;
    }

    /** {@return how many checks are open; 0 or more} */
    public int open() {
        return open;
    }

    /** {@return how many checks are to stop for; 0 or more} */
    public int stop() {
        return stop;
    }

    /** {@return the counts in words, such as {@code 13 of 15 checks OK, 2 open}} */
    public String counts() {
        return ok + " of " + checks() + " checks OK" + (open > 0 ? ", " + open + " open" : "")
                + (stop > 0 ? ", " + stop + " to stop for" : "");
    }

    @Override
    protected Object[] parts() {
        return new Object[] {neck, ok, open, stop};
    }
}
