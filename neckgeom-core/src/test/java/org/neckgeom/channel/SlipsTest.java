package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.text.Numbers;
import org.neckgeom.validation.Rows;

/** How often a slip is found, and how often chance looks like one: {@code slot/slips.csv} was simulated with numpy. */
class SlipsTest {

    private static final int TRIALS = 20_000;

    @Test
    void swapped_changesNeighbouringDigits() {
        assertThat(Slips.swapped("76", 9, 0.1)).contains("67");
        assertThat(Slips.swapped("30.50", 0.45, 0.01)).contains("30.05");
        assertThat(Slips.swapped("27.49", 4.5 - 0.01, 0.02)).isEmpty();
        assertThat(Slips.swapped("27.49", -44.9 - 0.1, 0.2)).contains("72.49");
        assertThat(Slips.swapped("1.17187500", 0.1, 5)).isEmpty();
    }

    @Test
    void division_isThatOfItsUnit() {
        assertThat(Slips.division(-4.95, 0.1, false)).contains(5.0);
        assertThat(Slips.division(0.049, 0.002, true)).contains(0.05);
        assertThat(Slips.division(0.7, 0.1, false)).isEmpty();
    }

    @Test
    void shares_areThoseOfTheTable() {
        for (Map<String, String> row : Rows.of("/channel/slot/slips.csv")) {
            double tolerance = Rows.number(row, "tol");
            byChance(row, tolerance);
            real(row, tolerance);
        }
    }

    private static void near(Map<String, String> row, String column, int hits, int of) {
        double share = Rows.number(row, column);
        assertThat(hits / (double) of)
                .as(column + ", " + row)
                .isCloseTo(share, within(4 * Math.sqrt(share * (1 - share) * (1.0 / of + 1.0 / TRIALS)) + 0.0005));
    }

    /** Readings that close to 0.01 mm: walls, slot and piece. */
    private static double[] widths(SplittableRandom random) {
        double w = random.nextDouble(45, 75);
        double d = random.nextDouble(5, 8);
        double a = round((w - d) / 2 + 0.5 * random.nextGaussian());
        return new double[] {a, round(w - d - a), round(d), round(w)};
    }

    private static double round(double mm) {
        return Math.rint(mm * 100) / 100;
    }

    private static boolean isExplained(double[] read, int which, double misfit, double tolerance) {
        return Slips.swapped(Numbers.fixed(read[which], 2), which == 3 ? -misfit : misfit, tolerance)
                .isPresent();
    }

    private static void byChance(Map<String, String> row, double tolerance) {
        SplittableRandom random = new SplittableRandom(41);
        int[] hits = new int[4];
        for (int i = 0; i < TRIALS; i++) {
            double[] read = widths(random);
            double misfit = random.nextDouble(0.15, 2) * (random.nextBoolean() ? 1 : -1);
            int swaps = 0;
            for (int k = 0; k < 4; k++) {
                swaps += isExplained(read, k, misfit, tolerance) ? 1 : 0;
            }
            boolean division = Slips.division(misfit, tolerance, false).isPresent();
            hits[0] += swaps > 0 ? 1 : 0;
            hits[1] += division ? 1 : 0;
            hits[2] += division || swaps > 0 ? 1 : 0;
            hits[3] += swaps > 1 ? 1 : 0;
        }
        near(row, "by_swap", hits[0], TRIALS);
        near(row, "by_division", hits[1], TRIALS);
        near(row, "by_either", hits[2], TRIALS);
        near(row, "by_two_or_more_readings", hits[3], TRIALS);
    }

    /** One reading with two digits swapped, refused by closure: is it found, and it alone? */
    private static void real(Map<String, String> row, double tolerance) {
        SplittableRandom random = new SplittableRandom(42);
        int refused = 0;
        int found = 0;
        int alone = 0;
        for (int i = 0; i < TRIALS; i++) {
            double[] read = widths(random);
            int which = random.nextInt(4);
            List<Double> swaps = swaps(Numbers.fixed(read[which], 2));
            if (swaps.isEmpty()) {
                continue;
            }
            read[which] = swaps.get(random.nextInt(swaps.size()));
            double misfit = read[0] + read[1] + read[2] - read[3] + 0.042 * random.nextGaussian();
            if (Math.abs(misfit) <= 3.29 * 0.042) {
                continue;
            }
            refused++;
            int explained = 0;
            for (int k = 0; k < 4; k++) {
                explained += isExplained(read, k, misfit, tolerance) ? 1 : 0;
            }
            boolean isFound = isExplained(read, which, misfit, tolerance);
            found += isFound ? 1 : 0;
            alone += isFound && explained == 1 ? 1 : 0;
        }
        near(row, "true_swap_found", found, refused);
        near(row, "true_swap_found_alone", alone, refused);
    }

    private static List<Double> swaps(String text) {
        List<Double> swaps = new ArrayList<>();
        for (int i = 0; i + 1 < text.length(); i++) {
            int j = text.charAt(i + 1) == '.' ? i + 2 : i + 1;
            if (text.charAt(i) != '.' && text.charAt(i) != text.charAt(j)) {
                char[] other = text.toCharArray();
                other[i] = text.charAt(j);
                other[j] = text.charAt(i);
                swaps.add(Double.parseDouble(new String(other)));
            }
        }
        return swaps;
    }
}
