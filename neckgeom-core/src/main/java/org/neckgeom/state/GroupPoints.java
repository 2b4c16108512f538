package org.neckgeom.state;

import java.util.SplittableRandom;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.numeric.NormalLaw;

/**
 * Chance that deviations keep their limits together, by points of a lattice: the causes that are not normal by their inverse
 * distribution function, the normal part one variable after the other, each within what its limit leaves (A. Genz, J. Comp.
 * Graph. Stat. 1, 1992, 141; A. Genz and K.-S. Kwong, J. Stat. Comput. Simul. 68, 2000, 1, for singular covariances; both
 * from memory). Sixteen fixed shifts of one lattice give the error; the points double until it is small.
 */
final class GroupPoints {

    private static final int SHIFTS = 16;
    private static final int FIRST = 1 << 9;
    private static final int MOST = 1 << 15;
    private static final double WANTED = 1e-4;
    private static final double SINGULAR = 1e-12;
    private static final double LEANS = 1e-9;
    private static final long SEED = 20_250_611L;

    private final Group group;
    private final int size;
    private final double[][] root;

    /** Of a singular row the variable that it narrows, or -1. */
    private final int[] leansOn;

    private final int dimension;

    GroupPoints(Group group) {
        this.group = group;
        this.size = group.size();
        this.root = new double[size][size];
        this.leansOn = new int[size];
        factor();
        int n = 0;
        for (Group.Other one : group.others()) {
            n += one.logDeviation() > 0.0 ? 2 : 1;
        }
        this.dimension = n + size;
    }

    private void factor() {
        for (int j = 0; j < size; j++) {
            double left = group.covariance()[j][j];
            for (int k = 0; k < j; k++) {
                left -= root[j][k] * root[j][k];
            }
            root[j][j] = left > SINGULAR * group.covariance()[j][j] ? Math.sqrt(left) : 0.0;
            for (int i = j + 1; i < size; i++) {
                double sum = group.covariance()[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                root[i][j] = root[j][j] > 0.0 ? sum / root[j][j] : 0.0;
            }
            leansOn[j] = -1;
            if (root[j][j] == 0.0) {
                for (int k = 0; k < j; k++) {
                    leansOn[j] = root[k][k] > 0.0 && Math.abs(root[j][k]) > LEANS * group.sd(j) ? k : leansOn[j];
                }
            }
        }
    }

    /** The chance and its error, three times the standard error of the means. */
    double[] chance() {
        SplittableRandom random = new SplittableRandom(SEED);
        double[][] shifts = new double[SHIFTS][dimension];
        for (double[] shift : shifts) {
            for (int i = 0; i < dimension; i++) {
                shift[i] = random.nextDouble();
            }
        }
        double[] steps = steps(dimension);
        double[] sums = new double[SHIFTS];
        int done = 0;
        double mean = 0.0;
        double error = 1.0;
        for (int points = FIRST; points <= MOST && error > WANTED; points *= 2) {
            mean = 0.0;
            double square = 0.0;
            for (int s = 0; s < SHIFTS; s++) {
                for (int p = done; p < points; p++) {
                    sums[s] += point(p + 1, steps, shifts[s]);
                }
                double one = sums[s] / points;
                mean += one / SHIFTS;
                square += one * one / SHIFTS;
            }
            done = points;
            error = 3.0 * Math.sqrt(Math.max(0.0, square - mean * mean) / (SHIFTS - 1.0));
        }
        return new double[] {Math.max(0.0, Math.min(1.0, mean)), error};
    }

    /** Square roots of the primes, modulo 1 (R. D. Richtmyer's lattice). */
    private static double[] steps(int dimension) {
        double[] steps = new double[dimension];
        int prime = 1;
        for (int i = 0; i < dimension; i++) {
            prime++;
            while (!isPrime(prime)) {
                prime++;
            }
            steps[i] = Math.sqrt(prime) % 1.0;
        }
        return steps;
    }

    private static boolean isPrime(int n) {
        for (int k = 2; k * k <= n; k++) {
            if (n % k == 0) {
                return false;
            }
        }
        return n > 1;
    }

    private static double coordinate(int p, double step, double shift) {
        double x = (p * step + shift) % 1.0;
        double tent = Math.abs(2.0 * x - 1.0); // makes the lattice's error fall faster
        return Math.max(1e-15, Math.min(1.0 - 1e-15, tent));
    }

    private double point(int p, double[] steps, double[] shift) {
        double[] at = new double[size];
        double[] z = new double[size];
        int c = 0;
        for (Group.Other one : group.others()) {
            double value = quantile(one.cause().spread(), coordinate(p, steps[c], shift[c])) * one.factor();
            c++;
            if (one.logDeviation() > 0.0) {
                value *= StrictMath.exp(one.logDeviation() * NormalLaw.quantile(coordinate(p, steps[c], shift[c])));
                c++;
            }
            for (int j = 0; j < size; j++) {
                at[j] += one.coefficients()[j] * value;
            }
        }
        double chance = 1.0;
        for (int j = 0; j < size && chance > 0.0; j++) {
            if (leansOn[j] >= 0) {
                continue;
            }
            double already = at[j];
            for (int k = 0; k < j; k++) {
                already += root[j][k] * z[k];
            }
            if (root[j][j] == 0.0) {
                chance *= already >= group.low()[j] && already <= group.high()[j] ? 1.0 : 0.0;
                continue;
            }
            double low = (group.low()[j] - already) / root[j][j];
            double high = (group.high()[j] - already) / root[j][j];
            for (int i = j + 1; i < size; i++) {
                if (leansOn[i] == j) {
                    double its = at[i];
                    for (int k = 0; k < j; k++) {
                        its += root[i][k] * z[k];
                    }
                    double one = (group.low()[i] - its) / root[i][j];
                    double other = (group.high()[i] - its) / root[i][j];
                    low = Math.max(low, Math.min(one, other));
                    high = Math.min(high, Math.max(one, other));
                }
            }
            if (!(high > low)) {
                return 0.0;
            }
            double below = NormalLaw.cdf(low);
            double inside = NormalLaw.between(low, high);
            chance *= inside;
            double place = below + coordinate(p, steps[c + j], shift[c + j]) * inside;
            z[j] = NormalLaw.quantile(Math.max(1e-300, Math.min(1.0 - 1e-16, place)));
        }
        return chance;
    }

    /** Value about its mean that is not exceeded with probability p. */
    private static double quantile(ErrorDistribution<?> spread, double p) {
        double a = spread.libraryScale();
        return switch (spread.law()) {
            case NORMAL -> a * NormalLaw.quantile(p);
            case RECTANGULAR -> a * (2.0 * p - 1.0);
            case TRIANGULAR -> p < 0.5 ? a * (Math.sqrt(2.0 * p) - 1.0) : a * (1.0 - Math.sqrt(2.0 * (1.0 - p)));
            case TRAPEZOIDAL -> trapezoid(a, spread.libraryTopScale(), p);
            case ARCSINE -> -a * StrictMath.cos(Math.PI * p);
            case BIAS -> 0.0;
            case SAMPLES -> {
                double[] samples = spread.libraryCentredSamples();
                yield samples[(int) Math.min(samples.length - 1.0, p * samples.length)];
            }
        };
    }

    private static double trapezoid(double a, double b, double p) {
        double density = 1.0 / (a + b);
        double corner = 0.5 * (a - b) * density;
        if (p < corner) {
            return -a + Math.sqrt(2.0 * p * (a - b) / density);
        }
        return p > 1.0 - corner ? a - Math.sqrt(2.0 * (1.0 - p) * (a - b) / density) : -b + (p - corner) / density;
    }
}
