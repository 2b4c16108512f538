package org.neckgeom.examples;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.neckgeom.examples.neck.ShippedNecks;

/**
 * What the command line of {@link PlanANeck} asks for. Immutable.
 *
 * @param task what to do
 * @param file the neck file
 * @param page where to write the plan as a page, if that was asked for
 */
record Orders(Task task, String file, Optional<Path> page) {

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
        Objects.requireNonNull(page, "page");
    }

    /**
     * Reads a command line.
     *
     * @throws IllegalArgumentException if it can't be understood, in one sentence
     */
    static Orders from(List<String> arguments) {
        Task task = Task.PLAN;
        Path page = null;
        List<String> files = new ArrayList<>();
        for (Iterator<String> rest = arguments.iterator(); rest.hasNext(); ) {
            String argument = rest.next();
            switch (argument) {
                case "--check" -> task = once(task, Task.CHECK, argument);
                case "--keys" -> task = once(task, Task.KEYS, argument);
                case "--schema" -> task = once(task, Task.SCHEMA, argument);
                case "--help", "-h" -> task = once(task, Task.HELP, argument);
                case "--html" -> page = page(rest);
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
        if (page != null && task != Task.PLAN) {
            throw new IllegalArgumentException("--html goes with planning alone");
        }
        return new Orders(task, files.isEmpty() ? ShippedNecks.DEFAULT : files.get(0), Optional.ofNullable(page));
    }

    /** The name must say that it is a page: a neck file given by mistake is not written over. */
    private static Path page(Iterator<String> rest) {
        if (!rest.hasNext()) {
            throw new IllegalArgumentException("--html must be followed by the page's file, but nothing follows");
        }
        String name = rest.next();
        if (!name.endsWith(".html")) {
            throw new IllegalArgumentException("the page's file must end in .html, but was " + name);
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
