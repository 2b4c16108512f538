package org.neckgeom.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.Locale;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.LinearDensity;
import org.neckgeom.units.ShopUnit;

/** Strings' metal and heights, bars, posts, screws and foot: their figures by hand, and their limits at the very edge. */
class JoinedPartsTest {

    private static final ShopUnit<LinearDensity> GRAMS = ShopUnit.GRAM_PER_METRE;

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(message);
    }

    /** Density by handbooks, in kg/m3; a wire 1 mm thick has pi/4 mm2. */
    @ParameterizedTest
    @CsvSource({
        "STEEL, 7850", "NICKEL, 8908", "PHOSPHOR_BRONZE, 8800", "BRASS, 8670",
        "COPPER, 8920", "NYLON, 1140", "FLUOROCARBON, 1780", "GUT, 1300",
    })
    void plainString_weighsItsSectionTimesItsDensity(StringMaterial material, double density) {
        assertThat(material.density().libraryValue()).isEqualTo(density);
        assertThat(material.plain(mm(1)).valueIn(GRAMS)).isCloseTo(density * Math.PI / 4 / 1000, within(1e-12));
        assertThat(material)
                .hasToString(material.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    /** A turn of wire of 0.3 mm round a core of 0.5 mm is pi x 0.8 mm long, has pi 0.09/4 mm2, and takes up 0.3 mm of string. */
    @Test
    void woundString_weighsItsCoreAndItsTurns() {
        double turn = Math.PI * 0.8 * (Math.PI * 0.09 / 4) / 0.3;
        double core = Math.PI * 0.25 / 4;

        assertThat(StringMaterial.STEEL
                        .wrapped(mm(0.5), StringMaterial.NICKEL, mm(0.3))
                        .valueIn(GRAMS))
                .isCloseTo((7850 * core + 8908 * turn) / 1000, within(1e-12));
        refused(() -> StringMaterial.STEEL.wrapped(mm(0), StringMaterial.NICKEL, mm(0.3)), "core diameter");
        refused(() -> StringMaterial.STEEL.wrapped(mm(0.5), StringMaterial.NICKEL, mm(0)), "wire diameter");
        refused(() -> StringMaterial.STEEL.plain(mm(0)), "string diameter");
    }

    @Test
    void heights_runStraightFromBassToTreble() {
        StringHeights level = StringHeights.of(mm(0.4), mm(2));
        StringHeights sloped = level.treble(mm(0.2), mm(1.5));

        assertThat(StringHeights.usual()).isEqualTo(level);
        assertThat(level.trebleAtNut()).isEqualTo(level.atNut());
        assertThat(level.trebleAction()).isEqualTo(level.action());
        assertThat(sloped.atNutMm(0)).isEqualTo(0.4);
        assertThat(sloped.atNutMm(0.5)).isCloseTo(0.3, within(1e-15));
        assertThat(sloped.atNutMm(1)).isEqualTo(0.2);
        assertThat(sloped.actionMm(0.25)).isCloseTo(1.875, within(1e-15));
        assertThat(sloped.actionMm(1)).isEqualTo(1.5);
        assertThat(level).hasToString("0.4 mm at the nut, action 2 mm");
        assertThat(sloped).hasToString("0.4 mm at the nut, action 2 mm; on the treble side 0.2 mm and 1.5 mm");
        for (double outside : new double[] {-1e-9, 1 + 1e-9, Double.NaN}) {
            refused(() -> sloped.atNutMm(outside), "be between 0 and 1");
            refused(() -> sloped.actionMm(outside), "be between 0 and 1");
        }
    }

    /** Fanned from 9 mm at the nut to 12 mm at a joint 300 mm away: 1 mm more every 100. */
    @Test
    void bars_lieStraightFromNutToJoint() {
        Bars straight = Bars.of(Bar.carbon(mm(280)).section(mm(3), mm(8)), mm(9));
        Bars fanned = straight.fanned(mm(12));

        assertThat(straight.asideMm(250, 300)).isEqualTo(9);
        assertThat(fanned.asideMm(0, 300)).isEqualTo(9);
        assertThat(fanned.asideMm(100, 300)).isCloseTo(10, within(1e-14));
        assertThat(fanned.asideMm(300, 300)).isCloseTo(12, within(1e-14));
        assertThat(fanned.asideMm(0.5, 1)).isCloseTo(10.5, within(1e-14));
        refused(() -> fanned.asideMm(10, 0.999), "body joint must be 1 mm or more");
        refused(
                () -> fanned.asideMm(10, 1.001 * LibraryUnits.MOST),
                "body joint must be 1 mm or more and no more than");
        assertThat(straight.channel().widthMm()).isCloseTo(3.1, within(1e-14));
        assertThat(straight.channel().startMm()).isZero();
        assertThat(straight.startingAt(mm(-5)).channel().startMm()).isEqualTo(-5);
        assertThat(straight.toString()).endsWith("9 mm aside");
        assertThat(fanned.toString()).endsWith("9 mm aside at the nut and 12 mm at the body joint");
    }

    @Test
    void posts_areOneForAllOrOneEach() {
        Posts posts = Posts.of(
                TunerPost.at(mm(45)).aside(mm(-21)).above(mm(8)),
                TunerPost.at(mm(90)).aside(mm(21)).above(mm(8)));

        assertThat(posts.each())
                .containsExactly(
                        TunerPost.at(mm(45)).aside(mm(-21)).above(mm(8)),
                        TunerPost.at(mm(90)).aside(mm(21)).above(mm(8)));
        assertThat(posts.diameterMm()).isZero();
        assertThat(posts.washerMm()).isZero();
        assertThat(posts.diameter(mm(6)).washerMm()).isEqualTo(6);
        assertThat(posts.diameter(mm(6)).washers(mm(6)).washerMm()).isEqualTo(6);
        assertThat(posts.hasHeights()).isTrue();
        assertThat(Posts.of(TunerPost.at(mm(45))).hasHeights()).isFalse();
        refused(() -> posts.diameter(mm(6)).washers(mm(5.999)), "be 6 mm or more, the posts' own, but was 5.999 mm");
    }

    /** Rows 12 and 12 + 51 from the joint; a screw of 45 through 18 of body and 1.5 of plate reaches 25.5 into the heel. */
    @Test
    void plateScrews_reachIntoTheHeel() {
        PlateScrews screws = PlateScrews.in(mm(75), mm(18));

        assertThat(screws.rowsMm()).containsExactly(12.0, 63.0);
        assertThat(screws.reachMm()).isEqualTo(25.5);
        assertThat(screws.underHeelMm()).isEqualTo(19.5);
        assertThat(screws.diameterMm()).isEqualTo(4.2);
        assertThat(screws.acrossMm()).isEqualTo(38);
        assertThat(screws.across(mm(30)).acrossMm()).isEqualTo(30);
        assertThat(screws.screws(mm(5), mm(50)).plate(mm(0)).reachMm()).isEqualTo(32);
        assertThat(screws.screws(mm(5), mm(50)).diameterMm()).isEqualTo(5);
        assertThat(screws.pastShoulder().map(Amount::libraryValue)).hasValue(75.0);
        assertThat(screws.below()).isEmpty();
        assertThat(screws.rows(mm(10), mm(64.9)).rowsMm()).containsExactly(10.0, 74.9);
        refused(() -> screws.rows(mm(10), mm(65)), "be more than 75 mm, where the farther row is");
    }

    @Test
    void spanishFoot_hasSlotsWiderThanTheSides() {
        SpanishFoot foot = SpanishFoot.of(mm(40), mm(2.2));

        assertThat(foot.slotWidthMm()).isCloseTo(2.4, within(1e-15));
        assertThat(foot.slotDepthMm()).isEqualTo(13);
        assertThat(foot.ledgeMm()).isEqualTo(2.5);
        assertThat(foot.lengthMm()).isEqualTo(40);
        assertThat(foot.sideMm()).isEqualTo(2.2);
        assertThat(foot.isWedged()).isFalse();
        assertThat(foot.wedged().isWedged()).isTrue();
        assertThat(foot.ledge(mm(3)).ledgeMm()).isEqualTo(3);
        assertThat(foot.slots(mm(4), mm(15)).slotWidthMm()).isEqualTo(4);
        assertThat(foot.slots(mm(4), mm(15)).slotDepthMm()).isEqualTo(15);
        assertThat(foot.pastShoulder().map(Amount::libraryValue)).hasValue(40.0);
        assertThat(foot.below()).isEmpty();
        refused(() -> foot.slots(mm(2.2), mm(15)), "be more than 2.2 mm, the thickness of the sides, but was 2.2 mm");
    }

    private static StringSet four() {
        return StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4"));
    }

    @Test
    void coresLieInsideTheirStrings() {
        StringSet wound = four().diameters(mm(1), mm(0.8), mm(0.6), mm(0.4));

        assertThat(wound.cores(StringMaterial.NICKEL, mm(0.5), mm(0.5), mm(0.4), mm(0))
                        .coresMm())
                .containsExactly(0.5, 0.5, 0.4, 0);
        refused(
                () -> wound.cores(StringMaterial.NICKEL, mm(0.5), mm(0.8), mm(0.4), mm(0)),
                "be less than 0.8 mm, the diameter of string 2, but was 0.8 mm");
        refused(
                () -> four().cores(StringMaterial.NICKEL, mm(0.3)),
                "strings with cores need their diameters, but have none");
    }

    /** Solid steel of 1 mm weighs 6.165 g/m, solid nickel 1.14 times that: 7.02. */
    @Test
    void noStringIsHeavierThanSolidNickel() {
        StringSet thick = four().diameters(mm(1)).tensions(newton(90));

        assertThat(thick.linearDensities(gramPerMetre(7)).diametersMm()).containsExactly(1, 1, 1, 1);
        refused(
                () -> thick.linearDensities(gramPerMetre(7.1)),
                "be 7 g/m or less for string 1 of 1 mm, as heavy as solid nickel, but was 7.1 g/m");
    }
}
