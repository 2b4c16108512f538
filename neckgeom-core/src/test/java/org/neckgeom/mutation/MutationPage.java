package org.neckgeom.mutation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** How many mistakes made on purpose the tests found, and which they did not, as a page of text. */
final class MutationPage {

    /** What the tests of a module must find, in percent. */
    static final double LEAST_PERCENT = 85;

    private final Map<String, List<Mutant>> modules;
    private final Reasons reasons;

    MutationPage(Map<String, List<Mutant>> modules, Reasons reasons) {
        this.modules = modules;
        this.reasons = reasons;
    }

    /**
     * Runs after PIT: holds each module to what its tests must find, and the page to what PIT found.
     *
     * @param folders a folder of the build for each module, whose name is the module's
     */
    public static void main(String[] folders) throws IOException {
        Map<String, List<Mutant>> modules = new TreeMap<>();
        for (String folder : folders) {
            Path module = Path.of(folder);
            modules.put(module.getFileName().toString(), Mutant.read(module.resolve("target/mutation")));
        }
        Path page = Path.of(folders[0], "MUTATION.md");
        MutationPage made =
                new MutationPage(modules, Reasons.read(Path.of(folders[0], "src/test/resources/mutation/reasons.csv")));
        System.out.print(made.figures());
        // Not on the page: how many there are depends on how busy the machine is.
        System.out.println("of the found " + made.endless() + " by going on for ever");
        if (Boolean.getBoolean("neckgeom.approve")) {
            Files.writeString(page, made.text());
        }
        List<String> faults = made.faults(
                Files.readString(page), Files.readString(Path.of(folders[0]).resolveSibling("README.md")));
        if (!faults.isEmpty()) {
            throw new IllegalStateException(String.join("; ", faults));
        }
    }

    /** What is wrong with the figures, or with the texts that should say them. */
    List<String> faults(String page, String readme) {
        List<String> faults = new ArrayList<>();
        modules.forEach((module, mutants) -> {
            if (!(percent(mutants) >= LEAST_PERCENT)) {
                faults.add(module + ": " + found(mutants) + " of " + mutants.size() + " mistakes found, fewer than "
                        + LEAST_PERCENT + " %");
            }
        });
        reasons.unused(survivors()).forEach(line -> faults.add("a reason without an undetected mutant: " + line));
        if (!page.equals(text())) {
            faults.add("MUTATION.md differs: run with -Dneckgeom.approve=true and look at it");
        }
        if (!readme.replaceAll("\\s+", " ").contains(summary())) {
            faults.add("README.md should say: " + summary());
        }
        return faults;
    }

    /** Such as {@code 1,708 of 1,990 in api (85.8 %)}, of each module. */
    String summary() {
        return modules.entrySet().stream()
                .map(module -> String.format(
                        Locale.ROOT,
                        "%,d of %,d in %s (%.1f %%)",
                        found(module.getValue()),
                        module.getValue().size(),
                        module.getKey().replace("neckgeom-", ""),
                        percentDown(module.getValue())))
                .collect(Collectors.joining(", "));
    }

    private long endless() {
        return modules.values().stream()
                .flatMap(List::stream)
                .filter(mutant -> mutant.status().equals("TIMED_OUT"))
                .count();
    }

    private List<Mutant> survivors() {
        return modules.values().stream()
                .flatMap(List::stream)
                .filter(mutant -> !mutant.found())
                .toList();
    }

    String text() {
        StringBuilder out = new StringBuilder("""
                # Mutation testing

                Produced by `mvn -B -ntp -Pmutation verify` and checked by it; do not edit it. PIT changes the compiled code in
                one place (a mutant: a sign, a comparison, a call left out, a result of nothing) and runs the tests that reach it.
                A test must fail, or the change must loop for ever. This page lists the mutants that no test detects, with the
                reason where one was looked for. Each package of core is tried with its own tests and those of its neighbours: a mutant
                that only another package's tests detect counts as undetected. The tests tagged `long` are left out: bad input by
                reflection, plans of many seeds read back and broken at random, a sweep of a million, beams by finite
                differences, plans of all orders. An endless loop is detected by a time-out, so a busy machine finds one or two more.

                """);
        out.append(figures());
        modules.forEach((module, mutants) -> {
            out.append("\n## ")
                    .append(module)
                    .append(": undetected mutants\n\n| class | mutants | undetected | where and which | why |\n")
                    .append("| --- | --- | --- | --- | --- |\n");
            by(mutants, Mutant::type).forEach((type, all) -> append(out, type, all));
        });
        return out.toString();
    }

    private void append(StringBuilder out, String type, List<Mutant> all) {
        List<Mutant> living = all.stream().filter(mutant -> !mutant.found()).toList();
        if (living.isEmpty()) {
            return;
        }
        Map<String, List<Mutant>> why = by(living, reasons::of);
        List<String> where = new ArrayList<>();
        why.forEach((reason, some) -> where.add(by(some, Mutant::method).entrySet().stream()
                .map(method -> method.getKey() + ": " + kinds(method.getValue()))
                .collect(Collectors.joining("; "))));
        int line = 0;
        for (String reason : why.keySet()) {
            out.append("| ")
                    .append(line == 0 ? type + " | " + all.size() + " | " + living.size() : " | |")
                    .append(" | ")
                    .append(where.get(line))
                    .append(" | ")
                    .append(reason)
                    .append(" |\n");
            line++;
        }
    }

    /** Such as {@code boundary, arithmetic 2}. */
    private static String kinds(List<Mutant> some) {
        return by(some, Mutant::kind).entrySet().stream()
                .map(kind -> kind.getKey()
                        + (kind.getValue().size() == 1
                                ? ""
                                : " " + kind.getValue().size()))
                .collect(Collectors.joining(", "));
    }

    /** The table of modules and their packages. */
    String figures() {
        StringBuilder out = new StringBuilder("""
                | what | mutants | detected | undetected | of these never run | detected of all |
                | --- | --- | --- | --- | --- | --- |
                """);
        modules.forEach((module, mutants) -> {
            row(out, "**" + module + "**", mutants);
            by(mutants, Mutant::area).forEach((area, some) -> row(out, area, some));
        });
        return out.toString();
    }

    private static void row(StringBuilder out, String what, List<Mutant> mutants) {
        out.append(String.format(
                Locale.ROOT,
                "| %s | %,d | %,d | %d | %d | %.1f %% |%n",
                what,
                mutants.size(),
                found(mutants),
                mutants.size() - found(mutants),
                mutants.stream()
                        .filter(mutant -> mutant.status().equals("NO_COVERAGE"))
                        .count(),
                percentDown(mutants)));
    }

    private static long found(List<Mutant> mutants) {
        return mutants.stream().filter(Mutant::found).count();
    }

    /** To one decimal, downwards, so that no shortfall is rounded away. */
    private static double percentDown(List<Mutant> mutants) {
        return Math.floor(percent(mutants) * 10) / 10;
    }

    private static double percent(List<Mutant> mutants) {
        return 100.0 * found(mutants) / mutants.size();
    }

    private static Map<String, List<Mutant>> by(
            List<Mutant> mutants, java.util.function.Function<Mutant, String> property) {
        return mutants.stream().collect(Collectors.groupingBy(property, TreeMap::new, Collectors.toList()));
    }
}
