package org.neckgeom.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.fahrenheit;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.List;
import javax.measure.quantity.Length;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.testing.Unreadable;

class HouseUnitsTest {

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }

    @Test
    void numbers_areInTheHouseUnit() {
        assertThat(HouseUnits.mm(inch(-1), "x")).isEqualTo(-25.4);
        assertThat(HouseUnits.mmPositive(inch(1), "x")).isEqualTo(25.4);
        assertThat(HouseUnits.mmNotNegative(mm(0), "x")).isZero();
        assertThat(HouseUnits.newton(ShopUnits.poundForce(1), "x")).isEqualTo(4.4482216152605); // exact by definition
        assertThat(HouseUnits.of(ShopUnits.gigapascal(12.4), ShopUnit.MEGAPASCAL, "x"))
                .isEqualTo(12400);
        assertThat(HouseUnits.ratio(percent(95), "x")).isEqualTo(0.95);
        assertThat(HouseUnits.probability(percent(95), "x")).isEqualTo(0.95);
        assertThat(HouseUnits.celsius(fahrenheit(68), "x")).isEqualTo(20);
        assertThat(HouseUnits.of(ShopUnits.rpm(18000), ShopUnit.HERTZ, "x")).isEqualTo(300);
        assertThat(HouseUnits.of(ShopUnits.mmPerMinute(1200), ShopUnit.MM_PER_SECOND, "x"))
                .isEqualTo(20);
        assertThat(HouseUnits.rad(deg(180), "x")).isEqualTo(Math.PI);
    }

    @Test
    void sizes_endWhereSlipsBegin() {
        assertThat(HouseUnits.mm(mm(1e9), "x")).isEqualTo(1e9);
        assertThat(HouseUnits.mm(mm(-1e-30), "x")).isEqualTo(-1e-30);
        refused(
                () -> HouseUnits.mm(inch(1e9), "shaft"),
                "shaft must be no more than 1000000000 mm in size, but was 1000000000 in");
        refused(
                () -> HouseUnits.mmPositive(mm(1e-31), "shaft"),
                "shaft must be 0 or at least 1E-30 mm in size, but was 1E-31 mm");
        refused(
                () -> HouseUnits.stationMm(Double.NaN),
                "station must be no more than 1000000000 mm in size, but was NaN mm");
    }

    @Test
    void quantities_ofABrokenProviderAreRefusedByName() {
        refused(
                () -> HouseUnits.mm(new Unreadable<>(), "shaft"),
                "shaft must be a quantity that can be read, but its provider threw"
                        + " java.lang.UnsupportedOperationException: the provider gave up");
    }

    @Test
    void refusals_areOneSentenceInTheUnitGiven() {
        refused(() -> HouseUnits.mmPositive(mm(-3), "near wall"), "near wall must be more than 0 mm, but was -3 mm");
        refused(() -> HouseUnits.mmPositive(inch(0.0), "near wall"), "near wall must be more than 0 in, but was 0 in");
        refused(() -> HouseUnits.mmNotNegative(mm(-3), "clearance"), "clearance must be 0 mm or more, but was -3 mm");
        refused(
                () -> HouseUnits.probability(percent(100), "coverage"),
                "coverage must be more than 0 % and less than 100 %, but was 100 %");
        refused(
                () -> HouseUnits.probability(percent(0), "coverage"),
                "coverage must be more than 0 % and less than 100 %, but was 0 %");
        refused(
                () -> HouseUnits.celsius(celsius(-300), "room"),
                "room must be -273.15 degC or more, but was -300 degC");
        refused(
                () -> HouseUnits.radBetween(deg(50), 0, 45, "head pitch"),
                "head pitch must be more than 0 and less than 45 deg, but was 50 deg");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-90, -89.5, -60, -45, -30, -0.1, 0, 0.1, 7, 13, 30, 45, 60, 89.9, 90})
    void radBetween_excludesBothEndsExactly(double end) {
        refused(
                () -> HouseUnits.radBetween(deg(end), end, 180, "pitch"),
                "pitch must be more than " + deg(end).toString().replace(" deg", "")
                        + " and less than 180 deg, but was " + deg(end));
        assertThatIllegalArgumentException().isThrownBy(() -> HouseUnits.radBetween(deg(end), -180, end, "pitch"));
        assertThat(HouseUnits.radBetween(deg(Math.nextUp(end + 1e-12)), end, 180, "pitch"))
                .isGreaterThanOrEqualTo(ShopUnit.DEGREE.toHouse(end));
    }

    @Test
    void finite_namesWhatIsNot() {
        assertThat(1 / HouseUnits.finite(-0.0, "x", "mm")).isEqualTo(Double.POSITIVE_INFINITY);
        refused(
                () -> HouseUnits.finite(Double.NaN, "station", "mm"),
                "station must be a finite number, but was NaN mm");
        refused(
                () -> HouseUnits.finite(Double.NEGATIVE_INFINITY, "share", ""),
                "share must be a finite number, but was -infinity");
    }

    @Test
    void shopUnit_saysWhatItIs() {
        assertThat(ShopUnit.INCH).hasToString("in");
        assertThat(ShopUnit.ONE).hasToString("1");
        assertThat(ShopUnit.INCH.kindInWords()).isEqualTo("a length");
        assertThat(ShopUnit.FAHRENHEIT.hasOffset()).isTrue();
        assertThat(ShopUnit.CELSIUS.hasOffset()).isFalse();
        for (ShopUnit<?> unit : ShopUnit.ALL) {
            assertThat(unit.symbol()).matches("[ -~]*");
            assertThat(unit.house().kind()).isEqualTo(unit.kind());
            assertThat(ShopUnit.HOUSE).contains(unit.house());
            assertThat(ShopUnit.ALL.stream().filter(other -> other.symbol().equals(unit.symbol())))
                    .hasSize(1);
        }
    }

    @Test
    void refused_printsLengthsAsAPersonReadsThemUnlessThatWouldReadAsAllowed() {
        assertThat(HouseUnits.refused(
                        "stop", "more-than", "more than 3 in", ShopUnits.mm(61).in(ShopUnit.INCH)))
                .hasMessage("stop must be more than 3 in, but was 2.4016 in");
        assertThat(HouseUnits.refused("stop", "more-than", "2 mm or less", ShopUnits.mm(2.00000001)))
                .hasMessage("stop must be 2 mm or less, but was 2.00000001 mm");
    }

    @Test
    void doors_openToTheEndsOfTheReachAndNotPastThem_inAnyUnit() {
        double[] inside = {
            HouseUnits.LEAST, Math.nextUp(HouseUnits.LEAST), 1, Math.nextDown(HouseUnits.MOST), HouseUnits.MOST
        };
        double[] outside = {
            Double.MIN_VALUE, Math.nextDown(HouseUnits.LEAST), Math.nextUp(HouseUnits.MOST), Double.MAX_VALUE
        };

        for (ShopUnit<Length> unit : List.of(ShopUnit.MILLIMETRE, ShopUnit.CENTIMETRE)) {
            for (double house : inside) {
                Amount<Length> given =
                        Amount.ofHouse(house, ShopUnit.MILLIMETRE).in(unit);
                double mm = given.house();

                assertThat(HouseUnits.of(given, unit, "x")).as("%s", given).isEqualTo(mm);
                assertThat(HouseUnits.positive(given, unit, "x"))
                        .as("%s", given)
                        .isEqualTo(mm);
                assertThat(HouseUnits.notNegative(given, unit, "x"))
                        .as("%s", given)
                        .isEqualTo(mm);
                assertThat(HouseUnits.mm(given.negated(), "x")).as("-%s", given).isEqualTo(-mm);
                assertThatThrownBy(() -> HouseUnits.mmPositive(given.negated(), "x"))
                        .hasMessageContaining("x must be more than 0");
                assertThatThrownBy(() -> HouseUnits.mmNotNegative(given.negated(), "x"))
                        .hasMessageContaining("x must be 0");
            }
        }
        for (double house : outside) {
            Amount<Length> given = Amount.ofHouse(house, ShopUnit.MILLIMETRE);

            assertThatThrownBy(() -> HouseUnits.mm(given, "x")).as("%s", house).hasMessageContaining("in size");
            assertThatThrownBy(() -> HouseUnits.mm(given.negated(), "x")).hasMessageContaining("in size");
            assertThatThrownBy(() -> HouseUnits.mmPositive(given, "x")).hasMessageContaining("in size");
            assertThatThrownBy(() -> HouseUnits.mmNotNegative(given, "x")).hasMessageContaining("in size");
        }
        assertThat(HouseUnits.mm(mm(0), "x")).isZero();
        assertThat(HouseUnits.mmNotNegative(mm(0), "x")).isZero();
        assertThatThrownBy(() -> HouseUnits.mmPositive(mm(0), "x"))
                .hasMessage("x must be more than 0 mm, but was 0 mm");
    }
}
