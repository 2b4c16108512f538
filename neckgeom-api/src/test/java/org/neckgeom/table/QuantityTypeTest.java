package org.neckgeom.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

class QuantityTypeTest {

    private static final String PLACE = "blank.length";

    private final Faults faults = new Faults();

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
        Amount<Length> found = Types.LENGTH.read(text, PLACE, faults);

        assertThat(found).isEqualTo(ShopUnits.mm(mm));
        assertThat(faults.all()).isEmpty();
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
        Amount<Force> found = Types.FORCE.read(text, PLACE, faults);

        assertThat(found.libraryValue()).isCloseTo(newton, within(1e-12 * newton));
        assertThat(faults.all()).isEmpty();
    }

    @Test
    void read_refusesANumberWithoutUnit() {
        assertRefused(Types.LENGTH, "640", "blank.length: \"640\" has no unit");
        assertRefused(Types.ANGLE, "13", "blank.length: \"13\" has no unit");
        assertRefused(Types.PERCENT, "45", "blank.length: \"45\" has no unit");
    }

    @Test
    void read_refusesAFractionWithoutUnit_andSuggestsItInInchesToo() {
        assertRefused(Types.LENGTH, "22 1/16", "such as \"22.0625 mm\" or \"22 1/16 in\"");
    }

    /** The unit suggested is the one a shop would have meant, never one that makes nonsense of the number. */
    @Test
    void read_refusesANumberWithoutUnit_andSuggestsAShopsOwn() {
        assertRefused(Types.ANGLE, "13", "use deg, rad, such as \"13 deg\"");
        assertRefused(Types.SPEED, "1800", "such as \"1800 mm/min\"");
        assertRefused(Types.TURNING, "16000", "such as \"16000 rpm\"");
        assertRefused(Types.PRESSURE, "11.6", "such as \"11.6 GPa\"");
        assertRefused(Types.TEMPERATURE, "21", "such as \"21 degC\"");
    }

    @Test
    void read_refusesAMisspeltPull_andNamesEveryUnitAMakerMayWrite() {
        assertRefused(Types.FORCE, "9.7 kgs", "the unit \"kgs\" is not known; use N, kgf, kg, lbf, lb, ozf, oz");
    }

    @Test
    void read_refusesAUnitOfAnotherKind() {
        assertRefused(Types.LENGTH, "13 deg", "\"13 deg\" is an angle; a length is wanted: use mm");
        assertRefused(Types.ANGLE, "13 mm", "\"13 mm\" is a length; an angle is wanted: use");
        assertRefused(Types.FORCE, "95 MPa", "a force is wanted");
        assertRefused(Types.PERCENT, "45 mm", "\"45 mm\" is a length");
    }

    @ParameterizedTest
    @ValueSource(strings = {"44,5 mm", "1 7/4 in", "about 3 mm", "3 furlongs", "mm", "NaN mm", "1e999 mm", "3 mm 4 mm"})
    void read_refusesWhatIsNoQuantity(String text) {
        assertRefused(Types.LENGTH, text, "blank.length: ");
    }

    @Test
    void read_refusesWhatIsOutOfRangeAndSaysTheRange() {
        var thickness = Types.LENGTH.moreThan(ShopUnits.mm(0)).atMost(ShopUnits.mm(300));

        assertRefused(thickness, "0 mm", "blank.length must be more than 0 mm, but was 0 mm");
        assertRefused(thickness, "12 in", "must be more than 0 mm and 300 mm or less, but was 12 in");
        assertRefused(Types.LENGTH.atLeast(ShopUnits.mm(0)), "-1 thou", "must be 0 thou or more, but was -1 thou");
        assertThat(thickness.allowed())
                .isEqualTo("a length of more than 0 mm and at most 300 mm with its unit, such as 44.5 mm or 1 3/4 in");
        assertThat(thickness.read("300 mm", PLACE, faults)).isNotNull();
        assertThat(Types.LENGTH.atLeast(ShopUnits.mm(0)).read("0 mm", PLACE, faults))
                .isNotNull();
    }

    @Test
    void read_refusesAListAndAGroup() {
        assertThat(Types.LENGTH.read(List.of(), PLACE, faults)).isNull();
        assertThat(faults.all().get(0).toString())
                .startsWith("blank.length must be a length")
                .endsWith("but was a list of 0 items");
    }

    static Stream<QuantityType<?>> kinds() {
        return Stream.of(
                Types.LENGTH,
                Types.ANGLE,
                Types.FORCE,
                Types.PERCENT,
                Types.TEMPERATURE,
                Types.PRESSURE,
                Types.SPEED,
                Types.TURNING,
                Types.DENSITY,
                Types.LINEAR_DENSITY);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void schema_acceptsExactlyWhatIsReadAmongSamples(QuantityType<?> kind) {
        Pattern pattern =
                Pattern.compile(kind.schema(Spelling.WORDS).get("pattern").toString());
        for (String word : kind.unitWords()) {
            for (String number : List.of("12", "12.5", "1 3/4", "1-3/4", "3/8", "-0.5", "+2", "1e2", "1.5E-1", ".5")) {
                String text = number + " " + word;
                assertThat(pattern.matcher(text).matches())
                        .as("schema takes %s", text)
                        .isTrue();
                assertThat(kind.read(text, PLACE, faults) != null)
                        .as("reader takes %s: %s", text, faults.all())
                        .isTrue();
            }
        }
        for (String text : List.of("12", "12 furlongs", "", "mm", "1,5 mm", "1 2 mm", "1/ mm", "1. mm")) {
            assertThat(pattern.matcher(text).matches())
                    .as("schema refuses %s", text)
                    .isFalse();
            assertThat(kind.read(text, PLACE, faults) != null)
                    .as("reader refuses %s", text)
                    .isFalse();
        }
    }

    private static void assertRefused(QuantityType<?> kind, String text, String part) {
        Faults fresh = new Faults();
        assertThat(kind.read(text, PLACE, fresh)).isNull();
        assertThat(fresh.all()).hasSize(1);
        assertThat(fresh.all().get(0).toString()).contains(part).doesNotContain("\n");
    }
}
