package org.neckgeom.head;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.OuterStrings;
import org.neckgeom.kernel.Vec;
import org.neckgeom.neck.Scale;
import org.neckgeom.units.Amount;

/** The scarf behind a slanted nut: its planes, its two cuts, and both pieces sawn, turned and put together. */
class SlantedScarfTest {

    private static final long SEED = 631;
    private static final double SHAFT_END = 900;
    private static final double HEAD = 900;

    /** A joint with the planes it is made of, in the frame of the break line as laid out. */
    private static final class Case {
        final double a;
        final double s;
        final double shaft;
        final double head;
        final double kerf;
        final double cleaning;
        final double ledge;
        final double d;
        final double e;
        final double f;
        final double v;
        final double width;
        final Vec nutLine;
        final Vec axis;
        final Vec face;

        Case(SplittableRandom random) {
            a = Math.toRadians(random.nextDouble(3, 30));
            s = Math.toRadians(random.nextDouble(-25, 25));
            shaft = random.nextDouble(10, 30);
            head = random.nextDouble(8, 25);
            kerf = random.nextDouble(0.5, 3);
            cleaning = random.nextDouble(0, 1);
            ledge = random.nextDouble(0, 6);
            d = random.nextDouble(0, 1);
            e = random.nextDouble(0, 1);
            f = random.nextDouble(0, 1);
            v = random.nextDouble(0, 2);
            width = random.nextDouble(40, 70);
            nutLine = new Vec(Math.tan(s), 1, 0).unit();
            axis = new Vec(-Math.cos(a), 0, -Math.sin(a));
            Vec normal = nutLine.cross(axis).unit();
            face = normal.z() < 0 ? normal.times(-1) : normal;
        }

        ScarfJoint joint(boolean inHead) {
            Scarf scarf = Scarf.of(deg(Math.toDegrees(a)), mm(shaft), mm(head))
                    .kerf(mm(kerf))
                    .cleaning(mm(cleaning))
                    .nutLedge(mm(ledge))
                    .nutSlant(deg(Math.toDegrees(s)));
            return (inHead ? ScarfJoint.inTheHead(scarf) : ScarfJoint.inTheShaft(scarf))
                    .planingHeadFace(mm(d))
                    .planingShaftFace(mm(e))
                    .planingHeadBack(mm(f))
                    .veneered(HeadSide.FACE, mm(v));
        }

        /** Across the head's face to the treble. */
        Vec treble() {
            Vec across = face.cross(axis).unit();
            return across.y() < 0 ? across.times(-1) : across;
        }
    }

