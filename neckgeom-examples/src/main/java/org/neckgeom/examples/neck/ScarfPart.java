package org.neckgeom.examples.neck;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.quantity.Length;
import org.neckgeom.design.Head;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kind;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.head.HeadSide;
import org.neckgeom.head.JointPlace;
import org.neckgeom.head.Scarf;
import org.neckgeom.head.ScarfJoint;
import org.neckgeom.stock.Blank;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnits;

/** The scarf joint in a neck file; its shaft is as thick as the blank. */
final class ScarfPart {

    static final Key<JointPlace> PLACE = Key.needed("joint", places(), "where the glue line lies");
    static final Key<Amount<Length>> KERF =
            Key.optional("kerf", Lengths.SIZE_OR_NOTHING, "what the saw takes; 0 when left out");
    static final Key<Amount<Length>> CLEANING =
            Key.optional("cleaning", Lengths.SIZE_OR_NOTHING, "what is planed off each slope after sawing; 0");

    static final Shape SHAPE = Shape.of("the scarf joint of the head", PLACE, KERF, CLEANING);

    private ScarfPart() {}

    private static Kind<JointPlace> places() {
        Map<String, JointPlace> words = new LinkedHashMap<>();
        words.put("in the head", JointPlace.IN_THE_HEAD);
        words.put("in the shaft", JointPlace.IN_THE_SHAFT);
        return Kinds.choice(words);
    }

    static Found<ScarfJoint> of(Section section, Head head, Blank blank) {
        return section.make(() -> {
            if (head.pitchRad() == 0) {
                throw new IllegalArgumentException("a flat head has no scarf; give head.pitch, or leave the scarf out");
            }
            Scarf scarf = Scarf.at(head.pitch())
                    .shaft(blank.thickness())
                    .head(head.style().amount(head.thicknessMm()))
                    .kerf(section.at(KERF).orElse(ShopUnits.mm(0)))
                    .cleaning(section.at(CLEANING).orElse(ShopUnits.mm(0)));
            ScarfJoint joint =
                    section.at(PLACE).value() == JointPlace.IN_THE_HEAD ? scarf.inTheHead() : scarf.inTheShaft();
            return veneered(joint, head);
        });
    }

    /** A veneer that stops short of where its own face would meet the glue face leaves the break line where it was. */
    private static ScarfJoint veneered(ScarfJoint joint, Head head) {
        double reach = head.veneerMm() / Math.sin(head.pitchRad());
        ScarfJoint faced = head.veneerShortOfNutMm() < reach
                ? joint.veneered(HeadSide.FACE, head.style().amount(head.veneerMm()))
                : joint;
        return faced.veneered(HeadSide.BACK, head.style().amount(head.backVeneerMm()));
    }
}
