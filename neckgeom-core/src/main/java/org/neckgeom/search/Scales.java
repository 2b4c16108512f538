package org.neckgeom.search;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What counts as much in each aim and limit: of an aim the median's distance from the least, of a
 * limit the median distance, among first trials. */
@SuppressWarnings("ArrayRecordComponent") // stays in this package and is never compared
record Scales(double[] aims, double[] rooms) {

    static Scales of(List<Trial> first, int aims, int rooms) {
        List<Trial> asked = first.stream().filter(trial -> !trial.isRefused()).toList();
        double[] ofAims = new double[aims];
        for (int k = 0; k < aims; k++) {
            int aim = k;
            double[] all = sorted(asked, trial -> trial.aims()[aim]);
            ofAims[k] = positive(all.length == 0 ? 0 : all[all.length / 2] - all[0]);
        }
        double[] ofRooms = new double[rooms];
        for (int k = 0; k < rooms; k++) {
            int rule = k;
            double[] all = sorted(asked, trial -> Math.abs(trial.rooms()[rule]));
            ofRooms[k] = positive(all.length == 0 ? 0 : all[all.length / 2]);
        }
        return new Scales(ofAims, ofRooms);
    }

    private static double[] sorted(List<Trial> trials, ToDoubleFunction<Trial> figure) {
        double[] all =
                trials.stream().mapToDouble(figure).filter(Double::isFinite).toArray();
        Arrays.sort(all);
        return all;
    }

    private static double positive(double scale) {
        return scale > 0 && Double.isFinite(scale) ? scale : 1;
    }
}
