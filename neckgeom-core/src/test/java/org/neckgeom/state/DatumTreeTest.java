package org.neckgeom.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.deg;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.budget.Budget;
import org.neckgeom.budget.UncertaintyComponent;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;
import org.neckgeom.units.ShopUnit;

class DatumTreeTest {

    private static final DatumTree WORK = DatumTree.from("rod channel", ErrorDistribution.normal(mm(0.05)))
            .place("heel")
            .on("rod channel")
            .at(mm(30), mm(290))
            .each(ErrorDistribution.rectangular(mm(0.05)))
            .cut(ErrorDistribution.normal(mm(0.08)))
            .place("fingerboard")
            .on("rod channel")
            .at(mm(10), mm(280))
            .each(ErrorDistribution.rectangular(mm(0.08)))
            .place("body joint")
            .on("heel")
            .at(mm(305), mm(345))
            .each(ErrorDistribution.triangular(mm(0.06)));

    /** By hand: the two stations of the joint lie 40 mm apart, the bridge 215 mm past the second. */
    @Test
    void across_carriesErrorsByTheLeverOfTheTwoStations() {
        Budget<Length> bridge = WORK.across("heel", "body joint", mm(560));

        assertThat(bridge.components())
                .extracting(UncertaintyComponent::sensitivity)
                .containsExactly(-5.375, 6.375);
        assertThat(bridge.components())
                .extracting(UncertaintyComponent::name)
                .containsExactly("body joint at 305 mm", "body joint at 345 mm");
    }

    /** The variance by hand from formulas of the lever and of each law: what both stand on cancels. */
    @Test
    void across_takesOnlyThePathsFromTheNearestCommonAncestor() {
        Budget<Length> bridge = WORK.across("fingerboard", "body joint", mm(560));

        double x = 560.0;
        double joint = 0.06 * 0.06 / 6.0 * (lever(305, 345, x) + lever(345, 305, x));
        double heel = 0.05 * 0.05 / 3.0 * (lever(30, 290, x) + lever(290, 30, x)) + 0.08 * 0.08;
        double board = 0.08 * 0.08 / 3.0 * (lever(10, 280, x) + lever(280, 10, x));
        assertThat(bridge.rootSumSquare().libraryUncertainty())
                .isCloseTo(Math.sqrt(joint + heel + board), within(1e-14));
        assertThat(bridge.components()).extracting(UncertaintyComponent::step).doesNotContain("rod channel");
    }

    private static double lever(double own, double other, double x) {
        double l = (x - other) / (own - other);
        return l * l;
    }

    @Test
    void across_meetsTheErrorsAtTheStationsThemselves() {
        Budget<Length> there = WORK.across("rod channel", "fingerboard", mm(10));

        assertThat(there.components().get(0).sensitivity()).isCloseTo(1.0, within(1e-15));
        assertThat(there.components().get(1).sensitivity()).isCloseTo(0.0, within(1e-15));
    }

    @Test
    void across_turnsItsSignWithTheOrder() {
        assertThat(WORK.across("rod channel", "heel", mm(100))
                        .components()
                        .get(0)
                        .sensitivity())
                .isEqualTo(-WORK.across("heel", "rod channel", mm(100))
                        .components()
                        .get(0)
                        .sensitivity());
    }

    @Test
    void across_ofAFeatureAndItselfIsNothing() {
        assertThat(WORK.across("heel", "heel", mm(100)).components()).isEmpty();
        assertThat(WORK.across("heel", "heel", mm(100)).distribution().probabilityUpTo(mm(0)))
                .isEqualTo(1.0);
    }

    @Test
    void across_fromTheBlankShowsTheCentring() {
        Budget<Length> board = WORK.across(DatumTree.BLANK, "fingerboard", mm(10));

        assertThat(board.components()).extracting(UncertaintyComponent::step).contains("rod channel");
    }

    /** A budget of the tree against trials of the tree itself: straight lines drawn through both stations. */
    @Test
    void across_agreesWithLinesDrawnThroughTheStations() {
        SplittableRandom random = new SplittableRandom(9L);
        int trials = 200_000;
        double sum = 0.0;
        double x = 560.0;
        for (int i = 0; i < trials; i++) {
            double channel = 0.3 * random.nextGaussian();
            double heel = channel
                    + line(30, 290, uniform(random, 0.05), uniform(random, 0.05), x)
                    + 0.08 * random.nextGaussian();
            double joint = heel + line(305, 345, triangle(random, 0.06), triangle(random, 0.06), x);
            double board = channel + line(10, 280, uniform(random, 0.08), uniform(random, 0.08), x);
            sum += (joint - board) * (joint - board);
        }

        double u =
                WORK.across("fingerboard", "body joint", mm(x)).rootSumSquare().libraryUncertainty();
        assertThat(Math.sqrt(sum / trials)).as("seed 9").isCloseTo(u, within(5.0 * u / Math.sqrt(2.0 * trials)));
    }

    private static double line(double x1, double x2, double d1, double d2, double x) {
        return d1 + (d2 - d1) * (x - x1) / (x2 - x1);
    }

    private static double uniform(SplittableRandom random, double a) {
        return a * (2.0 * random.nextDouble() - 1.0);
    }

    private static double triangle(SplittableRandom random, double a) {
        return a * (random.nextDouble() - random.nextDouble());
    }

