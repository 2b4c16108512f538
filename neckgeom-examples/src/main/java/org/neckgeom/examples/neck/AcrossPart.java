package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.board.StringSpacing;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.units.Amount;

/** How the strings are spread over nut and saddle, in a neck file. */
final class AcrossPart {

    /** How the space between the outer strings is shared out. */
    enum Spacing {
        CENTRES,
        GAPS,
        GRADUATED
    }

    static final Key<Amount<Length>> EDGE = Key.needed(
            "edge at nut", Lengths.SIZE_OR_NOTHING, "from the board's edge to the outer edge of the outer string");
    static final Key<Amount<Length>> SPAN =
            Key.needed("span at saddle", Lengths.SIZE, "from outer edge to outer edge of the outer strings");
    static final Key<Spacing> SPACING =
            Key.optional("spacing", spacings(), "what is alike between the strings; equal gaps when left out");
    static final Key<Amount<Length>> GROWTH = Key.optional(
            "growth",
            Lengths.EITHER_WAY,
            "of graduated spaces, how much each is wider than the next toward the treble");
    static final Key<Amount<Length>> IN_PAIR =
            Key.optional("in pair", Lengths.SIZE, "centre to centre in a course of two; needed for doubled strings");

    static final Shape SHAPE = Shape.of("how the strings are spread", EDGE, SPAN, SPACING, GROWTH, IN_PAIR);

    private AcrossPart() {}

    private static Kind<Spacing> spacings() {
        Map<String, Spacing> words = new LinkedHashMap<>();
        words.put("equal centres", Spacing.CENTRES);
        words.put("equal gaps", Spacing.GAPS);
        words.put("graduated", Spacing.GRADUATED);
        return Kinds.choice(words);
    }

    static Found<NeckDetails> of(Section section, NeckDesign design, NeckDetails details) {
        return section.make(() -> {
            boolean graduated = spacing(section) == Spacing.GRADUATED;
            if (graduated == section.at(GROWTH).isAbsent()) {
                throw new IllegalArgumentException("spacing graduated and growth must be told together");
            }
            if (design.strings().inCourse() > 1 && section.at(IN_PAIR).isAbsent()) {
                throw new IllegalArgumentException("in pair is missing; doubled strings need it");
            }
            Quantity<Length> pair = section.at(IN_PAIR).orElse(design.style().amount(0));
            StringSpacing.Wanted strings = StringSpacing.of(design.strings(), pair);
            Amount<Length> width = design.style().amount(design.fingerboard().nutWidthMm());
            return details.strings(
                    places(section, strings.inside(width, section.at(EDGE).value())),
                    places(section, strings.across(section.at(SPAN).value())));
        });
    }

    private static Spacing spacing(Section section) {
        return section.at(SPACING).orElse(Spacing.GAPS);
    }

    private static StringPlaces places(Section section, StringSpacing strings) {
        return switch (spacing(section)) {
            case CENTRES -> strings.equalCentres();
            case GAPS -> strings.equalGaps();
            case GRADUATED -> strings.graduated(section.at(GROWTH).value());
        };
    }
}
