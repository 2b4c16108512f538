package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Shop;

class PassPlanTest {

    @Test
    void to_givesEachPassItsGaugeBlockStep() {
        PassPlan plan = Passes.noDeeperThan(mm(3)).lastPass(mm(0.5)).to(mm(9.2));

        assertThat(plan.passes().stream()
                        .mapToDouble(pass -> pass.step().libraryValue())
                        .toArray())
                .containsExactly(new double[] {2.9, 2.9, 2.9, 0.5}, within(1e-12));
        assertThat(plan.passes().stream()
                        .mapToDouble(pass -> pass.height().libraryValue())
                        .toArray())
                .containsExactly(new double[] {2.9, 5.8, 8.7, 9.2}, within(1e-12));
        assertThat(plan.gaugeBlockSteps().get(3)).isEqualTo(mm(9.2));
        assertThat(plan.toString()).startsWith("3 x 2.9, 0.5 mm: 4 passes\n");
    }

    @Test
    void to_printsInches() {
        assertThat(Passes.noDeeperThan(inch("1/16")).to(inch("3/8")).toString()).startsWith("6 x 0.0625 in: 6 passes");
    }

    @Test
    void deepestPassOfAShop_isAQuarterOfTheCutter() {
        assertThat(Shop.with(Cutter.straight(mm(6))).deepestPass()).isEqualTo(mm(1.5));
    }

    @Test
    void lastPass_refusesMoreThanTheDeepest() {
        assertThatThrownBy(() -> Passes.noDeeperThan(mm(2)).lastPass(mm(3)))
                .hasMessage("last pass must be 2 mm or less (the deepest pass), but was 3 mm");
    }

    @Test
    void to_refusesADepthTheLastPassEats() {
        assertThatThrownBy(() -> Passes.noDeeperThan(mm(2)).lastPass(mm(1)).to(mm(1)))
                .hasMessage("slot depth must be more than the last pass of 1 mm, but was 1 mm");
    }

    @Test
    void to_refusesHundredsOfPasses() {
        assertThatThrownBy(() -> Passes.noDeeperThan(mm(0.01)).to(mm(9)))
                .hasMessage("deepest pass must be 0.09 mm or more (100 passes), but was 0.01 mm");
    }

    @Test
    void creepCheck_seesACutterThatCreeps() {
        CreepCheck check = Passes.noDeeperThan(mm(3)).to(mm(9)).creepCheck(mm(0.03));

        assertThat(check.call()).isEqualTo(CreepCheck.Call.HOLDS);
        assertThat(check.read(mm(3.05)).call()).isEqualTo(CreepCheck.Call.HOLDS);
        assertThat(check.read(mm(3.10)).call()).isEqualTo(CreepCheck.Call.CREEPS);
        assertThat(check.read(mm(2.85)).call()).isEqualTo(CreepCheck.Call.SHALLOW);
        assertThat(check.read(mm(3.02)).read(mm(6.03)).read(mm(9.0)).call()).isEqualTo(CreepCheck.Call.HOLDS);
        // Within 3 u of what was set each time, but grown by 0.14, more than 3 sqrt(2) u = 0.127.
        CreepCheck growing = check.read(mm(2.93)).read(mm(6.07));
        assertThat(growing.call()).isEqualTo(CreepCheck.Call.CREEPS);
        assertThat(growing.excessMm()).isCloseTo(0.07, within(1e-12));
        assertThat(growing.toString())
                .startsWith("cutter creeps: pass 2 is 0.070 mm deeper than set, u 0.030 mm; stop");
    }

    @Test
    void creepCheck_takesNoMoreReadingsThanPasses() {
        CreepCheck check =
                Passes.noDeeperThan(mm(3)).to(mm(3)).creepCheck(mm(0.03)).read(mm(3));

        assertThatThrownBy(() -> check.read(mm(3)))
                .hasMessage("readings must be no more than the 1 pass planned, but one more was given");
    }
}
