package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.examples.neck.KindNecks;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.neck.Bars;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.Strip;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.Sections;
import org.neckgeom.units.ShopUnits;

/**
 * Twelve invented necks of every kind. Figures marked N are ids of practice-2-figures.csv, computed by a script beside it; the
 * others follow by hand from the formulas beside them. Ranges are common practice.
 */
class KindsOfNeckTest {

    private static final Map<String, Job> JOBS = new TreeMap<>();

    private static Job job(String name) {
        return JOBS.computeIfAbsent(name, file -> NeckFile.parse(file, KindNecks.text(file)));
    }

    private static Job changed(String name, String... replacements) {
        String text = KindNecks.text(name);
        for (int i = 0; i < replacements.length; i += 2) {
            assertThat(text).contains(replacements[i]);
            text = text.replace(replacements[i], replacements[i + 1]);
        }
        return NeckFile.parse(name, text);
    }

    private static String section(String name, SectionCode code) {
        return org.neckgeom.examples.Sections.whole(job(name), code);
    }

    private static PlanCheck check(Job job, CheckCode code) {
        return job.plan().check(code).orElseThrow();
    }

    static Stream<String> names() {
        return KindNecks.names().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void kind_isPlannedWholeInEveryForm(String name) {
        assertThat(EveryForm.fault(job(name), false)).isEmpty();
        assertThat(job(name).plan().checks()).noneMatch(check -> check.outcome() == Outcome.STOP);
    }

    @Test
    void kinds_areTwelve() {
        assertThat(KindNecks.names()).hasSize(12);
    }

    /** A plan of a neck without rod has no line that sets, lays in or asks for one. */
    @ParameterizedTest
    @MethodSource("necksWithoutRod")
    void plan_withoutRod_setsNone(String name) {
        String text = Sheet.of(job(name)).toText();

        assertThat(text)
                .doesNotContain(
                        "Truss rod channel", "cut rod channel", "lay in the rod", "rod slack", "rod force", "truss rod")
                .doesNotContain("rod clearance", "Keep glue off the rod", "Adjust under", "of a turn");
        assertThat(text).contains("from the strings alone");
    }

    static Stream<String> necksWithoutRod() {
        return Stream.of("parlour-no-rod", "bars-and-inserts", "wedged-foot-flat-head", "steel-bar-zero-fret");
    }

    /** 3 mm unless given; it is the datum, so it is cut where the channel would be. */
    @Test
    void groove_isTheDatumOfANeckWithoutRod() {
        Neck neck = job("parlour-no-rod").neck();

        assertThat(neck.channel().orElseThrow().isLocatingGroove()).isTrue();
        assertThat(neck.channel().orElseThrow().depthMm()).isEqualTo(3);
        assertThat(job("wedged-foot-flat-head").neck().channel().orElseThrow().depthMm())
                .isEqualTo(2.5);
        assertThat(job("parlour-no-rod")
                        .plan()
                        .section(SectionCode.CHANNEL)
                        .orElseThrow()
                        .title())
                .isEqualTo("Locating groove");
        assertThat(section("parlour-no-rod", SectionCode.CHANNEL)).contains("the datum");
        assertThat(steps("parlour-no-rod"))
                .containsSubsequence(
                        "mark the lines", "cut scarf", "glue head", "cut locating groove", "glue fingerboard");
        assertThat(check(job("parlour-no-rod"), CheckCode.RELIEF).outcome()).isEqualTo(Outcome.OK);
    }

    /** N9_12 and N9_10: back a half ellipse 43.5 x 14.8 at the nut, channel 3.2 x 9.7; it only widens toward the body. */
    @Test
    void bars_leaveWoodOutsideTheirLowerCorner() {
        assertThat(woodOutsideBars(job("bars-and-inserts"))).isCloseTo(1.6049664, offset(2e-3));
        Job in = changed("bars-and-inserts", "aside: 12 mm", "aside: 10 mm");
        assertThat(woodOutsideBars(in)).isCloseTo(2.56279735, offset(2e-3));
        assertThat(check(job("bars-and-inserts"), CheckCode.BARS_INSIDE_THE_BACK)
                        .todo())
                .isEqualTo("Move the bars in or fan them with the taper, or take lower bars.");
    }

    /** At the nut the back is 14.8 deep on the middle: a bar of 14 and 0.2 under it, 12 from the middle, is outside. */
    @Test
    void barsThroughTheBack_leaveAPageWithoutTheirRelief() {
        Job through = changed("bars-and-inserts", "height: 9.5 mm", "height: 14 mm");

        assertThat(check(through, CheckCode.STRENGTH).outcome()).isEqualTo(Outcome.STOP);
        assertThat(EveryForm.fault(through, false)).isEmpty();
    }

    private static double woodOutsideBars(Job job) {
        return check(job, CheckCode.BARS_INSIDE_THE_BACK)
                .finding()
                .value()
                .orElseThrow()
                .libraryValue();
    }

    /**
     * Bonded bars count: with the axis of the section without them at z, two bars of E_b b h add about 2 (E_b - E) (b h^3/12 + b h d^2),
     * d from their middle to the axis, less what moves the axis. Held to the parallel axis theorem with the axis moved: EI' = EI + sum
     * a_i (i_i + (z_i - z)^2) - (sum a_i (z_i - z))^2/(EA + sum a_i). EI, EA and z are those that the section without bars has.
     */
    @Test
    void bars_countInTheStiffness() {
        Neck with = job("bars-and-inserts").neck();
        Job without = NeckFile.parse("none", KindNecks.text("bars-and-inserts").replaceAll("(?m)^bars:.*\n", ""));
        double fretEi = Sections.of(with).atFret(5).stiffnessNm2();
        double plainEi = Sections.of(without.neck()).atFret(5).stiffnessNm2();
        double axis = Sections.of(without.neck()).atFret(5).neutralAxis().libraryValue();
        // Two bars 3.2 x 9.5, tops at the glue line: 60.8 mm2 in all, middle 4.75 under it. 130 GPa (from memory) less
        // walnut's 11.6.
        double modulus = 130_000 - with.wood().orElseThrow().modulusMPa();
        double a = modulus * 2 * 3.2 * 9.5;
        double d = -4.75 - axis;
        double own = modulus * 2 * 3.2 * 9.5 * 9.5 * 9.5 / 12;
        double least = plainEi * 1e6 + own; // axes that coincide
        double most = least + a * d * d;

        assertThat(fretEi * 1e6).isBetween(least, most);
        assertThat(fretEi / plainEi).isGreaterThan(1.15);
    }

    /** N1: (400^2/4 + 6^2)/12 = 3336.33. N2: 6.00, 3.37, 1.50, 0.37, 0 every 50. N3: 0.24 longer. Middle 192, frets 5 to 8: 158 to 233. */
    @Test
    void arch_hasRailsAStripAndALongerRod() {
        assertThat(section("arched-rod-set-neck", SectionCode.CHANNEL))
                .contains("radius 3336 mm, 6 mm over 400 mm")
                .contains("6.00 mm, 3.37 mm, 1.50 mm, 0.37 mm, 0.00 mm thick, every 50 mm")
                .contains("0.24 mm longer than its chord");
        assertThat(check(job("arched-rod-set-neck"), CheckCode.ARCH_IN_THE_MIDDLE)
                        .outcome())
                .isEqualTo(Outcome.OK);
    }

    /**
     * N4: breaks 30.0, 23.3 and 20.7 deg at 40, 75 and 110: h_n = 5.8 + 1.1 + 0.6 = 7.5, rollers 10, axes 9 deep, so tops 4 under the face.
     * N5_30: -1.32 at a slot that begins at 30, so a ramp of 1.3 + 0.5 = 1.8; N5_20: +1.36 at 20.
     */
    @Test
    void slottedHead_hasBreaksAndRamps() {
        assertThat(section("parlour-no-rod", SectionCode.HEAD))
                .contains(
                        "roller at 40 mm",
                        "string 30.0 deg down, 1.3 mm under the face",
                        "file a ramp 1.8 mm deep there")
                .contains("string 23.3 deg down", "string 20.7 deg down");
        Job near = changed("parlour-no-rod", "slots from: 30 mm", "slots from: 20 mm");
        assertThat(org.neckgeom.examples.Sections.whole(near, SectionCode.HEAD))
                .contains("string 30.0 deg down, 1.4 mm over the face at the slot's end: no ramp");
    }

    /** 72 = 2 x 12 + 2 x 15 + 18. Rollers from 12 + 15 + 3 = 30 to 12 + 15 + 9 - 1 = 35. */
    @Test
    void slottedHead_hasWallsAndAWeb() {
        Job job = job("parlour-no-rod");

        assertThat(check(job, CheckCode.SLOT_WALLS).found()).isEqualTo("12 mm");
        assertThat(check(job, CheckCode.SLOT_WEB).found()).isEqualTo("18 mm");
        assertThat(check(job, CheckCode.ROLLERS_END_IN_THE_WEB).allowed())
                .isEqualTo("30 mm to 35 mm: wall, slot and some of the web");
        Job longer = changed("parlour-no-rod", "roller length: 34 mm", "roller length: 36 mm");
        assertThat(check(longer, CheckCode.ROLLERS_END_IN_THE_WEB).outcome()).isEqualTo(Outcome.STOP);
        assertThat(steps("parlour-no-rod")).containsSubsequence("true the head", "cut head slots", "taper the sides");
    }

    /** N6: 180 sin 13 deg + 14 cos 13 deg = 54.13, and 0.5 planed off each face. N7: one in 4.33. */
    @Test
    void onePieceHead_needsABlockAndHasShortGrain() {
        Job job = job("one-piece-head");

        assertThat(check(job, CheckCode.BLANK_THICK_ENOUGH).allowed())
                .isEqualTo("55.132 mm or more, head and shaft in one piece");
        assertThat(check(job, CheckCode.GRAIN_OF_THE_HEAD).found()).isEqualTo("short grain, one in 4.3");
        assertThat(check(job, CheckCode.GRAIN_OF_THE_HEAD).outcome()).isEqualTo(Outcome.OPEN);
        // A volute or a back veneer bridges it.
        assertThat(job("arched-rod-set-neck").plan().check(CheckCode.GRAIN_OF_THE_HEAD))
                .isEmpty();
        assertThat(job("slotted-steel-strings").plan().check(CheckCode.GRAIN_OF_THE_HEAD))
                .isEmpty();
    }

    /** N8: 45 - 28.5 - 1.5 = 15, within 12 and 18 - 3. Wall 38/2 - 4.2/2 - 6.1/2 = 13.85, as the channel ends past the nearer row. */
    @Test
    void plateScrews_reachIntoTheHeel() {
        Job job = job("flat-heel-plate");

        assertThat(check(job, CheckCode.SCREWS_REACH).found()).isEqualTo("15 mm into the heel");
        assertThat(check(job, CheckCode.SCREWS_REACH).outcome()).isEqualTo(Outcome.OK);
        assertThat(check(job, CheckCode.SCREWS_CLEAR_OF_THE_CHANNEL).found())
                .isEqualTo("13.85 mm from a screw to the channel");
        Job longer = changed("flat-heel-plate", "length: 45 mm", "length: 50 mm");
        assertThat(check(longer, CheckCode.SCREWS_REACH).outcome()).isEqualTo(Outcome.OPEN);
        assertThat(section("flat-heel-plate", SectionCode.HEEL))
                .contains("4.5 mm in the body, 3.0 mm to 3.2 mm in the neck");
        assertThat(section("flat-heel-plate", SectionCode.WHAT_IF))
                .contains("Pocket shim")
                .doesNotContain("Heel wedge");
    }

    /** At 62 of 84 deep a heel of 56 to 34 is 39.76 wide: 19.88 - 4.5 = 15.38 to the cheek. Thread 12 of 1.5 x 6 = 9. 62 - 24 = 38 apart. */
    @Test
    void inserts_leaveWoodAndThread() {
        Job job = job("bars-and-inserts");

        assertThat(check(job, CheckCode.INSERTS_CLEAR_OF_THE_CHEEKS)
                        .finding()
                        .value()
                        .orElseThrow()
                        .libraryValue())
                .isCloseTo(15.380952, offset(1e-5));
        assertThat(check(job, CheckCode.THREAD_HOLDS).allowed()).startsWith("9 mm or more");
        assertThat(section("bars-and-inserts", SectionCode.HEEL))
                .contains("38 mm from first to last", "Hollow the heel's face");
        Job shallow = changed("bars-and-inserts", "thread: 12 mm", "thread: 8 mm");
        assertThat(check(shallow, CheckCode.THREAD_HOLDS).outcome()).isEqualTo(Outcome.OPEN);
    }

    /** Slots 2.4 for sides of 2.2: 0.2, within 0.1 and 0.3. Between them 62 - 2 x 13 = 36. A wedged one needs 0.3 or more: 3.4 - 1.9. */
    @Test
    void foot_takesTheSides() {
        Job job = job("parlour-no-rod");

        assertThat(check(job, CheckCode.SIDES_FIT_THEIR_SLOTS).found()).isEqualTo("0.20 mm wider than the side");
        assertThat(section("parlour-no-rod", SectionCode.HEEL))
                .contains("36 mm of wood at the top", "deg forward", "built about the neck")
                .doesNotContain("Heel wedge", "Heel cheek");
        assertThat(section("parlour-no-rod", SectionCode.BLANK_AND_CUTTING_LIST))
                .contains("The neck length includes the foot (32 mm past the body joint).");
        assertThat(check(job("wedged-foot-flat-head"), CheckCode.SIDES_FIT_THEIR_SLOTS)
                        .found())
                .isEqualTo("1.5 mm wider than the side, wedged");
        Job loose = changed("parlour-no-rod", "slot width: 2.4 mm", "slot width: 2.6 mm");
        assertThat(check(loose, CheckCode.SIDES_FIT_THEIR_SLOTS).outcome()).isEqualTo(Outcome.OPEN);
    }

    /** (40.2 - 40)/2 = 0.1 a side, 38.1 - 38 = 0.1 under it. */
    @Test
    void longTenon_hasRoomForGlue() {
        Job job = job("arched-rod-set-neck");

        assertThat(check(job, CheckCode.TENON_FITS_ITS_POCKET).found()).isEqualTo("0.10 mm for glue at each side");
        assertThat(check(job, CheckCode.TENON_SHORT_OF_THE_FLOOR).outcome()).isEqualTo(Outcome.OK);
        assertThat(job.plan().check(CheckCode.BOLTS_INSIDE)).isEmpty();
        Job tight = changed("arched-rod-set-neck", "pocket depth: 38.1 mm", "pocket depth: 38 mm");
        assertThat(check(tight, CheckCode.TENON_SHORT_OF_THE_FLOOR).outcome()).isEqualTo(Outcome.OPEN);
    }

    /** 170 + 185 + 190 + 180 = 725 N on four screws: 181 N. X_e + anchor: 519.706 + 80 + 25. */
    @Test
    void headless_hasAnAnchorAndNoHead() {
        Job job = job("headless-laminated");

        assertThat(section("headless-laminated", SectionCode.STRING_ANCHOR))
                .contains("4, 181 N of shear on each", "The channel runs out at the nut end: no stop there.");
        assertThat(section("headless-laminated", SectionCode.BLANK_AND_CUTTING_LIST))
                .contains("624.706 mm");
        assertThat(section("headless-laminated", SectionCode.CHANNEL)).contains("none: the slot is open there");
        assertThat(steps("headless-laminated"))
                .doesNotContain("cut scarf", "glue head", "true the head", "glue wings", "glue head veneer")
                .containsSubsequence(
                        "glue up the strips", "rest the stock", "fit the nut", "fit the string anchor", "set up");
        assertThat(job.plan().check(CheckCode.ZERO_FRET).orElseThrow().outcome())
                .isEqualTo(Outcome.OK);
        assertThat(Sheet.of(job).toText()).doesNotContain("(head)", "Head and tuner posts", "Scarf joint");
    }

    /** 18 + 6 + 20 + 6 + 18 = 68, the blank. Middle strip 20, channel 6.1: 6.95 beside it. */
    @Test
    void strips_makeUpTheBlankAndHoldTheChannel() {
        Job job = job("headless-laminated");

        assertThat(check(job, CheckCode.STRIPS_ADD_UP).outcome()).isEqualTo(Outcome.OK);
        assertThat(check(job, CheckCode.CHANNEL_INSIDE_A_STRIP).found())
                .isEqualTo("6.950 mm of the middle strip beside the channel");
        Job thin = changed("headless-laminated", "width: 20 mm", "width: 18 mm");
        assertThat(check(thin, CheckCode.STRIPS_ADD_UP).outcome()).isEqualTo(Outcome.OPEN);
        // 10 wide about a channel of 6.1: 1.95.
        assertThat(check(job("wings-before-channel"), CheckCode.CHANNEL_INSIDE_A_STRIP)
                        .outcome())
                .isEqualTo(Outcome.OK);
    }

    /**
     * By parts: of one wood strips change nothing; of two, EI and movement lie between those of either alone, and the movement is the mean of
     * both by their widths at the body joint: 59.545 wide, of it 12 walnut, so 0.2015 of walnut's and 0.7985 of maple's, to 1 % (Eq. 13-3 is
     * almost linear in the shrinkage).
     */
    @Test
    void strips_haveStiffnessAndMovementByParts() {
        Neck neck = job("headless-laminated").neck();
        Neck maple = neck.laminated(strips(Wood.SUGAR_MAPLE));
        Neck walnut = neck.laminated(strips(Wood.BLACK_WALNUT));
        Job one = changed(
                "headless-laminated",
                "laminated:\n  - {wood: sugar maple, width: 18 mm}\n  - {wood: black walnut, width: 6 mm}\n  - {wood: sugar maple, width: 20 mm}\n"
                        + "  - {wood: black walnut, width: 6 mm}\n  - {wood: sugar maple, width: 18 mm}\n",
                "wood: sugar maple\n");

        assertThat(ei(maple)).isCloseTo(ei(one.neck()), offset(1e-9 * ei(maple)));
        assertThat(ei(neck)).isBetween(ei(walnut), ei(maple));
        double mixed = movement(neck);
        double wide = 2 * neck.halfWidthAtMm(neck.bodyJointMm());
        assertThat(mixed)
                .isCloseTo((12 * movement(walnut) + (wide - 12) * movement(maple)) / wide, offset(0.01 * -mixed));
    }

    private static Strip[] strips(Wood wood) {
        return List.of(18, 6, 20, 6, 18).stream()
                .map(width -> Strip.of(wood, ShopUnits.mm(width)))
                .toArray(Strip[]::new);
    }

    private static double ei(Neck neck) {
        return Sections.of(neck).atFret(9).stiffnessNm2();
    }

    private static double movement(Neck neck) {
        return job("headless-laminated").weather().on(neck).neckAtBody().changeMm();
    }

    /** A zero fret as high as the others is 0 over them; 0.2 higher is too much for the first fret. */
    @Test
    void zeroFret_carriesTheStrings() {
        Job job = job("steel-bar-zero-fret");

        assertThat(check(job, CheckCode.ZERO_FRET).outcome()).isEqualTo(Outcome.OK);
        assertThat(section("steel-bar-zero-fret", SectionCode.FRETS)).contains("The nut behind it only spaces them");
        Job high = changed("steel-bar-zero-fret", "at nut: 0 mm", "at nut: 0.2 mm");
        assertThat(check(high, CheckCode.ZERO_FRET).outcome()).isEqualTo(Outcome.OPEN);
        assertThat(steps("steel-bar-zero-fret")).contains("cut bar channel", "glue in the bar");
    }

    /** On before the channel: a conflict with a remedy, the reason and which line is the centre. */
    @Test
    void wings_onBeforeTheChannel_sayWhy() {
        assertThat(steps("wings-before-channel"))
                .containsSubsequence("glue head", "glue wings", "glue head veneer", "cut rod channel");
        assertThat(section("wings-before-channel", SectionCode.HEAD_AT_THE_FENCE))
                .contains(
                        "an inlay is cut by a jig that needs the full head",
                        "the shaft's: read both edges",
                        "ends before the wings");
        assertThat(section("seam-in-the-veneer", SectionCode.HEAD_AT_THE_FENCE))
                .contains("a seam in the veneer is taken as the centreline", "half the difference");
        assertThat(check(job("wings-before-channel"), CheckCode.ORDER_OF_WORK).outcome())
                .isEqualTo(Outcome.OPEN);
    }

    /** 4 (1 + cos(pi x/35))/2 more behind the nut: at the nut 4 more than the back's own 16.74, so 20.7 over a pocket of 12. */
    @Test
    void volute_isCountedOverThePocket() {
        Neck neck = job("volute-over-the-pocket").neck();
        double plain = neck.backDepthAtMm(0);

        assertThat(job("volute-over-the-pocket").plan().solid().depth().valueAt(0))
                .isCloseTo(plain + 4, offset(1e-9));
        assertThat(check(job("volute-over-the-pocket"), CheckCode.WOOD_LEFT).outcome())
                .isNotEqualTo(Outcome.STOP);
    }

    @Test
    void bars_fanWithTheTaper() {
        Bars bars = job("slotted-steel-strings").neck().bars().orElseThrow();

        // 10.5 at the nut, 13 at 314: halfway 11.75.
        assertThat(bars.asideMm(157, 314)).isCloseTo(11.75, offset(1e-12));
        assertThat(steps("slotted-steel-strings"))
                .containsSubsequence("cut rod channel", "cut bar channels", "glue in the bars", "glue fingerboard");
    }

    private static List<String> steps(String name) {
        return job(name).plan().work().plan().names();
    }

    static Stream<Arguments> impossible() {
        return Stream.of(
                Arguments.of(
                        "slotted-steel-strings",
                        "adjuster: heel",
                        "adjuster: head",
                        "the middle web of the slotted head covers an adjuster at the head"),
                Arguments.of(
                        "headless-laminated",
                        "anchor screws: 4",
                        "head: {length: 150 mm, width: 80 mm, thickness: 14 mm}",
                        "a neck with a string anchor is headless: it has no head, no wings, no veneers and no scarf"),
                Arguments.of(
                        "parlour-no-rod",
                        "locating groove: {length: 300 mm, width: 6 mm}",
                        "locating groove: {length: 300 mm, width: 6 mm}\nbar: {material: steel, length: 300 mm, width: 6 mm, height: 9 mm}",
                        "locating groove is given, and bar too; keep one of them"),
                Arguments.of(
                        "parlour-no-rod",
                        "  starts at: 4 mm",
                        "  starts at: 4 mm\n  fillet: 2 mm",
                        "nothing lies in a locating groove, so it has no fillet"),
                Arguments.of(
                        "bars-and-inserts", "aside: 12 mm", "aside: 4 mm", "bars.far aside must be from 4.6 mm to"),
                // By hand: a blank of 660 with the nut at 175 ends 485 from it.
                Arguments.of(
                        "arched-rod-set-neck",
                        "scale: 630 mm",
                        "scale: 630 mm\nmeasured: {channel start: -3000 mm}",
                        "measured.channel start must lie on the blank, from -175 mm to 485 mm from the nut"),
                Arguments.of(
                        "arched-rod-set-neck",
                        "scale: 630 mm",
                        "scale: 630 mm\nmeasured: {channel end: 485.1 mm}",
                        "measured.channel end must lie on the blank, from -175 mm to 485 mm from the nut"),
                // By hand: half a width of 2 at the nut grows by 25 in 379.98; 30.4 before it none is left.
                Arguments.of(
                        "arched-rod-set-neck",
                        "fingerboard:\n  nut width: 43 mm",
                        "measured: {channel start: -31 mm}\nfingerboard:\n  nut width: 4 mm",
                        "measured.channel start must lie where the neck, carried on, has width and depth"),
                // By hand: 7 wide, 0.001 a stroke at half its width, and stations of the arched floor, in each of the
                // passes.
                Arguments.of(
                        "arched-rod-set-neck",
                        "cutter: {diameter: 6 mm",
                        "cutter: {diameter: 0.001 mm",
                        "shop.cutter.diameter: tool path must have no more than 100000 points: take a wider cutter"),
                // By hand: half a width of 0.5 at the nut grows by 26.5 in 630 (1 - 2^(-16/12)) = 379.98; 7.169 before
                // it none is left.
                Arguments.of(
                        "arched-rod-set-neck",
                        "nut width: 43 mm",
                        "nut width: 1 mm",
                        "channel.starts at must be more than -7.17 mm, where the neck's edges meet"),
                Arguments.of(
                        "parlour-no-rod",
                        "    aside: [-19 mm, -17 mm, -14 mm, 14 mm, 17 mm, 19 mm]",
                        "    string over face: 3 mm",
                        "the height of a string at its roller follows from roller diameter and roller depth"),
                Arguments.of(
                        "wedged-foot-flat-head",
                        "on before channel: shaped blank",
                        "on before channel: seam",
                        "a seam in the veneer needs a face veneer"),
                Arguments.of(
                        "flat-heel-plate",
                        "along: 51 mm",
                        "along: 70 mm",
                        "heel.plate screws.pocket length must be more than 82 mm, where the farther row is"),
                Arguments.of(
                        "parlour-no-rod",
                        "slot depth: 13 mm",
                        "slot depth: 31 mm",
                        "heel.foot.slot depth must be less than 31 mm, where both slots meet"),
                Arguments.of(
                        "headless-laminated",
                        "scale: 780 mm",
                        "scale: 780 mm\nwood: sugar maple",
                        "laminated is given, and wood too; keep one of them"),
                Arguments.of(
                        "headless-laminated",
                        "string anchor: 25 mm\n",
                        "",
                        "anchor screws hold a string anchor, but no string anchor is given"));
    }

    @ParameterizedTest
    @MethodSource("impossible")
    void impossible_isRefusedAtItsKey(String name, String was, String becomes, String reason) {
        assertThatThrownBy(() -> changed(name, was, becomes))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(reason);
    }
}
