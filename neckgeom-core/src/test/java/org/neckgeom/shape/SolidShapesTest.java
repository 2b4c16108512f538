package org.neckgeom.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Points, directions, frames and lines in space: properties of random ones, and places worked by hand. */
class SolidShapesTest {

    private static double distance(Point a, Point b) {
        double dx = a.xMm() - b.xMm();
        double dy = a.yMm() - b.yMm();
        double dz = a.zMm() - b.zMm();
        return Math.hypot(Math.hypot(dx, dy), dz);
    }

    @Test
    void frame_thereAndBackIsWhereItWas() {
        SplittableRandom random = new SplittableRandom(31);
        for (int i = 0; i < 500; i++) {
            Frame frame = Vectors.frame(random);
            Point point = Vectors.point(random, 500);
            Point other = Vectors.point(random, 500);

            assertThat(distance(frame.toNeck(frame.toHere(point)), point)).isLessThan(1e-12 * 1000);
            assertThat(distance(frame.inverse().toNeck(frame.toNeck(point)), point))
                    .isLessThan(1e-12 * 1000);
            Frame none = frame.then(frame.inverse());
            assertThat(none.origin().distanceMm(Point.ORIGIN)).isLessThan(1e-12 * 1000);
            assertThat(none.u().dot(Direction.TO_BODY)).isCloseTo(1, within(1e-12));
            assertThat(none.v().dot(Direction.TO_TREBLE)).isCloseTo(1, within(1e-12));
            assertThat(none.w().dot(Direction.UP)).isCloseTo(1, within(1e-12));
            // Distances are kept, and so is the hand: three corners and their volume.
            assertThat(frame.toHere(point).distanceMm(frame.toHere(other)))
                    .isCloseTo(distance(point, other), within(1e-12 * 1000));
            assertThat(volume(frame)).isCloseTo(1, within(1e-12));
        }
    }

    /** Volume of the box between a frame's axes: the determinant, by the first row. */
    private static double volume(Frame f) {
        double[] a = f.u().toArray();
        double[] b = f.v().toArray();
        double[] c = f.w().toArray();
        return a[0] * (b[1] * c[2] - b[2] * c[1])
                - a[1] * (b[0] * c[2] - b[2] * c[0])
                + a[2] * (b[0] * c[1] - b[1] * c[0]);
    }

    @Test
    void frame_inAFrameIsOneAfterTheOther() {
        SplittableRandom random = new SplittableRandom(32);
        for (int i = 0; i < 200; i++) {
            Frame outer = Vectors.frame(random);
            Frame inner = Vectors.frame(random);
            Point point = Vectors.point(random, 300);

            assertThat(distance(outer.then(inner).toNeck(point), outer.toNeck(inner.toNeck(point))))
                    .isLessThan(1e-12 * 2000);
        }
    }

