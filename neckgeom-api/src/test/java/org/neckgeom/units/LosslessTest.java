package org.neckgeom.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.fault.Refusal;

/** What {@code lossless()} writes is read back equal, bit by bit. */
class LosslessTest {

    private static final int VALUES = 1_000_000;

    @Test
    void lossless_readsBackEqual_atAMillionRandomValues() {
        SplittableRandom random = new SplittableRandom(42);
        for (int i = 0; i < VALUES; i++) {
            ShopUnit<?> unit = i % 33 == 32 ? ShopUnit.INCH_FRACTION : ShopUnit.ALL.get(i % ShopUnit.ALL.size());
            double size = random.nextDouble(1, 10) * Math.pow(10, random.nextInt(-6, 6));
            double number = random.nextInt(4) == 0 ? -size : size;
            hold(number, random.nextBoolean(), unit, i);
        }
    }

    private static <Q extends Quantity<Q>> void hold(double number, boolean inLibrary, ShopUnit<Q> unit, int value) {
        Amount<Q> amount = inLibrary ? Amount.ofLibrary(number, unit) : Amount.of(number, unit);
        String text = amount.lossless();
        Amount<Q> back = ShopUnits.parse(text, amount.unit().kind());
        if (!back.equals(amount) || text.length() > 32) {
            throw new AssertionError("value " + value + ", seed 42: " + amount.libraryValue() + " in " + amount.unit()
                    + " was written " + text + " and read " + back.libraryValue());
        }
    }

    @Test
    void lossless_isShortAndInTheUnitGiven() {
        assertThat(inch(1.75).lossless()).isEqualTo("1.75 in");
        assertThat(inch("1 3/4").lossless()).isEqualTo("1.75 in");
        assertThat(mm(0.1).plus(mm(0.2)).lossless()).isEqualTo("0.30000000000000004 mm");
        assertThat(mm(25.4).in(ShopUnit.INCH).lossless()).isEqualTo("1 in");
        assertThat(mm(0).lossless()).isEqualTo("0 mm");
        assertThat(mm(1e-20).lossless()).isEqualTo("1E-20 mm");
        assertThat(celsius(20).in(ShopUnit.FAHRENHEIT).lossless()).isEqualTo("68 degF");
        assertThat(ShopUnit.ONE.of(0.95).lossless()).isEqualTo("0.95");
    }

    /** Computed with an independent UCUM library, see the header of {@code units/ucum.csv}. */
    static Stream<String> codes() throws IOException {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                LosslessTest.class.getResourceAsStream("/units/ucum.csv"), StandardCharsets.UTF_8))) {
            return lines.lines().filter(line -> !line.startsWith("#")).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("codes")
    void unit_isTheOneOfItsUcumCode(String line) throws IOException {
        String[] parts = line.split(",");
        ShopUnit<?> unit = ShopUnit.named(parts[0]);

        assertThat(unit.ucum()).isEqualTo(parts[0]);
        assertThat(ShopUnit.named(unit.toString())).isSameAs(unit);
        double zero = unit.kind() == (Class<?>) Temperature.class ? 273.15 : 0;
        double libraryValue = inSi(unit.libraryValue().ucum()) - zero;
        assertThat(unit.toLibrary(1) * libraryValue + zero)
                .isCloseTo(Double.parseDouble(parts[2]), withinPercentage(1e-12));
    }

    private static double inSi(String code) throws IOException {
        return codes().map(line -> line.split(","))
                .filter(parts -> parts[0].equals(code))
                .mapToDouble(parts -> Double.parseDouble(parts[2]))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void codes_areOfEveryUnit() throws IOException {
        assertThat(codes().map(line -> line.split(",")[0]))
                .containsExactlyInAnyOrderElementsOf(
                        ShopUnit.ALL.stream().map(ShopUnit::ucum).toList());
    }

    @Test
    void units_haveCodesOfTheirOwn() {
        assertThat(ShopUnit.ALL).extracting(ShopUnit::ucum).doesNotHaveDuplicates();
        assertThat(ShopUnit.INCH_FRACTION.ucum()).isEqualTo(ShopUnit.INCH.ucum());
        assertThat(ShopUnits.length("1.5 [in_i]")).isEqualTo(inch(1.5));
    }

    @Test
    void unit_thatThereIsNot_isRefused() {
        assertThatThrownBy(() -> ShopUnit.named("cubit"))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("unit must be one of mm, cm, m, in, ")
                .hasMessageEndingWith("but was \"cubit\"");
    }
}
