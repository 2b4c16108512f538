package org.neckgeom.examples.neck;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.design.Heel;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.geometry.DovetailSeat;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The heel in a neck file. */
final class HeelPart {

    static final Key<Amount<Length>> HEIGHT =
            Key.needed("height", Lengths.SIZE, "of the mating face, glue face to cap");
    static final Key<Amount<Length>> WIDTH = Key.needed("width", Lengths.SIZE, "of the mating face, cheek to cheek");
    static final Key<Amount<Length>> BLOCKS = Key.optional(
            "blocks", Lengths.SIZE, "thickness of the blocks it is stacked of; as the blank when left out");

    static final Key<Amount<Length>> BLOCK_LENGTH = Key.optional(
            "block length", Lengths.SIZE, "of each block along the grain; no blocks in the cutting list when left out");

    static final Key<Amount<Angle>> DOVETAIL = Key.optional(
            "dovetail taper",
            QuantityKind.angle().moreThan(ShopUnits.deg(0)).atMost(ShopUnits.deg(30)),
            "of each side of its dovetail, from the way it goes home; no dovetail when left out");
    static final Key<Section> TENON =
            Key.optional("tenon", TenonPart.SHAPE, "a bolted tenon instead of a dovetail; none when left out");

    static final Shape SHAPE = Shape.of("the heel", HEIGHT, WIDTH, BLOCKS, BLOCK_LENGTH, DOVETAIL, TENON);

    private HeelPart() {}

    /** Blocks and joint of the heel. */
    static NeckDetails details(Section section, NeckDetails details) {
        NeckDetails told = details;
        if (!section.at(BLOCK_LENGTH).isAbsent()) {
            told = told.heelBlocks(section.at(BLOCK_LENGTH).value());
        }
        if (!section.at(DOVETAIL).isAbsent() && !section.at(TENON).isAbsent()) {
            throw new IllegalArgumentException("both dovetail taper and tenon are given; keep one of them");
        }
        if (!section.at(DOVETAIL).isAbsent()) {
            told = told.dovetail(DovetailSeat.tapered(section.at(DOVETAIL).value()));
        }
        return section.at(TENON).isAbsent()
                ? told
                : told.tenon(TenonPart.of(section.at(TENON).value()));
    }

    static Found<Heel> of(Section section) {
        return section.make(() -> {
            Heel heel = Heel.of(section.at(HEIGHT).value(), section.at(WIDTH).value());
            return section.at(BLOCKS).isAbsent()
                    ? heel
                    : heel.blocks(section.at(BLOCKS).value());
        });
    }
}
