package org.neckgeom.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.BenchAsk.Given;
import org.neckgeom.shop.Caution;
import org.neckgeom.text.Names;
import org.neckgeom.text.Report;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * A session at the bench: a job with the record so far, the operation at hand, what to set and what to read. Each entry gives a
 * new session with what was understood and which checks of the plan change. Immutable.
 *
 * <pre>
 * BenchSession session = BenchSession.of(job);
 * BenchSession.Reply reply = session.enter("29.84");
 * session = reply.session();
 * </pre>
 *
 * <p>The record is the job: trial cuts and fence moves, readings on the neck, operations done, as a neck file keeps them. A
 * session that ends goes on from its job. Answers that belong together, such as the two walls of a trial cut, are kept together
 * or not at all.
 */
@SuppressWarnings("exports") // JSpecify is for compilers only
public final class BenchSession {

    /** The entry that takes the last one back. */
    public static final String UNDO = "undo";

    /** The entry that a step is done: a fence move as advised, else the operation at hand. */
    public static final String DONE = "done";

    /**
     * The answer to an entry.
     *
     * @param session after it; the same where nothing was taken
     * @param understood what was taken of it, in words; empty where nothing was
     * @param question one sentence on what cannot be taken; empty where all was taken
     * @param changes checks of the plan that it changes, in the order of work; none before a whole step is read
     * @param repairs the ways back from a reading out of its limit, of each the least harm first; none where all is well
     */
    public record Reply(
            BenchSession session, String understood, String question, List<PlanChange> changes, List<Repair> repairs) {

        /**
         * Copies the lists.
         *
         * @param session after it
         * @param understood what was taken of it
         * @param question on what cannot be taken
         * @param changes checks that it changes
         * @param repairs of a reading out of its limit
         */
        public Reply {
            Objects.requireNonNull(session, "session");
            Objects.requireNonNull(understood, "understood");
            Objects.requireNonNull(question, "question");
            changes = Names.all(changes, "change");
            repairs = Names.all(repairs, "repair");
        }

        /** {@return whether the entry was taken} */
        public boolean isTaken() {
            return question.isEmpty();
        }

        /** Returns what was understood, or the question, the changes and the repairs. */
        @Override
        public String toString() {
            return Stream.concat(
                            Stream.of(isTaken() ? understood : question),
                            Stream.concat(changes.stream(), repairs.stream()).map(line -> "  " + line))
                    .collect(Collectors.joining("\n"));
        }
    }

    private final Job job;
    private final @Nullable BenchStep step;
    private final Map<String, Given> pending;
    private final Set<String> leftOut;

    /** What was doubted: entered again, it is taken. */
    private final String doubted;

    private final @Nullable BenchSession previous;

    /** What was entered last; empty where the session began. */
    private final String entry;

    private BenchSession(
            Job job,
            Map<String, Given> pending,
            Set<String> leftOut,
            String doubted,
            @Nullable BenchSession previous,
            String entry) {
        this.job = job;
        this.step = BenchStep.of(job).orElse(null);
        this.pending = pending;
        this.leftOut = leftOut;
        this.doubted = doubted;
        this.previous = previous;
        this.entry = entry;
    }

    /**
     * {@return a session that goes on where a job stops}
     *
     * @param job with the record so far
     */
    public static BenchSession of(Job job) {
        return new BenchSession(Objects.requireNonNull(job, "job"), Map.of(), Set.of(), "", null, "");
    }

    /** {@return the job with the record so far} */
    public Job job() {
        return job;
    }

    /** {@return the operation at hand; nothing where all are done} */
    public Optional<Operation> operation() {
        return step().map(BenchStep::operation);
    }

    /** {@return the operations that come before it, on which nothing is read; in order, often none} */
    public List<Operation> before() {
        return step().map(BenchStep::before).orElse(List.of());
    }

    /** {@return the operation after it; nothing where it is the last} */
    public Optional<Operation> then() {
        return step().flatMap(BenchStep::then);
    }

