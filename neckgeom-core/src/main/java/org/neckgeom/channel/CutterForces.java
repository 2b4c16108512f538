package org.neckgeom.channel;

/** The estimates of a cutter's load in mm, N, MPa, s. */
final class CutterForces {

    private CutterForces() {}

    /** Rim speed in mm/s from diameter in mm and turns a second. */
    static double rimSpeed(double diameter, double turns) {
        return Math.PI * diameter * turns;
    }

    /** Thickness one edge takes a turn, in mm. */
    static double chipLoad(double feed, double turns, int edges) {
        return feed / (turns * edges);
    }

    /** Power in N mm/s for a groove as wide as the cutter. */
    static double power(double specificForce, double depth, double diameter, double feed) {
        return specificForce * depth * diameter * feed;
    }

    /** Second moment of a round section in mm^4. */
    static double roundSecondMoment(double diameter) {
        return Math.PI * diameter * diameter * diameter * diameter / 64;
    }

    /**
     * Bend at the tip of a stepped cantilever under a load at the tip, in mm.
     *
     * @param force in N
     * @param modulus in MPa
     * @param free length of the free part, with second moment {@code freeI}
     * @param root length of the part next to the collet, with second moment {@code rootI}
     */
    static double bend(double force, double modulus, double free, double freeI, double root, double rootI) {
        double all = free + root;
        double cube = free * free * free;
        return force / (3 * modulus) * (cube / freeI + (all * all * all - cube) / rootI);
    }
}
