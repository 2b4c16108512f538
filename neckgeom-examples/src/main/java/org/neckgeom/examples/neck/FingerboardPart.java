package org.neckgeom.examples.neck;

import javax.measure.quantity.Length;
import org.neckgeom.design.Fingerboard;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.examples.file.TableKind;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;

/** The fingerboard in a neck file. */
final class FingerboardPart {

    static final Key<Amount<Length>> NUT_WIDTH =
            Key.needed("width at nut", Lengths.SIZE, "how wide the board is at the nut");
    static final Key<Amount<Length>> SECOND_WIDTH =
            Key.needed("second width", Lengths.SIZE, "how wide it is at its second place");
    static final Key<Integer> SECOND_FRET = Key.optional(
            "second at fret", Kinds.wholeNumber(1, 200), "the fret of the second place; the body joint when left out");
    static final Key<Amount<Length>> THICKNESS =
            Key.needed("thickness", Lengths.SIZE, "on the centreline, at the nut; all along unless told");
    static final Key<Amount<Length>> SECOND_THICKNESS =
            Key.optional("second thickness", Lengths.SIZE, "on the centreline at the second place");
    static final Key<Amount<Length>> RADIUS =
            Key.optional("radius", Lengths.RADIUS, "radius of the crown, at the nut; a flat board when left out");
    static final Key<Amount<Length>> SECOND_RADIUS =
            Key.optional("second radius", Lengths.RADIUS, "radius at the second place; the same when left out");
    static final Key<Amount<Length>> FRET_HEIGHT =
            Key.optional("fret height", Lengths.SIZE, "of the frets over the board; unknown when left out");
    static final Key<Amount<Length>> FALL_AWAY = Key.optional(
            "fall-away",
            Lengths.SIZE_OR_NOTHING,
            "how much lower the board is at the last fret, in a straight slope from the body joint; none when left out");
    static final Key<Wood> WOOD = Key.optional("wood", new TableKind<>(Wood.TYPE), "the board's wood");

    static final Shape SHAPE = Shape.of(
            "the fingerboard",
            NUT_WIDTH,
            SECOND_WIDTH,
            SECOND_FRET,
            THICKNESS,
            SECOND_THICKNESS,
            RADIUS,
            SECOND_RADIUS,
            FRET_HEIGHT,
            FALL_AWAY,
            WOOD);

    private FingerboardPart() {}

    static Found<Fingerboard> of(Section section) {
        return section.make(() -> {
            Fingerboard board = Fingerboard.tapered(
                    section.at(NUT_WIDTH).value(), section.at(SECOND_WIDTH).value());
            if (!section.at(SECOND_FRET).isAbsent()) {
                board = board.secondAtFret(section.at(SECOND_FRET).value());
            }
            Amount<Length> thickness = section.at(THICKNESS).value();
            board = board.thickness(thickness, section.at(SECOND_THICKNESS).orElse(thickness));
            board = withRadius(section, board);
            return section.at(WOOD).isAbsent()
                    ? board
                    : board.wood(section.at(WOOD).value());
        });
    }

    private static Fingerboard withRadius(Section section, Fingerboard board) {
        if (section.at(RADIUS).isAbsent()) {
            if (!section.at(SECOND_RADIUS).isAbsent()) {
                throw new IllegalArgumentException(
                        "a second radius is given, but no radius; give both, or neither for a" + " flat board");
            }
            return board;
        }
        Amount<Length> radius = section.at(RADIUS).value();
        return board.radius(radius, section.at(SECOND_RADIUS).orElse(radius));
    }
}
