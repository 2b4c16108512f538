package org.neckgeom.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.fahrenheit;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.thou;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.testing.OtherQuantity;
import org.neckgeom.testing.ReferenceTable;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** Type A evaluation against NIST's certified statistics, coverage against the GUM's tables and its Example H.1. */
class EstimateTest {

    private static final String CERTIFIED = "/measure/nist-strd-univariate.csv";
    private static final String GUM = "/measure/gum-examples.csv";

    /** NIST StRD, Univariate Summary Statistics. */
    static Stream<String> dataSets() {
        return ReferenceTable.rows(CERTIFIED).stream()
                .map(row -> row.get("dataset"))
                .distinct();
    }

    static Stream<Map<String, String>> coverageFactors() {
        return ReferenceTable.rows("/numeric/student-t.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("dataSets")
    void repeated_meetsTheCertifiedMeanAndDeviation(String set) {
        List<Amount<Length>> readings = readings(set);
        double mean = certified(set, "mean");
        double deviation = certified(set, "standard deviation (n-1)");

        Estimate<Length> estimate = Estimate.repeated(readings);

        int n = readings.size();
        assertThat(estimate.degreesOfFreedom()).isEqualTo(n - 1);
        assertThat(estimate.libraryValue()).isCloseTo(mean, within(2e-15 * Math.abs(mean)));
        // The readings of NumAcc3 and NumAcc4 are no doubles: rounding them moves the deviation by up to ulp/2.
        double largest = readings.stream()
                .mapToDouble(Amount::libraryValue)
                .map(Math::abs)
                .max()
                .orElseThrow();
        double slack = 1e-14 * deviation + Math.ulp(largest) / 2;
        assertThat(estimate.libraryUncertainty() * Math.sqrt(n)).isCloseTo(deviation, within(slack));
    }

    private static double certified(String set, String statistic) {
        return ReferenceTable.rows(CERTIFIED).stream()
                .filter(row ->
                        row.get("dataset").equals(set) && row.get("statistic").equals(statistic))
                .map(row -> row.get("recomputed_30_digits"))
                .mapToDouble(Double::parseDouble)
                .findFirst()
                .orElseThrow();
    }

    private static List<Amount<Length>> readings(String set) {
        DoubleStream values = switch (set) {
            case "NumAcc2" -> numAcc(1);
            case "NumAcc3" -> numAcc(1_000_000);
            case "NumAcc4" -> numAcc(10_000_000);
            default ->
                ReferenceTable.rows("/measure/nist-strd-data.csv").stream()
                        .filter(row -> row.get("dataset").equals(set))
                        .mapToDouble(row -> Double.parseDouble(row.get("value")));
        };
        return values.mapToObj(ShopUnits::mm).toList();
    }

    /** 1,001 values: c.2, then 500 pairs of c.1 and c.3. */
    private static DoubleStream numAcc(int c) {
        return DoubleStream.concat(
                DoubleStream.of(c + 0.2), DoubleStream.generate(pairs(c)).limit(1_000));
    }

    private static java.util.function.DoubleSupplier pairs(int c) {
        return new java.util.function.DoubleSupplier() {
            private boolean high = true;

            @Override
            public double getAsDouble() {
                high = !high;
                return new BigDecimal(c + (high ? ".3" : ".1")).doubleValue();
            }
        };
    }

    @ParameterizedTest
    @MethodSource("coverageFactors")
    void expanded_isStudentsFactorTimesU(Map<String, String> row) {
        double p = Double.parseDouble(row.get("p_fraction"));
        String nu = row.get("nu");
        double degrees = nu.startsWith("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(nu);
        double t = Double.parseDouble(row.get("t_exact_30_digits"));

        double expanded =
                Estimate.of(mm(7), mm(1), degrees).expanded(ShopUnit.ONE.of(p)).libraryValue();

        // p itself is rounded to a double, which far out in the tail moves t by more than its last place.
        assertThat(expanded).isCloseTo(t, within(1e-11 * t));
        // GUM Table G.2 prints two decimals, halves rounded either way.
        assertThat(expanded).isCloseTo(Double.parseDouble(row.get("t_rounded")), within(0.00501));
    }

    @Test
    void expanded_meetsTheEndGaugeOfTheGum() {
        // GUM H.1: u_c = 31.66 nm, 16 degrees of freedom, U_99 = 2.92 u_c = 92.48 nm (93 nm as printed).
        double u = gum("u_c first order unrounded") * 1e-6;
        Estimate<Length> gauge = Estimate.of(mm(gum("result") * 1e-6), mm(u), 16);

        double nm = gauge.expanded(percent(99)).libraryValue() * 1e6;

        assertThat(nm).isCloseTo(gum("U_99 = t_99(16)*u_c unrounded"), within(1e-9));
        assertThat(Math.ceil(nm)).isEqualTo(gum("expanded uncertainty at 99 %"));
        assertThat(gauge.interval(percent(99)).libraryLow()).isCloseTo(50.000838 - nm * 1e-6, within(1e-12));
        assertThat(gauge.interval(percent(99)).libraryHigh()).isCloseTo(50.000838 + nm * 1e-6, within(1e-12));
    }

    private static double gum(String quantity) {
        return Double.parseDouble(ReferenceTable.row(GUM, "quantity", quantity).get("value"));
    }

    @Test
    void uniform_isTheRectangularLaw() {
        double factor = gum("standard uncertainty of a rectangular half-width a");

        Estimate<Length> estimate = Estimate.uniform(mm(10), mm(0.05));

        assertThat(estimate.libraryUncertainty()).isCloseTo(0.05 * factor, within(1e-17));
        assertThat(estimate.degreesOfFreedom()).isInfinite();
    }

    @Test
    void repeated_ofEqualReadingsHasNoScatter() {
        Estimate<Length> estimate = Estimate.repeated(List.of(mm(0.1), mm(0.1), mm(0.1)));

        assertThat(estimate.value()).isEqualTo(mm(0.1));
        assertThat(estimate.libraryUncertainty()).isZero();
    }

    @Test
    void repeated_refusesFewerThanTwo() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Estimate.repeated(List.of(mm(1))))
                .withMessage("readings must be 2 or more, but were 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Estimate.repeated(new ArrayList<Amount<Length>>()))
                .withMessage("readings must be 2 or more, but were 0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.NEGATIVE_INFINITY})
    void degreesOfFreedom_areMoreThanNought(double degrees) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Estimate.of(mm(1), mm(0.1), degrees))
                .withMessageStartingWith("degrees of freedom must be more than 0, but were ");
    }

    @Test
    void uncertainty_isNeverNegative() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Estimate.of(mm(1), thou(-2)))
                .withMessage("standard uncertainty must be 0 thou or more, but was -2 thou");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Estimate.ofLibrary(1, -2, 5, ShopUnit.MILLIMETRE))
                .withMessage("standard uncertainty must be 0 mm or more, but was -2 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Estimate.uniform(mm(1), mm(-2)))
                .withMessage("half-width must be 0 mm or more, but was -2 mm");
    }

