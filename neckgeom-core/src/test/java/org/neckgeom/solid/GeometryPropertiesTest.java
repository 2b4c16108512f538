package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.head.HeadSide;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.head.ScarfRun;
import org.neckgeom.heel.BackSet;
import org.neckgeom.heel.HeelWedge;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shape.Curve;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** Laws that the neck's geometry keeps, each at 1,000 places or more. */
class GeometryPropertiesTest {

    private static final long SEED = 20_261_129;
    private static final int CASES = 1_000;
    private static final List<ShopUnit<Length>> UNITS =
            List.of(ShopUnit.MILLIMETRE, ShopUnit.CENTIMETRE, ShopUnit.INCH, ShopUnit.THOU);

    private final SplittableRandom random = new SplittableRandom(SEED);

    private Amount<Length> told(double millimetres) {
        return mm(millimetres).in(UNITS.get(random.nextInt(UNITS.size())));
    }

    private Amount<Angle> toldDegrees(double degrees) {
        return random.nextBoolean() ? deg(degrees) : deg(degrees).in(ShopUnit.RADIAN);
    }

    private static String at(int i) {
        return "seed " + SEED + ", case " + i;
    }

    /** Scarf lines of thicknesses told in any units are the same; k times the thickness makes k times the lines. */
    @Test
    void scarf_doesNotCareForUnitsAndScales() {
        for (int i = 0; i < CASES; i++) {
            double pitch = random.nextDouble(2, 20);
            double shaft = random.nextDouble(14, 26);
            double head = random.nextDouble(10, 20);
            double k = random.nextDouble(0.5, 2);
            ScarfJoint one = ScarfJoint.inTheHead(Scarf.of(deg(pitch), mm(shaft), mm(head)));
            ScarfJoint mixed = ScarfJoint.inTheHead(Scarf.of(toldDegrees(pitch), told(shaft), told(head)));
            ScarfJoint larger = ScarfJoint.inTheHead(Scarf.of(deg(pitch), mm(k * shaft), mm(k * head)));

            assertThat(mixed.frontLineMm()).as(at(i)).isCloseTo(one.frontLineMm(), within(1e-10));
            assertThat(mixed.backLineMm()).as(at(i)).isCloseTo(one.backLineMm(), within(1e-10));
            assertThat(larger.glueFaceMm()).as(at(i)).isCloseTo(k * one.glueFaceMm(), within(1e-10));
            assertThat(larger.backLineMm()).as(at(i)).isCloseTo(k * one.backLineMm(), within(1e-10));
        }
    }

    /** A steeper pitch never makes a longer glue face. */
    @Test
    void glueFace_shrinksWithThePitch() {
        for (int i = 0; i < CASES; i++) {
            double pitch = random.nextDouble(2, 20);
            double steeper = pitch + random.nextDouble(0, 5);

            assertThat(ScarfJoint.inTheShaft(Scarf.of(deg(steeper), mm(20), mm(15)))
                            .glueFaceMm())
                    .as(at(i))
                    .isLessThanOrEqualTo(ScarfJoint.inTheShaft(Scarf.of(deg(pitch), mm(20), mm(15)))
                            .glueFaceMm());
        }
    }

    /** What is planed off and glued on again leaves every line where it was. */
    @Test
    void veneer_undoesPlaning() {
        for (int i = 0; i < CASES; i++) {
            double off = random.nextDouble(0.2, 3);
            ScarfJoint joint = ScarfJoint.inTheHead(Scarf.of(deg(random.nextDouble(3, 18)), mm(20), mm(15)));

            ScarfJoint again = joint.planingHeadFace(mm(off)).veneered(HeadSide.FACE, mm(off));

            assertThat(again.breakLineShiftMm()).as(at(i)).isCloseTo(joint.breakLineShiftMm(), within(1e-12));
            assertThat(again.headThickness().libraryValue()).as(at(i)).isCloseTo(15, within(1e-12));
        }
    }

    /** A run on a thickness has a pitch, and that pitch on that thickness has the run. */
    @Test
    void run_andPitchAreInverse() {
        for (int i = 0; i < CASES; i++) {
            double run = random.nextDouble(40, 300);
            ScarfRun layout = ScarfRun.of(mm(random.nextDouble(14, 26)), mm(run));

            assertThat(layout.runFor(layout.angle()).libraryValue()).as(at(i)).isCloseTo(run, within(1e-10));
        }
    }

