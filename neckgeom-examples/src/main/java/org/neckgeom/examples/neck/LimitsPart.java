package org.neckgeom.examples.neck;

import javax.measure.quantity.Length;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.units.Amount;

/** The limits a maker sets in a neck file. */
final class LimitsPart {

    static final Key<Amount<Length>> SLOT_OFFSET =
            Key.optional("slot offset", Lengths.SIZE, "how far off the middle the slot may lie, either way");
    static final Key<Amount<Length>> WOOD_LEFT =
            Key.optional("wood left", Lengths.SIZE, "the least wood to leave between channel and back");

    static final Key<Amount<Length>> STRING_LINE = Key.optional(
            "strings at bridge", Lengths.SIZE, "how far off the middle of the bridge they may run, either way");

    static final Shape SHAPE = Shape.of("the limits to keep", SLOT_OFFSET, WOOD_LEFT, STRING_LINE);

    private LimitsPart() {}

    /** What is told; what is not stays as it is usual. */
    static Found<NeckLimits> of(Section section, NeckLimits usual) {
        return section.make(() -> {
            NeckLimits limits = usual;
            if (!section.at(SLOT_OFFSET).isAbsent()) {
                limits = limits.slotOffset(section.at(SLOT_OFFSET).value());
            }
            if (!section.at(WOOD_LEFT).isAbsent()) {
                limits = limits.woodLeft(section.at(WOOD_LEFT).value());
            }
            return section.at(STRING_LINE).isAbsent()
                    ? limits
                    : limits.stringLine(section.at(STRING_LINE).value());
        });
    }
}
