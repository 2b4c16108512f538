package org.neckgeom.examples.neck;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Scale;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.heel.NeckSet;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** How the neck shall stand to the body, in a neck file. Heights count from the body's top at the joint. */
final class NeckSetPart {

    private static final double HAIR = 1e-9;

    static final Key<Amount<Length>> FRET_PLANE = Key.optional(
            "fret plane",
            Lengths.EITHER_WAY,
            "height of the fret tops at the joint; overstand, board and fret when left out");
    static final Key<Amount<Length>> OVERSTAND = Key.optional(
            "overstand",
            Lengths.SIZE_OR_NOTHING,
            "height of the glue face over the body's top at the joint, instead of the fret plane; 0 when left out");
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

    static final Shape SHAPE = Shape.of(
            "how the neck stands to the body", FRET_PLANE, OVERSTAND, SADDLE, AT_NUT, ACTION, COMPENSATION, DOME);

    private NeckSetPart() {}

    /** How much the board and its frets stand over the glue face at the joint; nothing while fret height is unknown. */
    static Optional<Amount<Length>> boardAndFret(NeckDesign neck, Found<Amount<Length>> fretHeight) {
        double board = neck.boardThicknessAtMm(neck.bodyJointMm());
        return fretHeight.isAbsent()
                ? Optional.empty()
                : Optional.of(neck.fingerboard()
                        .style()
                        .amount(board + fretHeight.value().house()));
    }

    /** Told, or what is left of the fret plane's height under board and fret. */
    static Amount<Length> overstand(Section section, Optional<Amount<Length>> boardAndFret) {
        if (section.at(FRET_PLANE).isAbsent() || boardAndFret.isEmpty()) {
            return section.at(OVERSTAND).orElse(ShopUnits.mm(0));
        }
        Amount<Length> plane = section.at(FRET_PLANE).value();
        double under = plane.house() - boardAndFret.get().house();
        if (under < -HAIR) {
            throw new IllegalArgumentException("fret plane must be " + boardAndFret.get()
                    + " or more, the height of board and fret, but was " + plane);
        }
        return Amount.ofHouse(Math.max(0, under), plane.unit());
    }

    private static Amount<Length> fretPlane(Section section, Optional<Amount<Length>> boardAndFret) {
        if (!section.at(FRET_PLANE).isAbsent()) {
            if (!section.at(OVERSTAND).isAbsent()) {
                throw new IllegalArgumentException("both fret plane and overstand are given; keep one of them");
            }
            return section.at(FRET_PLANE).value();
        }
        Amount<Length> board = boardAndFret.orElseThrow(
                () -> new IllegalArgumentException("either fret plane or the fingerboard's fret height must be given"));
        return board.plus(section.at(OVERSTAND).orElse(ShopUnits.mm(0)));
    }

    /** The board's section and fret height are those of the file's fingerboard. */
    static Found<NeckSet> of(
            Section section,
            Found<Scale> scale,
            Found<Integer> bodyAtFret,
            Found<Fingerboard> board,
            Found<Amount<Length>> fretHeight) {
        return section.make(() -> {
            NeckDesign neck = NeckDesign.named("board")
                    .scale(scale.value())
                    .bodyAtFret(bodyAtFret.value())
                    .fingerboard(board.value());
            NeckSet set = NeckSet.scale(scale.value().length())
                    .bodyAtFret(bodyAtFret.value(), scale.value().divisions())
                    .fretPlane(fretPlane(section, boardAndFret(neck, fretHeight)))
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
