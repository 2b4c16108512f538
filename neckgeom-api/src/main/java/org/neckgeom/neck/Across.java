package org.neckgeom.neck;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;

/**
 * The string spacing as designed, from bass to treble: edge margin at the nut, span at the saddle, and which distance is
 * equal, such as {@code 3 mm from the edges at the nut, 52 mm across at the saddle, equal gaps}. Immutable.
 *
 * <p>The edge margin (overhang) runs from the edge of the board to the outer edge of the outer string, 0 or more; the span
 * runs between the outer edges of the outer strings, more than 0. Default: equal gaps between string edges.
 * {@code StringSpacing} gives
 * the places.
 */
public final class Across extends Noun<Across> {

    /** How the space between the outer strings is shared out. */
    public enum Spacing {
        /** The same from centre to centre. */
        EQUAL_CENTRES("equal centres"),
        /** The same from wall to wall. */
        EQUAL_GAPS("equal gaps"),
        /** Each space is wider than the next toward the treble by the same growth. */
        GRADUATED("graduated");

        private final String word;

        Spacing(String word) {
            this.word = word;
        }

        /** Returns such as {@code equal gaps}. */
        @Override
        public String toString() {
            return word;
        }
    }

    /** Its keys. */
    public static final Table<Across> TABLE =
            Table.of("across", "string spacing", Across::new).printedBy(Across::sentences);

    private static final Key<Across, Amount<Length>> EDGE = TABLE.needed(
                    "edge margin",
                    Types.SIZE_OR_NOTHING,
                    "distance at the nut from the fingerboard's edge to the outer edge of the outer string")
            .called("edge margin");
    private static final Key<Across, Amount<Length>> SPAN = TABLE.needed(
                    "span at saddle", Types.SIZE, "distance at the saddle between the outer edges of the outer strings")
            .called("span of the strings");
    private static final Key<Across, Spacing> SPACING = TABLE.usual(
            "spacing",
            Types.words(Spacing.class, Spacing::toString),
            Spacing.EQUAL_GAPS,
            "distance that is equal between the strings. Default: equal gaps");
    private static final Key<Across, Amount<Length>> GROWTH = TABLE.optional(
                    "growth",
                    Types.EITHER_WAY,
                    "graduated spacing: width of each space minus width of the next space toward the treble")
            .called("growth of the spaces");
    private static final Key<Across, Amount<Length>> IN_PAIR = TABLE.optional(
                    "in pair",
                    Types.SIZE,
                    "distance between the centres of the two strings of a course. Doubled strings need it")
            .called("spacing in a pair");

    static {
        TABLE.moved(Moves.none().and("edge at nut", "edge margin"));
    }

    private Across(Values<Across> values) {
        super(values);
        if ((values.at(SPACING) == Spacing.GRADUATED) != values.has(GROWTH)) {
            throw Refusal.because(
                    GROWTH.name(), "together", "spacing graduated and growth must be given together, or neither");
        }
    }

    /**
     * {@return strings spread with equal gaps, until another spacing is given; how they are spread}
     *
     * @param edgeMargin from the board's edge to the outer edge of the outer string, 0 or more; its unit is the one
     *     answers are given in
     * @param spanAtSaddle from outer edge to outer edge of the outer strings, more than 0
     */
    public static Across of(Quantity<Length> edgeMargin, Quantity<Length> spanAtSaddle) {
        return new Across(TABLE.values().amount(EDGE, edgeMargin).amount(SPAN, spanAtSaddle));
    }

    /** {@return the strings at equal distances centre to centre; how they are spread} */
    public Across equalCentres() {
        return new Across(values().without(GROWTH).with(SPACING, Spacing.EQUAL_CENTRES));
    }

    /** {@return the strings with equal gaps from wall to wall; how they are spread} */
    public Across equalGaps() {
        return new Across(values().without(GROWTH).with(SPACING, Spacing.EQUAL_GAPS));
    }

    /**
     * {@return the strings at distances that grow toward the bass; how they are spread}
     *
     * @param growth how much each space is wider than the next toward the treble; negative: narrower
     */
    public Across graduated(Quantity<Length> growth) {
        return new Across(values().with(SPACING, Spacing.GRADUATED).amount(GROWTH, growth));
    }

    /**
     * {@return the strings of a course at a distance; how they are spread}
     *
     * @param apart centre to centre, more than 0
     */
    public Across inPair(Quantity<Length> apart) {
        return new Across(values().amount(IN_PAIR, apart));
    }

    /** {@return how far the outer strings' outer edges lie from the board's at the nut; 0 or more} */
    public Amount<Length> edgeMargin() {
        return values().at(EDGE);
    }

    /** {@return how far the outer strings' outer edges lie apart at the saddle; more than 0} */
    public Amount<Length> spanAtSaddle() {
        return values().at(SPAN);
    }

    /** {@return how the space between the outer strings is shared out} */
    public Spacing spacing() {
        return values().at(SPACING);
    }

    /**
     * {@return how much each space is wider than the next toward the treble; the growth, or nothing unless graduated}
     */
    public Optional<Amount<Length>> growth() {
        return values().find(GROWTH);
    }

    /** {@return how far the two strings of a course lie apart; centre to centre, or nothing when it was not given} */
    public Optional<Amount<Length>> inPair() {
        return values().find(IN_PAIR);
    }

    private static Form<Across> sentences() {
        return TABLE.facts("across")
                .phrase("grown", " by {growth}")
                .phrase("paired", ", {inPair} in a pair")
                .finds(
                        "across",
                        "{edgeMargin} from the edges at the nut, {spanAtSaddle} across at the saddle, {spacing}{grown}{paired}");
    }
}
