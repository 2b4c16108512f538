package org.neckgeom.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.neckgeom.units.ShopUnits.inch;
import static org.neckgeom.units.ShopUnits.mm;
import static org.neckgeom.units.ShopUnits.newton;
import static org.neckgeom.units.ShopUnits.thou;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.neckgeom.testing.OtherQuantity;
import org.neckgeom.testing.ReferenceTable;
import org.neckgeom.units.Amount;

/** Standard uncertainties of the shapes against the GUM's figures, and against sums over their densities. */
class ErrorDistributionTest {

    private static double gum(String quantity) {
        return Double.parseDouble(ReferenceTable.row("/measure/gum-examples.csv", "quantity", quantity)
                .get("value"));
    }

    @ParameterizedTest
    @CsvSource({
        "RECTANGULAR, standard uncertainty of a rectangular half-width a",
        "TRIANGULAR, standard uncertainty of a triangular half-width a",
        "ARCSINE, standard uncertainty of a arcsine half-width a",
        "TRAPEZOIDAL, 'standard uncertainty of a trapezoid half-width a, top ratio beta = 0.5'",
    })
    void standardUncertainty_isTheGums(ErrorDistribution.Law law, String quantity) {
        assertThat(of(law, 1, 0.5).standardUncertainty().libraryValue()).isCloseTo(gum(quantity), within(2e-16));
    }

    private static ErrorDistribution<Length> of(ErrorDistribution.Law law, double a, double top) {
        return switch (law) {
            case NORMAL -> ErrorDistribution.normal(mm(a));
            case RECTANGULAR -> ErrorDistribution.rectangular(mm(a));
            case TRIANGULAR -> ErrorDistribution.triangular(mm(a));
            case ARCSINE -> ErrorDistribution.arcsine(mm(a));
            case TRAPEZOIDAL -> ErrorDistribution.trapezoidal(mm(a), mm(top));
            case BIAS -> ErrorDistribution.bias(mm(a));
            case SAMPLES -> ErrorDistribution.samples(List.of(mm(-a), mm(a)));
        };
    }

    @ParameterizedTest
    @CsvSource({"RECTANGULAR", "TRIANGULAR", "TRAPEZOIDAL", "ARCSINE", "NORMAL"})
    void variance_isThatOfTheDensity(ErrorDistribution.Law law) {
        double a = 0.7;
        double top = 0.2;

        // Midpoint sum over the inverse of the distribution, written here from the shapes' definitions.
        int n = 400_000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double x = quantile(law, a, top).applyAsDouble((i + 0.5) / n);
            sum += x * x / n;
        }

