package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.SectionCode;

/**
 * The plans of both shipped necks against hand calculation. The figures in the comments were worked out on paper from the
 * numbers in the files, with a pocket calculator's sines and powers; where one would lose digits, with 20-digit arithmetic
 * (mpmath 1.3.0), never with this library.
 */
class PlanByHandTest {

    private final Job mandolin = NeckFile.read("octave-mandolin.yaml");
    private final Job bass = NeckFile.read("short-scale-bass.yaml");

    @Test
    void channel_mandolin() {
        String channel = section(mandolin, SectionCode.CHANNEL);

        // 9 rod + 0 strip + 0.2 clearance; 3 + 300 + 0.5 end play
        assertThat(channel).contains("9.2 mm deep").contains("3 mm to 303.5 mm from the nut");
        // Head end leading: the cutter, which cuts 3.01 mm to each side with its runout of 0.02, starts with its centre
        // 200 + 3 + 3.01 from the head end, which is 640 - 206.01 from the tail, and ends with it 200 + 303.5 - 3.01
        // from the head end.
        assertThat(channel)
                .contains("433.99 mm from the cutter's centre")
                .contains("500.49 mm from the cutter's centre");
        // ... and what it cuts 3.01 mm either side
        assertThat(channel).contains("430.98 mm from its near edge").contains("437 mm from its far edge");
        // 0.06 mm over 640 mm, half of it in the middle line: 0.014 mm over 300.5 mm; centred best it is half of that
        // at each end
        assertThat(channel).contains("largest offset 0.007 mm");
    }

    @Test
    void passes_addUpToTheDepth() {
        String channel = section(mandolin, SectionCode.CHANNEL);

        // 9.2 - 0.5 last = 8.7 in steps of 1.5 at most: 6 of 1.45
        assertThat(channel).contains("6 x 1.45, 0.5 mm: 7 passes").contains("gauge-block step 9.2 mm");
    }

    @Test
    void scarf_mandolin() {
        String scarf = section(mandolin, SectionCode.SCARF);

        // sin 13 deg = 0.224951, tan 13 deg = 0.230868: 20/sin = 88.908, 15/sin = 66.681, 66.681 - 20/tan = -19.948
        assertThat(scarf).contains("66.681 mm").contains("88.908 mm along the head's face");
        assertThat(scarf).contains("19.948 mm in front of the break line");
        // Body joint 310.548 + dovetail 15 + head 185 - 20/sin + 20/tan + (1.8 kerf + 2 x 0.3 cleaning)/sin = 518.939
        assertThat(scarf).contains("518.939 mm");
    }

    @Test
    void scarf_bass_countsItsVeneers() {
        String scarf = section(bass, SectionCode.SCARF);

        // sin 10 deg = 0.173648, tan 0.176327; the veneer lies on the wood's face, which holds the nut line:
        // front 7/8/sin = 5.0389; back 9/16/sin - 7/8/tan = 3.23931 - 4.96237 = -1.72306; glue face 9/16/sin
        assertThat(scarf).contains("5.0389 in along").doesNotContain("toward the tip");
        assertThat(scarf).contains("1.7231 in in front").contains("3.2393 in");
        // 9/16 + 1/16 + 1/32 = 0.65625
        assertThat(scarf).contains("0.6563 in");
        // 18.0945 + 8.5 - 5.0389 + 4.9623 + 3/32/sin = 27.0578
        assertThat(scarf).contains("27.0578 in");
    }

    @Test
    void frets_followTheTwelfthRootOfTwo() {
        // 560/2 and 560 (1 - 2^(-14/12)); 30 (1 - 2^(-1/12))
        assertThat(section(mandolin, SectionCode.FRETS)).contains("280.000 mm").contains("310.548 mm");
        assertThat(section(bass, SectionCode.FRETS)).contains("1.6838 in").contains("15.0000 in");
    }

    @Test
    void woodLeft_mandolin_isMeasuredFromWhereTheEdgesPutTheChannel() {
        // Half of 0.06 mm over 640 mm, 0.0141 over the channel's 300.5 mm: a fence set best leaves 0.0070 at either
        // end.
        // At x = 3, a = 17.0580, b = 14.2712; from the floor's corner (3.0055, 9.2) to the half ellipse 4.7776 (20
        // digits,
        // root of the derivative of the distance), centred it would be 4.77869: 0.0002 for each 0.001 mm, so 4.7773
        assertThat(section(mandolin, SectionCode.WOOD_LEFT))
                .contains("0.007 mm at its head end")
                .contains("4.777 mm at 3.0 mm from the nut");
    }

