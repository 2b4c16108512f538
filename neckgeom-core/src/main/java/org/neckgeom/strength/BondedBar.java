package org.neckgeom.strength;

/**
 * A stiff bar glued into the neck, standing on its own or beside the rod.
 *
 * @param y its middle, from the centreline, mm
 * @param start x of its nut end, mm
 * @param end x of its body end, mm
 * @param width across, mm
 * @param top depth of its upper face below the glue face, mm
 * @param height of the bar, mm
 * @param modulus along the bar, MPa
 */
record BondedBar(double y, double start, double end, double width, double top, double height, double modulus) {

    double bottom() {
        return top + height;
    }

    boolean covers(double x) {
        return x >= start && x <= end;
    }
}
