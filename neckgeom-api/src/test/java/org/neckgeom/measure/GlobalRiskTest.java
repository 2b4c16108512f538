package org.neckgeom.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.mm;

import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** JCGM 106:2012, 9.5; the figures of a reference are held by the tests of the slot's verdict. */
class GlobalRiskTest {

    private static GlobalRisk<Length> risk(double mean, double sd, double u, Limits<Length> limits) {
        return GlobalRisk.of(Estimate.of(mm(mean), mm(sd)), mm(u), limits);
    }

    /**
     * Pieces within, less those rejected though within, and those accepted though outside, are all that are accepted; readings have
     * the variance of piece and reading together. By commons-statistics.
     */
    @Test
    void risks_leaveWhatIsAcceptedInAll() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 300; i++) {
            double mean = random.nextDouble(-0.2, 0.2);
            double sd = random.nextDouble(0.001, 0.2);
            double u = random.nextDouble(0.001, 0.05);
            double k = random.nextDouble(0, 3);
            boolean oneLimit = i % 3 == 0;
            GlobalRisk<Length> risk = risk(mean, sd, u, oneLimit ? Limits.atMost(mm(0.1)) : Limits.within(mm(0.1)))
                    .guardedBy(k);
            double inside = share(mean, sd, oneLimit ? -1e9 : -0.1, 0.1);
            double edge = 0.1 - k * u;
            double accepted = share(mean, Math.hypot(sd, u), oneLimit ? -1e9 : -edge, edge);

            assertThat(inside - risk.producers() + risk.consumers())
                    .as(risk.toString())
                    .isCloseTo(Math.max(0, accepted), within(1e-10));
        }
    }

    private static double share(double mean, double sd, double from, double to) {
        NormalDistribution law = NormalDistribution.of(mean, sd);
        return to > from ? law.probability(from, to) : 0;
    }

    /** The trials' own standard error is 0.0003 and 0.0006. */
    @Test
    void risks_areThoseOfTrials() {
        SplittableRandom random = new SplittableRandom(17);
        int trials = 400_000;
        int bad = 0;
        int lost = 0;
        for (int i = 0; i < trials; i++) {
            double piece = 0.02 + 0.06 * random.nextGaussian();
            double reading = piece + 0.03 * random.nextGaussian();
            boolean isWithin = Math.abs(piece) <= 0.1;
            boolean isAccepted = Math.abs(reading) <= 0.1 - 0.03;
            bad += !isWithin && isAccepted ? 1 : 0;
            lost += isWithin && !isAccepted ? 1 : 0;
        }
        GlobalRisk<Length> risk = risk(0.02, 0.06, 0.03, Limits.within(mm(0.1))).guardedBy(1);

        assertThat(risk.consumers()).isCloseTo(bad / (double) trials, within(4 * 0.0002));
        assertThat(risk.producers()).isCloseTo(lost / (double) trials, within(4 * 0.0006));
    }

    @Test
    void risks_atTheirEnds() {
        Limits<Length> limits = Limits.within(mm(0.1));
        assertThat(risk(0, 0.05, 0, limits).consumers()).isZero();
        assertThat(risk(0, 0.05, 0, limits).producers()).isZero();
        // Every piece just at a limit, which is allowed: half of its readings are outside.
        assertThat(risk(0.1, 0, 0.01, limits).consumers()).isZero();
        assertThat(risk(0.1, 0, 0.01, limits).producers()).isCloseTo(0.5, within(1e-12));
        assertThat(risk(0.11, 0, 0.01, limits).consumers()).isCloseTo(0.15865525393, within(1e-9));
        // Guard bands that leave no room: nothing is accepted.
        GlobalRisk<Length> closed = risk(0, 0.05, 0.06, limits).guardedBy(2);
        assertThat(closed.consumers()).isZero();
        assertThat(closed.producers()).isCloseTo(share(0, 0.05, -0.1, 0.1), within(1e-12));
        assertThatThrownBy(() -> closed.guardedBy(-1)).hasMessage("guard factor must be 0 to 10, but was -1");
    }

    @Test
    void toString_givesBothRisksFirst() {
        assertThat(risk(0, 0.05, 0.02, Limits.within(mm(0.1))).guardedBy(1.65).toString())
                .startsWith("0.1 % accepted though outside, 16.9 % rejected though within")
                .contains("1.65 u on the safe side");
    }
}
