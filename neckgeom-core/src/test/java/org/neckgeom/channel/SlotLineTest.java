package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Table;

class SlotLineTest {

    private static final SlotLine LINE =
            SlotLine.of(SlotOffset.of(mm(0.05), mm(0.02)), mm(3), SlotOffset.of(mm(-0.1), mm(0.03)), mm(303));

    /** state/cases.csv, topic slot line; the same with a shared uncertainty of 0.01 mm in its note. */
    @Test
    void at_hasTheUncertaintyOfBothEnds() {
        Matcher shared = Pattern.compile("shared u .01 more: ([\\d.]+)").matcher("");
        int stations = 0;
        for (String[] row : Table.rows("state/cases.csv")) {
            if (!row[0].equals("slot line")) {
                continue;
            }
            double wanted = Double.parseDouble(row[3]);
            if (row[2].equals("u of skew, rad")) {
                double slope = -0.15 / 300;
                assertThat(LINE.skewUncertainty().libraryValue())
                        .isCloseTo(wanted / (1 + slope * slope), within(1e-12));
                assertThat(LINE.sharing(mm(0.4)).skewUncertainty()).isEqualTo(LINE.skewUncertainty());
                continue;
            }
            double station = Double.parseDouble(row[1].replaceAll(".* at ", ""));
            assertThat(LINE.at(mm(station)).uncertaintyMm()).as(row[1]).isCloseTo(wanted, within(1e-10));
            assertThat(shared.reset(row[4]).matches()).isTrue();
            assertThat(LINE.sharing(mm(0.01)).at(mm(station)).uncertaintyMm())
                    .as(row[1])
                    .isCloseTo(Double.parseDouble(shared.group(1)), within(5e-8));
            stations++;
        }
        assertThat(stations).isEqualTo(4);
    }

    /** Seeded trials of the two offsets and of their shared zero, at a station beyond the second. */
    @Test
    void at_isThatOfTrials() {
        SplittableRandom random = new SplittableRandom(4);
        int trials = 200_000;
        double square = 0;
        for (int i = 0; i < trials; i++) {
            double zero = 0.015 * random.nextGaussian();
            double one = 0.02 * random.nextGaussian() + zero;
            double two = 0.03 * random.nextGaussian() + zero;
            square += Math.pow(one + (two - one) * (560 - 3) / 300, 2);
        }

        // The relative standard error of a deviation from n trials is 1/sqrt(2 n).
        assertThat(Math.sqrt(square / trials))
                .isCloseTo(
                        LINE.sharing(mm(0.015)).at(mm(560)).uncertaintyMm(),
                        within(4 * 0.06 / Math.sqrt(2.0 * trials)));
    }

    @Test
    void sharing_refusesANegativeUncertainty() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LINE.sharing(mm(-0.01)))
                .withMessage("shared uncertainty must be 0 mm or more, but was -0.01 mm");
    }
}
