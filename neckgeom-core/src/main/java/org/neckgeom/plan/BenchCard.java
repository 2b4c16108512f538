package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.neckgeom.form.Kind;
import org.neckgeom.form.Statement;
import org.neckgeom.kernel.Once;
import org.neckgeom.neck.Channel;
import org.neckgeom.order.Operation;
import org.neckgeom.shop.Caution;
import org.neckgeom.stock.Blank;
import org.neckgeom.text.Names;
import org.neckgeom.text.Numbers;
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

    /** The row of settings that {@link #depths} replaces. */
    private static final String DEPTHS = "depths";

    private final Job job;
    private final Operation operation;
    private final int number;
    private final Supplier<List<PlanSection>> settings = new Once<>(this::set);
    private final Supplier<List<BenchQuestion>> trial = new Once<>(this::triedOn);
    private final Supplier<List<BenchQuestion>> readings = new Once<>(this::readAfter);

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
        return settings.get();
    }

    private List<PlanSection> set() {
        Stages plan = job.stages();
        List<PlanSection> all = new ArrayList<>();
        if (isChannel()) {
            all.add(BenchSettings.trialCut(plan));
            all.add(BenchSettings.cut(plan, operation).without(Set.of(DEPTHS)));
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
        return trial.get();
    }

    private List<BenchQuestion> triedOn() {
        return isChannel() ? questions(BenchStep.trial(job.stages())) : List.of();
    }

    /** {@return what is read after the operation, each with its usual range; none where nothing is read on it} */
    public List<BenchQuestion> readings() {
        return readings.get();
    }

    private List<BenchQuestion> readAfter() {
        Job unread = job.measuredAsGiven().isEmpty() ? job : job.measured(MeasuredNeck.none());
        return questions(BenchStep.readings(unread.stages(), operation));
    }

    private static List<BenchQuestion> questions(List<BenchAsk> asks) {
        return asks.stream().map(BenchAsk::question).toList();
    }

    /**
     * {@return the limit of a reading, where the plan has one; often nothing}
     *
     * @param reading one of {@link #readings}
     */
    public Optional<Statement> limit(BenchQuestion reading) {
        Objects.requireNonNull(reading, "reading");
        if (!isChannel()) {
            return Optional.empty();
        }
        Channel channel = job.stages().job().channel();
        if (reading.code().equals(BenchStep.code(NeckFeature.CHANNEL_DEPTH))) {
            return Optional.of(atLeast("depth", channel.reinforcement().heightMm() + channel.filletMm()));
        }
        return reading.code().equals(BenchStep.code(NeckFeature.CHANNEL_WIDTH))
                ? Optional.of(atLeast("width", channel.reinforcement().widthMm()))
                : Optional.empty();
    }

    /**
     * {@return what is printed beside the box of a reading: its limit, else the range that it usually lies in, else the words to
     * choose from}
     *
     * @param reading one of {@link #trial} or {@link #readings}
     */
    public String range(BenchQuestion reading) {
        return limit(reading)
                .map(Statement::toString)
                .or(() -> reading.usual().map(usual -> "usually " + usual))
                .orElse(String.join(" or ", reading.choices()));
    }

    private Statement atLeast(String code, double mm) {
        return ShopDigits.words(code, "FINE or more", job.style(), mm);
    }

    /** {@return limits that several readings have together; sentences, often none} */
    public List<Statement> limits() {
        return isChannel()
                ? List.of(ShopDigits.words(
                        "walls",
                        "The two walls differ by FINE or less.",
                        job.style(),
                        2 * job.slotLimit().libraryValue()))
                : List.of();
    }

    /** {@return the blank and where the nut line is on it} */
    public Statement wood() {
        Blank blank = job.blank();
        String words = "Blank {length:W} x {width:W} x {thickness:W}"
                + (blank.nutFromHeadEndMm() > 0 ? ", nut line {nut:W} from its head end." : ".");
        return Statement.of("blank", words.replace(":W", ":" + ShopDigits.wood(job.style())), job.style())
                .with("length", Kind.MM, blank.lengthMm())
                .with("width", Kind.MM, blank.widthMm())
                .with("thickness", Kind.MM, blank.thicknessMm())
                .with("nut", Kind.MM, blank.nutFromHeadEndMm());
    }

    /**
     * {@return a depth of a pass, as a gauge block shows it, without its unit}
     *
     * @param depth one of {@link #depths}
     */
    public String figure(Amount<Length> depth) {
        double mm = Objects.requireNonNull(depth, "depth").libraryValue();
        return job.style() == LengthStyle.MILLIMETRES
                ? Numbers.fixed(mm, 2)
                : Numbers.fixed(LengthStyle.DECIMAL_INCHES.unit().fromLibrary(mm), 3);
    }

    /** {@return the cautions that count most here, without that of the machine's instructions; at most five} */
    public List<Caution> cautions() {
        return mattering().stream().limit(MOST_CAUTIONS).toList();
    }

    /** {@return how many cautions of the operation are not among {@link #cautions}} */
    public int moreCautions() {
        return Math.max(0, mattering().size() - MOST_CAUTIONS);
    }

    private List<Caution> mattering() {
        List<Caution> all = isChannel() ? job.plan().cautions() : operation.cautions();
        return all.stream()
                .filter(caution -> !caution.code().equals(MACHINE_FIRST))
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
