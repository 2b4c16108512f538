package org.neckgeom.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.testing.ReferenceTable;

/** What makers write, and what is refused, with its sentence. */
class ShopUnitsTest {

    static Stream<ShopUnit<?>> units() {
        return ShopUnit.ALL.stream();
    }

    static Stream<Map<String, String>> pitches() {
        return ReferenceTable.rows("/units/equal-temperament.csv").stream();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "44.5 mm | 44.5 mm",
                "44.5mm | 44.5 mm",
                " 44.5  mm  | 44.5 mm",
                "1.75 in | 1.75 in",
                "1 3/4 in | 1.75 in",
                "1-3/4 in | 1.75 in",
                "1 3/4\" | 1.75 in",
                "3/8\" | 0.375 in",
                "3/8 in | 0.375 in",
                "-3/64 in | -0.046875 in",
                "-1 3/4 in | -1.75 in",
                "+2 mm | 2 mm",
                "25 1/2 inches | 25.5 in",
                "1 inch | 1 in",
                "12 thou | 12 thou",
                "0.8 thou | 0.8 thou",
                "25 ft | 25 ft",
                "25' | 25 ft",
                "16 feet | 16 ft",
                "1 foot | 1 ft",
                ".5 in | 0.5 in",
                "65 cm | 65 cm",
                "0.65 m | 0.65 m",
                "1e-3 m | 0.001 m",
                "1.5E2 mm | 150 mm",
                "007 mm | 7 mm",
                "0 mm | 0 mm",
                "-0 mm | 0 mm",
                "63/64 in | 0.984375 in",
                "1 3/4 in + 2.0 thou | 1.752 in",
                "1 in - 3 thou | 0.997 in",
                "-(1 3/4 in + 2.0 thou) | -1.752 in",
            })
    void length_readsWhatMakersWrite(String text, String read) {
        assertThat(ShopUnits.length(text)).hasToString(read);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "25,4 mm | \"25,4 mm\" has a comma; write a decimal point",
                "1,234.5 mm | \"1,234.5 mm\" has a comma; write a decimal point",
                "44.5 | \"44.5\" has no unit; a length is wanted: use mm, cm, m, in, thou, ft, such as \"44.5 mm\" or \"44.5 in\"",
                "1 3/4 | \"1 3/4\" has no unit; a length is wanted: use mm, cm, m, in, thou, ft, such as \"1.75 mm\" or \"1 3/4 in\"",
                "13 deg | \"13 deg\" is an angle; a length is wanted: use mm, cm, m, in, thou, ft",
                "3 furlongs | \"3 furlongs\" cannot be read: the unit \"furlongs\" is not known; use mm, cm, m, in, thou, ft",
                "44.5 mm junk | \"44.5 mm junk\" cannot be read: the unit \"mm junk\" is not known; use mm, cm, m, in, thou, ft",
                "5' 6\" | \"5' 6\"\" cannot be read: the unit \"' 6\"\" is not known; use mm, cm, m, in, thou, ft",
                "MM | \"MM\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "1 5/4 in | \"1 5/4 in\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "1 3/0 in | \"1 3/0 in\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "3/0 in | \"3/0 in\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "1 2 mm | \"1 2 mm\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "5. mm | \"5. mm\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "--5 mm | \"--5 mm\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "NaN mm | \"NaN mm\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "Infinity mm | \"Infinity mm\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "1e999 mm | \"1e999 mm\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                ",5 mm | \",5 mm\" cannot be read as a length; write a decimal point, not a comma; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "mm | \"mm\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "`` | \"\" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
                "`  ` | \"  \" cannot be read as a length; write it like \"44.5 mm\" or \"1 3/4 in\"",
            })
    void length_refusesWithOneSentence(String text, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopUnits.length(text))
                .withMessage(message);
    }

    @ParameterizedTest
    @CsvSource({"1 3/4, 1.75", "3/8, 0.375", "1.75, 1.75", "-1/64, -0.015625", "1-3/4, 1.75"})
    void inch_readsANumberAsOnADrawing(String text, double inches) {
        assertThat(ShopUnits.inch(text).value()).isEqualTo(inches);
        assertThat(ShopUnits.inch(text).unit()).isSameAs(ShopUnit.INCH);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 3/4 in", "", "1,75", "3/", "/4", "1 3", "1/2/4", "x"})
    void inch_refusesWhatIsNoNumber(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopUnits.inch(text))
                .withMessageStartingWith("\"" + text + "\" cannot be read as a number of inches")
                .withMessageEndingWith("; write it like \"1 3/4\", \"3/8\" or \"1.75\"");
    }

    @Test
    void inch_isTheNearestDoubleToEveryFraction() {
        for (int under = 2; under <= 128; under++) {
            for (int over = 1; over < under; over++) {
                for (int whole = 0; whole <= 3; whole++) {
                    String text = (whole == 0 ? "" : whole + " ") + over + "/" + under;
                    double nearest = new BigDecimal(whole * under + over)
                            .divide(new BigDecimal(under), MathContext.DECIMAL128)
                            .doubleValue();

                    assertThat(ShopUnits.inch(text).value()).as(text).isEqualTo(nearest);
                }
            }
        }
    }

    /** Whole numbers and the text give the same double: that nearest to the fraction. */
    @Test
    void inch_ofWholeNumbers_isThatOfTheText() {
        for (int under = 2; under <= 128; under++) {
            for (int over = 1; over < under; over++) {
                assertThat(ShopUnits.inch(over, under).value())
                        .isEqualTo(ShopUnits.inch(over + "/" + under).value());
                for (int whole : new int[] {-2, -1, 1, 25}) {
                    assertThat(ShopUnits.inch(whole, over, under).value())
                            .as("%d %d/%d", whole, over, under)
                            .isEqualTo(ShopUnits.inch(whole + " " + over + "/" + under)
                                    .value());
                }
            }
        }
        assertThat(ShopUnits.inch(0, 3, 8)).isEqualTo(ShopUnits.inch(3, 8)).isEqualTo(ShopUnits.mm(9.525));
        assertThat(ShopUnits.inch(-3, 8)).isEqualTo(ShopUnits.mm(-9.525));
        assertThat(ShopUnits.inch(2, 0, 8)).isEqualTo(ShopUnits.inch(2));
        assertThat(ShopUnits.inch(1, 3, 4).unit()).isSameAs(ShopUnit.INCH);
    }

    /** The language divides whole numbers without their rest: 3 / 8 is 0 (Java Language Specification, 15.17.2). */
    @Test
    void inch_refusesADivisionOfWholeNumbers_andNamesTheTrap() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopUnits.inch(3 / 8))
                .withMessage(
                        "inch(0) is refused, for inch(3 / 8) is inch(0) in Java: write inch(3, 8) or inch(\"3/8\"),"
                                + " and inch(0.0) for no length at all");
        assertThat(ShopUnits.inch(0.0)).isEqualTo(ShopUnits.mm(0));
        assertThat(ShopUnits.inch(3 / 8.0)).isEqualTo(ShopUnits.inch(3, 8));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | 3 | 0 | denominator must be 1 or more, but was 0",
                "1 | 3 | -4 | denominator must be 1 or more, but was -4",
                "1 | 5 | 4 | numerator must be 0 or more and less than the denominator, 4, but was 5",
                "1 | 4 | 4 | numerator must be 0 or more and less than the denominator, 4, but was 4",
                "1 | -3 | 4 | numerator must be 0 or more and less than the denominator, 4, but was -3",
            })
    void inch_refusesAFractionNoDrawingHas(int whole, int numerator, int denominator, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopUnits.inch(whole, numerator, denominator))
                .withMessage(message);
    }

    @Test
    void inch_refusesADenominatorOfNothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopUnits.inch(3, 0))
                .withMessage("denominator must be 1 or more, but was 0");
    }

    @Test
    void numbers_areReadToTheNearestDouble() {
        SplittableRandom random = new SplittableRandom(99);
        for (int i = 0; i < 50_000; i++) {
            String text = switch (i % 3) {
                case 0 -> Double.toString(random.nextDouble() * 1000);
                case 1 ->
                    BigDecimal.valueOf(random.nextLong(1L << 60), random.nextInt(0, 25))
                            .toPlainString();
                default -> random.nextInt(1000) + "." + random.nextInt(1000);
            };

            assertThat(ShopUnits.length(text + " mm").value())
                    .as("seed 99, trial %d, %s", i, text)
                    .isEqualTo(Double.parseDouble(text));
        }
    }

    @ParameterizedTest
    @MethodSource("units")
    <Q extends Quantity<Q>> void parse_readsWhatToStringWrites(ShopUnit<Q> unit) {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 2_000; i++) {
            double size = Math.pow(10, random.nextInt(-9, 17));
            Amount<Q> amount = unit.of((random.nextDouble() - 0.5) * size);

            Amount<Q> read = ShopUnits.parse(amount.toString(), unit.kind());

            assertThat(read).as("seed 3, trial %d", i).hasToString(amount.toString());
            assertThat(read.unit()).isSameAs(unit);
        }
    }

    @Test
    void parse_readsOtherKinds() {
        assertThat(ShopUnits.angle("13 deg")).hasToString("13 deg");
        assertThat(ShopUnits.angle("0.02 rad")).hasToString("0.02 rad");
        assertThat(ShopUnits.angle("13\u00b0")).hasToString("13 deg");
        assertThat(ShopUnits.parse("21 lb", Force.class)).isEqualTo(ShopUnits.poundForce(21));
        assertThat(ShopUnits.parse("95 N", Force.class)).isEqualTo(ShopUnits.newton(95));
        assertThat(ShopUnits.parse("70 F", Temperature.class)).isEqualTo(ShopUnits.fahrenheit(70));
        assertThat(ShopUnits.parse("21 \u00b0C", Temperature.class)).isEqualTo(ShopUnits.celsius(21));
        assertThat(ShopUnits.parse("95 %", Dimensionless.class)).isEqualTo(ShopUnits.percent(95));
        assertThat(ShopUnits.parse("0.95", Dimensionless.class)).isEqualTo(ShopUnits.percent(95));
        assertThat(ShopUnits.parse("60 in/min", Speed.class)).isEqualTo(ShopUnits.inchPerMinute(60));
        assertThat(ShopUnits.parse("8.5 N.m", Torque.class)).hasToString("8.5 N.m");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopUnits.parse("3 kg", Mass.class))
                .withMessage("there is no unit for Mass here");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopUnits.parse("x", Force.class))
                .withMessage("\"x\" cannot be read as a force; write it like \"12.5 N\" or \"3 lbf\"");
    }

    @ParameterizedTest
    @MethodSource("pitches")
    void pitch_isEqualTemperament(Map<String, String> row) {
        double exact = Double.parseDouble(row.get("hertz"));

        double hertz = ShopUnits.pitch(row.get("note")).libraryValue();

        assertThat(hertz).isCloseTo(exact, within(2 * Math.ulp(exact)));
        if (!row.get("printed").isEmpty()) {
            assertThat(hertz).isCloseTo(Double.parseDouble(row.get("printed")), within(0.005));
        }
    }

    @ParameterizedTest
    @CsvSource({"C#4, Db4", "F#2, Gb2", "B3, Cb4", "B#3, C4", "E#4, F4", "Fb4, E4"})
    void pitch_ofTwoNamesOfAKeyIsOne(String one, String other) {
        assertThat(ShopUnits.pitch(one)).isEqualTo(ShopUnits.pitch(other));
    }

    @Test
    void pitch_doublesEachOctave() {
        for (int octave = -1; octave < 9; octave++) {
            assertThat(ShopUnits.pitch("A" + (octave + 1)).libraryValue())
                    .isEqualTo(2 * ShopUnits.pitch("A" + octave).libraryValue());
            assertThat(ShopUnits.pitch("Eb" + (octave + 1)).libraryValue())
                    .isEqualTo(2 * ShopUnits.pitch("Eb" + octave).libraryValue());
        }
        assertThat(ShopUnits.pitch("A4").libraryValue()).isEqualTo(440);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A", "H3", "a3", "A10", "A##3", "3A", "A 3", "A3 ", ".4", "A-", "#4"})
    void pitch_refusesWhatIsNoNote(String note) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShopUnits.pitch(note))
                .withMessage("\"" + note + "\" cannot be read as a note; write it like \"A3\", \"F#2\" or \"Bb1\"");
    }

    @Test
    void words_giveTheUnitTheyName() {
        assertThat(ShopUnits.mm(29.84)).hasToString("29.84 mm");
        assertThat(ShopUnits.inch(1.75)).hasToString("1.75 in");
        assertThat(ShopUnits.thou(0.8)).hasToString("0.8 thou");
        assertThat(ShopUnits.feet(25)).hasToString("25 ft");
        assertThat(ShopUnits.deg(13)).hasToString("13 deg");
        assertThat(ShopUnits.newton(95)).hasToString("95 N");
        assertThat(ShopUnits.poundForce(21)).hasToString("21 lbf");
        assertThat(ShopUnits.gigapascal(12.4)).hasToString("12.4 GPa");
        assertThat(ShopUnits.percent(95)).hasToString("95 %");
        assertThat(ShopUnits.celsius(21)).hasToString("21 degC");
        assertThat(ShopUnits.fahrenheit(70)).hasToString("70 degF");
        assertThat(ShopUnits.hertz(440)).hasToString("440 Hz");
        assertThat(ShopUnits.rpm(18000)).hasToString("18000 rpm");
        assertThat(ShopUnits.mmPerMinute(1200)).hasToString("1200 mm/min");
        assertThat(ShopUnits.inchPerMinute(48)).hasToString("48 in/min");
        assertThat(ShopUnits.gramPerMetre(0.4)).hasToString("0.4 g/m");
        assertThat(ShopUnits.kgPerM3(640)).hasToString("640 kg/m3");
    }

    /** 1 kgf = 9.80665 N exactly: the standard acceleration of 1901 (3rd CGPM). */
    @Test
    void parse_readsKilogramForce() {
        assertThat(ShopUnits.parse("1 kgf", Force.class)).isEqualTo(ShopUnits.newton(9.80665));
        assertThat(ShopUnits.parse("9.5 kgf", Force.class)).hasToString("9.5 kgf");
    }

    /** What phones and word processors write for a space, a minus, inches and feet (The Unicode Standard, 6.2). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12\u00a0mm | 12 mm",
                "12\u2009mm | 12 mm",
                "12\u202fmm | 12 mm",
                "12\tmm | 12 mm",
                "\u22120.5 mm | -0.5 mm",
                "3/8\u2033 | 3/8 in",
                "3/8\u201d | 3/8 in",
                "2\u2032 | 2 ft",
                "1\u00a03/4\u2003in | 1 3/4 in",
                "1 3/4\u00a0in\u00a0+\u00a02.0 thou | 1 3/4 in + 2.0 thou",
                "\u2212(1 3/4 in + 2.0 thou) | -(1 3/4 in + 2.0 thou)",
                "1 3/4 IN | 1 3/4 in",
                "12 MM | 12 mm",
                "12 Mm | 12 mm",
                "12 THOU | 12 thou",
                "3 Inches | 3 in"
            })
    void length_readsWhatIsTypedElsewhere(String typed, String plain) {
        assertThat(ShopUnits.length(typed)).isEqualTo(ShopUnits.length(plain));
        assertThat(ShopUnits.length(typed).unit())
                .isEqualTo(ShopUnits.length(plain).unit());
    }

    @Test
    void parse_readsUnitsInAnyCaseWhereThatMeansOneThing() {
        assertThat(ShopUnits.angle("\u221213 DEG")).isEqualTo(ShopUnits.deg(-13));
        assertThat(ShopUnits.inch("1\u00a03/4")).isEqualTo(ShopUnits.inch(1.75));
        assertThat(ShopUnits.parse("12 gpa", Pressure.class)).isEqualTo(ShopUnits.gigapascal(12));
        assertThat(ShopUnits.parse("3 Hz", Frequency.class)).isEqualTo(ShopUnits.parse("3 hz", Frequency.class));
        // A millipascal is no megapascal, and a single letter in another case may be another unit.
        assertThatThrownBy(() -> ShopUnits.parse("12 mPa", Pressure.class))
                .hasMessageContaining("\"mPa\" is not known");
        assertThatThrownBy(() -> ShopUnits.length("2 M")).hasMessageContaining("the unit \"M\" is not known");
    }

    /** Not 0, but a double of it is (IEEE 754: the least is 4.9e-324). */
    @ParameterizedTest
    @ValueSource(strings = {"1e-99999999 mm", "-2e-400 mm", "1e-324 in", "4e999999999999 mm"})
    void length_refusesWhatADoubleLoses(String text) {
        assertThatThrownBy(() -> ShopUnits.length(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("\"" + text + "\" cannot be read as a length; write it like ");
        assertThat(ShopUnits.length("0e-99999999 mm").libraryValue()).isZero();
        assertThat(ShopUnits.length("0." + "0".repeat(30) + " mm").libraryValue())
                .isZero();
    }
}
