package org.neckgeom.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TrapezoidalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.measure.Limits;
import org.neckgeom.neck.Neck;
import org.neckgeom.units.LengthStyle;

/** The chance of many limits at once: points against the series, against plain trials, and its laws against a library. */
class GroupPointsTest {

    private static final Neck OCTAVE = ReferenceStates.neck("octave", 560, 14, 78, 6);
    private static final int TRIALS = 400_000;

    private static NeckErrors errors(boolean guessed) {
        return guessed ? NeckErrors.of(OCTAVE) : NeckErrors.of(OCTAVE).with(ReferenceStates.given());
    }

    private static Requirement wanted(String name, Deviation of, double limit) {
        return Requirement.of(name, of, Limits.within(mm(limit)));
    }

    private static List<Requirement> five(NeckErrors errors) {
        return List.of(
                wanted("line", errors.stringLine(), 0.7),
                wanted("board", errors.boardOnNeck(mm(310)), 0.2),
                wanted("wood", errors.woodEachSide(mm(15)), 0.12),
                wanted("projection", errors.projection(), 0.3),
                wanted("length", errors.stringLength(), 0.3));
    }

    private static List<Requirement> eight(NeckErrors errors) {
        List<Requirement> all = new ArrayList<>(five(errors));
        all.add(wanted("board at the nut", errors.boardOnNeck(mm(20)), 0.2));
        all.add(wanted("board between", errors.boardOnNeck(mm(150)), 0.2));
        all.add(wanted("wood in the middle", errors.woodEachSide(mm(200)), 0.12));
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

    private static Knowledge knowledge(NeckState state) {
        Knowledge all = Knowledge.of(state.causes(), LengthStyle.MILLIMETRES);
        for (NeckReading reading : state.readings()) {
            all = all.read(reading);
        }
        return all;
    }

    static Stream<NeckState> states() {
        return Stream.of(true, false)
                .flatMap(guessed -> Stream.of(errors(guessed).state(), read(errors(guessed))));
    }

    @ParameterizedTest
    @MethodSource("states")
    void chance_isTheSeries(NeckState state) {
        boolean guessed = state.causes().stream().anyMatch(Cause::isGuess);
        Knowledge known = knowledge(state);
        for (double factor : new double[] {0.8, 1, 1.4}) {
            for (Group group : Group.of(known, Known.solved(known, factor), factor, five(errors(guessed)))) {
                double series = GroupSeries.of(group, 1.0).chance(group);
                double[] points = new GroupPoints(group).chance(5e-5);

                assertThat(points[0]).isCloseTo(series, within(points[1] + GroupSeries.ACCURACY));
                assertThat(points[1]).isLessThan(1e-4);
            }
        }
    }

    /** Arcsine and trapezoidal causes, one of them a guess: the points take each by its distribution, the series by its waves. */
    @Test
    void chance_ofOtherLawsIsTheSeriesToo() {
        List<Cause> causes = List.of(
                new Cause("a", "x", ErrorDistribution.arcsine(mm(0.2)), Basis.GIVEN),
                new Cause("b", "x", ErrorDistribution.trapezoidal(mm(0.3), mm(0.1)), Basis.GIVEN),
                new Cause("c", "x", ErrorDistribution.trapezoidal(mm(0.2), mm(0.15)), Basis.COMMON_PRACTICE),
                new Cause("d", "x", ErrorDistribution.normal(mm(0.05)), Basis.GIVEN));
        Knowledge known = Knowledge.of(causes, LengthStyle.MILLIMETRES);
        Deviation a = Deviation.of("a");
        List<Requirement> wanted = List.of(
                wanted("one", a.plus(Deviation.of("b")).plus(Deviation.of("d")), 0.3),
                wanted("two", a.minus(Deviation.of("c")).plus(Deviation.of("d")), 0.25));
        List<Group> groups = Group.of(known, known.solved(), 1.0, wanted);

        assertThat(groups).hasSize(1);
        double series = GroupSeries.of(groups.get(0), 1.0).chance(groups.get(0));
        double[] points = new GroupPoints(groups.get(0)).chance(2e-5);
        assertThat(series).isBetween(0.3, 0.95);
        assertThat(points[1]).isLessThan(1e-4);
        assertThat(points[0]).isCloseTo(series, within(points[1] + GroupSeries.ACCURACY));
    }

    /** Plain trials of the causes, seeded: four standard errors are allowed. */
    @Test
    void chance_ofEightLimitsIsThatOfTrials() {
        NeckErrors errors = errors(false);
        List<Requirement> wanted = eight(errors);
        SplittableRandom random = new SplittableRandom(2_026L);
        List<Cause> causes = errors.causes();
        double[][] coefficients = wanted.stream()
                .map(one -> causes.stream()
                        .mapToDouble(cause -> one.of().coefficient(cause.name()))
                        .toArray())
                .toArray(double[][]::new);
        int kept = 0;
        double[] actual = new double[causes.size()];
        for (int t = 0; t < TRIALS; t++) {
            for (int i = 0; i < actual.length; i++) {
                actual[i] = draw(causes.get(i).spread(), random);
            }
            boolean all = true;
            for (int j = 0; all && j < coefficients.length; j++) {
                all = wanted.get(j).limits().allowLibrary(Solved.dot(coefficients[j], actual));
            }
            kept += all ? 1 : 0;
        }
        JointChance joint = errors.state().chanceOfAll(wanted);
        double share = (double) kept / TRIALS;

        assertThat(joint.error()).isLessThan(1e-4);
        assertThat(joint.probability())
                .isBetween(0.3, 0.95)
                .isCloseTo(share, within(4 * Math.sqrt(share * (1 - share) / TRIALS) + joint.error()));
    }

    private static double draw(ErrorDistribution<?> spread, SplittableRandom random) {
        return spread.libraryMean()
                + spread.libraryScale()
                        * switch (spread.law()) {
                            case NORMAL -> random.nextGaussian();
                            case RECTANGULAR -> 2 * random.nextDouble() - 1;
                            case TRIANGULAR -> random.nextDouble() - random.nextDouble();
                            case BIAS -> 0;
                            default -> throw new IllegalStateException(spread.toString());
                        };
    }

    /** Limits that follow from others change nothing. */
    @Test
    void chance_isNotChangedByALimitThatOthersImply() {
        for (NeckState state : states().toList()) {
            NeckErrors errors = errors(state.causes().stream().anyMatch(Cause::isGuess));
            JointChance joint = state.chanceOfAll(eight(errors));
            List<Requirement> more = new ArrayList<>(eight(errors));
            more.add(wanted("board a little wider", errors.boardOnNeck(mm(150)), 0.21));

            JointChance same = state.chanceOfAll(more);
            assertThat(same.probability()).isCloseTo(joint.probability(), within(joint.error() + same.error()));
        }
    }

    private static Group.Other other(ErrorDistribution<Length> spread, boolean guess) {
        Cause cause = new Cause("x", "x", spread, guess ? Basis.COMMON_PRACTICE : Basis.GIVEN);
        return new Group.Other(cause, 1.0, new double[] {1.0}, cause.ownLogDeviation());
    }

    static Stream<Group.Other> laws() {
        List<ErrorDistribution<Length>> spreads = List.of(
                ErrorDistribution.normal(mm(0.3)),
                ErrorDistribution.rectangular(mm(0.3)),
                ErrorDistribution.triangular(mm(0.3)),
                ErrorDistribution.trapezoidal(mm(0.3), mm(0.1)),
                ErrorDistribution.arcsine(mm(0.3)));
        return Stream.concat(
                spreads.stream().map(spread -> other(spread, false)),
                spreads.stream().limit(3).map(spread -> other(spread, true)));
    }

    @ParameterizedTest
    @MethodSource("laws")
    void quantile_isTheInverseOfTheDistribution(Group.Other one) {
        ColumnLaw law = ColumnLaw.of(one);

        for (double p = 0.001; p < 1; p += 0.0333) {
            assertThat(law.cdf(law.quantile(p))).isCloseTo(p, within(1e-5));
        }
        assertThat(law.cdf(-100)).isZero();
        assertThat(law.cdf(100)).isEqualTo(1);
    }

    /** Commons Statistics beside each law; of a guess its average over 2,000 scales. */
    @Test
    void cdf_isTheLibrarys() {
        for (double x = -0.45; x <= 0.45; x += 0.03) {
            double normal = NormalDistribution.of(0, 0.3).cumulativeProbability(x);
            assertThat(ColumnLaw.of(other(ErrorDistribution.normal(mm(0.3)), false))
                            .cdf(x))
                    .isCloseTo(normal, within(1e-12));
            assertThat(ColumnLaw.of(other(ErrorDistribution.rectangular(mm(0.3)), false))
                            .cdf(x))
                    .isCloseTo(UniformContinuousDistribution.of(-0.3, 0.3).cumulativeProbability(x), within(1e-12));
            assertThat(ColumnLaw.of(other(ErrorDistribution.triangular(mm(0.3)), false))
                            .cdf(x))
                    .isCloseTo(TriangularDistribution.of(-0.3, 0, 0.3).cumulativeProbability(x), within(1e-12));
            assertThat(ColumnLaw.of(other(ErrorDistribution.trapezoidal(mm(0.3), mm(0.1)), false))
                            .cdf(x))
                    .isCloseTo(
                            TrapezoidalDistribution.of(-0.3, -0.1, 0.1, 0.3).cumulativeProbability(x), within(1e-12));
            double average = 0;
            int scales = 2_000;
            for (int k = 0; k < scales; k++) {
                double z = NormalDistribution.of(0, 1).inverseCumulativeProbability((k + 0.5) / scales);
                average += UniformContinuousDistribution.of(
                                        -0.3 * Math.exp(Cause.GUESS * z), 0.3 * Math.exp(Cause.GUESS * z))
                                .cumulativeProbability(x)
                        / scales;
            }
            assertThat(ColumnLaw.of(other(ErrorDistribution.rectangular(mm(0.3)), true))
                            .cdf(x))
                    .isCloseTo(average, within(1e-4));
        }
    }
}
