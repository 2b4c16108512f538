package org.neckgeom.bench;

import java.util.List;
import java.util.Map;

/** All that one run found out. */
record Measured(
        Scores scores,
        FreshJvm.Times fresh,
        long indriyaClassesOwn,
        long indriyaClassesForeign,
        List<Double> chains,
        GrowthTable growth,
        Map<String, String> numpy,
        String where) {

    boolean hasNumpy() {
        return numpy.containsKey("best");
    }

    /** Nanoseconds of a piece of work in numpy, a trial of it where it is trials. */
    double numpyNanos(String work) {
        return Double.parseDouble(numpy.get(work));
    }
}
