package org.neckgeom.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Tree;
import org.neckgeom.table.Spelling;
import org.neckgeom.table.Table;

/** Head, heel, neck set and their parts by their keys: written and read back, and what cannot be is refused with its path. */
class HeadAndHeelKeysTest {

    private static final Dovetail DOVETAIL =
            Dovetail.tapered(deg(3)).length(mm(15)).widths(mm(36), mm(28)).height(mm(66));
    private static final Tenon TENON =
            Tenon.of(mm(76), mm(20)).holes(mm(10), mm(0.8)).at(mm(28.5), mm(57.5));
    private static final Dome DOME = Dome.of(mm(9000)).pole(mm(240), mm(20));

    static Stream<Arguments> nouns() {
        Head head = Head.angled(deg(14))
                .length(mm(190))
                .width(inch(3.3))
                .thickness(mm(12))
                .swung(deg(-2))
                .veneer(mm(2), mm(5))
                .backVeneer(mm(0.8))
                .tapered(mm(64), mm(84))
                .tuners(mm(13), mm(17))
                .posts(
                        TunerPost.at(mm(45)).aside(mm(-21)).above(mm(8)),
                        TunerPost.at(mm(90)).aside(mm(21)).above(mm(7.5)))
                .scarfed(ScarfCut.inTheShaft().kerf(mm(2)).cleaning(mm(0.4)));
        NeckSet set = NeckSet.saddle(mm(12.5)).atNut(mm(0.5)).action(mm(2.4));
        return Stream.of(
                Arguments.of(Head.TABLE, head),
                Arguments.of(Head.TABLE, Head.flat()),
                Arguments.of(Head.TABLE, head.posts(TunerPost.at(mm(45)), TunerPost.at(mm(90)))),
                Arguments.of(Heel.TABLE, Heel.of(mm(88), mm(58)).blocks(mm(20)).blockLength(inch(1.5))),
                Arguments.of(Heel.TABLE, Heel.of(mm(88), mm(58)).capWidth(mm(20))),
                Arguments.of(Heel.TABLE, Heel.of(mm(88), mm(58)).joint(DOVETAIL)),
                Arguments.of(Heel.TABLE, Heel.of(mm(88), mm(58)).joint(Dovetail.tapered(deg(3)))),
                Arguments.of(Heel.TABLE, Heel.of(mm(88), mm(58)).joint(TENON)),
                Arguments.of(NeckSet.TABLE, set),
                Arguments.of(
                        NeckSet.TABLE, set.overstand(mm(1)).compensation(mm(3)).dome(DOME)),
                Arguments.of(NeckSet.TABLE, set.fretPlane(mm(-2))));
    }

    @ParameterizedTest
    @MethodSource("nouns")
    <T> void table_readsBackWhatItWrites(Table<T> table, T noun) {
        for (Spelling spelling : Spelling.values()) {
            Tree written = table.write(noun, spelling);

            assertThat(table.read(written)).as(spelling + " " + written).isEqualTo(noun);
            assertThat(table.write(table.read(written), spelling).plain()).isEqualTo(written.plain());
        }
    }

    private static Map<String, Object> heel(Object... more) {
        Map<String, Object> heel = new LinkedHashMap<>(Map.of("height", "78 mm", "width", "54 mm"));
        for (int i = 0; i < more.length; i += 2) {
            heel.put((String) more[i], more[i + 1]);
        }
        return heel;
    }

    private static Map<String, Object> dovetail(String height) {
        return Map.of(
                "taper",
                "3 deg",
                "length",
                "15 mm",
                "width at end",
                "36 mm",
                "width at shoulder",
                "28 mm",
                "height",
                height);
    }

    private static Map<String, Object> tenon(String height) {
        return Map.of(
                "height",
                height,
                "length",
                "20 mm",
                "hole diameter",
                "10 mm",
                "set back",
                "1 mm",
                "holes at",
                List.of("30 mm"));
    }