    @Test
    void head_mandolin_breaksEachStringOverTheNut() {
        String head = section(mandolin, SectionCode.HEAD);

        // (76 - 61)/2 to each side. First string, 1.02 thick, 13.49 aside: its middle over the nut at 6 - 13.49^2/800 +
        // 1.1 +
        // 0.4 + 0.51 = 7.782; run 40 cos 13 deg + 8 sin 13 deg = 40.775, fall 7.782 + 40 sin - 8 cos = 8.986, aside
        // -22 + 13.49 = -8.51: atan(8.986/hypot(40.775, 8.51)) = 12.17 deg, atan(8.51/40.775) = 11.79 deg. At half the
        // scale,
        // 17.49 aside, its underside is 6 - 17.49^2/800 + 1.1 + 2.0 = 8.717, 1.445 over that at the nut: it rises by
        // 1.445/280 = 0.00516. 95 N x (sin 12.17 deg - 0.00516) = 19.54 N. The last string, 0.28 thick, has the least:
        // 6 - 13.86^2/800 + 1.5 + 0.14 = 7.400, fall 8.603, aside 22 - 13.86 = 8.14: 11.69 deg
        assertThat(head).contains("7.500 mm wide").contains("12.17 deg down, 11.79 deg toward the bass side");
        assertThat(head).contains("each  19.5 N");
        assertThat(check(mandolin, "strings press on the nut").found()).isEqualTo("least break 11.69 deg");
        assertThat(check(mandolin, "head fits the tuners").outcome()).isEqualTo(Outcome.OK);
        // 1/2 to 3/4 in less veneers of 3/32 in
        assertThat(section(bass, SectionCode.HEAD)).contains("0.40625 to 0.65625 in");
    }

    @Test
    void board_crownsDownToItsEdges() {
        // 6 - (400 - sqrt(400^2 - 17^2)); the same with 23; 1/4 - (12 - sqrt(12^2 - 0.875^2)); with 16 in and 1.3125
        assertThat(section(mandolin, SectionCode.FINGERBOARD))
                .contains("5.639 mm")
                .contains("5.338 mm");
        assertThat(section(bass, SectionCode.FINGERBOARD)).contains("0.2181 in").contains("0.1961 in");
        // atan(0.010/(21.5815 - 18.0945)) = 0.164 deg
        assertThat(section(bass, SectionCode.FINGERBOARD))
                .contains("Fall-away: 10.0 thou")
                .contains("0.16 deg");
    }

    @Test
    void stringsAcross_leaveEqualGapsAndStayOverTheBoard() {
        String across = section(mandolin, SectionCode.STRINGS_ACROSS);

        // nut 34 - 2 x 3 = 28: (28 - 2.44 in diameters - 4 x 2.6)/3 = 5.053; saddle (44 - 12.84)/3 = 10.387; outer
        // strings
        // at 14 - 0.51 and 14 - 0.14
        assertThat(across)
                .contains("5.053")
                .contains("10.387")
                .contains("-13.490")
                .contains("13.860");
        // At fret 20, 383.611 from the nut: board 48.8232/2, string 14 + (22 - 14) 383.611/560: 4.931 inside
        assertThat(across).contains("bass 4.931 mm, treble 4.931 mm");
        assertThat(check(mandolin, "outer strings over the board").found()).startsWith("4.931 mm");
    }

    @Test
    void stringsAcross_bass_growTowardTheBass() {
        // Centres 1.5 - 0.064 - 0.0225 = 1.4135 apart: spaces n + 0.03, n + 0.02, n + 0.01, n with n = 0.338375, so
        // -0.686, -0.686 + 0.368375, ...; the last gap 0.338375 - (0.062 + 0.045)/2
        assertThat(section(bass, SectionCode.STRINGS_ACROSS))
                .contains("1.4135 in, centre to centre")
                .contains("-0.6860, -0.3176, 0.0408, ")
                .contains("0.2849 in");
    }

    @Test
    void flats_mandolin_touchTheHalfEllipse() {
        // a = 17.6073, b = 14.5, slope atan(14.5/17.6073) = 39.47 deg, phi = 90 deg - slope, h = a cos phi sqrt 2
        // there:
        // inner line at (h - b sin phi)/cos phi, outer line (h - a cos phi)/sin phi deep
        assertThat(section(mandolin, SectionCode.BACK))
                .contains("39.47 deg: 7.293 mm from the middle, 14.500 mm deep to")
                .contains("17.607 mm, 6.006 mm deep");
    }

