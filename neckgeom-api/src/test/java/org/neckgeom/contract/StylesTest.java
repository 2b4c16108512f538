package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.form.Answer;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/** Whatever says a length says it in the style asked for, and stays the value it was. */
class StylesTest {

    private static final Pattern MILLIMETRES = Pattern.compile("\\d mm\\b");
    private static final Pattern INCHES = Pattern.compile("\\d (in|thou)\\b");
    private static final Pattern NOISE = Pattern.compile("\\d\\.\\d{9,}");

    static Iterable<Class<?>> types() {
        return new ArrayList<>(Samples.all().keySet());
    }

    @ParameterizedTest
    @MethodSource("types")
    void lengths_areSaidInTheStyleAskedFor(Class<?> type) {
        for (Object value : Samples.of(type)) {
            String own = value.toString();
            if (value instanceof Answer answer && !(value instanceof SaysLengths<?>)) {
                for (LengthStyle style : LengthStyle.values()) {
                    assertThat(answer.text(style))
                            .as("%s in %s", type, style)
                            .doesNotContainPattern(style == LengthStyle.MILLIMETRES ? INCHES : MILLIMETRES);
                }
                continue;
            }
            if (!(value instanceof SaysLengths<?> answer)) {
                assertThat(own)
                        .as("%s says a length but takes no style", type)
                        .doesNotContainPattern(MILLIMETRES)
                        .doesNotContainPattern(INCHES);
                continue;
            }
            for (LengthStyle style : LengthStyle.values()) {
                Object said = answer.in(style);

                assertThat(said).as("%s in %s", type, style).isEqualTo(value).hasSameHashCodeAs(value);
                assertThat(said.toString())
                        .as("%s in %s", type, style)
                        .hasSizeLessThan(1000)
                        .doesNotContain("NaN", "null", "-0 ")
                        .doesNotContainPattern(style == LengthStyle.MILLIMETRES ? INCHES : MILLIMETRES)
                        .doesNotContainPattern(NOISE);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("types")
    void style_isTheSameHoweverItWasReached(Class<?> type) {
        for (Object value : Samples.of(type)) {
            if (value instanceof SaysLengths<?> answer) {
                for (LengthStyle style : LengthStyle.values()) {
                    String direct = answer.in(style).toString();
                    for (LengthStyle first : LengthStyle.values()) {
                        assertThat(((SaysLengths<?>) answer.in(first)).in(style))
                                .hasToString(direct);
                    }
                }
            }
        }
    }
}
