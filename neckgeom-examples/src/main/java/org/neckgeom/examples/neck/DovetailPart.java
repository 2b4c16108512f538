package org.neckgeom.examples.neck;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.heel.DovetailSeat;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** A dovetail in a neck file. */
final class DovetailPart {

    static final Key<Amount<Angle>> TAPER = Key.needed(
            "taper",
            QuantityKind.angle().moreThan(ShopUnits.deg(0)).atMost(ShopUnits.deg(30)),
            "of each side, from the way it goes home");
    static final Key<Amount<Length>> LENGTH = Key.optional(
            "length",
            Lengths.SIZE,
            "how far it reaches past the shoulder, into the body; not counted in the blank when left out");
    static final Key<Amount<Length>> AT_END = Key.optional(
            "width at end", Lengths.SIZE, "of its far end at the glue face; no template of it when left out");
    static final Key<Amount<Length>> AT_SHOULDER =
            Key.optional("width at shoulder", Lengths.SIZE, "there at the glue face, where it is narrower");
    static final Key<Amount<Length>> HEIGHT =
            Key.optional("height", Lengths.SIZE, "from the glue face down to its lower end");

    static final Shape SHAPE = Shape.of("a dovetail", TAPER, LENGTH, AT_END, AT_SHOULDER, HEIGHT);

    private DovetailPart() {}

    static DovetailSeat of(Section section) {
        DovetailSeat seat = DovetailSeat.tapered(section.at(TAPER).value());
        boolean sized = !section.at(AT_END).isAbsent();
        if (sized == section.at(AT_SHOULDER).isAbsent()
                || sized == section.at(HEIGHT).isAbsent()) {
            throw new IllegalArgumentException(
                    "width at end, width at shoulder and height belong together; give all three or none");
        }
        if (sized && section.at(LENGTH).isAbsent()) {
            throw new IllegalArgumentException("its widths are given, but not its length; give both");
        }
        seat = section.at(LENGTH).isAbsent()
                ? seat
                : seat.length(section.at(LENGTH).value());
        return sized
                ? seat.sized(
                        section.at(AT_END).value(),
                        section.at(AT_SHOULDER).value(),
                        section.at(HEIGHT).value())
                : seat;
    }
}
