package org.neckgeom.order;

import java.util.Map;
import java.util.stream.Collectors;
import org.neckgeom.table.Branch;
import org.neckgeom.table.Moves;

/** The names that operations and conditions of the usual neck had in earlier versions, and the moves that read them. */
final class OrderNames {

    private static final Map<String, String> NOW = Map.of("glue ears", Operation.GLUE_WINGS, "ears", "wings");

    private OrderNames() {}

    /** {@return the moves for a name at a key} */
    static Moves of(String key) {
        return Moves.none().and(line(key), branch -> branch.worded(key, NOW));
    }

    /** {@return the moves for each name of the list at a key} */
    static Moves items(String key) {
        return Moves.none().and(line(key), branch -> itemsWorded(branch, key));
    }

    private static Branch itemsWorded(Branch old, String key) {
        Branch branch = old;
        for (int i = 1; i <= old.count(key); i++) {
            branch = branch.worded(key + "[" + i + "]", NOW);
        }
        return branch;
    }

    private static String line(String key) {
        return NOW.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(name -> name.getKey() + " -> " + name.getValue())
                .collect(Collectors.joining(", ", "", " (" + key + ")"));
    }
}
