package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.gigapascal;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;

/** A blank with a hollow face on the table: a parabola and its chord. Figures in SetupChecks. */
class BowedBlankTest {

    private static final Blank BLANK =
            Blank.ofLength(mm(640)).section(mm(62), mm(21)).nutAt(mm(200));

    @Test
    void lift_isThatOfTheParabolaOverTheChordOfTheTable() {
        SplittableRandom random = new SplittableRandom(231);
        for (int i = 0; i < 200; i++) {
            double hollow = random.nextDouble(0, 3);
            double table = random.nextDouble(50, 900);
            double s = random.nextDouble(0, 640);
            double a = Math.max(0, s - table / 2);
            double b = Math.min(640, s + table / 2);
            double chord = face(hollow, a) + (face(hollow, b) - face(hollow, a)) * (s - a) / (b - a);

            assertThat(BowedBlank.of(BLANK, mm(hollow))
                            .table(mm(table))
                            .liftAt(mm(s - 200))
                            .libraryValue())
                    .as("%d: %s on %s at %s", i, hollow, table, s)
                    .isCloseTo(face(hollow, s) - chord, within(1e-11));
        }
    }

    private static double face(double hollow, double s) {
        double half = 2 * s / 640 - 1;
        return hollow * (1 - half * half);
    }

    @Test
    void push_onAShortTableClosesWhatLiesOverIt() {
        BowedBlank blank = BowedBlank.of(BLANK, mm(0.5)).wood(Wood.BLACK_WALNUT.modulus(gigapascal(11.5)));
        double inertia = 62 * Math.pow(21, 3) / 12;
        double lift = blank.table(mm(400)).liftAt(mm(120)).libraryValue();

        // A force in the middle of a beam on two supports: w = F T^3/(48 E I).
        assertThat(blank.table(mm(400)).push().orElseThrow().libraryValue() * Math.pow(400, 3) / (48 * 11500 * inertia))
                .isCloseTo(lift, within(1e-12));
        assertThat(blank.table(mm(900)).push()).isEqualTo(blank.push());
        assertThat(BowedBlank.of(BLANK, mm(0.5)).push()).isEmpty();
    }

    @Test
    void hollowUp_isRefused() {
        assertThatThrownBy(() -> BowedBlank.of(BLANK, mm(-0.5)))
                .hasMessageContaining("hollow must be 0 mm or more (a face high in its middle rocks")
                .hasMessageContaining("but was -0.5 mm");
        assertThatThrownBy(() -> BowedBlank.of(BLANK, mm(65)))
                .hasMessageContaining("hollow must be no more than a tenth");
        assertThatThrownBy(() -> BowedBlank.of(BLANK, mm(1)).liftAt(mm(441)))
                .hasMessageContaining("station must be on the blank, from -200 mm to 440 mm");
        assertThatThrownBy(() -> BowedBlank.of(BLANK, mm(1)).table(mm(0)))
                .hasMessageContaining("table's length must be more than 0 mm");
    }

    @Test
    void flat_isAsSet() {
        assertThat(BowedBlank.of(BLANK, mm(0))).hasToString("Blank flat on the table: the channel's depth is as set");
    }
}
