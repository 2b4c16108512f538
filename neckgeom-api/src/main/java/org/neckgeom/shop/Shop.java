package org.neckgeom.shop;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;

/**
 * What one shop has for cutting a channel: a cutter, a fence, leaves to move it by, an instrument to read with, and its
 * rule for the depth of a pass. Immutable.
 *
 * <p>Unless told: a one-piece fence of 600 mm, the common set of leaves in the cutter's units, an instrument that repeats
 * to {@link TrialCut#USUAL_REPEATABILITY_MM}, passes no deeper than a quarter of the cutter's diameter (common practice in hardwood), no light
 * last pass, and feed and speed of rotation not told.
 */
public final class Shop implements Answer, SaysLengths<Shop> {

    private static final Form<Shop> FORM = Form.<Shop>of("shop")
            .finds("shop", "Shop")
            .row("cutter", "cutter", Kind.answer(Cutter.Sentences.FORM), "for the channel", Shop::cutter)
            .row("fence", "fence", Kind.answer(Fence.Sentences.FORM), "the piece rides along", Shop::fence)
            .row("feelerGauges", "leaves", Kind.answer(FeelerSet.FORM), "to move the fence by", Shop::leaves)
            .fact("repeatability", Kind.MM, "of one reading", shop -> shop.bench.readingMm())
            .line("repeatability", "reads within", "{repeatability}, one standard deviation")
            .row(
                    "cutScatter",
                    "cut scatter",
                    Kind.answer(BenchUncertainty.CUT_SCATTER),
                    "of cuts at one setting",
                    shop -> shop.bench)
            .row("deepestPass", "deepest pass", Kind.MM, "no pass is deeper", shop -> shop.deepestPass)
            .fact("lastPass", Kind.MM, "depth of a light last pass; 0 for none", shop -> shop.lastPass)
            .line("lastPass", "last pass", shop -> shop.lastPass > 0, "{lastPass}")
            .factIfAny("feed", Kind.AMOUNT, "of the blank past the cutter", Shop::feed)
            .factIfAny("turning", Kind.AMOUNT, "of the cutter", Shop::turning)
            .line("feed", "feed", "{feed} at {turning}")
            .fact("uncertainty", Kind.answer(BenchUncertainty.FORM), "of the bench", shop -> shop.bench)
            .fact("decision", Kind.answer(DecisionRule.FORM), "when a neck may be cut", shop -> shop.rule);

    private static final double USUAL_FENCE_MM = 600;
    private static final double DEEPEST_PASS_IN_DIAMETERS = 0.25;

    /** Far past any machine; slips of a unit stop here. */
    private static final double FASTEST_FEED_MM_PER_S = 100_000;

    private static final double FASTEST_TURNING_HZ = 10_000;

    private final Cutter cutter;
    private final Fence fence;
    private final FeelerSet leaves;
    private final BenchUncertainty bench;
    private final DecisionRule rule;
    private final double deepestPass;
    private final double lastPass;
    private final double feed;
    private final double turning;

    private Shop(
            Cutter cutter,
            Fence fence,
            FeelerSet leaves,
            BenchUncertainty bench,
            DecisionRule rule,
            double deepestPass,
            double lastPass,
            double feed,
            double turning) {
        this.cutter = cutter;
        this.fence = fence;
        this.leaves = leaves;
        this.bench = bench;
        this.rule = rule;
        this.deepestPass = deepestPass;
        this.lastPass = lastPass;
        this.feed = feed;
        this.turning = turning;
    }

    /**
     * Returns a shop with a cutter and everything else as usual.
     *
     * @param cutter the cutter for the channel
     * @return the shop
     */
    public static Shop with(Cutter cutter) {
        boolean inches = Objects.requireNonNull(cutter, "cutter").style() != LengthStyle.MILLIMETRES;
        FeelerSet usual = inches ? FeelerSet.inch26() : FeelerSet.metric20();
        return new Shop(
                cutter,
                Fence.onePiece(cutter.style().amount(USUAL_FENCE_MM)),
                usual,
                BenchUncertainty.withDefaults().in(cutter.style()),
                DecisionRule.withDefaults(),
                DEEPEST_PASS_IN_DIAMETERS * cutter.diameterMm(),
                0,
                Double.NaN,
                Double.NaN);
    }

    /**
     * Returns this shop with its fence.
     *
     * @param itsFence the fence
     * @return the shop
     */
    public Shop fence(Fence itsFence) {
        Objects.requireNonNull(itsFence, "fence");
        return new Shop(cutter, itsFence, leaves, bench, rule, deepestPass, lastPass, feed, turning);
    }

    /**
     * Returns this shop with its leaves.
     *
     * @param set the leaves
     * @return the shop
     */
    public Shop leaves(FeelerSet set) {
        Objects.requireNonNull(set, "leaves");
        return new Shop(cutter, fence, set, bench, rule, deepestPass, lastPass, feed, turning);
    }

    /**
     * Returns this shop with the repeatability of its instrument.
     *
     * @param standardDeviation of one reading, more than 0
     * @return the shop
     */
    public Shop readsWithin(Quantity<Length> standardDeviation) {
        return uncertainty(bench.reading(standardDeviation).in(cutter.style()));
    }

