package org.neckgeom.neck;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.measure.Limits;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.ShopUnit;
import org.neckgeom.units.ShopUnits;

/**
 * The head ({@index headstock}, {@index peghead}): the part that carries the tuners, such as
 * {@code head angled 13 deg, 185 mm long, 76 mm wide, 15 mm thick}. Immutable.
 *
 * <p>The head angle (pitch, tilt-back) is the angle between head face and glue face, 0 to 45 deg, positive with the head
 * tilted back. The length runs along the face from the nut line; lengths are more than 0. Defaults (common practice): 180 mm
 * long, 75 mm wide, 15 mm thick, in line with the shaft and in one piece with it, no veneers. {@code HeadLayout} gives wings
 * (ears) and tuner posts.
 *
 * <pre>{@code
 * println(Head.angled(deg(13)).length(mm(185)).width(mm(76)).thickness(mm(15)));
 * println(Head.flat());
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * head angled 13 deg, 185 mm long, 76 mm wide, 15 mm thick
 * flat head, 180 mm long, 75 mm wide, 15 mm thick
 * }</pre>
 */
public final class Head extends Noun<Head> {

    /** The greatest head angle, itself allowed: of a head, its scarf and what is read on one. */
    public static final double GREATEST_ANGLE_DEGREES = 45;

    private static final String SEAM = "seam";

    /** Reasons to have wings and veneers on before the channel is cut; common practice. */
    private static final Map<String, String> BEFORE_WORDS = Map.of(
            "shaped blank",
            "the head blank came in ready shaped and faced",
            "mitred binding",
            "binding is mitred at the nut while the blank is square",
            "inlay",
            "an inlay is cut by a jig that needs the full head",
            SEAM,
            "a seam in the veneer is taken as the centreline",
            "old head",
            "an old head is used again");

    /** Its keys. */
    public static final Table<Head> TABLE =
            Table.of("head", "the head", Head::new).printedBy(Head::sentences);

    private static final Key<Head, Amount<Angle>> ANGLE = TABLE.optional(
            "angle",
            Types.ANGLE.atLeast(ShopUnits.deg(0)).atMost(ShopUnits.deg(GREATEST_ANGLE_DEGREES)),
            "head angle: head face to glue face, positive with the head tilted back. 0 deg: a flat head. Default: 0 deg");
    private static final Key<Head, Amount<Length>> LENGTH =
            TABLE.needed("length", Types.SIZE, "length of the head along the face, from the nut line");
    private static final Key<Head, Amount<Length>> WIDTH =
            TABLE.needed("width", Types.SIZE, "greatest width of the head, wings (ears) included");
    private static final Key<Head, Amount<Length>> THICKNESS =
            TABLE.needed("thickness", Types.SIZE, "thickness of the head, veneers not included");
    private static final Key<Head, Amount<Angle>> SWING = TABLE.usual(
                    "swung",
                    Types.ANGLE.atLeast(ShopUnits.deg(-30)).atMost(ShopUnits.deg(30)),
                    ShopUnits.deg(0),
                    "angle between head and neck seen from the front, positive toward the treble side. Default: 0 deg")
            .called("head swing");
    private static final Key<Head, FaceVeneer> FACE_VENEER = TABLE.optional(
            "face veneer",
            Types.group(FaceVeneer.TABLE),
            "head veneer (headplate), glued on before the channel is cut. Default: none");
    private static final Key<Head, Amount<Length>> BACK_VENEER = TABLE.optional(
                    "back veneer", Types.SIZE, "thickness of the back veneer (backstrap). Default: none")
            .called("back veneer");
    private static final Key<Head, Amount<Length>> BREAK_WIDTH = TABLE.optional(
                    "width at break line",
                    Types.SIZE,
                    "width of the outline at the break line. Default: the greatest width")
            .called("head width at the break line");
    private static final Key<Head, Amount<Length>> TIP_WIDTH = TABLE.optional(
                    "width at tip", Types.SIZE, "width of the outline at the tip. Default: the greatest width")
            .called("head width at the tip");
    private static final Key<Head, List<OutlinePoint>> OUTLINE = TABLE.optional(
                    "outline",
                    Types.list(Types.group(OutlinePoint.TABLE), 2, 200),
                    "places of the outline from nut line to tip, straight between them, instead of the two widths. Default: the"
                            + " two widths")
            .called("outline of the head");
    private static final Key<Head, List<Amount<Length>>> TUNERS = TABLE.optional(
                    "tuners take",
                    Types.list(Types.SIZE, 2, 2),
                    "least and greatest head thickness that fit the tuners, veneers included. Default: not checked")
            .called("thickness for the tuners");
    private static final Key<Head, Posts> POSTS =
            TABLE.optional("posts", Types.group(Posts.TABLE), "tuner posts. Default: no break angles");
    private static final Key<Head, ScarfCut> SCARF =
            TABLE.optional("scarf", Types.group(ScarfCut.TABLE), "scarf joint. Default: head and shaft in one piece");

