package org.neckgeom.page;

import org.neckgeom.budget.Workmanship;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.plan.NeckLimits;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.plan.NeckReadings;
import org.neckgeom.strength.Weather;

/** What a plan was told, as data and back. */
final class PlanMap {

    private PlanMap() {}

    static void tell(NeckPlan plan, DataMap data) {
        data.put("design", DesignMap.of(plan.design()))
                .put("blank", StockMap.blank(plan.blank()))
                .put("shop", ShopMap.of(plan.shop()))
                .putAll("steps", plan.steps(), ShopMap::step)
                .noun("limits", NeckLimits.TABLE, plan.limits())
                .quantity("relief", plan.relief());
        data.noun("weather", Weather.TABLE, plan.weather())
                .put("order", OrderMap.of(plan.orderAsTold(), plan.style()))
                .put("details", ShapeMap.details(plan.details(), plan.style()))
                .noun("workmanship", Workmanship.TABLE, plan.workmanshipAsTold())
                .noun("asMade", NeckReadings.TABLE, plan.readings());
    }

    private static NeckPlan answerable(DataSource data, NeckPlan plan) {
        try {
            return plan.checked();
        } catch (Refusal refused) {
            Fault fault = refused.faults().get(0);
            throw fault.path().equals("plan") ? refused : data.refused("design." + fault.path(), fault);
        }
    }

    static NeckPlan from(DataSource data) {
        NeckDesign design = data.one("design", DesignMap::from);
        NeckPlan whole = NeckPlan.of(design, data.one("blank", StockMap::blankFrom), data.one("shop", ShopMap::from));
        for (CentringStep step : data.all("steps", ShopMap::stepFrom)) {
            whole = whole.then(step);
        }
        NeckPlan plan = whole.limits(data.noun("limits", NeckLimits.TABLE))
                .relief(data.length("relief"))
                .weather(data.noun("weather", Weather.TABLE))
                .order(data.one("order", OrderMap::from))
                .workmanship(data.noun("workmanship", Workmanship.TABLE));
        NeckPlan shaped = plan;
        plan = data.one("details", details -> shaped.details(ShapeMap.detailsFrom(details, design)));
        NeckPlan detailed = plan;
        plan = detailed.readings(data.noun("asMade", NeckReadings.TABLE));
        data.oneIfTold("answers", AnswerMap::skip);
        return answerable(data, plan);
    }
}
