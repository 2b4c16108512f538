package org.neckgeom.examples.file;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.neckgeom.text.Words;

/** A file that can't be used, with everything that is wrong in it. Its message has one line a problem. */
public final class FileRefused extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** How many problems the message lists; the rest is counted. */
    static final int MOST_LISTED = 40;

    private final transient List<Problem> problems;

    /**
     * A refusal.
     *
     * @param file the file's name
     * @param problems all problems, in the order of their lines, at least one
     */
    public FileRefused(String file, List<Problem> problems) {
        super(message(Objects.requireNonNull(file, "file"), problems));
        this.problems = List.copyOf(problems);
    }

    /**
     * {@return a refusal for one reason}
     *
     * @param place its place in the file
     * @param sentence what was found and what is allowed
     */
    public static FileRefused at(Place place, String sentence) {
        return new FileRefused(place.file(), List.of(new Problem(place, sentence)));
    }

    /** {@return all problems, in the order of their lines; never empty} */
    public List<Problem> problems() {
        return problems;
    }

    private static String message(String file, List<Problem> problems) {
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("problems must hold at least one problem, but was empty");
        }
        String listed =
                problems.stream().limit(MOST_LISTED).map(Problem::toString).collect(Collectors.joining("\n"));
        if (problems.size() == 1) {
            return listed;
        }
        String head = problems.size() + " things to mend in " + Words.shown(file) + "\n" + listed;
        int more = problems.size() - MOST_LISTED;
        return more > 0 ? head + "\nand " + more + " more" : head;
    }
}
