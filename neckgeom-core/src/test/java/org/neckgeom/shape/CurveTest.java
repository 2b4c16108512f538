package org.neckgeom.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The depth of a neck as a curve: slopes against differences, extremes against dense samples, pieces against their own formulas. */
class CurveTest {

    /** A neck's depth: plain slope, a volute before and after the nut, a turn into the heel, level at the cap. */
    private record Depth(
            Curve curve, double at, double value, double slope, double rise, double reach, double turn, double radius) {

        static Depth random(SplittableRandom random) {
            double at = random.nextDouble(20, 40);
            double value = random.nextDouble(10, 22);
            double slope = random.nextDouble(-0.01, 0.02);
            double rise = random.nextDouble(0.5, 6);
            double reach = random.nextDouble(15, 60);
            double turn = random.nextDouble(220, 330);
            double radius = random.nextDouble(15, 60);
            double steep = random.nextDouble(0.5, 1.4);
            Curve curve =
                    Curve.straight(at, value, slope).raised(rise, 0, reach).turned(turn, radius, steep);
            return new Depth(curve, at, value, slope, rise, reach, turn, radius);
        }

        /** Written again from the volute's cosine and the turn's circle, up to the end of the turn. */
        double byHand(double x) {
            double plain = value + slope * (x - at);
            if (Math.abs(x) < reach) {
                plain += rise * (1 + Math.cos(Math.PI * x / reach)) / 2;
            }
            if (x <= turn) {
                return plain;
            }
            double first = Math.atan(slope);
            double centre = turn - radius * Math.sin(first);
            double level = value + slope * (turn - at) + radius * Math.cos(first);
            return level - Math.sqrt(radius * radius - (x - centre) * (x - centre));
        }
    }

    @Test
    void value_isThatOfItsFormula() {
        SplittableRandom random = new SplittableRandom(41);
        for (int i = 0; i < 200; i++) {
            Depth depth = Depth.random(random);
            double[] knots = depth.curve.knots();
            double end = knots[knots.length - 1];

            assertThat(knots).hasSize(4).isSorted();
            for (int k = 0; k < 50; k++) {
                double x = random.nextDouble(-100, end);
                assertThat(depth.curve.valueAt(x)).isCloseTo(depth.byHand(x), within(1e-10));
            }
        }
    }

    @Test
    void slopeAndCurvature_areThoseOfDifferences() {
        SplittableRandom random = new SplittableRandom(42);
        for (int i = 0; i < 200; i++) {
            Curve curve = Depth.random(random).curve;
            double x = random.nextDouble(-100, 420);
            double step = 1e-4;
            if (Arrays.stream(curve.knots()).anyMatch(knot -> Math.abs(knot - x) <= 2 * step)) {
                continue;
            }
            double slope = (curve.valueAt(x + step) - curve.valueAt(x - step)) / (2 * step);
            double bend = (curve.slopeAt(x + step) - curve.slopeAt(x - step)) / (2 * step);

            assertThat(curve.slopeAt(x)).isCloseTo(slope, within(1e-6 * (1 + Math.abs(slope))));
            assertThat(curve.curvatureAt(x)).isCloseTo(bend / Math.pow(1 + slope * slope, 1.5), within(1e-6));
        }
    }

