package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.kernel.HeadPlanes;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Spot;
import org.neckgeom.units.LengthStyle;

/**
 * The answers that were worked out before there was one solid, by their own closed forms, against the solid's where both hold:
 * 10,000 random necks each. The formulas of before stand in the tests and in {@link PlainNecks}, on plain doubles; where they were
 * wrong, the sign of what they missed is held too.
 */
class OldAgainstNewTest {

    private static final int MANY = 10_000;

    /** Square nut, no swing: the deepest corner lies {@code L sin a + t cos a} below the glue face, the farthest {@code L cos a} before the nut. */
    @Test
    void squareHead_isAsDeepAndAsLongAsItsClosedForms() {
        SplittableRandom random = new SplittableRandom(51);
        for (int i = 0; i < MANY; i++) {
            double a = random.nextDouble(1, 30);
            double length = random.nextDouble(100, 260);
            double t = random.nextDouble(10, 20);
            Head head = Head.angled(deg(a)).length(mm(length)).width(mm(80)).thickness(mm(t));
            HeadSolid solid = new HeadSolid(head, HeadPlanes.of(head.angleRad(), 0, 0, t));
            double rad = Math.toRadians(a);

            assertThat(solid.deepest().libraryValue())
                    .isCloseTo(length * Math.sin(rad) + t * Math.cos(rad), within(1e-11));
            assertThat(solid.farthest().libraryValue()).isCloseTo(length * Math.cos(rad), within(1e-11));
        }
    }

    /**
     * Square nut, no swing, post without diameter, no veneer: the post's place turned back by the head's angle, down
     * {@code L sin a - h cos a} and out {@code L cos a + h sin a}.
     */
    @Test
    void stringOverSquareNut_breaksByItsClosedForm() {
        SplittableRandom random = new SplittableRandom(52);
        for (int i = 0; i < MANY; i++) {
            double a = Math.toRadians(random.nextDouble(0, 30));
            double along = random.nextDouble(30, 200);
            double aside = random.nextDouble(-35, 35);
            double above = random.nextDouble(0, 12);
            double slot = random.nextDouble(5, 10);
            double y = random.nextDouble(-22, 22);
            Line way = StringLine.toPost(
                    new Point(0, y, slot), HeadPlanes.of(a, 0, 0, 15).frame(), new Point(-along, aside, above), 0);
            StringLine string = new StringLine(
                    new StringRuns.Run(0, new Line(new Point(0, y, slot), new Point(640, y, slot)), 640),
                    0,
                    way,
                    LengthStyle.MILLIMETRES);

            double run = along * Math.cos(a) + above * Math.sin(a);
            double drop = slot + along * Math.sin(a) - above * Math.cos(a);
            assertThat(string.breakAngle().orElseThrow().libraryValue())
                    .isCloseTo(Math.atan2(drop, Math.hypot(run, aside - y)), within(1e-12));
            assertThat(string.sideAngle().orElseThrow().libraryValue())
                    .isCloseTo(Math.atan2(aside - y, run), within(1e-12));
            // The speaking side is level here, so the whole bend is that of the direction to the post.
            assertThat(Math.cos(string.turn().orElseThrow().libraryValue()))
                    .isCloseTo(run / Math.sqrt(run * run + drop * drop + (aside - y) * (aside - y)), within(1e-12));
        }
    }

    /** Fanned frets on the board's edges, and straight frets, of 10,000 necks. */
    @Test
    void frets_lieWhereFanAndScaleHaveThem() {
        SplittableRandom random = new SplittableRandom(53);
        for (int i = 0; i < MANY; i++) {
            RandomNecks lot = RandomNecks.of(random.nextLong());
            Neck neck = lot.fanned(i % 4 == 0 ? 0 : random.nextDouble(2, 45)).neck();
            NeckSolid solid = NeckSolid.of(neck);
            FannedFrets fan = FannedFrets.of(neck).orElse(null);
            // Every fifth, the nut and the last.
            for (int n = 0; n <= neck.frets(); n += n + 5 > neck.frets() && n < neck.frets() ? neck.frets() - n : 5) {
                FretLine line = solid.fret(n);
                int fret = n;
                if (fan != null) {
                    for (Spot end : List.of(line.bass(), line.treble())) {
                        // On the fret's line, and on the board's edge.
                        assertThat(end.uMm())
                                .isCloseTo(fan.at(fret, mm(end.vMm())).libraryValue(), within(1e-9));
                        assertThat(Math.abs(end.vMm())).isCloseTo(neck.halfWidthAtMm(end.uMm()), within(1e-9));
                    }
                    assertThat(line.slant().libraryValue())
                            .isCloseTo(fan.slant(fret).libraryValue(), within(1e-12));
                } else {
                    assertThat(line.bass().uMm()).isEqualTo(neck.scale().fretMm(fret));
                    assertThat(line.treble().uMm()).isEqualTo(line.bass().uMm());
                    assertThat(line.length().libraryValue())
                            .isCloseTo(2 * neck.halfWidthAtMm(line.treble().uMm()), within(1e-12));
                }
            }
        }
    }

