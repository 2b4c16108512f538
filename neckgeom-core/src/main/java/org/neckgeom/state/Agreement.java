package org.neckgeom.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.measure.Estimate;
import org.neckgeom.numeric.NormalLaw;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * Whether the readings of a neck agree with each other and with the spreads of their causes. Immutable.
 *
 * <p>{@code chi-square = v' S^-1 v}, v the readings less what was expected before any, S their covariance; as many degrees
 * of freedom as readings. Each reading is besides compared with what all others make of it. Doubtful: a reading less
 * probable than 1 % over the number of readings. Contradiction: a reading less probable than 1 in 10,000, or all of them
 * less probable than 1 in 1,000.
 */
public final class Agreement extends ValueAnswer {

    private static final double DOUBTFUL = 0.01;
    private static final double IMPOSSIBLE = 1e-4;
    private static final double IMPOSSIBLE_TOGETHER = 1e-3;

    /** A reading that adds no variance of its own must agree with the others, but for rounding, in mm. */
    private static final double SAME_MM = 1e-9;

    private static final double KNOWN = 1e-12;

    /**
     * A reading beside what all others make of it.
     *
     * @param reading as given
     * @param expected from the causes and all other readings
     * @param probability of a reading at least as far off, either way
     */
    public record Compared(NeckReading reading, Estimate<Length> expected, double probability) implements Answer {

        static final Form<Compared> FORM = Form.<Compared>of("compared-reading")
                .fact("name", Kind.NAME, "of the reading", one -> one.reading.name())
                .fact("value", Kind.ESTIMATE, "as read", one -> one.reading.value())
                .fact("expected", Kind.ESTIMATE, "from the causes and all other readings", Compared::expected)
                .fact(
                        "probability",
                        Kind.PROBABILITY,
                        "of a reading at least as far off, either way",
                        Compared::probability)
                .finds("compared-reading", "{name}: {value}, expected {expected}, probability {probability}");

        /**
         * Checks the parts.
         *
         * @param reading as given
         * @param expected from the causes and all other readings
         * @param probability of a reading at least as far off, either way, in [0, 1]
         */
        public Compared {
            Objects.requireNonNull(reading, "reading");
            Checked.length("expected", expected);
            probability = Checked.ratio("probability", probability);
        }

        @Override
        public Form<Compared> form() {
            return FORM;
        }

        @Override
        public LengthStyle style() {
            return reading.style();
        }

        /** Returns such as {@code board at 280 mm: 0.16 mm, u 0.02 mm, expected 0.06 mm, u 0.02 mm, probability 0.1 %}. */
        @Override
        public String toString() {
            return text(style());
        }
    }

    private static final Form<Agreement> FORM = Form.<Agreement>of("agreement")
            .fact("chiSquare", Kind.RATIO, "of all readings", Agreement::chiSquare)
            .fact("degrees", Kind.WHOLE, "readings that are new information", Agreement::degreesOfFreedom)
            .fact("probability", Kind.PROBABILITY, "of readings that agree no better", Agreement::probability)
            .fact("readings", Kind.table(Compared.FORM), "least probable first", Agreement::readings)
            .factIfAny(
                    "suspect",
                    Kind.NAME,
                    "the reading to take again",
                    a -> a.suspect().map(one -> one.reading().name()))
            .finds("none", a -> a.compared.isEmpty(), "nothing has been read yet")
            .finds(
                    "contradiction",
                    Agreement::isContradiction,
                    "the readings contradict each other: read {suspect} again")
            .finds("doubtful", a -> a.suspect().isPresent(), "one reading is doubtful: read {suspect} again")
            .finds("agree", "the readings agree")
            .line("chiSquare", "chi-square", a -> !a.compared.isEmpty(), "{chiSquare:2} with {degrees}, {probability}");

    private final List<Compared> compared;
    private final double chiSquare;
    private final int degrees;

    private Agreement(List<Compared> compared, double chiSquare, int degrees, LengthStyle style) {
        super(FORM, style);
        this.compared = compared;
        this.chiSquare = chiSquare;
        this.degrees = degrees;
    }

    static Agreement of(Knowledge state) {
        List<NeckReading> all = state.readings();
        Knowledge before = state.unread();
        Solved prior = before.solved();
        List<NeckReading> taken = new ArrayList<>();
        double[][] root = new double[all.size()][];
        double[] miss = new double[all.size()];
        for (NeckReading one : all) {
            int n = taken.size();
            double[] row = new double[n + 1];
            for (int j = 0; j < n; j++) {
                double sum = prior.covariance(one.of(), taken.get(j).of());
                for (int k = 0; k < j; k++) {
                    sum -= row[k] * root[j][k];
                }
                row[j] = sum / root[j][j];
            }
            double variance = prior.variance(one.of());
            double left = variance + one.uncertainty() * one.uncertainty();
            for (int k = 0; k < n; k++) {
                left -= row[k] * row[k];
            }
            double off = one.value().libraryValue() - prior.mean(one.of());
            if (!(left > KNOWN * variance) || left == 0.0) {
                double repeated = 0.0;
                double[] z = forward(root, miss, n);
                for (int k = 0; k < n; k++) {
                    repeated += row[k] * z[k];
                }
                requireSame(one, off - repeated, taken);
                continue;
            }
            row[n] = Math.sqrt(left);
            root[n] = row;
            miss[n] = off;
            taken.add(one);
        }
        return of(taken, root, miss, state.style());
    }

    private static void requireSame(NeckReading one, double off, List<NeckReading> others) {
        if (Math.abs(off) > SAME_MM) {
            throw Refusal.because(
                    "readings",
                    "exclude-each-other",
                    Words.quoted(one.name()) + " is " + one.style().amount(Math.abs(off)) + " off what "
                            + (others.isEmpty() ? "the causes allow" : "the other readings make it")
                            + ", and no uncertainty is given: give each reading its uncertainty, or take one back");
        }
    }

    private static double[] forward(double[][] root, double[] miss, int n) {
        double[] z = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = miss[i];
            for (int k = 0; k < i; k++) {
                sum -= root[i][k] * z[k];
            }
            z[i] = sum / root[i][i];
        }
        return z;
    }

    private static Agreement of(List<NeckReading> taken, double[][] root, double[] miss, LengthStyle style) {
        int n = taken.size();
        double[] z = forward(root, miss, n);
        double chiSquare = Solved.dot(z, z);
        List<Compared> compared = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            // Column i of the inverse of the covariance: what all other readings make of this one.
            double[] unit = new double[n];
            unit[i] = 1.0;
            double[] half = forward(root, unit, n);
            double diagonal = Solved.dot(half, half);
            double product = Solved.dot(half, z);
            double miss0 = product / diagonal;
            double sd = Math.sqrt(1.0 / diagonal);
            NeckReading one = taken.get(i);
            double u = one.uncertainty();
            compared.add(new Compared(
                    one,
                    Estimate.ofLibrary(
                            one.value().libraryValue() - miss0,
                            Math.sqrt(Math.max(0.0, sd * sd - u * u)),
                            Double.POSITIVE_INFINITY,
                            one.value().unit()),
                    2.0 * NormalLaw.upperTail(Math.abs(miss0) / sd)));
        }
        compared.sort(Comparator.comparingDouble(Compared::probability));
        return new Agreement(List.copyOf(compared), chiSquare, n, style);
    }

    /** {@return chi-square of all readings; 0 or more} */
    public double chiSquare() {
        return chiSquare;
    }

    /** {@return how many readings are new information} */
    public int degreesOfFreedom() {
        return degrees;
    }

    /** {@return the probability of readings that agree no better than these, the spreads taken as given; in [0, 1]} */
    public double probability() {
        return chiSquareTail(chiSquare, degrees);
    }

    /** {@return each reading beside what all others make of it, the least probable first} */
    public List<Compared> readings() {
        return compared;
    }

    /** {@return whether the readings contradict each other, so that nothing should be decided on them} */
    public boolean isContradiction() {
        return !compared.isEmpty()
                && (compared.get(0).probability() < IMPOSSIBLE || probability() < IMPOSSIBLE_TOGETHER);
    }

    /** {@return the reading to take again, beside what the others make of it: that whose leaving out lowers chi-square most; empty where all agree} */
    public Optional<Compared> suspect() {
        boolean doubtful = !compared.isEmpty()
                && (compared.get(0).probability() < DOUBTFUL / compared.size() || isContradiction());
        return doubtful ? Optional.of(compared.get(0)) : Optional.empty();
    }

    /**
     * Probability that chi-square of whole degrees of freedom is greater: a finite sum (Abramowitz and Stegun 26.4.4 and
     * 26.4.5, from memory).
     */
    static double chiSquareTail(double x, int degrees) {
        if (degrees == 0 || x <= 0.0) {
            return 1.0;
        }
        boolean odd = degrees % 2 == 1;
        double root = Math.sqrt(x);
        double sum = odd ? 2.0 * NormalLaw.upperTail(root) : 0.0;
        double term = odd ? 2.0 * NormalLaw.density(root) * root : StrictMath.exp(-0.5 * x);
        for (int k = odd ? 3 : 2; k <= degrees; k += 2) {
            sum += term;
            term *= x / k;
        }
        return Math.min(1.0, sum);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {compared, chiSquare, degrees};
    }
}
