package org.neckgeom.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Neck;

/** Side dots: half-way between the frets on the bass edge, half-way up the board's edge. Figures in BoardChecks. */
class SideDotsTest {

    @Test
    void usualFrets_areCommonPractice() {
        assertThat(SideDots.of(SampleNecks.octaveMandolin().frets(24)).frets())
                .containsExactly(3, 5, 7, 9, 12, 15, 17, 19, 21, 24);
        assertThat(SideDots.of(SampleNecks.octaveMandolin().fretsToTheOctave(19).frets(24))
                        .frets())
                .containsExactly(19);
    }

    @Test
    void dot_liesMidwayBetweenTheFretsAndUpTheEdge() {
        Neck neck = SampleNecks.shortScaleBass();
        for (int fret : new int[] {1, 7, 12}) {
            double middle = (neck.scale().fretMm(fret - 1) + neck.scale().fretMm(fret)) / 2;
            double radius = neck.crownRadiusAtMm(middle);
            double half = neck.halfWidthAtMm(middle);
            double edge = neck.boardThicknessAtMm(middle) - (radius - Math.sqrt(radius * radius - half * half));

            assertThat(SideDots.of(neck).fromNut(fret).libraryValue()).isCloseTo(middle, within(1e-9));
            assertThat(SideDots.of(neck).height(fret).libraryValue()).isCloseTo(edge / 2, within(1e-9));
        }
    }

    @Test
    void frets_areChecked() {
        SideDots dots = SideDots.of(SampleNecks.octaveMandolin());

        assertThat(dots.at(7, 3).frets()).containsExactly(3, 7);
        assertThatThrownBy(() -> dots.at(0)).hasMessageContaining("fret must be from 1 to");
        assertThatThrownBy(() -> dots.at(3, 3)).hasMessageContaining("frets must be given once each, but were [3, 3]");
        assertThatThrownBy(() -> dots.height(99)).hasMessageContaining("fret must be from 1 to");
    }
}
