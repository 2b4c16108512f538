package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.hertz;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.mmPerMinute;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.percent;
import static org.neckgeom.units.ShopUnits.pitch;
import static org.neckgeom.units.ShopUnits.rpm;
import static org.neckgeom.units.ShopUnits.thou;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.neck.Across;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.End;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.HeelTransition;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.OutlinePoint;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.neck.StringSet;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.page.Document;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.NeckLimits;
import org.neckgeom.plan.Outcome;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.strength.Weather;

class NeckFileTest {

    @TempDir
    Path folder;

    @Test
    void octaveMandolin_isTheNeckItsFileDescribes() {
        Job file = NeckFile.read("octave-mandolin.yaml");

        assertThat(file.neck())
                .isEqualTo(Neck.named("Octave mandolin, walnut")
                        .scale(mm(560))
                        .fingerboard(Fingerboard.tapered(mm(34), mm(46))
                                .farWidthAtFret(14)
                                .thickness(mm(6))
                                .radius(mm(400))
                                .fretHeight(mm(1.1))
                                .wood(Wood.INDIAN_ROSEWOOD))
                        .back(BackProfile.between(mm(14.5), mm(16.5))
                                .atFrets(1, 12)
                                .rounded())
                        .frets(20)
                        .bodyAtFret(14)
                        .wood(Wood.BLACK_WALNUT)
                        .channel(Channel.forRod(TrussRod.twoWay(mm(300))
                                        .section(mm(6), mm(9))
                                        .adjuster(End.HEAD)
                                        .threadPitch(mm(0.8)))
                                .startingAt(mm(3))
                                .endClearance(mm(0.5))
                                .depthClearance(mm(0.2)))
                        .head(Head.angled(deg(13))
                                .length(mm(185))
                                .width(mm(76))
                                .thickness(mm(15))
                                .tapered(mm(60), mm(76))
                                .tuners(mm(13), mm(17))
                                .posts(
                                        post(40, -22),
                                        post(75, -22),
                                        post(110, -22),
                                        post(145, -22),
                                        post(145, 22),
                                        post(110, 22),
                                        post(75, 22),
                                        post(40, 22))
                                .scarfed(ScarfCut.inTheHead().kerf(mm(1.8)).cleaning(mm(0.3))))
                        .heel(Heel.of(mm(78), mm(54))
                                .blocks(mm(20))
                                .blockLength(mm(35))
                                .joint(Dovetail.tapered(deg(3))
                                        .length(mm(15))
                                        .widths(mm(36), mm(28))
                                        .height(mm(66))))
                        .neckSet(NeckSet.saddle(mm(15.2))
                                .atNut(mm(0.4))
                                .action(mm(2))
                                .compensation(mm(2.2))
                                .overstand(mm(0)))
                        .strings(StringSet.of(pitch("G2"), pitch("D3"), pitch("A3"), pitch("E4"))
                                .doubled()
                                .tensions(newton(95))
                                .diameters(mm(1.02), mm(0.71), mm(0.43), mm(0.28))
                                .across(Across.of(mm(3), mm(44)).inPair(mm(2.6)))));
        assertThat(file.blank())
                .isEqualTo(Blank.ofLength(mm(640))
                        .section(mm(61), mm(20))
                        .nutAt(mm(200))
                        .outOfParallel(mm(0.06))
                        .endAllowance(mm(3))
                        .edgeAllowance(mm(2))
                        .planing(mm(0.5))
                        .sawKerf(mm(1.8)));
        assertThat(file.shop())
                .isEqualTo(Shop.with(Cutter.straight(mm(6))
                                .flutes(2, mm(22))
                                .shank(mm(12.7))
                                .stickOut(mm(30))
                                .carbide()
                                .runout(mm(0.02)))
                        .fence(Fence.onePiece(mm(600)))
                        .feelerGauges(FeelerSet.metric20().halfWidth(mm(0.005)))
                        .repeatability(mm(0.02))
                        .passes(mm(1.5), mm(0.5))
                        .feed(mmPerMinute(1800), rpm(16000)));
        assertThat(file.plan().scarf())
                .contains(ScarfJoint.inTheHead(
                        Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8)).cleaning(mm(0.3))));
        assertThat(file.plan().neckSet())
                .contains(BackSet.of(
                        Scale.of(mm(560)),
                        14,
                        NeckSet.saddle(mm(15.2))
                                .atNut(mm(0.4))
                                .action(mm(2))
                                .fretPlane(mm(7.1))
                                .compensation(mm(2.2))));
        assertThat(file.weather())
                .isEqualTo(Weather.from(percent(45), celsius(21)).to(percent(25), celsius(21)));
        assertThat(file.relief()).isEqualTo(mm(0.2));
        assertThat(file.steps()).isEmpty();
        assertThat(file.limits())
                .isEqualTo(NeckLimits.withDefaults()
                        .slotOffset(mm(0.1))
                        .floorThickness(mm(3))
                        .bridgeOffset(mm(1)));
    }

    private static TunerPost post(double along, double aside) {
        return TunerPost.at(mm(along)).aside(mm(aside)).above(mm(8));
    }

    /** The same numbers converted by hand: 1 in = 25.4 mm, 1 ft = 12 in, exactly. */
    @Test
    void shortScaleBass_isTheNeckItsFileDescribes() {
        Job file = NeckFile.read("short-scale-bass.yaml");

        Neck neck = file.neck();
        assertThat(neck.scale().lengthMm()).isEqualTo(762);
        assertThat(neck.wood().orElseThrow().name()).isEqualTo("our own maple");
        assertThat(neck.wood().orElseThrow().densityKgPerM3()).isEqualTo(680);
        assertThat(neck.wood().orElseThrow().modulusMPa()).isCloseTo(12_100, within(1e-9));
        assertThat(neck.fingerboard().nutWidthMm()).isEqualTo(44.45);
        assertThat(neck.fingerboard().farWidthMm()).isCloseTo(66.675, within(1e-12));
        assertThat(neck.fingerboard().farRadiusMm()).isCloseTo(406.4, within(1e-12));
        assertThat(neck.back().bassPower()).isEqualTo(2.2);
        assertThat(neck.back().treblePower()).isEqualTo(2.6);
        Channel channel = neck.channel().orElseThrow();
        assertThat(channel.rod().orElseThrow().adjuster()).isEqualTo(End.HEEL);
        assertThat(channel.startMm()).isEqualTo(3.175);
        assertThat(channel.widthMm()).isCloseTo(6.35 + 0.1016, within(1e-12));
        assertThat(channel.adjusterPocketDepthMm()).isCloseTo(11.1125, within(1e-12));
        Head head = neck.head().orElseThrow();
        assertThat(head.veneerMm()).isCloseTo(1.5875, within(1e-12));
        assertThat(head.veneerShortOfNutMm()).isEqualTo(6.35);
        assertThat(head.backVeneerMm()).isCloseTo(0.79375, within(1e-12));
        assertThat(neck.strings().orElseThrow().pitchesHz()[2])
                .isEqualTo(hertz(55).libraryValue());
        assertThat(neck.strings().orElseThrow().linearDensitiesGramPerMetre()).containsExactly(54, 34, 21, 12.7, 6.7);
        assertThat(file.blank().outOfParallelMm()).isCloseTo(-0.0762, within(1e-12));
        assertThat(file.blank().nutFromHeadEndMm()).isCloseTo(228.6, within(1e-12));
        assertThat(file.shop().fence()).isEqualTo(Fence.pivoting(inch(30)).fromPivot(inch(15), inch(27)));
        assertThat(file.shop().feelerGauges().thicknessesMm()).hasSize(8).contains(0.0508);
        assertThat(file.shop().lastPass()).isEqualTo(inch("1/64"));
        TrialCut first = TrialCut.walls(
                        List.of(inch(1.1826), inch(1.1834), inch(1.1830)),
                        List.of(inch(1.2218), inch(1.2222), inch(1.2214)))
                .slot(inch(0.2520))
                .piece(inch(2.6570)); // no repeatability of its own: the plan puts the shop's in
        TrialCut second = TrialCut.walls(inch(1.2030), inch(1.2022))
                .slot(inch(0.2520))
                .piece(inch(2.6570))
                .repeatability(thou(0.5));
        assertThat(file.steps())
                .containsExactly(
                        CentringStep.read(first),
                        CentringStep.moved(FenceMove.away(inch(0.020))),
                        CentringStep.read(second));
    }

    /** The octave mandolin with its turn into the heel, its posts' washers, its outline and its slots made live. */
    @Test
    void parse_takesTheShapeThatStandsInComments() {
        String text = ShippedNecks.text(ShippedNecks.DEFAULT)
                .replaceAll(
                        "(?m)^( *)# ( *(heel transition|turn radius|slope|cap length):|(diameter|washer diameter|outline"
                                + "|slots from|slot (length|width|aside)):)",
                        "$1$2")
                .replaceAll("(?m)^  width at (break line|tip):.*\n", "")
                // The web of a slotted head covers an adjuster behind the nut.
                .replace("adjuster: head", "adjuster: heel");
        Job job = NeckFile.parse("shaped.yaml", text);
        Neck neck = job.neck();

        assertThat(neck.back().heelTransition())
                .hasValue(HeelTransition.ofRadius(mm(15)).slope(deg(82)).capLength(mm(6)));
        assertThat(neck.head().orElseThrow().outline())
                .containsExactly(
                        OutlinePoint.at(mm(0), mm(30)),
                        OutlinePoint.at(mm(40), mm(36)).treble(mm(34)),
                        OutlinePoint.at(mm(185), mm(38)));
        assertThat(neck.head().orElseThrow().washerDiameterMm()).isEqualTo(13);
        assertThat(neck.head().orElseThrow().slotAsideMm()).isEqualTo(17);
        // The wood comes down to the heel's 78 mm at the body joint.
        assertThat(job.plan().solid().depth().valueAt(neck.bodyJointMm())).isCloseTo(78, within(1e-9));
        assertThat(job.plan()
                        .check(CheckCode.BACK_REACHES_THE_HEEL)
                        .orElseThrow()
                        .outcome())
                .isEqualTo(Outcome.OK);
        assertThat(job.plan().check(CheckCode.POSTS_ON_THE_WOOD).orElseThrow().outcome())
                .isEqualTo(Outcome.OK);
        assertThat(Document.PLAN.read(Document.PLAN.json(job))).isEqualTo(job);
    }

    @Test
    void parse_takesAnotherCalliperForTheBlank() {
        String text = ShippedNecks.text("fanned-baritone.yaml");
        Job one = NeckFile.parse("one.yaml", text);
        Job two = NeckFile.parse("two.yaml", text.replace("# blank calliper zero: ", "blank calliper zero: "));

        assertThat(one.shop().uncertainty().blankCalliperZeroMm()).isEmpty();
        assertThat(two.shop().uncertainty().blankCalliperZeroMm()).hasValue(0.02);
        // (0.01^2 + 0.02^2)/4 more of variance.
        assertThat(Math.pow(two.plan().rounds().place().start().uncertaintyMm(), 2)
                        - Math.pow(one.plan().rounds().place().start().uncertaintyMm(), 2))
                .isCloseTo(0.000125, within(1e-12));
        assertThat(Document.PLAN.read(Document.PLAN.json(two)).shop().uncertainty())
                .isEqualTo(two.shop().uncertainty());
    }

    @Test
    void read_prefersAFileOnDiskToAShippedNeck() throws IOException {
        Path own = Files.writeString(
                folder.resolve("octave-mandolin.yaml"),
                ShippedNecks.text("octave-mandolin.yaml").replace("Octave mandolin, walnut", "My own"));

        assertThat(NeckFile.read(own).neck().name()).isEqualTo("My own");
        assertThat(NeckFile.read(own.toString()).neck().name()).isEqualTo("My own");
    }

    @Test
    void read_namesAFileThatIsNotThere() {
        assertThatThrownBy(() -> NeckFile.read("no-such-neck.yaml"))
                .isInstanceOf(FileRefused.class)
                .hasMessageContaining("no-such-neck.yaml: there is no such file");
    }

    @Test
    void equals_comparesWhatTheFilesSay() {
        String text = ShippedNecks.text("octave-mandolin.yaml");

        assertThat(NeckFile.parse("a.yaml", text))
                .isEqualTo(NeckFile.parse("b.yaml", text.replace("560 mm", "56 cm")))
                .hasSameHashCodeAs(NeckFile.parse("b.yaml", text))
                .isNotEqualTo(NeckFile.parse("c.yaml", text.replace("560 mm", "561 mm")));
    }

    @Test
    void daysInTheWorstAir_standInAComment() {
        String text = ShippedNecks.text(ShippedNecks.DEFAULT);
        String live = text.replace("  # days: 14", "  days: 14");

        assertThat(live).isNotEqualTo(text);
        Job job = NeckFile.parse("days.yaml", live);
        assertThat(job.weather())
                .isEqualTo(NeckFile.read(ShippedNecks.DEFAULT).weather().days(14));
        assertThat(job.plan().toString()).isNotEmpty();
        assertThat(Document.PLAN.read(Document.PLAN.json(job))).isEqualTo(job);
    }
}
