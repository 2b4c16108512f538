package org.neckgeom.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.neck.BackProfile;
import org.neckgeom.neck.Fingerboard;
import org.neckgeom.neck.Neck;

class NeckTreeTest {

    private static final Neck DESIGN = Neck.named("steel-string")
            .scale(mm(648))
            .fingerboard(Fingerboard.tapered(mm(43), mm(57)))
            .back(BackProfile.between(mm(14), mm(16)))
            .bodyAtFret(14);

    @Test
    void stringLine_doesNotFeelTheCentringFromTheChannel() {
        NeckTree tree = NeckTree.fromTheChannel(DESIGN);
        Workmanship poor = Workmanship.withDefaults().centring(ErrorDistribution.normal(mm(0.5)));

        assertThat(tree.with(poor).stringLineAtBridge()).isEqualTo(tree.stringLineAtBridge());
        assertThat(tree.with(poor).boardOnNeck(mm(200))).isEqualTo(tree.boardOnNeck(mm(200)));
    }

    /** From an edge the centring comes in whole, and the edge's truth with its lever. */
    @Test
    void stringLine_feelsTheCentringFromAnEdge() {
        NeckTree tree = NeckTree.fromAnEdge(DESIGN);
        Workmanship better = Workmanship.withDefaults().centring(ErrorDistribution.normal(mm(0.0)));

        double usual = variance(tree.stringLineAtBridge());
        assertThat(usual - variance(tree.with(better).stringLineAtBridge())).isCloseTo(0.05 * 0.05, within(1e-14));
        assertThat(usual).isGreaterThan(variance(NeckTree.fromTheChannel(DESIGN).stringLineAtBridge()));
        assertThat(tree.stringLineAtBridge().contributors())
                .extracting(UncertaintyComponent::step)
                .contains("edge", "rod channel");
    }

    /** By hand: fitting 0.06 mm triangular at the joint and 90 mm further, seen at the bridge. */
    @Test
    void projection_turnsAboutTheHeelsFace() {
        double joint = 648.0 * (1.0 - Math.pow(2.0, -14.0 / 12.0));
        Budget<Length> projection = NeckTree.fromTheChannel(DESIGN)
                .with(Workmanship.withDefaults().gluing(ErrorDistribution.rectangular(mm(0.0))))
                .projectionAtBridge();

        double lever = (648.0 - joint) / 90.0;
        double expected = 0.06 * 0.06 / 6.0 * (lever * lever + (1.0 - lever) * (1.0 - lever));
        assertThat(variance(projection)).isCloseTo(expected, within(1e-14));
    }

    @Test
    void budgets_areFourAndPrint() {
        NeckTree tree = NeckTree.fromTheChannel(DESIGN);

        assertThat(tree.budgets())
                .hasSize(4)
                .allSatisfy(budget -> assertThat(variance(budget)).isPositive());
        assertThat(tree.toString()).hasSizeLessThan(1000).contains("steel-string", "rod channel");
        assertThat(tree.stringLength().contributors()).hasSize(3);
        assertThat(tree.woodEachSide(mm(20)).contributors())
                .extracting(UncertaintyComponent::step)
                .containsOnly("side taper");
    }

    private static double variance(Budget<Length> budget) {
        double u = budget.rootSumSquare().libraryUncertainty();
        return u * u;
    }

    @Test
    void budgets_areTitledInAMakersWordsAndSayExactlyWhatTheyAreInANote() {
        assertThat(NeckTree.fromTheChannel(DESIGN).budgets())
                .extracting(Budget::title)
                .containsExactly(
                        "string line against the bridge's middle",
                        "board on the neck at the body joint",
                        "wood on each side of the channel near the nut",
                        "projection height at the bridge");
        assertThat(NeckTree.fromTheChannel(DESIGN).stringLineAtBridge().toString())
                .endsWith("body joint as seen from fingerboard, across at 648 mm;"
                        + " the joint is judged at both ends of its 40 mm");
        assertThat(NeckTree.fromTheChannel(DESIGN).boardOnNeck(mm(200)).title())
                .isEqualTo("board on the neck at 200 mm");
    }
}