    /** Frets grow from the nut by ever smaller steps, and k times the scale has k times the frets. */
    @Test
    void frets_growBySmallerStepsAndScale() {
        for (int i = 0; i < CASES; i++) {
            double scale = random.nextDouble(300, 900);
            double k = random.nextDouble(0.5, 2);
            double n = random.nextDouble(0, 23);
            Scale one = Scale.of(mm(scale));

            double step = one.fretMm(n + 1) - one.fretMm(n);

            assertThat(step).as(at(i)).isPositive();
            assertThat(one.fretMm(n + 2) - one.fretMm(n + 1)).as(at(i)).isLessThan(step);
            assertThat(Scale.of(mm(k * scale)).fretMm(n)).as(at(i)).isCloseTo(k * one.fretMm(n), within(1e-10));
        }
    }

    private BackSet set(double action, double saddle, double k) {
        return BackSet.of(
                Scale.of(mm(k * 648)),
                14,
                NeckSet.saddle(mm(k * saddle))
                        .atNut(mm(k * 0.4))
                        .action(mm(k * action))
                        .fretPlane(mm(k * 7)));
    }

    /** A neck k times as large has the same angle; a higher saddle never a smaller one; higher action never a larger. */
    @Test
    void neckAngle_scalesAndIsMonotone() {
        for (int i = 0; i < CASES; i++) {
            double action = random.nextDouble(1, 4);
            double saddle = random.nextDouble(6, 20);
            double more = random.nextDouble(0, 2);
            double angle = set(action, saddle, 1).angle().degrees();

            assertThat(set(action, saddle, random.nextDouble(0.5, 2)).angle().degrees())
                    .as(at(i))
                    .isCloseTo(angle, within(1e-12));
            assertThat(set(action, saddle + more, 1).angle().degrees())
                    .as(at(i))
                    .isGreaterThanOrEqualTo(angle);
            assertThat(set(action + more, saddle, 1).angle().degrees())
                    .as(at(i))
                    .isLessThanOrEqualTo(angle);
        }
    }

    /** The action that a turn makes belongs to the angle turned by it: the two are inverse. */
    @Test
    void actionPer_isTheInverseOfTheAngle() {
        for (int i = 0; i < CASES; i++) {
            double action = random.nextDouble(1.5, 4);
            double saddle = random.nextDouble(8, 20);
            double turn = random.nextDouble(-0.2, 0.2);
            BackSet set = set(action, saddle, 1);

            double after = action + set.actionPer(deg(turn)).change().libraryValue();

            // With compensation 0 the nut keeps its height: all of the change is the twelfth fret's share.
            assertThat(set(after, saddle, 1).angle().degrees())
                    .as(at(i))
                    .isCloseTo(set.angle().degrees() + turn, within(1e-10));
        }
    }

    /** A change wanted the other way is cut as deep within its own square, and at the other end. */
    @Test
    void wedge_turnsWithTheChange() {
        for (int i = 0; i < CASES; i++) {
            double change = random.nextDouble(0.05, 3);
            BackSet set = set(2, random.nextDouble(8, 20), 1);

            HeelWedge up = set.wedge(mm(80), mm(change));
            HeelWedge down = set.wedge(mm(80), mm(-change));

            assertThat(up.isAtCap()).as(at(i)).isNotEqualTo(down.isAtCap());
            assertThat(up.cut().libraryValue()).as(at(i)).isCloseTo(down.cut().libraryValue(), within(0.01 * change));
            assertThat(set.cheek(mm(55), mm(change)).cut().libraryValue())
                    .as(at(i))
                    .isCloseTo(set.cheek(mm(55), mm(-change)).cut().libraryValue(), within(1e-12));
        }
    }

    /** Strings set out from the other side are the same places in the mirror, gaps and all. */
    @Test
    void strings_areMirroredWithTheirDiameters() {
        for (int i = 0; i < CASES; i++) {
            double[] d = random.doubles(5, 0.2, 1.4).toArray();
            double span = random.nextDouble(30, 60);
            StringPlaces one = StringSpacing.diameters(mm(d[0]), mm(d[1]), mm(d[2]), mm(d[3]), mm(d[4]))
                    .across(mm(span))
                    .equalGaps();
            StringPlaces other = StringSpacing.diameters(mm(d[4]), mm(d[3]), mm(d[2]), mm(d[1]), mm(d[0]))
                    .across(mm(span))
                    .equalGaps();

            for (int n = 0; n < 5; n++) {
                assertThat(other.centresMm()[4 - n]).as(at(i)).isCloseTo(-one.centresMm()[n], within(1e-12));
            }
        }
    }

