package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.shop.Caution;
import org.neckgeom.units.ShopUnits;

/** The mandolin with a head in one piece with its shaft, and with other joints: the work follows the file. */
class OnePieceNeckTest {

    private static final String TEXT = ShippedNecks.text("octave-mandolin.yaml");
    private static final String SCARF = TEXT.substring(TEXT.indexOf("\n  scarf:"), TEXT.indexOf("\nheel:"));

    private static final String ONE_PIECE = TEXT.replace(SCARF, "\n").replace("thickness: 20 mm ", "thickness: 60 mm ");

    @Test
    void order_ofAHeadSawnFromTheBlank_hasNoScarfAndSawsItOut() {
        List<String> steps = steps(ONE_PIECE);

        assertThat(steps).doesNotContain("cut scarf", "glue head").contains("saw out the head");
        assertThat(steps).containsSubsequence("mark the lines", "saw out the head", "true the head", "glue wings");
        assertThat(plan(ONE_PIECE).plan().work().plan().conflicts().list()).isEmpty();
        assertThat(cautions(ONE_PIECE)).noneMatch(words -> words.contains("sloped joint"));
    }

    @Test
    void order_ofAFlatHead_hasNeitherScarfNorSawing() {
        String flat = ONE_PIECE.replace("  angle: 13 deg ", "  # ").replace("thickness: 60 mm ", "thickness: 20 mm ");

        assertThat(steps(flat)).doesNotContain("cut scarf", "glue head", "saw out the head");
        assertThat(check(flat, "blank thick enough for the head").outcome()).isEqualTo(Outcome.OK);
    }

    @Test
    void order_ofAScarfedHead_isAsItWas() {
        assertThat(steps(TEXT)).contains("cut scarf", "glue head", "glue wings", "glue heel block");
    }

    /** A heel of 78 mm comes out of a blank of 80 mm without a block; a head of 60 mm has no wings beside 61 mm. */
    @Test
    void order_hasNoBlocksAndNoEarsThatTheBlankMakesNeedless() {
        String deep = ONE_PIECE.replace("thickness: 60 mm ", "thickness: 80 mm ");

        assertThat(steps(deep)).doesNotContain("glue heel block").contains("cut heel joint");
        assertThat(steps(ONE_PIECE)).contains("glue heel block");
        String narrow = ONE_PIECE
                .replace("  width: 76 mm ", "  width: 60 mm ")
                .replace("width at tip: 76 mm ", "width at tip: 60 mm ");
        assertThat(steps(narrow)).doesNotContain("glue wings").contains("true the head");
    }

    @Test
    void without_ofAStepThatIsNotThere_isFine_andWithASlipIsNot() {
        String without = ONE_PIECE + "\norder of work:\n  without: [cut scarf, glue head, glue back strap]\n";

        assertThat(steps(without)).isEqualTo(steps(ONE_PIECE));
        assertThat(refusal(without.replace("cut scarf", "cut scrf")))
                .contains("order of work: operation must be one that this order of work has, but was \"cut scrf\"");
    }

    @Test
    void keepAndDone_ofAStepThatIsNotThere_areRefusedInASentence() {
        assertThat(refusal(ONE_PIECE
                        + "\norder of work:\n  before:\n    - first: cut rod channel\n      then: cut scarf\n"))
                .contains("operation must be one that this neck has, but was \"cut scarf\", which is left out");
        assertThat(refusal(ONE_PIECE + "\norder of work:\n  done: [glue head]\n"))
                .contains("operation must be one that this neck has, but was \"glue head\", which is left out");
    }

    /** By hand: 185 sin 13 deg + 15 cos 13 deg = 56.2315 mm, and 0.5 mm planed off each face. */
    @Test
    void blank_mustHoldTheTiltedHead() {
        PlanCheck holds = check(ONE_PIECE, "blank thick enough for the head");
        assertThat(holds.outcome()).isEqualTo(Outcome.OK);
        assertThat(holds.allowed()).isEqualTo("57.231 mm or more, head and shaft in one piece");

        PlanCheck thin =
                check(ONE_PIECE.replace("thickness: 60 mm ", "thickness: 57 mm "), "blank thick enough for the head");
        assertThat(thin.outcome()).isEqualTo(Outcome.STOP);
        assertThat(thin.todo()).isEqualTo("A thicker blank, a flatter or shorter head, or a head scarfed on.");
        assertThat(plan(TEXT).plan().checks())
                .noneMatch(check -> check.name().equals("blank thick enough for the head"));
    }

