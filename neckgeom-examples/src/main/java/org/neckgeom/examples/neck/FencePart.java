package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.shop.Fence;
import org.neckgeom.shop.Fence.Build;
import org.neckgeom.units.Amount;

/** The fence in a neck file. */
final class FencePart {

    static final Key<Build> KIND =
            Key.needed("kind", builds(), "one straight piece, two halves, or pivoting at one end");
    static final Key<Amount<Length>> LENGTH = Key.needed("length", Lengths.SIZE, "of its face");
    static final Key<Amount<Length>> OUT_OF_LINE =
            Key.optional("out of line", Lengths.EITHER_WAY, "split: how far the second half stands before the first");
    static final Key<Amount<Length>> GAP = Key.optional(
            "gap", Lengths.SIZE_OR_NOTHING, "split: between the halves, the cutter in its middle; 20 mm when left out");
    static final Key<Amount<Length>> CUTTER_FROM_PIVOT =
            Key.optional("cutter from pivot", Lengths.SIZE, "pivoting: from the pivot to the cutter");
    static final Key<Amount<Length>> STOP_FROM_PIVOT =
            Key.optional("stop from pivot", Lengths.SIZE, "pivoting: from the pivot to the stop block");

    static final Shape SHAPE =
            Shape.of("the fence", KIND, LENGTH, OUT_OF_LINE, GAP, CUTTER_FROM_PIVOT, STOP_FROM_PIVOT);

    private FencePart() {}

    private static Kind<Build> builds() {
        Map<String, Build> words = new LinkedHashMap<>();
        words.put("one piece", Build.ONE_PIECE);
        words.put("split", Build.SPLIT);
        words.put("pivoting", Build.PIVOTING);
        return Kinds.choice(words);
    }

    static Found<Fence> of(Section section) {
        return section.make(() -> {
            Amount<Length> length = section.at(LENGTH).value();
            switch (section.at(KIND).value()) {
                case SPLIT:
                    only(section, "a split fence", List.of(OUT_OF_LINE), List.of(CUTTER_FROM_PIVOT, STOP_FROM_PIVOT));
                    Fence split = Fence.split(length, section.at(OUT_OF_LINE).value());
                    return section.at(GAP).isAbsent()
                            ? split
                            : split.gap(section.at(GAP).value());
                case PIVOTING:
                    only(
                            section,
                            "a pivoting fence",
                            List.of(CUTTER_FROM_PIVOT, STOP_FROM_PIVOT),
                            List.of(OUT_OF_LINE, GAP));
                    return Fence.pivoting(
                            length,
                            section.at(CUTTER_FROM_PIVOT).value(),
                            section.at(STOP_FROM_PIVOT).value());
                default:
                    only(
                            section,
                            "a fence in one piece",
                            List.of(),
                            List.of(OUT_OF_LINE, GAP, CUTTER_FROM_PIVOT, STOP_FROM_PIVOT));
                    return Fence.onePiece(length);
            }
        });
    }

    private static void only(Section section, String what, List<Key<?>> needed, List<Key<?>> foreign) {
        for (Key<?> key : needed) {
            if (section.at(key).isAbsent()) {
                throw new IllegalArgumentException(key + " is missing; " + what + " needs it");
            }
        }
        for (Key<?> key : foreign) {
            if (!section.at(key).isAbsent()) {
                throw new IllegalArgumentException(key + " is given, but " + what + " has none");
            }
        }
    }
}