    private static FloorThickness wood(
            double rodHeight, double width, double bass, double treble, double half, double k) {
        Channel channel = Channel.forRod(TrussRod.twoWay(mm(k * 300)).section(mm(k * width), mm(k * rodHeight)));
        BackProfile back = BackProfile.between(mm(k * 16), mm(k * 18)).asymmetric(bass, treble);
        return FloorThickness.under(channel, BackShape.of(back, Scale.of(mm(k * 560)), Curve.level(k * half)));
    }

    /** A deeper or a wider channel never leaves more wood. */
    @Test
    void wood_neverGrowsWithTheChannel() {
        for (int i = 0; i < CASES; i++) {
            double height = random.nextDouble(6, 11);
            double width = random.nextDouble(3, 8);
            double p = random.nextDouble(1.5, 4);
            double half = random.nextDouble(17, 28);
            double x = random.nextDouble(0, 300);
            double wood = wood(height, width, p, p, half, 1).at(mm(x)).woodMm();

            assertThat(wood(height + random.nextDouble(0, 2), width, p, p, half, 1)
                            .at(mm(x))
                            .woodMm())
                    .as(at(i))
                    .isLessThanOrEqualTo(wood + 1e-10);
            assertThat(wood(height, width + random.nextDouble(0, 2), p, p, half, 1)
                            .at(mm(x))
                            .woodMm())
                    .as(at(i))
                    .isLessThanOrEqualTo(wood + 1e-10);
        }
    }

    /** A left-handed back with the channel off the other way leaves the same wood; off centre leaves no more. */
    @Test
    void wood_isTheSameInTheMirrorAndMostInTheMiddle() {
        for (int i = 0; i < CASES; i++) {
            double bass = random.nextDouble(1.5, 4);
            double treble = random.nextDouble(1.5, 4);
            double half = random.nextDouble(17, 28);
            double aside = random.nextDouble(-3, 3);
            Amount<Length> x = mm(random.nextDouble(0, 300));

            double wood =
                    wood(9, 6, bass, treble, half, 1).offCentre(mm(aside)).at(x).woodMm();

            assertThat(wood(9, 6, treble, bass, half, 1)
                            .offCentre(mm(-aside))
                            .at(x)
                            .woodMm())
                    .as(at(i))
                    .isCloseTo(wood, within(1e-10));
            assertThat(wood(9, 6, bass, bass, half, 1)
                            .offCentre(mm(aside))
                            .at(x)
                            .woodMm())
                    .as(at(i))
                    .isLessThanOrEqualTo(wood(9, 6, bass, bass, half, 1).at(x).woodMm() + 1e-10);
        }
    }

    /** A neck k times as large has k times the wood; a fuller back never less. */
    @Test
    void wood_scalesAndGrowsWithTheBack() {
        for (int i = 0; i < CASES; i++) {
            double p = random.nextDouble(1.2, 4);
            double half = random.nextDouble(17, 28);
            double k = random.nextDouble(0.5, 2);
            double x = random.nextDouble(0, 300);
            double wood = wood(9, 6, p, p, half, 1).at(mm(x)).woodMm();

            assertThat(wood(9, 6, p, p, half, k).at(mm(k * x)).woodMm())
                    .as(at(i))
                    .isCloseTo(k * wood, within(1e-10));
            double fuller = p + random.nextDouble(0, 1);
            assertThat(wood(9, 6, fuller, fuller, half, 1).at(mm(x)).woodMm())
                    .as(at(i))
                    .isGreaterThanOrEqualTo(wood - 1e-10);
        }
    }

    /** The chance of falling under a limit grows with the limit and stays a chance. */
    @Test
    void chanceBelow_growsWithTheLimit() {
        FloorThickness wood = wood(9, 6, 2, 2, 20, 1);
        for (int i = 0; i < CASES; i++) {
            ErrorDistribution<Length> spread = switch (random.nextInt(4)) {
                case 0 -> ErrorDistribution.normal(mm(random.nextDouble(0.05, 0.5)));
                case 1 -> ErrorDistribution.rectangular(mm(random.nextDouble(0.05, 1)));
                case 2 -> ErrorDistribution.triangular(mm(random.nextDouble(0.05, 1)));
                default -> ErrorDistribution.arcsine(mm(random.nextDouble(0.05, 1)));
            };
            double limit = random.nextDouble(4, 9);

            double chance = wood.probabilityBelow(mm(limit), spread).probability();

            assertThat(chance).as(at(i)).isBetween(0.0, 1.0);
            assertThat(wood.probabilityBelow(mm(limit + random.nextDouble(0, 1)), spread)
                            .probability())
                    .as(at(i))
                    .isGreaterThanOrEqualTo(chance - 1e-12);
        }
    }
}
