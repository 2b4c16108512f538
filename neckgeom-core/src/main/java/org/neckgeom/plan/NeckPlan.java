package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.board.FretTable;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.Caution;
import org.neckgeom.channel.CentringRound;
import org.neckgeom.channel.CentringRounds;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.PassPlan;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.channel.SlotPlace;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.channel.StopBlocks;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.BackSet;
import org.neckgeom.heel.HeelCorners;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.JointPlace;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderChanges;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.plan.PlanCheck.Outcome;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.Weather;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.text.Report;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/**
 * The whole neck at once: what to set, what to cut, what to check, from a design, a blank, a shop and the readings taken
 * so far. Immutable.
 *
 * <p>As readings come in, the plan is asked again: trial cuts and fence moves are added in the order they were made, and
 * the rest is judged on what is known then.
 *
 * <p>Defaults: the channel shall be centred within 0.1 mm (the wider end of what is called fine; common practice), at
 * least 3 mm of wood shall be left under it (common practice, from memory), and the string line shall meet the bridge's
 * middle within 1 mm (common practice). Relief is to be 0.2 mm (common practice: 0.05 to 0.3), and the weather
 * to be ready for is a heated winter: from 45 % to 25 % relative humidity at 21 degrees Celsius. A neck designed in inches has the same
 * limits in inches: 4 thou, 1/8 in, 40 thou, 8 thou.
 */
public final class NeckPlan {

    /** So many checks that do not stand well fit where a value is printed. */
    private static final int MOST_SHOWN = 3;

    private static final int MOST_ROUNDS = 50;

    /** Its keys: those of a neck file. */
    public static final Table<NeckPlan> TABLE = Table.of(
            "",
            "A neck, the shop that makes it, the readings so far, and the limits",
            values -> new NeckPlan(values).checked(),
            plan -> plan.given);

    private static final Key<NeckPlan, Neck> DESIGN = TABLE.inline(Neck.TABLE, Neck.OF_A_WHOLE_NECK);
    private static final Key<NeckPlan, LengthStyle> PRINT_IN = TABLE.optional(
            "print in",
            Types.words(LengthStyle.class, LengthStyle::word),
            "style of printed lengths: mm, inch (decimals and thou) or fractions (to 1/64 in). Default: as the scale");
    private static final Key<NeckPlan, Amount<Length>> RELIEF = TABLE.optional(
                    "relief", Types.SIZE_OR_NOTHING, "relief wanted under the strings. Default: 0.2 mm or 8 thou")
            .called("relief");
    private static final Key<NeckPlan, Weather> WEATHER = TABLE.usual(
            "weather",
            Types.group(Weather.TABLE),
            Weather.from(ShopUnits.percent(45), ShopUnits.celsius(21)).to(ShopUnits.percent(25), ShopUnits.celsius(21)),
            "change of air to plan for. Default: 45 % to 25 % relative humidity at 21 degC");
    private static final Key<NeckPlan, Blank> BLANK = TABLE.needed("blank", Types.group(Blank.TABLE), "neck blank");
    private static final Key<NeckPlan, Shop> SHOP =
            TABLE.needed("shop", Types.group(Shop.TABLE), "equipment of the shop for the channel");
    private static final Key<NeckPlan, List<CentringRound>> ROUNDS = TABLE.optional(
            "trial cuts",
            Types.list(Types.group(CentringRound.TABLE), 1, MOST_ROUNDS),
            "trial cuts and fence moves, in the order made. Default: none");
    private static final Key<NeckPlan, MeasuredNeck> AS_MADE = TABLE.usual(
            "measured",
            Types.group(MeasuredNeck.TABLE),
            MeasuredNeck.none(),
            "measurements of the neck itself. Default: none");
    private static final Key<NeckPlan, OrderChanges> ORDER = TABLE.usual(
            "order of work",
            Types.group(OrderChanges.TABLE),
            OrderChanges.none(),
            "changes of the order of work. Default: the usual order");
    private static final Key<NeckPlan, Workmanship> WORKMANSHIP = TABLE.usual(
            "workmanship",
            Types.group(Workmanship.TABLE),
            Workmanship.withDefaults(),
            "error distribution of each kind of step in this shop. Default: common practice");
    private static final Key<NeckPlan, NeckLimits> LIMITS = TABLE.usual(
            "limits",
            Types.group(NeckLimits.TABLE),
            NeckLimits.withDefaults(),
            "limits of the neck. Default: slot offset 0.1 mm or 4 thou, floor thickness 3 mm or 1/8 in, bridge offset 1 mm or 40 thou");

