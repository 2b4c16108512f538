package org.neckgeom.examples.neck;

import javax.measure.quantity.Length;
import org.neckgeom.design.Heel;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.plan.NeckDetails;
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

    static final Key<Section> DOVETAIL =
            Key.optional("dovetail", DovetailPart.SHAPE, "a dovetail that holds it in the body; none when left out");
    static final Key<Section> TENON =
            Key.optional("tenon", TenonPart.SHAPE, "a bolted tenon instead of a dovetail; none when left out");

    static final Shape SHAPE = Shape.of("the heel", HEIGHT, WIDTH, BLOCKS, BLOCK_LENGTH, DOVETAIL, TENON);

    private HeelPart() {}

    /** Blocks and joint of the heel; what is wrong with a joint is said at the joint. */
    static Found<NeckDetails> details(Section section, Heel heel, NeckDetails details) {
        if (section.at(BLOCK_LENGTH).isUnusable()
                || section.at(DOVETAIL).isUnusable()
                || section.at(TENON).isUnusable()) {
            return Found.unusable();
        }
        if (!section.at(DOVETAIL).isAbsent() && !section.at(TENON).isAbsent()) {
            section.problem(TENON, "is given, and a dovetail too; keep one of them");
            return Found.unusable();
        }
        NeckDetails told = section.at(BLOCK_LENGTH).isAbsent()
                ? details
                : details.heelBlocks(section.at(BLOCK_LENGTH).value());
        if (!section.at(DOVETAIL).isAbsent()) {
            Section joint = section.at(DOVETAIL).value();
            return isInside(joint, DovetailPart.HEIGHT, heel)
                    ? joint.make(() -> told.dovetail(DovetailPart.of(joint)))
                    : Found.unusable();
        }
        if (!section.at(TENON).isAbsent()) {
            Section joint = section.at(TENON).value();
            return isInside(joint, TenonPart.HEIGHT, heel)
                    ? joint.make(() -> told.tenon(TenonPart.of(joint)))
                    : Found.unusable();
        }
        return Found.of(told);
    }

    private static boolean isInside(Section joint, Key<Amount<Length>> height, Heel heel) {
        if (!joint.at(height).isThere()) {
            // Not told, or noted already where it is.
            return true;
        }
        if (joint.at(height).value().house() <= heel.heightMm()) {
            return true;
        }
        joint.problem(
                height,
                "is " + joint.at(height).value() + ", but must be "
                        + heel.style().brief(heel.heightMm()) + " or less: the heel is no higher");
        return false;
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
