package org.neckgeom.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.testing.ReferenceTable;
import org.neckgeom.units.LengthStyle;

class ScaleTest {

    static Stream<Map<String, String>> frets() {
        return ReferenceTable.rows("/design/fret-positions-650.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("frets")
    void fret_isThatOfTheTableToFifteenDigits(Map<String, String> row) {
        double exact = Double.parseDouble(row.get("distance_from_nut_mm"));

        double mm = Scale.of(mm(650)).fretMm(Double.parseDouble(row.get("n")));

        assertThat(mm).isCloseTo(exact, within(5e-16 * exact));
        assertThat(650 - mm)
                .isCloseTo(Double.parseDouble(row.get("distance_to_saddle_line_mm")), within(2 * Math.ulp(650.0)));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 5, 12, 19, 24, 31, 53, 1200})
    void octave_isHalfTheScaleInEveryDivision(int divisions) {
        Scale scale = Scale.of(mm(628.65)).divisions(divisions);

        assertThat(scale.fretMm(divisions)).isCloseTo(314.325, within(1e-13)); // half of it, exactly
        assertThat(scale.fretMm(2.0 * divisions)).isCloseTo(628.65 * 0.75, within(2e-13));
        assertThat(scale.fretMm(0)).isEqualTo(0).isNotNegative();
    }

    @Test
    void fret_keepsItsDigitsInFineDivisions() {
        // 1000 (1 - 2^(-1/1200)) by mpmath 1.3.0, 30 digits.
        assertThat(Scale.of(mm(1000)).divisions(1200).fretMm(1))
                .isCloseTo(0.577455858619250467471243084195, within(2e-16));
    }

    @Test
    void fret_mayLieBetweenFrets() {
        Scale scale = Scale.of(mm(650));

        assertThat(scale.fretMm(1.5)).isBetween(scale.fretMm(1), scale.fretMm(2));
        assertThat(scale.fretMm(1e9)).isEqualTo(650);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, -1e-300, Double.NaN, Double.POSITIVE_INFINITY})
    void fret_isNoughtOrMore(double fret) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Scale.of(mm(650)).fretMm(fret))
                .withMessageStartingWith("fret must be 0 or more, but was ");
    }

    @Test
    void scale_changesItsDivisionAndLeavesTheOldOne() {
        Scale old = Scale.of(inch(25.5));

        assertThat(old.divisions(19).divisions()).isEqualTo(19);
        assertThat(old.divisions()).isEqualTo(12);
        assertThat(old.lengthMm()).isEqualTo(647.7);
        assertThat(old.length()).hasToString("25.5 in");
        assertThat(old.style()).isEqualTo(LengthStyle.DECIMAL_INCHES);
        assertThat(old).hasToString("scale 25.5 in, 12 to the octave");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Scale.of(mm(0)))
                .withMessage("scale must be more than 0 mm, but was 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> old.divisions(0))
                .withMessage("frets to the octave must be a whole number from 1 to 1200, but was 0");
    }
}