    private static final Amount<Length> USUAL_RELIEF = ShopUnits.mm(0.2);
    private static final Amount<Length> USUAL_RELIEF_IN = ShopUnits.thou(8);

    static {
        TABLE.moved(Moves.none().and("readings", "trial cuts").and("as made", "measured"));
    }

    /** As given, for data; and the same in one style, for answers. */
    private final Values<NeckPlan> given;

    private final Values<NeckPlan> shown;
    private final LengthStyle designed;
    private final LengthStyle style;
    private final Supplier<MeasuredNeck> readings = new Once<>(this::readByTheShop);
    private final Supplier<AsMade> asMade = new Once<>(() -> AsMade.of(this));
    private final Supplier<OrderOfWork> wholeOrder = new Once<>(this::orderForThisNeck);
    private final Supplier<DoneWork> doneWork = new Once<>(() -> DoneWork.of(wholeOrder(), readings()));
    private final Supplier<CentringRounds> rounds = new Once<>(this::roundsSoFar);
    private final Supplier<SlotPlace> slotPlace = new Once<>(() -> asMade().slotPlace());
    private final Supplier<Optional<BackSet>> neckSet = new Once<>(this::setToTheBody);
    private final Supplier<List<Budget<Length>>> budgets = new Once<>(() -> asMade().budgets());
    private final Supplier<FloorThickness> woodLeft = new Once<>(() -> BackParts.wood(this));
    private final Supplier<List<PlanPart>> parts = new Once<>(this::parts);

    private NeckPlan(Values<NeckPlan> values) {
        this.given = values.complete();
        this.designed = given.at(DESIGN).style();
        this.style = given.find(PRINT_IN).orElse(designed);
        this.shown = given.printedIn(style);
        JobRules.check(design(), blank(), shop(), readings());
        if (given.at(WORKMANSHIP).hasCentring()) {
            throw Refusal.because(
                    "workmanship.centring",
                    "not-here",
                    "workmanship.centring must be left out of a plan, which knows it from trial cuts and readings");
        }
        if (given.has(ROUNDS)) {
            placed("trial cuts", this::rounds);
        }
        if (given.has(ORDER)) {
            placed("order of work", this::order);
        }
        if (given.has(AS_MADE)) {
            // What no neck can look like is refused here, not when it is printed.
            placed("measured", asMade()::design);
        }
    }

    /** What is refused where it follows from the keys is a fault of the key it follows from. */
    private static void placed(String key, Runnable question) {
        try {
            question.run();
        } catch (Refusal refusal) {
            throw Refusal.because(key, refusal.faults().get(0).rule(), key + ": " + refusal.getMessage());
        }
    }

    private <V> NeckPlan with(Key<NeckPlan, V> key, V value) {
        return new NeckPlan(given.with(key, value));
    }

    /**
     * {@return the plan of a neck of which nothing has been cut yet}
     *
     * @param design the neck; it must have its scale, fingerboard, back and channel
     * @param blank the piece it is made from
     * @param shop what it is made with
     * @throws IllegalArgumentException if the channel does not fit the blank, the cutter the channel, or the head is too
     *     short for its scarf
     */
    public static NeckPlan of(Neck design, Blank blank, Shop shop) {
        return new NeckPlan(
                TABLE.values().with(DESIGN, design).with(BLANK, blank).with(SHOP, shop));
    }

    /**
     * {@return this plan with a trial cut read, after the cuts and moves so far}
     *
     * @param cut the trial cut
     */
    public NeckPlan trialCut(TrialCut cut) {
        return then(CentringStep.read(cut));
    }

