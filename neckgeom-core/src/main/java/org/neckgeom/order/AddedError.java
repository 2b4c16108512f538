package org.neckgeom.order;

import java.util.Locale;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.budget.UncertaintyComponent;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.ErrorDistribution;
import org.neckgeom.text.Names;
import org.neckgeom.units.LengthStyle;

/**
 * The error that a remedy adds to the budget, such as {@code spacer's thickness, across: rectangular, half-width 0.05
 * mm}: a name, a direction and a spread, ready to be one component with sensitivity 1. Immutable.
 *
 * @param name what the error is of
 * @param way the direction it works in
 * @param operation the operation whose cut takes it up
 * @param spread how the error spreads
 */
public record AddedError(String name, Way way, String operation, ErrorDistribution<Length> spread) implements Answer {

    static final Form<AddedError> FORM = Form.<AddedError>of("added-error")
            .fact("name", Kind.NAME, "name of the error", AddedError::name)
            .fact("direction", Kind.code(Way.class), "it works in", AddedError::way)
            .fact("operation", Kind.NAME, "whose cut takes it up", AddedError::operation)
            .fact("spread", Kind.SPREAD, "of the error", AddedError::spread)
            .finds("added-error", "{name}, {direction}: {spread}");

    /** The direction an error works in. */
    public enum Way {
        /** Across the neck, y: off the centreline. */
        ACROSS,
        /** In depth, z. */
        DEPTH,
        /** Along the neck, x. */
        ALONG;

        /** Returns {@code across}, {@code in depth} or {@code along}. */
        @Override
        public String toString() {
            return this == DEPTH ? "in depth" : name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Checks the names.
     *
     * @param name what the error is of
     * @param way the direction it works in
     * @param operation the operation whose cut takes it up
     * @param spread how the error spreads
     */
    public AddedError {
        name = Names.checked(name, "an added error's name");
        operation = Names.checked(operation, "an operation's name");
        Objects.requireNonNull(way, "way");
        Objects.requireNonNull(spread, "spread");
    }

    /**
     * {@return the error as one line of a budget: named with its operation, so that the same remedy at two operations
     * counts twice, with sensitivity 1 on the cut that takes it up; such as {@code spacer's thickness (cut rod
     * channel)}}
     */
    public UncertaintyComponent component() {
        return new UncertaintyComponent(name + " (" + operation + ")", operation, 1, spread);
    }

    @Override
    public Form<AddedError> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(spread.unit());
    }

    /** Returns such as {@code spacer's thickness, across: rectangular, half-width 0.05 mm}. */
    @Override
    public String toString() {
        return text(style());
    }
}
