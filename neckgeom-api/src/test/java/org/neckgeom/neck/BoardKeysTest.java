package org.neckgeom.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.form.Tree;
import org.neckgeom.stock.Wood;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Table;

/** Board, back, rod, channel, frets and strings by their keys. */
class BoardKeysTest {

    private static final Fingerboard BOARD = Fingerboard.tapered(mm(34), mm(46));
    private static final BackProfile BACK = BackProfile.between(mm(14.5), inch("5/8"));
    private static final TrussRod ROD = TrussRod.twoWay(mm(300)).section(mm(6), mm(9));
    private static final StringSet STRINGS = StringSet.of(pitch("E2"), pitch("Bb2"), pitch("F#3"));

    static Stream<Arguments> nouns() {
        return Stream.of(
                Arguments.of(Scale.TABLE, Scale.of(inch(25.5))),
                Arguments.of(Scale.TABLE, Scale.of(mm(560)).divisions(19)),
                Arguments.of(Fan.TABLE, Fan.between(mm(699), mm(673)).perpendicularAt(7)),
                Arguments.of(Fingerboard.TABLE, BOARD),
                Arguments.of(
                        Fingerboard.TABLE,
                        BOARD.farWidthAtFret(12)
                                .thickness(mm(6), mm(5.5))
                                .radius(mm(250), inch(16))
                                .fretHeight(mm(1.1))
                                .fallAway(thou(12))
                                .wood(Wood.SAPELE)),
                Arguments.of(Volute.TABLE, Volute.of(mm(3), mm(30))),
                Arguments.of(HeelTransition.TABLE, HeelTransition.from(mm(290), mm(25))),
                Arguments.of(BackProfile.TABLE, BACK),
                Arguments.of(
                        BackProfile.TABLE,
                        BACK.atFrets(0, 9)
                                .asymmetric(2.25, 1.9)
                                .volute(Volute.of(mm(3), mm(30)))
                                .heelTransition(HeelTransition.from(mm(290), mm(25)))),
                Arguments.of(BackProfile.TABLE, BACK.flatBacked()),
                Arguments.of(TrussRod.TABLE, ROD.adjuster(End.HEEL)),
                Arguments.of(TrussRod.TABLE, TrussRod.singleAction(mm(430), mm(4.8))),
                Arguments.of(Bar.TABLE, Bar.carbon(inch(14)).section(inch("1/4"), inch("3/8"))),
                Arguments.of(Channel.TABLE, Channel.forRod(ROD)),
                Arguments.of(
                        Channel.TABLE,
                        Channel.forBar(Bar.steel(inch(14)).section(inch("1/4"), inch("3/8")))
                                .endClearance(inch("1/8"))),
                Arguments.of(
                        Channel.TABLE,
                        Channel.forRod(ROD)
                                .startingAt(mm(-3))
                                .endClearance(mm(1))
                                .sideClearance(mm(0.1))
                                .fillet(mm(1))
                                .depthClearance(mm(0.2))
                                .arch(mm(-1.5))
                                .adjusterPocket(mm(20))
                                .section(mm(9), mm(12))),
                Arguments.of(Across.TABLE, Across.of(mm(3), mm(52))),
                Arguments.of(
                        Across.TABLE,
                        Across.of(mm(3), mm(52)).graduated(mm(-0.1)).inPair(mm(2))),
                Arguments.of(StringSet.TABLE, STRINGS),
                Arguments.of(
                        StringSet.TABLE, StringSet.of(hertz(82.5), hertz(1100)).tensions(newton(70), newton(80))),
                Arguments.of(
                        StringSet.TABLE,
                        STRINGS.doubled()
                                .linearDensities(gramPerMetre(4), gramPerMetre(2), gramPerMetre(0.6))
                                .diameters(thou(42), thou(30), mm(0.4))
                                .across(Across.of(mm(3), mm(52)).inPair(mm(2)))));
    }

    @ParameterizedTest
    @MethodSource("nouns")
    <T> void noun_readsBackEqual_inBothSpellings(Table<T> table, T noun) {
        for (Spelling spelling : Spelling.values()) {
            Tree written = table.write(noun, spelling);

            assertThat(table.read(written)).as("%s", written).isEqualTo(noun);
            assertThat(table.write(table.read(written), spelling)).isEqualTo(written);
        }
    }

    @Test
    void whatIsTheSameAtBothPlaces_isWrittenOnce() {
        assertThat(BOARD.thickness(mm(6), mm(6))).isEqualTo(BOARD);
        assertThat(BOARD.radius(mm(400), mm(400))).isEqualTo(BOARD.radius(mm(400)));
        assertThat(STRINGS.tensions(newton(80), newton(80), newton(80))).isEqualTo(STRINGS.tensions(newton(80)));
        assertThat(BACK.asymmetric(2.5, 2.5)).isEqualTo(BACK.full());
        assertThat(BackProfile.TABLE.write(BACK.full(), Spelling.WORDS).plain().toString())
                .contains("shape=full")
                .doesNotContain("curve");
    }

