package org.neckgeom.page;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.neckgeom.drawing.Markup;
import org.neckgeom.form.RenderedAnswer;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.shop.Caution;
import org.neckgeom.units.LengthStyle;

/** Writes answers, sections, checks and cautions on a page, each of them the same wherever it is. */
final class PageText {

    private final Markup page;
    private final LengthStyle style;

    /** Cautions that are written with reason and source already: on paper their sentence is enough. */
    private final Set<Caution> seen = new HashSet<>();

    PageText(Markup page, LengthStyle style) {
        this.page = page;
        this.style = style;
    }

    /** Such as {@code OPEN}. */
    static String word(Outcome outcome) {
        return outcome.toString().toUpperCase(Locale.ROOT);
    }

    void check(PlanCheck check) {
        page.open("li", "class", check.outcome().toString());
        page.element("span", word(check.outcome()), "class", "mark");
        page.element("h3", check.name());
        page.open("p");
        page.element("span", check.found(), "class", "found");
        page.element("span", " limit: " + check.allowed(), "class", "quiet");
        page.close();
        page.element("p", check.todo(), "class", "todo");
        page.close();
    }

    /** One after the other, with reasons and sources. */
    void cautions(List<Caution> cautions) {
        if (cautions.isEmpty()) {
            return;
        }
        page.open("ul", "class", "cautions");
        for (Caution caution : cautions) {
            page.open("li").element("strong", caution.text());
            String again = seen.add(caution) ? "quiet" : "quiet again";
            page.element("span", " (" + caution.why() + ") [" + caution.source() + "]", "class", again);
            page.close();
        }
        page.close();
    }

    /** A part of the plan under a heading of a level. */
    void section(PlanSection section, String heading) {
        RenderedAnswer rendered = section.rendered(style);
        page.open("section", "class", "part");
        page.element(heading, rendered.finding());
        rows(rendered.rows());
        rendered.notes().forEach(note -> page.element("p", note.text(), "class", "quiet"));
        page.close();
    }

    void rows(List<RenderedAnswer.Row> rows) {
        if (rows.isEmpty()) {
            return;
        }
        page.open("dl");
        for (RenderedAnswer.Row row : rows) {
            page.open("div").element("dt", row.label()).open("dd");
            answer("first", "", row.answer());
            page.close().close();
        }
        page.close();
    }

    /** The finding, and what belongs to it under it. */
    void answer(String look, String label, RenderedAnswer answer) {
        lines(look, label, answer.finding());
        answer.rows().forEach(row -> answer("more", row.label(), row.answer()));
        answer.notes().forEach(note -> lines("more", "", note.text()));
    }

    private void lines(String look, String label, String text) {
        boolean isFirst = true;
        for (String line : text.lines().toList()) {
            page.open("span", "class", isFirst ? look : "more");
            if (isFirst && !label.isEmpty()) {
                page.element("span", label + " ", "class", "quiet").element("b", line);
            } else {
                page.text(line);
            }
            page.close();
            isFirst = false;
        }
    }
}
