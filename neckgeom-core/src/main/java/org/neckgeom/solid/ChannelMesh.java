package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.neckgeom.neck.Channel;
import org.neckgeom.shape.Mesh;

/**
 * The channel and its adjuster pocket as closed meshes of what the cutter takes; corners seen from above as round as the cutter,
 * square at an end where the channel runs out of the wood.
 */
final class ChannelMesh {

    private ChannelMesh() {}

    static List<Mesh> of(Channel channel, double cutterRadius, OpenEnds open, double tolerance) {
        List<Mesh> all = new ArrayList<>();
        // An arch of sagitta s over n chords leaves them by s / n^2.
        int along = (int) Math.max(1, Math.ceil(Math.sqrt(Math.abs(channel.archMm()) / tolerance)));
        all.add(new Box(
                        channel.startMm(),
                        channel.endMm(),
                        channel.widthMm() / 2,
                        open.isOpenAtHead(channel, channel.startMm()) ? 0 : cutterRadius,
                        open.isOpenAtHeel(channel, channel.endMm()) ? 0 : cutterRadius,
                        channel::floorDepthAtMm)
                .mesh("cut: channel", along, tolerance));
        if (channel.hasAdjusterPocket()) {
            double start = channel.adjusterPocketStartMm();
            double end = start + channel.adjusterPocketLengthMm();
            all.add(new Box(
                            start,
                            end,
                            channel.adjusterPocketWidthMm() / 2,
                            open.isOpenAtHead(channel, start) ? 0 : cutterRadius,
                            open.isOpenAtHeel(channel, end) ? 0 : cutterRadius,
                            x -> channel.adjusterPocketDepthMm())
                    .mesh("cut: adjuster pocket", 1, tolerance));
        }
        return all;
    }

    /** What a cutter takes between two ends, half of it so wide, the corners of each end rounded by so much, down to a floor. */
    private record Box(
            double from, double to, double half, double cornerFrom, double cornerTo, DoubleUnaryOperator depth) {

        Mesh mesh(String name, int along, double tolerance) {
            double most = Math.min(half, (to - from) / 2);
            double radius = Math.min(cornerFrom, most);
            int corner = chords(radius, tolerance);
            List<double[][]> rings = new ArrayList<>();
            for (int i = 0; i < corner; i++) {
                rings.add(ring(from + rise(radius, i, corner), half - radius + run(radius, i, corner)));
            }
            double radiusTo = Math.min(cornerTo, most);
            int cornerAtTo = chords(radiusTo, tolerance);
            double first = corner > 0 ? from + radius : from;
            double last = cornerAtTo > 0 ? to - radiusTo : to;
            for (int i = 0; i <= along; i++) {
                rings.add(ring(i == along ? last : first + (last - first) * i / along, half));
            }
            for (int i = cornerAtTo - 1; i >= 0; i--) {
                rings.add(ring(to - rise(radiusTo, i, cornerAtTo), half - radiusTo + run(radiusTo, i, cornerAtTo)));
            }
            return SolidMesh.ofRings(name, rings);
        }

        /** Chords of a corner; none where it is square within the tolerance. */
        private static int chords(double radius, double tolerance) {
            return radius > tolerance
                    ? (int) Math.ceil(StrictMath.PI / 4 / StrictMath.acos(1 - tolerance / radius))
                    : 0;
        }

        private static double rise(double radius, int i, int of) {
            return radius * (1 - StrictMath.cos(StrictMath.PI / 2 * i / of));
        }

        private static double run(double radius, int i, int of) {
            return radius * StrictMath.sin(StrictMath.PI / 2 * i / of);
        }

        private double[][] ring(double x, double wide) {
            double low = -depth.applyAsDouble(x);
            return new double[][] {{x, -wide, 0}, {x, -wide, low}, {x, wide, low}, {x, wide, 0}};
        }
    }
}
