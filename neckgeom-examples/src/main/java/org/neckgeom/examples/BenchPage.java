package org.neckgeom.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.neckgeom.drawing.Markup;
import org.neckgeom.examples.BenchFile.Answer;
import org.neckgeom.examples.BenchFile.Change;
import org.neckgeom.examples.BenchFile.Fate;
import org.neckgeom.order.Operation;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.PlanStatus;
import org.neckgeom.shop.Caution;
import org.neckgeom.table.Spelling;

/** The step at hand as one page for a phone: settings, set-up, fields for the readings, the last answer, the record. */
final class BenchPage {

    /** The field with the word that shows that a form is of this page. */
    static final String TOKEN = "form-token";

    /** The field with the turn of the session that a form is of. */
    static final String TURN = "turn";

    /** The field of a button. */
    static final String DO = "do";

    /** The button that keeps the readings. */
    static final String KEEP = "keep";

    /** The field with the way of a fence move. */
    static final String WAY = "fence-way-now";

    /** The question that has a way besides its size. */
    static final String MOVED = "moved";

    private static final int MOST_CHANGES = 8;

    /** The machine's own instructions, and the one that counts most here. */
    private static final int FIRST_CAUTIONS = 2;

    /** Besides the sheet's own style; targets of 44 px and more (WCAG 2.2, success criterion 2.5.5). */
    static final String STYLE = Sheet.style() + """
            h2{margin-top:1.4rem}
            .tally .ok{border:2px solid var(--good);color:var(--good)}
            .now dd{font-size:1.5rem;font-weight:650;line-height:1.25}
            .now dl div{grid-template-columns:none;display:block}
            .answer{border:3px solid var(--good);padding:.6rem .8rem;margin:.8rem 0}
            .answer.asked{border:3px dashed var(--stop)}
            .answer strong{font-size:1.35rem;line-height:1.25}
            .answer dd{font-size:1.1rem}
            label,legend{display:block;font-weight:700;font-size:1.15rem;margin-top:1rem}
            .hint{display:block;color:var(--quiet)}
            .field{display:flex;align-items:center;gap:.6rem}
            input,select,button{font:inherit;min-height:52px;color:var(--text);background:var(--paper);border:2px solid var(--rule);border-radius:0}
            input{font-size:1.7rem;width:9em;max-width:75%;padding:0 .5rem;font-variant-numeric:tabular-nums}
            select{font-size:1.2rem;padding:0 .5rem;max-width:100%}
            input[aria-invalid=true]{border:3px solid var(--stop)}
            button{font-size:1.2rem;font-weight:700;padding:.3rem 1.1rem;margin:1rem .8rem 0 0}
            button.first{background:var(--text);color:var(--paper);border-color:var(--text)}
            :focus-visible{outline:4px solid var(--good);outline-offset:2px}
            summary{min-height:44px;padding:.6rem 0;font-weight:700;cursor:pointer}
            pre{white-space:pre-wrap;font-size:.9rem}
            @media (min-width:52rem){
            main{display:grid;grid-template-columns:1fr 1fr;gap:0 2.2rem;align-items:start}
            .answer,.record{grid-column:1/-1}
            }
            """;

    private final BenchFile file;
    private final BenchSession session;
    private final Job job;
    private final String token;
    private final Optional<Answer> answer;
    private final Map<String, String> typed;
    private final Markup page = new Markup();

    private BenchPage(BenchFile file, String token, Optional<Answer> answer, Map<String, String> typed) {
        this.file = file;
        this.session = file.session();
        this.job = session.job();
        this.token = token;
        this.answer = answer;
        this.typed = typed;
    }

    /**
     * {@return the page of the step at hand}
     *
     * @param file of the session
     * @param token that its forms carry
     * @param answer to the last entry, or nothing
     * @param typed readings that were not taken and stay in their fields
     */
    static String of(BenchFile file, String token, Optional<Answer> answer, Map<String, String> typed) {
        return new BenchPage(file, token, answer, typed).written();
    }

    /** {@return a page with one sentence, and a link to the bench} */
    static String sentence(String title, String words) {
        Markup page = new Markup();
        head(page, title);
        page.open("body").open("main");
        page.element("h1", title).element("p", words);
        page.open("p").element("a", "Go to the bench", "href", "/").close();
        page.close().close().close();
        return "<!DOCTYPE html>\n" + page + "\n";
    }

    private static void head(Markup page, String title) {
        page.open("html", "lang", "en").open("head");
        page.empty("meta", "charset", "utf-8");
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.element("title", title);
        page.open("style").append(STYLE).close();
        page.close();
    }

    private String written() {
        head(page, title() + ": " + job.neck().name());
        page.open("body");
        header();
        page.open("main");
        answer.ifPresent(this::answer);
        now();
        read();
        record();
        page.close();
        footer();
        page.close().close();
        return "<!DOCTYPE html>\n" + page + "\n";
    }