    /** An outline left out is as wide all along as the head, or runs straight between two widths. */
    @Test
    void taperedHead_isAsWideAsItsTwoWidths() {
        SplittableRandom random = new SplittableRandom(55);
        for (int i = 0; i < MANY; i++) {
            double first = random.nextDouble(40, 60);
            double last = random.nextDouble(60, 80);
            double length = random.nextDouble(150, 220);
            Head head = Head.angled(deg(random.nextDouble(2, 20)))
                    .length(mm(length))
                    .width(mm(80))
                    .thickness(mm(15))
                    .tapered(mm(first), mm(last));
            HeadSolid solid = new HeadSolid(head, HeadPlanes.of(head.angleRad(), 0, 0, 15));

            assertThat(solid.outline().areaMm2()).isCloseTo(length * (first + last) / 2, within(1e-8));
            assertThat(solid.sideCorner(true).yMm()).isCloseTo(last / 2, within(1e-12));
        }
    }

    /**
     * The blank of before: as thick as {@code L sin a + t cos a} or as the back up to its second depth, as long as
     * {@code L cos a} and the shaft. Where the heel's blocks begin nearer the body than that depth, it was too thin.
     */
    @Test
    void plainBlank_isAsThickAndLongAsItsClosedForms_andThickerUpToLaterBlocks() {
        SplittableRandom random = new SplittableRandom(56);
        int thicker = 0;
        for (int i = 0; i < MANY; i++) {
            PlainNecks plain = PlainNecks.of(random);
            NeckSolid solid = NeckSolid.of(plain.neck());
            double old = plain.blankThickness(0, 1);
            String at = "seed 56 case " + i + " " + plain;

            assertThat(solid.leastThickness(mm(plain.blankEnd())).mm()).as(at).isCloseTo(old, within(1e-9));
            assertThat(solid.head().orElseThrow().farthest().libraryValue() + solid.bodyJointMm())
                    .as(at)
                    .isCloseTo(plain.blankLength(), within(1e-9));
            double later = random.nextDouble(plain.blankEnd(), plain.joint());
            LeastThickness least = solid.leastThickness(mm(later));
            if (least.isDecidedByHead()) {
                assertThat(least.mm()).as(at).isCloseTo(old, within(1e-9));
            } else {
                thicker++;
                assertThat(least.mm()).as(at).isGreaterThan(old).isCloseTo(plain.depthAt(later), within(1e-9));
            }
        }
        assertThat(thicker).isBetween(MANY / 50, MANY);
    }

    /** Under a volute the blank of before was the deepest of 65 places: never too thick, too thin by what lies between two. */
    @Test
    void volutedBlank_isNoThinnerThanTheDeepestOfItsPlaces() {
        SplittableRandom random = new SplittableRandom(57);
        for (int i = 0; i < MANY; i++) {
            PlainNecks plain = PlainNecks.of(random);
            double extra = random.nextDouble(1, 5);
            double length = random.nextDouble(25, 45);
            NeckSolid solid = NeckSolid.of(plain.neck(plain.voluted(extra, length), plain.head()));
            double old = plain.blankThickness(extra, length);
            double step = plain.blankEnd() / 64;
            // What a curve rises between two places: its greatest second derivative times step^2 / 8.
            double between = extra * Math.PI * Math.PI / (2 * length * length) * step * step / 8;

            assertThat(solid.leastThickness(mm(plain.blankEnd())).mm() - old)
                    .as("seed 57 case %d %s", i, plain)
                    .isBetween(-1e-9, between + 1e-9);
        }
    }

