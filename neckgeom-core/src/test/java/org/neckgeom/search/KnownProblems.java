package org.neckgeom.search;

import java.util.Arrays;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.neckgeom.measure.Limits;
import org.neckgeom.sweep.Axis;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** Problems whose optimum is known from elsewhere; a design is its variables. */
final class KnownProblems {

    private KnownProblems() {}

    /** A formula of the variables. */
    interface Formula {
        double of(double[] x);
    }

    static Amount<Dimensionless> one(double value) {
        return Amount.of(value, ShopUnit.ONE);
    }

    static double[] with(double[] x, int place, double value) {
        double[] changed = x.clone();
        changed[place] = value;
        return changed;
    }

    /** Continuous variables x1, x2, ... between bounds, and the aim f. */
    static Search<double[]> problem(Formula f, double[]... bounds) {
        Search<double[]> search = Search.of(new double[bounds.length]);
        for (int k = 0; k < bounds.length; k++) {
            int place = k;
            search = search.between(
                    "x" + (k + 1), one(bounds[k][0]), one(bounds[k][1]), (x, v) -> with(x, place, v.value()));
        }
        return search.least("f", x -> one(f.of(x)));
    }

    /** g is 0 or less. */
    static Search<double[]> atMostZero(Search<double[]> search, String name, Formula g) {
        return keeping(search, name, g, Limits.atMost(one(0)));
    }

    private static Search<double[]> keeping(
            Search<double[]> search, String name, Formula g, Limits<Dimensionless> limits) {
        return search.within(name, x -> one(g.of(x)), limits);
    }

    /** Hock, Schittkowski 1981, problem 43 (Rosen, Suzuki): f = -44 at (0, 1, 2, -1). */
    static Search<double[]> rosenSuzuki() {
        return rosenSuzuki(10, Limits.atMost(one(0)));
    }

    /** The same from -bound to bound, its three limits in another unit. */
    static Search<double[]> rosenSuzuki(double bound, Limits<Dimensionless> zero) {
        double[] bounds = {-bound, bound};
        Search<double[]> search = problem(
                x -> x[0] * x[0]
                        + x[1] * x[1]
                        + 2 * x[2] * x[2]
                        + x[3] * x[3]
                        - 5 * x[0]
                        - 5 * x[1]
                        - 21 * x[2]
                        + 7 * x[3],
                bounds,
                bounds,
                bounds,
                bounds);
        search = keeping(
                search,
                "g1",
                x -> x[0] * x[0] + x[1] * x[1] + x[2] * x[2] + x[3] * x[3] + x[0] - x[1] + x[2] - x[3] - 8,
                zero);
        search = keeping(
                search,
                "g2",
                x -> x[0] * x[0] + 2 * x[1] * x[1] + x[2] * x[2] + 2 * x[3] * x[3] - x[0] - x[3] - 10,
                zero);
        return keeping(
                search, "g3", x -> 2 * x[0] * x[0] + x[1] * x[1] + x[2] * x[2] + 2 * x[0] - x[1] - x[3] - 5, zero);
    }

    /** Hock, Schittkowski 1981, problem 100; Runarsson, Yao 2000, g09: f = 680.6300573745. */
    static Search<double[]> seven() {
        double[] b = {-10, 10};
        Search<double[]> search = problem(
                x -> sq(x[0] - 10)
                        + 5 * sq(x[1] - 12)
                        + sq(sq(x[2]))
                        + 3 * sq(x[3] - 11)
                        + 10 * sq(sq(x[4])) * sq(x[4])
                        + 7 * sq(x[5])
                        + sq(sq(x[6]))
                        - 4 * x[5] * x[6]
                        - 10 * x[5]
                        - 8 * x[6],
                b,
                b,
                b,
                b,
                b,
                b,
                b);
        search = atMostZero(search, "g1", x -> 2 * sq(x[0]) + 3 * sq(sq(x[1])) + x[2] + 4 * sq(x[3]) + 5 * x[4] - 127);
        search = atMostZero(search, "g2", x -> 7 * x[0] + 3 * x[1] + 10 * sq(x[2]) + x[3] - x[4] - 282);
        search = atMostZero(search, "g3", x -> 23 * x[0] + sq(x[1]) + 6 * sq(x[5]) - 8 * x[6] - 196);
        return atMostZero(
                search, "g4", x -> 4 * sq(x[0]) + sq(x[1]) - 3 * x[0] * x[1] + 2 * sq(x[2]) + 5 * x[5] - 11 * x[6]);
    }

    /** Runarsson, Yao 2000, g06: f = -6961.81387558 in a sliver between two circles. */
    static Search<double[]> sliver() {
        Search<double[]> search = problem(
                x -> sq(x[0] - 10) * (x[0] - 10) + sq(x[1] - 20) * (x[1] - 20),
                new double[] {13, 100},
                new double[] {0, 100});
        search = atMostZero(search, "g1", x -> 100 - sq(x[0] - 5) - sq(x[1] - 5));
        return atMostZero(search, "g2", x -> sq(x[0] - 6) + sq(x[1] - 5) - 82.81);
    }