    private static final Key<Head, Amount<Length>> SLOT_FROM = TABLE.optional(
                    "slots from",
                    Types.SIZE,
                    "distance from the nut line to the two slots of a slotted head, along the face. Default: no slots")
            .called("start of the slots");
    private static final Key<Head, Amount<Length>> SLOT_LENGTH =
            TABLE.optional("slot length", Types.SIZE, "length of each slot, its round ends included");
    private static final Key<Head, Amount<Length>> SLOT_WIDTH =
            TABLE.optional("slot width", Types.SIZE, "width of each slot");
    private static final Key<Head, Amount<Length>> SLOT_ASIDE =
            TABLE.optional("slot aside", Types.SIZE, "distance from the middle of the head to the middle of each slot");

    private static final Key<Head, Amount<Length>> ROLLER_DIAMETER = TABLE.optional(
            "roller diameter",
            Types.SIZE,
            "slotted head: diameter of the rollers. Common practice: 10 mm. Default: no rollers");
    private static final Key<Head, Amount<Length>> ROLLER_DEPTH = TABLE.optional(
            "roller depth",
            Types.SIZE,
            "slotted head: depth of the rollers' axes below the head's face. Common practice: 8 to 10 mm");
    private static final Key<Head, Amount<Length>> ROLLER_LENGTH = TABLE.optional(
            "roller length",
            Types.SIZE,
            "slotted head: length of a roller from the side of the head inward. Default: not checked");
    private static final Key<Head, Boolean> FROM_BACK = TABLE.optional(
            "strings leave back",
            Types.YES_OR_NO,
            "slotted head: whether strings leave the rollers at their backs instead of their tops. Default: no");
    private static final Key<Head, String> BEFORE_CHANNEL = TABLE.optional(
            "on before channel",
            Types.words(sameWords()),
            "why the head, its wings and veneers are on before the channel is cut. Default: they come after it");

    static {
        TABLE.together(ROLLER_DIAMETER, ROLLER_DEPTH);
        TABLE.together(SLOT_FROM, SLOT_LENGTH, SLOT_WIDTH, SLOT_ASIDE);
        TABLE.atMostOne(BREAK_WIDTH, OUTLINE);
        TABLE.atMostOne(TIP_WIDTH, OUTLINE);
        TABLE.moved(Moves.none().and("pitch", "angle"));
    }

    private static Map<String, String> sameWords() {
        Map<String, String> words = new TreeMap<>();
        BEFORE_WORDS.keySet().forEach(word -> words.put(word, word));
        return words;
    }

    private static final Amount<Length> USUAL_LENGTH = ShopUnits.mm(180);
    private static final Amount<Length> USUAL_WIDTH = ShopUnits.mm(75);
    private static final Amount<Length> USUAL_THICKNESS = ShopUnits.mm(15);

    /** Under it the slope of a scarf is longer than any head. */
    private static final double LEAST_SCARFED_DEG = 1;

    private static final double HAIR = 1e-9;

