package org.neckgeom.solid;

import static org.neckgeom.units.ShopUnits.mm;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.dfp.Dfp;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.neckgeom.channel.JigPlay;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Scale;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shape.Curve;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Numerics;
import org.neckgeom.validation.Numerics.Point;
import org.neckgeom.validation.PracticeFigures;
import org.neckgeom.validation.Rows;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** The wood left under the channel against what was published, computed elsewhere, or is said by the trade. */
public final class SolidChecks {

    private SolidChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        back(checks.topic("Wood left"));
        jigs(checks.topic("Jigs in the channel"));
    }

    private static void jigs(Checks checks) {
        String from = "practice-2-figures.csv";
        Check u = checks.check("standard uncertainty by play of pins", Source.SCRIPT, from, Status.EXACT, "mm");
        Check worst = checks.check("worst offset by play of pins", Source.SCRIPT, from, Status.EXACT, "mm");
        double[][] pins = {{20, 380, 500}, {10, 110, -180}, {10, 380, -180}, {20, 380, 200}};
        for (int i = 0; i < pins.length; i++) {
            JigPlay play = JigPlay.at(mm(pins[i][0]), mm(pins[i][1])).play(mm(0.05));
            u.relative(
                    PracticeFigures.of("J" + (i + 1) + "a"),
                    play.uncertaintyAt(mm(pins[i][2])).libraryValue(),
                    1e-8);
            worst.relative(
                    PracticeFigures.of("J" + (i + 1) + "b"),
                    play.worstAt(mm(pins[i][2])).libraryValue(),
                    1e-8);
        }
        u.of("JigPlay.uncertaintyAt");
        worst.of("JigPlay.worstAt");
        Check angle = checks.check("worst angle by play of pins", Source.SCRIPT, from, Status.EXACT, "deg");
        angle.of("JigPlay.worstAngle");
        for (int i = 0; i < 2; i++) {
            JigPlay play = JigPlay.at(mm(0), mm(i == 0 ? 100 : 360)).play(mm(0.05));
            angle.relative(
                    PracticeFigures.of("J" + (i + 5)),
                    Math.toDegrees(play.worstAngle().libraryValue()),
                    1e-8);
        }
        Check taper = checks.check("edge of a taper jig, bush 16, cutter 12", Source.SCRIPT, from, Status.EXACT, "mm");
        Check square = checks.check("edge measured square to the taper", Source.SCRIPT, from, Status.EXACT, "mm");
        ChannelJig jig = ChannelJig.of(JigCut.TAPER, NeckSolid.of(ChannelJigTest.plain()))
                .guided(mm(16), mm(12));
        for (int x : new int[] {0, 100, 200, 300, 359, 450}) {
            double edge = jig.at(List.of(mm(x))).points().get(1).yMm();
            double plain = PracticeFigures.of("J7_" + x);
            // The script's table takes g across the neck; its J8 is what measuring it square to the edge takes off.
            taper.figure(plain, edge, 2.1e-4);
            square.figure(PracticeFigures.of("J8"), plain - edge, 1e-7);
        }
        taper.of("ChannelJig.inside");
        square.of("ChannelJig.inside");
    }

    private static void back(Checks checks) {
        Check distance = checks.check(
                "distance to the carved back, over its size",
                Source.MPMATH,
                "superellipse-distance.csv",
                Status.EXACT,
                "");
        distance.of("FloorThickness.at", "WoodAt.wood", "BackCurve.depthAt");
        for (Map<String, String> row : Rows.of("/solid/superellipse-distance.csv")) {
            double a = Rows.number(row, "a");
            double b = Rows.number(row, "b");
            double size = Math.max(a, b);
            double ours = new SuperellipseArc(Rows.number(row, "p"))
                    .distance(Rows.number(row, "u"), Rows.number(row, "v"), a, b);
            distance.figure(Rows.number(row, "distance") / size, ours / size, SuperellipseArc.ACCURACY);
        }
        Check polyline = checks.check(
                "the same from a polyline of 20,000 points", Source.JTS, "LineString.distance", Status.LIBRARY, "mm");
        polyline.of("FloorThickness.at", "WoodAt.wood");
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
                "probability of under 4 to 7 mm of wood, carved to u 0.3 mm",
                Source.STATISTICS,
                "NormalDistribution",
                Status.LIBRARY,
                "");
        chance.of("FloorThickness.probabilityBelow", "FloorProbability.probability", "FloorThickness.least");
        FloorThickness wood = FloorThickness.under(
                Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), mm(9))),
                BackShape.of(BackProfile.between(mm(15), mm(15)), Scale.of(mm(560)), Curve.level(18)));
        for (double limit = 4; limit <= 7; limit += 0.25) {
            // Under a half ellipse the nearest wood is not straight down: a normal carving counts one to one.
            chance.figure(
                    NormalDistribution.of(wood.least().woodMm(), 0.3).cumulativeProbability(limit),
                    wood.probabilityBelow(
                                    mm(limit),
                                    WoodSpreads.ofDepth(ErrorDistribution.normal(mm(0)))
                                            .carving(ErrorDistribution.normal(mm(0.3))))
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
                .of("FloorThickness.at");
    }
}
