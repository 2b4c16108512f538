package org.neckgeom.budget;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;
import org.neckgeom.fault.NoAnswer;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.form.ValueAnswer;
import org.neckgeom.kernel.Mix;
import org.neckgeom.measure.Limits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnit;

/**
 * A {@index "Monte Carlo"} simulation (propagation of distributions), not yet run (JCGM 101:2008). Immutable; every {@code
 * with...} returns another question.
 *
 * <p>The same seed gives the same bits, for any number of threads and on any machine. Defaults: as many threads as the
 * machine has processors, values kept so that quantiles can be read off (8 bytes a trial), no limits counted.
 *
 * @param <Q> the kind of the result
 */
public final class Simulation<Q extends Quantity<Q>> extends ValueAnswer {

    /** Most trials whose values are kept. */
    public static final int MOST_KEPT = 100_000_000;

    private static final int MOST_THREADS = 64;

    private static final Form<Simulation<?>> FORM = Form.<Simulation<?>>of("simulation")
            .fact("title", Kind.NAME, "name of the result", trials -> trials.title)
            .fact("seed", Kind.WHOLE, "of the trials", trials -> trials.seed)
            .factIfAny("limits", Kind.LIMITS, "to be counted within", t -> Optional.ofNullable(t.limits))
            .phrase("held", ", limits {limits:own fine}")
            .finds("not-run", "{title}: trials from seed {seed}, not run yet: ask trials(...){held}");

    private final String title;
    private final BlockEngine.FillerSource source;
    private final double reference;
    private final long seed;
    private final ShopUnit<Q> unit;
    private final int threads;
    private final boolean keep;
    private final boolean hasDeviation;
    private final @Nullable Limits<Q> limits;

    Simulation(
            String title,
            BlockEngine.FillerSource source,
            double reference,
            long seed,
            boolean hasDeviation,
            ShopUnit<Q> unit) {
        this(
                title,
                source,
                reference,
                seed,
                unit,
                Runtime.getRuntime().availableProcessors(),
                true,
                hasDeviation,
                null);
    }

    private Simulation(
            String title,
            BlockEngine.FillerSource source,
            double reference,
            long seed,
            ShopUnit<Q> unit,
            int threads,
            boolean keep,
            boolean hasDeviation,
            @Nullable Limits<Q> limits) {
        super(FORM, LengthStyle.ofUnit(unit));
        this.title = title;
        this.source = source;
        this.reference = reference;
        this.seed = seed;
        this.unit = unit;
        this.threads = threads;
        this.keep = keep;
        this.hasDeviation = hasDeviation;
        this.limits = limits;
    }

    /**
     * {@return the same question to a number of threads; the answer has the same bits}
     *
     * @param count 1 to 64
     */
    public Simulation<Q> withThreads(int count) {
        if (count < 1 || count > MOST_THREADS) {
            throw Refusal.of("threads", "range", "be 1 to " + MOST_THREADS, "were", count);
        }
        return new Simulation<>(title, source, reference, seed, unit, count, keep, hasDeviation, limits);
    }

    /**
     * {@return the same question with the trials inside the limits counted as they come}
     *
     * @param allowed what is allowed
     */
    public Simulation<Q> withLimits(Limits<Q> allowed) {
        return new Simulation<>(title, source, reference, seed, unit, threads, keep, hasDeviation, allowed);
    }

    /**
     * {@return the same question without keeping values: any number of trials in the same memory, for mean, deviation
     * and the yield within the limits stated beforehand, but no quantiles}
     */
    public Simulation<Q> withoutQuantiles() {
        return new Simulation<>(title, source, reference, seed, unit, threads, false, hasDeviation, limits);
    }

    /**
     * {@return what a number of trials came to}
     *
     * @param count 2 or more, at most {@link #MOST_KEPT} unless {@link #withoutQuantiles}
     */
    public Simulated<Q> trials(long count) {
        if (count < 2) {
            throw Refusal.of("trials", "at-least", "be 2 or more", "were", count);
        }
        if (keep && count > MOST_KEPT) {
            throw Refusal.of(
                    "trials",
                    "at-most",
                    "be " + MOST_KEPT + " or fewer",
                    "were",
                    count + "; withoutQuantiles() takes any number");
        }
        return new Simulated<>(title, tally(seed, count), reference, hasDeviation, limits, null, unit);
    }

    BlockEngine.Tally tally(long itsSeed, long count) {
        double low = limits == null ? Double.NEGATIVE_INFINITY : limits.libraryLower() - reference;
        double high = limits == null ? Double.POSITIVE_INFINITY : limits.libraryUpper() - reference;
        return new BlockEngine(source, itsSeed, threads).run(count, low, high, keep);
    }

    /**
     * Runs batches of trials until mean, deviation and both ends of the coverage interval stand still: twice the standard
     * deviation of the mean of each, over the batches, is within the numerical tolerance of the standard deviation taken
     * to so many significant digits. Source: JCGM 101:2008, 7.9.4. Where an input has no standard deviation, Student's law of
     * 2 degrees of freedom or fewer, the ends alone must stand still, by the interval's width over that of a normal law.
     *
     * @param coverage more than 0 and less than 100 percent
     * @param digits significant digits wanted of the standard deviation, 1 or 2
     * @return the answer of all batches together
     * @throws ArithmeticException if {@link #MOST_KEPT} trials do not suffice
     */
    public Simulated<Q> adaptive(Quantity<Dimensionless> coverage, int digits) {
        double p = LibraryUnits.probability(coverage, "coverage");
        if (digits < 1 || digits > 2) {
            throw Refusal.of("digits", "range", "be 1 or 2", "were", digits);
        }
        AdaptiveRun run = new AdaptiveRun(p, digits, !hasDeviation);
        Simulation<Q> kept =
                new Simulation<>(title, source, reference, seed, unit, threads, true, hasDeviation, limits);
        int batches = 0;
        while (!run.isStable()) {
            if ((batches + 1L) * run.batchSize() > MOST_KEPT) {
                throw NoAnswer.because(
                        "trials",
                        "unsettled",
                        "the result of " + title + " does not settle to " + digits + " digits within " + MOST_KEPT
                                + " trials");
            }
            run.add(kept.tally(Mix.of(seed) + batches, run.batchSize()));
            batches++;
        }
        Simulated.Settled settled = new Simulated.Settled(digits, batches, run.batchSize());
        return new Simulated<>(title, run.tallyWithValues(), reference, hasDeviation, limits, settled, unit);
    }

    @Override
    protected Object[] parts() {
        return new Object[] {
            title, source, reference, seed, unit.kind(), threads, keep, hasDeviation, Optional.ofNullable(limits)
        };
    }
}
