package org.neckgeom.strength;

/**
 * What is known of the causes: their means and covariances, normal. Readings are linear in the causes, so that what is known
 * after them does not depend on their order but for rounding; {@link StiffnessReadings} gives them in one order.
 */
final class CauseState {

    private final double[] mean;
    private final double[][] covariance;

    private CauseState(double[] mean, double[][] covariance) {
        this.mean = mean;
        this.covariance = covariance;
    }

    /** Before any reading: independent causes. */
    static CauseState prior() {
        double[] mean = new double[Cause.COUNT];
        double[][] covariance = new double[Cause.COUNT][Cause.COUNT];
        for (Cause cause : Cause.values()) {
            mean[cause.column()] = cause.mean();
            covariance[cause.column()][cause.column()] = cause.deviation() * cause.deviation();
        }
        return new CauseState(mean, covariance);
    }

    /**
     * One reading of a logarithm.
     *
     * @param row how much each cause changes it
     * @param misfit reading less what is expected with all causes at 0
     * @param uncertainty standard uncertainty of its own, more than 0
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
    record Row(double[] row, double misfit, double uncertainty) {}

    /** After a reading. */
    CauseState after(Row reading) {
        int n = Cause.COUNT;
        double[] with = new double[n];
        double expected = 0;
        double variance = reading.uncertainty * reading.uncertainty;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                with[i] += covariance[i][j] * reading.row[j];
            }
            expected += mean[i] * reading.row[i];
        }
        for (int i = 0; i < n; i++) {
            variance += with[i] * reading.row[i];
        }
        double[] newMean = new double[n];
        double[][] newCovariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            newMean[i] = mean[i] + with[i] / variance * (reading.misfit - expected);
            for (int j = 0; j < n; j++) {
                newCovariance[i][j] = covariance[i][j] - with[i] * with[j] / variance;
            }
        }
        return new CauseState(newMean, newCovariance);
    }

    /** How far a reading lies from what is expected, over its standard deviation. */
    double surprise(Row reading) {
        return (reading.misfit - mean(reading.row))
                / Math.sqrt(covariance(reading.row, reading.row) + reading.uncertainty * reading.uncertainty);
    }

    double mean(double[] row) {
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            sum += row[i] * mean[i];
        }
        return sum;
    }

    double covariance(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; j < other.length; j++) {
                sum += one[i] * covariance[i][j] * other[j];
            }
        }
        return sum;
    }

    double deviation(double[] row) {
        return Math.sqrt(Math.max(0, covariance(row, row)));
    }
}