    /** Runarsson, Yao 2000, g08: f = -0.0958250414180 among many local optima. */
    static Search<double[]> waves() {
        double[] b = {1e-6, 10};
        Search<double[]> search = problem(
                x -> {
                    double sine = StrictMath.sin(2 * StrictMath.PI * x[0]);
                    return -sine
                            * sine
                            * sine
                            * StrictMath.sin(2 * StrictMath.PI * x[1])
                            / (x[0] * x[0] * x[0] * (x[0] + x[1]));
                },
                b,
                b);
        search = atMostZero(search, "g1", x -> sq(x[0]) - x[1] + 1);
        return atMostZero(search, "g2", x -> 1 - x[0] + sq(x[1] - 4));
    }

    /**
     * A pressure vessel: shell and head thickness in steps of 1/16 in, radius and length continuous (Sandgren 1990; with a
     * length of at most 200 in the optimum is 6059.714335).
     */
    static Search<double[]> vessel() {
        Axis<Dimensionless> sixteenths = Axis.steps(one(0.0625), one(6.1875), one(0.0625));
        double pi = StrictMath.PI;
        Search<double[]> search = Search.of(new double[4])
                .over("shell", sixteenths, (x, v) -> with(x, 0, v.value()))
                .over("head", sixteenths, (x, v) -> with(x, 1, v.value()))
                .between("radius", one(10), one(200), (x, v) -> with(x, 2, v.value()))
                .between("length", one(10), one(200), (x, v) -> with(x, 3, v.value()))
                .least(
                        "cost",
                        x -> one(0.6224 * x[0] * x[2] * x[3]
                                + 1.7781 * x[1] * sq(x[2])
                                + 3.1661 * sq(x[0]) * x[3]
                                + 19.84 * sq(x[0]) * x[2]));
        search = atMostZero(search, "shell thick enough", x -> 0.0193 * x[2] - x[0]);
        search = atMostZero(search, "head thick enough", x -> 0.00954 * x[2] - x[1]);
        return atMostZero(search, "volume", x -> 1_296_000 - pi * sq(x[2]) * x[3] - 4.0 / 3 * pi * sq(x[2]) * x[2]);
    }

    /** Invented: eight kinds of things, up to three of each: 65,536 loads. */
    static final int[] WEIGHTS = {23, 31, 29, 44, 53, 38, 63, 85};

    static final int[] WORTHS = {92, 57, 49, 68, 60, 43, 67, 84};

    static Search<double[]> knapsack(int load) {
        Search<double[]> search = Search.of(new double[WEIGHTS.length]);
        for (int k = 0; k < WEIGHTS.length; k++) {
            int place = k;
            search = search.over("x" + k, Axis.steps(one(0), one(3), one(1)), (x, v) -> with(x, place, v.value()));
        }
        return search.greatest("worth", x -> one(sum(x, WORTHS)))
                .within("load", x -> one(sum(x, WEIGHTS)), Limits.atMost(one(load)));
    }

    /** The same by every load there is. */
    static int bestWorth(int load) {
        int[] best = new int[load + 1];
        for (int k = 0; k < WEIGHTS.length; k++) {
            int[] more = best.clone();
            for (int count = 1; count <= 3; count++) {
                for (int w = count * WEIGHTS[k]; w <= load; w++) {
                    more[w] = Math.max(more[w], best[w - count * WEIGHTS[k]] + count * WORTHS[k]);
                }
            }
            best = more;
        }
        return best[load];
    }

    private static double sum(double[] x, int[] factors) {
        double sum = 0;
        for (int k = 0; k < x.length; k++) {
            sum += x[k] * factors[k];
        }
        return sum;
    }

    /** Zitzler, Deb, Thiele 2000, ZDT1 in thirty variables: f2 = 1 - sqrt(f1) on the front. */
    static Search<double[]> zdt1() {
        double[][] bounds = new double[30][];
        Arrays.setAll(bounds, k -> new double[] {0, 1});
        return problem(x -> x[0], bounds).least("f2", x -> {
            double sum = 0;
            for (int k = 1; k < x.length; k++) {
                sum += x[k];
            }
            double g = 1 + 9 * sum / (x.length - 1);
            return one(g * (1 - Math.sqrt(x[0] / g)));
        });
    }

    /** Binh, Korn 1997: both aims along a front between x1 = x2 up to 3 and x2 = 3 beyond. */
    static Search<double[]> binhKorn() {
        Search<double[]> search = problem(x -> 4 * sq(x[0]) + 4 * sq(x[1]), new double[] {0, 5}, new double[] {0, 3})
                .least("f2", x -> one(sq(x[0] - 5) + sq(x[1] - 5)));
        search = atMostZero(search, "g1", x -> sq(x[0] - 5) + sq(x[1]) - 25);
        return search.within("g2", x -> one(sq(x[0] - 8) + sq(x[1] + 3)), Limits.atLeast(one(7.7)));
    }

    static double sq(double v) {
        return v * v;
    }

    static List<double[]> aims(SearchResult<double[]> result) {
        return result.front().stream()
                .map(point -> point.aims().values().stream()
                        .mapToDouble(Amount::value)
                        .toArray())
                .toList();
    }
}
