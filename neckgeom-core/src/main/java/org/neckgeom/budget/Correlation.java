package org.neckgeom.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;

/**
 * The correlation coefficient of two components of a budget, such as {@code "fence" and "stop", coefficient 0.8}: 1
 * when their errors always agree, -1 when they are always opposite, 0 when they are independent. Immutable.
 *
 * @param one a component with a normal spread
 * @param other another one
 * @param coefficient r, from -1 to 1 (JCGM 100:2008, 5.2.2)
 */
public record Correlation(String one, String other, double coefficient) implements Answer {

    private static final Form<Correlation> FORM = Form.<Correlation>of("correlation")
            .fact("one", Kind.NAME, "a component", Correlation::one)
            .fact("other", Kind.NAME, "another one", Correlation::other)
            .fact("coefficient", Kind.RATIO, "from -1 to 1", Correlation::coefficient)
            .finds("correlation", "\"{one}\" and \"{other}\", coefficient {coefficient:..4}");

    /** A remainder of a variance under this share of it is nothing but rounding. */
    private static final double ROUNDING = 1e-12;

    /**
     * Checks the parts.
     *
     * @param one a component with a normal spread
     * @param other another one
     * @param coefficient r, from -1 to 1
     * @throws IllegalArgumentException if both are the same or the coefficient is out of its range
     */
    public Correlation {
        Words.name(one, "a component's name");
        Words.name(other, "a component's name");
        if (one.equals(other)) {
            throw Refusal.of(
                    "a correlation",
                    "two-contributors",
                    "be between two components",
                    "between \"" + one + "\" and itself");
        }
        if (!(coefficient >= -1.0 && coefficient <= 1.0)) {
            throw Refusal.of(
                    "correlation of \"" + one + "\" and \"" + other + "\"",
                    "range",
                    "be from -1 to 1",
                    Numbers.plain(coefficient));
        }
        coefficient += 0.0;
    }

    /**
     * Returns independent components that add up to the same as the correlated ones: with the triangular root L of the
     * matrix of coefficients, {@code e_i = u_i sum of L_ij z_j}, so z_j comes in {@code sum of c_i u_i L_ij} times.
     */
    static List<UncertaintyComponent> independent(List<UncertaintyComponent> group, List<Correlation> correlations) {
        int n = group.size();
        double[][] root = root(group, correlations);
        List<UncertaintyComponent> all = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            UncertaintyComponent own = group.get(j);
            double sum = 0.0;
            double degrees = Double.POSITIVE_INFINITY;
            for (int i = j; i < n; i++) {
                UncertaintyComponent one = group.get(i);
                sum += one.sensitivity() * one.spread().libraryScale() * root[i][j];
                // No rule is known for the degrees of freedom of correlated parts (JCGM 100:2008, G.4.1): the fewest.
                degrees = root[i][j] == 0.0
                        ? degrees
                        : Math.min(degrees, one.spread().degreesOfFreedom());
            }
            ErrorDistribution<?> spread = own.spread().scaled(Math.abs(sum) / own.contribution());
            all.add(new UncertaintyComponent(
                    shared(j, group),
                    own.step(),
                    own.sensitivity(),
                    degrees < Double.POSITIVE_INFINITY ? spread.degreesOfFreedom(degrees) : spread));
        }
        return all;
    }

    /** Names the others where that fits a row, and else counts them. */
    private static String shared(int at, List<UncertaintyComponent> group) {
        String own = group.get(at).name();
        String others = IntStream.range(0, group.size())
                .filter(i -> i != at)
                .mapToObj(i -> group.get(i).name())
                .collect(Collectors.joining(", "));
        int count = group.size() - 1;
        return Stream.of(others, count + (count == 1 ? " other" : " others"))
                .map(with -> own + ", correlated with " + with)
                .filter(Words::fits)
                .findFirst()
                .orElse(own);
    }

    private static double[][] root(List<UncertaintyComponent> group, List<Correlation> correlations) {
        int n = group.size();
        double[][] root = new double[n][n];
        for (int j = 0; j < n; j++) {
            double rest = 1.0;
            for (int k = 0; k < j; k++) {
                rest -= root[j][k] * root[j][k];
            }
            root[j][j] = rest > ROUNDING ? Math.sqrt(rest) : 0.0;
            boolean fits = rest >= -ROUNDING;
            for (int i = j + 1; i < n; i++) {
                double open = between(group.get(i), group.get(j), correlations);
                for (int k = 0; k < j; k++) {
                    open -= root[i][k] * root[j][k];
                }
                fits &= root[j][j] > 0.0 || Math.abs(open) <= Math.sqrt(ROUNDING);
                root[i][j] = root[j][j] > 0.0 ? open / root[j][j] : 0.0;
            }
            if (!fits) {
                throw Refusal.of(
                        "correlations",
                        "correlations",
                        "fit together",
                        "",
                        "no errors can be correlated like "
                                + correlations.stream()
                                        .map(Correlation::toString)
                                        .collect(Collectors.joining("; ")));
            }
        }
        return root;
    }

    private static double between(
            UncertaintyComponent one, UncertaintyComponent other, List<Correlation> correlations) {
        return correlations.stream()
                .filter(pair -> pair.isOf(one.name()) && pair.isOf(other.name()))
                .mapToDouble(Correlation::coefficient)
                .findFirst()
                .orElse(0.0);
    }

    boolean isOf(String name) {
        return one.equals(name) || other.equals(name);
    }

    @Override
    public Form<Correlation> form() {
        return FORM;
    }

    /** Returns such as {@code "fence" and "stop", coefficient 0.8}. */
    @Override
    public String toString() {
        return text(style());
    }
}
