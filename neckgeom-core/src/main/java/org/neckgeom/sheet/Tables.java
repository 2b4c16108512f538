package org.neckgeom.sheet;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.geometry.Fret;
import org.neckgeom.geometry.FretTable;

/** The tables of a sheet: heads and rows of text, lengths in the unit the heads name. */
final class Tables {

    /** A table; its first column names the row. */
    record Table(String title, List<String> heads, List<List<String>> rows) {}

    private Tables() {}

    static List<Table> of(Contents contents) {
        return List.of(frets(contents), stations(contents));
    }

    static Table frets(Contents contents) {
        Shown shown = contents.shown();
        List<List<String>> rows = new ArrayList<>();
        double before = 0;
        for (Fret fret : FretTable.of(contents.design()).frets()) {
            double x = contents.design().scale().fretMm(fret.number());
            rows.add(List.of(
                    fret.number() == 0 ? "nut" : String.valueOf(fret.number()),
                    shown.column(x),
                    fret.number() == 0 ? "" : shown.column(x - before),
                    shown.column(2 * contents.design().halfWidthAtMm(x))));
            before = x;
        }
        return new Table(
                "Frets, in " + shown.unitInWords(), List.of("Fret", "from nut", "from last", "board wide"), rows);
    }

    static Table stations(Contents contents) {
        Shown shown = contents.shown();
        List<List<String>> rows = new ArrayList<>();
        Stations stations = contents.stations();
        for (Stations.Station station : stations.listed()) {
            double x = station.x();
            rows.add(List.of(
                    station.name(),
                    shown.column(x),
                    stations.woodAt(x).map(wood -> shown.column(wood.woodMm())).orElse(""),
                    stations.channelDepth(x).map(shown::column).orElse(""),
                    shown.column(contents.design().backDepthAtMm(x)),
                    shown.column(2 * contents.design().halfWidthAtMm(x))));
        }
        return new Table(
                "Stations, in " + shown.unitInWords(),
                List.of("Station", "from nut", "wood left", "channel deep", "wood deep", "wide"),
                rows);
    }
}
