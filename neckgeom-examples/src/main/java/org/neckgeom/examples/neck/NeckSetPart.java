package org.neckgeom.examples.neck;

import javax.measure.quantity.Length;
import org.neckgeom.design.Scale;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.geometry.NeckSet;
import org.neckgeom.units.Amount;

/** How the neck shall stand to the body, in a neck file. Heights count from the body's top at the joint. */
final class NeckSetPart {

    static final Key<Amount<Length>> FRET_PLANE = Key.needed(
            "fret plane",
            Lengths.EITHER_WAY,
            "height of the fret tops at the joint: board, fret and what stands under it");
    static final Key<Amount<Length>> SADDLE =
            Key.needed("saddle", Lengths.SIZE, "height of the strings at the saddle: bridge and saddle");
    static final Key<Amount<Length>> AT_NUT =
            Key.needed("at nut", Lengths.SIZE_OR_NOTHING, "height of the strings over the fret tops at the nut");
    static final Key<Amount<Length>> ACTION =
            Key.needed("action", Lengths.SIZE_OR_NOTHING, "height of the strings over the fret tops at half the scale");
    static final Key<Amount<Length>> COMPENSATION = Key.optional(
            "compensation", Lengths.EITHER_WAY, "how far the saddle stands back from the scale's end; 0 when left out");
    static final Key<Amount<Length>> DOME_RADIUS = Key.needed("radius", Lengths.RADIUS, "of the dome");
    static final Key<Amount<Length>> POLE_TO_JOINT =
            Key.needed("pole to joint", Lengths.SIZE_OR_NOTHING, "from the dome's highest point to the joint");
    static final Key<Amount<Length>> POLE_TO_BRIDGE =
            Key.needed("pole to bridge", Lengths.SIZE_OR_NOTHING, "from the dome's highest point to the saddle");
    static final Key<Section> DOME = Key.optional(
            "dome",
            Shape.of("a domed top", DOME_RADIUS, POLE_TO_JOINT, POLE_TO_BRIDGE),
            "a domed top; the saddle's height then counts from the top under it; flat when left out");

    static final Shape SHAPE =
            Shape.of("how the neck stands to the body", FRET_PLANE, SADDLE, AT_NUT, ACTION, COMPENSATION, DOME);

    private NeckSetPart() {}

    static Found<NeckSet> of(Section section, Found<Scale> scale, Found<Integer> bodyAtFret) {
        return section.make(() -> {
            NeckSet set = NeckSet.scale(scale.value().length())
                    .bodyAtFret(bodyAtFret.value(), scale.value().divisions())
                    .fretPlane(section.at(FRET_PLANE).value())
                    .saddle(section.at(SADDLE).value())
                    .atNut(section.at(AT_NUT).value())
                    .action(section.at(ACTION).value());
            if (!section.at(COMPENSATION).isAbsent()) {
                set = set.compensation(section.at(COMPENSATION).value());
            }
            if (section.at(DOME).isAbsent()) {
                return set;
            }
            Section dome = section.at(DOME).value();
            return set.overDome(
                    dome.at(DOME_RADIUS).value(),
                    dome.at(POLE_TO_JOINT).value(),
                    dome.at(POLE_TO_BRIDGE).value());
        });
    }
}
