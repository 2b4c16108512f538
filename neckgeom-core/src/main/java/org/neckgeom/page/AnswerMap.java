package org.neckgeom.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.neckgeom.board.Fret;
import org.neckgeom.board.FretTable;
import org.neckgeom.drawing.Stations;
import org.neckgeom.order.Clash;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.units.LengthStyle;

/** What a plan answers, as data: it follows from what the plan was told and is not read back. */
final class AnswerMap {

    private final NeckPlan plan;

    private AnswerMap(NeckPlan plan) {
        this.plan = plan;
    }

    static Map<String, Object> of(NeckPlan plan) {
        return new AnswerMap(plan).all().map();
    }

    private DataMap all() {
        DataMap data = DataMap.empty().put("standing", plan.standing());
        data.put("checks", plan.checks());
        data.putAll(
                "cautions",
                plan.cautions(),
                caution -> DataMap.empty()
                        .put("code", caution.code())
                        .put("text", caution.text())
                        .put("why", caution.why()));
        data.put("sections", plan.sections());
        data.put("order", order(plan.order()));
        data.put("budgets", BudgetPart.of(plan));
        data.putAll("fretTable", frets());
        return data.putAll("stations", stations());
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
