package org.neckgeom.examples.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The problems found in one file while it is read. A collector for one reading, used by one thread. */
public final class Problems {

    private final List<Problem> found = new ArrayList<>();

    /** An empty collector. */
    public Problems() {}

    /**
     * Notes a problem.
     *
     * @param place its place in the file
     * @param sentence what was found and what is allowed
     */
    public void add(Place place, String sentence) {
        Problem problem = new Problem(place, sentence);
        if (!found.contains(problem)) {
            found.add(problem);
        }
    }

    /** {@return all problems in the order of the file's lines; a copy that no longer changes} */
    public List<Problem> inOrder() {
        return found.stream()
                .sorted(Comparator.comparingInt(problem -> problem.place().line()))
                .toList();
    }

    /**
     * Refuses the file when anything was noted.
     *
     * @param file the file's name
     * @throws FileRefused with every problem, if there is one
     */
    public void refuseIfAny(String file) {
        if (!found.isEmpty()) {
            throw new FileRefused(file, inOrder());
        }
    }
}
