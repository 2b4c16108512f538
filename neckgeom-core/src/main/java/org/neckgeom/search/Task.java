package org.neckgeom.search;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.neckgeom.fault.Refusal;
import org.neckgeom.units.LengthStyle;

/** What a search has to do, as given; the settings of earlier points are asked first. */
record Task<D>(
        D design,
        List<Variable<D>> variables,
        List<Aim<D>> aims,
        List<Rules<D>> rules,
        List<Map<String, Object>> earlier,
        Options options,
        LengthStyle style) {

    /** How it is done: the designs that may be asked, and the designs of a front at most. */
    record Options(long seed, int designs, int frontSize, boolean isParallel) {}

    Task<D> with(List<Variable<D>> more, LengthStyle printed) {
        return new Task<>(design, more, aims, rules, earlier, options, printed);
    }

    Task<D> aims(List<Aim<D>> more) {
        return new Task<>(design, variables, more, rules, earlier, options, style);
    }

    Task<D> rules(List<Rules<D>> more) {
        return new Task<>(design, variables, aims, more, earlier, options, style);
    }

    Task<D> earlier(List<Map<String, Object>> more) {
        return new Task<>(design, variables, aims, rules, more, options, style);
    }

    Task<D> options(Options other) {
        return new Task<>(design, variables, aims, rules, earlier, other, style);
    }

    boolean isParallel() {
        return options.isParallel();
    }

    int designs() {
        return options.designs();
    }

    boolean hasSteps() {
        return variables.stream().anyMatch(Variable::isStepped);
    }

    boolean hasOnlySteps() {
        return variables.stream().allMatch(Variable::isStepped);
    }

    List<String> variableNames() {
        return variables.stream().map(Variable::name).toList();
    }

    List<String> aimNames() {
        return aims.stream().map(Aim::name).toList();
    }

    List<String> limitNames() {
        return rules.stream().flatMap(rule -> rule.names().stream()).toList();
    }

    /** The coordinates of the earlier points, the nearest there are. */
    List<double[]> places() {
        return earlier.stream().map(this::place).toList();
    }

    private double[] place(Map<String, Object> settings) {
        return variables.stream()
                .mapToDouble(variable -> variable.place(Optional.ofNullable(settings.get(variable.name()))
                        .orElseThrow(() -> Refusal.of(
                                "earlier search",
                                "known",
                                "have a variable \"" + variable.name() + "\"",
                                "had",
                                String.join(", ", settings.keySet())))))
                .toArray();
    }
}
