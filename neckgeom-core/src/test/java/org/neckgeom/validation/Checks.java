package org.neckgeom.validation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All checks against something outside the project, by topic, in the order of the report. */
public final class Checks {

    private final Map<String, List<Check>> topics = new LinkedHashMap<>();
    private String topic = "";

    /** Begins a topic of the report. */
    public Checks topic(String title) {
        topic = title;
        return this;
    }

    /**
     * Begins a check.
     *
     * @param what the quantity, in a few words
     * @param source where the expected figures come from
     * @param where table, equation, section or file in it
     * @param status what stands behind the figures
     * @param unit of the figures, blank for a ratio
     */
    public Check check(String what, Source source, String where, Status status, String unit) {
        Check check = new Check(what, source, where, status, unit);
        topics.computeIfAbsent(topic, name -> new ArrayList<>()).add(check);
        return check;
    }

    Map<String, List<Check>> topics() {
        return topics;
    }

    List<Check> all() {
        return topics.values().stream().flatMap(List::stream).toList();
    }
}
