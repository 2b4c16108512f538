package org.neckgeom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.Plan;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.NeckSolid;
import org.neckgeom.solid.NeckStation;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.units.ShopUnits;

/** The stations of a neck that tables list and sections are drawn at, with the result of the plan's own check. */
public record Stations(Neck design, Optional<FloorThickness> wood) {

    /** Of a neck with its wood left as settled, and as designed where nothing is. */
    public static Stations of(Neck design, Optional<FloorThickness> settled) {
        return new Stations(design, settled.or(() -> design.channel().map(channel -> FloorThickness.under(design))));
    }

    public static Stations of(Plan plan) {
        return of(plan.designed(), Optional.of(plan.floorThickness()));
    }

    /** A station to draw the section of, and its name. */
    public record Station(String name, double x) {}

    /** Depth of the neck's wood on the centreline, with volute and turn into the heel. */
    public double backDepth(double x) {
        return wood.map(under -> under.back().at(ShopUnits.mm(x)).depth().libraryValue())
                .orElseGet(() -> BackShape.of(design).depthAtMm(x));
    }

    /** Wood left at a station, if the channel reaches it. */
    public Optional<WoodAt> woodAt(double x) {
        return wood.filter(under -> under.channel().depthAtMm(x) > 0).map(under -> under.at(ShopUnits.mm(x)));
    }

    /** The thinnest place under the channel, if there is a channel. */
    public Optional<WoodAt> thinnest() {
        return wood.map(FloorThickness::least);
    }

    /** The rows that tables list. */
    public List<NeckStation> listed() {
        NeckSolid solid = NeckSolid.of(design);
        return wood.map(solid::asMade).orElse(solid).stations().rows();
    }

    /** Four stations to draw: fret 1, the thinnest place or a third of the way, two thirds, and short of the body. */
    public List<Station> cuts() {
        int body = design.bodyAtFret();
        TreeSet<Integer> frets = new TreeSet<>(List.of(
                1, Math.max(1, Math.round(body / 3f)), Math.max(1, Math.round(2 * body / 3f)), Math.max(1, body - 2)));
        List<Station> cuts = new ArrayList<>();
        frets.forEach(n -> cuts.add(new Station("fret " + n, design.scale().fretMm(n))));
        thinnest().ifPresent(thin -> {
            int nearest = 0;
            for (int i = 1; i < cuts.size(); i++) {
                if (Math.abs(cuts.get(i).x() - thin.stationMm())
                        < Math.abs(cuts.get(nearest).x() - thin.stationMm())) {
                    nearest = i;
                }
            }
            cuts.set(nearest, new Station("the thinnest place", thin.stationMm()));
        });
        return cuts;
    }
}