    @Test
    void frame_refusesAMirrorAndAxesThatLean() {
        assertThatThrownBy(
                        () -> new Frame(Point.ORIGIN, Direction.TO_BODY, Direction.TO_TREBLE, Direction.UP.opposite()))
                .hasMessageStartingWith("axes of a frame must be square to each other and right-handed, but were");
        assertThatThrownBy(() -> new Frame(Point.ORIGIN, Direction.TO_BODY, new Direction(1e-9, 1, 0), Direction.UP))
                .isInstanceOf(IllegalArgumentException.class);
        // Toward a head's tip, the treble side and the strings is left-handed; away from the tip it is a frame.
        Direction tip = new Direction(-1, 0, 0);
        assertThatThrownBy(() -> new Frame(Point.ORIGIN, tip, Direction.TO_TREBLE, Direction.UP))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new Frame(Point.ORIGIN, tip.opposite(), Direction.TO_TREBLE, Direction.UP))
                .isEqualTo(Frame.NECK)
                .hasSameHashCodeAs(Frame.NECK);
    }

    /** Sum of squares over both shares, on a net that is made finer about its least place. */
    private static double byNet(Line a, Line b) {
        double s = 0.5;
        double t = 0.5;
        double wide = 0.5;
        double least = Double.POSITIVE_INFINITY;
        for (int round = 0; round < 60; round++) {
            double bestS = s;
            double bestT = t;
            for (int i = -4; i <= 4; i++) {
                for (int k = -4; k <= 4; k++) {
                    double si = Math.min(1, Math.max(0, s + wide * i / 4));
                    double tk = Math.min(1, Math.max(0, t + wide * k / 4));
                    double d = distance(a.at(si), b.at(tk));
                    if (d < least) {
                        least = d;
                        bestS = si;
                        bestT = tk;
                    }
                }
            }
            s = bestS;
            t = bestT;
            wide *= 0.7;
        }
        return least;
    }

    @Test
    void line_distanceIsTheLeastOfANet() {
        SplittableRandom random = new SplittableRandom(34);
        for (int i = 0; i < 400; i++) {
            Line a = new Line(Vectors.point(random, 20), Vectors.point(random, 20));
            Line b = new Line(Vectors.point(random, 20), Vectors.point(random, 20));

            assertThat(a.distanceMm(b)).isCloseTo(byNet(a, b), within(1e-6));
            assertThat(b.distanceMm(a)).isCloseTo(a.distanceMm(b), within(1e-12 * 40));
        }
    }

    /** By hand: two lines 1 m long through one point, at ever smaller angles; then side by side, one in the other, a point. */
    @Test
    void line_distanceOfLinesThatCrossAtASmallAngleIsNothing() {
        for (double angle : new double[] {1, 1e-3, 1e-6, 9e-8, 1e-9, 1e-11}) {
            double rise = 500 * Math.tan(angle / 2);
            Line a = new Line(new Point(-500, -rise, 0), new Point(500, rise, 0));
            Line b = new Line(new Point(-500, rise, 0), new Point(500, -rise, 0));

            assertThat(a.distanceMm(b)).as("angle %s", angle).isLessThan(1e-9);
        }
        Line level = new Line(new Point(0, 0, 0), new Point(100, 0, 0));
        assertThat(level.distanceMm(new Line(new Point(20, 3, 4), new Point(50, 3, 4))))
                .isEqualTo(5);
        assertThat(level.distanceMm(new Line(new Point(103, 4, 0), new Point(150, 4, 0))))
                .isEqualTo(5);
        assertThat(level.distanceMm(level)).isEqualTo(0);
        Line dot = new Line(new Point(40, 0, 7), new Point(40, 0, 7));
        assertThat(level.distanceMm(dot)).isEqualTo(7);
        assertThat(dot.distanceMm(level)).isEqualTo(7);
        assertThatThrownBy(dot::direction).isInstanceOf(IllegalArgumentException.class);
    }

    /** Angles near 0 and near 180 deg, where an arc cosine would have lost half of its digits. */
    @Test
    void direction_anglesKeepTheirDigitsAtBothEnds() {
        for (double angle : new double[] {1e-12, 1e-9, 1e-6, 0.3, Math.PI / 2, 2.9, Math.PI - 1e-7}) {
            Direction other = new Direction(Math.cos(angle), Math.sin(angle), 0);

            assertThat(Direction.TO_BODY.angleTo(other).libraryValue()).isCloseTo(angle, within(1e-15 + 2e-16 * angle));
        }
        assertThat(Direction.UP.angleTo(Direction.UP.opposite())).isEqualTo(deg(180));
    }

    @Test
    void direction_isUnitAndSquareToItsFactors() {
        SplittableRandom random = new SplittableRandom(35);
        for (int i = 0; i < 500; i++) {
            Direction a = Vectors.direction(random);
            Direction b = Vectors.direction(random);
            double size = random.nextDouble(1e-3, 1e3);

            assertThat(a.dot(a)).isCloseTo(1, within(1e-15));
            assertThat(new Direction(a.x(), a.y(), a.z())).isEqualTo(a);
            assertThat(new Direction(size * a.x(), size * a.y(), size * a.z()).dot(a))
                    .isCloseTo(1, within(1e-15));
            if (Math.abs(a.dot(b)) < 0.999) {
                assertThat(a.cross(b).dot(a)).isCloseTo(0, within(1e-13));
                assertThat(a.cross(b).dot(b)).isCloseTo(0, within(1e-13));
                assertThat(a.cross(b).dot(b.cross(a))).isCloseTo(-1, within(1e-12));
            }
        }
        assertThat(Direction.TO_BODY.cross(Direction.TO_TREBLE)).isEqualTo(Direction.UP);
        assertThatThrownBy(() -> new Direction(0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Direction(Double.NaN, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void pointsAndSpots_areWhatTheyHold() {
        Point point = new Point(12, -0.0, 3);
        assertThat(point).isEqualTo(new Point(12, 0, 3)).hasToString("(12, 0, 3) mm");
        assertThat(point.toMm()).containsExactly(12, 0, 3);
        assertThat(point.plus(Direction.UP, -3)).isEqualTo(new Point(12, 0, 0));
        assertThat(point.alongMm(new Direction(0.6, 0, 0.8))).isCloseTo(9.6, within(1e-12));
        assertThat(new Spot(3, 4).distanceTo(new Spot(0, 0))).isEqualTo(mm(5));
        assertThat(new Spot(45, -21)).hasToString("(45, -21) mm");
        double[] own = new Spot(1, 2).toMm();
        own[0] = 9;
        assertThat(new Spot(1, 2).toMm()).containsExactly(1, 2);
        assertThatThrownBy(() -> new Spot(Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Point(0, 0, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
