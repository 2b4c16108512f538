package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.quantity.Length;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.shop.Cutter;
import org.neckgeom.units.Amount;

/** The cutter in a neck file. */
final class CutterPart {

    static final Key<Amount<Length>> DIAMETER = Key.needed("diameter", Lengths.SIZE, "of its straight cutting part");
    static final Key<Integer> FLUTES =
            Key.optional("flutes", Kinds.wholeNumber(1, 8), "how many cutting edges; told together with their length");
    static final Key<Amount<Length>> FLUTE_LENGTH =
            Key.optional("flute length", Lengths.SIZE, "how long the cutting edges are");
    static final Key<Amount<Length>> SHANK = Key.optional("shank", Lengths.SIZE, "diameter of the shank");
    static final Key<Amount<Length>> STAND_OUT =
            Key.optional("stand-out", Lengths.SIZE, "how far it stands out of the collet");
    static final Key<Cutter.Material> MATERIAL = Key.optional("material", materials(), "what it is made of");
    static final Key<Amount<Length>> RUNOUT =
            Key.optional("runout", Lengths.SIZE_OR_NOTHING, "total reading of a dial held to it as it turns; 0");

    static final Shape SHAPE =
            Shape.of("the cutter for the channel", DIAMETER, FLUTES, FLUTE_LENGTH, SHANK, STAND_OUT, MATERIAL, RUNOUT);

    private CutterPart() {}

    private static Kind<Cutter.Material> materials() {
        Map<String, Cutter.Material> words = new LinkedHashMap<>();
        words.put("carbide", Cutter.Material.CARBIDE);
        words.put("steel", Cutter.Material.STEEL);
        return Kinds.choice(words);
    }

    static Found<Cutter> of(Section section) {
        return section.make(() -> {
            Cutter cutter = Cutter.straight(section.at(DIAMETER).value());
            if (section.at(FLUTES).isAbsent() != section.at(FLUTE_LENGTH).isAbsent()) {
                throw new IllegalArgumentException("flutes and flute length must be told together, but one is missing");
            }
            if (!section.at(FLUTES).isAbsent()) {
                cutter = cutter.flutes(
                        section.at(FLUTES).value(), section.at(FLUTE_LENGTH).value());
            }
            if (!section.at(SHANK).isAbsent()) {
                cutter = cutter.shank(section.at(SHANK).value());
            }
            if (!section.at(STAND_OUT).isAbsent()) {
                cutter = cutter.standOut(section.at(STAND_OUT).value());
            }
            if (!section.at(RUNOUT).isAbsent()) {
                cutter = cutter.runout(section.at(RUNOUT).value());
            }
            if (section.at(MATERIAL).isAbsent()) {
                return cutter;
            }
            return section.at(MATERIAL).value() == Cutter.Material.CARBIDE ? cutter.carbide() : cutter.steel();
        });
    }
}
