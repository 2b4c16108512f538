package org.neckgeom.examples.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.neckgeom.text.Words;

/** A piece of a file: a text, a list or a map, each with its place. Immutable. */
public sealed interface Node {

    /**
     * Where the piece starts.
     *
     * @return file, line and key path
     */
    Place place();

    /**
     * What the piece is, in a maker's words.
     *
     * @return such as {@code "640 mm"}, {@code a list} or {@code empty}
     */
    String found();

    /**
     * A text, a number or nothing.
     *
     * @param place where it starts
     * @param text the text without quotes and outer blanks; empty when no value was written
     */
    record Text(Place place, String text) implements Node {

        private static final int LONGEST_QUOTED = 60;

        /** Checks the parts. */
        public Text {
            Objects.requireNonNull(place, "place");
            Objects.requireNonNull(text, "text");
        }

        @Override
        public String found() {
            if (text.isEmpty()) {
                return "empty";
            }
            String shown = text.length() > LONGEST_QUOTED ? text.substring(0, LONGEST_QUOTED) + "..." : text;
            return '"' + Words.shown(shown.replace("\n", " ")) + '"';
        }
    }

    /**
     * A list.
     *
     * @param place where it starts
     * @param items its items in order
     */
    record Items(Place place, List<Node> items) implements Node {

        /** Checks the parts and copies the list. */
        public Items {
            Objects.requireNonNull(place, "place");
            items = List.copyOf(items);
        }

        @Override
        public String found() {
            return items.size() == 1 ? "a list of 1 item" : "a list of " + items.size() + " items";
        }
    }

    /**
     * Keys and their values.
     *
     * @param place where it starts
     * @param entries values by key, in the order of the file
     */
    record Entries(Place place, Map<String, Node> entries) implements Node {

        /** Checks the parts and copies the map, keeping its order. */
        public Entries {
            Objects.requireNonNull(place, "place");
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public String found() {
            return "a group of keys";
        }
    }
}
