package org.neckgeom.head;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.hipparchus.dfp.Dfp;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Numerics;
import org.neckgeom.validation.Numerics.Point;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** The scarf and the head against what was published, computed elsewhere, or is said by the trade. */
public final class HeadChecks {

    private HeadChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        scarf(checks.topic("Scarf and head"));
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
                .figure(19.3, ScarfRun.of(mm(22.2), mm(63.5)).pitch().valueIn(ShopUnit.DEGREE), 0.05)
                .of("ScarfRun.pitch");
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
        Numerics.worst(checks, "swing of a slanted scarf cut alike", "0.1 to 30 deg, 1e-4 to 20 deg", 1e-9, 10_000)
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
                .of("SlantedScarf.swingIfCutAlike");
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