    private Head(Values<Head> values) {
        super(flatWithoutAngle(values));
        scarf().ifPresent(cut -> refuseScarf());
        values.find(OUTLINE).ifPresent(this::refuseOutline);
        for (TunerPost post : posts()) {
            if (!(post.alongMm() < lengthMm())) {
                throw Refusal.of(
                        POSTS.name() + ".along",
                        "on-the-head",
                        "be less than the head's length of " + style().brief(lengthMm()),
                        style().brief(post.alongMm()));
            }
        }
        if (hasSlots()) {
            refuseSlots();
        }
        refuseRollers();
        if (isSeamTheCentreline() && veneerMm() == 0) {
            throw Refusal.because(
                    BEFORE_CHANNEL.name(),
                    "no-veneer",
                    BEFORE_CHANNEL + ": a seam in the veneer needs a face veneer, but none is given");
        }
        values.find(TUNERS).ifPresent(range -> {
            if (!(range.get(0).libraryValue() < range.get(1).libraryValue())) {
                throw values.refused(
                        TUNERS,
                        "ascending",
                        "be the least thickness, then a greater one",
                        range.get(0) + ", " + range.get(1));
            }
        });
    }

    /** An angle of 0 is that of a flat head, which has none. */
    private static Values<Head> flatWithoutAngle(Values<Head> values) {
        return values.libraryValue(ANGLE, 0) == 0 ? values.without(ANGLE) : values;
    }

    /** From the nut line to the tip, no wider than the head. */
    private void refuseOutline(List<OutlinePoint> places) {
        double along = -1;
        for (OutlinePoint place : places) {
            if (!(place.alongMm() > along)) {
                throw Refusal.of(
                        OUTLINE.name(),
                        "ascending",
                        "have its places in ascending order along the head",
                        style().brief(place.alongMm()));
            }
            along = place.alongMm();
        }
        if (places.get(0).alongMm() != 0 || along != lengthMm()) {
            throw Refusal.of(
                    OUTLINE.name(),
                    "whole-head",
                    "go from 0 to the head's length of " + style().brief(lengthMm()),
                    "goes",
                    "from " + style().brief(places.get(0).alongMm()) + " to " + style().brief(along));
        }
        double widest = places.stream()
                .mapToDouble(place -> place.bassMm() + place.trebleMm())
                .max()
                .orElse(0);
        if (!(widest <= widthMm() * (1 + HAIR))) {
            throw values().refused(
                            WIDTH, "at-least", "be " + style().brief(widest) + " or more, the outline's own", width());
        }
    }

    /** Two slots that do not meet, each on the head, before its tip and as long as its round ends. */
    private void refuseSlots() {
        double room = lengthMm() - slotFromMm();
        if (!(slotLengthMm() < room)) {
            throw values().refused(
                            SLOT_LENGTH,
                            "less-than",
                            "be less than the " + style().brief(Math.max(0, room)) + " up to the tip",
                            values().at(SLOT_LENGTH));
        }
        if (!(slotWidthMm() <= slotLengthMm())) {
            throw values().refused(
                            SLOT_WIDTH,
                            "at-most",
                            "be " + style().brief(slotLengthMm()) + " or less, the slot's length",
                            values().at(SLOT_WIDTH));
        }
        double mostAside = (widthMm() - slotWidthMm()) / 2;
        if (!(slotAsideMm() < mostAside)) {
            throw values().refused(
                            SLOT_ASIDE,
                            "less-than",
                            "be less than " + style().brief(mostAside) + ", where the slot leaves the head",
                            values().at(SLOT_ASIDE));
        }
        if (!(slotAsideMm() > slotWidthMm() / 2)) {
            throw values().refused(
                            SLOT_ASIDE,
                            "more-than",
                            "be more than " + style().brief(slotWidthMm() / 2) + ", where both slots meet",
                            values().at(SLOT_ASIDE));
        }
    }

