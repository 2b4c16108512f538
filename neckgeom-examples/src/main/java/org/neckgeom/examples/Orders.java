package org.neckgeom.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.neckgeom.examples.neck.ShippedNecks;

/**
 * What the command line of {@link PlanANeck} asks for. Immutable.
 *
 * @param task what to do
 * @param file the neck file
 */
record Orders(Task task, String file) {

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
    }

    /**
     * Reads a command line.
     *
     * @throws IllegalArgumentException if it can't be understood, in one sentence
     */
    static Orders from(List<String> arguments) {
        Task task = Task.PLAN;
        List<String> files = new ArrayList<>();
        for (String argument : arguments) {
            switch (argument) {
                case "--check" -> task = once(task, Task.CHECK, argument);
                case "--keys" -> task = once(task, Task.KEYS, argument);
                case "--schema" -> task = once(task, Task.SCHEMA, argument);
                case "--help", "-h" -> task = once(task, Task.HELP, argument);
                default -> {
                    if (argument.startsWith("-")) {
                        throw new IllegalArgumentException(argument + " is not known here; --help shows what is");
                    }
                    files.add(argument);
                }
            }
        }
        if (files.size() > 1) {
            throw new IllegalArgumentException(
                    "one neck file at a time, but " + files.size() + " were named: " + String.join(", ", files));
        }
        return new Orders(task, files.isEmpty() ? ShippedNecks.DEFAULT : files.get(0));
    }

    private static Task once(Task before, Task now, String argument) {
        if (before != Task.PLAN && before != now) {
            throw new IllegalArgumentException(argument + " does not go with another task; ask for one at a time");
        }
        return now;
    }
}
