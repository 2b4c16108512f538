package org.neckgeom.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.CentringRound;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.fault.Refusal;
import org.neckgeom.kernel.Once;
import org.neckgeom.neck.Neck;
import org.neckgeom.order.OrderChanges;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.state.ShopLog;
import org.neckgeom.stock.Blank;
import org.neckgeom.strength.Weather;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.ShopUnits;

/**
 * A job, as a {@index "neck file"} describes it: a neck, the blank it is made from, the shop that makes it, what has been read
 * so far, and the limits to keep. Ask {@link #plan} for its plan. Immutable.
 *
 * <p>Each reading makes a new job: {@code job.trialCut(cut)}, {@code job.fenceMoved(move)}, {@code job.measured(readings)}.
 * Trial cuts and fence moves are kept in the order in which they were made.
 *
 * <p>Defaults (common practice): slot offset within 0.1 mm, 3 mm of wood under the channel, string line within 1 mm at the
 * bridge, 0.2 mm of relief (usual: 0.05 to 0.3), air from 45 % to 25 % relative humidity at 21 degC, which is a heated
 * winter. A neck designed in inches has its limits in inches: 4 thou, 1/8 in, 40 thou, 8 thou.
 *
 * <p>What cannot be is refused here, with every fault at once and the path of each. So a plan of a job never throws: what has
 * no answer is a check with {@link Finding.NoSolution}.
 *
 * @see Plan
 */
public final class Job {

    private static final int MOST_ROUNDS = 50;

    /** Its keys: those of a neck file. */
    public static final Table<Job> TABLE = Table.of(
            "", "A neck, the shop that makes it, the readings so far, and the limits", Job::new, job -> job.given);

    private static final Key<Job, Neck> DESIGN = TABLE.inline(Neck.TABLE, Neck.OF_A_WHOLE_NECK);
    private static final Key<Job, LengthStyle> PRINT_IN = TABLE.optional(
            "print in",
            Types.words(LengthStyle.class, LengthStyle::word),
            "style of printed lengths: mm, inch (decimals and thou) or fractions (to 1/64 in). Default: as the scale");
    private static final Key<Job, Amount<Length>> RELIEF = TABLE.optional(
                    "relief", Types.SIZE_OR_NOTHING, "relief wanted under the strings. Default: 0.2 mm or 8 thou")
            .called("relief");
    private static final Key<Job, Weather> WEATHER = TABLE.usual(
            "weather",
            Types.group(Weather.TABLE),
            Weather.from(ShopUnits.percent(45), ShopUnits.celsius(21)).to(ShopUnits.percent(25), ShopUnits.celsius(21)),
            "change of air to plan for. Default: 45 % to 25 % relative humidity at 21 degC");
    private static final Key<Job, Blank> BLANK = TABLE.needed("blank", Types.group(Blank.TABLE), "neck blank");
    private static final Key<Job, Shop> SHOP =
            TABLE.needed("shop", Types.group(Shop.TABLE), "equipment of the shop for the channel");
    private static final Key<Job, List<CentringRound>> ROUNDS = TABLE.optional(
            "trial cuts",
            Types.list(Types.group(CentringRound.TABLE), 1, MOST_ROUNDS),
            "trial cuts and fence moves, in the order made. Default: none");
    private static final Key<Job, MeasuredNeck> MEASURED = TABLE.usual(
            "measured",
            Types.group(MeasuredNeck.TABLE),
            MeasuredNeck.none(),
            "measurements of the neck itself. Default: none");
    private static final Key<Job, OrderChanges> ORDER = TABLE.usual(
            "order of work",
            Types.group(OrderChanges.TABLE),
            OrderChanges.none(),
            "changes of the order of work. Default: the usual order");
    private static final Key<Job, Workmanship> WORKMANSHIP = TABLE.usual(
            "workmanship",
            Types.group(Workmanship.TABLE),
            Workmanship.withDefaults(),
            "error distribution of each kind of step in this shop. Default: common practice");
    private static final Key<Job, NeckLimits> LIMITS = TABLE.usual(
            "limits",
            Types.group(NeckLimits.TABLE),
            NeckLimits.withDefaults(),
            "limits of the neck. Default: slot offset 0.1 mm or 4 thou, floor thickness 3 mm or 1/8 in, bridge offset 1 mm or 40 thou");

