package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.kernel.HeadPlanes;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Line;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Spot;
import org.neckgeom.units.LengthStyle;

/**
 * The answers that were worked out before there was one solid, by their own closed forms, against the solid's where both hold:
 * 10,000 random heads, posts and frets.
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
                    1, new Line(new Point(0, y, slot), new Point(640, y, slot)), 640, 0, way, LengthStyle.MILLIMETRES);

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
}
