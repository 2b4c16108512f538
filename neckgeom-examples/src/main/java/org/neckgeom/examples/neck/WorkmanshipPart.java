package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;
import javax.measure.quantity.Length;
import org.neckgeom.budget.Workmanship;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.measure.Spread;
import org.neckgeom.units.Amount;

/** How well a shop does its steps, in a neck file. The channel's centring is not told: trial cuts and readings say it. */
final class WorkmanshipPart {

    /** Where between its two ends an error lies. */
    private enum Lies {
        ALIKE,
        MIDDLE
    }

    private static final Map<String, Lies> WORDS = words();

    static final Key<Amount<Length>> WITHIN =
            Key.optional("within", Lengths.SIZE, "how far off it may be, either way; instead of a deviation");
    static final Key<Lies> LIES =
            Key.optional("lies", Kinds.choice(WORDS), "where between the two ends; anywhere alike when left out");
    static final Key<Amount<Length>> DEVIATION = Key.optional(
            "deviation", Lengths.SIZE, "one standard deviation, as repeated readings give it; instead of within");

    private static final Shape HOW_WELL = Shape.of("how well a step is done", WITHIN, LIES, DEVIATION);

    static final Key<Section> EDGE = step("edge", "truth of the blank's edges, at each station");
    static final Key<Section> LOCATING = step("locating", "of a step on channel or edge, at each station");
    static final Key<Section> CUTTING = step("cutting", "of heel and taper");
    static final Key<Section> GLUING = step("gluing", "place and thickness of the glued fingerboard, at each station");
    static final Key<Section> FITTING = step("fitting", "of the body joint, at each end of its cheeks and of its face");
    static final Key<Section> STOPPING = step("stopping", "of stops and lines along the neck");

    static final Shape SHAPE =
            Shape.of("how well each kind of step is done", EDGE, LOCATING, CUTTING, GLUING, FITTING, STOPPING);

    private WorkmanshipPart() {}

    private static Key<Section> step(String name, String meaning) {
        return Key.optional(name, HOW_WELL, meaning + "; common practice when left out");
    }

    private static Map<String, Lies> words() {
        Map<String, Lies> words = new LinkedHashMap<>();
        words.put("anywhere alike", Lies.ALIKE);
        words.put("mostly near the middle", Lies.MIDDLE);
        return words;
    }

    static Found<Workmanship> of(Section section) {
        Found<Workmanship> work = Found.of(Workmanship.withDefaults());
        work = with(section, EDGE, work, Workmanship::withEdge);
        work = with(section, LOCATING, work, Workmanship::withLocating);
        work = with(section, CUTTING, work, Workmanship::withCutting);
        work = with(section, GLUING, work, Workmanship::withGluing);
        work = with(section, FITTING, work, Workmanship::withFitting);
        return with(section, STOPPING, work, Workmanship::withStopping);
    }

    private static Found<Workmanship> with(
            Section section,
            Key<Section> key,
            Found<Workmanship> work,
            BiFunction<Workmanship, Spread<Length>, Workmanship> change) {
        Found<Section> told = section.at(key);
        return told.isAbsent()
                ? work
                : told.then(WorkmanshipPart::spread)
                        .then(spread -> work.then(so -> Found.of(change.apply(so, spread))));
    }

    private static Found<Spread<Length>> spread(Section section) {
        return section.make(() -> {
            boolean within = !section.at(WITHIN).isAbsent();
            if (within != section.at(DEVIATION).isAbsent()) {
                throw new IllegalArgumentException("either within or deviation must be given, and not both");
            }
            if (!within && !section.at(LIES).isAbsent()) {
                throw new IllegalArgumentException("lies belongs to within; with a deviation leave it out");
            }
            if (!within) {
                return Spread.normal(section.at(DEVIATION).value());
            }
            Amount<Length> either = section.at(WITHIN).value();
            return section.at(LIES).orElse(Lies.ALIKE) == Lies.ALIKE
                    ? Spread.rectangular(either)
                    : Spread.triangular(either);
        });
    }
}
