package org.neckgeom.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.StringSet;

class StringSpacingTest {

    private static final StringSpacing.Wanted SIX =
            StringSpacing.diameters(inch(0.054), inch(0.042), inch(0.032), inch(0.024), inch(0.016), inch(0.012));

    @Test
    void equalGaps_areTheSpanLessTheStringsByTheGaps() {
        StringPlaces places = SIX.across(mm(40)).equalGaps();
        double filled = 25.4 * (0.054 + 0.042 + 0.032 + 0.024 + 0.016 + 0.012);

        for (var gap : places.gaps()) {
            assertThat(gap.libraryValue()).isCloseTo((40 - filled) / 5, offset(1e-12));
        }
        assertThat(places.outerEdgeMm(false)).isCloseTo(20, offset(1e-12));
        assertThat(places.outerEdgeMm(true)).isCloseTo(20, offset(1e-12));
    }

    @Test
    void equalGaps_agreeWithTheTradesWorkedFigure() {
        // Common practice: an outside span of 36.63 with 3.76 mm of strings leaves gaps of 6.57.
        double each = 3.76 / 6;
        StringPlaces places = StringSpacing.diameters(mm(each), mm(each), mm(each), mm(each), mm(each), mm(each))
                .across(mm(36.63))
                .equalGaps();

        assertThat(places.gaps().get(0).libraryValue()).isCloseTo(6.57, offset(0.005));
    }

    @Test
    void equalCentres_divideTheDistanceOfTheOuterCentres() {
        StringPlaces places = SIX.inside(mm(44.5), mm(3)).equalCentres();
        double[] y = places.centresMm();

        for (int i = 1; i < 6; i++) {
            assertThat(y[i] - y[i - 1]).isCloseTo(places.spread().libraryValue() / 5, offset(1e-12));
        }
        assertThat(y[0]).isCloseTo(-19.25 + 0.027 * 25.4, offset(1e-12));
        // Common practice: first and last gap then differ by 0.5 to 0.75 mm.
        double difference =
                places.gaps().get(4).libraryValue() - places.gaps().get(0).libraryValue();
        assertThat(difference).isBetween(0.5, 0.95);
    }

    @Test
    void graduated_growsByItsStepTowardTheBass() {
        StringPlaces places = SIX.across(mm(40)).graduated(mm(0.1));
        double[] y = places.centresMm();

        for (int i = 2; i < 6; i++) {
            assertThat((y[i - 1] - y[i - 2]) - (y[i] - y[i - 1]))
                    .as("space %d", i)
                    .isCloseTo(0.1, offset(1e-12));
        }
        assertThat(SIX.across(mm(40)).graduated(mm(0)))
                .isEqualTo(SIX.across(mm(40)).equalCentres());
    }

    @Test
    void of_coursesKeepsPairsTogether() {
        StringSet set = StringSet.of(pitch("G3"), pitch("D4"), pitch("A4"), pitch("E5"))
                .doubled()
                .diameters(mm(1.0), mm(0.66), mm(0.38), mm(0.26));

        StringPlaces places = StringSpacing.of(set, mm(1.6)).across(mm(26)).equalGaps();

        double[] y = places.centresMm();
        assertThat(y).hasSize(8);
        assertThat(y[1] - y[0]).isCloseTo(1.6, offset(1e-12));
        assertThat(y[7] - y[6]).isCloseTo(1.6, offset(1e-12));
        assertThat(places.gaps().get(1).libraryValue())
                .isCloseTo(places.gaps().get(5).libraryValue(), offset(1e-12));
        assertThat(y[0] - 0.5).isCloseTo(-13, offset(1e-12));
    }

    @Test
    void across_rejectsASpanTooNarrowForTheStrings() {
        assertThatThrownBy(() -> SIX.across(mm(4)).equalGaps())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("strings must fit side by side, but strings 1 and 2 overlap by ");
    }

