package org.neckgeom.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.StringTokenizer;
import org.neckgeom.channel.Caution;
import org.neckgeom.form.RenderedAnswer;
import org.neckgeom.order.Conflict;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.order.Remedy;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.state.Share;

/** The sheet as plain text for a terminal: the page's order, no line longer than 80 characters unless one word is. */
final class PlainText {

    static final int WIDTH = 80;
    private static final int MOST_LABEL = 28;
    private static final int MOST_INDENT = 44;

    private final Contents contents;
    private final StringBuilder out = new StringBuilder();

    /** Cautions that are written with reason and source already; after that their sentence is enough. */
    private final Set<Caution> seen = new HashSet<>();

    private PlainText(Contents contents) {
        this.contents = contents;
    }

    static String of(Contents contents) {
        return new PlainText(contents).written();
    }

    private String written() {
        heading(contents.design().name(), '=');
        wrapped("", contents.inOneLine());
        checks();
        heading("Before the machine runs", '-');
        wrapped("", Wording.MACHINE_FIRST);
        for (Caution caution : contents.cautions()) {
            wrapped("  * ", inFull(caution));
            seen.add(caution);
        }
        contents.sections().forEach(section -> section(section.rendered(contents.style())));
        contents.order().ifPresent(this::order);
        contents.budgets().forEach(this::budget);
        Tables.of(contents).forEach(this::table);
        out.append('\n');
        wrapped("", Wording.FRAME);
        return out.toString();
    }

    private static String inFull(Caution caution) {
        return caution + " [" + caution.source() + "]";
    }

    private void heading(String title, char under) {
        if (out.length() > 0) {
            out.append('\n');
        }
        String line = title.strip();
        out.append(line).append('\n');
        out.append(String.valueOf(under).repeat(Math.min(WIDTH, Math.max(1, line.length()))))
                .append('\n');
    }

    private void checks() {
        heading("Checks", '-');
        if (contents.checks().isEmpty()) {
            out.append("Nothing has been checked yet.\n");
        }
        for (PlanCheck check : contents.worstFirst()) {
            String mark = check.outcome().toString().toUpperCase(Locale.ROOT);
            wrapped(mark + "  ", check.name() + ": " + check.found() + ", limit: " + check.allowed());
            wrapped("      ", "Do: " + check.todo());
        }
    }

    private void section(RenderedAnswer section) {
        heading(section.finding(), '-');
        int width = Math.min(MOST_LABEL, widest(section.rows()));
        for (RenderedAnswer.Row row : section.rows()) {
            String label = row.label();
            if (label.length() > width) {
                wrapped("  ", label);
                label = "";
            }
            answer(lead("  ", label, width), row.answer());
        }
        section.notes().forEach(note -> wrapped("  ", note.text()));
    }

    private void order(OrderPlan order) {
        heading(SectionCode.ORDER_OF_WORK.toString(), '-');
        if (order.steps().isEmpty()) {
            wrapped("", Wording.NO_ORDER);
        }
        if (!contents.settled().done().isEmpty()) {
            wrapped("", "Done: " + String.join(", ", contents.settled().done()) + ".");
        }
        for (OrderPlan.Step step : order.steps()) {
            wrapped(
                    String.format(Locale.ROOT, "%3d  ", step.number()),
                    step.operation().name());
            if (!step.why().isEmpty()) {
                wrapped("     ", step.why());
            }
            for (Remedy remedy : step.remedies()) {
                wrapped("     ", remedy.name() + ": " + remedy.how());
            }
            for (Caution caution : step.operation().cautions()) {
                wrapped("     * ", seen.add(caution) ? inFull(caution) : caution.text());
            }
        }
        for (Conflict conflict : order.conflicts()) {
            answer("  ! ", conflict.rendered(contents.style()));
        }
    }

    private void budget(BudgetPart part) {
        section(part.rendered(contents.style()));
        for (Share share : part.largest()) {
            String bar = "#".repeat((int) Math.round(30 * share.fraction()));
            wrapped("  " + String.format(Locale.ROOT, "%7s  ", BudgetPart.text(share)), share.name());
            if (!bar.isEmpty()) {
                out.append(" ".repeat(11)).append(bar).append('\n');
            }
        }
    }

    private void table(Tables.Table table) {
        heading(table.title(), '-');
        List<List<String>> lines = new ArrayList<>();
        lines.add(table.heads());
        lines.addAll(table.rows());
        int columns = table.heads().size();
        int[] widths = new int[columns];
        for (List<String> line : lines) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], line.get(i).length());
            }
        }
        for (List<String> line : lines) {
            StringBuilder text = new StringBuilder(" ");
            for (int i = 0; i < columns; i++) {
                String pad = " ".repeat(widths[i] - line.get(i).length());
                text.append(' ').append(i == 0 ? line.get(i) + pad : " " + pad + line.get(i));
            }
            out.append(text.toString().stripTrailing()).append('\n');
        }
    }

    private static int widest(List<RenderedAnswer.Row> rows) {
        return rows.stream().mapToInt(row -> row.label().length()).max().orElse(0);
    }

    private static String lead(String indent, String label, int width) {
        return indent + label + " ".repeat(width - label.length() + 2);
    }

    /** Writes the finding of an answer after a lead, and under it what belongs to it. */
    private void answer(String lead, RenderedAnswer answer) {
        lines(lead, answer.finding());
        String indent = " ".repeat(lead.length() + 2);
        int width = widest(answer.rows());
        answer.rows().forEach(row -> answer(lead(indent, row.label(), width), row.answer()));
        answer.notes().forEach(note -> lines(indent, note.text()));
    }

    private void lines(String first, String text) {
        String lead = first;
        for (String line : text.lines().toList()) {
            wrapped(lead, line);
            lead = " ".repeat(first.length());
        }
    }

    /** Writes a sentence after a lead, further lines indented under its first word, or less where that leaves no room. */
    private void wrapped(String lead, String sentence) {
        String indent = " ".repeat(Math.min(MOST_INDENT, lead.length()));
        StringBuilder line = new StringBuilder(lead);
        boolean empty = true;
        StringTokenizer words = new StringTokenizer(sentence.strip());
        while (words.hasMoreTokens()) {
            String word = words.nextToken();
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                out.append(line).append('\n');
                line.setLength(0);
                line.append(indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }
}
