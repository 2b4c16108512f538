package org.neckgeom.neck;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/**
 * A place of the head's outline: how far out both edges are, so far along the head, such as {@code 28 mm along: 30 mm out}.
 * Immutable.
 *
 * <p>{@code along} counts on the head's axis from the nut line, 0 or more; both edges count from that axis and are more
 * than 0. Default: the treble edge as far out as the bass edge.
 */
public final class OutlinePoint extends Noun<OutlinePoint> {

    /** Its keys. */
    public static final Table<OutlinePoint> TABLE = Table.of(
                    "outline", "a place of the head's outline", OutlinePoint::new)
            .printedBy(OutlinePoint::sentences);

    private static final Key<OutlinePoint, Amount<Length>> ALONG = TABLE.needed(
                    "along", Types.SIZE_OR_NOTHING, "distance of this place from the nut line, on the head's axis")
            .called("place of the outline along the head");
    private static final Key<OutlinePoint, Amount<Length>> BASS = TABLE.needed(
                    "bass", Types.SIZE, "distance of the bass edge from the head's axis at this place")
            .called("bass edge of the outline");
    private static final Key<OutlinePoint, Amount<Length>> TREBLE = TABLE.optional(
                    "treble",
                    Types.SIZE,
                    "distance of the treble edge from the head's axis at this place. Default: that of the bass edge")
            .called("treble edge of the outline");

    private OutlinePoint(Values<OutlinePoint> values) {
        super(withoutEqualEdge(values));
    }

    /** A treble edge as far out as the bass edge is the default. */
    private static Values<OutlinePoint> withoutEqualEdge(Values<OutlinePoint> values) {
        boolean even = values.has(BASS) && values.libraryValue(TREBLE, -1) == values.libraryValue(BASS);
        return even ? values.without(TREBLE) : values;
    }

    /**
     * {@return a place with both edges as far out}
     *
     * @param along from the nut line on the head's axis, 0 or more; its unit is the one answers are given in
     * @param out of each edge from the axis, more than 0
     */
    public static OutlinePoint at(Quantity<Length> along, Quantity<Length> out) {
        return new OutlinePoint(TABLE.values().amount(ALONG, along).amount(BASS, out));
    }

    /**
     * {@return this place with a treble edge of its own}
     *
     * @param out from the axis, more than 0
     */
    public OutlinePoint treble(Quantity<Length> out) {
        return new OutlinePoint(values().amount(TREBLE, out));
    }

    /** {@return the distance along the head's axis from the nut line, in mm; 0 or more} */
    public double alongMm() {
        return values().libraryValue(ALONG);
    }

    /** {@return the distance of the bass edge from the axis, in mm; more than 0} */
    public double bassMm() {
        return values().libraryValue(BASS);
    }

    /** {@return the distance of the treble edge from the axis, in mm; more than 0} */
    public double trebleMm() {
        return values().libraryValue(TREBLE, bassMm());
    }

    private static Form<OutlinePoint> sentences() {
        return TABLE.facts("outline-point")
                .phrase("other", "bass {bass}, treble {treble} out")
                .phrase("other", "{bass} out")
                .finds("outline-point", "{along} along: {other}");
    }
}