    /**
     * {@return this plan with the last trial cut read once more}
     *
     * @param cut the new readings of the same slot
     * @throws IllegalArgumentException if no trial cut came just before
     */
    public NeckPlan readAgain(TrialCut cut) {
        return then(CentringStep.readAgain(cut));
    }

    /**
     * {@return this plan with the fence moved, after the cuts and moves so far}
     *
     * @param move as it was made, at the cutter, such as {@code FenceMove.away(mm(0.7))}
     * @throws IllegalArgumentException if no trial cut came before
     */
    public NeckPlan fenceMoved(FenceMove move) {
        return then(CentringStep.moved(move));
    }

    /**
     * {@return this plan with one more step at the machine, after the steps so far}
     *
     * @param step a trial cut, the last one read again, or a fence move
     * @throws IllegalArgumentException if the step cannot follow the steps so far
     */
    public NeckPlan then(CentringStep step) {
        rounds().then(step);
        List<CentringStep> steps = new ArrayList<>(steps(given));
        steps.add(step);
        return with(ROUNDS, CentringRound.of(steps));
    }

    /**
     * {@return this plan with the limits to keep}
     *
     * @param keep slot offset, floor thickness, bridge offset
     */
    public NeckPlan limits(NeckLimits keep) {
        return with(LIMITS, keep);
    }

    /** {@return the limits as given, with defaults where they were not} */
    public NeckLimits limits() {
        return given.at(LIMITS);
    }

    /**
     * {@return this plan with another relief wanted}
     *
     * @param wanted under the strings, 0 or more
     */
    public NeckPlan relief(Quantity<Length> wanted) {
        return new NeckPlan(given.amount(RELIEF, wanted));
    }

    /**
     * {@return this plan with another change of weather to be ready for}
     *
     * @param change from the shop's air to the worst the neck shall meet
     */
    public NeckPlan weather(Weather change) {
        return with(WEATHER, change);
    }

    /**
     * {@return this plan with another order of work}
     *
     * @param work the operations and what must be kept
     */
    public NeckPlan order(OrderOfWork work) {
        return with(ORDER, OrderChanges.to(work));
    }

    /**
     * {@return this plan with how well each kind of step is done in this shop, instead of common practice}
     *
     * @param work the workmanship, without centring, which trial cuts and readings give
     */
    public NeckPlan workmanship(Workmanship work) {
        return with(WORKMANSHIP, work);
    }

    /**
     * {@return this plan with what has been read on the neck itself: what was read is done, and the rest is judged on
     * it}
     *
     * @param asMade the readings, all of them so far
     * @throws IllegalArgumentException if they are of a part that the design lacks, or of a station off the neck
     */
    public NeckPlan readings(MeasuredNeck asMade) {
        return with(AS_MADE, asMade);
    }

    /** {@return the design} */
    public Neck design() {
        return shown.at(DESIGN);
    }

    /** {@return the design as it was given, each length in its own unit; a design equal to {@link #design}} */
    public Neck designAsGiven() {
        return given.at(DESIGN);
    }

    /** {@return the blank} */
    public Blank blank() {
        return shown.at(BLANK);
    }

    /** {@return the shop} */
    public Shop shop() {
        return shown.at(SHOP);
    }

    /** {@return the scarf joint, if the head is scarfed on; the joint, or nothing} */
    public Optional<ScarfJoint> scarf() {
        return design().head().filter(head -> head.scarf().isPresent()).map(head -> ScarfJoint.of(head, blank()));
    }

    /** {@return whether head and shaft are one piece; true unless the head is scarfed on} */
    public boolean isHeadInOnePiece() {
        return design().head().flatMap(Head::scarf).isEmpty();
    }

    /** A head turned back in one piece with the shaft: the blank must be thick enough to hold it. */
    boolean isHeadSawnFromTheBlank() {
        return isHeadInOnePiece()
                && design().head().filter(head -> head.angleRad() > 0).isPresent();
    }

