package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.Fret;
import org.neckgeom.board.FretTable;
import org.neckgeom.drawing.Shown;
import org.neckgeom.neck.Neck;
import org.neckgeom.shape.Spot;
import org.neckgeom.solid.NeckStation;

/** The tables of a sheet: heads and rows of text, lengths in the unit the heads name. */
final class Tables {

    /** A table; its first column names the row. */
    record Table(String title, List<String> heads, List<List<String>> rows) {}

    private Tables() {}

    static List<Table> of(Contents contents) {
        return List.of(frets(contents), stations(contents));
    }

    static Table frets(Contents contents) {
        return FannedFrets.of(contents.design()).map(fan -> fanned(contents)).orElseGet(() -> square(contents));
    }

    /** Both ends of every slot, as they are marked along the edges of a tapered board. */
    private static Table fanned(Contents contents) {
        Shown shown = contents.shown();
        Neck design = contents.design();
        List<List<String>> rows = new ArrayList<>();
        for (int n = 0; n <= design.frets(); n++) {
            Spot bass = contents.shape().fretLine(n).get(0);
            Spot treble = contents.shape().fretLine(n).get(1);
            rows.add(List.of(
                    n == 0 ? "nut" : String.valueOf(n),
                    shown.column(bass.uMm()),
                    shown.column(design.scale().fretMm(n)),
                    shown.column(treble.uMm()),
                    shown.column(bass.distanceMm(treble))));
        }
        return new Table(
                "Fanned frets, from the nut's middle, in " + shown.unitInWords(),
                List.of("Fret", "bass edge", "middle", "treble edge", "fret long"),
                rows);
    }

    private static Table square(Contents contents) {
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
        for (NeckStation station : contents.stations().listed()) {
            String least = station.isInHead() ? "from " : "";
            rows.add(List.of(
                    station.name().orElse(""),
                    shown.column(station.fromNutMm()),
                    station.wood()
                            .map(wood -> least + shown.column(wood.woodMm()))
                            .orElse(""),
                    station.channelDepth()
                            .map(depth -> shown.column(depth.libraryValue()))
                            .orElse(""),
                    least + shown.column(station.depth().libraryValue()),
                    shown.column(station.width().libraryValue())));
        }
        return new Table(
                "Stations, in " + shown.unitInWords(),
                List.of("Station", "from nut", "wood left", "channel deep", "wood deep", "wide"),
                rows);
    }
}
