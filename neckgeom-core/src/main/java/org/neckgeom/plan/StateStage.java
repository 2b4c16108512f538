package org.neckgeom.plan;

import static org.neckgeom.plan.NeckFeature.FINGERBOARD_OFFSET;
import static org.neckgeom.plan.NeckFeature.HEIGHT_AT_BRIDGE;
import static org.neckgeom.plan.NeckFeature.OFFSET_AT_BRIDGE;
import static org.neckgeom.plan.NeckFeature.SLOT_OFFSET;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.heel.HeelCorners;
import org.neckgeom.kernel.Once;
import org.neckgeom.measure.Chance;
import org.neckgeom.measure.Decision;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.neck.Heel;
import org.neckgeom.order.Operation;
import org.neckgeom.state.Basis;
import org.neckgeom.state.Cause;
import org.neckgeom.state.Deviation;
import org.neckgeom.state.JointChance;
import org.neckgeom.state.Known;
import org.neckgeom.state.NeckErrors;
import org.neckgeom.state.NeckReading;
import org.neckgeom.state.NeckState;
import org.neckgeom.state.PossibleReading;
import org.neckgeom.state.ReadingWorth;
import org.neckgeom.state.Requirement;
import org.neckgeom.state.StepWorth;
import org.neckgeom.units.Amount;

/** What is known of the neck: the causes of its errors, and every reading on it where it was read. */
final class StateStage {

    /** What is left once the heel has been fitted to what was read at the bridge; common practice. */
    private static final double FITTED_MM = 0.05;

    /** A thread or a straightedge over the bridge, read with a rule; common practice. */
    private static final double AT_BRIDGE_MM = 0.1;

    /**
     * A heel as cut, before it is fitted to what the bridge shows, at the bridge: wide enough that the reading counts and not
     * the guess; common practice.
     */
    private static final double AS_CUT_MM = 2.0;

    /** Of a reading the probability under which a chance is looked at by trials: two standard deviations off. */
    private static final double FAR_OFF = 0.05;

    private static final double TOO_ROUGH = 0.005;

    private static final String SWING = "swing of the heel as cut";
    private static final String TILT = "tilt of the heel as cut";

    private final Inputs job;
    private final ShapeStage shape;
    private final OrderStage order;
    private final SlotStage slot;
    private final Supplier<NeckErrors> errors = new Once<>(this::asMade);
    private final Supplier<NeckState> state = new Once<>(this::asRead);
    private final Supplier<JointChance> all = new Once<>(() -> state().chanceOfAll(requirements()));
    private final Map<BudgetCode, Supplier<Known>> known = new EnumMap<>(BudgetCode.class);

    StateStage(Inputs job, ShapeStage shape, OrderStage order, SlotStage slot) {
        this.job = job;
        this.shape = shape;
        this.order = order;
        this.slot = slot;
        for (BudgetCode which : BudgetCode.values()) {
            known.put(which, new Once<>(() -> state().known(which.toString(), deviation(which))));
        }
    }

    /**
     * As given, else common practice, and the channel's centring as it is known now: toward the treble side, the fence along the
     * treble edge.
     */
    Workmanship workmanship() {
        Estimate<Length> away = slot.place().start().estimate();
        return job.workmanship()
                .centring(ErrorDistribution.of(Estimate.ofLibrary(
                        0.0 - away.libraryValue(), away.libraryUncertainty(), away.degreesOfFreedom(), away.unit())));
    }

    NeckErrors errors() {
        return errors.get();
    }

    /** A slot that no trial cut has placed is as uncertain as one cut and the best move after it leave it. */
    private NeckErrors asMade() {
        NeckErrors usual = NeckErrors.of(job.neck());
        if (job.measured().has(SLOT_OFFSET)) {
            return usual.with(job.workmanship()).slotRead(slot.place(), job.blank());
        }
        return job.steps().isEmpty()
                ? usual.with(workmanship())
                : usual.with(job.workmanship()).slotSet(slot.place(), job.blank());
    }

    NeckState state() {
        return state.get();
    }

