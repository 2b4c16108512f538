package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.examples.Uncommented;
import org.neckgeom.neck.Heel;
import org.neckgeom.page.Document;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.strength.StringLoad;
import org.neckgeom.units.LengthStyle;

class ShippedNecksTest {

    static Stream<String> names() {
        return ShippedNecks.names().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void plan_goesToJsonAndBack_toTheSameBytes_inEveryStyle(String name) {
        Job asWritten = NeckFile.read(name);
        for (LengthStyle style : LengthStyle.values()) {
            Job plan = asWritten.printIn(style);
            String json = Document.PLAN.json(plan);

            Job read = Document.PLAN.read(json);

            assertThat(read).as("%s, %s", name, style).isEqualTo(plan);
            assertThat(Document.PLAN.json(read)).as("%s, %s", name, style).isEqualTo(json);
        }
    }

    /** The necks of version 1 as they were written before the scarf had its place under the head: old files stay good. */
    @ParameterizedTest
    @ValueSource(strings = {"octave-mandolin.yaml", "short-scale-bass.yaml", "fanned-baritone.yaml"})
    void files_ofVersion1_readToTheSamePlans(String name) throws IOException {
        String old = Files.readString(Path.of("src/test/resources/version-1").resolve(name));

        assertThat(old).contains("\nscarf:").isNotEqualTo(ShippedNecks.text(name));
        assertThat(NeckFile.parse(name, old))
                .isEqualTo(NeckFile.parse(name, withoutKeysSince(ShippedNecks.text(name))));
    }

    /** What version 1 had no key for. */
    private static String withoutKeysSince(String text) {
        return text.replaceAll("\n  (cap width|thread pitch): [^\n]*|\n    width: [^\n]*# of the tenon[^\n]*", "");
    }

    /** The necks differ in what holds the heel and in their frets, so that the trip above goes over each. */
    @Test
    void necks_haveADovetailATenonFannedFretsAndASlottedHeadWithoutARod() {
        List<Job> plans = names().map(name -> NeckFile.read(name)).toList();

        assertThat(plans)
                .anyMatch(plan -> plan.neck().heel().flatMap(Heel::dovetail).isPresent());
        assertThat(plans)
                .anyMatch(plan -> plan.neck().heel().flatMap(Heel::tenon).isPresent());
        assertThat(plans).anyMatch(plan -> plan.neck().fannedFrets().isPresent());
        assertThat(plans)
                .anyMatch(plan ->
                        plan.plan().check(CheckCode.ROLLERS_END_IN_THE_WEB).isPresent()
                                && plan.style() == LengthStyle.INCH_FRACTIONS);
    }

    /** What a file shows as a comment belongs to its own neck: uncommented, it is read and planned. */
    @ParameterizedTest
    @MethodSource("names")
    void blocksCommentedOut_belongToTheirNeck(String name) {
        String text = ShippedNecks.text(name);
        for (String key : List.of("trial cuts", "workmanship", "measured")) {
            String with = Uncommented.block(text, key);
            if (with.equals(text)) {
                continue;
            }
            Job plan = NeckFile.parse(name, with);

            assertThat(plan).as("%s with %s", name, key).isNotEqualTo(NeckFile.read(name));
            assertThat(plan.toString()).as("%s with %s", name, key).isNotBlank();
            text = with;
        }
        Job plan = NeckFile.parse(name, text);

        assertThat(plan.plan().checks()).as(name).isNotEmpty();
        for (CentringStep step : plan.steps()) {
            step.cut()
                    .ifPresent(cut -> assertThat(Centring.of(cut).closure().isComplete()
                                    && Centring.of(cut).closure().closes())
                            .as("%s: %s closes", name, cut)
                            .isTrue());
        }
        assertThat(plan.plan().slot().contradiction()).as(name).isEmpty();
    }

    /** Strings that can be made: wound ones of 0.70 to 0.98 of solid steel, none that breaks early where its core is known. */
    @ParameterizedTest
    @MethodSource("names")
    void strings_areOnesThatCanBeMade(String name) {
        StringLoad load = StringLoad.of(NeckFile.read(name).neck());

        assertThat(load.toString()).doesNotContain("Check the linear density");
        assertThat(load.strain())
                .hasValueSatisfying(
                        strain -> assertThat(strain).isIn(StringLoad.Strain.USUAL, StringLoad.Strain.SLACK));
    }

    @Test
    void blocksCommentedOut_areThere() {
        String text = ShippedNecks.text(ShippedNecks.DEFAULT);
        for (String key : List.of("trial cuts", "workmanship", "measured")) {
            assertThat(Uncommented.block(text, key)).as(key).isNotEqualTo(text);
        }
        assertThat(NeckFile.parse("cut.yaml", Uncommented.block(text, "trial cuts"))
                        .plan()
                        .slot()
                        .toString())
                .contains("away from the cutter");
    }

    /** A copy of the metric neck, written in inches, is told in inches; none says how it prints. */
    @Test
    void copy_printsInTheUnitsItsScaleIsWrittenIn() {
        String inches = ShippedNecks.text(ShippedNecks.DEFAULT).replace("scale: 560 mm", "scale: 22 1/16 in");

        assertThat(NeckFile.read(ShippedNecks.DEFAULT).style()).isEqualTo(LengthStyle.MILLIMETRES);
        assertThat(NeckFile.parse("copy.yaml", inches).style()).isEqualTo(LengthStyle.DECIMAL_INCHES);
    }
}
