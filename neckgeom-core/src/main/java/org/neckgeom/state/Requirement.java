package org.neckgeom.state;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Limits;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * A deviation of a neck with the limits it must keep, such as {@code string line at the bridge within 1 mm}. Immutable.
 *
 * @param name of the deviation, in words
 * @param of the deviation
 * @param limits to be kept
 * @param correction standard uncertainty of putting it right once it is known; empty where nothing can put it right any more
 */
public record Requirement(String name, Deviation of, Limits<Length> limits, Optional<Amount<Length>> correction)
        implements Answer {

    static final Form<Requirement> FORM = Form.<Requirement>of("requirement")
            .fact("name", Kind.NAME, "of the deviation", Requirement::name)
            .fact("limits", Kind.LIMITS, "to be kept", Requirement::limits)
            .factIfAny("correction", Kind.AMOUNT, "standard uncertainty of putting it right", Requirement::correction)
            .phrase("right", one -> one.correction.isPresent(), ", can be put right to u {correction:fine digits 2}")
            .phrase("right", ", can not be put right any more")
            .finds("requirement", "{name} {limits}{right}");

    /**
     * Checks the parts.
     *
     * @param name of the deviation
     * @param of the deviation
     * @param limits to be kept
     * @param correction standard uncertainty of putting it right
     */
    public Requirement {
        Words.name(name, "a requirement's name");
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(limits, "limits");
        Optional<?> raw = Objects.requireNonNull(correction, "correction"); // may come in raw from another language
        if (raw.isPresent()
                && !(raw.get() instanceof Amount<?> amount && amount.unit().kind() == (Class<?>) Length.class)) {
            throw Refusal.of("correction", "kind", "be a length", raw.get());
        }
        if (limits.unit().kind() != (Class<?>) Length.class) {
            throw Refusal.of("limits", "kind", "be lengths", limits);
        }
    }

    /**
     * {@return a requirement that nothing can put right once the work is done}
     *
     * @param name of the deviation, in words
     * @param of the deviation
     * @param limits to be kept
     */
    public static Requirement of(String name, Deviation of, Limits<Length> limits) {
        return new Requirement(name, of, limits, Optional.empty());
    }

    /**
     * {@return the same requirement, which can still be put right}
     *
     * @param itsUncertainty standard uncertainty of what is left after a correction; 0 or more
     */
    public Requirement correctedWithin(Quantity<Length> itsUncertainty) {
        Amount<Length> u = Amount.from(itsUncertainty, "uncertainty of the correction");
        LibraryUnits.finite(u.libraryValue(), "uncertainty of the correction", "mm");
        if (u.libraryValue() < 0.0) {
            throw LibraryUnits.refused("uncertainty of the correction", "not-negative", "0 or more", itsUncertainty);
        }
        return new Requirement(name, of, limits, Optional.of(u));
    }

    @Override
    public Form<Requirement> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(limits.unit());
    }

    /** Returns such as {@code string line at the bridge +/- 1 mm, can be put right to u 0.050 mm}. */
    @Override
    public String toString() {
        return text(style());
    }
}
