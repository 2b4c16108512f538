package org.neckgeom.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.neckgeom.neck.Channel;
import org.neckgeom.shape.Mesh;

/** The channel and its adjuster pocket as closed meshes of what the cutter takes, ends square. */
final class ChannelMesh {

    private ChannelMesh() {}

    static List<Mesh> of(Channel channel, double tolerance) {
        List<Mesh> all = new ArrayList<>();
        // An arch of sagitta s over n chords leaves them by s / n^2.
        int along = (int) Math.max(1, Math.ceil(Math.sqrt(Math.abs(channel.archMm()) / tolerance)));
        all.add(box(
                "cut: channel",
                channel.startMm(),
                channel.endMm(),
                channel.widthMm() / 2,
                channel::floorDepthAtMm,
                along));
        if (channel.hasAdjusterPocket()) {
            double start = channel.adjusterPocketStartMm();
            all.add(box(
                    "cut: adjuster pocket",
                    start,
                    start + channel.adjusterPocketLengthMm(),
                    channel.adjusterPocketWidthMm() / 2,
                    x -> channel.adjusterPocketDepthMm(),
                    1));
        }
        return all;
    }

    private static Mesh box(String name, double from, double to, double half, DoubleUnaryOperator depth, int along) {
        List<double[][]> rings = new ArrayList<>();
        for (int i = 0; i <= along; i++) {
            double x = i == along ? to : from + (to - from) * i / along;
            double low = -depth.applyAsDouble(x);
            rings.add(new double[][] {{x, -half, 0}, {x, -half, low}, {x, half, low}, {x, half, 0}});
        }
        return SolidMesh.ofRings(name, rings);
    }
}
