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
import org.neckgeom.design.Head;
import org.neckgeom.kernel.Vec;
import org.neckgeom.units.LengthStyle;

class ScarfTest {

    private static final Scarf SCARF = Scarf.at(deg(13)).shaft(mm(20)).head(mm(15));

    @Test
    void stepFromSlip_isTheSlipsRiseSquareToTheOtherFace() {
        // A slip of the head piece along its glued plane, seen square to the head's face, by vectors.
        Vec slip = new Vec(-2, 0, 0);
        Vec headNormal = Vec.Z.turned(Vec.Y, -Math.toRadians(13));

        assertThat(SCARF.stepFromSlip(mm(2)).house()).isCloseTo(slip.dot(headNormal), offset(1e-12));
        assertThat(SCARF.stepFromSlip(mm(-2)).house()).isCloseTo(-slip.dot(headNormal), offset(1e-12));
    }

    @Test
    void units_doNotChangeTheAnswer() {
        Scarf inInches = Scarf.at(deg(13)).shaft(inch(0.75)).head(inch(0.5)).kerf(inch(0.0625));
        Scarf inMm = Scarf.at(deg(13)).shaft(mm(19.05)).head(mm(12.7)).kerf(mm(1.5875));

        assertThat(inInches).isEqualTo(inMm).hasSameHashCodeAs(inMm);
        assertThat(ScarfJoint.inTheHead(inInches)
                        .board(inch(20), inch(7))
                        .length()
                        .house())
                .isEqualTo(ScarfJoint.inTheHead(inMm)
                        .board(mm(508), mm(177.8))
                        .length()
                        .house());
        assertThat(inInches.toString()).contains("0.75 in");
        assertThat(inInches.text(LengthStyle.MILLIMETRES)).contains("19.05 mm");
    }

    @Test
    void chain_isARowOfValuesThatCanBeUsedTwice() {
        Scarf.WithShaft started = Scarf.at(deg(15)).shaft(mm(19));

        assertThat(started.head(mm(12.7))).isNotEqualTo(started.head(mm(14)));
        assertThat(started.head(mm(14))).isEqualTo(started.head(mm(14)));
        assertThat(started.toString()).contains("head not given yet");
        assertThat(Scarf.at(deg(15)).toString()).contains("not given yet");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.99, 45.01, -13, 180})
    void at_rejectsAnAngleNoHeadHas(double degrees) {
        assertThatThrownBy(() -> Scarf.at(deg(degrees)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("head pitch must be from 1 to 45 deg, but was ");
    }

    @Test
    void of_aHeadIsTheScarfOfItsPitchAndWood() {
        assertThat(Scarf.of(Head.pitched(deg(13)).thickness(mm(15)), mm(20))).isEqualTo(SCARF);
    }

    @Test
    void toString_givesRunAndAngleSideBySide() {
        assertThat(SCARF.toString()).contains("13.00 deg").contains("86.630 mm");
    }
}
