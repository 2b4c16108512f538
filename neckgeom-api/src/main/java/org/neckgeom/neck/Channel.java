package org.neckgeom.neck;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnits;

/**
 * The channel cut into the neck's glue face for a rod, such as {@code channel 3 to 303 mm from the nut, 6 mm wide, 9.2 mm
 * deep}. Immutable.
 *
 * <p>Unless given: it starts at the nut, is as wide and as long as the rod, flat, without cover strip, clearance or
 * pocket. Its ends are square; what a round cutter leaves there is chiselled out or run past. In
 * any order of steps arch and pocket keep their room: what would take it is refused.
 */
public final class Channel extends Noun<Channel> {

    /** Its keys, the rod's group beside its own, as a neck has them. */
    public static final Table<Channel> TABLE =
            Table.of("", "the rod and its channel", Channel::made).printedBy(Channel::sentences);

    private static final Key<Channel, TrussRod> ROD =
            TABLE.needed("rod", Types.group(TrussRod.TABLE), "the rod or bar");
    private static final Key<Channel, Cut> CHANNEL = TABLE.usual(
            "channel",
            Types.group(Cut.TABLE),
            new Cut(Cut.TABLE.values()),
            "the rod's channel; the plainest for the rod when left out");

    /** What is written of the channel itself, beside its rod. */
    private static final class Cut extends Noun<Cut> {
        private static final Table<Cut> TABLE =
                Table.of("", "the rod's channel", Cut::new).printedBy(Cut::sentences);

        private static final Key<Cut, Amount<Length>> START = TABLE.usual(
                        "starts at",
                        Types.EITHER_WAY,
                        ShopUnits.mm(0),
                        "from the nut, toward the body; before the nut is negative; 0")
                .called("channel start");
        private static final Key<Cut, Amount<Length>> END_PLAY =
                play("end play", "how much longer than the rod; 0 when left out");
        private static final Key<Cut, Amount<Length>> SIDE_PLAY =
                play("side play", "how much wider than the rod; 0 when left out");
        private static final Key<Cut, Amount<Length>> COVER =
                play("cover strip", "thickness of a strip over the rod; none when left out");
        private static final Key<Cut, Amount<Length>> CLEARANCE =
                play("clearance", "how much deeper than rod and strip; 0 when left out");
        private static final Key<Cut, Amount<Length>> ARCH = TABLE.usual(
                        "deeper in the middle",
                        Types.EITHER_WAY,
                        ShopUnits.mm(0),
                        "how much deeper the middle is than the ends; flat when left out")
                .called("arch");
        private static final Key<Cut, Pocket> POCKET = TABLE.optional(
                "pocket",
                Types.group(Pocket.TABLE),
                "the recess for the adjuster, at its end of the channel; none when left out");

        private Cut(Values<Cut> values) {
            super(values);
        }

        private static Key<Cut, Amount<Length>> play(String key, String meaning) {
            return TABLE.usual(key, Types.SIZE_OR_NOTHING, ShopUnits.mm(0), meaning);
        }

        private static Form<Cut> sentences() {
            return TABLE.facts("channel-cut").finds("channel-cut", "channel");
        }

        private Values<Cut> given() {
            return values();
        }

        private double mm(Key<Cut, Amount<Length>> key) {
            return values().libraryValue(key);
        }

        private Optional<Pocket> pocket() {
            return values().find(POCKET);
        }
    }

    /** What is written of the pocket. */
    private static final class Pocket extends Noun<Pocket> {
        private static final Table<Pocket> TABLE =
                Table.of("pocket", "the recess for the adjuster", Pocket::new).printedBy(Pocket::sentences);
        private static final Key<Pocket, Amount<Length>> LENGTH = TABLE.needed("length", Types.SIZE, "along the neck");
        private static final Key<Pocket, Amount<Length>> WIDTH = TABLE.needed("width", Types.SIZE, "across the neck");
        private static final Key<Pocket, Amount<Length>> DEPTH =
                TABLE.needed("depth", Types.SIZE, "below the glue face");

        private Pocket(Values<Pocket> values) {
            super(values);
        }

        private static Form<Pocket> sentences() {
            return TABLE.facts("pocket").finds("pocket", "pocket {length} x {width} x {depth}");
        }

        private double mm(Key<Pocket, Amount<Length>> key) {
            return values().libraryValue(key);
        }
    }

    private final TrussRod rod;
    private final double start;
    private final double endPlay;
    private final double sidePlay;
    private final double cover;
    private final double clearance;
    private final double arch;
    private final double pocketLength;
    private final double pocketWidth;
    private final double pocketDepth;

