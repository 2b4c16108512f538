package org.neckgeom.strength;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * A neck, or its bare shaft, weighed down on the bench the way the strings bend it, its rod slack, read half a minute after
 * loading. Immutable.
 *
 * <p>Supported: on fret 1 and body joint, the weight midway, the fall read midway against the supports. Clamped: the heel
 * clamped up to the body joint, the weight at fret 1, the gap under a straightedge from fret 1 to the body joint. The fall at the
 * free end is not taken: it has the clamp's turn in it. Read the zero before and after.
 *
 * <pre>{@code
 * println(NeckBent.supported(newton(78.5), mm(0.137)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Supported at fret 1 and body joint, 0.00175 mm per N
 * }</pre>
 */
public final class NeckBent extends Noun<NeckBent> {

    /** How the neck is held. */
    public enum Held {
        /** On supports under fret 1 and body joint, the weight midway. */
        SUPPORTED("supported"),
        /** Clamped at the body joint, the weight at fret 1. */
        CLAMPED("clamped");

        private final String word;

        Held(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /** How far the zero may move, of the greatest fall. */
    private static final double MOST_ZERO = 0.05;

    /** Its keys. */
    public static final Table<NeckBent> TABLE =
            Table.of("", "a neck weighed down on the bench", NeckBent::new).printedBy(NeckBent::sentences);

    private static final Key<NeckBent, Held> HELD = TABLE.needed(
            "held",
            Types.words(Held.class, Held::toString),
            "supported at fret 1 and body joint, weight midway; or clamped at the body joint, weight at fret 1");
    private static final Key<NeckBent, List<Amount<Force>>> WEIGHTS =
            TABLE.needed("weights", WeightReadings.WEIGHTS, "weights put on: one, or several");
    private static final Key<NeckBent, List<Amount<Length>>> FALLS = TABLE.needed(
            "falls", WeightReadings.FALLS, "under each weight: fall midway, or gap from fret 1 to body joint");
    private static final Key<NeckBent, Amount<Length>> ZERO = TABLE.usual(
            "zero moved",
            Types.SIZE_OR_NOTHING,
            ShopUnits.mm(0),
            "difference of the zeros read before and after; at most 5 % of the greatest fall. Default: 0");

    private static final Key<NeckBent, Amount<Length>> FALL_U =
            TABLE.usual("standard uncertainty", Types.SIZE, WeightReadings.DIAL, WeightReadings.DIAL_MEANING);
    private static final Key<NeckBent, Boolean> FRETTED = TABLE.usual(
            "fretted", Types.YES_OR_NO, true, "whether the frets are in; open slots make a neck softer. Default: yes");

    private final WeightReadings readings;

    private NeckBent(Values<NeckBent> values) {
        super(values);
        this.readings = WeightReadings.of(values.at(WEIGHTS), values.at(FALLS), values.libraryValue(FALL_U));
        double greatest = values.at(FALLS).stream()
                .mapToDouble(Amount::libraryValue)
                .max()
                .orElseThrow();
        if (!(values.libraryValue(ZERO, 0) <= MOST_ZERO * greatest)) {
            throw values.refused(
                    ZERO,
                    "at-most",
                    "be " + style().brief(MOST_ZERO * greatest)
                            + " or less, 5 % of the greatest fall: let the neck rest and read again",
                    values.at(ZERO));
        }
    }

    /**
     * {@return a neck on supports at fret 1 and body joint with a weight midway}
     *
     * @param weight more than 0
     * @param fall midway, more than 0
     */
    public static NeckBent supported(Quantity<Force> weight, Quantity<Length> fall) {
        return of(Held.SUPPORTED, weight, fall);
    }

    /**
     * {@return a neck clamped at the body joint with a weight at fret 1}
     *
     * @param weight more than 0
     * @param gap under a straightedge from fret 1 to the body joint, less that without the weight, more than 0
     */
    public static NeckBent clamped(Quantity<Force> weight, Quantity<Length> gap) {
        return of(Held.CLAMPED, weight, gap);
    }

    private static NeckBent of(Held held, Quantity<Force> weight, Quantity<Length> fall) {
        return new NeckBent(TABLE.values()
                .with(HELD, held)
                .with(WEIGHTS, WeightReadings.more(List.of(), weight, "weight"))
                .with(FALLS, WeightReadings.more(List.of(), fall, "fall")));
    }

    /**
     * {@return this reading with the fall under another weight}
     *
     * @param weight more than 0
     * @param fall as before, more than 0
     */
    public NeckBent fall(Quantity<Force> weight, Quantity<Length> fall) {
        return new NeckBent(values().with(WEIGHTS, WeightReadings.more(values().at(WEIGHTS), weight, "weight"))
                .with(FALLS, WeightReadings.more(values().at(FALLS), fall, "fall")));
    }

    /**
     * {@return this reading with the uncertainty of one fall}
     *
     * @param ofOneFall standard uncertainty, more than 0; 0.003 mm unless given
     */
    public NeckBent standardUncertainty(Quantity<Length> ofOneFall) {
        return new NeckBent(values().amount(FALL_U, ofOneFall));
    }

    /** {@return this reading of a neck whose slots are sawn and open: before fretting} */
    public NeckBent slotsOpen() {
        return new NeckBent(values().with(FRETTED, false));
    }

    /** {@return whether the frets are in; true unless given} */
    public boolean isFretted() {
        return values().at(FRETTED);
    }

    /** {@return how the neck is held} */
    public Held held() {
        return values().at(HELD);
    }

    /** The slope of its falls. */
    WeightReadings readings() {
        return readings;
    }

    private static Form<NeckBent> sentences() {
        return TABLE.facts("neck-bent")
                .fact("perNewton", Kind.MM, "fall or gap for one newton", neck -> neck.readings.perNewton())
                .finds(
                        "supported",
                        neck -> neck.held() == Held.SUPPORTED,
                        "Supported at fret 1 and body joint, {perNewton:fine digits 3} per N")
                .finds("clamped", "Clamped at the body joint, {perNewton:fine digits 3} per N");
    }
}
