package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;
import org.neckgeom.neck.JointPlace;

class ScarfBoardTest {

    private static final long SEED = 4100;

    @Test
    void length_ofTheUsualThinningIsTheLayoutFormula() {
        double a = Math.toRadians(13);
        Scarf scarf = Scarf.of(deg(13), mm(19), mm(14)).kerf(mm(1.8));

        double inHead =
                ScarfJoint.inTheHead(scarf).board(mm(560), mm(185)).length().libraryValue();
        double inShaft =
                ScarfJoint.inTheShaft(scarf).board(mm(560), mm(185)).length().libraryValue();

        assertThat(inHead).isCloseTo(560 + 185 - 19 / Math.sin(a) + 19 / Math.tan(a) + 1.8 / Math.sin(a), offset(1e-9));
        assertThat(inShaft)
                .isCloseTo(560 + 185 - 14 / Math.sin(a) + 14 / Math.tan(a) + 1.8 / Math.sin(a), offset(1e-9));
        // Common practice: the two differ by a fraction of a millimetre at 19/14 and 13 deg.
        assertThat(Math.abs(inHead - inShaft)).isBetween(0.1, 1.0);
    }

    /** The formula of one cut, as it was before a nut could slant: the same bits. */
    @Test
    void board_ofASquareNutHasTheBitsOfTheSquareFormula() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 10_000; i++) {
            double shaft = random.nextDouble(12, 30);
            double head = random.nextDouble(8, 25);
            double kerf = random.nextDouble(0, 3);
            double cleaning = random.nextDouble(0, 1);
            double off = random.nextDouble(0, 1);
            boolean inHead = random.nextBoolean();
            Scarf scarf = Scarf.of(deg(random.nextDouble(6, 30)), mm(shaft), mm(head))
                    .kerf(mm(kerf))
                    .cleaning(mm(cleaning))
                    .nutLedge(mm(5));
            ScarfJoint joint = (inHead ? ScarfJoint.inTheHead(scarf) : ScarfJoint.inTheShaft(scarf))
                    .planingHeadFace(mm(off))
                    .planingShaftFace(mm(0.3));
            double a = scarf.angle().libraryValue();
            double sin = StrictMath.sin(a);
            double shift = (off - 0.3) / sin + 0.3 * StrictMath.tan(a / 2) + 0.0;
            double along = (0.3 - off * StrictMath.cos(a)) / sin;
            double slope = inHead ? 560.0 + 5 + shift : 560.0 + 5 + shift - head / sin;
            double thick = Math.max(shaft, head);
            double face = inHead ? 300 + along - shaft / sin : 300 + along;
            double from = slope + (kerf + 2 * cleaning) / sin;
            double thinning = inHead ? 0 : (thick - head) / StrictMath.tan(a);

            ScarfBoard board = joint.board(mm(560), mm(300));

            String at = "seed " + SEED + " case " + i;
            double mark = slope + cleaning / sin;
            assertThat(board.shaftCut().faceMark().libraryValue()).as(at).isEqualTo(mark);
            assertThat(board.shaftCut().backMark().libraryValue()).as(at).isEqualTo(mark + thick / StrictMath.tan(a));
            assertThat(board.headFrom().libraryValue()).as(at).isEqualTo(from);
            assertThat(board.length().libraryValue())
                    .as(at)
                    .isEqualTo(from + (face + thick / StrictMath.tan(a) - thinning));
        }
    }

    @Test
    void board_sawnTurnedOverThinnedAndGluedReachesTheHeadsTip() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 300; i++) {
            double degrees = 8 + 10 * random.nextDouble();
            double a = Math.toRadians(degrees);
            double shaft = 15 + 8 * random.nextDouble();
            double head = 11 + 10 * random.nextDouble();
            double kerf = 3 * random.nextDouble();
            double cleaning = random.nextDouble();
            double ledge = 6 * random.nextDouble();
            double d = 1.5 * random.nextDouble();
            double e = 1.5 * random.nextDouble();
            double v = 2 * random.nextDouble();
            JointPlace place = i % 2 == 0 ? JointPlace.IN_THE_HEAD : JointPlace.IN_THE_SHAFT;
            HeadSide thinned = i % 3 == 0 ? HeadSide.FACE : HeadSide.BACK;
            Scarf scarf = Scarf.of(deg(degrees), mm(shaft), mm(head))
                    .kerf(mm(kerf))
                    .cleaning(mm(cleaning))
                    .nutLedge(mm(ledge));
            ScarfJoint joint = (place == JointPlace.IN_THE_HEAD
                            ? ScarfJoint.inTheHead(scarf)
                            : ScarfJoint.inTheShaft(scarf))
                    .planingHeadFace(mm(d))
                    .planingShaftFace(mm(e))
                    .veneered(HeadSide.FACE, mm(v));
            ScarfBoard cut = joint.board(mm(560), mm(190)).thinned(thinned);

            // The saw: the offcut's short face is the board's back, where the shaft reaches further.
            double board = Math.max(shaft, head);
            double shaftFace = cut.shaftCut().faceMark().libraryValue() - cleaning / Math.sin(a);
            double offcutLong = cut.length().libraryValue() - cut.headFrom().libraryValue();
            double offcutShort = offcutLong - board / Math.tan(a);
            // Turned over, the short face is the head's. Thinning it there moves it into the wedge and lengthens it.
            double headFace = offcutShort + (thinned == HeadSide.FACE ? (board - head) / Math.tan(a) : 0);
            // Where the head's face begins, in the laid-out frame with its break line at the origin.
            Vec n = Vec.Z.turned(Vec.Y, -a);
            Vec tip = new Vec(-1, 0, 0).turned(Vec.Y, -a);
            Vec begin = place == JointPlace.IN_THE_HEAD ? Vec.meet(n, 0, Vec.Z, -shaft) : new Vec(0, 0, 0);
            double shaftFaceFromBreak = place == JointPlace.IN_THE_HEAD
                    ? 0
                    : Vec.meet(n, -head, Vec.Z, 0).x();
            Vec end = begin.plus(tip.times(headFace));
            Vec finished = Vec.meet(n, v - d, Vec.Z, -e);

            String at = "seed " + SEED + " case " + i + " " + place + " thinned on its " + thinned;
            assertThat(end.minus(finished).dot(tip)).as(at).isCloseTo(190, offset(1e-9));
            assertThat(shaftFace + shaftFaceFromBreak - finished.x() - ledge)
                    .as(at)
                    .isCloseTo(560, offset(1e-9));
            assertThat(cut.headFrom().libraryValue() - shaftFace)
                    .as(at)
                    .isCloseTo((kerf + 2 * cleaning) / Math.sin(a), offset(1e-9));
            assertThat(cut.shaftCut().backMark().libraryValue()
                            - cut.shaftCut().faceMark().libraryValue())
                    .as(at)
                    .isCloseTo(board / Math.tan(a), offset(1e-9));
        }
    }

    @Test
    void board_thinnedOnTheOtherSideDiffersByTheRunOfWhatIsPlanedOff() {
        ScarfJoint joint = ScarfJoint.inTheShaft(Scarf.of(deg(13), mm(20), mm(15)));

        double onFace =
                joint.board(mm(560), mm(185)).thinned(HeadSide.FACE).length().libraryValue();
        double onBack =
                joint.board(mm(560), mm(185)).thinned(HeadSide.BACK).length().libraryValue();

        assertThat(onBack - onFace).isCloseTo(5 / Math.tan(Math.toRadians(13)), offset(1e-9));
    }

    @Test
    void board_rejectsAHeadThatEndsBeforeTheJoint() {
        ScarfJoint joint = ScarfJoint.inTheHead(Scarf.of(deg(13), mm(20), mm(15)));

        assertThatThrownBy(() -> joint.board(mm(560), mm(80)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("head length must be more than 88.908 mm, where the joint's line crosses the head, "
                        + "but was 80 mm");
    }

    @Test
    void toString_givesMarksFromTheShaftsEnd() {
        String text = ScarfJoint.inTheShaft(Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8)))
                .board(mm(560), mm(185))
                .toString();

        assertThat(text).contains("from the shaft's end").contains("turn the offcut over");
        assertThat(text.length()).isLessThan(1000);
    }
}
