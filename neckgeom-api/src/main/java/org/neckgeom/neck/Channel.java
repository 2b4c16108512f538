package org.neckgeom.neck;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Branch;
import org.neckgeom.table.Key;
import org.neckgeom.table.Moves;
import org.neckgeom.table.Noun;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Unfinished;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.LibraryUnits;
import org.neckgeom.units.ShopUnits;

/**
 * The rod channel ({@index "truss rod channel"}, {@index "truss rod slot"}, rout): the groove in the glue face that takes a
 * truss rod or a stiffening bar. Immutable.
 *
 * <p>Stations count from the nut line, positive toward the body; depths count from the glue face. Side clearance is width
 * minus rod width, end clearance is length minus rod length, depth clearance is depth minus rod height and fillet; all are 0
 * or more. Defaults: start at the nut, as wide and as long as the rod, flat floor, no fillet, no clearance, no adjuster
 * pocket. The ends are square: chisel out the corners that a round cutter leaves.
 *
 * <p>Each method checks that floor arch and adjuster pocket fit.
 *
 * <pre>{@code
 * var rod = TrussRod.twoWay(mm(300)).section(mm(6), mm(9));
 * println(Channel.forRod(rod).startingAt(mm(3)).depthClearance(mm(0.2)));
 * }</pre>
 *
 * <p>prints
 *
 * <pre>{@code
 * channel 3 mm to 303 mm from the nut, 6 mm wide, 9.2 mm deep
 * }</pre>
 */
public final class Channel extends Noun<Channel> {

    /** Its keys, with the group of the rod or bar beside the channel's own, as a neck has them. */
    public static final Table<Channel> TABLE =
            Table.of("", "the reinforcement and its channel", Channel::made).printedBy(Channel::sentences);

    private static final Key<Channel, TrussRod> ROD =
            TABLE.needed("truss rod", Types.group(TrussRod.TABLE), "truss rod in the channel");
    private static final Key<Channel, Bar> BAR =
            TABLE.optional("bar", Types.group(Bar.TABLE), "stiffening bar in the channel, instead of a truss rod");
    private static final Key<Channel, LocatingGroove> GROOVE = TABLE.optional(
            "locating groove",
            Types.group(LocatingGroove.TABLE),
            "groove that locates taper, heel and board of a neck without rod or bar under its middle, instead of either");
    private static final Key<Channel, Cut> CHANNEL = TABLE.usual(
            "channel",
            Types.group(Cut.TABLE),
            new Cut(Cut.TABLE.values()),
            "channel for the rod or bar. Default: as wide, long and deep as the rod or bar");

    static {
        TABLE.unless(ROD, BAR, GROOVE);
        TABLE.atMostOne(ROD, BAR, GROOVE);
        TABLE.moved(Moves.none().and("rod -> truss rod, or bar", Channel::rodOrBar));
    }

    /** A rod that cannot be adjusted was a kind of rod. */
    private static Branch rodOrBar(Branch old) {
        Map<String, String> bars = Map.of("steel bar", "steel", "carbon bar", "carbon");
        return old.text("rod.kind").filter(bars::containsKey).isPresent()
                ? old.moved("rod", "bar").moved("bar.kind", "bar.material").worded("bar.material", bars)
                : old.moved("rod", "truss rod");
    }

    /** What is written of the channel itself, beside its rod or bar. */
    private static final class Cut extends Noun<Cut> {
        private static final Table<Cut> TABLE =
                Table.of("", "the channel", Cut::new).printedBy(Cut::sentences);

        private static final Key<Cut, Amount<Length>> START = TABLE.usual(
                        "starts at",
                        Types.EITHER_WAY,
                        ShopUnits.mm(0),
                        "distance from the nut line to the head end of the channel. Negative: in the head. Default: 0")
                .called("channel start");
        private static final Key<Cut, Amount<Length>> END_CLEARANCE =
                clearance("end clearance", "length of the channel minus length of the rod. Default: 0");
        private static final Key<Cut, Amount<Length>> SIDE_CLEARANCE =
                clearance("side clearance", "width of the channel minus width of the rod. Default: 0");
        private static final Key<Cut, Amount<Length>> FILLET =
                clearance("fillet", "thickness of the wood strip over the rod. Default: no fillet");
        private static final Key<Cut, Amount<Length>> DEPTH_CLEARANCE =
                clearance("depth clearance", "depth of the channel minus height of rod and fillet. Default: 0");
        private static final Key<Cut, Amount<Length>> ARCH = TABLE.usual(
                        "floor arch",
                        Types.EITHER_WAY,
                        ShopUnits.mm(0),
                        "depth in the middle minus depth at the ends. Default: 0, a flat floor")
                .called("floor arch");
        private static final Key<Cut, Pocket> POCKET = TABLE.optional(
                "adjuster pocket",
                Types.group(Pocket.TABLE),
                "recess for the adjuster, at the end with the adjuster. Default: none");

