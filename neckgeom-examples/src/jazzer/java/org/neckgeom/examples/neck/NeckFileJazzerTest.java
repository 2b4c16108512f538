package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import org.neckgeom.examples.EveryForm;
import org.neckgeom.fault.Refusal;
import org.neckgeom.page.Document;
import org.neckgeom.plan.Job;

/** Input that a general fuzzer steers to what it has not run yet: files by the table of keys, texts, plans as data. */
class NeckFileJazzerTest {

    private final NeckFileJudge judge = new NeckFileJudge(1);

    @FuzzTest(maxDuration = "5m")
    void file(FuzzedDataProvider data) {
        assertThat(judge.fault(GeneratedNecks.of(under -> data.consumeInt(0, under - 1))))
                .isEmpty();
    }

    @FuzzTest(maxDuration = "5m")
    void text(byte[] bytes) {
        assertThat(judge.fault(new String(bytes, StandardCharsets.UTF_8))).isEmpty();
    }

    @FuzzTest(maxDuration = "5m")
    void json(byte[] bytes) {
        Job plan;
        try {
            plan = Document.PLAN.read(new String(bytes, StandardCharsets.UTF_8));
        } catch (Refusal refused) {
            assertThat(refused.faults())
                    .isNotEmpty()
                    .allSatisfy(
                            fault -> assertThat(fault.toString()).isNotBlank().hasSizeLessThan(1_000));
            return;
        }
        assertThat(EveryForm.fault(plan, false)).isEmpty();
    }
}
