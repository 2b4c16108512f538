package org.neckgeom.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArchTest {

    private static final MathContext DIGITS = new MathContext(50);

    /** {@code d_m - (R - sqrt(R^2 - y^2))} with 50 digits. */
    private static double circle(double x, double length, double endDepth, double middleDepth) {
        BigDecimal half = new BigDecimal(length).divide(BigDecimal.valueOf(2));
        BigDecimal sagitta = new BigDecimal(middleDepth).subtract(new BigDecimal(endDepth));
        BigDecimal radius = half.pow(2).add(sagitta.pow(2)).divide(sagitta.multiply(BigDecimal.valueOf(2)), DIGITS);
        BigDecimal y = new BigDecimal(x).subtract(half);
        BigDecimal root = radius.pow(2).subtract(y.pow(2)).sqrt(DIGITS);
        BigDecimal drop = sagitta.signum() > 0 ? radius.subtract(root) : radius.add(root);
        return new BigDecimal(middleDepth).subtract(drop).doubleValue();
    }

    @ParameterizedTest
    @CsvSource({"400, 9, 15", "400, 9, 9.001", "450, 12, 6", "300, 9, 9.0000001", "120, 2, 62"})
    void depthAt_isTheCircleThroughEndsAndMiddle(double length, double endDepth, double middleDepth) {
        for (int i = 0; i <= 20; i++) {
            double x = length * i / 20;

            assertThat(Arch.depthAt(x, 0, length, endDepth, middleDepth))
                    .as("x " + x)
                    .isCloseTo(circle(x, length, endDepth, middleDepth), within(1e-11));
        }
    }

    @Test
    void depthAt_ofALevelFloorIsTheSameEverywhere() {
        assertThat(Arch.depthAt(17, 5, 305, 9.2, 9.2)).isEqualTo(9.2);
    }

    @Test
    void depthAt_isTheSameFromEitherEnd() {
        assertThat(Arch.depthAt(40, 3, 403, 9, 15)).isEqualTo(Arch.depthAt(366, 3, 403, 9, 15), within(1e-12));
    }
}
