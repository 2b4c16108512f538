package org.neckgeom.solid;

import java.util.List;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.LeanAnswer;
import org.neckgeom.units.LengthStyle;

/**
 * The stations of a neck in order from the head on: width, depth, area, exponents of the back, crown and thickness of the
 * board, channel and wood left. Table, page, data and comma-separated values list these same rows. Immutable.
 */
public final class NeckStations extends LeanAnswer {

    private static final int SHOWN = 12;

    private final List<NeckStation> rows;

    NeckStations(List<NeckStation> rows, LengthStyle style) {
        super(style);
        this.rows = List.copyOf(rows);
    }

    /** {@return the stations, from the head end on; one or more} */
    public List<NeckStation> rows() {
        return rows;
    }

    /** {@return the whole table, one line a station} */
    public String table() {
        return Sentences.FORM.whole(this, style());
    }

    /**
     * {@return the stations as comma-separated values (RFC 4180): a line of keys with units, then a line a station, cells
     * empty where there is nothing; the lines, each ending in CR LF}
     *
     * @param style whose unit lengths are written in; areas are in mm2
     */
    public String csv(LengthStyle style) {
        return NeckStation.Sentences.FORM.csv(rows, style);
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    private static final class Sentences {
        private static final Form<NeckStations> FORM = Form.<NeckStations>of("neck-stations")
                .fact("count", Kind.WHOLE, "how many", s -> s.rows.size())
                .fact("stations", Kind.table(NeckStation.Sentences.FORM), "from the head end on", NeckStations::rows)
                .finds("stations", "{count:of station/stations} of the neck")
                .each(
                        "stations",
                        "{fromNut:table text}",
                        "{width:table text} wide, {woodDepth:table text} deep",
                        SHOWN,
                        "and {more} more: see table()");
    }

    @Override
    public Form<NeckStations> form() {
        return Sentences.FORM;
    }

    @Override
    protected Object[] parts() {
        return new Object[] {rows};
    }
}
