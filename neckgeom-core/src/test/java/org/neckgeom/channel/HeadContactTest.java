package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

class HeadContactTest {

    private static final double FAR = 1e9;
    private static final GeometryFactory SHAPES = new GeometryFactory();

    private static Geometry polygon(double... xy) {
        Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < xy.length; i += 2) {
            ring[i / 2] = new Coordinate(xy[i], xy[i + 1]);
        }
        ring[ring.length - 1] = ring[0];
        return SHAPES.createPolygon(ring);
    }

    private static Geometry box(double x1, double y1, double x2, double y2) {
        return polygon(x1, y1, x2, y1, x2, y2, x1, y2);
    }

    /**
     * The neck drawn with JTS, cut off where the fence ends, its hull laid against the fence: the edge of the hull that
     * passes over the cutter is the fence.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void shift_isTheHullEdgeOfTheDrawnNeckOverTheCutter(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 50; trial++) {
            double swing = Math.toRadians(random.nextDouble(0, 8));
            double headLength = random.nextDouble(100, 220);
            double shaft = random.nextDouble(50, 75);
            double tip = shaft + random.nextDouble(-5, 25);
            double shaftLength = random.nextDouble(300, 600);
            double half = random.nextBoolean() ? FAR : random.nextDouble(150, 500);
            double x = random.nextDouble(0, shaftLength);
            double y = shaft / 2;
            double cornerX = -headLength * Math.cos(swing) + tip / 2 * Math.sin(swing);
            double cornerY = headLength * Math.sin(swing) + tip / 2 * Math.cos(swing);
            if (cornerY <= y) {
                continue;
            }
            Geometry neck = polygon(0, -y, shaftLength, -y, shaftLength, y, 0, y, cornerX, cornerY, cornerX, -y);
            Geometry onFence = neck.intersection(box(x - half, -1000, x + half, 1000));

            double proud = HeadContact.proud(swing, headLength, tip, shaft);
            double reach = HeadContact.cornerReach(swing, headLength, tip);

            assertThat(HeadContact.shift(x, proud, reach, shaftLength, half))
                    .as("seed " + seed + " trial " + trial + " x " + x + " half " + half)
                    .isCloseTo(upperHullAt(onFence.convexHull(), x) - y, within(1e-9));
        }
    }

    private static double upperHullAt(Geometry hull, double x) {
        double top = Double.NEGATIVE_INFINITY;
        Coordinate[] ring = hull.getCoordinates();
        for (int i = 0; i + 1 < ring.length; i++) {
            Coordinate p = ring[i];
            Coordinate q = ring[i + 1];
            if (p.x != q.x && x >= Math.min(p.x, q.x) && x <= Math.max(p.x, q.x)) {
                top = Math.max(top, p.y + (q.y - p.y) * (x - p.x) / (q.x - p.x));
            }
        }
        return top;
    }

    @Test
    void shift_vanishesAtTheFarEndAndGrowsTowardTheNut() {
        assertThat(HeadContact.shift(450, 2, 180, 450, FAR)).isZero();
        assertThat(HeadContact.shift(0, 2, 180, 450, FAR)).isCloseTo(2 * 450 / 630.0, within(1e-12));
    }

    @Test
    void shift_fadesWhereTheFenceEndsBeforeTheCorner() {
        assertThat(HeadContact.shift(119, 2, 180, 450, 300)).isCloseTo(300 * 2 / (419.0 + 180), within(1e-12));
        assertThat(HeadContact.shift(210, 2, 180, 450, 300)).isCloseTo(240 * 1.0 / (450.0 + 90), within(1e-12));
        assertThat(HeadContact.shift(300, 2, 180, 450, 300)).isZero();
        assertThat(HeadContact.shift(350, 2, 180, 450, 300)).isZero();
    }

    @Test
    void shift_isNothingWhenTheHeadStaysInside() {
        assertThat(HeadContact.proud(0.001, 100, 40, 60)).isNegative();
        assertThat(HeadContact.shift(50, HeadContact.proud(0.001, 100, 40, 60), 100, 400, FAR))
                .isZero();
    }

    /** A veneer drawn as a box on the pitched face: its highest corner and where it lies. */
    @Test
    void veneer_isTheHighestCornerOfTheDrawnSlip() {
        double pitch = Math.toRadians(13);
        Geometry slip =
                AffineTransformation.rotationInstance(pitch).transform(box(-150, 0, -3, 2)); // face along -x, z up
        Coordinate highest = slip.getCoordinates()[0];
        for (Coordinate c : slip.getCoordinates()) {
            if (c.y > highest.y) {
                highest = c;
            }
        }

        assertThat(HeadContact.veneerHeight(2, pitch, 3)).isCloseTo(highest.y, within(1e-12));
        assertThat(HeadContact.veneerReach(2, pitch, 3)).isCloseTo(-highest.x, within(1e-12));
    }

    @Test
    void shallow_isTheWholeHeightAtTheEdgeAndNothingAtTheFarContact() {
        assertThat(HeadContact.shallow(-3.4, 1.2, 3.4, 500)).isCloseTo(1.2, within(1e-12));
        assertThat(HeadContact.shallow(500, 1.2, 3.4, 500)).isZero();
        assertThat(HeadContact.shallow(248.3, 1.2, 3.4, 500)).isCloseTo(0.6, within(1e-12));
    }

    @Test
    void veneerHeight_isNothingWhenItStopsWellShort() {
        assertThat(HeadContact.veneerHeight(2, Math.toRadians(13), 9)).isZero();
    }
}