    @Test
    void heel_mandolin_stacksThreeBlocks() {
        String heel = section(mandolin, SectionCode.HEEL);

        // 78 cos 1.0219 deg = 77.988; the shaft is planed to 20 - 2 x 0.5; (77.988 - 19)/20 = 2.9: 3 blocks,
        // 79 - 77.988 off the last
        assertThat(heel).contains("3 blocks of 20 mm").contains("77.988 mm").contains("1.012 mm");
        // Lever of 251.652 to the saddle: 78 x 1/251.652 at the cap, 54 x 0.5/251.652 at the cheek
        assertThat(section(mandolin, SectionCode.WHAT_IF))
                .contains("0.310 mm at the cap")
                .contains("0.107 mm off the treble cheek");
    }

    @Test
    void stock_countsSparesAndKerfs() {
        // 518.939 + 2 x 3, heel 54 + 2 x 2; the blocks begin 310.548 + 15 - 35 from the nut, where the back is
        // 14.5 + 2 (290.548 - 31.431)/(280 - 31.431) = 16.585 deep, + 2 x 0.5; the neck ends past the body joint,
        // 200 + 310.548 + 15 from the head end: 640 - 525.548 - 1.8 = 112.652; blocks of 20 do not come from a blank
        // that is planed to 19
        assertThat(section(mandolin, SectionCode.BLANK_AND_CUTTING_LIST))
                .contains("Least blank: 524.939 mm x 58 mm x 17.585 mm")
                .contains("112.652 mm");
        assertThat(check(mandolin, "all pieces from the blank").found()).isEqualTo("112.652 mm left over");
        // 34 - 9 - 18.0945 - 3/32
        assertThat(section(bass, SectionCode.BLANK_AND_CUTTING_LIST)).contains("6.8118 in");
    }

    @Test
    void cutterUnderLoad_followsFeedAndSpeed() {
        // pi x 6 mm x 16000/60 s = 5.03 m/s; 1800/(16000 x 2) = 0.056 mm; pi x 6.35 mm x 16000/60 s; 70/32000 in
        assertThat(section(mandolin, SectionCode.CUTTER_LOAD))
                .contains("5.0 m/s")
                .contains("0.056 mm an edge");
        assertThat(section(bass, SectionCode.CUTTER_LOAD)).contains("5.3 m/s").contains("2.2 thou an edge");
    }

    @Test
    void plan_saysItselfInFewerThanAThousandCharacters() {
        assertThat(mandolin.toString()).hasSizeLessThan(1000);
        assertThat(bass.toString()).hasSizeLessThan(1000);
    }

    @Test
    void neckAngle_mandolin() {
        // S = 560 x 2^(-14/12) + 2.2 = 251.652, H = 8.1, string 3.6126 over the plane at the saddle:
        // asin(8.1/251.678) - atan(3.6126/251.652) = 1.8443 - 0.8225 = 1.0219 deg
        assertThat(section(mandolin, SectionCode.NECK_ANGLE))
                .contains("1.02 deg, head back")
                .contains("88.98 deg");
    }

    @Test
    void centring_bass_takesAllRoundsTogether() {
        String centring = section(bass, SectionCode.CENTRING);

        // means 1.1830 and 1.2218: (1.1830 - 1.2218)/2 = -0.0194; after 0.020 away, read (1.2030 - 1.2022)/2 = +0.0004
        assertThat(centring).contains("19.40 thou nearer the fence").contains("0.40 thou farther from the fence");
        assertThat(check(bass, "channel centred").outcome()).isEqualTo(Outcome.OK);
    }

    @Test
    void strings_mandolin_pullTogether() {
        // 4 courses of 2 at 95 N
        assertThat(section(mandolin, SectionCode.STRINGS_AND_RELIEF)).contains("760 N");
    }

    @Test
    void checks_neckWithoutReadings_waitsForTheTrialCut() {
        assertThat(check(mandolin, "channel centred").outcome()).isEqualTo(Outcome.OPEN);
        assertThat(check(mandolin, "blank long enough for shaft and head").outcome())
                .isEqualTo(Outcome.OK);
        assertThat(check(mandolin, "wood under the channel").outcome()).isEqualTo(Outcome.OK);
    }

    @Test
    void plan_thinnerHead_movesJointLineAndBoardTogether() {
        String text = ShippedNecks.text("octave-mandolin.yaml").replace("thickness: 15 mm ", "thickness: 13 mm ");
        Job thinner = NeckFile.parse("thinner.yaml", text);

        // 13/sin 13 deg = 57.790, 57.790 - 20/tan 13 deg = -28.839
        assertThat(section(thinner, SectionCode.SCARF))
                .contains("57.790 mm")
                .contains("28.839 mm in front of the break line");
        assertThat(section(mandolin, SectionCode.SCARF))
                .doesNotContain("57.790 mm")
                .contains("19.948 mm in front");
    }

    private static String section(Job plan, SectionCode code) {
        return Sections.whole(plan, code);
    }

    private static PlanCheck check(Job plan, String name) {
        return plan.plan().checks().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
