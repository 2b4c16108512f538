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
        List<Double> kept,
        GrowthTable growth,
        Map<String, String> numpy,
        Map<String, String> openTurns,
        Map<String, String> scipy,
        String where) {

    boolean hasNumpy() {
        return numpy.containsKey("best");
    }

    /** Nanoseconds of a piece of work in numpy, a trial of it where it is trials. */
    double numpyNanos(String work) {
        return Double.parseDouble(numpy.get(work));
    }

    boolean hasOpenTurns() {
        return openTurns.containsKey("cold");
    }

    /** What its script found: nanoseconds of the exact chain, or its upper quantile. */
    double openTurns(String what) {
        return Double.parseDouble(openTurns.get(what));
    }

    boolean hasScipy() {
        return scipy.containsKey("joint");
    }

    /** What its script found: nanoseconds of the joint chance of eight limits, the chance itself, or its version. */
    double scipy(String what) {
        return Double.parseDouble(scipy.get(what));
    }
}