    private Channel(Values<Channel> values) {
        super(values);
        this.rod = values.at(ROD);
        Cut cut = values.at(CHANNEL);
        this.start = cut.mm(Cut.START);
        this.endPlay = cut.mm(Cut.END_PLAY);
        this.sidePlay = cut.mm(Cut.SIDE_PLAY);
        this.cover = cut.mm(Cut.COVER);
        this.clearance = cut.mm(Cut.CLEARANCE);
        this.arch = cut.mm(Cut.ARCH);
        this.pocketLength = cut.pocket().map(pocket -> pocket.mm(Pocket.LENGTH)).orElse(0.0);
        this.pocketWidth = cut.pocket().map(pocket -> pocket.mm(Pocket.WIDTH)).orElse(0.0);
        this.pocketDepth = cut.pocket().map(pocket -> pocket.mm(Pocket.DEPTH)).orElse(0.0);
    }

    /** A channel in which arch and pocket have their room, in whichever order all was given. */
    private static Channel made(Values<Channel> values) {
        Channel channel = new Channel(values);
        channel.requireRoomForArch();
        if (channel.hasPocket()) {
            channel.requireRoomForPocket();
        }
        return channel;
    }

    private Values<Cut> cut() {
        return values().at(CHANNEL).given();
    }

    private Values<Channel> with(Values<Cut> cut) {
        return values().with(CHANNEL, new Cut(cut));
    }

    private Channel with(Key<Cut, Amount<Length>> key, Quantity<Length> value) {
        return made(with(cut().amount(key, value)));
    }

    /**
     * {@return the plainest channel for a rod}
     *
     * @param rod the rod
     */
    public static Channel forRod(TrussRod rod) {
        return made(TABLE.values().with(ROD, rod));
    }

    /**
     * {@return this channel starting elsewhere}
     *
     * @param x of its head end, positive toward the body; negative when it runs on into the head
     */
    public Channel startingAt(Quantity<Length> x) {
        return with(Cut.START, x);
    }

    /**
     * {@return this channel longer than the rod}
     *
     * @param play added at the heel end, 0 or more
     */
    public Channel endPlay(Quantity<Length> play) {
        return with(Cut.END_PLAY, play);
    }

    /**
     * {@return this channel wider than the rod}
     *
     * @param play width of the channel less width of the rod, 0 or more
     */
    public Channel sidePlay(Quantity<Length> play) {
        return with(Cut.SIDE_PLAY, play);
    }

    /**
     * {@return this channel with a strip of wood over the rod}
     *
     * @param strip thickness, 0 or more
     */
    public Channel coveredBy(Quantity<Length> strip) {
        return with(Cut.COVER, strip);
    }

    /**
     * {@return this channel deeper than rod and strip}
     *
     * @param depth how far the rod, or the strip over it, lies below the glue face, 0 or more
     */
    public Channel clearance(Quantity<Length> depth) {
        return with(Cut.CLEARANCE, depth);
    }

    /**
     * {@return this channel as it was cut, ending elsewhere: it may have become too short for its rod}
     *
     * @param x of its heel end, positive toward the body, more than that of its head end
     */
    public Channel cutTo(Quantity<Length> x) {
        double end = LibraryUnits.mm(x, "channel end");
        if (!(end > startMm())) {
            throw LibraryUnits.refused("channel end", "more-than", "more than its start at " + amount(startMm()), x);
        }
        return asCut(Cut.END_PLAY, end - startMm() - rod.lengthMm());
    }

    /**
     * {@return this channel as it was cut, in another width: it may have become too narrow for its rod}
     *
     * @param width of the channel, its pocket not counted, more than 0
     */
    public Channel cutWide(Quantity<Length> width) {
        return asCut(Cut.SIDE_PLAY, LibraryUnits.mmPositive(width, "channel width") - rod.widthMm());
    }

    /**
     * {@return this channel as it was cut, in another depth: it may have become too shallow for its rod}
     *
     * @param depth at its ends, the whole depth where the floor is flat, more than 0
     */
    public Channel cutDeep(Quantity<Length> depth) {
        return asCut(Cut.CLEARANCE, LibraryUnits.mmPositive(depth, "channel depth") - rod.heightMm() - coverMm());
    }

    /** What was cut may be too small, and leave the pocket too small; the arch must still have its room. */
    private Channel asCut(Key<Cut, Amount<Length>> key, double value) {
        Channel channel = new Channel(with(cut().found(key, amount(value))));
        channel.requireRoomForArch();
        return channel;
    }

