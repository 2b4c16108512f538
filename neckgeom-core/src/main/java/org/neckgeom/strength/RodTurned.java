package org.neckgeom.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/**
 * A truss rod turned and the relief read before and after, at pitch: how far a turn goes on this neck. Immutable.
 *
 * <p>Turns count from where the rod begins to bite. What the rod's seats give follows from them, and the next wish is met to the
 * readings' uncertainty: {@link RodTurns}. The relief before is the neck's with the rod slack: what the strings do not pull of it
 * is taken as the neck's own even curvature, in relief and rod force too.
 *
 * <pre>{@code
 * println(RodTurned.by(0.25, mm(0.30), mm(0.22)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Rod tightened 0.25 turns: relief 0.3 mm to 0.22 mm
 * }</pre>
 */
public final class RodTurned extends Noun<RodTurned> {

    private static final double MOST_TURNS = 20;

    /** Its keys. */
    public static final Table<RodTurned> TABLE = Table.of("", "a truss rod turned against the strings", RodTurned::new)
            .printedBy(RodTurned::sentences);

    private static final Key<RodTurned, Double> TURNS = TABLE.needed(
            "turns", Types.number(0, MOST_TURNS), "turns against the strings, from where the rod begins to bite");
    private static final Key<RodTurned, Amount<Length>> BEFORE =
            TABLE.needed("relief before", Types.EITHER_WAY, "relief at pitch with the rod slack");
    private static final Key<RodTurned, Amount<Length>> AFTER =
            TABLE.needed("relief after", Types.EITHER_WAY, "relief at pitch after those turns");
    private static final Key<RodTurned, Amount<Length>> RELIEF_U = TABLE.usual(
            "standard uncertainty",
            Types.SIZE,
            ShopUnits.mm(0.005),
            "standard uncertainty of each of the two reliefs. Default: 0.005 mm");

    private RodTurned(Values<RodTurned> values) {
        super(values);
        if (!(turns() > 0)) {
            throw Refusal.of(TURNS.name(), "range", "be more than 0 and at most " + Numbers.plain(MOST_TURNS), turns());
        }
        if (!(movedMm() > 0)) {
            throw values.refused(
                    AFTER,
                    "less-than",
                    "be less than " + values.at(BEFORE) + ", the relief before, as a tightened rod makes it",
                    values.at(AFTER));
        }
    }

    /**
     * {@return a rod turned against the strings}
     *
     * @param turns from where it begins to bite, more than 0 and at most 20
     * @param before relief at pitch with the rod slack
     * @param after relief at pitch after those turns, less
     */
    public static RodTurned by(double turns, Quantity<Length> before, Quantity<Length> after) {
        return new RodTurned(
                TABLE.values().with(TURNS, turns).amount(BEFORE, before).amount(AFTER, after));
    }

    /**
     * {@return this reading with the uncertainty of each of its two reliefs}
     *
     * @param ofEach standard uncertainty, more than 0; 0.005 mm unless given
     */
    public RodTurned standardUncertainty(Quantity<Length> ofEach) {
        return new RodTurned(values().amount(RELIEF_U, ofEach));
    }

    /** {@return the turns; more than 0} */
    public double turns() {
        return values().at(TURNS);
    }

    double beforeMm() {
        return values().libraryValue(BEFORE);
    }

    double reliefUncertaintyMm() {
        return values().libraryValue(RELIEF_U);
    }

    /** Relief that the turns took away. */
    double movedMm() {
        return values().libraryValue(BEFORE) - values().libraryValue(AFTER);
    }

    /** Standard uncertainty of the logarithm of the relief for one turn. */
    double uncertainty() {
        return Math.sqrt(2) * reliefUncertaintyMm() / movedMm();
    }

    private static Form<RodTurned> sentences() {
        return TABLE.facts("rod-turned")
                .finds("rod-turned", "Rod tightened {turns:..3} turns: relief {reliefBefore} to {reliefAfter}");
    }
}
