package org.neckgeom.strength;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A neck as a beam from the nut to the body joint: fingerboard on top, wood below, the rod's channel a void, a strip over
 * the channel, bonded bars. House units.
 *
 * @param length x of the body joint, where the neck is clamped
 * @param board the fingerboard
 * @param back the wood below the glue face
 * @param channel the rod's channel, or null
 * @param strip thickness of the strip that closes the channel from the glue face down, 0 for none; of the neck's wood
 * @param bars bonded bars
 */
record NeckBeam(double length, Board board, Back back, RodPath channel, double strip, List<BondedBar> bars) {

    /**
     * The fingerboard.
     *
     * @param width across, mm
     * @param thickness in the middle, mm
     * @param radius of the crown, mm; null for a flat board
     * @param modulus along the grain, MPa
     */
    record Board(Taper width, Taper thickness, Taper radius, double modulus) {}

    /**
     * The wood below the glue face, a half superellipse.
     *
     * @param halfWidth at the glue face, mm
     * @param depth below the glue face, mm
     * @param shape exponent and what follows from it
     * @param modulus along the grain, MPa
     */
    record Back(Taper halfWidth, Taper depth, Superellipse shape, double modulus) {}

    NeckBeam {
        bars = List.copyOf(bars);
    }

    NeckBeam withModuli(double backModulus, double boardModulus) {
        return new NeckBeam(
                length,
                new Board(board.width, board.thickness, board.radius, boardModulus),
                new Back(back.halfWidth, back.depth, back.shape, backModulus),
                channel,
                strip,
                bars);
    }

    NeckBeam withBars(List<BondedBar> others) {
        return new NeckBeam(length, board, back, channel, strip, others);
    }

    NeckBeam withoutChannel() {
        return new NeckBeam(length, board, back, null, 0, bars);
    }

    /**
     * Sums the section at a station.
     *
     * @throws ArithmeticException if the channel or a bar breaks through the back there
     */
    void section(double x, SectionMoments into) {
        into.clear();
        double curvature = board.radius == null ? 0 : 1 / board.radius.at(x);
        into.board(board.modulus, board.width.at(x), board.thickness.at(x), curvature);
        double halfWidth = back.halfWidth.at(x);
        double depth = back.depth.at(x);
        into.superellipse(back.modulus, halfWidth, depth, back.shape);
        if (channel != null && channel.covers(x)) {
            double floor = channel.depthAt(x);
            if (!back.shape.holds(channel.width() / 2, floor, halfWidth, depth)) {
                throw brokenThrough("the rod channel", x);
            }
            into.rectangle(-back.modulus, channel.width(), -floor, -Math.min(strip, floor));
        }
        for (BondedBar bar : bars) {
            if (bar.covers(x)) {
                if (!back.shape.holds(Math.abs(bar.y()) + bar.width() / 2, bar.bottom(), halfWidth, depth)) {
                    throw brokenThrough("a bar", x);
                }
                into.rectangle(bar.modulus() - back.modulus, bar.width(), -bar.bottom(), -bar.top());
            }
        }
    }

    private static ArithmeticException brokenThrough(String what, double x) {
        return new ArithmeticException(String.format(
                Locale.ROOT,
                "%s breaks through the back at %.1f mm from the nut, so the section there has no stiffness to speak of",
                what,
                x));
    }

    /** Places where the section jumps, with 0 and the length, in order. */
    double[] breaks(double... more) {
        DoubleStream own = channel == null ? DoubleStream.empty() : DoubleStream.of(channel.start(), channel.end());
        DoubleStream ofBars = bars.stream().flatMapToDouble(b -> DoubleStream.of(b.start(), b.end()));
        return Stream.of(own, ofBars, Arrays.stream(more), DoubleStream.of(0, length))
                .flatMapToDouble(stream -> stream)
                .filter(x -> x >= 0 && x <= length)
                .sorted()
                .distinct()
                .toArray();
    }
}