    /** Before, the heel's turn was left out of the blank: up to blocks past its start the wood is deeper. */
    @Test
    void turnedHeelsBlank_isThickerThanThePlainBacks() {
        SplittableRandom random = new SplittableRandom(58);
        for (int i = 0; i < MANY; i++) {
            PlainNecks plain = PlainNecks.of(random);
            NeckSolid solid = NeckSolid.of(plain.neck(plain.turned(random.nextDouble(15, 30)), plain.head()));
            double turn = solid.back().heelStartMm().orElseThrow();
            double blocks = random.nextDouble(turn + 1, plain.joint());

            assertThat(solid.depth().valueAt(turn)).isCloseTo(plain.depthAt(turn), within(1e-9));
            assertThat(solid.depth().valueAt(blocks))
                    .as("seed 58 case %d %s", i, plain)
                    .isGreaterThan(plain.depthAt(blocks));
            assertThat(solid.leastThickness(mm(blocks)).mm())
                    .isGreaterThanOrEqualTo(Math.max(plain.depthAt(blocks), plain.headDepth()) - 1e-9);
        }
    }

    /**
     * A swing given in plan turns the head by less in its face, {@code tan psi = cos a tan g}: the deepest corner is that of the
     * turned tip, deeper than {@code L sin a + t cos a}, and the side reaches less far out than turned by the angle given.
     */
    @Test
    void swungHead_isDeeperAndNarrowerThanItsOldForms() {
        SplittableRandom random = new SplittableRandom(59);
        for (int i = 0; i < MANY; i++) {
            PlainNecks plain = PlainNecks.of(random);
            double g = random.nextDouble(0.5, 8) * (random.nextBoolean() ? 1 : -1);
            HeadSolid head = NeckSolid.of(plain.neck(plain.back(), plain.head().swung(deg(g))))
                    .head()
                    .orElseThrow();
            double given = Math.toRadians(Math.abs(g));
            double psi = Math.atan(Math.cos(plain.rad()) * Math.tan(given));
            double half = plain.headWidth() / 2;
            double tip = plain.headLength() * Math.cos(psi) + half * Math.sin(psi);
            String at = "seed 59 case " + i + " " + plain;

            assertThat(head.deepest().libraryValue())
                    .as(at)
                    .isCloseTo(
                            tip * Math.sin(plain.rad()) + plain.headThickness() * Math.cos(plain.rad()), within(1e-9))
                    .isGreaterThan(plain.headDepth());
            assertThat(Math.abs(head.sideCorner(g > 0).yMm()))
                    .as(at)
                    .isCloseTo(plain.headLength() * Math.sin(psi) + half * Math.cos(psi), within(1e-9))
                    .isLessThan(plain.headLength() * Math.sin(given) + half * Math.cos(given));
        }
    }

    /**
     * The scarf's lines of before, {@code T / sin a} along the face and {@code t / sin a - T / tan a} on the back, {@code t / sin a}
     * and the same: where the solid has them.
     */
    @Test
    void scarfsLines_lieWhereTheSolidHasThem() {
        SplittableRandom random = new SplittableRandom(60);
        for (int i = 0; i < MANY; i++) {
            PlainNecks plain = PlainNecks.of(random);
            NeckSolid solid = NeckSolid.of(plain.neck());
            double a = plain.rad();
            double shaft = plain.depth();
            double head = plain.headThickness();
            Scarf scarf = Scarf.of(deg(plain.pitch()), mm(shaft), mm(head));
            Line inHead = solid.glueLine(ScarfJoint.inTheHead(scarf));
            Line inShaft = solid.glueLine(ScarfJoint.inTheShaft(scarf));
            double front = shaft / Math.sin(a);
            double back = head / Math.sin(a) - shaft / Math.tan(a);
            double hair = 1e-12 * front;

            assertThat(inHead.from().distanceMm(new Point(-front * Math.cos(a), 0, -front * Math.sin(a))))
                    .isLessThan(hair);
            assertThat(inShaft.from().distanceMm(new Point(head / Math.sin(a), 0, 0)))
                    .isLessThan(hair);
            for (Line line : List.of(inHead, inShaft)) {
                assertThat(line.to().distanceMm(new Point(back, 0, -shaft))).isLessThan(hair);
            }
        }
    }

