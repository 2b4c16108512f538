package org.neckgeom.sheet;

import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.Share;
import org.neckgeom.measure.Limits;

/**
 * A budget and the limits it is held against, as a sheet shows it.
 *
 * @param budget the errors that add up
 * @param limits what is allowed
 */
record BudgetPart(Budget<Length> budget, Limits<Length> limits) {

    private static final int MOST_SHARES = 10;

    /** The largest shares, those of one step together, at most ten. */
    List<Share<Length>> largest() {
        return budget.sharesByStep().list().stream()
                .filter(share -> share.fraction() > 0)
                .limit(MOST_SHARES)
                .toList();
    }
}
