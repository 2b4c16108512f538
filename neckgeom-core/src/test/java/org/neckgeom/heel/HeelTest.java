package org.neckgeom.heel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;
import org.neckgeom.neck.Dome;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;

/** The corrections at the heel: face, wedge, cheek, corners, shim. */
class HeelTest {

    private static final long SEED = 54;
    private static final BackSet SET = BackSetTest.SET;

    @Test
    void heelFace_isTheAngleBetweenTheTurnedGlueFaceAndTheBodysEnd() {
        double turn = SET.angle().angle().libraryValue();
        Vec towardHead = new Vec(-1, 0, 0).turned(Vec.Y, -turn);
        double lean = Math.toRadians(3);

        assertThat(SET.heelFace().angle().libraryValue())
                .isCloseTo(towardHead.angleTo(new Vec(0, 0, -1)), offset(1e-12));
        // A body end of 87 deg runs in under the top, toward the bridge as it goes down.
        assertThat(SET.heelFace().bodyEnd(deg(87)).angle().libraryValue())
                .isCloseTo(towardHead.angleTo(new Vec(Math.sin(lean), 0, -Math.cos(lean))), offset(1e-12));
        assertThat(SET.heelFace().toString()).startsWith("Heel face: 88.98 deg");
    }

    @Test
    void heelFace_squareToADomedTopLeansByTheTopsSlope() {
        BackSet domed = BackSet.of(
                Scale.of(mm(560)), 14, SET.heights().dome(Dome.of(mm(9000)).pole(mm(240), mm(20))));

        double difference = domed.heelFace().squareToTheTop().angle().libraryValue()
                - domed.heelFace().angle().libraryValue();

        assertThat(difference).isCloseTo(Math.asin(240.0 / 9000), offset(1e-12));
        assertThat(SET.heelFace().squareToTheTop()).isEqualTo(SET.heelFace());
    }

    /** The fret line turned about the edge it tips about, by plane geometry: the projection then moves by what was wanted. */
    @Test
    void wedge_movesTheProjectionByWhatWasWanted() {
        SplittableRandom random = new SplittableRandom(5);
        for (int n = 0; n < 200; n++) {
            double saddle = random.nextDouble(2, 45);
            BackSet set = BackSet.of(
                    Scale.of(mm(648)),
                    14,
                    NeckSet.saddle(mm(saddle)).atNut(mm(0.4)).action(mm(2)).fretPlane(mm(7)));
            double t = Math.toRadians(set.angle().degrees());
            double change = random.nextDouble(-2, 2);
            double heel = random.nextDouble(60, 95);
            double turn = Math.signum(change)
                    * Math.atan(set.wedge(mm(heel), mm(change)).cut().libraryValue() / heel);
            double pivot = change > 0 ? 0 : -heel;
            double level = set.reach().libraryValue() * Math.cos(t)
                    - set.stringAtSaddle().libraryValue() * Math.sin(t);
            double p = 7 - pivot;

            double before = 7 + level * Math.tan(t);
            double after = pivot + p * Math.cos(turn) + (level + p * Math.sin(turn)) * Math.tan(t + turn);
            assertThat(after - before)
                    .as("angle %s deg, change %s", set.angle().degrees(), change)
                    .isCloseTo(change, offset(0.004 * Math.abs(change) + 1e-9));
        }
    }

