package org.neckgeom.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Table;
import org.neckgeom.neck.Scale;

class FretTableTest {

    @Test
    void frets_agreeWithTheTwentyDigitTable() {
        // Source: fret-positions-650.csv, computed to 20 digits.
        FretTable table = FretTable.of(Scale.of(mm(650)), 24);

        for (String[] row : Table.rows("board/fret-positions-650.csv")) {
            Fret fret = table.fret(Integer.parseInt(row[0]));

            assertThat(fret.fromNutMm())
                    .as("fret %s", row[0])
                    .isCloseTo(Double.parseDouble(row[2]), offset(650 * FretTable.ACCURACY));
            assertThat(fret.sounding().libraryValue())
                    .as("fret %s", row[0])
                    .isCloseTo(Double.parseDouble(row[3]), offset(2 * 650 * FretTable.ACCURACY));
        }
    }

    @Test
    void frets_areThoseOfTheScaleItself() {
        Scale scale = Scale.of(inch(25.5)).divisions(19);
        FretTable table = FretTable.of(scale, 30);

        for (Fret fret : table.frets()) {
            assertThat(fret.fromNutMm()).isCloseTo(scale.fretMm(fret.number()), offset(1e-13));
        }
        assertThat(table.frets()).hasSize(31);
        assertThat(table.toString()).contains(" in").contains("and 6 more");
        assertThat(table.table()).contains("\n  30  ");
    }

    @Test
    void spacing_shrinksByTheSameRatioFromFretToFret() {
        FretTable table = FretTable.of(Scale.of(mm(560)), 20);

        for (int n = 2; n <= 20; n++) {
            double ratio = table.fret(n - 1).fromLast().libraryValue()
                    / table.fret(n).fromLast().libraryValue();

            assertThat(ratio).as("fret %d", n).isCloseTo(Math.pow(2, 1 / 12.0), offset(1e-12));
        }
    }

    @Test
    void worstCents_isThatOfTheShortestString() {
        FretTable table = FretTable.of(Scale.of(mm(648)), 20);

        // Common practice: 0.10 mm costs 0.85 cent at the 20th fret of 648 mm.
        assertThat(table.worstCents(mm(0.1))).isCloseTo(0.85, offset(0.006));
        assertThat(table.fret(12).centsFrom(mm(-0.1))).isNegative();
    }

    @Test
    void of_rejectsNoFretsAndTooMany() {
        assertThatThrownBy(() -> FretTable.of(Scale.of(mm(560)), 0))
                .hasMessage("frets must be from 1 to 200, but were 0");
        assertThatThrownBy(() -> FretTable.of(Scale.of(mm(560)), 20).fret(21))
                .hasMessage("fret must be from 0 to 20, but was 21");
    }

    @Test
    void toString_staysUnderAThousandCharacters() {
        assertThat(FretTable.of(Scale.of(mm(1234.567)), 60).toString().length()).isLessThan(1000);
        assertThat(FretTable.of(Scale.of(inch(34)), 60).toString().length()).isLessThan(1000);
    }
}
