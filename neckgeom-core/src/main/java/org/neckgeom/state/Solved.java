package org.neckgeom.state;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Causes given readings: mean and a square root of the covariance of the causes that readings touch; the others are as
 * they were. Standardised: cause i is its mean and {@code sd_i z_i}; P = F F', F the identity before the first reading.
 *
 * <p>J. E. Potter's square-root update, one reading at a time: a variance is a sum of squares and cannot turn negative.
 */
final class Solved {

    /** A reading without uncertainty is taken where less of the variance than this is known already. */
    private static final double KNOWN = 1e-12;

    /** Of the variance before any reading: standard deviations carry 12 digits. */
    private static final double ROUNDING = KNOWN * KNOWN;

    private final Map<String, Integer> places;
    private final double[] means;
    private final double[] sds;

    /** Of a cause its place among those touched, or -1. */
    private final int[] touched;

    private final int size;
    private final double[] z;
    private final double[] f;
    private final double logLikelihood;

    Solved(Map<String, Integer> places, double[] means, double[] sds, List<NeckReading> readings) {
        this.places = places;
        this.means = means;
        this.sds = sds;
        this.touched = new int[sds.length];
        Arrays.fill(touched, -1);
        int n = 0;
        for (NeckReading reading : readings) {
            Deviation of = reading.of();
            for (int i = 0; i < of.size(); i++) {
                int place = place(of, i);
                if (touched[place] < 0 && sds[place] > 0.0) {
                    touched[place] = n++;
                }
            }
        }
        this.size = n;
        this.z = new double[n];
        this.f = new double[n * n];
        for (int i = 0; i < n; i++) {
            f[i * n + i] = 1.0;
        }
        double log = 0.0;
        double[] fh = new double[n];
        double[] ffh = new double[n];
        int reached = 0;
        for (NeckReading reading : readings) {
            reached = Math.max(reached, last(reading.of()) + 1);
            log += take(reading, reached, fh, ffh);
        }
        this.logLikelihood = log;
    }

    /** The last place of a deviation's causes among those touched, or -1. */
    private int last(Deviation of) {
        int last = -1;
        for (int i = 0; i < of.size(); i++) {
            last = Math.max(last, touched[place(of, i)]);
        }
        return last;
    }

    private int place(Deviation of, int i) {
        return place(of.name(i));
    }

    private int place(String cause) {
        return Objects.requireNonNull(places.get(cause));
    }

    /**
     * Takes a reading in, and returns the log of its likelihood but for a constant.
     *
     * @param m causes that readings up to this one touch: those after them are still as they were
     */
    private double take(NeckReading reading, int m, double[] fh, double[] ffh) {
        int n = size;
        Deviation of = reading.of();
        Arrays.fill(fh, 0, m, 0.0);
        double expected = of.constantMm();
        double before = 0.0;
        for (int i = 0; i < of.size(); i++) {
            int place = place(of, i);
            expected += of.coefficient(i) * means[place];
            int at = touched[place];
            if (at < 0) {
                continue;
            }
            double c = of.coefficient(i) * sds[place];
            before += c * c;
            expected += c * z[at];
            for (int k = 0; k < m; k++) {
                fh[k] += c * f[at * n + k];
            }
        }
        double u = reading.uncertainty();
        double known = 0.0;
        for (int k = 0; k < m; k++) {
            known += fh[k] * fh[k];
        }
        double all = known + u * u;
        double miss = reading.value().libraryValue() - expected;
        if (!(all > KNOWN * before) || all == 0.0) {
            return 0.0; // known already; the agreement compares
        }
        times(fh, m, ffh);
        double less = 1.0 / (1.0 + u / Math.sqrt(all));
        for (int j = 0; j < m; j++) {
            double gain = ffh[j] / all;
            z[j] += gain * miss;
            double by = gain * less;
            for (int k = 0; k < m; k++) {
                f[j * n + k] -= by * fh[k];
            }
        }
        return -0.5 * (miss * miss / all + StrictMath.log(all));
    }

