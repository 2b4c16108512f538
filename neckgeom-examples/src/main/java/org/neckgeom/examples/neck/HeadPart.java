package org.neckgeom.examples.neck;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.design.Head;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The head in a neck file. */
final class HeadPart {

    static final Key<Amount<Angle>> PITCH = Key.optional(
            "pitch",
            QuantityKind.angle().moreThan(ShopUnits.deg(0)).atMost(ShopUnits.deg(45)),
            "how far the head is turned back; a flat head when left out");
    static final Key<Amount<Length>> LENGTH = Key.needed("length", Lengths.SIZE, "along its face, from the nut line");
    static final Key<Amount<Length>> WIDTH = Key.needed("width", Lengths.SIZE, "at its widest, ears counted");
    static final Key<Amount<Length>> THICKNESS =
            Key.needed("thickness", Lengths.SIZE, "of its wood, veneers not counted");
    static final Key<Amount<Angle>> SWING = Key.optional(
            "swung",
            QuantityKind.angle().atLeast(ShopUnits.deg(-30)).atMost(ShopUnits.deg(30)),
            "turned sideways about the nut, toward the treble side; 0 when left out");
    static final Key<Amount<Length>> VENEER_THICKNESS = Key.needed("thickness", Lengths.SIZE, "of the veneer");
    static final Key<Amount<Length>> VENEER_SHORT = Key.optional(
            "short of nut", Lengths.SIZE_OR_NOTHING, "how far before the nut line it stops; 0 when left out");
    static final Key<Section> VENEER = Key.optional(
            "face veneer",
            Shape.of("a veneer on the head's face", VENEER_THICKNESS, VENEER_SHORT),
            "a veneer glued to the face before the channel is cut; none when left out");
    static final Key<Amount<Length>> BACK_VENEER =
            Key.optional("back veneer", Lengths.SIZE, "thickness of a veneer on the back; none when left out");

    static final Shape SHAPE = Shape.of("the head", PITCH, LENGTH, WIDTH, THICKNESS, SWING, VENEER, BACK_VENEER);

    private HeadPart() {}

    static Found<Head> of(Section section) {
        return section.make(() -> {
            Head head = section.at(PITCH).isAbsent()
                    ? Head.flat()
                    : Head.pitched(section.at(PITCH).value());
            head = head.length(section.at(LENGTH).value())
                    .width(section.at(WIDTH).value())
                    .thickness(section.at(THICKNESS).value());
            if (!section.at(SWING).isAbsent()) {
                head = head.swung(section.at(SWING).value());
            }
            if (!section.at(VENEER).isAbsent()) {
                Section veneer = section.at(VENEER).value();
                head = head.veneer(
                        veneer.at(VENEER_THICKNESS).value(),
                        veneer.at(VENEER_SHORT).orElse(ShopUnits.mm(0)));
            }
            return section.at(BACK_VENEER).isAbsent()
                    ? head
                    : head.backVeneer(section.at(BACK_VENEER).value());
        });
    }
}
