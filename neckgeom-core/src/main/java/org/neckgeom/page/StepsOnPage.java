package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.neckgeom.drawing.Markup;
import org.neckgeom.order.Conflict;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.order.Remedy;
import org.neckgeom.plan.BenchCard;
import org.neckgeom.plan.BenchQuestion;
import org.neckgeom.plan.BenchSession;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.plan.SectionCode;
import org.neckgeom.shop.Caution;

/**
 * The operations on the page, each folded: the reason for its place, what is set and read at it, its drawings, its cautions, the
 * way back.
 */
final class StepsOnPage {

    /** Sections that have a place of their own on the page. */
    private static final Set<String> ELSEWHERE = Set.of(
            SectionCode.READINGS.code(),
            SectionCode.REPAIRS.code(),
            SectionCode.WEATHER.code(),
            SectionCode.ERRORS.code());

    private final Contents contents;
    private final Markup page;
    private final PageText text;
    private final Optional<Operation> atHand;

    StepsOnPage(Contents contents, Markup page, PageText text) {
        this.contents = contents;
        this.page = page;
        this.text = text;
        this.atHand = contents.job().flatMap(job -> BenchSession.of(job).operation());
    }

    void write() {
        page.open("section", "id", "steps");
        page.element("h2", SectionCode.ORDER_OF_WORK + ", step by step");
        contents.order()
                .filter(order -> order.steps().isEmpty() && !order.conflicts().isEmpty())
                .ifPresent(order -> page.element("p", Wording.NO_ORDER, "class", "first"));
        List<StepPart> parts = StepPart.of(contents);
        if (!parts.isEmpty()) {
            page.open("ol", "class", "steps");
            parts.forEach(this::step);
            page.close();
        }
        contents.order().ifPresent(this::conflicts);
        rest();
        page.close();
    }

    private void step(StepPart part) {
        Operation operation = part.operation();
        page.open("li").open("details").open("summary");
        String mark = part.step().map(step -> String.valueOf(step.number())).orElse("done");
        page.element("span", mark, "class", "number");
        page.element("h3", operation.name());
        if (atHand.filter(operation::equals).isPresent()) {
            page.element("span", "now", "class", "mark");
        }
        page.close();
        part.step().ifPresent(this::reasons);
        settings(part);
        figures(operation).forEach(figure -> figure.writeOn(page));
        contents.job().ifPresent(job -> reading(job, operation));
        cautions(operation);
        page.close().close();
    }

    private void reasons(OrderPlan.Step step) {
        if (!step.why().isEmpty()) {
            page.element("p", "Why here: " + step.why() + ".", "class", "quiet");
        }
        for (Remedy remedy : step.remedies()) {
            page.element("p", remedy.name() + ": " + remedy.how());
        }
    }

    /** The plan's own parts; where it has none, what a card of the operation has. */
    private void settings(StepPart part) {
        if (!part.sections().isEmpty()) {
            part.sections().forEach(section -> text.section(section, "h4"));
            return;
        }
        contents.job()
                .map(job -> BenchCard.of(job, part.operation().name()))
                .ifPresent(card -> card.settings()
                        .forEach(section ->
                                text.rows(section.rendered(contents.style()).rows())));
    }

    private List<Figure> figures(Operation operation) {
        List<Figure> figures = new ArrayList<>();
        if (StepPart.isCalled(operation, Operation.CUT_SCARF)) {
            Figures.scarf(contents).ifPresent(figures::add);
        }
        if (StepPart.isCalled(operation, Operation.FIT_HEEL_TO_BODY)) {
            Figures.heelAsRead(contents).ifPresent(figures::add);
        }
        if (StepPart.isCalled(operation, Operation.CARVE_THE_NECK)) {
            figures.addAll(Figures.sections(contents));
        }
        return figures;
    }

    private void reading(Job job, Operation operation) {
        BenchCard card = BenchCard.of(job, operation.name());
        List<BenchQuestion> readings = card.readings();
        if (!readings.isEmpty()) {
            page.element("h4", "Read after it");
            page.open("ul");
            readings.forEach(reading -> page.element("li", reading.words() + ", " + card.range(reading)));
            page.close();
        }
        if (!card.wayBack().isEmpty()) {
            page.element("h4", "If it goes wrong");
            page.open("ul");
            card.wayBack().forEach(way -> page.element("li", way));
            page.close();
        }
    }

    private void cautions(Operation operation) {
        List<Caution> cautions = operation.cutsTheChannel() ? contents.cautions() : operation.cautions();
        if (!cautions.isEmpty()) {
            page.element("h4", "Mind");
            text.cautions(cautions);
        }
    }

    private void conflicts(OrderPlan order) {
        if (order.conflicts().isEmpty()) {
            return;
        }
        page.element("h3", "Conflicts");
        page.open("ul");
        for (Conflict conflict : order.conflicts()) {
            page.open("li");
            text.answer("first", "", conflict.rendered(contents.style()));
            page.close();
        }
        page.close();
    }

    /** What belongs to no operation of this order, and cautions where no operation has them. */
    private void rest() {
        List<PlanSection> rest = StepPart.others(contents).stream()
                .filter(section -> !StepPart.isWhatIf(section) && !ELSEWHERE.contains(section.code()))
                .toList();
        rest.forEach(section -> text.section(section, "h3"));
        List<StepPart> parts = StepPart.of(contents);
        if (parts.stream().noneMatch(part -> StepPart.isCalled(part.operation(), Operation.CUT_SCARF))) {
            Figures.scarf(contents).ifPresent(figure -> figure.writeOn(page));
        }
        if (parts.stream().noneMatch(part -> StepPart.isCalled(part.operation(), Operation.CARVE_THE_NECK))) {
            Figures.sections(contents).forEach(figure -> figure.writeOn(page));
        }
        if (parts.stream().noneMatch(part -> StepPart.isCalled(part.operation(), Operation.FIT_HEEL_TO_BODY))) {
            Figures.heelAsRead(contents).ifPresent(figure -> figure.writeOn(page));
        }
        if (parts.stream().noneMatch(part -> part.operation().cutsTheChannel())
                && !contents.cautions().isEmpty()) {
            page.element("h3", "Before the machine runs");
            text.cautions(contents.cautions());
        }
    }
}
