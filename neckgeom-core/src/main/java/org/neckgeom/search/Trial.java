package org.neckgeom.search;

import java.util.Arrays;

/**
 * A design that was asked: its coordinates, its aims (each to be least), the room to each limit (below 0 outside; NaN where
 * a limit is only kept or not), and which limits it keeps.
 *
 * @param order its place in the order of asking
 * @param refusal why it has no figures, or empty
 */
@SuppressWarnings("ArrayRecordComponent") // stays in this package; a trial equals itself alone
record Trial(int order, double[] at, double[] aims, double[] rooms, boolean[] kept, String refusal) {

    static Trial refused(int order, double[] at, String refusal) {
        return new Trial(order, at, new double[0], new double[0], new boolean[0], refusal);
    }

    boolean isRefused() {
        return !refusal.isEmpty();
    }

    /** Coordinates as the key of a map. */
    record Key(double[] at) {

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && Arrays.equals(at, key.at);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(at);
        }
    }
}
