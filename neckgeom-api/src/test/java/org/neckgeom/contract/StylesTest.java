package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Values;
import org.neckgeom.units.LengthStyle;

/** Whatever says a length says it in the style asked for, and stays the value it was. */
class StylesTest {

    private static final Pattern MILLIMETRES = Pattern.compile("\\d mm\\b");
    private static final Pattern INCHES = Pattern.compile("\\d (in|thou)\\b");
    private static final Pattern NOISE = Pattern.compile("\\d\\.\\d{9,}");

    static Iterable<Class<?>> types() {
        return new ArrayList<>(Samples.all().keySet());
    }

    /** An answer prints in a style; amounts and what is measured have copies in one; nothing else states lengths. */
    @ParameterizedTest
    @MethodSource("types")
    void lengths_areSaidInTheStyleAskedFor(Class<?> type) {
        for (Object value : Samples.of(type)) {
            for (LengthStyle style : LengthStyle.values()) {
                String text;
                if (value instanceof Values) {
                    continue; // as a neck file has them
                }
                if (value instanceof Answer answer) {
                    text = answer.text(style);
                } else {
                    Object copy = Kind.printedIn(value, style);
                    assertThat(copy)
                            .as("%s in %s", type, style)
                            .isEqualTo(value)
                            .hasSameHashCodeAs(value);
                    for (LengthStyle first : LengthStyle.values()) {
                        assertThat(Kind.printedIn(Kind.printedIn(value, first), style))
                                .hasToString(copy.toString());
                    }
                    text = copy.toString();
                }
                assertThat(text)
                        .as("%s in %s", type, style)
                        .hasSizeLessThan(1000)
                        .doesNotContain("NaN", "null", "-0 ")
                        .doesNotContainPattern(style == LengthStyle.MILLIMETRES ? INCHES : MILLIMETRES)
                        .doesNotContainPattern(NOISE);
            }
        }
    }
}
