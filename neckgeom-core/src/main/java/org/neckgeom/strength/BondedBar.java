package org.neckgeom.strength;

/**
 * A stiff bar glued into the neck, standing on its own or beside the rod.
 *
 * @param y its middle at the nut line, from the centreline, mm
 * @param fan how much farther its middle lies for one mm toward the body
 * @param start x of its nut end, mm
 * @param end x of its body end, mm
 * @param width across, mm
 * @param top depth of its upper face below the glue face, mm
 * @param height of the bar, mm
 * @param modulus along the bar, MPa
 */
record BondedBar(
        double y, double fan, double start, double end, double width, double top, double height, double modulus) {

    BondedBar(double y, double start, double end, double width, double top, double height, double modulus) {
        this(y, 0, start, end, width, top, height, modulus);
    }

    double middle(double x) {
        return y + fan * x;
    }

    double bottom() {
        return top + height;
    }

    boolean covers(double x) {
        return x >= start && x <= end;
    }
}
