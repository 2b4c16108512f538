package org.neckgeom.state;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Estimate;
import org.neckgeom.text.Words;
import org.neckgeom.units.LengthStyle;

/**
 * A reading of a deviation where it was read, such as {@code fingerboard to channel at 280 mm: 0.060 mm, u 0.020 mm}.
 * Immutable.
 *
 * <p>The uncertainty is this reading's own. What readings share, such as the zero of one calliper, is a {@link Cause} and
 * a part of what each of them reads: then many readings never beat the zero. The difference of two walls has no part of it.
 *
 * @param name of the reading; the same place read again has another name
 * @param of the deviation that was read
 * @param value what was read, with its own standard uncertainty
 */
public record NeckReading(String name, Deviation of, Estimate<Length> value) implements Answer {

    static final Form<NeckReading> FORM = Form.<NeckReading>of("neck-reading")
            .fact("name", Kind.NAME, "of the reading", NeckReading::name)
            .fact("of", Kind.ANSWER, "the deviation that was read", NeckReading::of)
            .fact("value", Kind.ESTIMATE, "as read, with its own uncertainty", NeckReading::value)
            .finds("neck-reading", "{name}: {value}");

    /**
     * Checks the parts.
     *
     * @param name of the reading
     * @param of the deviation that was read
     * @param value what was read
     * @throws IllegalArgumentException if the name is blank
     */
    public NeckReading {
        Words.name(name, "a reading's name");
        Objects.requireNonNull(of, "of");
        Checked.length("value", value);
    }

    double uncertainty() {
        return value.libraryUncertainty();
    }

    @Override
    public Form<NeckReading> form() {
        return FORM;
    }

    @Override
    public LengthStyle style() {
        return LengthStyle.ofUnit(value.unit());
    }

    /** Returns such as {@code fingerboard to channel at 280 mm: 0.060 mm, u 0.020 mm}. */
    @Override
    public String toString() {
        return text(style());
    }
}