        assertThat(of(law, a, top).libraryVariance()).isCloseTo(sum, within(1e-4 * sum));
    }

    private static DoubleUnaryOperator quantile(ErrorDistribution.Law law, double a, double top) {
        return switch (law) {
            case RECTANGULAR -> p -> a * (2 * p - 1);
            case TRIANGULAR -> p -> p < 0.5 ? a * (Math.sqrt(2 * p) - 1) : a * (1 - Math.sqrt(2 * (1 - p)));
            case ARCSINE -> p -> -a * Math.cos(Math.PI * p);
            case TRAPEZOIDAL ->
                p -> {
                    double height = 1 / (a + top);
                    double ramp = height * (a - top) / 2;
                    double q = Math.min(p, 1 - p);
                    double x = q < ramp ? -a + Math.sqrt(2 * q * (a - top) / height) : -top + (q - ramp) / height;
                    return p < 0.5 ? x : -x;
                };
            default ->
                p -> a
                        * org.apache.commons.statistics.distribution.NormalDistribution.of(0, 1)
                                .inverseCumulativeProbability(p);
        };
    }

    @Test
    void trapezoid_runsFromTriangleToRectangle() {
        assertThat(ErrorDistribution.trapezoidal(mm(1), mm(0)).libraryVariance())
                .isEqualTo(ErrorDistribution.triangular(mm(1)).libraryVariance());
        assertThat(ErrorDistribution.trapezoidal(mm(1), mm(1)).libraryVariance())
                .isEqualTo(ErrorDistribution.rectangular(mm(1)).libraryVariance());
        // The sum of two rectangular ones of half-widths (a + b)/2 and (a - b)/2.
        assertThat(ErrorDistribution.trapezoidal(mm(0.7), mm(0.2)).libraryVariance())
                .isCloseTo(
                        ErrorDistribution.rectangular(mm(0.45)).libraryVariance()
                                + ErrorDistribution.rectangular(mm(0.25)).libraryVariance(),
                        within(1e-16));
    }

    @Test
    void samples_areCentredAndCounted() {
        ErrorDistribution<Length> spread = ErrorDistribution.samples(List.of(mm(0.3), mm(0.1), mm(0.2), mm(0.2)));

        assertThat(spread.libraryMean()).isCloseTo(0.2, within(1e-16));
        assertThat(spread.libraryCentredSamples()).isSorted().hasSize(4);
        // s^2 divides by n - 1 (GUM 4.2.2); the next error is off by the mean's own error besides.
        assertThat(spread.libraryVariance()).isCloseTo(0.02 / 3 * (1 + 1.0 / 4), within(1e-17));
        assertThat(spread.degreesOfFreedom()).isEqualTo(3);
        assertThat(spread.libraryScale()).isCloseTo(0.1 * Math.sqrt(5.0 / 3), within(1e-16));
        spread.libraryCentredSamples()[0] = 99;
        assertThat(spread.libraryCentredSamples()[0]).isCloseTo(-0.1 * Math.sqrt(5.0 / 3), within(1e-16));
        assertThat(spread.librarySamples()[0]).isCloseTo(-0.1, within(1e-16));
        double square = 0;
        for (double error : spread.libraryCentredSamples()) {
            square += error * error;
        }
        assertThat(square / 4).isCloseTo(spread.libraryVariance(), within(1e-17));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.samples(new ArrayList<Amount<Length>>()))
                .withMessage("samples must be 2 or more, but were 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.samples(List.of(mm(1), OtherQuantity.<Length>lie(newton(1)))))
                .withMessage("sample must be a length, but was 1 N");
    }

    /** Next error of five: Student(4), s sqrt(1 + 1/5) about the mean; s^2 = 0.02/4 by hand. */
    @Test
    void repeated_isTheSpreadOfTheNextError() {
        ErrorDistribution<Length> next =
                ErrorDistribution.repeated(List.of(mm(0.3), mm(0.1), mm(0.2), mm(0.2), mm(0.2)));

        assertThat(next.law()).isEqualTo(ErrorDistribution.Law.NORMAL);
        assertThat(next.libraryMean()).isCloseTo(0.2, within(1e-16));
        assertThat(next.libraryScale()).isCloseTo(Math.sqrt(0.02 / 4 * 1.2), within(1e-16));
        assertThat(next.degreesOfFreedom()).isEqualTo(4);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.repeated(List.of(mm(1))))
                .withMessage("readings must be 2 or more, but were 1");
    }

    @Test
    void shifted_movesTheMeanAlone() {
        SplittableRandom random = new SplittableRandom(2);
        for (ErrorDistribution.Law law : ErrorDistribution.Law.values()) {
            double by = random.nextDouble() - 0.5;
            ErrorDistribution<Length> spread = of(law, 0.7, 0.2);

            ErrorDistribution<Length> shifted = spread.shifted(mm(by));

            assertThat(shifted.libraryMean()).as("%s", law).isEqualTo(spread.libraryMean() + by);
            assertThat(shifted.libraryVariance()).isEqualTo(spread.libraryVariance());
            assertThat(shifted.law()).isEqualTo(law);
            assertThat(shifted.shifted(mm(-by)).libraryMean()).isCloseTo(spread.libraryMean(), within(1e-15));
        }
    }

    @Test
    void scaled_scalesTheSizeAndKeepsTheShift() {
        for (ErrorDistribution.Law law : ErrorDistribution.Law.values()) {
            ErrorDistribution<Length> spread = of(law, 0.7, 0.2).shifted(mm(0.1));

            ErrorDistribution<Length> half = spread.scaled(0.5);

            assertThat(half.libraryMean()).as("%s", law).isEqualTo(spread.libraryMean());
            assertThat(half.libraryVariance()).isCloseTo(spread.libraryVariance() / 4, within(1e-16));
            assertThat(spread.scaled(0).libraryVariance()).isZero();
            assertThat(spread.scaled(0)).isEqualTo(spread.scaled(0).scaled(3));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void scaled_refusesWhatIsNoFactor(double factor) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.normal(mm(1)).scaled(factor))
                .withMessageStartingWith("factor must be 0 or more");
    }

    @Test
    void overflow_isRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.bias(mm(1.5e308)).shifted(mm(1.5e308)))
                .withMessage("shift must be a finite number, but was infinity mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.normal(mm(1e150)).scaled(1e300))
                .withMessage("scale must be a finite number, but was infinity mm");
    }

    @Test
    void badSizes_areRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.normal(mm(-1)))
                .withMessage("standard deviation must be 0 mm or more, but was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.arcsine(thou(-1)))
                .withMessage("half-width must be 0 thou or more, but was -1 thou");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.trapezoidal(mm(1), mm(2)))
                .withMessage("half-top must be 1 mm or less, but was 2 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.normal(mm(1)).degreesOfFreedom(0.9))
                .withMessage("degrees of freedom must be 1 or more, but were 0.9");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.normal(mm(1)).shifted(OtherQuantity.lie(newton(1))))
                .withMessage("shift must be a length, but was 1 N");
    }

    @Test
    void of_takesWhatAnEstimateLeavesOpen() {
        ErrorDistribution<Length> spread = ErrorDistribution.of(Estimate.of(mm(0.1), mm(0.02), 7));

        assertThat(spread.law()).isEqualTo(ErrorDistribution.Law.NORMAL);
        assertThat(spread.libraryMean()).isEqualTo(0.1);
        assertThat(spread.standardUncertainty()).isEqualTo(mm(0.02));
        assertThat(spread.degreesOfFreedom()).isEqualTo(7);
        assertThat(spread.isBounded()).isFalse();
        assertThat(ErrorDistribution.rectangular(mm(1)).isBounded()).isTrue();
    }

    /** Samples and their mean are the same spread as what is left of them without it, moved by it. */
    @Test
    void centredSamples_areSamplesWithoutTheirMean() {
        ErrorDistribution<Length> all = ErrorDistribution.samples(List.of(mm(2), mm(1), mm(2), mm(3)));
        ErrorDistribution<Length> centred = ErrorDistribution.centredSamples(List.of(mm(-1), mm(0), mm(0), mm(1)));

        assertThat(centred.shifted(mm(2))).isEqualTo(all);
        assertThat(centred.libraryMean()).isZero();
        assertThat(all.libraryMean()).isEqualTo(2);
        assertThat(centred.degreesOfFreedom()).isEqualTo(3);
        // From n samples to the next error their spread grows by sqrt((n + 1)/(n - 1)).
        double four = Math.sqrt(5 / 3.0);
        assertThat(centred.libraryCentredSamples()).containsExactly(new double[] {-four, 0, 0, four}, within(1e-15));
        double two = Math.sqrt(3);
        assertThat(ErrorDistribution.centredSamples(List.of(mm(-1), mm(1))).libraryCentredSamples())
                .containsExactly(new double[] {-two, two}, within(1e-15));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.centredSamples(List.of(mm(0), mm(-1), mm(1))))
                .withMessage("sample must be as large as the one before or larger, but was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.centredSamples(List.of(mm(-1), mm(1), mm(1))))
                .withMessage("sum of the samples must be nothing, but was 1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ErrorDistribution.centredSamples(List.of(mm(0))))
                .withMessageContaining("samples must be 2 or more, but were 1");
    }

    @Test
    void topScale_isThatOfATrapezoid() {
        assertThat(ErrorDistribution.trapezoidal(mm(1), mm(0.5)).libraryTopScale())
                .isEqualTo(0.5);
        assertThat(ErrorDistribution.triangular(mm(1)).libraryTopScale()).isZero();
    }

    @Test
    void toString_namesTheLawAndItsSize() {
        assertThat(ErrorDistribution.rectangular(mm(0.05))).hasToString("rectangular, half-width 0.05 mm");
        assertThat(ErrorDistribution.normal(mm(0.05)).shifted(mm(0.01)))
                .hasToString("normal, u 0.05 mm, shifted by 0.01 mm");
        assertThat(ErrorDistribution.trapezoidal(mm(1), mm(0.5)))
                .hasToString("trapezoidal, half-base 1 mm, half-top 0.5 mm");
        assertThat(ErrorDistribution.bias(inch(0.01))).hasToString("bias 0.01 in");
        assertThat(ErrorDistribution.arcsine(thou(2))).hasToString("arcsine, half-width 2 thou");
        assertThat(ErrorDistribution.samples(List.of(mm(0.1), mm(0.3))))
                .hasToString("2 samples, mean 0.20 mm, u 0.17 mm");
    }
}
