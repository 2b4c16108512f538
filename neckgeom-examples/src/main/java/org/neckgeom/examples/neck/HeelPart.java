package org.neckgeom.examples.neck;

import javax.measure.quantity.Length;
import org.neckgeom.design.Heel;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.units.Amount;

/** The heel in a neck file. */
final class HeelPart {

    static final Key<Amount<Length>> HEIGHT =
            Key.needed("height", Lengths.SIZE, "of the mating face, glue face to cap");
    static final Key<Amount<Length>> WIDTH = Key.needed("width", Lengths.SIZE, "of the mating face, cheek to cheek");
    static final Key<Amount<Length>> BLOCKS = Key.optional(
            "blocks", Lengths.SIZE, "thickness of the blocks it is stacked of; as the blank when left out");

    static final Key<Amount<Length>> BLOCK_LENGTH = Key.optional(
            "block length", Lengths.SIZE, "of each block along the grain; no blocks in the cutting list when left out");

    static final Shape SHAPE = Shape.of("the heel", HEIGHT, WIDTH, BLOCKS, BLOCK_LENGTH);

    private HeelPart() {}

    static Found<Heel> of(Section section) {
        return section.make(() -> {
            Heel heel = Heel.of(section.at(HEIGHT).value(), section.at(WIDTH).value());
            return section.at(BLOCKS).isAbsent()
                    ? heel
                    : heel.blocks(section.at(BLOCKS).value());
        });
    }
}