    /** 185 cos 13 deg = 180.258 mm of head before the nut; 640 - 310.548 - 15 = 314.452 mm leaves room for the shaft. */
    @Test
    void nutLine_leavesRoomOnBothSides() {
        String name = "nut line leaves room";

        assertThat(check(ONE_PIECE, name).outcome()).isEqualTo(Outcome.OK);
        assertThat(check(ONE_PIECE, name).allowed()).isEqualTo("180.258 mm to 314.452 mm");
        assertThat(check(ONE_PIECE.replace("nut at: 200 mm ", "nut at: 180 mm "), name)
                        .outcome())
                .isEqualTo(Outcome.OPEN);
        assertThat(check(ONE_PIECE.replace("nut at: 200 mm ", "nut at: 315 mm "), name)
                        .outcome())
                .isEqualTo(Outcome.OPEN);
        assertThat(check(ONE_PIECE.replace("  nut at: 200 mm ", "  # "), name).found())
                .isEqualTo("not given");
    }

    /** The square blank is what the fence meets, and a heel out of the blank, 80 planed 0.5 off each face, has no last block. */
    @Test
    void plan_ofOnePiece_saysNothingOfWhatItHasNot() {
        String deep = ONE_PIECE.replace("thickness: 60 mm ", "thickness: 80 mm ");

        assertThat(plan(ONE_PIECE).plan().sections())
                .noneMatch(section -> section.code().equals(SectionCode.HEAD_AT_THE_FENCE.code()));
        assertThat(plan(TEXT).plan().sections())
                .anyMatch(section -> section.code().equals(SectionCode.HEAD_AT_THE_FENCE.code()));
        assertThat(Sections.whole(plan(deep), SectionCode.HEEL))
                .contains("Heel: no block, the shaft's wood is 79 mm deep", "off the shaft")
                .doesNotContain("0 blocks", "last block");
    }

    /** A file in inches without limits keeps those of the trade in inches: 4 thou, 1/8 in, 40 thou. */
    @Test
    void limits_notTold_areInTheUnitsOfTheScale() {
        String bass = ShippedNecks.text("short-scale-bass.yaml");
        Job plan = plan(bass.substring(0, bass.indexOf("\nlimits:")) + "\n");

        assertThat(plan.slotLimit()).isEqualTo(ShopUnits.thou(4));
        assertThat(plan.floorLimit()).isEqualTo(ShopUnits.inch(0.125));
        assertThat(plan.bridgeLimit()).isEqualTo(ShopUnits.thou(40));
        assertThat(plan(TEXT).floorLimit()).isEqualTo(ShopUnits.mm(3));
    }

    @Test
    void angleReadOnASawnHead_isTheProofThatItIsSawn() {
        Job plan = plan(ONE_PIECE + "\nmeasured:\n  scarf angle: 12.9 deg\n");

        assertThat(plan.plan().work().finished().stream().map(Operation::name)).contains("saw out the head");
    }

    /** 3 deg over 66 mm: the dovetail's 15 mm come on top of head, saw cut and shaft. */
    @Test
    void dovetail_isCountedInTheBlank() {
        String without = TEXT.replace("    length: 15 mm ", "    # ")
                .replaceAll("\n    width at (end|shoulder): [^\n]*", "")
                .replace("    height: 66 mm ", "    # ");

        double with = board(TEXT);
        assertThat(with - board(without)).isCloseTo(15, org.assertj.core.data.Offset.offset(1e-6));
        assertThat(Sections.whole(plan(TEXT), SectionCode.BLANK_AND_CUTTING_LIST))
                .contains("The neck length includes the dovetail (15 mm past the body joint).");
        assertThat(Sections.whole(plan(without), SectionCode.BLANK_AND_CUTTING_LIST))
                .contains("Give the dovetail length; allow wood for it past the body joint.");
    }

    @Test
    void joint_higherThanTheHeel_isRefusedAtItsKey() {
        assertThat(refusal(TEXT.replace("    height: 66 mm ", "    height: 79 mm ")))
                .contains("heel.dovetail.height must be 78 mm or less, the heel's own height, but was 79 mm");
        String baritone = ShippedNecks.text("fanned-baritone.yaml");
        assertThat(refusal(baritone.replace("    height: 76 mm ", "    height: 90 mm ")))
                .contains("heel.tenon.height must be 88 mm or less, the heel's own height, but was 90 mm");
    }

    private static double board(String text) {
        String allowed = check(text, "blank long enough for shaft and head").allowed();
        return Double.parseDouble(allowed.replace(" mm or more", ""));
    }

    private static Job plan(String text) {
        return NeckFile.parse("own.yaml", text);
    }

    private static List<String> steps(String text) {
        return plan(text).plan().work().plan().names();
    }

    private static List<String> cautions(String text) {
        return plan(text).plan().work().operations().stream()
                .flatMap(operation -> operation.cautions().stream())
                .map(Caution::text)
                .toList();
    }

    private static PlanCheck check(String text, String name) {
        return plan(text).plan().checks().stream()
                .filter(check -> check.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static String refusal(String text) {
        try {
            NeckFile.parse("own.yaml", text);
        } catch (IllegalArgumentException refused) {
            return refused.getMessage();
        }
        throw new AssertionError("the file was taken");
    }
}
