package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanCheck.Outcome;

/** Each check of a plan on the mandolin with one thing changed: how it then stands, and that its words say why. */
class PlanChecksTest {

    private static final String TEXT = ShippedNecks.text("octave-mandolin.yaml");

    /** A 6 mm cutter in walnut: a quarter is 1.5 mm, a half 3 mm (common practice). */
    @ParameterizedTest
    @CsvSource({"1.5 mm, GOOD", "2 mm, OPEN", "2.9 mm, OPEN", "4.5 mm, STOP"})
    void depthOfAPass_standsByTheCutterAndTheWood(String deepest, Outcome outcome) {
        NeckPlan plan = plan("deepest pass: 1.5 mm", "deepest pass: " + deepest);

        assertThat(check(plan, "depth of a pass").outcome()).isEqualTo(outcome);
    }

    /** Basswood at 416 kg/m3 cuts like a softwood: half the cutter, 3 mm. */
    @Test
    void depthOfAPass_inSoftWood_mayBeTwiceAsDeep() {
        String soft = TEXT.replace("wood: black walnut ", "wood: American basswood ");

        NeckPlan plan = NeckFile.parse("soft.yaml", soft.replace("deepest pass: 1.5 mm", "deepest pass: 2.9 mm"))
                .plan();

        assertThat(check(plan, "depth of a pass").outcome()).isEqualTo(Outcome.GOOD);
    }

    @Test
    void channelCentred_afterOneCut_saysToWhichSide() {
        NeckPlan plan = NeckFile.parse(
                        "cut.yaml",
                        TEXT.replace("# readings:", "readings:")
                                .replace("#   - fence wall:", "  - fence wall:")
                                .replace("#     far wall:", "    far wall:"))
                .plan();

        PlanCheck centred = check(plan, "channel centred");

        // (29.84 - 31.26)/2 = -0.71
        assertThat(centred.outcome()).isEqualTo(Outcome.STOP);
        assertThat(centred.found()).startsWith("slot 0.710 mm nearer the fence");
        assertThat(centred.todo()).contains("fence away from the cutter by 0.710 mm");
    }

    /** 310.548 mm to the joint; a channel from 20 mm ends at 320.5 mm, 9.952 mm past it. */
    @Test
    void channel_pastTheBodyJoint_isSaid() {
        assertThat(found(plan("starts at: 3 mm ", "starts at: 3 mm "), "channel ends within the neck"))
                .isEmpty();
        assertThat(check(plan("starts at: 3 mm ", "starts at: 20 mm "), "channel ends within the neck")
                        .found())
                .isEqualTo("9.952 mm past the body joint");
    }

    @Test
    void frets_shortOfTheBody_areAskedAbout() {
        assertThat(found(plan("frets: 20 ", "frets: 20 "), "frets reach the body"))
                .isEmpty();
        assertThat(check(plan("frets: 20 ", "frets: 12 "), "frets reach the body")
                        .outcome())
                .isEqualTo(Outcome.OPEN);
    }

    /** Board less body joint: 185 - 20/sin 13 deg + 20/tan 13 deg + 2.4/sin 13 deg = 193.390 mm. */
    @ParameterizedTest
    @CsvSource({"193.4 mm, GOOD", "193.3 mm, OPEN"})
    void nutLine_leavesRoomForHeadAndSawCut(String nut, Outcome outcome) {
        NeckPlan plan = plan("nut at: 200 mm ", "nut at: " + nut + " ");

        PlanCheck room = check(plan, "nut line leaves room for head and saw cut");
        assertThat(room.outcome()).isEqualTo(outcome);
        assertThat(room.allowed()).isEqualTo("193.39 mm or more");
    }

    /** A joint in the shaft has head wood to 15/sin 13 deg = 66.7 mm behind the nut: a channel from 3 mm waits for it. */
    @Test
    void order_jointInTheShaft_gluesTheHeadBeforeTheChannel() {
        NeckPlan inTheHead = plan("joint: in the head ", "joint: in the head ");
        NeckPlan inTheShaft = plan("joint: in the head ", "joint: in the shaft ");

        assertThat(inTheHead.order().plan().names()).containsSubsequence("cut rod channel", "glue head");
        assertThat(inTheShaft.order().plan().names()).containsSubsequence("glue head", "cut rod channel");
        assertThat(inTheShaft.sections().toString()).contains("The head at the fence");
    }

    /** More bow than the strings give must be pushed in, less must be taken out: no force is told with a minus. */
    @Test
    void relief_ofATwoWayRod_saysWhichWayItPushes() {
        String much = check(plan("relief: 0.2 mm ", "relief: 3 mm "), "relief of 3 mm")
                .found();
        String none = check(plan("relief: 0.2 mm ", "relief: 0 mm "), "relief of 0 mm")
                .found();

        assertThat(much).contains(" N, bowing the neck forward").doesNotContain("-");
        assertThat(none).contains(" N").doesNotContain("bowing", "-");
    }

    @Test
    void relief_withoutARodToSet_isOpen() {
        String bar = TEXT.replace("kind: two-way ", "kind: carbon bar ").replaceFirst("\n  adjusted at:[^\n]*", "");

        PlanCheck relief = check(NeckFile.parse("bar.yaml", bar).plan(), "relief of 0.2 mm");

        assertThat(relief.outcome()).isEqualTo(Outcome.OPEN);
        assertThat(relief.found()).contains("no rod to set it");
    }

    private static NeckPlan plan(String was, String is) {
        assertThat(TEXT).contains(was);
        return NeckFile.parse("changed.yaml", TEXT.replace(was, is)).plan();
    }

    private static Optional<PlanCheck> found(NeckPlan plan, String name) {
        return plan.checks().stream().filter(c -> c.name().equals(name)).findFirst();
    }

    private static PlanCheck check(NeckPlan plan, String name) {
        return found(plan, name).orElseThrow();
    }
}
