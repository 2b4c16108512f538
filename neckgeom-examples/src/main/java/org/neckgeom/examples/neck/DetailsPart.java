package org.neckgeom.examples.neck;

import javax.measure.quantity.Length;
import org.neckgeom.board.FallAway;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Section;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** What a neck file tells of the shape beyond the design itself. Each step notes its problems at its own place. */
final class DetailsPart {

    private final Section top;
    private final NeckDesign design;

    private DetailsPart(Section top, NeckDesign design) {
        this.top = top;
        this.design = design;
    }

    static Found<NeckDetails> of(Section top, NeckDesign design) {
        DetailsPart part = new DetailsPart(top, design);
        return part.back()
                .then(part::frets)
                .then(part::fallAway)
                .then(part::strings)
                .then(part::fan)
                .then(part::stock);
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

    private Found<NeckDetails> stock(NeckDetails details) {
        Section blank = top.at(NeckKeys.BLANK).value();
        return blank.make(() -> BlankPart.spares(blank, details));
    }

    private Found<Amount<Length>> fretHeight() {
        return top.at(NeckKeys.FINGERBOARD).value().at(FingerboardPart.FRET_HEIGHT);
    }
}
