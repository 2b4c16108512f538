package org.neckgeom.examples.neck;

import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.heel.TenonBolts;
import org.neckgeom.units.Amount;

/** A bolted tenon in a neck file. */
final class TenonPart {

    private static final int MOST = 6;

    static final Key<Amount<Length>> HEIGHT =
            Key.needed("height", Lengths.SIZE, "from the glue face down to its lower end");
    static final Key<Amount<Length>> LENGTH =
            Key.needed("length", Lengths.SIZE, "how far it reaches past the shoulder");
    static final Key<Amount<Length>> HOLES =
            Key.needed("hole diameter", Lengths.SIZE, "of the holes for barrels or inserts");
    static final Key<Amount<Length>> SET_BACK =
            Key.needed("set back", Lengths.SIZE_OR_NOTHING, "of each hole's wall from the shoulder");
    static final Key<List<Amount<Length>>> AT =
            Key.needed("holes at", Kinds.listOf(Lengths.SIZE, 1, MOST), "their centres below the glue face");

    static final Shape SHAPE = Shape.of("a bolted tenon", HEIGHT, LENGTH, HOLES, SET_BACK, AT);

    private TenonPart() {}

    static TenonBolts of(Section section) {
        TenonBolts tenon = TenonBolts.tenon(
                        section.at(HEIGHT).value(), section.at(LENGTH).value())
                .holes(section.at(HOLES).value(), section.at(SET_BACK).value());
        for (Amount<Length> depth : section.at(AT).value()) {
            tenon = tenon.at(depth);
        }
        return tenon;
    }
}
