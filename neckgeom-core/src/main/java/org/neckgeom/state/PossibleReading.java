package org.neckgeom.state;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Estimate;
import org.neckgeom.text.Words;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.LibraryUnits;

/**
 * A reading that the bench could take now, such as {@code thread at the bridge, u 0.15 mm}. Immutable.
 *
 * @param name of the reading
 * @param of the deviation that it reads
 * @param standardUncertainty of one such reading, 0 or more
 */
public record PossibleReading(String name, Deviation of, Amount<Length> standardUncertainty) implements Answer {

    static final Form<PossibleReading> FORM = Form.<PossibleReading>of("possible-reading")
            .fact("name", Kind.NAME, "of the reading", PossibleReading::name)
            .fact("of", Kind.ANSWER, "the deviation that it reads", PossibleReading::of)
            .fact("u", Kind.AMOUNT, "standard uncertainty of one such reading", PossibleReading::standardUncertainty)
            .finds("possible-reading", "{name}, u {u:fine digits 2}");

    /**
     * Checks the parts.
     *
     * @param name of the reading
     * @param of the deviation that it reads
     * @param standardUncertainty of one such reading
     * @throws IllegalArgumentException if the name is blank or the uncertainty less than 0
     */
    public PossibleReading {
        Words.name(name, "a reading's name");
        Objects.requireNonNull(of, "of");
        if (Objects.requireNonNull(standardUncertainty, "standardUncertainty")
                        .unit()
                        .kind()
                != (Class<?>) Length.class) {
            throw Refusal.of("standard uncertainty of " + name, "kind", "be a length", standardUncertainty);
        }
        if (!(standardUncertainty.libraryValue() >= 0.0)) {
            throw LibraryUnits.refused(
                    "standard uncertainty of " + name, "not-negative", "0 or more", standardUncertainty);
        }
    }

    /**
     * {@return the reading with what was read}
     *
     * @param value as read
     */
    public NeckReading reads(Quantity<Length> value) {
        return new NeckReading(name, of, Estimate.of(Amount.from(value, "value"), standardUncertainty));
    }

    /** With the value that is expected. */
    NeckReading expected(Solved known) {
        double value = known.mean(of);
        return new NeckReading(
                name,
                of,
                Estimate.ofLibrary(
                        value,
                        standardUncertainty.libraryValue(),
                        Double.POSITIVE_INFINITY,
                        standardUncertainty.unit()));
    }

    @Override
    public Form<PossibleReading> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(standardUncertainty.unit());
    }

    /** Returns such as {@code thread at the bridge, u 0.15 mm}. */
    @Override
    public String toString() {
        return text(style());
    }
}
