package org.neckgeom.bench;

import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.state.Cause;
import org.neckgeom.state.Deviation;
import org.neckgeom.state.JointChance;
import org.neckgeom.state.Known;
import org.neckgeom.state.NeckErrors;
import org.neckgeom.state.NeckReading;
import org.neckgeom.state.NeckState;
import org.neckgeom.state.Requirement;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The state of a neck: all answers of sixty causes and twenty readings beside the bare update, and joint chances. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xms256m", "-Xmx256m", "-XX:+AlwaysPreTouch"})
public class StateBenchmark {

    private static final int CAUSES = 60;
    private static final int READINGS = 20;
    private static final Limits<Length> HALF = Limits.within(mm(0.5));

    private final double[] sds = new double[CAUSES];
    private final double[][] rows = new double[READINGS][CAUSES];
    private final double[] values = new double[READINGS];
    private final double[] wanted = new double[CAUSES];
    private final List<Cause> causes = new ArrayList<>();
    private final List<NeckReading> readings = new ArrayList<>();
    private final Deviation deviation;

    private final NeckErrors errors = NeckErrors.of(SampleNecks.octaveMandolin())
            .with(Workmanship.withDefaults()
                    .centring(ErrorDistribution.normal(mm(0.02)))
                    .edge(ErrorDistribution.rectangular(mm(0.1)))
                    .locating(ErrorDistribution.rectangular(mm(0.05)))
                    .cutting(ErrorDistribution.normal(mm(0.06)))
                    .gluing(ErrorDistribution.rectangular(mm(0.08)))
                    .fitting(ErrorDistribution.triangular(mm(0.06)))
                    .stopping(ErrorDistribution.rectangular(mm(0.15))));
    private final NeckErrors guesses = NeckErrors.of(SampleNecks.octaveMandolin());
    private final List<Requirement> eight = limits(errors, true);
    private final List<Requirement> fiveOfGuesses = limits(guesses, false);
    private final NeckState unread = errors.state();
    private final NeckState read = read(errors);
    private final NeckState unreadGuesses = guesses.state();
    private final NeckState readGuesses = read(guesses);

    /** Every reading of five causes, every cause of its own size. */
    public StateBenchmark() {
        SplittableRandom random = new SplittableRandom(60);
        for (int i = 0; i < CAUSES; i++) {
            sds[i] = 0.05 + 0.1 * random.nextDouble();
            causes.add(Cause.of("cause " + i, ErrorDistribution.normal(mm(sds[i]))));
        }
        for (int r = 0; r < READINGS; r++) {
            Deviation of = Deviation.none();
            for (int k = 0; k < 5; k++) {
                int cause = random.nextInt(CAUSES);
                double by = random.nextGaussian();
                rows[r][cause] += by;
                of = of.plus(Deviation.of("cause " + cause).times(by));
            }
            values[r] = 0.05 * random.nextGaussian();
            readings.add(new NeckReading("reading " + r, of, Estimate.of(mm(values[r]), mm(0.02))));
        }
        Deviation all = Deviation.none();
        for (int k = 0; k < 12; k++) {
            int cause = random.nextInt(CAUSES);
            wanted[cause] += 1;
            all = all.plus(Deviation.of("cause " + cause));
        }
        deviation = all;
    }

    private static List<Requirement> limits(NeckErrors errors, boolean more) {
        List<Requirement> all = new ArrayList<>(List.of(
                Requirement.of("line", errors.stringLine(), Limits.within(mm(1))),
                Requirement.of("board", errors.boardOnNeck(mm(310)), Limits.within(mm(0.3))),
                Requirement.of("wood", errors.woodEachSide(mm(15)), Limits.within(mm(0.2))),
                Requirement.of("projection", errors.projection(), Limits.within(mm(0.4))),
                Requirement.of("length", errors.stringLength(), Limits.within(mm(0.4)))));
        if (more) {
            all.add(Requirement.of("board at the nut", errors.boardOnNeck(mm(20)), Limits.within(mm(0.3))));
            all.add(Requirement.of("board between", errors.boardOnNeck(mm(150)), Limits.within(mm(0.3))));
            all.add(Requirement.of("wood in the middle", errors.woodEachSide(mm(200)), Limits.within(mm(0.2))));
        }
        return all;
    }

