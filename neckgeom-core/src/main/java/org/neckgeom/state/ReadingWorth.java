package org.neckgeom.state;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.units.LengthStyle;

/**
 * What a possible reading is worth: how far the chance of breaking limits falls once it is taken and each deviation that can
 * still be put right is. Immutable.
 *
 * @param reading that the bench could take
 * @param worth sum over the limits of the fall in the chance of breaking each; 0 or more
 * @param helps the limit that it helps most, in words; empty where no correction is left, so that the reading is information alone
 */
public record ReadingWorth(PossibleReading reading, double worth, String helps) implements Answer {

    static final Form<ReadingWorth> FORM = Form.<ReadingWorth>of("reading-worth")
            .fact("name", Kind.NAME, "of the reading", one -> one.reading.name())
            .fact(
                    "u",
                    Kind.AMOUNT,
                    "standard uncertainty of one such reading",
                    one -> one.reading.standardUncertainty())
            .fact("worth", Kind.RATIO, "fall in the chances of breaking a limit, added up", ReadingWorth::worth)
            .fact("helps", Kind.NAME, "the limit that it helps most", ReadingWorth::helps)
            .finds("no-correction", one -> one.helps.isEmpty(), "{name}: nothing can be put right by it")
            .finds("helps", "{name}: takes {worth:percent digits 2} off the chance of a miss, most of {helps}");

    /**
     * Checks the parts.
     *
     * @param reading that the bench could take
     * @param worth sum over the limits of the fall in the chance of breaking each
     * @param helps the limit that it helps most
     */
    public ReadingWorth {
        Objects.requireNonNull(reading, "reading");
        Objects.requireNonNull(helps, "helps");
        worth = Checked.finite("worth", worth);
    }

    static List<ReadingWorth> ranked(Knowledge state, List<PossibleReading> possible, List<Requirement> wanted) {
        possible.forEach(one -> state.requireKnown(one.of()));
        wanted.forEach(one -> state.requireKnown(one.of()));
        List<Requirement> open =
                wanted.stream().filter(one -> one.correction().isPresent()).toList();
        double[] now = open.stream()
                .mapToDouble(one -> Math.min(outside(state, one), outsideCorrected(state, one)))
                .toArray();
        List<ReadingWorth> all = new ArrayList<>();
        for (PossibleReading reading : possible) {
            Knowledge then = state.read(reading.expected(state.solved()));
            double worth = 0.0;
            double most = 0.0;
            String helps = "";
            for (int i = 0; i < now.length; i++) {
                Requirement one = open.get(i);
                boolean informs =
                        then.solved().variance(one.of()) < state.solved().variance(one.of());
                double fall = informs ? Math.max(0.0, now[i] - outsideCorrected(then, one)) : 0.0;
                worth += fall;
                if (fall > most) {
                    most = fall;
                    helps = one.name();
                }
            }
            all.add(new ReadingWorth(reading, worth, helps));
        }
        all.sort(Comparator.comparingDouble(ReadingWorth::worth)
                .reversed()
                .thenComparing(one -> one.reading().name()));
        return List.copyOf(all);
    }

    private static double outside(Knowledge state, Requirement one) {
        return outside(state, one, one.of());
    }

    /** As it is once its mean is brought to 0 as well as it can be. */
    private static double outsideCorrected(Knowledge state, Requirement one) {
        String name = "correction of " + one.name();
        Deviation left = one.of().plusMm(-state.solved().mean(one.of())).plus(Deviation.of(name));
        return outside(
                state.with(
                        Cause.of(name, ErrorDistribution.normal(one.correction().orElseThrow()))),
                one,
                left);
    }

    private static double outside(Knowledge state, Requirement one, Deviation of) {
        return new Known(state, one.name(), of).outsideByOneSum(one.limits());
    }

    @Override
    public Form<ReadingWorth> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return reading.style();
    }

    /** Returns such as {@code thread at the bridge: takes 3.1 % off the chance of a miss, most of string line}. */
    @Override
    public String toString() {
        return text(style());
    }
}
