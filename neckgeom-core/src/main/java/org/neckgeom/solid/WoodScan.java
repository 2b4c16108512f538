package org.neckgeom.solid;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.neckgeom.fault.Refusal;

/**
 * Walks the channel from end to end and finds where the wood under it is thinnest, on plain doubles.
 *
 * <p>Seen from a channel that moves along, each point of the back moves smoothly: its distance f obeys
 * {@code f'' <= speed^2 / f + bend}. The wood left is the least of them, so between two stations h apart it lies above the
 * chord by no less than {@code -C h^2 / 8}, C the greatest such value. Stretches whose bound is no less than the least found
 * are left out; the others are halved until the bound is within {@link #WITHIN} of it.
 */
final class WoodScan {

    /** How far below the least found the wood may still be, in mm. */
    static final double WITHIN = 1e-7;

    private static final int MOST_STATIONS = 100_000;

    /** Where no bound can be given, stretches no longer than this are taken as found. */
    private static final double SHORTEST = 1e-6;

    private static final int MOST_HALVINGS = 20_000;

    private WoodScan() {}

    /** How the points of the back move along a stretch: an upper bound of speed and of its change, beside the channel. */
    interface Motion {
        double[] boundsIn(double from, double to);
    }

    /** A stretch between two stations with the wood at both. */
    private record Stretch(double from, double to, double atFrom, double atTo) {}

    /**
     * Returns the ends of the stretches on which depth and width do not jump: both ends, and a hair to each side of every
     * jump between them.
     */
    static double[] ends(double from, double to, double... jumps) {
        double hair = 1e-9 * Math.max(1, to - from);
        return DoubleStream.concat(
                        DoubleStream.of(from, to),
                        Arrays.stream(jumps)
                                .filter(x -> x > from + hair && x < to - hair)
                                .flatMap(x -> DoubleStream.of(x - hair, x + hair)))
                .sorted()
                .distinct()
                .toArray();
    }

    /** Stations evenly spread, both ends among them. */
    static double[] evenly(double from, double to, int stations) {
        if (stations < 2 || stations > MOST_STATIONS) {
            throw Refusal.of("stations", "range", "be 2 to " + MOST_STATIONS, "were", stations);
        }
        double[] all = new double[stations];
        for (int i = 0; i < stations; i++) {
            all[i] = i == stations - 1 ? to : from + (to - from) * i / (stations - 1);
        }
        return all;
    }

    /**
     * Returns the station of the least wood.
     *
     * @param ends of the stretches, ascending
     */
    static double least(DoubleUnaryOperator wood, Motion motion, double[] ends) {
        Deque<Stretch> open = new ArrayDeque<>();
        double[] at = new double[ends.length];
        int best = 0;
        for (int i = 0; i < ends.length; i++) {
            at[i] = wood.applyAsDouble(ends[i]);
            best = at[i] < at[best] ? i : best;
        }
        double station = ends[best];
        double least = at[best];
        for (int i = 0; i + 1 < ends.length; i++) {
            open.push(new Stretch(ends[i], ends[i + 1], at[i], at[i + 1]));
        }
        for (int n = 0; !open.isEmpty() && n < MOST_HALVINGS; n++) {
            Stretch s = open.pop();
            if (s.to - s.from < SHORTEST || bound(s, motion) >= least - WITHIN) {
                continue;
            }
            double middle = (s.from + s.to) / 2;
            double here = wood.applyAsDouble(middle);
            if (here < least) {
                least = here;
                station = middle;
            }
            Stretch first = new Stretch(s.from, middle, s.atFrom, here);
            Stretch second = new Stretch(middle, s.to, here, s.atTo);
            // The half with the lower end comes first: its finds may spare the other.
            open.push(s.atFrom < s.atTo ? second : first);
            open.push(s.atFrom < s.atTo ? first : second);
        }
        return station;
    }

    /** No less wood than this lies on the stretch. */
    private static double bound(Stretch s, Motion motion) {
        double h = s.to - s.from;
        double[] move = motion.boundsIn(s.from, s.to);
        double low = Math.min(s.atFrom, s.atTo);
        double nearest = low - move[0] * h / 2;
        if (!(nearest > 0)) {
            return nearest;
        }
        double bend = move[0] * move[0] / nearest + move[1];
        double rise = s.atTo - s.atFrom;
        double sag = bend * h * h / 2;
        // chord - sag t (1 - t), least at t = 1/2 - rise / (2 sag) where that lies inside
        double t = sag > 0 ? 0.5 - rise / (2 * sag) : -1;
        return t > 0 && t < 1 ? s.atFrom + rise * t - sag * t * (1 - t) : low;
    }
}
