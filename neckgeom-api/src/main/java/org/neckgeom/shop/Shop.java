package org.neckgeom.shop;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * The equipment of a shop for cutting a rod channel: cutter, fence, feeler gauges, measuring instrument, and limits for the
 * passes. Immutable.
 *
 * <p>Defaults: a one-piece fence of 600 mm; the common set of feeler gauges in the units of the cutter; repeatability
 * {@link BenchUncertainty#USUAL_REPEATABILITY_MM} mm; passes no deeper than a quarter of the cutter diameter (common practice
 * in hardwood); no light last pass; no feed and no speed of rotation.
 *
 * <pre>{@code
 * println(Shop.with(Cutter.straight(mm(6))).repeatability(mm(0.02)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * Shop
 *   cutter         6 mm straight cutter, 2 flutes of 18 mm, shank 6 mm, stick-out 24 mm, steel
 *   fence          one-piece fence, 600 mm
 *   feeler gauges  20 gauges, 0.05 mm to 1 mm
 *   repeatability  0.02 mm, one standard deviation
 *   cut scatter    0.020 mm, common practice: make ten cuts at one setting to know it
 *   deepest pass   1.5 mm
 * }</pre>
 */
public final class Shop extends Noun<Shop> {

    /** Its keys. */
    public static final Table<Shop> TABLE = Table.of("shop", "what the shop has for cutting the channel", Shop::new)
            .printedBy(Shop::sentences);

    private static final double USUAL_FENCE_MM = 600;
    private static final double DEEPEST_PASS_IN_DIAMETERS = 0.25;

    private static final Key<Shop, Cutter> CUTTER =
            TABLE.needed("cutter", Types.group(Cutter.TABLE), "cutter for the channel");
    private static final Key<Shop, Fence> FENCE = TABLE.optional(
                    "fence", Types.group(Fence.TABLE), "fence that guides the blank. Default: one piece of 600 mm")
            .called("fence");
    private static final Key<Shop, FeelerSet> GAUGES = TABLE.optional(
                    "feeler gauges",
                    Types.group(FeelerSet.TABLE),
                    "feeler gauges for fence moves. Default: the common set in the cutter's units")
            .called("feeler gauges");
    private static final Key<Shop, BenchUncertainty> BENCH = TABLE.inline(
                    BenchUncertainty.TABLE, BenchUncertainty.withDefaults())
            .called("bench uncertainty");
    private static final Key<Shop, DecisionRule> DECISION = TABLE.usual(
                    "decision",
                    Types.group(DecisionRule.TABLE),
                    DecisionRule.withDefaults(),
                    "when the neck may be cut, and the costs of the steps")
            .called("decision rule");
    private static final Key<Shop, Amount<Length>> DEEPEST_PASS = TABLE.optional(
                    "deepest pass", Types.SIZE, "greatest depth of a pass. Default: a quarter of the cutter's diameter")
            .called("deepest pass");
    private static final Key<Shop, Amount<Length>> LAST_PASS = TABLE.usual(
                    "last pass", Types.SIZE_OR_NOTHING, ShopUnits.mm(0), "depth of a light last pass. Default: none")
            .called("last pass");
    private static final Key<Shop, Amount<Speed>> FEED = TABLE.optional(
                    "feed",
                    Types.SPEED.moreThan(ShopUnits.mmPerMinute(0)).atMost(ShopUnits.mmPerMinute(30_000)),
                    "feed of the blank past the cutter, given together with the turning")
            .called("feed");
    private static final Key<Shop, Amount<Frequency>> TURNING = TABLE.optional(
                    "turning",
                    Types.TURNING.moreThan(ShopUnits.rpm(0)).atMost(ShopUnits.rpm(60_000)),
                    "speed of rotation of the cutter")
            .called("speed of rotation");

    static {
        TABLE.moved(Moves.none().and("feeler leaves", "feeler gauges"));
        TABLE.together(FEED, TURNING);
    }

    private Shop(Values<Shop> values) {
        super(withGauges(values));
        if (!(lastPass().libraryValue() <= deepestPass().libraryValue())) {
            throw values.refused(
                    LAST_PASS, "at-most", "be " + deepestPass() + " or less, the deepest pass", values.at(LAST_PASS));
        }
    }

    /** The default feeler gauges are those of the unit the cutter was given in, in whichever unit it is printed later: so they are kept. */
    private static Values<Shop> withGauges(Values<Shop> values) {
        if (values.has(GAUGES) || !values.has(CUTTER)) {
            return values;
        }
        boolean inches = values.at(CUTTER).style() != LengthStyle.MILLIMETRES;
        return values.with(GAUGES, inches ? FeelerSet.inch26() : FeelerSet.metric20());
    }

    /**
     * {@return a shop with a cutter and everything else as usual}
     *
     * @param cutter the cutter for the channel
     */
    public static Shop with(Cutter cutter) {
        return new Shop(TABLE.values().with(CUTTER, Objects.requireNonNull(cutter, "cutter")));
    }

    /**
     * {@return this shop with its fence}
     *
     * @param itsFence the fence
     */
    public Shop fence(Fence itsFence) {
        return new Shop(values().with(FENCE, itsFence));
    }

    /**
     * {@return this shop with its feeler gauges}
     *
     * @param set the feeler gauges
     */
    public Shop feelerGauges(FeelerSet set) {
        return new Shop(values().with(GAUGES, set));
    }

    /**
     * {@return this shop with the repeatability of its instrument}
     *
     * @param standardDeviation of one reading, more than 0
     */
    public Shop repeatability(Quantity<Length> standardDeviation) {
        return uncertainty(uncertainty().repeatability(standardDeviation).printedIn(style()));
    }

    /**
     * {@return this shop with the uncertainties of its bench}
     *
     * @param ofTheBench of readings, cuts and moves
     */
    public Shop uncertainty(BenchUncertainty ofTheBench) {
        return new Shop(values().with(BENCH, ofTheBench));
    }

    /**
     * {@return this shop with its rule for when a neck may be cut}
     *
     * @param itsRule the wanted conformance probability and the costs
     */
    public Shop decision(DecisionRule itsRule) {
        return new Shop(values().with(DECISION, itsRule));
    }

    /**
     * {@return this shop with its rule for the depth of a pass}
     *
     * @param deepest no pass is deeper, more than 0
     * @param last depth of a light last pass, 0 for none
     */
    public Shop passes(Quantity<Length> deepest, Quantity<Length> last) {
        return new Shop(values().amount(DEEPEST_PASS, deepest).amount(LAST_PASS, last));
    }

    /**
     * {@return this shop with its feed and the cutter's speed of rotation}
     *
     * @param speed of the blank past the cutter, more than 0, no more than 30,000 mm/min
     * @param turns of the cutter, more than 0, no more than 60,000 rpm
     */
    public Shop feed(Quantity<Speed> speed, Quantity<Frequency> turns) {
        return new Shop(values().amount(FEED, speed).amount(TURNING, turns));
    }

    /** {@return the cutter} */
    public Cutter cutter() {
        return values().at(CUTTER);
    }

    /** {@return the fence} */
    public Fence fence() {
        return values().find(FENCE).orElseGet(() -> Fence.onePiece(style().amount(USUAL_FENCE_MM)));
    }

    /** {@return the feeler gauges} */
    public FeelerSet feelerGauges() {
        return values().at(GAUGES);
    }

    /** {@return the repeatability of the instrument; one standard deviation of one reading, more than 0} */
    public Amount<Length> repeatability() {
        return style().amount(uncertainty().repeatabilityMm());
    }

    /** {@return the uncertainties of the bench; of readings, cuts and moves} */
    public BenchUncertainty uncertainty() {
        return values().has(BENCH) ? values().at(BENCH) : values().at(BENCH).printedIn(style());
    }

    /** {@return the rule for when a neck may be cut; the wanted conformance probability and the costs} */
    public DecisionRule decision() {
        return values().at(DECISION);
    }

    /** {@return the deepest pass allowed; more than 0} */
    public Amount<Length> deepestPass() {
        return style().amount(values().libraryValue(DEEPEST_PASS, DEEPEST_PASS_IN_DIAMETERS * cutter().diameterMm()));
    }

    /** {@return the depth of a light last pass; 0 for none} */
    public Amount<Length> lastPass() {
        return style().amount(values().libraryValue(LAST_PASS));
    }

    /** {@return the feed, if it was given; more than 0, or nothing} */
    public Optional<Amount<Speed>> feed() {
        ShopUnit<Speed> shown = style().unitFor(ShopUnit.MM_PER_MINUTE);
        return values().find(FEED).map(feed -> Amount.ofLibrary(feed.libraryValue(), shown));
    }

    /** {@return the cutter's speed of rotation, if it was given; more than 0, or nothing} */
    public Optional<Amount<Frequency>> turning() {
        return values().find(TURNING).map(turns -> Amount.ofLibrary(turns.libraryValue(), ShopUnit.RPM));
    }

    private static Form<Shop> sentences() {
        return TABLE.facts("shop")
                .finds("shop", "Shop")
                .line("cutter", "cutter", "{cutter}")
                .fact(
                        "ridesAlong",
                        Kind.answer(Fence.TABLE.form()),
                        "the fence, given or default",
                        shop -> shop.fence())
                .line("fence", "fence", "{ridesAlong}")
                .line("feelerGauges", "feeler gauges", "{feelerGauges}")
                .line("repeatability", "repeatability", "{repeatability}, one standard deviation")
                .row(
                        "scatterOfCuts",
                        "cut scatter",
                        Kind.answer(BenchUncertainty.scatter()),
                        "at one setting",
                        shop -> shop.uncertainty())
                .row("deepest", "deepest pass", Kind.AMOUNT, "no pass is deeper", shop -> shop.deepestPass())
                .line("lastPass", "last pass", shop -> shop.lastPass().libraryValue() > 0, "{lastPass}")
                .factIfAny("fed", Kind.AMOUNT, "of the blank past the cutter, in a minute", shop -> shop.feed())
                .line("feed", "feed", "{fed} at {turning}");
    }
}