    /** Rollers are of a slotted head, give the strings' heights themselves, and lie in its wood. */
    private void refuseRollers() {
        for (Key<Head, ?> key : List.of(ROLLER_DIAMETER, ROLLER_LENGTH, FROM_BACK)) {
            Key<Head, ?> needs = key == ROLLER_DIAMETER ? SLOT_FROM : ROLLER_DIAMETER;
            if (values().has(key) && !values().has(needs)) {
                throw Refusal.because(
                        key.name(),
                        "no-slots",
                        key + " is of a slotted head with rollers: give " + needs + ", or leave it out");
            }
        }
        if (!hasRollers()) {
            return;
        }
        if (!(rollerDepthMm() < thicknessMm())) {
            throw values().refused(
                            ROLLER_DEPTH,
                            "less-than",
                            "be less than the head's thickness of " + style().brief(thicknessMm()),
                            values().at(ROLLER_DEPTH));
        }
        if (values().find(POSTS).filter(Posts::hasHeights).isPresent()) {
            throw Refusal.because(
                    POSTS + ".string over face",
                    "of-the-rollers",
                    "the height of a string at its roller follows from roller diameter and roller depth: leave " + POSTS
                            + ".string over face out");
        }
    }

    private void refuseScarf() {
        Optional<Amount<Angle>> angle = values().find(ANGLE);
        if (angle.isEmpty()) {
            throw Refusal.because(
                    SCARF.name(), "flat-head", "a flat head has no scarf; give the head angle, or leave the scarf out");
        }
        if (!(angleRad() >= Math.toRadians(LEAST_SCARFED_DEG))) {
            throw values().refused(ANGLE, "range", "be 1 deg or more for a scarf", angle.get());
        }
    }

    /**
     * {@return a head tilted back from the shaft, of the default size}
     *
     * @param angle between head face and glue face, 0 to 45 degrees; 0 for a flat head
     */
    public static Head angled(Quantity<Angle> angle) {
        return flat().angle(angle);
    }

    /** {@return a flat head (straight head), parallel to the glue face, of the default size} */
    public static Head flat() {
        return new Head(TABLE.values()
                .with(LENGTH, USUAL_LENGTH)
                .with(WIDTH, USUAL_WIDTH)
                .with(THICKNESS, USUAL_THICKNESS));
    }

    /**
     * {@return this head with its angle}
     *
     * @param angle between head face and glue face, 0 to 45 degrees; 0 for a flat head
     */
    public Head angle(Quantity<Angle> angle) {
        return new Head(values().amount(ANGLE, angle));
    }

    /**
     * {@return this head with its length}
     *
     * @param alongFace from the nut line, more than 0, past every post; its unit is the one answers are given in
     */
    public Head length(Quantity<Length> alongFace) {
        return new Head(values().amount(LENGTH, alongFace));
    }

    /**
     * {@return this head with its width, wings included}
     *
     * @param atWidest more than 0
     */
    public Head width(Quantity<Length> atWidest) {
        return new Head(values().amount(WIDTH, atWidest));
    }

    /**
     * {@return this head with its thickness, veneers not counted}
     *
     * @param wood more than 0
     */
    public Head thickness(Quantity<Length> wood) {
        return new Head(values().amount(THICKNESS, wood));
    }

    /**
     * {@return this head swung out of line in plan, about the nut}
     *
     * @param towardTreble angle between head and shaft in plan, positive toward the treble side, within 30 degrees
     */
    public Head swung(Quantity<Angle> towardTreble) {
        return new Head(values().amount(SWING, towardTreble));
    }

    /**
     * {@return this head with a veneer on its face}
     *
     * @param thickness more than 0
     * @param shortOfNut how far before the nut line it stops, measured along the head's face, 0 or more
     */
    public Head veneer(Quantity<Length> thickness, Quantity<Length> shortOfNut) {
        return new Head(values().with(FACE_VENEER, FaceVeneer.of(thickness).shortOfNut(shortOfNut)));
    }

    /**
     * {@return this head with a veneer on its back}
     *
     * @param thickness more than 0
     */
    public Head backVeneer(Quantity<Length> thickness) {
        return new Head(values().amount(BACK_VENEER, thickness));
    }