    @Test
    void wedge_agreesWithTheTradesExample() {
        // Common practice: 14-fret joint, 289 mm to the saddle at 648 mm, 3 mm under at an 80 mm heel: 0.83 at the cap.
        BackSet set = BackSet.of(
                Scale.of(mm(648)),
                14,
                NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2.2)).fretPlane(mm(7)));

        assertThat(set.reach().libraryValue()).isCloseTo(289, offset(0.5));
        assertThat(set.wedge(mm(80), mm(3)).cut().libraryValue()).isCloseTo(0.83, offset(0.005));
        assertThat(set.wedge(mm(80), mm(3)).isAtCap()).isTrue();
        assertThat(set.wedge(mm(80), mm(-3)).isAtCap()).isFalse();
    }

    @Test
    void corners_cutAndPressedHomeMoveTheBridgeByBothChanges() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 200; i++) {
            double angle = Math.toRadians(-1 + 6 * random.nextDouble());
            double reach = 180 + 200 * random.nextDouble();
            double plane = 6 + 4 * random.nextDouble();
            double string = 2 + 2 * random.nextDouble();
            double saddle = plane + reach * Math.sin(angle) + string * Math.cos(angle);
            BackSet set = BackSet.of(
                    Scale.of(mm(reach * Math.pow(2, 14 / 12.0))),
                    14,
                    NeckSet.saddle(mm(saddle))
                            .atNut(mm(string))
                            .action(mm(string))
                            .fretPlane(mm(plane)));
            double height = 50 + 50 * random.nextDouble();
            double top = 45 + 15 * random.nextDouble();
            double cap = 14 + 20 * random.nextDouble();
            double change = -3 + 6 * random.nextDouble();
            double aside = -2 + 4 * random.nextDouble();
            HeelCorners cut = set.correction(Heel.of(mm(height), mm(top)).capWidth(mm(cap)), mm(change), mm(aside));

            // The cut face in the neck's place, x toward the body: what is taken off lies behind the old face x = 0.
            Vec a = new Vec(-cut.topBass().libraryValue(), -top / 2, 0);
            Vec b = new Vec(-cut.topTreble().libraryValue(), top / 2, 0);
            Vec c = new Vec(-cut.capTreble().libraryValue(), cap / 2, -height);
            Vec d = new Vec(-cut.capBass().libraryValue(), -cap / 2, -height);
            Vec normal = b.minus(a).cross(c.minus(a)).unit();
            normal = normal.x() < 0 ? normal.times(-1) : normal;
            // Pressed home, the cut face lies on the body's end: turn its normal to x.
            Vec axis = normal.cross(Vec.X);
            double turn = normal.angleTo(Vec.X);
            Vec bridge = new Vec(reach * Math.cos(angle), aside, plane + reach * Math.sin(angle));
            Vec moved = bridge.turned(axis, turn);

            String at = "seed " + SEED + " case " + i;
            assertThat(Math.abs(d.minus(a).dot(normal)))
                    .as(at + ": four corners in one plane")
                    .isLessThan(1e-9);
            // The line of the frets, carried on to where the bridge is.
            Vec joint = new Vec(0, 0, plane).turned(axis, turn);
            double rise = (moved.z() - joint.z()) / (moved.x() - joint.x());
            double projected = joint.z() + rise * (bridge.x() - joint.x() + a.dot(normal));
            assertThat(projected - bridge.z()).as(at).isCloseTo(change, offset(0.01 * Math.abs(change) + 0.02));
            assertThat(moved.y()).as(at).isCloseTo(0, offset(0.02 * Math.abs(aside) + 0.02));
            double least = Math.min(
                    Math.min(cut.topBass().libraryValue(), cut.topTreble().libraryValue()),
                    Math.min(cut.capBass().libraryValue(), cut.capTreble().libraryValue()));
            assertThat(least).as(at).isCloseTo(0, offset(1e-12));
        }
    }

    @Test
    void corners_ofOneCorrectionAreTheWedgeOrTheCheek() {
        Heel heel = Heel.of(mm(78), mm(54));
        HeelCorners height = SET.correction(heel, mm(-1), mm(0));
        HeelCorners side = SET.correction(heel, mm(0), mm(0.8));

        assertThat(height.topBass().libraryValue())
                .isCloseTo(SET.wedge(mm(78), mm(-1)).cut().libraryValue(), offset(1e-12));
        assertThat(height.capTreble().libraryValue()).isCloseTo(0, offset(1e-12));
        assertThat(height.shortening().libraryValue())
                .isCloseTo(SET.wedge(mm(78), mm(-1)).shortening().libraryValue(), offset(1e-12));
        assertThat(side.topTreble().libraryValue())
                .isCloseTo(SET.cheek(mm(54), mm(0.8)).cut().libraryValue(), offset(1e-12));
        assertThat(side.topBass().libraryValue()).isCloseTo(0, offset(1e-12));
        assertThat(SET.correction(heel, mm(2), mm(0)).shortening().libraryValue())
                .isCloseTo(SET.wedge(mm(78), mm(2)).shortening().libraryValue(), offset(1e-12));
    }

    @Test
    void cheek_agreesWithTheTradesFigure() {
        // Common practice: 0.1 mm off one edge at 50-60 mm heel width moves the line at the saddle 0.5-0.6 mm.
        BackSet set = BackSet.of(
                Scale.of(mm(648)),
                14,
                NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2.2)).fretPlane(mm(7)));

        assertThat(set.cheek(mm(50), mm(0.575)).cut().libraryValue()).isCloseTo(0.1, offset(0.001));
        assertThat(set.cheek(mm(55), mm(0.8)).isOnTreble()).isTrue();
        assertThat(set.cheek(mm(55), mm(-0.8)).toString()).contains("off the bass cheek");
    }

    @Test
    void shim_tipsTheNeckAboutItsOtherEnd() {
        for (double change : new double[] {1.2, -1.2}) {
            NeckPocketShim shim = SET.shim(mm(70), mm(change));
            // Two points of the neck's back: the nut-side edge at 0 and the end at 70, one of them lifted.
            double atEdge = shim.isTowardBridge() ? 0 : shim.thickness().libraryValue();
            double atEnd = shim.isTowardBridge() ? shim.thickness().libraryValue() : 0;
            double atSaddle = atEdge + (atEnd - atEdge) / 70 * SET.reach().libraryValue();

            assertThat(atSaddle).isCloseTo(change, offset(1e-9));
        }
        assertThatThrownBy(() -> SET.shim(mm(260), mm(1))).hasMessageStartingWith("pocket length must be less than");
    }

    @Test
    void toString_saysWhereItComesOff() {
        assertThat(SET.wedge(mm(78), mm(-1.0)).toString())
                .startsWith("Heel wedge: 0.308 mm at the top edge")
                .contains("1 mm lower, head forward")
                .contains("shorter");
        assertThat(SET.cheek(mm(54), mm(0.8)).toString()).startsWith("Heel cheek: 0.172 mm off the treble cheek");
        assertThat(SET.wedge(mm(78), mm(0)).toString()).contains("nothing");
        assertThat(SET.shim(mm(70), mm(1)).toString()).contains("end toward the bridge");
    }
}
