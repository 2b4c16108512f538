package org.neckgeom.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.BlankOnFence;
import org.neckgeom.channel.Centring;
import org.neckgeom.channel.CentringRounds;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.channel.SlotStep;
import org.neckgeom.channel.SlotVerdict;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.shop.BenchUncertainty;
import org.neckgeom.shop.Cutter;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Shop;
import org.neckgeom.shop.TrialCut;
import org.neckgeom.stock.Blank;

/** "May I cut the neck?", asked of whole plans whose readings once got a wrong yes. Each case was computed by hand. */
class MayICutTest {

    private static final BenchUncertainty BENCH =
            BenchUncertainty.withDefaults().repeatability(mm(0.02)).cutScatter(mm(0.02));
    private static final Shop SHOP = Shop.with(Cutter.straight(mm(6))).uncertainty(BENCH);

    private static Blank blank(double outOfParallel) {
        return Blank.ofLength(mm(640)).section(mm(61), mm(20)).nutAt(mm(200)).outOfParallel(mm(outOfParallel));
    }

    private static Job plan(Blank blank, Shop shop) {
        return Job.of(SampleNecks.octaveMandolin(), blank, shop)
                .limits(NeckLimits.withDefaults().slotOffset(mm(0.1)));
    }

    private static TrialCut cut(double near, double far, double slot, double piece) {
        return TrialCut.walls(mm(near), mm(far)).slot(mm(slot)).piece(mm(piece));
    }

