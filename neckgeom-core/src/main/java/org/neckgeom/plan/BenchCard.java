package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Statement;
import org.neckgeom.neck.Channel;
import org.neckgeom.order.Operation;
import org.neckgeom.shop.Caution;
import org.neckgeom.text.Names;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/**
 * A card of one operation, to hang at the bench: what to set, what to tick, what to read with its range, what to mind, and the
 * way back where a reading is not as it should be. Immutable.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class BenchCard {

    private static final int MOST_CAUTIONS = 5;
    private static final String MACHINE_FIRST = "MACHINE_FIRST";

    private final Job job;
    private final Operation operation;
    private final int number;

    private BenchCard(Job job, Operation operation, int number) {
        this.job = job;
        this.operation = operation;
        this.number = number;
    }

    /**
     * {@return the card of an operation, done or not}
     *
     * @param job of the neck
     * @param operation its name or its code, such as {@code cut rod channel} or {@code cut-rod-channel}
     * @throws IllegalArgumentException if the neck has no such operation
     */
    public static BenchCard of(Job job, String operation) {
        String code = Names.code(Objects.requireNonNull(operation, "operation"));
        List<Operation> all = operations(Objects.requireNonNull(job, "job"));
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).code().equals(code)) {
                return new BenchCard(job, all.get(i), i + 1);
            }
        }
        throw Names.unknown(
                operation, "operation", all.stream().map(Operation::name).toList());
    }

    /**
     * {@return the operations of a neck, those done first, each of which has a card; in the order of work}
     *
     * @param job of the neck
     */
    public static List<Operation> operations(Job job) {
        Plan plan = Objects.requireNonNull(job, "job").plan();
        return Stream.concat(
                        plan.work().finished().stream(),
                        plan.order().steps().stream().map(step -> step.operation()))
                .toList();
    }

    /** {@return the job it is of} */
    public Job job() {
        return job;
    }

    /** {@return the operation} */
    public Operation operation() {
        return operation;
    }

    /** {@return its place in the order of work; 1 for the first} */
    public int number() {
        return number;
    }

    /** {@return what to set, one section for each set-up; of the channel the trial cut first; may be empty} */
    public List<PlanSection> settings() {
        Stages plan = job.stages();
        List<PlanSection> all = new ArrayList<>();
        if (isChannel()) {
            all.add(BenchSettings.trialCut(plan));
            all.add(BenchSettings.cut(plan, operation));
        } else {
            all.add(BenchSettings.of(plan, operation));
        }
        return all.stream().filter(section -> !section.rows().isEmpty()).toList();
    }

    /** {@return the depth after each pass, to tick; none where nothing is cut in passes} */
    public List<Amount<Length>> depths() {
        return isChannel() ? job.plan().passes().gaugeBlockSteps() : List.of();
    }

    /** {@return what is read of the trial cut before the operation; none but for the channel} */
    public List<BenchQuestion> trial() {
        return isChannel() ? questions(BenchStep.trial(job.stages())) : List.of();
    }

    /** {@return what is read after the operation, each with its usual range; none where nothing is read on it} */
    public List<BenchQuestion> readings() {
        Job unread = job.measuredAsGiven().isEmpty() ? job : job.measured(MeasuredNeck.none());
        return questions(BenchStep.readings(unread.stages(), operation));
    }

    private static List<BenchQuestion> questions(List<BenchAsk> asks) {
        return asks.stream().map(BenchAsk::question).toList();
    }

    /** {@return the limits of what is read after the operation, where the plan has them; sentences, often none} */
    public List<Statement> limits() {
        if (!isChannel()) {
            return List.of();
        }
        Channel channel = job.stages().job().channel();
        LengthStyle style = job.style();
        return List.of(
                ShopDigits.words(
                        "depth",
                        "depth FINE or more",
                        style,
                        channel.reinforcement().heightMm() + channel.filletMm()),
                ShopDigits.words(
                        "width",
                        "width FINE or more",
                        style,
                        channel.reinforcement().widthMm()),
                ShopDigits.words(
                        "walls",
                        "the two walls differ by FINE or less",
                        style,
                        2 * job.slotLimit().libraryValue()));
    }

    /** {@return the cautions that count most here, without that of the machine's instructions; at most five} */
    public List<Caution> cautions() {
        List<Caution> all = isChannel() ? job.plan().cautions() : operation.cautions();
        return all.stream()
                .filter(caution -> !caution.code().equals(MACHINE_FIRST))
                .limit(MOST_CAUTIONS)
                .toList();
    }

    /** {@return what can go wrong, and the way back; sentences, often none (common practice)} */
    public List<String> wayBack() {
        return WayBack.of(BenchStep.usualName(operation));
    }

    private boolean isChannel() {
        return operation.cutsTheChannel();
    }

    /** True for the card of the same operation of the same job. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BenchCard that && operation.equals(that.operation) && job.equals(that.job);
    }

    @Override
    public int hashCode() {
        return operation.hashCode();
    }

    /** Returns such as {@code Card 5: cut rod channel}. */
    @Override
    public String toString() {
        return "Card " + number + ": " + operation.name();
    }
}