    @Test
    void overhang_isTheBoardsEdgeLessTheStringsEdgeOnTwoTapers() {
        Neck neck = Neck.named("test")
                .scale(mm(648))
                .fingerboard(Fingerboard.tapered(mm(44.5), mm(56)))
                .back(BackProfile.between(mm(14), mm(16)))
                .bodyAtFret(14)
                .frets(20);
        StringPlaces nut = SIX.inside(mm(44.5), mm(3)).equalGaps();
        StringPlaces saddle = SIX.across(mm(56)).equalCentres();

        StringOverhang overhang = StringOverhang.of(neck, nut, saddle);

        assertThat(overhang.bass(0).libraryValue()).isCloseTo(3, offset(1e-12));
        assertThat(overhang.treble(0).libraryValue()).isCloseTo(3, offset(1e-12));
        // At the octave: half the way from nut to saddle, and the board at 324 of its 359.3 mm to the joint.
        double joint = 648 * (1 - Math.pow(2, -14 / 12.0));
        double board = (44.5 + (56 - 44.5) * 324 / joint) / 2;
        assertThat(overhang.bass(12).libraryValue()).isCloseTo(board - (19.25 + 28) / 2, offset(1e-9));
        assertThat(overhang.least()).isEqualTo(mm(3));
    }

    /** String's edge and fret as two lines of the plane, met by Cramer's rule, and the board's edge as a third. */
    @Test
    void overhang_betweenASlantedNutAndSaddle_isMeasuredWhereTheFretMeetsTheEdge() {
        Neck neck = Neck.named("test")
                .scale(mm(685.94))
                .fingerboard(Fingerboard.tapered(mm(46), mm(58.5)))
                .back(BackProfile.between(mm(14), mm(16)))
                .bodyAtFret(14)
                .frets(21);
        StringPlaces nut = SIX.inside(mm(46), mm(3)).equalCentres();
        StringPlaces saddle = SIX.across(mm(58)).equalCentres();
        FannedFrets fan =
                FannedFrets.of(Scale.of(mm(699)), Scale.of(mm(673)), OuterStrings.of(nut.spread(), saddle.spread()), 7);
        double growth = (58.5 - 46) / 2 / (685.94 * (1 - Math.pow(2, -14 / 12.0)));

        StringOverhang overhang = StringOverhang.of(neck, nut, saddle).between(fan);

        for (int fret : new int[] {0, 14, 21}) {
            for (int side : new int[] {-1, 1}) {
                double yNut = side < 0 ? nut.centresMm()[0] : nut.centresMm()[5];
                double ySaddle = side < 0 ? saddle.centresMm()[0] : saddle.centresMm()[5];
                double xNut = Math.tan(fan.slant(0).libraryValue()) * yNut;
                double xSaddle = 685.94 + Math.tan(fan.saddleSlant().libraryValue()) * ySaddle;
                // Fret line x - k y = m; board's edge y - side growth x = side 23.
                double k = Math.tan(fan.slant(fret).libraryValue());
                double m = fan.onCentreline(fret).libraryValue();
                double x = (m + k * side * 23) / (1 - k * side * growth);
                double half = 23 + growth * x;
                double edgeNut = Math.abs(yNut) + radius(nut, side);
                double edgeSaddle = Math.abs(ySaddle) + radius(saddle, side);
                double edge = edgeNut + (edgeSaddle - edgeNut) * (x - xNut) / (xSaddle - xNut);

                assertThat((side < 0 ? overhang.bass(fret) : overhang.treble(fret)).libraryValue())
                        .as("fret %d, side %d", fret, side)
                        .isCloseTo(half - edge, offset(1e-9));
            }
        }
        // What the square nut made of it was off by a tenth of a millimetre.
        double square = StringOverhang.of(neck, nut, saddle).treble(21).libraryValue();
        assertThat(Math.abs(overhang.treble(21).libraryValue() - square)).isBetween(0.02, 0.3);
    }

    private static double radius(StringPlaces places, int side) {
        return places.diameters().get(side < 0 ? 0 : places.count() - 1).libraryValue() / 2;
    }

    @Test
    void of_takesMeasuredPlacesInOrder() {
        StringPlaces places = StringPlaces.of(List.of(mm(-10), mm(0.5), mm(9)), List.of(mm(1), mm(0.6), mm(0.3)));

        assertThat(places.gaps()).containsExactly(mm(9.7), mm(8.05));
        assertThat(places.spread()).isEqualTo(mm(19));
        assertThatThrownBy(() -> StringPlaces.of(List.of(mm(1), mm(-1)), List.of(mm(1), mm(1))))
                .hasMessageContaining("strings 1 and 2 overlap by 3 mm");
        assertThatThrownBy(() -> StringPlaces.of(List.of(mm(1)), List.of()))
                .hasMessage("strings must be 1 or more with a diameter each, but there were 1 centres and 0 diameters");
    }

    @Test
    void toString_namesCentresAndGaps() {
        assertThat(SIX.across(mm(40)).equalGaps().toString())
                .contains("centres")
                .contains("gaps");
        assertThat(SIX.toString()).contains("span not given yet");
    }
}
