package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.neckgeom.design.Across;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Fan;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.Head;
import org.neckgeom.design.Heel;
import org.neckgeom.design.HeelTurn;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Rod;
import org.neckgeom.design.StringSet;
import org.neckgeom.design.Volute;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.head.HeadPost;
import org.neckgeom.heel.DovetailSeat;
import org.neckgeom.heel.TenonBolts;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.testing.Approved;

/** An invented neck with two strings: every check that needs details, kept and broken, and the parts they bring. */
class NeckDetailsTest {

    private static final Head HEAD =
            Head.pitched(deg(4)).length(mm(150)).width(mm(70)).thickness(mm(14)).backVeneer(mm(1));

    private static final NeckDesign NECK = NeckDesign.named("Two strings")
            .scale(mm(600))
            .frets(20)
            .bodyAtFret(14)
            .fingerboard(Fingerboard.tapered(mm(40), mm(50)).thickness(mm(6)))
            .back(BackProfile.between(mm(15), mm(17)).rounded())
            .channel(Channel.forRod(Rod.twoWay(mm(300)).section(mm(6), mm(8))).startingAt(mm(5)))
            .strings(StringSet.of(pitch("D3"), pitch("A3")).tensions(newton(80)))
            .wood(Wood.BLACK_WALNUT)
            .head(HEAD)
            .heel(Heel.of(mm(70), mm(52)));

    private static final NeckPlan PLAIN = plan(NECK);

    private static NeckPlan plan(NeckDesign design) {
        return NeckPlan.of(design, Blank.of(mm(640), mm(60), mm(25)), Shop.with(Cutter.straight(mm(6))));
    }

    /** Two strings of 1 mm, 30 mm apart at the nut on a board of 40 mm there. */
    private static NeckDesign across(NeckDesign neck, double apartAtSaddle) {
        return neck.strings(neck.strings().diameters(mm(1)).across(Across.of(mm(4.5), mm(apartAtSaddle + 1))));
    }

    private static HeadLayout posts(double along) {
        return HeadLayout.of(HEAD)
                .posts(
                        HeadPost.at(mm(along)).aside(mm(-15)).above(mm(7)),
                        HeadPost.at(mm(along)).aside(mm(15)).above(mm(7)));
    }

    @Test
    void plan_withoutDetailsHasNoPartForThem() {
        assertThat(PLAIN.details()).isEqualTo(NeckDetails.none()).hasToString("details: none told");
        assertThat(titles(PLAIN))
                .contains("Head", "Back and its flats", "Heel")
                .noneMatch(title -> title.startsWith("Strings across"))
                .doesNotContain("Fingerboard", "Blank and cutting list");
    }

    /** At fret 20 the string is 600 (1 - 2^(-20/12)) = 411.0 from the nut and 0.685 of the way to the saddle. */
    @Test
    void strings_areHeldToTheBoard() {
        // board at fret 20: 40 + 10 x 411.0/332.7 = 52.35; spread 30 + 20 x 0.685 = 43.7, and 30 + 60 x 0.685 = 71.1
        assertThat(outcome(plan(across(NECK, 50)), "outer strings over the board"))
                .isEqualTo(Outcome.GOOD);
        PlanCheck outside = check(plan(across(NECK, 90)), "outer strings over the board");
        assertThat(outside.outcome()).isEqualTo(Outcome.STOP);
        // 26.177 - (15.5 + 30 x 0.68502)
        assertThat(outside.found()).startsWith("9.87").endsWith("mm beyond the edge at fret 20");
    }

    @Test
    void head_isHeldToItsTunersWithVeneers() {
        NeckDetails details = NeckDetails.none();

        // 14 and a veneer of 1 make 15
        assertThat(outcome(PLAIN.details(details.tuners(Limits.between(mm(12), mm(15)))), "head fits the tuners"))
                .isEqualTo(Outcome.GOOD);
        assertThat(outcome(PLAIN.details(details.tuners(Limits.between(mm(12), mm(14.9)))), "head fits the tuners"))
                .isEqualTo(Outcome.STOP);
    }

    @Test
    void posts_farOutOnAFlatHeadAskForARetainer() {
        NeckPlan strung = plan(across(NECK, 50));
        NeckPlan near = strung.details(NeckDetails.none().head(posts(40), mm(8)));
        NeckPlan far = strung.details(NeckDetails.none().head(posts(140), mm(8)));

        // atan((8 + 40 sin 4 - 7 cos 4)/(40 cos 4 + 7 sin 4)) = atan(3.807/40.39) = 5.38 deg
        assertThat(check(near, "strings press on the nut").outcome()).isEqualTo(Outcome.GOOD);
        assertThat(check(near, "strings press on the nut").found()).contains("5.38 deg");
        // atan((8 + 140 sin 4 - 7 cos 4)/(140 cos 4 + 7 sin 4)) = atan(10.78/140.15) = 4.40 deg
        assertThat(check(far, "strings press on the nut").outcome()).isEqualTo(Outcome.OPEN);
        assertThat(check(far, "strings press on the nut").found()).contains("4.40 deg");
    }

