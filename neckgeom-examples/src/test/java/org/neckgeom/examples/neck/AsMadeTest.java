package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.measure.Estimate;
import org.neckgeom.page.Document;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.MeasuredNeck;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.RodTurns;
import org.neckgeom.strength.StiffnessKnowledge;
import org.neckgeom.strength.StiffnessReadings;

/** What has been read on the neck itself, as a neck file says it. */
class AsMadeTest {

    private static final String OCTAVE = ShippedNecks.text("octave-mandolin.yaml");

    /** The shipped neck with the lines of its comment made live. */
    private static String live() {
        int start = OCTAVE.indexOf("# measured:");
        int end = OCTAVE.indexOf("\n\n", start);
        String block = OCTAVE.substring(start, end)
                .lines()
                .map(line -> line.replaceFirst("^# ", ""))
                .collect(Collectors.joining("\n"));
        return OCTAVE.substring(0, start) + block + OCTAVE.substring(end);
    }

    private static String with(String block) {
        return OCTAVE + "\nmeasured:\n" + block.indent(2);
    }

    @Test
    void comment_ofTheShippedNeck_readsWhenItIsMadeLive() {
        MeasuredNeck readings = NeckFile.parse("live.yaml", live()).measured();
        Map<NeckFeature, Estimate<Length>> read = new EnumMap<>(NeckFeature.class);
        for (NeckFeature feature : NeckFeature.values()) {
            readings.of(feature).ifPresent(estimate -> read.put(feature, estimate));
        }

        assertThat(read)
                .containsOnly(
                        entry(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(9.21), mm(0.05))),
                        entry(NeckFeature.SLOT_OFFSET, Estimate.of(mm(0.03), mm(0.05))),
                        entry(NeckFeature.HEAD_THICKNESS, Estimate.of(mm(15.1), mm(0.05))),
                        entry(NeckFeature.FINGERBOARD_OFFSET, Estimate.of(mm(0.1), mm(0.05))),
                        entry(NeckFeature.HEIGHT_AT_BRIDGE, Estimate.of(mm(-0.3), mm(0.05))),
                        entry(NeckFeature.OFFSET_AT_BRIDGE, Estimate.of(mm(0.2), mm(0.05))));
        assertThat(readings.scarfAngle()).contains(Estimate.of(deg(12.9), deg(0.1)));
        assertThat(readings.backDepths()).containsOnly(entry(100.0, Estimate.of(mm(15), mm(0.05))));
    }

    /** Readings of stiffness go from the file into every answer of the plan, and two answers about one thing agree. */
    @Test
    void stiffnessOfTheFile_isThatOfThePlansAnswers() {
        Job file = NeckFile.parse("live.yaml", live());
        StiffnessReadings readings = file.measured().stiffness();
        Relief relief = file.plan().relief().orElseThrow();
        StiffnessKnowledge known = relief.stiffness();
        RodTurns turns = relief.rodTurnsFor(mm(0.2), mm(0.8));

        assertThat(readings.count()).isEqualTo(6);
        assertThat(known.readings()).isEqualTo(readings);
        assertThat(known.isContradictory()).as(known.toString()).isFalse();
        assertThat(known.bow()).isEqualTo(relief.underStrings());
        assertThat(turns.force().slackRelief()).isEqualTo(relief.underStrings().relief());
        assertThat(relief.knowing(StiffnessReadings.none()).underStrings()).isEqualTo(known.before());
        String page = file.plan()
                .section(SectionCode.STRINGS_AND_RELIEF)
                .orElseThrow()
                .toString();
        assertThat(page.replaceAll("\\s+", " "))
                .contains(known.bow()
                        .toString()
                        .lines()
                        .limit(2)
                        .collect(Collectors.joining())
                        .replaceAll("\\s+", " "));
        assertThat(file.plan().section(SectionCode.READINGS).orElseThrow().toString())
                .contains("6 readings; see relief below");
        assertThat(Document.PLAN.json(file)).contains("\"rodTurned\"", "\"tone\"", "\"Hz\"");
        // Relief 0.39 mm to 0.32 mm by a quarter turn: 0.68 turns to 0.2 mm.
        assertThat(Math.sqrt(
                        turns.fewestTurns().orElseThrow() * turns.mostTurns().orElseThrow()))
                .isCloseTo(0.25 * 0.19 / 0.07, org.assertj.core.api.Assertions.within(1e-9));
    }

    /** The file, the API and the JSON say the same. */
    @Test
    void live_goesToJsonAndBack() {
        Job file = NeckFile.parse("live.yaml", live());

        assertThat(Document.PLAN.read(Document.PLAN.json(file))).isEqualTo(file);
    }

    @Test
    void severalReadings_areTheirMean_withTheShopsRepeatabilityOverTheRootOfTheirCount() {
        MeasuredNeck readings = NeckFile.parse("a.yaml", with("channel depth: [9.2 mm, 9.26 mm, 9.22 mm, 9.24 mm]"))
                .measured();
        Estimate<?> depth = readings.of(NeckFeature.CHANNEL_DEPTH).orElseThrow();

        assertThat(depth.libraryValue()).isCloseTo(9.23, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(depth.libraryUncertainty()).isEqualTo(0.02 / 2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "channel dept: 9.2 mm | channel depth",
                "channel depth: 9.2 | unit",
                "scarf angle: 60 deg | 45 deg",
                "back: [{ station: 100 mm }] | depth",
                "slot offset at heel: 0.1 mm | slot offset must be read at its head end before its heel end",
                "back: [{ station: 900 mm, depth: 15 mm }] | measured.back must have its stations on the neck, from the nut to 383.611 mm",
                "channel start: 400 mm | channel end must be more than its start at 400 mm"
            })
    void wrongReadings_areRefused_withLineAndKey(String line, String words) {
        assertThatThrownBy(() -> NeckFile.parse("a.yaml", with(line)))
                .isInstanceOf(FileRefused.class)
                .hasMessageContaining(words)
                .hasMessageContaining("measured")
                .message()
                .containsPattern("\\b\\d+\\b");
    }
}
