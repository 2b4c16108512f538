package org.neckgeom.sweep;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A place in the grid, and the design there. Moving on by one turns the last axis; the design is made anew only from the
 * first axis that turned, so the usual step costs one change.
 */
final class SweepCursor<D> {

    private final List<D> designs;
    private final List<SweepAxis<D>> axes;
    private final int[] places;
    private int start;

    /** The design after so many axes; the first is as in the list. */
    private final List<Made<D>> stages = new ArrayList<>();

    SweepCursor(List<D> designs, List<SweepAxis<D>> axes, long index) {
        this.designs = designs;
        this.axes = axes;
        this.places = new int[axes.size()];
        long rest = index;
        for (int k = axes.size() - 1; k >= 0; k--) {
            places[k] = (int) (rest % axes.get(k).size());
            rest /= axes.get(k).size();
        }
        this.start = (int) rest;
        stages.add(Made.of(designs.get(start)));
        makeFrom(0);
    }

    private void makeFrom(int axis) {
        while (stages.size() > axis + 1) {
            stages.remove(stages.size() - 1);
        }
        for (int k = axis; k < places.length; k++) {
            stages.add(stages.get(k).then(axes.get(k).change(places[k])));
        }
    }

    /** Goes to the next place, which must exist. */
    void moveOn() {
        int k = places.length - 1;
        while (k >= 0 && places[k] == axes.get(k).size() - 1) {
            places[k] = 0;
            k--;
        }
        if (k >= 0) {
            places[k]++;
            makeFrom(k);
        } else {
            start++;
            stages.set(0, Made.of(designs.get(start)));
            makeFrom(0);
        }
    }

    Made<D> made() {
        return stages.get(stages.size() - 1);
    }

    Map<String, Object> settings() {
        Map<String, Object> settings = new LinkedHashMap<>();
        for (int k = 0; k < places.length; k++) {
            settings.put(axes.get(k).name(), axes.get(k).value(places[k]));
        }
        return Collections.unmodifiableMap(settings);
    }
}
