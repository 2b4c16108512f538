package org.neckgeom.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.fault.NoAnswer;

/** Lines and points of random planes lie on each of them; three planes against a linear solver are in {@link ShapeChecks}. */
class PlaneTest {

    @Test
    void lineOfTwo_liesOnBoth() {
        SplittableRandom random = new SplittableRandom(33);
        int answered = 0;
        for (int i = 0; i < 500; i++) {
            Plane a = new Plane(Vectors.direction(random), random.nextDouble(-200, 200));
            Plane b = new Plane(Vectors.direction(random), random.nextDouble(-200, 200));
            Plane c = Plane.through(Vectors.point(random, 200), Vectors.direction(random));
            if (Math.abs(a.normal().dot(b.normal())) < 0.99) {
                Line line = a.with(b);
                for (double share : new double[] {-300, 0, 1, 250}) {
                    assertThat(a.heightOfMm(line.at(share))).isCloseTo(0, within(1e-9));
                    assertThat(b.heightOfMm(line.at(share))).isCloseTo(0, within(1e-9));
                }
                assertThat(line.lengthMm()).isCloseTo(1, within(1e-12));
                answered++;
            }
            double moved = random.nextDouble(-3, 3);
            Point point = Vectors.point(random, 200);
            assertThat(c.moved(mm(moved)).heightOfMm(point))
                    .isCloseTo(c.heightOfMm(point) - moved, within(1e-12 * 500));
        }
        assertThat(answered).isGreaterThan(400);
    }

    @Test
    void parallelOnes_haveNoLineAndNoPoint() {
        Plane low = Plane.GLUE_FACE.movedMm(-20);
        assertThatThrownBy(() -> Plane.GLUE_FACE.with(low)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Plane.GLUE_FACE.with(low, new Plane(Direction.TO_BODY, 0)))
                .isInstanceOf(NoAnswer.class);
        // Three planes round a prism share a direction and no point.
        assertThatThrownBy(() -> new Plane(Direction.TO_BODY, 1)
                        .with(new Plane(Direction.UP, 1), new Plane(new Direction(1, 0, 1), 5)))
                .isInstanceOf(NoAnswer.class);
        assertThat(low.heightOfMm(new Point(9, 9, -25))).isEqualTo(-5);
    }
}