    /**
     * {@return how the neck stands to the body, if the design has a neck set; the neck's angle with all that it comes
     * from, or nothing}
     *
     * @throws IllegalArgumentException if the fret plane is neither given nor known, or lies too low for board and fret
     * @throws ArithmeticException if no angle brings the strings to the saddle
     */
    public Optional<BackSet> neckSet() {
        return neckSet.get();
    }

    private Optional<BackSet> setToTheBody() {
        return design().neckSet().map(set -> BackSet.of(design()));
    }

    /** How high the glue face stands over the body's top at the joint, in mm; level where there is no neck set. */
    double overstandMm() {
        return design().neckSet()
                .map(set -> BackSet.overstand(design()).libraryValue())
                .orElse(0.0);
    }

    /** The floor of the nut's slots over the glue face: as high as board and frets, and what the strings clear them by. */
    Amount<Length> slotHeight() {
        double frets =
                design().fingerboard().fretHeight().map(Amount::libraryValue).orElse(0.0);
        double atNut = design().neckSet().map(set -> set.atNut().libraryValue()).orElse(0.0);
        return style().amount(design().fingerboard().nutThicknessMm() + frets + atNut);
    }

    /** {@return the limit on the channel's offset; more than 0} */
    public Amount<Length> centredWithin() {
        return limits().slotOffset(designed).in(style());
    }

    /** {@return the least wood wanted under the channel; more than 0} */
    public Amount<Length> woodLeftAtLeast() {
        return limits().floorThickness(designed).in(style());
    }

    /** {@return the limit on the string line at the bridge; more than 0} */
    public Amount<Length> bridgeWithin() {
        return limits().bridgeOffset(designed).in(style());
    }

    /** {@return the relief wanted under the strings; 0 or more} */
    public Amount<Length> relief() {
        return given.find(RELIEF)
                .orElse(designed == LengthStyle.MILLIMETRES ? USUAL_RELIEF : USUAL_RELIEF_IN)
                .in(style);
    }

    /** {@return the change of weather to be ready for; from the shop's air to the worst the neck shall meet} */
    public Weather weather() {
        return given.at(WEATHER);
    }

    /**
     * {@return the operations and the orders to keep; {@code order().plan()} puts them in order; what is left to do, of
     * the usual neck's work by default}
     *
     * <p>What this neck lacks is no step of it: scarf and gluing of a head in one piece with the shaft, which is sawn out
     * instead, ears of a head no wider than the blank, blocks of a heel that the blank is deep enough for. Where a joint in
     * the shaft would saw the channel off, gluing the head is kept before cutting the channel. What has
     * been read on the neck is done, and what stands before it in the order is taken as done.
     */
    public OrderOfWork order() {
        return doneWork().left();
    }

    DoneWork doneWork() {
        return doneWork.get();
    }

    /** A sentence of this plan, whose facts are still to come. */
    Statement words(String code, String words) {
        return Statement.of(code, words, style);
    }

    /** What a check allows. */
    Statement limit(Limits<Length> limits) {
        return words("limit", "{limit}").with("limit", Kind.LIMITS, limits);
    }

    /** The neck with what has been read on it. */
    AsMade asMade() {
        return asMade.get();
    }

    /** As given, without what this neck lacks, with the head kept before the channel where the joint asks for it. */
    OrderOfWork wholeOrder() {
        return wholeOrder.get();
    }

    private OrderOfWork orderForThisNeck() {
        OrderOfWork usual = whole(OrderOfWork.forNeck(design()));
        return given.has(ORDER) ? whole(given.at(ORDER).changed(usual)) : usual;
    }

    private OrderOfWork whole(OrderOfWork some) {
        OrderOfWork order = NeckWork.of(this, some);
        List<String> names = order.operations().stream().map(Operation::name).toList();
        return headComesFirst() && names.containsAll(List.of(Operation.GLUE_HEAD, Operation.CUT_ROD_CHANNEL))
                ? order.keep(Operation.GLUE_HEAD).before(Operation.CUT_ROD_CHANNEL)
                : order;
    }

    /** True for an operation that was given or read as done, and for what stands before one that was read. */
    boolean isDone(String operation) {
        return order().finished().stream().anyMatch(done -> done.name().equals(operation));
    }