    private static final Amount<Length> USUAL_RELIEF = ShopUnits.mm(0.2);
    private static final Amount<Length> USUAL_RELIEF_IN = ShopUnits.thou(8);

    static {
        TABLE.moved(Moves.none().and("readings", "trial cuts").and("as made", "measured"));
    }

    /** As given, for data; the stages have the same in one style. */
    private final Values<Job> given;

    private final Stages stages;
    private final Supplier<Plan> plan = new Once<>(() -> new Plan(stages()));

    private Job(Values<Job> values) {
        this.given = values.complete();
        this.stages = Stages.of(inputs());
        JobRules.check(stages);
        if (given.at(WORKMANSHIP).given().stream().anyMatch("centring"::equals)) {
            throw Refusal.because(
                    "workmanship.centring",
                    "not-here",
                    "workmanship.centring must be left out of a job, which knows it from trial cuts and readings");
        }
        if (given.has(ROUNDS)) {
            placed("trial cuts", stages.slot()::rounds);
        }
        if (given.has(ORDER)) {
            placed("order of work", stages.order()::left);
        }
        if (given.has(MEASURED)) {
            // What no neck can look like is refused here, not when it is printed.
            placed("measured", stages.made()::design);
        }
    }

    private Inputs inputs() {
        LengthStyle designed = given.at(DESIGN).style();
        LengthStyle style = given.find(PRINT_IN).orElse(designed);
        Values<Job> shown = given.printedIn(style);
        NeckLimits limits = given.at(LIMITS).ofNeck(designed);
        Shop shop = shown.at(SHOP);
        return new Inputs(
                shown.at(DESIGN),
                shown.at(BLANK),
                shop,
                style,
                limits.slotOffset(designed).in(style),
                limits.floorThickness(designed).in(style),
                limits.bridgeOffset(designed).in(style),
                limits,
                given.find(RELIEF)
                        .orElse(designed == LengthStyle.MILLIMETRES ? USUAL_RELIEF : USUAL_RELIEF_IN)
                        .in(style),
                given.at(WEATHER),
                given.at(WORKMANSHIP),
                given.has(ORDER) ? Optional.of(given.at(ORDER)) : Optional.empty(),
                shown.at(MEASURED).readBy(shop.repeatability()),
                shown.find(ROUNDS).orElse(List.of()).stream()
                        .flatMap(round -> round.steps().stream())
                        .toList());
    }

    Stages stages() {
        return stages;
    }

    /** What is refused where it follows from the keys is a fault of the key it follows from. */
    private static void placed(String key, Runnable question) {
        try {
            question.run();
        } catch (Refusal refusal) {
            throw Refusal.because(key, refusal.faults().get(0).rule(), key + ": " + refusal.getMessage());
        }
    }

    private <V> Job with(Key<Job, V> key, V value) {
        return new Job(given.with(key, value));
    }

    /**
     * {@return the job of a neck of which nothing has been cut yet}
     *
     * @param neck what is to be made; it must have its channel
     * @param blank the piece it is made from
     * @param shop the machine and gauges it is made with
     * @throws IllegalArgumentException if the channel does not fit the blank, the cutter the channel, or the head is too
     *     short for its scarf
     */
    public static Job of(Neck neck, Blank blank, Shop shop) {
        return new Job(TABLE.values().with(DESIGN, neck).with(BLANK, blank).with(SHOP, shop));
    }

