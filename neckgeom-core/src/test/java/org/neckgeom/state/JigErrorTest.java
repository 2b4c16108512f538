package org.neckgeom.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.neckgeom.channel.JigPlay;
import org.neckgeom.fixture.SampleNecks;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.measure.Estimate;

/** A jig's error is one draw for all its necks, its play a new one each time. The document's figures are in StateChecks. */
class JigErrorTest {

    private static final JigPlay PLAY = JigPlay.at(mm(20), mm(280)).play(mm(0.05));
    private static final JigError ERROR = JigError.turnedOver("taper jig", mm(150), mm(0.34));

    private static NeckErrors neck(int number) {
        return NeckErrors.of(SampleNecks.octaveMandolin())
                .sideTaperOn(ERROR, PLAY)
                .labelled("neck " + number);
    }

    private static Estimate<Length> known(NeckState state, Deviation of) {
        return state.known("it", of).estimate();
    }

    @Test
    void oneNeck_hasTheJigsErrorItsPlayAndItsCut() {
        NeckErrors errors = NeckErrors.of(SampleNecks.octaveMandolin()).sideTaperOn(ERROR, PLAY);
        Estimate<Length> off = known(errors.state(), errors.woodEachSide(mm(200)));
        double cut = errors.causes().stream()
                .filter(c -> c.name().equals("side taper cut"))
                .findFirst()
                .orElseThrow()
                .sd();
        double play = PLAY.uncertaintyAt(mm(200)).libraryValue();

        assertThat(off.libraryValue()).isCloseTo(0.17, within(1e-12));
        assertThat(off.libraryUncertainty())
                .isCloseTo(Math.sqrt(0.05 * 0.05 / 2 + play * play + cut * cut), within(1e-9));
        assertThat(errors.causes()).noneMatch(c -> c.name().startsWith("side taper near"));
        assertThat(errors.causes())
                .filteredOn(c -> c.step().equals("taper jig"))
                .hasSize(1);
    }

    @Test
    void meanOfManyNecks_keepsTheJigsError() {
        List<NeckErrors> necks =
                IntStream.rangeClosed(1, 9).mapToObj(JigErrorTest::neck).toList();
        NeckState state = NeckErrors.together(necks);
        Deviation mean = Deviation.none();
        for (NeckErrors one : necks) {
            mean = mean.plus(one.woodEachSide(mm(200)).times(1 / 9.0));
        }
        double jig = 0.05 * 0.05 / 2;
        double all = Math.pow(known(state, necks.get(0).woodEachSide(mm(200))).libraryUncertainty(), 2);

        assertThat(state.causes()).filteredOn(c -> c.name().equals("taper jig")).hasSize(1);
        assertThat(Math.pow(known(state, mean).libraryUncertainty(), 2)).isCloseTo(jig + (all - jig) / 9, within(1e-9));
        // Between two necks the jig cancels.
        assertThat(Math.pow(
                        known(
                                        state,
                                        necks.get(0)
                                                .woodEachSide(mm(200))
                                                .minus(necks.get(1).woodEachSide(mm(200))))
                                .libraryUncertainty(),
                        2))
                .isCloseTo(2 * (all - jig), within(1e-9));
    }

    @Test
    void readingOfOneNeck_informsTheNext() {
        NeckErrors first = neck(1);
        NeckErrors second = neck(2);
        NeckState state = NeckErrors.together(List.of(first, second));
        NeckState read =
                state.read(new NeckReading("sides", first.woodEachSide(mm(200)), Estimate.of(mm(0.27), mm(1e-6))));
        double jig = 0.05 * 0.05 / 2;
        double all = Math.pow(known(state, first.woodEachSide(mm(200))).libraryUncertainty(), 2);

        // Best linear estimate: 0.17 and the jig's share of the difference.
        assertThat(known(read, second.woodEachSide(mm(200))).libraryValue())
                .isCloseTo(0.17 + 0.1 * jig / all, within(1e-6));
        assertThat(known(read, second.channel(mm(200))).libraryValue()).isCloseTo(0, within(1e-9));
    }

