package org.neckgeom.solid;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.neckgeom.fault.Refusal;

/** Walks the channel from end to end and finds where the wood under it is thinnest, on plain doubles. */
final class WoodScan {

    /** Stations looked at before the thinnest is closed in on. */
    static final int STATIONS = 200;

    private static final int MOST_STATIONS = 100_000;

    private static final double GOLDEN = (StrictMath.sqrt(5) - 1) / 2;

    private WoodScan() {}

    /**
     * Returns the stations to look at: evenly spread from one end to the other, and a hair to each side of every place
     * where a depth or width jumps.
     */
    static double[] stations(double from, double to, double... jumps) {
        double hair = 1e-9 * Math.max(1, to - from);
        double[] inside = Arrays.stream(jumps).filter(x -> x > from && x < to).toArray();
        double[] all = Arrays.copyOf(evenly(from, to, STATIONS), STATIONS + 2 * inside.length);
        for (int j = 0; j < inside.length; j++) {
            all[STATIONS + 2 * j] = Math.max(from, inside[j] - hair);
            all[STATIONS + 2 * j + 1] = Math.min(to, inside[j] + hair);
        }
        Arrays.sort(all);
        return all;
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
     * Returns the station of the least value: the least of the given stations, then closed in on between its two
     * neighbours by golden section to a thousandth of a millimetre.
     */
    static double least(DoubleUnaryOperator wood, double[] stations) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < stations.length; i++) {
            double here = wood.applyAsDouble(stations[i]);
            if (here < least) {
                least = here;
                best = i;
            }
        }
        double lo = stations[Math.max(best - 1, 0)];
        double hi = stations[Math.min(best + 1, stations.length - 1)];
        double x1 = hi - GOLDEN * (hi - lo);
        double x2 = lo + GOLDEN * (hi - lo);
        double f1 = wood.applyAsDouble(x1);
        double f2 = wood.applyAsDouble(x2);
        while (hi - lo > 1e-3) {
            if (f1 < f2) {
                hi = x2;
                x2 = x1;
                f2 = f1;
                x1 = hi - GOLDEN * (hi - lo);
                f1 = wood.applyAsDouble(x1);
            } else {
                lo = x1;
                x1 = x2;
                f1 = f2;
                x2 = lo + GOLDEN * (hi - lo);
                f2 = wood.applyAsDouble(x2);
            }
        }
        double inner = f1 < f2 ? x1 : x2;
        return Math.min(f1, f2) < least ? inner : stations[best];
    }
}
