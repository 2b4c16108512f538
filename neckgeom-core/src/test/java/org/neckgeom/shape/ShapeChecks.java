package org.neckgeom.shape;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.math.Vector3D;
import org.neckgeom.validation.Check;
import org.neckgeom.validation.Checks;
import org.neckgeom.validation.Rows;
import org.neckgeom.validation.Source;
import org.neckgeom.validation.Status;

/** Points, planes, lines and outlines with arcs against a script of its own and general libraries. */
public final class ShapeChecks {

    private ShapeChecks() {}

    @SuppressWarnings("exports") // a package of the tests
    public static void into(Checks checks) {
        Checks shapes = checks.topic("Plane and solid shapes");
        arcs(shapes);
        planes(shapes);
        directions(shapes);
    }

    /** An arc over its chord along u, from its bulge, closed by the chord. */
    private static void arcs(Checks checks) {
        Check sagitta = checks.check("sagitta of arcs", Source.SCIPY, "solid-arcs.csv", Status.EXACT, "mm");
        Check area = checks.check("area of arcs over their chord", Source.SCIPY, "solid-arcs.csv", Status.EXACT, "mm2");
        Check length = checks.check("radius times angle", Source.SCIPY, "solid-arcs.csv", Status.EXACT, "mm");
        Check chords = checks.check(
                "chords of arcs for a tolerance of 0.05 mm", Source.SCIPY, "solid-arcs.csv", Status.EXACT, "");
        sagitta.of("Polyline.extentsMm");
        area.of("Polyline.areaMm2");
        length.of("Polyline.lengthMm");
        chords.of("Polyline.spots");
        for (Map<String, String> row : Rows.of("/solid/solid-arcs.csv")) {
            double chord = Rows.number(row, "chord");
            double bulge = Rows.number(row, "bulge");
            Polyline arc = Polyline.closed(List.of(new Spot(0, 0), new Spot(chord, 0)), bulge, 0);
            sagitta.relative(Rows.number(row, "sagitta"), -arc.extentsMm()[1], 1e-8);
            area.relative(Rows.number(row, "segment_area"), arc.areaMm2(), 3e-8);
            double angle = Math.toRadians(Rows.number(row, "angle"));
            length.relative(Rows.number(row, "radius") * angle, arc.lengthMm() - chord, 1e-8);
            chords.figure(
                    Rows.number(row, "chords"), arc.straightened(0.05).spots().size() - 1, 0);
        }
    }

    private static void planes(Checks checks) {
        Check point = checks.check("point of three planes", Source.HIPPARCHUS, "LUDecomposition", Status.LIBRARY, "mm");
        point.of("Plane.with");
        SplittableRandom random = new SplittableRandom(21);
        for (int i = 0; i < 200; i++) {
            Plane[] planes = new Plane[3];
            double[][] rows = new double[3][];
            double[] right = new double[3];
            for (int k = 0; k < 3; k++) {
                planes[k] = new Plane(Vectors.direction(random), random.nextDouble(-300, 300));
                rows[k] = planes[k].normal().toArray();
                right[k] = planes[k].offsetMm();
            }
            LUDecomposition solver = new LUDecomposition(new Array2DRowRealMatrix(rows));
            if (Math.abs(solver.getDeterminant()) > 0.01) {
                double[] expected =
                        solver.getSolver().solve(new ArrayRealVector(right)).toArray();
                double[] ours = planes[0].with(planes[1], planes[2]).toMm();
                for (int k = 0; k < 3; k++) {
                    point.figure(expected[k], ours[k], 1e-8);
                }
            }
        }
    }

    private static void directions(Checks checks) {
        Check cosine = checks.check("cosine of two directions", Source.JTS, "Vector3D", Status.LIBRARY, "");
        Check segment =
                checks.check("distance of a point from a line, z 0", Source.JTS, "LineSegment", Status.LIBRARY, "mm");
        cosine.of("Direction.dot", "Direction.angleTo");
        segment.of("Line.distanceMm");
        SplittableRandom random = new SplittableRandom(22);
        for (int i = 0; i < 200; i++) {
            Direction a = Vectors.direction(random);
            Direction b = Vectors.direction(random);
            double expected = new Vector3D(a.x(), a.y(), a.z()).dot(new Vector3D(b.x(), b.y(), b.z()));
            cosine.figure(expected, a.dot(b), 1e-15);
            cosine.figure(expected, Math.cos(a.angleTo(b).libraryValue()), 1e-15);
            double[] at = random.doubles(6, -50, 50).toArray();
            segment.figure(
                    new LineSegment(at[0], at[1], at[2], at[3]).distance(new Coordinate(at[4], at[5])),
                    new Line(new Point(at[0], at[1], 0), new Point(at[2], at[3], 0))
                            .distanceMm(new Point(at[4], at[5], 0)),
                    1e-12);
        }
    }
}
