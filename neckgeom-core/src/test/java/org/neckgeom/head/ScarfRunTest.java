package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;

class ScarfRunTest {

    @Test
    void pitch_catchesTheWidelyCopiedLayout() {
        // Common practice, a known trap: a run of 63.5 on 22.2 said to be 15 deg is 19.3; 15 deg needs 82.9.
        ScarfRun layout = ScarfRun.of(mm(22.2), mm(63.5));

        assertThat(Math.toDegrees(layout.angle().libraryValue())).isCloseTo(19.3, offset(0.05));
        assertThat(layout.isPitch(deg(15), deg(0.5))).isFalse();
        assertThat(layout.runFor(deg(15)).libraryValue()).isCloseTo(82.9, offset(0.06));
        assertThat(ScarfRun.of(mm(22.2), mm(82.9)).isPitch(deg(15), deg(0.5))).isTrue();
        assertThat(layout.toString()).contains("63.5 mm on 22.2 mm").contains("19.27 deg");
    }
}
