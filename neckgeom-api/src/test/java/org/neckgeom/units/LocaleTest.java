package org.neckgeom.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.contract.EveryText;
import org.neckgeom.text.Numbers;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Every text, reading and refusal is the same in any default locale, digits and letters included. */
@Isolated
class LocaleTest {

    private Locale before;
    private TimeZone zoneBefore;

    @BeforeEach
    void remember() {
        before = Locale.getDefault();
        zoneBefore = TimeZone.getDefault();
    }

    @AfterEach
    void restore() {
        Locale.setDefault(before);
        TimeZone.setDefault(zoneBefore);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva", "th-TH-u-nu-thai", "fa-IR"})
    void texts_areTheSameInEveryLocale(String tag) {
        Locale.setDefault(Locale.ROOT);
        List<String> expected = texts();
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kolkata"));
        // The locale bites: the JDK's own formatter, or its letters, differ here from the root's.
        String bitten = String.format("%.1f %d", 1.5, 7) + "TITLE".toLowerCase(Locale.getDefault());
        assertThat(bitten).isNotEqualTo(String.format(Locale.ROOT, "%.1f %d", 1.5, 7) + "title");

        assertThat(texts()).isEqualTo(expected);
    }

    private static List<String> texts() {
        List<String> texts = new ArrayList<>(EveryText.ofTheSamples());
        for (double value : new double[] {0, -0.71, 1234567.891, 1e-9, 1e20, 44.4508, Double.NaN}) {
            texts.add(Numbers.plain(value));
            texts.add(Numbers.fixed(value, 3));
            texts.add(Numbers.trimmed(value, 3));
            for (LengthStyle style : LengthStyle.values()) {
                texts.add(style.text(value));
                texts.add(style.brief(value));
                texts.add(style.small(Math.abs(value)));
                texts.add(style.text(value, 0.01));
            }
        }
        for (double p : new double[] {0, 0.0004, 0.5, 0.9996, 0.9999999, 1}) {
            texts.add(Numbers.percent(p));
        }
        for (ShopUnit<?> unit : ShopUnit.ALL) {
            texts.add(thereAndBack(unit));
        }
        texts.add(Amount.from(Quantities.getQuantity(1.5, MetricPrefix.MICRO(Units.METRE)), "length")
                .toString());
        refusals(texts);
        return texts;
    }

    private static <Q extends Quantity<Q>> String thereAndBack(ShopUnit<Q> unit) {
        return ShopUnits.parse(unit.of(-1234.5).toString(), unit.kind()).toString();
    }

    private static void refusals(List<String> texts) {
        for (String text :
                new String[] {"25,4 mm", "1.234,5 mm", "\u0661 mm", "3 furlongs", "1 5/4 in", "12", "TITLE"}) {
            try {
                texts.add(ShopUnits.length(text).toString());
            } catch (IllegalArgumentException e) {
                texts.add(e.getMessage());
            }
        }
        try {
            LibraryUnits.mmPositive(Quantities.getQuantity(-1.5, MetricPrefix.MICRO(Units.METRE)), "wall");
        } catch (IllegalArgumentException e) {
            texts.add(e.getMessage());
        }
        try {
            ShopUnits.mm(1.5).dividedBy(0);
        } catch (ArithmeticException e) {
            texts.add(e.getMessage());
        }
    }
}
