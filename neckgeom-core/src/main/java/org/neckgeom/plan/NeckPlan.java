package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.NeckTree;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.geometry.JointPlace;
import org.neckgeom.geometry.NeckSet;
import org.neckgeom.geometry.ScarfJoint;
import org.neckgeom.measure.Spread;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.setup.Caution;
import org.neckgeom.setup.RodSlot;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.Weather;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * The whole neck at once: what to set, what to cut, what to check, from a design, a blank, a shop and the readings taken
 * so far. Immutable.
 *
 * <p>As readings come in, the plan is asked again: trial cuts and fence moves are added in the order they were made, and
 * the rest is judged on what is known then.
 *
 * <p>Unless told: the channel shall be centred within 0.1 mm (the wider end of what is called fine; common practice), at
 * least 3 mm of wood shall be left under it (common practice, from memory), and the string line shall meet the bridge's
 * middle within 1 mm (common practice). Relief is to be 0.2 mm (common practice: 0.05 to 0.3), and the weather
 * to be ready for is a heated winter: from 45 % to 25 % relative humidity at 21 degrees Celsius. A neck designed in inches has the same
 * limits in inches: 4 thou, 1/8 in, 40 thou, 8 thou.
 */
public final class NeckPlan implements SaysLengths<NeckPlan> {

    private static final String HEAD = "glue head";
    private static final String CHANNEL = "cut rod channel";

    /** So many checks that do not stand well fit where a value is printed. */
    private static final int MOST_SHOWN = 3;

    private static final double USUAL_CENTRED_MM = 0.1;
    private static final double USUAL_WOOD_LEFT_MM = 3;
    private static final double USUAL_BRIDGE_MM = 1;
    private static final double USUAL_RELIEF_MM = 0.2;
    private static final double USUAL_CENTRED_THOU = 4;
    private static final double USUAL_WOOD_LEFT_IN = 0.125;
    private static final double USUAL_BRIDGE_THOU = 40;
    private static final double USUAL_RELIEF_THOU = 8;
    private static final Weather HEATED_WINTER =
            Weather.from(ShopUnits.percent(45), ShopUnits.celsius(21)).to(ShopUnits.percent(25), ShopUnits.celsius(21));

    private final NeckDesign design;
    private final Blank blank;
    private final Shop shop;
    private final List<CentringStep> steps;
    private final double centredWithin;
    private final double woodLeft;
    private final double bridgeWithin;
    private final @Nullable ScarfJoint scarf;
    private final @Nullable NeckSet neckSet;
    private final double relief;
    private final Weather weather;
    private final OrderOfWork order;
    private final NeckDetails details;

    private NeckPlan(Parts parts) {
        LengthStyle style = parts.design.style();
        // Whatever the parts were told in, a plan says all of them in one style.
        this.design = parts.design.in(style);
        this.blank = parts.blank.in(style);
        this.shop = parts.shop.in(style);
        this.steps = List.copyOf(parts.steps);
        this.centredWithin = parts.centredWithin;
        this.woodLeft = parts.woodLeft;
        this.bridgeWithin = parts.bridgeWithin;
        this.scarf = parts.scarf == null ? null : parts.scarf.in(style);
        this.neckSet = parts.neckSet == null ? null : parts.neckSet.in(style);
        this.relief = parts.relief;
        this.weather = parts.weather;
        this.order = parts.order.in(style);
        this.details = parts.details.in(style);
    }

    /** The parts on their way from one plan to the next; never leaves this class. */
    private static final class Parts {
        private final NeckDesign design;
        private final Blank blank;
        private final Shop shop;
        private List<CentringStep> steps = new ArrayList<>();
        private double centredWithin = USUAL_CENTRED_MM;
        private double woodLeft = USUAL_WOOD_LEFT_MM;
        private double bridgeWithin = USUAL_BRIDGE_MM;
        private @Nullable ScarfJoint scarf;
        private @Nullable NeckSet neckSet;
        private double relief = USUAL_RELIEF_MM;
        private Weather weather = HEATED_WINTER;
        private OrderOfWork order;
        private NeckDetails details = NeckDetails.none();

        private Parts(NeckDesign design, Blank blank, Shop shop, OrderOfWork order) {
            this.design = design;
            this.blank = blank;
            this.shop = shop;
            this.order = order;
        }
    }

