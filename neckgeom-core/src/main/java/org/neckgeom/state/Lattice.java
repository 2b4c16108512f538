package org.neckgeom.state;

import java.util.SplittableRandom;

/**
 * Points of a lattice in a unit cube, shifted by fixed random numbers: square roots of the primes, modulo 1 (R. D. Richtmyer),
 * folded so that its error falls faster.
 */
final class Lattice {

    private static final long SEED = 20_250_611L;
    private static final double END = 1e-15;

    private final double[] steps;
    private final double[][] shifts;

    Lattice(int dimension, int count) {
        SplittableRandom random = new SplittableRandom(SEED);
        this.shifts = new double[count][dimension];
        for (double[] shift : shifts) {
            for (int i = 0; i < dimension; i++) {
                shift[i] = random.nextDouble();
            }
        }
        this.steps = new double[dimension];
        int prime = 1;
        for (int i = 0; i < dimension; i++) {
            prime++;
            while (!isPrime(prime)) {
                prime++;
            }
            steps[i] = Math.sqrt(prime) % 1.0;
        }
    }

    private static boolean isPrime(int n) {
        for (int k = 2; k * k <= n; k++) {
            if (n % k == 0) {
                return false;
            }
        }
        return n > 1;
    }

    /** A coordinate of a point, inside (0, 1). */
    double at(int point, int coordinate, int shift) {
        double x = point * steps[coordinate] + shifts[shift][coordinate];
        return Math.max(END, Math.min(1.0 - END, Math.abs(2.0 * (x - Math.floor(x)) - 1.0)));
    }
}
