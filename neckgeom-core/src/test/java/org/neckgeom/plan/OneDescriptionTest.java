package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import javax.measure.quantity.Angle;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.head.BreakAngle;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.measure.Estimate;
import org.neckgeom.neck.Dome;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.NeckSet;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.ScarfCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** What follows from a design and its blank is an answer: no plan can hold a second opinion of it. */
class OneDescriptionTest {

    private static final Neck OCTAVE = SampleNecks.octaveMandolin();
    private static final Neck FRETTED = OCTAVE.fingerboard(OCTAVE.fingerboard().fretHeight(mm(1.1)));
    private static final Head HEAD = OCTAVE.head().orElseThrow();
    private static final NeckSet SET = NeckSet.saddle(mm(15.2)).atNut(mm(0.4)).action(mm(2));

    private static Job plan(Neck design, Blank blank) {
        return Job.of(design, blank, SampleBench.metricShop());
    }

    /** Glue face of a joint in the shaft: the shaft's thickness over the sine of the pitch, 25 / sin 13 deg. */
    @Test
    void scarf_isOfTheBlanksThicknessAndTheHeadsPitch() {
        Neck neck = OCTAVE.head(HEAD.scarfed(ScarfCut.inTheShaft()));

        assertThat(plan(neck, Blank.ofLength(mm(640)).section(mm(61), mm(25)))
                        .plan()
                        .scarf()
                        .orElseThrow()
                        .glueFaceMm())
                .isCloseTo(25 / Math.sin(Math.toRadians(13)), within(1e-9));
        assertThat(plan(
                                neck.head(HEAD.angle(deg(9)).scarfed(ScarfCut.inTheShaft())),
                                Blank.ofLength(mm(640)).section(mm(61), mm(25)))
                        .plan()
                        .scarf()
                        .orElseThrow()
                        .glueFaceMm())
                .isCloseTo(25 / Math.sin(Math.toRadians(9)), within(1e-9));
    }

    @Test
    void scarf_hasTheHeadsOwnVeneers() {
        Blank blank = SampleBench.octaveBlank();
        Head veneered = HEAD.veneer(mm(2), mm(0)).backVeneer(mm(0.8)).scarfed(ScarfCut.inTheHead());
        for (double shortOfNut : new double[] {0, 8.8, 9}) {
            ScarfJoint joint = ScarfJoint.of(veneered.veneer(mm(2), mm(shortOfNut)), blank, deg(0));

            // 15 of wood, 2 and 0.8 of veneer; the wood's face holds the nut line, so the line on it is 20 / sin 13 deg
            // away.
            assertThat(joint.headThickness().libraryValue()).isCloseTo(17.8, within(1e-12));
            assertThat(joint.breakLineShiftMm()).isZero();
            assertThat(joint.frontLineMm()).isCloseTo(20 / Math.sin(Math.toRadians(13)), within(1e-9));
        }
    }

    @Test
    void scarf_ofAHeadInOnePiece_isNone() {
        assertThat(plan(OCTAVE, SampleBench.octaveBlank()).plan().scarf()).isEmpty();
        assertThatThrownBy(() -> ScarfJoint.of(HEAD, SampleBench.octaveBlank(), deg(0)))
                .hasMessage("the head is in one piece with the shaft; give its scarf with .scarfed(...)");
    }

