package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.neck.StringMaterial;
import org.neckgeom.units.ShopUnit;

/** Mersenne's law against worked examples of OpenStax, University Physics Volume 1, sections 16.3 and 16.6. */
class StringTensionTest {

    @Test
    void newton_givesTheWorkedExampleOfTheHighString() {
        // Example "The Wave Speed of a Guitar String": mu = 3.09e-4 kg/m, T = 56.40 N, speed 427.23 m/s. Any length
        // and pitch with 2 L f equal to that speed will do.
        assertThat(NeckModel.newton(3.09e-4, 650, 427.23 / 1.3)).isCloseTo(56.40, within(0.005));
        // The same speed on mu = 5.78e-3 kg/m: 1055.00 N printed, 1054.99723336 exact.
        assertThat(NeckModel.newton(5.78e-3, 650, 427.23 / 1.3)).isCloseTo(1054.99723336, within(1e-7));
    }

    @Test
    void newton_givesTheWorkedExampleOfTwoSupports() {
        // 16.6 problem: 3.50 m, mu = 0.005 kg/m, 90.00 N, speed 134.16 m/s; fifth mode 95.83 Hz, so 19.166 Hz the
        // first.
        assertThat(NeckModel.newton(0.005, 3500, 95.8314847500 / 5)).isCloseTo(90, withinPercentage(1e-8));
    }

    @Test
    void plainKgPerM_givesTheWorkedExampleOfCopperWire() {
        // 16.3 problem: copper 8920 kg/m3, radius 1.20 mm: 0.040 kg/m printed, 0.0403531293168 exact.
        assertThat(StringMaterial.COPPER.plain(mm(2.4)).valueIn(ShopUnit.GRAM_PER_METRE) / 1000)
                .isCloseTo(0.0403531293168, withinPercentage(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "0.2286, 329.6275569128699, 59.1623911032033362",
        "0.3302, 246.94165062806206, 69.2770002493724297",
        "0.4318, 195.99771799087463, 74.6300183626085253"
    })
    void newton_ofPlainSteelAt650IsTheExactValue(double diameter, double hertz, double newton) {
        // rho pi d^2/4 (2 L f)^2 with 7850 kg/m3, computed with 30 digits.
        assertThat(NeckModel.newton(
                        StringMaterial.STEEL.plain(mm(diameter)).valueIn(ShopUnit.GRAM_PER_METRE) / 1000, 650, hertz))
                .isCloseTo(newton, withinPercentage(1e-11));
    }

    @ParameterizedTest
    @CsvSource({"0.254, 648, 329.6276, 16.3", "0.3048, 645, 329.6276, 23.3", "0.254, 352, 659.2551, 19.3"})
    void newton_agreesWithPoundsOnTheBench(double diameter, double scale, double hertz, double pounds) {
        // Common practice: .010 at 648 mm E4 16.3 lb, .012 at 645 mm E4 23.3 lb, .010 at 352 mm E5 19.3 lb.
        double newton = NeckModel.newton(
                StringMaterial.STEEL.plain(mm(diameter)).valueIn(ShopUnit.GRAM_PER_METRE) / 1000, scale, hertz);

        assertThat(newton / 4.4482216152605).isCloseTo(pounds, within(0.06));
    }
}