    @Test
    void blank_isHeldToWhatTheNeckNeeds() {
        NeckDetails spare = NeckDetails.none().spare(mm(5), mm(3), mm(0.5)).sawKerf(mm(2));

        // 150 sin 4 + 14 cos 4 = 24.43 for the head, and 2 x 0.5: 25.43 is more than 25
        assertThat(outcome(PLAIN.details(spare), "blank large enough")).isEqualTo(Outcome.STOP);
        assertThat(outcome(PLAIN.details(NeckDetails.none().spare(mm(5), mm(3), mm(0.2))), "blank large enough"))
                .isEqualTo(Outcome.GOOD);
        // 640 - 5 - (150 cos 4 + 332.72) - 2 = 150.64; two blocks of 70 and two kerfs leave 6.64, of 80 do not come out
        assertThat(check(PLAIN.details(spare.heelBlocks(mm(70))), "all pieces from the blank")
                        .found())
                .startsWith("6.6");
        assertThat(outcome(PLAIN.details(spare.heelBlocks(mm(80))), "all pieces from the blank"))
                .isEqualTo(Outcome.OPEN);
    }

    @Test
    void volute_leavesMoreWoodUnderTheChannel() {
        NeckPlan volute = plan(NECK.back(NECK.back().volute(Volute.of(mm(4), mm(60)))));

        assertThat(check(PLAIN, "wood left under the channel").found()).contains("5 mm from the nut");
        assertThat(check(volute, "wood left under the channel").found()).doesNotContain(" 5 mm from the nut");
    }

    /** Before the nut the head's 10 mm less a channel of 8 stand behind it, however deep the back is. */
    @Test
    void woodLeft_ofAChannelThatBeginsInTheHeadDoesNotAskForADeeperBack() {
        NeckDesign early = NECK.channel(
                Channel.forRod(Rod.twoWay(mm(300)).section(mm(6), mm(8))).startingAt(mm(-8)));
        NeckPlan thinHead = NeckPlan.of(
                early.head(Head.pitched(deg(4)).length(mm(150)).width(mm(70)).thickness(mm(10))),
                Blank.of(mm(640), mm(60), mm(25)).nutAt(mm(200)),
                Shop.with(Cutter.straight(mm(6))));
        NeckPlan thinBack = NeckPlan.of(
                NECK.back(BackProfile.between(mm(10), mm(12)).rounded()),
                Blank.of(mm(640), mm(60), mm(25)),
                Shop.with(Cutter.straight(mm(6))));

        assertThat(check(thinHead, "wood left under the channel").todo())
                .contains("begins nearer the body, a thicker head")
                .doesNotContain("deeper back");
        assertThat(check(thinBack, "wood left under the channel").todo())
                .contains("a back 11.4 mm deep at fret 1 and 13.4 mm at fret 12");
    }

    @Test
    void pieces_saysWhereHeelBlocksComeFrom() {
        NeckDetails spare = NeckDetails.none().spare(mm(10), mm(2), mm(2));

        PlanCheck untold = check(PLAIN.details(spare), "all pieces from the blank");
        assertThat(untold.outcome()).isEqualTo(PlanCheck.Outcome.OPEN);
        assertThat(untold.found()).endsWith("length of a heel block not told");
        assertThat(check(PLAIN.details(spare.heelBlocks(mm(80))), "all pieces from the blank")
                        .allowed())
                .isEqualTo("neck and heel blocks in its length");
    }

    @Test
    void fallAway_bringsAFlatBoardItsPart() {
        NeckDesign slope = NECK.fingerboard(NECK.fingerboard().fallAway(mm(0.3)));

        assertThat(titles(plan(slope))).contains("Fingerboard");
        assertThatThrownBy(() -> plan(slope.frets(14)))
                .hasMessage("fingerboard.fall-away begins at the body joint, fret 14, but there is no fret past it: leave it out,"
                        + " or give more frets");
    }

    @Test
    void details_areEqualWhenEverythingToldIs() {
        NeckDetails one = NeckDetails.none().overstand(mm(3)).heelBlocks(mm(60));

        assertThat(one)
                .isEqualTo(NeckDetails.none().heelBlocks(mm(60)).overstand(mm(3)))
                .hasSameHashCodeAs(NeckDetails.none().heelBlocks(mm(60)).overstand(mm(3)))
                .isNotEqualTo(one.overstand(mm(4)))
                .isNotEqualTo(one.heelBlocks(mm(61)))
                .hasToString("details: heel blocks");
        assertThat(PLAIN.details(one)).isNotEqualTo(PLAIN);
    }

