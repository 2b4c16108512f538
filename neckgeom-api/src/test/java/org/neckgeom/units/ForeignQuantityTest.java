package org.neckgeom.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.testing.Hostile;
import org.neckgeom.testing.OtherQuantity;
import org.neckgeom.text.Words;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Quantities of other providers at the border: right numbers, and one clear sentence for what makes none. */
class ForeignQuantityTest {

    private static final Unit<Length> INCH = Units.METRE.multiply(254).divide(10_000);
    private static final Unit<Dimensionless> ONE = Units.PERCENT.getSystemUnit();

    static Stream<Arguments> lengths() {
        return Stream.of(
                Arguments.of(Quantities.getQuantity(44.45, MetricPrefix.MILLI(Units.METRE)), "44.45"),
                Arguments.of(Quantities.getQuantity(3, MetricPrefix.CENTI(Units.METRE)), "30"),
                Arguments.of(Quantities.getQuantity(0.56, Units.METRE), "560"),
                Arguments.of(Quantities.getQuantity(7, MetricPrefix.DECI(Units.METRE)), "700"),
                Arguments.of(Quantities.getQuantity(125, MetricPrefix.MICRO(Units.METRE)), "0.125"),
                Arguments.of(Quantities.getQuantity(1e-3, MetricPrefix.KILO(Units.METRE)), "1000"),
                Arguments.of(Quantities.getQuantity(1.75, INCH), "44.45"),
                Arguments.of(Quantities.getQuantity(1.75, Units.METRE.multiply(0.0254)), "44.45"),
                Arguments.of(
                        Quantities.getQuantity(
                                1.75, MetricPrefix.MILLI(Units.METRE).multiply(25.4)),
                        "44.45"),
                Arguments.of(Quantities.getQuantity(5, Units.METRE.divide(1000)), "5"),
                Arguments.of(Quantities.getQuantity(1, Units.METRE.divide(3)), "333.3333333333333333333"),
                Arguments.of(Quantities.getQuantity(new BigDecimal("25.4"), INCH), "645.16"),
                Arguments.of(Quantities.getQuantity(BigInteger.TEN, INCH), "254"),
                Arguments.of(Quantities.getQuantity(1.75, INCH).to(Units.METRE), "44.45"),
                Arguments.of(Quantities.getQuantity(1.75, INCH).divide(7), "6.35"),
                Arguments.of(new OtherQuantity<>(1.75f, INCH), "44.45"),
                Arguments.of(new OtherQuantity<>(9L, Units.METRE), "9000"));
    }

    @ParameterizedTest
    @MethodSource("lengths")
    void mm_readsAnyLength(Quantity<Length> length, BigDecimal mm) {
        assertThat(LibraryUnits.mm(length, "length")).isEqualTo(mm.doubleValue());
    }