    private NeckPlan with(Consumer<Parts> change) {
        return with(design, change);
    }

    private NeckPlan with(NeckDesign said, Consumer<Parts> change) {
        Parts parts = new Parts(said, blank, shop, order);
        parts.steps = new ArrayList<>(steps);
        parts.centredWithin = centredWithin;
        parts.woodLeft = woodLeft;
        parts.bridgeWithin = bridgeWithin;
        parts.scarf = scarf;
        parts.neckSet = neckSet;
        parts.relief = relief;
        parts.weather = weather;
        parts.details = details;
        change.accept(parts);
        return new NeckPlan(parts);
    }

    /**
     * Returns the plan of a neck of which nothing has been cut yet.
     *
     * @param design the neck; it must have its scale, fingerboard, back and channel told
     * @param blank the piece it is made from
     * @param shop what it is made with
     * @return the plan
     * @throws IllegalArgumentException if the channel does not fit the blank, or the cutter the channel
     */
    public static NeckPlan of(NeckDesign design, Blank blank, Shop shop) {
        Objects.requireNonNull(design, "design");
        Parts parts = new Parts(
                design,
                Objects.requireNonNull(blank, "blank"),
                Objects.requireNonNull(shop, "shop"),
                OrderOfWork.forNeck(design));
        if (design.style() != LengthStyle.MILLIMETRES) {
            parts.centredWithin = ShopUnit.THOU.toHouse(USUAL_CENTRED_THOU);
            parts.woodLeft = ShopUnit.INCH.toHouse(USUAL_WOOD_LEFT_IN);
            parts.bridgeWithin = ShopUnit.THOU.toHouse(USUAL_BRIDGE_THOU);
            parts.relief = ShopUnit.THOU.toHouse(USUAL_RELIEF_THOU);
        }
        Fit.check(design, blank, shop);
        return new NeckPlan(parts);
    }

    /**
     * Returns this plan with a trial cut read, after the cuts and moves so far.
     *
     * @param cut the trial cut
     * @return the plan
     */
    public NeckPlan trialCut(TrialCut cut) {
        Objects.requireNonNull(cut, "trial cut");
        return with(parts -> parts.steps.add(new CentringStep(cut, 0)));
    }

