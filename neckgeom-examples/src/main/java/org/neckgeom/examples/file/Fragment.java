package org.neckgeom.examples.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** A piece of a JSON Schema whose keys keep their order, so that the written schema is the same on every run. */
final class Fragment {

    private Fragment() {}

    /**
     * A fragment.
     *
     * @param keysAndValues key, value, key, value and so on
     * @return an unmodifiable map in that order
     */
    static Map<String, Object> of(Object... keysAndValues) {
        Map<String, Object> fragment = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            fragment.put((String) keysAndValues[i], keysAndValues[i + 1]);
        }
        return Collections.unmodifiableMap(fragment);
    }
}
