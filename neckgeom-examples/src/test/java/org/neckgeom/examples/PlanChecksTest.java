package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.SectionCode;

/** Each check of a plan on the mandolin with one thing changed: how it then stands, and that its words say why. */
class PlanChecksTest {

    private static final String TEXT = ShippedNecks.text("octave-mandolin.yaml");

    /** A 6 mm cutter in walnut: a quarter is 1.5 mm, a half 3 mm (common practice). */
    @ParameterizedTest
    @CsvSource({"1.5 mm, OK", "2 mm, OPEN", "2.9 mm, OPEN", "4.5 mm, STOP"})
    void depthOfAPass_standsByTheCutterAndTheWood(String deepest, Outcome outcome) {
        Job plan = plan("deepest pass: 1.5 mm", "deepest pass: " + deepest);

        assertThat(check(plan, "depth of a pass").outcome()).isEqualTo(outcome);
    }

    /** Basswood at 416 kg/m3 cuts like a softwood: half the cutter, 3 mm. */
    @Test
    void depthOfAPass_inSoftWood_mayBeTwiceAsDeep() {
        String soft = TEXT.replace("wood: black walnut ", "wood: American basswood ");

        Job plan = NeckFile.parse("soft.yaml", soft.replace("deepest pass: 1.5 mm", "deepest pass: 2.9 mm"));

        assertThat(check(plan, "depth of a pass").outcome()).isEqualTo(Outcome.OK);
    }

