package org.neckgeom.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.fahrenheit;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.rpm;
import static org.neckgeom.units.ShopUnits.thou;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AmountTest {

    @Test
    void equals_isTheLibraryValueWhateverTheUnit() {
        assertThat(inch(1)).isEqualTo(mm(25.4)).hasSameHashCodeAs(mm(25.4));
        assertThat(thou(1000)).isEqualTo(inch(1));
        assertThat(rpm(60)).isEqualTo(hertz(1)).hasSameHashCodeAs(hertz(1));
        assertThat(percent(50)).isEqualTo(ShopUnit.ONE.of(0.5));
        assertThat(mm(1)).isNotEqualTo(mm(1 + 1e-15)).isNotEqualTo(newton(1)).isNotEqualTo(null);
        assertThat(mm(1).equals((Object) "1 mm")).isFalse();
    }

    @Test
    void minusZero_losesItsSign() {
        for (Amount<Length> zero : List.of(
                mm(-0.0), inch(-0.0), mm(0).negated(), mm(-1).times(0), Amount.ofLibrary(-0.0, ShopUnit.INCH))) {
            assertThat(zero).isEqualTo(mm(0)).hasSameHashCodeAs(mm(0));
            assertThat(1 / zero.value()).isEqualTo(Double.POSITIVE_INFINITY);
            assertThat(1 / zero.libraryValue()).isEqualTo(Double.POSITIVE_INFINITY);
            assertThat(zero.compareTo(mm(0))).isZero();
            assertThat(zero.toString()).startsWith("0 ");
        }
    }

    @Test
    void compareTo_ordersByTheLibraryValueConsistentWithEquals() {
        List<Amount<Length>> ascending = List.of(mm(-3), mm(0), thou(1), mm(0.1), mm(25), inch(1), mm(26), inch(2));
        List<Amount<Length>> shuffled = new ArrayList<>(ascending);
        Collections.shuffle(shuffled, new Random(5));
        Collections.sort(shuffled);

        assertThat(shuffled).isEqualTo(ascending);
        assertThat(inch(1).compareTo(mm(25.4))).isZero();
    }

    @Test
    void arithmetic_keepsTheUnitItIsAskedOf() {
        assertThat(inch(1).plus(mm(25.4))).hasToString("2 in");
        assertThat(mm(25.4).plus(inch(1))).hasToString("50.8 mm");
        assertThat(mm(1).minus(mm(3))).hasToString("-2 mm");
        assertThat(inch(0.1).plus(inch(0.2))).hasToString("0.3 in");
        assertThat(deg(13).times(2)).hasToString("26 deg");
        assertThat(deg(13).dividedBy(4)).hasToString("3.25 deg");
        assertThat(mm(-2).abs()).hasToString("2 mm");
        assertThat(mm(2).abs()).isEqualTo(mm(2));
        assertThat(mm(2).negate()).isEqualTo(mm(-2));
        assertThat(inch(1).ratioTo(mm(12.7))).isEqualTo(2);
        assertThat(mm(2).add(mm(3))).isEqualTo(mm(5));
        assertThat(mm(2).subtract(mm(3))).isEqualTo(mm(-1));
        assertThat(mm(2).multiply(new BigDecimal("1.5"))).isEqualTo(mm(3));
        assertThat(mm(2).divide(4)).isEqualTo(mm(0.5));
    }

    @Test
    void arithmetic_isExactInTheUnitItWasGivenIn() {
        SplittableRandom random = new SplittableRandom(42);
        for (int i = 0; i < 20_000; i++) {
            double a = random.nextDouble() * 100;
            double b = random.nextDouble() * 100;

            assertThat(inch(a).plus(inch(b)).value()).as("seed 42, trial %d", i).isEqualTo(a + b);
            assertThat(inch(a).minus(mm(b)).libraryValue()).isEqualTo(inch(a).libraryValue() - b);
            assertThat(inch(a).plus(mm(b)).minus(mm(b)).isCloseTo(inch(a), mm(1e-12)))
                    .isTrue();
        }
    }

    @Test
    void isCloseTo_includesItsTolerance() {
        assertThat(mm(3).isCloseTo(mm(3.5), mm(0.5))).isTrue();
        assertThat(mm(3).isCloseTo(mm(2.5), mm(0.5))).isTrue();
        assertThat(mm(3).isCloseTo(mm(3.5), mm(0.49))).isFalse();
        assertThat(mm(3).isCloseTo(mm(3), mm(0))).isTrue();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> mm(3).isCloseTo(mm(3), mm(-1)))
                .withMessage("tolerance must be 0 mm or more, but was -1 mm");
    }

    @Test
    void temperatures_doNotAdd() {
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> celsius(20).plus(celsius(1)))
                .withMessage("temperatures on a scale cannot be added: 20 degC");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> celsius(20).minus(celsius(1)))
                .withMessage("temperatures on a scale cannot be subtracted: 20 degC");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> fahrenheit(68).times(2))
                .withMessage("temperatures on a scale cannot be multiplied: 68 degF");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> celsius(20).dividedBy(2))
                .withMessage("temperatures on a scale cannot be divided: 20 degC");
        assertThat(celsius(20)).isEqualTo(fahrenheit(68)).isGreaterThan(fahrenheit(67));
    }

    @Test
    void divisionByZero_hasNoAnswer() {
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> mm(3).dividedBy(0))
                .withMessage("3 mm was to be divided by 0");
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> mm(3).ratioTo(inch(0.0)))
                .withMessage("3 mm was to be divided by 0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e308})
    void of_refusesWhatIsNoFiniteLength(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopUnit.METRE.of(value))
                .withMessageMatching("an amount must be a finite number.*, but was (NaN|-?infinity|1E\\+308) m");
    }

    @Test
    void overflow_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> mm(1e308).times(10));
        assertThatIllegalArgumentException().isThrownBy(() -> mm(1e308).plus(mm(1e308)));
        assertThatIllegalArgumentException().isThrownBy(() -> mm(1e308).in(ShopUnit.THOU));
        assertThatIllegalArgumentException().isThrownBy(() -> mm(1).times(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> mm(1).dividedBy(1e-320));
    }

    @Test
    void asType_knowsItsKind() {
        Quantity<Length> length = mm(3).asType(Length.class);

        assertThat(length).isEqualTo(mm(3));
        assertThatExceptionOfType(ClassCastException.class)
                .isThrownBy(() -> mm(3).asType(Angle.class))
                .withMessage("3 mm is a length, not of kind Angle");
    }

    @Test
    void jsr385_partsAreThoseOfTheGivenUnit() {
        assertThat(inch(1.75).getValue()).isEqualTo(1.75);
        assertThat(inch(1.75).getUnit()).isSameAs(ShopUnit.INCH.jsr385());
        assertThat(inch(1.75).getScale()).isEqualTo(Quantity.Scale.ABSOLUTE);
        assertThat(inch(1.75).unit()).isSameAs(ShopUnit.INCH);
    }

    @Test
    void toString_isShortAndWithoutNoise() {
        assertThat(inch(25.5).in(ShopUnit.MILLIMETRE)).hasToString("647.7 mm");
        assertThat(mm(1.0 / 3)).hasToString("0.333 mm");
        assertThat(mm(0.1 + 0.2)).hasToString("0.3 mm");
        assertThat(ShopUnit.ONE.of(0.25)).hasToString("0.25");
        assertThat(mm(1e300)).hasToString("1E+300 mm");
        assertThat(mm(-4e-9)).hasToString("-4E-9 mm");
        assertThat(mm(12345678.5)).hasToString("12345678.5 mm");
    }

    /** By hand: 6 mm are 0.23622 in, 0.1 mm 0.003937 in or 3.937 thou, 1/64 in 0.015625 in or 0.396875 mm. */
    @Test
    void toString_leavesOutWhatNobodyReads() {
        assertThat(mm(6).in(ShopUnit.INCH)).hasToString("0.2362 in");
        assertThat(mm(270.2).in(ShopUnit.INCH)).hasToString("10.6378 in");
        assertThat(mm(0.1).in(ShopUnit.INCH)).hasToString("0.0039 in");
        assertThat(mm(0.1).in(ShopUnit.THOU)).hasToString("3.9 thou");
        assertThat(mm(1000.0 / 3)).hasToString("333.333 mm");
        assertThat(inch(1 / 64.0).in(ShopUnit.MILLIMETRE)).hasToString("0.397 mm");
        assertThat(inch(0.079).in(ShopUnit.MILLIMETRE)).hasToString("2.007 mm");
        assertThat(mm(-6).in(ShopUnit.INCH)).hasToString("-0.2362 in");
        assertThat(mm(100).in(ShopUnit.FOOT)).hasToString("0.32808 ft");
    }

    @Test
    void toString_keepsWhatMayHaveBeenTyped() {
        assertThat(inch(1 / 64.0)).hasToString("0.015625 in");
        assertThat(inch(1 / 128.0)).hasToString("0.0078125 in");
        assertThat(mm(0.0254)).hasToString("0.0254 mm");
        assertThat(mm(25.4)).hasToString("25.4 mm");
        assertThat(mm(0)).hasToString("0 mm");
        assertThat(mm(12345678.5)).hasToString("12345678.5 mm");
    }

    @Test
    void toString_neverRoundsASizeAway() {
        assertThat(mm(0.0000123)).hasToString("0.000012 mm");
        assertThat(mm(-4e-9)).hasToString("-4E-9 mm");
        assertThat(mm(1e300)).hasToString("1E+300 mm");
        assertThat(mm(0.002).in(ShopUnit.INCH)).hasToString("0.000079 in");
    }

    /** By hand: atan(19/76) is 14.03624 deg, E2 is 82.40689 Hz, 1 kgf 9.80665 N, 2/3 of a degree 0.011636 rad. */
    @Test
    void toString_roundsOtherKindsToo() {
        assertThat(deg(100.0 / 3)).hasToString("33.33 deg");
        assertThat(ShopUnit.DEGREE.of(Math.toDegrees(Math.atan2(19, 76)))).hasToString("14.04 deg");
        assertThat(deg(0.003456)).hasToString("0.0035 deg");
        assertThat(deg(0.625)).hasToString("0.625 deg");
        assertThat(deg(2.0 / 3).in(ShopUnit.RADIAN)).hasToString("0.0116 rad");
        assertThat(ShopUnits.pitch("E2")).hasToString("82.41 Hz");
        assertThat(ShopUnit.KILOGRAM_FORCE.of(1).in(ShopUnit.NEWTON)).hasToString("9.80665 N");
        assertThat(ShopUnit.NEWTON.of(12345.6789)).hasToString("12346 N");
        assertThat(ShopUnit.ONE.of(0.25)).hasToString("0.25");
        assertThat(ShopUnit.PERCENT.of(200.0 / 3)).hasToString("66.67 %");
        assertThat(ShopUnit.PERCENT.of(99.9999999)).hasToString("99.9999999 %");
        assertThat(ShopUnit.NEWTON.of(1.23456789e-9)).hasToString("1.235E-9 N");
        assertThat(mm(1.23456789e-9)).hasToString("1.235E-9 mm");
    }

    @Test
    void exactly_hasUpToTwelveDigits() {
        assertThat(mm(6).in(ShopUnit.INCH).exactly()).isEqualTo("0.236220472441 in");
        assertThat(mm(1.0 / 3).exactly()).isEqualTo("0.333333333333 mm");
        assertThat(ShopUnit.ONE.of(2.0 / 3).exactly()).isEqualTo("0.666666666667");
    }

    /** By hand: 44.45 mm are 1 3/4 in, 44.5008 mm 2 thou more, and 0.3 mm 11.8 thou. */
    @Test
    void in_saysALengthInAStyle_andEqualsIt() {
        for (double value : new double[] {44.45, 44.5008, 0.3, -44.45, 0, 1e-9, 1e9}) {
            for (LengthStyle style : LengthStyle.values()) {
                assertThat(mm(value).in(style)).isEqualTo(mm(value)).hasSameHashCodeAs(mm(value));
                assertThat(LengthStyle.of(mm(value).in(style))).isEqualTo(style);
            }
        }
        assertThat(mm(44.45).in(LengthStyle.INCH_FRACTIONS)).hasToString("1 3/4 in");
        assertThat(mm(44.5008).in(LengthStyle.INCH_FRACTIONS)).hasToString("1 3/4 in + 2.0 thou");
        assertThat(mm(0.3).in(LengthStyle.INCH_FRACTIONS)).hasToString("11.8 thou");
        assertThat(mm(44.45).in(LengthStyle.DECIMAL_INCHES)).hasToString("1.75 in");
        assertThat(inch(1.75).in(LengthStyle.MILLIMETRES)).hasToString("44.45 mm");
        assertThat(mm(44.45).in(LengthStyle.INCH_FRACTIONS).plus(mm(12.7))).hasToString("2 1/4 in");
        assertThat(ShopUnits.newton(82.1).in(LengthStyle.INCH_FRACTIONS)).hasToString("82.1 N");
        assertThat(ShopUnits.mmPerMinute(254).in(LengthStyle.DECIMAL_INCHES)).hasToString("10 in/min");
    }
}
