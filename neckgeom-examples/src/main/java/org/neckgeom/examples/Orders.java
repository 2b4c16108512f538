package org.neckgeom.examples;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.neckgeom.examples.neck.ShippedNecks;
import org.neckgeom.plan.Job;
import org.neckgeom.template.Paper;
import org.neckgeom.units.LengthStyle;

/**
 * What the command line of {@link PlanANeck} asks for. Immutable.
 *
 * @param task what to do
 * @param file the neck file
 * @param outputs what to write of the plan, and where; empty to print it
 * @param set the folder of all that can be written, or the one whose files are looked at
 * @param paper the paper to print on; none to take the one usual with the neck's units
 * @param landscape whether cards lie across
 * @param style how lengths are printed; none to print them in the neck file's units
 * @param log the shop's log to plan with
 * @param addTo the shop's log that gets the readings of this neck
 * @param section the part of the plan or the operation to print
 * @param address where to serve; none for the loopback address
 */
record Orders(
        Task task,
        String file,
        Map<Output, Path> outputs,
        Optional<Path> set,
        Optional<Paper> paper,
        boolean landscape,
        Optional<LengthStyle> style,
        Optional<Path> log,
        Optional<Path> addTo,
        Optional<String> section,
        Optional<String> address) {

    /** What can be asked for. */
    enum Task {
        /** Read the file and print the first screen, or write what is asked for. */
        PLAN,
        /** Print the whole plan. */
        FULL,
        /** Print one part of it. */
        SECTION,
        /** Print the step at hand. */
        NEXT,
        /** Print the card of one operation. */
        CARD,
        /** Work at the bench: ask for readings and keep them in the file. */
        BENCH,
        /** Serve the same as a page for a phone. */
        SERVE,
        /** Read the file and say whether it can be used. */
        CHECK,
        /** Say whether the files of a folder belong together. */
        CHECK_SET,
        /** Print every key a file may have. */
        KEYS,
        /** Print the JSON Schema of a file. */
        SCHEMA,
        /** Print what can be asked for. */
        HELP;

        /** True where a plan is worked out and printed. */
        boolean isPlanning() {
            return this == PLAN || this == FULL || this == SECTION || this == NEXT || this == CARD;
        }
    }

    Orders {
        Objects.requireNonNull(task, "task");
        Objects.requireNonNull(file, "file");
        outputs = Collections.unmodifiableMap(new EnumMap<>(outputs));
    }

    /**
     * Reads a command line.
     *
     * @throws IllegalArgumentException if it can't be understood, in one sentence
     */
    static Orders from(List<String> arguments) {
        Task task = Task.PLAN;
        Map<Output, Path> outputs = new EnumMap<>(Output.class);
        Optional<Path> set = Optional.empty();
        Optional<Paper> paper = Optional.empty();
        boolean landscape = false;
        Optional<LengthStyle> style = Optional.empty();
        Optional<Path> log = Optional.empty();
        Optional<Path> addTo = Optional.empty();
        Optional<String> section = Optional.empty();
        Optional<String> address = Optional.empty();
        List<String> files = new ArrayList<>();
        for (Iterator<String> rest = arguments.iterator(); rest.hasNext(); ) {
            String argument = rest.next();
            switch (argument) {
                case "--full" -> task = once(task, Task.FULL, argument);
                case "--next" -> task = once(task, Task.NEXT, argument);
                case "--bench" -> task = once(task, Task.BENCH, argument);
                case "--serve" -> task = once(task, Task.SERVE, argument);
                case "--address" -> address = Optional.of(named(argument, "an address of this machine", rest));
                case "--section" -> {
                    task = once(task, Task.SECTION, argument);
                    section = Optional.of(named(argument, "the name of a part of the plan", rest));
                }
                case "--card" -> {
                    task = once(task, Task.CARD, argument);
                    section = Optional.of(named(argument, "the name of an operation", rest));
                }
                case "--check" -> task = once(task, Task.CHECK, argument);
                case "--keys" -> task = once(task, Task.KEYS, argument);
                case "--schema" -> task = once(task, Task.SCHEMA, argument);
                case "--check-set" -> {
                    task = once(task, Task.CHECK_SET, argument);
                    set = Optional.of(folder(argument, "look at", rest));
                }
                case "--all" -> {
                    if (set.isPresent()) {
                        throw oneSet();
                    }
                    set = Optional.of(folder(argument, "write to", rest));
                    outputs.putAll(all(set.get()));
                }
                case "--cards" -> {
                    if (set.isPresent()) {
                        throw oneSet();
                    }
                    set = Optional.of(folder(argument, "write to", rest));
                    Map<Output, Path> all = all(set.get());
                    all.keySet().removeIf(output -> !output.isCards());
                    outputs.putAll(all);
                }
                case "--landscape" -> landscape = true;
                case "--log" -> log = Optional.of(log(argument, rest));
                case "--add-to-log" -> addTo = Optional.of(log(argument, rest));
                case "--units" -> style = Optional.of(style(rest));
                case "--paper" -> paper = Optional.of(paper(rest));
                case "--help", "-h" -> task = once(task, Task.HELP, argument);
                default -> {
                    Optional<Output> output = output(argument);
                    if (output.isPresent()) {
                        outputs.put(output.get(), path(output.get(), rest));
                    } else if (argument.startsWith("-")) {
                        throw new IllegalArgumentException(argument + " is not known here; --help shows what is");
                    } else {
                        files.add(argument);
                    }
                }
            }
        }
        if (files.size() > 1) {
            throw new IllegalArgumentException(
                    "one neck file at a time, but " + files.size() + " were named: " + String.join(", ", files));
        }
        if (task == Task.CHECK_SET && !files.isEmpty()) {
            throw new IllegalArgumentException(
                    "--check-set looks at a folder alone, but " + files.get(0) + " was named");
        }
        if (!outputs.isEmpty() && task != Task.PLAN) {
            throw new IllegalArgumentException(
                    outputs.keySet().iterator().next().option() + " goes with planning alone");
        }
        eachOnce(outputs);
        if (paper.isPresent() && outputs.keySet().stream().noneMatch(Output::isOnPaper)) {
            throw new IllegalArgumentException("--paper goes with --pages, --pdf, --cards or --all");
        }
        if (landscape && outputs.keySet().stream().noneMatch(Output::isCards)) {
            throw new IllegalArgumentException("--landscape goes with --cards or --all");
        }
        if (style.isPresent() && !task.isPlanning()) {
            throw new IllegalArgumentException("--units goes with planning alone");
        }
        if ((task == Task.BENCH || task == Task.SERVE) && files.isEmpty()) {
            throw new IllegalArgumentException((task == Task.BENCH ? "--bench" : "--serve")
                    + " must be followed by the neck file that keeps the readings, but nothing follows");
        }
        if (address.isPresent() && task != Task.SERVE) {
            throw new IllegalArgumentException("--address goes with --serve");
        }
        if ((log.isPresent() || addTo.isPresent()) && !task.isPlanning()) {
            throw new IllegalArgumentException(
                    (log.isPresent() ? "--log" : "--add-to-log") + " goes with planning alone");
        }
        return new Orders(
                task,
                files.isEmpty() ? ShippedNecks.DEFAULT : files.get(0),
                outputs,
                set,
                paper,
                landscape,
                style,
                log,
                addTo,
                section,
                address);
    }

    private static IllegalArgumentException oneSet() {
        return new IllegalArgumentException("--all writes the cards too; ask for one of --all and --cards, once");
    }

    private static String named(String option, String what, Iterator<String> rest) {
        if (!rest.hasNext()) {
            throw new IllegalArgumentException(option + " must be followed by " + what + ", but nothing follows");
        }
        return rest.next();
    }

    private static Path log(String option, Iterator<String> rest) {
        if (!rest.hasNext()) {
            throw new IllegalArgumentException(option + " must be followed by the shop's log, but nothing follows");
        }
        return Path.of(rest.next());
    }

    /** Default: letter for a neck in inches, A4 for one in millimetres. */
    Paper paperFor(Job plan) {
        return paper.orElse(plan.style() == LengthStyle.MILLIMETRES ? Paper.A4 : Paper.LETTER);
    }

    /** Two files of one name would leave one of them. */
    private static void eachOnce(Map<Output, Path> outputs) {
        Map<Path, Output> first = new HashMap<>();
        outputs.forEach((output, path) -> {
            Output other = first.putIfAbsent(path.toAbsolutePath().normalize(), output);
            if (other != null) {
                throw new IllegalArgumentException(
                        path + " is asked for by both " + other.option() + " and " + output.option());
            }
        });
    }

    private static LengthStyle style(Iterator<String> rest) {
        String word = rest.hasNext() ? rest.next() : "nothing";
        return Arrays.stream(LengthStyle.values())
                .filter(style -> style.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "--units must be followed by mm, inch or fractions, but was followed by " + word));
    }

    private static Paper paper(Iterator<String> rest) {
        String name = rest.hasNext() ? rest.next() : "";
        return Arrays.stream(Paper.values())
                .filter(paper -> paper.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("--paper must be followed by A4 or letter, but was followed by "
                                + (name.isEmpty() ? "nothing" : name)));
    }

    private static Optional<Output> output(String argument) {
        return Arrays.stream(Output.values())
                .filter(output -> output.option().equals(argument))
                .findFirst();
    }

    /** Everything that can be written, under its usual name in one folder. */
    private static Map<Output, Path> all(Path folder) {
        Map<Output, Path> outputs = new EnumMap<>(Output.class);
        for (Output output : Output.values()) {
            outputs.put(output, folder.resolve(output.usualName()));
        }
        return outputs;
    }

    private static Path folder(String option, String use, Iterator<String> rest) {
        if (!rest.hasNext()) {
            throw new IllegalArgumentException(
                    option + " must be followed by the folder to " + use + ", but nothing follows");
        }
        return Path.of(rest.next());
    }

    private static Path path(Output output, Iterator<String> rest) {
        if (!rest.hasNext()) {
            throw new IllegalArgumentException(
                    output.option() + " must be followed by the file to write, but nothing follows");
        }
        String name = rest.next();
        if (!name.endsWith(output.ending())) {
            throw new IllegalArgumentException(
                    "the file after " + output.option() + " must end in " + output.ending() + ", but was " + name);
        }
        return Path.of(name);
    }

    private static Task once(Task before, Task now, String argument) {
        if (before != Task.PLAN && before != now) {
            throw new IllegalArgumentException(argument + " does not go with another task; ask for one at a time");
        }
        return now;
    }
}