    /** {@return what to set for the step at hand, with digits that a shop can use; three to six rows, or none} */
    public PlanSection settings() {
        return BenchSettings.of(job, step());
    }

    /** {@return the cautions of the operation at hand; first those that its settings cause} */
    public List<Caution> cautions() {
        return step().map(at -> at.operation().cutsTheChannel()
                        ? job.plan().cautions()
                        : at.operation().cautions())
                .orElse(List.of());
    }

    /** {@return what is still to be read of the step at hand, in the order in which it is read} */
    public List<BenchQuestion> questions() {
        return open().stream().map(BenchAsk::question).toList();
    }

    /** {@return what is to be read now; nothing where the operation at hand has only to be done} */
    public Optional<BenchQuestion> question() {
        return questions().stream().findFirst();
    }

    /** {@return whether there is an entry to take back} */
    public boolean canUndo() {
        return !pending.isEmpty()
                || previous != null
                || BenchRecord.withoutLast(job).isPresent();
    }

    private Optional<BenchStep> step() {
        return Optional.ofNullable(step);
    }

    private List<BenchAsk> open() {
        return step().map(BenchStep::asks).orElse(List.of()).stream()
                .filter(ask -> !pending.containsKey(ask.code()) && !leftOut.contains(ask.code()))
                .toList();
    }

    /**
     * {@return what an entry makes of this session}
     *
     * <p>An entry is a reading with or without its unit; {@code toward} or {@code away} after the size of a fence move; a word to
     * choose; nothing, to leave a reading out; {@link #DONE}; {@link #UNDO}. A reading that cannot be is asked about and not
     * taken. One outside its usual range is asked about once, and taken when it is entered again.
     *
     * @param words of one line
     */
    public Reply enter(String words) {
        String line = Objects.requireNonNull(words, "words").strip();
        try {
            return switch (line.toLowerCase(Locale.ROOT)) {
                case UNDO -> undone();
                case DONE -> done();
                case "" -> leavingOut();
                default -> reading(line);
            };
        } catch (Refusal | NoAnswer refused) {
            return asking(String.valueOf(refused.getMessage()));
        }
    }

    /**
     * {@return what a reading makes of this session; as {@link #enter(String)} of its text}
     *
     * @param reading of the question at hand
     */
    public Reply enter(Amount<?> reading) {
        Objects.requireNonNull(reading, "reading");
        Optional<BenchAsk> ask = open().stream().findFirst();
        boolean isAsked = ask.flatMap(one -> one.question().unit())
                .filter(unit -> unit.kind() == (Class<?>) reading.unit().kind())
                .isPresent();
        return isAsked
                ? taken(new Given(ask.get(), Optional.of(reading), ""), reading.toString())
                : asking("No such reading is asked for now. " + whatElse());
    }

    private Reply asking(String sentence) {
        return new Reply(
                new BenchSession(job, pending, leftOut, "", previous, entry),
                "",
                sentence(sentence),
                List.of(),
                List.of());
    }

    private static String sentence(String words) {
        String line = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return line.endsWith(".") || line.endsWith("?") ? line : line + ".";
    }

    private Reply undone() {
        if (!pending.isEmpty()) {
            return reply(
                    new BenchSession(job, Map.of(), leftOut, "", previous, entry), "taken back: " + words(pending));
        }
        if (previous != null) {
            return changed(previous, "taken back: " + entry);
        }
        Optional<BenchRecord.Undone> last = BenchRecord.withoutLast(job);
        if (last.isPresent()) {
            return changed(
                    new BenchSession(last.get().before(), Map.of(), Set.of(), "", null, entry),
                    "taken back: " + last.get().words());
        }
        return asking("There is no entry to take back");
    }

