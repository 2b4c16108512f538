package org.neckgeom.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.neck.Channel;
import org.neckgeom.neck.Head;
import org.neckgeom.neck.TrussRod;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;

/** Laws that the set-up keeps, each at 1,000 places or more. */
class SetupPropertiesTest {

    private static final long SEED = 20_261_128;
    private static final int CASES = 1_000;
    private static final List<ShopUnit<Length>> UNITS =
            List.of(ShopUnit.MILLIMETRE, ShopUnit.CENTIMETRE, ShopUnit.INCH, ShopUnit.THOU);

    private final SplittableRandom random = new SplittableRandom(SEED);

    private Amount<Length> inUnit(double millimetres) {
        return mm(millimetres).in(UNITS.get(random.nextInt(UNITS.size())));
    }

    /** Walls given in any units give the same offset, uncertainty and move. */
    @Test
    void centring_doesNotCareForUnits() {
        for (int i = 0; i < CASES; i++) {
            double a = random.nextDouble(20, 40);
            double b = random.nextDouble(20, 40);
            double u = random.nextDouble(0.005, 0.05);

            Centring metric = Centring.of(TrialCut.walls(mm(a), mm(b)).repeatability(mm(u)));
            Centring mixed = Centring.of(TrialCut.walls(inUnit(a), inUnit(b)).repeatability(inUnit(u)));

            assertThat(mixed.offset().amountMm())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(metric.offset().amountMm(), within(1e-13));
            assertThat(mixed.offset().uncertaintyMm())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(metric.offset().uncertaintyMm(), within(1e-15));
            assertThat(mixed.move().isTowardTheCutter())
                    .as("seed %d, case %d", SEED, i)
                    .isEqualTo(metric.move().isTowardTheCutter());
        }
    }

    /** The piece turned end for end shows the opposite offset, as sure as before. */
    @Test
    void centring_turnsItsSignInTheMirror() {
        for (int i = 0; i < CASES; i++) {
            double a = random.nextDouble(20, 40);
            double b = random.nextDouble(20, 40);

            Centring one = Centring.of(TrialCut.walls(mm(a), mm(b)).repeatability(mm(0.02)));
            Centring other = Centring.of(TrialCut.walls(mm(b), mm(a)).repeatability(mm(0.02)));

            assertThat(other.offset().amountMm())
                    .as("seed %d, case %d", SEED, i)
                    .isEqualTo(-one.offset().amountMm());
            assertThat(other.offset().uncertaintyMm())
                    .as("seed %d, case %d", SEED, i)
                    .isEqualTo(one.offset().uncertaintyMm());
        }
    }

    /** After the advised move the same walls would read alike: the move undoes the offset. */
    @Test
    void move_undoesTheOffset() {
        for (int i = 0; i < CASES; i++) {
            double a = random.nextDouble(20, 40);
            double b = random.nextDouble(20, 40);
            Centring centring = Centring.of(TrialCut.walls(mm(a), mm(b)).repeatability(mm(0.001)));
            FenceMove move = centring.move();

            double moved = move.isTowardTheCutter() ? -move.amountMm() : move.amountMm();

            assertThat(a + moved).as("seed %d, case %d", SEED, i).isCloseTo(b - moved, within(1e-12));
        }
    }

    /** A reading more never makes an offset less sure, and readings without moves count in any order. */
    @Test
    void rounds_growSurerInAnyOrder() {
        for (int i = 0; i < CASES; i++) {
            TrialCut[] cuts = new TrialCut[3];
            double slot = random.nextDouble(-0.02, 0.02);
            for (int n = 0; n < cuts.length; n++) {
                double read = slot + random.nextDouble(-0.01, 0.01);
                cuts[n] = TrialCut.walls(mm(30 + read), mm(30 - read)).repeatability(mm(random.nextDouble(0.01, 0.04)));
            }

            CentringRounds two = CentringRounds.of(cuts[0]).trialCut(cuts[1]);
            CentringRounds three = two.trialCut(cuts[2]);
            CentringRounds other = CentringRounds.of(cuts[2]).trialCut(cuts[0]).trialCut(cuts[1]);

            assertThat(three.estimate().uncertaintyMm())
                    .as("seed %d, case %d", SEED, i)
                    .isLessThan(two.estimate().uncertaintyMm());
            assertThat(other.estimate().amountMm())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(three.estimate().amountMm(), within(1e-13));
        }
    }

    /** A leaf more in the set never brings the nearest stack farther from the wanted height. */
    @Test
    void leaves_comeNearerWithALargerSet() {
        for (int i = 0; i < CASES; i++) {
            double[] set = random.doubles(4 + random.nextInt(8), 0.03, 1).toArray();
            double[] larger = Arrays.copyOf(set, set.length + 1);
            larger[set.length] = random.nextDouble(0.03, 1);
            double wanted = random.nextDouble(0.05, 2.5);

            double one = Math.abs(sum(set, wanted, 4) - wanted);

            assertThat(Math.abs(sum(larger, wanted, 4) - wanted))
                    .as("seed %d, case %d", SEED, i)
                    .isLessThanOrEqualTo(one + 1e-12);
            assertThat(one)
                    .as("seed %d, case %d", SEED, i)
                    .isLessThanOrEqualTo(Math.abs(sum(set, wanted, 3) - wanted) + 1e-12);
        }
    }

