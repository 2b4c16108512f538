package org.neckgeom.heel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;
import org.neckgeom.neck.Dome;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;

class BackSetTest {

    private static final long SEED = 1402;
    private static final Scale SCALE = Scale.of(mm(560));
    static final BackSet SET = BackSet.of(
            Scale.of(mm(560)),
            14,
            NeckSet.saddle(mm(15.2))
                    .atNut(mm(0.4))
                    .action(mm(2.0))
                    .fretPlane(mm(7.1))
                    .compensation(mm(2.2)));

    @Test
    void angle_ofTheWorkedExample() {
        // By hand: S = 560/2^(14/12) + 2.2 = 251.6514; a_s = 0.4 + 1.6 x 562.2/280 = 3.61257; H = 8.1;
        // asin(8.1/251.6774) = 1.84434 deg, atan(3.61257/251.6514) = 0.82245 deg; the difference is 1.0219 deg.
        assertThat(SET.angle().degrees()).isCloseTo(1.0219, offset(1e-4));
        assertThat(SET.angle().toString()).startsWith("1.02 deg, head back");
    }

    @Test
    void angle_putsNutTwelfthFretAndSaddleOnOneString() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 200; i++) {
            double scale = 330 + 560 * random.nextDouble();
            int fret = 12 + random.nextInt(9);
            double plane = 5 + 8 * random.nextDouble();
            double saddle = 6 + 20 * random.nextDouble();
            double nut = 0.3 + 0.7 * random.nextDouble();
            double action = 1 + 3 * random.nextDouble();
            double comp = 5 * random.nextDouble();
            BackSet set = BackSet.of(
                    Scale.of(mm(scale)),
                    fret,
                    NeckSet.saddle(mm(saddle))
                            .atNut(mm(nut))
                            .action(mm(action))
                            .fretPlane(mm(plane))
                            .compensation(mm(comp)));
            double turn = set.angle().angle().libraryValue();
            double joint = scale * (1 - Math.pow(2, -fret / 12.0));
            Vec pivot = new Vec(joint, 0, plane);

            // The string as it lies on the flat neck, each point turned about the joint with the neck.
            Vec atNut = turned(new Vec(0, 0, plane + nut), pivot, turn);
            Vec atTwelfth = turned(new Vec(scale / 2, 0, plane + action), pivot, turn);
            Vec along = atTwelfth.minus(atNut);
            Vec toEnd = atNut.plus(along.times((scale + comp) / (scale / 2)));

            assertThat(toEnd.z()).as("seed %d case %d", SEED, i).isCloseTo(saddle, offset(1e-9));
        }
    }

    @Test
    void actionPer_isTheDifferenceOfTwoAngles() {
        double turn = 0.1;
        double change = SET.actionPer(deg(turn)).change().libraryValue();
        // The action that would make the angle that much steeper, found by halving.
        double lo = 0;
        double hi = 4;
        for (int i = 0; i < 80; i++) {
            double middle = (lo + hi) / 2;
            NeckSet lower = NeckSet.saddle(mm(15.2))
                    .atNut(mm(0.4))
                    .action(mm(middle))
                    .fretPlane(mm(7.1))
                    .compensation(mm(2.2));
            if (BackSet.of(SCALE, 14, lower).angle().degrees() > SET.angle().degrees() + turn) {
                lo = middle;
            } else {
                hi = middle;
            }
        }

        assertThat(change).isCloseTo(lo - 2.0, offset(1e-9));
        assertThat(SET.actionPer(deg(0.1)).toString()).contains("lower at the 12th fret for 0.1 deg more head back");
    }

    @Test
    void actionPerSaddle_isAboutHalfAndOppositeToThickness() {
        // Common practice: the action changes by half of the change at the saddle.
        double perSaddle = SET.actionPerSaddle(mm(1)).change().libraryValue();

        assertThat(perSaddle).isCloseTo(0.5, offset(0.003));
        assertThat(SET.actionPerThickness(mm(1)).change().libraryValue()).isEqualTo(-perSaddle);
        assertThat(BackSet.of(
                                Scale.of(mm(560)),
                                14,
                                NeckSet.saddle(mm(16.2))
                                        .atNut(mm(0.4))
                                        .action(mm(2.0 + perSaddle))
                                        .fretPlane(mm(7.1))
                                        .compensation(mm(2.2)))
                        .angle()
                        .degrees())
                .isCloseTo(SET.angle().degrees(), offset(1e-9));
    }

    @Test
    void readings_atTheBridgeAreTheStraightedgesOnFretsAndBareFace() {
        NeckAngle angle = SET.angle();
        double turn = angle.angle().libraryValue();
        double joint = 560 * (1 - Math.pow(2, -14 / 12.0));
        Vec pivot = new Vec(joint, 0, 7.1);
        // A straightedge on the frets, followed to where the string meets the saddle.
        Vec frets = turned(new Vec(joint + 100, 0, 7.1), pivot, turn).minus(pivot);
        double level = turned(new Vec(562.2, 0, 7.1 + SET.stringAtSaddle().libraryValue()), pivot, turn)
                        .x()
                - joint;
        double reading = 7.1 + frets.z() / frets.x() * level;

        assertThat(angle.overFrets().libraryValue()).isCloseTo(reading, offset(1e-10));
        assertThat(angle.airOverBridge(mm(9)).libraryValue()).isCloseTo(reading - 9, offset(1e-10));
        assertThat(angle.atBridge(mm(9), mm(7.1)).airOverBridge()).isEqualTo(angle.airOverBridge(mm(9)));
        assertThat(angle.atBridge(mm(13), mm(7.1)).toString()).contains("strikes the bridge");
        // Common practice: the two straightedges differ by fingerboard and fret, 6.0 and 1.1.
        assertThat(angle.overFrets().libraryValue()
                        - angle.overBareFace(mm(7.1)).libraryValue())
                .isCloseTo(7.1, offset(0.01));
    }

    @Test
    void dome_countsTheSaddleFromTheTopUnderIt() {
        BackSet domed = BackSet.of(
                Scale.of(mm(648)),
                14,
                NeckSet.saddle(mm(12.5))
                        .atNut(mm(0.4))
                        .action(mm(2.2))
                        .fretPlane(mm(7.1))
                        .compensation(mm(2.5))
                        .dome(Dome.of(mm(9144)).pole(mm(250), mm(40))));
        double rise = Math.sqrt(9144.0 * 9144 - 40 * 40) - Math.sqrt(9144.0 * 9144 - 250 * 250);
        BackSet flat = BackSet.of(
                Scale.of(mm(648)),
                14,
                NeckSet.saddle(mm(12.5 + rise))
                        .atNut(mm(0.4))
                        .action(mm(2.2))
                        .fretPlane(mm(7.1))
                        .compensation(mm(2.5)));

        assertThat(domed.angle().degrees()).isCloseTo(flat.angle().degrees(), offset(1e-9));
        assertThat(domed.angle().againstTop().libraryValue())
                .isLessThan(domed.angle().angle().libraryValue());
        assertThat(domed.angle().overFrets().libraryValue())
                .isCloseTo(flat.angle().overFrets().libraryValue() - rise, offset(1e-9));
        assertThat(flat.angle().againstTop()).isEqualTo(flat.angle().angle());
        assertThat(domed.toString()).contains("dome");
    }

    /** The largest radius there is, 100 m: over 250 mm it still turns the top by 250 / 1e5 rad, 0.14 deg. */
    @Test
    void dome_ofTheFlattestIsNearlyNoDome() {
        NeckSet domed = SET.heights().dome(Dome.of(mm(1e5)).pole(mm(250), mm(40)));

        assertThat(BackSet.of(SCALE, 14, domed).angle().degrees())
                .isCloseTo(SET.angle().degrees(), offset(0.15));
    }

    @Test
    void saddle_tooHighForAnyAngleIsRefusedWithTheLengths() {
        assertThatThrownBy(() -> BackSet.of(
                        Scale.of(mm(40)),
                        14,
                        NeckSet.saddle(mm(60)).atNut(mm(0.4)).action(mm(2)).fretPlane(mm(7))))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("53 mm over the fret plane");
    }

    @Test
    void compensation_rejectsOneBeforeTheJoint() {
        assertThatThrownBy(() -> BackSet.of(SCALE, 14, SET.heights().compensation(mm(-260))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("compensation must be more than -249.452 mm, but was -260 mm");
    }

    @Test
    void units_doNotChangeTheAnswer() {
        BackSet inches = BackSet.of(
                Scale.of(inch(24.75)),
                14,
                NeckSet.saddle(inch(0.5)).atNut(inch(0.015)).action(inch(0.08)).fretPlane(inch(0.28)));
        BackSet metric = BackSet.of(
                Scale.of(mm(24.75 * 25.4)),
                14,
                NeckSet.saddle(mm(0.5 * 25.4))
                        .atNut(mm(0.015 * 25.4))
                        .action(mm(0.08 * 25.4))
                        .fretPlane(mm(0.28 * 25.4)));

        assertThat(inches.angle().degrees()).isCloseTo(metric.angle().degrees(), offset(1e-12));
        assertThat(inches.toString()).contains(" in");
    }

    private static Vec turned(Vec point, Vec pivot, double turn) {
        return point.minus(pivot).turned(Vec.Y, -turn).plus(pivot);
    }

    @Test
    void of_rejectsAFretThatIsNoneAndHeightsWithoutTheFretPlane() {
        NeckSet heights = SET.heights();

        assertThat(BackSet.of(SCALE, 60, heights.fretPlane(mm(15))).reach().libraryValue())
                .isCloseTo(560 * Math.pow(2, -5) + 2.2, offset(1e-12));
        assertThatThrownBy(() -> BackSet.of(SCALE, 61, heights)).hasMessageContaining("but was 61");
        assertThatThrownBy(() -> BackSet.of(SCALE, 0, heights)).hasMessageContaining("but was 0");
        assertThatThrownBy(() -> BackSet.of(SCALE, 14, heights.overstand(mm(0.5))))
                .hasMessage("either fret plane or the fingerboard's fret height must be given");
    }

    @Test
    void reach_isOfTheScalesOwnDivisions() {
        assertThat(BackSet.of(SCALE.divisions(19), 22, SET.heights()).reach().libraryValue())
                .isCloseTo(560 * Math.pow(2, -22 / 19.0) + 2.2, offset(1e-12));
    }

    @Test
    void shim_ofNoChangeIsNone_andOfTheOtherWayGoesUnderTheOtherEdge() {
        assertThat(SET.shim(mm(70), mm(0))).hasToString("Pocket shim: none");
        NeckPocketShim forward = SET.shim(mm(70), mm(-1));

        // Lever rule: the far end of a pocket of 70 mm, 251.6514 mm before the saddle, is turned about.
        assertThat(forward.isTowardBridge()).isFalse();
        assertThat(forward.thickness().libraryValue()).isCloseTo(70 / (251.6514 - 70), offset(1e-6));
        assertThat(forward.toString()).contains("under the nut-side edge").contains("1 mm lower, head forward");
    }
}