    /** F times a vector, four rows at once: a row's sum waits for each of its additions, and four share the wait. */
    private void times(double[] vector, int m, double[] product) {
        int n = size;
        int j = 0;
        for (; j + 3 < m; j += 4) {
            int row = j * n;
            double sum0 = 0.0;
            double sum1 = 0.0;
            double sum2 = 0.0;
            double sum3 = 0.0;
            for (int k = 0; k < m; k++) {
                double x = vector[k];
                sum0 += f[row + k] * x;
                sum1 += f[row + n + k] * x;
                sum2 += f[row + 2 * n + k] * x;
                sum3 += f[row + 3 * n + k] * x;
            }
            product[j] = sum0;
            product[j + 1] = sum1;
            product[j + 2] = sum2;
            product[j + 3] = sum3;
        }
        for (; j < m; j++) {
            double sum = 0.0;
            for (int k = 0; k < m; k++) {
                sum += f[j * n + k] * vector[k];
            }
            product[j] = sum;
        }
    }

    double logLikelihood() {
        return logLikelihood;
    }

    /** True where the cause is in a reading, so that its law is normal now. */
    boolean isTouched(String cause) {
        return touched[place(cause)] >= 0;
    }

    /** Place of a cause among those that readings touch. */
    int touchedPlace(String cause) {
        return touched[place(cause)];
    }

    /** How many standard deviations a cause lies off its mean where the causes' root has these coordinates, so many times wider. */
    double deviate(int touchedPlace, double[] coordinates, double wider) {
        double sum = 0.0;
        for (int k = 0; k < size; k++) {
            sum += f[touchedPlace * size + k] * coordinates[k];
        }
        return z[touchedPlace] + wider * sum;
    }

    double sd(String cause) {
        return sds[place(cause)];
    }

    double mean(Deviation of) {
        double sum = of.constantMm();
        for (int i = 0; i < of.size(); i++) {
            int place = place(of, i);
            sum += of.coefficient(i) * means[place];
            if (touched[place] >= 0) {
                sum += of.coefficient(i) * sds[place] * z[touched[place]];
            }
        }
        return sum;
    }

    /** F'g of the causes touched, in standard deviations; its squares add up to their part of the variance. */
    double[] root(Deviation of) {
        double[] root = new double[size];
        for (int i = 0; size > 0 && i < of.size(); i++) {
            int place = place(of, i);
            int at = touched[place];
            if (at >= 0) {
                double c = of.coefficient(i) * sds[place];
                for (int k = 0; k < size; k++) {
                    root[k] += c * f[at * size + k];
                }
            }
        }
        return root;
    }

    /** Part of the covariance of two deviations that causes not touched make. */
    double untouchedCovariance(Deviation one, Deviation other) {
        int[] ones = places(one);
        int[] others = one == other ? ones : places(other);
        double sum = 0.0;
        int j = 0;
        for (int i = 0; i < ones.length; i++) {
            int place = ones[i];
            while (j < others.length && others[j] < place) {
                j++;
            }
            if (j < others.length && others[j] == place && touched[place] < 0) {
                sum += one.coefficient(i) * other.coefficient(j) * sds[place] * sds[place];
            }
        }
        return sum;
    }

    /** Places of a deviation's causes: ascending, as both are sorted by name. */
    private int[] places(Deviation of) {
        int[] all = new int[of.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = place(of, i);
        }
        return all;
    }

    double covariance(Deviation one, Deviation other) {
        return dot(root(one), root(other)) + untouchedCovariance(one, other);
    }

    /** None where what is left is what rounding leaves of a deviation that was read without uncertainty. */
    double variance(Deviation of) {
        double left = covariance(of, of);
        double unread = 0.0;
        for (int i = 0; i < of.size(); i++) {
            double c = of.coefficient(i) * sds[place(of, i)];
            unread += c * c;
        }
        return left > ROUNDING * unread ? left : 0.0;
    }

    /** Covariance of a deviation with each of its causes' part in it: these add up to its variance. */
    double[] shares(Deviation of) {
        double[] root = root(of);
        double[] all = new double[of.size()];
        for (int i = 0; i < of.size(); i++) {
            int place = place(of, i);
            double c = of.coefficient(i) * sds[place];
            int at = touched[place];
            if (at < 0) {
                all[i] = c * c;
            } else {
                double sum = 0.0;
                for (int k = 0; k < size; k++) {
                    sum += f[at * size + k] * root[k];
                }
                all[i] = c * sum;
            }
        }
        return all;
    }

    static double dot(double[] one, double[] other) {
        double sum = 0.0;
        for (int k = 0; k < one.length; k++) {
            sum += one[k] * other[k];
        }
        return sum;
    }
}
