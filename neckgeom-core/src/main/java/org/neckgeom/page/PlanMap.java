package org.neckgeom.page;

import org.neckgeom.channel.CentringStep;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.plan.NeckPlan;

/** What a plan was told, as data and back. */
final class PlanMap {

    private PlanMap() {}

    static void tell(NeckPlan plan, DataMap data) {
        data.put("design", DesignMap.of(plan.design()))
                .put("blank", StockMap.blank(plan.blank()))
                .put("shop", ShopMap.of(plan.shop()))
                .putAll("steps", plan.steps(), ShopMap::step)
                .put(
                        "limits",
                        DataMap.empty()
                                .quantity("centredWithin", plan.centredWithin())
                                .quantity("woodLeftAtLeast", plan.woodLeftAtLeast())
                                .quantity("bridgeWithin", plan.bridgeWithin())
                                .quantity("relief", plan.relief()));
        data.put("weather", StockMap.weather(plan.weather()))
                .put("order", OrderMap.of(plan.orderAsTold(), plan.style()))
                .put("details", ShapeMap.details(plan.details(), plan.style()))
                .put("workmanship", SpreadMap.work(plan.workmanshipAsTold(), plan.style()))
                .put("readings", ReadingsMap.of(plan.readings()));
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
        NeckPlan centred = whole;
        NeckPlan plan = data.one(
                        "limits",
                        limits -> centred.centredWithin(limits.length("centredWithin"))
                                .woodLeftAtLeast(limits.length("woodLeftAtLeast"))
                                .bridgeWithin(limits.length("bridgeWithin"))
                                .relief(limits.length("relief")))
                .weather(data.one("weather", StockMap::weatherFrom))
                .order(data.one("order", OrderMap::from))
                .workmanship(data.one("workmanship", SpreadMap::workFrom));
        NeckPlan shaped = plan;
        plan = data.one("details", details -> shaped.details(ShapeMap.detailsFrom(details, design)));
        NeckPlan detailed = plan;
        plan = data.one("readings", readings -> detailed.readings(ReadingsMap.from(readings)));
        data.oneIfTold("answers", AnswerMap::skip);
        return answerable(data, plan);
    }
}