        static {
            TABLE.moved(Moves.none()
                    .and("end play", "end clearance")
                    .and("side play", "side clearance")
                    .and("cover strip", "fillet")
                    .and("clearance", "depth clearance")
                    .and("deeper in the middle", "floor arch")
                    .and("pocket", "adjuster pocket"));
        }

        private Cut(Values<Cut> values) {
            super(values);
        }

        private static Key<Cut, Amount<Length>> clearance(String key, String meaning) {
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
        private static final Table<Pocket> TABLE = Table.of(
                        "adjuster pocket", "the recess for the adjuster", Pocket::new)
                .printedBy(Pocket::sentences);
        private static final Key<Pocket, Amount<Length>> LENGTH =
                TABLE.needed("length", Types.SIZE, "length of the pocket along the neck");
        private static final Key<Pocket, Amount<Length>> WIDTH =
                TABLE.needed("width", Types.SIZE, "width of the pocket");
        private static final Key<Pocket, Amount<Length>> DEPTH =
                TABLE.needed("depth", Types.SIZE, "depth of the pocket below the glue face");

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

    private final Reinforcement reinforcement;
    private final double start;
    private final double endClearance;
    private final double sideClearance;
    private final double fillet;
    private final double depthClearance;
    private final double arch;
    private final double pocketLength;
    private final double pocketWidth;
    private final double pocketDepth;

    private Channel(Values<Channel> values) {
        super(values);
        this.reinforcement = inside(values);
        Cut cut = values.at(CHANNEL);
        this.start = cut.mm(Cut.START);
        this.endClearance = cut.mm(Cut.END_CLEARANCE);
        this.sideClearance = cut.mm(Cut.SIDE_CLEARANCE);
        this.fillet = cut.mm(Cut.FILLET);
        this.depthClearance = cut.mm(Cut.DEPTH_CLEARANCE);
        this.arch = cut.mm(Cut.ARCH);
        this.pocketLength = cut.pocket().map(pocket -> pocket.mm(Pocket.LENGTH)).orElse(0.0);
        this.pocketWidth = cut.pocket().map(pocket -> pocket.mm(Pocket.WIDTH)).orElse(0.0);
        this.pocketDepth = cut.pocket().map(pocket -> pocket.mm(Pocket.DEPTH)).orElse(0.0);
    }

    private static Reinforcement inside(Values<Channel> values) {
        if (values.has(GROOVE)) {
            return values.at(GROOVE);
        }
        return values.has(BAR) ? values.at(BAR) : values.at(ROD);
    }

    /** A channel in which arch and pocket have their room, in whichever order all was given. */
    private static Channel made(Values<Channel> values) {
        Channel channel = new Channel(values);
        channel.refuseWhatAGrooveHasNot();
        channel.requireRoomForArch();
        if (channel.hasAdjusterPocket()) {
            channel.requireRoomForPocket();
        }
        return channel;
    }

    /** Nothing lies in it, so it has its own sizes and no clearance. */
    private void refuseWhatAGrooveHasNot() {
        if (!isLocatingGroove()) {
            return;
        }
        List<Key<Cut, ?>> given = Stream.<Key<Cut, ?>>of(
                        Cut.END_CLEARANCE, Cut.SIDE_CLEARANCE, Cut.FILLET, Cut.DEPTH_CLEARANCE, Cut.ARCH, Cut.POCKET)
                .filter(key -> cut().has(key)
                        && !cut().find(key).filter(Channel::isNothing).isPresent())
                .toList();
        if (!given.isEmpty()) {
            throw Refusal.because(
                    CHANNEL + "." + given.get(0),
                    "no-rod",
                    "nothing lies in a locating groove, so it has no " + given.get(0) + ": leave it out");
        }
    }

    private static boolean isNothing(Object value) {
        return value instanceof Amount<?> amount && amount.libraryValue() == 0;
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
     * {@return a channel as wide, long and deep as a truss rod}
     *
     * @param rod the rod
     */
    public static Channel forRod(TrussRod rod) {
        return made(TABLE.values().with(ROD, rod));
    }

    /**
     * {@return a channel as wide, long and deep as a stiffening bar}
     *
     * @param bar the bar
     */
    public static Channel forBar(Bar bar) {
        return made(TABLE.values().with(BAR, bar));
    }

    /**
     * {@return the locating groove of a neck without rod, 3 mm deep (common practice)}
     *
     * @param length of the groove, more than 0
     * @param width of the groove, that of the cutter or more
     */
    public static Channel locatingGroove(Quantity<Length> length, Quantity<Length> width) {
        return made(TABLE.values().with(GROOVE, LocatingGroove.of(length, width)));
    }

    /**
     * {@return this channel with another start}
     *
     * @param x of its head end, positive toward the body; negative when it runs on into the head
     */
    public Channel startingAt(Quantity<Length> x) {
        return with(Cut.START, x);
    }

    /**
     * {@return this channel longer than the rod}
     *
     * @param clearance length of the channel minus length of the rod, at the heel end, 0 or more
     */
    public Channel endClearance(Quantity<Length> clearance) {
        return with(Cut.END_CLEARANCE, clearance);
    }

    /**
     * {@return this channel wider than the rod}
     *
     * @param clearance width of the channel minus width of the rod, 0 or more
     */
    public Channel sideClearance(Quantity<Length> clearance) {
        return with(Cut.SIDE_CLEARANCE, clearance);
    }

    /**
     * {@return this channel with a fillet (filler strip, spline) over the rod}
     *
     * @param strip thickness of the fillet, 0 or more
     */
    public Channel fillet(Quantity<Length> strip) {
        return with(Cut.FILLET, strip);
    }

    /**
     * {@return this channel deeper than rod and fillet}
     *
     * @param depth from the glue face to the rod, or to the fillet over it, 0 or more
     */
    public Channel depthClearance(Quantity<Length> depth) {
        return with(Cut.DEPTH_CLEARANCE, depth);
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
        return asCut(Cut.END_CLEARANCE, end - startMm() - reinforcement.lengthMm());
    }

    /**
     * {@return this channel as it was cut, in another width: it may have become too narrow for its rod}
     *
     * @param width of the channel, adjuster pocket not counted, more than 0
     */
    public Channel cutWide(Quantity<Length> width) {
        return asCut(Cut.SIDE_CLEARANCE, LibraryUnits.mmPositive(width, "channel width") - reinforcement.widthMm());
    }

    /**
     * {@return this channel as it was cut, in another depth: it may have become too shallow for its rod}
     *
     * @param depth at its ends, the whole depth where the floor is flat, more than 0
     */
    public Channel cutDeep(Quantity<Length> depth) {
        return asCut(
                Cut.DEPTH_CLEARANCE,
                LibraryUnits.mmPositive(depth, "channel depth") - reinforcement.heightMm() - filletMm());
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
    public Channel arch(Quantity<Length> deeperInTheMiddle) {
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
     * Begins an adjuster pocket, at the end of the channel with the adjuster.
     *
     * @param length along the neck, more than 0, no more than the channel's
     * @return what needs a section to be a channel with a pocket
     * @throws IllegalArgumentException for a bar, once the section is given
     */
    public NeedsPocketSection adjusterPocket(Quantity<Length> length) {
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
        if (reinforcement instanceof Bar bar) {
            throw Refusal.because(
                    CHANNEL + "." + Cut.POCKET,
                    "no-pocket",
                    "a " + bar.material() + " bar has no adjuster, but an adjuster pocket is given");
        }
        if (!(adjusterPocketLengthMm() <= lengthMm())) {
            throw refused(
                    Pocket.LENGTH,
                    "at-most",
                    "no more than the channel's " + amount(lengthMm()),
                    adjusterPocketLengthMm());
        }
        if (!(adjusterPocketWidthMm() >= widthMm())) {
            throw refused(
                    Pocket.WIDTH,
                    "at-least",
                    "the channel's " + amount(widthMm()) + " or more",
                    adjusterPocketWidthMm());
        }
        if (!(adjusterPocketDepthMm() >= depthMm())) {
            throw refused(
                    Pocket.DEPTH,
                    "at-least",
                    "the channel's " + amount(depthMm()) + " or more",
                    adjusterPocketDepthMm());
        }
    }

    private Refusal refused(Key<Pocket, ?> key, String rule, String range, double was) {
        return Refusal.of(CHANNEL + "." + Cut.POCKET + "." + key, rule, "be " + range, amount(was));
    }

    /** {@return what is in the channel; a truss rod, a stiffening bar, or the size of a locating groove} */
    public Reinforcement reinforcement() {
        return reinforcement;
    }

    /** {@return the truss rod in the channel; nothing where a bar is in it} */
    public Optional<TrussRod> rod() {
        return values().find(ROD);
    }

    /** {@return the stiffening bar in the channel; nothing where a truss rod or nothing is in it} */
    public Optional<Bar> bar() {
        return values().find(BAR);
    }

    /** {@return whether it is the locating groove of a neck without rod: nothing lies in it} */
    public boolean isLocatingGroove() {
        return values().has(GROOVE);
    }

    /** {@return x of the head end in mm; either sign} */
    public double startMm() {
        return start;
    }

    /** {@return x of the heel end in mm: start, rod and end clearance; more than the start} */
    public double endMm() {
        return start + lengthMm();
    }

    /** {@return the length in mm; more than 0} */
    public double lengthMm() {
        return reinforcement.lengthMm() + endClearance;
    }

    /**
     * {@return the width in mm: rod and side clearance; more than 0} The pocket is wider.
     */
    public double widthMm() {
        return reinforcement.widthMm() + sideClearance;
    }

    /**
     * {@return the depth at the ends in mm: rod, fillet and depth clearance; more than 0} The whole depth where the
     * floor is flat.
     */
    public double depthMm() {
        return reinforcement.heightMm() + fillet + depthClearance;
    }

    /** {@return how much deeper the middle is than the ends, in mm; the sagitta; 0 for a flat floor} */
    public double archMm() {
        return arch;
    }

    /** {@return the fillet's thickness in mm; 0 or more} */
    public double filletMm() {
        return fillet;
    }

    /** {@return the depth clearance in mm; 0 or more} */
    public double depthClearanceMm() {
        return depthClearance;
    }

    /** {@return whether there is an adjuster pocket; true when there is one} */
    public boolean hasAdjusterPocket() {
        return pocketLength > 0;
    }

    /** {@return x of the pocket's head end in mm; the channel's start, or its end less the pocket's length} */
    public double adjusterPocketStartMm() {
        return adjuster() == End.HEAD ? start : endMm() - pocketLength;
    }

    /** {@return the pocket's length in mm; 0 where there is none} */
    public double adjusterPocketLengthMm() {
        return pocketLength;
    }

    /** {@return the pocket's width in mm; 0 where there is none} */
    public double adjusterPocketWidthMm() {
        return pocketWidth;
    }

    /** {@return the pocket's depth in mm; 0 where there is none} */
    public double adjusterPocketDepthMm() {
        return pocketDepth;
    }

    /**
     * {@return the depth of the floor at a station, the adjuster pocket not counted: {@code d(x) = d_m - (R - sqrt(R^2 - (x -
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
     * {@return the greatest depth at a station, the adjuster pocket counted; depth in mm; 0 outside the channel}
     *
     * @param xMm station in mm
     */
    public double depthAtMm(double xMm) {
        double floor = floorDepthAtMm(xMm);
        return floor > 0 && isInPocket(xMm) ? Math.max(floor, pocketDepth) : floor;
    }

    /**
     * {@return the width at a station, the adjuster pocket counted; width in mm; 0 outside the channel}
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
        return hasAdjusterPocket() && xMm >= adjusterPocketStartMm() && xMm <= adjusterPocketStartMm() + pocketLength;
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
                .fact("width", Kind.MM, "of rod and side clearance", Channel::widthMm)
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
                .phrase("recess", ", adjuster pocket {pocketLength} x {pocketWidth} x {pocketDepth} at the {pocketEnd}")
                .finds(
                        "locating-groove",
                        Channel::isLocatingGroove,
                        title + "{start} to {end} from the nut, {width} wide, {depth} deep, a locating groove")
                .finds("channel", title + "{start} to {end} from the nut, {width} wide, {depth} deep{arched}{recess}");
    }

    private double ofPocket(double mm) {
        return hasAdjusterPocket() ? mm : Double.NaN;
    }

    private double middleDepthMm() {
        return depthMm() + arch;
    }

    private Optional<End> pocketEnd() {
        return hasAdjusterPocket() ? Optional.of(adjuster()) : Optional.empty();
    }

    private End adjuster() {
        return rod().map(TrussRod::adjuster).orElse(End.HEAD);
    }
}
