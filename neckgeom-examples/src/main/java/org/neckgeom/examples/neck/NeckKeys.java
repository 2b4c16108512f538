package org.neckgeom.examples.neck;

import java.util.List;
import javax.measure.quantity.Length;
import org.neckgeom.design.Head;
import org.neckgeom.design.Heel;
import org.neckgeom.design.NeckSet;
import org.neckgeom.design.ScarfCut;
import org.neckgeom.examples.file.Key;
import org.neckgeom.examples.file.Kinds;
import org.neckgeom.examples.file.Section;
import org.neckgeom.examples.file.Shape;
import org.neckgeom.examples.file.TableKind;
import org.neckgeom.stock.Wood;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LengthStyle;

/** The keys at the top of a neck file. */
final class NeckKeys {

    static final Key<String> NAME = Key.needed("name", Kinds.text(), "what the maker calls this neck");
    static final Key<LengthStyle> PRINT_IN = Key.optional(
            "print in",
            Kinds.choice(PrintStyles.all()),
            "how lengths are printed: mm, inch (decimals and thou), fractions (to 1/64 in); as the scale when left out");
    static final Key<Amount<Length>> SCALE =
            Key.needed("scale", Lengths.SIZE, "from the nut to the saddle, uncompensated");
    static final Key<Integer> DIVISIONS =
            Key.optional("frets to the octave", Kinds.wholeNumber(1, 100), "steps of the octave; 12 when left out");
    static final Key<Integer> FRETS = Key.needed("frets", Kinds.wholeNumber(1, 200), "how many frets there are");
    static final Key<Section> FANNED_FRETS = Key.optional(
            "fanned frets",
            FanPart.SHAPE,
            "frets fanned between two scales; the scale is then that on the centreline; square when left out");
    static final Key<Integer> BODY_AT_FRET =
            Key.needed("body at fret", Kinds.wholeNumber(1, 200), "the fret at which the body begins");
    static final Key<Wood> WOOD = Key.needed("wood", WoodKind.WOOD, "the wood of the neck");
    static final Key<Section> FINGERBOARD = Key.needed("fingerboard", FingerboardPart.SHAPE, "the fingerboard");
    static final Key<Section> BACK = Key.needed("back", BackPart.SHAPE, "the back of the neck");
    static final Key<Section> ROD = Key.needed("rod", RodPart.SHAPE, "the rod or bar");
    static final Key<Section> CHANNEL =
            Key.optional("channel", ChannelPart.SHAPE, "the rod's channel; the plainest for the rod when left out");
    static final Key<Head> HEAD =
            Key.optional("head", new TableKind<>(Head.TABLE), "the head; not planned when left out");
    static final Key<ScarfCut> SCARF = Key.optional(
            "scarf", new TableKind<>(ScarfCut.TABLE), "the scarf joint; head and shaft are one piece when left out");
    static final Key<Heel> HEEL =
            Key.optional("heel", new TableKind<>(Heel.TABLE), "the heel; not planned when left out");
    static final Key<NeckSet> NECK_SET = Key.optional(
            "neck set", new TableKind<>(NeckSet.TABLE), "how the neck stands to the body; not planned when left out");
    static final Key<Amount<Length>> RELIEF =
            Key.optional("relief", Lengths.SIZE_OR_NOTHING, "the bow wanted under the strings; 0.2 mm when left out");
    static final Key<Section> WEATHER = Key.optional(
            "weather",
            WeatherPart.SHAPE,
            "the change of weather to be ready for; 45 % to 25 % humidity at 21 degC when left out");
    static final Key<Section> STRINGS =
            Key.optional("strings", StringsPart.SHAPE, "the strings; nothing about load when left out");
    static final Key<Section> BLANK = Key.needed("blank", BlankPart.SHAPE, "the squared piece the neck is made from");
    static final Key<Section> SHOP = Key.needed("shop", ShopPart.SHAPE, "what the shop has for cutting the channel");
    static final Key<List<Section>> READINGS = Key.optional(
            "readings", ReadingsPart.ROUNDS, "rounds of trial cuts, in the order in which they were made; none so far");
    static final Key<Section> AS_MADE = Key.optional(
            "as made", AsMadePart.SHAPE, "what has been read on the neck itself; nothing so far when left out");
    static final Key<Section> ORDER = Key.optional(
            "order of work",
            OrderPart.SHAPE,
            "what is done and which orders must be kept; the usual order when left out");
    static final Key<Section> WORKMANSHIP = Key.optional(
            "workmanship",
            WorkmanshipPart.SHAPE,
            "how well each kind of step is done in this shop; common practice when left out");
    static final Key<Section> LIMITS = Key.optional(
            "limits",
            LimitsPart.SHAPE,
            "the limits to keep; slot offset 0.1 mm or 4 thou, wood left 3 mm or 1/8 in, strings 1 mm or 40 thou");

    static final Shape SHAPE = Shape.of(
            "A neck, the shop that makes it, what has been read so far, and the limits to keep",
            NAME,
            PRINT_IN,
            SCALE,
            DIVISIONS,
            FRETS,
            FANNED_FRETS,
            BODY_AT_FRET,
            WOOD,
            FINGERBOARD,
            BACK,
            ROD,
            CHANNEL,
            HEAD,
            SCARF,
            HEEL,
            NECK_SET,
            STRINGS,
            RELIEF,
            WEATHER,
            BLANK,
            SHOP,
            READINGS,
            AS_MADE,
            ORDER,
            WORKMANSHIP,
            LIMITS);

    private NeckKeys() {}
}
