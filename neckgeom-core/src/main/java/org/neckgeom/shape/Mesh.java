package org.neckgeom.shape;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;

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

    private Mesh(String name, double[] points, int[] corners) {
        this.name = name;
        this.points = points;
        this.corners = corners;
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
        if (Objects.requireNonNull(xyzMm, "xyzMm").length % 3 != 0
                || Objects.requireNonNull(corners, "corners").length % 3 != 0) {
            throw Refusal.of(
                    "points and corners", "threes", "come in threes", "were", xyzMm.length + ", " + corners.length);
        }
        for (int corner : corners) {
            if (corner < 0 || corner >= xyzMm.length / 3) {
                throw Refusal.of("corner", "range", "be the index of one of " + xyzMm.length / 3 + " points", corner);
            }
        }
        double[] points = new double[xyzMm.length];
        for (int i = 0; i < points.length; i++) {
            points[i] = Spot.mm(xyzMm[i], "a point of a mesh");
        }
        return new Mesh(name, points, corners.clone());
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
        return new Mesh(name, points, other);
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
     * {@return the mesh as an STL file in binary: a header of 80 bytes, the count, and to each triangle its normal and
     * corners as 32-bit floats, little-endian}
     */
    public byte[] toStl() {
        ByteBuffer out =
                ByteBuffer.allocate(STL_HEADER + 4 + STL_TRIANGLE * triangles()).order(ByteOrder.LITTLE_ENDIAN);
        byte[] title = ("mm, " + name).getBytes(StandardCharsets.US_ASCII);
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

    /** {@return the mesh as an OBJ file in ASCII: its points to 9 digits, a group of its name, its triangles from 1 on} */
    public String toObj() {
        StringBuilder out = new StringBuilder(40 * points());
        out.append("# mm\n");
        for (int i = 0; i < points.length; i += 3) {
            out.append("v ").append(digits(points[i])).append(' ').append(digits(points[i + 1]));
            out.append(' ').append(digits(points[i + 2])).append('\n');
        }
        out.append("g ").append(name.replace(' ', '_')).append('\n');
        for (int t = 0; t < corners.length; t += 3) {
            out.append("f ").append(corners[t] + 1).append(' ').append(corners[t + 1] + 1);
            out.append(' ').append(corners[t + 2] + 1).append('\n');
        }
        return out.toString();
    }

    private static String digits(double mm) {
        return Numbers.trimmed(mm, OBJ_DIGITS);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Mesh that
                && name.equals(that.name)
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
