package org.neckgeom.kernel;

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
        }
    }

    @Test
    void angle_keepsItsDigitsOnANeckThatIsAllButLevel() {
        // H = a_s + d: the angle is d/S to thirteen digits; 3 + 1e-9 itself is rounded, by 2e-16.
        double rise = 3 + 1e-9;

        assertThat(NeckSetKernel.angle(rise, 300, 3)).isCloseTo((rise - 3) / 300, offset(1e-24));
        assertThat(NeckSetKernel.angle(3, 300, 3)).isZero();
    }

    @Test
    void stringChange_turnsTheNeckUntilTheStringMeetsTheSaddleAgain() {
        double angle = NeckSetKernel.angle(8.1, 251.6, 3.6);
        double string = 3.6 + NeckSetKernel.stringChange(251.6, 3.6, angle, 0.01);

        assertThat(NeckSetKernel.angle(8.1, 251.6, string)).isCloseTo(angle + 0.01, offset(1e-15));
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