    /** The joint's line lies 20 / sin 13 deg = 88.9 mm along the face. */
    @Test
    void scarf_longerThanItsHead_isRefusedWithThePlan() {
        Neck shortHead = OCTAVE.head(HEAD.length(mm(80)).scarfed(ScarfCut.inTheHead()));

        assertThatThrownBy(() -> plan(shortHead, SampleBench.octaveBlank()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("head");
    }

    /** 6 mm of board and frets of 1.1 mm under an overstand of 0.5 mm. */
    @Test
    void neckSet_isOfTheDesignsScaleJointAndBoard() {
        BackSet byHand = BackSet.of(
                Scale.of(mm(560)),
                14,
                NeckSet.saddle(mm(15.2)).atNut(mm(0.4)).action(mm(2)).fretPlane(mm(7.6)));
        Job plan = plan(FRETTED.neckSet(SET.overstand(mm(0.5))), SampleBench.octaveBlank());

        assertThat(plan.plan().neckSet().orElseThrow().angle().degrees())
                .isCloseTo(byHand.angle().degrees(), within(1e-12));
        assertThat(plan.stages().shape().overstandMm()).isEqualTo(0.5);
        assertThat(plan(FRETTED.neckSet(SET.fretPlane(mm(7.6))), SampleBench.octaveBlank())
                        .stages()
                        .shape()
                        .overstandMm())
                .isCloseTo(0.5, within(1e-12));
        assertThat(plan(OCTAVE.scale(mm(570)).neckSet(SET.fretPlane(mm(7.6))), SampleBench.octaveBlank())
                        .plan()
                        .neckSet()
                        .orElseThrow()
                        .reach()
                        .libraryValue())
                .as("of its own scale: 570 / 2^(14/12)")
                .isCloseTo(570 * Math.pow(2, -14 / 12.0), within(1e-9));
    }

    @Test
    void neckSet_overADome_isTheSameAsAskedAtTheBench() {
        NeckSet domed = SET.fretPlane(mm(7.1)).dome(Dome.of(mm(9000)).pole(mm(240), mm(30)));

        assertThat(BackSet.of(OCTAVE.neckSet(domed)))
                .isEqualTo(BackSet.of(
                        Scale.of(mm(560)),
                        14,
                        NeckSet.saddle(mm(15.2))
                                .atNut(mm(0.4))
                                .action(mm(2))
                                .fretPlane(mm(7.1))
                                .dome(Dome.of(mm(9000)).pole(mm(240), mm(30)))));
    }

    @Test
    void neckSet_letIntoTheBodyHasOneRuleForBothWaysToGiveIt() {
        Job byOverstand = plan(FRETTED.neckSet(SET.overstand(mm(-2))), SampleBench.octaveBlank());
        Job byPlane = plan(FRETTED.neckSet(SET.fretPlane(mm(5.1))), SampleBench.octaveBlank());

        assertThat(byOverstand.stages().shape().overstandMm()).isEqualTo(-2);
        assertThat(byPlane.stages().shape().overstandMm()).isCloseTo(-2, within(1e-12));
        assertThat(byOverstand.plan().neckSet().orElseThrow().angle().degrees())
                .isCloseTo(byPlane.plan().neckSet().orElseThrow().angle().degrees(), within(1e-12));
        // Let in with its frets, at most.
        assertThat(BackSet.overstand(FRETTED.neckSet(SET.overstand(mm(-7.1)))).libraryValue())
                .isEqualTo(-7.1);
        assertThatThrownBy(() -> plan(FRETTED.neckSet(SET.overstand(mm(-7.2))), SampleBench.octaveBlank()))
                .hasMessage(
                        "neck set.overstand must be -7.1 mm or more, which lets board and frets into the body, but was"
                                + " -7.2 mm");
        assertThatThrownBy(() -> plan(FRETTED.neckSet(SET.fretPlane(mm(-0.1))), SampleBench.octaveBlank()))
                .hasMessage("neck set.fret plane must be 0 or more: fret tops over the body's top, but was -0.1 mm");
    }

    /** A head, its scarf, a reading of the scarf and a string's way over the nut: 45 deg is the greatest, itself allowed. */
    @Test
    void headAngle_hasOneGreatest() {
        Head head = HEAD.angle(deg(45));

        assertThat(head.angle()).isEqualTo(deg(45));
        assertThat(Scarf.of(deg(45), mm(20), mm(15))).isNotNull();
        assertThat(Scarf.of(ShopUnit.RADIAN.of(Math.PI / 4), mm(20), mm(15)).toString())
                .isEqualTo(Scarf.of(deg(45), mm(20), mm(15)).toString());
        assertThat(BreakAngle.over(deg(45), mm(7))).isNotNull();
        assertThat(MeasuredNeck.none().scarfAngle(Estimate.of(deg(45), deg(0.1))))
                .isNotEqualTo(MeasuredNeck.none());
        Amount<Angle> more = deg(45.01);
        List<ThrowingCallable> all = List.of(
                () -> HEAD.angle(more),
                () -> Scarf.of(more, mm(20), mm(15)),
                () -> BreakAngle.over(more, mm(7)),
                () -> MeasuredNeck.none().scarfAngle(Estimate.of(more, deg(0.1))));
        assertThat(all)
                .allSatisfy(one -> assertThatThrownBy(one)
                        .isInstanceOf(IllegalArgumentException.class)
                        .hasMessageContaining("45"));
    }

    @Test
    void neckSet_withoutItsParts_isRefused() {
        assertThatThrownBy(() -> plan(OCTAVE.neckSet(SET), SampleBench.octaveBlank()))
                .hasMessage("neck set: either fret plane or the fingerboard's fret height must be given");
        assertThatThrownBy(() -> BackSet.of(OCTAVE))
                .hasMessage("\"Octave mandolin, walnut\" needs its neck set for this, but has none");
    }

    /** Board 6 mm, frets 1.1 mm, strings 0.4 mm over them at the nut. */
    @Test
    void nutSlots_lieAsHighAsBoardFretsAndStrings() {
        Job plan = plan(FRETTED.neckSet(SET), SampleBench.octaveBlank());

        assertThat(plan.stages().shape().slotHeight().libraryValue()).isCloseTo(7.5, within(1e-12));
    }
}
