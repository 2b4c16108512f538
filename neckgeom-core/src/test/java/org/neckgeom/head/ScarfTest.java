package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.kernel.Vec;
import org.neckgeom.units.LengthStyle;

class ScarfTest {

    private static final Scarf SCARF = Scarf.of(deg(13), mm(20), mm(15));

    @Test
    void stepFromSlip_isTheSlipsRiseSquareToTheOtherFace() {
        // A slip of the head piece along its glued plane, seen square to the head's face, by vectors.
        Vec slip = new Vec(-2, 0, 0);
        Vec headNormal = Vec.Z.turned(Vec.Y, -Math.toRadians(13));

        assertThat(SCARF.stepFromSlip(mm(2)).libraryValue()).isCloseTo(slip.dot(headNormal), offset(1e-12));
        assertThat(SCARF.stepFromSlip(mm(-2)).libraryValue()).isCloseTo(-slip.dot(headNormal), offset(1e-12));
    }

    @Test
    void units_doNotChangeTheAnswer() {
        Scarf inInches = Scarf.of(deg(13), inch(0.75), inch(0.5)).kerf(inch(0.0625));
        Scarf inMm = Scarf.of(deg(13), mm(19.05), mm(12.7)).kerf(mm(1.5875));

        assertThat(inInches).isEqualTo(inMm).hasSameHashCodeAs(inMm);
        assertThat(ScarfJoint.inTheHead(inInches)
                        .board(inch(20), inch(7))
                        .length()
                        .libraryValue())
                .isEqualTo(ScarfJoint.inTheHead(inMm)
                        .board(mm(508), mm(177.8))
                        .length()
                        .libraryValue());
        assertThat(inInches.toString()).contains("0.75 in");
        assertThat(inInches.text(LengthStyle.MILLIMETRES)).contains("19.05 mm");
    }

    @Test
    void kerfAndCleaning_makeAnotherScarfAndLeaveThisOne() {
        Scarf sawn = SCARF.kerf(mm(1.8)).cleaning(mm(0.3));

        assertThat(sawn).isEqualTo(SCARF.cleaning(mm(0.3)).kerf(mm(1.8))).isNotEqualTo(SCARF);
        assertThat(SCARF).isEqualTo(Scarf.of(deg(13), mm(20), mm(15)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.99, 45.01, -13, 180})
    void of_rejectsAnAngleNoHeadHas(double degrees) {
        assertThatThrownBy(() -> Scarf.of(deg(degrees), mm(20), mm(15)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("head angle must be from 1 to 45 deg, but was ");
    }

    @Test
    void toString_givesRunAndAngleSideBySide() {
        assertThat(SCARF.toString()).contains("13.00 deg").contains("86.630 mm");
    }
}
