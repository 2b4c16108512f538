package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

class BackSectionTest {

    private static final long SEED = 905;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    @Tag("long")
    @Test
    void woodUnder_isTheDistanceOfTheWholeFloorByJts() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int n = 0; n < 40; n++) {
            double pBass = 1 + 3 * random.nextDouble();
            double pTreble = n % 2 == 0 ? pBass : 1 + 3 * random.nextDouble();
            double a = 16 + 14 * random.nextDouble();
            double b = 13 + 8 * random.nextDouble();
            double middle = -1.5 + 3 * random.nextDouble();
            double width = 4 + 6 * random.nextDouble();
            double floor = 0.3 * b + 0.2 * b * random.nextDouble();
            BackSection section = section(pBass, pTreble, a, b);
            LineString floorLine = FACTORY.createLineString(new Coordinate[] {
                new Coordinate(middle - width / 2, floor), new Coordinate(middle + width / 2, floor)
            });

            double actual = section.woodUnder(middle, width, floor, 0);

            assertThat(actual)
                    .as(
                            "seed %d case %d: p %s/%s a %s b %s middle %s width %s floor %s",
                            SEED, n, pBass, pTreble, a, b, middle, width, floor)
                    .isCloseTo(back(pBass, pTreble, a, b).distance(floorLine), offset(5e-5));
        }
    }

    @Test
    void woodUnder_isTheSameSeenInTheMirror() {
        BackSection here = section(1.6, 2.4, 22, 16);
        BackSection mirrored = section(2.4, 1.6, 22, 16);

        assertThat(here.woodUnder(0.7, 6, 9, 0)).isEqualTo(mirrored.woodUnder(-0.7, 6, 9, 0));
    }

    @Test
    void woodUnder_isNegativeOnceTheFloorIsThrough() {
        BackSection section = section(2, 2, 20, 14);

        assertThat(section.woodUnder(0, 1e-9, 15.5, 0)).isCloseTo(-1.5, offset(1e-9));
        assertThat(section.woodUnder(0, 6, 13.95, 0)).isNegative();
    }

    @Test
    void woodUnder_aRoundFloorIsTheRoundingsCentreLessItsRadius() {
        // Half circle of radius 20 under a channel with a full round floor of radius 3: all of it concentric at y = 0.
        BackSection section = section(2, 2, 20, 20);

        assertThat(section.woodUnder(0, 6, 9, 3)).isCloseTo(20 - 6 - 3, offset(1e-12));
    }

    @Test
    void woodUnder_aFlatBackIsTheSameOverTheWholeWidth() {
        // A nearly flat back: straight down under the middle and under the corner are alike (common practice).
        BackSection flat = section(30, 30, 25, 15);
        BackSection pointed = section(1.2, 1.2, 25, 15);

        assertThat(flat.woodUnder(0, 6, 9, 0)).isCloseTo(6, offset(1e-9));
        assertThat(pointed.woodUnder(0, 6, 9, 0)).isLessThan(5);
    }

    @Test
    void distance_mayBeShortestAcrossTheMiddle() {
        BackSection section = section(1, 8, 20, 15);
        double expected = back(1, 8, 20, 15).distance(FACTORY.createPoint(new Coordinate(0.5, 6)));

        assertThat(section.distance(0.5, 6)).isCloseTo(expected, offset(5e-5));
        // Its own side alone is much further away.
        assertThat(new SuperellipseArc(8).distance(0.5, 6, 20, 15)).isGreaterThan(expected + 1);
        assertThat(section.isNearestOnTreble(0.5, 6)).isFalse();
    }

    @Test
    void isNearestOnTreble_isTheSideOfTheShortestWayOut() {
        BackSection section = section(2, 2, 20, 20);

        assertThat(section.isNearestOnTreble(3, 9)).isTrue();
        assertThat(section.isNearestOnTreble(-3, 9)).isFalse();
    }

    private static BackSection section(double pBass, double pTreble, double a, double b) {
        SuperellipseArc bass = new SuperellipseArc(pBass);
        return BackSection.ofShaft(bass, pBass == pTreble ? bass : new SuperellipseArc(pTreble), a, b);
    }

    private static LineString back(double pBass, double pTreble, double a, double b) {
        int n = 20000;
        Coordinate[] points = new Coordinate[2 * n + 1];
        for (int i = -n; i <= n; i++) {
            double t = Math.PI / 2 * Math.abs(i) / n;
            double p = i < 0 ? pBass : pTreble;
            double half = i < 0 ? -a : a;
            points[i + n] = new Coordinate(half * Math.pow(Math.sin(t), 2 / p), b * Math.pow(Math.cos(t), 2 / p));
        }
        return FACTORY.createLineString(points);
    }
}