    /**
     * {@return this channel with an arched floor, a circle through both ends and the middle}
     *
     * @param deeperInTheMiddle sagitta: middle depth less end depth; positive for a rod laid from the front, negative for
     *     one whose middle lies shallower
     */
    public Channel arched(Quantity<Length> deeperInTheMiddle) {
        return with(Cut.ARCH, deeperInTheMiddle);
    }

    private void requireRoomForArch() {
        if (!(Math.abs(archMm()) < lengthMm() / 2)) {
            throw refusedArch("less-than", "less than half the channel's length of " + amount(lengthMm()));
        }
        if (!(middleDepthMm() > 0)) {
            throw refusedArch("more-than", "more than -" + amount(depthMm()));
        }
    }

    private Refusal refusedArch(String rule, String range) {
        return Refusal.of(CHANNEL + "." + Cut.ARCH, rule, "be " + range, amount(archMm()));
    }

    /**
     * Begins a pocket for the adjuster at the end the rod is adjusted at.
     *
     * @param length along the neck, more than 0, no more than the channel's
     * @return what needs a section to be a channel with a pocket
     * @throws IllegalArgumentException for a fixed bar
     */
    public NeedsPocketSection pocket(Quantity<Length> length) {
        return new NeedsPocketSection(this, Pocket.TABLE.values().amount(Pocket.LENGTH, length));
    }

    /** A channel whose pocket has no section yet. Immutable. */
    public static final class NeedsPocketSection extends Unfinished<Channel> {
        private final Channel channel;
        private final Values<Pocket> pocket;

        private NeedsPocketSection(Channel channel, Values<Pocket> pocket) {
            super(channel.values(), "pocket, section not given yet", pocket);
            this.channel = channel;
            this.pocket = pocket;
        }

        /**
         * Adds the pocket's section.
         *
         * @param width across, the channel's width or more
         * @param depth below the glue face, the channel's depth or more
         * @return the channel
         */
        public Channel section(Quantity<Length> width, Quantity<Length> depth) {
            Values<Pocket> whole = pocket.amount(Pocket.WIDTH, width).amount(Pocket.DEPTH, depth);
            return made(channel.with(channel.cut().with(Cut.POCKET, new Pocket(whole))));
        }
    }

    private void requireRoomForPocket() {
        if (!rod.isAdjustable()) {
            throw Refusal.because(
                    CHANNEL + "." + Cut.POCKET,
                    "no-pocket",
                    "a " + rod.kind() + " needs no pocket, but one was wanted");
        }
        if (!(pocketLengthMm() <= lengthMm())) {
            throw refused(
                    Pocket.LENGTH, "at-most", "no more than the channel's " + amount(lengthMm()), pocketLengthMm());
        }
        if (!(pocketWidthMm() >= widthMm())) {
            throw refused(Pocket.WIDTH, "at-least", "the channel's " + amount(widthMm()) + " or more", pocketWidthMm());
        }
        if (!(pocketDepthMm() >= depthMm())) {
            throw refused(Pocket.DEPTH, "at-least", "the channel's " + amount(depthMm()) + " or more", pocketDepthMm());
        }
    }

    private Refusal refused(Key<Pocket, ?> key, String rule, String range, double was) {
        return Refusal.of(CHANNEL + "." + Cut.POCKET + "." + key, rule, "be " + range, amount(was));
    }

    /** {@return the rod} */
    public TrussRod rod() {
        return rod;
    }

    /** {@return x of the head end in mm; either sign} */
    public double startMm() {
        return start;
    }

    /** {@return x of the heel end in mm: start, rod and end play; more than the start} */
    public double endMm() {
        return start + lengthMm();
    }

    /** {@return the length in mm; more than 0} */
    public double lengthMm() {
        return rod.lengthMm() + endPlay;
    }

    /**
     * {@return the width in mm: rod and side play; more than 0} The pocket is wider.
     */
    public double widthMm() {
        return rod.widthMm() + sidePlay;
    }

    /**
     * {@return the depth at the ends in mm: rod, cover strip and clearance; more than 0} The whole depth where the
     * floor is flat.
     */
    public double depthMm() {
        return rod.heightMm() + cover + clearance;
    }

    /** {@return how much deeper the middle is than the ends, in mm; the sagitta; 0 for a flat floor} */
    public double archMm() {
        return arch;
    }

    /** {@return the cover strip's thickness in mm; 0 or more} */
    public double coverMm() {
        return cover;
    }

    /** {@return the clearance in mm; 0 or more} */
    public double clearanceMm() {
        return clearance;
    }