    /**
     * Returns this shop with the uncertainties of its bench.
     *
     * @param ofTheBench of readings, cuts and moves
     * @return the shop
     */
    public Shop uncertainty(BenchUncertainty ofTheBench) {
        Objects.requireNonNull(ofTheBench, "bench uncertainty");
        return new Shop(cutter, fence, leaves, ofTheBench, rule, deepestPass, lastPass, feed, turning);
    }

    /**
     * Returns this shop with its rule for when a neck may be cut.
     *
     * @param itsRule the wanted chance and the costs
     * @return the shop
     */
    public Shop decision(DecisionRule itsRule) {
        Objects.requireNonNull(itsRule, "decision rule");
        return new Shop(cutter, fence, leaves, bench, itsRule, deepestPass, lastPass, feed, turning);
    }

    /**
     * Returns this shop with its rule for the depth of a pass.
     *
     * @param deepest no pass is deeper, more than 0
     * @param last depth of a light last pass, 0 for none
     * @return the shop
     */
    public Shop passes(Quantity<Length> deepest, Quantity<Length> last) {
        double most = HouseUnits.mmPositive(deepest, "deepest pass");
        double light = HouseUnits.mmNotNegative(last, "last pass");
        if (!(light <= most)) {
            throw HouseUnits.refused(
                    "last pass",
                    "at-most",
                    "no deeper than " + Amount.from(deepest, "deepest pass").toString(),
                    last);
        }
        return new Shop(cutter, fence, leaves, bench, rule, most, light, feed, turning);
    }

    /**
     * Returns this shop with its feed and the cutter's speed of rotation.
     *
     * @param speed of the blank past the cutter, more than 0, no more than 100 m/s
     * @param turns of the cutter, more than 0, no more than 600,000 rpm
     * @return the shop
     */
    public Shop feed(Quantity<Speed> speed, Quantity<Frequency> turns) {
        double mmPerSecond = HouseUnits.positive(speed, ShopUnit.MM_PER_SECOND, "feed");
        double hertz = HouseUnits.positive(turns, ShopUnit.HERTZ, "speed of rotation");
        if (!(mmPerSecond <= FASTEST_FEED_MM_PER_S)) {
            throw HouseUnits.refused("feed", "at-most", "no more than " + ShopUnit.METRE_PER_SECOND.of(100), speed);
        }
        if (!(hertz <= FASTEST_TURNING_HZ)) {
            throw HouseUnits.refused("speed of rotation", "at-most", "no more than " + ShopUnit.RPM.of(600_000), turns);
        }
        return new Shop(cutter, fence, leaves, bench, rule, deepestPass, lastPass, mmPerSecond, hertz);
    }

    /**
     * Returns the cutter.
     *
     * @return the cutter
     */
    public Cutter cutter() {
        return cutter;
    }

    /**
     * Returns the fence.
     *
     * @return the fence
     */
    public Fence fence() {
        return fence;
    }

    /**
     * Returns the leaves.
     *
     * @return the leaves
     */
    public FeelerSet leaves() {
        return leaves;
    }

    /**
     * Returns the repeatability of the instrument.
     *
     * @return one standard deviation of one reading, more than 0
     */
    public Amount<Length> repeatability() {
        return cutter.style().amount(bench.readingMm());
    }

    /**
     * Returns the uncertainties of the bench.
     *
     * @return of readings, cuts and moves
     */
    public BenchUncertainty uncertainty() {
        return bench;
    }

    /**
     * Returns the rule for when a neck may be cut.
     *
     * @return the wanted chance and the costs
     */
    public DecisionRule decision() {
        return rule;
    }

    /**
     * Returns the deepest pass allowed.
     *
     * @return more than 0
     */
    public Amount<Length> deepestPass() {
        return cutter.style().amount(deepestPass);
    }

    /**
     * Returns the depth of a light last pass.
     *
     * @return 0 for none
     */
    public Amount<Length> lastPass() {
        return cutter.style().amount(lastPass);
    }

    /**
     * Returns the feed, if it was told.
     *
     * @return more than 0, or nothing
     */
    public Optional<Amount<Speed>> feed() {
        ShopUnit<Speed> shown = cutter.style().unitFor(ShopUnit.MM_PER_MINUTE);
        return Double.isNaN(feed) ? Optional.empty() : Optional.of(Amount.ofHouse(feed, shown));
    }

    /**
     * Returns the cutter's speed of rotation, if it was told.
     *
     * @return more than 0, or nothing
     */
    public Optional<Amount<Frequency>> turning() {
        return Double.isNaN(turning) ? Optional.empty() : Optional.of(Amount.ofHouse(turning, ShopUnit.RPM));
    }

    @Override
    public Form<Shop> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return cutter.style();
    }

    @Override
    public Shop in(LengthStyle other) {
        return new Shop(
                cutter.in(other),
                fence.in(other),
                leaves.in(other),
                bench.in(other),
                rule,
                deepestPass,
                lastPass,
                feed,
                turning);
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Shop other
                && cutter.equals(other.cutter)
                && fence.equals(other.fence)
                && leaves.equals(other.leaves)
                && bench.equals(other.bench)
                && rule.equals(other.rule)
                && Double.compare(deepestPass, other.deepestPass) == 0
                && Double.compare(lastPass, other.lastPass) == 0
                && Double.compare(feed, other.feed) == 0
                && Double.compare(turning, other.turning) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(cutter, fence, leaves, bench, rule, deepestPass, lastPass, feed, turning);
    }

    /** Returns a row for each thing the shop has. */
    @Override
    public String toString() {
        return text(style());
    }
}
