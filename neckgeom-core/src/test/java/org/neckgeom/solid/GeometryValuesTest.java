package org.neckgeom.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.board.BoardShape;
import org.neckgeom.board.FallAway;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.FretTable;
import org.neckgeom.board.OuterStrings;
import org.neckgeom.board.StringOverhang;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.head.BreakAngle;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.head.HeadSide;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfBoard;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.head.ScarfRoll;
import org.neckgeom.head.ScarfRun;
import org.neckgeom.heel.ActionChange;
import org.neckgeom.heel.BackSet;
import org.neckgeom.heel.HeelBlocks;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Dome;
import org.neckgeom.neck.Dovetail;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Heel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.Tenon;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.neck.TunerPost;
import org.neckgeom.neck.Volute;
import org.neckgeom.stock.Blank;
import org.neckgeom.testing.Approved;

/** Every value of the package: equal when made alike, unlike when one figure differs, and readable when printed. */
class GeometryValuesTest {

    static Stream<DoubleFunction<Object>> values() {
        return Stream.of(
                d -> scarf(d),
                d -> scarf(0).kerf(mm(1 + d)),
                d -> scarf(0).cleaning(mm(d)),
                d -> scarf(0).nutLedge(mm(d)),
                d -> ScarfJoint.inTheHead(scarf(d)),
                d -> ScarfJoint.inTheShaft(scarf(0)).planingHeadFace(mm(1 + d)),
                d -> ScarfJoint.inTheShaft(scarf(0)).veneered(HeadSide.BACK, mm(1 + d)),
                d -> ScarfJoint.inTheHead(scarf(0)).board(mm(560 + d), mm(185)),
                d -> ScarfRoll.of(deg(13), deg(0.5 + d)),
                d -> ScarfRun.of(mm(22.2), mm(63.5 + d)),
                d -> scarf(0).nutSlant(deg(6 + d)),
                d -> ScarfJoint.inTheShaft(scarf(0).nutSlant(deg(6 + d))),
                d -> slantedBoard(d),
                d -> slantedBoard(0).thinned(d == 0 ? HeadSide.BACK : HeadSide.FACE),
                d -> slantedBoard(0).edges(mm(60 + d)).headCut(),
                d -> ScarfJoint.inTheHead(scarf(0)).keeping(mm(60 + d)),
                d -> broken(d),
                d -> broken(0).sideways(mm(1 + d)),
                d -> broken(0).speakingSide(deg(1 + d)),
                d -> set(d),
                d -> BackSet.of(Scale.of(mm(560)), 14, set(0).heights().compensation(mm(1 + d))),
                d -> BackSet.of(
                        Scale.of(mm(560)),
                        14,
                        set(0).heights().dome(Dome.of(mm(9000 + d)).pole(mm(240), mm(30)))),
                d -> set(d).angle(),
                d -> set(0).angleWith(ErrorDistribution.normal(mm(0.1 + d))),
                d -> set(0).angle().atBridge(mm(9 + d), mm(7)),
                d -> set(0).actionPer(deg(0.1 + d)),
                d -> ActionChange.of("for a trial", mm(0.1 + d)),
                d -> set(d).heelFace(),
                d -> set(0).heelFace().bodyEnd(deg(88 + d)),
                d -> set(0).wedge(mm(78), mm(1 + d)),
                d -> set(0).cheek(mm(54), mm(1 + d)),
                d -> Heel.of(mm(78), mm(54)).capWidth(mm(20 + d)),
                d -> set(0).correction(Heel.of(mm(78), mm(54)), mm(1 + d), mm(0.5)),
                d -> set(0).shim(mm(70), mm(1 + d)),
                d -> HeelBlocks.of(mm(85), mm(20)).overstand(mm(2 + d)),
                d -> Dovetail.tapered(deg(3 + d)),
                d -> Tenon.of(mm(78), mm(20)).holes(mm(10), mm(1)).at(mm(30 + d)),
                d -> FretTable.of(Scale.of(mm(560 + d)), 20),
                d -> FretTable.of(Scale.of(mm(560 + d)), 20).fret(7),
                d -> FannedFrets.of(Scale.of(mm(686 + d)), Scale.of(mm(648)), outer(0), 7),
                d -> outer(d),
                d -> BoardShape.of(neck(d)),
                d -> BoardShape.of(neck(d)).atFret(5),
                d -> BoardShape.of(neck(d)).withEqualEdges(),
                d -> FallAway.of(neck(0).fingerboard(neck(0).fingerboard().fallAway(mm(0.3 + d))))
                        .orElseThrow(),
                d -> spacing(d),
                d -> spacing(d).equalGaps(),
                d -> StringPlaces.of(List.of(mm(-1 - d), mm(1)), List.of(mm(0.5), mm(0.3))),
                d -> StringOverhang.of(
                        neck(d), spacing(0).equalGaps(), spacing(0).equalCentres()),
                d -> TunerPost.at(mm(60)).aside(mm(5 + d)).above(mm(8)),
                d -> layout(d),
                d -> HeadLayout.of(layout(0).head().tapered(mm(60 + d), mm(70))),
                d -> BackShape.of(neck(d)),
                d -> BackShape.of(neck(0).back(neck(0).back().volute(Volute.of(mm(2 + d), mm(30))))),
                d -> BackShape.of(neck(d)).at(mm(100)),
                d -> BackCurve.of(mm(40 + d), mm(15)).powers(2.5, 1.5),
                d -> BackShape.of(neck(d)).at(mm(100)).facets(true),
                d -> BackShape.of(neck(d)).at(mm(100)).facets(false).first(),
                d -> FloorThickness.under(neck(d)),
                d -> FloorThickness.under(neck(0)).offCentre(mm(0.1 + d)),
                d -> FloorThickness.under(neck(0)).skewed(deg(0.1 + d)),
                d -> FloorThickness.under(neck(0)).roundedFloor(mm(0.1 + d)),
                d -> FloorThickness.under(neck(d)).least(),
                d -> WoodAt.of(mm(38), mm(5 + d)),
                d -> FloorThickness.under(neck(0)).probabilityBelow(mm(4.5 + d), ErrorDistribution.normal(mm(0.3))),
                d -> WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0.1 + d))).offset(ErrorDistribution.bias(mm(0.1))),
                d -> CuttingList.from(Blank.ofLength(mm(900)).section(mm(70), mm(20)))
                        .piece("shaft", mm(500 + d)),
                d -> OnePieceHead.of(HeadSolid.of(Head.angled(deg(13)).length(mm(185 + d)))),
                d -> HeadSolid.of(Head.angled(deg(13)).length(mm(185 + d))),
                d -> NeckSolid.of(neck(d)),
                d -> NeckSolid.of(neck(0).scale(mm(560 + d))).fret(5),
                d -> NeckSolid.of(neck(0)).leastThickness(mm(200 + d)),
                d -> BlankNeeds.of(Blank.ofLength(mm(600))
                        .section(mm(60), mm(60))
                        .endAllowance(mm(25))
                        .edgeAllowance(mm(2 + d))
                        .planing(mm(1))));
    }

    @ParameterizedTest
    @MethodSource("values")
    void value_isEqualWhenMadeAlikeAndUnlikeWhenAFigureDiffers(DoubleFunction<Object> made) {
        Object one = made.apply(0);

        assertThat(one).isEqualTo(one).isEqualTo(made.apply(0)).hasSameHashCodeAs(made.apply(0));
        assertThat(one).isNotEqualTo(made.apply(0.05)).isNotEqualTo(null).isNotEqualTo("text");
        // Allowed to be the same, but then hash tables would be lists.
        assertThat(one).doesNotHaveSameHashCodeAs(made.apply(0.05));
    }

    @Test
    void texts_areTheApprovedOnes() {
        Approved.hold("solid", Map.of("texts.txt", Approved.texts(values().map(made -> made.apply(0)))));
    }

    @ParameterizedTest
    @MethodSource("values")
    void value_printsItselfInUnderAThousandCharacters(DoubleFunction<Object> made) {
        String text = made.apply(0).toString();

        assertThat(text)
                .isNotBlank()
                .doesNotContain("@")
                .doesNotContain("-0.000")
                .doesNotContain("NaN");
        assertThat(text.length()).isLessThan(1000);
        assertThat(text).isEqualTo(made.apply(0).toString());
    }

    private static ScarfBoard slantedBoard(double d) {
        return ScarfJoint.inTheHead(scarf(0).kerf(mm(1.8)).nutSlant(deg(6)))
                .keeping(mm(60))
                .board(mm(560), mm(185 + d));
    }

    private static Scarf scarf(double d) {
        return Scarf.of(deg(13), mm(20), mm(15 + d));
    }

    private static BreakAngle broken(double d) {
        return BreakAngle.over(deg(13), mm(7.5)).post(mm(60), mm(8 + d));
    }

    private static BackSet set(double d) {
        return BackSet.of(
                Scale.of(mm(560)),
                14,
                NeckSet.saddle(mm(15.2 + d)).atNut(mm(0.4)).action(mm(2.0)).fretPlane(mm(7.1)));
    }

    private static OuterStrings outer(double d) {
        return OuterStrings.of(inch(1.5), mm(57 + d));
    }

    private static StringSpacing spacing(double d) {
        return StringSpacing.diameters(mm(1), mm(0.6), mm(0.3)).across(mm(28 + d));
    }

    private static StringPlaces pair() {
        return StringSpacing.diameters(mm(1), mm(0.5)).across(mm(20)).equalGaps();
    }

    private static HeadLayout layout(double d) {
        return HeadLayout.of(Head.angled(deg(13))
                .width(mm(76 + d))
                .posts(
                        TunerPost.at(mm(60)).aside(mm(-20)).above(mm(8)),
                        TunerPost.at(mm(90)).above(mm(8))));
    }

    private static Neck neck(double d) {
        return Neck.named("octave mandolin")
                .scale(mm(560))
                .fingerboard(Fingerboard.tapered(mm(34 + d), mm(46)).radius(mm(400)))
                .back(BackProfile.between(mm(14.5), mm(16.5)).asymmetric(2.2, 2))
                .bodyAtFret(14)
                .channel(Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))));
    }
}
