package org.neckgeom.examples.neck;

import javax.measure.quantity.Length;
import org.neckgeom.board.FannedFrets;
import org.neckgeom.board.OuterStrings;
import org.neckgeom.board.StringPlaces;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.design.Scale;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.units.Amount;

/** Fanned frets in a neck file; the strings across say how far apart the two scales run. */
final class FanPart {

    static final Key<Amount<Length>> BASS = Key.needed(
            "bass scale", Lengths.SIZE, "along the outermost bass string, from nut to saddle, uncompensated");
    static final Key<Amount<Length>> TREBLE =
            Key.needed("treble scale", Lengths.SIZE, "along the outermost treble string");
    static final Key<Integer> SQUARE =
            Key.needed("square at fret", Kinds.wholeNumber(0, 200), "the fret that stands square to the centreline");

    static final Shape SHAPE = Shape.of("frets fanned between two scales", BASS, TREBLE, SQUARE);

    private FanPart() {}

    static Found<NeckDetails> of(Section section, NeckDesign design, NeckDetails details) {
        return section.make(() -> {
            StringPlaces nut = details.stringsAtNut()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "fanned frets are given, but not how the strings are spread: give across of the strings"));
            Amount<Length> atSaddle = details.stringsAtSaddle().orElseThrow().spread();
            int divisions = design.scale().divisions();
            return details.fannedFrets(FannedFrets.of(
                    Scale.of(section.at(BASS).value()).divisions(divisions),
                    Scale.of(section.at(TREBLE).value()).divisions(divisions),
                    OuterStrings.of(nut.spread(), atSaddle),
                    section.at(SQUARE).value()));
        });
    }
}
