package org.neckgeom.examples.neck;

import javax.measure.quantity.Length;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.stock.Blank;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The blank in a neck file; it is of the neck's wood. */
final class BlankPart {

    static final Key<Amount<Length>> LENGTH =
            Key.needed("length", Lengths.SIZE, "along the neck, before the scarf is sawn");
    static final Key<Amount<Length>> WIDTH = Key.needed("width", Lengths.SIZE, "across, at the middle of its length");
    static final Key<Amount<Length>> THICKNESS =
            Key.needed("thickness", Lengths.SIZE, "from the glue face to the back");
    static final Key<Amount<Length>> OUT_OF_PARALLEL = Key.optional(
            "out of parallel",
            Lengths.EITHER_WAY,
            "how much wider it is at the heel end than at the head end; 0 when left out");
    static final Key<Amount<Length>> NUT =
            Key.optional("nut at", Lengths.SIZE_OR_NOTHING, "from its head end to the nut line; 0 when left out");

    static final Key<Amount<Length>> END_SPARE = Key.optional(
            "end spare", Lengths.SIZE_OR_NOTHING, "to spare at each end; no cutting list when all spares are left out");
    static final Key<Amount<Length>> EDGE_SPARE =
            Key.optional("edge spare", Lengths.SIZE_OR_NOTHING, "to spare at each edge; 0 when left out");
    static final Key<Amount<Length>> PLANING =
            Key.optional("planing", Lengths.SIZE_OR_NOTHING, "planed off each face; 0 when left out");
    static final Key<Amount<Length>> SAW_KERF =
            Key.optional("saw kerf", Lengths.SIZE_OR_NOTHING, "what a cut square across takes; 0 when left out");

    static final Shape SHAPE = Shape.of(
            "the squared piece the neck is made from",
            LENGTH,
            WIDTH,
            THICKNESS,
            OUT_OF_PARALLEL,
            NUT,
            END_SPARE,
            EDGE_SPARE,
            PLANING,
            SAW_KERF);

    private BlankPart() {}

    /** What the blank shall have to spare, and what a saw takes; the details as they are where nothing is told. */
    static NeckDetails spares(Section section, NeckDetails details) {
        NeckDetails told = details.sawKerf(section.at(SAW_KERF).orElse(ShopUnits.mm(0)));
        boolean none = section.at(END_SPARE).isAbsent()
                && section.at(EDGE_SPARE).isAbsent()
                && section.at(PLANING).isAbsent();
        return none
                ? told
                : told.spare(
                        section.at(END_SPARE).orElse(ShopUnits.mm(0)),
                        section.at(EDGE_SPARE).orElse(ShopUnits.mm(0)),
                        section.at(PLANING).orElse(ShopUnits.mm(0)));
    }

    static Found<Blank> of(Section section, Found<Wood> wood) {
        return section.make(() -> {
            Blank blank = Blank.of(
                    section.at(LENGTH).value(),
                    section.at(WIDTH).value(),
                    section.at(THICKNESS).value());
            if (!section.at(OUT_OF_PARALLEL).isAbsent()) {
                blank = blank.outOfParallel(section.at(OUT_OF_PARALLEL).value());
            }
            if (!section.at(NUT).isAbsent()) {
                blank = blank.nutAt(section.at(NUT).value());
            }
            return wood.isThere() ? blank.wood(wood.value()) : blank;
        });
    }
}
