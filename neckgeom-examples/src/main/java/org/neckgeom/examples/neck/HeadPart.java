package org.neckgeom.examples.neck;

import java.util.List;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.design.Head;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.head.HeadLayout;
import org.neckgeom.measure.Limits;
import org.neckgeom.plan.NeckDetails;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The head in a neck file. */
final class HeadPart {

    static final Key<Amount<Angle>> PITCH = Key.optional(
            "pitch",
            QuantityKind.angle().moreThan(ShopUnits.deg(0)).atMost(ShopUnits.deg(45)),
            "how far the head is turned back; a flat head when left out");
    static final Key<Amount<Length>> LENGTH = Key.needed("length", Lengths.SIZE, "along its face, from the nut line");
    static final Key<Amount<Length>> WIDTH = Key.needed("width", Lengths.SIZE, "at its widest, ears counted");
    static final Key<Amount<Length>> THICKNESS =
            Key.needed("thickness", Lengths.SIZE, "of its wood, veneers not counted");
    static final Key<Amount<Angle>> SWING = Key.optional(
            "swung",
            QuantityKind.angle().atLeast(ShopUnits.deg(-30)).atMost(ShopUnits.deg(30)),
            "turned sideways about the nut, toward the treble side; 0 when left out");
    static final Key<Amount<Length>> VENEER_THICKNESS = Key.needed("thickness", Lengths.SIZE, "of the veneer");
    static final Key<Amount<Length>> VENEER_SHORT = Key.optional(
            "short of nut", Lengths.SIZE_OR_NOTHING, "how far before the nut line it stops; 0 when left out");
    static final Key<Section> VENEER = Key.optional(
            "face veneer",
            Shape.of("a veneer on the head's face", VENEER_THICKNESS, VENEER_SHORT),
            "a veneer glued to the face before the channel is cut; none when left out");
    static final Key<Amount<Length>> BACK_VENEER =
            Key.optional("back veneer", Lengths.SIZE, "thickness of a veneer on the back; none when left out");

    static final Key<Amount<Length>> BREAK_WIDTH =
            Key.optional("width at break line", Lengths.SIZE, "of its outline there; its widest when left out");
    static final Key<Amount<Length>> TIP_WIDTH =
            Key.optional("width at tip", Lengths.SIZE, "of its outline there; its widest when left out");
    static final Key<List<Amount<Length>>> TUNERS = Key.optional(
            "tuners take",
            Kinds.listOf(Lengths.SIZE, 2, 2),
            "least and greatest thickness that the tuners fit, veneers included; not checked when left out");
    static final Key<Section> POSTS =
            Key.optional("posts", PostsPart.SHAPE, "where the strings meet their posts; no break angles when left out");

    static final Shape SHAPE = Shape.of(
            "the head",
            PITCH,
            LENGTH,
            WIDTH,
            THICKNESS,
            SWING,
            VENEER,
            BACK_VENEER,
            BREAK_WIDTH,
            TIP_WIDTH,
            TUNERS,
            POSTS);

    private HeadPart() {}

    /** Outline and posts of the head. */
    static HeadLayout layout(Section section, Head head) {
        Amount<Length> widest = head.style().amount(head.widthMm());
        HeadLayout layout = HeadLayout.of(head)
                .tapered(
                        section.at(BREAK_WIDTH).orElse(widest),
                        section.at(TIP_WIDTH).orElse(widest));
        return section.at(POSTS).isAbsent()
                ? layout
                : layout.posts(PostsPart.of(section.at(POSTS).value()));
    }

    /** The thickness that the tuners fit. */
    static NeckDetails tuners(Section section, NeckDetails details) {
        if (section.at(TUNERS).isAbsent()) {
            return details;
        }
        List<Amount<Length>> range = section.at(TUNERS).value();
        return details.tuners(Limits.between(range.get(0), range.get(1)));
    }

    static Found<Head> of(Section section) {
        return section.make(() -> {
            Head head = section.at(PITCH).isAbsent()
                    ? Head.flat()
                    : Head.pitched(section.at(PITCH).value());
            head = head.length(section.at(LENGTH).value())
                    .width(section.at(WIDTH).value())
                    .thickness(section.at(THICKNESS).value());
            if (!section.at(SWING).isAbsent()) {
                head = head.swung(section.at(SWING).value());
            }
            if (!section.at(VENEER).isAbsent()) {
                Section veneer = section.at(VENEER).value();
                head = head.veneer(
                        veneer.at(VENEER_THICKNESS).value(),
                        veneer.at(VENEER_SHORT).orElse(ShopUnits.mm(0)));
            }
            return section.at(BACK_VENEER).isAbsent()
                    ? head
                    : head.backVeneer(section.at(BACK_VENEER).value());
        });
    }
}
