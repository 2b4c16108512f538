package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.neck.Bar;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.StringHeights;
import org.neckgeom.stock.Wood;
import org.neckgeom.testing.Approved;

/** What every answer of this package keeps: equality by what was asked, short text, the word estimate. */
class StrengthValuesTest {

    /** Each makes a new object for the same question; two questions of a kind stand next to each other. */
    static Stream<Supplier<Object>> questions() {
        return Stream.of(Necks.mandolin(), SampleNecks.guitar(), SampleNecks.shortScaleBass())
                .flatMap(StrengthValuesTest::about);
    }

    private static Stream<Supplier<Object>> about(Neck neck) {
        Bar bar = Bar.carbon(mm(250)).section(mm(3), mm(6));
        Relief relief = Relief.of(neck);
        Weather dry = weather(25);
        return Stream.of(
                () -> Relief.of(neck),
                relief::underStrings,
                () -> relief.withRodAt(newton(500)),
                () -> relief.rodForceFor(mm(0.1)),
                relief::rodTravel,
                relief::stress,
                () -> relief.addingBars(bar, mm(8)),
                () -> Sections.of(neck),
                () -> Sections.of(neck).atFret(5),
                () -> StringLoad.of(neck),
                () -> dry.across(mm(46), neck.wood().orElseThrow()),
                () -> dry.fretEnds(mm(46), neck.wood().orElseThrow()),
                () -> dry.slotFit(mm(6.3), mm(6), neck.wood().orElseThrow()),
                () -> dry.readOnDifferentDays(mm(60), neck.wood().orElseThrow()),
                () -> dry.on(neck));
    }

    private static Weather weather(double humidity) {
        return Weather.from(percent(45), celsius(21)).to(percent(humidity), celsius(21));
    }

    @ParameterizedTest
    @MethodSource("questions")
    void answers_areEqualWhenTheQuestionIs(Supplier<Object> question) {
        Object answer = question.get();

        assertThat(answer).isEqualTo(question.get()).hasSameHashCodeAs(question.get());
        assertThat(answer).isNotEqualTo("something else").isNotEqualTo(null);
        assertThat(answer.toString()).isEqualTo(question.get().toString());
    }

    @Test
    void answers_differWhenTheQuestionDoes() {
        assertThat(about(Necks.mandolin()).map(Supplier::get))
                .doesNotContainAnyElementsOf(
                        about(SampleNecks.guitar()).map(Supplier::get).toList());
        // Allowed to be the same, but then hash tables would be lists.
        assertThat(about(Necks.mandolin()).map(question -> question.get().hashCode()))
                .doesNotContainAnyElementsOf(about(SampleNecks.guitar())
                        .map(question -> question.get().hashCode())
                        .toList());
        assertThat(weather(25)).isNotEqualTo(weather(26)).isEqualTo(weather(25)).hasSameHashCodeAs(weather(25));
    }

    @ParameterizedTest
    @MethodSource("questions")
    void toString_isShortAndSaysItIsAnEstimate(Supplier<Object> question) {
        String text = question.get().toString();

        assertThat(text).hasSizeLessThan(1000).doesNotContain("@").doesNotContain("NaN");
        if (!text.startsWith("Read one day")) {
            assertThat(text).contains("Estimate");
        }
        assertThat(text).contains("95 %: ");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(130));
    }

    @Test
    void toString_ofClimateAndHeightsIsOneLine() {
        assertThat(Climate.of(percent(45), celsius(21))).hasToString("45 % humidity, 21 degC: wood at 8.5 % moisture");
        assertThat(Relief.of(Necks.mandolin())
                        .heights(StringHeights.of(mm(0.4), mm(2)).treble(mm(0.3), mm(1.6)))
                        .toString())
                .contains(
                        "frets 1.1 mm, strings 0.4 mm over them at the nut, 2 mm at the 12th fret; treble side 0.3 mm, 1.6 mm");
        assertThat(weather(25).toString()).contains("wood dries", "Estimate");
        assertThat(Weather.from(percent(45), celsius(21))
                        .to(percent(25), celsius(21))
                        .across(mm(46), Wood.INDIAN_ROSEWOOD)
                        .toString())
                .startsWith("46 mm across Indian rosewood: smaller\n  change    -0.21 mm (95 %: -0.38 to -0.09 mm)");
    }

    @Test
    void texts_areTheApprovedOnes() {
        Approved.hold("strength", Map.of("texts.txt", Approved.texts(questions().map(Supplier::get))));
    }
}