    /**
     * The board of before for one cut, {@code X + L - T / sin a + B / tan a + k / sin a}, laid along the centreline of a slanted nut
     * too: there it was too short, by both wedges, the second kerf and the steeper cut.
     */
    @Test
    void fannedBoard_isLongerThanOneCutsFormula() {
        SplittableRandom random = new SplittableRandom(61);
        for (int i = 0; i < MANY; i++) {
            double a = Math.toRadians(random.nextDouble(6, 25));
            double slant = random.nextDouble(0.5, 25) * (random.nextBoolean() ? 1 : -1);
            double shaft = random.nextDouble(15, 25);
            double head = random.nextDouble(12, 20);
            double kerf = random.nextDouble(0, 3);
            double width = random.nextDouble(40, 80);
            boolean inHead = random.nextBoolean();
            Scarf scarf = Scarf.of(deg(Math.toDegrees(a)), mm(shaft), mm(head)).kerf(mm(kerf));
            ScarfJoint square = inHead ? ScarfJoint.inTheHead(scarf) : ScarfJoint.inTheShaft(scarf);
            Scarf behind = scarf.nutSlant(deg(slant));
            ScarfJoint slanted =
                    (inHead ? ScarfJoint.inTheHead(behind) : ScarfJoint.inTheShaft(behind)).keeping(mm(width));
            double board = Math.max(shaft, head);
            double thinning = inHead ? 0 : (board - head) / Math.tan(a);
            double old = 450
                    + 320
                    - (inHead ? shaft : head) / Math.sin(a)
                    + board / Math.tan(a)
                    + kerf / Math.sin(a)
                    - thinning;
            double mitre = Math.asin(Math.cos(a) * Math.sin(Math.toRadians(Math.abs(slant))));
            double wedges = width / 2 * (Math.tan(Math.toRadians(Math.abs(slant))) + Math.tan(mitre));

            assertThat(square.board(mm(450), mm(320)).length().libraryValue()).isCloseTo(old, within(1e-9));
            assertThat(slanted.board(mm(450), mm(320)).length().libraryValue() - old)
                    .as("seed 61 case %d", i)
                    .isGreaterThan(0.9 * wedges);
        }
    }

    /**
     * Wood left in the section, by an own search over the superellipse. In space it is the same under a level neck, and under one
     * that grows it is less, by no more than the slope allows: never more, as the section's distance was.
     */
    @Test
    void woodLeft_isTheSectionsUnderALevelNeck_andLessWhereItGrows() {
        SplittableRandom random = new SplittableRandom(62);
        for (int i = 0; i < MANY; i++) {
            PlainNecks plain = i % 2 == 0 ? PlainNecks.of(random).level() : PlainNecks.of(random);
            FloorThickness wood = NeckSolid.of(plain.neck()).floorThickness().orElseThrow();
            Channel channel = wood.channel();
            double x = random.nextDouble(30, channel.endMm());
            double old = plain.woodInSection(x, channel.widthMm(), channel.depthMm());
            String at = "seed 62 case " + i + " " + plain;

            assertThat(wood.inSection(x, 0, 0)).as(at).isCloseTo(old, within(1e-9));
            double inSpace = wood.atMm(x).woodMm();
            if (i % 2 == 0) {
                assertThat(inSpace).as(at).isCloseTo(old, within(1e-9));
            } else {
                double slope = plain.steepest();
                assertThat(inSpace).as(at).isLessThan(old).isGreaterThan(old / Math.sqrt(1 + slope * slope) - 1e-9);
            }
        }
    }

    /** The thinnest wood of before, the least of 200 stations in sections: no less than the solid's, and by no more than the slope. */
    @Test
    void thinnestWood_isNoMoreThanTheOldScans() {
        SplittableRandom random = new SplittableRandom(63);
        for (int i = 0; i < MANY; i++) {
            PlainNecks plain = PlainNecks.of(random).elliptic();
            FloorThickness wood = NeckSolid.of(plain.neck()).floorThickness().orElseThrow();
            Channel channel = wood.channel();
            double old = plain.woodScanned(channel.widthMm(), channel.depthMm(), channel.endMm());
            double slope = plain.steepest();

            assertThat(wood.least().woodMm())
                    .as("seed 63 case %d %s", i, plain)
                    .isLessThan(old)
                    .isGreaterThan(old / Math.sqrt(1 + slope * slope) - 1e-7);
        }
    }
}
