package org.neckgeom.validation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The report as a page of text. */
final class ValidationPage {

    private final Checks checks;
    private final Surface surface;

    ValidationPage(Checks checks, Surface surface) {
        this.checks = checks;
        this.surface = surface;
    }

    /** Figures that are neither the trade's nor from memory alone. */
    static long figures(List<Check> all, Status... which) {
        return all.stream()
                .filter(check -> List.of(which).contains(check.status()))
                .mapToLong(Check::figures)
                .sum();
    }

    static long sources(List<Check> all) {
        return all.stream().map(Check::source).distinct().count();
    }

    /** Such as {@code 138 checks of 16,184 figures from 26 sources}. */
    String summary() {
        List<Check> all = checks.all();
        return all.size() + " checks of "
                + grouped(all.stream().mapToLong(Check::figures).sum()) + " figures from " + sources(all) + " sources";
    }

    String text() {
        StringBuilder out = new StringBuilder();
        List<Check> all = checks.all();
        out.append("# Validation of neckgeom\n\n")
                .append(
                        "Produced by the tests (`ValidationTest`) and checked by every build; do not edit it. Each line is\n")
                .append("computed anew: ours by this library, the expected figures read from the tables in\n")
                .append(
                        "`src/test/resources` of both modules or computed by another library, and the build fails when they\n")
                .append("differ by more than the limit. `-Dneckgeom.approve=true` writes the page anew.\n\n")
                .append(summary())
                .append(". A check of several figures shows the one that uses most of its\n")
                .append("limit. *Rounding* is a difference under 1e-12 of the figure.\n\n");
        out.append("| evidence class | checks | figures | meaning |\n| --- | --- | --- | --- |\n");
        for (Status status : Status.values()) {
            out.append("| ")
                    .append(status.words())
                    .append(" | ")
                    .append(all.stream()
                            .filter(check -> check.status() == status)
                            .count())
                    .append(" | ")
                    .append(grouped(figures(all, status)))
                    .append(" | ")
                    .append(status.meaning())
                    .append(" |\n");
        }
        checks.topics().forEach((topic, list) -> {
            out.append("\n## ").append(topic).append("\n\n");
            out.append("| result | compared with | expected | ours | difference | limit | status |\n");
            out.append("| --- | --- | --- | --- | --- | --- | --- |\n");
            list.forEach(check -> out.append(check.row()).append('\n'));
        });
        out.append("\n## Sources\n\n");
        Arrays.stream(Source.values())
                .filter(source -> all.stream().anyMatch(check -> check.source() == source))
                .forEach(source -> out.append("- **")
                        .append(source.label())
                        .append("**: ")
                        .append(source.citation())
                        .append(".\n"));
        inside(out);
        return out.toString();
    }

    /** Which public answers have an outside check, and which have tests of our own only. */
    private void inside(StringBuilder out) {
        Map<String, Set<String>> outside = outside();
        long all = surface.answers().values().stream().mapToLong(Set::size).sum();
        long held = outside.values().stream().mapToLong(Set::size).sum();
        long types =
                surface.answers().keySet().stream().filter(outside::containsKey).count();
        out.append("\n## What has only checks of our own\n\n")
                .append("Of ")
                .append(all)
                .append(" public answers in ")
                .append(surface.answers().size())
                .append(" types, ")
                .append(held)
                .append(" answers in ")
                .append(types)
                .append(" types are named by a check above. The others\n")
                .append(
                        "follow from those, return the input, or are tested against figures worked out apart in our own\n")
                .append(
                        "tests (drawn geometry, rotations, sums by hand, simulations): good, but not from outside. A type's\n")
                .append("quantity and its double count once.\n\n")
                .append("| type | compared with an outside source | checks of our own only | a test that names it |\n")
                .append("| --- | --- | --- | --- |\n");
        surface.answers().forEach((type, answers) -> {
            Set<String> named = outside.getOrDefault(type, Set.of());
            Set<String> rest = new TreeSet<>(answers);
            rest.removeAll(named);
            out.append("| ")
                    .append(type)
                    .append(" | ")
                    .append(String.join(", ", named))
                    .append(" | ")
                    .append(String.join(", ", rest))
                    .append(" | ")
                    .append(surface.test(type))
                    .append(" |\n");
        });
    }

    /** Type to the answers that a check names; a name that is no public answer fails. */
    Map<String, Set<String>> outside() {
        Map<String, Set<String>> outside = new TreeMap<>();
        List<String> unknown = new ArrayList<>();
        for (Check check : checks.all()) {
            for (String answer : check.answers()) {
                int dot = answer.indexOf('.');
                String type = surface.type(answer.substring(0, dot));
                String method = Surface.plain(answer.substring(dot + 1));
                if (!surface.answers().getOrDefault(type, Set.of()).contains(method)) {
                    unknown.add(answer);
                }
                outside.computeIfAbsent(type, key -> new TreeSet<>()).add(method);
            }
        }
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException("no public answers are called " + unknown);
        }
        return outside;
    }

    private static String grouped(long number) {
        return String.format(java.util.Locale.ROOT, "%,d", number);
    }
}
