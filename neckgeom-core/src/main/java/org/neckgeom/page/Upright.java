package org.neckgeom.page;

import java.util.List;
import org.neckgeom.shape.Spot;

/**
 * The frame of an upright neck on the page: head up, the nut at the same height in every upright drawing of one neck,
 * so that they can be read across.
 */
final class Upright {

    static final double LEFT_EDGE = 106;
    static final double RIGHT_EDGE = 230;
    private static final double MIDDLE = (LEFT_EDGE + RIGHT_EDGE) / 2;
    private static final double ROOM = RIGHT_EDGE - LEFT_EDGE - 24;
    private static final double LONG = 620;
    private static final double TOP = 16;
    private static final double[] STRETCHES = {2, 1.5, 1.25, 1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1};

    private final double along;
    private final double stretch;
    private final double origin;
    private final double nut;

    private Upright(double along, double stretch, double origin, double nut) {
        this.along = along;
        this.stretch = stretch;
        this.origin = origin;
        this.nut = nut;
    }

    /**
     * Fits stations and offsets to the page.
     *
     * @param tip least x
     * @param end greatest x
     * @param leftmost offset that lies furthest left
     * @param rightmost offset that lies furthest right, more than the leftmost
     * @param mostStretch how many times larger offsets may be drawn than stations
     */
    static Upright fitting(double tip, double end, double leftmost, double rightmost, double mostStretch) {
        double along = LONG / (end - tip);
        double stretch = STRETCHES[STRETCHES.length - 1];
        for (double candidate : STRETCHES) {
            if (candidate <= mostStretch && candidate * along * (rightmost - leftmost) <= ROOM) {
                stretch = candidate;
                break;
            }
        }
        double across = stretch * along;
        double origin = MIDDLE - across * (leftmost + rightmost) / 2;
        return new Upright(along, stretch, origin, TOP - tip * along);
    }

    /** How many times larger offsets are drawn than stations. */
    double stretch() {
        return stretch;
    }

    Spot at(double x, double offset) {
        return new Spot(origin + offset * along * stretch, nut + x * along);
    }

    /** Points (x, offset) of the neck as they lie on the page. */
    List<Spot> all(List<Spot> points) {
        return points.stream().map(p -> at(p.uMm(), p.vMm())).toList();
    }

    /** Points (x, z) of the neck with z to the left: the strings' side. */
    List<Spot> turned(List<Spot> points) {
        return points.stream().map(p -> at(p.uMm(), -p.vMm())).toList();
    }

    double top() {
        return TOP;
    }

    double bottom() {
        return TOP + LONG;
    }

    double height() {
        return LONG + 2 * TOP;
    }
}