    private static PlanCheck channel(Job plan) {
        return plan.plan().checks().stream()
                .filter(check -> check.name().equals("channel centred"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void pieceWiderThanTheBlank_isNotTheBlank() {
        Job wider = plan(blank(0.06), SHOP).trialCut(cut(27.79, 27.79, 6.02, 61.60));
        Job muchWider = plan(blank(0.06), SHOP).trialCut(cut(30.50, 30.52, 6.02, 67.04));

        // The slot's middle lies 27.79 + 3.01 = 30.80 from the fence, the blank's 30.50.
        assertThat(wider.plan().slotPlace().offsetMmAt(120)).isCloseTo(0.30, within(1e-9));
        assertThat(muchWider.plan().slotPlace().offsetMmAt(120)).isCloseTo(3.01, within(1e-9));
        for (Job plan : new Job[] {wider, muchWider}) {
            assertThat(plan.plan().slot().mayCut()).isFalse();
            assertThat(channel(plan).outcome()).isEqualTo(Outcome.OPEN);
            assertThat(plan.plan().slot().move().isTowardTheCutter()).isTrue();
        }
        // The same question of the readings alone.
        assertThat(Centring.of(cut(27.79, 27.79, 6.02, 61.60))
                        .onWidth(mm(61))
                        .offset()
                        .amountMm())
                .isCloseTo(0.30, within(1e-9));
    }

    @Test
    void edgesOutOfParallel_areSquaredFirst() {
        for (double wider : new double[] {1.5, 8}) {
            Job plan = plan(blank(wider), SHOP).trialCut(cut(27.49, 27.49, 6.02, 61.00));

            // Half of the taper over the 300.5 mm of the channel is over 0.2, twice the limit, with the fence set to
            // the best.
            assertThat(plan.plan().slot().step()).isEqualTo(SlotStep.SQUARE_EDGES);
            assertThat(channel(plan).outcome()).isEqualTo(Outcome.STOP);
            assertThat(channel(plan).todo()).startsWith("Plane the blank's edges parallel");
        }
        Job tapered = plan(blank(1.5), SHOP).trialCut(cut(27.49, 27.49, 6.02, 61.00));
        assertThat(tapered.plan().slotPlace().start().amountMm()).isCloseTo(0.137, within(5e-4));
        assertThat(tapered.plan().slotPlace().end().amountMm()).isCloseTo(-0.2145, within(1e-4));
    }

    @Test
    void sectionAndCheck_haveOneAnswer() {
        Job plan = plan(blank(0.06), SHOP)
                .trialCut(cut(26.84, 28.26, 6.02, 61.12))
                .fenceMoved(FenceMove.away(mm(0.71)))
                .trialCut(cut(27.65, 27.45, 6.02, 61.12));
        SlotVerdict verdict = plan.plan().slot();

        assertThat(channel(plan).todo()).isEqualTo(verdict.sentence());
        assertThat(channel(plan).outcome() == Outcome.OK).isEqualTo(verdict.mayCut());
        String section = plan.plan().sections().stream()
                .filter(s -> s.title().equals("Centre the cutter"))
                .findFirst()
                .orElseThrow()
                .toString();
        assertThat(section).contains(verdict.toString().lines().findFirst().orElseThrow());
    }

    @Test
    void splitFenceOutOfLine_movesTheSlot() {
        TrialCut centred = cut(27.49, 27.49, 6.02, 61.00);
        Job inLine = plan(blank(0), SHOP).trialCut(centred);
        Job out = plan(blank(0), SHOP.fence(Fence.split(mm(600), mm(1)))).trialCut(centred);

        assertThat(inLine.plan().slot().mayCut()).isTrue();
        // slot-cases: a trial piece of 200 mm read at its middle saw 0.909 of the step, the blank sees 0.968 and 0.932
        // of it.
        assertThat(out.plan().slotPlace().start().amountMm()).isCloseTo(-0.0587, within(1e-4));
        assertThat(out.plan().slotPlace().end().amountMm()).isCloseTo(-0.0227, within(3e-4));
        assertThat(out.plan().slot().mayCut()).isFalse();
    }

    @Test
    void twoCutsAtOneSettingDiffer_soAClaimIsLess() {
        Job known =
                plan(blank(0), SHOP.uncertainty(BENCH.cutScatter(mm(0.03)))).trialCut(cut(27.49, 27.49, 6.02, 61.00));

        // u^2 = 0.0003 of the readings, 0.0009 twice; 0.0001 of the blank's width at each end.
        assertThat(known.plan().slot().chance().getAsDouble()).isLessThan(0.965).isGreaterThan(0.9);
        assertThat(known.plan().slot().chance().getAsDouble())
                .isLessThan(plan(blank(0), SHOP)
                        .trialCut(cut(27.49, 27.49, 6.02, 61.00))
                        .plan()
                        .slot()
                        .chance()
                        .getAsDouble());
    }

    @Test
    void wallsAlone_doNotPlaceTheSlotInTheBlank() {
        Job plan = plan(blank(0.06), SHOP).trialCut(TrialCut.walls(mm(27.49), mm(27.49)));

        assertThat(plan.plan().slot().step()).isEqualTo(SlotStep.MEASURE_PIECE);
        assertThat(channel(plan).outcome()).isEqualTo(Outcome.OPEN);
        Job ripped = plan(blank(0.06), SHOP)
                .trialCut(TrialCut.walls(mm(27.49), mm(27.49)).rippedWithBlank(mm(0.02)));
        assertThat(ripped.plan().slot().chance().getAsDouble()).isGreaterThan(0.95);
    }

    /** Plan and shell are asked the same 10,000 sessions: one answer in step and chance. */
    @Test
    @Tag("long")
    void planAndRounds_agreeInEverySession() {
        SplittableRandom random = new SplittableRandom(16);
        for (int session = 0; session < 10_000; session++) {
            Blank blank = blank(random.nextInt(3) == 0 ? random.nextDouble(-0.4, 0.4) : 0.06);
            Fence fence = random.nextInt(4) == 0
                    ? Fence.split(mm(600), mm(random.nextDouble(-0.1, 0.1)))
                    : random.nextInt(4) == 0
                            ? Fence.pivoting(mm(800)).fromPivot(mm(300), mm(600))
                            : Fence.onePiece(mm(600));
            Shop shop = SHOP.fence(fence).uncertainty(random.nextBoolean() ? BENCH : BenchUncertainty.withDefaults());
            Job plan = plan(blank, shop);
            CentringRounds rounds = CentringRounds.on(
                            BlankOnFence.of(blank, plan.neck().channel().orElseThrow(), fence))
                    .bench(shop.uncertainty())
                    .leaves(shop.feelerGauges());
            double offset = random.nextDouble(-0.3, 0.3);
            for (int i = random.nextInt(1, 4); i > 0; i--) {
                double slip = random.nextInt(12) == 0 ? 0.5 : 0;
                TrialCut cut = cut(27.49 + offset + slip, 27.49 - offset, 6.02, 61);
                plan = plan.trialCut(cut);
                rounds = rounds.trialCut(cut);
                if (random.nextBoolean()) {
                    FenceMove move = offset < 0 ? FenceMove.away(mm(-offset)) : FenceMove.toward(mm(offset));
                    plan = plan.fenceMoved(move);
                    rounds = rounds.fenceMoved(move);
                    offset = random.nextDouble(-0.05, 0.05);
                }
            }
            SlotVerdict ofPlan = plan.plan().slot();
            SlotVerdict ofRounds = rounds.next(mm(0.1));
            assertThat(ofPlan.step()).as("session " + session).isEqualTo(ofRounds.step());
            assertThat(ofPlan.chance()).as("session " + session).isEqualTo(ofRounds.chance());
            if (session % 100 == 0) {
                assertThat(channel(plan).outcome() == Outcome.OK).isEqualTo(ofPlan.mayCut());
            }
        }
    }
}
