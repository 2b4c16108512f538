package org.neckgeom.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.budget.Budget;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.order.AddedError.Way;

class AddedErrorTest {

    @Test
    void component_goesIntoTheBudgetOfTheCentring() {
        OrderPlan plan = OrderOfWork.forNeck()
                .keep("glue wings")
                .before("cut rod channel")
                .plan();
        Budget<Length> centring =
                Budget.named("channel on the centreline").with("centring", ErrorDistribution.normal(mm(0.02)));

        for (AddedError added : plan.addedErrors()) {
            centring = centring.with(added.component());
        }

        // JCGM 100:2008, 5.1.2 and 4.3.7: sqrt(0.02^2 + 0.05^2/3) = 0.035118845842842465.
        assertThat(centring.rootSumSquare().libraryUncertainty()).isCloseTo(0.035118845842842465, within(1e-15));
    }

    @Test
    void component_isNamedWithItsOperation() {
        ErrorDistribution<Length> spread = ErrorDistribution.rectangular(mm(0.05));
        AddedError slot = new AddedError("spacer's thickness", Way.ACROSS, "cut rod channel", spread);
        AddedError bars = new AddedError("spacer's thickness", Way.ACROSS, "cut bar slots", spread);

        Budget<Length> both = Budget.named("both cuts").with(slot.component()).with(bars.component());

        assertThat(both.components()).hasSize(2);
        assertThat(slot.component().name()).isEqualTo("spacer's thickness (cut rod channel)");
        assertThat(slot).hasToString("spacer's thickness, across: rectangular, half-width 0.05 mm");
    }

    @Test
    void of_refusesWhatHasNoName() {
        ErrorDistribution<Length> spread = ErrorDistribution.rectangular(mm(0.05));

        assertThatThrownBy(() -> new AddedError(" ", Way.DEPTH, "cut rod channel", spread))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("an added error's name must be 1 to 50 characters");
        assertThatThrownBy(() -> new AddedError("shim", null, "cut rod channel", spread))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("way");
        assertThatThrownBy(() -> new KeptOrder("plane", " plane "))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a kept order must have two operations, but was \"plane\" before itself");
    }
}
