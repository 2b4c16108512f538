package org.neckgeom.shape;

import java.util.SplittableRandom;

/** Random points, directions and frames of the tests. */
final class Vectors {

    private Vectors() {}

    static Point point(SplittableRandom random, double most) {
        return new Point(
                random.nextDouble(-most, most), random.nextDouble(-most, most), random.nextDouble(-most, most));
    }

    /** Any direction, none preferred but for the corners of a cube. */
    static Direction direction(SplittableRandom random) {
        double[] xyz = random.doubles(3, -1, 1).toArray();
        return xyz[0] * xyz[0] + xyz[1] * xyz[1] + xyz[2] * xyz[2] > 0.01
                ? new Direction(xyz[0], xyz[1], xyz[2])
                : direction(random);
    }

    static Frame frame(SplittableRandom random) {
        Direction u = direction(random);
        Direction other = direction(random);
        if (Math.abs(u.dot(other)) > 0.99) {
            return frame(random);
        }
        Direction w = u.cross(other);
        return new Frame(point(random, 500), u, w.cross(u), w);
    }
}
