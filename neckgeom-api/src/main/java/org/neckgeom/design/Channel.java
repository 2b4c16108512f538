package org.neckgeom.design;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.neckgeom.fault.Refusal;
import org.neckgeom.form.Answer;
import org.neckgeom.form.Form;
import org.neckgeom.form.Kind;
import org.neckgeom.table.Key;
import org.neckgeom.table.Table;
import org.neckgeom.table.Types;
import org.neckgeom.table.Values;
import org.neckgeom.units.Amount;
import org.neckgeom.units.HouseUnits;
import org.neckgeom.units.LengthStyle;
import org.neckgeom.units.SaysLengths;

/**
 * The channel cut into the neck's glue face for a rod, such as {@code channel 3 to 303 mm from the nut, 6 mm wide, 9.2 mm
 * deep}. Immutable.
 *
 * <p>Unless given: it starts at the nut, is as wide and as long as the rod, flat, without cover strip, clearance or
 * pocket. Its ends are square; what a round cutter leaves there is chiselled out or run past. In
 * any order of steps arch and pocket keep their room: what would take it is refused.
 */
public final class Channel implements Answer, SaysLengths<Channel> {

    /** Its keys, the rod's group beside its own, as a neck has them. */
    public static final Table<Channel> TABLE =
            Table.of("", "the rod and its channel", Channel::of, channel -> channel.values());

    private static final Key<Channel, Rod> ROD = TABLE.needed("rod", Types.group(Rod.TABLE), "the rod or bar");
    private static final Key<Channel, Cut> CHANNEL = TABLE.optional(
            "channel", Types.group(Cut.TABLE), "the rod's channel; the plainest for the rod when left out");

    private static final int START = 0;
    private static final int END_PLAY = 1;
    private static final int SIDE_PLAY = 2;
    private static final int COVER = 3;
    private static final int CLEARANCE = 4;
    private static final int ARCH = 5;
    private static final int POCKET_LENGTH = 6;
    private static final int POCKET_WIDTH = 7;
    private static final int POCKET_DEPTH = 8;

    /** What is written of the channel itself, for a rod that is written beside it. Immutable. */
    public static final class Cut {

        /** Its keys. */
        public static final Table<Cut> TABLE = Table.of("", "the rod's channel", Cut::new, cut -> cut.values);

        /** In the order of a channel's figures. */
        private static final List<Key<Cut, Amount<Length>>> LENGTHS = List.of(
                TABLE.optional(
                                "starts at",
                                Types.EITHER_WAY,
                                "from the nut, toward the body; before the nut is negative; 0")
                        .called("channel start"),
                TABLE.optional("end play", Types.SIZE_OR_NOTHING, "how much longer than the rod; 0 when left out"),
                TABLE.optional("side play", Types.SIZE_OR_NOTHING, "how much wider than the rod; 0 when left out"),
                TABLE.optional(
                        "cover strip", Types.SIZE_OR_NOTHING, "thickness of a strip over the rod; none when left out"),
                TABLE.optional(
                        "clearance", Types.SIZE_OR_NOTHING, "how much deeper than rod and strip; 0 when left out"),
                TABLE.optional(
                                "deeper in the middle",
                                Types.EITHER_WAY,
                                "how much deeper the middle is than the ends; flat when left out")
                        .called("arch"));

        private static final Key<Cut, Pocket> POCKET = TABLE.optional(
                "pocket",
                Types.group(Pocket.TABLE),
                "the recess for the adjuster, at its end of the channel; none when left out");

        private final Values<Cut> values;

        private Cut(Values<Cut> values) {
            this.values = values;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Cut that && values.equals(that.values);
        }

        @Override
        public int hashCode() {
            return values.hashCode();
        }

        /** Returns such as {@code channel, rod not given yet}. */
        @Override
        public String toString() {
            return "channel, rod not given yet";
        }
    }

