package org.neckgeom.strength;

import org.neckgeom.neck.Channel;

/**
 * The effect of one newton in the rod on a section: a moment in N mm for each N, negative when it straightens a forward
 * bow.
 */
interface RodPull {

    /** Moment for one newton at x, where the neutral axis is at zN. */
    double moment(double x, double neutralAxis);

    /** Push along the neck at x for one newton. */
    double push(double x);

    /** Nut end of the length it acts on, mm. */
    double start();

    /** Body end of the length it acts on, mm. */
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

        @Override
        public double push(double x) {
            return 0;
        }
    }

    /**
     * One rod pulling its two anchors together along a channel: force times the distance from the rod's axis up to the
     * neutral axis. Estimate: the rod lies on the channel's floor, no friction.
     *
     * @param channel the channel with its rod
     */
    record Tendon(Channel channel) implements RodPull {

        @Override
        public double moment(double x, double neutralAxis) {
            if (x < start() || x > end()) {
                return 0;
            }
            double axis = channel.reinforcement().heightMm() / 2 - channel.floorDepthAtMm(x);
            return axis - neutralAxis;
        }

        @Override
        public double push(double x) {
            return x < start() || x > end() ? 0 : 1;
        }

        @Override
        public double start() {
            return channel.startMm();
        }

        @Override
        public double end() {
            return channel.startMm() + channel.reinforcement().lengthMm();
        }
    }
}
