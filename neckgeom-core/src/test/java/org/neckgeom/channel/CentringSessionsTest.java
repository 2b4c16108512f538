package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.units.Amount;

/** Whole centring sessions on invented machines: is the estimate's error as large as it says it is? */
@Tag("long")
class CentringSessionsTest {

    private static final int SESSIONS = 10_000;
    private static final double Z95 = 1.959963984540054;

    /**
     * Each session: a fence somewhere within 1.5 mm, a calliper with a zero error, a repeatability of its own, leaves with
     * tolerances, a fence that comes to rest as it likes; one to four moves by the nearest leaves, each followed by
     * another trial cut. The truth is known to the test alone. The 95 % interval of the last estimate must cover it in 94
     * to 96 % of the sessions (the standard deviation of that count is 0.22 %), and its mean square error in units of
     * its own u must be 1 (standard deviation 0.014).
     */
    @ParameterizedTest
    @ValueSource(longs = {20260101, 7, 4242})
    void intervals_coverTheTruthAsOftenAsTheySay(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int covered = 0;
        int within = 0;
        double promised = 0;
        double squares = 0;
        for (int session = 0; session < SESSIONS; session++) {
            Machine machine = new Machine(random);
            CentringRounds rounds = CentringRounds.start(machine.trial()).movesWithin(mm(machine.uFence));
            int moves = random.nextInt(1, 5);
            for (int move = 0; move < moves; move++) {
                LeafStack stack = rounds.move().leaves(machine.leaves);
                machine.move(stack, rounds.move().isTowardTheCutter());
                rounds = rounds.moved(stack).then(machine.trial());
            }
            double error = (rounds.estimate().amountMm() - machine.truth)
                    / rounds.estimate().uncertaintyMm();
            squares += error * error;
            covered += Math.abs(error) <= Z95 ? 1 : 0;
            promised += rounds.chanceWithin(mm(0.05)).ratio();
            within += Math.abs(machine.truth) <= 0.05 ? 1 : 0;
        }
        assertThat(100.0 * covered / SESSIONS)
                .as("covered percent, seed " + seed)
                .isBetween(94.0, 96.0);
        assertThat(squares / SESSIONS).as("mean square, seed " + seed).isBetween(0.93, 1.07);
        // The chance that was stated, summed over all sessions, against how many slots really lay within 0.05 mm; the
        // standard deviation of the count is at most 50.
        assertThat(within - promised).as("within 0.05 mm, seed " + seed).isBetween(-200.0, 200.0);
    }

    /**
     * The chance after one more move, stated before it is made, against how often it comes true: the leaves must be fine
     * for that, so the fence is moved by the estimate itself.
     */
    @ParameterizedTest
    @ValueSource(longs = {5, 55})
    void chanceAfterOneMore_comesTrueAsOftenAsStated(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int within = 0;
        double promised = 0;
        for (int session = 0; session < SESSIONS; session++) {
            Machine machine = new Machine(random);
            CentringRounds rounds = CentringRounds.start(machine.trial()).movesWithin(mm(machine.uFence));
            promised += rounds.chanceAfterOneMore(mm(0.04)).ratio();
            machine.truth -= rounds.estimate().amountMm() + machine.uFence * random.nextGaussian();
            within += Math.abs(machine.truth) <= 0.04 ? 1 : 0;
        }
        assertThat(within - promised).as("seed " + seed).isBetween(-200.0, 200.0);
    }

    /**
     * Sessions that follow the advice until it says to cut: the necks then cut are within the limit as often as was
     * promised of them, and nearly all sessions come to an end.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void next_leadsToNecksAsGoodAsPromised(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int cut = 0;
        int within = 0;
        double promised = 0;
        for (int session = 0; session < SESSIONS; session++) {
            Machine machine = new Machine(random);
            CentringRounds rounds = CentringRounds.start(machine.trial()).movesWithin(mm(machine.uFence));
            NextStep.Kind kind = rounds.next(mm(0.05)).kind();
            for (int step = 0; step < 20 && kind != NextStep.Kind.CUT && kind != NextStep.Kind.FINER_MEANS; step++) {
                if (kind == NextStep.Kind.MOVE) {
                    LeafStack stack = rounds.move().leaves(machine.leaves);
                    machine.move(stack, rounds.move().isTowardTheCutter());
                    rounds = rounds.moved(stack);
                }
                rounds = rounds.isConsistent()
                        ? rounds.then(machine.trial())
                        : CentringRounds.start(machine.trial()).movesWithin(mm(machine.uFence));
                kind = rounds.next(mm(0.05)).kind();
            }
            if (kind == NextStep.Kind.CUT) {
                cut++;
                promised += rounds.chanceWithin(mm(0.05)).ratio();
                within += Math.abs(machine.truth) <= 0.05 ? 1 : 0;
            }
        }
        assertThat(cut).as("sessions that came to cut, seed " + seed).isGreaterThan(9700);
        // The standard deviation of the count is about sqrt(10,000 * 0.987 * 0.013) = 11.
        assertThat(within - promised)
                .as("good necks against promised, seed " + seed)
                .isBetween(-60.0, 60.0);
    }

    private static final class Machine {
        private final SplittableRandom random;
        private final double uRead;
        private final double uFence;
        private final double leafHalfWidth;
        private final double zero;
        private final FeelerSet leaves;
        private double truth;

        private Machine(SplittableRandom random) {
            this.random = random;
            truth = random.nextDouble(-1.5, 1.5);
            uRead = random.nextDouble(0.005, 0.05);
            uFence = random.nextDouble(0.002, 0.04);
            leafHalfWidth = random.nextDouble(0.001, 0.01);
            zero = random.nextDouble(-0.3, 0.3);
            leaves = FeelerSet.metric20().eachWithin(mm(leafHalfWidth));
        }

        private Centring trial() {
            return Centring.of(
                    TrialCut.walls(read(27.5 + truth), read(27.5 - truth)).readWithin(mm(uRead)));
        }

        private Amount<Length> read(double wall) {
            return mm(wall + zero + uRead * random.nextGaussian());
        }

        private void move(LeafStack stack, boolean toward) {
            double real = uFence * random.nextGaussian();
            for (Amount<Length> leaf : stack.leaves()) {
                real += leaf.house() + random.nextDouble(-leafHalfWidth, leafHalfWidth);
            }
            truth -= toward ? real : -real;
        }
    }
}
