package org.neckgeom.examples;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.examples.file.TextFile;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanChange;
import org.neckgeom.plan.Repair;
import org.neckgeom.text.Words;

/**
 * A session at the bench over a neck file: what is entered is kept in the file whole or not at all, and a file that someone else
 * has changed meanwhile is never overwritten. Terminal and page are shells over it. One entry at a time.
 */
final class BenchFile {

    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final int MOST_DIFFERENCES = 20;

    /** What became of an entry. */
    enum Fate {
        /** It cannot be taken: the session stays, the words ask. */
        ASKED,
        /** It is taken, and more of the step is to be read before anything is kept. */
        NOTED,
        /** It is in the file. */
        KEPT,
        /** It could not be written: the words say why. */
        NOT_KEPT,
        /** The file was changed by someone else: the session goes on with it, without the entry. */
        CHANGED_MEANWHILE
    }

    /**
     * A check of the plan that an entry changes.
     *
     * @param name of the check
     * @param was how it was decided and what was found before
     * @param is the same now
     */
    record Change(String name, String was, String is) {}

    /**
     * The answer to an entry.
     *
     * @param fate of the entry
     * @param words what was understood, or asked, or is in the way
     * @param at the code of the question that the words are about; empty where it is none
     * @param changes checks of the plan that change
     * @param repairs ways back from what was read out of its limit, of each reading the least harm first
     * @param differences lines of the file that someone else has changed
     */
    record Answer(
            Fate fate, String words, String at, List<Change> changes, List<String> repairs, List<String> differences) {}

    private final Path file;
    private final Staging.Step step;
    private final Map<String, String> doubted = new LinkedHashMap<>();
    private String text;
    private BenchSession session;
    private int kept;
    private int turn;

    private BenchFile(Path file, String text, Staging.Step step) {
        this.file = file;
        this.text = text;
        this.step = step;
        this.session = BenchSession.of(NeckFile.parse(file.toString(), text));
    }

    /**
     * {@return a session that goes on where a neck file stops}
     *
     * @param file on disk
     * @throws FileRefused if the file can't be used
     */
    static BenchFile at(Path file) {
        return at(file, Staging.Step.UNBROKEN);
    }

    /** The same, with what is done before each step of keeping an entry. */
    static BenchFile at(Path file, Staging.Step step) {
        return new BenchFile(file, TextFile.read(file), step);
    }

    Path path() {
        return file;
    }

    synchronized BenchSession session() {
        return session;
    }

    /** How many entries are kept. */
    synchronized int kept() {
        return kept;
    }

    /** A number that is another whenever the session is: what was shown of an earlier one no longer holds. */
    synchronized int turn() {
        return turn;
    }

    /** One entry, as the session understands it. */
    synchronized Answer enter(String line) throws Unwritable {
        BenchSession.Reply reply = session.enter(line);
        if (!reply.isTaken()) {
            session = reply.session();
            return asked(reply.question(), "");
        }
        return taken(reply.session(), reply.understood(), changes(List.of(reply)), repairs(List.of(reply)));
    }

    /**
     * The readings of a form, all of them or none. A question without a reading is left out where a later one of the form has
     * its reading, or where it completes what was read; else it stays open.
     *
     * @param readings by the codes of questions
     */
    synchronized Answer enter(Map<String, String> readings) throws Unwritable {
        Form form = new Form(readings);
        Optional<Answer> question = form.read();
        return question.isPresent()
                ? question.get()
                : taken(form.at, form.words(), changes(form.replies), repairs(form.replies));
    }

    /** Readings as they are entered one after the other, before any of them counts. */
    private final class Form {

        private final Map<String, String> open = new LinkedHashMap<>();
        private final List<BenchSession.Reply> replies = new ArrayList<>();
        private BenchSession at = session;

        Form(Map<String, String> readings) {
            readings.forEach((code, line) -> {
                if (!line.isBlank()) {
                    open.put(code, line.strip());
                }
            });
        }

        /** Nothing where all is taken. */
        Optional<Answer> read() {
            if (open.isEmpty()) {
                return Optional.of(asked("Enter a reading first.", code()));
            }
            while (!open.isEmpty() && at.question().isPresent()) {
                String code = code();
                Optional<Answer> question = entered(code, Optional.ofNullable(open.remove(code)));
                if (question.isPresent()) {
                    return question;
                }
            }
            if (!open.isEmpty()) {
                return Optional.of(asked("No such reading is asked for now.", ""));
            }
            return isWhole() ? Optional.empty() : entered(code(), Optional.of(BenchSession.DONE));
        }

        private String code() {
            return at.question().map(BenchQuestion::code).orElse("");
        }

        /** False where readings wait for others of their group. */
        private boolean isWhole() {
            int last = replies.size() - 1;
            Job before = last > 0 ? replies.get(last - 1).session().job() : session.job();
            return !before.equals(replies.get(last).session().job());
        }

        private Optional<Answer> entered(String code, Optional<String> reading) {
            String line = reading.orElse("");
            if (line.isEmpty() && at.question().filter(BenchQuestion::isNeeded).isPresent()) {
                return Optional.of(asked("The " + at.question().get().words() + " is needed. Nothing was kept.", code));
            }
            BenchSession.Reply reply = at.enter(line);
            if (!reply.isTaken() && line.equals(doubted.get(code))) {
                reply = reply.session().enter(line);
            }
            if (!reply.isTaken()) {
                reading.ifPresent(doubtful -> doubted.put(code, doubtful));
                return Optional.of(asked(reply.question(), code));
            }
            replies.add(reply);
            at = reply.session();
            return Optional.empty();
        }

