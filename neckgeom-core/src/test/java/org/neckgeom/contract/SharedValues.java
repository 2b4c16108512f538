package org.neckgeom.contract;

import static org.neckgeom.units.ShopUnits.celsius;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.board.FretTable;
import org.neckgeom.budget.Budget;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.RodSlot;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.measure.Verdict;
import org.neckgeom.order.OrderOfWork;
import org.neckgeom.page.Necks;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.Job;
import org.neckgeom.solid.FloorThickness;
import org.neckgeom.strength.Relief;
import org.neckgeom.strength.Weather;
import org.neckgeom.sweep.Axis;
import org.neckgeom.sweep.Sweep;
import org.neckgeom.units.Amount;

/** A value of each sort that people share: nouns, laws, budgets, settings, answers, plans and sheets. */
final class SharedValues {

    private SharedValues() {}

    static Budget<Length> budget() {
        return Budget.named("string line at the bridge")
                .with("rod channel on the blank", ErrorDistribution.normal(mm(0.05)))
                .with("heel on the channel", ErrorDistribution.rectangular(mm(0.2)))
                .with("body joint on the heel", ErrorDistribution.triangular(mm(0.6)))
                .with("pins", ErrorDistribution.arcsine(mm(0.1)))
                .with("readings", ErrorDistribution.samples(List.of(mm(-0.02), mm(0.01), mm(0.03))));
    }

    static Job plan() {
        return Job.of(Necks.octave(), SampleBench.octaveBlank(), SampleBench.metricShop())
                .trialCut(SampleBench.offCentre());
    }

    static List<Object> all() {
        Budget<Length> budget = budget();
        Job plan = plan();
        Estimate<Length> estimate = Estimate.of(mm(0.14), mm(0.02), 5);
        Amount<Length> amount = mm(25.4);
        return List.of(
                amount,
                estimate,
                Limits.within(mm(0.15)),
                Verdict.of(estimate, Limits.within(mm(0.15))),
                ErrorDistribution.samples(List.of(mm(-0.02), mm(0.01), mm(0.03))),
                SampleBench.offCentre(),
                SampleBench.metricShop(),
                SampleBench.inchShop().feelerGauges(),
                SampleBench.bassBlank(),
                SampleNecks.octaveMandolin(),
                SampleNecks.guitar(),
                SampleNecks.shortScaleBass(),
                SampleNecks.shortScaleBass().strings(),
                Centring.of(SampleBench.offCentre()),
                Centring.of(SampleBench.offCentre())
                        .move()
                        .leaves(SampleBench.metricShop().feelerGauges()),
                RodSlot.of(SampleNecks.octaveMandolin().channel().orElseThrow()),
                FretTable.of(SampleNecks.guitar()),
                plan.plan().neckSet().orElseThrow(),
                plan.plan().scarf().orElseThrow(),
                FloorThickness.under(SampleNecks.octaveMandolin()),
                Relief.of(SampleNecks.octaveMandolin()),
                Weather.from(percent(45), celsius(21)).to(percent(25), celsius(21)),
                budget,
                budget.distribution(),
                budget.yield(Limits.within(mm(0.5))),
                budget.shares(),
                budget.simulate(7).withThreads(1).trials(5_000),
                OrderOfWork.forNeck().plan(),
                plan,
                plan.plan(),
                Sheet.of(plan),
                Sweep.of(SampleNecks.octaveMandolin())
                        .over("scale", Axis.steps(mm(540), mm(580), mm(10)), (neck, scale) -> neck.scale(scale)));
    }
}