    /** What is written of the pocket. */
    private record Pocket(Values<Pocket> values) {
        private static final Table<Pocket> TABLE =
                Table.of("pocket", "the recess for the adjuster", Pocket::new, Pocket::values);
        private static final Key<Pocket, Amount<Length>> LENGTH = TABLE.needed("length", Types.SIZE, "along the neck");
        private static final Key<Pocket, Amount<Length>> WIDTH = TABLE.needed("width", Types.SIZE, "across the neck");
        private static final Key<Pocket, Amount<Length>> DEPTH =
                TABLE.needed("depth", Types.SIZE, "below the glue face");
    }

    private final Rod rod;
    private final double[] mm;

    private Channel(Rod rod, double[] mm) {
        this.rod = rod;
        this.mm = mm;
    }

    private static Channel of(Values<Channel> values) {
        Rod rod = values.complete().at(ROD);
        return values.find(CHANNEL).map(cut -> forRod(rod, cut)).orElseGet(() -> forRod(rod));
    }

    /**
     * {@return a channel as written}
     *
     * @param rod the rod
     * @param written what is written of the channel
     */
    public static Channel forRod(Rod rod, Cut written) {
        Values<Cut> cut = Objects.requireNonNull(written, "written").values;
        double[] mm = new double[POCKET_DEPTH + 1];
        for (int i = 0; i < Cut.LENGTHS.size(); i++) {
            mm[i] = cut.house(Cut.LENGTHS.get(i), 0);
        }
        cut.find(Cut.POCKET).map(Pocket::values).ifPresent(pocket -> {
            mm[POCKET_LENGTH] = pocket.house(Pocket.LENGTH);
            mm[POCKET_WIDTH] = pocket.house(Pocket.WIDTH);
            mm[POCKET_DEPTH] = pocket.house(Pocket.DEPTH);
        });
        return new Channel(Objects.requireNonNull(rod, "rod"), mm).checked();
    }

    private Values<Channel> values() {
        Values<Cut> cut = Cut.TABLE.values();
        for (int i = 0; i < Cut.LENGTHS.size(); i++) {
            cut = mm[i] == 0 ? cut : cut.amount(Cut.LENGTHS.get(i), amount(mm[i]));
        }
        if (hasPocket()) {
            cut = cut.with(
                    Cut.POCKET,
                    new Pocket(Pocket.TABLE
                            .values()
                            .amount(Pocket.LENGTH, amount(pocketLengthMm()))
                            .amount(Pocket.WIDTH, amount(pocketWidthMm()))
                            .amount(Pocket.DEPTH, amount(pocketDepthMm()))));
        }
        Values<Channel> values = TABLE.values().with(ROD, rod);
        return cut.equals(Cut.TABLE.values()) ? values : values.with(CHANNEL, new Cut(cut));
    }

    private Channel with(int figure, double value) {
        double[] changed = mm.clone();
        changed[figure] = value;
        return new Channel(rod, changed);
    }

    /** A changed channel in which arch and pocket still have their room, in whichever order all was given. */
    private Channel with(int figure, Quantity<Length> value) {
        Key<Cut, Amount<Length>> key = Cut.LENGTHS.get(figure);
        return with(figure, Cut.TABLE.values().amount(key, value).house(key)).checked();
    }

    private Channel checked() {
        requireRoomForArch();
        if (hasPocket()) {
            requireRoomForPocket();
        }
        return this;
    }

    /**
     * {@return the plainest channel for a rod}
     *
     * @param rod the rod
     */
    public static Channel forRod(Rod rod) {
        return new Channel(Objects.requireNonNull(rod, "rod"), new double[POCKET_DEPTH + 1]);
    }

    /**
     * {@return this channel starting elsewhere}
     *
     * @param x of its head end, positive toward the body; negative when it runs on into the head
     */
    public Channel startingAt(Quantity<Length> x) {
        return with(START, x);
    }

    /**
     * {@return this channel longer than the rod}
     *
     * @param play added at the heel end, 0 or more
     */
    public Channel endPlay(Quantity<Length> play) {
        return with(END_PLAY, play);
    }

    /**
     * {@return this channel wider than the rod}
     *
     * @param play width of the channel less width of the rod, 0 or more
     */
    public Channel sidePlay(Quantity<Length> play) {
        return with(SIDE_PLAY, play);
    }