        String words() {
            List<String> words = new ArrayList<>();
            Job before = session.job();
            for (BenchSession.Reply reply : replies) {
                if (!reply.session().job().equals(before)) {
                    words.add(reply.understood());
                }
                before = reply.session().job();
            }
            return String.join("; ", words);
        }
    }

    private static Answer asked(String question, String code) {
        return new Answer(Fate.ASKED, question, code, List.of(), List.of(), List.of());
    }

    /** Each check once: as it was before the first reply, and as it is after the last. */
    private static List<Change> changes(List<BenchSession.Reply> replies) {
        Map<String, Change> changes = new LinkedHashMap<>();
        for (BenchSession.Reply reply : replies) {
            for (PlanChange change : reply.changes()) {
                changes.merge(
                        change.code().toString(),
                        new Change(change.code().toString(), change.was(), change.is()),
                        (first, last) -> new Change(first.name(), first.was(), last.is()));
            }
        }
        return changes.values().stream()
                .filter(change -> !change.was().equals(change.is()))
                .toList();
    }

    /** What can be done about what was read out of its limit, as far as it is possible. */
    private static List<String> repairs(List<BenchSession.Reply> replies) {
        return replies.stream()
                .flatMap(reply -> reply.repairs().stream())
                .filter(Repair::isPossible)
                .map(one -> one.reading() + ": " + one.code() + ". " + one.how())
                .distinct()
                .toList();
    }

    /** The file first: what could not be kept was not entered. */
    private Answer taken(BenchSession after, String understood, List<Change> changes, List<String> repairs)
            throws Unwritable {
        Fate fate = Fate.NOTED;
        if (!after.job().equals(session.job())) {
            String fresh = NeckText.with(text, session.job(), after.job());
            if (!NeckFile.parse(file.toString(), fresh).equals(after.job())) {
                throw new Unwritable(file + " can't keep this entry: written and read back it is another");
            }
            try {
                write(fresh);
            } catch (ChangedMeanwhile changed) {
                return goOnWith(changed.now);
            } catch (Unwritable sentence) {
                return new Answer(Fate.NOT_KEPT, sentence.getMessage(), "", List.of(), List.of(), List.of());
            }
            text = fresh;
            kept++;
            fate = Fate.KEPT;
        }
        goOn(after);
        return new Answer(fate, understood, "", changes, repairs, List.of());
    }

    private void goOn(BenchSession after) {
        session = after;
        doubted.clear();
        turn++;
    }

    /**
     * Looks whether the file is as this session has left it, and goes on with it where it is not.
     *
     * @throws FileRefused if it can't be used any more
     */
    synchronized Optional<Answer> look() {
        try {
            same();
            return Optional.empty();
        } catch (ChangedMeanwhile changed) {
            return Optional.of(goOnWith(changed.now));
        }
    }

    /** The file as someone else has written it. */
    private static final class ChangedMeanwhile extends IOException {

        private static final long serialVersionUID = 1L;

        private final String now;

        ChangedMeanwhile(String now) {
            super("changed meanwhile");
            this.now = now;
        }
    }

    /** Looked at before anything is written, and once more when all is ready to take its place. */
    private void write(String fresh) throws Unwritable, ChangedMeanwhile {
        try {
            same();
            OutputFiles.write(
                    Map.of(file, fresh.getBytes(StandardCharsets.UTF_8)),
                    what -> {
                        step.before(what);
                        if (what.startsWith("move ")) {
                            same();
                        }
                    },
                    PATIENCE);
        } catch (Unwritable sentence) {
            if (sentence.getCause() instanceof ChangedMeanwhile changed) {
                throw changed;
            }
            throw sentence;
        }
    }

    private void same() throws ChangedMeanwhile {
        String now;
        try {
            now = Files.exists(file) ? TextFile.read(file) : "";
        } catch (FileRefused unreadable) {
            now = "";
        }
        if (!now.equals(text)) {
            throw new ChangedMeanwhile(now);
        }
    }

    private Answer goOnWith(String now) throws FileRefused {
        List<String> differences =
                differences(text.lines().toList(), now.lines().toList());
        goOn(BenchSession.of(NeckFile.parse(file.toString(), now)));
        text = now;
        return new Answer(
                Fate.CHANGED_MEANWHILE,
                Words.shown(file.toString()) + " was changed by someone else meanwhile. It stays as it is now:",
                "",
                List.of(),
                List.of(),
                differences);
    }

    /** Lines that went, with a minus, and lines that came, with a plus, between what is the same at both ends. */
    static List<String> differences(List<String> before, List<String> now) {
        int most = Math.min(before.size(), now.size());
        int head = 0;
        while (head < most && before.get(head).equals(now.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < most - head && before.get(before.size() - 1 - tail).equals(now.get(now.size() - 1 - tail))) {
            tail++;
        }
        List<String> lines = new ArrayList<>();
        before.subList(head, before.size() - tail).forEach(line -> lines.add("- " + line));
        now.subList(head, now.size() - tail).forEach(line -> lines.add("+ " + line));
        if (lines.size() <= MOST_DIFFERENCES) {
            return lines;
        }
        List<String> some = new ArrayList<>(lines.subList(0, MOST_DIFFERENCES));
        some.add("and " + (lines.size() - MOST_DIFFERENCES) + " more lines differ");
        return some;
    }
}