    /**
     * {@return whether the head must be glued on before the channel is cut: with a joint in the shaft the wood behind
     * the nut is the head piece's own, and a channel that starts there can only be cut in the glued neck; true for such
     * a joint and channel}
     */
    boolean headComesFirst() {
        return scarf().filter(joint -> joint.place() == JointPlace.IN_THE_SHAFT)
                .filter(joint -> design().channel().orElseThrow().startMm() < joint.frontLineMm())
                .isPresent();
    }

    /**
     * {@return how well each kind of step is done: as given, else common practice, and the channel's centring as it is
     * known now}
     */
    public Workmanship workmanship() {
        return given.at(WORKMANSHIP)
                .centring(ErrorDistribution.of(slotPlace().start().estimate()));
    }

    /** {@return what has been read on the neck so far; nothing by default} */
    public MeasuredNeck readings() {
        return readings.get();
    }

    private MeasuredNeck readByTheShop() {
        return shown.at(AS_MADE).readBy(shop().repeatability());
    }

    /**
     * {@return what comes off at the corners of the heel's mating face, where height or centreline have been read at
     * the bridge; the four cuts, or nothing without such a reading, without heel or neck set}
     */
    public Optional<HeelCorners> heelCorners() {
        return asMade().heelCorners();
    }

    /**
     * {@return the wood left under the channel as the neck stands now: its back with volute and heel, carved as far as
     * read, the channel as cut, as far off the middle as it is known to lie; of an uneven back the thinner way; ahead
     * of the nut at least}
     */
    public FloorThickness woodLeft() {
        return woodLeft.get();
    }

    /**
     * {@return the budgets of this neck made from its channel: string line at the bridge, board on the neck, wood on
     * each side of the channel, projection height at the bridge; four, in this order} A step that was read is no longer
     * a guess in them, and what was read at the bridge leaves only its own uncertainty.
     */
    public List<Budget<Length>> budgets() {
        return budgets.get();
    }

    /** {@return the trial cuts and fence moves in the order in which they were made; none before the first cut} */
    public List<CentringStep> steps() {
        return steps(shown);
    }

    private static List<CentringStep> steps(Values<NeckPlan> values) {
        return values.find(ROUNDS).orElse(List.of()).stream()
                .flatMap(round -> round.steps().stream())
                .toList();
    }

    /**
     * {@return the trial cuts and fence moves with all that they are judged by: blank, fence, bench, gauges, rule; none
     * before the first cut}
     */
    public CentringRounds rounds() {
        return rounds.get();
    }

    private CentringRounds roundsSoFar() {
        CentringRounds rounds = CentringRounds.on(SetUpParts.atTheFence(this))
                .bench(shop().uncertainty())
                .decision(shop().decision())
                .leaves(shop().feelerGauges());
        for (CentringStep step : steps()) {
            rounds = rounds.then(step);
        }
        return rounds;
    }

    /**
     * {@return the one decision on the channel: may the neck be cut, and else what comes next; the decision for this
     * plan's limit on the offset}
     */
    public SlotVerdict slot() {
        return rounds().next(centredWithin());
    }

    /** {@return the fence move that comes next; the move at the cutter; nothing unless {@link #slot} asks for one} */
    public Optional<FenceMove> move() {
        SlotVerdict verdict = slot();
        return verdict.step() == SlotStep.MOVE ? Optional.of(verdict.move()) : Optional.empty();
    }

    /** {@return the passes in which the channel is cut; by the shop's rule} */
    public PassPlan passes() {
        return SetUpParts.passes(this);
    }

    /** {@return where the stops are clamped for the channel, at the ends that are there when it is cut} */
    public StopBlocks stops() {
        return SetUpParts.stops(this);
    }

    /** {@return the frets; every fret from the nut} */
    public FretTable frets() {
        return FretTable.of(design());
    }

    /**
     * {@return what strings and rod do to the neck; the relief under the strings and what the rod can do about it;
     * nothing where wood or strings are not known, or the channel is through the back}
     */
    public Optional<Relief> bending() {
        return StrengthParts.bending(this);
    }

