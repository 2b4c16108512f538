package org.neckgeom.examples.neck;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.neckgeom.examples.EveryForm;
import org.neckgeom.examples.file.FileRefused;
import org.neckgeom.examples.file.Problem;
import org.neckgeom.plan.Job;

/**
 * What must hold of every neck file, whatever is in it: it is refused in sentences, with line and key, or planned and
 * written as text and as data, one in so many in every form. Counts what became of each; any number of threads may ask.
 */
public final class NeckFileJudge {

    private static final Pattern MACHINE_WORDS =
            Pattern.compile("\\b(java\\.|org\\.neckgeom|snakeyaml|Exception|Optional\\[)");
    private static final int EVERY_PDF = 20;

    private final int every;
    final AtomicInteger accepted = new AtomicInteger();
    final AtomicInteger written = new AtomicInteger();
    final AtomicInteger refused = new AtomicInteger();
    final AtomicInteger withKey = new AtomicInteger();

    /** Writes one in so many of the plans that are accepted in every form. */
    public NeckFileJudge(int every) {
        this.every = every;
    }

    /** What is wrong with the treatment of a file, or nothing. */
    public Optional<String> fault(String text) {
        Job plan;
        try {
            plan = NeckFile.parse("n.yaml", text);
        } catch (FileRefused e) {
            refused.incrementAndGet();
            return fault(e);
        } catch (RuntimeException | StackOverflowError | AssertionError e) {
            return Optional.of("threw " + e + where(e));
        }
        boolean isWhole = accepted.getAndIncrement() % every == 0;
        try {
            if (!isWhole) {
                return EveryForm.faultOfTextAndData(plan);
            }
            return EveryForm.fault(plan, written.getAndIncrement() % EVERY_PDF == 0);
        } catch (RuntimeException | StackOverflowError | AssertionError e) {
            return Optional.of("was accepted, and writing it threw " + e + where(e));
        }
    }

    private static String where(Throwable thrown) {
        return " at " + Arrays.stream(thrown.getStackTrace()).limit(6).toList();
    }

    private Optional<String> fault(FileRefused refusal) {
        boolean keyed = false;
        for (Problem problem : refusal.problems()) {
            String sentence = problem.sentence();
            keyed |= !problem.place().path().isEmpty();
            if (sentence.split(" ").length < 3
                    || sentence.length() > 1_000
                    || MACHINE_WORDS.matcher(sentence).find()) {
                return Optional.of("not a sentence: " + problem);
            }
            if (!problem.place().path().isEmpty() && problem.place().line() == 0) {
                return Optional.of("a key without a line: " + problem);
            }
        }
        withKey.addAndGet(keyed ? 1 : 0);
        return Optional.empty();
    }

    @Override
    public String toString() {
        return accepted + " accepted, planned, written as text and data, of them " + written
                + " written in every form, " + refused + " refused, " + withKey + " with a key";
    }
}
