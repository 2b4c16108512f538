package org.neckgeom.shape;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;
import org.neckgeom.units.LibraryUnits;

/**
 * A closed surface of triangles, as solid modellers, slicers and CAM read it. Immutable.
 *
 * <p>Points are shared by index; every triangle runs counter-clockwise seen from outside, so each edge is run once each
 * way and the signed volume is positive. Numbers are in mm.
 */
public final class Mesh {

    private static final int STL_HEADER = 80;
    private static final int STL_TRIANGLE = 50;
    private static final int OBJ_DIGITS = 9;

    private final String name;
    private final double[] points;
    private final int[] corners;
    private final double tolerance;

    private Mesh(String name, double[] points, int[] corners, double tolerance) {
        this.name = name;
        this.points = points;
        this.corners = corners;
        this.tolerance = tolerance;
    }

    /**
     * {@return a mesh}
     *
     * @param name of the piece
     * @param xyzMm x, y and z of every point in turn, in mm
     * @param corners the indices of three points to a triangle
     */
    public static Mesh of(String name, double[] xyzMm, int[] corners) {
        Words.name(name, "a mesh's name");
        double[] points = Objects.requireNonNull(xyzMm, "xyzMm").clone();
        int[] all = Objects.requireNonNull(corners, "corners").clone();
        if (points.length % 3 != 0 || all.length % 3 != 0) {
            throw Refusal.of(
                    "points and corners", "threes", "come in threes", "were", points.length + ", " + all.length);
        }
        for (int i = 0; i < points.length; i++) {
            points[i] = Spot.mm(points[i], "a point of a mesh");
        }
        for (int corner : all) {
            if (corner < 0 || corner >= points.length / 3) {
                throw Refusal.of("corner", "range", "be the index of one of " + points.length / 3 + " points", corner);
            }
        }
        return new Mesh(name, points, all, 0);
    }

    /**
     * {@return a copy that states how far it may lie from the surface it is made of}
     *
     * @param most greatest distance of a chord from its curve, 0 or more
     */
    public Mesh within(Quantity<Length> most) {
        return new Mesh(name, points, corners, LibraryUnits.mmNotNegative(most, "tolerance"));
    }

    /** {@return how far a chord may lie from its curve, in mm; 0 for a mesh that is itself what is meant} */
    public double toleranceMm() {
        return tolerance;
    }

    /** {@return the piece's name} */
    public String name() {
        return name;
    }

    /** {@return how many points it has} */
    public int points() {
        return points.length / 3;
    }

    /** {@return how many triangles it has} */
    public int triangles() {
        return corners.length / 3;
    }

    /** {@return x, y and z of every point in turn, in mm; a fresh array} */
    public double[] xyzMm() {
        return points.clone();
    }

    /** {@return the indices of three points to a triangle; a fresh array} */
    public int[] corners() {
        return corners.clone();
    }

    /** {@return the volume it encloses, in mm3; negative where it is inside out} */
    public double volumeMm3() {
        double six = 0;
        for (int t = 0; t < corners.length; t += 3) {
            int a = 3 * corners[t];
            int b = 3 * corners[t + 1];
            int c = 3 * corners[t + 2];
            six += points[a] * (points[b + 1] * points[c + 2] - points[b + 2] * points[c + 1])
                    + points[a + 1] * (points[b + 2] * points[c] - points[b] * points[c + 2])
                    + points[a + 2] * (points[b] * points[c + 1] - points[b + 1] * points[c]);
        }
        return six / 6;
    }

    /** {@return the mesh with every triangle run the other way round} */
    public Mesh turned() {
        int[] other = corners.clone();
        for (int t = 0; t < other.length; t += 3) {
            other[t + 1] = corners[t + 2];
            other[t + 2] = corners[t + 1];
        }
        return new Mesh(name, points, other, tolerance);
    }

