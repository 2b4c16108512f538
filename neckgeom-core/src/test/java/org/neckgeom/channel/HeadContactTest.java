package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.neckgeom.neck.Head;
import org.neckgeom.shop.Fence;

class HeadContactTest {

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
     * The neck drawn with JTS, its head turned on its own face so that its axis is swung in plan, then pitched, cut off where the
     * fence ends, its hull laid against the fence: the edge of the hull that passes over the cutter is the fence.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void side_ridesAsTheHullEdgeOfTheDrawnNeckOverTheCutter(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int trial = 0; trial < 50; trial++) {
            double swing = Math.toRadians(random.nextDouble(-4, 8));
            double pitch = random.nextDouble(0.1, 17);
            double headLength = random.nextDouble(100, 220);
            double shaft = random.nextDouble(50, 75);
            double nut = shaft + random.nextDouble(-5, 20);
            double tip = shaft + random.nextDouble(-5, 25);
            double shaftLength = random.nextDouble(300, 600);
            double half = random.nextBoolean() ? 1500 : random.nextDouble(150, 500);
            double x = random.nextDouble(0, shaftLength);
            double y = shaft / 2;
            double cos = Math.cos(Math.toRadians(pitch));
            double onFace = Math.atan(cos * Math.tan(swing));
            Geometry head = AffineTransformation.rotationInstance(-onFace)
                    .scale(cos, 1)
                    .transform(polygon(0, -500, 0, nut / 2, -headLength, tip / 2, -headLength, -500));
            Geometry shaftDrawn = box(0, -500, shaftLength, y);
            Geometry onFence = head.union(shaftDrawn).intersection(box(x - half, -400, x + half, 400));

            double[] side = HeadContact.side(
                    Head.angled(deg(pitch)).length(mm(headLength)).width(mm(tip)), nut, swing, y);
            Riding riding = new Riding(0, shaftLength, true, Fence.onePiece(mm(2 * half)), null, side);

            assertThat(riding.at(x))
                    .as("seed " + seed + " trial " + trial + " x " + x + " half " + half)
                    .isCloseTo(upperHullAt(onFence.convexHull(), x) - y, within(1e-6));
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
