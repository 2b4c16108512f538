package org.neckgeom.budget;

import java.util.Objects;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.text.Numbers;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * An input quantity of an uncertainty budget (contributor, component), such as {@code fence, 0.5 times rectangular,
 * half-width 0.05 mm}. Immutable.
 *
 * @param name the input's name in the budget; no two in a budget share it
 * @param step the step of work it comes from, which several components may share
 * @param sensitivity the sensitivity coefficient: change of the result per unit of this input, both in library units
 * @param spread the distribution of the error, in its own kind of quantity
 */
public record UncertaintyComponent(String name, String step, double sensitivity, ErrorDistribution<?> spread)
        implements Answer {

    static final Form<UncertaintyComponent> FORM = Shown.withSpread(
                    Form.<UncertaintyComponent>of("component"), UncertaintyComponent::spread)
            .fact("name", Kind.NAME, "in the budget", UncertaintyComponent::name)
            .fact("step", Kind.NAME, "of work that it comes from", UncertaintyComponent::step)
            .fact(
                    "sensitivity",
                    Kind.RATIO,
                    "how much the result moves for one library unit of the error, in its own library unit",
                    UncertaintyComponent::sensitivity)
            .finds("component", "{name}, {sensitivity:..4} times {spread}");

    /** Largest error that can be budgeted, as its square must still be a number. */
    private static final double MOST = 1e100;

    /**
     * Checks the parts.
     *
     * @param name the input's name in the budget
     * @param step the step of work it comes from
     * @param sensitivity how much the result moves for one library unit of this
     * @param spread how the error spreads
     * @throws IllegalArgumentException if a name is blank, the sensitivity is not finite, or the error it brings is
     *     too large to be squared
     */
    public UncertaintyComponent {
        Objects.requireNonNull(spread, "spread");
        Words.name(name, "a component's name");
        Words.name(step, "a step's name");
        if (!Double.isFinite(sensitivity)) {
            throw Refusal.of("sensitivity of " + name, "finite", "be a finite number", Numbers.plain(sensitivity));
        }
        sensitivity += 0.0;
        double most = Math.abs(sensitivity) * (Math.abs(spread.libraryMean()) + spread.libraryScale());
        if (!(most <= MOST)) {
            throw Refusal.of(
                    "contribution of " + name + " to the result",
                    "at-most",
                    "be " + Numbers.plain(MOST) + " or less in the library unit",
                    Numbers.plain(most));
        }
    }

    /** Standard deviation it brings into the result, in the result's library unit. */
    double contribution() {
        return Math.abs(sensitivity) * Math.sqrt(spread.libraryVariance());
    }

    /** Of its standard deviation. */
    double degreesOfFreedom() {
        return spread.degreesOfFreedom();
    }

    UncertaintyComponent with(ErrorDistribution<?> other) {
        return new UncertaintyComponent(name, step, sensitivity, other);
    }

    /** Most and least it can bring, normal parts at k standard deviations. */
    double[] range(double normalFactor) {
        double[] samples = spread.libraryCentredSamples();
        double low = -spread.libraryScale();
        double high = spread.libraryScale();
        if (samples.length > 0) {
            low = samples[0];
            high = samples[samples.length - 1];
        } else if (!spread.isBounded()) {
            low *= normalFactor;
            high *= normalFactor;
        }
        double one = sensitivity * (spread.libraryMean() + low);
        double two = sensitivity * (spread.libraryMean() + high);
        return new double[] {Math.min(one, two), Math.max(one, two)};
    }

    void addTo(Parts.Builder parts, double factor) {
        double scale = Math.abs(sensitivity) * spread.libraryScale() * factor;
        parts.shift(sensitivity * spread.libraryMean());
        switch (spread.law()) {
            case NORMAL -> parts.normal(scale);
            case RECTANGULAR -> parts.rectangle(scale);
            case TRIANGULAR -> parts.triangle(scale);
            case TRAPEZOIDAL -> parts.trapezoid(scale, Math.abs(sensitivity) * spread.libraryTopScale() * factor);
            case ARCSINE -> parts.arcsine(scale);
            case BIAS -> {
                // Only its shift counts.
            }
            case SAMPLES -> parts.samples(spread.libraryCentredSamples(), sensitivity * factor);
        }
    }

    /** Adds draws of a spread less its mean, times a factor; few degrees of freedom as Student's law where asked. */
    static void drawSpread(
            ErrorDistribution<?> spread, double factor, boolean student, Draws draws, double[] out, int n) {
        double scale = Math.abs(factor) * spread.libraryScale();
        switch (spread.law()) {
            case NORMAL -> {
                if (student && spread.degreesOfFreedom() < Double.POSITIVE_INFINITY) {
                    draws.addStudent(out, n, scale, spread.degreesOfFreedom());
                } else {
                    draws.addNormal(out, n, scale);
                }
            }
            case RECTANGULAR -> draws.addRectangle(out, n, scale);
            case TRIANGULAR -> {
                draws.addRectangle(out, n, 0.5 * scale);
                draws.addRectangle(out, n, 0.5 * scale);
            }
            case TRAPEZOIDAL -> {
                double top = Math.abs(factor) * spread.libraryTopScale();
                draws.addRectangle(out, n, 0.5 * (scale + top));
                draws.addRectangle(out, n, 0.5 * (scale - top));
            }
            case ARCSINE -> draws.addArcsine(out, n, scale);
            case BIAS -> {
                // Nothing spreads.
            }
            case SAMPLES -> {
                double[] samples = spread.libraryCentredSamples();
                for (int i = 0; i < samples.length; i++) {
                    samples[i] *= factor;
                }
                draws.addSamples(out, n, samples);
            }
        }
    }

    @Override
    public Form<UncertaintyComponent> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(spread.unit());
    }

    /** Returns such as {@code fence, 0.5 times rectangular, half-width 0.05 mm}. */
    @Override
    public String toString() {
        return text(style());
    }
}
