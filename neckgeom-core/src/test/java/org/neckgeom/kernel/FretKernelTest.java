package org.neckgeom.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

class FretKernelTest {

    @Test
    void share_agreesWithTheTwentyDigitTable() {
        // Source: fret-positions-650.csv, L (1 - 2^(-n/12)) to 20 digits, computed.
        for (String[] row : Table.rows("board/fret-positions-650.csv")) {
            int fret = Integer.parseInt(row[0]);
            double expected = Double.parseDouble(row[2]);

            double actual = 650 * FretKernel.share(fret, 12);

            assertThat(actual).as("fret %d", fret).isCloseTo(expected, offset(4e-16 * 650));
        }
    }

    @Test
    void cents_agreesWithTheRuleOfEighteensPublishedErrors() {
        // Source: the same table; the old rule's frets against equal temperament, in cents of the sounding length.
        for (String[] row : Table.rows("board/fret-positions-650.csv").subList(1, 25)) {
            double right = Double.parseDouble(row[2]);
            double byRule = Double.parseDouble(row[5]);
            double expected = Double.parseDouble(row[6]);

            double actual = FretKernel.cents(650 - right, byRule - right);

            assertThat(actual).as("fret %s", row[0]).isCloseTo(expected, offset(1e-8));
        }
    }

    @Test
    void cents_agreesWithTheTradesFiguresForATenthOfAMillimetre() {
        // Common practice figures for 648 mm: 0.28 cent at the 1st fret, 0.53 at the 12th, 0.85 at the 20th.
        assertThat(FretKernel.cents(648 * (1 - FretKernel.share(1, 12)), 0.1)).isCloseTo(0.28, offset(0.006));
        assertThat(FretKernel.cents(648 * (1 - FretKernel.share(12, 12)), 0.1)).isCloseTo(0.53, offset(0.006));
        assertThat(FretKernel.cents(648 * (1 - FretKernel.share(20, 12)), 0.1)).isCloseTo(0.85, offset(0.006));
    }

    @Test
    void share_halvesTheStringAtTheOctaveWhateverTheDivision() {
        for (int divisions : new int[] {5, 7, 12, 17, 19, 22, 24, 31, 53}) {
            assertThat(FretKernel.share(divisions, divisions)).isCloseTo(0.5, offset(1e-16));
            assertThat(FretKernel.share(0, divisions)).isZero();
        }
    }
}