    private static void refused(ThrowingCallable call, String path, String sentence) {
        assertThatThrownBy(call).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal).hasMessage(sentence);
            assertThat(refusal.faults()).hasSize(1);
            assertThat(refusal.faults().get(0).path()).isEqualTo(path);
        });
    }

    @Test
    void capWidth_isThatOfTheTopUnlessGiven() {
        Heel straight = Heel.of(mm(78), mm(54));

        assertThat(straight.capWidthMm()).isEqualTo(54);
        assertThat(straight.capWidth(mm(20)).capWidthMm()).isEqualTo(20);
        assertThat(straight.capWidth(mm(20))).isNotEqualTo(straight);
        assertThat(straight).hasToString("heel 78 mm high, 54 mm wide at the top");
        assertThat(straight.capWidth(mm(20))).hasToString("heel 78 mm high, 54 mm wide at the top, 20 mm at the cap");
    }

    @Test
    void joint_deeperThanItsHeel_isRefusedAtItsHeight() {
        refused(
                () -> Heel.TABLE.read(Tree.of(heel("dovetail", dovetail("79 mm")))),
                "dovetail.height",
                "dovetail.height must be 78 mm or less, the heel's own height, but was 79 mm");
        refused(
                () -> Heel.TABLE.read(Tree.of(heel("tenon", tenon("79 mm")))),
                "tenon.height",
                "tenon.height must be 78 mm or less, the heel's own height, but was 79 mm");
        refused(
                () -> Heel.of(mm(60), mm(54)).joint(DOVETAIL),
                "dovetail.height",
                "dovetail.height must be 60 mm or less, the heel's own height, but was 66 mm");
        assertThat(Heel.of(mm(66), mm(54)).joint(DOVETAIL).joint()).isEqualTo(DOVETAIL);
        refused(
                () -> Heel.of(mm(78), mm(54)).joint(TENON.width(mm(54.5))),
                "tenon.width",
                "tenon.width must be 54 mm or less, the heel's own width, but was 54.5 mm");
        assertThat(Heel.of(mm(78), mm(54)).joint(TENON.width(mm(54))).tenon()).contains(TENON.width(mm(54)));
    }

    @Test
    void slots_thatMeetOrRunOutOfTheHead_areRefused() {
        Head head = Head.flat().length(mm(180));

        assertThat(head.slots(mm(50), mm(100)).slotWidth(mm(12), mm(18)).slotFromMm())
                .isEqualTo(50);
        assertThat(head.hasSlots()).isFalse();
        refused(
                () -> head.slots(mm(80), mm(100)).slotWidth(mm(12), mm(18)),
                "slot length",
                "slot length must be less than the 100 mm up to the tip, but was 100 mm");
        refused(
                () -> head.slots(mm(50), mm(10)).slotWidth(mm(12), mm(18)),
                "slot width",
                "slot width must be 10 mm or less, the slot's length, but was 12 mm");
        refused(
                () -> head.slots(mm(50), mm(100)).slotWidth(mm(12), mm(6)),
                "slot aside",
                "slot aside must be more than 6 mm, where both slots meet, but was 6 mm");
        refused(
                () -> head.width(mm(60)).slots(mm(50), mm(100)).slotWidth(mm(12), mm(24)),
                "slot aside",
                "slot aside must be less than 24 mm, where the slot leaves the head, but was 24 mm");
    }

    @Test
    void joint_isOne() {
        refused(
                () -> Heel.TABLE.read(Tree.of(heel("dovetail", dovetail("66 mm"), "tenon", tenon("76 mm")))),
                "tenon",
                "tenon is given, and dovetail too; keep one of them");
        Heel bolted = Heel.of(mm(78), mm(54)).joint(DOVETAIL).joint(TENON);

        assertThat(bolted.joint()).isEqualTo(TENON);
        assertThat(bolted.dovetail()).isEmpty();
        assertThat(bolted.joint(new HeelJoint.Flat())).isEqualTo(Heel.of(mm(78), mm(54)));
        assertThat(Heel.of(mm(78), mm(54)).joint())
                .isEqualTo(new HeelJoint.Flat())
                .hasToString("flat face");
    }

    @Test
    void dovetail_hasItsSizeWholeOrNotAtAll() {
        refused(
                () -> Dovetail.TABLE.read(Tree.of(Map.of("taper", "3 deg", "length", "15 mm", "height", "60 mm"))),
                "width at end",
                "width at end, width at shoulder and height must be given together, but width at end and width at shoulder are"
                        + " missing");
        refused(
                () -> Dovetail.tapered(deg(3)).widths(mm(36), mm(28)).height(mm(66)),
                "length",
                "the dovetail's widths are given, but not its length; give both");
    }

    @Test
    void scarf_needsAPitch() {
        refused(
                () -> Head.TABLE.read(Tree.of(Map.of(
                        "length",
                        "180 mm",
                        "width",
                        "75 mm",
                        "thickness",
                        "15 mm",
                        "scarf",
                        Map.of("joint", "in the head")))),
                "scarf",
                "a flat head has no scarf; give the head angle, or leave the scarf out");
        refused(
                () -> Head.angled(deg(0.9)).scarfed(ScarfCut.inTheHead()),
                "angle",
                "angle must be 1 deg or more for a scarf, but was 0.9 deg");
    }

    @Test
    void posts_lieOnTheirOwnHead() {
        refused(
                () -> Head.flat().posts(TunerPost.at(mm(60)), TunerPost.at(mm(180))),
                "posts.along",
                "posts.along must be less than the head's length of 180 mm, but was 180 mm");
        refused(
                () -> Head.flat().posts(TunerPost.at(mm(60))).length(mm(50)),
                "posts.along",
                "posts.along must be less than the head's length of 50 mm, but was 60 mm");
        refused(
                () -> Posts.TABLE.read(Tree.of(
                        Map.of("along", List.of("40 mm", "60 mm", "80 mm"), "aside", List.of("-5 mm", "5 mm")))),
                "aside",
                "aside must be one for all or one for each of the 3 posts, but was 2");
        assertThat(Posts.TABLE
                        .read(Tree.of(Map.of("along", List.of("40 mm", "60 mm"), "string over face", "8 mm")))
                        .each())
                .containsExactly(
                        TunerPost.at(mm(40)).above(mm(8)), TunerPost.at(mm(60)).above(mm(8)));
    }

    @Test
    void tuners_takeTheLeastFirst() {
        refused(
                () -> Head.flat().tuners(mm(17), mm(13)),
                "tuners take",
                "tuners take must be the least thickness, then a greater one, but was 17 mm, 13 mm");
        assertThat(Head.flat().tuners()).isEmpty();
        assertThat(Head.flat().tuners(mm(13), mm(17)).tuners().orElseThrow().libraryUpper())
                .isEqualTo(17);
    }

    @Test
    void neckSet_hasItsFretPlaneOrItsOverstand() {
        NeckSet set = NeckSet.saddle(mm(15)).atNut(mm(0.4)).action(mm(2));

        refused(
                () -> NeckSet.TABLE.read(Tree.of(Map.of(
                        "fret plane",
                        "7 mm",
                        "overstand",
                        "0 mm",
                        "saddle",
                        "15 mm",
                        "at nut",
                        "0.4 mm",
                        "action",
                        "2 mm"))),
                "overstand",
                "overstand is given, and fret plane too; keep one of them");
        assertThat(set.fretPlane(mm(7)).overstand(mm(1))).isEqualTo(set.overstand(mm(1)));
        assertThat(set.overstand(mm(1)).fretPlane(mm(7))).isEqualTo(set.fretPlane(mm(7)));
        refused(
                () -> Dome.of(mm(240)).pole(mm(240), mm(20)),
                "radius",
                "radius must be more than 240 mm, the distance from the pole, but was 240 mm");
    }

    @Test
    void unfinished_saysWhatItLacks() {
        assertThat(Tenon.of(mm(76), mm(20))).hasToString("Tenon, holes not given yet");
        assertThat(Tenon.of(mm(76), mm(20)).holes(mm(8), mm(1)))
                .hasToString("Tenon, depths of its holes not given yet");
        assertThat(Dovetail.tapered(deg(3)).widths(mm(36), mm(28))).hasToString("Dovetail, height not given yet");
        assertThat(Dome.of(mm(9000))).hasToString("Dome, place of its pole not given yet");
        assertThat(NeckSet.saddle(mm(15))).hasToString("Neck set, string at the nut not given yet");
        assertThat(NeckSet.saddle(mm(15)).atNut(mm(0.4))).hasToString("Neck set, action not given yet");
    }

    /** A slip in a hole's diameter would be a hole without a surface. */
    @Test
    void tenon_refusesAHoleThatNoToolDrills() {
        Tenon.NeedsHoles tenon = Tenon.of(mm(76), mm(20));

        assertThat(tenon.holes(mm(0.1), mm(1)).at(mm(28)).holeDiameter()).isEqualTo(mm(0.1));
        refused(
                () -> tenon.holes(mm(0.09), mm(1)).at(mm(28)),
                "hole diameter",
                "hole diameter must be 0.1 mm or more, but was 0.09 mm");
    }
}
