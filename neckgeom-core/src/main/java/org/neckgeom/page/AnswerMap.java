package org.neckgeom.page;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.Quantity;
import org.neckgeom.board.Fret;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.ResultDistribution;
import org.neckgeom.channel.Caution;
import org.neckgeom.drawing.Stations;
import org.neckgeom.form.Json;
import org.neckgeom.measure.Interval;
import org.neckgeom.order.Conflict;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** What follows from a plan or a budget, as data: it is not read back. */
final class AnswerMap {

    private AnswerMap() {}

    static Map<String, Object> of(NeckPlan plan) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("standing", plan.standing());
        map.put("checks", plan.checks());
        map.put("cautions", plan.cautions().stream().map(AnswerMap::caution).toList());
        map.put("sections", plan.sections());
        map.put("order", order(plan.order()));
        map.put("budgets", BudgetPart.of(plan));
        map.put(
                "fretTable",
                plan.frets().frets().stream().map(fret -> fret(plan, fret)).toList());
        Stations stations = Stations.of(plan);
        map.put(
                "stations",
                stations.listed().stream()
                        .map(station -> station(plan, stations, station))
                        .toList());
        return map;
    }

    static <Q extends Quantity<Q>> Map<String, Object> ofBudget(Budget<Q> budget) {
        ResultDistribution<Q> law = budget.distribution();
        Interval<Q> usual = law.interval(ShopUnits.percent(95));
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("standardDeviation", quantity(law.standardDeviation()));
        map.put("low95", quantity(usual.low()));
        map.put("high95", quantity(usual.high()));
        return map;
    }

    private static Map<String, Object> caution(Caution caution) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("code", caution.code());
        map.put("text", caution.text());
        map.put("why", caution.why());
        return map;
    }

    private static Map<String, Object> order(OrderOfWork work) {
        OrderPlan order = work.plan();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("done", work.finished().stream().map(Operation::name).toList());
        map.put("steps", order.steps().stream().map(AnswerMap::step).toList());
        map.put(
                "clashes",
                order.clashes().list().stream().map(Conflict::toString).toList());
        return map;
    }

    private static Map<String, Object> step(OrderPlan.Step step) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("number", step.number());
        map.put("operation", step.operation().name());
        map.put("why", step.why());
        return map;
    }

    private static Map<String, Object> fret(NeckPlan plan, Fret fret) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("fret", fret.number());
        map.put("fromNut", length(plan, fret.fromNutMm()));
        map.put("fromLast", length(plan, fret.fromLast().libraryValue()));
        map.put("width", length(plan, 2 * plan.design().halfWidthAtMm(fret.fromNutMm())));
        return map;
    }

    private static Map<String, Object> station(NeckPlan plan, Stations stations, Stations.Station station) {
        double x = station.x();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", station.name());
        map.put("fromNut", length(plan, station.fromNut()));
        map.put("width", length(plan, 2 * plan.design().halfWidthAtMm(x)));
        map.put("woodDepth", length(plan, stations.backDepth(x)));
        stations.channelDepth(x).ifPresent(depth -> map.put("channelDepth", length(plan, depth)));
        stations.woodAt(x).ifPresent(wood -> map.put("woodLeft", length(plan, wood.woodMm())));
        return map;
    }

    private static Map<String, Object> length(NeckPlan plan, double mm) {
        return quantity(plan.style().inTables().amount(mm));
    }

    private static Map<String, Object> quantity(Amount<?> amount) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("value", new Json.Figure(Numbers.plain(amount.value())));
        map.put("unit", amount.unit().toString());
        map.put("ucum", amount.unit().ucum());
        return map;
    }
}
