package org.neckgeom.examples;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.neckgeom.examples.neck.ShippedNecks;

/**
 * What the command line of {@link PlanANeck} asks for. Immutable.
 *
 * @param task what to do
 * @param file the neck file
 * @param outputs what to write of the plan, and where; empty to print it
 */
record Orders(Task task, String file, Map<Output, Path> outputs) {

    /** What can be asked for. */
    enum Task {
        /** Read the file and print the plan. */
        PLAN,
        /** Read the file and say whether it can be used. */
        CHECK,
        /** Print every key a file may have. */
        KEYS,
        /** Print the JSON Schema of a file. */
        SCHEMA,
        /** Print what can be asked for. */
        HELP
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
        List<String> files = new ArrayList<>();
        for (Iterator<String> rest = arguments.iterator(); rest.hasNext(); ) {
            String argument = rest.next();
            switch (argument) {
                case "--check" -> task = once(task, Task.CHECK, argument);
                case "--keys" -> task = once(task, Task.KEYS, argument);
                case "--schema" -> task = once(task, Task.SCHEMA, argument);
                case "--all" -> outputs.putAll(all(rest));
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
        if (!outputs.isEmpty() && task != Task.PLAN) {
            throw new IllegalArgumentException(
                    outputs.keySet().iterator().next().option() + " goes with planning alone");
        }
        return new Orders(task, files.isEmpty() ? ShippedNecks.DEFAULT : files.get(0), outputs);
    }

    private static Optional<Output> output(String argument) {
        return Arrays.stream(Output.values())
                .filter(output -> output.option().equals(argument))
                .findFirst();
    }

    /** Everything that can be written, under its usual name in one folder. */
    private static Map<Output, Path> all(Iterator<String> rest) {
        if (!rest.hasNext()) {
            throw new IllegalArgumentException("--all must be followed by the folder to write to, but nothing follows");
        }
        Path folder = Path.of(rest.next());
        Map<Output, Path> outputs = new EnumMap<>(Output.class);
        for (Output output : Output.values()) {
            outputs.put(output, folder.resolve(output.usualName()));
        }
        return outputs;
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