    /** {@return the box round it: least x, y and z, then greatest x, y and z, in mm; a fresh array of six} */
    public double[] boxMm() {
        double[] box = {
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            Double.NEGATIVE_INFINITY
        };
        for (int i = 0; i < points.length; i++) {
            box[i % 3] = Math.min(box[i % 3], points[i]);
            box[i % 3 + 3] = Math.max(box[i % 3 + 3], points[i]);
        }
        return box;
    }

    /**
     * {@return the mesh as an STL file in binary: a header of 80 bytes with unit, tolerance and name, the count, and to each
     * triangle its normal and corners as 32-bit floats, little-endian}
     */
    public byte[] toStl() {
        ByteBuffer out =
                ByteBuffer.allocate(STL_HEADER + 4 + STL_TRIANGLE * triangles()).order(ByteOrder.LITTLE_ENDIAN);
        byte[] title = (unit() + ", " + name).getBytes(StandardCharsets.US_ASCII);
        out.put(title, 0, Math.min(title.length, STL_HEADER)).position(STL_HEADER);
        out.putInt(triangles());
        for (int t = 0; t < corners.length; t += 3) {
            double[] normal = normal(t);
            for (double n : normal) {
                out.putFloat((float) n);
            }
            for (int k = 0; k < 3; k++) {
                for (int axis = 0; axis < 3; axis++) {
                    out.putFloat((float) points[3 * corners[t + k] + axis]);
                }
            }
            out.putShort((short) 0);
        }
        return out.array();
    }

    private double[] normal(int t) {
        int a = 3 * corners[t];
        int b = 3 * corners[t + 1];
        int c = 3 * corners[t + 2];
        double ux = points[b] - points[a];
        double uy = points[b + 1] - points[a + 1];
        double uz = points[b + 2] - points[a + 2];
        double vx = points[c] - points[a];
        double vy = points[c + 1] - points[a + 1];
        double vz = points[c + 2] - points[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double size = Direction.length(nx, ny, nz);
        return size > 0 ? new double[] {nx / size, ny / size, nz / size} : new double[3];
    }

    private String unit() {
        return tolerance > 0 ? "mm, chords within " + digits(tolerance) : "mm";
    }

    /** {@return the mesh as an OBJ file, as {@link #obj} writes several} */
    public String toObj() {
        return obj(List.of(this));
    }

    /**
     * {@return meshes as one OBJ file in ASCII: unit and tolerance as a comment, the points to 9 digits, a group of its name
     * to each mesh, triangles counted from 1 on}
     *
     * @param meshes one or more
     */
    public static String obj(List<Mesh> meshes) {
        StringBuilder out = new StringBuilder();
        int first = 1;
        for (Mesh mesh : Objects.requireNonNull(meshes, "meshes")) {
            out.append("# ").append(Objects.requireNonNull(mesh, "mesh").unit()).append('\n');
            mesh.write(out, first);
            first += mesh.points();
        }
        return out.toString();
    }

    private void write(StringBuilder out, int first) {
        for (int i = 0; i < points.length; i += 3) {
            out.append("v ").append(digits(points[i])).append(' ').append(digits(points[i + 1]));
            out.append(' ').append(digits(points[i + 2])).append('\n');
        }
        out.append("g ").append(name.replace(' ', '_')).append('\n');
        for (int t = 0; t < corners.length; t += 3) {
            out.append("f ").append(corners[t] + first).append(' ').append(corners[t + 1] + first);
            out.append(' ').append(corners[t + 2] + first).append('\n');
        }
    }

    private static String digits(double mm) {
        return Numbers.trimmed(mm, OBJ_DIGITS);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Mesh that
                && name.equals(that.name)
                && tolerance == that.tolerance
                && Arrays.equals(points, that.points)
                && Arrays.equals(corners, that.corners);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, Arrays.hashCode(points), Arrays.hashCode(corners));
    }

    /** {@return such as {@code mesh of shaft: 1200 points, 2396 triangles}} */
    @Override
    public String toString() {
        return "mesh of " + name + ": " + points() + " points, " + triangles() + " triangles";
    }
}
