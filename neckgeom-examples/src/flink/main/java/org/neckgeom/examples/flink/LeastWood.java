package org.neckgeom.examples.flink;

import static org.neckgeom.units.ShopUnits.mm;

import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Neck;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.page.Document;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.sweep.Axis;
import org.neckgeom.sweep.Sweep;

/** The question: how much wood is left under the channel, for every depth of the back and height of the rod. */
final class LeastWood {

    private LeastWood() {}

    /** The sweep of a neck; a rod of no height is refused, and the sweep goes on. */
    static Sweep<Neck> sweep(Neck neck) {
        return Sweep.of(neck)
                .over("depth at the nut", Axis.steps(mm(8), mm(17.9), mm(0.1)), (one, depth) ->
                        one.back(BackProfile.between(depth, depth.plus(mm(2)))))
                .over("height of the rod", Axis.steps(mm(0), mm(9.9), mm(0.1)), (one, height) ->
                        one.channel(Channel.forRod(TrussRod.twoWay(mm(300)).section(mm(6), height)).startingAt(mm(3))));
    }

    /** The same from the text a job carries. */
    static Sweep<Neck> sweep(String planAsJson) {
        return sweep(Document.PLAN.read(planAsJson).neckAsGiven());
    }

    /** A pure function of the design. */
    static Double leastMm(Neck neck) {
        return FloorThickness.under(neck).least().woodMm();
    }
}
