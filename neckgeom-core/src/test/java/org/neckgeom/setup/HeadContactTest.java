package org.neckgeom.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

class HeadContactTest {

    private static final double FAR = 1e9;
    private static final GeometryFactory SHAPES = new GeometryFactory();

    private static Geometry box(double x1, double y1, double x2, double y2) {
        return SHAPES.createPolygon(new Coordinate[] {
            new Coordinate(x1, y1),
            new Coordinate(x2, y1),
            new Coordinate(x2, y2),
            new Coordinate(x1, y2),
            new Coordinate(x1, y1)
        });
    }

    /**
     * The neck drawn as polygons with JTS, its hull rolled onto the fence: the hull's edge that joins head and
     * shaft end on the fence side is the fence, and its slope is the skew.
     */
    @Test
    void tangent_isTheHullEdgeOfTheDrawnNeck() {
        double swing = Math.toRadians(3);
        double headLength = 185;
        double tip = 76;
        double shaft = 61;
        double shaftLength = 450;
        // Fence on the side of positive y; the head lies at negative x and is swung toward the fence.
        Geometry head = AffineTransformation.rotationInstance(-swing).transform(box(-headLength, -tip / 2, 0, tip / 2));
        Geometry hull = head.union(box(0, -shaft / 2, shaftLength, shaft / 2)).convexHull();
        Coordinate[] ring = hull.getCoordinates();
        Coordinate corner = ring[0];
        for (Coordinate c : ring) {
            if (c.y > corner.y) {
                corner = c;
            }
        }
        double slope = (corner.y - shaft / 2) / (shaftLength - corner.x);

        double proud = HeadContact.proud(swing, headLength, tip, shaft);
        double reach = HeadContact.cornerReach(swing, 0, headLength, tip);

        assertThat(proud).isCloseTo(corner.y - shaft / 2, within(1e-9));
        assertThat(reach).isCloseTo(-corner.x, within(1e-9));
        assertThat(HeadContact.tangent(100, proud, reach, Math.tan(swing), shaftLength, FAR))
                .isCloseTo(slope, within(1e-12));
    }

    @Test
    void shift_vanishesAtTheFarEndAndGrowsTowardTheNut() {
        assertThat(HeadContact.shift(450, 2, 180, 0.05, 450, FAR)).isZero();
        assertThat(HeadContact.shift(0, 2, 180, 0.05, 450, FAR)).isCloseTo(2 * 450 / 630.0, within(1e-12));
    }

    @Test
    void shift_fadesWhereTheFenceEndsBeforeTheCorner() {
        // 300 mm of fence each side: up to x = 120 it reaches the corner, then 1 mm of side slope takes 0.05 mm off.
        assertThat(HeadContact.shift(119, 2, 180, 0.05, 450, 300)).isCloseTo(300 * 2 / (419.0 + 180), within(1e-12));
        assertThat(HeadContact.shift(130, 2, 180, 0.05, 450, 300)).isCloseTo(300 * 1.5 / (430.0 + 170), within(1e-12));
        assertThat(HeadContact.shift(160, 2, 180, 0.05, 450, 300)).isZero();
        assertThat(HeadContact.shift(350, 2, 180, 0.05, 450, 300)).isZero();
    }

    @Test
    void shift_isNothingWhenTheHeadStaysInside() {
        assertThat(HeadContact.proud(0.001, 100, 40, 60)).isNegative();
        assertThat(HeadContact.shift(50, HeadContact.proud(0.001, 100, 40, 60), 100, 0.001, 400, FAR))
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
