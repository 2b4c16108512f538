package org.neckgeom.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.LengthStyle.DECIMAL_INCHES;
import static org.neckgeom.units.LengthStyle.INCH_FRACTIONS;
import static org.neckgeom.units.LengthStyle.MILLIMETRES;

import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class LengthStyleTest {

    private static final Pattern FRACTION =
            Pattern.compile("(-?)\\(?(?:(\\d+) )?(?:(\\d+)/(\\d+)|(\\d+)) in(?: ([+-]) (\\d+\\.\\d) thou)?\\)?");

    @ParameterizedTest
    @CsvSource({
        "44.45, 1 3/4 in",
        "25.4, 1 in",
        "9.525, 3/8 in",
        "0.396875, 1/64 in",
        "25.003125, 63/64 in",
        "44.5008, 1 3/4 in + 2.0 thou",
        "44.3992, 1 3/4 in - 2.0 thou",
        "-44.45, -1 3/4 in",
        "-44.5008, -(1 3/4 in + 2.0 thou)",
        "0.0508, 2.0 thou",
        "-0.0508, -2.0 thou",
        "0, 0 in",
        "-0.0, 0 in",
        "-0.0001, 0 in",
        "647.7, 25 1/2 in",
    })
    void fractions_areInLowestTermsWithTheirRemainder(double mm, String text) {
        assertThat(INCH_FRACTIONS.text(mm)).isEqualTo(text);
        assertThat(INCH_FRACTIONS.brief(mm)).isEqualTo(text);
        if (Math.abs(mm) >= 2.54) {
            assertThat(INCH_FRACTIONS.text(mm, 0.01)).isEqualTo(text);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "44.5008, 1 3/4 in, 0.0508",
        "44.3992, 1 3/4 in, -0.0508",
        "-44.5008, -1 3/4 in, -0.0508",
        "637.0, 25 5/64 in, 0.015625",
        "0.05, 2.0 thou, 0",
        "25.4, 1 in, 0",
    })
    void mark_isTheNearestOfARule_andOffMarkWhatIsOver(double mm, String text, double over) {
        assertThat(INCH_FRACTIONS.mark(mm)).isEqualTo(text);
        assertThat(INCH_FRACTIONS.offMarkMm(mm)).isCloseTo(over, within(1e-9));
        assertThat(MILLIMETRES.mark(mm)).isEqualTo(MILLIMETRES.brief(mm));
        assertThat(DECIMAL_INCHES.offMarkMm(mm)).isZero();
    }

    @Test
    void fractions_readBackToAFewHundredthsOfAThou() {
        SplittableRandom random = new SplittableRandom(17);
        for (int i = 0; i < 20_000; i++) {
            double mm = Math.copySign(0.6 + random.nextDouble() * 1000, random.nextDouble() - 0.5);

            String text = INCH_FRACTIONS.text(mm);

            Matcher parts = FRACTION.matcher(text);
            assertThat(parts.matches()).as(text).isTrue();
            double inches = parts.group(5) != null ? Double.parseDouble(parts.group(5)) : 0;
            if (parts.group(3) != null) {
                int over = Integer.parseInt(parts.group(3));
                int under = Integer.parseInt(parts.group(4));
                assertThat(over % 2).as(text).isEqualTo(1);
                assertThat(64 % under).as(text).isZero();
                inches = (parts.group(2) == null ? 0 : Integer.parseInt(parts.group(2))) + (double) over / under;
            }
            double thou = parts.group(7) == null ? 0 : Double.parseDouble(parts.group(7));
            assertThat(thou).as(text).isLessThanOrEqualTo(7.9); // half of 1/64 in
            double size = inches + ("-".equals(parts.group(6)) ? -thou : thou) / 1000;
            double read = 25.4 * (parts.group(1).isEmpty() ? size : -size);
            assertThat(read).as("seed 17, trial %d, %s", i, text).isCloseTo(mm, within(0.05 * 0.0254 + 1e-9));
            assertThat(ShopUnits.length(text).libraryValue())
                    .as("seed 17, trial %d, %s", i, text)
                    .isCloseTo(read, within(1e-9));
        }
    }

    @Test
    void fractions_giveWayToThouBesideAnUncertainty() {
        assertThat(INCH_FRACTIONS.text(0.71, 0.014142)).isEqualTo("27.95 thou");
        assertThat(INCH_FRACTIONS.text(0, 0.014142)).isEqualTo("0 in");
        assertThat(INCH_FRACTIONS.text(44.45, 0.014142)).isEqualTo("1 3/4 in");
    }

    @Test
    void unitFor_changesLengthsAndFeedsAlone() {
        assertThat(INCH_FRACTIONS.unitFor(ShopUnit.MILLIMETRE)).isSameAs(ShopUnit.INCH_FRACTION);
        assertThat(DECIMAL_INCHES.unitFor(ShopUnit.FOOT)).isSameAs(ShopUnit.INCH);
        assertThat(MILLIMETRES.unitFor(ShopUnit.INCH_PER_MINUTE)).isSameAs(ShopUnit.MM_PER_MINUTE);
        assertThat(DECIMAL_INCHES.unitFor(ShopUnit.NEWTON)).isSameAs(ShopUnit.NEWTON);
        assertThat(INCH_FRACTIONS.fineUnitFor(ShopUnit.MILLIMETRE)).isSameAs(ShopUnit.THOU);
        assertThat(MILLIMETRES.fineUnitFor(ShopUnit.THOU)).isSameAs(ShopUnit.MILLIMETRE);
        assertThat(DECIMAL_INCHES.fineUnitFor(ShopUnit.DEGREE)).isSameAs(ShopUnit.DEGREE);
    }

    @ParameterizedTest
    @CsvSource({"0.71, 0.710 mm", "-0.71, -0.710 mm", "0, 0.000 mm", "-0.0004, 0.000 mm", "0.0005, 0.001 mm"})
    void millimetres_haveThreeDecimals(double mm, String text) {
        assertThat(MILLIMETRES.text(mm)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "30.5562, 1.2030 in",
        "0.02032, 0.8 thou",
        "-0.02032, -0.8 thou",
        "2.54, 0.1000 in",
        "2.5399, 100.0 thou",
        "0, 0.0000 in"
    })
    void decimalInches_haveFourDecimalsAndThouForSmallOnes(double mm, String text) {
        assertThat(DECIMAL_INCHES.text(mm)).isEqualTo(text);
    }

    @Test
    void brief_dropsTheZerosAtItsEnd() {
        assertThat(MILLIMETRES.brief(8.5)).isEqualTo("8.5 mm");
        assertThat(MILLIMETRES.brief(8.50049)).isEqualTo("8.5 mm");
        assertThat(MILLIMETRES.brief(-0.0001)).isEqualTo("0 mm");
        assertThat(DECIMAL_INCHES.brief(25.4)).isEqualTo("1 in");
        assertThat(DECIMAL_INCHES.brief(6)).isEqualTo("0.2362 in");
    }

    @Test
    void text_roundsByTheUncertainty() {
        assertThat(MILLIMETRES.text(0.71, 0.014142)).isEqualTo("0.710 mm");
        assertThat(MILLIMETRES.text(12.34567, 0.5)).isEqualTo("12.35 mm");
        assertThat(MILLIMETRES.text(12.34567, 25)).isEqualTo("12 mm");
        assertThat(MILLIMETRES.text(12.34567, 0)).isEqualTo("12.346 mm");
        assertThat(MILLIMETRES.text(12.34567, Double.NaN)).isEqualTo("12.346 mm");
        assertThat(DECIMAL_INCHES.text(30.5562, 0.0254)).isEqualTo("1.2030 in");
        assertThat(DECIMAL_INCHES.text(0.02032, 0.00254)).isEqualTo("0.80 thou");
    }

    /** It is nothing just where its text has no digit but noughts. */
    @ParameterizedTest
    @EnumSource(LengthStyle.class)
    void isNothing_whereTheTextIsNought(LengthStyle style) {
        SplittableRandom random = new SplittableRandom(41);
        int nothing = 0;
        for (int i = 0; i < 20_000; i++) {
            double mm = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-7, 3));
            double u = i % 3 == 0 ? 0 : random.nextDouble() * Math.pow(10, random.nextInt(-5, 2));
            String text = style.text(mm, u);
            boolean isNought = !text.replaceAll(" .*| thou", "").matches(".*[1-9].*");
            if (u == 0 && style == LengthStyle.INCH_FRACTIONS) {
                continue; // a mark and what is over, not decimals
            }
            nothing += isNought ? 1 : 0;
            assertThat(style.isNothing(mm, u))
                    .as("seed 41, %d: %s mm, u %s mm: %s", i, mm, u, text)
                    .isEqualTo(isNought);
        }
        assertThat(nothing).isBetween(1_000, 19_000);
    }

    @Test
    void small_hasTwoDigits() {
        assertThat(MILLIMETRES.small(0.0141421)).isEqualTo("0.014 mm");
        assertThat(MILLIMETRES.small(0)).isEqualTo("0 mm");
        assertThat(DECIMAL_INCHES.small(0.0141421)).isEqualTo("0.56 thou");
        assertThat(INCH_FRACTIONS.small(0.0141421)).isEqualTo("0.56 thou");
        assertThat(DECIMAL_INCHES.small(25.4)).isEqualTo("1.0 in");
    }

    @Test
    void text_namesWhatIsNoNumber() {
        for (LengthStyle style : LengthStyle.values()) {
            assertThat(style.text(Double.NaN)).isEqualTo("NaN " + style.unit());
            assertThat(style.text(Double.POSITIVE_INFINITY)).isEqualTo("infinity " + style.unit());
            assertThat(style.text(Double.NEGATIVE_INFINITY)).isEqualTo("-infinity " + style.unit());
        }
    }

    @Test
    void of_followsTheUnit() {
        assertThat(LengthStyle.of(ShopUnits.mm(3))).isEqualTo(MILLIMETRES);
        assertThat(LengthStyle.of(ShopUnit.METRE.of(3))).isEqualTo(MILLIMETRES);
        assertThat(LengthStyle.of(ShopUnits.inch(3))).isEqualTo(DECIMAL_INCHES);
        assertThat(LengthStyle.of(ShopUnits.thou(3))).isEqualTo(DECIMAL_INCHES);
        assertThat(LengthStyle.of(ShopUnits.feet(3))).isEqualTo(DECIMAL_INCHES);
        assertThat(LengthStyle.of(Quantities.getQuantity(3, MetricPrefix.MILLI(Units.METRE))))
                .isEqualTo(MILLIMETRES);
        assertThat(LengthStyle.of(
                        Quantities.getQuantity(3, Units.METRE.multiply(254).divide(10_000))))
                .isEqualTo(DECIMAL_INCHES);
        assertThat(DECIMAL_INCHES.amount(25.4)).hasToString("1 in");
        assertThat(MILLIMETRES.amount(25.4)).hasToString("25.4 mm");
    }
}
