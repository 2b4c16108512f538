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

class LibraryUnitsTest {

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }

    @Test
    void numbers_areInTheLibraryUnit() {
        assertThat(LibraryUnits.mm(inch(-1), "x")).isEqualTo(-25.4);
        assertThat(LibraryUnits.mmPositive(inch(1), "x")).isEqualTo(25.4);
        assertThat(LibraryUnits.mmNotNegative(mm(0), "x")).isZero();
        assertThat(LibraryUnits.newton(ShopUnits.poundForce(1), "x")).isEqualTo(4.4482216152605); // exact by definition
        assertThat(LibraryUnits.of(ShopUnits.gigapascal(12.4), ShopUnit.MEGAPASCAL, "x"))
                .isEqualTo(12400);
        assertThat(LibraryUnits.ratio(percent(95), "x")).isEqualTo(0.95);
        assertThat(LibraryUnits.probability(percent(95), "x")).isEqualTo(0.95);
        assertThat(LibraryUnits.celsius(fahrenheit(68), "x")).isEqualTo(20);
        assertThat(LibraryUnits.of(ShopUnits.rpm(18000), ShopUnit.HERTZ, "x")).isEqualTo(300);
        assertThat(LibraryUnits.of(ShopUnits.mmPerMinute(1200), ShopUnit.MM_PER_SECOND, "x"))
                .isEqualTo(20);
        assertThat(LibraryUnits.rad(deg(180), "x")).isEqualTo(Math.PI);
    }

    @Test
    void sizes_endWhereSlipsBegin() {
        assertThat(LibraryUnits.mm(mm(1e9), "x")).isEqualTo(1e9);
        assertThat(LibraryUnits.mm(mm(-1e-30), "x")).isEqualTo(-1e-30);
        refused(
                () -> LibraryUnits.mm(inch(1e9), "shaft"),
                "shaft must be no more than 1000000000 mm in size, but was 1000000000 in");
        refused(
                () -> LibraryUnits.mmPositive(mm(1e-31), "shaft"),
                "shaft must be 0 or at least 1E-30 mm in size, but was 1E-31 mm");
        refused(
                () -> LibraryUnits.stationMm(Double.NaN),
                "station must be no more than 1000000000 mm in size, but was NaN mm");
    }

    @Test
    void quantities_ofABrokenProviderAreRefusedByName() {
        refused(
                () -> LibraryUnits.mm(new Unreadable<>(), "shaft"),
                "shaft must be a quantity that can be read, but its provider threw"
                        + " java.lang.UnsupportedOperationException: the provider gave up");
    }

    @Test
    void refusals_areOneSentenceInTheUnitGiven() {
        refused(() -> LibraryUnits.mmPositive(mm(-3), "near wall"), "near wall must be more than 0 mm, but was -3 mm");
        refused(
                () -> LibraryUnits.mmPositive(inch(0.0), "near wall"),
                "near wall must be more than 0 in, but was 0 in");
        refused(() -> LibraryUnits.mmNotNegative(mm(-3), "clearance"), "clearance must be 0 mm or more, but was -3 mm");
        refused(
                () -> LibraryUnits.probability(percent(100), "coverage"),
                "coverage must be more than 0 % and less than 100 %, but was 100 %");
        refused(
                () -> LibraryUnits.probability(percent(0), "coverage"),
                "coverage must be more than 0 % and less than 100 %, but was 0 %");
        refused(
                () -> LibraryUnits.celsius(celsius(-300), "room"),
                "room must be -273.15 degC or more, but was -300 degC");
        refused(
                () -> LibraryUnits.radBetween(deg(50), 0, 45, "head pitch"),
                "head pitch must be more than 0 and less than 45 deg, but was 50 deg");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-90, -89.5, -60, -45, -30, -0.1, 0, 0.1, 7, 13, 30, 45, 60, 89.9, 90})
    void radBetween_excludesBothEndsExactly(double end) {
        refused(
                () -> LibraryUnits.radBetween(deg(end), end, 180, "pitch"),
                "pitch must be more than " + deg(end).toString().replace(" deg", "")
                        + " and less than 180 deg, but was " + deg(end));
        assertThatIllegalArgumentException().isThrownBy(() -> LibraryUnits.radBetween(deg(end), -180, end, "pitch"));
        assertThat(LibraryUnits.radBetween(deg(Math.nextUp(end + 1e-12)), end, 180, "pitch"))
                .isGreaterThanOrEqualTo(ShopUnit.DEGREE.toLibrary(end));
    }

    @Test
    void finite_namesWhatIsNot() {
        assertThat(1 / LibraryUnits.finite(-0.0, "x", "mm")).isEqualTo(Double.POSITIVE_INFINITY);
        refused(
                () -> LibraryUnits.finite(Double.NaN, "station", "mm"),
                "station must be a finite number, but was NaN mm");
        refused(
                () -> LibraryUnits.finite(Double.NEGATIVE_INFINITY, "share", ""),
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
            assertThat(unit.libraryValue().kind()).isEqualTo(unit.kind());
            assertThat(ShopUnit.HOUSE).contains(unit.libraryValue());
            assertThat(ShopUnit.ALL.stream().filter(other -> other.symbol().equals(unit.symbol())))
                    .hasSize(1);
        }
    }

    @Test
    void refused_printsLengthsAsAPersonReadsThemUnlessThatWouldReadAsAllowed() {
        assertThat(LibraryUnits.refused(
                        "stop", "more-than", "more than 3 in", ShopUnits.mm(61).in(ShopUnit.INCH)))
                .hasMessage("stop must be more than 3 in, but was 2.4016 in");
        assertThat(LibraryUnits.refused("stop", "more-than", "2 mm or less", ShopUnits.mm(2.00000001)))
                .hasMessage("stop must be 2 mm or less, but was 2.00000001 mm");
    }

    @Test
    void doors_openToTheEndsOfTheReachAndNotPastThem_inAnyUnit() {
        double[] inside = {
            LibraryUnits.LEAST, Math.nextUp(LibraryUnits.LEAST), 1, Math.nextDown(LibraryUnits.MOST), LibraryUnits.MOST
        };
        double[] outside = {
            Double.MIN_VALUE, Math.nextDown(LibraryUnits.LEAST), Math.nextUp(LibraryUnits.MOST), Double.MAX_VALUE
        };

        for (ShopUnit<Length> unit : List.of(ShopUnit.MILLIMETRE, ShopUnit.CENTIMETRE)) {
            for (double libraryValue : inside) {
                Amount<Length> given =
                        Amount.ofLibrary(libraryValue, ShopUnit.MILLIMETRE).in(unit);
                double mm = given.libraryValue();

                assertThat(LibraryUnits.of(given, unit, "x")).as("%s", given).isEqualTo(mm);
                assertThat(LibraryUnits.positive(given, unit, "x"))
                        .as("%s", given)
                        .isEqualTo(mm);
                assertThat(LibraryUnits.notNegative(given, unit, "x"))
                        .as("%s", given)
                        .isEqualTo(mm);
                assertThat(LibraryUnits.mm(given.negated(), "x"))
                        .as("-%s", given)
                        .isEqualTo(-mm);
                assertThatThrownBy(() -> LibraryUnits.mmPositive(given.negated(), "x"))
                        .hasMessageContaining("x must be more than 0");
                assertThatThrownBy(() -> LibraryUnits.mmNotNegative(given.negated(), "x"))
                        .hasMessageContaining("x must be 0");
            }
        }
        for (double libraryValue : outside) {
            Amount<Length> given = Amount.ofLibrary(libraryValue, ShopUnit.MILLIMETRE);

            assertThatThrownBy(() -> LibraryUnits.mm(given, "x"))
                    .as("%s", libraryValue)
                    .hasMessageContaining("in size");
            assertThatThrownBy(() -> LibraryUnits.mm(given.negated(), "x")).hasMessageContaining("in size");
            assertThatThrownBy(() -> LibraryUnits.mmPositive(given, "x")).hasMessageContaining("in size");
            assertThatThrownBy(() -> LibraryUnits.mmNotNegative(given, "x")).hasMessageContaining("in size");
        }
        assertThat(LibraryUnits.mm(mm(0), "x")).isZero();
        assertThat(LibraryUnits.mmNotNegative(mm(0), "x")).isZero();
        assertThatThrownBy(() -> LibraryUnits.mmPositive(mm(0), "x"))
                .hasMessage("x must be more than 0 mm, but was 0 mm");
    }
}