    @Test
    void turned_isTangentAtBothEndsAndBendsByItsRadius() {
        SplittableRandom random = new SplittableRandom(43);
        for (int i = 0; i < 200; i++) {
            Depth depth = Depth.random(random);
            double[] knots = depth.curve.knots();
            for (double knot : Arrays.copyOfRange(knots, 2, 4)) {
                double hair = 1e-9;
                assertThat(depth.curve.valueAt(knot - hair)).isCloseTo(depth.curve.valueAt(knot), within(1e-7));
                assertThat(depth.curve.slopeAt(knot - hair)).isCloseTo(depth.curve.slopeAt(knot), within(1e-6));
            }
            assertThat(depth.curve.curvatureAt((knots[2] + knots[3]) / 2)).isCloseTo(1 / depth.radius, within(1e-12));
            assertThat(depth.curve.curvatureAt(knots[3] + 1)).isEqualTo(0);
        }
        assertThatThrownBy(() -> Curve.straight(0, 15, 0.1).turned(100, 30, 0.05))
                .hasMessageStartingWith("turn of a curve must have a radius of more than 0 mm and end between");
        assertThatThrownBy(() -> Curve.straight(0, 15, 0).turned(100, 30, Math.PI / 2))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void greatestAndLeast_areNoWorseThanDenseSamples() {
        SplittableRandom random = new SplittableRandom(44);
        for (int i = 0; i < 300; i++) {
            Curve curve = Depth.random(random).curve;
            double from = random.nextDouble(-100, 300);
            double to = from + random.nextDouble(0, 200);
            double high = curve.valueAt(from);
            double low = high;
            double steepest = 0;
            double bent = 0;
            for (int k = 0; k <= 4000; k++) {
                double x = from + (to - from) * k / 4000;
                high = Math.max(high, curve.valueAt(x));
                low = Math.min(low, curve.valueAt(x));
                double slope = curve.slopeAt(x);
                steepest = Math.max(steepest, Math.abs(slope));
                bent = Math.max(bent, Math.abs(curve.curvatureAt(x)) * Math.pow(1 + slope * slope, 1.5));
            }
            double greatest = curve.greatestIn(from, to);
            double least = curve.leastIn(from, to);
            double[] bounds = curve.boundsIn(from, to);

            assertThat(greatest).isBetween(from, to);
            assertThat(least).isBetween(from, to);
            assertThat(curve.valueAt(greatest)).isGreaterThanOrEqualTo(high - 1e-12);
            assertThat(curve.valueAt(least)).isLessThanOrEqualTo(low + 1e-12);
            assertThat(bounds[0]).isGreaterThanOrEqualTo(steepest - 1e-12);
            assertThat(bounds[1]).isGreaterThanOrEqualTo(bent - 1e-12);
            // Bounds that are no bounds of anything would pass too: they are reached but for the samples' step.
            assertThat(bounds[0]).isLessThanOrEqualTo(steepest * 1.02 + bent * (to - from) / 4000 + 1e-9);
        }
    }

    /** By hand: a volute on a slope k is level at (l/pi) asin(2 l k / (pi e)), and nowhere once 2 l k is more than pi e. */
    @Test
    void greatest_ofAVoluteIsWhereTheFormulaPutsIt() {
        double k = 0.008;
        double e = 3;
        double l = 38;
        Curve curve = Curve.straight(0, 16, k).raised(e, 0, l);

        assertThat(curve.greatestIn(-l, l / 2))
                .isCloseTo(l / Math.PI * Math.asin(2 * l * k / (Math.PI * e)), within(1e-12));
        double steep = 1.01 * Math.PI * e / (2 * l);
        assertThat(Curve.straight(0, 16, steep).raised(e, 0, l).greatestIn(-l, l))
                .isEqualTo(l);
    }

    @Test
    void least_isTheLesserOfBothAtEachPlace() {
        SplittableRandom random = new SplittableRandom(45);
        int crossed = 0;
        for (int i = 0; i < 200; i++) {
            Curve curve = Depth.random(random).curve;
            double from = -90;
            double to = random.nextDouble(60, 380);
            Curve other =
                    Curve.straight(random.nextDouble(-60, 60), random.nextDouble(8, 30), random.nextDouble(-0.6, 0.6));
            Curve least = curve.least(other, from, to);
            boolean above = false;
            boolean below = false;
            for (int k = 1; k < 500; k++) {
                double x = from + (to - from) * k / 500;
                double a = curve.valueAt(x);
                double b = other.valueAt(x);
                above |= a > b;
                below |= a < b;
                assertThat(least.valueAt(x)).isCloseTo(Math.min(a, b), within(1e-9));
            }
            crossed += above && below ? 1 : 0;
            for (double knot : least.knotsIn(from, to)) {
                boolean own = Arrays.stream(curve.knots()).anyMatch(x -> Math.abs(x - knot) < 1e-9);
                assertThat(own || Math.abs(curve.valueAt(knot) - other.valueAt(knot)) < 1e-9)
                        .as("knot %s", knot)
                        .isTrue();
            }
        }
        assertThat(crossed).isGreaterThan(50);
    }

    @Test
    void plus_addsCorrectionsStraightBetweenStations() {
        SplittableRandom random = new SplittableRandom(46);
        for (int i = 0; i < 100; i++) {
            Curve curve = Depth.random(random).curve;
            double[] stations =
                    random.doubles(1 + random.nextInt(5), 0, 300).sorted().toArray();
            double[] more = random.doubles(stations.length, -0.5, 0.5).toArray();
            Curve read = curve.plus(stations, more);
            for (int k = 0; k < 50; k++) {
                double x = random.nextDouble(-50, 350);
                assertThat(read.valueAt(x)).isCloseTo(curve.valueAt(x) + between(stations, more, x), within(1e-9));
            }
            assertThat(read.valueAt(read.greatestIn(-50, 350)))
                    .isGreaterThanOrEqualTo(read.valueAt(random.nextDouble(-50, 350)));
        }
        Curve plain = Curve.straight(0, 15, 0);
        assertThatThrownBy(() -> plain.plus(new double[] {10, 10}, new double[] {1, 2}))
                .hasMessageStartingWith("stations must be one or more in ascending order, each with its correction");
        assertThatThrownBy(() -> plain.plus(new double[] {10}, new double[] {1, 2}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> plain.plus(new double[0], new double[0])).isInstanceOf(IllegalArgumentException.class);
    }

    private static double between(double[] stations, double[] more, double x) {
        if (x <= stations[0]) {
            return more[0];
        }
        for (int i = 1; i < stations.length; i++) {
            if (x <= stations[i]) {
                return more[i - 1] + (more[i] - more[i - 1]) * (x - stations[i - 1]) / (stations[i] - stations[i - 1]);
            }
        }
        return more[more.length - 1];
    }

    /** A cosine that has run out and a tangent arc leave no corner; a level cap and a straight correction do. */
    @Test
    void corners_areTheKnotsAtWhichTheSlopeJumps() {
        Curve smooth =
                Curve.straight(0, 15, 0.01).turned(300, 22, Math.toRadians(70)).raised(3, 0, 35);
        assertThat(smooth.knots()).hasSize(4);
        assertThat(smooth.corners()).isEmpty();

        assertThat(smooth.levelFrom(340).corners()).containsExactly(340);
        assertThat(smooth.plus(new double[] {100, 200}, new double[] {0, 0.4}).corners())
                .containsExactly(100, 200);
    }

    @Test
    void levelFromAndRisesTo_holdTheValue() {
        SplittableRandom random = new SplittableRandom(47);
        for (int i = 0; i < 100; i++) {
            Curve curve = Depth.random(random).curve;
            double turn = curve.knots()[2];
            double wanted = curve.valueAt(turn) + random.nextDouble(1, 60);
            double x = curve.risesTo(wanted, turn + 5, turn + 500);
            Curve cap = curve.levelFrom(x);

            assertThat(curve.valueAt(x)).isCloseTo(wanted, within(1e-9));
            assertThat(cap.valueAt(x + 30)).isEqualTo(curve.valueAt(x));
            assertThat(cap.slopeAt(x + 30)).isEqualTo(0);
            assertThat(cap.valueAt(x - 3)).isEqualTo(curve.valueAt(x - 3));
        }
        assertThatThrownBy(() -> Curve.straight(0, 15, 0).risesTo(16, 0, 400))
                .hasMessageContaining("the curve does not reach 16 mm there");
    }

    @Test
    void raised_refusesWhereTheCurveIsNotStraight() {
        Curve once = Curve.straight(0, 15, 0.01).raised(3, 0, 30);

        assertThatThrownBy(() -> once.raised(2, 10, 30))
                .hasMessage("cosine of a curve must be added where the curve is straight, but is curve of 3 pieces");
        assertThat(once.raised(2, 100, 30).valueAt(100)).isCloseTo(18, within(1e-12));
        assertThatThrownBy(() -> once.raised(2, 100, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void equals_isByPieces() {
        Curve one = Curve.straight(0, 15, 0.01).raised(3, 0, 30);
        Curve same = Curve.straight(0, 15, 0.01).raised(3, 0, 30);

        assertThat(one).isEqualTo(same).hasSameHashCodeAs(same).hasToString("curve of 3 pieces");
        assertThat(one).isNotEqualTo(Curve.straight(0, 15, 0.01));
    }
}
