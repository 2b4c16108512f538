package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.neckgeom.kernel.Vec;

class ScarfJointTest {

    private static final long SEED = 77;

    @Test
    void lines_areWhereThePlanesMeetAfterPlaningAndVeneering() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 200; i++) {
            double degrees = 5 + 14 * random.nextDouble();
            double a = Math.toRadians(degrees);
            double shaft = 14 + 12 * random.nextDouble();
            double head = 10 + 8 * random.nextDouble();
            double d = 2 * random.nextDouble();
            double e = 2 * random.nextDouble();
            double f = 2 * random.nextDouble();
            double v = 3 * random.nextDouble();
            Scarf scarf = Scarf.of(deg(degrees), mm(shaft), mm(head));
            Vec n = Vec.Z.turned(Vec.Y, -a);
            Vec tip = new Vec(-1, 0, 0).turned(Vec.Y, -a);
            Vec breakLine = Vec.meet(n, v - d, Vec.Z, -e);
            Vec back = Vec.meet(n, -head + f, Vec.Z, -shaft);
            Vec inHeadFront = Vec.meet(n, -d, Vec.Z, -shaft);
            Vec inShaftFront = Vec.meet(n, -head, Vec.Z, -e);

            ScarfJoint inHead = planed(ScarfJoint.inTheHead(scarf), d, e, f, v);
            ScarfJoint inShaft = planed(ScarfJoint.inTheShaft(scarf), d, e, f, v);

            String at = "seed " + SEED + " case " + i;
            assertThat(inHead.breakLineShiftMm()).as(at).isCloseTo(breakLine.x(), offset(1e-9));
            assertThat(inHead.backLineMm()).as(at).isCloseTo(back.x() - breakLine.x(), offset(1e-9));
            assertThat(inShaft.backLineMm()).as(at).isEqualTo(inHead.backLineMm());
            assertThat(inHead.frontLineMm())
                    .as(at)
                    .isCloseTo(inHeadFront.minus(breakLine).dot(tip), offset(1e-9));
            assertThat(inShaft.frontLineMm()).as(at).isCloseTo(inShaftFront.x() - breakLine.x(), offset(1e-9));
            assertThat(inHead.glueFaceMm())
                    .as(at)
                    .isCloseTo(back.minus(inHeadFront).length(), offset(1e-9));
        }
    }

    @Test
    void lines_agreeWithTheTradesWorkedFigures() {
        // Common practice: at 15 deg the back line lies 2.5 mm behind the break for 19/19, 22 mm in front for 19/12.7.
        Scarf alike = Scarf.of(deg(15), mm(19), mm(19));
        Scarf thinHead = Scarf.of(deg(15), mm(19), mm(12.7));

        assertThat(ScarfJoint.inTheHead(alike).backLineMm()).isCloseTo(2.5, offset(0.05));
        assertThat(ScarfJoint.inTheShaft(thinHead).backLineMm()).isCloseTo(-22, offset(0.5));
    }

    @Test
    void veneered_onTheFaceMovesTheVisibleBreakLineTowardTheTip() {
        // Common practice: a 2.0 mm plate at 15 deg wants the wood's break line 7.7 mm nearer the heel.
        ScarfJoint joint = ScarfJoint.inTheHead(Scarf.of(deg(15), mm(19), mm(14)));

        ScarfJoint plated = joint.veneered(HeadSide.FACE, mm(2)).veneered(HeadSide.BACK, mm(0.8));

        assertThat(plated.breakLineShiftMm()).isCloseTo(-7.7, offset(0.05));
        assertThat(plated.headThickness()).isEqualTo(mm(16.8));
    }

    @Test
    void planingHeadFace_thenVeneerOfThatThicknessLeavesTheBreakLineWhereItWas() {
        ScarfJoint joint = ScarfJoint.inTheShaft(Scarf.of(deg(13), mm(20), mm(15)));

        ScarfJoint plated = joint.planingHeadFace(mm(1.5)).veneered(HeadSide.FACE, mm(1.5));

        assertThat(plated.breakLineShiftMm()).isZero();
        assertThat(plated.frontLineMm()).isEqualTo(joint.frontLineMm());
    }

    @Test
    void planingHeadFace_rejectsMoreThanThereIs() {
        ScarfJoint joint = ScarfJoint.inTheHead(Scarf.of(deg(13), mm(20), mm(15)));

        assertThatThrownBy(() -> joint.planingHeadFace(mm(15)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("wood planed off the head must be less than its thickness of 15 mm, but was 15 mm");
        assertThatThrownBy(() -> joint.planingShaftFace(mm(-0.1)))
                .hasMessage("planed off the shaft's face must be 0 mm or more, but was -0.1 mm");
    }

    @Test
    void toString_saysWhatEachLineIsMeasuredFrom() {
        String text = ScarfJoint.inTheHead(Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8)))
                .toString();

        assertThat(text).startsWith("Scarf joint in the head, 13.00 deg");
        assertThat(text).contains("along the head's face from the break line");
        assertThat(text).contains("in front of the break line");
        assertThat(text.length()).isLessThan(1000);
    }

    @Test
    void toString_saysWhichLinesAVeneerHides() {
        ScarfJoint joint = ScarfJoint.inTheHead(Scarf.of(deg(15), mm(19), mm(14)));

        assertThat(joint.veneered(HeadSide.BACK, mm(0.6)).toString()).contains("the line on the back lies under");
        assertThat(joint.veneered(HeadSide.FACE, mm(2)).toString()).contains("the line on the front lies under");
        assertThat(joint.toString()).doesNotContain("under the veneer");
    }

    @Test
    void toString_keepsInches() {
        assertThat(ScarfJoint.inTheHead(Scarf.of(deg(13), inch(0.75), inch(0.5)))
                        .toString())
                .contains(" in");
    }

    private static ScarfJoint planed(ScarfJoint joint, double d, double e, double f, double v) {
        return joint.planingHeadFace(mm(d))
                .planingShaftFace(mm(e))
                .planingHeadBack(mm(f))
                .veneered(HeadSide.FACE, mm(v));
    }

    @Test
    void planingAndVeneers_areHandedBackAsTold() {
        ScarfJoint joint = ScarfJoint.inTheHead(Scarf.of(deg(13), mm(20), mm(15)))
                .planingHeadFace(mm(1))
                .planingShaftFace(mm(0.5))
                .planingHeadBack(mm(2))
                .veneered(HeadSide.FACE, mm(1.5))
                .veneered(HeadSide.BACK, mm(0.75));

        assertThat(joint.veneerMm()).isEqualTo(1.5);
        assertThat(joint.backVeneerMm()).isEqualTo(0.75);
        // 15 less 1 and 2, and both veneers; 20 less 0.5.
        assertThat(joint.headThickness()).isEqualTo(mm(14.25));
        assertThat(joint.shaftThickness()).isEqualTo(mm(19.5));
        assertThat(joint.toString()).contains("head with veneers  14.250 mm").contains(" toward the ");
    }
}
