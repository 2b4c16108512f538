package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;

class ScarfRollTest {

    @Test
    void roll_ofHalfADegreeAtThirteenIsAboutATenth() {
        ScarfRoll roll = ScarfRoll.of(deg(13), deg(0.5));

        // By hand: tan 13 deg = 0.230868, sin 0.5 deg = 0.00872654; the product's arctangent is 0.115433 deg.
        assertThat(Math.toDegrees(roll.roll().libraryValue())).isCloseTo(0.115433, offset(2e-6));
        assertThat(roll.mismatch().libraryValue()).isEqualTo(2 * roll.roll().libraryValue());
        assertThat(roll.across(mm(60)).libraryValue())
                .isCloseTo(60 * Math.tan(roll.roll().libraryValue()), offset(1e-12));
    }

    @Test
    void roll_changesHandWithTheSawLine() {
        ScarfRoll one = ScarfRoll.of(deg(13), deg(0.5));
        ScarfRoll other = ScarfRoll.of(deg(13), deg(-0.5));

        assertThat(one.roll().libraryValue()).isEqualTo(-other.roll().libraryValue());
        assertThat(one.pitchAlong()).isEqualTo(other.pitchAlong());
        assertThat(one.toString()).contains("treble side low");
        assertThat(other.toString()).contains("bass side low");
        assertThat(ScarfRoll.of(deg(13), deg(0)).roll()).isEqualTo(deg(0));
    }

    @Test
    void of_rejectsASawLineFarOut() {
        assertThatThrownBy(() -> ScarfRoll.of(deg(13), deg(20)))
                .hasMessageStartingWith("saw line out of square must be ")
                .hasMessageEndingWith(", but was 20 deg");
    }
}
