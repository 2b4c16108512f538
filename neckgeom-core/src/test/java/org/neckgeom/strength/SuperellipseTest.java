package org.neckgeom.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.neckgeom.strength.ReferenceRows.number;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against quadrature (superellipse.csv, strips.csv, gamma.csv: mpmath) and the textbook half ellipse. */
class SuperellipseTest {

    private static final double EXACT = 1e-11; // percent: 1e-13 relative

    static Stream<Map<String, String>> gammas() {
        return ReferenceRows.of("gamma.csv");
    }

    static Stream<Map<String, String>> shapes() {
        return ReferenceRows.of("superellipse.csv");
    }

    @ParameterizedTest
    @MethodSource("gammas")
    void gamma_isThatOfTheReference(Map<String, String> row) {
        assertThat(GammaFunction.gamma(number(row, "z"))).isCloseTo(number(row, "gamma"), withinPercentage(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.5, Double.NaN, Double.POSITIVE_INFINITY, 101})
    void gamma_rejectsWhatItWasNotMadeFor(double z) {
        assertThatThrownBy(() -> GammaFunction.gamma(z)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void of_hasTheMomentsOfQuadrature(Map<String, String> row) {
        Superellipse shape = Superellipse.of(number(row, "p"));

        assertThat(shape.area()).isCloseTo(number(row, "area"), withinPercentage(EXACT));
        assertThat(shape.first() / shape.area()).isCloseTo(number(row, "centroid"), withinPercentage(EXACT));
        assertThat(shape.second()).isCloseTo(number(row, "second_about_flat_side"), withinPercentage(EXACT));
    }

    static Stream<Map<String, String>> strips() {
        return ReferenceRows.of("strips.csv");
    }

    @ParameterizedTest
    @MethodSource("strips")
    void strips_areThoseOfQuadrature(Map<String, String> row) {
        SuperellipseStrips strips = Superellipse.of(number(row, "p")).strips();
        double[] expected = {number(row, "one"), number(row, "two"), number(row, "three")};

        double[] sums = strips.outTo(number(row, "r"));

        for (int k = 0; k < expected.length; k++) {
            assertThat(sums[k]).as("%s %s", k + 1, row).isCloseTo(expected[k], within(2e-14 * expected[k]));
        }
        assertThat(strips.outTo(-number(row, "r"))).containsExactly(-sums[0], -sums[1], -sums[2]);
    }

    @Test
    void of_isTheHalfEllipseForTwo() {
        // Any strength-of-materials text: A = pi/2, centroid 4/(3 pi), I = pi/8 - 8/(9 pi) about the centroid.
        Superellipse shape = Superellipse.of(2);

        assertThat(shape.area()).isCloseTo(Math.PI / 2, withinPercentage(EXACT));
        assertThat(shape.first() / shape.area()).isCloseTo(4 / (3 * Math.PI), withinPercentage(EXACT));
        assertThat(shape.second() - shape.first() * shape.first() / shape.area())
                .isCloseTo(Math.PI / 8 - 8 / (9 * Math.PI), withinPercentage(EXACT));
    }

    @Test
    void of_growsFromTriangleToRectangle() {
        double before = 0;
        for (double p = 1; p <= 50; p *= 1.1) {
            double area = Superellipse.of(p).area();
            assertThat(area).as("exponent %s", p).isGreaterThan(before).isLessThan(2);
            before = area;
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.99, 0, -2, Double.NaN, 50.1})
    void of_rejectsExponentsOutOfRange(double exponent) {
        assertThatThrownBy(() -> Superellipse.of(exponent))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("exponent of the back's curve must be between 1.0 and 50.0");
    }

    @Test
    void holds_agreesWithTheCurveItself() {
        long seed = 20260107;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 20_000; i++) {
            double p = random.nextDouble(1, 8);
            double y = random.nextDouble(0, 25);
            double u = random.nextDouble(0, 18);
            double edge = Math.pow(y / 22, p) + Math.pow(u / 15, p);
            if (Math.abs(edge - 1) > 1e-9) {
                assertThat(Superellipse.of(p).holds(y, u, 22, 15))
                        .as("seed %s, trial %s", seed, i)
                        .isEqualTo(edge < 1);
            }
        }
    }
}
