package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.neckgeom.design.BackProfile;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
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

    static final Shape SHAPE =
            Shape.of("the back of the neck", FIRST_DEPTH, SECOND_DEPTH, FRETS, SHAPE_WORD, EXPONENTS);

    private BackPart() {}

    private static Kind<Double> shapes() {
        Map<String, Double> words = new LinkedHashMap<>();
        words.put("rounded", BackProfile.ROUNDED);
        words.put("full", BackProfile.FULL);
        words.put("flat-backed", BackProfile.FLAT_BACKED);
        words.put("pointed", BackProfile.POINTED);
        return Kinds.choice(words);
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
