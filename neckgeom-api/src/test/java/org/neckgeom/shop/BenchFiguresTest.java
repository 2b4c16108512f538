package org.neckgeom.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.percent;

import org.junit.jupiter.api.Test;
import org.neckgeom.stock.Blank;

/** What a shop and a blank are asked for: as given, else the defaults that their keys name (common practice). */
class BenchFiguresTest {

    @Test
    void bench_isAsGivenElseOfCommonPractice() {
        BenchUncertainty usual = BenchUncertainty.withDefaults();
        BenchUncertainty own = usual.resolution(mm(0.02))
                .calliperZero(mm(0.015))
                .blankCalliperZero(mm(0.03))
                .cutScatter(mm(0.04), 10)
                .moveScatter(mm(0.05));

        assertThat(usual.resolutionMm()).isZero();
        assertThat(usual.calliperZeroMm()).isEqualTo(0.01);
        assertThat(usual.blankCalliperZeroMm()).isEmpty();
        assertThat(usual.cutScatterMm()).isEqualTo(0.02);
        assertThat(usual.moveScatterMm()).isEqualTo(0.02);
        assertThat(usual.isCutScatterDefault()).isTrue();
        assertThat(usual.cutScatterCuts()).isEmpty();
        assertThat(usual.toString()).contains("contained in it").doesNotContain("a step", "of the blank's");
        assertThat(own.resolutionMm()).isEqualTo(0.02);
        assertThat(own.calliperZeroMm()).isEqualTo(0.015);
        assertThat(own.blankCalliperZeroMm()).hasValue(0.03);
        assertThat(own.cutScatterMm()).isEqualTo(0.04);
        assertThat(own.moveScatterMm()).isEqualTo(0.05);
        assertThat(own.isCutScatterDefault()).isFalse();
        assertThat(own.cutScatterCuts()).hasValue(10);
        assertThat(own.toString())
                .contains("0.020 mm a step", "of the blank's", "from 10 cuts")
                .doesNotContain("contained in it");
    }

    /** Of n cuts a standard deviation has n - 1 degrees of freedom; a guess that may be off by a third has four (GUM G.4.2). */
    @Test
    void cutScatter_isKnownAsWellAsItsCuts() {
        BenchUncertainty usual = BenchUncertainty.withDefaults();

        assertThat(usual.cutScatterDegreesOfFreedom()).isEqualTo(4);
        assertThat(usual.cutScatter(mm(0.03)).cutScatterDegreesOfFreedom()).isInfinite();
        assertThat(usual.cutScatter(mm(0.03), 10).cutScatterDegreesOfFreedom()).isEqualTo(9);
    }

    @Test
    void rule_isAsGiven() {
        DecisionRule rule = DecisionRule.withDefaults()
                .conformanceProbability(percent(90))
                .spoiledNeck(300)
                .readingAgain(2)
                .trialCut(7)
                .fenceMove(3);

        assertThat(rule.conformanceProbability()).isEqualTo(0.9);
        assertThat(rule.spoiledNeckCost()).isEqualTo(300);
        assertThat(rule.readingAgainCost()).isEqualTo(2);
        assertThat(rule.trialCutCost()).isEqualTo(7);
        assertThat(rule.fenceMoveCost()).isEqualTo(3);
        assertThat(rule.readingAgain(0).readingAgainCost()).isZero();
    }

    @Test
    void blank_hasToSpareWhatIsGiven() {
        Blank plain = Blank.ofLength(mm(640)).section(mm(61), mm(20));

        assertThat(plain.hasSpare()).isFalse();
        assertThat(plain.endAllowanceMm()).isZero();
        assertThat(plain.edgeAllowanceMm()).isZero();
        assertThat(plain.endAllowance(mm(5)).hasSpare()).isTrue();
        assertThat(plain.endAllowance(mm(5)).endAllowanceMm()).isEqualTo(5);
        assertThat(plain.edgeAllowance(mm(2)).hasSpare()).isTrue();
        assertThat(plain.edgeAllowance(mm(2)).edgeAllowanceMm()).isEqualTo(2);
        assertThat(plain.planing(mm(0.5)).hasSpare()).isTrue();
        assertThat(plain.planing(mm(0.5)).planedThicknessMm()).isEqualTo(19);
        assertThat(plain.sawKerf(mm(1.8)).sawKerfMm()).isEqualTo(1.8);
    }
}
