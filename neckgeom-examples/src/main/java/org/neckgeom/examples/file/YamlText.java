package org.neckgeom.examples.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.Event.ID;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * A YAML 1.2 text turned into plain data and the place of each of its parts.
 *
 * <p>Every value stays text: {@code 20}, {@code "20"} and {@code 'no'} are read by whoever knows what the key means,
 * so no number or word changes on the way. Duplicate keys are noted as problems. Refused outright, because a file
 * written by hand never needs them and a hostile one does: tags, anchors, aliases, a second document, more than
 * {@value #MOST_CHARACTERS} characters, more than {@value #DEEPEST} levels.
 */
final class YamlText {

    /** The most characters read. */
    static final int MOST_CHARACTERS = 262_144;

    /** The most levels of maps and lists in one another. */
    static final int DEEPEST = 12;

    private final Iterator<Event> events;
    private final Problems problems;
    private final Map<String, Place> places = new HashMap<>();
    private Event now;

    /** Maps, lists and texts, and the place of each path in the file. */
    record Document(Object plain, Map<String, Place> places) {

        /** The place of a path, or of what is nearest above it. */
        Place place(String path) {
            String known = path;
            while (!places.containsKey(known)) {
                int end = Math.max(known.lastIndexOf('.'), known.lastIndexOf('['));
                known = known.substring(0, Math.max(0, end));
            }
            Place there = places.get(known);
            return new Place(there.file(), there.line(), path);
        }
    }

    private YamlText(Iterator<Event> events, Problems problems) {
        this.events = events;
        this.problems = problems;
    }

    /**
     * Reads one document.
     *
     * @param file the file's name, for the places
     * @param text the file's text
     * @param problems where duplicate keys are noted
     * @return the document
     * @throws FileRefused if the text is not YAML, holds nothing, or holds what is refused
     */
    static Document read(String file, String text, Problems problems) {
        Place top = Place.topOf(file);
        if (text.length() > MOST_CHARACTERS) {
            throw FileRefused.at(
                    Place.whole(file),
                    "the file has " + text.length() + " characters, more than the " + MOST_CHARACTERS + " allowed");
        }
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(MOST_CHARACTERS)
                .setMaxAliasesForCollections(0)
                .build();
        try {
            return new YamlText(new Parse(settings).parseString(plain).iterator(), problems).document(top);
        } catch (MarkedYamlEngineException broken) {
            throw FileRefused.at(placeOf(broken, top), sentenceFor(broken, plain));
        } catch (YamlEngineException broken) {
            throw FileRefused.at(Place.whole(file), "is not YAML: " + firstLine(broken.getMessage()));
        }
    }

    private Document document(Place top) {
        next(); // stream start
        next();
        if (now.getEventId() == ID.StreamEnd) {
            throw FileRefused.at(Place.whole(top.file()), "the file holds nothing but blanks and comments");
        }
        next(); // after document start
        Object root = part(new Place(top.file(), line(now), ""), 1);
        next(); // document end
        next();
        if (now.getEventId() != ID.StreamEnd) {
            throw FileRefused.at(
                    new Place(top.file(), line(now), ""),
                    "a second document starts here; keep one document in a file and leave out the --- line");
        }
        return new Document(root, places);
    }

    /** The part that starts with the present event; on return the present event is its last. */
    private Object part(Place place, int depth) {
        refuseMachinery(place);
        if (depth > DEEPEST) {
            throw FileRefused.at(place, "lists and groups lie deeper than the " + DEEPEST + " levels allowed");
        }
        places.putIfAbsent(place.path(), place);
        if (now instanceof ScalarEvent scalar) {
            return textOf(scalar);
        }
        return now.getEventId() == ID.SequenceStart ? items(place, depth) : entries(place, depth);
    }

    private List<Object> items(Place place, int depth) {
        List<Object> items = new ArrayList<>();
        for (next(); now.getEventId() != ID.SequenceEnd; next()) {
            items.add(part(place.item(items.size() + 1, line(now)), depth + 1));
        }
        return items;
    }

    private Map<String, Object> entries(Place place, int depth) {
        Map<String, Object> entries = new LinkedHashMap<>();
        for (next(); now.getEventId() != ID.MappingEnd; next()) {
            refuseMachinery(place);
            int line = line(now);
            if (!(now instanceof ScalarEvent name)) {
                throw FileRefused.at(
                        new Place(place.file(), line, place.path()), "a list or a group is where a key belongs");
            }
            String key = name.getValue().strip();
            Place here = place.key(key, line);
            Place first = entries.containsKey(key) ? places.get(here.path()) : null;
            next();
            Object value = part(here, depth + 1);
            entries.putIfAbsent(key, value);
            if (first != null) {
                problems.add(
                        here,
                        here.path() + " is given twice, on line " + first.line() + " and on line " + line
                                + "; keep one of them");
            }
        }
        return entries;
    }

    private void refuseMachinery(Place place) {
        Place here = new Place(place.file(), line(now), place.path());
        if (now instanceof AliasEvent alias) {
            throw FileRefused.at(
                    here, "the alias *" + alias.getAlias().getValue() + " is not allowed; write the value out");
        }
        if (now instanceof NodeEvent node && node.getAnchor().isPresent()) {
            throw FileRefused.at(
                    here, "the anchor &" + node.getAnchor().get().getValue() + " is not allowed; leave it out");
        }
        String tag = tag();
        if (tag != null) {
            throw FileRefused.at(here, "the tag " + tag + " is not allowed; leave it out");
        }
    }

    private String tag() {
        if (now instanceof ScalarEvent scalar) {
            return scalar.getTag().orElse(null);
        }
        return now instanceof CollectionStartEvent start ? start.getTag().orElse(null) : null;
    }

    private void next() {
        now = events.next();
    }

    private static String textOf(ScalarEvent scalar) {
        String text = scalar.getValue().strip();
        boolean nothing = scalar.isPlain() && (text.equals("~") || text.equals("null"));
        return nothing ? "" : text;
    }

    private static int line(Event event) {
        return event.getStartMark().map(Mark::getLine).orElse(0) + 1;
    }

    private static Place placeOf(MarkedYamlEngineException broken, Place top) {
        return broken.getProblemMark()
                .map(mark -> new Place(top.file(), mark.getLine() + 1, ""))
                .orElse(top);
    }

    private static String sentenceFor(MarkedYamlEngineException broken, String text) {
        int at = broken.getProblemMark().map(Mark::getLine).orElse(0);
        String line = text.lines().skip(at).findFirst().orElse("");
        if (line.stripTrailing().contains("\t")) {
            return "this line has a tab; indent with blanks";
        }
        return "is not YAML from here on (" + firstLine(broken.getProblem())
                + "); write key: value, indent with blanks, and put quotes round a text that holds a colon";
    }

    private static String firstLine(String message) {
        return message == null ? "unreadable" : message.lines().findFirst().orElse("unreadable");
    }
}
