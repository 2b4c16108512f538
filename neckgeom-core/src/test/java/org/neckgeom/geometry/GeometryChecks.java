package org.neckgeom.geometry;

import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Map;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.dfp.Dfp;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Rod;
import org.neckgeom.design.Scale;
import org.neckgeom.measure.Spread;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Numerics;
import org.neckgeom.validation.Numerics.Point;
import org.neckgeom.validation.Rows;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** The neck's geometry against what was published, computed elsewhere, or is said by the trade. */
public final class GeometryChecks {

    private GeometryChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        frets(checks.topic("Frets"));
        scarf(checks.topic("Scarf and head"));
        neckSet(checks.topic("Heel and neck angle"));
        board(checks.topic("Fingerboard and strings"));
        back(checks.topic("Wood left"));
    }

    private static void frets(Checks checks) {
        Check rule = checks.check(
                "rule of eighteen, frets 1 to 24", Source.MPMATH, "fret-positions-650.csv", Status.EXACT, "cent");
        rule.of("Fret.centsFrom");
        FretTable table = FretTable.of(Scale.of(mm(650)), 24);
        for (Map<String, String> row : Rows.of("/geometry/fret-positions-650.csv")) {
            int n = (int) Rows.number(row, "n");
            if (n > 0) {
                rule.figure(
                        Rows.number(row, "rule_of_18_error_cents"),
                        table.fret(n)
                                .centsFrom(mm(Rows.number(row, "rule_of_18_position_mm")
                                        - Rows.number(row, "distance_from_nut_mm"))),
                        1e-8);
            }
        }
        Check tenth =
                checks.check("0.1 mm too far at frets 1, 12, 20 of 648 mm", Source.TRADE, "", Status.PRACTICE, "cent");
        tenth.of("Fret.centsFrom", "Fret.sounding");
        FretTable long648 = FretTable.of(Scale.of(mm(648)), 20);
        double[][] figures = {{1, 0.28}, {12, 0.53}, {20, 0.85}};
        for (double[] figure : figures) {
            Fret fret = long648.fret((int) figure[0]);
            tenth.figure(figure[1], fret.centsFrom(mm(0.1)), 0.006);
        }
        SplittableRandom random = new SplittableRandom(100);
        Numerics.worst(checks, "cents of a misplaced fret", "1e-9 to 1 mm on 100 to 900 mm", 1e-9, 10_000)
                .points(() -> {
                    double sounding = random.nextDouble(100, 900);
                    double off = Math.pow(10, random.nextDouble(-9, 0));
                    Dfp ratio =
                            Numerics.of(sounding).divide(Numerics.of(sounding).subtract(Numerics.of(off)));
                    return new Point(
                            Numerics.log(ratio)
                                    .divide(Numerics.log(Numerics.TWO))
                                    .multiply(1200),
                            FretKernel.cents(sounding, off));
                })
                .of("Fret.centsFrom");
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
                        Scarf.at(deg(degrees[i]))
                                .shaft(mm(row[0]))
                                .head(mm(row[0]))
                                .inTheShaft()
                                .glueFaceMm(),
                        0.6);
            }
        }
        Check planing = checks.check(
                "break line moved per mm planed off head or shaft", Source.TRADE, "", Status.PRACTICE, "mm");
        planing.of("ScarfJoint.breakLineShift");
        double[][] shifts = {{10, 5.8, 5.7}, {13, 4.4, 4.3}, {15, 3.9, 3.7}, {17, 3.4, 3.3}};
        for (double[] row : shifts) {
            ScarfJoint joint = Scarf.at(deg(row[0])).shaft(mm(20)).head(mm(15)).inTheHead();
            planing.figure(row[1], joint.planingHeadFace(mm(1)).breakLineShiftMm(), 0.051)
                    .figure(-row[2], joint.planingShaftFace(mm(1)).breakLineShiftMm(), 0.051);
        }
        Check lines = checks.check("joint line on the back at 15 deg", Source.TRADE, "", Status.PRACTICE, "mm");
        lines.of("ScarfJoint.backLine");
        lines.figure(2.5, scarf15(19).inTheHead().backLineMm(), 0.05)
                .figure(-22, scarf15(12.7).inTheShaft().backLineMm(), 0.5);
        checks.check("pitch of a run of 63.5 on 22.2", Source.TRADE, "a known trap", Status.PRACTICE, "deg")
                .figure(19.3, ScarfRun.of(mm(22.2), mm(63.5)).pitch().valueIn(ShopUnit.DEGREE), 0.05)
                .of("ScarfRun.pitch");
        checks.check("run that 15 deg needs on 22.2", Source.TRADE, "a known trap", Status.PRACTICE, "mm")
                .figure(82.9, ScarfRun.of(mm(22.2), mm(63.5)).runFor(deg(15)).house(), 0.06)
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
                    return new Point(exact, ScarfKernel.backLineX(shaft, head, a));
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
                    Dfp pitch = Numerics.of(deg(a).house());
                    Dfp run = Numerics.of(post)
                            .multiply(Numerics.cos(pitch))
                            .add(Numerics.of(over).multiply(Numerics.sin(pitch)));
                    Dfp fall = Numerics.of(slot)
                            .add(Numerics.of(post).multiply(Numerics.sin(pitch)))
                            .subtract(Numerics.of(over).multiply(Numerics.cos(pitch)));
                    return new Point(
                            Numerics.atan(fall.divide(run)),
                            StringBreak.over(deg(a))
                                    .post(mm(post), mm(over))
                                    .nutSlot(mm(slot))
                                    .angle()
                                    .house());
                })
                .of("StringBreak.angle");
    }

    private static Scarf scarf15(double head) {
        return Scarf.at(deg(15)).shaft(mm(19)).head(mm(head));
    }

    private static void neckSet(Checks checks) {
        NeckSet set = NeckSet.scale(mm(648))
                .bodyAtFret(14)
                .fretPlane(mm(7))
                .saddle(mm(15))
                .atNut(mm(0.4))
                .action(mm(2.2));
        checks.check("14th fret to saddle at 648 mm", Source.TRADE, "", Status.PRACTICE, "mm")
                .figure(289, set.reach().house(), 0.5)
                .of("NeckSet.reach");
        checks.check("off an 80 mm heel for 3 mm at the bridge", Source.TRADE, "", Status.PRACTICE, "mm")
                .figure(0.83, set.wedge(mm(80), mm(3)).cutMm(), 0.005)
                .of("NeckSet.wedge", "HeelWedge.cut");
        checks.check("off a 50 mm cheek for 0.575 mm at the bridge", Source.TRADE, "", Status.PRACTICE, "mm")
                .figure(0.1, set.cheek(mm(50), mm(0.575)).cutMm(), 0.001)
                .of("NeckSet.cheek", "HeelCheek.cut");
        Check sway = checks.check(
                "half a degree sideways about a 14th fret: at saddle and nut", Source.TRADE, "", Status.PRACTICE, "mm");
        double joint = Scale.of(mm(648)).fretMm(14);
        sway.of("NeckSet.reach")
                .figure(2.5, set.reach().house() * Math.tan(Math.toRadians(0.5)), 0.05)
                .figure(3.1, joint * Math.tan(Math.toRadians(0.5)), 0.05);

        SplittableRandom random = new SplittableRandom(300);
        Numerics.worst(
                        checks,
                        "neck angle",
                        "S 100 to 500, a_s 0.5 to 15, H within 25 mm, down to 1e-9 off level",
                        1e-9,
                        10_000)
                .points(() -> {
                    double reach = random.nextDouble(100, 500);
                    double string = random.nextDouble(0.5, 15);
                    double rise = random.nextBoolean()
                            ? random.nextDouble(-25, 25)
                            : string + Math.pow(10, random.nextDouble(-9, 0)) * (random.nextBoolean() ? 1 : -1);
                    Dfp s = Numerics.of(reach);
                    Dfp a = Numerics.of(string);
                    Dfp exact = Numerics.asin(Numerics.of(rise)
                                    .divide(s.multiply(s).add(a.multiply(a)).sqrt()))
                            .subtract(Numerics.atan(a.divide(s)));
                    return new Point(exact, NeckSetKernel.angle(rise, reach, string));
                })
                .of("NeckSet.angle", "NeckAngle.angle");
        Numerics.worst(checks, "string moved by a turn of the neck", "1e-9 to 10 deg, at -5 to 8 deg", 1e-9, 10_000)
                .points(() -> {
                    double reach = random.nextDouble(100, 500);
                    double string = random.nextDouble(0.5, 15);
                    double angle = Math.toRadians(random.nextDouble(-5, 8));
                    double turn = Math.toRadians(Math.pow(10, random.nextDouble(-9, 1)));
                    Dfp t = Numerics.of(angle);
                    Dfp after = t.add(Numerics.of(turn));
                    Dfp s = Numerics.of(reach);
                    Dfp a = Numerics.of(string);
                    Dfp rise = s.multiply(Numerics.sin(t)).add(a.multiply(Numerics.cos(t)));
                    Dfp exact = rise.subtract(s.multiply(Numerics.sin(after)))
                            .divide(Numerics.cos(after))
                            .subtract(a);
                    return new Point(exact, NeckSetKernel.stringChange(reach, string, angle, turn));
                })
                .of("NeckSet.actionPer");
        Numerics.worst(checks, "sagitta of crown or dome", "R 100 to 1e7, y 1e-3 to 90 mm", 1e-9, 10_000)
                .points(() -> {
                    double radius = Math.pow(10, random.nextDouble(2, 7));
                    double y = Math.pow(10, random.nextDouble(-3, 1.95));
                    return new Point(Numerics.sagitta(radius, y), NeckSetKernel.drop(radius, y));
                })
                .of("BoardSection.drop", "BoardSection.edge");
    }

    private static void board(Checks checks) {
        Check rise = checks.check(
                "rise of a 304.8 mm crown over 42 and 56 mm", Source.MPMATH, "R - sqrt(R^2 - y^2)", Status.EXACT, "mm");
        rise.of("BoardSection.drop")
                .relative(0.72428574448764439189, drop(304.8, 42), 1e-13)
                .relative(1.2888140446879674511, drop(304.8, 56), 1e-13);
        Check trade = checks.check("drop from centre to edge", Source.TRADE, "", Status.PRACTICE, "mm");
        trade.of("BoardSection.drop");
        for (double[] row : new double[][] {{305, 43, 0.76}, {305, 56, 1.29}, {241, 43, 0.96}, {184, 43, 1.26}}) {
            trade.figure(row[2], drop(row[0], row[1]), 0.006);
        }
        NeckDesign compound = NeckDesign.named("compound")
                .scale(mm(648))
                .frets(22)
                .bodyAtFret(16)
                .fingerboard(Fingerboard.tapered(mm(43), mm(57))
                        .secondAtFret(22)
                        .thickness(mm(6))
                        .radius(inch(10), inch(16)));
        checks.check("10 in at the nut, 16 at fret 22: at the bridge", Source.TRADE, "", Status.PRACTICE, "in")
                .figure(18.3, BoardShape.of(compound).radiusAtSaddle(mm(648)).house() / 25.4, 0.1)
                .of("BoardShape.radiusAtSaddle");
        double each = 3.76 / 6;
        StringPlaces places = StringSpacing.diameters(mm(each), mm(each), mm(each), mm(each), mm(each), mm(each))
                .across(mm(36.63))
                .equalGaps();
        checks.check("gap of six strings over 36.63 mm", Source.TRADE, "", Status.PRACTICE, "mm")
                .figure(6.57, places.gaps().get(0).house(), 0.005)
                .of("StringSpacing.equalGaps", "StringPlaces.gaps");
    }

    private static double drop(double radius, double width) {
        return BoardSection.of(mm(width), mm(6), mm(radius)).drop(mm(width / 2)).house();
    }

    private static void back(Checks checks) {
        Check distance = checks.check(
                "distance to the carved back, over its size",
                Source.MPMATH,
                "superellipse-distance.csv",
                Status.EXACT,
                "");
        distance.of("WoodLeft.at", "WoodAt.wood", "BackCurve.depthAt");
        for (Map<String, String> row : Rows.of("/geometry/superellipse-distance.csv")) {
            double a = Rows.number(row, "a");
            double b = Rows.number(row, "b");
            double size = Math.max(a, b);
            double ours = new SuperellipseArc(Rows.number(row, "p"))
                    .distance(Rows.number(row, "u"), Rows.number(row, "v"), a, b);
            distance.figure(Rows.number(row, "distance") / size, ours / size, SuperellipseArc.ACCURACY);
        }
        Check polyline = checks.check(
                "the same from a polyline of 20,000 points", Source.JTS, "LineString.distance", Status.LIBRARY, "mm");
        polyline.of("WoodLeft.at", "WoodAt.wood");
        SplittableRandom random = new SplittableRandom(400);
        for (int n = 0; n < 20; n++) {
            double p = 1 + 5 * random.nextDouble();
            double a = 14 + 20 * random.nextDouble();
            double b = 10 + 18 * random.nextDouble();
            double u = 0.7 * a * random.nextDouble();
            double v = b * random.nextDouble();
            GeometryFactory factory = new GeometryFactory();
            Coordinate[] points = new Coordinate[20_001];
            for (int i = 0; i < points.length; i++) {
                double t = StrictMath.PI / 2 * i / (points.length - 1);
                points[i] = new Coordinate(
                        a * StrictMath.pow(StrictMath.cos(t), 2 / p), b * StrictMath.pow(StrictMath.sin(t), 2 / p));
            }
            LineString curve = factory.createLineString(points);
            polyline.figure(
                    curve.distance(factory.createPoint(new Coordinate(u, v))),
                    Math.abs(new SuperellipseArc(p).distance(u, v, a, b)),
                    2e-5);
        }
        Check chance = checks.check(
                "chance of under 4 to 7 mm of wood, carved to u 0.3 mm",
                Source.STATISTICS,
                "NormalDistribution",
                Status.LIBRARY,
                "");
        chance.of("WoodLeft.chanceBelow", "WoodChance.probability", "WoodLeft.least");
        WoodLeft wood = WoodLeft.under(
                Channel.forRod(Rod.twoWay(mm(300), mm(6), mm(9))),
                BackProfile.between(mm(15), mm(15)),
                Scale.of(mm(560)),
                x -> 18);
        for (double limit = 4; limit <= 7; limit += 0.25) {
            // Under a half ellipse the nearest wood is not straight down: a normal carving counts one to one.
            chance.figure(
                    NormalDistribution.of(wood.least().woodMm(), 0.3).cumulativeProbability(limit),
                    wood.chanceBelow(
                                    mm(limit),
                                    WoodSpreads.ofDepth(Spread.normal(mm(0))).carving(Spread.normal(mm(0.3))))
                            .probability(),
                    1e-12);
        }
        Numerics.worst(checks, "wood under a point on the middle of a half circle", "R 10 to 30 mm", 1e-9, 10_000)
                .points(() -> {
                    double radius = random.nextDouble(10, 30);
                    double u = 0.5 * radius * random.nextDouble();
                    double v = 0.5 * radius * random.nextDouble();
                    Dfp exact = Numerics.of(radius)
                            .subtract(Numerics.of(u)
                                    .multiply(Numerics.of(u))
                                    .add(Numerics.of(v).multiply(Numerics.of(v)))
                                    .sqrt());
                    return new Point(exact, new SuperellipseArc(2).distance(u, v, radius, radius));
                })
                .of("WoodLeft.at");
    }
}
