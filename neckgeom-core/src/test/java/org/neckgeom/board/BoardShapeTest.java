package org.neckgeom.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;

class BoardShapeTest {

    @Test
    void drop_agreesWithTheTradesTable() {
        // Common practice, from the centre to the edge: radius and width to drop.
        double[][] table = {{305, 43, 0.76}, {305, 56, 1.29}, {241, 43, 0.96}, {184, 43, 1.26}};
        for (double[] row : table) {
            BoardSection section = BoardShape.of(
                            neck(Fingerboard.tapered(mm(row[1]), mm(56)).radius(mm(row[0]))))
                    .atFret(0);

            assertThat(section.drop(mm(row[1] / 2)).libraryValue())
                    .as("R %s w %s", row[0], row[1])
                    .isCloseTo(row[2], offset(0.006));
            assertThat(section.edgeMm())
                    .isCloseTo(6 - section.drop(mm(-row[1] / 2)).libraryValue(), offset(1e-12));
        }
    }

    @Test
    void radiusAtSaddle_agreesWithTheTradesProjection() {
        // Common practice: 10 in at the nut to 16 in at fret 22 gives 18.3 in at the bridge.
        Neck neck = neck(Fingerboard.tapered(mm(43), mm(57)).farWidthAtFret(22).radius(inch(10), inch(16)));

        double radius = BoardShape.of(neck).radiusAtSaddle(mm(648)).libraryValue() / 25.4;

        assertThat(radius).isCloseTo(18.3, offset(0.1));
    }

    @Test
    void coneFor_liesOnStraightStringsWithoutADip() {
        BoardShape board =
                BoardShape.of(neck(Fingerboard.tapered(mm(43), mm(56)).radius(mm(305))));
        OuterStrings strings = OuterStrings.of(mm(36), mm(54));

        double radius = board.coneFor(strings).libraryValue();

        assertThat(radius).isCloseTo(305 * 1.5, offset(1e-9));
        // On that cone the outer strings keep the same drop angle: drop / spread is the same at both ends.
        double atNut = 305 - Math.sqrt(305.0 * 305 - 18 * 18);
        double atSaddle = radius - Math.sqrt(radius * radius - 27 * 27);
        assertThat(atSaddle / 54).isCloseTo(atNut / 36, offset(1e-12));
    }

    @Test
    void equalEdges_keepTheEdgeAndGrowTheRadiusNearlyWithTheSquareOfTheWidth() {
        BoardShape board = BoardShape.of(
                        neck(Fingerboard.tapered(mm(43), mm(56)).radius(mm(305))))
                .withEqualEdges();
        double edge = board.atFret(0).edgeMm();

        for (int fret = 1; fret <= 20; fret++) {
            assertThat(board.atFret(fret).edgeMm()).as("fret %d", fret).isCloseTo(edge, offset(1e-12));
        }
        BoardSection body = board.atFret(14);
        assertThat(body.radiusMm() / 305).isCloseTo(Math.pow(56.0 / 43, 2), offset(0.002));
    }

    @Test
    void equalEdges_needACrown() {
        BoardShape flat = BoardShape.of(neck(Fingerboard.tapered(mm(43), mm(56))));

        assertThat(flat.atFret(12).edgeMm()).isEqualTo(6);
        assertThatThrownBy(flat::withEqualEdges)
                .hasMessage("crown at the nut must have a radius for equal edges, but was flat");
        assertThatThrownBy(() -> flat.radiusAtSaddle(mm(648))).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void at_aTaperedBoardRunsStraight() {
        Neck neck =
                neck(Fingerboard.tapered(mm(40), mm(54)).thickness(mm(5), mm(7)).radius(mm(400)));
        double joint = neck.bodyJointMm();
        BoardSection half = BoardShape.of(neck).at(mm(joint / 2));

        assertThat(half.width().libraryValue()).isCloseTo(47, offset(1e-12));
        assertThat(half.middle().libraryValue()).isCloseTo(6, offset(1e-12));
        assertThatThrownBy(() -> half.drop(mm(24)))
                .hasMessageContaining("distance from the centreline must be no more than half the width");
    }

    @Test
    void toString_showsNutBodyAndLastFret() {
        assertThat(BoardShape.of(neck(Fingerboard.tapered(mm(40), mm(54)))).toString())
                .contains("nut")
                .contains("fret 14")
                .contains("fret 20");
    }

    @Test
    void fallAway_isAPlaneFromItsStart() {
        FallAway slope = FallAway.of(neck(Fingerboard.tapered(mm(40), mm(54)).fallAway(mm(0.3))))
                .orElseThrow();
        // Frets 14 and 20 of 648 mm, equal temperament.
        double start = 648 * (1 - Math.pow(2, -14 / 12.0));
        double end = 648 * (1 - Math.pow(2, -20 / 12.0));

        assertThat(slope.at(mm(start - 10)).libraryValue()).isZero();
        assertThat(slope.at(mm((start + end) / 2)).libraryValue()).isCloseTo(0.15, offset(1e-12));
        assertThat(slope.angle().libraryValue()).isCloseTo(Math.atan(0.3 / (end - start)), offset(1e-15));
    }

    private static Neck neck(Fingerboard board) {
        return Neck.named("test")
                .scale(mm(648))
                .fingerboard(board)
                .back(BackProfile.between(mm(14), mm(16)))
                .bodyAtFret(14)
                .frets(20);
    }
}
