package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.kernel.Vec;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.TunerPost;

class HeadLayoutTest {

    private static final Head HEAD = Head.angled(deg(13))
            .length(mm(185))
            .width(mm(76))
            .thickness(mm(14))
            .veneer(mm(2), mm(0))
            .backVeneer(mm(0.6));
    private static final StringPlaces NUT =
            StringSpacing.diameters(mm(1), mm(1), mm(1), mm(1)).across(mm(28)).equalCentres();

    @Test
    void breaks_isEachStringAtItsOwnPost() {
        HeadLayout head = HeadLayout.of(HEAD.posts(
                TunerPost.at(mm(60)).aside(mm(-25)).above(mm(8)),
                TunerPost.at(mm(100)).aside(mm(-24)).above(mm(8)),
                TunerPost.at(mm(100)).aside(mm(24)).above(mm(8)),
                TunerPost.at(mm(60)).aside(mm(25)).above(mm(8))));

        List<BreakAngle> breaks = head.breaks(NUT, mm(7.5));

        assertThat(breaks).hasSize(4);
        BreakAngle first = BreakAngle.over(deg(13), mm(7.5)).post(mm(60), mm(8)).sideways(mm(-25 + 13.5));
        assertThat(breaks.get(0).angle()).isEqualTo(first.angle());
        assertThat(breaks.get(0).side().libraryValue())
                .isEqualTo(-breaks.get(3).side().libraryValue());
        assertThat(breaks.get(1).angle().libraryValue())
                .isEqualTo(breaks.get(2).angle().libraryValue());
        assertThat(breaks.get(0).angle().libraryValue())
                .isNotEqualTo(breaks.get(1).angle().libraryValue());
        double sum = 0;
        for (BreakAngle one : breaks) {
            sum += 95 * Math.sin(one.angle().libraryValue());
        }
        NutForces forces = head.nutForces(NUT, mm(7.5), newton(95));
        assertThat(forces.total().libraryValue()).isCloseTo(sum, offset(1e-12));
        assertThat(forces.each().get(2)).isEqualTo(breaks.get(2).nutForce(newton(95)));
        assertThat(head.nutForces(NUT, mm(7.5), newton(95), newton(0), newton(0), newton(0))
                        .total())
                .isEqualTo(breaks.get(0).nutForce(newton(95)));
        assertThat(forces.toString()).startsWith("Strings on the nut: ");
    }

    @Test
    void breaks_ofASwungHeadCarryItsPostsWithIt() {
        TunerPost post = TunerPost.at(mm(90)).aside(mm(-22)).above(mm(8));
        StringPlaces one = StringPlaces.of(List.of(mm(-3)), List.of(mm(0.5)));
        double swing = Math.toRadians(4);
        // By vectors: the post on the flat head, swung to the treble side, then pitched; the slot 7.5 above the origin.
        Vec place = new Vec(-90, -22, 8).turned(Vec.Z, -swing).turned(Vec.Y, -Math.toRadians(13));
        Vec toPost = place.minus(new Vec(0, -3, 7.5));

        BreakAngle string = HeadLayout.of(HEAD.swung(deg(4)).posts(post))
                .breaks(one, mm(7.5))
                .get(0);

        assertThat(string.angle().libraryValue())
                .isCloseTo(-Math.asin(toPost.unit().z()), offset(1e-12));
        assertThat(string.side().libraryValue()).isCloseTo(Math.atan2(toPost.y(), -toPost.x()), offset(1e-12));
    }

