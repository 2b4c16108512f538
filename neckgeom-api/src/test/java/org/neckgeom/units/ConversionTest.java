package org.neckgeom.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.testing.ReferenceTable;

/** Conversions against decimal arithmetic, against Indriya's own, and against a table of published factors. */
class ConversionTest {

    private static final BigDecimal MM_IN_INCH = new BigDecimal("25.4");
    private static final long SEED = 20261125;

    static Stream<ShopUnit<?>> units() {
        return ShopUnit.ALL.stream();
    }

    static Stream<Map<String, String>> factors() {
        return ReferenceTable.rows("/units/unit-conversions.csv").stream().filter(row -> shopFactor(row) != null);
    }

    @Test
    void inch_isCorrectlyRoundedForEveryRuledValueUpToForty() {
        for (int parts = 2; parts <= 128; parts *= 2) {
            for (int k = 0; k <= 40 * parts; k++) {
                double inches = (double) k / parts;

                assertThat(ShopUnits.inch(inches).libraryValue())
                        .as("%d/%d in", k, parts)
                        .isEqualTo(new BigDecimal(inches).multiply(MM_IN_INCH).doubleValue());
            }
        }
    }

    @Test
    void inch_isCorrectlyRoundedForRandomValues() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 200_000; i++) {
            double inches = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-6, 7));

            double mm = ShopUnit.INCH.toLibrary(inches);

            if (mm != new BigDecimal(inches).multiply(MM_IN_INCH).doubleValue()) {
                throw new AssertionError("seed " + SEED + ", trial " + i + ": " + inches + " in gave " + mm + " mm");
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"INCH, 25.4", "THOU, 0.0254", "FOOT, 304.8", "CENTIMETRE, 10", "METRE, 1000"})
    void lengths_areCorrectlyRoundedForRandomValues(String unit, BigDecimal factor) throws Exception {
        ShopUnit<?> shop = (ShopUnit<?>) ShopUnit.class.getField(unit).get(null);
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 20_000; i++) {
            double value = random.nextDouble() * 1000;

            assertThat(shop.toLibrary(value))
                    .as("seed %d, trial %d, %s %s", SEED, i, value, unit)
                    .isEqualTo(new BigDecimal(value).multiply(factor).doubleValue());
        }
    }

    @ParameterizedTest
    @MethodSource("units")
    void fromLibrary_isWithinOneUnitInTheLastPlace(ShopUnit<?> unit) {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 5_000; i++) {
            double value = (random.nextDouble() + 1e-3) * 1000;
            double libraryValue = unit.toLibrary(value);

            double back = unit.fromLibrary(libraryValue);

            // Rounding the house value once moves the way back by half of its last place; the way back rounds again.
            double slack = unit.hasOffset() ? 4 * Math.ulp(1000.0) : 1.5 * Math.ulp(value) * 2;
            assertThat(back).as("seed %d, trial %d", SEED, i).isCloseTo(value, within(slack));
        }
    }

    @Test
    void entryInOneUnit_readInTheOther_showsNoNoise() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 200_000; i++) {
            BigDecimal written = BigDecimal.valueOf(random.nextInt(1, 4_000_000), random.nextInt(0, 5));
            double value = written.doubleValue();
            String inMm = ShopUnits.inch(value).in(ShopUnit.MILLIMETRE).exactly();
            String exact = written.multiply(MM_IN_INCH)
                            .round(new MathContext(12))
                            .stripTrailingZeros()
                            .toPlainString() + " mm";
            String andBack = ShopUnits.inch(value)
                    .in(ShopUnit.MILLIMETRE)
                    .in(ShopUnit.INCH)
                    .exactly();

            if (!inMm.equals(exact)
                    || !andBack.equals(written.stripTrailingZeros().toPlainString() + " in")) {
                throw new AssertionError("seed " + SEED + ", trial " + i + ": " + written + " in read " + inMm
                        + " instead of " + exact + ", and back " + andBack);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("units")
    <Q extends Quantity<Q>> void factor_isIndriyas(ShopUnit<Q> unit) throws Exception {
        ShopUnit<?> libraryValue = ShopUnit.HOUSE.stream()
                .filter(candidate -> candidate.kind() == (Class<?>) unit.kind())
                .findFirst()
                .orElseThrow();
        UnitConverter converter = unit.jsr385().getConverterToAny(libraryValue.jsr385());
        for (String number : new String[] {"0", "1", "7", "25.4", "98.6", "451", "1000000"}) {
            double value = Double.parseDouble(number);
            double expected = converter.convert((Number) new BigDecimal(value)).doubleValue();

            double ours = unit.toLibrary(value);

            double slack = unit.hasOffset() ? 2 * Math.ulp(Math.max(300, Math.abs(expected))) : Math.ulp(expected);
            assertThat(ours).as("%s %s", number, unit).isCloseTo(expected, within(slack));
        }
    }

    @ParameterizedTest
    @MethodSource("units")
    void jsr385_hasTheDimensionOfItsKind(ShopUnit<?> unit) {
        Unit<?> libraryValue = ShopUnit.HOUSE.stream()
                .filter(candidate -> candidate.kind() == (Class<?>) unit.kind())
                .findFirst()
                .orElseThrow()
                .jsr385();

        assertThat(unit.jsr385().getDimension()).isEqualTo(libraryValue.getDimension());
    }

    @ParameterizedTest
    @MethodSource("factors")
    void factor_isThePublishedOne(Map<String, String> row) {
        double published = new BigDecimal(row.get("factor")).doubleValue();

        assertThat(shopFactor(row)).as("%s", row).isCloseTo(published, within(Math.ulp(published)));
    }

    /** Factor between two units of the table by ours, or null where the table has a unit that the shop does not. */
    private static Double shopFactor(Map<String, String> row) {
        return switch (row.get("from") + " > " + row.get("to")) {
            case "inch > millimetre" -> ShopUnit.INCH.toLibrary(1);
            case "foot > metre" -> ShopUnit.METRE.fromLibrary(ShopUnit.FOOT.toLibrary(1));
            case "mil (thou) > millimetre" -> ShopUnit.THOU.toLibrary(1);
            case "1/64 inch > millimetre" -> ShopUnits.inch("1/64").libraryValue();
            case "pound-force > newton" -> ShopUnit.POUND_FORCE.toLibrary(1);
            case "newton > pound-force" -> ShopUnit.POUND_FORCE.fromLibrary(1);
            case "pound-force per square inch > megapascal" -> ShopUnit.PSI.toLibrary(1);
            case "megapascal > pound-force per square inch" -> ShopUnit.PSI.fromLibrary(1);
            case "10^6 psi > megapascal" -> ShopUnit.PSI.toLibrary(1e6);
            case "pound per inch (mass per length) > kilogram per metre" -> ShopUnit.POUND_PER_INCH.toLibrary(1) / 1000;
            case "degree > radian" -> ShopUnit.DEGREE.toLibrary(1);
            case "radian > degree" -> ShopUnit.DEGREE.fromLibrary(1);
            case "inch per minute > millimetre per minute" ->
                ShopUnit.MM_PER_MINUTE.fromLibrary(ShopUnit.INCH_PER_MINUTE.toLibrary(1));
            default -> null;
        };
    }

    @Test
    void factors_coverTheTable() {
        assertThat(factors()).hasSize(13);
    }

    @ParameterizedTest
    @CsvSource({"32, 0", "212, 100", "-40, -40", "98.6, 37", "68, 20", "50, 10", "5, -15"})
    void fahrenheit_isTheDefinition(double fahrenheit, double celsius) {
        // C = (F - 32)/1.8: NIST SP 811 (2008) App. B.
        assertThat(ShopUnits.fahrenheit(fahrenheit).libraryValue()).isEqualTo(celsius);
        assertThat(ShopUnits.celsius(celsius).valueIn(ShopUnit.FAHRENHEIT)).isCloseTo(fahrenheit, within(6e-14));
        assertThat(ShopUnits.fahrenheit(fahrenheit)).isEqualTo(ShopUnits.celsius(celsius));
    }

    @Test
    void fahrenheit_reachesAbsoluteZero() {
        assertThat(ShopUnits.fahrenheit(-459.67).libraryValue()).isCloseTo(-273.15, within(Math.ulp(273.15)));
    }

    @ParameterizedTest
    @CsvSource({"273.15, 0", "293.15, 20", "0, -273.15", "310.15, 37"})
    void kelvin_isTheDefinition(double kelvin, double celsius) {
        assertThat(ShopUnit.KELVIN.of(kelvin).libraryValue()).isCloseTo(celsius, within(6e-14));
    }

    @Test
    void degree_isCorrectlyRoundedForWholeDegrees() {
        // pi to 50 digits: well known, also in the factor table beside as pi/180 to 30 digits.
        BigDecimal piOver180 = new BigDecimal("0.0174532925199432957692369076848861271344287188854");
        for (int deg = -360; deg <= 360; deg++) {
            assertThat(ShopUnits.deg(deg).libraryValue())
                    .as("%d deg", deg)
                    .isEqualTo(new BigDecimal(BigInteger.valueOf(deg))
                            .multiply(piOver180)
                            .doubleValue());
        }
    }
}
