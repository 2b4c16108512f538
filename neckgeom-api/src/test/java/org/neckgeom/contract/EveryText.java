package org.neckgeom.contract;

import java.util.ArrayList;
import java.util.List;

/** The texts of all sample values, for tests that must see every one. */
public final class EveryText {

    private EveryText() {}

    public static List<String> ofTheSamples() {
        List<String> texts = new ArrayList<>();
        for (Class<?> type : Samples.all().keySet()) {
            for (Object sample : Samples.of(type)) {
                texts.add(sample.toString());
            }
        }
        return texts;
    }
}
