package org.neckgeom.strength;

/**
 * What one newton in the rod does to a section: a moment in N mm for each N, negative when it straightens a forward bow.
 */
interface RodPull {

    /** Moment for one newton at x, where the neutral axis is at zN. */
    double moment(double x, double neutralAxis);

    /** Nut end of what it acts on, mm. */
    double start();

    /** Body end of what it acts on, mm. */
    double end();

    /**
     * Two bars working against each other: a constant moment between the rod's ends. Estimate: the rod touches the wood so
     * that its whole moment passes over.
     *
     * @param start x of the nut end, mm
     * @param end x of the body end, mm
     * @param arm distance of the two bars' axes, mm
     */
    record Couple(double start, double end, double arm) implements RodPull {

        @Override
        public double moment(double x, double neutralAxis) {
            return x >= start && x <= end ? -arm : 0;
        }
    }

    /**
     * One rod pulling its two anchors together along a channel: force times the distance from the rod's axis up to the
     * neutral axis. Estimate: no friction along the channel.
     *
     * @param path the channel
     * @param axisOverFloor how far the rod's axis lies above the floor, mm
     */
    record Tendon(RodPath path, double axisOverFloor) implements RodPull {

        @Override
        public double moment(double x, double neutralAxis) {
            return path.covers(x) ? -(neutralAxis + path.depthAt(x) - axisOverFloor) : 0;
        }

        @Override
        public double start() {
            return path.start();
        }

        @Override
        public double end() {
            return path.end();
        }
    }
}
