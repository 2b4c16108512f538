package org.neckgeom.page;

import java.util.List;
import java.util.Optional;
import org.neckgeom.channel.CentringRound;
import org.neckgeom.channel.CentringStep;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.fault.Fault;
import org.neckgeom.fault.Refusal;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.heel.NeckSet;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.shop.Shop;
import org.neckgeom.stock.Blank;
import org.neckgeom.table.Type;
import org.neckgeom.table.Types;

/** What a plan was told, as data and back. */
final class PlanMap {

    private static final int MOST_ROUNDS = 1000;
    private static final Type<List<CentringRound>> ROUNDS =
            Types.list(Types.group(CentringRound.TABLE), 0, MOST_ROUNDS);

    private PlanMap() {}

    static void tell(NeckPlan plan, DataMap data) {
        data.put("design", DesignMap.of(plan.design()))
                .noun("blank", Blank.TABLE, plan.blank())
                .noun("shop", Shop.TABLE, plan.shop())
                .typed("rounds", ROUNDS, CentringRound.of(plan.steps()))
                .put(
                        "limits",
                        DataMap.empty()
                                .quantity("centredWithin", plan.centredWithin())
                                .quantity("woodLeftAtLeast", plan.woodLeftAtLeast())
                                .quantity("bridgeWithin", plan.bridgeWithin())
                                .quantity("relief", plan.relief()));
        plan.scarf().ifPresent(joint -> data.put("scarf", ShapeMap.scarf(joint, plan.style())));
        if (plan.isHeadInOnePiece()) {
            data.put("headInOnePiece", true);
        }
        plan.neckSet().ifPresent(set -> data.put("neckSet", ShapeMap.neckSet(set, plan.style())));
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
            throw switch (fault.path()) {
                case "plan" -> refused;
                case "neckSet" -> data.refused("neckSet", fault);
                default -> data.refused("design." + fault.path(), fault);
            };
        }
    }

    static NeckPlan from(DataSource data) {
        NeckDesign design = data.one("design", DesignMap::from);
        NeckPlan whole = NeckPlan.of(design, data.noun("blank", Blank.TABLE), data.noun("shop", Shop.TABLE));
        for (CentringRound round : data.typed("rounds", ROUNDS)) {
            for (CentringStep step : round.steps()) {
                whole = whole.then(step);
            }
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
        Optional<ScarfJoint> scarf = data.oneIfTold("scarf", ShapeMap::scarfFrom);
        plan = scarf.isPresent() ? plan.scarf(scarf.get()) : plan;
        plan = data.has("headInOnePiece") && data.flag("headInOnePiece") ? plan.headInOnePiece() : plan;
        Optional<NeckSet> set = data.oneIfTold("neckSet", ShapeMap::neckSetFrom);
        plan = set.isPresent() ? plan.neckSet(set.get()) : plan;
        NeckPlan shaped = plan;
        plan = data.one("details", details -> shaped.details(ShapeMap.detailsFrom(details, design)));
        NeckPlan detailed = plan;
        plan = data.one("readings", readings -> detailed.readings(ReadingsMap.from(readings)));
        data.oneIfTold("answers", AnswerMap::skip);
        return answerable(data, plan);
    }
}