    private NeckState asRead() {
        NeckState known = errors().state();
        for (Map.Entry<NeckFeature, String> cut :
                Map.of(OFFSET_AT_BRIDGE, SWING, HEIGHT_AT_BRIDGE, TILT).entrySet()) {
            if (job.measured().has(cut.getKey())) {
                known = known.with(new Cause(
                        cut.getValue(),
                        "body joint",
                        ErrorDistribution.normal(job.style().amount(AS_CUT_MM)),
                        Basis.GIVEN));
            }
        }
        for (NeckReading reading : readings()) {
            known = known.read(reading);
        }
        return known;
    }

    /** What was read on the neck of what adds up; the slot's own readings are in its place already. */
    private List<NeckReading> readings() {
        MeasuredNeck read = job.measured();
        List<NeckReading> all = offsets(one -> true);
        read.of(OFFSET_AT_BRIDGE).ifPresent(value -> all.add(reading(OFFSET_AT_BRIDGE, stringLine(), value)));
        read.of(HEIGHT_AT_BRIDGE).ifPresent(value -> all.add(reading(HEIGHT_AT_BRIDGE, projection(), value)));
        return all;
    }

    /** What was read across of some features, and of the board at the body joint. */
    private List<NeckReading> offsets(Predicate<MeasuredNeck.Located> of) {
        MeasuredNeck read = job.measured();
        List<NeckReading> all = new ArrayList<>(read.offsets().stream()
                .filter(one -> of.test(one.feature()))
                .map(one -> new NeckReading(one.name(job.style()), offset(one.feature(), one.station()), one.offset()))
                .toList());
        read.of(FINGERBOARD_OFFSET)
                .ifPresent(value -> all.add(
                        reading(FINGERBOARD_OFFSET, offset(MeasuredNeck.Located.FINGERBOARD, bodyJoint()), value)));
        return all;
    }

    private static NeckReading reading(NeckFeature feature, Deviation of, Estimate<Length> value) {
        return new NeckReading(feature.toString(), of, value);
    }

    private Deviation offset(MeasuredNeck.Located feature, Amount<Length> station) {
        Deviation itself = switch (feature) {
            case FINGERBOARD -> errors().fingerboard(station);
            case SIDE_TAPER -> errors().sideTaper(station);
            case HEEL -> errors().heel(station);
        };
        return itself.minus(errors().channel(station));
    }

    private Amount<Length> bodyJoint() {
        return job.style().amount(job.neck().bodyJointMm());
    }

    /** Once it is read at the bridge the heel is cut and still to be fitted. */
    private Deviation stringLine() {
        Deviation fitted = errors().stringLine();
        return job.measured().has(OFFSET_AT_BRIDGE) ? fitted.plus(Deviation.of(SWING)) : fitted;
    }

    private Deviation projection() {
        Deviation fitted = errors().projection();
        return job.measured().has(HEIGHT_AT_BRIDGE) ? fitted.plus(Deviation.of(TILT)) : fitted;
    }

    private Deviation deviation(BudgetCode which) {
        return switch (which) {
            case STRING_LINE -> stringLine();
            case BOARD_AT_BODY_JOINT -> errors().boardOnNeck(bodyJoint());
            case WOOD_BESIDE_CHANNEL -> errors().woodEachSide(errors().nearNut());
            case PROJECTION_HEIGHT -> projection();
            case STRING_LENGTH -> errors().stringLength();
        };
    }

    /** The same each time it is asked: its law is worked out once. */
    Known known(BudgetCode which) {
        return Objects.requireNonNull(known.get(which)).get();
    }

    /** The same string line, heel and taper located otherwise, before anything is read on them; the board lies where it was read. */
    Known stringLine(NeckErrors.Located on) {
        NeckErrors other = errors().locatedOn(on);
        NeckState known = other.state();
        for (NeckReading reading : offsets(MeasuredNeck.Located.FINGERBOARD::equals)) {
            known = known.read(reading);
        }
        return known.known(BudgetCode.STRING_LINE.toString(), other.stringLine());
    }

    Requirement requirement(BudgetCode which) {
        Requirement wanted = Requirement.of(which.toString(), deviation(which), job.limits(which));
        return which == BudgetCode.STRING_LINE || which == BudgetCode.PROJECTION_HEIGHT
                ? wanted.correctedWithin(job.style().amount(FITTED_MM))
                : wanted;
    }

    private List<Requirement> requirements() {
        return Arrays.stream(BudgetCode.values()).map(this::requirement).toList();
    }