    private Reply done() {
        if (step == null) {
            return asking("All operations are done");
        }
        Optional<BenchAsk> next = open().stream().findFirst();
        if (!pending.isEmpty() && next.isPresent()) {
            return next.get().question().isNeeded() ? leavingOut() : kept(pending, words(pending));
        }
        if (next.filter(ask -> ask.group().equals(BenchStep.MOVE)).isPresent()) {
            return kept(Map.of("moved", new Given(next.get(), Optional.empty(), "as advised")), "moved as advised");
        }
        boolean isToBeSet = step.operation().cutsTheChannel()
                && !job.stages().isDone(Operation.CUT_ROD_CHANNEL)
                && !job.plan().slot().mayCut();
        if (isToBeSet) {
            return asking(
                    "The channel is not to be cut yet: " + job.plan().slot().text(job.style()));
        }
        return finished();
    }

    /** With the operation at hand done, and what comes before it. */
    private Reply finished() {
        BenchStep at = Objects.requireNonNull(step);
        List<String> names = Stream.concat(at.before().stream(), Stream.of(at.operation()))
                .map(Operation::name)
                .toList();
        String words = "done: " + Names.phrase(names);
        return changed(new BenchSession(done(job, names), Map.of(), Set.of(), "", start(), words), words);
    }

    /** With operations done after all that is done or taken as done, so that orders to keep are kept. */
    private static Job done(Job job, List<String> names) {
        return job.done(Stream.concat(job.plan().work().finished().stream().map(Operation::name), names.stream())
                .toList());
    }

    /** This session before the answers that are not kept yet. */
    private BenchSession start() {
        return new BenchSession(job, Map.of(), leftOut, "", previous, entry);
    }

    private Reply leavingOut() {
        Optional<BenchAsk> ask = open().stream().findFirst();
        if (ask.isEmpty()) {
            return asking("Nothing is left to read. " + whatElse());
        }
        if (ask.get().question().isNeeded()) {
            return asking("The " + ask.get().question().words() + " is needed. " + whatElse());
        }
        boolean isFirst = pending.isEmpty();
        Set<String> more = new LinkedHashSet<>(leftOut);
        open().stream()
                .filter(one -> one.code().equals(ask.get().code())
                        || isFirst && one.group().equals(ask.get().group()))
                .forEach(one -> more.add(one.code()));
        BenchSession after = new BenchSession(job, pending, more, "", previous, entry);
        if (after.isWhole(ask.get().group())) {
            return after.kept(pending, words(pending));
        }
        return after.open().isEmpty()
                ? after.finished()
                : reply(after, "left out: " + ask.get().question().words());
    }

    private static String whatElse() {
        return "Enter a reading, done, undo, or end";
    }

    private Reply reading(String line) {
        Optional<BenchAsk> ask = open().stream().findFirst();
        if (ask.isEmpty()) {
            return asking(Words.quoted(line) + " is not understood here. " + whatElse());
        }
        BenchQuestion question = ask.get().question();
        if (question.unit().isEmpty()) {
            if (!question.choices().contains(line.toLowerCase(Locale.ROOT))) {
                return asking(
                        "Enter " + String.join(" or ", question.choices()) + ", but it was " + Words.quoted(line));
            }
            return taken(new Given(ask.get(), Optional.empty(), line.toLowerCase(Locale.ROOT)), line);
        }
        String way = ask.get().group().equals(BenchStep.MOVE) ? way(line) : "";
        String size = way.isEmpty() ? line : line.substring(0, line.length() - way.length());
        return taken(
                new Given(
                        ask.get(),
                        Optional.of(parsed(size.strip(), question.unit().get())),
                        way),
                line);
    }

    private static String way(String line) {
        String small = line.toLowerCase(Locale.ROOT);
        return Stream.of(BenchStep.TOWARD, BenchStep.AWAY)
                .filter(small::endsWith)
                .findFirst()
                .orElse("");
    }

    private static <Q extends Quantity<Q>> Amount<Q> parsed(String text, ShopUnit<Q> unit) {
        boolean isBare = text.chars().noneMatch(c -> Character.isLetter(c) || c == '"' || c == '\'' || c == '%');
        return ShopUnits.parse(isBare ? text + " " + unit.symbol() : text, unit.kind());
    }

