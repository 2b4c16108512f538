package org.neckgeom.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.examples.shell.Approved;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.SectionCode;

/**
 * The shipped neck with fanned frets, slanted nut, wings, veneers and a bolted tenon. Figures in the comments were worked out
 * with 20 digits (mpmath 1.3.0) from the numbers in the file, never with this library.
 */
class FannedBaritoneTest {

    private static final Path PAGE = Path.of("src", "test", "resources", "pages", "fanned-baritone.html");

    private final Job plan = NeckFile.read("fanned-baritone.yaml");

    @Test
    void page_isTheApprovedOne() throws IOException {
        Approved.check(PAGE, Sheet.of(plan).toHtml());
    }

    @Test
    void plan_hasNothingToStopFor() {
        assertThat(plan.plan().checks()).noneMatch(check -> check.outcome() == Outcome.STOP);
        assertThat(plan.plan().checks()).extracting(PlanCheck::name).contains("bolts inside tenon and heel");
    }

    /**
     * Outer strings 38.895 mm apart at the nut and 56.895 mm at the saddle, so each scale runs sqrt(scale^2 - 9^2) along
     * the neck; the nut's ends lie (1 - 2^(-7/12)) of the runs' difference apart, half of it either way; frets are straight
     * through both and meet the edges, 46 mm apart at the nut and 58.5 mm at fret 14.
     */
    @Test
    void fannedFrets_meetTheBoardsEdges() {
        String frets = section(SectionCode.FANNED_FRETS);

        assertThat(frets)
                .contains("bass -5.095 mm, treble 5.133 mm") // nut: -5.09515, 5.13252
                .contains("fret 7   bass 228.130 mm, treble 228.130 mm") // 228.13029 both
                .contains("fret 12  bass 345.577 mm, treble 340.372 mm") // 345.57708, 340.37163
                .contains("fret 21  bass 487.800 mm, treble 476.254 mm"); // 487.80038, 476.25400
        assertThat(frets).contains("perpendicular fret  7", "nut slants          12.54 deg");
    }

    /** d = atan(tan 14 deg / cos s), head mitre asin(cos 14 deg sin s), blade on edge asin(sin d sin s), s the nut's slant. */
    @Test
    void scarf_isSawnCompound() {
        assertThat(section(SectionCode.SCARF))
                .contains("Board for two saw cuts of opposite hand, joint in the shaft")
                .contains(
                        "Blade 14.33 deg from the face, mitre 12.54 deg", "mitre 14.00 deg, blade 3.08 deg from square")
                .contains(
                        "Blade 14.33 deg from the face, mitre 12.16 deg",
                        "mitre 14.02 deg, blade 2.99 deg from square");
    }

    /** Wings (84 - 70)/2; common practice for a 10 mm barrel: its hole's front 0.8 mm behind the shoulder. */
    @Test
    void wingsAndTenon_areAsGiven() {
        assertThat(section(SectionCode.HEAD)).contains("7.000 mm wide, one glued to each side");
        assertThat(section(SectionCode.HEEL)).contains("28.500 mm below the glue face", "0.800 mm around a hole");
    }

    /** 0.1 mm / sin 3 deg. */
    @Test
    void dovetail_ofTheMandolinSaysWhatAShimDoes() {
        Job mandolin = NeckFile.read("octave-mandolin.yaml");

        assertThat(Sections.whole(mandolin, SectionCode.HEEL)).contains("0.1 mm each side  lifts the neck 1.911 mm");
    }

    @Test
    void file_isRefusedWhenItsScaleIsNotThatOfItsFan() {
        String text = ShippedNecks.text("fanned-baritone.yaml").replace("scale: 685.94 mm", "scale: 680 mm");

        assertThat(refusal(text))
                .endsWith("scale must be 685.941 mm, that of the fanned frets on the centreline, but was 680 mm");
    }

    @Test
    void file_isRefusedWhenFannedFretsStandWithoutStringsAcross_orTwoJointsAreTold() {
        String text = ShippedNecks.text("fanned-baritone.yaml");

        assertThat(refusal(text.replaceAll("(?s)  across:.*?\n\n", "\n")))
                .contains("fanned frets are given, but not the string spacing");
        assertThat(refusal(text.replace("  tenon:  ", "  dovetail:\n    taper: 3 deg\n  tenon:  ")))
                .contains("heel: tenon is given, and dovetail too; keep one of them");
    }

    private static String refusal(String text) {
        try {
            NeckFile.parse("own.yaml", text);
        } catch (IllegalArgumentException refused) {
            return refused.getMessage();
        }
        throw new AssertionError("the file was taken");
    }

    private String section(SectionCode code) {
        return Sections.whole(plan, code);
    }
}
