package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.neckgeom.form.Json;

/**
 * Neck files by the thousand, each of a seed of its own: mutants of the shipped ones, which a slip of the hand or a
 * broken disk could make, and files made by the table of keys. Each is planned or refused in sentences, with line and
 * key. How many is set by the properties {@code neckgeom.mutants} and {@code neckgeom.files}, the first seed by {@code neckgeom.from}.
 */
class NeckFileFuzzTest {

    private static final int MUTANTS = Integer.getInteger("neckgeom.mutants", 2_000);
    private static final int FILES = Integer.getInteger("neckgeom.files", 2_000);
    private static final int FROM = Integer.getInteger("neckgeom.from", 0);
    private static final int EVERY_FORM = 8;
    private static final int REPORT_EVERY = 10_000;

    private final Map<Thread, String> now = new ConcurrentHashMap<>();

    @Test
    void parse_acceptsOrRefusesEveryMutantInSentences() {
        NeckFileJudge judge = new NeckFileJudge(20);

        List<String> faults = faults(MUTANTS, judge, seed -> {
            String shipped =
                    ShippedNecks.names().get(seed % ShippedNecks.names().size());
            return Mutants.of(ShippedNecks.text(shipped), new SplittableRandom(seed));
        });

        System.out.println("neck files: " + MUTANTS + " mutants, " + judge);
        assertThat(faults).isEmpty();
        // A fuzzer that only ever breaks the syntax, or never does, looks at nothing.
        assertThat(judge.accepted).hasValueGreaterThan(MUTANTS / 20);
        assertThat(judge.withKey).hasValueGreaterThan(MUTANTS / 5);
    }

    @Test
    void plan_ofEveryGeneratedFile_isWholeInEveryForm() {
        NeckFileJudge judge = new NeckFileJudge(EVERY_FORM);

        List<String> faults = faults(FILES, judge, seed -> GeneratedNecks.of(new SplittableRandom(seed)::nextInt));

        System.out.println("neck files: " + FILES + " generated from seed " + FROM + ", " + judge);
        assertThat(faults).isEmpty();
        assertThat(judge.accepted).hasValueGreaterThan(FILES / 4);
        assertThat(judge.withKey).hasValueGreaterThan(FILES / 10);
    }

    @Test
    void generatedFiles_areMadeWithEveryKey() {
        Set<String> missing = new TreeSet<>(
                NeckKeysTest.keysOfSchema(Json.read(NeckFile.schema()).plain(), ""));
        missing.removeAll(GeneratedNecks.keys());

        assertThat(missing).isEmpty();
    }

    private List<String> faults(int count, NeckFileJudge judge, IntFunction<String> file) {
        AtomicInteger done = new AtomicInteger();
        Duration hangs = Duration.ofMinutes(10).plusMillis(50L * count);
        return assertTimeoutPreemptively(
                hangs,
                () -> IntStream.range(FROM, FROM + count)
                        .parallel()
                        .mapToObj(seed -> {
                            String text = file.apply(seed);
                            now.put(Thread.currentThread(), text);
                            String fault = judge.fault(text)
                                    .map(found -> "seed " + seed + ": " + found)
                                    .orElse("");
                            if (done.incrementAndGet() % REPORT_EVERY == 0) {
                                System.out.println("neck files: " + done + " of " + count + ", " + judge
                                        + (fault.isEmpty() ? "" : "; " + fault));
                            }
                            return fault;
                        })
                        .filter(fault -> !fault.isEmpty())
                        .limit(20)
                        .toList(),
                () -> "hangs on one of\n" + now.values());
    }
}