    /**
     * {@return this head with a tapered outline, straight from the break line to the tip}
     *
     * @param atBreakLine width there, more than 0
     * @param atTip width there, more than 0
     */
    public Head tapered(Quantity<Length> atBreakLine, Quantity<Length> atTip) {
        return new Head(values().amount(BREAK_WIDTH, atBreakLine).amount(TIP_WIDTH, atTip));
    }

    /**
     * {@return this head with an outline, straight from place to place}
     *
     * @param places from the nut line to the tip, two or more, in ascending order
     */
    public Head outline(OutlinePoint... places) {
        for (OutlinePoint place : Objects.requireNonNull(places, "places")) {
            Objects.requireNonNull(place, "place");
        }
        return new Head(values().without(BREAK_WIDTH).without(TIP_WIDTH).with(OUTLINE, List.of(places)));
    }

    /**
     * {@return this head with the thickness that its tuners fit, veneers included}
     *
     * @param least more than 0
     * @param greatest more than the least
     */
    public Head tuners(Quantity<Length> least, Quantity<Length> greatest) {
        return new Head(values().amounts(TUNERS, Arrays.asList(least, greatest)));
    }

    /**
     * {@return this head with a post to each string}
     *
     * @param places in the order of the strings, from bass to treble, the strings of a course one after the other; each
     *     on the head
     */
    public Head posts(TunerPost... places) {
        return posts(Posts.of(places));
    }

    /**
     * {@return this head with its posts, their diameter and washers}
     *
     * @param posts one to a string, each on the head
     */
    public Head posts(Posts posts) {
        return new Head(values().with(POSTS, posts));
    }

    /**
     * {@return this head scarfed on, instead of in one piece with the shaft}
     *
     * @param cut where the joint lies and what the saw takes
     * @throws IllegalArgumentException if this head is flat, or its angle is less than 1 degree
     */
    public Head scarfed(ScarfCut cut) {
        return new Head(values().with(SCARF, cut));
    }

    /** {@return the head angle; in [0, 45] degrees; 0 for a flat head} */
    public Amount<Angle> angle() {
        return Amount.ofLibrary(angleRad(), ShopUnit.DEGREE);
    }

    /** {@return the head angle in rad; 0 for a flat head} */
    public double angleRad() {
        return values().libraryValue(ANGLE, 0);
    }

    /** {@return the length along the face from the nut line, in mm; more than 0} */
    public double lengthMm() {
        return values().libraryValue(LENGTH);
    }

    /** {@return the width at its widest, in mm; more than 0} */
    public double widthMm() {
        return values().libraryValue(WIDTH);
    }

    private Amount<Length> width() {
        return values().at(WIDTH);
    }

    /**
     * {@return the places of its outline, from the nut line to the tip; two or more; those of the two widths where no outline
     * was given}
     */
    public List<OutlinePoint> outline() {
        return values().find(OUTLINE)
                .orElseGet(() -> List.of(
                        OutlinePoint.at(
                                style().amount(0), style().amount(values().libraryValue(BREAK_WIDTH, widthMm()) / 2)),
                        OutlinePoint.at(
                                style().amount(lengthMm()),
                                style().amount(values().libraryValue(TIP_WIDTH, widthMm()) / 2))));
    }

    /** {@return whether an outline was given, place by place or by its widths at break line and tip} */
    public boolean hasOutline() {
        return values().has(OUTLINE) || values().has(BREAK_WIDTH) || values().has(TIP_WIDTH);
    }

    /** {@return the width of the outline at the break line, in mm; more than 0; that at its widest unless given} */
    public double widthAtBreakLineMm() {
        OutlinePoint place = outline().get(0);
        return place.bassMm() + place.trebleMm();
    }

    /** {@return the width of the outline at the tip, in mm; more than 0; that at its widest unless given} */
    public double widthAtTipMm() {
        OutlinePoint place = outline().get(outline().size() - 1);
        return place.bassMm() + place.trebleMm();
    }

    /** {@return the thickness without veneers, in mm; more than 0} */
    public double thicknessMm() {
        return values().libraryValue(THICKNESS);
    }

    /** {@return the angle in plan between head and shaft, in rad, positive toward the treble side} */
    public double swingRad() {
        return values().libraryValue(SWING);
    }

