package org.neckgeom.examples.neck;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.neckgeom.board.FallAway;
import org.neckgeom.design.Head;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Section;
import org.neckgeom.heel.NeckSet;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

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
        return part.back()
                .then(part::frets)
                .then(part::fallAway)
                .then(part::overstand)
                .then(part::strings)
                .then(part::fan)
                .then(part::head)
                .then(part::heel);
    }

    private Found<NeckDetails> back() {
        return top.at(NeckKeys.BACK)
                .then(section -> BackPart.shape(section, design))
                .then(shape -> Found.of(NeckDetails.none().back(shape)));
    }

    private Found<NeckDetails> frets(NeckDetails details) {
        return fretHeight().isAbsent()
                ? Found.of(details)
                : fretHeight().then(height -> Found.of(details.fretHeight(height)));
    }

    private Found<NeckDetails> fallAway(NeckDetails details) {
        Section board = top.at(NeckKeys.FINGERBOARD).value();
        if (board.at(FingerboardPart.FALL_AWAY).isAbsent()) {
            return Found.of(details);
        }
        LengthStyle style = design.style();
        return board.make(() -> details.fallAway(FallAway.of(
                style.amount(design.bodyJointMm()),
                style.amount(design.scale().fretMm(design.frets())),
                board.at(FingerboardPart.FALL_AWAY).value())));
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

    private Found<NeckDetails> strings(NeckDetails details) {
        if (top.at(NeckKeys.STRINGS).isAbsent()
                || top.at(NeckKeys.STRINGS).value().at(StringsPart.ACROSS).isAbsent()) {
            return Found.of(details);
        }
        return top.at(NeckKeys.STRINGS)
                .value()
                .at(StringsPart.ACROSS)
                .then(section -> AcrossPart.of(section, design, details));
    }

    private Found<NeckDetails> fan(NeckDetails details) {
        return top.at(NeckKeys.FANNED_FRETS).isAbsent()
                ? Found.of(details)
                : top.at(NeckKeys.FANNED_FRETS).then(section -> FanPart.of(section, design, details));
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

    private Found<NeckDetails> heel(NeckDetails details) {
        return top.at(NeckKeys.HEEL).isAbsent()
                ? Found.of(details)
                : top.at(NeckKeys.HEEL)
                        .then(section -> HeelPart.details(section, design.heel().orElseThrow(), details));
    }

    private Found<Amount<Length>> fretHeight() {
        return top.at(NeckKeys.FINGERBOARD).value().at(FingerboardPart.FRET_HEIGHT);
    }
}
