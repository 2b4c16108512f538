package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import org.neckgeom.board.Fret;
import org.neckgeom.board.FretTable;
import org.neckgeom.budget.Share;
import org.neckgeom.drawing.Stations;
import org.neckgeom.order.Clash;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.plan.PlanCheck;
import org.neckgeom.plan.PlanSection;
import org.neckgeom.units.LengthStyle;

/** What a plan answers, as data: it follows from what the plan was told and is not read back. */
final class AnswerMap {

    private final NeckPlan plan;

    private AnswerMap(NeckPlan plan) {
        this.plan = plan;
    }

    static DataMap of(NeckPlan plan) {
        return new AnswerMap(plan).all();
    }

    /** What stands in answers is left unread, but must be known by name. */
    static boolean skip(DataSource data) {
        return data.skip("standing", "checks", "cautions", "sections", "order", "budgets", "fretTable", "stations");
    }

    private DataMap all() {
        DataMap data = DataMap.empty().put("standing", plan.standing());
        data.putAll("checks", plan.checks(), AnswerMap::check);
        data.putAll(
                "cautions",
                plan.cautions(),
                caution -> DataMap.empty()
                        .put("code", caution.code())
                        .put("text", caution.text())
                        .put("why", caution.why()));
        data.putAll("sections", plan.sections(), AnswerMap::section);
        data.put("order", order(plan.order()));
        data.putAll("budgets", BudgetPart.of(plan), this::budget);
        data.putAll("fretTable", frets());
        return data.putAll("stations", stations());
    }

    private static DataMap check(PlanCheck check) {
        return DataMap.empty()
                .put("name", check.name())
                .put("outcome", check.outcome().toString())
                .put("found", check.found())
                .put("allowed", check.allowed())
                .put("todo", check.todo());
    }

    private static DataMap section(PlanSection section) {
        return DataMap.empty()
                .put("title", section.title())
                .putAll(
                        "rows",
                        section.rows().stream()
                                .map(row -> DataMap.empty()
                                        .put("label", row.label())
                                        .put("value", row.value()))
                                .toList())
                .put("notes", section.notes());
    }

    private static DataMap order(OrderOfWork work) {
        OrderPlan order = work.plan();
        return DataMap.empty()
                .put("done", work.finished().stream().map(Operation::name).toList())
                .putAll(
                        "steps",
                        order.steps(),
                        step -> DataMap.empty()
                                .put("number", step.number())
                                .put("operation", step.operation().name())
                                .put("why", step.why()))
                .put(
                        "clashes",
                        order.clashes().list().stream().map(Clash::toString).toList());
    }

    private DataMap budget(BudgetPart part) {
        LengthStyle style = plan.style();
        DataMap data = DataMap.empty()
                .put("title", part.title())
                .put("contents", part.budget().title());
        part.limits().ifPresent(limits -> data.put("limits", limits.toString()));
        data.answer(
                        "standardDeviation",
                        part.budget().distribution().standardDeviation().house(),
                        style)
                .answer("low95", part.usual().lowHouse(), style)
                .answer("high95", part.usual().highHouse(), style);
        List<DataMap> shares = new ArrayList<>();
        for (Share<?> share : part.budget().sharesByStep().list()) {
            shares.add(DataMap.empty().put("step", share.name()).number("fraction", share.fraction()));
        }
        return data.putAll("shares", shares);
    }

    private List<DataMap> frets() {
        List<DataMap> rows = new ArrayList<>();
        LengthStyle style = plan.style();
        for (Fret fret : FretTable.of(plan.design()).frets()) {
            rows.add(DataMap.empty()
                    .put("fret", fret.number())
                    .answer("fromNut", fret.fromNutMm(), style)
                    .answer("fromLast", fret.fromLast().house(), style)
                    .answer("width", 2 * plan.design().halfWidthAtMm(fret.fromNutMm()), style));
        }
        return rows;
    }

    private List<DataMap> stations() {
        List<DataMap> rows = new ArrayList<>();
        LengthStyle style = plan.style();
        Stations stations = Stations.of(plan);
        for (Stations.Station station : stations.listed()) {
            double x = station.x();
            DataMap row = DataMap.empty()
                    .put("name", station.name())
                    .answer("fromNut", station.fromNut(), style)
                    .answer("width", 2 * plan.design().halfWidthAtMm(x), style)
                    .answer("woodDepth", stations.backDepth(x), style);
            stations.channelDepth(x).ifPresent(depth -> row.answer("channelDepth", depth, style));
            stations.woodAt(x).ifPresent(wood -> row.answer("woodLeft", wood.woodMm(), style));
            rows.add(row);
        }
        return rows;
    }
}
