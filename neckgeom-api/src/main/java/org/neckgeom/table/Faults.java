package org.neckgeom.table;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;

/** The faults found while one tree is read. For one reading, used by one thread. */
final class Faults {

    private static final int LONGEST_SHOWN = 60;

    private final Set<Fault> found = new LinkedHashSet<>();

    /** How the keys of the document are written, for the path of one that lacks. */
    private final Spelling spelling;

    Faults() {
        this(Spelling.WORDS);
    }

    private Faults(Spelling spelling) {
        this.spelling = spelling;
    }

    /** Of a document whose keys show how it is spelled. */
    static Faults of(@Nullable Object document) {
        boolean isCamel = document instanceof Map<?, ?> map
                && map.keySet().stream().anyMatch(key -> key.toString().chars().anyMatch(Character::isUpperCase));
        return new Faults(isCamel ? Spelling.JSON : Spelling.WORDS);
    }

    /** None yet, of the same document. */
    Faults none() {
        return new Faults(spelling);
    }

    Spelling spelling() {
        return spelling;
    }

    void add(String path, String rule, String must, Object data) {
        found.add(new Fault(path, rule, must, shown(data)));
    }

    void add(Fault fault) {
        found.add(fault);
    }

    void sentence(String path, String rule, String sentence) {
        found.add(new Fault(path, rule, sentence, ""));
    }

    /** The faults of something that was refused at a place: each path goes under it, each sentence begins with it. */
    void under(String place, RuntimeException refused) {
        if (refused instanceof Refusal refusal) {
            refusal.faults().forEach(fault -> found.add(at(place, fault)));
        } else if (refused instanceof NoAnswer none) {
            found.add(at(place, none.fault()));
        } else {
            throw refused;
        }
    }

    private static Fault at(String place, Fault fault) {
        if (place.isEmpty()) {
            return fault;
        }
        String path = fault.path().isEmpty() ? place : place + "." + fault.path();
        String must = fault.given().isEmpty() ? place + ": " + fault.must() : fault.must();
        return new Fault(path, fault.rule(), must, fault.given());
    }

    int count() {
        return found.size();
    }

    void refuseIfAny() {
        if (!found.isEmpty()) {
            throw Refusal.of(List.copyOf(found));
        }
    }

    List<Fault> all() {
        return new ArrayList<>(found);
    }

    /** Plain data in words, such as {@code "640 mm"}, {@code a list of 2 items} or {@code empty}. */
    static Object orEmpty(@Nullable Object data) {
        return data == null ? "" : data;
    }

    static String shown(@Nullable Object data) {
        if (data == null || data.equals("")) {
            return "empty";
        }
        if (data instanceof Map) {
            return "a group of keys";
        }
        if (data instanceof List<?> list) {
            return list.size() == 1 ? "a list of 1 item" : "a list of " + list.size() + " items";
        }
        if (data instanceof Double number) {
            return Numbers.plain(number);
        }
        if (!(data instanceof String text)) {
            return String.valueOf(data);
        }
        return '"' + cut(text) + '"';
    }

    /** The beginning of a text, on one line. */
    static String cut(String text) {
        String line = text.replace("\n", " ");
        return Words.shown(line.length() > LONGEST_SHOWN ? line.substring(0, LONGEST_SHOWN) + "..." : line);
    }
}
