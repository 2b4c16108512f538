package org.neckgeom.examples.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.examples.file.Problem;
import org.neckgeom.page.PlanData;
import org.neckgeom.page.Sheet;
import org.neckgeom.plan.NeckPlan;

/**
 * Mutants of the shipped necks: each is planned or refused in sentences, with line and key. How many is said by the
 * property {@code neckgeom.mutants}.
 */
class NeckFileFuzzTest {

    private static final int MUTANTS = Integer.getInteger("neckgeom.mutants", 5_000);
    private static final int EVERY = 10;
    private static final Duration HANGS = Duration.ofMinutes(10).plusMillis(20L * MUTANTS);
    private static final Pattern MACHINE_WORDS =
            Pattern.compile("\\b(java\\.|org\\.neckgeom|snakeyaml|Exception|Optional\\[)");

    private int accepted;
    private int planned;
    private int refused;
    private int withKey;
    private volatile String now = "";

    @Test
    void parse_acceptsOrRefusesEveryMutantInSentences() {
        List<String> faults = assertTimeoutPreemptively(HANGS, this::faults, () -> "hangs on\n" + now);

        System.out.println("neck files: " + MUTANTS + " mutants, " + accepted + " accepted, of them " + planned
                + " planned, " + refused + " refused, " + withKey + " with a key");
        assertThat(faults.stream().limit(20)).isEmpty();
        // A fuzzer that only ever breaks the syntax, or never does, looks at nothing.
        assertThat(accepted).isGreaterThan(MUTANTS / 20);
        assertThat(withKey).isGreaterThan(MUTANTS / 5);
    }

    private List<String> faults() {
        List<String> faults = new ArrayList<>();
        for (int seed = 0; seed < MUTANTS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            String shipped =
                    ShippedNecks.names().get(seed % ShippedNecks.names().size());
            now = Mutants.of(ShippedNecks.text(shipped), random);
            String fault = fault(now);
            if (!fault.isEmpty()) {
                faults.add("seed " + seed + ": " + fault);
            }
        }
        return faults;
    }

    private String fault(String mutant) {
        NeckPlan plan;
        try {
            plan = NeckFile.parse("n.yaml", mutant).plan();
        } catch (FileRefused e) {
            refused++;
            return faultOf(e);
        } catch (RuntimeException | StackOverflowError e) {
            return "threw " + e + where(e);
        }
        return accepted++ % EVERY == 0 ? faultOf(plan) : "";
    }

    private static String where(Throwable thrown) {
        return thrown.getStackTrace().length == 0 ? "" : " at " + thrown.getStackTrace()[0];
    }

    private String faultOf(FileRefused refusal) {
        boolean keyed = false;
        for (Problem problem : refusal.problems()) {
            String sentence = problem.sentence();
            keyed |= !problem.place().path().isEmpty();
            if (sentence.split(" ").length < 3
                    || sentence.length() > 1_000
                    || MACHINE_WORDS.matcher(sentence).find()) {
                return "not a sentence: " + problem;
            }
            if (!problem.place().path().isEmpty() && problem.place().line() == 0) {
                return "a key without a line: " + problem;
            }
        }
        withKey += keyed ? 1 : 0;
        return "";
    }

    /** What a file that was accepted must bear: its plan as text, page and data. */
    private String faultOf(NeckPlan plan) {
        planned++;
        try {
            String all = Sheet.of(plan).toText()
                    + Sheet.of(plan).toHtml()
                    + PlanData.of(plan).toJson();
            return Pattern.compile("\\b(NaN|[Ii]nfinity)\\b").matcher(all).find() ? "planned with NaN or infinity" : "";
        } catch (RuntimeException e) {
            return "planning threw " + e + where(e);
        }
    }
}
