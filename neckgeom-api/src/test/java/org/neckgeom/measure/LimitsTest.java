package org.neckgeom.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;

import org.junit.jupiter.api.Test;
import org.neckgeom.testing.OtherQuantity;
import org.neckgeom.units.ShopUnit;

class LimitsTest {

    @Test
    void limits_belongToWhatIsAllowed() {
        assertThat(Limits.within(mm(0.1)).allow(mm(0.1))).isTrue();
        assertThat(Limits.within(mm(0.1)).allow(mm(-0.1))).isTrue();
        assertThat(Limits.within(mm(0.1)).allow(mm(0.10000000000000002))).isFalse();
        assertThat(Limits.between(mm(3), mm(5)).allow(mm(3))).isTrue();
        assertThat(Limits.between(mm(3), mm(5)).allow(mm(5))).isTrue();
        assertThat(Limits.between(mm(3), mm(5)).allow(mm(2.999))).isFalse();
        assertThat(Limits.atMost(mm(3)).allow(mm(-1e9))).isTrue();
        assertThat(Limits.atMost(mm(3)).allow(mm(3.1))).isFalse();
        assertThat(Limits.atLeast(inch(1)).allow(mm(25.4))).isTrue();
        assertThat(Limits.atLeast(inch(1)).allow(mm(25.3))).isFalse();
        assertThat(Limits.within(mm(0.1)).allowLibrary(Double.NaN)).isFalse();
    }

    @Test
    void toString_readsAsASentenceWould() {
        assertThat(Limits.within(mm(0.1))).hasToString("within 0.1 mm");
        assertThat(Limits.between(mm(3), mm(5))).hasToString("3 to 5 mm");
        assertThat(Limits.atLeast(mm(3))).hasToString("3 mm or more");
        assertThat(Limits.atMost(deg(1))).hasToString("1 deg or less");
        assertThat(Limits.between(inch(0.1), mm(5.08))).hasToString("0.1 to 0.2 in");
        assertThat(Limits.atMost(ShopUnit.ONE.of(0.5))).hasToString("0.5 or less");
    }

    @Test
    void badLimits_areRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Limits.within(mm(0)))
                .withMessage("limit must be more than 0 mm, but was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Limits.between(mm(5), mm(3)))
                .withMessage("upper limit must be more than 5 mm, the lower one, but was 3 mm: are the two swapped?");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Limits.between(mm(5), mm(5)))
                .withMessage("upper limit must be more than 5 mm, the lower one, but was 5 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Limits.between(mm(5), OtherQuantity.lie(newton(9))))
                .withMessage("upper limit must be a length, but was 9 N");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Limits.atMost(mm(5)).allow(OtherQuantity.lie(newton(3))))
                .withMessage("value must be a length, but was 3 N");
    }

    @Test
    void interval_containsItsEnds() {
        var interval = Interval.of(mm(-0.6912), mm(0.722));

        assertThat(interval.contains(mm(-0.6912))).isTrue();
        assertThat(interval.contains(mm(0.722))).isTrue();
        assertThat(interval.contains(mm(0.7221))).isFalse();
        assertThat(interval).hasToString("-0.691 to 0.722 mm");
        assertThat(Interval.of(mm(3), mm(3)).contains(mm(3))).isTrue();
        assertThat(Interval.of(inch(1), mm(50.8)).high()).hasToString("2 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Interval.of(mm(2), mm(1)))
                .withMessage("high must be 2 mm or more, but was 1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Interval.of(mm(2), OtherQuantity.lie(newton(3))))
                .withMessage("high must be a length, but was 3 N");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> interval.contains(OtherQuantity.lie(newton(0))))
                .withMessage("quantity must be a length, but was 0 N");
    }

    @Test
    void toString_readsInTheOtherUnitAsAPersonDoes() {
        assertThat(Limits.within(mm(0.1).in(ShopUnit.INCH))).hasToString("within 0.0039 in");
        assertThat(Limits.between(mm(3).in(ShopUnit.INCH), mm(5))).hasToString("0.1181 to 0.1969 in");
        assertThat(Limits.atLeast(mm(3).in(ShopUnit.INCH))).hasToString("0.1181 in or more");
        assertThat(Limits.within(inch(0.015625))).hasToString("within 0.015625 in");
    }

    @Test
    void between_asksWhetherTheTwoAreSwapped() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Limits.between(mm(0.1), mm(-0.1)))
                .withMessageEndingWith("but was -0.1 mm: are the two swapped?");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Limits.between(mm(3), mm(3)))
                .withMessage("upper limit must be more than 3 mm, the lower one, but was 3 mm");
    }
}