    /**
     * {@return where the channel runs in the neck: as read on the neck itself, else as trial cuts and moves put it,
     * else as a fence set by one cut would; against the blank's own middle}
     */
    public SlotPlace slotPlace() {
        return slotPlace.get();
    }

    /** {@return the style the plan is printed in: that of the design} */
    public LengthStyle style() {
        return style;
    }

    /**
     * {@return this plan once all of its checks, settings and steps have answered} Whoever takes a plan from outside
     * asks this at the door, so that nothing is refused later.
     *
     * @throws org.neckgeom.fault.Refusal if its parts don't go together, with the part to change as its path: {@code back.first depth},
     *     {@code back.second depth}, {@code fingerboard}, {@code neck set}, {@code wood} or the whole {@code plan}
     */
    public NeckPlan checked() {
        Answerable.checkBack(design());
        try {
            order();
            checks();
            return this;
        } catch (IllegalArgumentException | ArithmeticException refused) {
            throw Answerable.placed(refused);
        }
    }

    /** {@return everything that is held against a limit, in the order of work; one or more} */
    public List<PlanCheck> checks() {
        return parts.get().stream().flatMap(part -> part.checks().stream()).toList();
    }

    /**
     * {@return a check by its code; the first check of this code; nothing where this neck has none}
     *
     * @param code such as {@code channel-centred}
     */
    public Optional<PlanCheck> check(String code) {
        Objects.requireNonNull(code, "code");
        return checks().stream().filter(check -> check.code().equals(code)).findFirst();
    }

    /** {@return the parts of the plan, in the order of work; one or more} */
    public List<PlanSection> sections() {
        return parts.get().stream().map(PlanPart::section).toList();
    }

    /**
     * {@return the cautions that apply to this neck in this shop; one or more} The machine's instructions and local
     * rules come first.
     */
    public List<Caution> cautions() {
        return RodSlot.of(design().channel().orElseThrow())
                .cautions(shop().cutter(), blank())
                .list();
    }

    private List<PlanPart> parts() {
        List<PlanPart> all = new ArrayList<>();
        ReadParts.of(this).ifPresent(all::add);
        all.addAll(SetUpParts.of(this));
        all.addAll(ShapeParts.of(this));
        all.addAll(StrengthParts.of(this));
        all.add(BudgetParts.of(this));
        all.add(OrderPart.of(this));
        return List.copyOf(all);
    }

    /**
     * {@return in one line how the plan stands, such as {@code Plan of Octave mandolin, walnut: 6 of 7 checks good, 1
     * open}}
     */
    public String standing() {
        List<PlanCheck> checks = checks();
        long good = checks.stream().filter(c -> c.outcome() == Outcome.GOOD).count();
        long open = checks.stream().filter(c -> c.outcome() == Outcome.OPEN).count();
        long stop = checks.size() - good - open;
        return "Plan of " + design().name() + ": " + good + " of " + checks.size() + " checks good"
                + (open > 0 ? ", " + open + " open" : "") + (stop > 0 ? ", " + stop + " to stop for" : "");
    }

    /** Returns the name, how many checks stand how, and the checks that do not stand well, the worst first. */
    @Override
    public String toString() {
        try {
            return standingAndWants();
        } catch (IllegalArgumentException | ArithmeticException e) {
            // What was given part by part does not go together: the text states it, the questions refuse.
            return "Plan of " + design().name() + " cannot be made: " + e.getMessage();
        }
    }

    private String standingAndWants() {
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

    /**
     * {@return this plan with how its lengths are printed; equal to this}
     *
     * @param other millimetres, decimal inches, or fractions of an inch
     */
    public NeckPlan printIn(LengthStyle other) {
        return with(PRINT_IN, other);
    }

    /** True for a plan of which the same was given; how lengths are printed is no part of it. */
    @Override
    public boolean equals(Object obj) {
        return obj instanceof NeckPlan other && given.without(PRINT_IN).equals(other.given.without(PRINT_IN));
    }

    @Override
    public int hashCode() {
        return given.without(PRINT_IN).hashCode();
    }
}
