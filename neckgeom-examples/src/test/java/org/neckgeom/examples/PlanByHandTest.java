package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.plan.PlanSection;

/**
 * The plans of both shipped necks against hand calculation. The figures in the comments were worked out on paper from the
 * numbers in the files, with a pocket calculator's sines and powers; where one would lose digits, with 20-digit arithmetic
 * (mpmath 1.3.0), never with this library.
 */
class PlanByHandTest {

    private final NeckPlan mandolin = NeckFile.read("octave-mandolin.yaml").plan();
    private final NeckPlan bass = NeckFile.read("short-scale-bass.yaml").plan();

    @Test
    void channel_mandolin() {
        String channel = section(mandolin, "Channel for the rod");

        // 9 rod + 0 strip + 0.2 clearance; 3 + 300 + 0.5 end play
        assertThat(channel).contains("9.2 mm deep").contains("3 mm to 303.5 mm from the nut");
        // Head end leading: the cutter, 3 mm in radius, starts with its centre 3 + 3 from the head end, which lies 640
        // - 6
        // from the tail, and ends with it 303.5 - 3 from the head end.
        assertThat(channel).contains("634 mm from the cutter's centre").contains("300.5 mm from the cutter's centre");
        // ... and the edges of the cutter 3 mm either side
        assertThat(channel).contains("431 mm from its near edge").contains("437 mm from its far edge");
        // 0.06 mm over 640 mm is atan(0.00009375/2) = 0.0027 deg for the middle line, 0.014 mm over 300.5 mm
        assertThat(channel).contains("skew 0.0027 deg").contains("0.014 mm over 300.5 mm");
    }

    @Test
    void passes_addUpToTheDepth() {
        String channel = section(mandolin, "Channel for the rod");

        // 9.2 - 0.5 last = 8.7 in steps of 1.5 at most: 6 of 1.45
        assertThat(channel).contains("6 x 1.45, 0.5 mm: 7 passes").contains("gauge-block step 9.2 mm");
    }

    @Test
    void scarf_mandolin() {
        String scarf = section(mandolin, "Scarf");

        // sin 13 deg = 0.224951, tan 13 deg = 0.230868: 20/sin = 88.908, 15/sin = 66.681, 66.681 - 20/tan = -19.948
        assertThat(scarf).contains("66.681 mm").contains("88.908 mm along the head's face");
        assertThat(scarf).contains("19.948 mm in front of the break line");
        // Body joint 310.548 + head 185 - 20/sin + 20/tan + (1.8 kerf + 2 x 0.3 cleaning)/sin = 503.939
        assertThat(scarf).contains("503.939 mm");
    }

    @Test
    void scarf_bass() {
        String scarf = section(bass, "Scarf");

        // sin 10 deg = 0.173648, tan 10 deg = 0.176327: 9/16/sin = 3.2393, 7/8/sin = 5.0389, 3.2393 - 7/8/tan = -1.7231
        assertThat(scarf).contains("3.2393 in").contains("5.0389 in").contains("1.7231 in in front");
        // 18.0945 + 8.5 - 5.0389 + 4.9623 + 3/32/sin = 27.0578
        assertThat(scarf).contains("27.0578 in");
    }

    @Test
    void frets_followTheTwelfthRootOfTwo() {
        // 560/2 and 560 (1 - 2^(-14/12)); 30 (1 - 2^(-1/12))
        assertThat(section(mandolin, "Frets")).contains("280.000 mm").contains("310.548 mm");
        assertThat(section(bass, "Frets")).contains("1.6838 in").contains("15.0000 in");
    }

    @Test
    void woodLeft_mandolin() {
        // At x = 3: a = 17.0580, b = 14.2712; from the floor's corner (3, 9.2) to the half ellipse 4.77869 (20 digits)
        assertThat(section(mandolin, "Wood left")).contains("4.779 mm at 3.0 mm from the nut");
    }

    @Test
    void neckAngle_mandolin() {
        // S = 560 x 2^(-14/12) + 2.2 = 251.652, H = 8.1, string 3.6126 over the plane at the saddle:
        // asin(8.1/251.678) - atan(3.6126/251.652) = 1.8443 - 0.8225 = 1.0219 deg
        assertThat(section(mandolin, "Neck angle"))
                .contains("1.02 deg, head back")
                .contains("88.98 deg");
    }

    @Test
    void centring_bass_takesAllRoundsTogether() {
        String centring = section(bass, "Centring");

        // means 1.1830 and 1.2218: (1.1830 - 1.2218)/2 = -0.0194; after 0.020 away, read (1.2030 - 1.2022)/2 = +0.0004
        assertThat(centring).contains("19.40 thou nearer the fence").contains("0.40 thou farther from the fence");
        assertThat(check(bass, "channel centred").outcome()).isEqualTo(Outcome.GOOD);
    }

    @Test
    void strings_mandolin_pullTogether() {
        // 4 courses of 2 at 95 N
        assertThat(section(mandolin, "Strings")).contains("760 N");
    }

    @Test
    void checks_neckWithoutReadings_waitsForTheTrialCut() {
        assertThat(check(mandolin, "channel centred").outcome()).isEqualTo(Outcome.OPEN);
        assertThat(check(mandolin, "blank reaches for shaft and head").outcome())
                .isEqualTo(Outcome.GOOD);
        assertThat(check(mandolin, "wood left under the channel").outcome()).isEqualTo(Outcome.GOOD);
    }

    @Test
    void plan_thinnerHead_movesJointLineAndBoardTogether() {
        String text = ShippedNecks.text("octave-mandolin.yaml").replace("thickness: 15 mm ", "thickness: 13 mm ");
        NeckPlan thinner = NeckFile.parse("thinner.yaml", text).plan();

        // 13/sin 13 deg = 57.790, 57.790 - 20/tan 13 deg = -28.839
        assertThat(section(thinner, "Scarf")).contains("57.790 mm").contains("28.839 mm in front of the break line");
        assertThat(section(mandolin, "Scarf")).doesNotContain("57.790 mm").contains("19.948 mm in front");
    }

    private static String section(NeckPlan plan, String title) {
        List<PlanSection> found = plan.sections().stream()
                .filter(s -> s.title().startsWith(title))
                .toList();
        assertThat(found).as("sections titled " + title).hasSize(1);
        return found.get(0).toString();
    }

    private static PlanCheck check(NeckPlan plan, String name) {
        return plan.checks().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
