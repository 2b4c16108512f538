package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.neckgeom.design.BackProfile;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.solid.BackShape;
import org.neckgeom.units.Amount;

/** The back of the neck in a neck file. */
final class BackPart {

    static final Key<Amount<Length>> FIRST_DEPTH = Key.needed(
            "first depth", Lengths.SIZE, "wood below the glue face at the first of the two frets, board not counted");
    static final Key<Amount<Length>> SECOND_DEPTH =
            Key.needed("second depth", Lengths.SIZE, "the same at the second of the two frets");
    static final Key<List<Integer>> FRETS = Key.optional(
            "at frets", Kinds.listOf(Kinds.wholeNumber(0, 200), 2, 2), "the two frets; 1 and 12 when left out");
    static final Key<Double> SHAPE_WORD =
            Key.optional("shape", shapes(), "the curve across in a word; rounded when left out");
    static final Key<List<Double>> EXPONENTS = Key.optional(
            "curve",
            Kinds.listOf(Kinds.number(1, 20), 2, 2),
            "the curve in numbers, bass side then treble side, instead of a word: 2 is half an ellipse, more is fuller");

    static final Key<Amount<Length>> VOLUTE_DEPTH =
            Key.needed("extra depth", Lengths.SIZE, "how much deeper the neck is at the nut for its volute");
    static final Key<Amount<Length>> VOLUTE_LENGTH =
            Key.needed("length", Lengths.SIZE, "from the nut to where the volute has run out, either way");
    static final Key<Section> VOLUTE = Key.optional(
            "volute",
            Shape.of("a volute behind the nut", VOLUTE_DEPTH, VOLUTE_LENGTH),
            "a volute behind the nut; none when left out");
    static final Key<Amount<Length>> TURN_START =
            Key.needed("starts at", Lengths.SIZE, "from the nut to where the back begins to turn down");
    static final Key<Amount<Length>> TURN_RADIUS =
            Key.needed("turn radius", Lengths.SIZE, "of the quarter circle into the heel");
    static final Key<Section> HEEL_TURN = Key.optional(
            "heel turn",
            Shape.of("the turn of the back into the heel", TURN_START, TURN_RADIUS),
            "the turn of the back into the heel; the back runs straight on when left out");

    static final Shape SHAPE = Shape.of(
            "the back of the neck", FIRST_DEPTH, SECOND_DEPTH, FRETS, SHAPE_WORD, EXPONENTS, VOLUTE, HEEL_TURN);

    private BackPart() {}

    private static Kind<Double> shapes() {
        Map<String, Double> words = new LinkedHashMap<>();
        words.put("rounded", BackProfile.ROUNDED);
        words.put("full", BackProfile.FULL);
        words.put("flat-backed", BackProfile.FLAT_BACKED);
        words.put("pointed", BackProfile.POINTED);
        return Kinds.choice(words);
    }

    /** The back of a design with its volute and its turn into the heel. */
    static Found<BackShape> shape(Section section, NeckDesign design) {
        return section.make(() -> {
            BackShape shape = BackShape.of(design);
            if (!section.at(VOLUTE).isAbsent()) {
                Section volute = section.at(VOLUTE).value();
                shape = shape.volute(
                        volute.at(VOLUTE_DEPTH).value(),
                        volute.at(VOLUTE_LENGTH).value());
            }
            if (section.at(HEEL_TURN).isAbsent()) {
                return shape;
            }
            Section turn = section.at(HEEL_TURN).value();
            return shape.heelFrom(
                    turn.at(TURN_START).value(), turn.at(TURN_RADIUS).value());
        });
    }

    static Found<BackProfile> of(Section section) {
        return section.make(() -> {
            BackProfile back = BackProfile.between(
                    section.at(FIRST_DEPTH).value(), section.at(SECOND_DEPTH).value());
            if (!section.at(FRETS).isAbsent()) {
                List<Integer> frets = section.at(FRETS).value();
                back = back.atFrets(frets.get(0), frets.get(1));
            }
            if (section.at(EXPONENTS).isAbsent()) {
                return back.power(section.at(SHAPE_WORD).orElse(BackProfile.ROUNDED));
            }
            if (!section.at(SHAPE_WORD).isAbsent()) {
                throw new IllegalArgumentException("both shape and curve are given; keep one of them");
            }
            List<Double> curve = section.at(EXPONENTS).value();
            return back.asymmetric(curve.get(0), curve.get(1));
        });
    }
}
