package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringMaterial;
import org.neckgeom.neck.StringSet;
import org.neckgeom.validation.Rows;

/** Strings as they are, against src/test/resources/strength2/strength-cases.csv and common practice. */
class StringTensionsTest {

    private static final Pattern WOUND =
            Pattern.compile("outer ([\\d.]+), core share ([\\d.]+), wrap (\\d+) kg/m3, one layer");

    private static Stream<Map<String, String>> rows(String topic) {
        return Rows.of("/strength2/strength-cases.csv").stream()
                .filter(row -> row.get("topic").equals(topic));
    }

    private static Neck strung(double scale, StringSet strings) {
        return Necks.mandolin().scale(mm(scale)).strings(strings);
    }

    @Test
    void gramPerMetre_ofAWoundStringIsTheReferences() {
        // The reference's steel has 7850 kg/m3 and wraps of 8900, 8800 and 8670: nickel here has 8908.
        Map<String, StringMaterial> wraps = Map.of(
                "8900", StringMaterial.NICKEL, "8800", StringMaterial.PHOSPHOR_BRONZE, "8670", StringMaterial.BRASS);
        int found = 0;
        for (Map<String, String> row : rows("wound").toList()) {
            Matcher given = WOUND.matcher(row.get("given"));
            if (given.matches()) {
                double outer = Double.parseDouble(given.group(1));
                StringSet one = StringSet.of(pitch("E2"))
                        .diameters(mm(outer))
                        .cores(wraps.get(given.group(3)), mm(outer * Double.parseDouble(given.group(2))));
                assertThat(one.gramPerMetre(0).orElseThrow())
                        .as(row.get("given"))
                        .isCloseTo(
                                Rows.number(row, "value"),
                                withinPercentage(given.group(3).equals("8900") ? 0.09 : 1e-6));
                found++;
            }
        }
        assertThat(found).isEqualTo(7);
    }

    @Test
    void shareOfStrength_isTheReferences() {
        Pattern plain = Pattern.compile("plain steel ([\\d.]+), (\\d+), ([\\d.]+) Hz");
        String given = "";
        int found = 0;
        for (Map<String, String> row : rows("breaking").toList()) {
            given = row.get("given").equals("same") ? given : row.get("given");
            Matcher figures = plain.matcher(given);
            if (row.get("quantity").startsWith("share") && figures.matches()) {
                StringLoad load = StringLoad.of(strung(
                        Double.parseDouble(figures.group(2)),
                        StringSet.of(hertz(Double.parseDouble(figures.group(3))))
                                .diameters(mm(Double.parseDouble(figures.group(1))))));
                assertThat(load.shareOfStrength().orElseThrow())
                        .as(given)
                        .isCloseTo(Rows.number(row, "value"), withinPercentage(2e-4));
                found++;
            }
        }
        assertThat(found).isEqualTo(6);
    }

    @Test
    void strain_isSaidInPlainWords() {
        // strength-cases.csv: 0.254 mm on 648 mm at E4 56 %, at G4 79 %; it breaks at 442 Hz.
        assertThat(ten("E4").toString()).contains("string 1: 56 % of its breaking load, usual");
        assertThat(ten("G4").toString()).contains("79 % of its breaking load, breaks early");
        assertThat(ten("G#4").strain()).contains(StringLoad.Strain.WILL_NOT_LAST);
        assertThat(ten("G2").strain()).contains(StringLoad.Strain.SLACK);
        assertThatThrownBy(() -> ten("A#4"))
                .hasMessage(
                        "strings must be tuned lower or lie on a shorter scale: string 1 breaks at 131 N, but are tuned"
                                + " to 145 N");
    }

    private static StringLoad ten(String note) {
        return StringLoad.of(strung(648, StringSet.of(pitch(note)).diameters(mm(0.254))));
    }