    /** {@return the thickness of the veneer on the face, in mm; 0 without one} */
    public double veneerMm() {
        return values().find(FACE_VENEER).map(FaceVeneer::thicknessMm).orElse(0.0);
    }

    /** {@return how far before the nut line the face veneer stops, in mm along the face; 0 or more} */
    public double veneerShortOfNutMm() {
        return values().find(FACE_VENEER).map(FaceVeneer::shortOfNutMm).orElse(0.0);
    }

    /** {@return the thickness of the veneer on the back, in mm; 0 without one} */
    public double backVeneerMm() {
        return values().libraryValue(BACK_VENEER, 0);
    }

    /** {@return the thickness that the tuners fit, veneers included; least and greatest; nothing when not given} */
    public Optional<Limits<Length>> tuners() {
        return values().find(TUNERS).map(range -> Limits.between(range.get(0), range.get(1)));
    }

    /**
     * Begins this head with the two slots of a slotted head, with round ends.
     *
     * @param from the nut line along the face to where they begin, more than 0
     * @param length of each, its round ends included; more than 0, ending before the tip
     * @return a head whose slots still need their width
     */
    public NeedsSlotWidth slots(Quantity<Length> from, Quantity<Length> length) {
        return new NeedsSlotWidth(values().amount(SLOT_FROM, from).amount(SLOT_LENGTH, length));
    }

    /** A head whose slots have no width yet. Immutable. */
    public static final class NeedsSlotWidth extends Unfinished<Head> {

        private NeedsSlotWidth(Values<Head> values) {
            super(values, "head whose slots need their width");
        }

        /**
         * {@return the head}
         *
         * @param width of each, more than 0, no more than the length
         * @param aside from the middle of the head to the middle of each, more than half the width, on the head
         */
        public Head slotWidth(Quantity<Length> width, Quantity<Length> aside) {
            return new Head(values().amount(SLOT_WIDTH, width).amount(SLOT_ASIDE, aside));
        }
    }

    /** {@return whether it is a slotted head} */
    public boolean hasSlots() {
        return values().has(SLOT_FROM);
    }

    /** {@return how far from the nut line its slots begin, in mm along the face; 0 without slots} */
    public double slotFromMm() {
        return values().libraryValue(SLOT_FROM, 0);
    }

    /** {@return the length of each slot, its round ends included, in mm; 0 without slots} */
    public double slotLengthMm() {
        return values().libraryValue(SLOT_LENGTH, 0);
    }

    /** {@return the width of each slot in mm; 0 without slots} */
    public double slotWidthMm() {
        return values().libraryValue(SLOT_WIDTH, 0);
    }

    /** {@return how far from the middle of the head the middle of each slot lies, in mm; 0 without slots} */
    public double slotAsideMm() {
        return values().libraryValue(SLOT_ASIDE, 0);
    }

    /** {@return the diameter of the posts in mm; 0 where places are those of the strings} */
    public double postDiameterMm() {
        return values().find(POSTS).map(Posts::diameterMm).orElse(0.0);
    }

    /** {@return the diameter of the posts' washers in mm; that of the posts unless given} */
    public double washerDiameterMm() {
        return values().find(POSTS).map(Posts::washerMm).orElse(0.0);
    }

    /**
     * {@return the posts, or the rollers of a slotted head; in the order of the strings, from bass to treble; empty when not
     * given} A string leaves a roller at its top, {@code r - depth} over the face, or at its back, {@code -r - depth}.
     */
    public List<TunerPost> posts() {
        List<TunerPost> posts = values().find(POSTS).map(Posts::each).orElse(List.of());
        if (!hasRollers()) {
            return posts;
        }
        Amount<Length> height = style().amount(stringAtRollerMm());
        return posts.stream().map(post -> post.above(height)).toList();
    }

    /**
     * {@return this slotted head with its rollers}
     *
     * @param diameter of each, more than 0
     * @param depth of their axes below the face, less than the head's thickness
     */
    public Head rollers(Quantity<Length> diameter, Quantity<Length> depth) {
        return new Head(values().amount(ROLLER_DIAMETER, diameter).amount(ROLLER_DEPTH, depth));
    }

