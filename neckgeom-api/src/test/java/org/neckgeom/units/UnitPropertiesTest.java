package org.neckgeom.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;

/** Laws that amounts keep in all their units, each at 1,000 places or more. */
class UnitPropertiesTest {

    private static final long SEED = 20_261_126;
    private static final int CASES = 2_000;
    private static final List<ShopUnit<Length>> LENGTHS = List.of(
            ShopUnit.MILLIMETRE, ShopUnit.CENTIMETRE, ShopUnit.METRE, ShopUnit.INCH, ShopUnit.THOU, ShopUnit.FOOT);

    private final SplittableRandom random = new SplittableRandom(SEED);

    private ShopUnit<Length> unit() {
        return LENGTHS.get(random.nextInt(LENGTHS.size()));
    }

    private Amount<Length> amount() {
        return Amount.of(random.nextDouble(-50, 50), unit());
    }

    private static double slack(Amount<Length> a, Amount<Length> b) {
        return 4 * Math.ulp(Math.abs(a.libraryValue()) + Math.abs(b.libraryValue()));
    }

    /** The same length read in another unit and back is the same length. */
    @Test
    void in_thereAndBackIsTheSameLength() {
        for (int i = 0; i < CASES; i++) {
            Amount<Length> a = amount();

            Amount<Length> back = a.in(unit()).in(a.unit());

            assertThat(back.libraryValue())
                    .as("seed %d, case %d, %s", SEED, i, a)
                    .isEqualTo(a.libraryValue());
        }
    }

    /** a + b = b + a, whichever units the two are in. */
    @Test
    void plus_doesNotCareForOrderOrUnits() {
        for (int i = 0; i < CASES; i++) {
            Amount<Length> a = amount();
            Amount<Length> b = amount();

            double one = a.plus(b).libraryValue();

            assertThat(one).as("seed %d, case %d", SEED, i).isCloseTo(b.plus(a).libraryValue(), within(slack(a, b)));
            assertThat(one)
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(a.in(unit()).plus(b.in(unit())).libraryValue(), within(slack(a, b)));
        }
    }

    /** a + b - b = a. */
    @Test
    void minus_undoesPlus() {
        for (int i = 0; i < CASES; i++) {
            Amount<Length> a = amount();
            Amount<Length> b = amount();

            assertThat(a.plus(b).minus(b).libraryValue())
                    .as("seed %d, case %d, %s and %s", SEED, i, a, b)
                    .isCloseTo(a.libraryValue(), within(slack(a, b)));
        }
    }

    /** (a k)/k = a and a k is to a as k is to 1. */
    @Test
    void times_scales() {
        for (int i = 0; i < CASES; i++) {
            Amount<Length> a = amount();
            double k = Math.pow(10, random.nextDouble(-3, 3));

            assertThat(a.times(k).dividedBy(k).libraryValue())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(a.libraryValue(), within(3 * Math.ulp(Math.abs(a.libraryValue()))));
            assertThat(a.times(k).ratioTo(a)).as("seed %d, case %d", SEED, i).isCloseTo(k, within(1e-14 * k));
        }
    }

    /** What is written to twelve digits reads back to twelve, and what a person reads to half its last place. */
    @Test
    void parse_readsWhatWasPrinted() {
        for (int i = 0; i < CASES; i++) {
            Amount<Length> a = amount();

            assertThat(ShopUnits.length(a.exactly()).libraryValue())
                    .as("seed %d, case %d, %s", SEED, i, a.exactly())
                    .isCloseTo(a.libraryValue(), within(1e-11 * Math.abs(a.libraryValue())));
            // Three decimals of a millimetre, four of an inch, five of a foot: half of 0.00001 ft is 0.001524 mm.
            assertThat(ShopUnits.length(a.toString()).libraryValue())
                    .as("seed %d, case %d, %s", SEED, i, a)
                    .isCloseTo(a.libraryValue(), within(0.0015241));
        }
    }
}
