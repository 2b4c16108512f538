package org.neckgeom.budget;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.neckgeom.fault.Refusal;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.units.ShopUnit;

/** The matrix of correlation coefficients by name, of which those not named are 0. */
final class Coefficients {

    /** A remainder of a variance under this share of it is nothing but rounding. */
    private static final double ROUNDING = 1e-12;

    private final Map<String, Map<String, Double>> byName = new HashMap<>();

    Coefficients(List<Correlation> pairs) {
        for (Correlation pair : pairs) {
            row(pair.one()).put(pair.other(), pair.coefficient());
            row(pair.other()).put(pair.one(), pair.coefficient());
        }
    }

    /** Refuses coefficients that no errors can have: their matrix has no triangular root. */
    static void check(List<UncertaintyComponent> group, List<Correlation> correlations) {
        Coefficients coefficients = new Coefficients(correlations);
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
                double open =
                        coefficients.between(group.get(i).name(), group.get(j).name());
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
    }

    private Map<String, Double> row(String name) {
        return byName.computeIfAbsent(name, none -> new HashMap<>());
    }

    boolean has(String name) {
        return byName.containsKey(name);
    }

    double between(String one, String other) {
        return one.equals(other) ? 1.0 : byName.getOrDefault(one, Map.of()).getOrDefault(other, 0.0);
    }

    /** The components that hang together with one by coefficients, in their order; it alone where there are none. */
    List<UncertaintyComponent> group(UncertaintyComponent one, List<UncertaintyComponent> all) {
        if (!has(one.name())) {
            return List.of(one);
        }
        Set<String> names = new HashSet<>(Set.of(one.name()));
        Deque<String> open = new ArrayDeque<>(names);
        while (!open.isEmpty()) {
            for (String other : byName.getOrDefault(open.remove(), Map.of()).keySet()) {
                if (names.add(other)) {
                    open.add(other);
                }
            }
        }
        return all.stream().filter(other -> names.contains(other.name())).toList();
    }

    /** A component's part of the variance, {@code c_i u_i sum of c_j u_j r_ij}; it may be negative. */
    double part(UncertaintyComponent one, List<UncertaintyComponent> all) {
        double own = one.contribution() * one.contribution();
        if (!has(one.name())) {
            return own;
        }
        double sum = 0.0;
        for (UncertaintyComponent other : all) {
            sum += between(one.name(), other.name()) * signed(other);
        }
        return signed(one) * sum;
    }

    private static double signed(UncertaintyComponent one) {
        return Math.copySign(one.contribution(), one.sensitivity());
    }

    /**
     * Independent components that add up to the same as all: those that hang together by coefficients, which are normal,
     * become one, {@code u^2 = sum of c_i c_j u_i u_j r_ij}.
     */
    <Q extends Quantity<Q>> List<UncertaintyComponent> independent(List<UncertaintyComponent> all, ShopUnit<Q> unit) {
        List<UncertaintyComponent> independent = new ArrayList<>();
        Set<String> done = new HashSet<>();
        for (UncertaintyComponent one : all) {
            if (!has(one.name())) {
                independent.add(one);
            } else if (!done.contains(one.name())) {
                List<UncertaintyComponent> group = group(one, all);
                group.forEach(other -> done.add(other.name()));
                independent.add(together(group, unit));
            }
        }
        return independent;
    }

    private <Q extends Quantity<Q>> UncertaintyComponent together(List<UncertaintyComponent> group, ShopUnit<Q> unit) {
        double mean = 0.0;
        double variance = 0.0;
        double degrees = Double.POSITIVE_INFINITY;
        for (UncertaintyComponent one : group) {
            mean += one.sensitivity() * one.spread().libraryMean();
            variance += part(one, group);
            // No rule is known for the degrees of freedom of correlated parts (JCGM 100:2008, G.4.1): the fewest.
            degrees = one.contribution() > 0.0 ? Math.min(degrees, one.degreesOfFreedom()) : degrees;
        }
        Estimate<Q> sum = Estimate.ofLibrary(mean, Math.sqrt(Math.max(0.0, variance)), degrees, unit.forDifferences());
        return new UncertaintyComponent(group.get(0).name(), group.get(0).step(), 1.0, ErrorDistribution.of(sum));
    }
}