    private static double sum(double[] set, double wanted, int most) {
        return Arrays.stream(LeafSearch.nearest(set, wanted, most))
                .mapToDouble(n -> set[n])
                .sum();
    }

    /** Passes add up to the depth, none is deeper than allowed, and a stricter rule never takes fewer. */
    @Test
    void passes_addUpAndGrowWithTheRule() {
        for (int i = 0; i < CASES; i++) {
            double depth = random.nextDouble(6, 16);
            double most = random.nextDouble(1, 5);
            double stricter = most * random.nextDouble(0.5, 1);

            PassPlan plan = Passes.noDeeperThan(mm(most)).to(mm(depth));
            PassPlan finer = Passes.noDeeperThan(mm(stricter)).to(mm(depth));

            assertThat(plan.passes().stream()
                            .mapToDouble(pass -> pass.step().libraryValue())
                            .sum())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(depth, within(1e-12));
            assertThat(plan.passes())
                    .as("seed %d, case %d", SEED, i)
                    .allMatch(pass -> pass.step().libraryValue() <= most * (1 + 1e-12));
            assertThat(finer.passes().size())
                    .as("seed %d, case %d", SEED, i)
                    .isGreaterThanOrEqualTo(plan.passes().size());
        }
    }

    /** A head swung the other way, at the fence it swings to, stands as this one at its own. */
    @Test
    void head_isMirroredByTheFenceOnItsOwnSide() {
        Fence fence = Fence.onePiece(mm(900));
        for (int i = 0; i < CASES; i++) {
            double swing = random.nextDouble(-4, 4);
            Head head = Head.angled(deg(random.nextDouble(1, 17)))
                    .length(mm(random.nextDouble(120, 200)))
                    .width(mm(random.nextDouble(60, 90)));
            Blank blank =
                    Blank.ofLength(mm(random.nextDouble(450, 700))).section(mm(random.nextDouble(55, 70)), mm(20));

            HeadInterference one = HeadInterference.of(head.swung(deg(swing)), blank, fence);
            HeadInterference other = HeadInterference.of(head.swung(deg(-swing)), blank, fence);

            assertThat(other.proud().libraryValue())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(one.proud().libraryValue(), within(1e-12));
            assertThat(Math.abs(other.skew().at(mm(100)).amountMm()))
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(Math.abs(one.skew().at(mm(100)).amountMm()), within(1e-12));
        }
    }

    /** An arched floor is the same from either end, deepest in the middle, and twice as large at twice the size. */
    @Test
    void arch_isSymmetricAndScales() {
        for (int i = 0; i < CASES; i++) {
            double length = random.nextDouble(200, 500);
            double arch = random.nextDouble(0.5, 8);
            double x = random.nextDouble(0, 1) * length;
            RodSlot slot = slot(length, arch, 1);
            String at = "seed " + SEED + ", case " + i;

            double depth = slot.depthAt(mm(x)).libraryValue();

            assertThat(slot.depthAt(mm(length - x)).libraryValue()).as(at).isCloseTo(depth, within(1e-11));
            assertThat(depth).as(at).isLessThanOrEqualTo(slot.depth().deepestMm() + 1e-12);
            assertThat(slot(length, arch, 2).depthAt(mm(2 * x)).libraryValue())
                    .as(at)
                    .isCloseTo(2 * depth, within(1e-11));
        }
    }

    private static RodSlot slot(double length, double arch, double k) {
        return RodSlot.of(Channel.forRod(TrussRod.singleAction(mm(k * length), mm(k * 5)))
                .depthClearance(mm(k))
                .arch(mm(k * arch)));
    }

    /** Stops for the heel end leading are those for the head end leading, changed over; turned twice nothing is changed. */
    @Test
    void stops_turnedTwiceAreTheSame() {
        for (int i = 0; i < CASES; i++) {
            double cutter = random.nextDouble(4, 8);
            StopBlocks stops = RodSlot.of(Channel.forRod(TrussRod.twoWay(mm(random.nextDouble(200, 400)))
                                    .section(mm(cutter), mm(9)))
                            .startingAt(mm(random.nextDouble(1, 20))))
                    .stops(
                            Cutter.straight(mm(cutter)),
                            Blank.ofLength(mm(random.nextDouble(600, 900))).section(mm(61), mm(20)));

            assertThat(stops.turned().turned()).as("seed %d, case %d", SEED, i).isEqualTo(stops);
            assertThat(stops.turned().front()).as("seed %d, case %d", SEED, i).isEqualTo(stops.rear());
        }
    }

    /** A turned pass widens a slot by twice its offset, so the offset is found again. */
    @Test
    void turnedPass_findsTheOffsetAgain() {
        for (int i = 0; i < CASES; i++) {
            double slot = random.nextDouble(4, 8);
            double offset = random.nextDouble(0.05, 1);

            assertThat(FlippedPass.widened(inUnit(slot), inUnit(slot + 2 * offset))
                            .offset()
                            .size()
                            .libraryValue())
                    .as("seed %d, case %d", SEED, i)
                    .isCloseTo(offset, within(1e-13));
        }
    }
}
