package org.neckgeom.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.quantity.Force;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

class QuantityKindTest {

    private static final Place PLACE = new Place("n.yaml", 7, "blank.length");

    private final Problems problems = new Problems();

    /** 1 in = 25.4 mm exactly (international inch); the rest by hand. */
    @ParameterizedTest
    @CsvSource({
        "44.5 mm, 44.5",
        "1 3/4 in, 44.45",
        "1-3/4 in, 44.45",
        "'3/8\"', 9.525",
        "30 in, 762",
        "12 thou, 0.3048",
        "44.5mm, 44.5",
        "4.45 cm, 44.5",
        "-0.5 mm, -0.5",
        "1 in + 1000 thou, 50.8"
    })
    void read_takesLengthsAsMakersWriteThem(String text, double mm) {
        Found<?> found = QuantityKind.length().read(new Node.Text(PLACE, text), problems);

        assertThat(found.value()).isEqualTo(ShopUnits.mm(mm));
        assertThat(problems.inOrder()).isEmpty();
    }

    /** 1 lb is 0.45359237 kg, which weighs 9.80665 times as many newtons; 16 oz make a pound. */
    @ParameterizedTest
    @CsvSource({
        "95 N, 95",
        "10 kg, 98.0665",
        "10 kgf, 98.0665",
        "20 lb, 88.964432305210",
        "20 lbs, 88.964432305210",
        "20 lbf, 88.964432305210",
        "320 oz, 88.964432305210",
        "320 ozf, 88.964432305210"
    })
    void read_takesForcesAsMakersWriteThem(String text, double newton) {
        Found<Amount<Force>> found = QuantityKind.force().read(new Node.Text(PLACE, text), problems);

        assertThat(found.value().house()).isCloseTo(newton, within(1e-12 * newton));
        assertThat(problems.inOrder()).isEmpty();
    }

    @Test
    void read_refusesANumberWithoutUnit() {
        assertRefused(QuantityKind.length(), "640", "n.yaml, line 7: blank.length: \"640\" has no unit");
        assertRefused(QuantityKind.angle(), "13", "blank.length: \"13\" has no unit");
        assertRefused(QuantityKind.percent(), "45", "blank.length: \"45\" has no unit");
    }

    @Test
    void read_refusesAFractionWithoutUnit_andSuggestsItInInchesToo() {
        assertRefused(QuantityKind.length(), "22 1/16", "such as \"22.0625 mm\" or \"22 1/16 in\"");
    }

    /** The unit suggested is the one a shop would have meant, never one that makes nonsense of the number. */
    @Test
    void read_refusesANumberWithoutUnit_andSuggestsAShopsOwn() {
        assertRefused(QuantityKind.angle(), "13", "use deg, rad, such as \"13 deg\"");
        assertRefused(QuantityKind.speed(), "1800", "such as \"1800 mm/min\"");
        assertRefused(QuantityKind.turning(), "16000", "such as \"16000 rpm\"");
        assertRefused(QuantityKind.pressure(), "11.6", "such as \"11.6 GPa\"");
        assertRefused(QuantityKind.temperature(), "21", "such as \"21 degC\"");
    }

    @Test
    void read_refusesAMisspeltPull_andNamesEveryUnitAMakerMayWrite() {
        assertRefused(
                QuantityKind.force(), "9.7 kgs", "the unit \"kgs\" is not known; use N, kgf, kg, lbf, lb, ozf, oz");
    }

    @Test
    void read_refusesAUnitOfAnotherKind() {
        assertRefused(QuantityKind.length(), "13 deg", "\"13 deg\" is an angle; a length is wanted: use mm");
        assertRefused(QuantityKind.angle(), "13 mm", "\"13 mm\" is a length; an angle is wanted: use");
        assertRefused(QuantityKind.force(), "95 MPa", "a force is wanted");
        assertRefused(QuantityKind.percent(), "45 mm", "\"45 mm\" is a length");
    }

    @ParameterizedTest
    @ValueSource(strings = {"44,5 mm", "1 7/4 in", "about 3 mm", "3 furlongs", "mm", "NaN mm", "1e999 mm", "3 mm 4 mm"})
    void read_refusesWhatIsNoQuantity(String text) {
        assertRefused(QuantityKind.length(), text, "blank.length: ");
    }

    @Test
    void read_refusesWhatIsOutOfRangeAndSaysTheRange() {
        var thickness = QuantityKind.length().moreThan(ShopUnits.mm(0)).atMost(ShopUnits.mm(300));

        assertRefused(
                thickness,
                "0 mm",
                "n.yaml, line 7: blank.length is \"0 mm\", but must be a length of more than 0 mm and at most 300 mm with"
                        + " its unit, such as 44.5 mm or 1 3/4 in");
        assertRefused(thickness, "12 in", "but must be a length of more than 0 mm and at most 300 mm");
        assertRefused(QuantityKind.length().atLeast(ShopUnits.mm(0)), "-1 thou", "of at least 0 mm");
        assertThat(thickness
                        .read(new Node.Text(PLACE, "300 mm"), new Problems())
                        .isThere())
                .isTrue();
        assertThat(QuantityKind.length()
                        .atLeast(ShopUnits.mm(0))
                        .read(new Node.Text(PLACE, "0 mm"), new Problems())
                        .isThere())
                .isTrue();
    }

    @Test
    void read_refusesAListAndAGroup() {
        assertThat(QuantityKind.length()
                        .read(new Node.Items(PLACE, List.of()), problems)
                        .isThere())
                .isFalse();
        assertThat(problems.inOrder().get(0).sentence())
                .startsWith("blank.length is a list of 0 items, but must be a length");
    }

    static Stream<QuantityKind<?>> kinds() {
        return Stream.of(
                QuantityKind.length(),
                QuantityKind.angle(),
                QuantityKind.force(),
                QuantityKind.percent(),
                QuantityKind.temperature(),
                QuantityKind.pressure(),
                QuantityKind.speed(),
                QuantityKind.turning(),
                QuantityKind.density(),
                QuantityKind.massPerLength());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void schema_acceptsExactlyWhatIsReadAmongSamples(QuantityKind<?> kind) {
        Pattern pattern = Pattern.compile(kind.schema().get("pattern").toString());
        for (String word : kind.unitWords()) {
            for (String number : List.of("12", "12.5", "1 3/4", "1-3/4", "3/8", "-0.5", "+2", "1e2", "1.5E-1", ".5")) {
                String text = number + " " + word;
                assertThat(pattern.matcher(text).matches())
                        .as("schema takes %s", text)
                        .isTrue();
                assertThat(kind.read(new Node.Text(PLACE, text), problems).isThere())
                        .as("reader takes %s: %s", text, problems.inOrder())
                        .isTrue();
            }
        }
        for (String text : List.of("12", "12 furlongs", "", "mm", "1,5 mm", "1 2 mm", "1/ mm", "1. mm")) {
            assertThat(pattern.matcher(text).matches())
                    .as("schema refuses %s", text)
                    .isFalse();
            assertThat(kind.read(new Node.Text(PLACE, text), problems).isThere())
                    .as("reader refuses %s", text)
                    .isFalse();
        }
    }

    private void assertRefused(QuantityKind<?> kind, String text, String part) {
        Problems fresh = new Problems();
        assertThat(kind.read(new Node.Text(PLACE, text), fresh).isThere()).isFalse();
        assertThat(fresh.inOrder()).hasSize(1);
        assertThat(fresh.inOrder().get(0).toString()).contains(part).doesNotContain("\n");
    }
}
