package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.page.PlanData;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.units.LengthStyle;

class ShippedNecksTest {

    static Stream<String> names() {
        return ShippedNecks.names().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void plan_goesToJsonAndBack_toTheSameBytes_inEveryStyle(String name) {
        NeckPlan asWritten = NeckFile.read(name).plan();
        for (LengthStyle style : LengthStyle.values()) {
            NeckPlan plan = asWritten.in(style);
            String json = PlanData.of(plan).toJson();

            NeckPlan read = PlanData.planFrom(json);

            assertThat(read).as("%s, %s", name, style).isEqualTo(plan);
            assertThat(PlanData.of(read).toJson()).as("%s, %s", name, style).isEqualTo(json);
        }
    }

    /** The necks differ in what holds the heel and in their frets, so that the trip above goes over each. */
    @Test
    void necks_haveADovetailATenonAndFannedFrets() {
        List<NeckPlan> plans = names().map(name -> NeckFile.read(name).plan()).toList();

        assertThat(plans).anyMatch(plan -> plan.details().dovetail().isPresent());
        assertThat(plans).anyMatch(plan -> plan.details().tenon().isPresent());
        assertThat(plans).anyMatch(plan -> plan.details().fannedFrets().isPresent());
    }

    /** A copy of the metric neck, written in inches, is told in inches; none says how it prints. */
    @Test
    void copy_printsInTheUnitsItsScaleIsWrittenIn() {
        String inches = ShippedNecks.text(ShippedNecks.DEFAULT).replace("scale: 560 mm", "scale: 22 1/16 in");

        assertThat(NeckFile.read(ShippedNecks.DEFAULT).plan().style()).isEqualTo(LengthStyle.MILLIMETRES);
        assertThat(NeckFile.parse("copy.yaml", inches).plan().style()).isEqualTo(LengthStyle.DECIMAL_INCHES);
    }
}
