package org.neckgeom.examples.neck;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import org.neckgeom.design.StringSet;
import org.neckgeom.examples.file.Found;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.QuantityKind;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LinearDensity;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/** The strings in a neck file. */
final class StringsPart {

    private static final int MOST = 24;

    static final Key<List<Amount<Frequency>>> PITCHES = Key.needed(
            "pitches",
            Kinds.listOf(PitchKind.PITCH, 1, MOST),
            "the notes, one a course, from bass to treble as they lie");
    static final Key<Boolean> DOUBLED =
            Key.optional("doubled", Kinds.yesOrNo(), "whether each course has two strings; no when left out");
    static final Key<List<Amount<Force>>> TENSIONS = Key.optional(
            "tensions",
            Kinds.oneOrMore(QuantityKind.force().moreThan(ShopUnits.newton(0)).atMost(ShopUnits.newton(2000)), MOST),
            "the pull of a single string, one for all or one a course");
    static final Key<List<Amount<LinearDensity>>> MASSES = Key.optional(
            "masses per length",
            Kinds.oneOrMore(QuantityKind.massPerLength().moreThan(ShopUnit.GRAM_PER_METRE.of(0)), MOST),
            "of a single string, one for all or one a course, as printed for wrapped strings");
    static final Key<List<Amount<Length>>> DIAMETERS = Key.optional(
            "diameters", Kinds.oneOrMore(Lengths.STRING, MOST), "of a single string, one for all or one a course");

    static final Key<Section> ACROSS =
            Key.optional("across", AcrossPart.SHAPE, "how they are spread; nothing about their places when left out");

    static final Shape SHAPE = Shape.of("the strings", PITCHES, DOUBLED, TENSIONS, MASSES, DIAMETERS, ACROSS);

    private StringsPart() {}

    static Found<StringSet> of(Section section) {
        return section.make(() -> {
            StringSet strings = StringSet.of(section.at(PITCHES).value());
            if (section.at(DOUBLED).orElse(false)) {
                strings = strings.doubled();
            }
            if (!section.at(TENSIONS).isAbsent()) {
                strings = strings.tensions(array(section.at(TENSIONS).value()));
            }
            if (!section.at(MASSES).isAbsent()) {
                strings = strings.massesPerLength(array(section.at(MASSES).value()));
            }
            return section.at(DIAMETERS).isAbsent()
                    ? strings
                    : strings.diameters(array(section.at(DIAMETERS).value()));
        });
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type can't be made otherwise; it is only read
    private static <Q extends Quantity<Q>> Quantity<Q>[] array(List<Amount<Q>> amounts) {
        return amounts.toArray(new Quantity[0]);
    }
}
