package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.neckgeom.validation.Rows;

/** Creep and drying against src/test/resources/strength2/strength-cases.csv. */
class SlowChangesTest {

    private static Stream<Map<String, String>> rows(String topic) {
        return Rows.of("/strength2/strength-cases.csv").stream()
                .filter(row -> row.get("topic").equals(topic));
    }

    @Test
    void creep_isThatOfTheReference() {
        Pattern days = Pattern.compile("after ([\\d.]+) d");
        int found = 0;
        for (Map<String, String> row : rows("creep").toList()) {
            Matcher given = days.matcher(row.get("given"));
            assertThat(given.matches()).isTrue();
            // Days are printed to four digits.
            assertThat(Creep.after(Double.parseDouble(given.group(1))).share())
                    .isCloseTo(Rows.number(row, "value"), withinPercentage(0.02));
            found++;
        }
        assertThat(found).isEqualTo(6);
        assertThat(Creep.after(180).toString())
                .startsWith("Creep after 180 days: 0.33 of the elastic bow (95 %: 0.21 to 0.53)");
        assertThat(Creep.after(0).share()).isZero();
        assertThat(Creep.after(365.25).on(mm(0.2)).libraryValue()).isCloseTo(0.2 * 0.39364, within(1e-5));
        assertThatThrownBy(() -> Creep.after(-1)).hasMessage("days must be between 0 and 36525, but was -1.0");
    }

    @Test
    void drying_isThatOfTheReference() {
        Pattern fourier = Pattern.compile("D t/l\\^2 = ([\\d.]+), l = half thickness");
        Pattern slowest = Pattern.compile("D ([\\d.e-]+) m2/s, (\\d+) mm from both faces");
        Pattern swing = Pattern.compile("time constant (\\d+) d, climate swings with period ([\\d.]+) d");
        int found = 0;
        for (Map<String, String> row : rows("drying").toList()) {
            double expected = Rows.number(row, "value");
            Matcher f = fourier.matcher(row.get("given"));
            Matcher t = slowest.matcher(row.get("given"));
            Matcher s = swing.matcher(row.get("given"));
            if (f.matches()) {
                assertThat(AirInWood.share(Double.parseDouble(f.group(1)))).isCloseTo(expected, within(1e-9));
                found++;
            } else if (t.matches()) {
                assertThat(AirInWood.slowestDays(
                                Double.parseDouble(t.group(2)) / 2, Double.parseDouble(t.group(1)) * 1e6 * 86_400))
                        .isCloseTo(expected, withinPercentage(1e-3));
                found++;
            } else if (s.matches()) {
                assertThat(AirInWood.follows(Double.parseDouble(s.group(1)), Double.parseDouble(s.group(2))))
                        .isCloseTo(expected, within(1e-8));
                found++;
            }
        }
        assertThat(found).isEqualTo(18);
    }

    @Test
    void airInWood_isSlowerWhereAFaceIsGlued() {
        AirInWood open = AirInWood.of(mm(20), 10);

        assertThat(open.gluedOnOneFace().shareDone()).isLessThan(open.shareDone());
        assertThat(open.leastDone()).isLessThan(open.shareDone());
        assertThat(open.mostDone()).isGreaterThan(open.shareDone());
        assertThat(open.toString()).contains("open on both faces, 10 days");
        assertThat(AirInWood.of(mm(6), 20).gluedOnOneFace().toString()).contains("one face glued");
    }
}
