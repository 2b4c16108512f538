package org.neckgeom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.neckgeom.neck.Neck;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.solid.BackShape;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.solid.WoodAt;
import org.neckgeom.units.ShopUnits;

/** The stations of a neck that tables list and sections are drawn at, with what a plan's own check says of them. */
public record Stations(Neck design, Optional<FloorThickness> wood) {

    /** Where a jump at the nut is looked at a hair before it, what is printed is the nut. */
    private static final double HAIR_MM = 1e-5;

    /** Of a neck with its wood left as settled, and as designed where nothing is. */
    public static Stations of(Neck design, Optional<FloorThickness> settled) {
        return new Stations(design, settled.or(() -> design.channel().map(channel -> FloorThickness.under(design))));
    }

    public static Stations of(NeckPlan plan) {
        return of(plan.design(), Optional.of(plan.woodLeft()));
    }

    /** A station and what it is called. Ahead of the nut the back's depth and the wood left are at least what is told. */
    public record Station(String name, double x) {

        private static Station of(String name, double x) {
            return new Station(x < -HAIR_MM ? name + ", in the head" : name, x);
        }

        /** Where it lies, without what no rule can tell. */
        public double fromNut() {
            return Math.abs(x) < HAIR_MM ? 0 : x;
        }

        public boolean isLowerBound() {
            return x < -HAIR_MM;
        }
    }

    /** Depth of the channel at a station, if it reaches there. */
    public Optional<Double> channelDepth(double x) {
        return wood.map(under -> under.channel().depthAtMm(x)).filter(depth -> depth > 0);
    }

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

    /** Nut, every other fret up to the body, both ends of the channel, the thinnest place, the body joint. */
    public List<Station> listed() {
        List<Station> stations = new ArrayList<>();
        stations.add(new Station("nut", 0));
        for (int n = 1; n < design.bodyAtFret(); n += 2) {
            stations.add(new Station("fret " + n, design.scale().fretMm(n)));
        }
        wood.map(FloorThickness::channel).ifPresent(channel -> {
            stations.add(Station.of("channel from", channel.startMm()));
            stations.add(Station.of("channel to", channel.endMm()));
        });
        thinnest().ifPresent(thin -> stations.add(Station.of("thinnest", thin.stationMm())));
        stations.add(new Station("body, fret " + design.bodyAtFret(), design.bodyJointMm()));
        stations.sort((a, b) -> Double.compare(a.x(), b.x()));
        return stations;
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