    JointChance all() {
        return all.get();
    }

    /**
     * The reading most worth taking: the two at the bridge, once the heel is fitted, and the offsets of what is made already; nothing
     * where no reading is left that helps.
     */
    Optional<ReadingWorth> nextReading() {
        Amount<Length> u = job.style().amount(AT_BRIDGE_MM);
        Stream<PossibleReading> atTheBridge = Stream.of(
                new PossibleReading(OFFSET_AT_BRIDGE.toString(), stringLine(), u),
                new PossibleReading(HEIGHT_AT_BRIDGE.toString(), projection(), u));
        Stream<PossibleReading> made = Arrays.stream(MeasuredNeck.Located.values())
                .filter(one -> order.isDone(madeBy(one)))
                .flatMap(one -> Stream.of(errors().nearNut(), errors().nearJoint())
                        .map(station -> new PossibleReading(
                                one.at(station, job.style()),
                                offset(one, station),
                                job.shop().repeatability())));
        List<PossibleReading> open = Stream.concat(atTheBridge, made)
                .filter(one -> state().readings().stream()
                        .noneMatch(read -> read.name().equals(one.name())))
                .toList();
        return state().worthReading(open, requirements()).stream()
                .filter(next -> next.worth() > 0)
                .findFirst();
    }

    private static String madeBy(MeasuredNeck.Located feature) {
        return switch (feature) {
            case FINGERBOARD -> Operation.GLUE_FINGERBOARD;
            case SIDE_TAPER -> Operation.TAPER_THE_SIDES;
            case HEEL -> Operation.CUT_HEEL_JOINT;
        };
    }

    /** The chance by weighted trials, where a reading lies so far off that normal laws for its causes are too rough. */
    Optional<Chance> byTrials(BudgetCode which) {
        Known known = known(which);
        boolean isFarOff = state().agreement().readings().stream().anyMatch(one -> one.probability() < FAR_OFF);
        if (!isFarOff) {
            return Optional.empty();
        }
        Limits<Length> limits = job.limits(which);
        try {
            Chance trials = known.chanceByTrials(limits);
            double normal = known.budget().distribution().chance(limits);
            return Math.abs(trials.probability() - normal) > TOO_ROUGH + trials.accuracy()
                    ? Optional.of(trials)
                    : Optional.empty();
        } catch (NoAnswer few) {
            return Optional.empty();
        }
    }

    /** What comes off the heel so that height and centreline come to where they belong at the bridge; what keeps its limits stays. */
    Optional<HeelCorners> heelCorners() {
        double high = outAtTheBridge(HEIGHT_AT_BRIDGE, BudgetCode.PROJECTION_HEIGHT);
        double aside = outAtTheBridge(OFFSET_AT_BRIDGE, BudgetCode.STRING_LINE);
        Heel heel = job.neck().heel().orElse(null);
        if (heel == null || high == 0 && aside == 0) {
            return Optional.empty();
        }
        return shape.neckSet()
                .map(set -> set.correction(
                        heel, job.style().amount(-high), job.style().amount(aside)));
    }

    /** How far out it is there by what was read; 0 where it was not, or keeps its limits. */
    private double outAtTheBridge(NeckFeature reading, BudgetCode which) {
        if (!job.measured().has(reading)) {
            return 0;
        }
        Verdict<Length> verdict = Verdict.of(known(which).estimate(), job.limits(which));
        return verdict.call() == Decision.WITHIN ? 0 : verdict.estimate().libraryValue();
    }

    /** The steps that are still to be done, the most helpful first: none where all are. */
    List<StepWorth> worthImproving(BudgetCode which) {
        return state().worthImproving(requirement(which)).stream()
                .filter(one -> !isDone(one.step()))
                .toList();
    }

    private boolean isDone(String step) {
        return switch (step) {
            case "blank's edges" -> order.isDone(Operation.SQUARE_THE_EDGES);
            case "rod channel" -> order.isDone(Operation.CUT_ROD_CHANNEL);
            case "body joint" -> order.isDone(Operation.FIT_HEEL_TO_BODY);
            default ->
                Arrays.stream(MeasuredNeck.Located.values())
                        .anyMatch(one -> one.toString().equals(step) && order.isDone(madeBy(one)));
        };
    }
}
