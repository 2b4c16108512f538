package org.neckgeom.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.neckgeom.form.RenderedAnswer;
import org.neckgeom.order.Conflict;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.order.Remedy;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.shop.Caution;
import org.neckgeom.state.Share;
import org.neckgeom.text.Names;

/** The sheet as plain text for a terminal: the page's order, no line longer than 80 characters. */
final class PlainText {

    private static final int MOST_LABEL = 28;

    /** Letters of a bar for all of the variance; a share can be more where others offset it. */
    private static final int BAR = 30;

    private static final String CHECKS = "checks";
    private static final String CAUTIONS = "cautions";

    private final Contents contents;
    private final TextLines out = new TextLines();

    /** Cautions that are written with reason and source already; after that their sentence is enough. */
    private final Set<Caution> seen = new HashSet<>();

    private PlainText(Contents contents) {
        this.contents = contents;
    }

    static String of(Contents contents) {
        return new PlainText(contents).written();
    }

    private String written() {
        out.heading(contents.design().name(), '=');
        out.wrapped("", contents.inOneLine());
        checks();
        cautions();
        contents.sections().forEach(section -> section(section.rendered(contents.style())));
        contents.order().ifPresent(this::order);
        contents.budgets().forEach(this::budget);
        Tables.of(contents).forEach(this::table);
        out.line("").wrapped("", Wording.FRAME);
        return out.toString();
    }

    /** One part of the sheet by its code or title; nothing where there is none. */
    static Optional<String> part(Contents contents, String name) {
        PlainText text = new PlainText(contents);
        String code = Names.code(name);
        if (code.equals(CHECKS)) {
            text.checks();
        } else if (code.equals(CAUTIONS)) {
            text.cautions();
        } else if (List.of(SectionCode.ORDER_OF_WORK.code(), Names.code(SectionCode.ORDER_OF_WORK.toString()))
                .contains(code)) {
            contents.order().ifPresent(text::order);
        } else {
            contents.sections().stream()
                    .filter(section ->
                            List.of(section.code(), Names.code(section.title())).contains(code))
                    .forEach(section -> text.section(section.rendered(contents.style())));
            Tables.of(contents).stream()
                    .filter(table -> Names.code(table.title()).equals(code))
                    .forEach(text::table);
        }
        String written = text.out.toString();
        return written.isEmpty() ? Optional.empty() : Optional.of(written);
    }

    /** The codes of the parts that there are. */
    static List<String> parts(Contents contents) {
        List<String> codes = new ArrayList<>(List.of(CHECKS, CAUTIONS));
        contents.sections().forEach(section -> codes.add(section.code()));
        contents.order().ifPresent(order -> codes.add(SectionCode.ORDER_OF_WORK.code()));
        return codes;
    }

    private void cautions() {
        out.heading("Before the machine runs", '-');
        out.wrapped("", Wording.MACHINE_FIRST);
        for (Caution caution : contents.cautions()) {
            out.wrapped("  * ", inFull(caution));
            seen.add(caution);
        }
    }

    static String inFull(Caution caution) {
        return caution + " [" + caution.source() + "]";
    }

    private void checks() {
        out.heading("Checks", '-');
        if (contents.checks().isEmpty()) {
            out.line("Nothing has been checked yet.");
        }
        for (PlanCheck check : contents.worstFirst()) {
            String mark = check.outcome().toString().toUpperCase(Locale.ROOT);
            out.wrapped(mark + "  ", check.name() + ": " + check.found() + ", limit: " + check.allowed());
            out.wrapped("      ", "Do: " + check.todo());
        }
    }

    private void section(RenderedAnswer section) {
        out.heading(section.finding(), '-');
        int width = Math.min(MOST_LABEL, widest(section.rows()));
        for (RenderedAnswer.Row row : section.rows()) {
            String label = row.label();
            if (label.length() > width) {
                out.wrapped("  ", label);
                label = "";
            }
            answer(lead("  ", label, width), row.answer());
        }
        section.notes().forEach(note -> out.wrapped("  ", note.text()));
    }

    private void order(OrderPlan order) {
        out.heading(SectionCode.ORDER_OF_WORK.toString(), '-');
        if (order.steps().isEmpty()) {
            out.wrapped("", Wording.NO_ORDER);
        }
        if (!contents.settled().done().isEmpty()) {
            out.wrapped("", "Done: " + String.join(", ", contents.settled().done()) + ".");
        }
        for (OrderPlan.Step step : order.steps()) {
            out.wrapped(
                    String.format(Locale.ROOT, "%3d  ", step.number()),
                    step.operation().name());
            if (!step.why().isEmpty()) {
                out.wrapped("     ", step.why());
            }
            for (Remedy remedy : step.remedies()) {
                out.wrapped("     ", remedy.name() + ": " + remedy.how());
            }
            for (Caution caution : step.operation().cautions()) {
                out.wrapped("     * ", seen.add(caution) ? inFull(caution) : caution.text());
            }
        }
        for (Conflict conflict : order.conflicts()) {
            answer("  ! ", conflict.rendered(contents.style()));
        }
    }

    private void budget(BudgetPart part) {
        section(part.rendered(contents.style()));
        for (Share share : part.largest()) {
            String bar = "#".repeat((int) Math.round(BAR * Math.min(1, share.fraction())));
            out.wrapped("  " + String.format(Locale.ROOT, "%7s  ", BudgetPart.text(share)), share.name());
            if (!bar.isEmpty()) {
                out.line(" ".repeat(11) + bar);
            }
        }
    }

    private void table(Tables.Table table) {
        out.heading(table.title(), '-');
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
            out.line(text.toString());
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
        out.lines(lead, answer.finding());
        String indent = " ".repeat(lead.length() + 2);
        int width = widest(answer.rows());
        answer.rows().forEach(row -> answer(lead(indent, row.label(), width), row.answer()));
        answer.notes().forEach(note -> out.lines(indent, note.text()));
    }
}
