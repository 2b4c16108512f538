package org.neckgeom.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;

class FannedFretsTest {

    private static final OuterStrings SPREAD = OuterStrings.of(mm(38), mm(60));
    private static final FannedFrets FRETS = FannedFrets.of(Scale.of(mm(686)), Scale.of(mm(648)), SPREAD, 7);

    @Test
    void frets_divideEveryStringInEqualTemperamentByJts() {
        // Nut and saddle lines through their ends; a string between joins the same share of both.
        Coordinate bassNut = at(FRETS.onBass(0).libraryValue(), -19);
        Coordinate trebleNut = at(FRETS.onTreble(0).libraryValue(), 19);
        LineSegment nut = new LineSegment(bassNut, trebleNut);
        double bassFar = FRETS.onBass(12).libraryValue() * 2 - bassNut.x;
        double trebleFar = FRETS.onTreble(12).libraryValue() * 2 - trebleNut.x;
        LineSegment saddle = new LineSegment(at(bassFar, -30), at(trebleFar, 30));

        assertThat(new LineSegment(bassNut, saddle.p0).getLength()).isCloseTo(686, offset(1e-9));
        assertThat(new LineSegment(trebleNut, saddle.p1).getLength()).isCloseTo(648, offset(1e-9));
        for (double across : new double[] {0, 0.2, 0.37, 0.8, 1}) {
            LineSegment string = new LineSegment(nut.pointAlong(across), saddle.pointAlong(across));
            for (int n : new int[] {1, 5, 7, 12, 19, 24}) {
                LineSegment fret = new LineSegment(
                        at(FRETS.at(n, mm(-40)).libraryValue(), -40),
                        at(FRETS.at(n, mm(40)).libraryValue(), 40));
                Coordinate cut = string.intersection(fret);
                double sounding = cut.distance(string.p1) / string.getLength();

                assertThat(sounding)
                        .as("fret %d, %s across", n, across)
                        .isCloseTo(Math.pow(2, -n / 12.0), offset(1e-9));
            }
        }
    }

    @Test
    void slant_isNothingAtTheSquareFretAndTurnsThere() {
        assertThat(FRETS.slant(7).libraryValue()).isCloseTo(0, offset(1e-12));
        assertThat(FRETS.slant(0).libraryValue()).isPositive();
        assertThat(FRETS.slant(20).libraryValue()).isNegative();
        assertThat(FRETS.saddleSlant().libraryValue()).isNegative();
        assertThat(FRETS.onCentreline(0).libraryValue()).isZero();
    }

    @Test
    void equalScales_standSquareEverywhere() {
        FannedFrets plain = FannedFrets.of(Scale.of(mm(650)), Scale.of(mm(650)), OuterStrings.of(mm(40), mm(40)), 7);

        assertThat(plain.slant(0)).isEqualTo(deg(0));
        assertThat(plain.onCentreline(12).libraryValue()).isCloseTo(325, offset(1e-12));
    }

    /** Fret lines through both outer strings' points, cut by JTS with the board's edges, 45 to 57 mm wide at fret 12. */
    @Test
    void onEdges_isWhereTheLineMeetsTheBoardByJts() {
        Neck neck = Neck.named("fan")
                .scale(FRETS.centrelineScale())
                .fingerboard(Fingerboard.tapered(mm(45), mm(57)).farWidthAtFret(12))
                .back(BackProfile.between(mm(14), mm(16)));
        double half = FRETS.centrelineScale().libraryValue() / 2;
        for (int n : new int[] {0, 3, 7, 12, 20}) {
            double share = 1 - Math.pow(2, -n / 12.0);
            double y = (38 + 22 * share) / 2;
            LineSegment fret = new LineSegment(
                    at(FRETS.onBass(n).libraryValue(), -y), at(FRETS.onTreble(n).libraryValue(), y));
            LineSegment bassEdge = new LineSegment(at(0, -22.5), at(half, -28.5));
            LineSegment trebleEdge = new LineSegment(at(0, 22.5), at(half, 28.5));

            assertThat(FRETS.onBassEdge(n, neck).libraryValue())
                    .isCloseTo(fret.lineIntersection(bassEdge).x, offset(1e-9));
            assertThat(FRETS.onTrebleEdge(n, neck).libraryValue())
                    .isCloseTo(fret.lineIntersection(trebleEdge).x, offset(1e-9));
        }
    }

    @Test
    void of_takesBackWhatItTells() {
        FannedFrets fan = FannedFrets.of(
                Scale.of(mm(686)).divisions(19), Scale.of(mm(648)).divisions(19), SPREAD, 7.5);

        assertThat(FannedFrets.of(fan.bassScale(), fan.trebleScale(), SPREAD, fan.perpendicularFret()))
                .isEqualTo(fan);
        assertThat(fan.bassScale().lengthMm()).isEqualTo(686);
        assertThat(fan.trebleScale().lengthMm()).isEqualTo(648);
        assertThat(fan.perpendicularFret()).isEqualTo(7.5);
    }

    @Test
    void of_rejectsScalesThatDivideTheOctaveDifferently() {
        assertThatThrownBy(() ->
                        FannedFrets.of(Scale.of(mm(686)), Scale.of(mm(648)).divisions(19), SPREAD, 7))
                .hasMessage("both scales must have the same divisions of the octave, but had 12 and 19");
    }

    @Test
    void toString_saysWhichWayASlantCounts() {
        assertThat(FRETS.toString()).contains("nut slants").contains("positive: the treble end lies nearer the body");
    }

    private static Coordinate at(double x, double y) {
        return new Coordinate(x, y);
    }
}
