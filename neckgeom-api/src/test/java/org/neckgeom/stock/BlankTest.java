package org.neckgeom.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.neckgeom.units.LengthStyle;

class BlankTest {

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }

    @Test
    void widthAt_isLinearAlongTheBlank() {
        Blank blank = Blank.ofLength(mm(640))
                .section(mm(61), mm(20))
                .outOfParallel(mm(0.4))
                .nutAt(mm(200));

        // Head end at x = -200, middle at x = 120, heel end at x = 440.
        assertThat(blank.widthAtMm(-200)).isCloseTo(60.8, within(1e-13));
        assertThat(blank.widthAtMm(120)).isCloseTo(61, within(1e-13));
        assertThat(blank.widthAtMm(440)).isCloseTo(61.2, within(1e-13));
        assertThat(blank.widthAtMm(280)).isCloseTo(61.1, within(1e-13));
        assertThat(blank.outOfParallel(mm(-0.4)).widthAtMm(440)).isCloseTo(60.8, within(1e-13));
        assertThat(Blank.ofLength(mm(640)).section(mm(61), mm(20)).widthAtMm(123))
                .isEqualTo(61);
    }

    @Test
    void changes_leaveTheOldOne() {
        Blank old = Blank.ofLength(inch(25)).section(inch(2.5), inch(0.8));

        Blank changed = old.outOfParallel(inch(-0.01)).nutAt(inch(8));

        assertThat(old).isEqualTo(Blank.ofLength(inch(25)).section(inch(2.5), inch(0.8)));
        assertThat(changed.outOfParallelMm()).isEqualTo(-0.254);
        assertThat(changed.nutFromHeadEndMm()).isEqualTo(203.2);
        assertThat(changed.lengthMm()).isEqualTo(635);
        assertThat(changed.widthMm()).isEqualTo(63.5);
        assertThat(changed.thicknessMm()).isCloseTo(20.32, within(1e-14));
        assertThat(changed.length()).hasToString("25 in");
        assertThat(changed.width()).hasToString("2.5 in");
        assertThat(changed.thickness()).hasToString("0.8 in");
        assertThat(changed.style()).isEqualTo(LengthStyle.DECIMAL_INCHES);
    }

    @Test
    void toString_saysWhatItIs() {
        assertThat(Blank.ofLength(mm(640)).section(mm(61), mm(20))).hasToString("blank 640 mm x 61 mm x 20 mm");
        assertThat(Blank.ofLength(mm(640)).section(mm(61), mm(20)).outOfParallel(mm(0.3)))
                .hasToString("blank 640 mm x 61 mm x 20 mm, edges out of parallel by 0.3 mm, wider at the heel end");
        assertThat(Blank.ofLength(mm(640))
                        .section(mm(61), mm(20))
                        .outOfParallel(mm(-0.3))
                        .toString())
                .endsWith("wider at the head end");
    }

    @Test
    void badSizes_areRefused() {
        Blank blank = Blank.ofLength(mm(640)).section(mm(61), mm(20));

        refused(
                () -> Blank.ofLength(mm(0)).section(mm(61), mm(20)),
                "blank length must be more than 0 mm, but was 0 mm");
        refused(
                () -> Blank.ofLength(mm(640)).section(mm(-1), mm(20)),
                "blank width must be more than 0 mm, but was -1 mm");
        refused(
                () -> Blank.ofLength(mm(640)).section(mm(61), inch(0.0)),
                "blank thickness must be more than 0 in, but was 0 in");
        refused(
                () -> blank.outOfParallel(mm(61)),
                "out of parallel must be less than 61 mm, the blank's width, either way, but was 61 mm");
        refused(() -> blank.nutAt(mm(640)), "nut at must be less than 640 mm, the blank's length, but was 640 mm");
        refused(() -> blank.nutAt(mm(-1)), "nut line's distance from the head end must be 0 mm or more, but was -1 mm");
    }

    /** 20 less 0.5 off each face is 19, less 10 off each is nothing. */
    @Test
    void planedThickness_isWithoutBothFaces() {
        Blank blank = Blank.ofLength(mm(640)).section(mm(61), mm(20));

        assertThat(blank.planedThicknessMm()).isEqualTo(20);
        assertThat(blank.planing(mm(0.5)).planedThicknessMm()).isEqualTo(19);
        assertThat(blank.planing(mm(10)).planedThicknessMm()).isZero();
    }
}