    @Test
    void twoStations_areALineThroughBoth() {
        JigError line = ERROR.and(mm(350), mm(-0.1));

        assertThat(line.at(mm(150)).libraryValue()).isCloseTo(0.17, within(1e-12));
        assertThat(line.at(mm(350)).libraryValue()).isCloseTo(-0.05, within(1e-12));
        assertThat(line.at(mm(150)).libraryUncertainty()).isCloseTo(0.05 / Math.sqrt(2), within(1e-12));
        assertThat(line.at(mm(250)).libraryUncertainty()).isCloseTo(0.05 / 2, within(1e-12));
        assertThat(line.at(mm(550)).libraryUncertainty())
                .isCloseTo(0.05 / Math.sqrt(2) * Math.hypot(2, 1), within(1e-12));
        NeckErrors errors = NeckErrors.of(SampleNecks.octaveMandolin()).heelOn(line, PLAY);
        assertThat(errors.causes())
                .filteredOn(c -> c.step().equals("taper jig"))
                .hasSize(2);
        assertThat(errors.stringLine().coefficient("taper jig")).isEqualTo(-1);
    }

    @Test
    void linesReadBetter_scaleEveryUncertainty() {
        JigError line = ERROR.and(mm(350), mm(-0.1));

        assertThat(line.standardUncertainty(mm(0.02)).at(mm(550)).libraryUncertainty())
                .isCloseTo(
                        ERROR.standardUncertainty(mm(0.02))
                                .and(mm(350), mm(-0.1))
                                .at(mm(550))
                                .libraryUncertainty(),
                        within(1e-12))
                .isCloseTo(0.02 / Math.sqrt(2) * Math.hypot(2, 1), within(1e-12));
    }

    @Test
    void pressedJig_hasNoPlay() {
        NeckErrors errors = NeckErrors.of(SampleNecks.octaveMandolin()).sideTaperOn(ERROR, PLAY.pressed());

        assertThat(errors.causes()).noneMatch(c -> c.name().contains("play"));
    }

    @Test
    void sameJigForBothCuts_isOneCause() {
        NeckErrors errors = NeckErrors.of(SampleNecks.octaveMandolin())
                .sideTaperOn(ERROR, PLAY)
                .heelOn(ERROR, PLAY);

        assertThat(errors.causes())
                .filteredOn(c -> c.name().equals("taper jig"))
                .hasSize(1);
        assertThat(errors.heel(mm(200)).minus(errors.sideTaper(mm(200))).coefficient("taper jig"))
                .isZero();
    }

    @Test
    void badInput_isRefused() {
        JigError other = JigError.of("taper jig", ErrorDistribution.normal(mm(0.1)));
        List<NeckErrors> same = new ArrayList<>(List.of(neck(1), neck(1)));

        assertThatThrownBy(() -> NeckErrors.of(SampleNecks.octaveMandolin())
                        .sideTaperOn(ERROR, PLAY)
                        .heelOn(other, PLAY))
                .hasMessageContaining("jig must have one error, but had two \"taper jig\"");
        assertThatThrownBy(() -> NeckErrors.together(same))
                .hasMessageContaining("necks must share no cause but that of one jig");
        assertThatThrownBy(() -> NeckErrors.together(List.of())).hasMessageContaining("necks must be one or more");
        assertThatThrownBy(() -> ERROR.and(mm(150), mm(0.1)))
                .hasMessageContaining("second station must be another than the first");
        assertThatThrownBy(() -> other.and(mm(150), mm(0.1))).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> JigError.turnedOver("jig", mm(1), mm(1)).standardUncertainty(mm(0)))
                .hasMessageContaining("uncertainty of a line must be more than 0 mm");
    }
}
