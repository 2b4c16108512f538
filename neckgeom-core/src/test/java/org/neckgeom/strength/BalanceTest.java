package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;

import org.junit.jupiter.api.Test;

/** Balance of an instrument: sums of moments. The document's figure is in StrengthChecks. */
class BalanceTest {

    private static final Balance BASS = Balance.of("body", newton(30), mm(900)).with("head", newton(10), mm(-100));

    @Test
    void carriedAtItsBalancePoint_theHandHoldsNothing() {
        assertThat(BASS.point().libraryValue()).isCloseTo(650, within(1e-12));
        assertThat(BASS.weight().libraryValue()).isEqualTo(40);
        assertThat(BASS.atHand(BASS.point(), mm(100)).libraryValue()).isCloseTo(0, within(1e-12));
        // 40 N at 50 in front of the strap, hand 600 in front of it.
        assertThat(BASS.atHand(mm(700), mm(100)).libraryValue()).isCloseTo(40 * 50 / 600.0, within(1e-12));
        assertThat(BASS.atHand(mm(600), mm(100)).libraryValue()).isNegative();
    }

    @Test
    void badInput_isRefused() {
        assertThatThrownBy(() -> BASS.with("head", newton(1), mm(0)))
                .hasMessageContaining("part must have a name of its own, but was \"head\"");
        assertThatThrownBy(() -> BASS.with("strap", newton(0), mm(0)))
                .hasMessageContaining("weight must be more than 0 N");
        assertThatThrownBy(() -> BASS.atHand(mm(700), mm(700)))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("it has no lever arm");
    }
}