    @Test
    void rawLie_isNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Estimate.of(mm(1), OtherQuantity.lie(ShopUnits.newton(1))))
                .withMessage("standard uncertainty must be a length, but was 1 N");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Estimate.repeated(List.of(mm(1), OtherQuantity.<Length>lie(ShopUnits.newton(1)))))
                .withMessage("reading must be a length, but was 1 N");
    }

    @Test
    void uncertaintyOfATemperature_isADifference() {
        // A degree Fahrenheit is five ninths of a degree Celsius wide, wherever its zero lies.
        var estimate = Estimate.of(fahrenheit(68), fahrenheit(1.8));

        assertThat(estimate.libraryValue()).isEqualTo(20);
        assertThat(estimate.libraryUncertainty()).isCloseTo(1, within(1e-15));
        assertThat(estimate).hasToString("68.0 degF, u 1.8 degF");
        assertThat(Estimate.of(celsius(20), celsius(1)).libraryUncertainty()).isEqualTo(1);
        assertThat(Estimate.of(ShopUnit.KELVIN.of(293.15), ShopUnit.KELVIN.of(0.5))
                        .libraryUncertainty())
                .isEqualTo(0.5);
        assertThat(estimate.standardUncertainty().libraryValue()).isCloseTo(1, within(1e-15));
        assertThat(estimate.standardUncertainty()).hasToString("1 degC");
    }

    @ParameterizedTest
    @CsvSource({
        "0.71, 0.014142, 0.710 mm, u 0.014 mm",
        "29.84, 0.05, '29.840 mm, u 0.050 mm'",
        "12.345, 25, '12 mm, u 25 mm'",
        "12.345, 0, '12.345 mm, u 0 mm'"
    })
    void toString_roundsByTheUncertainty(double value, double u, String start) {
        assertThat(Estimate.of(mm(value), mm(u)).toString()).startsWith(start);
    }

    @Test
    void toString_saysTheDegreesOfFreedomAndKeepsTheUnit() {
        assertThat(Estimate.repeated(List.of(mm(1), mm(1.1), mm(1.2))))
                .hasToString("1.100 mm, u 0.058 mm, 2 degrees of freedom");
        assertThat(Estimate.of(inch(1.2), thou(1))).hasToString("1.2000 in, u 0.0010 in");
        assertThat(Estimate.of(inch(1.2), thou(1)).in(ShopUnit.MILLIMETRE)).hasToString("30.480 mm, u 0.025 mm");
    }
}