    @Test
    void channelCentred_afterOneCut_saysToWhichSide() {
        Job plan = NeckFile.parse("cut.yaml", Uncommented.block(TEXT, "trial cuts"));

        PlanCheck centred = check(plan, "channel centred");

        // (26.78 - 28.20)/2 = -0.71 on a piece as wide as the blank's middle, 120 mm from the nut. The blank is wider
        // by 0.06 mm
        // x 183.5/640 at 303.5 mm, so half of it is 0.0086 more there; 0.0055 less at 3 mm; midway between both 0.712.
        assertThat(centred.outcome()).isEqualTo(Outcome.OPEN);
        assertThat(centred.found()).startsWith("slot 0.719 mm nearer the fence");
        assertThat(centred.todo()).contains("fence away from the cutter by 0.712 mm");
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

    /** The channel shrinks to 5.957 mm in the dry: 6 x 6/5.957 = 6.043 mm would do, in steps of 0.01 mm 6.05 mm. */
    @Test
    void rodsPlay_inDryAir_isOpenUntilTheChannelIsAsWideAsTheCheckAsks() {
        PlanCheck binds =
                check(plan("side clearance: 0 mm ", "side clearance: 0 mm "), "rod clearance in the worst air");

        assertThat(binds.outcome()).isEqualTo(Outcome.OPEN);
        assertThat(binds.todo())
                .isEqualTo(
                        "Cut the channel 0.050 mm wider, 6.050 mm: a first pass with the fence 0.025 mm nearer the cutter"
                                + " than centred, a second with it 0.050 mm farther away.");
        assertThat(found(plan("side clearance: 0 mm ", "side clearance: 0.05 mm "), "rod clearance in the worst air"))
                .isEmpty();
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
    @CsvSource({"193.4 mm, OK", "193.3 mm, OPEN"})
    void nutLine_leavesRoomForHeadAndSawCut(String nut, Outcome outcome) {
        Job plan = plan("nut at: 200 mm ", "nut at: " + nut + " ");

        PlanCheck room = check(plan, "nut line leaves room");
        assertThat(room.outcome()).isEqualTo(outcome);
        assertThat(room.allowed()).isEqualTo("193.39 mm or more");
    }

    /** A joint in the shaft has head wood to 15/sin 13 deg = 66.7 mm behind the nut: a channel from 3 mm waits for it. */
    @Test
    void order_jointInTheShaft_gluesTheHeadBeforeTheChannel() {
        Job inTheHead = plan("joint: in the head ", "joint: in the head ");
        Job inTheShaft = plan("joint: in the head ", "joint: in the shaft ");

        assertThat(inTheHead.plan().work().plan().names()).containsSubsequence("cut rod channel", "glue head");
        assertThat(inTheShaft.plan().work().plan().names()).containsSubsequence("glue head", "cut rod channel");
        assertThat(inTheShaft.plan().sections().toString()).contains("Spacer if the head is glued first");
    }

    /** More bow than the strings give must be pushed in, less must be taken out: no force is told with a minus. */
    @Test
    void relief_ofATwoWayRod_saysWhichWayItPushes() {
        String much = check(plan("relief: 0.2 mm ", "relief: 3 mm "), "relief").found();
        String none = check(plan("relief: 0.2 mm ", "relief: 0 mm "), "relief").found();

        assertThat(much).contains(" N, bowing the neck forward").doesNotContain("-");
        assertThat(none).contains(" N").doesNotContain("bowing", "-");
    }

    /** A back of 8.5 mm over a channel of 9.2 mm: the plan stands, stops for it, and says what would do. */
    @Test
    void woodLeft_ofABackThatTheChannelBreaksThrough_isAStopThatSaysWhatWouldDo() {
        String thin = TEXT.replace("depth: 14.5 mm}", "depth: 8.5 mm}").replace("depth: 16.5 mm}", "depth: 9 mm}");
        Job plan = NeckFile.parse("thin.yaml", thin);

        PlanCheck wood = check(plan, "wood under the channel");

        assertThat(wood.outcome()).isEqualTo(Outcome.STOP);
        assertThat(wood.found()).startsWith("none, the channel is through by ").endsWith(" mm at 3 mm from the nut");
        assertThat(Sections.whole(plan, SectionCode.STRINGS_AND_RELIEF))
                .contains("the channel is through the back 3 mm from the nut");
        assertThat(found(plan, "relief")).isEmpty();

        // What it says would do, does, and 0.1 mm less does not.
        Matcher wanted = Pattern.compile(
                        "no deeper than (\\S+) mm .*, or a back (\\S+) mm deep at fret 1 and (\\S+) mm at")
                .matcher(wood.todo());
        assertThat(wanted.find()).as(wood.todo()).isTrue();
        double first = Double.parseDouble(wanted.group(2));
        double second = Double.parseDouble(wanted.group(3));
        assertThat(second - first).isCloseTo(0.5, offset(1e-9));
        assertThat(check(backed(first, second), wood.name()).outcome()).isNotEqualTo(Outcome.STOP);
        assertThat(check(backed(first - 0.1, second - 0.1), wood.name()).outcome())
                .isEqualTo(Outcome.STOP);
        double deep = Double.parseDouble(wanted.group(1));
        String lower = thin.replace("  height: 9 mm ", "  height: " + (deep - 0.2) + " mm ");
        assertThat(check(NeckFile.parse("lower.yaml", lower), wood.name()).outcome())
                .isNotEqualTo(Outcome.STOP);
        String higher = thin.replace("  height: 9 mm ", "  height: " + (deep - 0.1) + " mm ");
        assertThat(check(NeckFile.parse("higher.yaml", higher), wood.name()).outcome())
                .isEqualTo(Outcome.STOP);
    }

    /**
     * 640 - 525.548 - 1.8 of kerf = 112.652 mm are left beside the neck: whether blocks come out of it is not known. Of a blank of 20
     * that is not planed, 3 blocks of 20 leave 112.652 - 3 (35 + 1.8) = 2.252.
     */
    @Test
    void heelBlocks_ofALengthNotTold_areOpen() {
        String unplaned = TEXT.replace("  planing: 0.5 mm ", "  planing: 0 mm ");
        assertThat(check(NeckFile.parse("unplaned.yaml", unplaned), "all pieces from the blank")
                        .found())
                .isEqualTo("2.252 mm left over");
        PlanCheck pieces = check(
                NeckFile.parse("open.yaml", unplaned.replace("  block length: 35 mm ", "  # ")),
                "all pieces from the blank");

        assertThat(pieces.outcome()).isEqualTo(Outcome.OPEN);
        assertThat(pieces.found()).isEqualTo("112.652 mm left over, length of a heel block not given");
        assertThat(pieces.todo()).startsWith("Give the length of a heel block");
        assertThat(check(plan("  blocks: 20 mm ", "  blocks: 19.1 mm "), "all pieces from the blank")
                        .allowed())
                .isEqualTo("the neck in its length, heel blocks from a thicker piece");
    }

    /** Check, table of stations, its CSV and the drawing of the thinnest place: one figure, the volute counted. */
    @Test
    void woodLeft_isOneFigureEverywhere() {
        for (String text : List.of(TEXT, ShippedNecks.text("short-scale-bass.yaml"), pitchedIntoTheHead())) {
            Job plan = NeckFile.parse("own.yaml", text);
            double least = plan.plan()
                    .floorThickness()
                    .least()
                    .wood()
                    .in(plan.style().unit())
                    .value();
            String csv = Sheet.of(plan).stationCsv();
            String[] row = csv.lines()
                    .filter(line -> line.matches("\"?thinnest.*"))
                    .findFirst()
                    .orElseThrow()
                    .split(",");

            assertThat(Double.parseDouble(row[row.length - 1])).isCloseTo(least, offset(1e-11));
            assertThat(csv).doesNotContain("e-");
            String rounded =
                    plan.style().text(plan.plan().floorThickness().least().woodMm());
            assertThat(check(plan, "wood under the channel").found()).startsWith(rounded);
            assertThat(Sheet.of(plan).toText().lines().filter(line -> line.contains("thinnest")))
                    .singleElement()
                    .satisfies(line -> assertThat(Double.parseDouble(
                                    line.strip().split("\\s{2,}")[2].replace("from ", "")))
                            .isCloseTo(least, offset(0.0051)));
        }
    }

    /** A channel that begins 12 mm before the nut, in a thin head: what is told there is a lower bound and says so. */
    @Test
    void woodLeft_inTheHead_isALowerBoundThatSaysSo() {
        Job plan = NeckFile.parse("head.yaml", pitchedIntoTheHead());

        String table = Sheet.of(plan).toText();

        assertThat(table.lines().filter(line -> line.contains("channel from")))
                .anyMatch(line -> line.contains("channel from (head)") && line.contains("from 4.65"));
        assertThat(Sheet.of(plan).stationCsv()).contains("channel from (head),-12,");
        // In inches the columns are at their widest.
        String inches = ShippedNecks.text("short-scale-bass.yaml").replace("starts at: 1/8 in", "starts at: -1/8 in");
        assertThat(Sheet.of(NeckFile.parse("inches.yaml", inches)).toText().lines())
                .allMatch(line -> line.length() <= 80);
    }

    private static String pitchedIntoTheHead() {
        return TEXT.replace("  starts at: 3 mm ", "  starts at: -12 mm ");
    }

    /** 0.383 in less a last pass of 1/64 in is cut in six: the cutter is loaded by that sixth, not by what is allowed. */
    @Test
    void cutterUnderLoad_isThatOfTheDeepestPassOfThePlan() {
        Job bass = NeckFile.parse("bass.yaml", ShippedNecks.text("short-scale-bass.yaml"));

        // (0.383 - 0.015625)/6 = 0.0612 in; the pocket's (0.4375 - 0.015625)/7 = 0.0603 in.
        assertThat(Sections.whole(bass, SectionCode.CUTTER_LOAD)).contains("pass 0.0612 in");
        assertThat(check(bass, "depth of a pass").found()).isEqualTo("0.0612 in");
    }

    /** Stops are set by a rule, passes by gauge blocks: neither has thou hanging on a fraction, and the rounding is said. */
    @Test
    void stopsAndPasses_inFractions_readAsTheirToolsDo() {
        Job plan = NeckFile.parse("own.yaml", TEXT.replace("# print in: fractions ", "print in: fractions # "));

        String channel = Sections.whole(plan, SectionCode.CHANNEL);

        assertThat(channel.lines().filter(line -> line.contains("from the cutter's centre")))
                .isNotEmpty()
                .noneMatch(line -> line.contains("thou"));
        assertThat(channel.lines().filter(line -> line.contains("gauge-block step")))
                .isNotEmpty()
                .allMatch(line -> line.matches(".*takes 0\\.\\d+ in, gauge-block step 0\\.\\d+ in"));
        assertThat(channel).containsPattern("stops and marks to the nearest 1/64 in: up to [\\d.]+ thou off");
    }

    /** A shop that glues within 0.3 mm has its string line spread as much as that, by the same budget made by hand. */
    @Test
    void workmanship_ofTheFile_isThatOfTheBudgets() {
        String told = TEXT + "\nworkmanship:\n  gluing:\n    half-width: 0.3 mm\n    distribution: triangular\n"
                + "  cutting:\n    standard uncertainty: 0.04 mm\n";
        Job plan = NeckFile.parse("shop.yaml", told);

        assertThat(plan.workmanship())
                .isEqualTo(Workmanship.withDefaults()
                        .gluing(ErrorDistribution.triangular(mm(0.3)))
                        .cutting(ErrorDistribution.normal(mm(0.04)))
                        .centring(plan.workmanship().centring()));
        assertThat(plan.plan().budgets())
                .isNotEqualTo(NeckFile.parse("own.yaml", TEXT).plan().budgets());
    }

    @Test
    void workmanship_toldTwiceOrNotAtAll_isRefused() {
        assertThat(refusal("workmanship:\n  gluing:\n    half-width: 0.3 mm\n    standard uncertainty: 0.1 mm\n"))
                .contains("workmanship.gluing: either half-width or standard uncertainty must be given, and not both");
        assertThat(refusal("workmanship:\n  gluing:\n    distribution: uniform\n"))
                .contains("workmanship.gluing: either half-width or standard uncertainty must be given, and not both");
        assertThat(refusal("workmanship:\n  gluing:\n    standard uncertainty: 0.1 mm\n    distribution: uniform\n"))
                .contains("workmanship.gluing: distribution belongs to half-width");
    }

    private static String refusal(String more) {
        try {
            NeckFile.parse("own.yaml", TEXT + "\n" + more);
        } catch (IllegalArgumentException refused) {
            return refused.getMessage();
        }
        throw new AssertionError("the file was taken");
    }

    /** The whole sheet, too, in the file's units: fractions here. */
    @Test
    void woodLeft_thatIsNone_isSaidInTheUnitsOfTheFile() {
        String thin = TEXT.replace("# print in: fractions ", "print in: fractions # ")
                .replace("depth: 14.5 mm}", "depth: 8.5 mm}")
                .replace("depth: 16.5 mm}", "depth: 9 mm}");

        String text = Sheet.of(NeckFile.parse("thin.yaml", thin)).toText();

        assertThat(text.replaceAll("\\s+", " ")).contains("none, the channel is through by ");
        assertThat(text.lines().filter(line -> line.contains("through")))
                .isNotEmpty()
                .noneMatch(line -> line.contains(" mm"));
    }

    private static Job backed(double first, double second) {
        return NeckFile.parse(
                "backed.yaml",
                TEXT.replace("depth: 14.5 mm}", "depth: " + first + " mm}")
                        .replace("depth: 16.5 mm}", "depth: " + second + " mm}"));
    }

    /** The usual range is 0.05 to 0.3 mm (common practice); no rod takes the rest out. */
    @Test
    void relief_withoutARodToSet_isOpenOutsideTheUsualRange() {
        String bar = TEXT.replace("truss rod:", "bar:")
                .replace("kind: two-way ", "material: carbon ")
                .replaceFirst("\n  adjuster:[^\n]*\n  thread pitch:[^\n]*", "");

        PlanCheck relief = check(NeckFile.parse("bar.yaml", bar), "relief");

        assertThat(relief.outcome()).isEqualTo(Outcome.OPEN);
        assertThat(relief.found()).isEqualTo("about 0.31 mm from the strings alone");
        assertThat(relief.allowed()).isEqualTo("0.050 mm to 0.30 mm (common practice)");
        assertThat(relief.todo()).endsWith("no rod takes it out.");
    }

    private static Job plan(String was, String is) {
        assertThat(TEXT).contains(was);
        return NeckFile.parse("changed.yaml", TEXT.replace(was, is));
    }

    private static Optional<PlanCheck> found(Job plan, String name) {
        return plan.plan().checks().stream().filter(c -> c.name().equals(name)).findFirst();
    }

    private static PlanCheck check(Job plan, String name) {
        return found(plan, name).orElseThrow();
    }
}
