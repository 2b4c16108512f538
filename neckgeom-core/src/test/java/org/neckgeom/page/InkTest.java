package org.neckgeom.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Contrast by the formula of WCAG 2.2 (W3C Recommendation, definitions of relative luminance and contrast ratio), written
 * here a second time and held to the ratios every table gives: 21 for black on white.
 */
class InkTest {

    private static final Pattern COLOUR = Pattern.compile("#[0-9a-f]{6}");

    @Test
    void contrast_ofTheFormula_isTheKnownOne() {
        assertEquals(21, contrast("#000000", "#ffffff"), 1e-12);
        assertEquals(1, contrast("#777777", "#777777"), 1e-12);
        // The well-known pair of greys on both sides of 4.5 on white: #767676 passes, #777777 fails.
        assertEquals(4.54, contrast("#767676", "#ffffff"), 0.005);
        assertEquals(4.48, contrast("#777777", "#ffffff"), 0.005);
    }

    @Test
    void pairs_byDay_haveContrast() {
        for (Ink.Pair pair : Ink.pairs()) {
            double ratio = contrast(pair.front().day(), pair.ground().day());
            assertTrue(ratio >= pair.least(), () -> pair + " by day has only " + ratio);
        }
    }

    @Test
    void pairs_byNight_haveContrast() {
        for (Ink.Pair pair : Ink.pairs()) {
            double ratio = contrast(pair.front().night(), pair.ground().night());
            assertTrue(ratio >= pair.least(), () -> pair + " by night has only " + ratio);
        }
    }

    @Test
    void style_usesNoColourOfItsOwn() {
        Set<String> known = new TreeSet<>();
        for (Ink ink : Ink.values()) {
            known.add(ink.day());
            known.add(ink.night());
        }
        Matcher colours = COLOUR.matcher(Style.sheet());
        int found = 0;
        while (colours.find()) {
            found++;
            assertTrue(known.contains(colours.group()), colours::group);
        }

        assertEquals(3 * Ink.values().length, found);
        assertTrue(!Style.sheet().contains("@paper@"), "a colour's place was left unfilled");
    }

    @Test
    void outcomes_differWithoutColour() {
        // Filled, dashed, plain: the three marks can be told apart in black and white.
        assertTrue(Style.sheet().contains(".stop .mark,.tally .stop{background:var(--stop);"));
        assertTrue(Style.sheet().contains(".open .mark,.tally .open{border:2px dashed"));
        assertTrue(Style.sheet().contains(".ok .mark,.tally .ok{border:2px solid"));
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String hex) {
        return 0.2126 * channel(hex, 1) + 0.7152 * channel(hex, 3) + 0.0722 * channel(hex, 5);
    }

    private static double channel(String hex, int at) {
        double c = Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