    /**
     * Returns this plan with the fence moved, after the cuts and moves so far.
     *
     * @param towardTheCutter how far; negative when it went away from the cutter
     * @return the plan
     * @throws IllegalArgumentException if no trial cut came before
     */
    public NeckPlan fenceMoved(Quantity<Length> towardTheCutter) {
        double mm = HouseUnits.mm(towardTheCutter, "fence move");
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a fence move must follow a trial cut, but "
                    + Amount.from(towardTheCutter, "fence move") + " came first");
        }
        return with(parts -> parts.steps.add(new CentringStep(null, mm)));
    }

    /**
     * Returns this plan with another limit on the channel's offset.
     *
     * @param limit either side of the middle, more than 0
     * @return the plan
     */
    public NeckPlan centredWithin(Quantity<Length> limit) {
        double mm = HouseUnits.mmPositive(limit, "limit on the offset");
        return with(parts -> parts.centredWithin = mm);
    }

    /**
     * Returns this plan with another least wood under the channel.
     *
     * @param least more than 0
     * @return the plan
     */
    public NeckPlan woodLeftAtLeast(Quantity<Length> least) {
        double mm = HouseUnits.mmPositive(least, "least wood under the channel");
        return with(parts -> parts.woodLeft = mm);
    }

    /**
     * Returns this plan with another limit on the string line at the bridge.
     *
     * @param limit either side of the bridge's middle, more than 0
     * @return the plan
     */
    public NeckPlan bridgeWithin(Quantity<Length> limit) {
        double mm = HouseUnits.mmPositive(limit, "limit at the bridge");
        return with(parts -> parts.bridgeWithin = mm);
    }

    /**
     * Returns this plan with a head scarfed on.
     *
     * @param joint the joint, in the head or in the shaft
     * @return the plan
     */
    public NeckPlan scarf(ScarfJoint joint) {
        Objects.requireNonNull(joint, "scarf");
        return with(parts -> parts.scarf = joint);
    }

    /**
     * Returns this plan with the neck's angle to the body asked for.
     *
     * @param set bridge, board, action
     * @return the plan
     */
    public NeckPlan neckSet(NeckSet set) {
        Objects.requireNonNull(set, "neck set");
        return with(parts -> parts.neckSet = set);
    }

    /**
     * Returns this plan with another relief wanted.
     *
     * @param wanted under the strings, 0 or more
     * @return the plan
     */
    public NeckPlan relief(Quantity<Length> wanted) {
        double mm = HouseUnits.mmNotNegative(wanted, "relief");
        return with(parts -> parts.relief = mm);
    }

    /**
     * Returns this plan with another change of weather to be ready for.
     *
     * @param change from the shop's air to the worst the neck shall meet
     * @return the plan
     */
    public NeckPlan weather(Weather change) {
        Objects.requireNonNull(change, "weather");
        return with(parts -> parts.weather = change);
    }

    /**
     * Returns this plan with another order of work.
     *
     * @param work the operations and what must be kept
     * @return the plan
     */
    public NeckPlan order(OrderOfWork work) {
        Objects.requireNonNull(work, "order of work");
        return with(parts -> parts.order = work);
    }

    /**
     * Returns this plan with more of the neck's shape told: strings across, posts, tuners, fall-away, volute, spares.
     *
     * @param told what has been settled
     * @return the plan
     * @throws IllegalArgumentException if frets are fanned about another scale than the design's
     */
    public NeckPlan details(NeckDetails told) {
        Objects.requireNonNull(told, "details");
        told.fannedFrets().ifPresent(fan -> Fit.checkScale(design, fan));
        return with(parts -> parts.details = told);
    }

    /**
     * Returns the design.
     *
     * @return the design
     */
    public NeckDesign design() {
        return design;
    }

    /**
     * Returns the blank.
     *
     * @return the blank
     */
    public Blank blank() {
        return blank;
    }

    /**
     * Returns the shop.
     *
     * @return the shop
     */
    public Shop shop() {
        return shop;
    }

    /**
     * Returns the scarf joint, if the head is scarfed on.
     *
     * @return the joint, or nothing
     */
    public Optional<ScarfJoint> scarf() {
        return Optional.ofNullable(scarf);
    }

    /**
     * Returns the neck set, if it was told.
     *
     * @return the neck set, or nothing
     */
    public Optional<NeckSet> neckSet() {
        return Optional.ofNullable(neckSet);
    }

    /**
     * Returns the limit on the channel's offset.
     *
     * @return more than 0
     */
    public Amount<Length> centredWithin() {
        return style().amount(centredWithin);
    }

    /**
     * Returns the least wood wanted under the channel.
     *
     * @return more than 0
     */
    public Amount<Length> woodLeftAtLeast() {
        return style().amount(woodLeft);
    }

    /**
     * Returns the limit on the string line at the bridge.
     *
     * @return more than 0
     */
    public Amount<Length> bridgeWithin() {
        return style().amount(bridgeWithin);
    }

    /**
     * Returns the relief wanted under the strings.
     *
     * @return 0 or more
     */
    public Amount<Length> relief() {
        return style().amount(relief);
    }

    /**
     * Returns the change of weather to be ready for.
     *
     * @return from the shop's air to the worst the neck shall meet
     */
    public Weather weather() {
        return weather;
    }

    /**
     * Returns the operations and the orders to keep; {@code order().plan()} puts them in order.
     *
     * <p>Where a joint in the shaft would saw the channel off, gluing the head is kept before cutting the channel.
     *
     * @return the usual neck's, without what this one lacks, unless told
     */
    public OrderOfWork order() {
        List<String> names = order.operations().stream().map(Operation::name).toList();
        return headComesFirst() && names.containsAll(List.of(HEAD, CHANNEL))
                ? order.keep(HEAD).before(CHANNEL)
                : order;
    }

    /**
     * Says whether the head must be glued on before the channel is cut: with a joint in the shaft the wood behind the nut is
     * the head piece's own, and a channel that starts there can only be cut in the glued neck.
     *
     * @return true for such a joint and channel
     */
    boolean headComesFirst() {
        return scarf != null
                && scarf.place() == JointPlace.IN_THE_SHAFT
                && design.channel().orElseThrow().startMm() < scarf.frontLineMm();
    }

    /**
     * Returns what else has been told of the neck's shape.
     *
     * @return nothing more than the design, unless told
     */
    public NeckDetails details() {
        return details;
    }

    /**
     * Returns how well each kind of step is done: common practice, and the channel's centring as it is known now.
     *
     * @return the workmanship
     */
    public Workmanship workmanship() {
        return Workmanship.withDefaults().withCentring(Spread.of(SetUpParts.offsetNow(this)));
    }

    /**
     * Returns the budgets of this neck made from its channel: string line at the bridge, board on the neck, wood on each
     * side of the channel, projection height at the bridge.
     *
     * @return four, in this order
     */
    public List<Budget<Length>> budgets() {
        return NeckTree.fromTheChannel(design).with(workmanship()).budgets();
    }

    /** Trial cuts and fence moves in the order they were made. */
    List<CentringStep> steps() {
        return steps;
    }

    /**
     * Returns the style the plan is printed in: that of the design.
     *
     * @return the style
     */
    public LengthStyle style() {
        return design.style();
    }

    /**
     * Returns everything that is held against a limit, in the order of work.
     *
     * @return one or more
     */
    public List<PlanCheck> checks() {
        return parts().stream().flatMap(part -> part.checks().stream()).toList();
    }

    /**
     * Returns the parts of the plan, in the order of work.
     *
     * @return one or more
     */
    public List<PlanSection> sections() {
        return parts().stream().map(PlanPart::section).toList();
    }

    /**
     * Returns the cautions that apply to this neck in this shop. The machine's instructions and local rules come first.
     *
     * @return one or more
     */
    public List<Caution> cautions() {
        return RodSlot.of(design.channel().orElseThrow())
                .cautions(shop.cutter(), blank)
                .list();
    }

    private List<PlanPart> parts() {
        List<PlanPart> parts = new ArrayList<>(SetUpParts.of(this));
        parts.addAll(ShapeParts.of(this));
        parts.addAll(StrengthParts.of(this));
        parts.add(BudgetParts.of(this));
        parts.add(OrderPart.of(this));
        return parts;
    }

    /**
     * Returns in one line how the plan stands.
     *
     * @return such as {@code Plan of Octave mandolin, walnut: 6 of 7 checks good, 1 open}
     */
    public String standing() {
        List<PlanCheck> checks = checks();
        long good = checks.stream().filter(c -> c.outcome() == Outcome.GOOD).count();
        long open = checks.stream().filter(c -> c.outcome() == Outcome.OPEN).count();
        long stop = checks.size() - good - open;
        return "Plan of " + design.name() + ": " + good + " of " + checks.size() + " checks good"
                + (open > 0 ? ", " + open + " open" : "") + (stop > 0 ? ", " + stop + " to stop for" : "");
    }

    /** Returns the name, how many checks stand how, and the checks that do not stand well, the worst first. */
    @Override
    public String toString() {
        Report report = Report.titled(standing());
        List<PlanCheck> wanting = checks().stream()
                .filter(check -> check.outcome() != Outcome.GOOD)
                .sorted(Comparator.comparing(PlanCheck::outcome).reversed())
                .toList();
        for (PlanCheck check : wanting.subList(0, Math.min(MOST_SHOWN, wanting.size()))) {
            report.row(check.outcome().toString(), check.name() + ": " + check.found() + ". " + check.todo());
        }
        if (wanting.size() > MOST_SHOWN) {
            report.note("and " + (wanting.size() - MOST_SHOWN) + " more in checks()");
        }
        return report.note("sections() and checks() have the rest").toString();
    }

    @Override
    public NeckPlan in(LengthStyle other) {
        return with(design.in(other), parts -> {});
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof NeckPlan other
                && design.equals(other.design)
                && blank.equals(other.blank)
                && shop.equals(other.shop)
                && steps.equals(other.steps)
                && Double.compare(centredWithin, other.centredWithin) == 0
                && Double.compare(woodLeft, other.woodLeft) == 0
                && Double.compare(bridgeWithin, other.bridgeWithin) == 0
                && Objects.equals(scarf, other.scarf)
                && Objects.equals(neckSet, other.neckSet)
                && Double.compare(relief, other.relief) == 0
                && weather.equals(other.weather)
                && order.equals(other.order)
                && details.equals(other.details);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                design,
                blank,
                shop,
                steps,
                centredWithin,
                woodLeft,
                bridgeWithin,
                scarf,
                neckSet,
                relief,
                weather,
                order,
                details);
    }
}
