package org.neckgeom.examples;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.examples.file.TextFile;
import org.neckgeom.examples.neck.NeckFile;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanChange;
import org.neckgeom.text.Words;

/**
 * A session at the bench in a terminal: it asks, takes an entry a line, keeps the record in the neck file whole or not at all,
 * and states what changes in the plan. It reads and prints plain lines, so that pipes do as well as a keyboard.
 */
final class Bench {

    private static final Set<String> END = Set.of("end", "quit", "exit");
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final int MOST_CHANGES = 8;
    private static final int MOST_DIFFERENCES = 20;

    private static final String HELP = """
              a reading   29.84, 29.84 mm or 1 11/64 in; what has no unit is in the unit asked for
              ENTER       leaves out what may be left out
              done        the step is done: the fence moved as advised, the operation finished
              undo        takes the last entry back
              next        the step at hand with its cautions
              end         ends the session; it goes on from here the next time""";

    private final Path file;
    private final BufferedReader in;
    private final PrintStream out;
    private String text;
    private BenchSession session;
    private int kept;

    private Bench(Path file, BufferedReader in, PrintStream out, String text) {
        this.file = file;
        this.in = in;
        this.out = out;
        this.text = text;
        this.session = BenchSession.of(NeckFile.parse(file.toString(), text));
    }

    /**
     * {@return a session that goes on where a neck file stops}
     *
     * @param file on disk
     * @param in entries, one a line
     * @param out answers
     * @throws FileRefused if the file can't be used
     */
    static Bench at(Path file, BufferedReader in, PrintStream out) {
        return new Bench(file, in, out, TextFile.read(file));
    }

    /** Works until the entries end. */
    void work() throws Unwritable {
        OutputFiles.check(List.of(file));
        out.println("BENCH  " + session.job().neck().name() + "    (? for help, end to end)");
        String shown = "";
        boolean isOver = false;
        while (!isOver) {
            String step = "\n" + Sheet.of(session.job()).toSettings();
            if (!step.equals(shown)) {
                out.print(step);
                shown = step;
            }
            Optional<String> line = asked();
            isOver = line.isEmpty() || END.contains(line.get().toLowerCase(Locale.ROOT));
            if (!isOver) {
                enter(line.get());
            }
        }
        out.println();
        out.println("ENDED  " + kept + (kept == 1 ? " entry" : " entries") + " kept in " + Words.shown(file.toString())
                + "; the next session goes on from here.");
    }

    private Optional<String> asked() {
        String question = session.question()
                .map(BenchQuestion::toString)
                .orElse(
                        session.operation().isPresent()
                                ? "nothing to read: enter done when it is done"
                                : "all is done: end");
        out.print("\n" + question + "\n> ");
        out.flush();
        try {
            return Optional.ofNullable(in.readLine()).map(String::strip);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void enter(String line) throws Unwritable {
        switch (line.toLowerCase(Locale.ROOT)) {
            case "?", "help" -> out.println(HELP);
            case "next" -> out.print(Sheet.of(session.job()).toStep());
            default -> answer(session.enter(line));
        }
    }

    private void answer(BenchSession.Reply reply) throws Unwritable {
        if (!reply.isTaken()) {
            session = reply.session();
            out.println("?? " + Words.shown(reply.question()));
            return;
        }
        if (reply.session().job().equals(session.job())) {
            session = reply.session();
            out.println("   " + reply.understood());
            return;
        }
        keep(reply);
    }

    /** The file first: what could not be kept was not entered. */
    private void keep(BenchSession.Reply reply) throws Unwritable {
        Job before = session.job();
        Job after = reply.session().job();
        String fresh = NeckText.with(text, before, after);
        if (!NeckFile.parse(file.toString(), fresh).equals(after)) {
            throw new Unwritable(file + " can't keep this entry: written and read back it is another");
        }
        try {
            write(fresh);
        } catch (ChangedMeanwhile changed) {
            goOnWith(changed.now);
            return;
        } catch (Unwritable sentence) {
            out.println("?? Not kept: " + Words.shown(sentence.getMessage()));
            return;
        }
        text = fresh;
        session = reply.session();
        kept++;
        out.println("OK " + Words.shown(reply.understood()));
        changes(reply.changes());
    }

    private void changes(List<PlanChange> changes) {
        if (changes.isEmpty()) {
            out.println("   no check of the plan changes");
        }
        for (PlanChange change : changes.subList(0, Math.min(MOST_CHANGES, changes.size()))) {
            out.println("   " + change.code());
            out.println("      before  " + change.was());
            out.println("      now     " + change.is());
        }
        if (changes.size() > MOST_CHANGES) {
            out.println("   and " + (changes.size() - MOST_CHANGES) + " more checks change");
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

    private void goOnWith(String now) throws FileRefused {
        out.println("?? Not kept: " + Words.shown(file.toString())
                + " was changed by someone else meanwhile. It stays as it is now:");
        differences(text.lines().toList(), now.lines().toList())
                .forEach(line -> out.println("   " + Words.shown(line)));
        session = BenchSession.of(NeckFile.parse(file.toString(), now));
        text = now;
        out.println("   The session goes on with the file as it is now. Enter it again if it still holds.");
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