    private String title() {
        return session.settings().title();
    }

    private void header() {
        PlanStatus status = job.plan().status();
        String outcome = status.outcome().toString();
        page.open("header");
        page.element("h1", job.neck().name());
        page.open("ul", "class", "tally");
        page.element("li", outcome.toUpperCase(Locale.ROOT), "class", outcome);
        page.close();
        page.element("p", status.counts());
        page.close();
    }

    private void answer(Answer given) {
        boolean isTaken = given.fate() == Fate.KEPT || given.fate() == Fate.NOTED;
        page.open(
                "section",
                "id",
                "answer",
                "class",
                isTaken ? "answer" : "answer asked",
                "role",
                isTaken ? "status" : "alert");
        page.open("p")
                .element("strong", lead(given.fate()) + given.words(), "id", "answer-words")
                .close();
        repairs(given);
        changes(given);
        if (!given.differences().isEmpty()) {
            page.element("pre", String.join("\n", given.differences()));
            page.element("p", "The session goes on with the file as it is now. Enter it again if it still holds.");
        }
        page.close();
    }

    private static String lead(Fate fate) {
        return switch (fate) {
            case KEPT -> "OK: ";
            case NOTED -> "Noted: ";
            case ASKED -> "";
            case NOT_KEPT, CHANGED_MEANWHILE -> "Not kept: ";
        };
    }

    private void repairs(Answer given) {
        if (given.repairs().isEmpty()) {
            return;
        }
        page.element("p", "Out of its limit. What can be done, the least harm first:");
        page.open("ol");
        given.repairs().forEach(line -> page.element("li", line));
        page.close();
    }

    private void changes(Answer given) {
        List<Change> changes = given.changes();
        if (changes.isEmpty()) {
            if (given.fate() == Fate.KEPT) {
                page.element("p", "No check of the plan changes.");
            }
            return;
        }
        page.element("p", "In the whole plan:");
        page.open("dl");
        for (Change change : changes.subList(0, Math.min(MOST_CHANGES, changes.size()))) {
            page.open("div").element("dt", change.name()).open("dd");
            page.element("span", "before: " + change.was(), "class", "more quiet");
            page.open("span", "class", "more")
                    .element("b", "now: " + change.is())
                    .close();
            page.close().close();
        }
        page.close();
        if (changes.size() > MOST_CHANGES) {
            page.element("p", "And " + (changes.size() - MOST_CHANGES) + " more checks change.");
        }
    }

    private void now() {
        page.open("section", "class", "now", "aria-labelledby", "now");
        page.element("h2", title(), "id", "now");
        page.open("dl");
        for (PlanSection.Row row : session.settings().rows()) {
            page.open("div")
                    .element("dt", row.label())
                    .element("dd", row.value())
                    .close();
        }
        if (!session.before().isEmpty()) {
            String names = session.before().stream().map(Operation::name).collect(Collectors.joining(", "));
            page.open("div").element("dt", "before it").element("dd", names).close();
        }
        page.close();
        String setUp = Sheet.of(job).toSetUp();
        if (!setUp.isEmpty()) {
            page.open("figure").append("\n" + setUp + "\n").close();
        }
        cautions();
        page.close();
    }

    private void cautions() {
        List<Caution> cautions = session.cautions();
        if (cautions.isEmpty()) {
            return;
        }
        page.element("h3", "Mind");
        cautions.stream()
                .limit(FIRST_CAUTIONS)
                .forEach(caution ->
                        page.open("p").element("strong", caution.text() + ".").close());
        if (cautions.size() > FIRST_CAUTIONS) {
            page.open("details").element("summary", "All " + cautions.size() + " cautions of this step");
            page.open("ul");
            for (Caution caution : cautions) {
                page.open("li").element("b", caution.text() + ".");
                page.element("span", " (" + caution.why() + ") [" + caution.source() + "]", "class", "quiet");
                page.close();
            }
            page.close().close();
        }
    }

    private void read() {
        page.open("section", "aria-labelledby", "read");
        boolean isOver = session.operation().isEmpty();
        List<BenchQuestion> questions = session.questions();
        page.element("h2", isOver ? "All is done" : questions.isEmpty() ? "Nothing to read" : "Read", "id", "read");
        if (!isOver) {
            form();
            questions.forEach(this::field);
            if (!questions.isEmpty()) {
                page.element("button", "Keep the readings", "class", "first", "name", DO, "value", KEEP);
            }
            if (canBeDone()) {
                page.element("button", doneWords(), "name", DO, "value", BenchSession.DONE);
            }
            page.close();
        }
        session.then().ifPresent(next -> page.element("p", "Then: " + next.name() + "."));
        page.close();
    }