    @Test
    void skewed_swingsAboutItsStation() {
        DatumTree skewed = DatumTree.from("rod channel", ErrorDistribution.normal(mm(0.05)))
                .skewed(ErrorDistribution.normal(deg(0.1)), mm(100));

        Budget<Length> there = skewed.across("blank", "rod channel", mm(100));
        Budget<Length> away = skewed.across("blank", "rod channel", mm(300));

        assertThat(there.rootSumSquare().libraryUncertainty()).isCloseTo(0.05, within(1e-15));
        assertThat(away.rootSumSquare().libraryUncertainty())
                .isCloseTo(Math.hypot(0.05, 200.0 * Math.toRadians(0.1)), within(1e-12));
    }

    /** The state of a tree asks the same budgets, and a reading keeps its lever arm. */
    @Test
    void state_hasTheBudgetsOfTheTree() {
        Deviation line =
                WORK.deviationAcross("body joint", mm(560)).minus(WORK.deviationAcross("fingerboard", mm(560)));
        NeckState state = WORK.state();

        assertThat(state.known("line", line).estimate().libraryUncertainty())
                .isCloseTo(
                        WORK.across("fingerboard", "body joint", mm(560))
                                .rootSumSquare()
                                .libraryUncertainty(),
                        within(1e-14));
        Deviation joint = WORK.deviationAcross("body joint", mm(305)).minus(WORK.deviationAcross("heel", mm(305)));
        NeckState read = state.read(new NeckReading("joint", joint, Estimate.of(mm(0.02), mm(0.0))));
        assertThat(read.known("joint", joint).estimate().libraryUncertainty()).isCloseTo(0.0, within(1e-9));
        // By hand: the far end of the joint's 40 mm is still a guess, 6.375 times of it at the bridge.
        double far = 6.375 * 0.06 / Math.sqrt(6.0);
        assertThat(read.known(
                                "joint",
                                WORK.deviationAcross("body joint", mm(560))
                                        .minus(WORK.deviationAcross("heel", mm(560))))
                        .estimate()
                        .libraryUncertainty())
                .isCloseTo(far, within(1e-9));
    }

    @Test
    void heightAndAlong_haveTreesOfTheirOwn() {
        DatumTree more = WORK.placeInHeight("fingerboard")
                .on("blank")
                .at(mm(10), mm(280))
                .each(ErrorDistribution.rectangular(mm(0.1)))
                .placeAlong("nut")
                .on("blank")
                .by(ErrorDistribution.rectangular(mm(0.15)))
                .placeAlong("bridge")
                .on("nut")
                .by(ErrorDistribution.rectangular(mm(0.3)));

        assertThat(more.height("blank", "fingerboard", mm(280)).rootSumSquare().libraryUncertainty())
                .isCloseTo(0.1 / Math.sqrt(3.0), within(1e-15));
        assertThat(more.along("nut", "bridge").rootSumSquare().libraryUncertainty())
                .isCloseTo(0.3 / Math.sqrt(3.0), within(1e-15));
        NeckState read = more.state()
                .read(new NeckReading("bridge", more.deviationAlong("bridge"), Estimate.of(mm(0.2), mm(0.0))));
        assertThat(read.known("bridge", more.deviationAlong("bridge"))
                        .estimate()
                        .libraryValue())
                .isCloseTo(0.2, within(1e-9));
        assertThat(more.state().causes()).extracting(Cause::name).contains("nut along the neck");
        assertThat(more.deviationInHeight("fingerboard", mm(10)).causes())
                .contains("fingerboard at its first station in height");
        assertThatThrownBy(() -> more.height("blank", "heel", mm(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"heel\" is not placed in height; there are \"blank\", \"fingerboard\"");
    }

    @Test
    void across_rejectsAnUnknownFeature() {
        assertThatThrownBy(() -> WORK.across("fingerboard", "bodyjoint", mm(560)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "there is no feature \"bodyjoint\" across (did you mean \"body joint\"?); there are \"blank\","
                                + " \"rod channel\", \"heel\", \"fingerboard\", \"body joint\"");
        assertThatThrownBy(() -> WORK.place("x").on("nothing")).hasMessageContaining("\"nothing\" across; there are");
    }

    @Test
    void at_rejectsEqualStations() {
        assertThatThrownBy(() -> WORK.place("wings").on("heel").at(mm(25.4), inch(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the two stations of \"wings\" must differ, but both were 25.4 mm");
    }

    @Test
    void place_rejectsANameTwice() {
        assertThatThrownBy(() -> WORK.place("heel"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("features must have different names, but \"heel\" was placed twice across");
        assertThatThrownBy(() -> WORK.place("blank")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void toString_drawsTheTree() {
        assertThat(WORK)
                .hasToString("Datum tree from the blank\n  across\n    rod channel\n      heel\n        body joint\n"
                        + "      fingerboard");
        assertThat(WORK.features()).containsExactly("blank", "rod channel", "heel", "fingerboard", "body joint");
    }

    @Test
    void across_printsInTheStyleOfTheStation() {
        assertThat(WORK.across("fingerboard", "body joint", inch(22)).unit()).isEqualTo(ShopUnit.THOU);
    }

    /** By hand: 12.7 mm are half an inch. */
    @Test
    void place_namesTheStationsInTheirOwnStyle() {
        DatumTree work = DatumTree.from("rod channel", ErrorDistribution.normal(mm(0.05)))
                .place("heel")
                .on("rod channel")
                .at(inch(0.5), mm(290))
                .each(ErrorDistribution.normal(mm(0.05)));

        assertThat(work.across("rod channel", "heel", inch(1)).components())
                .extracting(UncertaintyComponent::name)
                .containsExactly("heel at 0.5 in", "heel at 11.4173 in");
    }
}
