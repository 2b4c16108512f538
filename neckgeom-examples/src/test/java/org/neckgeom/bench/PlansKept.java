package org.neckgeom.bench;

import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;

/** What a plan takes that is kept: hundreds of them, each read from its file and worked out, and the memory they hold. */
final class PlansKept {

    private static final int BEFORE = 200;
    private static final int COUNTED = 400;
    private static final int COLLECTIONS = 4;

    private PlansKept() {}

    /**
     * Prints kilobytes of a plan with its checks and sections, and of one with its text too, each on a line.
     *
     * @param args none
     */
    public static void main(String[] args) {
        System.out.println(kilobytes(false));
        System.out.println(kilobytes(true));
    }

    private static double kilobytes(boolean withText) {
        Job[] kept = new Job[BEFORE + COUNTED];
        long before = 0;
        int words = 0;
        for (int i = 0; i < kept.length; i++) {
            // What the JVM itself keeps of the first ones is not a plan's.
            before = i == BEFORE ? used() : before;
            kept[i] = NeckFile.read("octave-mandolin.yaml");
            words += kept[i].plan().checks().size()
                    + kept[i].plan().sections().size()
                    + (withText ? Sheet.of(kept[i]).toText().length() : 0);
        }
        double each = (used() - before) / 1000.0 / COUNTED;
        if (words == 0 || kept[0].neck().frets() == 0) {
            throw new IllegalStateException("nothing was worked out");
        }
        return each;
    }

    private static long used() {
        for (int i = 0; i < COLLECTIONS; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
