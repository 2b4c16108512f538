package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.neckgeom.kernel.Table;

class SuperellipseArcTest {

    private static final long SEED = 7041;

    @Test
    void distance_agreesWithSupportLinesAtSixtyDigits() {
        // Source: superellipse-distance.csv, computed by support lines, see its script.
        for (String[] row : Table.rows("solid/superellipse-distance.csv")) {
            double p = Double.parseDouble(row[0]);
            double a = Double.parseDouble(row[1]);
            double b = Double.parseDouble(row[2]);
            double u = Double.parseDouble(row[3]);
            double v = Double.parseDouble(row[4]);
            double expected = Double.parseDouble(row[5]);

            double actual = new SuperellipseArc(p).distance(u, v, a, b);

            assertThat(Math.abs(actual - expected) / Math.max(a, b))
                    .as("p %s a %s b %s u %s v %s: %s for %s", p, a, b, u, v, actual, expected)
                    .isLessThan(SuperellipseArc.ACCURACY);
        }
    }

    @Test
    void distance_isNeverLongerThanToAnyOfManyPointsByJts() {
        // JTS measures from the point to a polyline through 20,000 points of the curve.
        SplittableRandom random = new SplittableRandom(SEED);
        GeometryFactory factory = new GeometryFactory();
        for (int n = 0; n < 25; n++) {
            double p = 1 + 5 * random.nextDouble();
            double a = 14 + 20 * random.nextDouble();
            double b = 10 + 18 * random.nextDouble();
            double u = 0.7 * a * random.nextDouble();
            double v = b * random.nextDouble();
            Coordinate[] points = new Coordinate[20001];
            for (int i = 0; i < points.length; i++) {
                double t = Math.PI / 2 * i / (points.length - 1);
                points[i] =
                        new Coordinate(a * Math.pow(Math.cos(t), 2 / p) + 0.0, b * Math.pow(Math.sin(t), 2 / p) + 0.0);
            }
            LineString curve = factory.createLineString(points);
            Point point = factory.createPoint(new Coordinate(u, v));

            double actual = new SuperellipseArc(p).distance(u, v, a, b);

            assertThat(Math.abs(actual))
                    .as("seed %d case %d: p %s a %s b %s u %s v %s", SEED, n, p, a, b, u, v)
                    .isCloseTo(curve.distance(point), org.assertj.core.data.Offset.offset(2e-5));
        }
    }

    @Test
    void support_isTouchedByTheCurveAndNeverPassed() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int n = 0; n < 50; n++) {
            double p = 1.05 + 6 * random.nextDouble();
            double a = 14 + 20 * random.nextDouble();
            double b = 10 + 18 * random.nextDouble();
            double phi = Math.PI / 2 * random.nextDouble();
            SuperellipseArc arc = new SuperellipseArc(p);
            double greatest = 0;
            for (int i = 0; i <= 4000; i++) {
                double y = a * i / 4000;
                greatest = Math.max(greatest, y * Math.cos(phi) + arc.depthAt(y, a, b) * Math.sin(phi));
            }
            for (int i = 0; i <= 4000; i++) {
                double z = b * i / 4000;
                greatest = Math.max(greatest, arc.halfWidthAt(z, a, b) * Math.cos(phi) + z * Math.sin(phi));
            }

            double support = arc.support(phi, a, b);

            assertThat(support - greatest)
                    .as("seed %d case %d: p %s a %s b %s phi %s", SEED, n, p, a, b, phi)
                    .isBetween(-1e-10, 1e-4);
        }
    }

    @Test
    void distance_ofAHalfCircleIsRadiusLessDistanceFromItsCentre() {
        SuperellipseArc arc = new SuperellipseArc(2);

        assertThat(arc.distance(3, 9.2, 20, 20))
                .isCloseTo(20 - Math.hypot(3, 9.2), org.assertj.core.data.Offset.offset(1e-13));
        assertThat(arc.distance(0, 22, 20, 20)).isCloseTo(-2, org.assertj.core.data.Offset.offset(1e-13));
    }

    /** From any point the distance along the normal ends on the curve, and the curve is square to it there. */
    @Test
    void distance_fallsStraightTowardTheCurve() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int n = 0; n < 400; n++) {
            double p = 1.3 + 3 * random.nextDouble();
            double a = 14 + 20 * random.nextDouble();
            double b = 10 + 18 * random.nextDouble();
            double u = 1.2 * a * random.nextDouble();
            double v = 1.2 * b * random.nextDouble();
            SuperellipseArc arc = new SuperellipseArc(p);

            double distance = arc.distance(u, v, a, b);
            double h = 1e-5;
            double phi = Math.atan2(
                    arc.distance(u, v - h, a, b) - arc.distance(u, v + h, a, b),
                    arc.distance(u - h, v, a, b) - arc.distance(u + h, v, a, b));

            double y = (u + distance * Math.cos(phi)) / a;
            double z = (v + distance * Math.sin(phi)) / b;
            String what = "seed %d case %d: p %s a %s b %s u %s v %s".formatted(SEED, n, p, a, b, u, v);
            assertThat(distance > 0).as(what).isEqualTo(Math.pow(u / a, p) + Math.pow(v / b, p) < 1);
            assertThat(Math.pow(Math.abs(y), p) + Math.pow(Math.abs(z), p))
                    .as(what)
                    .isCloseTo(1, offset(1e-8));
            // Near its ends the curve turns faster than these digits follow.
            if (y > 0.05 && z > 0.05) {
                double square = Math.atan2(Math.pow(z, p - 1) / b, Math.pow(y, p - 1) / a);
                assertThat(phi).as(what).isCloseTo(square, offset(1e-6));
            }
        }
    }

    @Test
    void distance_fromTheCurveItselfAndItsEndsIsNone() {
        SuperellipseArc arc = new SuperellipseArc(2.5);

        assertThat(arc.distance(20, 0, 20, 15)).isCloseTo(0, offset(1e-12));
        assertThat(arc.distance(0, 15, 20, 15)).isCloseTo(0, offset(1e-12));
        assertThat(arc.distance(0, 16, 20, 15)).isCloseTo(-1, offset(1e-12));
        assertThat(arc.distance(21, 0, 20, 15)).isCloseTo(-1, offset(1e-12));
        assertThat(arc.halfWidthAt(15, 20, 15)).isZero();
        assertThat(arc.depthAt(20, 20, 15)).isZero();
        assertThat(arc.exponent()).isEqualTo(2.5);
        assertThat(new SuperellipseArc(1).support(0.3, 20, 15)).isCloseTo(20 * Math.cos(0.3), offset(1e-12));
        assertThat(new SuperellipseArc(1).support(1.5, 20, 15)).isCloseTo(15 * Math.sin(1.5), offset(1e-12));
    }
}