    private void form() {
        page.open("form", "method", "post", "action", "/", "autocomplete", "off");
        page.empty("input", "type", "hidden", "name", TOKEN, "value", token);
        page.empty("input", "type", "hidden", "name", TURN, "value", Integer.toString(file.turn()));
    }

    /** Not while the channel may not be cut. */
    private boolean canBeDone() {
        return isMove()
                || job.plan().slot().mayCut()
                || session.operation()
                        .filter(at -> at.cutsTheChannel()
                                && !job.plan().work().finished().contains(at))
                        .isEmpty();
    }

    private boolean isMove() {
        return session.question()
                .filter(question -> question.code().equals(MOVED))
                .isPresent();
    }

    private String doneWords() {
        return isMove()
                ? "Moved as advised"
                : "Done: " + session.operation().orElseThrow().name();
    }

    private void field(BenchQuestion question) {
        String code = question.code();
        String value = typed.getOrDefault(code, "");
        page.element("label", capital(question.words()), "for", code);
        String hint = hint(question);
        page.element("span", hint, "class", "hint", "id", code + "-hint");
        if (question.unit().isEmpty()) {
            choices(code, value, question.choices(), code + "-hint");
            return;
        }
        List<String> attributes = new ArrayList<>(
                List.of("id", code, "name", code, "value", value, "inputmode", "decimal", "maxlength", "60"));
        boolean isAsked = answer.filter(
                        given -> given.fate() == Fate.ASKED && given.at().equals(code))
                .isPresent();
        attributes.addAll(List.of("aria-describedby", isAsked ? "answer-words " + code + "-hint" : code + "-hint"));
        if (isAsked) {
            attributes.addAll(List.of("aria-invalid", "true", "autofocus", "autofocus"));
        }
        page.open("div", "class", "field");
        page.empty("input", attributes.toArray(String[]::new));
        page.element("span", question.unit().get().symbol());
        page.close();
        if (code.equals(MOVED)) {
            page.element("label", "Which way", "for", WAY);
            choices(WAY, typed.getOrDefault(WAY, ""), List.of("", "toward", "away"), code + "-hint");
        }
    }

    private static String hint(BenchQuestion question) {
        List<String> parts = new ArrayList<>();
        question.usual().ifPresent(range -> parts.add("usually " + range));
        if (!question.isNeeded()) {
            parts.add("may be left out");
        }
        return parts.isEmpty() ? "choose one" : String.join("; ", parts);
    }

    private void choices(String name, String value, List<String> choices, String hint) {
        page.open("select", "id", name, "name", name, "aria-describedby", hint);
        for (String choice : choices) {
            String words =
                    choice.isEmpty() ? "as advised" : choice + (choice.equals("away") ? " from" : "") + " the cutter";
            if (choice.equals(value)) {
                page.element("option", words, "value", choice, "selected", "selected");
            } else {
                page.element("option", words, "value", choice);
            }
        }
        page.close();
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void record() {
        page.open("section", "class", "record", "aria-labelledby", "record");
        page.element("h2", "Record so far", "id", "record");
        List<String> lines = new ArrayList<>();
        Map<?, ?> keys = (Map<?, ?>)
                Objects.requireNonNull(Job.TABLE.write(job, Spelling.WORDS).plain());
        if (keys.get("trial cuts") instanceof List<?> steps) {
            steps.forEach(step -> lines.add(inLine(step)));
        }
        if (keys.get("measured") instanceof Map<?, ?> readings) {
            readings.forEach((key, value) -> lines.add(key + " " + inLine(value)));
        }
        if (lines.isEmpty()) {
            page.element("p", "Nothing is read yet.");
        } else {
            page.open("ol");
            lines.forEach(line -> page.element("li", line));
            page.close();
        }
        List<Operation> done = job.plan().work().finished();
        if (!done.isEmpty()) {
            page.element("p", "Done: " + done.stream().map(Operation::name).collect(Collectors.joining(", ")) + ".");
        }
        if (session.canUndo()) {
            form();
            page.element("button", "Take the last entry back", "name", DO, "value", BenchSession.UNDO);
            page.close();
        }
        page.close();
    }

    /** As the neck file has it. */
    private static String inLine(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream()
                    .map(one -> one.getKey() + " " + inLine(one.getValue()))
                    .collect(Collectors.joining(", "));
        }
        if (value instanceof List<?> list) {
            return list.stream().map(BenchPage::inLine).collect(Collectors.joining("; "));
        }
        return String.valueOf(value);
    }

    private void footer() {
        page.open("footer");
        page.element(
                "p",
                "Kept in " + file.path().getFileName()
                        + ". Ctrl-C in the terminal ends the session; the next one goes on from here.",
                "class",
                "quiet");
        page.close();
    }
}
