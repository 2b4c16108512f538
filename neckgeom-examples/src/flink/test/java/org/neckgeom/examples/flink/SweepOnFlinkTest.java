package org.neckgeom.examples.flink;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.neckgeom.neck.Neck;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.page.Document;
import org.neckgeom.plan.NeckPlan;
import org.neckgeom.sweep.SweepResult;

class SweepOnFlinkTest {

    private static final NeckPlan PLAN =
            NeckPlan.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop());

    @Test
    void answers_haveTheBitsOfTheStream() throws Exception {
        List<SweepResult<Neck, Double>> wanted =
                LeastWood.sweep(PLAN.design()).results(LeastWood::leastMm).toList();

        List<Answer> found = SweepOnFlink.answers(Document.PLAN.json(PLAN), 2);

        assertThat(found).hasSize(wanted.size()).hasSize(10_000);
        for (int i = 0; i < found.size(); i++) {
            SweepResult<Neck, Double> one = wanted.get(i);
            assertThat(found.get(i).index).isEqualTo(i);
            assertThat(Double.doubleToLongBits(found.get(i).woodMm))
                    .isEqualTo(Double.doubleToLongBits(one.answer().orElse(0.0)));
            assertThat(found.get(i).refusal).isEqualTo(one.refusal());
        }
        assertThat(wanted).anyMatch(one -> !one.refusal().isEmpty());
        assertThat(wanted.stream().filter(one -> one.answer().isPresent()).count())
                .isBetween(100L, 9_999L);
    }
}