    /**
     * {@return this slotted head with the length of its rollers, to be checked}
     *
     * @param inward from the side of the head to the end of each, more than 0
     */
    public Head rollerLength(Quantity<Length> inward) {
        return new Head(values().amount(ROLLER_LENGTH, inward));
    }

    /** {@return whether it is a slotted head whose rollers are given} */
    public boolean hasRollers() {
        return values().has(ROLLER_DIAMETER) && hasSlots();
    }

    /** {@return the diameter of the rollers in mm; 0 where none were given} */
    public double rollerDiameterMm() {
        return values().libraryValue(ROLLER_DIAMETER, 0);
    }

    /** {@return the depth of the rollers' axes below the head's face in mm; 0 where none were given} */
    public double rollerDepthMm() {
        return values().libraryValue(ROLLER_DEPTH, 0);
    }

    /** {@return the length of a roller from the side of the head inward; nothing where it was not given} */
    public Optional<Amount<Length>> rollerLength() {
        return values().find(ROLLER_LENGTH);
    }

    private double stringAtRollerMm() {
        double radius = rollerDiameterMm() / 2;
        return (values().find(FROM_BACK).orElse(false) ? -radius : radius) - rollerDepthMm();
    }

    /** {@return the wood of a slotted head between a slot and the side, at its greatest width, in mm; 0 without slots} */
    public double slotWallMm() {
        return hasSlots() ? widthMm() / 2 - slotAsideMm() - slotWidthMm() / 2 : 0;
    }

    /** {@return the wood of a slotted head between its slots, in mm; 0 without slots} */
    public double slotWebMm() {
        return 2 * slotAsideMm() - slotWidthMm();
    }

    /** {@return why head, wings and veneers are on before the channel is cut; nothing where they come after it} */
    public Optional<String> onBeforeChannel() {
        return values().find(BEFORE_CHANNEL).map(BEFORE_WORDS::get);
    }

    /** {@return whether a seam in the face veneer is taken as the centreline} */
    public boolean isSeamTheCentreline() {
        return values().find(BEFORE_CHANNEL).filter(SEAM::equals).isPresent();
    }

    /**
     * {@return this head, on with its wings and veneers before the channel is cut}
     *
     * @param why one of {@code shaped blank}, {@code mitred binding}, {@code inlay}, {@code seam}, {@code old head}
     */
    public Head onBeforeChannel(String why) {
        if (!BEFORE_WORDS.containsKey(Objects.requireNonNull(why, "why"))) {
            throw Refusal.because(
                    BEFORE_CHANNEL.name(),
                    "one-of",
                    BEFORE_CHANNEL + " must be one of "
                            + String.join(
                                    ", ",
                                    BEFORE_WORDS.keySet().stream().sorted().toList()));
        }
        return new Head(values().with(BEFORE_CHANNEL, why));
    }

    /** {@return how it is scarfed on; the scarf; nothing for a head in one piece with the shaft} */
    public Optional<ScarfCut> scarf() {
        return values().find(SCARF);
    }

    private static Form<Head> sentences() {
        return sentences("head ");
    }

    /** With a title before them, or none for the row of a neck. */
    static Form<Head> sentences(String title) {
        return TABLE.facts("head")
                .fact("veneer", Kind.MM, "thickness of the one on its face; 0: none", Head::veneerMm)
                .phrase("turned", title + "angled {angle}")
                .phrase("turned", "flat head")
                .phrase("aside", head -> head.swingRad() > 0, ", swung {swung} toward the treble side")
                .phrase("aside", head -> head.swingRad() < 0, ", swung {swung:size} toward the bass side")
                .phrase("faced", head -> head.veneerMm() > 0, ", veneer {veneer}")
                .phrase("backed", ", back veneer {backVeneer}")
                .finds("head", "{turned}, {length} long, {width} wide, {thickness} thick{aside}{faced}{backed}");
    }
}