    /**
     * {@return this channel with a strip of wood over the rod}
     *
     * @param strip thickness, 0 or more
     */
    public Channel coveredBy(Quantity<Length> strip) {
        return with(COVER, strip);
    }

    /**
     * {@return this channel deeper than rod and strip}
     *
     * @param depth how far the rod, or the strip over it, lies below the glue face, 0 or more
     */
    public Channel clearance(Quantity<Length> depth) {
        return with(CLEARANCE, depth);
    }

    /**
     * {@return this channel as it was cut, ending elsewhere: it may have become too short for its rod}
     *
     * @param x of its heel end, positive toward the body, more than that of its head end
     */
    public Channel cutTo(Quantity<Length> x) {
        double end = HouseUnits.mm(x, "channel end");
        if (!(end > startMm())) {
            throw HouseUnits.refused("channel end", "more-than", "more than its start at " + amount(startMm()), x);
        }
        return asCut(END_PLAY, end - startMm() - rod.lengthMm());
    }

    /**
     * {@return this channel as it was cut, in another width: it may have become too narrow for its rod}
     *
     * @param width of the channel, its pocket not counted, more than 0
     */
    public Channel cutWide(Quantity<Length> width) {
        return asCut(SIDE_PLAY, HouseUnits.mmPositive(width, "channel width") - rod.widthMm());
    }

    /**
     * {@return this channel as it was cut, in another depth: it may have become too shallow for its rod}
     *
     * @param depth at its ends, the whole depth where the floor is flat, more than 0
     */
    public Channel cutDeep(Quantity<Length> depth) {
        return asCut(CLEARANCE, HouseUnits.mmPositive(depth, "channel depth") - rod.heightMm() - coverMm());
    }

    /** What was cut may leave the pocket shallower or narrower than the channel; the arch must still have its room. */
    private Channel asCut(int figure, double value) {
        Channel cut = with(figure, value);
        cut.requireRoomForArch();
        return cut;
    }

    /**
     * {@return this channel with an arched floor, a circle through both ends and the middle}
     *
     * @param deeperInTheMiddle sagitta: middle depth less end depth; positive for a rod laid from the front, negative for
     *     one whose middle lies shallower
     */
    public Channel arched(Quantity<Length> deeperInTheMiddle) {
        return with(ARCH, deeperInTheMiddle);
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
        return Refusal.of(CHANNEL + "." + Cut.LENGTHS.get(ARCH), rule, "be " + range, amount(archMm()));
    }

    /**
     * Begins a pocket for the adjuster at the end the rod is adjusted at.
     *
     * @param length along the neck, more than 0, no more than the channel's
     * @return what needs a section to be a channel with a pocket
     * @throws IllegalArgumentException for a fixed bar
     */
    public NeedsPocketSection pocket(Quantity<Length> length) {
        return new NeedsPocketSection(Pocket.TABLE.values().amount(Pocket.LENGTH, length));
    }

    /** A channel whose pocket has no section yet. Immutable. */
    public final class NeedsPocketSection {
        private final Values<Pocket> values;

        private NeedsPocketSection(Values<Pocket> values) {
            this.values = values;
        }

        private Channel channel() {
            return Channel.this;
        }

        /**
         * Adds the pocket's section.
         *
         * @param width across, the channel's width or more
         * @param depth below the glue face, the channel's depth or more
         * @return the channel
         */
        public Channel section(Quantity<Length> width, Quantity<Length> depth) {
            Values<Pocket> whole = values.amount(Pocket.WIDTH, width).amount(Pocket.DEPTH, depth);
            return with(POCKET_LENGTH, whole.house(Pocket.LENGTH))
                    .with(POCKET_WIDTH, whole.house(Pocket.WIDTH))
                    .with(POCKET_DEPTH, whole.house(Pocket.DEPTH))
                    .checked();
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof NeedsPocketSection that
                    && channel().equals(that.channel())
                    && values.equals(that.values);
        }

        @Override
        public int hashCode() {
            return Objects.hash(channel(), values);
        }

