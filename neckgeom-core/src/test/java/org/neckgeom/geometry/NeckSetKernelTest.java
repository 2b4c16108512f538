package org.neckgeom.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NeckSetKernelTest {

    private static final long SEED = 514;

    @Test
    void angle_turnsTheNeckUntilTheStringMeetsTheSaddle() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 300; i++) {
            double reach = 150 + 300 * random.nextDouble();
            double string = 1 + 6 * random.nextDouble();
            double rise = -5 + 40 * random.nextDouble();

            double angle = NeckSetKernel.angle(rise, reach, string);
            // Lay the neck flat: string top over the saddle at (reach, string); then turn it about the joint.
            Vec flat = new Vec(reach, 0, string);
            Vec turned = flat.turned(Vec.Y, -angle);

            assertThat(turned.z()).as("seed %d case %d", SEED, i).isCloseTo(rise, offset(1e-10));
            assertThat(NeckSetKernel.stringFromAngle(rise, reach, angle))
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(string, offset(1e-9));
        }
    }

    @Test
    void turnFor_movesTheProjectionByTheChange() {
        double angle = Math.toRadians(1.2);
        double turn = NeckSetKernel.turnFor(-1.4, 250, angle);

        Vec before = new Vec(250, 0, 0).turned(Vec.Y, -angle);
        Vec after = new Vec(250, 0, 0).turned(Vec.Y, -(angle + turn));

        assertThat(after.z() - before.z()).isCloseTo(-1.4, offset(1e-11));
    }

    @Test
    void drop_isTheHeightOfTheCapAndGoesToNothingOnAFlatTop() {
        assertThat(NeckSetKernel.drop(5, 3)).isCloseTo(1, offset(1e-15));
        assertThat(NeckSetKernel.drop(Double.POSITIVE_INFINITY, 200)).isZero();
        // r^2 / 2R is the limit for a great radius; the plain difference would have lost all its digits here.
        assertThat(NeckSetKernel.drop(1e15, 200)).isCloseTo(2e-11, offset(1e-24));
    }

    @Test
    void stringAtSaddle_liesOnTheLineThroughNutAndTwelfth() {
        double atSaddle = NeckSetKernel.stringAtSaddle(560, 2.2, 0.4, 2.0);

        double slope = (2.0 - 0.4) / 280;
        assertThat(atSaddle).isCloseTo(0.4 + slope * 562.2, offset(1e-12));
    }
}