    private Reply taken(Given given, String line) {
        BenchAsk ask = given.ask();
        if (given.amount().isPresent()) {
            double value = given.libraryValue();
            if (!ask.isPossible(value)) {
                return asking("The " + ask.question().words() + " cannot be "
                        + given.amount().get() + ". Read it again");
            }
            String doubt = ask.code() + " " + line;
            if (!ask.isUsual(value) && !doubted.equals(doubt)) {
                String sentence = given.words() + " is out of the usual "
                        + ask.question().usual().orElseThrow()
                        + ". Read it again, and enter it once more if it is right";
                return new Reply(
                        new BenchSession(job, pending, leftOut, doubt, previous, entry),
                        "",
                        sentence(sentence),
                        List.of(),
                        List.of());
            }
        }
        Map<String, Given> more = new LinkedHashMap<>(pending);
        more.put(ask.code(), given);
        BenchSession after = new BenchSession(job, more, leftOut, "", previous, entry);
        return after.isWhole(ask.group()) ? after.kept(more, words(more)) : reply(after, given.words());
    }

    private boolean isWhole(String group) {
        return !pending.isEmpty()
                && open().stream().noneMatch(ask -> ask.group().equals(group));
    }

    private static String words(Map<String, Given> given) {
        return given.values().stream().map(Given::words).collect(Collectors.joining(", "));
    }

    /** With the answers of a group in the record. */
    private Reply kept(Map<String, Given> given, String words) {
        BenchStep at = Objects.requireNonNull(step);
        String group = given.values().iterator().next().ask().group();
        Job after;
        try {
            after = BenchRecord.with(job, group, given);
        } catch (Refusal | NoAnswer refused) {
            // Answers that contradict each other are all asked for again.
            return start().asking(String.valueOf(refused.getMessage()));
        }
        Set<String> rest = new LinkedHashSet<>(leftOut);
        at.asks().stream().filter(ask -> ask.group().equals(group)).forEach(ask -> rest.remove(ask.code()));
        BenchSession before = new BenchSession(job, Map.of(), rest, "", previous, entry);
        BenchSession next = new BenchSession(after, Map.of(), rest, "", before, words);
        return changed(
                next.isReadOut(at)
                        ? next.with(done(after, List.of(at.operation().name())))
                        : next,
                words);
    }

    /** True where the operation is still at hand although all of it is read or left out. */
    private boolean isReadOut(BenchStep last) {
        return step().filter(at -> at.operation().equals(last.operation()))
                .filter(at -> !at.asks().isEmpty() && open().isEmpty())
                .isPresent();
    }

    private BenchSession with(Job other) {
        return new BenchSession(other, Map.of(), Set.of(), "", previous, entry);
    }

    private Reply changed(BenchSession after, String words) {
        Plan before = job.plan();
        Plan now = after.job.plan();
        List<Repair> repairs = now.repairs().stream()
                .filter(one -> !before.repairs().contains(one))
                .toList();
        return new Reply(after, words, "", PlanChange.between(before, now), repairs);
    }

    private static Reply reply(BenchSession after, String words) {
        return new Reply(after, words, "", List.of(), List.of());
    }

    /** True for a session of the same job with the same answers that are not kept yet. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BenchSession that
                && job.equals(that.job)
                && pending.equals(that.pending)
                && leftOut.equals(that.leftOut);
    }

    @Override
    public int hashCode() {
        return job.hashCode();
    }

    /** Returns the operation at hand, what to set, what to read, and what is next. */
    @Override
    public String toString() {
        if (step == null) {
            return "Bench session: all operations are done";
        }
        Report report = Report.titled("Bench session: " + settings().title());
        settings().rows().forEach(row -> report.row(row.label(), row.value()));
        List<String> asked = new ArrayList<>();
        questions().forEach(question -> asked.add(question.words()));
        report.row("read", asked.isEmpty() ? "nothing: enter done" : String.join(", ", asked));
        then().ifPresent(next -> report.row("then", next.name()));
        return report.toString();
    }
}
