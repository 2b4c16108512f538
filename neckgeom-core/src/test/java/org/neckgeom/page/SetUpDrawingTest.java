package org.neckgeom.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.FenceMove;
import org.neckgeom.fixture.SampleBench;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.measure.Estimate;
import org.neckgeom.plan.Job;
import org.neckgeom.plan.MeasuredNeck;
import org.neckgeom.plan.NeckFeature;
import org.neckgeom.shop.TrialCut;

/** The set-up as it is drawn, held to the plan's own stops and move; turn and feed to the caution CLIMB_FEED. */
class SetUpDrawingTest {

    private static final Job JOB =
            Job.of(SampleNecks.octaveMandolin(), SampleBench.octaveBlank(), SampleBench.metricShop());
    private static final Job READ = JOB.trialCut(cut(26.79, 28.21));
    private static final Job CENTRED = READ.fenceMoved(FenceMove.away(mm(0.71))).trialCut(cut(27.5, 27.5));

    private static TrialCut cut(double near, double far) {
        return TrialCut.walls(mm(near), mm(far)).slot(mm(6.02)).piece(mm(61.02));
    }

    private static List<MatchResult> found(String pattern, String svg) {
        return Pattern.compile(pattern).matcher(svg).results().toList();
    }

    private static double number(String pattern, String svg) {
        Matcher matcher = Pattern.compile(pattern).matcher(svg);
        assertThat(matcher.find()).as(pattern).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    @Test
    void svg_drawsTheStopsWhereThePlanHasThem() {
        String svg = Sheet.of(CENTRED).toSetUp();
        double rear = CENTRED.plan().stops().rear().fromCentre().libraryValue();
        double front = CENTRED.plan().stops().front().fromCentre().libraryValue();

        assertThat(CENTRED.plan().slot().mayCut()).isTrue();
        assertThat(svg).contains("rear stop", "front stop", (Math.rint(rear * 10) / 10 + " mm<").replace(".0 ", " "));
        List<double[]> boxes = new ArrayList<>();
        for (MatchResult box : found("class=\"offcut\" points=\"([0-9.]+),[0-9.]+ ([0-9.]+),", svg)) {
            boxes.add(new double[] {Double.parseDouble(box.group(1)), Double.parseDouble(box.group(2))});
        }
        assertThat(boxes).hasSize(2);
        // Both sizes begin at the cutter.
        double cutter = number("<line class=\"leader\" x1=\"([0-9.]+)\"", svg);
        double toRear = boxes.get(0)[0] - cutter;
        double toFront = cutter - boxes.get(1)[0];
        assertThat(toRear).as("rear stop on the right").isPositive();
        assertThat(toFront).as("front stop on the left").isPositive();
        assertThat(toRear / toFront).isCloseTo(rear / front, within(0.001));
    }

    @Test
    void svg_showsTheMoveAsAdvised() {
        String svg = Sheet.of(READ).toSetUp();

        assertThat(READ.plan().slot().move().isTowardTheCutter()).isFalse();
        assertThat(svg).contains("away from the cutter").doesNotContain("rear stop", "toward the cutter");
    }

    /** 61 wide, cutter 6: 27.5 from the fence to the cutter's near edge, by hand. */
    @Test
    void svg_showsTheGapOfTheFirstTrialCut() {
        assertThat(Sheet.of(JOB).toSetUp())
                .contains("test piece")
                .contains(
                        ((JOB.blank().widthMm() - JOB.shop().cutter().diameterMm()) / 2 + " mm<").replace(".0 ", " "));
    }

    /** Turn and feed: points of the turn go over the top to the left, the feed's line goes to the left. */
    @Test
    void svg_turnsAnticlockwise_andFeedsFromRightToLeft() {
        String svg = Sheet.of(JOB).toSetUp();
        String turn = found("polyline class=\"least\" points=\"([^\"]+)\"", svg)
                .get(0)
                .group(1);
        double area = 0;
        String[] points = turn.split(" ");
        for (int i = 0; i < points.length; i++) {
            String[] a = points[i].split(",");
            String[] b = points[(i + 1) % points.length].split(",");
            area += Double.parseDouble(a[0]) * Double.parseDouble(b[1])
                    - Double.parseDouble(b[0]) * Double.parseDouble(a[1]);
        }
        assertThat(area).as("v points down: negative is anticlockwise").isNegative();
        MatchResult feed = found("<line class=\"least\" x1=\"([0-9.]+)\" y1=\"196\" x2=\"([0-9.]+)\"", svg)
                .get(0);
        assertThat(Double.parseDouble(feed.group(1))).isGreaterThan(Double.parseDouble(feed.group(2)));
        double fence = number("class=\"rod\" points=\"[0-9.]+,([0-9.]+)", svg);
        double piece = number("class=\"wood\" points=\"[0-9.]+,([0-9.]+)", svg);
        assertThat(fence).as("the fence lies beyond").isLessThan(piece);
    }

    @Test
    void svg_isNoneWhereNoCutterIsSet() {
        MeasuredNeck cut = MeasuredNeck.none().read(NeckFeature.CHANNEL_DEPTH, Estimate.of(mm(9.21), mm(0.02)));

        assertThat(Sheet.of(JOB.measured(cut)).toSetUp()).isEmpty();
    }
}
