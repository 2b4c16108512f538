package org.neckgeom.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.geometry.WoodAt;
import org.neckgeom.geometry.WoodLeft;
import org.neckgeom.units.ShopUnits;

/** The stations of a neck that tables list and sections are drawn at. */
record Stations(NeckDesign design) {

    /** A station and what it is called. */
    record Station(String name, double x) {}

    /** Depth of the channel at a station, if it reaches there. */
    Optional<Double> channelDepth(double x) {
        return design.channel().map(channel -> channel.depthAtMm(x)).filter(depth -> depth > 0);
    }

    /** Wood left at a station, if the channel reaches it. */
    Optional<WoodAt> woodAt(double x) {
        return design.channel()
                .filter(channel -> channel.depthAtMm(x) > 0)
                .map(channel -> WoodLeft.under(design).at(ShopUnits.mm(x)));
    }

    /** The thinnest place under the channel, if there is a channel. */
    Optional<WoodAt> thinnest() {
        return design.channel().map(channel -> WoodLeft.under(design).least());
    }

    /** Nut, every other fret up to the body, both ends of the channel, the thinnest place, the body joint. */
    List<Station> listed() {
        List<Station> stations = new ArrayList<>();
        stations.add(new Station("nut", 0));
        for (int n = 1; n < design.bodyAtFret(); n += 2) {
            stations.add(new Station("fret " + n, design.scale().fretMm(n)));
        }
        design.channel().ifPresent(channel -> {
            stations.add(new Station("channel from", channel.startMm()));
            stations.add(new Station("channel to", channel.endMm()));
        });
        thinnest().ifPresent(wood -> stations.add(new Station("thinnest", wood.stationMm())));
        stations.add(new Station("body, fret " + design.bodyAtFret(), design.bodyJointMm()));
        stations.sort((a, b) -> Double.compare(a.x(), b.x()));
        return stations;
    }

    /** Four stations to draw: fret 1, the thinnest place or a third of the way, two thirds, and short of the body. */
    List<Station> cuts() {
        int body = design.bodyAtFret();
        TreeSet<Integer> frets = new TreeSet<>(List.of(
                1, Math.max(1, Math.round(body / 3f)), Math.max(1, Math.round(2 * body / 3f)), Math.max(1, body - 2)));
        List<Station> cuts = new ArrayList<>();
        frets.forEach(n -> cuts.add(new Station("fret " + n, design.scale().fretMm(n))));
        thinnest().ifPresent(wood -> {
            int nearest = 0;
            for (int i = 1; i < cuts.size(); i++) {
                if (Math.abs(cuts.get(i).x() - wood.stationMm())
                        < Math.abs(cuts.get(nearest).x() - wood.stationMm())) {
                    nearest = i;
                }
            }
            cuts.set(nearest, new Station("the thinnest place", wood.stationMm()));
        });
        return cuts;
    }
}