        /** Returns such as {@code pocket, section not given yet}. */
        @Override
        public String toString() {
            return "pocket, section not given yet";
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
    public Rod rod() {
        return rod;
    }

    /** {@return x of the head end in mm; either sign} */
    public double startMm() {
        return mm[START];
    }

    /** {@return x of the heel end in mm: start, rod and end play; more than the start} */
    public double endMm() {
        return mm[START] + lengthMm();
    }

    /** {@return the length in mm; more than 0} */
    public double lengthMm() {
        return rod.lengthMm() + mm[END_PLAY];
    }

    /** {@return how much longer the channel is than the rod, in mm; 0 or more; negative when it was cut too short} */
    public double endPlayMm() {
        return mm[END_PLAY];
    }

    /** {@return how much wider the channel is than the rod, in mm; 0 or more; negative when it was cut too narrow} */
    public double sidePlayMm() {
        return mm[SIDE_PLAY];
    }

    /**
     * {@return the width in mm: rod and side play; more than 0} The pocket is wider.
     */
    public double widthMm() {
        return rod.widthMm() + mm[SIDE_PLAY];
    }

    /**
     * {@return the depth at the ends in mm: rod, cover strip and clearance; more than 0} The whole depth where the
     * floor is flat.
     */
    public double depthMm() {
        return rod.heightMm() + mm[COVER] + mm[CLEARANCE];
    }

    /** {@return the depth at the ends, the whole depth where the floor is flat; more than 0} */
    public Amount<Length> depth() {
        return rod.style().amount(depthMm());
    }

    /** {@return how much deeper the middle is than the ends, in mm; the sagitta; 0 for a flat floor} */
    public double archMm() {
        return mm[ARCH];
    }

    /** {@return the cover strip's thickness in mm; 0 or more} */
    public double coverMm() {
        return mm[COVER];
    }

    /** {@return the clearance in mm; 0 or more} */
    public double clearanceMm() {
        return mm[CLEARANCE];
    }

    /** {@return whether there is a pocket; true when there is one} */
    public boolean hasPocket() {
        return mm[POCKET_LENGTH] > 0;
    }

    /** {@return x of the pocket's head end in mm; the channel's start, or its end less the pocket's length} */
    public double pocketStartMm() {
        return rod.adjustedAt() == End.HEAD ? mm[START] : endMm() - mm[POCKET_LENGTH];
    }

    /** {@return the pocket's length in mm; 0 where there is none} */
    public double pocketLengthMm() {
        return mm[POCKET_LENGTH];
    }

    /** {@return the pocket's width in mm; 0 where there is none} */
    public double pocketWidthMm() {
        return mm[POCKET_WIDTH];
    }

    /** {@return the pocket's depth in mm; 0 where there is none} */
    public double pocketDepthMm() {
        return mm[POCKET_DEPTH];
    }

    /**
     * {@return the depth of the floor at a station, the pocket not counted: {@code d(x) = d_m - (R - sqrt(R^2 - (x -
     * m)^2))}, {@code R = (L^2/4 + s^2)/(2 s)}, m the middle, s the sagitta; depth in mm; 0 outside the channel} Exact.
     *
     * @param xMm station in mm
     */
    public double floorDepthAtMm(double xMm) {
        if (!(HouseUnits.stationMm(xMm) >= mm[START] && xMm <= endMm())) {
            return 0;
        }
        double s = mm[ARCH];
        if (s == 0) {
            return depthMm();
        }
        double half = lengthMm() / 2;
        double u = xMm - (mm[START] + half);
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
        return floor > 0 && isInPocket(xMm) ? Math.max(floor, mm[POCKET_DEPTH]) : floor;
    }

    /**
     * {@return the width at a station, the pocket counted; width in mm; 0 outside the channel}
     *
     * @param xMm station in mm
     */
    public double widthAtMm(double xMm) {
        if (!(HouseUnits.stationMm(xMm) >= mm[START] && xMm <= endMm())) {
            return 0;
        }
        return isInPocket(xMm) ? mm[POCKET_WIDTH] : widthMm();
    }

    private boolean isInPocket(double xMm) {
        return hasPocket() && xMm >= pocketStartMm() && xMm <= pocketStartMm() + mm[POCKET_LENGTH];
    }

    private Amount<Length> amount(double mm) {
        return style().amount(mm);
    }

    /** {@return the style answers about this channel are printed in: that of the rod} */
    @Override
    public LengthStyle style() {
        return rod.style();
    }

    /**
     * {@return the same channel, printed in another style, its rod too}
     *
     * @param style how to print lengths
     */
    @Override
    public Channel in(LengthStyle style) {
        return new Channel(rod.in(style), mm);
    }

    /** Its sentences, in a class of their own: who only computes does not load them. */
    static final class Sentences {
        private static final Form<Channel> FORM = form("channel ");

        /** The same without its title, for the row of a neck. */
        static final Form<Channel> UNTITLED = form("");

        private static Form<Channel> form(String title) {
            return Form.<Channel>of("channel")
                    .fact("rod", Kind.answer(Rod.Sentences.FORM), "what lies in it", Channel::rod)
                    .fact("start", Kind.MM, "from the nut; negative: in the head", Channel::startMm)
                    .fact("end", Kind.MM, "from the nut", Channel::endMm)
                    .fact("width", Kind.MM, "of rod and side clearance", Channel::widthMm)
                    .fact("depth", Kind.MM, "at its ends", Channel::depthMm)
                    .fact("floorArch", Kind.MM, "middle deeper than the ends by; 0: flat", Channel::archMm)
                    .fact("middleDepth", Kind.MM, "where the floor is arched", c -> ifArched(c, c.middleDepthMm()))
                    .fact("endClearance", Kind.MM, "longer than the rod by; negative: too short", Channel::endPlayMm)
                    .fact("sideClearance", Kind.MM, "wider than the rod by; negative: too narrow", Channel::sidePlayMm)
                    .fact("fillet", Kind.MM, "thickness of the strip over the rod; 0: none", Channel::coverMm)
                    .fact("depthClearance", Kind.MM, "deeper than rod and fillet by", Channel::clearanceMm)
                    .fact("pocketLength", Kind.MM, "of the adjuster pocket", c -> ifPocketed(c, c.mm[POCKET_LENGTH]))
                    .fact("pocketWidth", Kind.MM, "of the adjuster pocket", c -> ifPocketed(c, c.mm[POCKET_WIDTH]))
                    .fact("pocketDepth", Kind.MM, "of the adjuster pocket", c -> ifPocketed(c, c.mm[POCKET_DEPTH]))
                    .factIfAny("pocketEnd", Kind.code(End.class), "where the pocket is", Channel::pocketEnd)
                    .phrase("arched", " at its ends, {middleDepth} in the middle")
                    .phrase("pocket", ", pocket {pocketLength} x {pocketWidth} x {pocketDepth} at the {pocketEnd}")
                    .finds(
                            "channel",
                            title + "{start} to {end} from the nut, {width} wide, {depth} deep{arched}{pocket}");
        }

        private static double ifArched(Channel channel, double mm) {
            return channel.mm[ARCH] == 0 ? Double.NaN : mm;
        }

        private static double ifPocketed(Channel channel, double mm) {
            return channel.hasPocket() ? mm : Double.NaN;
        }
    }

    private double middleDepthMm() {
        return depthMm() + mm[ARCH];
    }

    private Optional<End> pocketEnd() {
        return hasPocket() ? Optional.of(rod.adjustedAt()) : Optional.empty();
    }

    @Override
    public Form<Channel> form() {
        return Sentences.FORM;
    }

    @Override
    public boolean equals(Object obj) {
        return obj instanceof Channel other && rod.equals(other.rod) && Arrays.equals(mm, other.mm);
    }

    @Override
    public int hashCode() {
        return Objects.hash(rod, Arrays.hashCode(mm));
    }

    /** Returns such as {@code channel 3 mm to 303 mm from the nut, 6 mm wide, 9.2 mm deep}. */
    @Override
    public String toString() {
        return text(style());
    }
}