    /** {@return whether there is a pocket; true when there is one} */
    public boolean hasPocket() {
        return pocketLength > 0;
    }

    /** {@return x of the pocket's head end in mm; the channel's start, or its end less the pocket's length} */
    public double pocketStartMm() {
        return rod.adjustedAt() == End.HEAD ? start : endMm() - pocketLength;
    }

    /** {@return the pocket's length in mm; 0 where there is none} */
    public double pocketLengthMm() {
        return pocketLength;
    }

    /** {@return the pocket's width in mm; 0 where there is none} */
    public double pocketWidthMm() {
        return pocketWidth;
    }

    /** {@return the pocket's depth in mm; 0 where there is none} */
    public double pocketDepthMm() {
        return pocketDepth;
    }

    /**
     * {@return the depth of the floor at a station, the pocket not counted: {@code d(x) = d_m - (R - sqrt(R^2 - (x -
     * m)^2))}, {@code R = (L^2/4 + s^2)/(2 s)}, m the middle, s the sagitta; depth in mm; 0 outside the channel} Exact.
     *
     * @param xMm station in mm
     */
    public double floorDepthAtMm(double xMm) {
        if (!(LibraryUnits.stationMm(xMm) >= start && xMm <= endMm())) {
            return 0;
        }
        double s = arch;
        if (s == 0) {
            return depthMm();
        }
        double half = lengthMm() / 2;
        double u = xMm - (start + half);
        // R - sqrt(R^2 - u^2) written without the difference of two near numbers, and with the sign of s.
        double radius = (half * half + s * s) / (2 * Math.abs(s));
        double drop = u * u / (radius + Math.sqrt(Math.max(0, radius * radius - u * u)));
        return depthMm() + s - Math.copySign(drop, s);
    }

    /**
     * {@return the greatest depth at a station, the pocket counted; depth in mm; 0 outside the channel}
     *
     * @param xMm station in mm
     */
    public double depthAtMm(double xMm) {
        double floor = floorDepthAtMm(xMm);
        return floor > 0 && isInPocket(xMm) ? Math.max(floor, pocketDepth) : floor;
    }

    /**
     * {@return the width at a station, the pocket counted; width in mm; 0 outside the channel}
     *
     * @param xMm station in mm
     */
    public double widthAtMm(double xMm) {
        if (!(LibraryUnits.stationMm(xMm) >= start && xMm <= endMm())) {
            return 0;
        }
        return isInPocket(xMm) ? pocketWidth : widthMm();
    }

    private boolean isInPocket(double xMm) {
        return hasPocket() && xMm >= pocketStartMm() && xMm <= pocketStartMm() + pocketLength;
    }

    private Amount<Length> amount(double mm) {
        return style().amount(mm);
    }

    private static Form<Channel> sentences() {
        return sentences("channel ");
    }

    /** With a title before them, or none for the row of a neck. */
    static Form<Channel> sentences(String title) {
        return TABLE.facts("channel")
                .fact("start", Kind.MM, "from the nut; negative: in the head", Channel::startMm)
                .fact("end", Kind.MM, "from the nut", Channel::endMm)
                .fact("width", Kind.MM, "of rod and side play", Channel::widthMm)
                .fact("depth", Kind.MM, "at its ends", Channel::depthMm)
                .fact(
                        "middleDepth",
                        Kind.MM,
                        "where the floor is arched",
                        c -> c.arch == 0 ? Double.NaN : c.middleDepthMm())
                .fact("pocketLength", Kind.MM, "of the adjuster pocket", c -> c.ofPocket(c.pocketLength))
                .fact("pocketWidth", Kind.MM, "of the adjuster pocket", c -> c.ofPocket(c.pocketWidth))
                .fact("pocketDepth", Kind.MM, "of the adjuster pocket", c -> c.ofPocket(c.pocketDepth))
                .factIfAny("pocketEnd", Kind.code(End.class), "where the pocket is", Channel::pocketEnd)
                .phrase("arched", " at its ends, {middleDepth} in the middle")
                .phrase("recess", ", pocket {pocketLength} x {pocketWidth} x {pocketDepth} at the {pocketEnd}")
                .finds("channel", title + "{start} to {end} from the nut, {width} wide, {depth} deep{arched}{recess}");
    }

    private double ofPocket(double mm) {
        return hasPocket() ? mm : Double.NaN;
    }

    private double middleDepthMm() {
        return depthMm() + arch;
    }

    private Optional<End> pocketEnd() {
        return hasPocket() ? Optional.of(rod.adjustedAt()) : Optional.empty();
    }
}
