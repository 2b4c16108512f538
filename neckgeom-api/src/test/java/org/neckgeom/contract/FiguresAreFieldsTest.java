package org.neckgeom.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Json;
import org.neckgeom.form.Statement;
import org.neckgeom.units.LengthStyle;

/** Every figure that a thing of shop or stock prints is a number in its data: software need not read it out of a sentence. */
class FiguresAreFieldsTest {

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.-])\\d+(\\.\\d+)?(?![\\w-])");

    /** The title of a source, the moisture in the name of a figure, and what a law allows, which is quoted. */
    private static final Pattern NAMED =
            Pattern.compile("Wood Handbook[^\\n]*|at 12 % moisture|limits in Great Britain[^;]*");

    static List<Answer> answers() {
        return Samples.all().keySet().stream()
                .flatMap(type -> Samples.of(type).stream())
                .filter(Answer.class::isInstance)
                .map(Answer.class::cast)
                .filter(answer -> answer.style() == LengthStyle.MILLIMETRES)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("answers")
    void figures_areFields(Answer answer) {
        assertThat(lacking(answer)).isEmpty();
    }

    /** A figure that is only in the words is found: a test of the test. */
    @Test
    void figures_thatAreNoFieldsAreFound() {
        assertThat(lacking(Statement.of("test", "12.5 mm too high", LengthStyle.MILLIMETRES)))
                .containsExactly("12.5 of \"12.5 mm too high\"");
    }

    private static List<String> lacking(Answer answer) {
        List<Double> numbers = new ArrayList<>();
        collect(Json.read(Json.of(answer)).plain(), numbers);
        List<String> lacking = new ArrayList<>();
        Matcher figure = NUMBER.matcher(NAMED.matcher(answer.toString()).replaceAll(""));
        while (figure.find()) {
            String text = figure.group();
            if (numbers.stream().noneMatch(number -> isPrintedAs(text, number))) {
                lacking.add(text + " of \"" + answer + "\"");
            }
        }
        return lacking;
    }

    /** As it is, or in percent. */
    private static boolean isPrintedAs(String text, double number) {
        int decimals = text.contains(".") ? text.length() - text.indexOf('.') - 1 : 0;
        double half = 0.5000001 * Math.pow(10, -decimals);
        double value = Double.parseDouble(text);
        return Math.abs(Math.abs(number) - value) <= half || Math.abs(100 * number - value) <= half;
    }

    private static void collect(Object data, List<Double> numbers) {
        if (data instanceof Map<?, ?> map) {
            map.values().forEach(value -> collect(value, numbers));
        } else if (data instanceof List<?> list) {
            list.forEach(value -> collect(value, numbers));
        } else if (data instanceof Double number) {
            numbers.add(number);
        }
    }
}