    /**
     * {@return this job in a shop that learns: its own figures in the place of those of common practice and of those given; this
     * neck's own lines in the log do not count, its readings do}
     *
     * @param log the shop's log
     * @param day as of which the log counts
     */
    public Job learnt(ShopLog log, LocalDate day) {
        Objects.requireNonNull(log, "log");
        Objects.requireNonNull(day, "day");
        Shop shop = given.at(SHOP);
        ShopLog others = log.without(log(day.toString()));
        return workmanship(others.workmanship(given.at(WORKMANSHIP), day))
                .with(SHOP, shop.uncertainty(others.bench(shop.uncertainty(), day)));
    }

    /**
     * {@return the lines that the readings of this job add to a shop's log: fence moves against the trial cuts about them, and
     * what was cut or glued against the channel}
     *
     * @param date of the readings, such as {@code 2026-03-02}
     */
    public ShopLog log(String date) {
        Objects.requireNonNull(date, "date");
        return LogLines.of(stages, date);
    }

    /**
     * {@return this job with a trial cut read, after the cuts and moves so far}
     *
     * @param cut the trial cut
     */
    public Job trialCut(TrialCut cut) {
        return then(CentringStep.read(cut));
    }

    /**
     * {@return this job with the last trial cut read once more}
     *
     * @param cut the new readings of the same slot
     * @throws IllegalArgumentException if no trial cut came just before
     */
    public Job readAgain(TrialCut cut) {
        return then(CentringStep.readAgain(cut));
    }

    /**
     * {@return this job with the fence moved, after the cuts and moves so far}
     *
     * @param move as it was made, at the cutter, such as {@code FenceMove.away(mm(0.7))}
     * @throws IllegalArgumentException if no trial cut came before
     */
    public Job fenceMoved(FenceMove move) {
        return then(CentringStep.moved(move));
    }

    /**
     * {@return this job with one more step at the machine, after the steps so far}
     *
     * @param step a trial cut, the last one read again, or a fence move
     * @throws IllegalArgumentException if the step cannot follow the steps so far
     */
    public Job then(CentringStep step) {
        stages.slot().rounds().then(step);
        List<CentringStep> steps = new ArrayList<>(given.find(ROUNDS).orElse(List.of()).stream()
                .flatMap(round -> round.steps().stream())
                .toList());
        steps.add(step);
        return with(ROUNDS, CentringRound.of(steps));
    }

    /** This job with other trial cuts and moves in the place of those so far. */
    Job steps(List<CentringStep> all) {
        return all.isEmpty() ? new Job(given.without(ROUNDS)) : with(ROUNDS, CentringRound.of(all));
    }

    /** This job with operations done, by their names. */
    Job done(List<String> names) {
        return with(ORDER, given.at(ORDER).done(names));
    }

    /** This job with an operation not given as done. */
    Job undone(String operation) {
        OrderChanges left = given.at(ORDER).undone(operation);
        return left.equals(OrderChanges.none()) ? new Job(given.without(ORDER)) : with(ORDER, left);
    }

    /** This job with fewer readings on the neck. */
    Job fewer(MeasuredNeck left) {
        return left.equals(MeasuredNeck.none()) ? new Job(given.without(MEASURED)) : measured(left);
    }

    /** What has been read on the neck, as it was given. */
    MeasuredNeck measuredAsGiven() {
        return given.at(MEASURED);
    }

    /** The operations given as done. */
    List<String> done() {
        return given.at(ORDER).done();
    }

    /**
     * {@return this job with the limits to keep}
     *
     * @param keep slot offset, floor thickness, bridge offset
     */
    public Job limits(NeckLimits keep) {
        return with(LIMITS, keep);
    }

    /**
     * {@return this job with another relief wanted}
     *
     * @param wanted under the strings, 0 or more
     */
    public Job relief(Quantity<Length> wanted) {
        return new Job(given.amount(RELIEF, wanted));
    }

    /**
     * {@return this job with another change of weather to be ready for}
     *
     * @param change from the shop's air to the worst the neck shall meet
     */
    public Job weather(Weather change) {
        return with(WEATHER, change);
    }

