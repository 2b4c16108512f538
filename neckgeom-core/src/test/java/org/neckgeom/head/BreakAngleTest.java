package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;

class BreakAngleTest {

    private static final long SEED = 88;

    @Test
    void anglesAndForces_areThoseOfTheVectors() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 300; i++) {
            double pitch = 18 * random.nextDouble();
            double along = 25 + 140 * random.nextDouble();
            double above = 2 + 10 * random.nextDouble();
            double slot = 4 + 6 * random.nextDouble();
            double aside = -12 + 24 * random.nextDouble();
            double rise = -1 + 3 * random.nextDouble();
            BreakAngle string = BreakAngle.over(deg(pitch), mm(slot))
                    .post(mm(along), mm(above))
                    .sideways(mm(aside))
                    .speakingSide(deg(rise));
            // Turn the flat head with its post about the break line; the nut's slot stands straight above that line.
            Vec post = new Vec(-along, aside, above).turned(Vec.Y, -Math.toRadians(pitch));
            Vec toPost = post.minus(new Vec(0, 0, slot)).unit();
            Vec toSaddle = Vec.X.turned(Vec.Y, -Math.toRadians(rise));
            Vec push = toPost.plus(toSaddle).times(60);

            String at = "seed " + SEED + " case " + i;
            assertThat(string.angle().libraryValue()).as(at).isCloseTo(-Math.asin(toPost.z()), offset(1e-12));
            assertThat(string.turn().libraryValue())
                    .as(at)
                    .isCloseTo(toPost.times(-1).angleTo(toSaddle), offset(1e-9));
            assertThat(string.nutForce(newton(60)).libraryValue()).as(at).isCloseTo(-push.z(), offset(1e-10));
            assertThat(string.sideForce(newton(60)).libraryValue()).as(at).isCloseTo(push.y(), offset(1e-10));
        }
    }

    @Test
    void angle_growsToTheHeadsPitchAsThePostGoesAway() {
        BreakAngle far = BreakAngle.over(deg(13), mm(7.5)).post(mm(1e9), mm(8));

        assertThat(far.angle().libraryValue()).isCloseTo(Math.toRadians(13), offset(1e-8));
    }

    @Test
    void angle_onAFlatHeadIsTheFallToThePost() {
        BreakAngle flat = BreakAngle.over(deg(0), mm(7.5)).post(mm(40), mm(3));

        assertThat(flat.angle().libraryValue()).isCloseTo(Math.atan(4.5 / 40), offset(1e-15));
        assertThat(flat.nutForce(newton(0)).libraryValue()).isZero();
    }

    @Test
    void toString_saysWhenTheStringDoesNotPress() {
        BreakAngle lifting = BreakAngle.over(deg(0), mm(7.5)).post(mm(40), mm(9));
        BreakAngle slight = BreakAngle.over(deg(0), mm(7.5)).post(mm(80), mm(4));

        assertThat(lifting.angle().libraryValue()).isNegative();
        assertThat(lifting.toString()).contains("does not press on the nut");
        assertThat(slight.toString()).contains("retainer");
    }

    @Test
    void post_rejectsOneBehindTheBreakLine() {
        assertThatThrownBy(() -> BreakAngle.over(deg(13), mm(7)).post(mm(-5), mm(8)))
                .hasMessage("post's distance from the break line must be more than 0 mm, but was -5 mm");
    }

    /** By hand: along cos + above sin of the pitch must reach past the nut, so 5 below the face along is over 5 tan 13 deg. */
    @Test
    void post_standsInFrontOfTheNut() {
        double least = 5 * Math.tan(Math.toRadians(13));
        BreakAngle.OverNut nut = BreakAngle.over(deg(13), mm(7));

        assertThat(nut.post(mm(least + 1e-6), mm(-5)).toString()).startsWith("String over");
        assertThatThrownBy(() -> nut.post(mm(least - 1e-6), mm(-5)))
                .hasMessageStartingWith("post must lie in front of the nut");
        assertThat(nut.toString()).contains("13");
    }
}
