package org.neckgeom.state;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * How far a place of a neck lies off where it is drawn: a constant and so much of each cause, {@code d = d0 + sum of h_i
 * e_i}. What two deviations share cancels in their difference. Immutable.
 *
 * <p>Lengths in mm; a coefficient is in mm per library unit of its cause. Across the neck positive is toward the treble
 * side, in height toward the strings, along it toward the body.
 */
public final class Deviation extends ValueAnswer {

    private static final Form<Part> PART = Form.<Part>of("part-of-a-deviation")
            .fact("cause", Kind.NAME, "of the error", Part::cause)
            .fact("coefficient", Kind.RATIO, "mm per library unit of the cause", Part::coefficient)
            .finds("part", "{cause}, {coefficient:..4} times");

    private static final Form<Deviation> FORM = Form.<Deviation>of("deviation")
            .fact("constant", Kind.MM, "known, in mm", Deviation::constantMm)
            .fact("causes", Kind.table(PART), "by name", Deviation::listed)
            .fact("count", Kind.WHOLE, "causes", Deviation::size)
            .finds("deviation", "Deviation of {constant:own fine} and {count:of cause/causes}")
            .each("causes", "{cause}", "{coefficient:..4} times")
            .fitted();

    private static final Deviation NONE = new Deviation(0.0, new String[0], new double[0]);

    /** A coefficient of a line may be rounded by this much of the largest; less is what cancelled. */
    private static final double CANCELLED = 4e-15;

    private record Part(String cause, double coefficient) {}

    private final double constant;
    private final String[] names;
    private final double[] coefficients;

    private Deviation(double constant, String[] names, double[] coefficients) {
        super(FORM, LengthStyle.MILLIMETRES);
        this.constant = LibraryUnits.finite(constant, "deviation", "mm");
        this.names = names;
        this.coefficients = coefficients;
    }

    /** {@return no deviation: as drawn} */
    public static Deviation none() {
        return NONE;
    }

    /**
     * {@return the deviation that a cause makes by itself}
     *
     * @param cause its name
     */
    public static Deviation of(String cause) {
        return new Deviation(0.0, new String[] {Objects.requireNonNull(cause, "cause")}, new double[] {1.0});
    }

    /**
     * {@return the deviation on the straight line from one to another, which may go on beyond them}
     *
     * @param first where the line begins
     * @param second where it ends
     * @param fraction of the way: 0 at the first, 1 at the second
     * @throws IllegalArgumentException if the fraction is not finite
     */
    public static Deviation between(Deviation first, Deviation second, double fraction) {
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        return first.times(1.0 - fraction).plus(second.times(fraction));
    }

    static Deviation onLine(Deviation first, double x1, Deviation second, double x2, double x) {
        return first.times((x2 - x) / (x2 - x1)).plus(second.times((x - x1) / (x2 - x1)));
    }

    /**
     * {@return the sum of this and another deviation}
     *
     * @param other what is added
     */
    public Deviation plus(Deviation other) {
        Objects.requireNonNull(other, "other");
        int n = names.length;
        int m = other.names.length;
        String[] all = new String[n + m];
        double[] sums = new double[n + m];
        int size = 0;
        int i = 0;
        int j = 0;
        while (i < n || j < m) {
            int order = i == n ? 1 : j == m ? -1 : names[i].compareTo(other.names[j]);
            double mine = order <= 0 ? coefficients[i] : 0.0;
            double its = order >= 0 ? other.coefficients[j] : 0.0;
            double sum = mine + its;
            if (Math.abs(sum) > CANCELLED * (Math.abs(mine) + Math.abs(its))) {
                all[size] = order <= 0 ? names[i] : other.names[j];
                sums[size++] = sum;
            }
            i += order <= 0 ? 1 : 0;
            j += order >= 0 ? 1 : 0;
        }
        return new Deviation(constant + other.constant, Arrays.copyOf(all, size), Arrays.copyOf(sums, size));
    }

    /**
     * {@return this deviation less another}
     *
     * @param other what is taken off
     */
    public Deviation minus(Deviation other) {
        return plus(Objects.requireNonNull(other, "other").times(-1.0));
    }

    /**
     * {@return this deviation times a factor}
     *
     * @param factor finite
     * @throws IllegalArgumentException if the factor is not finite
     */
    public Deviation times(double factor) {
        if (!Double.isFinite(factor)) {
            throw Refusal.of("factor", "finite", "be a finite number", Numbers.plain(factor));
        }
        if (factor == 0.0) {
            return NONE;
        }
        double[] scaled = new double[coefficients.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = factor * coefficients[i];
        }
        return new Deviation(factor * constant, names, scaled);
    }

    /**
     * {@return this deviation with a known length added}
     *
     * @param known in its direction
     */
    public Deviation plus(Quantity<Length> known) {
        return plusMm(LibraryUnits.mm(known, "known deviation"));
    }

    Deviation plusMm(double known) {
        return new Deviation(constant + known, names, coefficients);
    }

    /** The same of causes that have other names, no two the same. */
    Deviation renamed(UnaryOperator<String> name) {
        Deviation all = new Deviation(constant, new String[0], new double[0]);
        for (int i = 0; i < names.length; i++) {
            all = all.plus(of(name.apply(names[i])).times(coefficients[i]));
        }
        return all;
    }

    /** {@return the constant in mm: what is known} */
    public double constantMm() {
        return constant;
    }

    /** {@return the names of its causes, sorted} */
    public List<String> causes() {
        return List.of(names);
    }

    /**
     * {@return the coefficient of a cause: mm per library unit of it; 0 where it does not occur}
     *
     * @param cause its name
     */
    public double coefficient(String cause) {
        int at = Arrays.binarySearch(names, Objects.requireNonNull(cause, "cause"));
        return at < 0 ? 0.0 : coefficients[at];
    }

    int size() {
        return names.length;
    }

    String name(int i) {
        return names[i];
    }

    double coefficient(int i) {
        return coefficients[i];
    }

    private List<Part> listed() {
        return IntStream.range(0, names.length)
                .mapToObj(i -> new Part(names[i], coefficients[i]))
                .toList();
    }

    @Override
    protected Object[] parts() {
        return new Object[] {constant, List.of(names), coefficients};
    }
}
