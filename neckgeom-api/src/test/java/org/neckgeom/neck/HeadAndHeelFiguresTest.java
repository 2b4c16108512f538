package org.neckgeom.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.gramPerMetre;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.pitch;

import javax.measure.quantity.Length;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** Figures that head, heel, strings and channel derive from what was given, by hand. */
class HeadAndHeelFiguresTest {

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(message);
    }

    @Test
    void headWithoutOutline_isAsWideAsItsWidestAllAlong() {
        Head plain = Head.flat().length(mm(180)).width(mm(76));
        Head tapered = plain.tapered(mm(60), mm(84));
        Head drawn = plain.width(mm(82))
                .outline(
                        OutlinePoint.at(mm(0), mm(22)),
                        OutlinePoint.at(mm(60), mm(37)),
                        OutlinePoint.at(mm(180), mm(41)));

        assertThat(plain.hasOutline()).isFalse();
        assertThat(plain.widthAtBreakLineMm()).isEqualTo(76);
        assertThat(plain.widthAtTipMm()).isEqualTo(76);
        assertThat(plain.outline()).containsExactly(OutlinePoint.at(mm(0), mm(38)), OutlinePoint.at(mm(180), mm(38)));
        assertThat(tapered.hasOutline()).isTrue();
        assertThat(tapered.widthAtBreakLineMm()).isEqualTo(60);
        assertThat(tapered.widthAtTipMm()).isEqualTo(84);
        assertThat(tapered.outline()).containsExactly(OutlinePoint.at(mm(0), mm(30)), OutlinePoint.at(mm(180), mm(42)));
        assertThat(drawn.hasOutline()).isTrue();
        assertThat(drawn.outline()).hasSize(3);
        assertThat(drawn.widthAtBreakLineMm()).isEqualTo(44);
        assertThat(drawn.widthAtTipMm()).isEqualTo(82);
    }

    /** Two slots of 20 whose middles are 22 aside in a head of 80: web 44 - 20 = 24, walls 40 - 22 - 10 = 8. */
    @Test
    void slottedHead_hasItsWallsItsWebAndItsRollers() {
        Head plain = Head.flat().width(mm(80)).posts(TunerPost.at(mm(45)), TunerPost.at(mm(90)));
        Head slotted = plain.slots(mm(30), mm(110)).slotWidth(mm(20), mm(22));
        Head rollers = slotted.rollers(mm(10), mm(7)).rollerLength(mm(36));

        assertThat(plain.slotWallMm()).isZero();
        assertThat(plain.slotWebMm()).isZero();
        assertThat(plain.hasRollers()).isFalse();
        assertThat(plain.rollerDiameterMm()).isZero();
        assertThat(plain.rollerDepthMm()).isZero();
        assertThat(slotted.slotWallMm()).isEqualTo(8);
        assertThat(slotted.slotWebMm()).isEqualTo(24);
        assertThat(slotted.hasRollers()).isFalse();
        assertThat(rollers.hasRollers()).isTrue();
        assertThat(rollers.rollerDiameterMm()).isEqualTo(10);
        assertThat(rollers.rollerDepthMm()).isEqualTo(7);
        assertThat(rollers.rollerLength().map(Amount::libraryValue)).hasValue(36.0);
        // The string leaves the roller at its top, 10/2 over an axis 7 below the face.
        assertThat(plain.posts()).allSatisfy(post -> assertThat(post.aboveMm()).isZero());
        assertThat(rollers.posts())
                .hasSize(2)
                .allSatisfy(post -> assertThat(post.aboveMm()).isEqualTo(-2));
    }

    @Test
    void posts_haveTheirDiameterOnceItIsGiven() {
        Head plain = Head.flat().posts(TunerPost.at(mm(45)).aside(mm(-20)).above(mm(8)));
        Head round =
                Head.flat().posts(Posts.of(TunerPost.at(mm(45))).diameter(mm(6)).washers(mm(14)));

        assertThat(Head.flat().posts()).isEmpty();
        assertThat(Head.flat().postDiameterMm()).isZero();
        assertThat(plain.posts().get(0).asideMm()).isEqualTo(-20);
        assertThat(plain.posts().get(0).aboveMm()).isEqualTo(8);
        assertThat(round.postDiameterMm()).isEqualTo(6);
        assertThat(round.washerDiameterMm()).isEqualTo(14);
    }

    @Test
    void headBeforeItsChannel_hasAReason() {
        Head veneered = Head.flat().veneer(mm(2), mm(0));

        assertThat(Head.flat().onBeforeChannel()).isEmpty();
        assertThat(Head.flat().isSeamTheCentreline()).isFalse();
        assertThat(veneered.onBeforeChannel("seam").isSeamTheCentreline()).isTrue();
        assertThat(veneered.onBeforeChannel("seam").onBeforeChannel()).isPresent();
        assertThat(Head.flat().onBeforeChannel("inlay").isSeamTheCentreline()).isFalse();
        refused(() -> Head.flat().onBeforeChannel("haste"), "must be one of inlay");
    }

    @Test
    void heel_isFittedByItsFaceUnlessItHasNone() {
        Heel flat = Heel.of(mm(88), mm(58));

        assertThat(flat.isFittedByItsFace()).isTrue();
        assertThat(flat.joint(Dovetail.tapered(deg(3))).isFittedByItsFace()).isTrue();
        assertThat(flat.joint(SpanishFoot.of(mm(40), mm(2.2))).isFittedByItsFace())
                .isFalse();
        assertThat(flat.joint(PlateScrews.in(mm(75), mm(18))).isFittedByItsFace())
                .isFalse();
        assertThat(flat.joint()).isInstanceOf(HeelJoint.Flat.class);
        assertThat(flat.joint(SpanishFoot.of(mm(40), mm(2.2))).joint()).isInstanceOf(SpanishFoot.class);
        assertThat(flat.joint(HeelInserts.at(mm(30), mm(60))).joint()).isInstanceOf(HeelInserts.class);
        assertThat(flat.dovetail()).isEmpty();
        assertThat(flat.joint(Dovetail.tapered(deg(3))).dovetail()).isPresent();
        assertThat(flat.blockThicknessMm(19)).isEqualTo(19);
        assertThat(flat.blocks(mm(20)).blockThicknessMm(19)).isEqualTo(20);
        assertThat(flat.blocks(mm(20)).blockLength(mm(70)).blockLength().map(Amount::libraryValue))
                .hasValue(70.0);
        refused(() -> flat.blockThicknessMm(0), "shaft's thickness must be more than 0");
    }

    /** A shim of 0.1 in a taper of 3 deg lifts by 0.1/sin 3 deg = 1.911 mm, and back. */
    @Test
    void dovetail_risesByItsShim() {
        Dovetail dovetail =
                Dovetail.tapered(deg(3)).length(mm(15)).widths(mm(36), mm(28)).height(mm(66));
        Amount<Length> shim = Amount.ofLibrary(0.1, ShopUnit.MILLIMETRE);

        assertThat(dovetail.riseFrom(shim).libraryValue()).isCloseTo(1.9107, within(1e-4));
        assertThat(dovetail.shimFor(dovetail.riseFrom(shim)).libraryValue()).isCloseTo(0.1, within(1e-15));
        assertThat(dovetail.pastShoulder().map(Amount::libraryValue)).hasValue(15.0);
        assertThat(dovetail.widthAtEnd().map(Amount::libraryValue)).hasValue(36.0);
        assertThat(dovetail.widthAtShoulder().map(Amount::libraryValue)).hasValue(28.0);
        assertThat(dovetail.below().map(Amount::libraryValue)).hasValue(66.0);
        // 66 tan 3 deg = 3.459, over cos of the flare, atan(4/15) = 14.93 deg: 3.580.
        assertThat(dovetail.closesIn().orElseThrow().libraryValue()).isCloseTo(3.580, within(1e-3));
        assertThat(Dovetail.tapered(deg(3)).closesIn()).isEmpty();
    }

    @Test
    void insertsTransitionAndVolute_areAsGiven() {
        HeelInserts inserts = HeelInserts.at(mm(60), mm(30)).diameter(mm(12)).bolts(mm(6), mm(15));
        HeelTransition from = HeelTransition.from(mm(290), mm(22)).slope(deg(70));
        HeelTransition transition = from.capLength(mm(12));

        assertThat(inserts.depthsMm()).containsExactly(30.0, 60.0);
        assertThat(inserts.diameterMm()).isEqualTo(12);
        assertThat(inserts.boltMm()).isEqualTo(6);
        assertThat(inserts.threadMm()).isEqualTo(15);
        assertThat(inserts.below().map(Amount::libraryValue)).hasValue(60.0);
        assertThat(inserts.pastShoulder()).isEmpty();
        assertThat(from.start().map(Amount::libraryValue)).hasValue(290.0);
        assertThat(transition.start()).isEmpty();
        assertThat(transition.radiusMm()).isEqualTo(22);
        assertThat(transition.slopeRad()).isCloseTo(70 * Math.PI / 180, within(1e-15));
        assertThat(transition.capLengthMm()).isEqualTo(12);
        assertThat(HeelTransition.ofRadius(mm(22)).start()).isEmpty();
        assertThat(Volute.of(mm(5), mm(30)).extraDepthMm()).isEqualTo(5);
        assertThat(Volute.of(mm(5), mm(30)).lengthMm()).isEqualTo(30);
    }

    private static StringSet two() {
        return StringSet.of(pitch("G2"), pitch("E4"));
    }

    /** Plain steel of 0.5 mm: 7850 x pi/4 x 0.25 = 1541 mg/m. Thicker than 0.55 it is taken to be wound, and not known. */
    @Test
    void string_weighsWhatIsKnownOfIt() {
        assertThat(two().gramPerMetre(0)).isEmpty();
        assertThat(two().linearDensities(gramPerMetre(6), gramPerMetre(0.4)).gramPerMetre(0))
                .hasValue(6);
        assertThat(two().linearDensities(gramPerMetre(6), gramPerMetre(0.4)).gramPerMetre(1))
                .hasValue(0.4);
        StringSet gauges = two().diameters(mm(0.56), mm(0.5));
        assertThat(gauges.gramPerMetre(0)).isEmpty();
        assertThat(gauges.gramPerMetre(1).orElseThrow()).isCloseTo(1.541, within(1e-3));
        assertThat(two().diameters(mm(0.55), mm(0.5)).gramPerMetre(0)).isPresent();
        assertThat(gauges.materials(StringMaterial.NYLON).gramPerMetre(0).orElseThrow())
                .isCloseTo(1140 * Math.PI / 4 * 0.56 * 0.56 / 1000, within(1e-12));
        // A core of 0.3 in a string of 0.56 leaves two wires of 0.13; one without a core is plain, however thick.
        StringSet wound = two().diameters(mm(0.56), mm(0.6)).cores(StringMaterial.NICKEL, mm(0.3), mm(0));
        assertThat(wound.gramPerMetre(0).orElseThrow())
                .isCloseTo(
                        (7850 * Math.PI / 4 * 0.09 + 8908 * Math.PI * Math.PI * 0.13 * 0.43 / 4) / 1000, within(1e-12));
        assertThat(wound.gramPerMetre(1).orElseThrow()).isCloseTo(7850 * Math.PI / 4 * 0.36 / 1000, within(1e-12));
        refused(() -> gauges.gramPerMetre(-1), "course must be between 0 and 1");
        refused(() -> gauges.gramPerMetre(2), "course must be between 0 and 1");
        assertThat(two().materials()).containsOnly(StringMaterial.STEEL).hasSize(2);
        assertThat(two().materials(StringMaterial.GUT, StringMaterial.NYLON).materials())
                .containsExactly(StringMaterial.GUT, StringMaterial.NYLON);
        assertThat(two().diameters(mm(0.5)).diameters()).hasSize(2);
        assertThat(two().diameters()).isEmpty();
    }

    /** A channel for a rod of 300 x 6 x 9 that was cut from 3 to 310, 6.2 wide and 9.5 deep. */
    @Test
    void channel_isAsItWasCut() {
        Channel drawn = Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9)))
                .startingAt(mm(3))
                .fillet(mm(2));

        Channel cut = drawn.cutTo(mm(310)).cutWide(mm(6.2)).cutDeep(mm(11.5));

        assertThat(cut.endMm()).isCloseTo(310, within(1e-12));
        assertThat(cut.widthMm()).isCloseTo(6.2, within(1e-12));
        assertThat(cut.depthMm()).isCloseTo(11.5, within(1e-12));
        refused(() -> drawn.cutTo(mm(3)), "channel end must be more than its start at 3 mm, but was 3 mm");
        refused(() -> drawn.cutWide(mm(0)), "channel width");
        refused(() -> drawn.cutDeep(mm(0)), "channel depth");
    }

    /** Strips of 20, 6, 8, 6 and 20 are 60 together: their joints lie 10 and 4 from the middle. */
    @Test
    void strips_meetOnBothSidesOfTheMiddle() {
        Neck neck = Neck.named("Strips")
                .scale(mm(560))
                .fingerboard(Fingerboard.tapered(mm(34), mm(46)))
                .back(BackProfile.between(mm(14.5), mm(16.5)))
                .frets(20)
                .bodyAtFret(14);
        Neck laminated = neck.laminated(
                Strip.of(Wood.SUGAR_MAPLE, mm(20)),
                Strip.of(Wood.BLACK_WALNUT, mm(6)),
                Strip.of(Wood.SUGAR_MAPLE, mm(8)),
                Strip.of(Wood.BLACK_WALNUT, mm(6)),
                Strip.of(Wood.SUGAR_MAPLE, mm(20)));

        assertThat(neck.stripEdgesMm()).isEmpty();
        assertThat(neck.strips()).isEmpty();
        assertThat(laminated.stripEdgesMm()).containsExactly(-30.0, -10.0, -4.0, 4.0, 10.0, 30.0);
        assertThat(laminated.strips()).hasSize(5);
        assertThat(laminated.strips().get(2).widthMm()).isEqualTo(8);
    }
}
