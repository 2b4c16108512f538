package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.quantity.Length;
import org.neckgeom.design.End;
import org.neckgeom.design.Rod;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.units.Amount;

/** The rod in a neck file. */
final class RodPart {

    static final Key<Rod.Kind> KIND =
            Key.needed("kind", kinds(), "two-way (a pair), single-action (one rod in tension), or a fixed bar");
    static final Key<Amount<Length>> LENGTH = Key.needed("length", Lengths.SIZE, "from end to end");
    static final Key<Amount<Length>> WIDTH =
            Key.needed("width", Lengths.SIZE, "across the channel; of a single-action rod its diameter");
    static final Key<Amount<Length>> HEIGHT =
            Key.optional("height", Lengths.SIZE, "into the channel; a single-action rod has none but its diameter");
    static final Key<End> ADJUSTED_AT =
            Key.optional("adjusted at", ends(), "the end with the adjuster; the head when left out");

    static final Shape SHAPE = Shape.of("the rod or bar in the channel", KIND, LENGTH, WIDTH, HEIGHT, ADJUSTED_AT);

    private RodPart() {}

    private static Kind<Rod.Kind> kinds() {
        Map<String, Rod.Kind> words = new LinkedHashMap<>();
        words.put("two-way", Rod.Kind.TWO_WAY);
        words.put("single-action", Rod.Kind.SINGLE_ACTION);
        words.put("steel bar", Rod.Kind.STEEL_BAR);
        words.put("carbon bar", Rod.Kind.CARBON_BAR);
        return Kinds.choice(words);
    }

    private static Kind<End> ends() {
        Map<String, End> words = new LinkedHashMap<>();
        words.put("head", End.HEAD);
        words.put("heel", End.HEEL);
        return Kinds.choice(words);
    }

    static Found<Rod> of(Section section) {
        return section.make(() -> {
            Rod rod = plain(section);
            return section.at(ADJUSTED_AT).isAbsent()
                    ? rod
                    : rod.adjustedAt(section.at(ADJUSTED_AT).value());
        });
    }

    private static Rod plain(Section section) {
        Rod.Kind kind = section.at(KIND).value();
        Amount<Length> length = section.at(LENGTH).value();
        Amount<Length> width = section.at(WIDTH).value();
        if (kind == Rod.Kind.SINGLE_ACTION) {
            if (!section.at(HEIGHT).isAbsent()) {
                throw new IllegalArgumentException(
                        "a single-action rod is round: give its diameter as width and no height");
            }
            return Rod.singleAction(length, width);
        }
        if (section.at(HEIGHT).isAbsent()) {
            throw new IllegalArgumentException("height is missing; a " + kind + " needs it");
        }
        Amount<Length> height = section.at(HEIGHT).value();
        return switch (kind) {
            case TWO_WAY -> Rod.twoWay(length, width, height);
            case STEEL_BAR -> Rod.steelBar(length, width, height);
            case CARBON_BAR -> Rod.carbonBar(length, width, height);
            case SINGLE_ACTION -> throw new IllegalStateException("handled above");
        };
    }
}
