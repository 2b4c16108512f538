package org.neckgeom.heel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;

class HeelBlocksTest {

    private static final long SEED = 79;

    @Test
    void height_isTheCapsDistanceFromTheTurnedGlueFace() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 200; i++) {
            double depth = 60 + 50 * random.nextDouble();
            double over = 6 * random.nextDouble();
            double angle = Math.toRadians(-2 + 8 * random.nextDouble());
            double lean = Math.toRadians(-4 + 8 * random.nextDouble());
            // Level body, top at z = 0: the end runs down from the origin, the glue face through the point o above it
            // along the end's line, turned by the neck's angle.
            Vec down = new Vec(Math.sin(lean), 0, -Math.cos(lean));
            Vec cap = down.times(depth / Math.cos(lean));
            Vec top = down.times(-over / Math.cos(lean));
            Vec faceNormal = Vec.Z.turned(Vec.Y, -angle);

            HeelBlocks heel = HeelBlocks.of(mm(depth), mm(20))
                    .overstand(mm(over))
                    .at(deg(Math.toDegrees(angle)))
                    .leaning(deg(Math.toDegrees(lean)));

            String at = "seed " + SEED + " case " + i;
            assertThat(heel.height().libraryValue())
                    .as(at)
                    .isCloseTo(top.minus(cap).dot(faceNormal), offset(1e-9));
            assertThat(heel.matingFace().libraryValue())
                    .as(at)
                    .isCloseTo(top.minus(cap).length(), offset(1e-9));
        }
    }

    @Test
    void height_ofAnEndThatLeansWithTheNeckIsDividedByTheCosine() {
        HeelBlocks square = HeelBlocks.of(mm(90), mm(20)).overstand(mm(2)).at(deg(3));
        HeelBlocks leaning = square.leaning(deg(3));

        assertThat(square.height().libraryValue()).isCloseTo(92 * Math.cos(Math.toRadians(3)), offset(1e-12));
        assertThat(leaning.height().libraryValue()).isCloseTo(92 / Math.cos(Math.toRadians(3)), offset(1e-12));
    }

    @Test
    void count_roundsUpAndSaysWhatIsTrimmed() {
        // Common practice: three or four layers of the blank's thickness.
        HeelBlocks heel = HeelBlocks.of(mm(85), mm(20));

        assertThat(heel.count()).isEqualTo(4);
        assertThat(heel.trim().libraryValue()).isCloseTo(15, offset(1e-12));
        assertThat(HeelBlocks.of(mm(80), mm(20)).count()).isEqualTo(3);
        assertThat(HeelBlocks.of(mm(80), mm(20)).trim().libraryValue()).isCloseTo(0, offset(1e-12));
        assertThat(HeelBlocks.of(mm(15), mm(20)).count()).isZero();
        assertThat(heel.blocks(mm(32.5)).count()).isEqualTo(2);
        assertThat(heel.toString()).startsWith("Heel: 4 blocks of 20 mm under the shaft");
    }
}
