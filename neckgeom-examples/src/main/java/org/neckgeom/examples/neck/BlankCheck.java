package org.neckgeom.examples.neck;

import java.util.Optional;
import org.neckgeom.design.Channel;
import org.neckgeom.design.Head;
import org.neckgeom.design.NeckDesign;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Section;
import org.neckgeom.stock.Blank;

/** Whether the neck can come out of its blank at all: long, wide and thick enough. What is merely unwise the plan says. */
final class BlankCheck {

    private final Section section;
    private final Blank blank;
    private final NeckDesign design;
    private boolean fits = true;

    private BlankCheck(Section section, Blank blank, NeckDesign design) {
        this.section = section;
        this.blank = blank;
        this.design = design;
    }

    /** Notes at most one problem for each of length, width and thickness; true when there is none. */
    static boolean of(Section section, Blank blank, NeckDesign design) {
        BlankCheck check = new BlankCheck(section, blank, design);
        check.length();
        check.width();
        check.thickness();
        return check.fits;
    }

    /** A head that is scarfed on may come from another board; one that is not must come out of this blank. */
    private void length() {
        double joint = design.bodyJointMm();
        double beforeNut = blank.nutFromHeadEndMm();
        Optional<Head> head = design.head();
        if (head.isPresent() && head.get().scarf().isEmpty()) {
            beforeNut = Math.max(
                    beforeNut, head.get().lengthMm() * Math.cos(head.get().pitchRad()));
        }
        double needed = beforeNut + joint;
        if (blank.lengthMm() < needed) {
            String shaft = "the shaft from the nut to the body joint at " + text(joint);
            String whole = beforeNut == 0 ? shaft : text(beforeNut) + " before the nut line and " + shaft;
            problem(BlankPart.LENGTH, blank.length(), needed, whole);
        }
    }

    private void width() {
        double second = design.fingerboard().secondWidthMm();
        double needed = Math.max(design.fingerboard().nutWidthMm(), second);
        if (blank.widthMm() < needed) {
            problem(BlankPart.WIDTH, blank.width(), needed, "the fingerboard at its widest");
        }
    }

    private void thickness() {
        double joint = design.bodyJointMm();
        double back = Math.max(design.backDepthAtMm(0), design.backDepthAtMm(joint));
        double channel = design.channel().map(BlankCheck::deepest).orElse(0.0);
        if (blank.thicknessMm() < back) {
            problem(BlankPart.THICKNESS, blank.thickness(), back, "the back at its deepest before the body joint");
        } else if (blank.thicknessMm() <= channel) {
            problem(BlankPart.THICKNESS, blank.thickness(), channel, "the channel alone, and then some wood behind it");
        }
    }

    private static double deepest(Channel channel) {
        double floor = channel.floorDepthAtMm(channel.startMm() + channel.lengthMm() / 2);
        return Math.max(Math.max(channel.depthMm(), floor), channel.hasPocket() ? channel.pocketDepthMm() : 0);
    }

    private void problem(Key<?> key, Object found, double neededMm, String forWhat) {
        fits = false;
        section.problem(
                key,
                "is " + found + ", but must be " + text(neededMm) + " or more: " + forWhat + " must come out of it");
    }

    private String text(double mm) {
        return blank.style().text(mm);
    }
}
