package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.pitch;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.HeelBlocks;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Fan;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.PlateScrews;
import org.neckgeom.neck.Posts;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.Tenon;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.neck.Volute;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Shop;
import org.neckgeom.solid.HeadSolid;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.testing.Approved;

/** An invented neck with two strings: each check of its shape kept and broken, and the parts of the plan that more of it brings. */
class ShapeOfThePlanTest {

    private static final Head HEAD =
            Head.angled(deg(4)).length(mm(150)).width(mm(70)).thickness(mm(14)).backVeneer(mm(1));

    private static final Neck NECK = Neck.named("Two strings")
            .scale(mm(600))
            .fingerboard(Fingerboard.tapered(mm(40), mm(50)).thickness(mm(6)))
            .back(BackProfile.between(mm(15), mm(17)).rounded())
            .frets(20)
            .bodyAtFret(14)
            .channel(Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(8)))
                    .startingAt(mm(5)))
            .strings(StringSet.of(pitch("D3"), pitch("A3")).tensions(newton(80)))
            .wood(Wood.BLACK_WALNUT)
            .head(HEAD)
            .heel(Heel.of(mm(70), mm(52)));

    private static final Blank BLANK = Blank.ofLength(mm(640)).section(mm(60), mm(25));
    private static final Job PLAIN = plan(BLANK);

    private static Job plan(Blank blank) {
        return Job.of(NECK, blank, Shop.with(Cutter.straight(mm(6))));
    }

    private static Job plan(Neck design) {
        return Job.of(design, Blank.ofLength(mm(640)).section(mm(60), mm(25)), Shop.with(Cutter.straight(mm(6))));
    }

    /** Two strings of 1 mm, 30 mm apart at the nut on a board of 40 mm there. */
    private static Neck across(Neck neck, double apartAtSaddle) {
        return neck.strings(
                neck.strings().orElseThrow().diameters(mm(1)).across(Across.of(mm(4.5), mm(apartAtSaddle + 1))));
    }

    private static Head posts(double along) {
        return HEAD.posts(
                TunerPost.at(mm(along)).aside(mm(-15)).above(mm(7)),
                TunerPost.at(mm(along)).aside(mm(15)).above(mm(7)));
    }

    private static Job plain(Neck design) {
        return Job.of(design, PLAIN.blank(), PLAIN.shop());
    }

    private static Job blocks(double length, Blank blank) {
        return Job.of(NECK.heel(NECK.heel().orElseThrow().blockLength(mm(length))), blank, PLAIN.shop());
    }

    @Test
    void plan_hasNoPartForWhatIsNotGiven() {
        assertThat(titles(PLAIN))
                .contains("Head and tuner posts", "Back profile and facets", "Heel and body joint")
                .noneMatch(title -> title.startsWith("Strings across"))
                .doesNotContain("Fingerboard", "Neck blank and cutting list");
    }

    /** At fret 20 the string is 600 (1 - 2^(-20/12)) = 411.0 from the nut and 0.685 of the way to the saddle. */
    @Test
    void strings_areHeldToTheBoard() {
        // board at fret 20: 40 + 10 x 411.0/332.7 = 52.35; spread 30 + 20 x 0.685 = 43.7, and 30 + 60 x 0.685 = 71.1
        assertThat(outcome(plan(across(NECK, 50)), "outer strings over the board"))
                .isEqualTo(Outcome.OK);
        PlanCheck outside = check(plan(across(NECK, 90)), "outer strings over the board");
        assertThat(outside.outcome()).isEqualTo(Outcome.STOP);
        // 26.177 - (15.5 + 30 x 0.68502)
        assertThat(outside.found()).startsWith("9.87").endsWith("mm beyond the edge at fret 20");
    }

    @Test
    void head_isHeldToItsTunersWithVeneers() {
        // 14 and a veneer of 1 make 15
        assertThat(outcome(plain(NECK.head(HEAD.tuners(mm(12), mm(15)))), "head fits the tuners"))
                .isEqualTo(Outcome.OK);
        assertThat(outcome(plain(NECK.head(HEAD.tuners(mm(12), mm(14.9)))), "head fits the tuners"))
                .isEqualTo(Outcome.STOP);
    }

    @Test
    void posts_farOutOnAFlatHeadAskForARetainer() {
        // The nut's slots lie 8 over the glue face: a board of 6 and frets of 2.
        Neck strung = across(NECK, 50).fingerboard(NECK.fingerboard().fretHeight(mm(2)));
        Job near = plain(strung.head(posts(40)));
        Job far = plain(strung.head(posts(140)));

        // To the middle of a string 1 thick: atan((8.5 + 40 sin 4 - 7 cos 4)/(40 cos 4 + 7 sin 4)) = atan(4.307/40.39)
        // = 6.09 deg
        assertThat(check(near, "strings press on the nut").outcome()).isEqualTo(Outcome.OK);
        assertThat(check(near, "strings press on the nut").found()).contains("6.09 deg");
        // atan((8.5 + 140 sin 4 - 7 cos 4)/(140 cos 4 + 7 sin 4)) = atan(11.28/140.15) = 4.60 deg
        assertThat(check(far, "strings press on the nut").outcome()).isEqualTo(Outcome.OPEN);
        assertThat(check(far, "strings press on the nut").found()).contains("4.60 deg");
    }

    @Test
    void blank_isHeldToWhatTheNeckNeeds() {
        Blank spare =
                BLANK.endAllowance(mm(5)).edgeAllowance(mm(3)).planing(mm(0.5)).sawKerf(mm(2));

        // 150 sin 4 + 14 cos 4 = 24.43 for the head, and 2 x 0.5: 25.43 is more than 25
        assertThat(outcome(plan(spare), "blank large enough")).isEqualTo(Outcome.STOP);
        assertThat(outcome(plan(spare.planing(mm(0.2))), "blank large enough")).isEqualTo(Outcome.OK);
        // 640 - 5 - (150 cos 4 + 332.72) - 2 = 150.64; two blocks of 70 and two kerfs leave 6.64, of 80 do not come out
        assertThat(check(blocks(70, spare), "all pieces from the blank").found())
                .startsWith("6.6");
        assertThat(outcome(blocks(80, spare), "all pieces from the blank")).isEqualTo(Outcome.OPEN);
    }

    /** The heel is 52 mm wide at its top, in the shaft's own wood, the board 50 mm at the joint: 52 and 2 x 3 are 58. */
    @Test
    void blank_isAsWideAsTheHeel() {
        Blank narrow = Blank.ofLength(mm(640)).section(mm(57.9), mm(26)).edgeAllowance(mm(3));
        Blank enough = Blank.ofLength(mm(640)).section(mm(58), mm(26)).edgeAllowance(mm(3));

        assertThat(outcome(plan(narrow), "blank large enough")).isEqualTo(Outcome.STOP);
        assertThat(outcome(plan(enough), "blank large enough")).isEqualTo(Outcome.OK);
    }

    /**
     * Screws of 4.2 mm, 30 mm apart across, at 12 and 57 mm past the joint, beside a channel that ends 70 mm past it: 15 less 2.1 less
     * half of 6 mm leave 9.9 mm, less half of a pocket of 24 mm 0.9 mm. A pocket 6 mm long lies beside no screw.
     */
    @Test
    void screws_areClearOfThePocketToo() {
        Neck solid = NECK.head(Head.flat().length(mm(150)).width(mm(70)).thickness(mm(14)))
                .heel(Heel.of(mm(18), mm(52))
                        .joint(PlateScrews.in(mm(76), mm(28.5))
                                .rows(mm(12), mm(45))
                                .across(mm(30))));
        Channel channel = Channel.forRod(
                        TrussRod.twoWay(mm(397.72)).section(mm(6), mm(8)).adjuster(End.HEEL))
                .startingAt(mm(5));

        assertThat(check(plan(solid.channel(channel)), "screws clear of the channel")
                        .found())
                .startsWith("9.9 mm");
        assertThat(check(
                                plan(solid.channel(
                                        channel.adjusterPocket(mm(20)).section(mm(24), mm(9)))),
                                "screws clear of the channel")
                        .found())
                .startsWith("0.9 mm");
        assertThat(check(
                                plan(solid.channel(channel.adjusterPocket(mm(6)).section(mm(24), mm(9)))),
                                "screws clear of the channel")
                        .found())
                .startsWith("9.9 mm");
    }

    @Test
    void volute_leavesMoreWoodUnderTheChannel() {
        Job volute = plan(NECK.back(NECK.back().volute(Volute.of(mm(4), mm(60)))));

        assertThat(check(PLAIN, "wood under the channel").found()).contains("5 mm from the nut");
        assertThat(check(volute, "wood under the channel").found()).doesNotContain(" 5 mm from the nut");
    }

    /** Before the nut the head's 10 mm less a channel of 8 stand behind it, however deep the back is. */
    @Test
    void woodLeft_ofAChannelThatBeginsInTheHeadDoesNotAskForADeeperBack() {
        Neck early = NECK.channel(
                Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(8))).startingAt(mm(-8)));
        Job thinHead = Job.of(
                early.head(Head.angled(deg(4)).length(mm(150)).width(mm(70)).thickness(mm(10))),
                Blank.ofLength(mm(640)).section(mm(60), mm(25)).nutAt(mm(200)),
                Shop.with(Cutter.straight(mm(6))));
        Job thinBack = Job.of(
                NECK.back(BackProfile.between(mm(10), mm(12)).rounded()),
                Blank.ofLength(mm(640)).section(mm(60), mm(25)),
                Shop.with(Cutter.straight(mm(6))));

        assertThat(check(thinHead, "wood under the channel").todo())
                .contains("begins nearer the body, a thicker head")
                .doesNotContain("deeper back");
        assertThat(check(thinBack, "wood under the channel").todo())
                .contains("a back 11.4 mm deep at fret 1 and 13.4 mm at fret 12");
    }

    @Test
    void pieces_saysWhereHeelBlocksComeFrom() {
        Blank spare = BLANK.endAllowance(mm(10)).edgeAllowance(mm(2)).planing(mm(2));

        PlanCheck untold = check(plan(spare), "all pieces from the blank");
        assertThat(untold.outcome()).isEqualTo(Outcome.OPEN);
        assertThat(untold.found()).endsWith("length of a heel block not given");
        assertThat(check(blocks(80, spare), "all pieces from the blank").allowed())
                .isEqualTo("neck and heel blocks in its length");
    }

    @Test
    void fallAway_bringsAFlatBoardItsPart() {
        Neck slope = NECK.fingerboard(NECK.fingerboard().fallAway(mm(0.3)));

        assertThat(titles(plan(slope))).contains("Fingerboard");
        assertThatThrownBy(() -> plan(slope.frets(14)))
                .hasMessage(
                        "fingerboard.fall-away begins at the body joint, fret 14, but there is no fret past it: leave it"
                                + " out, or give more frets");
    }

    private static List<String> titles(Job plan) {
        return plan.plan().sections().stream().map(PlanSection::title).toList();
    }

    private static Outcome outcome(Job plan, String name) {
        return check(plan, name).outcome();
    }

    private static PlanCheck check(Job plan, String name) {
        return plan.plan().checks().stream()
                .filter(check -> check.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static String whole(Job plan) {
        return java.util.stream.Stream.of(
                        plan.plan().checks().stream(), plan.plan().sections().stream(), plan.plan().budgets().stream())
                .flatMap(all -> all)
                .map(Object::toString)
                .collect(java.util.stream.Collectors.joining("\n\n"));
    }

    private static final Head STEEP = HEAD.angle(deg(13)).length(mm(190));

    private static Job fannedScarf(Head head, double length) {
        return Job.of(
                across(NECK, 110)
                        .scale(mm(598.665))
                        .fannedFrets(Fan.between(mm(610), mm(590)).perpendicularAt(7))
                        .head(head.scarfed(ScarfCut.inTheHead().kerf(mm(2)).cleaning(mm(0.3)))),
                Blank.ofLength(mm(length)).section(mm(60), mm(25)).nutAt(mm(210)),
                Shop.with(Cutter.straight(mm(6))));
    }

    @Test
    void scarf_behindASlantedNut_takesTwoCutsAndTheBoardForThem() {
        Job job = fannedScarf(STEEP, 900);
        ScarfJoint joint = job.plan().scarf().orElseThrow();
        double slant = FannedFrets.of(job.neck()).orElseThrow().slant(0).libraryValue();
        // The head is as wide as the blank or wider: the blank is kept whole, and wings make up the rest.
        double kept = Math.min(60, STEEP.widthMm());
        ScarfBoard byHand = joint.keeping(mm(kept)).board(mm(job.neck().bodyJointMm()), mm(STEEP.lengthMm()));

        ScarfBoard board = job.plan().scarfBoard().orElseThrow();
        double least = board.length().libraryValue();

        assertThat(joint.scarf().nutSlant().libraryValue()).isEqualTo(slant).isNotZero();
        assertThat(least).isEqualTo(byHand.length().libraryValue());
        assertThat(board.shaftCut().bassFace().libraryValue()
                        - board.shaftCut().trebleFace().libraryValue())
                .as("marks at the edges of a blank 60 wide")
                .isCloseTo(60 * Math.tan(slant), within(1e-9));
        assertThat(job.plan().section(SectionCode.SCARF).orElseThrow().toString())
                .contains("two saw cuts of opposite hand");
        assertThat(check(job, "blank long enough for shaft and head").toString())
                .contains("Two cuts of opposite hand, each at its own marks.");
        assertThat(outcome(fannedScarf(STEEP, least + 0.001), "blank long enough for shaft and head"))
                .isEqualTo(Outcome.OK);
        assertThat(outcome(fannedScarf(STEEP, least - 0.001), "blank long enough for shaft and head"))
                .isEqualTo(Outcome.STOP);
    }

    /**
     * By hand: a heel of 78 in line with the body's top, from a blank of 20 planed 1 off each face: 18 of shaft and 4 blocks of 18, 90 in
     * all, of which 12 come off. Unplaned it is 20 and 3 of 20: 80. Blocks of 20 do not come from a blank that is planed to 18.
     */
    @Test
    void heelBlocks_areThoseOfThePlanedBlank() {
        Neck neck = SampleNecks.octaveMandolin().heel(Heel.of(mm(78), mm(56)).blockLength(mm(60)));
        Blank blank = SampleBench.octaveBlank().nutAt(mm(200));

        assertThat(stack(neck, blank)).contains("3 blocks of 20 mm", "off the last block");
        HeelBlocks planed = Job.of(neck, blank.planing(mm(1)), SampleBench.metricShop())
                .stages()
                .shape()
                .heelBlocks()
                .orElseThrow();
        assertThat(planed.count()).isEqualTo(4);
        assertThat(planed.trim().libraryValue())
                .isCloseTo(5 * 18 - planed.height().libraryValue(), within(1e-9));
        assertThat(stack(neck, blank.planing(mm(1)))).contains("4 blocks of 18 mm");
        assertThat(pieces(neck, blank.planing(mm(1)))).contains("heel block");
        assertThat(pieces(neck.heel(neck.heel().orElseThrow().blocks(mm(20))), blank.planing(mm(1))))
                .doesNotContain("heel block ");
        assertThatThrownBy(() -> Job.of(neck, blank.planing(mm(10)), SampleBench.metricShop()))
                .hasMessage("blank.planing must be less than 10 mm, half the blank's thickness, but was 10 mm");
    }

    private static String stack(Neck neck, Blank blank) {
        return rows(neck, blank, SectionCode.HEEL);
    }

    private static String pieces(Neck neck, Blank blank) {
        return rows(neck, blank, SectionCode.BLANK_AND_CUTTING_LIST);
    }

    private static String rows(Neck neck, Blank blank, SectionCode code) {
        return Job.of(neck, blank, SampleBench.metricShop())
                .plan()
                .section(code)
                .orElseThrow()
                .rows()
                .toString();
    }

    @Test
    void scarf_ofAHeadSwungAside_takesTheBoardThatReachesItsFarCorner() {
        ScarfBoard straight = fannedScarf(STEEP, 900).plan().scarfBoard().orElseThrow();
        Head swung = STEEP.swung(deg(6));
        ScarfBoard board = fannedScarf(swung, 900).plan().scarfBoard().orElseThrow();
        HeadSolid there = NeckSolid.of(fannedScarf(swung, 900).neck()).head().orElseThrow();

        assertThat(board.length().libraryValue() - straight.length().libraryValue())
                .isCloseTo(there.reach().libraryValue() - STEEP.lengthMm(), within(1e-9))
                .isPositive();
    }

    @Test
    void stops_ofAScarfSawnBehindASlantedNut_areSetToTheEdgeThatReachesFarther() {
        Job sawn = fannedScarf(STEEP, 900)
                .order(fannedScarf(STEEP, 900).plan().work().done("cut scarf"));
        double slant = sawn.plan().scarf().orElseThrow().scarf().nutSlant().libraryValue();
        // The slope runs out in the back 25 / tan(angle) before the nut, at one edge 30 tan(slant) farther.
        double thinEnd = -25 / Math.tan(STEEP.angleRad()) - 30 * Math.abs(Math.tan(slant));

        assertThat(sawn.plan().stops().toString())
                .isEqualTo(fannedScarf(STEEP, 900)
                        .plan()
                        .stops()
                        .headEndAt(mm(thinEnd))
                        .toString());
    }

    @Test
    void texts_ofDetailsAreTheApprovedOnes() {
        Neck whole = across(NECK, 50)
                .fingerboard(NECK.fingerboard().fretHeight(mm(1)).fallAway(mm(0.3)))
                .back(NECK.back().volute(Volute.of(mm(2), mm(30))).heelTransition(HeelTransition.from(mm(310), mm(25))))
                .head(posts(140).tuners(mm(12), mm(14.9)))
                .heel(NECK.heel()
                        .orElseThrow()
                        .blockLength(mm(100))
                        .joint(Tenon.of(mm(60), mm(20)).holes(mm(8), mm(6)).at(mm(20), mm(40))));
        Blank spare =
                BLANK.endAllowance(mm(5)).edgeAllowance(mm(2)).planing(mm(1)).sawKerf(mm(1.8));
        Neck fanned = across(NECK, 110)
                .scale(mm(598.665))
                .fannedFrets(Fan.between(mm(610), mm(590)).perpendicularAt(7))
                .heel(NECK.heel().orElseThrow().blockLength(mm(60)));
        Blank blank = Blank.ofLength(mm(900))
                .section(mm(60), mm(25))
                .nutAt(mm(170))
                .endAllowance(mm(10))
                .edgeAllowance(mm(2))
                .planing(mm(1))
                .sawKerf(mm(1.8));

        Approved.hold(
                "plan",
                Map.of(
                        "details.txt",
                        whole(Job.of(whole, spare, PLAIN.shop())),
                        "details-fanned.txt",
                        whole(Job.of(fanned, blank, Shop.with(Cutter.straight(mm(6)))))));
    }

    /** A channel 8 deep that ends 5 before a joint whose hole of 8 lies 10 behind the shoulder and 20 down, then over it. */
    @Test
    void channel_isHeldToTheHolesOfTheTenon() {
        Neck bolted = NECK.heel(NECK.heel()
                .orElseThrow()
                .joint(Tenon.of(mm(60), mm(20)).holes(mm(8), mm(6)).at(mm(20), mm(40))));
        double joint = bolted.bodyJointMm();
        Neck far = bolted.channel(Channel.forRod(TrussRod.twoWay(mm(joint + 7)).section(mm(6), mm(17)))
                .startingAt(mm(5)));

        PlanCheck clear = check(
                plain(bolted.channel(bolted.channel().orElseThrow().cutTo(mm(joint - 5)))),
                "channel clear of the heel's joint");
        assertThat(clear.outcome()).isEqualTo(Outcome.OK);
        // hypot(15, 12) - 4
        assertThat(clear.found()).isEqualTo("15.2 mm to a hole of the tenon");
        PlanCheck met = check(plain(far), "channel clear of the heel's joint");
        assertThat(met.outcome()).isEqualTo(Outcome.STOP);
        // 20 - 17 - 4
        assertThat(met.found()).isEqualTo("the channel runs 1.0 mm into a hole of the tenon");
        assertThat(met.todo()).isEqualTo("End the channel sooner, or drill the holes lower.");
    }

    /** Two posts 30 mm apart: washers of 29.9 leave 0.1, of 30.04 overlap by less than one decimal shows. */
    @Test
    void clearances_showTheirSignHoweverSmall() {
        Neck strung = across(NECK, 50).fingerboard(NECK.fingerboard().fretHeight(mm(2)));

        assertThat(check(plain(strung.head(washers(29.9))), "posts apart").found())
                .isEqualTo("0.1 mm between two washers");
        assertThat(check(plain(strung.head(washers(29.98))), "posts apart").found())
                .isEqualTo("0.020 mm between two washers");
        PlanCheck met = check(plain(strung.head(washers(30.04))), "posts apart");
        assertThat(met.found()).isEqualTo("two washers overlap by 0.040 mm");
        assertThat(met.outcome()).isEqualTo(Outcome.STOP);
        assertThat(plain(strung.head(washers(30.04)))
                        .plan()
                        .solid()
                        .clearances()
                        .orElseThrow()
                        .toString())
                .contains("overlap of 0.040 mm");
    }

    private static Head washers(double diameter) {
        return HEAD.posts(Posts.of(
                        TunerPost.at(mm(80)).aside(mm(-15)).above(mm(7)),
                        TunerPost.at(mm(80)).aside(mm(15)).above(mm(7)))
                .diameter(mm(6))
                .washers(mm(diameter)));
    }

    @Test
    void action_isHeldToTheHeightAtTheNut() {
        assertThat(outcome(plain(strungTo(0.4, 2)), "action above the height at the nut"))
                .isEqualTo(Outcome.OK);
        assertThat(outcome(plain(strungTo(0.5, 0.5)), "action above the height at the nut"))
                .isEqualTo(Outcome.OK);
        PlanCheck lower = check(plain(strungTo(0.5, 0.4)), "action above the height at the nut");
        assertThat(lower.outcome()).isEqualTo(Outcome.OPEN);
        assertThat(lower.allowed()).isEqualTo("0.5 mm or more, the height at the nut");
        assertThat(lower.todo()).startsWith("Cut the nut's slots lower");
    }

    private static Neck strungTo(double atNut, double action) {
        return NECK.fingerboard(NECK.fingerboard().fretHeight(mm(1)))
                .neckSet(NeckSet.saddle(mm(14)).atNut(mm(atNut)).action(mm(action)));
    }

    @Test
    void posts_mustBeAsManyAsTheStrings() {
        Neck strung = across(NECK, 50).fingerboard(NECK.fingerboard().fretHeight(mm(1)));
        Head three = HEAD.posts(
                TunerPost.at(mm(40)).above(mm(7)),
                TunerPost.at(mm(60)).above(mm(7)),
                TunerPost.at(mm(80)).above(mm(7)));

        assertThatThrownBy(() -> plain(strung.head(three)))
                .hasMessage("head.posts.along must have 2, one to a string, but was 3 of them");
        assertThatThrownBy(() -> plain(across(NECK, 50).head(posts(40))))
                .hasMessage("fingerboard.fret height is missing; the strings come down from it to the head's posts");
    }
}
