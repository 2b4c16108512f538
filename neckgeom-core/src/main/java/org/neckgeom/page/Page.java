package org.neckgeom.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.neckgeom.drawing.Markup;
import org.neckgeom.drawing.PaperSet;
import org.neckgeom.order.Operation;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Outcome;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.shop.Caution;

/**
 * The sheet as one page: verdict and neck, what to do now, what is open, a closer look, then step by step, and last what is not
 * due and the tables. What is long is folded; on paper all of it is open.
 */
final class Page {

    private static final int FIRST_CAUTIONS = 3;
    private static final String MACHINE_FIRST = "MACHINE_FIRST";

    private final Contents contents;
    private final Markup page = new Markup();
    private final PageText text;
    private final List<PlanSection> others;

    private Page(Contents contents) {
        this.contents = contents;
        this.text = new PageText(page, contents.style());
        this.others = StepPart.others(contents);
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
        page.open("div", "class", "top");
        neck();
        contents.job().ifPresent(this::now);
        checks();
        page.close();
        measured();
        closer();
        new StepsOnPage(contents, page, text).write();
        whatIf();
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
                page.element("li", contents.count(outcome) + " " + PageText.word(outcome), "class", outcome.toString());
            }
        }
        page.close();
        page.open("nav", "aria-label", "On this sheet");
        if (contents.job().isPresent()) {
            page.element("a", "Now", "href", "#now");
        }
        page.element("a", "Open", "href", "#checks");
        page.element("a", "Closer", "href", "#closer");
        page.element("a", "Step by step", "href", "#steps");
        if (hasWhatIf()) {
            page.element("a", SectionCode.WHAT_IF.toString(), "href", "#what-if");
        }
        page.element("a", "Tables", "href", "#tables");
        page.close().close();
    }

    private void neck() {
        page.open("section", "id", "neck");
        page.element("h2", "The neck");
        boolean isCut = contents.job()
                .filter(job -> job.plan().work().finished().stream().anyMatch(Operation::cutsTheChannel))
                .isPresent();
        NeckDrawing.of(contents.shape(), contents.shown(), isCut).writeOn(page);
        contents.job()
                .map(job -> job.plan().spare())
                .ifPresent(spare -> text.rows(spare.rendered(contents.style()).rows()));
        page.close();
    }

    /** The step at hand: what to set, what to read, what to mind. */
    private void now(Job job) {
        BenchSession session = BenchSession.of(job);
        page.open("section", "id", "now");
        page.element("h2", "Now: " + session.settings().title());
        page.open("dl");
        session.settings().rows().forEach(row -> row(row.label(), row.value()));
        page.close();
        SetUpDrawing.of(job)
                .ifPresent(svg -> page.open("figure").append("\n" + svg + "\n").close());
        Map<String, List<String>> names = new LinkedHashMap<>();
        names.put("read", session.questions().stream().map(BenchQuestion::words).toList());
        names.put("before it", session.before().stream().map(Operation::name).toList());
        names.put("then", session.then().stream().map(Operation::name).toList());
        names.values().removeIf(List::isEmpty);
        if (!names.isEmpty()) {
            page.open("dl");
            names.forEach((label, all) -> row(label, String.join(", ", all)));
            page.close();
        }
        List<Caution> cautions = session.cautions().stream()
                .filter(caution -> !caution.code().equals(MACHINE_FIRST))
                .limit(FIRST_CAUTIONS)
                .toList();
        page.open("ul", "class", "cautions");
        cautions.forEach(caution -> page.element("li", caution.text() + "."));
        page.close();
        page.element(
                "p", Wording.MACHINE_FIRST + " Reasons and sources are with the operation below.", "class", "quiet");
        page.close();
    }

    private void row(String label, String value) {
        page.open("div").element("dt", label).open("dd").element("span", value, "class", "first");
        page.close().close();
    }

    private void checks() {
        page.open("section", "id", "checks");
        List<PlanCheck> sorted = contents.worstFirst();
        List<PlanCheck> open =
                sorted.stream().filter(check -> check.outcome() != Outcome.OK).toList();
        List<PlanCheck> good =
                sorted.stream().filter(check -> check.outcome() == Outcome.OK).toList();
        page.element("h2", open.isEmpty() ? "Nothing is open" : "Open");
        if (sorted.isEmpty()) {
            page.element("p", "Nothing has been checked yet.");
        }
        list(open);
        if (!good.isEmpty()) {
            page.open("details").element("summary", good.size() == 1 ? "1 check OK" : good.size() + " checks OK");
            list(good);
            page.close();
        }
        page.close();
    }

    private void list(List<PlanCheck> checks) {
        if (!checks.isEmpty()) {
            page.open("ol", "class", "checks");
            checks.forEach(text::check);
            page.close();
        }
    }

    /** What has been read, and the repairs of what is out of its limit. */
    private void measured() {
        List<PlanSection> read = others(SectionCode.READINGS, SectionCode.REPAIRS);
        if (!read.isEmpty()) {
            page.open("section", "id", "measured");
            page.element("h2", "Measured so far");
            read.forEach(section -> text.section(section, "h3"));
            page.close();
        }
    }

    private List<PlanSection> others(SectionCode... codes) {
        List<String> wanted = new ArrayList<>();
        for (SectionCode code : codes) {
            wanted.add(code.code());
        }
        return others.stream()
                .filter(section -> wanted.contains(section.code()))
                .toList();
    }

    private void closer() {
        page.open("section", "id", "closer");
        page.element("h2", "A closer look");
        page.element("p", Wording.NOT_TO_SCALE, "class", "quiet");
        folded("Measures, from the front and from the side", Figures.measures(contents), List.of());
        contents.job().ifPresent(job -> {
            folded("Curves along the neck", Curves.along(contents, job), List.of());
            folded("In other air", Curves.inOtherAir(contents, job), others(SectionCode.WEATHER));
        });
        budgets();
        contents.order()
                .filter(order -> !order.steps().isEmpty())
                .ifPresent(order -> folded("What comes before what", List.of(OrderDrawing.of(order)), List.of()));
        page.close();
    }

    private void folded(String title, List<Figure> figures, List<PlanSection> sections) {
        if (figures.isEmpty() && sections.isEmpty()) {
            return;
        }
        page.open("details").open("summary").element("h3", title).close();
        sections.forEach(section -> text.section(section, "h4"));
        page.open("div", "class", "figures");
        figures.forEach(figure -> figure.writeOn(page));
        page.close().close();
    }

    private void budgets() {
        List<PlanSection> sections = others(SectionCode.ERRORS);
        if (contents.budgets().isEmpty() && sections.isEmpty()) {
            return;
        }
        page.open("details", "id", "budgets")
                .open("summary")
                .element("h3", "Budgets: errors that add up")
                .close();
        sections.forEach(section -> text.section(section, "h4"));
        int i = 0;
        for (BudgetPart part : contents.budgets()) {
            i++;
            page.open("section", "class", "budget");
            page.element("h4", part.title());
            text.rows(part.rendered(contents.style()).rows());
            page.open("div", "class", "figures");
            BudgetDrawings.shares(part, "shares-" + i).writeOn(page);
            BudgetDrawings.curve(part, contents.shown(), "spread-" + i).writeOn(page);
            page.close().close();
        }
        page.close();
    }

    private boolean hasWhatIf() {
        return others.stream().anyMatch(StepPart::isWhatIf)
                || Figures.heelLever(contents).isPresent();
    }

    /** Apart from the settings, so that none of it is set. */
    private void whatIf() {
        if (!hasWhatIf()) {
            return;
        }
        page.open("section", "id", "what-if");
        page.element("h2", SectionCode.WHAT_IF.toString());
        page.element("p", "Not to be set: what a change or an error of a round size would ask for.", "class", "quiet");
        others.stream().filter(StepPart::isWhatIf).forEach(section -> {
            if (section.code().equals(SectionCode.WHAT_IF.code())) {
                text.rows(section.rendered(contents.style()).rows());
            } else {
                text.section(section, "h3");
            }
        });
        Figures.heelLever(contents).ifPresent(figure -> figure.writeOn(page));
        page.close();
    }

    private void tables() {
        page.open("section", "id", "tables");
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
