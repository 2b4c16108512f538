package org.neckgeom.neck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.SplittableRandom;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class ChannelTest {

    private static final TrussRod ROD = TrussRod.twoWay(mm(300)).section(mm(6), mm(9));
    private static final MathContext DIGITS = new MathContext(60);

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }

    @Test
    void plainChannel_isAsLargeAsTheRod() {
        Channel channel = Channel.forRod(ROD);

        assertThat(channel.startMm()).isZero();
        assertThat(channel.endMm()).isEqualTo(300);
        assertThat(channel.lengthMm()).isEqualTo(300);
        assertThat(channel.widthMm()).isEqualTo(6);
        assertThat(channel.depthMm()).isEqualTo(9);
        assertThat(channel.hasAdjusterPocket()).isFalse();
        assertThat(channel.floorDepthAtMm(150)).isEqualTo(9);
        assertThat(channel).hasToString("channel 0 mm to 300 mm from the nut, 6 mm wide, 9 mm deep");
    }

    @Test
    void channel_growsByPlayStripAndClearance() {
        Channel channel = Channel.forRod(ROD)
                .startingAt(mm(3))
                .endClearance(mm(1))
                .sideClearance(mm(0.1))
                .fillet(mm(2))
                .depthClearance(mm(0.2));

        assertThat(channel.startMm()).isEqualTo(3);
        assertThat(channel.endMm()).isEqualTo(304);
        assertThat(channel.widthMm()).isEqualTo(6.1);
        assertThat(channel.depthMm()).isCloseTo(11.2, within(1e-14));
        assertThat(channel.filletMm()).isEqualTo(2);
        assertThat(channel.depthClearanceMm()).isEqualTo(0.2);
        assertThat(Channel.forRod(ROD).endMm()).isEqualTo(300);
    }

    @Test
    void floor_isTheCircleThroughBothEndsAndTheMiddle() {
        SplittableRandom random = new SplittableRandom(31);
        for (int i = 0; i < 300; i++) {
            double length = 100 + random.nextDouble() * 400;
            double sagitta = (random.nextDouble() - 0.4) * 8;
            double start = (random.nextDouble() - 0.5) * 100;
            Channel channel = Channel.forRod(TrussRod.twoWay(mm(length)).section(mm(6), mm(9)))
                    .startingAt(mm(start))
                    .arch(mm(sagitta));
            for (int k = 0; k <= 10; k++) {
                double x = k == 10 ? channel.endMm() : channel.startMm() + channel.lengthMm() * k / 10;

                double depth = channel.floorDepthAtMm(x);

                assertThat(depth)
                        .as("seed 31, trial %d, station %d", i, k)
                        .isCloseTo(circleDepth(channel, sagitta, x), within(1e-11));
            }
        }
    }

    /**
     * Depth of the circle through (start, d), (middle, d + s) and (end, d), its centre by the crossing of the
     * perpendicular bisectors in 60-digit decimals: nothing of the sagitta formula.
     */
    private static double circleDepth(Channel channel, double sagitta, double x) {
        BigDecimal ax = new BigDecimal(channel.startMm());
        BigDecimal cx = new BigDecimal(channel.endMm());
        BigDecimal bx = ax.add(cx).divide(BigDecimal.valueOf(2), DIGITS);
        BigDecimal ay = new BigDecimal(channel.depthMm());
        BigDecimal by = ay.add(new BigDecimal(sagitta));
        BigDecimal cy = ay;
        BigDecimal a2 = square(ax).add(square(ay));
        BigDecimal b2 = square(bx).add(square(by));
        BigDecimal c2 = square(cx).add(square(cy));
        BigDecimal twice = ax.multiply(by.subtract(cy))
                .add(bx.multiply(cy.subtract(ay)))
                .add(cx.multiply(ay.subtract(by)))
                .multiply(BigDecimal.valueOf(2));
        BigDecimal ux = a2.multiply(by.subtract(cy))
                .add(b2.multiply(cy.subtract(ay)))
                .add(c2.multiply(ay.subtract(by)))
                .divide(twice, DIGITS);
        BigDecimal uy = a2.multiply(cx.subtract(bx))
                .add(b2.multiply(ax.subtract(cx)))
                .add(c2.multiply(bx.subtract(ax)))
                .divide(twice, DIGITS);
        BigDecimal r2 = square(ax.subtract(ux)).add(square(ay.subtract(uy)));
        BigDecimal rise = r2.subtract(square(new BigDecimal(x).subtract(ux))).sqrt(DIGITS);
        return (sagitta > 0 ? uy.add(rise) : uy.subtract(rise)).doubleValue();
    }

    private static BigDecimal square(BigDecimal x) {
        return x.multiply(x);
    }

    @Test
    void floor_isNoughtOutside() {
        Channel channel = Channel.forRod(ROD).startingAt(mm(3));

        assertThat(channel.floorDepthAtMm(2.999)).isZero();
        assertThat(channel.floorDepthAtMm(3)).isEqualTo(9);
        assertThat(channel.floorDepthAtMm(303)).isEqualTo(9);
        assertThat(channel.floorDepthAtMm(303.001)).isZero();
        assertThat(channel.widthAtMm(2.999)).isZero();
        assertThat(channel.depthAtMm(2.999)).isZero();
    }

    @Test
    void floor_isAskedAtAPlace() {
        Channel channel = Channel.forRod(ROD).startingAt(mm(3));

        assertThatThrownBy(() -> channel.floorDepthAtMm(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("station must be no more than 1000000000 mm in size, but was NaN mm");
    }

    @Test
    void pocket_liesAtTheAdjuster() {
        Channel head =
                Channel.forRod(ROD).startingAt(mm(3)).adjusterPocket(mm(40)).section(mm(11), mm(12));
        Channel heel = Channel.forRod(ROD.adjuster(End.HEEL))
                .startingAt(mm(3))
                .adjusterPocket(mm(40))
                .section(mm(11), mm(12));

        assertThat(head.adjusterPocketStartMm()).isEqualTo(3);
        assertThat(heel.adjusterPocketStartMm()).isEqualTo(263);
        assertThat(head.depthAtMm(20)).isEqualTo(12);
        assertThat(head.depthAtMm(44)).isEqualTo(9);
        assertThat(head.widthAtMm(20)).isEqualTo(11);
        assertThat(head.widthAtMm(44)).isEqualTo(6);
        assertThat(heel.depthAtMm(300)).isEqualTo(12);
        assertThat(heel.depthAtMm(20)).isEqualTo(9);
        assertThat(head.floorDepthAtMm(20)).isEqualTo(9);
        assertThat(head.adjusterPocketLengthMm()).isEqualTo(40);
        assertThat(head.adjusterPocketWidthMm()).isEqualTo(11);
        assertThat(head.adjusterPocketDepthMm()).isEqualTo(12);
        assertThat(head.toString()).endsWith(", adjuster pocket 40 mm x 11 mm x 12 mm at the head");
        // An arched floor may run deeper than the pocket.
        assertThat(head.arch(mm(8)).depthAtMm(43)).isGreaterThan(12);
    }

    @Test
    void arch_keepsItsRoom() {
        Channel channel = Channel.forRod(ROD);

        refused(
                () -> channel.arch(mm(150)),
                "channel.floor arch must be less than half the channel's length of 300 mm, but was 150 mm");
        refused(() -> channel.arch(mm(-9)), "channel.floor arch must be more than -9 mm, but was -9 mm");
        refused(
                () -> channel.arch(inch(-10)),
                "channel.floor arch must be less than half the channel's length of 300 mm, but was -254 mm");
        // Whatever is told afterwards.
        Channel shallow = channel.fillet(mm(3)).arch(mm(-10));
        assertThat(shallow.floorDepthAtMm(150)).isEqualTo(2);
        refused(() -> shallow.fillet(mm(1)), "channel.floor arch must be more than -10 mm, but was -10 mm");
        assertThat(shallow.depthClearance(mm(1)).floorDepthAtMm(150)).isEqualTo(3);
    }

    @Test
    void pocket_keepsItsRoom() {
        Channel channel = Channel.forRod(ROD);

        refused(
                () -> channel.adjusterPocket(mm(301)).section(mm(11), mm(12)),
                "channel.adjuster pocket.length must be no more than the channel's 300 mm, but was 301 mm");
        refused(
                () -> channel.adjusterPocket(mm(40)).section(mm(5), mm(12)),
                "channel.adjuster pocket.width must be the channel's 6 mm or more, but was 5 mm");
        refused(
                () -> channel.adjusterPocket(mm(40)).section(mm(11), mm(8)),
                "channel.adjuster pocket.depth must be the channel's 9 mm or more, but was 8 mm");
        refused(
                () -> Channel.forBar(Bar.carbon(mm(300)).section(mm(6), mm(9)))
                        .adjusterPocket(mm(40))
                        .section(mm(11), mm(12)),
                "a carbon bar has no adjuster, but an adjuster pocket is given");
        // Whatever is told afterwards.
        Channel pocketed = channel.adjusterPocket(mm(40)).section(mm(7), mm(10));
        refused(
                () -> pocketed.sideClearance(mm(2)),
                "channel.adjuster pocket.width must be the channel's 8 mm or more, but was 7 mm");
        refused(
                () -> pocketed.fillet(mm(2)),
                "channel.adjuster pocket.depth must be the channel's 11 mm or more, but was 10 mm");
        assertThat(pocketed.depthClearance(mm(1)).depthMm()).isEqualTo(10);
    }

    @Test
    void plays_areNoughtOrMore() {
        Channel channel = Channel.forRod(ROD);

        refused(() -> channel.endClearance(mm(-1)), "end clearance must be 0 mm or more, but was -1 mm");
        refused(() -> channel.sideClearance(mm(-1)), "side clearance must be 0 mm or more, but was -1 mm");
        refused(() -> channel.fillet(mm(-1)), "fillet must be 0 mm or more, but was -1 mm");
        refused(() -> channel.depthClearance(mm(-1)), "depth clearance must be 0 mm or more, but was -1 mm");
    }

    @Test
    void toString_saysTheArchAndKeepsTheRodsUnits() {
        assertThat(Channel.forRod(ROD).startingAt(mm(3)).depthClearance(mm(0.2)).arch(mm(3)))
                .hasToString(
                        "channel 3 mm to 303 mm from the nut, 6 mm wide, 9.2 mm deep at its ends, 12.2 mm in the middle");
        assertThat(Channel.forBar(Bar.steel(inch(14)).section(inch("1/4"), inch("3/8")))
                        .startingAt(mm(-25.4)))
                .hasToString("channel -1 in to 13 in from the nut, 0.25 in wide, 0.375 in deep");
    }
}
