package org.neckgeom.page;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.Quantity;
import org.neckgeom.board.Fret;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.ResultDistribution;
import org.neckgeom.drawing.Stations;
import org.neckgeom.form.Json;
import org.neckgeom.measure.Interval;
import org.neckgeom.order.Conflict;
import org.neckgeom.order.Operation;
import org.neckgeom.order.OrderPlan;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.Plan;
import org.neckgeom.shop.Caution;
import org.neckgeom.solid.NeckStation;
import org.neckgeom.text.Numbers;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The results of a plan or a budget as data; they are not read back. */
final class AnswerMap {

    private AnswerMap() {}

    static Map<String, Object> of(Job job) {
        Plan plan = job.plan();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("status", plan.status());
        map.put("checks", plan.checks());
        map.put("cautions", plan.cautions().stream().map(AnswerMap::caution).toList());
        map.put("sections", plan.sections());
        map.put("order", order(plan));
        map.put("budgets", BudgetPart.of(job));
        map.put(
                "fretTable",
                plan.frets().frets().stream().map(fret -> fret(plan, fret)).toList());
        map.put(
                "stations",
                Stations.of(plan).listed().stream()
                        .map(station -> station(plan, station))
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
        map.put("source", caution.source());
        return map;
    }

    private static Map<String, Object> order(Plan plan) {
        OrderPlan order = plan.order();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("done", plan.work().finished().stream().map(Operation::name).toList());
        map.put("steps", order.steps().stream().map(AnswerMap::step).toList());
        map.put(
                "conflicts",
                order.conflicts().list().stream().map(Conflict::toString).toList());
        return map;
    }

    private static Map<String, Object> step(OrderPlan.Step step) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("number", step.number());
        map.put("operation", step.operation().name());
        map.put("why", step.why());
        map.put(
                "cautions",
                step.operation().cautions().stream().map(Caution::code).toList());
        return map;
    }

    private static Map<String, Object> fret(Plan plan, Fret fret) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("fret", fret.number());
        map.put("fromNut", length(plan, fret.fromNutMm()));
        map.put("fromLast", length(plan, fret.fromLast().libraryValue()));
        map.put("width", length(plan, 2 * plan.designed().halfWidthAtMm(fret.fromNutMm())));
        return map;
    }

    private static Map<String, Object> station(Plan plan, NeckStation station) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", station.name().orElse(""));
        map.put("fromNut", length(plan, station.fromNutMm()));
        map.put("width", length(plan, station.width().libraryValue()));
        map.put("woodDepth", length(plan, station.depth().libraryValue()));
        station.channelDepth().ifPresent(depth -> map.put("channelDepth", length(plan, depth.libraryValue())));
        station.wood().ifPresent(wood -> map.put("woodLeft", length(plan, wood.woodMm())));
        return map;
    }

    private static Map<String, Object> length(Plan plan, double mm) {
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
