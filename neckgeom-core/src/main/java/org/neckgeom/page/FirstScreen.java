package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.CheckCode;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.Plan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.shop.Caution;

/** The least that a maker has to see, on one screen: verdict, the step at hand with its settings, what is open, what is spare. */
final class FirstScreen {

    /** So that a caller has room for its own lines on a screen of 24. */
    static final int MOST_LINES = 22;

    private static final int MOST_CAUTIONS = 5;
    private static final String BEFORE = "before it";
    private static final String MACHINE_FIRST = "MACHINE_FIRST";

    private FirstScreen() {}

    static String of(Job job) {
        BenchSession session = BenchSession.of(job);
        List<String> lines = new ArrayList<>(head(job));
        lines.addAll(now(session));
        List<PlanCheck> open = open(job.plan());
        List<String> mind = mind(session);
        List<String> spare = spare(job.plan());
        int room = MOST_LINES - lines.size();
        // Why not to cut comes before a caution, and a caution before what is spare.
        boolean isStop = !open.isEmpty() && open.get(0).outcome() == Outcome.STOP;
        int stop = isStop ? finding(open.get(0)).size() : 0;
        int least = stop + (open.size() > (isStop ? 1 : 0) ? 1 : 0);
        boolean isMinded = mind.size() <= room - Math.max(least, open.isEmpty() ? 0 : 2);
        if (spare.size() > room - least - (isMinded ? mind.size() : 0)) {
            spare = List.of();
        }
        lines.addAll(isMinded ? mind : List.of());
        lines.addAll(open(open, session, MOST_LINES - lines.size() - spare.size()));
        lines.addAll(spare);
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private static List<String> head(Job job) {
        TextLines text = new TextLines();
        String what = job.plan().frets().frets().size() - 1 + " frets, body at fret "
                + job.neck().bodyAtFret();
        String name = job.neck().name();
        int room = TextLines.WIDTH - name.length() - what.length();
        text.line(room >= 2 ? name + " ".repeat(room) + what : cut(name));
        String outcome = job.plan().status().outcome().toString().toUpperCase(Locale.ROOT);
        text.wrapped("VERDICT  ", outcome + ": " + job.plan().status().counts());
        return text.list();
    }

    private static String cut(String line) {
        return line.length() <= TextLines.WIDTH ? line : line.substring(0, TextLines.WIDTH - 3) + "...";
    }

    private static List<String> now(BenchSession session) {
        PlanSection settings = session.settings();
        TextLines text = new TextLines().line("").line(cut("NOW  " + settings.title()));
        rows(text, session);
        return text.list();
    }

    /** What to set, what to read, what comes before it. */
    private static void rows(TextLines text, BenchSession session) {
        PlanSection settings = session.settings();
        String read = session.questions().stream().map(BenchQuestion::words).collect(Collectors.joining(", "));
        String before = session.before().stream().map(Operation::name).collect(Collectors.joining(", "));
        int width = Math.max(width(settings), BEFORE.length());
        settings(text, settings, width);
        if (!read.isEmpty()) {
            text.wrapped(lead("read", width), read);
        }
        if (!before.isEmpty()) {
            text.wrapped(lead(BEFORE, width), before);
        }
    }

    private static String lead(String label, int width) {
        return "  " + label + " ".repeat(width - label.length() + 2);
    }

    private static List<String> mind(BenchSession session) {
        return session.cautions().stream()
                .filter(caution -> !caution.code().equals(MACHINE_FIRST))
                .findFirst()
                .map(caution -> new TextLines()
                        .wrapped("  MIND  ", caution.text() + ".")
                        .list())
                .orElse(List.of());
    }

    private static List<PlanCheck> open(Plan plan) {
        List<PlanCheck> open = new ArrayList<>();
        for (Outcome outcome : List.of(Outcome.STOP, Outcome.OPEN)) {
            plan.checks().stream().filter(check -> check.outcome() == outcome).forEach(open::add);
        }
        return open;
    }

    /** As many as there is room for, each with what to do where there is room for that. */
    private static List<String> open(List<PlanCheck> open, BenchSession session, int room) {
        List<List<String>> shown = new ArrayList<>();
        int left = room;
        for (PlanCheck check : open) {
            List<String> lines = finding(check);
            boolean isFirstStop = shown.isEmpty() && check.outcome() == Outcome.STOP;
            int kept = shown.size() + 1 < open.size() && !isFirstStop ? 1 : 0;
            if (lines.size() > left - kept) {
                break;
            }
            shown.add(new ArrayList<>(lines));
            left -= lines.size();
        }
        boolean isMore = shown.size() < open.size();
        left -= isMore ? 1 : 0;
        for (int i = 0; i < shown.size(); i++) {
            if (isAtHand(open.get(i), session)) {
                continue;
            }
            List<String> todo =
                    new TextLines().wrapped("      Do: ", open.get(i).todo()).list();
            if (todo.size() <= left) {
                shown.get(i).addAll(todo);
                left -= todo.size();
            }
        }
        List<String> lines = new ArrayList<>();
        shown.forEach(lines::addAll);
        if (isMore && left >= 0) {
            lines.add("      and " + (open.size() - shown.size()) + " more of "
                    + session.job().plan().status().checks() + " checks");
        }
        return lines;
    }

    private static List<String> finding(PlanCheck check) {
        String mark = check.outcome().toString().toUpperCase(Locale.ROOT);
        return new TextLines()
                .wrapped(mark + "  ", check.name() + ": " + check.found() + ", limit: " + check.allowed())
                .list();
    }

    /** What the step at hand is for is stated above already. */
    private static boolean isAtHand(PlanCheck check, BenchSession session) {
        return check.code() == CheckCode.CHANNEL_CENTRED
                && session.operation().filter(Operation::cutsTheChannel).isPresent();
    }

    private static List<String> spare(Plan plan) {
        String spare = plan.spare().rows().stream()
                .map(row -> row.label() + " " + row.value())
                .collect(Collectors.joining("; "));
        return spare.isEmpty()
                ? List.of()
                : new TextLines().wrapped("SPARE  ", spare).list();
    }

    /** What to set for the step at hand. */
    static String settings(Job job) {
        PlanSection settings = BenchSession.of(job).settings();
        TextLines text = new TextLines().heading(settings.title(), '=');
        settings(text, settings, width(settings));
        return text.toString();
    }

    private static int width(PlanSection settings) {
        return settings.rows().stream()
                .mapToInt(row -> row.label().length())
                .max()
                .orElse(0);
    }

    private static void settings(TextLines text, PlanSection settings, int width) {
        settings.rows().forEach(row -> text.lines(lead(row.label(), width), row.value()));
    }

    /** The step at hand in full: settings, readings with their usual ranges, cautions with their reasons. */
    static String step(Job job) {
        BenchSession session = BenchSession.of(job);
        TextLines text = new TextLines().heading(session.settings().title(), '=');
        rows(text, session);
        if (!session.questions().isEmpty()) {
            text.heading("Read", '-');
            session.questions().forEach(question -> text.wrapped("  * ", question.toString()));
        }
        if (!session.cautions().isEmpty()) {
            text.heading("Mind", '-');
            text.wrapped("", Wording.MACHINE_FIRST);
            List<Caution> cautions = session.cautions().stream()
                    .filter(caution -> !caution.code().equals(MACHINE_FIRST))
                    .toList();
            cautions.stream().limit(MOST_CAUTIONS).forEach(caution -> text.wrapped("  * ", PlainText.inFull(caution)));
            if (cautions.size() > MOST_CAUTIONS) {
                text.line("  and " + (cautions.size() - MOST_CAUTIONS) + " more in the plan's cautions");
            }
        }
        session.then().ifPresent(next -> text.line("").line("Then: " + next.name()));
        return text.toString();
    }
}
