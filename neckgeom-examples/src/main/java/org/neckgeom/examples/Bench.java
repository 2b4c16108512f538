package org.neckgeom.examples;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.text.Words;

/**
 * A session at the bench in a terminal: it asks, takes an entry a line, keeps the record in the neck file whole or not at all,
 * and states what changes in the plan. It reads and prints plain lines, so that pipes do as well as a keyboard.
 */
final class Bench {

    private static final Set<String> END = Set.of("end", "quit", "exit");
    private static final int MOST_CHANGES = 8;

    private static final String HELP = """
              a reading   29.84, 29.84 mm or 1 11/64 in; what has no unit is in the unit asked for
              ENTER       leaves out what may be left out
              done        the step is done: the fence moved as advised, the operation finished
              undo        takes the last entry back
              next        the step at hand with its cautions
              end         ends the session; it goes on from here the next time""";

    private final BenchFile file;
    private final BufferedReader in;
    private final PrintStream out;

    private Bench(BenchFile file, BufferedReader in, PrintStream out) {
        this.file = file;
        this.in = in;
        this.out = out;
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
        return new Bench(BenchFile.at(file), in, out);
    }

    /** Works until the entries end. */
    void work() throws Unwritable {
        OutputFiles.check(List.of(file.path()));
        out.println("BENCH  " + file.session().job().neck().name() + "    (? for help, end to end)");
        String shown = "";
        boolean isOver = false;
        while (!isOver) {
            String step = "\n" + Sheet.of(file.session().job()).toSettings();
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
        out.println(ended(file));
    }

    /** The last line of a session. */
    static String ended(BenchFile file) {
        int kept = file.kept();
        return "ENDED  " + kept + (kept == 1 ? " entry" : " entries") + " kept in "
                + Words.shown(file.path().toString()) + "; the next session goes on from here.";
    }

    private Optional<String> asked() {
        String question = file.session()
                .question()
                .map(BenchQuestion::toString)
                .orElse(
                        file.session().operation().isPresent()
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
            case "next" -> out.print(Sheet.of(file.session().job()).toStep());
            default -> answer(file.enter(line));
        }
    }

    private void answer(BenchFile.Answer answer) {
        switch (answer.fate()) {
            case ASKED -> out.println("?? " + Words.shown(answer.words()));
            case NOTED -> out.println("   " + answer.words());
            case NOT_KEPT -> out.println("?? Not kept: " + Words.shown(answer.words()));
            case KEPT -> {
                out.println("OK " + Words.shown(answer.words()));
                changes(answer.changes());
                answer.repairs().forEach(line -> out.println("   REPAIR  " + Words.shown(line)));
            }
            case CHANGED_MEANWHILE -> {
                out.println("?? Not kept: " + answer.words());
                answer.differences().forEach(line -> out.println("   " + Words.shown(line)));
                out.println("   The session goes on with the file as it is now. Enter it again if it still holds.");
            }
        }
    }

    private void changes(List<BenchFile.Change> changes) {
        if (changes.isEmpty()) {
            out.println("   no check of the plan changes");
        }
        for (BenchFile.Change change : changes.subList(0, Math.min(MOST_CHANGES, changes.size()))) {
            out.println("   " + change.name());
            out.println("      before  " + change.was());
            out.println("      now     " + change.is());
        }
        if (changes.size() > MOST_CHANGES) {
            out.println("   and " + (changes.size() - MOST_CHANGES) + " more checks change");
        }
    }
}
