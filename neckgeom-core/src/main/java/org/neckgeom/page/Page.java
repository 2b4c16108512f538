package org.neckgeom.page;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.neckgeom.drawing.Markup;
import org.neckgeom.drawing.PaperSet;
import org.neckgeom.form.RenderedAnswer;
import org.neckgeom.order.Conflict;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.order.Remedy;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.shop.Caution;

/** The sheet as one page: checks first, then cautions, settings, drawings, tables. */
final class Page {

    private final Contents contents;
    private final Markup page = new Markup();

    /** Cautions that are written with reason and source already; after that their sentence is enough. */
    private final Set<Caution> seen = new HashSet<>();

    private Page(Contents contents) {
        this.contents = contents;
    }

    static String of(Contents contents) {
        return new Page(contents).written();
    }

    private String written() {
        page.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en");
        page.open("head");
        page.empty("meta", "charset", "utf-8");
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.element("title", contents.design().name() + ": neck plan");
        page.open("style").append("\n").append(Style.sheet()).close();
        page.close().open("body");
        header();
        page.open("main");
        checks();
        cautions();
        settings();
        contents.order().ifPresent(this::order);
        budgets();
        drawings();
        tables();
        page.close();
        footer();
        page.close().close();
        return "<!DOCTYPE html>\n" + page + "\n";
    }

    private void header() {
        page.open("header");
        page.element("h1", contents.design().name());
        page.element("p", contents.inOneLine());
        page.open("ul", "class", "tally");
        for (Outcome outcome : Contents.WORST_FIRST) {
            if (contents.count(outcome) > 0) {
                page.element("li", contents.count(outcome) + " " + word(outcome), "class", outcome.toString());
            }
        }
        page.close();
        page.open("nav", "aria-label", "On this sheet");
        page.element("a", "Checks", "href", "#checks");
        page.element("a", "Cautions", "href", "#cautions");
        page.element("a", "Settings", "href", "#settings");
        if (contents.order().isPresent()) {
            page.element("a", SectionCode.ORDER_OF_WORK.toString(), "href", "#order");
        }
        if (!contents.budgets().isEmpty()) {
            page.element("a", "Budgets", "href", "#budgets");
        }
        page.element("a", "Drawings", "href", "#drawings");
        page.element("a", "Tables", "href", "#tables");
        page.close().close();
    }

    private static String word(Outcome outcome) {
        return outcome.toString().toUpperCase(Locale.ROOT);
    }

    private void checks() {
        page.open("section", "id", "checks");
        page.element("h2", "Checks");
        if (contents.checks().isEmpty()) {
            page.element("p", "Nothing has been checked yet.");
        } else {
            page.open("ol", "class", "checks");
            contents.worstFirst().forEach(this::check);
            page.close();
        }
        page.close();
    }

    private void check(PlanCheck check) {
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

    private void cautions() {
        page.open("section", "id", "cautions");
        page.element("h2", "Before the machine runs");
        page.element("p", Wording.MACHINE_FIRST);
        if (!contents.cautions().isEmpty()) {
            page.open("ul");
            contents.cautions().forEach(this::caution);
            page.close();
        }
        page.close();
    }

    private void caution(Caution caution) {
        boolean isFirst = seen.add(caution);
        page.open("li");
        page.element(isFirst ? "strong" : "span", caution.text());
        if (isFirst) {
            page.element("span", " (" + caution.why() + ") [" + caution.source() + "]", "class", "quiet");
        }
        page.close();
    }

    private void settings() {
        page.open("section", "id", "settings");
        page.element("h2", "Settings, in order of work");
        page.open("div", "class", "settings");
        for (PlanSection section : contents.sections()) {
            page.open("section");
            RenderedAnswer rendered = section.rendered(contents.style());
            page.element("h3", rendered.finding());
            rows(rendered.rows());
            rendered.notes().forEach(note -> page.element("p", note.text(), "class", "quiet"));
            page.close();
        }
        page.close().close();
    }

    private void rows(List<RenderedAnswer.Row> rows) {
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
    private void answer(String look, String label, RenderedAnswer answer) {
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

    private void order(OrderPlan order) {
        page.open("section", "id", "order");
        page.element("h2", SectionCode.ORDER_OF_WORK.toString());
        if (order.steps().isEmpty()) {
            page.element("p", Wording.NO_ORDER, "class", "first");
        }
        if (!contents.settled().done().isEmpty()) {
            page.element("p", "Done: " + String.join(", ", contents.settled().done()) + ".", "class", "quiet");
        }
        page.open("ol", "class", "steps");
        for (OrderPlan.Step step : order.steps()) {
            page.open("li");
            page.element("b", step.operation().name());
            if (!step.why().isEmpty()) {
                page.element("span", " " + step.why(), "class", "quiet");
            }
            for (Remedy remedy : step.remedies()) {
                page.element("p", remedy.name() + ": " + remedy.how());
            }
            if (!step.operation().cautions().isEmpty()) {
                page.open("ul");
                step.operation().cautions().forEach(this::caution);
                page.close();
            }
            page.close();
        }
        page.close();
        if (!order.conflicts().isEmpty()) {
            page.element("h3", "Conflicts");
            page.open("ul");
            for (Conflict conflict : order.conflicts()) {
                page.open("li");
                answer("first", "", conflict.rendered(contents.style()));
                page.close();
            }
            page.close();
        }
        page.close();
    }

    private void budgets() {
        if (contents.budgets().isEmpty()) {
            return;
        }
        page.open("section", "id", "budgets", "class", "sheet");
        page.element("h2", "Budgets: errors that add up");
        int i = 0;
        for (BudgetPart part : contents.budgets()) {
            i++;
            page.open("section", "class", "budget");
            page.element("h3", part.title());
            rows(part.rendered(contents.style()).rows());
            page.open("div", "class", "figures");
            BudgetDrawings.shares(part, "shares-" + i).writeOn(page);
            BudgetDrawings.curve(part, contents.shown(), "spread-" + i).writeOn(page);
            page.close().close();
        }
        page.close();
    }

    private void drawings() {
        page.open("section", "id", "drawings", "class", "sheet");
        page.element("h2", "Drawings");
        page.element("p", Wording.NOT_TO_SCALE, "class", "quiet");
        page.open("div", "class", "figures");
        Figures.of(contents).forEach(figure -> figure.writeOn(page));
        page.close().close();
    }

    private void tables() {
        page.open("section", "id", "tables", "class", "sheet");
        page.element("h2", "Tables");
        page.open("div", "class", "tables");
        for (Tables.Table table : Tables.of(contents)) {
            page.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", table.title());
            page.element("h3", table.title());
            page.open("table").open("thead").open("tr");
            table.heads().forEach(head -> page.element("th", head, "scope", "col"));
            page.close().close().open("tbody");
            for (List<String> row : table.rows()) {
                page.open("tr");
                row.forEach(cell -> page.element("td", cell));
                page.close();
            }
            page.close().close().close();
        }
        page.close().close();
    }

    private void footer() {
        page.open("footer");
        page.element("p", Wording.FRAME);
        page.element("p", PaperSet.belonging(contents.mark().get()));
        page.close();
    }
}