    @Test
    void mm_readsUnitsMadeAnewEachCall() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 2_000; i++) {
            double value = random.nextInt(1, 1_000_000) / 1024.0;

            Quantity<Length> length = Quantities.getQuantity(value, MetricPrefix.MILLI(Units.METRE));
            Quantity<Length> inches =
                    Quantities.getQuantity(value, Units.METRE.multiply(254).divide(10_000));

            assertThat(LibraryUnits.mm(length, "length")).isEqualTo(value);
            assertThat(LibraryUnits.mm(inches, "length"))
                    .isEqualTo(new BigDecimal(value)
                            .multiply(new BigDecimal("25.4"))
                            .doubleValue());
        }
    }

    @Test
    void mm_readsMoreUnitsThanTheBorderRemembers() {
        for (int n = 1; n <= 200; n++) {
            Quantity<Length> length =
                    Quantities.getQuantity(3, Units.METRE.multiply(n).divide(1000));

            assertThat(LibraryUnits.mm(length, "length")).as("3 x %d mm", n).isEqualTo(3.0 * n);
            assertThat(LibraryUnits.mm(length, "length")).isEqualTo(3.0 * n);
        }
    }

    @Test
    void of_givesTheLibraryUnitWhicheverUnitOfTheKindIsNamed() {
        Quantity<Length> foreign = Quantities.getQuantity(2, MetricPrefix.CENTI(Units.METRE));

        assertThat(LibraryUnits.of(foreign, ShopUnit.INCH, "length")).isEqualTo(20);
        assertThat(LibraryUnits.of(mm(20), ShopUnit.INCH, "length")).isEqualTo(20);
        assertThat(LibraryUnits.positive(foreign, ShopUnit.INCH, "length")).isEqualTo(20);
    }

    @Test
    void from_keepsTheUnitWhereTheShopHasIt() {
        assertThat(Amount.from(Quantities.getQuantity(1.75, INCH), "width")).hasToString("1.75 in");
        assertThat(Amount.from(Quantities.getQuantity(1.75, Units.METRE), "width"))
                .hasToString("1.75 m");
        assertThat(Amount.from(Quantities.getQuantity(21, Units.CELSIUS), "room"))
                .hasToString("21 degC");
        assertThat(Amount.from(Quantities.getQuantity(40, Units.PERCENT), "share"))
                .hasToString("40 %");
        assertThat(Amount.from(Quantities.getQuantity(90, MetricPrefix.MICRO(Units.METRE)), "width"))
                .hasToString("0.09 mm");
        assertThat(Amount.from(
                        Quantities.getQuantity(
                                2,
                                Units.KILOGRAM
                                        .multiply(Units.METRE)
                                        .divide(Units.SECOND.pow(2))
                                        .asType(javax.measure.quantity.Force.class)),
                        "pull"))
                .hasToString("2 N");
    }

    @Test
    void from_tellsKindsOfOneDimensionApart() {
        Quantity<Angle> angle = Quantities.getQuantity(0.5, Units.RADIAN);
        Quantity<Dimensionless> ratio = Quantities.getQuantity(0.5, ONE);

        assertThat(LibraryUnits.rad(angle, "pitch")).isEqualTo(0.5);
        assertThat(LibraryUnits.ratio(ratio, "share")).isEqualTo(0.5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LibraryUnits.rad(OtherQuantity.lie(ratio), "pitch"))
                .withMessageStartingWith("pitch must be an angle, but was 0.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LibraryUnits.ratio(OtherQuantity.lie(angle), "share"))
                .withMessageStartingWith("share must be a ratio, but was 0.5 rad");
    }

    @Test
    void celsius_readsAnyProvidersTemperature() {
        Unit<Temperature> fahrenheit = Units.KELVIN.multiply(5).divide(9).shift(new BigDecimal("459.67"));

        assertThat(LibraryUnits.celsius(Quantities.getQuantity(20, Units.CELSIUS), "room"))
                .isEqualTo(20);
        assertThat(LibraryUnits.celsius(Quantities.getQuantity(293.15, Units.KELVIN), "room"))
                .isEqualTo(20);
        assertThat(LibraryUnits.celsius(Quantities.getQuantity(68, fahrenheit), "room"))
                .isEqualTo(20);
    }

    @Test
    void celsius_refusesADifferenceOfTemperatures() {
        Quantity<Temperature> difference = new OtherQuantity<>(5, Units.KELVIN, Quantity.Scale.RELATIVE);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> LibraryUnits.celsius(difference, "room"))
                .withMessage("room must be a temperature, not a difference of temperatures, but was 5 K");
    }

    @Test
    void rawLie_isNamedAtTheDoor() {
        Quantity<Length> seconds = OtherQuantity.lie(Quantities.getQuantity(3, Units.SECOND));
        Quantity<Length> force = OtherQuantity.lie(newton(3));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> LibraryUnits.mm(seconds, "near wall"))
                .withMessage("near wall must be a length, but was 3 s");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LibraryUnits.mm(force, "near wall"))
                .withMessage("near wall must be a length, but was 3 N");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> mm(1).plus(seconds))
                .withMessage("other must be a length, but was 3 s");
        for (Quantity<Length> lie : List.of(seconds, force)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> mm(1).plus(lie))
                    .withMessageContaining("a length");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> mm(1).minus(lie))
                    .withMessageContaining("a length");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> mm(1).ratioTo(lie))
                    .withMessageContaining("a length");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> mm(1).isCloseTo(lie, mm(1)))
                    .withMessageContaining("a length");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> mm(1).isCloseTo(mm(1), lie))
                    .withMessageContaining("a length");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> mm(1).isEquivalentTo(lie))
                    .withMessageContaining("a length");
        }
    }

    @Test
    void from_refusesAKindItDoesNotKnow() {
        Quantity<javax.measure.quantity.Time> seconds = Quantities.getQuantity(3, Units.SECOND);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> Amount.from(seconds, "pause"))
                .withMessage("pause must be a quantity of a kind known here (length, angle, force, ...), but was 3 s");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void notFinite_isRefusedWithItsName(double value) {
        Quantity<Length> length = new OtherQuantity<>(value, Units.METRE);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> LibraryUnits.mm(length, "near wall"))
                .withMessageStartingWith("near wall must be a finite number, but was ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Amount.from(length, "near wall"))
                .withMessageContaining("finite number");
    }

    @Test
    void tooLarge_isRefused() {
        Quantity<Length> length = new OtherQuantity<>(1e308, Units.METRE);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> LibraryUnits.mm(length, "near wall"))
                .withMessageContaining("near wall must be a finite number");
    }

    @Test
    void missingPartsOfAForeignQuantity_areNamed() {
        assertThatNullPointerException()
                .isThrownBy(() -> LibraryUnits.mm(null, "near wall"))
                .withMessage("near wall");
        assertThatThrownBy(() -> LibraryUnits.mm(new OtherQuantity<Length>(null, Units.METRE), "near wall"))
                .isInstanceOf(NullPointerException.class)
                .hasMessageContaining("near wall");
        assertThatThrownBy(() -> LibraryUnits.mm(new OtherQuantity<Length>(3, null), "near wall"))
                .isInstanceOf(NullPointerException.class)
                .hasMessageContaining("near wall");
    }

    @Test
    void logarithmicUnit_isNoRatio() throws ReflectiveOperationException {
        // By reflection: the class carries an annotation that its jar does not bring, which javac warns about.
        UnitConverter log = (UnitConverter) Class.forName("tech.units.indriya.function.LogConverter")
                .getConstructor(double.class)
                .newInstance(10.0);
        Unit<Dimensionless> bel = ONE.transform(log);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> LibraryUnits.ratio(Quantities.getQuantity(2, bel), "share"))
                .withMessageStartingWith("share must be a ratio, but was 2 ");
    }

    @Test
    void refusal_showsTheShopsSymbolForAForeignUnit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LibraryUnits.mmPositive(Quantities.getQuantity(-3, INCH), "near wall"))
                .withMessage("near wall must be more than 0 in, but was -3 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LibraryUnits.mmNotNegative(
                        Quantities.getQuantity(-3, MetricPrefix.MILLI(Units.METRE)), "near wall"))
                .withMessage("near wall must be 0 mm or more, but was -3 mm");
    }

    @Test
    void isEquivalentTo_isSymmetricAndBlindToTheProvider() {
        assertThat(mm(25.4).isEquivalentTo(inch(1))).isTrue();
        assertThat(inch(1).isEquivalentTo(mm(25.4))).isTrue();
        assertThat(inch(1).isEquivalentTo(Quantities.getQuantity(25.4, MetricPrefix.MILLI(Units.METRE))))
                .isTrue();
        assertThat(inch(1).isEquivalentTo(mm(25.400000000000002))).isFalse();
        assertThat(mm(25.400000000000002).isEquivalentTo(inch(1))).isFalse();
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 20_000; i++) {
            Amount<Length> a = inch(random.nextInt(0, 64) / 64.0);
            Amount<Length> b = mm(random.nextInt(0, 64) / 64.0 * 25.4);
            assertThat(a.isEquivalentTo(b)).isEqualTo(b.isEquivalentTo(a)).isEqualTo(a.equals(b));
        }
    }

    @Test
    void to_givesAnAmountInShopUnitsAndIndriyasOtherwise() {
        assertThat(mm(44.45).to(INCH)).isInstanceOf(Amount.class).hasToString("1.75 in");
        assertThat(mm(44.45).to(MetricPrefix.MILLI(Units.METRE))).isInstanceOf(Amount.class);
        Quantity<Length> micro = mm(0.5).to(MetricPrefix.MICRO(Units.METRE));
        assertThat(micro.getValue().doubleValue()).isEqualTo(500);
        assertThat(micro.getUnit()).isEqualTo(MetricPrefix.MICRO(Units.METRE));
    }

    @Test
    void productsAndQuotients_areIndriyas() {
        assertThat(mm(2).multiply(mm(3)).getUnit().getDimension()).isEqualTo(Units.SQUARE_METRE.getDimension());
        assertThat(mm(2).multiply(mm(3)).getValue().doubleValue()).isEqualTo(6);
        assertThat(newton(6).divide(mm(3)).getValue().doubleValue()).isEqualTo(2);
        assertThat(mm(4).inverse().getValue().doubleValue()).isEqualTo(0.25);
        assertThatThrownBy(() -> mm(4).divide(mm(0))).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> mm(0).inverse()).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void indriya_acceptsAnAmount() {
        Quantity<Length> sum = Quantities.getQuantity(1, INCH).add(mm(25.4));

        assertThat(LibraryUnits.mm(sum, "sum")).isEqualTo(50.8);
    }

    /** A yard is 36 in and 914.4 mm exactly (international yard and pound agreement of 1959). */
    @Test
    void to_givesTheDoubleNearestTheExactConversion() {
        Unit<Length> yard = Units.METRE.multiply(9144).divide(10_000);
        Unit<Length> hundredth = Units.METRE.divide(100_000);

        long seed = 7;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            double whole = random.nextInt(1, 100_000) / 1000.0;
            BigDecimal exact = new BigDecimal(whole);
            assertThat(inch(whole).to(yard).getValue().doubleValue())
                    .as("seed %d, %s in", seed, whole)
                    .isEqualTo(exact.divide(BigDecimal.valueOf(36), java.math.MathContext.DECIMAL128)
                            .doubleValue());
            assertThat(inch(whole).to(hundredth).getValue().doubleValue())
                    .as("seed %d, %s in", seed, whole)
                    .isEqualTo(exact.multiply(BigDecimal.valueOf(2540)).doubleValue());
            assertThat(mm(whole).to(yard).getValue().doubleValue())
                    .as("seed %d, %s mm", seed, whole)
                    .isEqualTo(exact.divide(new BigDecimal("914.4"), java.math.MathContext.DECIMAL128)
                            .doubleValue());
        }
    }

    /** Asked twice, its unit is gone: the sentence about its value must not be lost for that. */
    @Test
    void hostileQuantities_getOneSentence() {
        for (Quantity<?> hostile : Hostile.quantities(ShopUnit.MILLIMETRE.jsr385())) {
            for (int again = 0; again < 5; again++) {
                Quantity<Length> length = OtherQuantity.lie(hostile);
                try {
                    assertThat(LibraryUnits.mmPositive(length, "near wall")).isEqualTo(3);
                } catch (IllegalArgumentException refused) {
                    assertThat(refused)
                            .hasMessageStartingWith("near wall must be ")
                            .hasNoSuppressedExceptions();
                    assertThat(Words.isLine(refused.getMessage()))
                            .as(refused.getMessage())
                            .isTrue();
                } catch (NullPointerException missing) {
                    assertThat(missing.getMessage()).matches("near wall without a (value|unit)");
                }
            }
        }
    }

    /** What calls itself equal to every unit must not become what an honest provider's unit is read as. */
    @Test
    void hostileUnits_changeNothingForOthers() {
        for (Quantity<?> hostile : Hostile.quantities(ShopUnit.MILLIMETRE.jsr385())) {
            try {
                LibraryUnits.mm(OtherQuantity.lie(hostile), "near wall");
            } catch (IllegalArgumentException | NullPointerException refused) {
                assertThat(refused.getMessage()).startsWith("near wall ");
            }
        }
        Unit<Length> own = MetricPrefix.DECI(Units.METRE).multiply(1.7);
        assertThat(LibraryUnits.mm(new OtherQuantity<>(2, own), "length")).isEqualTo(340);
    }
}