    /**
     * {@return this job with another order of work}
     *
     * @param work the operations and what must be kept
     */
    public Job order(OrderOfWork work) {
        return with(ORDER, OrderChanges.to(work));
    }

    /**
     * {@return this job with how well each kind of step is done in this shop, instead of common practice}
     *
     * @param work the workmanship, without centring, which trial cuts and readings give
     */
    public Job workmanship(Workmanship work) {
        return with(WORKMANSHIP, work);
    }

    /**
     * {@return this job with what has been read on the neck itself: what was read is done, and the rest is judged on
     * it}
     *
     * @param readings the readings, all of them so far
     * @throws IllegalArgumentException if they are of a part that the design lacks, or of a station off the neck
     */
    public Job measured(MeasuredNeck readings) {
        return with(MEASURED, readings);
    }

    /** {@return the plan: everything that follows from this job; worked out at the first question and kept} */
    public Plan plan() {
        return plan.get();
    }

    /** {@return the neck, in the style the plan prints in} */
    public Neck neck() {
        return stages.neck();
    }

    /** {@return the neck as it was given, each length in its own unit; a neck equal to {@link #neck}} */
    public Neck neckAsGiven() {
        return given.at(DESIGN);
    }

    /** {@return the blank} */
    public Blank blank() {
        return stages.blank();
    }

    /** {@return the shop} */
    public Shop shop() {
        return stages.shop();
    }

    /** {@return the limits as given; the defaults of those not given follow the neck's unit} */
    public NeckLimits limits() {
        return given.at(LIMITS);
    }

    /** {@return the limit on the slot's offset, either way; more than 0} */
    public Amount<Length> slotLimit() {
        return stages.job().slotLimit();
    }

    /** {@return the least wood wanted under the channel; more than 0} */
    public Amount<Length> floorLimit() {
        return stages.job().floorLimit();
    }

    /** {@return the limit on the string line at the bridge, either way; more than 0} */
    public Amount<Length> bridgeLimit() {
        return stages.job().bridgeLimit();
    }

    /** {@return the relief wanted under the strings; 0 or more} */
    public Amount<Length> relief() {
        return stages.job().relief();
    }

    /** {@return the change of weather to be ready for; from the shop's air to the worst the neck shall meet} */
    public Weather weather() {
        return given.at(WEATHER);
    }

    /** {@return how well each kind of step is done in this shop, without centring; common practice by default} */
    public Workmanship workmanship() {
        return given.at(WORKMANSHIP);
    }

    /** {@return what has been read on the neck so far; nothing by default} */
    public MeasuredNeck measured() {
        return stages.measured();
    }

    /** {@return the trial cuts and fence moves in the order in which they were made; none before the first cut} */
    public List<CentringStep> steps() {
        return stages.job().steps();
    }

    /** {@return the style the plan is printed in: that of the neck, unless another was asked for} */
    public LengthStyle style() {
        return stages.style();
    }

    /**
     * {@return this job with how its lengths are printed; equal to this}
     *
     * @param other millimetres, decimal inches, or fractions of an inch
     */
    public Job printIn(LengthStyle other) {
        return with(PRINT_IN, other);
    }

    /** True for a job of which the same was given; how lengths are printed is no part of it. */
    @Override
    public boolean equals(Object obj) {
        return obj instanceof Job other && given.without(PRINT_IN).equals(other.given.without(PRINT_IN));
    }

    @Override
    public int hashCode() {
        return given.without(PRINT_IN).hashCode();
    }

    /** Returns the neck's name, the blank, and how much has been read so far. */
    @Override
    public String toString() {
        return "Job: " + neck().name() + "; " + blank() + "; " + count(steps().size(), "trial cut or move") + ", "
                + count(measured().count(), "reading") + " on the neck";
    }

    private static String count(int many, String one) {
        return many == 0 ? "no " + one : many + " " + one + (many == 1 ? "" : "s");
    }
}
