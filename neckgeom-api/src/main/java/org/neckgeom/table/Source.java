package org.neckgeom.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.neckgeom.text.Nearest;

/** One group of a tree while it is read. A key may be written in either spelling, but once. */
record Source(Map<?, ?> map, String path, Faults faults) {

    boolean has(Key<?, ?> key) {
        return map.containsKey(key.name()) || map.containsKey(key.name(Spelling.JSON));
    }

    @Nullable
    Object value(Key<?, ?> key) {
        return map.containsKey(key.name()) ? map.get(key.name()) : map.get(key.name(Spelling.JSON));
    }

    /** The path of a key, as it is written here. */
    String path(Key<?, ?> key) {
        boolean isWritten = map.containsKey(key.name()) || map.containsKey(key.name(Spelling.JSON));
        String written = isWritten
                ? map.containsKey(key.name()) ? key.name() : key.name(Spelling.JSON)
                : key.name(faults.spelling());
        return below(written);
    }

    private String below(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    void noteUnknown(List<String> words, List<String> json) {
        for (Object key : map.keySet()) {
            String name = key.toString();
            int camel = json.indexOf(name);
            if (!words.contains(name) && camel < 0) {
                List<String> all = new ArrayList<>(words);
                String slip = Nearest.question(name, all);
                String full = below(Faults.cut(name));
                faults.sentence(
                        full,
                        "unknown",
                        full + " is not a known key" + slip + (slip.isEmpty() ? "; known" : " Known") + " here: "
                                + String.join(", ", words));
            } else if (camel >= 0 && !words.get(camel).equals(name) && map.containsKey(words.get(camel))) {
                faults.sentence(
                        below(name),
                        "twice",
                        below(name) + " is given, and \"" + words.get(camel) + "\" too; keep one of them");
            }
        }
    }
}
