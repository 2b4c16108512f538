package org.neckgeom.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;
import static org.neckgeom.units.ShopUnits.thou;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.LengthStyle;

/** Head, back, fingerboard, rod, strings and heel: defaults, one thing changed at a time, refusals. */
class PartsTest {

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }

    @Test
    void head_isOfTheUsualSizeUnlessTold() {
        Head head = Head.angled(deg(13));

        assertThat(head.angleRad()).isCloseTo(13 * Math.PI / 180, within(1e-16));
        assertThat(head.lengthMm()).isEqualTo(180);
        assertThat(head.widthMm()).isEqualTo(75);
        assertThat(head.thicknessMm()).isEqualTo(15);
        assertThat(Head.flat().angleRad()).isZero();
        assertThat(Head.flat()).hasToString("flat head, 180 mm long, 75 mm wide, 15 mm thick");
    }

    @Test
    void head_changesOneThingAndLeavesTheOldOne() {
        Head old = Head.angled(deg(13));

        Head changed = old.length(inch(7))
                .width(inch(3))
                .thickness(inch(0.6))
                .swung(deg(-2))
                .veneer(inch(0.08), inch(0.04))
                .backVeneer(inch(0.02));

        assertThat(old).isEqualTo(Head.angled(deg(13)));
        assertThat(changed.lengthMm()).isCloseTo(177.8, within(1e-13));
        assertThat(changed.widthMm()).isCloseTo(76.2, within(1e-13));
        assertThat(changed.thicknessMm()).isCloseTo(15.24, within(1e-13));
        assertThat(changed.swingRad()).isNegative();
        assertThat(changed.veneerMm()).isCloseTo(2.032, within(1e-15));
        assertThat(changed.veneerShortOfNutMm()).isCloseTo(1.016, within(1e-15));
        assertThat(changed.backVeneerMm()).isCloseTo(0.508, within(1e-15));
        assertThat(changed.style()).isEqualTo(LengthStyle.DECIMAL_INCHES);
        assertThat(changed)
                .hasToString(
                        "head angled 13 deg, 7 in long, 3 in wide, 0.6 in thick, swung 2 deg toward the bass side, veneer 0.08 in, back veneer 0.02 in");
    }

    @Test
    void head_refusesWhatCannotBe() {
        Head head = Head.flat();

        refused(() -> Head.angled(deg(-1)), "head angle must be 0 deg or more, but was -1 deg");
        refused(() -> Head.angled(deg(46)), "head angle must be 0 deg or more and 45 deg or less, but was 46 deg");
        refused(() -> head.length(mm(0)), "head length must be more than 0 mm, but was 0 mm");
        refused(() -> head.width(mm(0)), "head width must be more than 0 mm, but was 0 mm");
        refused(() -> head.thickness(mm(0)), "head thickness must be more than 0 mm, but was 0 mm");
        refused(() -> head.swung(deg(45)), "head swing must be -30 deg or more and 30 deg or less, but was 45 deg");
        refused(() -> head.veneer(mm(0), mm(0)), "head veneer must be more than 0 mm, but was 0 mm");
        refused(
                () -> head.veneer(mm(1), mm(-1)),
                "veneer's distance from the nut line must be 0 mm or more, but was -1 mm");
        refused(() -> head.backVeneer(mm(-1)), "back veneer must be more than 0 mm, but was -1 mm");
    }

    @Test
    void back_namesItsShape() {
        BackProfile back = BackProfile.between(mm(14.5), mm(16.5));

        assertThat(back).hasToString("back 14.5 mm deep at fret 1, 16.5 mm at fret 12, rounded");
        assertThat(back.full().toString()).endsWith(", full");
        assertThat(back.flatBacked().toString()).endsWith(", flat-backed");
        assertThat(back.pointed().toString()).endsWith(", pointed");
        assertThat(back.power(1.7).toString()).endsWith(", exponent 1.7");
        assertThat(back.asymmetric(2.5, 1.5).toString())
                .endsWith(", full on the bass side, pointed on the treble side");
        assertThat(back.full().rounded()).isEqualTo(back);
        assertThat(back.bassPower()).isEqualTo(2);
        assertThat(back.treblePower()).isEqualTo(2);
    }

    @Test
    void back_isLinearThroughItsFretsAndBeyond() {
        Scale scale = Scale.of(mm(600));
        BackProfile back = BackProfile.between(mm(14), mm(16)).atFrets(0, 12);

        assertThat(back.depthAtMm(0, scale)).isEqualTo(14);
        assertThat(back.depthAtMm(150, scale)).isCloseTo(15, within(1e-14));
        assertThat(back.depthAtMm(300, scale)).isCloseTo(16, within(1e-14));
        assertThat(back.depthAtMm(450, scale)).isCloseTo(17, within(1e-14));
        assertThat(back.firstFret()).isZero();
        assertThat(back.secondFret()).isEqualTo(12);
        assertThat(back.firstDepthMm()).isEqualTo(14);
        assertThat(back.secondDepthMm()).isEqualTo(16);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.99, 20.01, Double.NaN, Double.POSITIVE_INFINITY, -2})
    void back_refusesExponentsOutOfRange(double p) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BackProfile.between(mm(14), mm(16)).power(p))
                .withMessageStartingWith(
                        "exponents of the two sides must be a number from 1 to 20 without a unit, but was ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BackProfile.between(mm(14), mm(16)).asymmetric(2, p))
                .withMessageStartingWith(
                        "exponents of the two sides must be a number from 1 to 20 without a unit, but was ");
    }

    @Test
    void back_refusesWhatCannotBe() {
        refused(() -> BackProfile.between(mm(0), mm(1)), "depth of the back must be more than 0 mm, but was 0 mm");
        refused(() -> BackProfile.between(mm(1), mm(-1)), "depth of the back must be more than 0 mm, but was -1 mm");
        refused(
                () -> BackProfile.between(mm(1), mm(1)).atFrets(3, 3),
                "depths must be at ascending frets, but was at frets 3 and 3");
        refused(
                () -> BackProfile.between(mm(1), mm(1)).atFrets(-1, 3),
                "fret of the depth must be a whole number from 0 to 200, but was -1");
    }

    @Test
    void fingerboard_saysItsCrown() {
        Fingerboard board = Fingerboard.tapered(mm(34), mm(46));

        assertThat(board.crown()).isEqualTo(Fingerboard.Crown.FLAT);
        assertThat(board.radius(mm(400)).crown()).isEqualTo(Fingerboard.Crown.CYLINDER);
        assertThat(board.radius(mm(300), mm(400)).crown()).isEqualTo(Fingerboard.Crown.CONE);
        assertThat(board.farFret(14)).isEqualTo(14);
        assertThat(board.farWidthAtFret(12).farFret(14)).isEqualTo(12);
        assertThat(board.wood()).isEmpty();
        assertThat(board.wood(Wood.AFRICAN_EBONY).wood()).contains(Wood.AFRICAN_EBONY);
        assertThat(board).isEqualTo(Fingerboard.tapered(mm(34), mm(46)));
        assertThat(board.radius(mm(400)))
                .hasToString("fingerboard 34 mm at the nut, 46 mm at the body joint, 6 mm thick, radius 400 mm");
        assertThat(board.radius(mm(300), mm(400)).thickness(mm(6), mm(5)).farWidthAtFret(12))
                .hasToString(
                        "fingerboard 34 mm at the nut, 46 mm at fret 12, 6 mm to 5 mm thick, radius 300 mm to 400 mm");
    }

    @Test
    void fingerboard_refusesWhatCannotBe() {
        Fingerboard board = Fingerboard.tapered(mm(34), mm(46));

        refused(() -> Fingerboard.tapered(mm(0), mm(46)), "nut width must be more than 0 mm, but was 0 mm");
        refused(() -> Fingerboard.tapered(mm(34), mm(0)), "far width must be more than 0 mm, but was 0 mm");
        refused(() -> board.farWidthAtFret(0), "fret of the far width must be a whole number from 1 to 200, but was 0");
        refused(() -> board.thickness(mm(0)), "board thickness must be more than 0 mm, but was 0 mm");
        refused(
                () -> board.thickness(mm(6), mm(0)),
                "board thickness at the far width must be more than 0 mm, but was 0 mm");
        refused(() -> board.radius(mm(17)), "radius must be more than half the width of 34 mm, but was 17 mm");
        refused(() -> board.radius(mm(20)), "far radius must be more than half the width of 46 mm, but was 20 mm");
    }

    @Test
    void rod_saysWhatItIs() {
        assertThat(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                .hasToString("two-way rod, 300 mm x 6 mm x 9 mm, adjusted at the head");
        assertThat(TrussRod.singleAction(mm(380), mm(5)).adjuster(End.HEEL))
                .hasToString("single-action rod, 380 mm x 5 mm x 5 mm, adjusted at the heel");
        assertThat(Bar.steel(mm(300)).section(mm(6), mm(9))).hasToString("steel bar, 300 mm x 6 mm x 9 mm");
        assertThat(Bar.carbon(inch(12)).section(mm(6), mm(9)).material()).isEqualTo(Bar.Material.CARBON);
        refused(() -> Bar.steel(mm(0)).section(mm(6), mm(9)), "bar length must be more than 0 mm, but was 0 mm");
        refused(
                () -> TrussRod.twoWay(mm(0)).section(mm(6), mm(9)),
                "truss rod length must be more than 0 mm, but was 0 mm");
        refused(
                () -> TrussRod.twoWay(mm(1)).section(mm(0), mm(9)),
                "truss rod width must be more than 0 mm, but was 0 mm");
        refused(
                () -> TrussRod.twoWay(mm(1)).section(mm(6), mm(0)),
                "truss rod height must be more than 0 mm, but was 0 mm");
    }

    @Test
    void strings_takeOneValueForAllOrOneEach() {
        StringSet strings = StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4"));

        assertThat(strings.courses()).isEqualTo(4);
        assertThat(strings.inCourse()).isEqualTo(1);
        assertThat(strings.tensionsN()).isEmpty();
        assertThat(strings.tensions(newton(95)).tensionsN()).containsExactly(95, 95, 95, 95);
        assertThat(strings.diameters(mm(1), mm(0.8), mm(0.6), mm(0.4)).diametersMm())
                .containsExactly(1, 0.8, 0.6, 0.4);
        assertThat(strings.linearDensities(gramPerMetre(3)).linearDensitiesGramPerMetre())
                .containsExactly(3, 3, 3, 3);
        assertThat(strings.pitchesHz()[2]).isEqualTo(220);
        assertThat(strings.doubled().inCourse()).isEqualTo(2);
        assertThat(strings.doubled().tensions(newton(95)))
                .hasToString("4 courses of 2 at 98.00, 146.83, 220.00, 329.63 Hz, 95 N a string");
        assertThat(strings.tensions(newton(90), newton(91), newton(92), newton(93))
                        .toString())
                .endsWith(", 90, 91, 92, 93 N a string");
        assertThat(strings).isEqualTo(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4")));
    }

    @Test
    void strings_refuseWhatCannotBe() {
        StringSet strings = StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"));

        refused(
                StringSet::of,
                "pitches must be a list of 1 to 24 items, each a note with its octave, such as G2, F#3 or Bb1 (A4 is"
                        + " 440 Hz), but was a list of 0 items");
        refused(() -> StringSet.of(hertz(0)), "pitches must be more than 0 Hz, but was 0 Hz");
        refused(
                () -> strings.tensions(newton(90), newton(91)),
                "tensions must be given once for all or once for each of the 3 courses, but was given 2 times");
        refused(() -> strings.tensions(newton(0)), "string tension must be more than 0 N, but was 0 N");
        refused(() -> strings.diameters(mm(-1)), "string diameter must be more than 0 mm, but was -1 mm");
        refused(
                () -> strings.linearDensities(gramPerMetre(0)),
                "linear density must be more than 0 g/m, but was 0 g/m");
    }

    @Test
    void heel_takesTheShaftsThicknessForItsBlocks() {
        Heel heel = Heel.of(mm(78), mm(54));

        assertThat(heel.blockThicknessMm(20)).isEqualTo(20);
        assertThat(heel.blocks(mm(18)).blockThicknessMm(20)).isEqualTo(18);
        assertThat(heel.heightMm()).isEqualTo(78);
        assertThat(heel.widthMm()).isEqualTo(54);
        assertThat(heel).hasToString("heel 78 mm high, 54 mm wide at the top");
        assertThat(heel.blocks(mm(18))).hasToString("heel 78 mm high, 54 mm wide at the top, blocks of 18 mm");
        refused(() -> Heel.of(mm(0), mm(54)), "heel height must be more than 0 mm, but was 0 mm");
        refused(() -> Heel.of(mm(78), mm(0)), "heel width must be more than 0 mm, but was 0 mm");
        refused(() -> heel.blocks(mm(0)), "heel block thickness must be more than 0 mm, but was 0 mm");
    }

    @Test
    void strings_showTheirDiametersAsTheyWereTold() {
        StringSet set = StringSet.of(pitch("G2"), pitch("D3"));

        assertThat(set.diameters(inch(0.01), inch(0.0135)).toString()).endsWith(" Hz, 0.01, 0.0135 in thick");
        assertThat(set.tensions(newton(95)).diameters(mm(0.25)).toString())
                .endsWith(" Hz, 95 N a string, 0.25 mm thick");
        assertThat(set.diameters(inch(0.01), mm(0.3)).toString()).endsWith("0.01, 0.0118 in thick");
        assertThat(set.diameters(inch(0.01))).isEqualTo(set.diameters(mm(0.254)));
        assertThat(set.diameters(inch(0.01), mm(0.3)).text(LengthStyle.MILLIMETRES))
                .endsWith("0.254, 0.3 mm thick");
        assertThat(set.diameters(thou(10), thou(13.5)))
                .hasToString("2 strings at 98.00, 146.83 Hz, 10, 13.5 thou thick");
    }

    /** By hand: 270.2 mm are 10.63780 in, 6 mm 0.23622 in, 9.2 mm 0.36220 in. */
    @Test
    void channel_readsInTheOtherStyleAsAPersonDoes() {
        Channel channel = Channel.forRod(TrussRod.twoWay(mm(267.2)).section(mm(6), mm(9)))
                .startingAt(mm(3))
                .depthClearance(mm(0.2));

        assertThat(channel.text(LengthStyle.DECIMAL_INCHES))
                .isEqualTo("channel 0.1181 in to 10.6378 in from the nut, 0.2362 in wide, 0.3622 in deep");
        assertThat(channel.reinforcement().text(LengthStyle.DECIMAL_INCHES))
                .isEqualTo("two-way rod, 10.5197 in x 0.2362 in x 0.3543 in, adjusted at the head");
        assertThat(channel.text(LengthStyle.MILLIMETRES)).isEqualTo(channel.toString());
    }
}
