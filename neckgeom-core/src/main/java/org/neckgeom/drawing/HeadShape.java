package org.neckgeom.drawing;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.neck.Head;
import org.neckgeom.shape.Point;
import org.neckgeom.shape.Polyline;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.HeadSolid;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/**
 * The {@linkplain HeadSolid head in space} as it is drawn, in mm, u toward the body: on its own face with the neck's axis
 * level, or in plan as it is seen square to the neck.
 *
 * @param inPlan whether seen in plan; else on its face
 */
public record HeadShape(HeadSolid solid, boolean inPlan) {

    public Head head() {
        return solid.head();
    }

    /** The same head seen square to the neck. */
    public HeadShape seenInPlan() {
        return new HeadShape(solid, true);
    }

    /** Whether the outline is the head's own; otherwise only the room for it. */
    public boolean hasOutline() {
        return HeadLayout.of(head()).hasOutline();
    }

    /** The outline, closed: from the nut line's treble end by the tip to its bass end. */
    public List<Spot> outline() {
        return solid.outline().spots().stream().map(this::placed).toList();
    }

    /** The slanted line through the nut, between the edges of a neck so wide there. */
    public List<Spot> nutLine(double halfWidth) {
        double slope = solid.frame().toHere(new Point(solid.nutSlope(), 1, 0)).xMm();
        double across = solid.frame().toHere(new Point(solid.nutSlope(), 1, 0)).yMm();
        return List.of(
                placed(new Spot(-halfWidth * slope, -halfWidth * across)),
                placed(new Spot(halfWidth * slope, halfWidth * across)));
    }

    /** A line along the nut line, so far before it along the neck's axis in the face, as far as the outline. */
    public List<Spot> across(double before) {
        return acrossOnAxis(before
                * (solid.neckAxis().uMm() + solid.nutLine() * solid.neckAxis().vMm()));
    }

    /** The same, so far before the nut line on the head's own axis. */
    public List<Spot> acrossOnAxis(double before) {
        Polyline part =
                solid.outlineFrom(Amount.ofLibrary(before, ShopUnit.MILLIMETRE)).orElse(solid.outline());
        // The cut begins the part's treble edge and ends its bass edge.
        List<Spot> spots = part.spots();
        return List.of(placed(spots.get(spots.size() - 1)), placed(spots.get(0)));
    }

    /** Where each string leaves its post, or the posts' middles where their diameter is known, from bass to treble. */
    public List<Spot> posts() {
        return solid.posts().stream().map(this::placed).toList();
    }

    /** The slots of a slotted head, closed; none for another head. */
    public List<Polyline> slots() {
        return solid.slots().stream()
                .map(slot ->
                        Polyline.closed(slot.spots().stream().map(this::placed).toList(), slot.bulges()))
                .toList();
    }

    /** The seams of the wings with stock so wide, one a side; none where it is wide enough. */
    public List<List<Spot>> wings(double stock) {
        List<List<Spot>> seams = new ArrayList<>();
        if (!(stock > 0)) {
            return seams;
        }
        for (Polyline wing : solid.wings(Amount.ofLibrary(stock, ShopUnit.MILLIMETRE))) {
            List<Spot> seam = wing.spots().stream()
                    .filter(s -> Math.abs(Math.abs(solid.at(s, 0).yMm()) - stock / 2) < 1e-9)
                    .map(this::placed)
                    .sorted((a, b) -> Double.compare(b.uMm(), a.uMm()))
                    .toList();
            if (seam.size() > 1) {
                seams.add(List.of(seam.get(0), seam.get(seam.size() - 1)));
            }
        }
        return seams;
    }

    private Spot placed(Spot spot) {
        Point at = solid.at(spot, 0);
        if (inPlan) {
            return new Spot(at.xMm(), at.yMm());
        }
        Spot axis = solid.neckAxis();
        double along = -spot.uMm() * axis.uMm() + spot.vMm() * axis.vMm();
        double aside = spot.vMm() * axis.uMm() + spot.uMm() * axis.vMm();
        return new Spot(-along, aside);
    }
}
