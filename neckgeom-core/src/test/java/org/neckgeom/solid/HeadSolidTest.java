package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.OutlinePoint;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;

/** A head in space against vectors turned by Rodrigues' formula, and its outline against areas by hand. */
class HeadSolidTest {

    private static final Head HEAD = Head.angled(deg(13))
            .length(mm(185))
            .width(mm(76))
            .thickness(mm(14))
            .veneer(mm(2), mm(0))
            .backVeneer(mm(0.6));

    /** The outline's corners placed in space by an axis whose shadow in plan is swung. */
    @Test
    void reach_isTheFarthestCornerOfAHeadSwungInPlan() {
        long seed = 20261130;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 1000; i++) {
            double pitch = Math.toRadians(random.nextDouble(0, 20));
            double slant = Math.toRadians(random.nextDouble(-25, 25));
            double swing = Math.toRadians(random.nextDouble(-30, 30));
            // Wide at the tip: its corners are the farthest, and no nut line cuts them.
            double atBreak = random.nextDouble(40, 60);
            double atTip = random.nextDouble(80, 90);
            Vec line = new Vec(Math.tan(slant), 1, 0).unit();
            Vec straight = new Vec(-Math.cos(pitch), 0, -Math.sin(pitch));
            Vec up = line.cross(straight).unit();
            up = up.z() < 0 ? up.times(-1) : up;
            Vec treble = straight.cross(up).unit();
            treble = treble.y() < 0 ? treble.times(-1) : treble;
            // The swung axis over its shadow in plan: the height at which it lies in the face.
            Vec shadow = new Vec(-Math.cos(swing), Math.sin(swing), 0);
            Vec axis = new Vec(shadow.x(), shadow.y(), -shadow.dot(up) / up.z()).unit();
            Vec aside = axis.cross(up).unit();
            aside = aside.dot(treble) < 0 ? aside.times(-1) : aside;
            double reach = -Double.MAX_VALUE;
            double across = 0;
            for (double side : new double[] {-1, 1}) {
                Vec corner = aside.times(side * atBreak / 2);
                Vec tip = axis.times(185).plus(aside.times(side * atTip / 2));
                reach = Math.max(reach, Math.max(corner.dot(straight), tip.dot(straight)));
                across = Math.max(across, 2 * Math.max(Math.abs(corner.dot(treble)), Math.abs(tip.dot(treble))));
            }

            HeadSolid head = HeadSolid.of(
                    Head.angled(deg(Math.toDegrees(pitch)))
                            .length(mm(185))
                            .tapered(mm(atBreak), mm(atTip))
                            .swung(deg(Math.toDegrees(swing))),
                    deg(Math.toDegrees(slant)));

            String where = "seed " + seed + ", head " + i;
            assertThat(head.reach().libraryValue()).as(where).isCloseTo(reach, offset(1e-9));
            assertThat(head.across().libraryValue()).as(where).isCloseTo(across, offset(1e-9));
            double inFace = Math.asin(line.dot(straight.times(-1)));
            Spot own = head.neckAxis();
            assertThat(Math.atan(head.nutLine()))
                    .as(where)
                    .isCloseTo(inFace - Math.atan2(-own.vMm(), own.uMm()), offset(1e-9));
        }
    }

    @Test
    void reach_ofAStraightHeadIsItsLength() {
        HeadSolid head = HeadSolid.of(HEAD.tapered(mm(60), mm(78.5)));

        assertThat(head.reach().libraryValue()).isCloseTo(185, offset(1e-12));
        assertThat(head.across().libraryValue()).isCloseTo(78.5, offset(1e-12));
        assertThat(head.nutLine()).isZero();
    }

    /** The post on the flat head, then pitched about the nut line; a swing measured in plan turns its shadow. */
    @Test
    void at_isAPointOfTheTurnedHead() {
        double swing = Math.toRadians(4);
        double pitch = Math.toRadians(13);
        Point at = HeadSolid.of(HEAD.swung(deg(4))).at(new Spot(-90, -22), 8);
        // tan psi = cos a tan g, derived by hand: the axis' shadow is swung by g.
        double psi = Math.atan(Math.cos(pitch) * Math.tan(swing));
        Vec place = new Vec(-90, -22, 8).turned(Vec.Z, -psi).turned(Vec.Y, -pitch);

        assertThat(at.xMm()).isCloseTo(place.x(), offset(1e-12));
        assertThat(at.yMm()).isCloseTo(place.y(), offset(1e-12));
        assertThat(at.zMm()).isCloseTo(place.z(), offset(1e-12));
    }

    /** By hand: two trapezoids, 30 (44 + 60) / 2 and 155 (60 + 70) / 2; past 50 mm of stock what is wider on each side. */
    @Test
    void outline_isStraightFromPlaceToPlace() {
        HeadSolid head = HeadSolid.of(HEAD.outline(
                OutlinePoint.at(mm(0), mm(22)),
                OutlinePoint.at(mm(30), mm(30)),
                OutlinePoint.at(mm(185), mm(30)).treble(mm(40))));

        assertThat(head.outline().areaMm2()).isCloseTo(30 * 104 / 2.0 + 155 * 130 / 2.0, offset(1e-9));
        // Half width 25 at 11.25 mm along; bass: 18.75 x 5 / 2 + 155 x 5; treble: 18.75 x 5 / 2 + 155 (5 + 15) / 2.
        assertThat(head.wings(mm(50)).stream().mapToDouble(Polyline::areaMm2).toArray())
                .containsExactly(new double[] {46.875 + 775, 46.875 + 1550}, offset(1e-9));
        assertThat(head.wings(mm(90))).isEmpty();
        assertThat(head.outlineFrom(mm(30)).orElseThrow().areaMm2()).isCloseTo(155 * 130 / 2.0, offset(1e-9));
    }
}