    private static NeckState read(NeckErrors errors) {
        return errors.state()
                .read(new NeckReading("thread", errors.stringLine(), Estimate.of(mm(0.1), mm(0.1))))
                .read(new NeckReading(
                        "board",
                        errors.fingerboard(mm(250)).minus(errors.channel(mm(250))),
                        Estimate.of(mm(0.03), mm(0.02))));
    }

    /** From a list of causes and readings: estimate, chance, shares, and whether the readings agree. */
    @Benchmark
    public double allAnswers() {
        NeckState state = NeckState.of(causes);
        for (NeckReading reading : readings) {
            state = state.read(reading);
        }
        return answers(state);
    }

    private double answers(NeckState state) {
        Known known = state.known("it", deviation);
        return known.estimate().libraryUncertainty()
                + known.chance(HALF).outside()
                + known.shares().size()
                + state.agreement().chiSquare();
    }

    /** The update alone, twenty times on a matrix of sixty by sixty: what the answers rest on. */
    @Benchmark
    public double bareUpdate() {
        int n = CAUSES;
        double[] f = new double[n * n];
        double[] z = new double[n];
        for (int i = 0; i < n; i++) {
            f[i * n + i] = 1;
        }
        double[] fh = new double[n];
        for (int r = 0; r < READINGS; r++) {
            Arrays.fill(fh, 0);
            double expected = 0;
            for (int i = 0; i < n; i++) {
                double h = rows[r][i] * sds[i];
                expected += h * z[i];
                for (int k = 0; k < n; k++) {
                    fh[k] += h * f[i * n + k];
                }
            }
            double known = 0;
            for (int k = 0; k < n; k++) {
                known += fh[k] * fh[k];
            }
            double all = known + 0.02 * 0.02;
            double less = 1 / (1 + 0.02 / Math.sqrt(all));
            for (int j = 0; j < n; j++) {
                double sum = 0;
                for (int k = 0; k < n; k++) {
                    sum += f[j * n + k] * fh[k];
                }
                double gain = sum / all;
                z[j] += gain * (values[r] - expected);
                for (int k = 0; k < n; k++) {
                    f[j * n + k] -= gain * less * fh[k];
                }
            }
        }
        double square = 0;
        for (int k = 0; k < n; k++) {
            double sum = 0;
            for (int i = 0; i < n; i++) {
                sum += wanted[i] * sds[i] * f[i * n + k];
            }
            square += sum * sum;
        }
        return Math.sqrt(square);
    }

    /** Eight limits, the spreads known, nothing read. */
    @Benchmark
    public JointChance eightLimits() {
        return unread.chanceOfAll(eight);
    }

    /** Eight limits, the spreads known, two readings. */
    @Benchmark
    public JointChance eightLimitsAfterReadings() {
        return read.chanceOfAll(eight);
    }

    /** A plan's five limits, every spread a guess. */
    @Benchmark
    public JointChance fiveLimitsOfGuesses() {
        return unreadGuesses.chanceOfAll(fiveOfGuesses);
    }

    /** A plan's five limits, every spread a guess, two readings. */
    @Benchmark
    public JointChance fiveLimitsOfGuessesAfterReadings() {
        return readGuesses.chanceOfAll(fiveOfGuesses);
    }

    /** The eight limits for another program: how many, their covariances row by row, their half-widths, the error of our chance. */
    static String[] eightLimitsAsWords() {
        StateBenchmark from = new StateBenchmark();
        List<String> words = new ArrayList<>(List.of(String.valueOf(from.eight.size())));
        for (Requirement one : from.eight) {
            for (Requirement other : from.eight) {
                double both = from.variance(one.of().plus(other.of()));
                double apart = from.variance(one.of().minus(other.of()));
                words.add(String.valueOf((both - apart) / 4));
            }
        }
        from.eight.forEach(one -> words.add(String.valueOf(one.limits().libraryUpper())));
        words.add(String.valueOf(from.eightLimits().error()));
        return words.toArray(String[]::new);
    }

    private double variance(Deviation of) {
        double sd = unread.known("it", of).estimate().libraryUncertainty();
        return sd * sd;
    }
}
