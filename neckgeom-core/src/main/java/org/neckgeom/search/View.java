package org.neckgeom.search;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * How trials are compared: by the total violation of the limits, each in its own scale, and among those that keep all by a
 * weighted sum of the aims (feasibility rules of Deb 2000). A limit may be eased, an aim may have a bound of its own.
 */
final class View {

    /** Aims near 0 are distinguished by this part of their scale. */
    private static final double NEXT_TO_NOTHING = 1e-3;

    private final Scales scales;
    private final double[] weights;
    private final double[] bounds;
    private final double[] eased;

    private View(Scales scales, double[] weights, double[] bounds, double[] eased) {
        this.scales = scales;
        this.weights = weights;
        this.bounds = bounds;
        this.eased = eased;
    }

    static View of(Scales scales) {
        double[] weights = new double[scales.aims().length];
        Arrays.fill(weights, 1);
        double[] bounds = new double[weights.length];
        Arrays.fill(bounds, Double.POSITIVE_INFINITY);
        return new View(scales, weights, bounds, new double[scales.rooms().length]);
    }

    /** One aim alone, the others free. */
    View aim(int which) {
        double[] alone = new double[weights.length];
        alone[which] = 1;
        return new View(scales, alone, bounds, eased);
    }

    /** An aim no greater than so much. */
    View atMost(int which, double bound) {
        double[] more = bounds.clone();
        more[which] = bound;
        return new View(scales, weights, more, eased);
    }

    /** No aim worse than that of a trial (Benson 1978). */
    View noWorseThan(Trial trial) {
        return new View(scales, weights, trial.aims(), eased);
    }

    /** A limit eased by so much in the library unit; infinite: left out. */
    View eased(int rule, double by) {
        double[] more = eased.clone();
        more[rule] = by;
        return new View(scales, weights, bounds, more);
    }

    int rows() {
        return eased.length + (weights.length > 1 ? weights.length : 0);
    }

    /** The scaled room of a row, which has to be 0 or more; NaN where a row has no figure. */
    double room(Trial trial, int row) {
        if (row >= eased.length) {
            int aim = row - eased.length;
            return (bounds[aim] - trial.aims()[aim]) / scales.aims()[aim];
        }
        double room = trial.rooms()[row];
        return Double.isNaN(room) ? room : (room + eased[row]) / scales.rooms()[row];
    }

    /** The sum of all scaled violations: 0 keeps every limit, infinite was refused. */
    double violation(Trial trial) {
        if (trial.isRefused()) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = 0;
        for (int row = 0; row < rows(); row++) {
            sum += violation(trial, row);
        }
        return sum;
    }

    private double violation(Trial trial, int row) {
        double room = room(trial, row);
        if (row < eased.length && eased[row] == 0 || Double.isNaN(room)) {
            boolean kept = row < eased.length && (trial.kept()[row] || eased[row] > 0);
            return kept ? 0 : Double.isNaN(room) ? 1 : Math.max(Double.MIN_NORMAL, -room);
        }
        return Math.max(0, -room);
    }

    /** The room to all limits, each in its scale and counted up to that. */
    private double spare(Trial trial) {
        double sum = 0;
        for (int row = 0; row < eased.length; row++) {
            double room = room(trial, row);
            sum += Double.isNaN(room) ? 0 : Math.min(1, room);
        }
        return sum;
    }

    double objective(Trial trial) {
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            sum += weights[k] * trial.aims()[k] / scales.aims()[k];
        }
        return sum;
    }

    /** How much is lost of the objective when all aims are worse by a small part of what they are. */
    double fine(Trial trial, double part) {
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            sum += weights[k] * Math.abs(trial.aims()[k]) / scales.aims()[k];
        }
        return part * (sum + NEXT_TO_NOTHING);
    }

    boolean isFeasible(Trial trial) {
        return violation(trial) == 0;
    }

    /**
     * True when one is better than the other; of two that break limits, the one that breaks them less; of two with the same
     * aims, the one with more room.
     */
    boolean isBetter(Trial one, @Nullable Trial other) {
        if (other == null) {
            return true;
        }
        double mine = violation(one);
        double its = violation(other);
        if (mine != its) {
            return mine < its;
        }
        if (one.isRefused()) {
            return false;
        }
        double less = objective(other) - objective(one);
        return less > 0 || less == 0 && spare(one) > spare(other);
    }

    /** The best of some, the first of equals. */
    @Nullable
    Trial best(Collection<Trial> trials) {
        Trial best = null;
        for (Trial trial : trials) {
            if (isBetter(trial, best)) {
                best = trial;
            }
        }
        return best;
    }

    /** True when one is no worse in any aim and better in one, or breaks the limits less. */
    boolean dominates(Trial one, Trial other) {
        double mine = violation(one);
        double its = violation(other);
        if (mine != its || one.isRefused()) {
            return mine < its;
        }
        boolean better = false;
        for (int k = 0; k < weights.length; k++) {
            if (one.aims()[k] > other.aims()[k]) {
                return false;
            }
            better |= one.aims()[k] < other.aims()[k];
        }
        return better;
    }

    static Comparator<Trial> byOrder() {
        return Comparator.comparingInt(Trial::order);
    }
}
