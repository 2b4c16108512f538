package org.neckgeom.head;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import javax.measure.quantity.Angle;
import org.hipparchus.dfp.Dfp;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.OuterStrings;
import org.neckgeom.neck.Scale;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Numerics;
import org.neckgeom.validation.Numerics.Point;
import org.neckgeom.validation.Rows;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** The scarf and the head against what was published, computed elsewhere, or is said by the trade. */
public final class HeadChecks {

    private static final String TABLE = "solid-scarf.csv";

    /** What is given, a board that cannot be sawn, and what the script holds its own pieces to. */
    private static final Set<String> NOT_OURS =
            Set.of("width kept", "one cut, if it were possible", "worst miss when both pieces are put together");

    private HeadChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        scarf(checks.topic("Scarf and head"));
        boards(checks);
        planing(checks);
    }

    /** One of the table's necks: bass and treble scale, perpendicular fret, spread at nut and saddle, and its scarf. */
    private record Given(FannedFrets fan, double pitch, double shaft, double head, double length, double past) {

        /** Figures from the head of solid.py. */
        static Given of(String neck) {
            return neck.equals("straight")
                    ? new Given(fan(640, 640, 36, 54, 0), 13, 20, 14, 190, 18)
                    : new Given(fan(686, 648, 41.5, 63, 9), 11, 21, 15, 210, 16);
        }

        private static FannedFrets fan(double bass, double treble, double atNut, double atSaddle, double square) {
            return FannedFrets.of(
                    Scale.of(mm(bass)), Scale.of(mm(treble)), OuterStrings.of(mm(atNut), mm(atSaddle)), square);
        }

        ScarfJoint joint(boolean inHead) {
            Scarf scarf = Scarf.of(deg(pitch), mm(shaft), mm(head))
                    .kerf(mm(2.4))
                    .cleaning(mm(0.3))
                    .nutSlant(fan.slant(0));
            return inHead ? ScarfJoint.inTheHead(scarf) : ScarfJoint.inTheShaft(scarf);
        }

        ScarfBoard board(boolean inHead) {
            double end = fan.onCentreline(14).libraryValue() + past;
            return joint(inHead).keeping(mm(60)).board(mm(end), mm(length)).thinned(HeadSide.BACK);
        }
    }

    private static void boards(Checks checks) {
        Check marks = checks.check("scarf board, marks and lengths", Source.SCIPY, TABLE, Status.EXACT, "mm")
                .of("ScarfBoard.length", "ScarfBoard.headFrom", "ScarfBoard.oppositeHands", "ScarfBoard.steeperCut")
                .of("ScarfBoard.secondKerf", "ScarfBoard.shaftCut", "ScarfBoard.headCut", "ScarfJoint.glueFace")
                .of("ScarfSaw.faceMark", "ScarfSaw.bassFace", "ScarfSaw.trebleFace", "ScarfSaw.cleaning")
                .of("ScarfSaw.backMark", "ScarfSaw.bassBack", "ScarfSaw.trebleBack");
        Check angles = checks.check("scarf board, saw settings", Source.SCIPY, TABLE, Status.EXACT, "deg")
                .of("ScarfSaw.blade", "ScarfSaw.mitre", "ScarfSaw.mitreOnEdge", "ScarfSaw.bladeOnEdge")
                .of("ScarfBoard.offcutSwing", "Scarf.nutSlant");
        for (Map<String, String> row : Rows.of("/solid/solid-scarf.csv")) {
            if (!row.get("joint").startsWith("in the ")) {
                continue;
            }
            Given given = Given.of(row.get("neck"));
            boolean inHead = row.get("joint").equals("in the head");
            double expected = Rows.number(row, "value");
            Map<String, Double> lengths = lengths(given.joint(inHead), given.board(inHead));
            Map<String, Amount<Angle>> settings = settings(given.joint(inHead), given.board(inHead));
            String what = row.get("what");
            if (lengths.containsKey(what)) {
                marks.figure(expected, lengths.get(what), 1e-6);
            } else if (settings.containsKey(what)) {
                angles.figure(expected, settings.get(what).valueIn(ShopUnit.DEGREE), 1e-7);
            } else if (!NOT_OURS.contains(what)) {
                throw new IllegalStateException("no answer for " + what);
            }
        }
    }

    private static Map<String, Double> lengths(ScarfJoint joint, ScarfBoard board) {
        ScarfSaw shaft = board.shaftCut();
        ScarfSaw head = board.headCut();
        double clean = head.cleaning().libraryValue();
        // One cut behind a square nut: the head piece's clean slope lies kerf and two cleanings past the shaft's mark.
        double toSlope = board.headFrom().libraryValue() - head.faceMark().libraryValue();
        Map<String, Double> all = new HashMap<>();
        all.put(
                "shaft saw mark, face, centreline, from the shaft end",
                shaft.faceMark().libraryValue());
        all.put("shaft saw mark, face, bass edge", shaft.bassFace().libraryValue());
        all.put("shaft saw mark, face, treble edge", shaft.trebleFace().libraryValue());
        all.put("shaft saw mark, back, centreline", shaft.backMark().libraryValue());
        all.put("shaft saw mark, back, bass edge", shaft.bassBack().libraryValue());
        all.put("shaft saw mark, back, treble edge", shaft.trebleBack().libraryValue());
        all.put(
                "head line of the clean slope, face of the board, centreline",
                board.headFrom().libraryValue());
        all.put("head line, face, bass edge", head.bassFace().libraryValue() + toSlope);
        all.put("head line, face, treble edge", head.trebleFace().libraryValue() + toSlope);
        all.put(
                "head saw mark, face, centreline, the saw on the shaft side",
                board.headFrom().libraryValue() - clean);
        all.put("head line, back, centreline", head.backMark().libraryValue() + toSlope);
        all.put("head line, back, bass edge", head.bassBack().libraryValue() + toSlope);
        all.put("head line, back, treble edge", head.trebleBack().libraryValue() + toSlope);
        all.put(
                "extra for the opposite hand (w/2)(tan s + tan m)",
                board.oppositeHands().libraryValue());
        all.put(
                "extra for the two runs B(1/tan a - 1/(tan d cos m))",
                board.steeperCut().libraryValue());
        all.put("second kerf k / sin a", board.secondKerf().libraryValue());
        all.put("least board length", board.length().libraryValue());
        all.put("glue face length where y = 0", joint.glueFaceMm());
        return all;
    }

    private static Map<String, Amount<Angle>> settings(ScarfJoint joint, ScarfBoard board) {
        return Map.of(
                "pitch along the centreline", joint.scarf().angle(),
                "nut slant s", joint.scarf().nutSlant(),
                "blade from the face, both cuts", board.headCut().blade(),
                "mitre on the shaft, on its face", board.shaftCut().mitre(),
                "mitre on the head piece, board face up, the other hand",
                        board.headCut().mitre(),
                "board on edge: mitre, shaft", board.shaftCut().mitreOnEdge(),
                "board on edge: mitre, head piece", board.headCut().mitreOnEdge(),
                "board on edge: blade from square, shaft", board.shaftCut().bladeOnEdge(),
                "board on edge: blade from square, head piece", board.headCut().bladeOnEdge(),
                "head swings in its own face if the turned offcut is used", board.offcutSwing());
    }

    private static void planing(Checks checks) {
        Check planing = checks.check(
                "scarf's lines after planing and veneering, slanted nut too", Source.SCIPY, TABLE, Status.EXACT, "mm");
        planing.of("ScarfJoint.breakLineShift", "ScarfJoint.backLine", "ScarfJoint.frontLine");
        for (Map<String, String> row : Rows.of("/solid/solid-scarf.csv")) {
            String[] words = row.get("joint").split(" ");
            if (!words[0].equals("head")) {
                continue;
            }
            // head face -0.4 shaft face -0.3 head back -0.5 veneer 1.2
            ScarfJoint joint = Given.of(row.get("neck"))
                    .joint(true)
                    .planingHeadFace(mm(Math.abs(Double.parseDouble(words[2]))))
                    .planingShaftFace(mm(Math.abs(Double.parseDouble(words[5]))))
                    .planingHeadBack(mm(Math.abs(Double.parseDouble(words[8]))))
                    .veneered(HeadSide.FACE, mm(Double.parseDouble(words[10])));
            double ours = switch (row.get("what")) {
                case "break line moves, y = 0" -> joint.breakLineShiftMm();
                case "line on the back from the new break line, y = 0" -> joint.backLineMm();
                case "in the head: line on the front, along the head" -> joint.frontLineMm();
                default -> throw new IllegalStateException("no answer for " + row.get("what"));
            };
            planing.figure(Rows.number(row, "value"), ours, 1e-6);
        }
    }

    private static void scarf(Checks checks) {
        Check face = checks.check(
                "glue face, 5 thicknesses at 10 to 17 deg, whole mm", Source.TRADE, "", Status.PRACTICE, "mm");
        face.of("ScarfJoint.glueFace");
        double[] degrees = {10, 12, 13, 14, 15, 16, 17};
        double[][] faces = {
            {16.0, 92, 77, 71, 66, 62, 58, 55},
            {19.0, 109, 91, 84, 79, 73, 69, 65},
            {20.6, 119, 99, 92, 85, 80, 75, 70},
            {22.2, 128, 107, 99, 92, 86, 81, 76},
            {25.4, 146, 122, 113, 105, 98, 92, 87}
        };
        for (double[] row : faces) {
            for (int i = 0; i < degrees.length; i++) {
                face.figure(
                        row[i + 1],
                        ScarfJoint.inTheShaft(Scarf.of(deg(degrees[i]), mm(row[0]), mm(row[0])))
                                .glueFaceMm(),
                        0.6);
            }
        }
        Check planing = checks.check(
                "break line moved per mm planed off head or shaft", Source.TRADE, "", Status.PRACTICE, "mm");
        planing.of("ScarfJoint.breakLineShift");
        double[][] shifts = {{10, 5.8, 5.7}, {13, 4.4, 4.3}, {15, 3.9, 3.7}, {17, 3.4, 3.3}};
        for (double[] row : shifts) {
            ScarfJoint joint = ScarfJoint.inTheHead(Scarf.of(deg(row[0]), mm(20), mm(15)));
            planing.figure(row[1], joint.planingHeadFace(mm(1)).breakLineShiftMm(), 0.051)
                    .figure(-row[2], joint.planingShaftFace(mm(1)).breakLineShiftMm(), 0.051);
        }
        Check lines = checks.check("joint line on the back at 15 deg", Source.TRADE, "", Status.PRACTICE, "mm");
        lines.of("ScarfJoint.backLine");
        lines.figure(2.5, ScarfJoint.inTheHead(scarf15(19)).backLineMm(), 0.05)
                .figure(-22, ScarfJoint.inTheShaft(scarf15(12.7)).backLineMm(), 0.5);
        checks.check("pitch of a run of 63.5 on 22.2", Source.TRADE, "a known trap", Status.PRACTICE, "deg")
                .figure(19.3, ScarfRun.of(mm(22.2), mm(63.5)).angle().valueIn(ShopUnit.DEGREE), 0.05)
                .of("ScarfRun.angle");
        checks.check("run that 15 deg needs on 22.2", Source.TRADE, "a known trap", Status.PRACTICE, "mm")
                .figure(82.9, ScarfRun.of(mm(22.2), mm(63.5)).runFor(deg(15)).libraryValue(), 0.06)
                .of("ScarfRun.runFor");

        SplittableRandom random = new SplittableRandom(200);
        Numerics.worst(checks, "scarf slope and run", "0.1 to 45 deg", 1e-9, 10_000)
                .points(() -> {
                    double a = Math.toRadians(random.nextDouble(0.1, 45));
                    double t = random.nextDouble(8, 40);
                    boolean run = random.nextBoolean();
                    Dfp exact =
                            Numerics.of(t).divide(run ? Numerics.tan(Numerics.of(a)) : Numerics.sin(Numerics.of(a)));
                    return new Point(exact, run ? ScarfKernel.run(t, a) : ScarfKernel.slope(t, a));
                })
                .of("Scarf.run", "ScarfJoint.run", "ScarfJoint.glueFace");
        Numerics.worst(
                        checks,
                        "joint line on the back",
                        "0.1 to 45 deg, head as thick as the shaft or 0.1 mm off",
                        1e-9,
                        10_000)
                .points(() -> {
                    double a = Math.toRadians(random.nextDouble(0.1, 45));
                    double shaft = random.nextDouble(8, 40);
                    double head = shaft + (random.nextBoolean() ? 0 : random.nextDouble(-0.1, 0.1));
                    Dfp pitch = Numerics.of(a);
                    Dfp exact = Numerics.of(head)
                            .divide(Numerics.sin(pitch))
                            .subtract(Numerics.of(shaft).divide(Numerics.tan(pitch)));
                    return new Point(exact, ScarfKernel.breakLineShift(head, shaft, a));
                })
                .of("ScarfJoint.backLine");
        Numerics.worst(checks, "roll of a head sawn out of square", "0.1 to 45 deg, 1e-6 to 10 deg", 1e-9, 10_000)
                .points(() -> {
                    double a = Math.toRadians(random.nextDouble(0.1, 45));
                    double g = Math.toRadians(Math.pow(10, random.nextDouble(-6, 1)));
                    Dfp exact = Numerics.atan(Numerics.tan(Numerics.of(a)).multiply(Numerics.sin(Numerics.of(g))));
                    return new Point(exact, ScarfKernel.roll(a, g));
                })
                .of("ScarfRoll.roll");
        Numerics.worst(
                        checks,
                        "swing of a slanted scarf cut at one mitre",
                        "0.1 to 30 deg, 1e-4 to 20 deg",
                        1e-9,
                        10_000)
                .points(() -> {
                    double d = Math.toRadians(random.nextDouble(0.1, 30));
                    double s = Math.toRadians(Math.pow(10, random.nextDouble(-4, 1.3)));
                    Dfp sin = Numerics.sin(Numerics.of(s));
                    Dfp cos = Numerics.cos(Numerics.of(s));
                    Dfp fold = Numerics.cos(Numerics.of(d));
                    Dfp exact = Numerics.atan(sin.multiply(cos)
                            .multiply(Numerics.ONE.subtract(fold))
                            .divide(sin.multiply(sin).add(cos.multiply(cos).multiply(fold))));
                    return new Point(exact, ScarfKernel.foldYaw(d, s));
                })
                .of("ScarfBoard.swingAtOneMitre");
        Numerics.worst(checks, "string's break over the nut", "pitch 0.5 to 25 deg, post 20 to 200 mm", 1e-9, 10_000)
                .points(() -> {
                    double a = random.nextDouble(0.5, 25);
                    double post = random.nextDouble(20, 200);
                    double over = random.nextDouble(0, 3);
                    double slot = random.nextDouble(6, 9);
                    Dfp pitch = Numerics.of(deg(a).libraryValue());
                    Dfp run = Numerics.of(post)
                            .multiply(Numerics.cos(pitch))
                            .add(Numerics.of(over).multiply(Numerics.sin(pitch)));
                    Dfp fall = Numerics.of(slot)
                            .add(Numerics.of(post).multiply(Numerics.sin(pitch)))
                            .subtract(Numerics.of(over).multiply(Numerics.cos(pitch)));
                    return new Point(
                            Numerics.atan(fall.divide(run)),
                            BreakAngle.over(deg(a), mm(slot))
                                    .post(mm(post), mm(over))
                                    .angle()
                                    .libraryValue());
                })
                .of("BreakAngle.angle");
    }

    private static Scarf scarf15(double head) {
        return Scarf.of(deg(15), mm(19), mm(head));
    }
}
