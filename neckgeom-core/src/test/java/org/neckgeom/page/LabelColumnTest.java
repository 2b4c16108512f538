package org.neckgeom.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LabelColumnTest {

    @Test
    void spread_leavesLabelsWithRoomWhereTheyAre() {
        assertArrayEquals(
                new double[] {20, 80, 140},
                LabelColumn.spread(new double[] {20, 80, 140}, new double[] {30, 30, 30}, 0, 200),
                1e-12);
    }

    @Test
    void spread_partsTwoOnOnePointEvenly() {
        assertArrayEquals(
                new double[] {85, 115},
                LabelColumn.spread(new double[] {100, 100}, new double[] {30, 30}, 0, 200),
                1e-12);
    }

    @Test
    void spread_staysInside() {
        assertArrayEquals(
                new double[] {15, 45}, LabelColumn.spread(new double[] {0, 2}, new double[] {30, 30}, 0, 200), 1e-12);
        assertArrayEquals(
                new double[] {155, 185},
                LabelColumn.spread(new double[] {199, 200}, new double[] {30, 30}, 0, 200),
                1e-12);
    }

    @Test
    void spread_neverOverlaps_andKeepsTheOrder() {
        long seed = 20261125L;
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 2000; trial++) {
            int n = 1 + random.nextInt(12);
            double[] wanted = random.doubles(n, -50, 700).sorted().toArray();
            double[] heights = random.doubles(n, 10, 40).toArray();
            double[] middles = LabelColumn.spread(wanted, heights, 0, 652);
            for (int i = 0; i < n; i++) {
                double top = middles[i] - heights[i] / 2;
                double above = i == 0 ? 0 : middles[i - 1] + heights[i - 1] / 2;
                int at = i;
                assertTrue(
                        top >= above - 1e-9,
                        () -> "seed " + seed + ", label " + at + " of " + Arrays.toString(wanted) + ": "
                                + Arrays.toString(middles));
            }
            assertTrue(middles[n - 1] + heights[n - 1] / 2 <= 652 + 1e-9, () -> "seed " + seed);
        }
    }
}