    @Test
    void rulesBetweenKeys_nameTheirPlace() {
        refused(
                TrussRod.TABLE,
                "height",
                Map.of("kind", "single-action", "length", "430 mm", "width", "5 mm", "height", "5 mm"));
        refused(TrussRod.TABLE, "height", Map.of("kind", "two-way", "length", "300 mm", "width", "6 mm"));
        refused(
                Bar.TABLE,
                "adjuster",
                Map.of("material", "steel", "length", "300 mm", "width", "6 mm", "height", "9 mm", "adjuster", "heel"));
        refused(
                Channel.TABLE,
                "bar",
                Map.of(
                        "truss rod",
                        Map.of("kind", "two-way", "length", "300 mm", "width", "6 mm", "height", "9 mm"),
                        "bar",
                        Map.of("material", "steel", "length", "300 mm", "width", "6 mm", "height", "9 mm")));
        refused(
                Channel.TABLE,
                "channel.adjuster pocket",
                Map.of(
                        "bar",
                        Map.of("material", "steel", "length", "300 mm", "width", "6 mm", "height", "9 mm"),
                        "channel",
                        Map.of("adjuster pocket", Map.of("length", "20 mm", "width", "7 mm", "depth", "12 mm"))));
        refused(
                BackProfile.TABLE,
                "curve",
                Map.of(
                        "depths",
                        java.util.List.of(
                                Map.of("fret", "1", "depth", "15 mm"), Map.of("fret", "12", "depth", "16 mm")),
                        "shape",
                        "full",
                        "curve",
                        java.util.List.of("2", "3")));
        refused(
                Fingerboard.TABLE,
                "far radius",
                Map.of(
                        "thickness",
                        "6 mm",
                        "nut width",
                        "34 mm",
                        "far width",
                        Map.of("width", "46 mm"),
                        "far radius",
                        "300 mm"));
        refused(
                Across.TABLE,
                "growth",
                Map.of("edge margin", "3 mm", "span at saddle", "52 mm", "spacing", "graduated"));
        refused(
                StringSet.TABLE,
                "diameters",
                Map.of(
                        "pitches",
                        java.util.List.of("E2"),
                        "across",
                        Map.of("edge margin", "3 mm", "span at saddle", "52 mm")));
        refused(
                StringSet.TABLE,
                "across.in pair",
                Map.of(
                        "pitches",
                        java.util.List.of("E2"),
                        "doubled",
                        "yes",
                        "diameters",
                        "1 mm",
                        "across",
                        Map.of("edge margin", "3 mm", "span at saddle", "52 mm")));
        refused(
                Channel.TABLE,
                "channel.adjuster pocket.width",
                Map.of(
                        "truss rod",
                        Map.of("kind", "two-way", "length", "300 mm", "width", "6 mm", "height", "9 mm"),
                        "channel",
                        Map.of("adjuster pocket", Map.of("length", "20 mm", "width", "5 mm", "depth", "12 mm"))));
    }

    private static void refused(Table<?> table, String path, Map<String, ?> keys) {
        assertThatThrownBy(() -> table.read(Tree.of(keys)))
                .isInstanceOfSatisfying(
                        org.neckgeom.fault.Refusal.class,
                        refusal -> assertThat(refusal.faults().get(0).path()).isEqualTo(path));
    }

    /**
     * By hand: strings of 1 mm, 4 mm in from edges 44 mm apart, lie 35 mm apart at the nut, and 55 mm at the saddle where
     * they reach across 56 mm; so each runs 10 mm aside, and sqrt(699^2 - 10^2) = 698.928466,
     * sqrt(673^2 - 10^2) = 672.925702 along the neck, on the middle 685.927084.
     */
    @Test
    void scaleOfFannedFrets_followsFromTheFan() {
        Neck fanned = Neck.named("fan")
                .fannedFrets(
                        Fan.between(mm(699), mm(673)).perpendicularAt(7),
                        STRINGS.diameters(mm(1)).across(Across.of(mm(4), mm(56))))
                .fingerboard(Fingerboard.tapered(mm(44), mm(58)))
                .back(BackProfile.between(mm(14), mm(16)));

        assertThat(fanned.scale().lengthMm()).isCloseTo(685.927084, within(1e-6));
        assertThat(fanned.scale().divisions()).isEqualTo(12);
        assertThat(fanned.fretsToTheOctave(19).scale().divisions()).isEqualTo(19);
        assertThat(fanned.scale(mm(685.93))).isEqualTo(fanned);
        assertThatThrownBy(() -> fanned.scale(mm(685.9)))
                .hasMessage("scale must be 685.927 mm, that of the fanned frets on the centreline, but was 685.9 mm");
    }

    @Test
    void fannedFrets_areRefusedWhereTheStringsAreNotSpread() {
        Neck.NeedsBack fanned = Neck.named("fan")
                .fannedFrets(Fan.between(mm(699), mm(673)).perpendicularAt(7), STRINGS)
                .fingerboard(Fingerboard.tapered(mm(44), mm(58)));

        assertThatThrownBy(() -> fanned.back(BackProfile.between(mm(14), mm(16))))
                .hasMessage("fanned frets are given, but not the string spacing: give strings.across");
    }
}