    @Test
    void details_refuseWhatCannotBe() {
        assertThatThrownBy(() -> NeckDetails.none().spare(mm(-1), mm(0), mm(0)))
                .hasMessageContaining("spare at each end")
                .hasMessageContaining("-1 mm");
        assertThatThrownBy(() -> NeckDetails.none().heelBlocks(mm(0))).hasMessageContaining("heel block length");
    }

    private static List<String> titles(NeckPlan plan) {
        return plan.sections().stream().map(PlanSection::title).toList();
    }

    @Test
    void tenon_withoutItsHoles_isRefusedBeforeAPlanAsks() {
        TenonBolts tenon = TenonBolts.tenon(mm(76), mm(20));

        for (TenonBolts unfinished : List.of(tenon, tenon.holes(mm(10), mm(0.8)), tenon.at(mm(30)))) {
            assertThatThrownBy(() -> NeckDetails.none().tenon(unfinished))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("a tenon needs its holes for this, but has none: add .holes(...) and .at(...)");
        }
    }

    private static Outcome outcome(NeckPlan plan, String name) {
        return check(plan, name).outcome();
    }

    private static PlanCheck check(NeckPlan plan, String name) {
        return plan.checks().stream()
                .filter(check -> check.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void details_areHandedBackAndNamed() {
        TenonBolts tenon = TenonBolts.tenon(mm(70), mm(20)).holes(mm(8), mm(5)).at(mm(30));
        DovetailSeat dovetail = DovetailSeat.tapered(deg(3));
        NeckDetails all = NeckDetails.none()
                .head(posts(40), mm(8))
                .tuners(Limits.between(mm(12), mm(15)))
                .overstand(mm(3))
                .spare(mm(25), mm(2), mm(1))
                .sawKerf(mm(1.8))
                .heelBlocks(mm(20))
                .tenon(tenon);

        assertThat(all).hasToString("details: head layout, tuners, spare of the blank, tenon, heel blocks");
        assertThat(NeckDetails.none().dovetail(dovetail)).hasToString("details: dovetail");
        assertThat(NeckDetails.none().dovetail(dovetail).dovetail()).contains(dovetail);
        assertThat(all.tenon()).contains(tenon);
        assertThat(all.overstandMm()).isEqualTo(3);
        assertThat(all.endSpareMm()).isEqualTo(25);
        assertThat(all.edgeSpareMm()).isEqualTo(2);
        assertThat(all.planingMm()).isEqualTo(1);
        assertThat(all.slotMm()).isEqualTo(8);
        assertThat(all.blockLengthMm()).hasValue(20);
        assertThat(NeckDetails.none().hasSpare()).isFalse();
        assertThat(all.hasSpare()).isTrue();
        assertThat(all.hashCode()).isNotEqualTo(NeckDetails.none().hashCode());
    }

    private static String whole(NeckPlan plan) {
        return java.util.stream.Stream.of(plan.checks().stream(), plan.sections().stream(), plan.budgets().stream())
                .flatMap(all -> all)
                .map(Object::toString)
                .collect(java.util.stream.Collectors.joining("\n\n"));
    }

    @Test
    void texts_ofDetailsAreTheApprovedOnes() {
        NeckDesign whole = across(NECK, 50)
                .fingerboard(NECK.fingerboard().fretHeight(mm(1)).fallAway(mm(0.3)))
                .back(NECK.back().volute(Volute.of(mm(2), mm(30))).heelTurn(HeelTurn.from(mm(310), mm(25))));
        NeckDetails joined = NeckDetails.none()
                .head(posts(140), mm(8))
                .tuners(Limits.between(mm(12), mm(14.9)))
                .overstand(mm(3))
                .spare(mm(5), mm(2), mm(1))
                .sawKerf(mm(1.8))
                .heelBlocks(mm(100))
                .tenon(TenonBolts.tenon(mm(60), mm(20))
                        .holes(mm(8), mm(6))
                        .at(mm(20))
                        .at(mm(40)));
        NeckDesign fanned = across(
                NeckDesign.named("Two strings")
                        .fannedFrets(Fan.between(mm(610), mm(590)).squareAt(7))
                        .frets(20)
                        .bodyAtFret(14)
                        .fingerboard(NECK.fingerboard())
                        .back(NECK.back())
                        .channel(NECK.channel().orElseThrow())
                        .strings(NECK.strings())
                        .wood(NECK.wood())
                        .head(HEAD)
                        .heel(NECK.heel().orElseThrow()),
                110);
        Blank blank = Blank.of(mm(900), mm(60), mm(25)).nutAt(mm(170));

        Approved.hold(
                "plan",
                Map.of(
                        "details.txt",
                        whole(plan(whole).details(joined)),
                        "details-fanned.txt",
                        whole(NeckPlan.of(fanned, blank, Shop.with(Cutter.straight(mm(6))))
                                .details(NeckDetails.none()
                                        .spare(mm(10), mm(2), mm(1))
                                        .sawKerf(mm(1.8))
                                        .heelBlocks(mm(60))))));
    }
}
