package org.neckgeom.plan;

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

/** Every figure that a plan prints is a field of its data: shop software need not read it out of a sentence. */
class PlanFiguresTest {

    /** What a figure may have been divided by on its way into the text: nothing, percent, thou, degrees in minutes. */
    private static final double[] SCALES = {1, 100, 1000, 0.01, 0.001};

    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])(\\d+ )?\\d+/\\d+|\\d[\\d,]*(\\.\\d+)?");

    /** Sources, ordinals such as the 12th fret, and how a chance is printed, which its own test holds. */
    private static final Pattern CITED = Pattern.compile(
            "\\(Wood Handbook[^)]*\\)|\\d+(st|nd|rd|th)\\b|(more than|better than|below|from) [\\d.]+ %|[\\d.]+ %(?=, from)");

    /** A size in words is no name. */
    private static final Pattern SIZE = Pattern.compile("\\d (mm|in|thou|N|deg|m)\\b");

    static List<Job> plans() {
        return JobTest.samples();
    }

    @ParameterizedTest
    @MethodSource("plans")
    void figures_areFields(Job plan) {
        List<String> lacking = new ArrayList<>();
        for (PlanSection section : plan.plan().sections()) {
            assertThat(section.rendered(plan.style())).isEqualTo(section.form().render(section, plan.style()));
            for (PlanSection.Row row : section.rows()) {
                collect(section.code() + " / " + row.key(), row.answer(), lacking);
                collect(section.code() + " / label of " + row.key(), row.named(), lacking);
            }
            section.notes().forEach(note -> collect(section.code() + " / note", note, lacking));
        }
        for (PlanCheck check : plan.plan().checks()) {
            collect(check.code().code(), check, lacking);
        }

        assertThat(lacking).isEmpty();
    }

    /** A figure that stands only in the words is found: a test of the test. */
    @Test
    void figures_thatAreNoFieldsAreFound() {
        List<String> lacking = new ArrayList<>();
        collect("test", Statement.of("test", "12.5 mm too high", LengthStyle.MILLIMETRES), lacking);

        assertThat(lacking).containsExactly("test: 12.5 of \"12.5 mm too high\"");
    }

    private static void collect(String where, Answer answer, List<String> lacking) {
        Map<?, ?> data = (Map<?, ?>) Json.read(Json.of(answer)).plain();
        List<Double> numbers = new ArrayList<>();
        StringBuilder names = new StringBuilder();
        fields(data, numbers, names);
        String text = CITED.matcher(String.valueOf(data.get("text"))).replaceAll("");
        assertThat(text).as(where).doesNotContain("{");
        Matcher figure = NUMBER.matcher(text);
        while (figure.find()) {
            String found = figure.group();
            if (!isField(found, numbers) && !names.toString().contains(found)) {
                lacking.add(where + ": " + found + " of \"" + text + "\"");
            }
        }
    }

    /** The numbers, and the names a user or the trade gave; an answer's text is no field. */
    private static void fields(Object data, List<Double> numbers, StringBuilder names) {
        if (data instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                if (key.equals("largest") || key.equals("name") || key.equals("step")) {
                    names.append(value).append('\n');
                } else if (!key.equals("text")) {
                    fields(value, numbers, names);
                }
            });
        } else if (data instanceof List<?> list) {
            list.forEach(value -> fields(value, numbers, names));
        } else if (data instanceof Double number) {
            numbers.add(number);
        } else if (data instanceof String name && !SIZE.matcher(name).find()) {
            names.append(name).append('\n');
        }
    }

    private static boolean isField(String figure, List<Double> numbers) {
        String plain = figure.replace(",", "");
        if (plain.contains("/")) {
            return true;
        }
        int decimals = plain.contains(".") ? plain.length() - plain.indexOf('.') - 1 : 0;
        double value = Double.parseDouble(plain);
        double half = 0.5000001 * Math.pow(10, -decimals);
        for (double number : numbers) {
            for (double scale : SCALES) {
                if (Math.abs(Math.abs(number) * scale - value) <= half) {
                    return true;
                }
            }
        }
        return false;
    }
}
