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
import org.neckgeom.shop.FeelerSet;
import org.neckgeom.units.Amount;

/** The feeler leaves in a neck file. */
final class LeavesPart {

    private static final int MOST = 60;

    static final Key<FeelerSet> SET = Key.optional(
            "set",
            sets(),
            "a common set: metric 20 (0.05 to 1 mm), metric 13 (0.05 to 1 mm), inch 26 (1.5 to 25 thou)");
    static final Key<List<Amount<Length>>> LEAVES =
            Key.optional("leaves", Kinds.listOf(Lengths.SIZE, 1, MOST), "your own leaves, instead of a common set");
    static final Key<Amount<Length>> EACH_WITHIN = Key.optional(
            "each within",
            Lengths.SIZE_OR_NOTHING,
            "how far a leaf may be off what it says, either way; the set's own");

    static final Shape SHAPE = Shape.of("feeler leaves", SET, LEAVES, EACH_WITHIN);

    private LeavesPart() {}

    private static Kind<FeelerSet> sets() {
        Map<String, FeelerSet> words = new LinkedHashMap<>();
        words.put("metric 20", FeelerSet.metric20());
        words.put("metric 13", FeelerSet.metric13());
        words.put("inch 26", FeelerSet.inch26());
        return Kinds.choice(words);
    }

    static Found<FeelerSet> of(Section section) {
        return section.make(() -> {
            if (section.at(SET).isAbsent() == section.at(LEAVES).isAbsent()) {
                throw new IllegalArgumentException("either set or leaves must be given, and not both");
            }
            FeelerSet leaves = section.at(SET).isAbsent()
                    ? FeelerSet.of(section.at(LEAVES).value())
                    : section.at(SET).value();
            return section.at(EACH_WITHIN).isAbsent()
                    ? leaves
                    : leaves.eachWithin(section.at(EACH_WITHIN).value());
        });
    }
}
