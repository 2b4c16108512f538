package org.neckgeom.examples.neck;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.design.Head;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Section;
import org.neckgeom.heel.NeckSet;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.units.Amount;

/** What a neck file tells of the shape beyond the design itself. Each step notes its problems at its own place. */
final class DetailsPart {

    private final Section top;
    private final NeckDesign design;
    private final Found<NeckSet> neckSet;

    private DetailsPart(Section top, NeckDesign design, Found<NeckSet> neckSet) {
        this.top = top;
        this.design = design;
        this.neckSet = neckSet;
    }

    static Found<NeckDetails> of(Section top, NeckDesign design, Found<NeckSet> neckSet) {
        DetailsPart part = new DetailsPart(top, design, neckSet);
        return part.overstand(NeckDetails.none())
                .then(part::head)
                .then(part::stock)
                .then(part::heel);
    }

    private Found<NeckDetails> overstand(NeckDetails details) {
        if (top.at(NeckKeys.NECK_SET).isAbsent()) {
            return Found.of(details);
        }
        return top.at(NeckKeys.NECK_SET)
                .then(set -> set.make(() -> {
                    Optional<Amount<Length>> boardAndFret = NeckSetPart.boardAndFret(design, fretHeight());
                    return details.overstand(NeckSetPart.overstand(set, boardAndFret));
                }));
    }

    /** The nut's slots lie as high as the frets and what the strings clear them by. */
    private Found<NeckDetails> head(NeckDetails details) {
        if (top.at(NeckKeys.HEAD).isAbsent()) {
            return Found.of(details);
        }
        Section section = top.at(NeckKeys.HEAD).value();
        Head head = design.head().orElseThrow();
        return section.make(() -> {
            if (!section.at(HeadPart.POSTS).isAbsent() && fretHeight().isAbsent()) {
                throw new IllegalArgumentException("posts are given, but not the fingerboard's fret height, from which"
                        + " the strings come down to them");
            }
            double atNut = neckSet.isAbsent() ? 0 : neckSet.value().atNut().house();
            double frets = fretHeight().isAbsent() ? 0 : fretHeight().value().house();
            double slot = design.fingerboard().nutThicknessMm() + frets + atNut;
            return HeadPart.tuners(
                    section,
                    details.head(HeadPart.layout(section, head), design.style().amount(slot)));
        });
    }

    private Found<NeckDetails> stock(NeckDetails details) {
        Section blank = top.at(NeckKeys.BLANK).value();
        return blank.make(() -> BlankPart.spares(blank, details));
    }

    private Found<NeckDetails> heel(NeckDetails details) {
        return top.at(NeckKeys.HEEL).isAbsent()
                ? Found.of(details)
                : top.at(NeckKeys.HEEL)
                        .then(section -> HeelPart.details(section, design.heel().orElseThrow(), details));
    }

    private Found<Amount<Length>> fretHeight() {
        return NeckParts.fretHeight(design.fingerboard());
    }
}