    @Test
    void lines_areWhereTheSlantedPlanesMeetAfterPlaningAndVeneering() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 3_000; i++) {
            Case c = new Case(random);
            // In the plane y = 0.
            Vec breakLine = Vec.meet(c.face, c.v - c.d, Vec.Z, -c.e);
            Vec back = Vec.meet(c.face, -c.head + c.f, Vec.Z, -c.shaft);
            Vec inHeadFront = Vec.meet(c.face, -c.d, Vec.Z, -c.shaft);
            Vec inShaftFront = Vec.meet(c.face, -c.head, Vec.Z, -c.e);
            Vec inShaftBack = Vec.meet(c.face, -c.head, Vec.Z, -c.shaft);
            ScarfJoint inHead = c.joint(true);
            ScarfJoint inShaft = c.joint(false);

            String at = "seed " + SEED + " case " + i;
            assertThat(inHead.breakLineShiftMm()).as(at).isCloseTo(breakLine.x(), offset(1e-10));
            assertThat(inHead.breakLineAlongHeadMm()).as(at).isCloseTo(breakLine.dot(c.axis), offset(1e-10));
            assertThat(inHead.backLineMm()).as(at).isCloseTo(back.x() - breakLine.x(), offset(1e-10));
            assertThat(inShaft.backLineMm()).as(at).isEqualTo(inHead.backLineMm());
            assertThat(inHead.frontLineMm())
                    .as(at)
                    .isCloseTo(inHeadFront.minus(breakLine).dot(c.axis), offset(1e-10));
            assertThat(inShaft.frontLineMm()).as(at).isCloseTo(inShaftFront.x() - breakLine.x(), offset(1e-10));
            assertThat(inHead.glueFaceMm())
                    .as(at)
                    .isCloseTo(back.minus(inHeadFront).length(), offset(1e-10));
            assertThat(inShaft.glueFaceMm())
                    .as(at)
                    .isCloseTo(inShaftBack.minus(inShaftFront).length(), offset(1e-10));
            assertThat(inHead.run().libraryValue())
                    .as(at)
                    .isCloseTo(Math.abs(inHeadFront.minus(back).dot(c.axis)), offset(1e-10));
            assertThat(inHead.roll().libraryValue())
                    .as(at)
                    .isCloseTo(Math.asin(-c.treble().z()), offset(1e-12));
        }
    }

    /** The board of a case with the frame its pieces belong in. */
    private static final class Sawn {
        final Case c;
        final boolean inHead;
        final ScarfBoard board;
        final double thick;
        final Vec laidOut;
        double worst;

        Sawn(Case c, boolean inHead, HeadSide thinned, double wider) {
            this.c = c;
            this.inHead = inHead;
            this.thick = Math.max(c.shaft, c.head);
            this.board = c.joint(inHead)
                    .keeping(mm(c.width))
                    .board(mm(SHAFT_END), mm(HEAD))
                    .thinned(thinned)
                    .edges(mm(c.width + wider));
            // The finished break line lies at the far side of the nut ledge.
            Vec finished = Vec.meet(c.face, c.v - c.d, Vec.Z, -c.e);
            this.laidOut = new Vec(-c.ledge - finished.x(), 0, 0);
        }

        void off(double miss) {
            worst = Math.max(worst, Math.abs(miss));
        }

        /** A point of the board in its place in the shaft: u from the shaft's end, y, z. */
        Vec inShaft(Vec point) {
            return new Vec(SHAFT_END - point.x(), point.y(), point.z()).minus(laidOut);
        }

        /** A point of the head piece, turned over about its length and moved into its place, its face at a height. */
        Vec inHead(Vec point, double faceHeight, double lineOnFace) {
            double fromBreak = inHead ? c.shaft / Math.sin(c.a) : 0;
            return c.axis.times(point.x() - lineOnFace + fromBreak)
                    .plus(c.treble().times(-point.y()))
                    .plus(c.face.times(faceHeight - point.z()));
        }
    }

    /** Clean slope or saw mark at a share of the half width (-1 bass, 1 treble) and at a height of the board. */
    private static Vec on(ScarfSaw saw, double offset, double side, double edge, double height, double thick) {
        double face = between(saw.bassFace(), saw.trebleFace(), side);
        double back = between(saw.bassBack(), saw.trebleBack(), side);
        return new Vec(face + (back - face) * -height / thick + offset, side * edge, height);
    }

    private static double between(Amount<Length> bass, Amount<Length> treble, double side) {
        double low = in(bass);
        return low + (in(treble) - low) * (side + 1) / 2;
    }

    private static double in(Amount<Length> length) {
        return length.libraryValue();
    }

    @Test
    void pieces_sawnTurnedOverThinnedAndGluedMakeTheNeck() {
        SplittableRandom random = new SplittableRandom(SEED);
        double worst = 0;
        for (int i = 0; i < 2_000; i++) {
            Case c = new Case(random);
            double wider = i % 3 == 0 ? 0 : random.nextDouble(0, 30);
            for (boolean inHead : new boolean[] {true, false}) {
                for (HeadSide thinned : HeadSide.values()) {
                    Sawn sawn = new Sawn(c, inHead, thinned, wider);
                    glue(sawn, wider);
                    apart(sawn, wider);
                    assertThat(sawn.worst)
                            .as("seed %d case %d, in the head %s, thinned on its %s", SEED, i, inHead, thinned)
                            .isLessThan(1e-9);
                    worst = Math.max(worst, sawn.worst);
                }
            }
        }
        assertThat(worst).isPositive();
    }

    /** Slopes in their planes, the head's line on the front at the shaft's, its tip at its length. */
    private static void glue(Sawn sawn, double wider) {
        Case c = sawn.c;
        ScarfBoard board = sawn.board;
        double edge = (c.width + wider) / 2;
        double faceHeight = board.thinned() == HeadSide.FACE ? -c.head : -sawn.thick;
        ScarfSaw shaft = board.shaftCut();
        ScarfSaw head = board.headCut();
        Vec onFace = on(head, in(head.cleaning()), 0, edge, faceHeight, sawn.thick);
        double glued = sawn.inHead ? -c.shaft : 0;
        for (double side : new double[] {-1, 1}) {
            for (double height : new double[] {0, -sawn.thick}) {
                Vec slope = sawn.inShaft(on(shaft, -in(shaft.cleaning()), side, edge, height, sawn.thick));
                sawn.off(slope.dot(c.face) - (sawn.inHead ? 0 : -c.head));
                // Saw mark to clean slope, square to it.
                Vec mark = sawn.inShaft(on(shaft, 0, side, edge, height, sawn.thick));
                sawn.off(mark.minus(slope).dot(c.face) - c.cleaning);
                Vec turned = sawn.inHead(
                        on(head, in(head.cleaning()), side, edge, height, sawn.thick), faceHeight, onFace.x());
                sawn.off(turned.z() - glued);
                Vec sawMark = sawn.inHead(on(head, 0, side, edge, height, sawn.thick), faceHeight, onFace.x());
                sawn.off(Math.abs(sawMark.z() - turned.z()) - c.cleaning);
            }
            Vec front = sawn.inHead(
                    on(head, in(head.cleaning()), side, edge, faceHeight, sawn.thick), faceHeight, onFace.x());
            sawn.off(front.dot(c.face));
            sawn.off(front.x() - front.y() * Math.tan(c.s) - glued / Math.tan(c.a));
        }
        sawn.off(onFace.x()
                - in(board.headFrom())
                + faceHeight / sawn.thick * (in(head.backMark()) - in(head.faceMark())));
        Vec tip = sawn.inHead(new Vec(in(board.length()), 0, faceHeight), faceHeight, onFace.x());
        Vec finished = Vec.meet(c.face, c.v - c.d, Vec.Z, -c.e);
        sawn.off(tip.minus(finished).dot(c.axis) - HEAD);
    }

    /** Both cuts with their kerfs are apart over what is kept, and touch at one place. */
    private static void apart(Sawn sawn, double wider) {
        Case c = sawn.c;
        ScarfBoard board = sawn.board;
        double kept = c.width / (c.width + wider);
        double edge = (c.width + wider) / 2;
        // Along the board the kerf is its width over the share of the cut's normal in that direction.
        double first = c.kerf / -c.face.x();
        double second = c.kerf / Math.abs(Vec.Z.dot(c.axis));
        sawn.off(second - in(board.secondKerf()));
        double gap = Double.MAX_VALUE;
        for (double side : new double[] {-kept, kept}) {
            for (double height : new double[] {0, -sawn.thick}) {
                double from = on(board.shaftCut(), first, side, edge, height, sawn.thick)
                        .x();
                double to = on(board.headCut(), -second, side, edge, height, sawn.thick)
                        .x();
                gap = Math.min(gap, to - from);
            }
        }
        sawn.off(gap);
        alone(sawn, kept, edge);
    }

    /** Each piece from a board of its own thickness, from its end or tip to its farthest saw mark. */
    private static void alone(Sawn sawn, double kept, double edge) {
        Case c = sawn.c;
        double shaft = 0;
        double head = Double.MAX_VALUE;
        for (double side : new double[] {-kept, kept}) {
            shaft = Math.max(
                    shaft,
                    on(sawn.board.shaftCut(), 0, side, edge, -c.shaft, sawn.thick)
                            .x());
            head = Math.min(
                    head, on(sawn.board.headCut(), 0, side, edge, 0, sawn.thick).x());
        }
        sawn.off(shaft - in(sawn.board.shaftAlone()));
        double tip = in(sawn.board.thinned(HeadSide.FACE).length());
        sawn.off(tip - head - in(sawn.board.headAlone()));
    }

    @Test
    void settings_areThoseOfThePlaneThroughTheMarks() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 500; i++) {
            Case c = new Case(random);
            ScarfBoard board = c.joint(i % 2 == 0).keeping(mm(c.width)).board(mm(SHAFT_END), mm(HEAD));
            double thick = Math.max(c.shaft, c.head);
            for (ScarfSaw saw : List.of(board.shaftCut(), board.headCut())) {
                Vec bass = on(saw, 0, -1, c.width / 2, 0, thick);
                Vec treble = on(saw, 0, 1, c.width / 2, 0, thick);
                Vec below = on(saw, 0, -1, c.width / 2, -thick, thick);
                Vec line = treble.minus(bass);
                Vec cut = line.cross(below.minus(bass)).unit();
                cut = cut.z() < 0 ? cut.times(-1) : cut;
                String at = "seed " + SEED + " case " + i;

                assertThat(saw.blade().libraryValue()).as(at).isCloseTo(cut.angleTo(Vec.Z), offset(1e-12));
                assertThat(saw.mitre().libraryValue()).as(at).isCloseTo(Math.atan2(-line.x(), line.y()), offset(1e-12));
                // On edge the table is square to y: the saw line runs from face to back, the blade leans by the rest.
                assertThat(saw.mitreOnEdge().libraryValue())
                        .as(at)
                        .isCloseTo(Math.atan2(thick, below.x() - bass.x()), offset(1e-12));
                assertThat(saw.bladeOnEdge().libraryValue()).as(at).isCloseTo(Math.asin(cut.y()), offset(1e-12));
            }
            assertThat(board.shaftCut().mitre().libraryValue()
                            * board.headCut().mitre().libraryValue())
                    .as("opposite hands")
                    .isNotPositive();
        }
    }

    @Test
    void board_goesToTheSquareNutsAndItsSecondKerfAsTheSlantGoesToNothing() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 200; i++) {
            Case c = new Case(random);
            for (boolean inHead : new boolean[] {true, false}) {
                Scarf scarf = Scarf.of(deg(Math.toDegrees(c.a)), mm(c.shaft), mm(c.head))
                        .kerf(mm(c.kerf))
                        .cleaning(mm(c.cleaning));
                ScarfBoard square = board(scarf, inHead, c.width);
                ScarfBoard slanted = board(scarf.nutSlant(deg(1e-10)), inHead, c.width);

                String at = "seed " + SEED + " case " + i;
                assertThat(in(slanted.length()) - in(slanted.secondKerf()))
                        .as(at)
                        .isCloseTo(in(square.length()), offset(1e-9));
                assertThat(in(slanted.shaftCut().backMark()))
                        .as(at)
                        .isCloseTo(in(square.shaftCut().backMark()), offset(1e-9));
                assertThat(in(slanted.shaftAlone())).as(at).isCloseTo(in(square.shaftAlone()), offset(1e-9));
                assertThat(in(slanted.headAlone())).as(at).isCloseTo(in(square.headAlone()), offset(1e-9));
                assertThat(in(square.secondKerf()) + in(square.oppositeHands()) + in(square.steeperCut()))
                        .as(at)
                        .isZero();
            }
        }
    }

    @Test
    void board_ofASquareNutIsTheSameWithAndWithoutWidth() {
        Scarf scarf = Scarf.of(deg(13), mm(20), mm(15)).kerf(mm(1.8));
        ScarfJoint joint = ScarfJoint.inTheShaft(scarf);

        assertThat(joint.keeping(mm(60)).board(mm(560), mm(185)).toString())
                .isEqualTo(joint.board(mm(560), mm(185)).toString());
        assertThat(scarf.nutSlant(deg(-0.0))).isEqualTo(scarf);
    }

    @Test
    void board_mirroredIsTheSameWithItsEdgesExchanged() {
        ScarfBoard one = board(Scarf.of(deg(11), mm(21), mm(15)).nutSlant(deg(12)), true, 60);
        ScarfBoard other = board(Scarf.of(deg(11), mm(21), mm(15)).nutSlant(deg(-12)), true, 60);

        assertThat(other.length()).isEqualTo(one.length());
        assertThat(other.shaftCut().bassFace()).isEqualTo(one.shaftCut().trebleFace());
        assertThat(other.headCut().trebleBack()).isEqualTo(one.headCut().bassBack());
        assertThat(other.swingAtOneMitre().libraryValue())
                .isEqualTo(-one.swingAtOneMitre().libraryValue());
        assertThat(one.swingAtOneMitre().libraryValue()).as("to the bass side").isNegative();
    }

    @Test
    void offcut_turnedOverLeansTheWrongWayByBothMitres() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 200; i++) {
            Case c = new Case(random);
            // The offcut's slope turned over about the board's length, and the direction in it that is the nut line.
            Vec offcut = c.face.times(-1).turned(Vec.X, Math.PI);
            Vec line = offcut.cross(Vec.Z).unit();
            line = line.y() < 0 ? line.times(-1) : line;
            // The head needs its nut line out of square by m toward its tip at the bass side, where its axis is -x.
            double needed = Math.asin(c.axis.dot(c.nutLine));
            double there = Math.asin(new Vec(-1, 0, 0).dot(line));

            ScarfBoard board = c.joint(true).keeping(mm(c.width)).board(mm(SHAFT_END), mm(HEAD));
            assertThat(board.offcutSwing().libraryValue())
                    .as("seed %d case %d", SEED, i)
                    .isCloseTo(Math.abs(needed - there), offset(1e-12));
        }
    }

    @Test
    void toString_givesBothCutsInOneShellText() {
        String text = ScarfJoint.inTheHead(Scarf.of(deg(11), mm(21), mm(15))
                        .kerf(mm(2.4))
                        .cleaning(mm(0.3))
                        .nutSlant(deg(20)))
                .keeping(mm(60))
                .board(mm(388.9), mm(210))
                .toString();

        assertThat(text)
                .startsWith("Board for two saw cuts of opposite hand, joint in the head")
                .contains("from the face, mitre 20.00 deg")
                .contains("from the face, mitre 19.62 deg")
                .contains("head piece on its back (the board's face)")
                .contains("the turned offcut would swing the head");
        assertThat(text.length()).isLessThan(1000);
    }

    /** 644.194 and 613.404 mm: the reference's neck "fanned", its head thinned on its back and on its face. */
    @Test
    void board_ofTheReferencesFannedNeck_isShorterWhenTheHeadsFaceIsThinned() {
        FannedFrets fan = FannedFrets.of(Scale.of(mm(686)), Scale.of(mm(648)), OuterStrings.of(mm(41.5), mm(63)), 9);
        ScarfBoard board = ScarfJoint.inTheHead(Scarf.of(deg(11), mm(21), mm(15))
                        .kerf(mm(2.4))
                        .cleaning(mm(0.3))
                        .nutSlant(fan.slant(0)))
                .keeping(mm(60))
                .board(mm(in(fan.onCentreline(14)) + 16), mm(210));

        assertThat(in(board.length())).isCloseTo(644.194457, offset(1e-6));
        assertThat(in(board.thinned(HeadSide.FACE).length())).isCloseTo(613.404, offset(5e-4));
        assertThat(board.thinned(HeadSide.FACE).thinned()).isEqualTo(HeadSide.FACE);
    }

    @Test
    void board_rejectsWhatCannotBeAnswered() {
        ScarfJoint joint =
                ScarfJoint.inTheShaft(Scarf.of(deg(11), mm(21), mm(15)).nutSlant(deg(20)));

        assertThatThrownBy(() -> joint.board(mm(400), mm(210)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("behind a slanted nut the board's length depends on the width kept; give .keeping(width)");
        assertThatThrownBy(() -> joint.keeping(mm(60)).board(mm(400), mm(210)).edges(mm(58)))
                .hasMessage("board's width must be 60 mm or more (what is kept), but was 58 mm");
        assertThatThrownBy(() -> Scarf.of(deg(11), mm(21), mm(15)).nutSlant(deg(30)))
                .hasMessage("nut slant must be more than -30 and less than 30 deg, but was 30 deg");
        // 15 K / sin 11 deg = 78.67 before the break line, and 30 tan 20 deg = 10.92 at the edge.
        assertThatThrownBy(() -> joint.keeping(mm(60)).board(mm(89), mm(210)))
                .hasMessageContaining("shaft end must be more than 89.")
                .hasMessageContaining("where the joint's line lies, but was 89 mm");
        assertThat(joint.keeping(mm(60)).board(mm(90), mm(210)).length().libraryValue())
                .isPositive();
    }

    private static ScarfBoard board(Scarf scarf, boolean inHead, double width) {
        return (inHead ? ScarfJoint.inTheHead(scarf) : ScarfJoint.inTheShaft(scarf))
                .keeping(mm(width))
                .board(mm(SHAFT_END), mm(HEAD));
    }
}