    @Test
    void core_bearsInAWoundString() {
        // strength-cases.csv: outer 1.1684, core 0.4907, wrap of 8900 kg/m3, E2 on 648: 461.788 MPa in the core.
        StringLoad load = StringLoad.of(strung(
                648, StringSet.of(pitch("E2")).diameters(mm(1.1684)).cores(StringMaterial.NICKEL, mm(0.42 * 1.1684))));

        assertThat(load.shareOfStrength().orElseThrow() * StringTensions.wireStrengthMPa(0.42 * 1.1684))
                .isCloseTo(461.788, withinPercentage(0.09));
    }

    @Test
    void diameterAlone_isPlainUpToAHalfMillimetre() {
        assertThat(StringLoad.of(strung(648, StringSet.of(pitch("G3")).diameters(mm(0.55))))
                        .total()
                        .libraryValue())
                .isPositive();
        assertThatThrownBy(() ->
                        StringLoad.of(strung(648, StringSet.of(pitch("D3")).diameters(mm(0.66)))))
                .hasMessage(
                        "strings.linear densities, or cores with wraps, must be given: a steel string of 0.66 mm is wound"
                                + " (plain up to 0.55 mm), and its diameter alone does not give its mass");
        assertThat(StringLoad.of(strung(
                                648,
                                StringSet.of(pitch("G3")).diameters(mm(1.02)).materials(StringMaterial.NYLON)))
                        .shareOfStrength())
                .isEmpty();
    }

    @Test
    void mass_thatNoStringHasIsRefused() {
        // strength-cases.csv: 3.2512 mm at 77 g/m is 1.18153 of solid steel; 2.5908 mm at 44 g/m 1.06323.
        assertThatThrownBy(() -> StringSet.of(pitch("B0")).diameters(mm(3.2512)).linearDensities(gramPerMetre(77)))
                .hasMessage(
                        "linear densities must be 74.2 g/m or less for string 1 of 3.251 mm, as heavy as solid nickel, but"
                                + " was 77 g/m");
        assertThat(StringLoad.of(strung(
                                762,
                                StringSet.of(pitch("E1")).diameters(mm(2.5908)).linearDensities(gramPerMetre(44))))
                        .toString())
                .contains("Check the linear density of string 1: 1.06 of solid steel");
    }

    /** strength-2.md, 2: a wound steel string has 0.70 to 0.98 of the mass of solid steel; outside it is warned of. */
    @Test
    void mass_outsideThatOfWoundSteelIsWarnedOf() {
        double solid = 1000 * 7850 * Math.PI / 4 * Math.pow(1.17e-3, 2);
        for (double share : new double[] {0.69, 0.71, 0.97, 0.99}) {
            String load = StringLoad.of(strung(
                            648,
                            StringSet.of(pitch("E2")).diameters(mm(1.17)).linearDensities(gramPerMetre(share * solid))))
                    .toString();
            assertThat(load.contains("Check the linear density of string 1: "))
                    .as("%s: %s", share, load)
                    .isEqualTo(share < 0.70 || share > 0.98);
        }
        // Nylon and plain strings have no wrap.
        assertThat(StringLoad.of(strung(
                                648,
                                StringSet.of(pitch("E2"))
                                        .diameters(mm(1.17))
                                        .materials(StringMaterial.NYLON)
                                        .linearDensities(gramPerMetre(1.2))))
                        .toString())
                .doesNotContain("Check");
    }

    @Test
    void tensionMassAndPitch_mustAgree() {
        StringSet one = StringSet.of(pitch("E2")).diameters(mm(1.17)).linearDensities(gramPerMetre(7.6));
        double newton = StringLoad.of(strung(648, one)).total().libraryValue();

        assertThat(StringLoad.of(strung(648, one.tensions(newton(newton * 1.029))))
                        .total()
                        .libraryValue())
                .isCloseTo(newton * 1.029, within(1e-9));
        assertThatThrownBy(() -> StringLoad.of(strung(648, one.tensions(newton(newton * 1.031)))))
                .hasMessageStartingWith(
                        "strings.tensions must be 87 N for string 1, as its linear density, its pitch and its"
                                + " speaking length of 648 mm give, but was 89 N");
    }
}