    /** The face as a plane through the slanted line, turned about it until the centreline falls by the pitch. */
    @Test
    void breaks_overASlantedNut_runFromTheLineToAPostOnTheTurnedFace() {
        long seed = 20261127;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 1000; i++) {
            double pitch = Math.toRadians(random.nextDouble(3, 20));
            double slant = Math.toRadians(random.nextDouble(-12, 12));
            double along = random.nextDouble(20, 170);
            double aside = random.nextDouble(-30, 30);
            double above = random.nextDouble(0, 10);
            double y = random.nextDouble(-20, 20);
            Vec line = new Vec(Math.tan(slant), 1, 0).unit();
            // Turned about the line by the angle between the faces, tan = tan(pitch) / cos(slant).
            double turn = Math.atan(Math.tan(pitch) / Math.cos(slant));
            Vec up = Vec.Z.turned(line, -turn);
            Vec axis = new Vec(-Math.cos(pitch), 0, -Math.sin(pitch));
            assertThat(axis.dot(up)).as("the axis lies in the face").isCloseTo(0, offset(1e-12));
            Vec across = up.cross(axis).times(-1);
            Vec post = axis.times(along).plus(across.times(aside)).plus(up.times(above));
            Vec toPost = post.minus(new Vec(Math.tan(slant) * y, y, 7.5));

            BreakAngle string = HeadLayout.of(Head.angled(deg(Math.toDegrees(pitch)))
                            .length(mm(185))
                            .posts(TunerPost.at(mm(along)).aside(mm(aside)).above(mm(above))))
                    .nutSlanted(deg(Math.toDegrees(slant)))
                    .breaks(StringPlaces.of(List.of(mm(y)), List.of(mm(0.5))), mm(7.5))
                    .get(0);

            String where = "seed " + seed + ", string " + i;
            assertThat(string.angle().libraryValue())
                    .as(where)
                    .isCloseTo(-Math.asin(toPost.unit().z()), offset(1e-10));
            assertThat(string.side().libraryValue())
                    .as(where)
                    .isCloseTo(Math.atan2(toPost.y(), -toPost.x()), offset(1e-10));
        }
    }

    /** The outline's corners placed in space by an axis whose shadow in plan is swung. */
    @Test
    void reach_isTheFarthestCornerOfAHeadSwungInPlan() {
        long seed = 20261130;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 1000; i++) {
            double pitch = Math.toRadians(random.nextDouble(0, 20));
            double slant = Math.toRadians(random.nextDouble(-25, 25));
            double swing = Math.toRadians(random.nextDouble(-30, 30));
            double atBreak = random.nextDouble(40, 90);
            double atTip = random.nextDouble(40, 90);
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

            HeadLayout head = HeadLayout.of(Head.angled(deg(Math.toDegrees(pitch)))
                            .length(mm(185))
                            .tapered(mm(atBreak), mm(atTip))
                            .swung(deg(Math.toDegrees(swing))))
                    .nutSlanted(deg(Math.toDegrees(slant)));

            String where = "seed " + seed + ", head " + i;
            assertThat(head.reach().libraryValue()).as(where).isCloseTo(reach, offset(1e-9));
            assertThat(head.across().libraryValue()).as(where).isCloseTo(across, offset(1e-9));
            assertThat(head.nutLine().libraryValue())
                    .as(where)
                    .isCloseTo(Math.asin(line.dot(straight.times(-1))), offset(1e-12));
        }
    }

    @Test
    void reach_ofAStraightHeadIsItsLength() {
        HeadLayout head = HeadLayout.of(HEAD.tapered(mm(60), mm(78.5)));

        assertThat(head.reach()).isEqualTo(mm(185));
        assertThat(head.across()).isEqualTo(mm(78.5));
        assertThat(head.nutLine()).isEqualTo(deg(0));
    }

    @Test
    void ears_makeUpHalfTheDifferenceEachSide() {
        assertThat(HeadLayout.of(HEAD).wings(mm(61))).isEqualTo(mm(7.5));
        assertThat(HeadLayout.of(HEAD).wings(mm(80)).libraryValue()).isZero();
        assertThat(HeadLayout.of(HEAD.tapered(mm(60), mm(66))).wings(mm(61)).libraryValue())
                .isCloseTo(2.5, offset(1e-12));
    }

    @Test
    void width_runsStraightFromBreakLineToTip() {
        HeadLayout head = HeadLayout.of(HEAD.tapered(mm(60), mm(78.5)));

        assertThat(head.width(mm(0))).isEqualTo(mm(60));
        assertThat(head.width(mm(185)).libraryValue()).isCloseTo(78.5, offset(1e-12));
        assertThat(head.width(mm(20)).libraryValue()).isCloseTo(62, offset(1e-12));
        assertThatThrownBy(() -> head.width(mm(186)))
                .hasMessage("distance along the head must be no more than its length of 185 mm, but was 186 mm");
    }

    @Test
    void woodFor_leavesTheVeneersOut() {
        HeadLayout head = HeadLayout.of(HEAD);

        assertThat(head.thickness().libraryValue()).isCloseTo(16.6, offset(1e-12));
        Limits<javax.measure.quantity.Length> wood = head.woodFor(Limits.between(mm(13), mm(17)));
        assertThat(wood.libraryLower()).isCloseTo(10.4, offset(1e-12));
        assertThat(wood.libraryUpper()).isCloseTo(14.4, offset(1e-12));
        assertThatThrownBy(() -> head.woodFor(Limits.between(mm(1), mm(2)))).hasMessageContaining("veneers");
    }

    @Test
    void posts_mustLieOnTheHeadAndMatchTheStrings() {
        assertThatThrownBy(() -> HEAD.posts(TunerPost.at(mm(190))))
                .hasMessage("posts.along must be less than the head's length of 185 mm, but was 190 mm");
        assertThatThrownBy(() -> HeadLayout.of(HEAD.posts(TunerPost.at(mm(60)))).breaks(NUT, mm(7)))
                .hasMessage("posts must be as many as the strings at the nut, but were 1 for 4");
    }

    @Test
    void outline_isTheHeadsOwnOnceTaperOrPostsAreTold() {
        HeadLayout plain = HeadLayout.of(HEAD);
        double wide = HEAD.widthMm();

        assertThat(plain.hasOutline()).isFalse();
        assertThat(plain.hasPosts()).isFalse();
        assertThat(plain.posts()).isEmpty();
        assertThat(HeadLayout.of(HEAD.tapered(mm(wide), mm(wide))).hasOutline()).isFalse();
        assertThat(HeadLayout.of(HEAD.tapered(mm(wide - 1), mm(wide))).hasOutline())
                .isTrue();
        assertThat(HeadLayout.of(HEAD.tapered(mm(wide), mm(wide - 1))).hasOutline())
                .isTrue();
        TunerPost post = TunerPost.at(mm(60));
        assertThat(HeadLayout.of(HEAD.posts(post)).hasOutline()).isTrue();
        assertThat(HeadLayout.of(HEAD.posts(post)).hasPosts()).isTrue();
        assertThat(HeadLayout.of(HEAD.posts(post)).posts()).containsExactly(post);
        assertThatThrownBy(() -> HEAD.posts(TunerPost.at(mm(HEAD.lengthMm()))))
                .hasMessageStartingWith("posts.along must be less than the head's length");
        assertThatThrownBy(() -> HEAD.posts(post).length(mm(60)))
                .hasMessageStartingWith("posts.along must be less than the head's length");
    }
}
