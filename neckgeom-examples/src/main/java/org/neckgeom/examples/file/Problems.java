package org.neckgeom.examples.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The problems found in one file while it is read. A collector for one reading, used by one thread. */
public final class Problems {

    private final List<Problem> found = new ArrayList<>();
    private final Map<String, Place> places = new HashMap<>();

    /** An empty collector. */
    public Problems() {}

    /**
     * Notes a problem.
     *
     * @param place where it stands
     * @param sentence what was found and what is allowed
     */
    public void add(Place place, String sentence) {
        Problem problem = new Problem(place, sentence);
        if (!found.contains(problem)) {
            found.add(problem);
        }
    }

    /**
     * All problems in the order of the file's lines.
     *
     * @return a copy that no longer changes
     */
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

    /** Notes where the pieces of a value are that has no section of its own. */
    void know(Map<String, Place> pieces) {
        places.putAll(pieces);
    }

    /** The place of a path, or of the nearest thing around it. */
    Place place(String path, Place top) {
        String known = path;
        while (!places.containsKey(known)) {
            int end = Math.max(known.lastIndexOf('.'), known.lastIndexOf('['));
            if (end < 0) {
                return top;
            }
            known = known.substring(0, end);
        }
        return places.get(known);
    }
}
